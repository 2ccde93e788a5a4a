"""Cut files against other programs: ezdxf reads the DXF and audits it; the SVG's arcs follow from the standard's rules.

Judge of areas and lengths: shapely, on the templates' own outlines. Judge of the format: ezdxf's audit.
"""

from __future__ import annotations

import math
import re
from io import StringIO
from typing import Any

import ezdxf
import pytest
from ezdxf.path import make_path
from shapely.geometry import Polygon

from blockdsl.export.cut_svg import write_cut_svg
from blockdsl.export.dxf import write_dxf
from blockdsl.facts import BlockFacts
from blockdsl.fullsize.cut_shapes import cut_shapes
from blockdsl.fullsize.pattern import pattern_of
from tests.unit.model.blocks import block

BLOCKS = {
    "half squares": block("row fog\\slate  fog/slate", "row slate/fog  slate\\fog", size="8 in"),
    "quarter circles": block("row (curve fog in slate)", size="4 in"),
    "a fan in centimetres": block("row (fan fog slate moss on lantern)", size="20 cm"),
    "diamonds with roots": block("row (star45 points fog ground slate)", size="12 in"),
}
Place = tuple[float, float]
TOLERANCE_MM = 0.01
POINTS_TO_MM = 25.4 / 72


def drawing(facts: BlockFacts) -> ezdxf.document.Drawing:
    return ezdxf.read(StringIO(write_dxf(cut_shapes(facts)).decode()))  # type: ignore[attr-defined]


def printed(facts: BlockFacts, place: int) -> Polygon:
    """The template's cutting outline as it is printed, in millimetres: arcs within 0.005 mm."""
    return Polygon([(x * POINTS_TO_MM, y * POINTS_TO_MM) for x, y in pattern_of(facts.templates[place], facts).cutting])


@pytest.mark.parametrize("name", BLOCKS)
def test_the_dxf_has_no_fault_and_is_in_millimetres(name: str) -> None:
    found = drawing(BLOCKS[name])

    assert not found.audit().has_errors
    assert found.header["$INSUNITS"] == ezdxf.units.MM
    assert {"CUT", "SEW", "MARKS"} <= {layer.dxf.name for layer in found.layers}


@pytest.mark.parametrize("name", BLOCKS)
def test_what_the_blade_follows_is_the_printed_template_to_a_hundredth_of_a_millimetre(name: str) -> None:
    facts = BLOCKS[name]
    outlines = list(drawing(facts).modelspace().query('LWPOLYLINE[layer=="CUT"]'))

    assert len(outlines) == len(facts.templates)
    for place, outline in enumerate(outlines):
        points = [(point.x, -point.y) for point in make_path(outline).flattening(0.0005)]
        left, top = min(x for x, _ in points), min(y for _, y in points)
        cut = Polygon([(x - left, y - top) for x, y in points])
        assert cut.hausdorff_distance(printed(facts, place)) < TOLERANCE_MM


def test_arcs_stay_arcs() -> None:
    facts = BLOCKS["quarter circles"]
    outlines: Any = drawing(facts).modelspace().query('LWPOLYLINE[layer=="SEW"]')
    bulges = [point[4] for outline in outlines for point in outline.get_points()]
    # A quarter circle each: the pie bends out, the ground in; the bulge is tan(90°/4).
    turned = [bulge for bulge in bulges if bulge]
    assert sorted(turned) == pytest.approx([-math.tan(math.pi / 8), math.tan(math.pi / 8)])


def test_a_half_square_is_cut_as_large_as_the_rule_says() -> None:
    # 4 in finished: legs of 4 + 7/8 in (published rule for 1/4 in seams), less what the trimmed points take.
    (shape,) = cut_shapes(BLOCKS["half squares"])
    xs = [x for x, _ in shape.sewing.corners]
    assert max(xs) - min(xs) == pytest.approx(4 * 25.4)
    assert shape.width_mm < (4 + 7 / 8) * 25.4


@pytest.mark.parametrize("name", BLOCKS)
def test_the_svg_is_at_full_size_and_its_blade_line_is_the_printed_template(name: str) -> None:
    facts = BLOCKS[name]
    text = write_cut_svg(cut_shapes(facts), facts.name).decode()
    sides = dict(re.findall(r'\b(width|height)="([\d.]+)mm"', text))
    assert f'viewBox="0 0 {sides["width"]} {sides["height"]}"' in text
    width, height = float(sides["width"]), float(sides["height"])
    cut = text.partition('id="cut"')[2].partition("</g>")[0]
    paths = re.findall(r'\bd="(M[^"]*)"', cut)
    assert len(paths) == len(facts.templates)
    for place, path in enumerate(paths):
        points = flattened(path)
        assert all(0 <= x <= width and 0 <= y <= height for x, y in points)
        left, top = min(x for x, _ in points), min(y for _, y in points)
        outline = Polygon([(x - left, y - top) for x, y in points])
        assert outline.hausdorff_distance(printed(facts, place)) < TOLERANCE_MM


def flattened(path: str) -> list[tuple[float, float]]:
    """The places of a path of M, L, A and Z; arcs in small steps, by the rules of SVG 1.1, appendix F.6.5."""
    places: list[tuple[float, float]] = []
    for letter, numbers in re.findall(r"([MLA])([^MLAZ]*)", path):
        values = [float(value) for value in numbers.split()]
        end = values[-2], values[-1]
        if letter == "A":
            places += _arc(places[-1], end, values[0], sweep=values[4] == 1)
        else:
            places.append(end)
    return places


def _arc(
    start: tuple[float, float], end: tuple[float, float], radius: float, *, sweep: bool
) -> list[tuple[float, float]]:
    (ax, ay), (bx, by) = start, end
    half = math.dist(start, end) / 2
    rise = math.sqrt(max(0.0, radius**2 - half**2)) / (2 * half) * (1 if sweep else -1)
    cx, cy = (ax + bx) / 2 - (by - ay) * rise, (ay + by) / 2 + (bx - ax) * rise
    first, last = math.atan2(ay - cy, ax - cx), math.atan2(by - cy, bx - cx)
    turn = (last - first) % (2 * math.pi) if sweep else -((first - last) % (2 * math.pi))
    return [
        (cx + radius * math.cos(first + turn * n / 400), cy + radius * math.sin(first + turn * n / 400))
        for n in range(1, 401)
    ]


def test_the_same_block_gives_the_same_bytes() -> None:
    shapes = cut_shapes(BLOCKS["half squares"])
    first, second = (write_dxf(shapes) for _ in range(2))
    assert first == second
