"""Every painter refuses the same things."""

from collections.abc import Callable
from math import inf, nan

import pytest

from blockdsl.export.pdf import write_pdf
from blockdsl.export.png import write_png
from blockdsl.export.printable import Unprintable
from blockdsl.export.svg import write_svg
from blockdsl.marks.display_list import Document, Figure, Page, Path, TextMark

PAINTERS: list[Callable[[Page], bytes]] = [
    lambda page: write_svg(page, title="T"),
    lambda page: write_pdf(Document("T", (page,))),
    write_png,
]
LINE = ((0.0, 0.0), (1.0, 1.0))


@pytest.mark.parametrize("painter", PAINTERS, ids=["svg", "pdf", "png"])
@pytest.mark.parametrize(
    "page",
    [
        Page(9, 9, (Path((((0.0, nan),),), stroke="#000000"),)),
        Page(9, 9, (Path((((inf, 0.0),),), stroke="#000000"),)),
        Page(9, 9, (Path((LINE,), stroke="#000000", stroke_width_pt=nan),)),
        Page(9, 9, (Path((LINE,), stroke="#000000", dash=(0, 0)),)),
        Page(9, 9, (Path((LINE,), stroke="#000000", dash=(-1, 2)),)),
        Page(9, 9, (Path((LINE,), fill="red"),)),
        Page(9, 9, (TextMark(0, 0, "A", 9, colour="#12345"),)),
        Page(9, 9, (TextMark(nan, 0, "A", 9),)),
        Page(9, 9, (TextMark(0, 0, "A\x1b", 9),)),
        Page(9, 9, (Figure("tab\t", ()),)),
        Page(9, 9, (Figure("deep", (TextMark(0, 0, "A\n", 9),)),)),
        Page(0, 9, ()),
        Page(9, nan, ()),
        Page(14_401, 9, ()),
    ],
)
def test_what_cannot_be_drawn_is_refused_by_every_painter(painter: Callable[[Page], bytes], page: Page) -> None:
    with pytest.raises(Unprintable):
        painter(page)


@pytest.mark.parametrize("painter", PAINTERS, ids=["svg", "pdf", "png"])
def test_a_path_of_nothing_and_a_text_of_nothing_are_drawn_as_nothing(painter: Callable[[Page], bytes]) -> None:
    nothing = (Path((), fill="#000000"), Path(((),), stroke="#000000"), TextMark(0, 0, "", 9), Figure("", ()))
    assert painter(Page(9, 9, nothing))
