"""What is said for care, and changes nothing of what lies where."""

from __future__ import annotations

import re

from tests.outside.reader.bench import Bench, reads


@reads(
    r"Trim the dog-ears",
    r"Match the slanted seams (?:1/4 in|0\.75 cm) below the \w+ edge",
    r"They are mirror images of the first \w+; keep the two kinds apart",
    r"Crease the middle of each .+",
    r"If it is larger, lay the 45° line of the ruler on the seam and trim all four edges",
    r"Leave the paper in",
    r"Remove the papers?(?: from the seam allowance)?",
    r"Remove the papers when the edges of the block are sewn to others",
)
def no_more(bench: Bench, found: re.Match[str]) -> None:
    """Care that changes nothing of what lies where."""
