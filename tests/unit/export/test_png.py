"""Images of a page."""

from io import BytesIO

import numpy as np
import pytest
from PIL import Image

from blockdsl.export.png import write_png
from blockdsl.export.printable import Unprintable
from blockdsl.marks.display_list import Page, Path


def test_an_inch_square_fills_its_pixels_and_the_paper_is_white() -> None:
    square = Path((((72, 72), (144, 72), (144, 144), (72, 144)),), fill="#e0a030")
    pixels = np.asarray(Image.open(BytesIO(write_png(Page(216, 288, (square,)), dpi=100))).convert("RGB"))
    assert pixels.shape == (400, 300, 3)
    assert (pixels[100:200, 100:200] == (0xE0, 0xA0, 0x30)).all()
    assert (pixels == 255).all(axis=2).sum() == 300 * 400 - 100 * 100


@pytest.mark.parametrize("dpi", [0, 0.001, 1e6])
def test_an_image_of_no_pixels_or_of_too_many_is_refused(dpi: float) -> None:
    with pytest.raises(Unprintable, match="pixels"):
        write_png(Page(72, 72, ()), dpi=dpi)
