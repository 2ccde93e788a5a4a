"""A setting that can be laid: its size, and how its middle is filled."""

from __future__ import annotations

from msgspec import Struct

from blockdsl.analysis.quilt.columns import lay_dropped, lay_strippy, strippy_size
from blockdsl.analysis.quilt.middle import Chooser, Sashing, Top
from blockdsl.analysis.quilt.on_point import lay_on_point, on_point_size, places_on_point
from blockdsl.analysis.quilt.straight import lay_straight, straight_size
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.model.quilt import Setting


class SettingPlan(Struct, frozen=True):
    """How many places across and down, what stands on them and what lies between.

    `main` gives the size of all places. `fill` is the fabric of setting triangles or of half blocks, or None.
    `strip` is the width of a strippy quilt's plain strips, their fabric, and whether they are also at the sides.
    """

    setting: Setting
    on_point: bool
    across: int
    down: int
    main: BlockDesign
    choose: Chooser
    sashing: Sashing | None
    fill: str | None
    strip: tuple[Fraction, str, bool] | None = None

    @property
    def block(self) -> tuple[Fraction, Fraction]:
        """Finished width and height of a place."""
        return self.main.width, self.main.height

    @property
    def places(self) -> int:
        """How many places there are for blocks."""
        return places_on_point(self.across, self.down) if self.on_point else self.across * self.down

    def size(self) -> tuple[Exact, Exact]:
        """Of the middle, finished, without its borders."""
        if self.on_point:
            return on_point_size(self.across, self.down, self.main.width, self.sashing)
        if self.strip is not None:
            width, _, outer = self.strip
            return strippy_size(self.across, self.down, self.block, width, outer=outer)
        return straight_size(self.across, self.down, self.block, self.sashing)

    def lay(self, top: Top) -> None:
        """Fill the middle."""
        if self.on_point:
            lay_on_point(top, self.across, self.down, self.main.width, self.sashing, self.choose, self.fill or "")
        elif self.strip is not None:
            lay_strippy(top, self.across, self.down, self.block, self.strip, self.choose)
        elif self.setting == "dropped columns":
            lay_dropped(top, self.across, self.down, self.block, self.sashing, self.choose, self.fill)
        else:
            lay_straight(top, self.across, self.down, self.block, self.sashing, self.choose)
