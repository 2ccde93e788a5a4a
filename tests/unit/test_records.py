"""Records never change: what a pass was given is the same when the next one reads it."""

import importlib
import pkgutil
from collections.abc import Iterator

from msgspec import Struct

import blockdsl

GATHERERS = (
    "analysis.books",
    "analysis.inputs",
    "analysis.maker_choices",
    "analysis.quilt.middle",
    "analysis.quilt.on_point",
    "analysis.quilt.pieces",
    "analysis.quilt.settings",
    "analysis.recolouring",
    "analysis.scope",
    "cutting.cloth.greedy",
    "cutting.cloth.lengthwise",
    "cutting.cloth.search",
    "facts.sewn",
    "sewing.classes",
    "sewing.foundation.search",
    "sewing.order.cuts",
    "sewing.steps.tree",
)
"""Modules with one record each in which a pass gathers while it works: no other may change once it is made."""
LAYERS = ("analysis", "sewing", "cutting", "facts")
"""Where one pass hands on to the next what numbers are made from."""


def _records(kind: type[Struct]) -> Iterator[type[Struct]]:
    for inner in kind.__subclasses__():
        yield inner
        yield from _records(inner)


def test_no_record_can_be_changed_but_those_in_which_one_pass_gathers() -> None:
    for module in pkgutil.walk_packages(blockdsl.__path__, "blockdsl."):
        if not module.name.endswith("__main__"):
            importlib.import_module(module.name)
    own = [kind for kind in _records(Struct) if kind.__module__.startswith("blockdsl.")]
    assert len(own) > 500
    changeable = sorted(
        name
        for kind in own
        if (name := kind.__module__.removeprefix("blockdsl.")).startswith(LAYERS) and not kind.__struct_config__.frozen
    )
    assert changeable == sorted(GATHERERS)
