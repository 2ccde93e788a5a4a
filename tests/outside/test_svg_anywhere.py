"""Every kind of SVG looks alike in three renderers that have none of our fonts: CairoSVG, resvg and Chromium.

A pixel agrees when the other picture has its tone at this place or at a neighbour's, as in `test_painters_agree`.
"""

from __future__ import annotations

import re
import subprocess
from io import BytesIO
from itertools import combinations
from pathlib import Path

import cairosvg
import numpy as np
import pytest
import resvg_py
from PIL import Image

from tests.outside.test_painters_agree import beyond, tones

MOST = 0.01
"""Of a picture's pixels."""
KINDS = (
    "breakwater.rows",
    "breakwater",
    "harbour-light.cutting",
    "harbour-light.grid",
    "harbour-light.letters",
    "harbour-light.night-watch",
    "harbour-light",
    "harbour-light.cut",
    "harbour-light.step-02",
    "harbour-light.step-08",
    "squares/harbour-light.squares",
    "gallery/all",
)
BOXES = re.compile(r'viewBox="0 0 ([\d.]+) ([\d.]+)"')


@pytest.fixture(scope="module")
def drawings(project: Path, blockdsl_command: str, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """One drawing of each kind, as the commands write them, each with what Chromium makes of it beside it."""
    folder = tmp_path_factory.mktemp("drawings")
    demo = project / "library/demo"

    def run(*words: str) -> None:
        subprocess.run([blockdsl_command, *words], cwd=demo, check=True, capture_output=True)

    run("build", "book.block", "-o", str(folder), "--only", "diagrams,table,steps,cut-files")
    run("grid", "harbour-light.block", "-o", str(folder / "squares"))
    run("gallery", "harbour-light.block", "net-floats.block", "-o", str(folder / "gallery"), "--title", "All")
    chosen = folder / "chosen"
    chosen.mkdir()
    found = {}
    for kind in KINDS:
        found[kind] = chosen / f"{kind.replace('/', '-')}.svg"
        found[kind].write_bytes((folder / f"{kind}.svg").read_bytes())
    driver = project / "tests/outside/web/pictures.mjs"
    subprocess.run(["node", str(driver), str(chosen)], check=True, capture_output=True, timeout=120)
    return found


@pytest.mark.parametrize("kind", KINDS)
def test_three_renderers_show_the_same(drawings: dict[str, Path], kind: str) -> None:
    path = drawings[kind]
    drawing = path.read_text(encoding="utf-8")
    assert kind.endswith(".cut") or "<text" not in drawing  # a machine's file has letters, a few, to tell its lines
    pictures = list(rendered(path, drawing).values())
    assert all((picture < 250).any() for picture in pictures)
    shares = [float((beyond(one, other) | beyond(other, one)).mean()) for one, other in combinations(pictures, 2)]
    assert max(shares) < MOST, shares


def rendered(path: Path, drawing: str) -> dict[str, np.ndarray]:
    """What each of them draws, two pixels a unit of the drawing; a row or two more or less are left out."""
    (width, height) = (round(2 * float(side)) for side in BOXES.findall(drawing)[0])
    cairo = cairosvg.svg2png(bytestring=drawing.encode(), output_width=width, output_height=height)
    resvg = resvg_py.svg_to_bytes(svg_string=drawing, width=width, dpi=96, skip_system_fonts=True)
    pictures = {
        "Chromium": tones(Image.open(path.with_name(f"{path.stem}.chromium.png"))),
        "CairoSVG": tones(Image.open(BytesIO(cairo))),
        "resvg": tones(Image.open(BytesIO(resvg))),
    }
    sizes = np.array([picture.shape[:2] for picture in pictures.values()])
    assert (sizes.max(axis=0) - sizes.min(axis=0) <= 2).all(), sizes
    high, wide = sizes.min(axis=0)
    return {name: picture[:high, :wide] for name, picture in pictures.items()}


def test_words_in_a_font_that_is_not_there_would_be_seen(tmp_path: Path) -> None:
    """The two renderers that ignore a font in the file differ by what they draw in place of it."""
    words = "".join(
        f'<text x="4" y="{y}" font-size="12" font-family="Ours">Half squares, make 8</text>' for y in (20, 40)
    )
    outlines = '<path d="M4 8H110V20H4ZM4 28H110V40H4Z"/>'
    one, other = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 48" width="120" height="48">{inner}</svg>'
        for inner in (words, outlines)
    )
    pictures = [tones(Image.open(BytesIO(cairosvg.svg2png(bytestring=each.encode())))) for each in (one, other)]
    assert beyond(*pictures).mean() > MOST
