"""`blockdsl gallery`: all blocks of the files on one contact sheet, for paper and for the web."""

from __future__ import annotations

from argparse import Namespace
from pathlib import Path

from blockdsl.analysis.inputs import open_inputs
from blockdsl.cli.build import asked_date
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import many, write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.cli.writing import GALLERY, Writer
from blockdsl.export.naming import slug
from blockdsl.facts import BlockFacts
from blockdsl.pipeline import Worked, work_through
from blockdsl.printing import gallery_svg


def run(arguments: Namespace) -> int:
    """Run the command: the sheet as PDF, as one SVG and as a web page; nothing where a file has errors."""
    printer = ProblemPrinter(arguments)
    blocks: list[BlockFacts] = []
    works: list[Worked] = []
    for origin in open_inputs(arguments.files, levels_asked(arguments)):
        worked = work_through(origin, language=arguments.language)
        printer.show(origin.problems)
        blocks += worked.facts.blocks
        works.append(worked)
    if printer.sum_up():
        return ERRORS
    if not blocks:
        write_out("there is no block to show\n")
        return FINE
    files = _files(blocks, arguments.title, arguments.paper or "letter")
    Writer(path for worked in works for path in worked.sources).put(Path(arguments.output), files, GALLERY)
    if arguments.message_format == "text" and not arguments.quiet:
        write_out(f"{many(len(blocks), 'block')} shown, {many(len(files), 'file')} written to {arguments.output}\n")
    return FINE


def _files(blocks: list[BlockFacts], title: str, paper: str) -> dict[str, bytes]:
    from blockdsl.document.gallery import gallery_site
    from blockdsl.export.html import site_files
    from blockdsl.export.pdf import write_pdf
    from blockdsl.page.gallery import gallery_document

    stem = slug(title)
    created = asked_date()
    files = {
        f"{stem}.pdf": write_pdf(gallery_document(blocks, title, paper=paper), created=created),
        f"{stem}.svg": gallery_svg(blocks, title),
    }
    site = site_files(gallery_site(blocks, title))
    return files | {f"{stem}.web/{name}": data for name, data in site.items()}
