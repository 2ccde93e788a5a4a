"""The language of pages: the file's line, the usual one for the unit, or the command's, which comes first."""

from blockdsl.analysis import analyse
from blockdsl.analysis.reading import TextReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.model.language import Language

CLOTH = 'fabric fog "Harbour fog" #dfe3e0 light\nfabric slate "Wet slate" #3f4a52 dark\n'
BLOCK = 'block "{name}"\n  size {size}\n{more}  row fog slate\n  row slate fog\n'


def languages(text: str, language: Language | None = None) -> list[str | None]:
    program = analyse(Source("mine.block", CLOTH + text), TextReader(), Problems(), None, language)
    blocks = [each.language for each in program.blocks]
    return [*blocks, *(each.language for each in program.quilts), *(each.language for each in program.books)]


def block(name: str, size: str = "6 in", more: str = "") -> str:
    return BLOCK.format(name=name, size=size, more=more)


def test_blocks_in_inches_are_american_and_blocks_in_centimetres_british() -> None:
    assert languages(block("One") + block("Two", "15 cm")) == ["en-US", "en-GB"]


def test_what_the_command_says_comes_before_every_line() -> None:
    text = block("One", more="  language en-GB\n") + 'book "All"\n  language en-GB\n  block "One"\n'
    assert languages(text, "en-US") == ["en-US", "en-US"]


def test_a_book_is_in_one_language_whatever_its_blocks_measure_in() -> None:
    text = block("One", "15 cm") + block("Two") + 'book "All"\n  block "One"\n  block "Two"\n'
    program = analyse(Source("mine.block", CLOTH + text), TextReader(), Problems())
    (book,) = program.books
    assert book.language == "en-GB"
    sizes = [size for chapter in book.chapters for item in chapter.items for size in item.sizes]  # type: ignore[union-attr]  # blocks alone
    assert [size.language for size in sizes] == ["en-GB", "en-GB"]
    assert [each.language for each in program.blocks] == ["en-GB", "en-US"]


def test_a_block_of_a_quilt_is_in_the_language_of_the_quilt() -> None:
    text = block("One", more="  language en-US\n") + 'quilt "Pier"\n  language en-GB\n  set straight 2 x 2 of "One"\n'
    program = analyse(Source("mine.block", CLOTH + text), TextReader(), Problems())
    (quilt,) = program.quilts
    assert [kind.design.language for kind in quilt.kinds] == ["en-GB"]
