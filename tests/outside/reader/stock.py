"""What lies beside the machine: the pieces of the cutting list, and the units made in the steps before."""

from __future__ import annotations

import re
from cmath import phase, pi, rect
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from tests.outside.reader.cloth import Cloth, piece
from tests.outside.reader.table import Refused
from tests.outside.reader.words import number, stem

FORMS = "squares?|rectangles?|triangles?|strips?|diamonds?|pieces?|parallelograms?|trapezoids?|hexagons?|octagons?"


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of thing that can be taken: a piece of a letter and fabric in a form, or a unit."""

    label: str
    fabric: str = ""
    form: str = "patch"
    cut: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Letter:
    """The finished shape of a letter."""

    label: str
    points: tuple[complex, ...]
    curves: tuple[int, ...]

    def cloth(self, fabric: str) -> Cloth:
        return piece(self.label, fabric, self.points, self.curves)


@dataclass(frozen=True, slots=True)
class Area:
    """An area of a foundation paper, seen from the side of the cloth: its number, what is sewn there, its outline."""

    number: str
    kind: Kind
    points: tuple[complex, ...]


@dataclass
class Stock:
    """Pieces and units that are there to be taken."""

    letters: Mapping[str, Letter]
    pieces: Counter[Kind]
    spare: Counter[Kind]
    seam: float
    fabrics: frozenset[str]
    units: dict[str, Cloth] = field(default_factory=dict)
    made: Counter[str] = field(default_factory=Counter)
    papers: Mapping[str, tuple[Area, ...]] = field(default_factory=dict)
    """Foundation papers by their letter."""
    dotted: bool = False
    """Whether the corners of all pieces were dotted in a step before."""
    last: str | None = None
    """What the last step made."""

    def kinds(self, text: str) -> tuple[int, list[Kind]]:
        """How many of which kinds an entry of a list may mean: 2 A (Foam), 1 C strip (Tide), the hourglass.

        Errors: Refused where it means nothing.
        """
        found = re.fullmatch(r"(?:(\d+|the|a|an|both|one) )?(.+)", text)
        if not found:
            raise Refused(f"nothing to take: {text!r}")
        count = 1 if found[1] in (None, "the", "a", "an", "one") else number(found[1])
        what = found[2]
        if of_letter := re.fullmatch(rf"([A-Z][A-Za-z0-9]*)(?: ({FORMS}))?(?: \((.+)\))?", what):
            kinds = self._pieces(of_letter[1], of_letter[3], stem(of_letter[2] or ""))
            if kinds:
                return count, kinds
            areas = [area for paper in self.papers.values() for area in paper if area.number == of_letter[1]]
            if areas and of_letter[3] in (None, areas[0].kind.fabric):
                return count, [areas[0].kind]
        if (paper := re.fullmatch(r"papers? (.+)", what)) and paper[1] in self.papers:
            return count, [Kind(f"paper {paper[1]}", form="paper")]
        name = stem(what)
        if name in self.units:
            return count, [Kind(name, form="unit")]
        raise Refused(f"there is no {what!r} to take")

    def _pieces(self, label: str, fabric: str | None, form: str) -> list[Kind]:
        kinds = [kind for kind in self.pieces if kind.label == label and fabric in (None, kind.fabric)]
        if form:
            exact = [kind for kind in kinds if kind.form == form]
            # A triangle that is cut from a square is the patch of its letter.
            kinds = exact or [kind for kind in kinds if kind.form == "patch" and form not in ("strip", "rectangle")]
        return kinds

    def is_there(self, kind: Kind, count: int) -> bool:
        if kind.form == "paper":
            return True
        return (self.made[kind.label] if kind.form == "unit" else self.pieces[kind]) >= count

    def take(self, kind: Kind, count: int) -> None:
        """Fewer are left.

        Errors: Refused where there are not so many.
        """
        if kind.form == "paper":
            return
        if not self.is_there(kind, count):
            left = self.made[kind.label] if kind.form == "unit" else self.pieces[kind]
            raise Refused(f"{count} of {kind.label} {kind.fabric} are taken, {left} are left")
        (self.made if kind.form == "unit" else self.pieces)[kind.label if kind.form == "unit" else kind] -= count  # type: ignore[index]

    def give(self, name: str, cloth: Cloth, count: int) -> None:
        """Units that were made."""
        self.units[name] = cloth.tagged(name)
        self.made[name] += count
        self.last = name

    def raw_size(self, kind: Kind) -> tuple[float, float]:
        """How large a square or rectangle is when its edges are sewn; a strip has its ends still."""
        sides = [value(side) - 2 * self.seam for side in kind.cut]
        return (value(kind.cut[1]), sides[0]) if kind.form == "strip" else (sides[0], sides[-1])

    def cloth(self, kind: Kind) -> Cloth:
        """A piece or unit as it is taken."""
        if kind.form == "unit":
            return self.units[kind.label]
        if kind.form == "paper":
            return piece("paper", "paper", [0, 1, 1 + 1j, 1j])
        if kind.form == "patch":
            return self.letters[kind.label].cloth(kind.fabric)
        wide, high = self.raw_size(kind)
        return piece(kind.label, kind.fabric, [0, wide, complex(wide, high), complex(0, high)])

    def left_over(self) -> list[str]:
        """What should have been used and was not."""
        over = [
            f"{n} {kind.label} {kind.fabric} {kind.form}" for kind, n in self.pieces.items() if n > self.spare[kind]
        ]
        return over + [f"{n} {name}" for name, n in self.made.items() if n]


def stock_of(document: Mapping[str, Any]) -> Stock:
    """What the facts of a block give: letters' shapes, cutting list, names of fabrics."""
    names = {fabric["name"]: fabric["label"] for fabric in document["fabrics"]}
    letters = {}
    for template in document["templates"]:
        points, curves = outline(template["sewing"], template.get("sewing_bends"))
        letters[template["label"]] = Letter(template["label"], points, curves)
    shapes = {patch["label"]: patch["shape"] for patch in document["patches"]}
    pieces: Counter[Kind] = Counter()
    spare: Counter[Kind] = Counter()
    for line in document["cutting"]:
        kind = kind_of(line, shapes.get(line["label"], ""), names)
        pieces[kind] += line["yields"] if kind.form == "patch" else line["count"]
        spare[kind] += line["spare"] if kind.form == "patch" else 0
    papers = {
        paper["letter"]: tuple(
            Area(area["number"], Kind(area["label"], names[area["fabric"]]), tuple(map(point, area["outline"])))
            for area in paper["patches"]
        )
        for foundation in document["foundations"]
        for paper in foundation["papers"]
    }
    return Stock(letters, pieces, spare, value(document["seam"]), frozenset(names.values()), papers=papers)


def kind_of(line: Mapping[str, Any], shape: str, names: Mapping[str, str]) -> Kind:
    """A line of the cutting list as a kind of piece: its patch, or a square or strip that is yet to be made into it."""
    fabric = names[line["fabric"]]
    raw = (
        line["subcut"] == "none"
        and not line["for"].startswith("foundation")
        and (
            line["for"] not in ("patches", "")
            and line["piece"] in ("square", "rectangle", "strip")
            and line["piece"] != shape
        )
    )
    raw = raw or line["piece"] == "strip"
    cut = tuple(line["cut"])
    return Kind(line["label"], fabric, line["piece"], cut) if raw else Kind(line["label"], fabric)


def value(text: str) -> float:
    """A length of the facts: 3 1/2, 7/2+1/4r2."""
    total = 0.0
    for sign, number_, root in re.findall(r"([+-]?)(\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?|(?=r))(?:r(\d+))?", text):
        size = float(sum(map(Fraction, number_.split()))) if number_ else 1.0
        total += (-1 if sign == "-" else 1) * size * (int(root) ** 0.5 if root else 1)
    return total


def point(pair: Sequence[str]) -> complex:
    return complex(value(pair[0]), value(pair[1]))


def outline(
    corners: Sequence[Sequence[str]], bends: Sequence[Any] | None
) -> tuple[tuple[complex, ...], tuple[int, ...]]:
    """An outline as points, arcs as many short lines; each line's curve by number, 0 where it is straight."""
    places = [point(corner) for corner in corners]
    points: list[complex] = []
    curves: list[int] = []
    for index, (a, b) in enumerate(zip(places, places[1:] + places[:1], strict=True)):
        bend = bends[index] if bends else None
        steps = arc(a, b, bend) if bend else [a]
        points.extend(steps)
        curves.extend([index + 1 if bend else 0] * len(steps))
    return tuple(points), tuple(curves)


ARC = pi / 96
"""An eighth of 15°."""


def arc(a: complex, b: complex, bend: Mapping[str, Any]) -> list[complex]:
    """Points from a toward b round the centre of a bend, the shorter way, every so many degrees.

    Arcs begin and end at whole steps of 15°, so that two that bend alike have their points at the same places.
    """
    centre = point(bend["centre"])
    start, turn = phase(a - centre), phase((b - centre) / (a - centre))
    count = max(1, round(abs(turn) / ARC))
    return [centre + rect(abs(a - centre), start + turn * step / count) for step in range(count)]
