"""The block that the tests of the commands work on, and how a run of a command ended."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

PALETTE = """\
fabric fog   "Harbour fog" #dfe3e0
fabric slate "Wet slate"   #3a4750
"""

PINWHEEL = """\
use "palette.block"

block "Pinwheel"
  size 6 in
  row fog\\slate  fog/slate
  row slate/fog  slate\\fog
"""


@dataclass(frozen=True)
class Ended:
    """How a run ended."""

    status: int
    out: str
    told: str


Run = Callable[..., Ended]


def spoil(path: Path) -> None:
    """Put a slip into the pinwheel: line 5, column 7 names a fabric that there is not."""
    path.write_text(path.read_text(encoding="utf-8").replace("fog\\slate ", "frog\\slate "), encoding="utf-8")
