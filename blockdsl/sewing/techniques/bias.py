"""Continuous bias: a square of fabric becomes one long bias strip. Roles 0 and 1 are its two halves, of one fabric."""

from __future__ import annotations

from typing import Final

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.techniques.cloth import ZERO, at, box, cutting_pair, outline, rising
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Item, LessonStep, Line, SceneCloth, SceneWords, lesson_step, show

_STRIPS: Final = 4
"""How many strips wide the piece is in the pictures."""


def from_a_square(measures: Measures) -> tuple[LessonStep, ...]:
    """Cut the square, sew the triangles, mark, join to a tube one line aside, cut, fold.

    The square is cut from its lower left to its upper right corner; the upper half is sewn below the lower one, so
    that what was the diagonal lies outside, twice, and straight edges lie at the left and the right.
    """
    s, seam = measures.width, measures.seam
    square = SceneCloth(0, box(s, s))
    lower = SceneCloth(1, outline((s, 0), (s, s), (0, s)))
    upper = SceneCloth(0, outline((0, s), (s, s), (0, 2 * s)))
    laid = SceneCloth(0, outline((0, 0), (s, s), (0, s)), "wrong")
    edge = Line("sewn", at(ZERO, s - seam), at(s, s - seam))
    piece: tuple[Item, ...] = (lower, upper)
    lines = tuple(_line(s, Fraction(place, _STRIPS)) for place in range(1, _STRIPS))
    return (
        lesson_step("bias-cut", *cutting_pair((square,), rising("cut", s), "cut-once", (-1, -1))),
        lesson_step("bias-sew", show("bias-triangles", lower, laid, edge), seam=measures.allowance),
        lesson_step("bias-mark", show("bias-lines", *piece, *lines, turn=1)),
        lesson_step("bias-tube", show("bias-matched", *piece, *lines, *_numbers(s), turn=1), seam=measures.allowance),
        lesson_step("bias-strip", show("bias-cutting", *_tube(s))),
        lesson_step("bias-fold", show("bias-folded", *_folded(s))),
    )


def _line(s: Exact, share: Fraction) -> Line:
    """Parallel to the bias edges, which run from the lower left to the upper right, at a share of the way down."""
    return Line("drawn", at(ZERO, s + s * share), at(s, s * share))


def _numbers(s: Exact) -> tuple[Item, ...]:
    """The ends of lines that meet: those of the left edge one line further than those of the right."""
    band, out = s / _STRIPS, s / 10
    left = [SceneWords(at(-out, s + band * (place - 1)), str(place)) for place in range(1, _STRIPS + 1)]
    right = [SceneWords(at(s + out, band * place), str(place)) for place in range(1, _STRIPS + 1)]
    return (*left, *right)


def _tube(s: Exact) -> tuple[Item, ...]:
    """The tube, flat, its lines one long line around it; cut from one end on."""
    band = s / _STRIPS
    tube = SceneCloth(0, outline((0, band / 2), (s, 0), (s, s), (0, s + band / 2)))
    lines = [Line("drawn", at(ZERO, band * place + band / 2), at(s, band * place)) for place in range(1, _STRIPS)]
    cut = Line("cut", at(ZERO, band + band / 2), at(s, band))
    return (tube, *lines, cut)


def _folded(s: Exact) -> tuple[Item, ...]:
    """The strip, its left part folded lengthwise."""
    band = s / _STRIPS
    strip = SceneCloth(0, box(s, band, s / 2), "wrong")
    half = SceneCloth(0, box(s / 2, band / 2, ZERO, band / 2))
    return (strip, half)
