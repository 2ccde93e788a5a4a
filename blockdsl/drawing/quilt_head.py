"""The head of a quilt's sheet: its name, its sizes, the quilt in colour, the key of fabrics."""

from __future__ import annotations

from typing import Final

from blockdsl.drawing.flow import Slice, moved
from blockdsl.drawing.lengths import show_extent
from blockdsl.drawing.quilt_picture import quilt_picture
from blockdsl.drawing.quilt_words import say_blocks, say_setting
from blockdsl.drawing.sheet_fabrics import key_column
from blockdsl.drawing.sheet_head import measures_slice, title_slice
from blockdsl.drawing.theme import GUTTER_PT, STEP_PT, Box, span_pt
from blockdsl.drawing.words import many
from blockdsl.facts.quiltfacts import QuiltFacts

_PICTURE_COLUMNS: Final = 8
_KEY_COLUMNS: Final = 4
_TALLEST_PT: Final = 330.0


def quilt_head(facts: QuiltFacts) -> list[Slice]:
    """Everything above the materials."""
    return [title_slice(facts.name), _measures(facts), _picture(facts)]


def _measures(facts: QuiltFacts) -> Slice:
    setting = say_setting(facts)
    whole = sum(count for _, count in facts.blocks)
    halves = sum(count for _, count in facts.half_blocks)
    more = f"and {many(halves, 'half block')}" if halves else ""
    return measures_slice(
        (
            ("Finished", show_extent(facts.finished, facts.unit), "", 3),
            ("Set", setting[:1].upper() + setting[1:], "", 3),
            ("Blocks", say_blocks(facts) if len(facts.blocks) < 2 else many(whole, "block"), more, 4),
            ("Made of", many(len(facts.fabrics_used), "fabric"), "", 2),
        )
    )


def _picture(facts: QuiltFacts) -> Slice:
    """The quilt at the left, the key of fabrics at its right."""
    picture, placed = quilt_picture(facts, Box(0.0, 0.0, span_pt(_PICTURE_COLUMNS), _TALLEST_PT))
    key_height, key = key_column(facts.fabrics_used, span_pt(_KEY_COLUMNS))
    right = span_pt(_PICTURE_COLUMNS) + GUTTER_PT
    return Slice(max(placed.height_pt, key_height), (picture, *moved(key, right, 0.0)), before_pt=3.5 * STEP_PT)
