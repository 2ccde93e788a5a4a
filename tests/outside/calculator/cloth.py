"""The cloth of a quilt: every piece of every list laid out as the plan says, within what is bought."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from tests.outside.calculator.figures import bought, exact

Doc = dict[str, Any]
Size = tuple[Fraction, Fraction]


def complaints_of_cloth(quilt: Doc, problems: list[Doc]) -> Iterator[str]:
    """All fabrics: plans that can be cut, pieces that are all in them, lengths that are bought."""
    for fabric in quilt["fabrics"]:
        name = fabric["fabric"]
        yield from (f"{name}: {what}" for what in _plan(fabric))
        yield from (f"{name}: {what}" for what in _bought(fabric, quilt, problems))
    yield from _all_listed(quilt)


def _plan(fabric: Doc) -> Iterator[str]:
    usable = exact(fabric["usable_width"])
    laid: Counter[str] = Counter()
    sizes = {piece["key"]: _size(piece["cut"]) for piece in fabric["pieces"]}
    for joined in fabric["joined"]:
        width = exact(joined["cut"])
        sizes[f"joined {width.numerator}/{width.denominator}" if width.denominator > 1 else f"joined {width}"] = (
            width,
            usable,
        )
    used = Fraction(0)
    for strip in fabric["strips"]:
        used += exact(strip["cut"]) * strip["times"]
        yield from _strip(strip, usable, sizes, laid, 1)
    for panel in fabric["lengthwise"]:
        length, across = exact(panel["length"]), Fraction(0)
        used += length * panel["times"]
        for column in panel["columns"]:
            across += exact(column["width"])
            yield from _stacked(column, length, sizes, laid, panel["times"])
        if across > usable:
            yield f"columns of {across} do not lie side by side on {usable}"
        for strip in panel["beside"]:
            yield from _strip(strip, usable - across, sizes, laid, panel["times"])
    if fabric["need"] is not None:
        if used > exact(fabric["need"]):
            yield f"strips of {used} in all are cut from {fabric['need']}"
        yield from _not_laid(fabric, laid)
        yield from _joined(fabric, usable)


def _not_laid(fabric: Doc, laid: Counter[str]) -> Iterator[str]:
    """Pieces that the plan leaves out; those of blocks of scraps come from their prints."""
    joins = {key for joined in fabric["joined"] for key in joined["pieces"]}
    for piece in fabric["pieces"]:
        if piece["key"] not in joins and laid[piece["key"]] < piece["count"] and not fabric["scraps"]:
            yield f"{piece['count']} of {piece['cut']} are listed, {laid[piece['key']]} laid out"


def _joined(fabric: Doc, usable: Fraction) -> Iterator[str]:
    """Strips sewn end to end hold at least the lengths that are cut from them."""
    for joined in fabric["joined"]:
        have = (joined["strips"] - 1) * usable + exact(joined["last"])
        want = Fraction(0)
        for piece in fabric["pieces"]:
            if piece["key"] in joined["pieces"]:
                want += max(_size(piece["cut"])) * piece["count"]
        if have < want:
            yield f"{have} of strips {joined['cut']} wide are too short for lengths of {want} in all"


def _strip(strip: Doc, usable: Fraction, sizes: dict[str, Size], laid: Counter[str], times: int) -> Iterator[str]:
    width, height = Fraction(0), exact(strip["cut"])
    for section in strip["sections"]:
        width += exact(section["width"])
        yield from _stacked(section, height, sizes, laid, times * strip["times"])
    if width > exact(strip["width"]) or exact(strip["width"]) > usable:
        yield f"a strip takes {width} of {strip['width']} on cloth of {usable}"


def _stacked(section: Doc, length: Fraction, sizes: dict[str, Size], laid: Counter[str], times: int) -> Iterator[str]:
    """Pieces one over the other in a section or column: each within its breadth, all within its length."""
    total = Fraction(0)
    for piece in section["pieces"]:
        across, along = _size(piece["lies"])
        total += along
        laid[piece["piece"]] += times
        own = sizes.get(piece["piece"])
        if across > exact(section["width"]):
            yield f"{piece} is broader than its section"
        if own is not None and not piece["piece"].startswith("joined") and sorted(own) != sorted((across, along)):
            yield f"{piece} is not of its size {own}"
    if total > length:
        yield f"pieces of {total} lie in a length of {length}"


def _bought(fabric: Doc, quilt: Doc, problems: list[Doc]) -> Iterator[str]:
    rest = [piece for piece in fabric["pieces"] if not fabric["scraps"] or not _of_blocks(piece, quilt)]
    if fabric["buy"] is None:
        if rest and not any(problem["code"] in TOO_LARGE for problem in problems):
            yield f"nothing is bought for {len(rest)} sizes of pieces, and no problem says so"
        return
    need, allowed = exact(fabric["need"]), exact(fabric["allowed"])
    if bought(fabric["buy"], quilt["unit"]) < float(need + allowed) - 1e-9:
        yield f"{fabric['buy']} is less than {need} and {allowed} for washing"
    least = Fraction(2) if quilt["unit"] == "in" else Fraction(5)
    if allowed < min(least, need):
        yield f"only {allowed} is kept for washing"


TOO_LARGE = {"piece-wider-than-fabric", "border-needs-length"}


def _of_blocks(piece: Doc, quilt: Doc) -> bool:
    names = [kind["name"] for kind in quilt["kinds"] if kind["role"] != "border unit"]
    return all(any(use.startswith(f"{name}: ") for name in names) for use in piece["for"])


def _all_listed(quilt: Doc) -> Iterator[str]:
    """Every line of the cutting list is among the pieces of its fabric."""
    for fabric in quilt["fabrics"]:
        listed: Counter[Size] = Counter()
        for line in quilt["cutting"]:
            if line["fabric"] == fabric["fabric"]:
                listed[_sorted(line["cut"])] += line["count"]
        have: Counter[Size] = Counter()
        for piece in fabric["pieces"]:
            have[_sorted(piece["cut"])] += piece["count"]
        for size, count in listed.items():
            if have[size] < count:
                yield f"{fabric['fabric']}: {count} of {size} are to be cut, {have[size]} are in the plan"


def _size(texts: list[str]) -> Size:
    return exact(texts[0]), exact(texts[1])


def _sorted(texts: list[str]) -> Size:
    one, other = sorted(_size(texts))
    return one, other
