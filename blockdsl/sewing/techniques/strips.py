"""Strip sets: long strips sewn side by side, pressed, cut across into segments."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.message import Length, SizeArgument
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    box,
    cutting_pair,
    dimensions,
    moved,
    outline,
    pressed,
)
from blockdsl.sewing.techniques.halves import darker
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import (
    Item,
    LessonStep,
    Line,
    Measured,
    SceneCloth,
    ScenePicture,
    lesson_step,
    show,
)


def _bands(measures: Measures, roles: Sequence[int], band: Exact, length: Exact) -> tuple[SceneCloth, ...]:
    """The set pressed open: the outer strips keep their allowance at the outside."""
    cloths = []
    y: Exact = ZERO
    for place, role in enumerate(roles):
        outer = (place == 0) + (place == len(roles) - 1)
        height = band + outer * measures.seam
        cloths.append(SceneCloth(role, box(length, height, ZERO, y)))
        y = y + height
    return tuple(cloths)


def presses_down(measures: Measures, roles: Sequence[int]) -> tuple[bool, ...]:
    """For each seam of a set whether it is pressed down the picture: toward the darker of its two strips."""
    return tuple(darker(measures, first, second) == second for first, second in pairwise(roles))


def sewn_pair(measures: Measures, roles: Sequence[int], band: Exact) -> ScenePicture:
    """Two strips right sides together, a corner folded back to show the layers."""
    cut, seam = band + 2 * measures.seam, measures.seam
    shown, fold = cut * 4, cut * Fraction(3, 5)
    return show(
        "strips-sewn",
        SceneCloth(roles[0], box(shown, cut)),
        SceneCloth(roles[1], outline((0, 0), (shown, 0), (shown, cut - fold), (shown - fold, cut), (0, cut)), "wrong"),
        SceneCloth(roles[1], outline((shown, cut - fold), (shown - fold, cut), (shown - fold, cut - fold))),
        Line("sewn", at(ZERO, seam), at(shown, seam)),
    )


def pressed_set(
    measures: Measures, roles: Sequence[int], band: Exact, segment: Exact, down: Sequence[bool]
) -> ScenePicture:
    """The set pressed; arrows show which way, or that its seams are open."""
    length = _length(measures, band, segment)
    arrows: list[Item] = []
    for place, is_down in enumerate(down):
        x, y = length * Fraction(1 + place % 2, 3), measures.seam + band * (place + 1)
        toward = at(x, y + band if is_down else y - band)
        arrows += pressed((at(x, y), at(x, y)), toward, Fraction(2, 5), open_seams=measures.open_seams)
    return show("strip-set", *_bands(measures, roles, band, length), *arrows)


def cut_across(
    measures: Measures, roles: Sequence[int], band: Exact, segment: Exact
) -> tuple[ScenePicture, ScenePicture]:
    """The set cut across into segments."""
    length, whole = _length(measures, band, segment), len(roles) * band + 2 * measures.seam
    across = Line("cut", at(segment, whole), at(segment, ZERO))
    told = Measured(at(ZERO, whole), at(segment, whole), segment)
    later = tuple(
        Line("drawn", at(segment * n, ZERO), at(segment * n, whole)) for n in range(2, int(float(length / segment)) + 1)
    )
    return cutting_pair((*_bands(measures, roles, band, length), *later, told), across, "segments-cut", (0, 4))


def _length(measures: Measures, band: Exact, segment: Exact) -> Exact:
    """How much of a set is shown."""
    return max(segment * Fraction(9, 4), (band + 2 * measures.seam) * 5)


def _start(measures: Measures, roles: Sequence[int], band: Exact, segment: Exact) -> tuple[LessonStep, ...]:
    """Cut, sew, press and cut across."""
    cut = band + 2 * measures.seam
    gap, shown = cut / 3, cut * 4
    strips: list[Item] = []
    for place, role in enumerate(roles[:2]):
        y = place * (cut + gap)
        strips += [SceneCloth(role, box(shown, cut, ZERO, y)), Measured(at(ZERO, y), at(ZERO, y + cut), cut)]
    opened = pressed_set(measures, roles, band, segment, presses_down(measures, roles))
    return (
        lesson_step("strips-cut", show("strips", *strips), width=Length(cut)),
        lesson_step("strips-sew", sewn_pair(measures, roles, band), seam=measures.allowance),
        lesson_step("strips-press", opened, press="open" if measures.open_seams else "side"),
        lesson_step(
            "strips-segments",
            *cut_across(measures, roles, band, segment),
            width=Length(segment),
            first=Length(measures.squared_up[0]),
            again=Length(measures.squared_up[1]),
        ),
    )


def rails(measures: Measures) -> tuple[LessonStep, ...]:
    """Each segment is a unit: equal strips one beside the other."""
    count = measures.counts[0]
    roles = tuple(place if place in measures.cuts else min(measures.cuts) for place in range(count))
    lying = len(measures.counts) > 1  # bars stand side by side
    band, segment = (measures.width / count, measures.height) if lying else (measures.height / count, measures.width)
    sewn = segment + 2 * measures.seam
    unit = _bands(measures, roles, band, sewn)
    whole = count * band + 2 * measures.seam
    segment_picture = show(
        "segment", *unit, *dimensions(sewn, whole), turn=2 if lying else 0, size=SizeArgument(sewn, whole)
    )
    return (
        *_start(measures, roles, band, sewn),
        lesson_step("rails-measure", segment_picture, size=measures.size),
    )


def checker(measures: Measures) -> tuple[LessonStep, ...]:
    """Segments joined, every other one turned about."""
    down, across = measures.counts[:2]
    roles = tuple(place % 2 for place in range(across))
    band, segment = measures.width / across, measures.height / down
    cut = segment + 2 * measures.seam
    odd = across % 2 == 1
    meet = "match" if measures.open_seams else "nest"
    return (
        *_start(measures, roles, band, cut),
        lesson_step("checker-lay", laid_out_segments(measures), sets=2 if odd else 1),
        lesson_step(
            "checker-join",
            joined_pair(measures),
            seam=measures.allowance,
            meet=meet,
        ),
        lesson_step("checker-measure", checker_checked(measures), size=measures.size),
    )


def _grid(measures: Measures) -> tuple[tuple[int, ...], Exact, Exact]:
    """Of a checkerboard the roles of its first row, the finished width of a patch and its height."""
    down, across = measures.counts[:2]
    return tuple(place % 2 for place in range(across)), measures.width / across, measures.height / down


def laid_out_segments(measures: Measures) -> ScenePicture:
    """Segments as they lie, the fabrics in turn."""
    roles, band, segment = _grid(measures)
    cut = segment + 2 * measures.seam
    apart: list[Item] = []
    for row in range(min(measures.counts[0], 3)):
        turned = tuple(1 - role for role in roles) if row % 2 else roles
        apart += moved(_standing(measures, turned, band, segment), ZERO, row * (cut + cut / 3))
    return show("segments-laid", *apart)


def joined_pair(measures: Measures) -> ScenePicture:
    """Two segments right sides together, sewn."""
    return show("segments-sewn", *_joining(measures, *_grid(measures)))


def checker_checked(measures: Measures) -> ScenePicture:
    """The unit with what it should measure."""
    joined = _joined(measures, *_grid(measures), measures.counts[0])
    return show("checker-measured", *joined, *dimensions(*measures.unfinished), size=measures.size)


def _standing(measures: Measures, roles: Sequence[int], band: Exact, segment: Exact) -> tuple[SceneCloth, ...]:
    """A segment as a row of the unit, with its allowance all round."""
    cloths = []
    x: Exact = ZERO
    height = segment + 2 * measures.seam
    for place, role in enumerate(roles):
        outer = (place == 0) + (place == len(roles) - 1)
        width = band + outer * measures.seam
        cloths.append(SceneCloth(role, box(width, height, x)))
        x = x + width
    return tuple(cloths)


def _joining(measures: Measures, roles: Sequence[int], band: Exact, segment: Exact) -> tuple[Item, ...]:
    """Two rows right sides together, seam along the top, the lower right corner of the upper one folded back."""
    under = _standing(measures, roles, band, segment)
    over = _standing(measures, [1 - role for role in roles], band, segment)
    height, width = segment + 2 * measures.seam, len(roles) * band + 2 * measures.seam
    fold = min(band, segment) * Fraction(1, 2)
    last = over[-1]
    left = last.outline[0].x
    kept = outline((left, 0), (width, 0), (width, height - fold), (width - fold, height), (left, height))
    flap = outline((width, height - fold), (width - fold, height), (width - fold, height - fold))
    upper = [SceneCloth(cloth.role, cloth.outline, "wrong") for cloth in over[:-1]]
    folded = (SceneCloth(last.role, kept, "wrong"), SceneCloth(last.role, flap))
    return (*under, *upper, *folded, Line("sewn", at(ZERO, measures.seam), at(width, measures.seam)))


def _joined(measures: Measures, roles: Sequence[int], band: Exact, segment: Exact, down: int) -> tuple[SceneCloth, ...]:
    cloths: list[SceneCloth] = []
    y: Exact = ZERO
    for row in range(down):
        height = segment + ((row == 0) + (row == down - 1)) * measures.seam
        x: Exact = ZERO
        for place in range(len(roles)):
            width = band + ((place == 0) + (place == len(roles) - 1)) * measures.seam
            cloths.append(SceneCloth((row + place) % 2, box(width, height, x, y)))
            x = x + width
        y = y + height
    return tuple(cloths)
