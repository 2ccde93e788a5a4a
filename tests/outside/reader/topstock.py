"""What a quilt's top is sewn of: blocks that are made, cloth that is cut, both by the names that the words use."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from tests.outside.reader.cloth import Cloth, Patch
from tests.outside.reader.cutting import put_together
from tests.outside.reader.stock import outline, point, value
from tests.outside.reader.words import Refused, stem

ROLES = {
    "post": "cornerstone", "sash strip": "sashing strip", "border corner": "corner square",
    "half post": "half cornerstone", "strip": "plain strip",
}  # fmt: skip
"""What the trade calls a piece of cloth, where its role in the facts has another name."""


@dataclass(frozen=True, slots=True)
class Part:
    """A kind of block or of cloth: its names, its finished size as drawn, its picture if it has one."""

    key: tuple[str, int, str]
    names: frozenset[str]
    size: tuple[float, float]
    fabric: str = ""
    cloth: Cloth | None = None
    shape: str = "rectangle"


@dataclass
class TopStock:
    """Parts that are there, and how many of each."""

    parts: list[Part]
    left: dict[tuple[str, int, str], int]
    seam: float
    fabrics: frozenset[str] = field(default_factory=frozenset)

    def find(self, name: str) -> list[Part]:
        """All parts that a name may mean: sash for long sash where there are no others."""
        fabric = None
        if name.endswith(")") and " (" in name:
            name, fabric = name[:-1].rsplit(" (", 1)
        wanted = stem(name)
        found = [part for part in self.parts if wanted in part.names and fabric in (None, part.fabric)]
        if not found:
            raise Refused(f"there is no {name!r}")
        return found

    def take(self, part: Part, count: int) -> None:
        """Fewer are left.

        Errors: Refused where there are not so many.
        """
        if self.left[part.key] < count:
            raise Refused(f"{count} of {min(part.names)} are taken, {self.left[part.key]} are left")
        self.left[part.key] -= count


def top_stock(quilt: Mapping[str, Any], document: Mapping[str, Any]) -> TopStock:
    """What the facts of a quilt give."""
    labels = {colour["name"]: colour["label"] for colour in quilt["colours"]}
    parts, left = [], {}
    kinds = [kind for kind in quilt["kinds"] if kind["role"] == "block"]
    alone = len({(kind["name"], colourway) for kind in kinds for colourway in kind["colourways"]}) == 1
    for index, kind in enumerate(quilt["kinds"]):
        for colourway, count in kind["colourways"].items():
            name = kind["name"] if kind["role"] == "border unit" else f"{kind['name']} block"
            names = {stem(f"{name} in {colourway}" if colourway else name)}
            if kind["role"] == "border unit":  # a block serves as one by its title, a unit by its name
                names.add(stem(f"{name} block"))
            if alone and kind["role"] == "block":
                names.add("block")
            picture = _picture(document, kind["name"], colourway)
            part = Part(("block", index, colourway), frozenset(names), _size(kind["finished"]), cloth=picture)
            parts.append(part)
            left[part.key] = count
    for index, piece in enumerate(quilt["pieces"]):
        part = Part(
            ("cloth", index, ""),
            frozenset(_cloth_names(quilt["pieces"], piece)),
            _size(piece["finished"]),
            labels.get(piece["fabric"], piece["fabric"]),
            shape=piece["shape"],
        )
        parts.append(part)
        left[part.key] = piece["count"]
    return TopStock(parts, left, value(quilt["seam"]), frozenset(labels.values()))


def _cloth_names(pieces: list[Mapping[str, Any]], piece: Mapping[str, Any]) -> set[str]:
    """Sash, and long or short sash where there are two lengths of them."""
    role = ROLES.get(piece["role"], piece["role"])
    names = {stem(role)}
    lengths = sorted({max(_size(other["finished"])) for other in pieces if other["role"] == piece["role"]})
    if piece["role"] == "sash" and len(lengths) > 1:
        names.add("long sash" if max(_size(piece["finished"])) == lengths[-1] else "short sash")
    return names


def _size(pair: list[str]) -> tuple[float, float]:
    return value(pair[0]), value(pair[1])


def _picture(document: Mapping[str, Any], name: str, colourway: str) -> Cloth | None:
    """A block as it comes from its own steps, in a colourway."""
    block = next((each for each in document["blocks"] if each["name"] == name), None)
    if block is None:
        return None
    labels = {fabric["name"]: fabric["label"] for fabric in block["fabrics"]}
    other: Mapping[str, str] = next((c["fabrics"] for c in block["colourways"] if c["name"] == colourway), {})
    patches = [
        Patch(
            patch["label"],
            _label(document, labels, other.get(patch["fabric"], patch["fabric"])),
            outline(patch["outline"], patch.get("bends"))[0],
        )
        for patch in block["placed"]
    ]
    return put_together(patches)


def _label(document: Mapping[str, Any], labels: Mapping[str, str], name: str) -> str:
    found = labels.get(name)
    for block in document["blocks"]:
        found = found or next((fabric["label"] for fabric in block["fabrics"] if fabric["name"] == name), None)
    for quilt in document["quilts"]:
        found = found or next((colour["label"] for colour in quilt["colours"] if colour["name"] == name), None)
    return found or name


__all__ = ["Part", "TopStock", "point", "top_stock"]
