"""Where mutations start from: library and demo, the language reference's examples, and a file of everything."""

from __future__ import annotations

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

# One line of each kind, each shape and each turn, so that no part of the language depends on what the library has.
EVERYTHING = """\
# everything at once
fabric shore  "Shore"   #e8e2d4 light
fabric kelp   "Kelp"    #2f4a3c dark width 42 in
fabric rust   "Rust"    #a4532e medium directional
fabric ink    "Night ink" #1c2430

unit step = rails kelp rust ink
unit post = bars shore kelp
unit chess = checker 3 x 3 shore ink
unit lamp = geese rust on shore
unit split-sky = geese rust on shore kelp
unit corner
  row shore        shore/kelp
  row shore/kelp   ink
unit deep
  columns 1 1/2 1 1/2
  heights 1 1/2 1 1/2
  row corner  corner>
  row corner< corner~>
unit free
  grid 4 x 4
  patch shore at 0,0 4,0 4,4
  patch ink   at 0,0 4,4 0,4

block "Everything"
  size 12 in
  seam 1/4 in
  measure 1/8 in
  row deep   (hourglass kelp shore)  (diamond ink on shore)  (square kelp)
  row free   (snowball ink with shore at tl br cut 1/4) step<  |
  row lamp   -  (quarters shore kelp rust ink) (split shore kelp rust)
  row ink\\rust  post  corner~ chess
  make 1 of half as eight at a time
  make half as two at a time
  make geese as four at a time
  make chess as strip set
  make snowball as stitch and flip
  trim 1/8 in
  colourway "Dusk" shore=ink ink=shore
  note "Press towards the kelp."

quilt "Everything set"
  set dropped columns 3 x 2 of "Strips"
  sash 1 in kelp posts rust
  turn >> on even rows
  border 1 in ink corners kelp
  border 2 in rust mitred along length
  binding 2 1/4 in kelp bias
  backing shore overage 4 in width 108 in
  wadding
  sleeve 4 in ink
  scraps rust from 4 fat quarters
  fabric width 40 in usable
  shrinkage 5 %

block "Roots"
  size 30 cm
  grid 2 x 2
  patch shore at 0,0 r2,0 0,r2
  patch kelp  at r2,0 2,0 2,2-r2 2-r2,2 0,2 0,r2
  patch rust  at 2,2-r2 2,2 2-r2,2
  expect finished 30 cm

block "Strips"
  size 12 x 9 in
  row (rails shore kelp rust) (bars ink rust)
  make rails as strip set
  expect finished 12 x 9 in
"""

_EXAMPLE = re.compile(r"^```[^\n]*\n(.*?)^```", re.MULTILINE | re.DOTALL)


def companions() -> dict[str, str]:
    """The files that seeds `use`, by the names they use."""
    return {
        path.name: path.read_text("utf-8")
        for folder in (ROOT / "tests" / "spec", ROOT / "library" / "demo")
        for path in sorted(folder.rglob("*.block"))
    }


def seed_texts() -> list[str]:
    """All starting texts, in the same order everywhere; whole files come up as often as all the short examples."""
    files = [EVERYTHING, *(path.read_text("utf-8") for path in sorted((ROOT / "library").rglob("*.block")))]
    pages = [page.read_text("utf-8") for page in sorted((ROOT / "tests" / "spec").rglob("*.md"))]
    examples = [found for page in pages for found in _EXAMPLE.findall(page) if "row" in found or "patch" in found]
    return files * (len(examples) // len(files) + 1) + examples
