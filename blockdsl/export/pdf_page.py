"""One page's marks as the operators of a PDF page, apart from the file that it will stand in."""

from __future__ import annotations

import zlib
from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from math import cos, radians, sin
from types import MappingProxyType
from typing import Final, Literal

from msgspec import Struct, field

from blockdsl.export.pdf_text import RESOURCE, WEIGHTS, shown
from blockdsl.export.printable import check_page
from blockdsl.marks.display_list import (
    Anchor,
    Element,
    Figure,
    Kept,
    Link,
    Mark,
    Page,
    Path,
    RasterMark,
    Stamp,
    TextMark,
    Weight,
)
from blockdsl.marks.further_letters import with_letters_drawn
from blockdsl.marks.typeset import painted, shape
from blockdsl.raster import Raster

_SQUEEZE: Final = 6
"""How hard zlib tries: more takes longer and gains a fiftieth."""


class Branch(Struct, frozen=True):
    """An element of the page that a tag stands in; the number tells it from others of the page."""

    number: int
    element: Element


class Tag(Struct, frozen=True):
    """A piece of the page as it is read aloud; its place in the page's list is its number in the page's operators.

    `branches` are the elements that it stands in, from the outermost; words without one are a paragraph. `alternative`
    is said in place of a figure, and of words that run from right to left, which stand there as they are seen.
    """

    role: Literal["Words", "Figure", "Link"]
    alternative: str = ""
    branches: tuple[Branch, ...] = ()


class Jump(Struct, frozen=True):
    """A box that can be clicked (points, y downward), where it leads, the number of its tag, and what it says."""

    target: str
    box: tuple[float, float, float, float]
    tag: int
    words: str = ""


class PaintedPage(Struct, frozen=True):
    """All that a file needs of a page; `operators` are compressed streams that follow one another.

    Glyphs are those of each weight; `rasters` are the pictures of pixels that it shows, each under its `resource`.
    """

    width_pt: float
    height_pt: float
    operators: tuple[bytes, ...]
    glyphs: tuple[frozenset[int], ...]
    tags: tuple[Tag, ...]
    jumps: tuple[Jump, ...]
    anchors: tuple[Anchor, ...]
    rasters: tuple[Raster, ...] = ()


def paint_page(page: Page, kept: Mapping[str, PaintedPage] = MappingProxyType({})) -> PaintedPage:
    """The page painted; the same page gives the same bytes. What it has `kept` is put first, as it is.

    Units:  points; the page's own y axis, downward, is turned once at the start. Two decimals: 0.002 mm at most.
    Errors: Unprintable; KeyError where something that it has kept is not there.
    """
    page = with_letters_drawn(page)
    check_page(page)
    before = [kept[mark.key] for mark in page.marks if isinstance(mark, Kept)]
    brush = _Brush()
    for earlier in before:
        brush.take_over(earlier)
    brush.paint(page.marks)
    brush.close()
    operators = [stream for earlier in before for stream in earlier.operators]
    if brush.written:
        # Inside q and Q, so that streams which follow one another leave each other's settings alone.
        start = b"q\n1 0 0 -1 0 %s cm\n1 j\n" % number(page.height_pt)
        operators.append(zlib.compress(start + b"".join(brush.written) + b"Q\n", _SQUEEZE))
    return PaintedPage(
        page.width_pt,
        page.height_pt,
        tuple(operators),
        tuple(frozenset(brush.glyphs[weight]) for weight in WEIGHTS),
        tuple(brush.tags),
        tuple(brush.jumps),
        tuple(brush.anchors),
        tuple(brush.rasters),
    )


def _said(marks: Iterable[Mark]) -> str:
    """The words of marks, figures' own."""
    said = []
    for mark in marks:
        match mark:
            case TextMark():
                said.append(mark.text)
            case Figure():
                said.append(mark.alternative)
            case Link():
                said.append(_said(mark.marks))
            case _:
                pass
    return " ".join(filter(None, said))


class _Brush(Struct):
    """Writes operators one after the other, and no setting twice."""

    written: list[bytes] = field(default_factory=list)
    glyphs: dict[Weight, set[int]] = field(default_factory=lambda: {weight: set() for weight in WEIGHTS})
    tags: list[Tag] = field(default_factory=list)
    jumps: list[Jump] = field(default_factory=list)
    anchors: list[Anchor] = field(default_factory=list)
    rasters: dict[Raster, None] = field(default_factory=dict)
    _settings: dict[bytes, bytes] = field(default_factory=dict)
    _artifact: bool = False
    _inside: bool = False
    _elements: list[Branch] = field(default_factory=list)
    _numbered: int = 0

    def paint(self, marks: Iterable[Mark]) -> None:  # noqa: C901 - one line for each mark there is
        for mark in marks:
            match mark:
                case Path():
                    self._shape(mark)
                case TextMark():
                    self._words(mark)
                case RasterMark():
                    self._raster(mark)
                case Figure():
                    self._tagged("Figure", mark.alternative, mark.marks, mark.elements)
                case Stamp():
                    self._stamp(mark)
                case Link():
                    if not self._inside:
                        box = (mark.x_pt, mark.y_pt, mark.x_pt + mark.width_pt, mark.y_pt + mark.height_pt)
                        self.jumps.append(Jump(mark.target, box, len(self.tags), _said(mark.marks)))
                    self._tagged("Link", "", mark.marks, mark.elements)
                case Anchor():
                    if not self._inside:
                        self.anchors.append(mark)

    def take_over(self, painted: PaintedPage) -> None:
        """All of a page that was painted before but its operators; its tags come first."""
        for weight, used in zip(WEIGHTS, painted.glyphs, strict=True):
            self.glyphs[weight] |= used
        self.tags += painted.tags
        self._numbered = 1 + max((branch.number for tag in self.tags for branch in tag.branches), default=-1)
        self.jumps += painted.jumps
        self.anchors += painted.anchors
        self.rasters |= dict.fromkeys(painted.rasters)

    def close(self) -> None:
        """End what is open."""
        if self._artifact:
            self.written.append(b"EMC\n")
            self._artifact = False

    def _tagged(
        self, role: Literal["Figure", "Link"], alternative: str, marks: Iterable[Mark], elements: Sequence[Element]
    ) -> None:
        """Marks that are read as one thing; what is within has no tags of its own."""
        if self._inside:
            self.paint(marks)
            return
        self._open(Tag(role, alternative, self._branches(elements)))
        self._inside = True
        self.paint(marks)
        self._inside = False
        self.written.append(b"EMC\n")

    def _open(self, tag: Tag) -> None:
        self.close()
        within = tag.branches[-1].element.role if tag.branches else "P"
        role = within if tag.role == "Words" else tag.role
        self.written.append(b"/%s<</MCID %d>>BDC\n" % (role.encode(), len(self.tags)))
        self.tags.append(tag)

    def _branches(self, elements: Sequence[Element]) -> tuple[Branch, ...]:
        """The elements with their numbers: those that the piece before stands in too go on, others are begun."""
        same = 0
        while same < min(len(elements), len(self._elements)) and elements[same] is self._elements[same].element:
            same += 1
        begun = [Branch(self._numbered + place, element) for place, element in enumerate(elements[same:])]
        self._numbered += len(begun)
        self._elements = [*self._elements[:same], *begun]
        return tuple(self._elements)

    def _words(self, text: TextMark) -> None:
        if not text.text:
            return
        unread = not self._inside and any(element.role == "Artifact" for element in text.elements)
        if unread and not self._artifact:
            self.written.append(b"/Artifact BMC\n")
            self._artifact = True
        elif not unread and not self._inside:
            backward = any(run.right_to_left for run in shape(text.text, text.weight))
            self._open(Tag("Words", text.text if backward else "", self._branches(text.elements)))
        self._set(b"rg", _rgb(painted(text.colour)))
        line = shown(text.text, text.weight, text.size_pt)
        self.glyphs[text.weight] |= line.glyphs
        self.written.append(
            b"BT\n%s %s Tf\n%s %s %s Tm\n%sET\n"
            % (
                RESOURCE[text.weight],
                number(text.size_pt),
                _turned(text.turn_degrees),
                number(text.x_pt),
                number(text.y_pt),
                line.operators,
            )
        )
        if not self._inside and not unread:
            self.written.append(b"EMC\n")

    def _shape(self, path: Path) -> None:
        paint = _PAINT[bool(path.fill), bool(path.stroke)]
        if not paint or not any(path.rings):
            return
        if not self._inside and not self._artifact:
            self.written.append(b"/Artifact BMC\n")  # rules and boxes beside the text, which nobody reads aloud
            self._artifact = True
        if path.fill:
            self._set(b"rg", _rgb(painted(path.fill)))
        if path.stroke:
            self._set(b"RG", _rgb(painted(path.stroke)))
            self._set(b"w", number(path.stroke_width_pt))
            self._set(b"d", b"[%s] 0" % b" ".join(map(number, path.dash)))
            self._set(b"J", b"1" if path.round_ends else b"0")
        self.written += [_outline(ring, closed=path.closed) for ring in path.rings]
        self.written.append(paint)

    def _raster(self, mark: RasterMark) -> None:
        """A picture stands in the unit square from its lower left corner (ISO 32000-1, 8.9.5)."""
        if not self._inside and not self._artifact:
            self.written.append(b"/Artifact BMC\n")
            self._artifact = True
        self.rasters[mark.raster] = None
        sides = (mark.width_pt, -mark.height_pt, mark.x_pt, mark.y_pt + mark.height_pt)
        across, down, x, y = map(number, sides)
        self.written.append(b"q\n%s 0 0 %s %s %s cm\n%s Do\nQ\n" % (across, down, x, y, resource(mark.raster)))

    def _stamp(self, stamp: Stamp) -> None:
        """Written out at each place: what is the same again takes next to nothing once it is squeezed."""
        if not self._inside and not self._artifact:
            self.written.append(b"/Artifact BMC\n")
            self._artifact = True
        inner = _Brush(_inside=True)
        inner.paint(stamp.marks)
        for weight in WEIGHTS:
            self.glyphs[weight] |= inner.glyphs[weight]
        # A brush begins with whole lines and flat ends, whatever was set before.
        drawn = b"[] 0 d\n0 J\n" + b"".join(inner.written)
        for place in stamp.places:
            turn = b" ".join(b"%.6f" % part for part in place[:4])
            self.written += (b"q\n%s %s %s cm\n" % (turn, number(place[4]), number(place[5])), drawn, b"Q\n")

    def _set(self, operator: bytes, value: bytes) -> None:
        if self._settings.get(operator, _AT_FIRST.get(operator)) != value:
            self._settings[operator] = value
            self.written.append(b"%s %s\n" % (value, operator))


_PAINT: Final = {(True, True): b"B*\n", (True, False): b"f*\n", (False, True): b"S\n", (False, False): b""}
_AT_FIRST: Final = {b"d": b"[] 0", b"J": b"0"}


def _outline(ring: Sequence[tuple[float, float]], *, closed: bool) -> bytes:
    if len(ring) == 4 and closed:
        (x0, y0), (x1, y1), (x2, y2), (x3, y3) = ring
        if (y0 == y1 and x1 == x2 and y2 == y3 and x3 == x0) or (x0 == x1 and y1 == y2 and x2 == x3 and y3 == y0):
            return b"%s %s %s %s re\n" % (number(x0), number(y0), number(x2 - x0), number(y2 - y0))
    flat = [side for point in ring for side in point]
    return _outline_form(len(ring), closed) % tuple(flat) if ring else b""


@lru_cache(maxsize=512)
def _outline_form(corners: int, closed: bool) -> bytes:
    """The operators of an outline with room for its numbers: one formatting for a ring is far quicker than many."""
    return b"%.2f %.2f m\n" + b"%.2f %.2f l\n" * (corners - 1) + (b"h\n" if closed else b"")


@lru_cache(maxsize=1024)
def _turned(degrees: float) -> bytes:
    """The text matrix without its place: upright again after the page's y axis was turned, then clockwise."""
    if not degrees:
        return b"1 0 0 -1"
    cosine, sine = cos(radians(degrees)), sin(radians(degrees))
    return b"%.6f %.6f %.6f %.6f" % (cosine, sine, sine, -cosine)


@lru_cache(maxsize=1024)
def _rgb(colour: str) -> bytes:
    return b" ".join(b"%.4g" % (part / 255) for part in bytes.fromhex(colour[1:]))


def resource(raster: Raster) -> bytes:
    """The name of a picture of pixels in every page that shows it."""
    return f"/I{raster.digest[:16]}".encode()


def number(value: float) -> bytes:
    """At most two decimals, and no zeros behind them."""
    written = b"%.2f" % value
    return written.rstrip(b"0").rstrip(b".") if written != b"-0.00" else b"0"
