"""What the maker chooses for all her pages: how seams are pressed, their language, what stands at their foot.

Of pressing, and of what stands at the foot, the innermost line wins: block, quilt, book, maker. A page is in one
language, so what is printed in a quilt or a book is in that of the quilt or the book; the command's choice comes before
every line.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, TypeVar, cast
from urllib.parse import urlsplit

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.analysis.fixes import did_you_mean, without_line
from blockdsl.analysis.memory import NO_MEMORY, Memory
from blockdsl.diagnostics import Fix, Problems, Span, change_to, nearest_word
from blockdsl.model import BlockDesign, BookDesign, PressingChoice, QuiltDesign
from blockdsl.model.book import BlockInBook, ChapterDesign, QuiltInBook, WordsInBook
from blockdsl.model.fabric import RulerUnit, contrast
from blockdsl.model.language import LANGUAGES, Language, usual_language
from blockdsl.model.maker import NOBODY, Maker
from blockdsl.syntax import ast
from blockdsl.syntax.kinds import once_as

Lines = Sequence[ast.BlockLine | ast.QuiltLine | ast.BookLine | ast.MakerLine]
_MOST_LETTERS: Final = {"lines": 72, "link": 50}
"""What fits at the foot of a page, in one row beside one another: the lines together, and the link."""

_LONGEST_ADDRESS: Final = 500
_LEAST_CONTRAST: Final = 4.5
"""Of words on their ground: Web Content Accessibility Guidelines 2.2, criterion 1.4.3."""
_PAPER: Final = "#ffffff"
_INK: Final = "#000000"
_Design = TypeVar("_Design", BlockDesign, QuiltDesign)


def read_pressing(lines: Lines) -> PressingChoice | None:
    """What a declaration itself says, or None."""
    return next((line.how for line in lines if isinstance(line, ast.Press)), None)


def read_language(lines: Lines) -> Language | None:
    """The language that a declaration itself says, or None; one that there is not counts as not said."""
    said = next((line.tag.text for line in lines if isinstance(line, ast.Language)), None)
    return said if said in LANGUAGES else None


def read_maker(lines: Lines, name: str = "") -> Maker:
    """What a declaration itself says is to stand at the foot of its pages."""
    said = tuple(line.text.text for line in lines if isinstance(line, ast.FootLine))
    link = next((line.address.text for line in lines if isinstance(line, ast.MakerLink)), "")
    colour = next((line.colour for line in lines if isinstance(line, ast.Accent)), "")
    return Maker(name, said, link, colour)


def report_choices(lines: Lines, problems: Problems) -> None:
    """A choice that is made twice in one declaration, a language that there is not, a foot that cannot be printed."""
    report_repeats(lines, problems)
    _report_foot(lines, problems)
    _report_pale(lines, problems)
    first = next((line for line in lines if isinstance(line, ast.Language)), None)
    if first is not None and first.tag.text not in LANGUAGES:
        _report_unknown(first, problems)


def report_repeats(lines: Lines, problems: Problems) -> None:
    """Lines that are allowed once and come again in one declaration; which those are is in the table of line kinds."""
    seen: dict[str, Span] = {}
    for line in lines:
        word = once_as(line)
        before = seen.setdefault(word, line.span) if word else line.span
        if before is not line.span:
            related = ((before, "first set here"),)
            fixes = (without_line(line.span, "second"), without_line(before, "first"))
            problems.report(
                "setting-twice", line.span, what=word, related=related, help="keep one of the two", fixes=fixes
            )


def _report_unknown(line: ast.Language, problems: Problems) -> None:
    near = nearest_word(line.tag.text, LANGUAGES)
    there_are = f"pages can be in {', '.join(f'`{tag}`' for tag in LANGUAGES)}"
    help_text = f"did you mean `{near}`?" if near else there_are
    fixes = did_you_mean(line.tag, near)
    problems.report("language-unknown", line.tag.span, tag=line.tag.text, help=help_text, fixes=fixes)


def _report_foot(lines: Lines, problems: Problems) -> None:
    """A link that leads nowhere, and more than the foot of a page has room for."""
    maker = read_maker(lines)
    for line in lines:
        if isinstance(line, ast.MakerLink) and is_of_the_web(line.address, problems):
            _report_length(line.address.span, "link", len(maker.link_shown), problems)
    said = [line for line in lines if isinstance(line, ast.FootLine)]
    letters = 0
    for line in said:
        letters += len(line.text.text)
        if letters > _MOST_LETTERS["lines"]:
            _report_length(line.text.span, "lines", sum(len(each) for each in maker.lines), problems)
            return


def _report_pale(lines: Lines, problems: Problems) -> None:
    """An accent that words cannot be read in on white paper."""
    for line in lines:
        if isinstance(line, ast.Accent) and contrast(line.colour, _PAPER) < _LEAST_CONTRAST:
            place = Span(line.span.source, line.span.stop - len(line.colour), line.span.stop)
            advice = f"take a darker one, such as {_darkened(line.colour)}"
            fixes = (change_to(place, _darkened(line.colour)),)
            problems.report("accent-too-pale", place, colour=line.colour, help=advice, fixes=fixes)


def _darkened(colour: str) -> str:
    """The same hue, dark enough to be read on paper."""
    parts = [int(colour[at : at + 2], 16) for at in (1, 3, 5)]
    for percent in range(100, -1, -1):
        darker = "#" + "".join(f"{part * percent // 100:02x}" for part in parts)
        if contrast(darker, _PAPER) >= _LEAST_CONTRAST:
            return darker
    return _INK


def _report_length(span: Span, what: str, letters: int, problems: Problems) -> None:
    most = _MOST_LETTERS[what]
    if letters > most:
        advice = f"shorten it by {letters - most}, or more" if what == "link" else "shorten it, or leave a line out"
        shown = "the link" if what == "link" else "these lines together"
        problems.report("foot-too-long", span, what=shown, letters=letters, most=most, help=advice)


def is_of_the_web(address: ast.Text, problems: Problems) -> bool:
    """Whether a browser opens the address; one that none opens is reported."""
    fixes: tuple[Fix, ...] = ()
    fault = _fault_of_link(address.text)
    if fault is None:
        return True
    whole = f"https://{address.text}"
    if "://" not in address.text and _fault_of_link(whole) is None and "." in address.text:
        fixes = (change_to(address.span, f'"{whole}"'),)
        fault = f'write `"{whole}"`'
    problems.report("link-not-web", address.span, address=address.text, help=fault, fixes=fixes)
    return False


def _fault_of_link(address: str) -> str | None:
    """What is wrong with an address of the web, as advice; None for a sound one."""
    try:
        parts = urlsplit(address)
        host = parts.hostname or ""
    except ValueError:
        return "copy the address from the browser"
    if parts.scheme not in ("https", "http"):
        return "an address begins with `https://`"
    if not address.isascii() or not address.isprintable() or " " in address:
        return "copy the address from the browser: it has no spaces, and only letters that every browser types"
    if "." not in host or host.startswith(".") or host.endswith(".") or ".." in host:
        return "after `https://` comes a name such as `marsh-street.example`"
    if any(sign in address for sign in "<>\\^`{|}"):
        return "copy the address from the browser"
    return None if len(address) <= _LONGEST_ADDRESS else f"it may have {_LONGEST_ADDRESS} letters at most"


class Choices(Struct, frozen=True):
    """What holds around a design; None for what nobody says. `forced` is a language that no line changes."""

    pressing: PressingChoice | None = None
    language: Language | None = None
    forced: Language | None = None
    maker: Maker = NOBODY

    def for_block(self, design: BlockDesign) -> tuple[PressingChoice | None, Language]:
        """What holds for a block that is printed here."""
        language = self.forced or design.language or self.language or usual_language(design.unit)
        return design.pressing or self.pressing, language


class Settled(Struct):
    """The designs of one file, each with the choices that hold for it where it is printed.

    What was one design under one choice before is one design after. `maker` is what the project's maker says.
    """

    maker: Choices
    memory: Memory = NO_MEMORY
    _found: dict[tuple[int, Choices], tuple[BlockDesign | QuiltDesign, BlockDesign | QuiltDesign]] = field(
        default_factory=dict
    )

    def block(self, design: BlockDesign, around: Choices | None = None) -> BlockDesign:
        """The block, where what it is printed in says `around`."""
        around = around or self.maker
        pressing, language = around.for_block(design)
        maker = design.maker.within(around.maker)
        if (pressing, language, maker) == (design.pressing, design.language, design.maker):
            return design
        sizes = tuple(self.block(size, around) for size in design.sizes)

        def settle(_: Problems) -> BlockDesign:
            return replace(design, pressing=pressing, language=language, maker=maker, sizes=sizes)

        step = f"settle {pressing} {language} {maker}"
        settled = self.memory.once(step, (design, *sizes), Problems(), settle)
        return self._once(design, around, settled)

    def quilt(self, design: QuiltDesign, around: Choices | None = None) -> QuiltDesign:
        """The quilt and its blocks, those of borders too."""
        around = around or self.maker
        language = around.forced or design.language or around.language or usual_language(design.unit)
        inside = Choices(design.pressing or around.pressing, language, language, design.maker.within(around.maker))
        kinds = tuple(replace(kind, design=self.block(kind.design, inside)) for kind in design.kinds)
        settled = replace(design, pressing=inside.pressing, language=language, maker=inside.maker, kinds=kinds)
        return self._once(design, around, settled)

    def book(self, design: BookDesign) -> BookDesign:
        """The book with its blocks and quilts, those of other files too."""
        language = self.maker.forced or design.language or self.maker.language or usual_language(_unit_of(design))
        maker = design.maker.within(self.maker.maker)
        inside = Choices(design.pressing or self.maker.pressing, language, language, maker)

        def item(found: WordsInBook | BlockInBook | QuiltInBook) -> WordsInBook | BlockInBook | QuiltInBook:
            match found:
                case BlockInBook():
                    return replace(found, sizes=tuple(self.block(size, inside) for size in found.sizes))
                case QuiltInBook():
                    return replace(found, design=self.quilt(found.design, inside))
                case _:
                    return found

        chapters = tuple(ChapterDesign(part.title, tuple(map(item, part.items))) for part in design.chapters)
        return replace(design, pressing=inside.pressing, language=language, maker=maker, chapters=chapters)

    def _once(self, design: _Design, around: Choices, settled: _Design) -> _Design:
        """The design that was settled for this one before, if any.

        The design before is kept beside the other, so that no other design comes by its number.
        """
        return cast("_Design", self._found.setdefault((id(design), around), (design, settled))[1])


def _unit_of(book: BookDesign) -> RulerUnit:
    """The unit of the first block or quilt of a book."""
    for chapter in book.chapters:
        for found in chapter.items:
            if isinstance(found, QuiltInBook):
                return found.design.unit
            if isinstance(found, BlockInBook) and found.sizes:
                return found.sizes[0].unit
    return "in"
