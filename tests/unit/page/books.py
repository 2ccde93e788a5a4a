"""Books made by hand for the tests: a plain one, one that strains the page, one of several units, one with quilts."""

from __future__ import annotations

from functools import cache

from msgspec import structs
from msgspec.structs import replace

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts import BookFacts

CLOTH = """
fabric fog     "Harbour fog" #dfe3e0 light
fabric lantern "Lantern"     #e0a030 medium
fabric slate   "Wet slate"   #3a4750 dark
"""
LIGHT = """
block "Light"
  size 12 in
  make half as two at a time
  row fog/lantern  lantern      fog\\lantern
  row lantern      (hourglass fog slate)  lantern
  row fog\\lantern  lantern      fog/lantern
  colourway "Night" fog=slate slate=fog
  note "The lantern stands in the middle."
"""
TIDE = """
block "Tide"
  size 30 cm
  make rails as strip set
  row (rails fog lantern slate)  (rails fog lantern slate)>
  row (rails fog lantern slate)> (rails fog lantern slate)
"""
KITE = """
block "Kite"
  size 6 in
  grid 4 x 4
  patch fog at 0,0 4,0 4,1
  patch lantern at 0,0 4,1 4,4 1,4
  patch slate at 0,0 1,4 0,4
"""
INTRO = """# Welcome

Cut **2 7/8 in** squares, *not* 3 in. They are read
on one line.

## Lists

- one
- two, which is a good deal longer than the one before it and therefore takes a second line on the page

1. first
2. second
"""
BOOK = """
book "Shores"
  by "The maker"
  text "intro.md"
  chapter "Lights"
    block "Light" sizes 6 9 12 in
    text "after.md"
    block "Kite" sizes 6 9 in
  chapter "Tides"
    text "after.md"
    block "Tide" sizes 24 30 cm 12 in
  techniques
"""
WORDS = {"intro.md": INTRO, "after.md": "# Afterwards\n\nSet *four* together.\n"}


def book_of(text: str) -> BookFacts:
    """The only book of a file in which nothing is wrong but warnings."""
    problems = Problems()
    facts = pipeline.run(Source("book.block", text), TextReader(WORDS), problems).facts
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return facts.books[0]


@cache
def shores() -> BookFacts:
    """Three blocks in two chapters, in inches and centimetres, with words, a strip set and templates."""
    return book_of(CLOTH + LIGHT + TIDE + KITE + BOOK)


@cache
def strained() -> BookFacts:
    """Long names everywhere, twelve fabrics, five sizes of one block in both units."""
    long = "A Name that Goes on for Much Longer than Anybody would Ever Think of Giving to a Block"
    colours = [f"#{40 + 15 * n:02x}{240 - 17 * n:02x}{(n * 61) % 256:02x}" for n in range(12)]
    fabrics = "\n".join(
        f'fabric f{n} "Fabric number {n}, with a label that is long" {colour}' for n, colour in enumerate(colours)
    )
    rows = "\n".join(f"row f{n}/f{(n + 5) % 12}  f{n + 1}  f{n + 2}\\f{(n + 7) % 12}" for n in (0, 3, 6, 9))
    block = f'block "{long}"\nsize 9 x 12 in\n{rows}\ncolourway "{long}" f0=f1\n'
    book = f'book "{long} and Sewn"\nby "{long}"\nchapter "{long}"\nblock "{long}" sizes 3 6 9 12 15 in 30 cm\n'
    return book_of(f"{fabrics}\n{block}{book}techniques\n")


QUILTS = """
quilt "Lights at sea"
  set on point 2 x 3 of "Light"
  fill slate
  border 3 in fog mitred
  binding 2 1/4 in slate straight
  backing fog
  note "Each light looks another way."
quilt "Small lights"
  set straight 2 x 2 of "Light"
  blocks 6 in
  scraps slate from 3 fat quarters
book "Shores and quilts"
  chapter "Quilts"
    quilt "Lights at sea"
    text "after.md"
    block "Light"
    quilt "Small lights"
  techniques
"""


@cache
def quilted() -> BookFacts:
    """A block of 12 in, a quilt of it at that size, and one at half of it with scraps."""
    return book_of(CLOTH + LIGHT + QUILTS)


@cache
def many() -> BookFacts:
    """Seventy blocks in seven chapters: contents and index over several pages."""
    one = shores()
    block = next(iter(one.blocks))
    chapter = one.chapters[1]
    names = [f"Light {number}" for number in range(70)]
    blocks = [
        replace(block, name=name, sizes=tuple(structs.replace(size, name=name) for size in block.sizes[:2]))
        for name in names
    ]
    chapters = tuple(
        replace(chapter, title=f"Part {start // 10 + 1}", items=tuple(blocks[start : start + 10]))
        for start in range(0, 70, 10)
    )
    return replace(one, chapters=chapters)
