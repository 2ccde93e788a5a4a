"""A judge of plans for cutting cloth that shares no code with the product: it reads a plan and follows every cut.

It takes the plan apart with cuts that go right through: strips off the cloth, sections off a strip, pieces off a
section. Whatever is not cut free in this way, is not inside its own cloth, overlaps, is turned though it may not be,
is missing or too many, raises AssertionError.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from blockdsl.cutting.cloth import ClothPiece, ClothPlan, SheetPlan, Strip, StripSection
from blockdsl.geometry.fraction import Fraction

Found = Counter[tuple[str, Fraction, Fraction, bool]]
"""Pieces cut free: key, width and height as they lie, turned or not."""
NOTHING = Fraction(0)


def check_cloth(plan: ClothPlan, pieces: Sequence[ClothPiece], usable_width: Fraction, stages: int) -> None:
    """The plan gives each piece just once, by cuts that can be made, from the length that it says."""
    found: Found = Counter()
    length = NOTHING
    for panel in plan.panels:
        assert panel.times >= 1
        inside = cut_sections(panel.columns, panel.height, panel.width, 99)
        assert NOTHING < panel.width <= usable_width
        beside = cut_strips(panel.strips, usable_width - panel.width, panel.height, stages)
        add(found, inside, panel.times)
        add(found, beside, panel.times)
        length += panel.height * panel.times
    below = sum((strip.height * strip.times for strip in plan.strips), NOTHING)
    add(found, cut_strips(plan.strips, usable_width, below, stages), 1)
    assert plan.length == length + below, "the length is that of the strips"
    assert plan.bound <= plan.length
    assert_all_there(found, pieces)
    asked_lengthwise(plan, pieces)


def check_sheets(plan: SheetPlan, pieces: Sequence[ClothPiece], width: Fraction, length: Fraction) -> None:
    """The sheets give each piece just once, and none holds more than fits."""
    found: Found = Counter()
    for sheet in plan.sheets:
        taken = sum((strip.height * strip.times for strip in sheet.strips), NOTHING)
        across, down = (length, width) if sheet.along else (width, length)
        assert sheet.left == down - taken >= 0
        cut = cut_strips(sheet.strips, across, down, 2)
        if sheet.along:  # the sheet lies turned a quarter; on the cloth, what was across is along
            cut = Counter({(key, high, wide, turned): number for (key, wide, high, turned), number in cut.items()})
        add(found, cut, sheet.times)
    assert plan.count == sum(sheet.times for sheet in plan.sheets) >= plan.bound
    assert_all_there(found, pieces)


def cut_strips(strips: Sequence[Strip], width: Fraction, length: Fraction, stages: int) -> Found:
    """Cut strips off a piece of cloth, then each into its sections."""
    found: Found = Counter()
    taken = NOTHING
    for strip in strips:
        assert strip.width == width, "a strip goes across all of its cloth"
        assert strip.times >= 1
        taken += strip.height * strip.times
        add(found, cut_sections(strip.sections, strip.height, width, 1 if stages == 2 else 99), strip.times)
    assert taken <= length, "the strips fit the length"
    heights = [strip.height for strip in strips]
    assert heights == sorted(heights, reverse=True), "the highest strip is cut first"
    return found


def cut_sections(sections: Sequence[StripSection], height: Fraction, width: Fraction, stacked: int) -> Found:
    """Cut a strip across, then each section along the strip; trim what is lower or narrower."""
    found: Found = Counter()
    x = NOTHING
    assert sections, "no strip is cut for nothing"
    for section in sections:
        assert section.x == x, "each section begins where the one before it ended"
        x += section.width
        assert 1 <= len(section.pieces) <= stacked
        y = NOTHING
        for piece in section.pieces:
            assert (piece.x, piece.y) == (section.x, y), "each piece begins where the one above it ended"
            assert NOTHING < piece.width <= section.width
            assert piece.height > 0
            y += piece.height
            found[piece.key, piece.width, piece.height, piece.turned] += 1
        assert y <= height, "a stack is not higher than its strip"
        assert section.width == max(piece.width for piece in section.pieces)
    assert x <= width, "the sections fit the strip"
    return found


def add(found: Found, more: Found, times: int) -> None:
    """Count what is cut some times over."""
    for piece, count in more.items():
        found[piece] += count * times


def assert_all_there(found: Found, pieces: Iterable[ClothPiece]) -> None:
    """Each piece just once, in its size, turned only where it may be."""
    wanted: Counter[tuple[str, Fraction, Fraction]] = Counter()
    for piece in pieces:
        wanted[piece.key, piece.width, piece.height] += piece.count
    may_turn = {(piece.key, piece.width, piece.height) for piece in pieces if piece.may_turn}
    got: Counter[tuple[str, Fraction, Fraction]] = Counter()
    for (key, width, height, turned), count in found.items():
        own = (key, height, width) if turned else (key, width, height)
        assert not turned or own in may_turn, f"{key} may not turn"
        got[own] += count
    assert got == +wanted


def asked_lengthwise(plan: ClothPlan, pieces: Sequence[ClothPiece]) -> None:
    """What is asked to be lengthwise lies along the cloth, in the panels."""
    long = {piece.key for piece in pieces if piece.lengthwise}
    across = {piece.key for strip in plan.strips for section in strip.sections for piece in section.pieces}
    assert not long & across
    for panel in plan.panels:
        for piece in (piece for column in panel.columns for piece in column.pieces):
            may_turn = any(one.may_turn for one in pieces if one.key == piece.key)
            assert piece.height >= piece.width or not may_turn
