"""What a designer adds to her block in her own words: notes and addresses of the web, in a step or with the block."""

from __future__ import annotations

from typing import Annotated, Final

from blockdsl.record import Record, says

ROWS: Final = "rows"
LAST: Final = "last"
PLACES: Final = (ROWS, LAST)
"""Places for a remark beside the units: the step that makes the first row, and the last step."""


class Remark(Record, frozen=True):
    """Her words, and where they stand; of a picture they say what it shows."""

    text: str
    address: Annotated[str, says("Of the web, printed as a QR code; empty for a note.")] = ""
    picture: Annotated[str, says("The path of a picture, as it is written; empty for words.")] = ""
    place: Annotated[
        str, says("A unit's name, a shape, `rows` or `last`: the step that makes it; empty for the block itself.")
    ] = ""

    @property
    def is_note(self) -> bool:
        """Whether it is words alone."""
        return not self.address and not self.picture
