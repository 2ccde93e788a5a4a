"""Units that a method makes as a whole: batches, flips, strip sets, papers."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from math import atan2, ceil, degrees
from typing import Any

from shapely import affinity
from shapely.geometry import box

from tests.outside.virtual import batches, starsets
from tests.outside.virtual.cloth import (
    NEAR,
    Fault,
    Work,
    corner_to_corner,
    covers,
    directions,
    fitted,
    grown,
    joined,
    sewn,
)
from tests.outside.virtual.flips import flipped, flips_and_base
from tests.outside.virtual.looks import looks_like, out_of_place
from tests.outside.virtual.piles import Piles, shorter
from tests.outside.virtual.plan import Area, Hand, Line, Patch, Plan, Step
from tests.outside.virtual.stripsets import bands, cut_segments, on_ruler, segments_from

ROOM = {True: 0.75, False: 0.25}
"""What a piece for a paper has beyond the seam allowance, metric or not (common practice, no source)."""
Try = Callable[[dict[Line, Line]], list[Work]]
"""Makes one batch, with other lines in place of some; raises a Fault, or gives works that may not match."""


@dataclass(frozen=True, slots=True)
class Made:
    """A work for each hand, and how many pieces of cloth were taken, by letter and fabric."""

    works: list[Work]
    taken: Counter[tuple[str, int, str]]


def make_by_method(step: Step, plan: Plan, piles: Piles) -> Made:
    before = dict(piles.left)
    maker = {"stitch and flip": _flip, "strip set": _strip_set, "foundation": _papers}.get(step.method, _batch)
    works = maker(step, plan, piles)
    taken: Counter[tuple[str, int, str]] = Counter()
    for line, count in before.items():
        if count != piles.left[line]:
            taken[line.label, 0, line.fabric] += count - piles.left[line]
    return Made(works, taken)


def _purpose(step: Step) -> str:
    return f"{step.method} {step.unit}"


def _size(hand: Hand) -> tuple[float, float]:
    left, top, right, bottom = joined(patch.shape for patch in hand.picture).bounds
    return round(right - left, 6), round(bottom - top, 6)


# --- batches ---------------------------------------------------------------------------------------


def _batch(step: Step, plan: Plan, piles: Piles) -> list[Work]:
    used: Counter[Line] = Counter()
    matched = _sort_out(step, plan, _one_batch(step, plan, piles, {}, used))
    works = [next((work for work in found if work is not None), None) for found in matched]
    if any(work is None for work in works):
        raise Fault(f"step {step.number} ({step.makes}): the squares do not give what the picture shows")
    each = [sum(work is not None for work in found) for found in matched]
    own_mirror = len(step.hands) > 1 and each[0] == each[1] == len(matched[0])
    if own_mirror:
        raise Fault(f"step {step.number} shows a unit and the same again as its mirror image")
    times = max(ceil(hand.count / count) for hand, count in zip(step.hands, each, strict=True))
    for line, count in used.items():
        piles.take(line, count * times)
        piles.units[line] += times * len(matched[0])
        piles.needed[line] += step.count
        if _still_fits(step, plan, piles, {line: _smaller_square(line, plan.measure)}):
            raise Fault(f"{line.label} ({line.fabric}) is cut larger than it need be: {line.cut}")
    left = times * len(matched[0]) - step.count
    # A step of two hands tells what is left over of the first hand alone.
    if step.spare != left:
        raise Fault(f"step {step.number} tells {step.spare} to spare, {left} are")
    return [work for work in works if work is not None]


def batch_of(step: Step, plan: Plan) -> tuple[Counter[Line], list[int]]:
    """The squares that one batch of a step takes, and how many units of each hand come out of it."""
    used: Counter[Line] = Counter()
    found = _sort_out(step, plan, _one_batch(step, plan, Piles(plan), {}, used))
    return used, [sum(work is not None for work in hand) for hand in found]


def _still_fits(step: Step, plan: Plan, piles: Piles, instead: dict[Line, Line]) -> bool:
    found = _sort_out(step, plan, _one_batch(step, plan, piles, instead, Counter()))
    return all(any(work is not None for work in hand) for hand in found)


def _one_batch(
    step: Step, plan: Plan, piles: Piles, instead: dict[Line, Line], used: Counter[Line]
) -> list[list[Work]]:
    """What may come out of one batch, with the pieces that it takes counted."""
    method = batches.METHODS.get((step.method, step.shape))
    if method is None:
        raise Fault(f"nobody makes {step.shape} as {step.method}")

    def take(patch: Patch) -> float:
        line = piles.line_for(patch, _purpose(step))
        if line.cut[0] != line.cut[1] or line.subcut != "none":
            raise Fault(f"{line.label} ({line.fabric}) is no whole square")
        used[line] += 1
        return instead.get(line, line).cut[0]

    height = min(_size(step.hands[0]))
    return method(batches.Squares(take, plan.seam, step.hands[0].picture, height))


def _sort_out(step: Step, plan: Plan, ways: list[list[Work]]) -> list[list[Work | None]]:
    """For each hand what of the batch is one, as drawn; of several ways that which looks like the picture."""
    for works in ways:
        found = [[_as_pictured(work, hand, plan, step.shape) for work in works] for hand in step.hands]
        if all(any(work is not None for work in hand) for hand in found):
            return found
    return [[None] for _ in step.hands]


def _as_pictured(work: Work, hand: Hand, plan: Plan, shape: str) -> Work | None:
    width, height = _size(hand)
    for turn in batches.turnings(work):
        laid = batches.as_drawn(turn, width, height)
        if not looks_like(laid, hand.picture, 0) and covers(laid.cloth, _with_trim(hand, plan, shape)):
            return laid
    return None


def _with_trim(hand: Hand, plan: Plan, shape: str) -> Any:
    """What the unit must hold before it is trimmed: geese from their tip down and to the sides, squares all round."""
    width, height = _size(hand)
    left, top, right, bottom = -plan.seam, -plan.seam, width + plan.seam, height + plan.seam
    more = plan.trim
    if shape != "geese":
        return box(left - more / 2, top - more / 2, right + more / 2, bottom + more / 2)
    goose = max(hand.picture, key=lambda patch: float(patch.shape.area)).shape.centroid
    x, y = goose.x - width / 2, goose.y - height / 2
    if abs(x) < abs(y):
        return box(left - more, top - more * (y < 0), right + more, bottom + more * (y > 0))
    return box(left - more * (x < 0), top - more, right + more * (x > 0), bottom + more)


# --- stitch and flip ---------------------------------------------------------------------------------


def _flip(step: Step, plan: Plan, piles: Piles) -> list[Work]:
    works = []
    for hand in step.hands:
        width, height = _size(hand)
        base, flips = flips_and_base(hand.picture, width, height)
        lines = [_line(piles, step, base, (width, height)), *(_line(piles, step, patch, None) for patch, _ in flips)]
        work = _one_flip(hand, plan, lines, base, flips)
        if work is None:
            raise Fault(f"step {step.number} ({step.makes}): the squares flipped do not give the picture")
        for place, line in enumerate(lines):
            for smaller in shorter(line, plan.measure) if place == 0 else [_smaller_square(line, plan.measure)]:
                trial = [smaller if place == at else each for at, each in enumerate(lines)]
                if _one_flip(hand, plan, trial, base, flips) is not None:
                    raise Fault(f"{line.label} ({line.fabric}) is cut larger than it need be: {line.cut}")
        for line in lines:
            piles.take(line, hand.count)
        for line in set(lines):
            piles.units[line] += hand.count
            piles.needed[line] += hand.count
        works.append(work)
    return works


def _smaller_square(line: Line, measure: float) -> Line:
    return replace(line, cut=(line.cut[0] - measure, line.cut[1] - measure))


def _line(piles: Piles, step: Step, patch: Patch, base: tuple[float, float] | None) -> Line:
    line = piles.line_for(patch, _purpose(step), is_base=base is not None)
    if line.subcut != "none":
        raise Fault(f"{line.label} ({line.fabric}) is cut up before it is flipped")
    return line


def _one_flip(hand: Hand, plan: Plan, lines: list[Line], base: Patch, flips: list[tuple[Patch, Any]]) -> Work | None:
    width, height = _size(hand)
    cloth = lines[0].cut if (width <= height) == (lines[0].cut[0] <= lines[0].cut[1]) else lines[0].cut[::-1]
    # Base and squares are larger by what is trimmed off afterwards, half of it on every side.
    room = 2 * plan.seam + plan.trim
    over = (cloth[0] - width - room, cloth[1] - height - room)
    squares, slack = [], []
    for (patch, corner), line in zip(flips, lines[1:], strict=True):
        squares.append((patch, corner, line.cut[0]))
        side = min(patch.shape.bounds[2] - patch.shape.bounds[0], patch.shape.bounds[3] - patch.shape.bounds[1])
        slack.append(line.cut[0] - side - room)
    if min(*over, *slack) < -NEAR:
        return None
    work = flipped(base, cloth, squares, (width / 2, height / 2))
    if not covers(work.cloth, grown(joined(patch.shape for patch in hand.picture), room / 2)):
        return None
    drift = (sum(over) / 2 + max(slack)) * batches.HALF
    # Neighbours flipped over each other hide as much of one another as they are too large.
    work = replace(work, drift=drift)
    return None if out_of_place(work, hand.picture)[1] else work


# --- strip sets ----------------------------------------------------------------------------------------


def _strip_set(step: Step, plan: Plan, piles: Piles) -> list[Work]:
    if step.shape == "star45":
        return [_star_from_strips(hand, step, plan, piles) for hand in step.hands]
    return [_from_strips(hand, step, plan, piles) for hand in step.hands]


def _from_strips(hand: Hand, step: Step, plan: Plan, piles: Piles) -> Work:
    """Of a checker that lies turned the segments stand upright; the pile shows which way they go."""
    faults = []
    for rows in bands(hand.picture, step.shape):
        patch = rows[0][0].shape.bounds
        along = patch[3] - patch[1] if _is_across(rows[0]) else patch[2] - patch[0]
        segment = on_ruler(along + 2 * plan.seam, plan.measure)
        left = {line: piles.left[line] for line in piles.lines(_purpose(step))}
        try:
            work = _rows(rows, plan, piles, step, segment)
            in_strip = partial(segments_from, segment=segment, squared=plan.squared)
            used = cut_segments(rows, hand.count, in_strip, left)
        except Fault as fault:
            faults.append(fault)
            continue
        for line, (strips, segments) in used.items():
            piles.take(line, strips)
            piles.units[line] += segments
            piles.needed[line] += segments
            if in_strip(line.cut[1]) == in_strip(line.cut[1] - plan.measure):
                raise Fault(f"the strips of {line.label} ({line.fabric}) are longer than need be: {line.cut}")
        return work
    raise faults[0]


def _star_from_strips(hand: Hand, step: Step, plan: Plan, piles: Piles) -> Work:
    points = starsets.rows_of_points(hand.picture)
    diamonds = {id(patch) for point in points for row in point for patch in row}
    strips = {line: piles.left[line] for line in piles.lines(_purpose(step)) if line.piece == "strip"}
    used = starsets.take_strips(points, hand.count, strips, plan.squared)
    for line, (count, segments) in used.items():
        piles.take(line, count)
        piles.units[line] += segments
        piles.needed[line] += segments
        in_strip = starsets.in_strip(line.cut[0], plan.squared)
        if in_strip(line.cut[1]) == in_strip(line.cut[1] - plan.measure):
            raise Fault(f"the strips of {line.label} ({line.fabric}) are longer than need be: {line.cut}")
    ground = [_ground(patch, step, plan, piles) for patch in hand.picture if id(patch) not in diamonds]
    for line, each in Counter(line for line, _ in ground).items():
        # a square cut twice corner to corner gives all four triangles
        piles.take(line, hand.count * (each if _is_square(line, hand) else each // 4))
        piles.units[line] += hand.count
        piles.needed[line] += hand.count

    def width_of(patch: Patch) -> float:
        return next(line.cut[0] for line in strips if (line.label, line.fabric) == (patch.label, patch.fabric))

    return starsets.star(points, [laid for _, laid in ground], width_of, plan.seam, plan.measure)


def _is_square(line: Line, hand: Hand) -> bool:
    """Whether the line is for the star's corner squares, not its triangles."""
    patch = next(patch for patch in hand.picture if (patch.label, patch.fabric) == (line.label, line.fabric))
    return len(patch.shape.exterior.coords) == 5


def _ground(patch: Patch, step: Step, plan: Plan, piles: Piles) -> tuple[Line, tuple[Work, Any]]:
    """A corner square, or a triangle of a square cut twice corner to corner, laid over its patch."""
    line = piles.line_for(patch, _purpose(step))
    subcut = "none" if len(patch.shape.exterior.coords) == 5 else "twice"
    if line.cut[0] != line.cut[1] or line.subcut != "none":
        raise Fault(f"{line.label} ({line.fabric}) is no whole square")
    laid = None
    for side, fits in ((line.cut[0] - plan.measure, False), (line.cut[0], True)):
        laid = fitted(corner_to_corner(side, subcut)[0], patch.shape, plan.seam)
        if (laid is not None) != fits:
            raise Fault(f"{line.label} ({line.fabric}) is cut the wrong size: {line.cut}")
    return line, (Work((replace(patch, shape=laid),)), patch.shape)


def _is_across(row: list[Patch]) -> bool:
    """Whether the bands lie side by side."""
    if len(row) == 1:
        return True
    one, other = row[0].shape.centroid, row[1].shape.centroid
    return bool(abs(one.x - other.x) > abs(one.y - other.y))


def _rows(rows: list[list[Patch]], plan: Plan, piles: Piles, step: Step, segment: float) -> Work:
    sewn_rows = []
    for row in rows:
        works = []
        for patch in row:
            line = piles.line_for(patch, _purpose(step))
            for width, fits in ((line.cut[0], True), (line.cut[0] - plan.measure, False)):
                laid = fitted(box(0, 0, width, segment), patch.shape, plan.seam)
                if (laid is not None) != fits:
                    raise Fault(f"the strips of {patch.label} ({patch.fabric}) are cut the wrong width: {line.cut[0]}")
                if laid is not None:
                    works.append((Work((Patch(patch.label, patch.fabric, laid),)), patch.shape))
        sewn_rows.append(_side_by_side(works, plan))
    return _side_by_side(sewn_rows, plan)[0]


def _side_by_side(works: list[tuple[Work, Any]], plan: Plan) -> tuple[Work, Any]:
    whole, lies = works[0]
    for other, theirs in works[1:]:
        whole = sewn(whole, other, _between(lies, theirs), plan.seam, (lies, theirs))
        lies = joined([lies, theirs])
    return whole, lies


def _between(one: Any, other: Any) -> tuple[tuple[float, float], tuple[float, float]]:
    """The edge that two boxes share, the second below or to the right of the first."""
    left, top, right, bottom = one.bounds
    if other.bounds[0] > right - NEAR:
        return (right, top), (right, bottom)
    return (left, bottom), (right, bottom)


# --- papers --------------------------------------------------------------------------------------------


def _papers(step: Step, plan: Plan, piles: Piles) -> list[Work]:
    """Pieces laid along their lines, an edge the allowance beyond each: enough on every side, and something over."""
    room = ROOM[plan.measure == 0.1] / 2
    (hand,), (letter,) = step.hands, step.sections
    areas = plan.papers[letter]
    if [(each.label, each.fabric) for each in areas] != [(each.label, each.fabric) for each in hand.picture]:
        raise Fault(f"step {step.number} shows other areas than paper {letter} has")
    faces = []
    for patch, area in zip(hand.picture, areas, strict=True):
        mine = [line for line in piles.lines(_purpose(step)) if area.number in line.areas]
        line = next((line for line in mine if (line.fabric, line.label) == (patch.fabric, patch.label)), None)
        if line is None or len(mine) > 1:
            raise Fault(f"nothing, or more than one thing, is cut for area {area.number}")
        if not _reaches(line, area, plan.seam, room):
            raise Fault(f"the piece for area {area.number} does not cover it: {line.cut}")
        piles.take(line, hand.count)
        others = joined(other.shape for other in hand.picture if other is not patch)
        faces.append(replace(patch, shape=grown(patch.shape, plan.seam).difference(others)))
    return [Work(tuple(faces))]


def _reaches(line: Line, area: Area, seam: float, room: float) -> bool:
    """Whether a piece covers all that is no further from its area than the allowance, with room for placing it.

    It lies with one edge along the area's line, as the paper says which; the first one any way along an edge.
    """
    if line.subcut == "once":
        laid = fitted(corner_to_corner(line.cut[0], "once")[0], area.shape, seam)
        return laid is not None and float(laid.area) > float(grown(area.shape, seam).area) * (1 + NEAR)
    if area.line is None:
        wanted = area.shape.buffer(seam + room)
        for angle in {0.0, *(round(angle, 6) for angle in directions(area.shape))}:
            left, top, right, bottom = affinity.rotate(wanted, -angle, origin=(0, 0)).bounds
            sides = sorted((right - left, bottom - top))
            if all(have > want - NEAR for have, want in zip(line.cut, sides, strict=True)):
                return True
        return False
    (ax, ay), (bx, by) = area.line
    along = affinity.translate(area.shape, -ax, -ay)
    along = affinity.rotate(along, -degrees(atan2(by - ay, bx - ax)), origin=(0, 0))
    left, top, right, bottom = along.bounds
    deep = max(abs(top), abs(bottom)) + 2 * seam + room
    wide = right - left + 2 * seam + 2 * room
    short, long = sorted(line.cut)
    have = (short, long) if area.edge == "short" else (long, short)
    return bool(have[0] > wide - NEAR and have[1] > deep - NEAR)
