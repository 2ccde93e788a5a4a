"""`blockdsl gallery`: all blocks of the files on one contact sheet, or one block in every setting that suits it."""

from __future__ import annotations

from argparse import Namespace
from pathlib import Path
from typing import TYPE_CHECKING

from blockdsl.analysis.inputs import RememberingReader, open_inputs, project_folder
from blockdsl.cli.build import asked_date
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import many, write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE, USAGE, CannotGoOn
from blockdsl.cli.writing import GALLERY, Writer
from blockdsl.diagnostics import nearest_word
from blockdsl.export.naming import Taken, slug
from blockdsl.pipeline import Worked, work_through
from blockdsl.pipeline import run as run_pipeline
from blockdsl.printing import gallery_svg, possibilities_svg
from blockdsl.wording.messages import words_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from blockdsl.document.content import WebSite
    from blockdsl.facts import BlockFacts
    from blockdsl.facts.possibility import Possibility
    from blockdsl.marks.display_list import Document


def run(arguments: Namespace) -> int:
    """Run the command: the sheet as PDF, as one SVG and as a web page; nothing where a file has errors."""
    if arguments.declare and arguments.of is None:
        raise CannotGoOn("--declare is for the quilts of one block: name it with --of", USAGE)
    if arguments.output is None and not arguments.declare:
        raise CannotGoOn("name the folder for what is written with -o", USAGE)
    printer = ProblemPrinter(arguments)
    works: list[Worked] = []
    for origin in open_inputs(arguments.files, levels_asked(arguments)):
        works.append(work_through(origin, language=arguments.language))
        printer.show(origin.problems)
    if printer.sum_up():
        return ERRORS
    if arguments.of is not None:
        return _settings_of(arguments.of, works, arguments)
    blocks = [block for worked in works for block in worked.facts.blocks]
    if not blocks:
        write_out("there is no block to show\n")
        return FINE
    title = arguments.title or "Gallery"
    _write(_files(blocks, title, arguments.paper or "letter"), many(len(blocks), "block"), works, arguments)
    return FINE


def _write(files: dict[str, bytes], shown: str, works: Sequence[Worked], arguments: Namespace) -> None:
    Writer(path for worked in works for path in worked.sources).put(Path(arguments.output), files, GALLERY)
    if arguments.message_format == "text" and not arguments.quiet:
        write_out(f"{shown} shown, {many(len(files), 'file')} written to {arguments.output}\n")


def _files(blocks: Sequence[BlockFacts], title: str, paper: str) -> dict[str, bytes]:
    from blockdsl.document.gallery import gallery_site
    from blockdsl.document.site import RESERVED
    from blockdsl.page.gallery import gallery_document

    document = gallery_document(blocks, title, paper=paper)
    return _as_files(document, gallery_svg(blocks, title), gallery_site(blocks, title, Taken(RESERVED).take))


def _as_files(document: Document, drawing: bytes, site: WebSite) -> dict[str, bytes]:
    """The same for paper, for the screen and as one picture, named after the title."""
    from blockdsl.export.html import site_files
    from blockdsl.export.pdf import write_pdf

    stem = slug(document.title)
    files = {f"{stem}.pdf": write_pdf(document, created=asked_date()), f"{stem}.svg": drawing}
    return files | {f"{stem}.web/{name}": data for name, data in site_files(site).items()}


# --- one block in every setting ----------------------------------------------------------------------


def _settings_of(name: str, works: Sequence[Worked], arguments: Namespace) -> int:
    """Show the block of this name in every setting that suits it, or write the lines of those that were chosen."""
    from blockdsl.possibilities import possibilities

    worked = _with_block(name, works)
    origin = worked.origin
    reader = RememberingReader(project_folder(origin.path))
    design = next(block for block in run_pipeline(origin.source, reader).program.blocks if block.name == name)
    found = possibilities(origin.source, reader, design, arguments.language)
    if not found:
        raise CannotGoOn(f"no quilt can be set of {name}: four of it are larger than a quilt may be")
    if arguments.declare:
        write_out("\n".join(_declared(name, number, found) for number in arguments.declare))
        return FINE
    from blockdsl.document.possibilities import possibility_site
    from blockdsl.page.gallery import possibility_document

    title = arguments.title or words_of(found[0].quilt)("possible-title", block=name)
    document = possibility_document(found, title, paper=arguments.paper or "letter")
    files = _as_files(document, possibilities_svg(found, title), possibility_site(found, title))
    _write(files, many(len(found), "quilt"), works, arguments)
    return FINE


def _with_block(name: str, works: Sequence[Worked]) -> Worked:
    """The first of the files that has a block of this name."""
    names = {block.name: worked for worked in reversed(works) for block in worked.facts.blocks}
    if name not in names:
        near = nearest_word(name, names)
        raise CannotGoOn(f'there is no block "{name}" in these files{f"; did you mean {near}?" if near else ""}')
    return names[name]


def _declared(block: str, number: int, found: Sequence[Possibility]) -> str:
    if number > len(found):
        raise CannotGoOn(f"there is no quilt {number}: {block} has {len(found)}", USAGE)
    return found[number - 1].plan.declared(f"{block} {number}")
