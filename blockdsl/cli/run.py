"""What one build writes: the outputs of each file, the check print, the book, the rules for make."""

from __future__ import annotations

import os
import sys
from argparse import Namespace
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from typing import Final

from msgspec.structs import replace

from blockdsl.analysis.inputs import Input
from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import content_of, key_of
from blockdsl.cli.depfile import make_rules
from blockdsl.cli.jobs import Job, MadeFiles, OutputKey, do, kept_files, output_keys
from blockdsl.cli.outputs import book_bytes, kind_of
from blockdsl.cli.plan_memory import PlanMemory, Remembered
from blockdsl.cli.planning import Planned, where_declared
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import many, write_out
from blockdsl.cli.status import CannotGoOn
from blockdsl.cli.writing import BOOK, CHECK_PRINT, RULES, Writer, maker
from blockdsl.facts import book_of
from blockdsl.model.language import Language
from blockdsl.printing import Print, check_print_pdf

_LONG: Final = 8
"""So many outputs take long enough that one wants to see them come."""
_MOST_NAMED: Final = 6
_NOTHING: Final = "there are no blocks in these files\n"
_NO_TEMPLATES: Final = (
    "no file written: a ruler cuts every patch, so no templates are needed; --all-templates prints them all the same\n"
)


class BuildRun:
    """What one build writes, in its order: the outputs of each file, the check print, the book, the rules for make."""

    def __init__(
        self,
        arguments: Namespace,
        plans: Sequence[Planned | Remembered],
        sources: Iterable[Path],
        cache: Cache,
        printer: ProblemPrinter,
    ) -> None:
        """Look at all that will be written, before anything is.

        Errors: CannotGoOn where an output would replace an input, a file that is not ours, or another output.
        """
        self._arguments = arguments
        self._folder = Path(arguments.output)
        self._plans = plans
        self._cache = cache
        self._printer = printer
        self._removed: list[Path] = []
        self._left: list[Path] = []
        self._writer = Writer(sources)
        self._outputs = [_outputs(each, cache) for each in plans]
        self.jobs = [job for each in plans if isinstance(each, Planned) for job in each.jobs]
        kept = {id(job): _is_kept(keys, cache) for outputs in self._outputs for job, keys in outputs if job is not None}
        self.is_kept = [kept[id(job)] for job in self.jobs]
        self._plan_paths()

    def _plan_paths(self) -> None:
        paths: list[Path] = []
        for each, outputs in zip(self._plans, self._outputs, strict=True):
            for _, keys in outputs:
                for key in keys:
                    if not key.folder:
                        paths.append(self._folder / key.name)
                        self._writer.plan(paths[-1], f"an output of {each.origin.source.name}")
        for path, what in _asked_for_by_name(self._arguments):
            self._writer.plan(path, what)
            paths.append(path)
        self._writer.refuse_strangers(paths)

    def write(
        self, done: Iterator[MadeFiles | Exception], faults: list[Exception], anew: Callable[[Input], list[Job]]
    ) -> None:
        """Write file by file: all that comes of one file, or nothing of it where blockdsl itself fails.

        `anew` gives the work on a file that was remembered, should what is kept of it be damaged.
        """
        with _progress(len(self.jobs)) as next_is:
            for each, outputs in zip(self._plans, self._outputs, strict=True):
                made: dict[str, bytes] = {}
                of: dict[str, str] = {}
                before = len(faults)
                for job, keys in outputs:
                    if job is not None:
                        next_is(job.stem)
                    result = next(done) if job is not None else self._remembered(each, keys, anew)
                    if isinstance(result, Exception):
                        faults.append(result)
                    else:
                        made |= result
                        of |= dict.fromkeys(result, self._declared_in(each, keys[0].stem if keys else ""))
                if len(faults) == before:
                    self._put(each, made, of)

    def _remembered(
        self, each: Planned | Remembered, keys: Sequence[OutputKey], anew: Callable[[Input], list[Job]]
    ) -> MadeFiles | Exception:
        """The files of one job of a file that was remembered."""
        made = kept_files(keys, self._cache)
        if made is not None:
            return made
        try:
            return {
                name: data
                for job in anew(each.origin)
                if keys and job.stem == keys[0].stem
                for name, data in do(job, self._cache.folder).items()
            }
        except Exception as fault:  # noqa: BLE001 - told when all other files are done
            return fault

    def _declared_in(self, each: Planned | Remembered, stem: str) -> str:
        """The file that declares what outputs of this stem show, as the record of the folder has it."""
        place = self._writer.folder(self._folder)
        named = each.declared.get(stem)
        if named is None or named == each.origin.source.name:
            return maker(place, each.origin.path)
        return place.told(Path(named)) if Path(named).exists() else named

    def _put(self, each: Planned | Remembered, made: Mapping[str, bytes], of: Mapping[str, str]) -> None:
        origin = each.origin
        clashes, left = self._writer.clashes(self._folder, made, origin.path, of)
        if clashes:
            first = clashes[0]
            origin.problems.report(
                "output-taken",
                where_declared(origin.source, first.path.name),
                path=str(first.path),
                other=os.path.relpath(first.other),
                help="give one of them another title, or build them into two folders with -o",
            )
            self._printer.show(origin.problems)
            return
        self._left += [self._folder / name for name in sorted(left)]
        self._writer.put(self._folder, {name: data for name, data in made.items() if name not in left}, origin.path, of)

    def write_the_rest(self, printed: Print) -> None:
        """The check print and the book of all blocks, where they are asked for."""
        if self._arguments.check_print:
            self._writer.put(self._folder, {"check-print.pdf": check_print_pdf(printed, self._language())}, CHECK_PRINT)
        if self._arguments.book is not None:
            path = Path(self._arguments.book)
            self._writer.put(path.parent, {path.name: self._book(path, printed)}, BOOK)

    def _language(self) -> Language:
        """What the check print is in: as the command says, else as the first file whose pages are in some language."""
        asked: Language | None = self._arguments.language
        spoken = [each.language for each in self._plans if each.language is not None]
        return asked or (spoken[0] if spoken else "en-US")

    def _book(self, path: Path, printed: Print) -> bytes:
        from blockdsl.marks.typeset import printing_with

        planned = [each for each in self._plans if isinstance(each, Planned)]
        blocks = [block for made in planned for block in made.blocks]
        quilts = [quilt for made in planned for quilt in made.quilts]
        if not blocks and not quilts:
            raise CannotGoOn("there is no block to make a book of")
        fonts = [each.worked.facts.font for each in planned if each.worked.facts.font is not None]
        printed = replace(printed, font=fonts[0] if fonts else None)
        book = book_of(blocks, self._arguments.title or path.stem, printed.paper, quilts)
        key = key_of("book", content_of(book), printed) if self._cache.folder else ""
        with printing_with(printed.font, accent=book.maker.colour):
            return self._cache.made(key, partial(book_bytes, book, printed, self._cache))

    def remove_what_is_no_longer_made(self, kinds: frozenset[str]) -> None:
        """Take away what earlier builds of the same files wrote, of the kinds asked for, and this one does not make."""
        place = self._writer.folder(self._folder)
        made = {os.path.realpath(path) for path in (*self._writer.written, *self._left)}
        for by in [maker(place, each.origin.path) for each in self._plans]:
            stale = [
                name
                for name, entry in place.known().items()
                if by in entry.by and kind_of(name) in kinds and os.path.realpath(self._folder / name) not in made
            ]
            if stale:
                self._removed += [self._folder / name for name in place.remove(stale, by)]

    def keep_in(self, memory: PlanMemory) -> None:
        """Remember what was made of each file, so that it need not be worked out again while nothing has changed."""
        for each, outputs in zip(self._plans, self._outputs, strict=True):
            if isinstance(each, Planned):
                memory.keep(each, tuple(key for _, keys in outputs for key in keys))

    def write_rules(self, sources: Iterable[Path]) -> None:
        """The rules come last: where they are, all is there. The file itself is among the targets, to be asked for."""
        if self._arguments.depfile is None:
            return
        path = Path(self._arguments.depfile)
        rules = make_rules([path, *self._writer.written], sources)
        self._writer.put(path.parent, {path.name: rules.encode("utf-8", "surrogateescape")}, RULES)
        self._writer.written.remove(path)

    def sum_up(self) -> None:
        """How many files were written, and which were taken away."""
        count = len(self._writer.written)
        without = _NO_TEMPLATES if any(isinstance(each, Planned) and each.blocks for each in self._plans) else _NOTHING
        write_out(f"{many(count, 'file')} written to {self._arguments.output}\n" if count else without)
        if self._left:
            write_out(f"{_some(self._left)}: left as the file that declares the block makes it\n")
        if self._removed:
            write_out(f"{_some(self._removed)}: no longer made, so removed\n")


def _some(paths: Sequence[Path]) -> str:
    """How many files, and the first of them by name."""
    names = ", ".join(map(str, paths[:_MOST_NAMED]))
    more = f" and {len(paths) - _MOST_NAMED} more" if len(paths) > _MOST_NAMED else ""
    return f"{many(len(paths), 'file')} ({names}{more})"


def _asked_for_by_name(arguments: Namespace) -> Iterator[tuple[Path, str]]:
    """The outputs that no file declares, and what they are."""
    if arguments.book is not None:
        yield Path(arguments.book), "the book"
    if arguments.check_print:
        yield Path(arguments.output) / "check-print.pdf", "the check print"
    if arguments.depfile is not None:
        yield Path(arguments.depfile), "the rules for make"


_Outputs = list[tuple[Job | None, tuple[OutputKey, ...]]]
"""Job by job what a file gives; of a file that was remembered the keys alone."""


def _outputs(each: Planned | Remembered, cache: Cache) -> _Outputs:
    if isinstance(each, Planned):
        return [(job, output_keys(job, cache)) for job in each.jobs]
    stems = dict.fromkeys(key.stem for key in each.outputs)
    return [(None, tuple(key for key in each.outputs if key.stem == stem)) for stem in stems]


def _is_kept(keys: Sequence[OutputKey], cache: Cache) -> bool:
    """Whether all of these files seem to be in the cache."""
    return cache.folder is not None and all(cache.has(key.key) for key in keys)


@contextmanager
def _progress(total: int) -> Iterator[Callable[[str], None]]:
    """A progress bar for long builds, on a terminal only: call it with the name of each output before it is made."""
    if total < _LONG or not sys.stderr.isatty():
        yield lambda _: None
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn

    console = Console(stderr=True)
    columns = (BarColumn(), MofNCompleteColumn(), TextColumn("{task.description}", markup=False))
    with Progress(*columns, console=console, transient=True) as bar:
        task = bar.add_task("", total=total, completed=-1)

        def next_is(name: str) -> None:
            bar.update(task, advance=1, description=name)

        yield next_is
