"""First-fit and best-fit decreasing height as the textbooks tell them, written anew: piece by piece, no cleverness."""

from __future__ import annotations

from collections.abc import Sequence

Sides = tuple[int, int]
"""Width and height of a piece as it lies."""


def shelf_length(pieces: Sequence[Sides], width: int, *, best_fit: bool) -> int:
    """Length of cloth when the pieces, the highest first, go onto the first shelf with room, or the fullest one."""
    shelves: list[tuple[int, int]] = []  # (height, what is left of the width)
    for wide, high in sorted(pieces, key=lambda sides: (-sides[1], -sides[0])):
        fits = [place for place, (_, left) in enumerate(shelves) if left >= wide]
        if not fits:
            shelves.append((high, width - wide))
            continue
        place = min(fits, key=lambda place: shelves[place][1]) if best_fit else fits[0]
        shelves[place] = (shelves[place][0], shelves[place][1] - wide)
    return sum(height for height, _ in shelves)
