"""What a maker prints of herself at the foot of every page."""

from __future__ import annotations

from typing import Annotated

from blockdsl.record import Record, says

_MOST_TYPED = 50


def shown_address(address: str) -> str:
    """An address of the web as it is printed: without `https://`, and without a slash at its end.

    Of one that nobody would type the name of the site alone.
    """
    shown = address.partition("://")[2].rstrip("/")
    return shown if len(shown) <= _MOST_TYPED else shown.partition("/")[0]


class Maker(Record, frozen=True):
    """Who makes the patterns, and what stands at the foot of her pages; a field that nobody fills is empty."""

    name: str = ""
    lines: Annotated[tuple[str, ...], says("What is printed at the foot of every page, a line of the file each.")] = ()
    link: Annotated[str, says("Her page on the web, printed at the foot too; a click leads there.")] = ""

    colour: Annotated[str, says("The accent of her pages, `#rrggbb`; empty for blockdsl's own.")] = ""

    def within(self, around: Maker) -> Maker:
        """What holds in a declaration that says this, inside one where `around` holds: its own lines win."""
        return Maker(
            self.name or around.name,
            self.lines or around.lines,
            self.link or around.link,
            self.colour or around.colour,
        )

    @property
    def link_shown(self) -> str:
        """The link as it is printed."""
        return shown_address(self.link)

    @property
    def rights(self) -> str:
        """What a file says of the rights in it: her lines."""
        return " · ".join(self.lines)


NOBODY = Maker()
