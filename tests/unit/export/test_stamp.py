"""The same marks at many places look as if each had been drawn by itself, whatever the painter."""

from collections.abc import Callable
from io import BytesIO
from math import sqrt

import cairosvg
import numpy as np
import pypdfium2
import pytest
from PIL import Image

from blockdsl.export.pdf import write_pdf
from blockdsl.export.png import write_png
from blockdsl.export.printable import Unprintable
from blockdsl.export.svg import write_svg
from blockdsl.marks.display_list import Document, Mark, Page, Path, Stamp, Transform, moved

FLAG = ((0.0, 0.0), (30.0, 0.0), (0.0, 20.0))
HALF = sqrt(0.5)
PLACES: tuple[Transform, ...] = (
    (1, 0, 0, 1, 10, 10),
    (0, 1, -1, 0, 80, 10),
    (-1, 0, 0, 1, 130, 10),
    (HALF, HALF, -HALF, HALF, 170, 10),
)


def flag(at: Transform) -> Path:
    """The flag at a place, its corners worked out one by one."""
    a, b, c, d, e, f = at
    return Path((tuple((a * x + c * y + e, b * x + d * y + f) for x, y in FLAG),), fill="#aa3322", stroke="#000000")


def page(*marks: Mark) -> Page:
    dashed = Path((((5.0, 60.0), (195.0, 60.0)),), closed=False, stroke="#000000", dash=(3.0, 2.0))
    return Page(200, 70, (dashed, *marks, dashed))


def by_pdf(drawn: Page) -> Image.Image:
    image: Image.Image = pypdfium2.PdfDocument(write_pdf(Document("Flags", (drawn,))))[0].render(scale=2).to_pil()
    return image


def by_png(drawn: Page) -> Image.Image:
    return Image.open(BytesIO(write_png(drawn, 144)))


def by_svg(drawn: Page) -> Image.Image:
    return Image.open(BytesIO(cairosvg.svg2png(write_svg(drawn, title="Flags"), dpi=72, scale=2)))


STAMPED = Stamp("flag", (Path((FLAG,), fill="#aa3322", stroke="#000000"),), PLACES)


@pytest.mark.parametrize("painted", [by_pdf, by_png, by_svg])
def test_a_stamp_looks_like_the_same_marks_drawn_at_each_place(painted: Callable[[Page], Image.Image]) -> None:
    stamped = np.asarray(painted(page(STAMPED)).convert("RGB")).astype(int)
    drawn = np.asarray(painted(page(*map(flag, PLACES))).convert("RGB")).astype(int)
    assert (np.abs(drawn - 255) > 100).sum() > 1000  # something is there to be compared
    assert np.abs(stamped - drawn).max() <= 40  # edges may be shaded a little otherwise


def test_a_stamp_is_told_once_however_many_places_it_has() -> None:
    many = Stamp("flag", STAMPED.marks, tuple((1, 0, 0, 1, float(x), 0) for x in range(500)))
    assert write_svg(page(many), title="Flags").count(b"#aa3322") == 1


def test_a_stamp_moves_with_what_it_lies_on() -> None:
    (stamp,) = moved((STAMPED,), 3.0, 4.0)
    assert isinstance(stamp, Stamp)
    assert stamp.places[0] == (1, 0, 0, 1, 13, 14)


def test_a_place_that_is_no_number_is_refused() -> None:
    with pytest.raises(Unprintable):
        write_svg(page(Stamp("flag", STAMPED.marks, ((1, 0, 0, 1, float("nan"), 0),))), title="Flags")
