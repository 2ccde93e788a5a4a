"""What a maker should know before she cuts: how to read the pages, how to print them, and the cautions in full."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.marks.theme import Paper
from blockdsl.page.book.parts import Bodies, PageNumbers, flowed, part_title
from blockdsl.page.book.sections import section
from blockdsl.page.headings import heading
from blockdsl.pictures.words import say_allowance, say_metric_rule, say_squaring

TITLE: Final = "Before you begin"

_READING: Final = (
    (
        "Every block begins with its pictures: the block in colour, and a lettered diagram that gives each patch its "
        "letter. Patches of one letter are of one shape and size; an r after it marks a mirror image."
    ),
    (
        "The cutting table lists, fabric by fabric, how many pieces to cut and how large. Where the book gives a "
        "block in several sizes, each has its own column: choose one, and stay in its column."
    ),
    (
        "Below it are the units to make, with the size each should measure before you join it. Measuring as you go is "
        "quicker than unpicking."
    ),
)
_QUILTS: Final = (
    "A quilt begins with what to buy and what to cut from each fabric for the whole quilt, drawn strip by strip. Then "
    "come the number of each block to make, how to assemble the top, what it should measure along the way, and how to "
    "finish it."
)
_PRINTING: Final = (
    (
        "Print at actual size, 100 %, never fitted to the page. The test page at the end of the book, page {test}, "
        "shows whether your printer did: print that page first and measure it with the ruler you cut with."
    ),
    "Tables and pictures can be printed at any scale. Templates cannot.",
)
_FIRST: Final = (
    (
        "Cut and sew one block before you cut for a whole quilt. Fabric stretches, most of all on the bias, and "
        "everyone sews and presses a little differently: one block shows it while there is still fabric to spare."
    ),
)
CAUTIONS_IN_FULL: Final = (
    (
        "The cutter",
        (
            "A rotary cutter is as sharp as a razor. Close its blade each time you put it down, even for a moment; cut "
            "away from yourself, on a mat made for it, with your fingers behind the ruler's edge; change a blade that "
            "skips rather than pressing harder, and wrap the old one before you throw it away."
        ),
    ),
    (
        "The iron",
        (
            "Keep hands, hair, and the cord clear of the plate, mind the steam, and stand the iron on its heel or its "
            "rest. Switch it off and let it cool when you leave the table. Try its heat on a scrap first."
        ),
    ),
    (
        "Needles and pins",
        (
            "Count pins and needles in and out, and sweep the floor with a magnet at the end of the day. Do not sew "
            "over pins; keep your fingers clear of a moving needle, and switch the machine off before you change one."
        ),
    ),
    (
        "Those around you",
        (
            "Keep cutters, pins, cords and hot irons out of the reach of children and pets. Work in good light, sit "
            "well, and stop when you are tired: that is when fingers are cut."
        ),
    ),
    (
        "Tools and rules",
        (
            "Follow the instructions that came with your tools and machines; where they differ from this book they "
            "come first. So do the rules for workshops and schools where you live."
        ),
    ),
)
"""By what they are about: said once in a book, in short on every sheet."""


def front_pages(blocks: Sequence[BlockFacts], pages: PageNumbers, paper: Paper, *, quilts: bool = False) -> Bodies:
    """The whole section; sizes are explained for each unit and seam that the book uses, `quilts` where it has some."""
    printing = [text.format(test=pages.get("test", "0")) for text in _PRINTING]
    sizes = list(dict.fromkeys(say_allowance(facts) for facts in blocks))
    for say in (say_squaring, say_metric_rule):
        sizes += [text for text in dict.fromkeys(say(facts) for facts in blocks) if text]
    slices = [part_title(TITLE)]
    slices += section("Reading the pages", (*_READING, _QUILTS) if quilts else _READING, ruled=False)
    slices += section("About the sizes", sizes)
    slices += section("Printing", printing)
    slices += section("One block first", _FIRST)
    slices.append(heading("Take care"))
    for number, (name, text) in enumerate(CAUTIONS_IN_FULL):
        slices += section(name, [text], ruled=number > 0)
    return flowed(slices, paper)
