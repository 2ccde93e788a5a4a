"""The last step of a block with appliqué: pieces traced and cut, folded, laid on the pieced ground and sewn down.

It is told as the steps of a method are, each thing to do with a picture of its own; the pictures are of this very
block, cloth on cloth in the order in which it lies.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Final

from blockdsl.facts.blockrecord import BlockRecord, TemplateFacts
from blockdsl.facts.stepfacts import GridPlace, JoinFacts, LessonStep, StepFacts, join_of
from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.geometry.arc import Bend, Curved, cosine, sine, sweep
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box, cross, step
from blockdsl.sewing.message import Length, Names
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.techniques.scene import Item, SceneCloth, ScenePaper, SceneWords, lesson_step, show

METHOD: Final = "applique"
_LETTERS: Final = 16
"""The width of a block over the radius of the grounds of its letters."""
_GROUND: Final = PartName("block")
_MADE: Final = PartName("block with its appliqué")
_MOST_LAID: Final = 24
"""Pieces that are named one after the other; of more the picture alone shows the order."""


def applique_steps(block: BlockRecord, before: Sequence[StepFacts]) -> tuple[StepFacts, ...]:
    """The step after all others; none without appliqué, or where the ground is too large for a list of steps.

    Working from the lowest piece up, a blind stitch along folds and a close one round raw edges: common practice, no
    source.
    """
    if not block.appliques or (not before and len(block.placed) > 1):
        return ()
    lesson = tuple(_lesson(block))
    return (
        StepFacts(
            number=len(before) + 1,
            makes=_MADE.notation,
            names={part.notation: part for part in (_MADE, _GROUND)},
            count=1,
            spare=0,
            method=METHOD,
            joins=tuple(_joins(block, before)),
            seam="straight",
            finished=block.finished,
            unfinished=block.unfinished,
            cells=(GridPlace(1, 1, len(block.columns), len(block.heights)),),
            hands=(),
            size=block.finished,
            lesson=lesson,
            fabrics=block.fabrics,
        ),
    )


def _joins(block: BlockRecord, before: Sequence[StepFacts]) -> Iterator[JoinFacts]:
    """The pieced ground, and the pieces by letter and fabric."""
    if before:
        yield join_of(_GROUND.notation, 1, before[-1].number)
    else:
        (ground,) = block.placed
        yield join_of(ground.label, 1, 0, ground.fabric)
    labels = {piece.label for piece in block.appliques}
    for template in block.templates:
        for fabric, count in template.uses.items() if template.label in labels else ():
            yield join_of(template.label, count, 0, fabric)


# --- what to do ------------------------------------------------------------------------------------


def _lesson(block: BlockRecord) -> Iterator[LessonStep]:
    labels = dict.fromkeys(piece.label for piece in block.appliques)
    under = {piece.label: piece.turn_under for piece in block.appliques}
    turned, raw = [each for each in labels if under[each]], [each for each in labels if not under[each]]
    templates = {template.label: template for template in block.templates}
    if turned:
        shown = templates[turned[0]]
        widths = {under[label] for label in turned}
        letters = Names(tuple(turned))
        yield lesson_step(
            "applique-block-cut",
            show("applique-piece-cut", *_cut_out(shown, block), letter=shown.label),
            letters=letters,
            outside="one" if len(widths) == 1 else "several",
            width=Length(widths.pop()),
        )
        yield lesson_step(
            "applique-block-turn", show("applique-piece-turned", _piece(shown, block), letter=shown.label)
        )
    if raw:
        shown = templates[raw[0]]
        yield lesson_step(
            "applique-block-raw",
            show("applique-piece-raw", _piece(shown, block), letter=shown.label),
            letters=Names(tuple(raw)),
        )
    runs = tuple(label for label, _ in groupby(piece.label for piece in block.appliques))
    if len(runs) == 1:
        order = "one" if len(block.appliques) == 1 else "alike"
    else:
        order = "listed" if len(runs) <= _MOST_LAID else "many"
    ground, laid = tuple(_ground(block)), tuple(_laid(block))
    yield lesson_step(
        "applique-block-lay",
        show("applique-block-letters", *ground, *laid, *_letters(block)),
        order=order,
        letters=Names(runs, in_order=True),
    )
    edges = "both" if turned and raw else "turned" if turned else "raw"
    yield lesson_step("applique-block-sew", show("applique-block", *ground, *laid), edges=edges)


# --- pictures --------------------------------------------------------------------------------------


def _roles(block: BlockRecord) -> dict[str, int]:
    return {fabric.name: place for place, fabric in enumerate(block.fabrics)}


def _cut_out(template: TemplateFacts, block: BlockRecord) -> Iterator[Item]:
    """The piece as it is cut, with the line along which it is folded."""
    role = _roles(block)[next(iter(template.uses))]
    yield SceneCloth(role, template.cutting)
    yield SceneCloth(role, template.sewing)


def _piece(template: TemplateFacts, block: BlockRecord) -> SceneCloth:
    return SceneCloth(_roles(block)[next(iter(template.uses))], template.sewing)


def _ground(block: BlockRecord) -> Iterator[Item]:
    roles = _roles(block)
    for patch in block.placed:
        shown = patch.shown
        outline = _stepped(shown) if isinstance(shown, Curved) else shown
        yield SceneCloth(roles[patch.fabric], outline)


def _laid(block: BlockRecord) -> Iterator[Item]:
    roles = _roles(block)
    for piece in block.appliques:
        yield SceneCloth(roles[piece.fabric], piece.outline)


def _letters(block: BlockRecord) -> Iterator[Item]:
    """Each piece's letter, unless a later one lies over the place."""
    pieces = block.appliques
    if len(pieces) > _MOST_LAID:
        return
    for number, piece in enumerate(pieces):
        place = _middle(piece.outline)
        if not any(_covers(later.outline, place) for later in pieces[number + 1 :]):
            yield ScenePaper(_disc(place, block.finished[0] / _LETTERS))
            yield SceneWords(place, piece.label)


def _disc(place: Point, radius: Exact) -> Polygon:
    """A ground for a letter, light on any cloth."""
    quarter = [(radius * sine(turn), -radius * cosine(turn)) for turn in range(0, 6, 2)]
    turned = list(quarter)
    for _ in range(3):
        quarter = [(-y, x) for x, y in quarter]
        turned += quarter
    return tuple(Point(place.x + x, place.y + y) for x, y in turned)


def _middle(outline: Polygon) -> Point:
    left, top, right, bottom = bounding_box(outline)
    return Point((left + right) / 2, (top + bottom) / 2)


def _covers(outline: Polygon, place: Point) -> bool:
    """Whether the place lies within the box round the piece: near enough to keep letters apart."""
    left, top, right, bottom = bounding_box(outline)
    return left <= place.x <= right and top <= place.y <= bottom


def _stepped(curved: Curved) -> Polygon:
    """A corner at every fifteen degrees of its arcs: small pictures show no more."""
    places: list[Point] = []
    for start, end, bend in curved.sides():
        places.append(start)
        if bend is not None:
            places += _arc(start, end, bend)
    return tuple(places)


def _arc(start: Point, end: Point, bend: Bend) -> Iterator[Point]:
    out, back = step(bend.centre, start), step(bend.centre, end)
    cos, sin = cosine(1), sine(1) if cross(out, back) > Fraction(0) else -sine(1)
    x, y = out.x, out.y
    for _ in range(sweep(start, end, bend) - 1):
        x, y = cos * x - sin * y, sin * x + cos * y
        yield Point(bend.centre.x + x, bend.centre.y + y)
