"""A page as an SVG drawing that prints at real size and needs nothing but itself."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterable, Iterator, Sequence
from itertools import chain
from typing import Final

import svgwrite
from svgwrite.base import BaseElement
from svgwrite.container import Defs, Group, Style
from svgwrite.etree import etree
from svgwrite.text import Text as TextElement

from blockdsl.export.embedded import FAMILY, font_faces
from blockdsl.export.printable import check_page, check_text
from blockdsl.export.recognised import SVG_MARK
from blockdsl.marks.display_list import (
    Anchor,
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
from blockdsl.marks.further_letters import with_letters_drawn, with_words_drawn
from blockdsl.marks.typeset import UNITS_PER_EM, are_words_outlined, painted, shape

_POINTS_PER_INCH = 72
_CSS_WEIGHTS: dict[Weight, int] = {"regular": 400, "bold": 600}
_TWO_DECIMALS: Final = "%.2f,%.2f "
_SHORTER: Final = (
    ("-0.00", "0.00"),
    *((f".{digits}{after}", f"{short}{after}") for after in ", " for digits, short in [
        ("00", ""), *((f"{digit}0", f".{digit}") for digit in range(1, 10))
    ]),
    (" M", "M"),
    (" Z", "Z"),
)  # fmt: skip
"""What in an outline of two decimals is written shorter: minus nothing, and zeros at the end."""


def write_svg(
    page: Page, *, title: str, description: str = "", place_letters: bool = False, draw_words: bool = False
) -> bytes:
    """The page as UTF-8 SVG, the same bytes each time.

    With `place_letters` every letter has its place, for renderers that know no kerning. Browsers do not need it, and
    the words are then harder to change in a drawing program. With `draw_words` letters are outlines, for programs that
    ignore the font in the file.

    Units:  the viewBox is in points, width and height are the same lengths in inches, so that 72 is one inch on paper.
            Numbers are rounded to 0.01 pt.
    Errors: Unprintable where the page, the title or the description cannot be painted.
    """
    check_page(page)
    page = with_words_drawn(page) if draw_words or are_words_outlined() else with_letters_drawn(page)
    width, height = round(page.width_pt, 2), round(page.height_pt, 2)
    drawing = svgwrite.Drawing(
        size=(f"{width / _POINTS_PER_INCH:.10g}in", f"{height / _POINTS_PER_INCH:.10g}in"),
        viewBox=f"0 0 {number(width)} {number(height)}",
        debug=False,
        role="img",
    )
    drawing.set_desc(check_text(title), check_text(description) or None)
    faces = font_faces(_letters(page.marks))
    if faces:
        drawing.defs.add(
            Style(
                f"{faces}text{{font-family:{FAMILY},sans-serif;font-kerning:normal;font-variant-ligatures:none;white-space:pre}}"
            )
        )
    for mark in _seen(page.marks):
        drawing.add(_element(mark, place_letters=place_letters))
    tree = drawing.get_xml()
    for unused in ("xmlns:ev", "xmlns:xlink"):  # svgwrite always names them; we have neither events nor links
        tree.attrib.pop(unused, None)
    markup = etree.tostring(tree, encoding="unicode")
    return f'<?xml version="1.0" encoding="utf-8"?>\n{SVG_MARK.decode()}\n{markup}\n'.encode()


def inner_markup(marks: Iterable[Mark]) -> str:
    """The marks as they stand inside an `svg` element whose page brings the font; they must have been checked."""
    return "".join(etree.tostring(_element(mark).get_xml(), encoding="unicode") for mark in _seen(marks))


def _seen(marks: Iterable[Mark]) -> Iterator[Path | TextMark | RasterMark | Figure | Stamp]:
    """What can be seen: a drawing is one page, and links within it lead nowhere."""
    for mark in marks:
        match mark:
            case Link():
                yield from _seen(mark.marks)
            case Anchor() | Kept():
                pass
            case _:
                yield mark


def _element(mark: Path | TextMark | RasterMark | Figure | Stamp, *, place_letters: bool = False) -> BaseElement:
    match mark:
        case Path():
            return _path(mark)
        case TextMark():
            return _text(mark, place_letters=place_letters)
        case RasterMark():
            return _raster(mark)
        case Stamp():
            return _stamp(mark, place_letters=place_letters)
        case Figure():
            group = Group(debug=False, role="img")
            group.set_desc(mark.alternative)
            for inner in _seen(mark.marks):
                group.add(_element(inner, place_letters=place_letters))
            return group


def _raster(mark: RasterMark) -> BaseElement:
    """A picture of pixels, its file in the drawing itself."""
    element = BaseElement(debug=False)
    element.elementname = "image"
    box = {"x": mark.x_pt, "y": mark.y_pt, "width": mark.width_pt, "height": mark.height_pt}
    for name, value in box.items():
        element[name] = number(value)
    element["href"] = f"data:image/{mark.raster.form};base64,{b64encode(mark.raster.data).decode('ascii')}"
    return element


def _stamp(stamp: Stamp, *, place_letters: bool) -> BaseElement:
    """What is stamped, once among the definitions, and its places."""
    once = Group(debug=False)
    once["id"] = stamp.name
    for inner in stamp.marks:
        once.add(_element(inner, place_letters=place_letters))
    definitions = Defs(debug=False)
    definitions.add(once)
    whole = Group(debug=False)
    whole.add(definitions)
    for place in stamp.places:
        use = BaseElement(debug=False)
        use.elementname = "use"
        use["href"] = f"#{stamp.name}"
        turn = " ".join(f"{part:.6f}".rstrip("0").rstrip(".") for part in place[:4])
        use["transform"] = f"matrix({turn} {number(place[4])} {number(place[5])})"
        whole.add(use)
    return whole


def _path(path: Path) -> BaseElement:
    element = BaseElement(debug=False)
    element.elementname = "path"
    element["d"] = _outlines(path.rings, closed=path.closed)
    element["fill"] = painted(path.fill) if path.fill else "none"
    if path.fill and len(path.rings) > 1:
        element["fill-rule"] = "evenodd"
    if path.stroke:
        element["stroke"] = painted(path.stroke)
        element["stroke-width"] = number(path.stroke_width_pt)
        element["stroke-linejoin"] = "round"
        if path.dash:
            element["stroke-dasharray"] = " ".join(map(number, path.dash))
        if path.round_ends:
            element["stroke-linecap"] = "round"
    return element


def _outlines(rings: Iterable[Sequence[tuple[float, float]]], *, closed: bool) -> str:
    # As `number` writes them, but for a whole path at once: a page of hatching has ten thousand corners.
    end = "Z" if closed else ""
    parts = [f"M{_TWO_DECIMALS * len(ring)}{end}" % tuple(chain.from_iterable(ring)) for ring in rings if ring]
    points = "".join(parts)
    for long, short in _SHORTER:
        points = points.replace(long, short)
    return points.rstrip()


def _text(text: TextMark, *, place_letters: bool) -> BaseElement:
    element = TextElement(text.text, debug=False)
    x, y = number(text.x_pt), number(text.y_pt)
    element["x"], element["y"] = _places(text) if place_letters else x, y
    element["font-family"] = FAMILY
    element["font-size"] = number(text.size_pt)
    if text.weight != "regular":
        element["font-weight"] = _CSS_WEIGHTS[text.weight]
    element["fill"] = painted(text.colour)
    if text.turn_degrees:
        element["transform"] = f"rotate({number(text.turn_degrees)} {x} {y})"
    return element


def _places(text: TextMark) -> str:
    """Where each letter of the text stands; those that are drawn as one stand together."""
    scale = text.size_pt / UNITS_PER_EM
    places: list[float] = []
    for run in shape(text.text, text.weight):
        starts = {glyph.cluster: glyph.x for glyph in reversed(run.glyphs)}
        x = 0
        for cluster in range(len(run.text)):
            x = starts.get(cluster, x)
            places.append(text.x_pt + x * scale)
    return " ".join(map(number, places))


def number(value: float) -> str:
    """A measure as SVG has it: at most two decimals, no zeros behind them, and never a minus before nothing."""
    written = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if written == "-0" else written


def _letters(marks: Iterable[Mark]) -> dict[Weight, set[str]]:
    letters: dict[Weight, set[str]] = {}
    for text in _texts(marks):
        letters.setdefault(text.weight, set()).update(text.text)
    return letters


def _texts(marks: Iterable[Mark]) -> Iterator[TextMark]:
    for mark in _seen(marks):
        if isinstance(mark, TextMark):
            yield mark
        elif isinstance(mark, Figure | Stamp):
            yield from _texts(mark.marks)
