"""From strips in measures to the plan that is cut: every piece in its place, under its own key."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence

from msgspec.structs import replace

from blockdsl.cutting.cloth.filling import Filled, Plan, Stack
from blockdsl.cutting.cloth.lengthwise import LongPanel
from blockdsl.cutting.cloth.pieces import ClothPiece, PieceSize, whole_sides
from blockdsl.cutting.cloth.plan import Panel, PlacedPiece, Strip, StripSection
from blockdsl.geometry.fraction import Fraction


class Layout:
    """Hands the caller's pieces out to the strips, one line of theirs after the other."""

    def __init__(self, pieces: Sequence[ClothPiece], sizes: Sequence[PieceSize], measure: Fraction) -> None:
        self._pieces, self._sizes, self._measure = pieces, sizes, measure
        self._left = [list(size.lines) for size in sizes]
        self._along = False

    def along(self, sizes: Sequence[PieceSize]) -> Layout:
        """The same pieces for cloth that lies turned a quarter, with its length across; both hand out of one heap."""
        other = Layout(self._pieces, sizes, self._measure)
        other._left, other._along = self._left, True
        return other

    def strips(self, plan: Mapping[Filled, int], width: Fraction) -> tuple[Strip, ...]:
        """The strips of a plan, the highest first, those that are cut alike together."""
        order = sorted(plan, key=lambda strip: (-strip.height, -plan[strip], strip.sections))
        return together(self._strip(strip, width) for strip in order for _ in range(plan[strip]))

    def _strip(self, strip: Filled, width: Fraction) -> Strip:
        stacks = [stack for stack, times in strip.sections for _ in range(times)]
        stacks.sort(key=lambda stack: (-self._height(stack), -self._width(stack), stack))
        sections, x = [], 0
        for stack in stacks:
            sections.append(self._section(stack, x))
            x += self._width(stack)
        return Strip(strip.height * self._measure, width, tuple(sections))

    def _height(self, stack: Stack) -> int:
        return sum(self._sizes[size].ways[way][0] for size, way in stack)

    def _width(self, stack: Stack) -> int:
        return max(self._sizes[size].ways[way][1] for size, way in stack)

    def _section(self, stack: Stack, x: int) -> StripSection:
        placed, y = [], 0
        for size, way in stack:
            high, wide = self._sizes[size].ways[way]
            placed.append(self._piece(self._take(size), (x, y), (wide, high)))
            y += high
        return StripSection(x * self._measure, self._width(stack) * self._measure, tuple(placed))

    def _take(self, size: int) -> ClothPiece:
        """The next piece of a size."""
        line, count = self._left[size][0]
        self._left[size][0:1] = [(line, count - 1)] if count > 1 else []
        return self._pieces[line]

    def _piece(self, piece: ClothPiece, at: tuple[int, int], lies: tuple[int, int]) -> PlacedPiece:
        turned = (lies[::-1] if self._along else lies) != whole_sides(piece, self._measure)
        (x, y), (wide, high) = at, lies
        measure = self._measure
        return PlacedPiece(piece.key, x * measure, y * measure, wide * measure, high * measure, turned)

    def panels(self, panels: Sequence[LongPanel], beside: Sequence[Plan], width: Fraction) -> tuple[Panel, ...]:
        """The panels with the strips beside them, alike ones together."""
        made = [self._panel(panel, plan, width) for panel, plan in zip(panels, beside, strict=True)]
        return tuple(replace(panel, times=times) for panel, times in Counter(made).items())

    def _panel(self, panel: LongPanel, beside: Plan, width: Fraction) -> Panel:
        columns, x = [], 0
        for column in panel.columns:
            placed, y = [], 0
            for long in column:
                placed.append(self._piece(self._pieces[long.line], (x, y), (long.width, long.height)))
                y += long.height
            columns.append(StripSection(x * self._measure, column[0].width * self._measure, tuple(placed)))
            x += column[0].width
        strips = self.strips(beside, width - x * self._measure)
        return Panel(panel.height * self._measure, x * self._measure, tuple(columns), strips)


def together(strips: Iterable[Strip]) -> tuple[Strip, ...]:
    """Strips that are cut alike become one with its number of times, in the order in which they first come."""
    return tuple(replace(strip, times=times) for strip, times in Counter(strips).items())
