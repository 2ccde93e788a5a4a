"""`blockdsl build`: everything that the files declare, written whole or not at all."""

from __future__ import annotations

import os
from argparse import Namespace
from collections.abc import Generator, Sequence
from contextlib import closing, suppress
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import Final

from msgspec import Struct

from blockdsl.analysis.inputs import STDIN, Input, open_inputs
from blockdsl.analysis.override import WhatIf
from blockdsl.cli.cache import Cache, asked_cache
from blockdsl.cli.cache_keys import content_of
from blockdsl.cli.jobs import WORTH_SHARING, Job, MadeFiles, do
from blockdsl.cli.outputs import KINDS
from blockdsl.cli.overrides import refuse_without_quilts, what_if_of
from blockdsl.cli.plan_memory import PlanMemory, Remembered
from blockdsl.cli.planning import Planned, PrintOptions, plan
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.run import BuildRun
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE, USAGE, CannotGoOn
from blockdsl.cli.workers import processors, run_all
from blockdsl.diagnostics import Problems
from blockdsl.facts.finishing import QuiltFinishing
from blockdsl.pipeline import Worked, work_through
from blockdsl.printing import USUAL_PAPER, creation_date

_WORTH_SHARING_FILES: Final = 150
"""To look at a file takes a small part of what it takes to draw its blocks."""


def run(arguments: Namespace) -> int:
    """Run the command; with `--watch` each time a file is saved."""
    if not arguments.watch:
        return _build(arguments)[0]
    if STDIN in arguments.files:
        raise CannotGoOn("--watch needs files: standard input cannot be watched", USAGE)
    from blockdsl.cli.watching import again_and_again

    return again_and_again(partial(_build, arguments))


def _build(arguments: Namespace) -> tuple[int, tuple[Path, ...]]:
    """Look at all files first, show their problems, then draw and write; how it ended, and the files that were read."""
    kinds = frozenset(arguments.only or KINDS)
    if arguments.title is not None and arguments.book is None:
        raise CannotGoOn("--title needs --book FILE.pdf, the book that has the title", USAGE)
    asked = PrintOptions(
        arguments.paper,
        asked_date(),
        arguments.margin,
        arguments.language,
        arguments.outline_words,
        arguments.all_templates,
    )
    cache = asked_cache(arguments)
    processes = arguments.jobs or processors()
    faults: list[Exception] = []
    what_if = what_if_of(arguments)
    inputs = open_inputs(arguments.files, levels_asked(arguments))
    memory = PlanMemory(cache, kinds, asked)
    wanted = _Wanted(kinds, asked, processes, what_if)
    files = wanted.files(inputs, None if what_if is not None or arguments.book is not None else memory, faults)
    if arguments.only and "book" in kinds and arguments.book is None and not files.may_have_book:
        raise CannotGoOn("--only book: no file declares a book; --book FILE.pdf makes one of all blocks", USAGE)
    printer = ProblemPrinter(arguments)
    for origin in files.origins:
        printer.show(origin.problems)
    run = BuildRun(arguments, files.plans, files.sources, cache, printer)
    # Closed at once, even for a fault: processes that wait for work would be torn down noisily at the very end.
    with closing(_done(run.jobs, run.is_kept, cache, processes)) as done:
        run.write(done, faults, wanted.anew)
    failed = printer.sum_up()
    if faults:  # told last, so that no other file's messages and outputs are lost for it
        raise faults[0]
    if not failed:
        run.write_the_rest(asked.on(USUAL_PAPER))
        if what_if is None:
            run.remove_what_is_no_longer_made(kinds)
            run.keep_in(memory)
    cache.tidy()
    read = tuple(dict.fromkeys((*(each.path for each in inputs if each.path is not None), *files.sources)))
    if failed:
        return ERRORS, read
    run.write_rules(files.sources)
    if arguments.message_format == "text" and not arguments.quiet:
        run.sum_up()
    return FINE, read


class _Files(Struct, frozen=True):
    """What is known of all files: plans in their order, without files that have errors; all files that were read.

    `origins` are all of them with their problems.
    """

    origins: tuple[Input, ...]
    plans: tuple[Planned | Remembered, ...]
    sources: tuple[Path, ...]
    may_have_book: bool


class _Wanted(Struct, frozen=True):
    """What is to be made of every file."""

    kinds: frozenset[str]
    asked: PrintOptions
    processes: int
    what_if: WhatIf | None

    def files(self, inputs: Sequence[Input], memory: PlanMemory | None, faults: list[Exception]) -> _Files:
        """Every file remembered or worked through, its problems in its own collector.

        Files that share a name are planned together: who comes first has it. Should blockdsl itself fail, that is a
        fault of the list.
        """
        known = {} if memory is None else {id(origin): memory.recall(origin) for origin in inputs}
        remembered = {key: found for key, found in known.items() if found is not None}
        works = self._look([origin for origin in inputs if id(origin) not in remembered], faults)
        planned = plan(works, self.kinds, self.asked)
        if _share_names((*remembered.values(), *planned)):
            fresh = [Input(each.source, each.path, Problems(each.problems.levels), each.readable) for each in inputs]
            return self.files(fresh, None, faults)
        refuse_without_quilts(works, [self.what_if])
        by_origin: dict[int, Planned | Remembered] = {**remembered, **{id(each.origin): each for each in planned}}
        plans = tuple(by_origin[id(origin)] for origin in inputs if id(origin) in by_origin)
        read: list[Remembered | Worked] = [*remembered.values(), *works]
        sources = tuple(path for each in read for path in each.sources)
        has_book = any(each.has_book for each in remembered.values())
        return _Files(
            tuple(inputs), plans, sources, has_book or any(worked.facts.books or worked.has_errors for worked in works)
        )

    def anew(self, origin: Input) -> list[Job]:
        """The work on a file that was remembered, where what is kept of it turns out to be damaged."""
        fresh = Input(origin.source, origin.path, Problems(origin.problems.levels), origin.readable)
        works = [work_through(fresh, language=self.asked.language)]
        return [job for each in plan(works, self.kinds, self.asked) for job in each.jobs]

    def _look(self, inputs: Sequence[Input], faults: list[Exception]) -> list[Worked]:
        works: list[Worked] = []
        look = partial(work_through, what_if=self.what_if, language=self.asked.language)
        for found in run_all(look, inputs, self.processes, _WORTH_SHARING_FILES):
            if isinstance(found, Exception):
                faults.append(found)
            else:
                works.append(found)
        return works


def _share_names(files: Sequence[Planned | Remembered]) -> bool:
    """Whether a remembered file has a name that another file wants too."""
    if not any(isinstance(each, Remembered) for each in files):
        return False
    stems = [stem for each in files for stem in _stems(each)]
    return len(stems) != len(set(stems))


def _stems(each: Planned | Remembered) -> set[str]:
    return {key.stem for key in each.outputs} if isinstance(each, Remembered) else {job.stem for job in each.jobs}


def asked_date() -> datetime | None:
    """The date that outputs show.

    Errors: CannotGoOn when SOURCE_DATE_EPOCH is not a number of seconds.
    """
    try:
        return creation_date(os.environ)
    except ValueError as fault:
        raise CannotGoOn(str(fault), USAGE) from None


def _done(
    jobs: Sequence[Job], kept: Sequence[bool], cache: Cache, processes: int
) -> Generator[MadeFiles | Exception, None, None]:
    """The files of every job, in order: from the cache where they are kept, made by several processes where not."""
    make = partial(do, folder=cache.folder)
    missing = [job for job, is_there in zip(jobs, kept, strict=True) if not is_there]
    _plan_cloth(missing)
    with closing(run_all(make, missing, processes, WORTH_SHARING)) as others:
        for job, is_there in zip(jobs, kept, strict=True):
            yield next(run_all(make, [job], 1, 1)) if is_there else next(others)


def _plan_cloth(jobs: Sequence[Job]) -> None:
    """Work out here, once, the cloth of each quilt that several jobs need, and not in every process anew."""
    alike: dict[str, list[QuiltFinishing]] = {}
    for job in jobs:
        for quilt in job.quilts:
            if quilt.finishing is not None:
                alike.setdefault(content_of(quilt), []).append(quilt.finishing)
    for first, *others in alike.values():
        with suppress(Exception):  # the job that asks again tells whose work it was
            if others:
                found = first.facts
                for other in others:
                    other.take(found)
