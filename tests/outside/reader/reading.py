"""Going through the steps of a block, from the first to the last."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from tests.outside.reader import (
    again,
    caring,
    curving,
    flips,
    geese,
    halves,
    joining,
    laying,
    measuring,
    papering,
    partial,
    placing,
    pressing,
    rows,
    starring,
    strips,
    taking,
    whipping,
)
from tests.outside.reader.bench import Bench, follow
from tests.outside.reader.cloth import HAIR, Cloth, is_open
from tests.outside.reader.landmarks import turns_of
from tests.outside.reader.measuring import EIGHTH
from tests.outside.reader.sentences import Step, sentences_of, title_of
from tests.outside.reader.stock import Kind, Stock
from tests.outside.reader.table import Refused, ways

SUBJECTS = (
    taking,
    laying,
    rows,
    joining,
    placing,
    pressing,
    measuring,
    again,
    flips,
    geese,
    halves,
    strips,
    papering,
    partial,
    curving,
    starring,
    whipping,
    caring,
)
"""Whoever is imported here has put its sentences into PATTERNS."""


@dataclass
class Fault(Refused):
    """Where the words fail: the step, the sentence, what is wrong with it."""

    step: Step
    sentence: str
    why: str

    def __str__(self) -> str:
        return f"step {self.step.number} {self.step.title!r}: {self.sentence!r}: {self.why}"


@dataclass
class Progress:
    """How far the work has come: what lies beside the machine, what was said and taken in the steps before."""

    stock: Stock
    said: dict[int, list[str]] = field(default_factory=dict)
    takes: dict[int, list[Kind]] = field(default_factory=dict)
    result: Cloth | None = None

    def copy(self) -> Progress:
        stock = replace(
            self.stock,
            pieces=self.stock.pieces.copy(),
            units=dict(self.stock.units),
            made=self.stock.made.copy(),
        )
        return Progress(stock, dict(self.said), dict(self.takes), self.result)


def sew(steps: Sequence[Step], stock: Stock) -> Cloth:
    """The block that the steps make, of the stock.

    Errors: Fault where a sentence cannot be read or followed, leaves two ways open, or something is left over.
    """
    return sew_on(Progress(stock), steps, steps)


def sew_on(progress: Progress, steps: Sequence[Step], all_steps: Sequence[Step]) -> Cloth:
    """The block, when work goes on from where it stands with the last of all steps.

    Errors: as for sew.
    """
    for step in steps:
        sew_step(progress, step)
    if progress.result is None:
        raise Fault(Step(0, "", ""), "", "there are no steps")
    last = title_of(all_steps[-1])
    if last.total != 1:
        raise Fault(all_steps[-1], "", "the last step makes more than one")
    progress.stock.made[last.names[0]] -= 1
    if over := progress.stock.left_over():
        raise Fault(all_steps[-1], "", f"left over: {'; '.join(over)}")
    return progress.result


def sew_step(progress: Progress, step: Step) -> None:
    """One step more.

    Errors: Fault.
    """
    sentence = step.title
    try:
        bench = Bench(title_of(step), progress.stock, step.number, progress.said, progress.takes)
        progress.said[step.number] = sentences_of(step.text)
        for sentence in progress.said[step.number]:
            follow(bench, sentence)
        sentence = "(at the end)"
        progress.takes[step.number] = bench.for_one
        progress.result = _finish(bench)
    except Refused as fault:
        raise Fault(step, sentence, str(fault)) from None


def _finish(bench: Bench) -> Cloth:
    """Put the result with the stock: one piece of cloth, pressed and measured, in one way only."""
    results = _as_large_as_said(bench, list(_results(bench)))
    least = min(tilted for _, tilted in results)
    # What is laid with no word of how it lies has an edge level, if that will do.
    different = list(ways(cloth for cloth, tilted in results if tilted == least))
    if len(different) != 1:
        raise Refused(f"{len(different)} different things can be made of these words")
    cloth = different[0]
    if "partial seam" not in bench.title.rest and bench.title.finished and is_open(cloth):
        raise Refused("a seam is still open")
    if not bench.measured and "partial seam" not in bench.title.rest:
        raise Refused("no measure says how large it is")
    for kind, count, _ in bench.taken:
        bench.stock.take(kind, count)
    names = bench.title.names
    if bench.method.get("sorted"):
        _give_kinds(bench)
        return cloth
    if bench.title.count % len(names):
        raise Refused("rows and their number do not agree")
    for name in names:
        own = _pressed(cloth, bench.pressed_by_row.get(name, {}))
        bench.stock.give(name, own, bench.title.count // len(names))
    return cloth


def _as_large_as_said(bench: Bench, results: list[Result]) -> list[Result]:
    """Those that are as large as the title says: segments of rounded strips as they are cut, or as they are drawn."""
    drawn = [(strips.as_drawn(bench, cloth), tilted) for cloth, tilted in results]
    try:
        return of_size(bench, drawn)
    except Refused:
        of_size(bench, results)
        return drawn


Result = tuple[Cloth, int]
"""What may have been made, and how many things were laid without a level edge for it."""


def of_size(bench: Bench, results: list[Result]) -> list[Result]:
    """Those that are as large as the title says.

    Errors: Refused where none is.
    """
    wanted = bench.title.finished
    if wanted is None or bench.title.rest:
        return results
    room = EIGHTH if bench.title.about or bench.trimmed else HAIR
    fitting = [each for each in results if any(_is_so_large(size, wanted, room) for size in sizes_of(each[0]))]
    if not fitting:
        raise Refused("the title says another size")
    return fitting


def sizes_of(cloth: Cloth) -> list[tuple[float, float]]:
    """Width and height in every way that it may lie."""
    turns = [1 + 0j, *turns_of(cloth), *turns_of(cloth, on_point=True)]
    return [cloth.moved(turn).size() for turn in turns]


def _is_so_large(size: tuple[float, float], wanted: tuple[float, float], room: float) -> bool:
    return abs(size[0] - wanted[0]) < room and abs(size[1] - wanted[1]) < room


def _give_kinds(bench: Bench) -> None:
    """Units and their mirror images."""
    kept, other = bench.method["sorted"]
    (name,) = bench.title.names
    bench.stock.give(name, _pressed(kept, {}), bench.title.count)
    if other:
        bench.stock.give(f"reversed {name}", _pressed(other, {}), bench.title.mirrored)


def _results(bench: Bench) -> Iterator[Result]:
    """What is on the table in every way of following the words."""
    for table in bench.tables:
        if bench.method.get("sorted"):
            if table.waiting:
                raise Refused("a seam is not pressed")
            yield bench.method["sorted"][0], 0
            continue
        if len(table.bodies) != 1:
            raise Refused(f"{len(table.bodies)} things are left on the table")
        if table.waiting:
            raise Refused("a seam is not pressed")
        for cloth in table.bodies.values():
            yield cloth, table.tilted


def _pressed(cloth: Cloth, sides: dict[int, str]) -> Cloth:
    """A result as it goes on: its seams keep how they were pressed."""
    ends = tuple(replace(end, pressed=sides.get(end.seam, end.pressed)) for end in cloth.ends)
    edges = (replace(edge, tags=frozenset(tag for tag in edge.tags if tag[0] != "#")) for edge in cloth.edges)
    return replace(cloth, edges=tuple(edges), ends=tuple(replace(end, seam=-abs(end.seam)) for end in ends))
