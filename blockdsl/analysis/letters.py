"""One letter for each different patch of a block.

Letters go by shape alone, in reading order, so that they stay when the colours change. Patches that are the
same up to turning share a letter; a mirror image takes the letter of its partner with an r (reversed).
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence

from msgspec import Struct, field

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.arc import Curved
from blockdsl.geometry.arc_recognise import curved_key, recognise_curved
from blockdsl.geometry.recognise import Recognised, congruence_key, mirrored_key, recognise
from blockdsl.model import Patch

ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


class Lettered(Struct, frozen=True):
    """The letter of each patch, and for each letter its shape, its first patch and whose mirror image it is.

    `first` has the straight twins of patches with curved sides, `curved` those patches as they really are.
    """

    letters: tuple[str, ...]
    shapes: dict[str, Recognised]
    first: dict[str, Polygon]
    mirror_of: dict[str, str]
    curved: dict[str, Curved] = field(default_factory=dict)


def letter_patches(patches: Sequence[Patch]) -> Lettered:
    """Give every patch its letter."""
    by_look: dict[Hashable, str] = {}
    by_key: dict[Hashable, str] = {}
    given = Lettered((), {}, {}, {}, {})
    letters: list[str] = []
    for patch in patches:
        look: Hashable = _look(patch.outline)
        if patch.curved is not None:
            look = (look, patch.curved.moved(-patch.outline[0].x, -patch.outline[0].y))
        letter = by_look.get(look)
        if letter is None:
            letter = _letter_of(patch, by_key, given)
            by_look[look] = letter
        letters.append(letter)
    return Lettered(tuple(letters), given.shapes, given.first, given.mirror_of, given.curved)


def _look(outline: Polygon) -> tuple[Exact, ...]:
    """The outline as seen from its first corner: patches that look the same need no second thought."""
    x, y = outline[0]
    flat: list[Exact] = []
    for corner in outline[1:]:
        flat += (corner.x - x, corner.y - y)
    return tuple(flat)


def _letter_of(patch: Patch, by_key: dict[Hashable, str], given: Lettered) -> str:
    outline, curved = patch.outline, patch.curved
    key = congruence_key(outline) if curved is None else curved_key(curved)
    if key in by_key:
        return by_key[key]
    partner = by_key.get(mirrored_key(outline) if curved is None else curved_key(curved, mirrored=True))
    if partner is not None:
        letter = f"{partner}r"
        given.mirror_of[letter] = partner
    else:
        letter = spell(len(given.shapes) - len(given.mirror_of))
    by_key[key] = letter
    given.shapes[letter] = recognise(outline) if curved is None else recognise_curved(curved)
    given.first[letter] = outline
    if curved is not None:
        given.curved[letter] = curved
    return letter


def spell(number: int) -> str:
    """A, B, … Z, AA, AB, … for 0, 1, 2 and so on."""
    letters = ""
    number += 1
    while number:
        number, place = divmod(number - 1, len(ALPHABET))
        letters = ALPHABET[place] + letters
    return letters
