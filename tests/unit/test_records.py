"""Records never change: what a pass was given is the same when the next one reads it."""

import importlib
import pkgutil
from collections.abc import Iterator

from msgspec import Struct

import blockdsl

GATHERERS = {
    "analysis.books": {"_Chapter"},
    "analysis.inputs": {"RememberingReader"},
    "analysis.maker_choices": {"Settled"},
    "analysis.quilt.middle": {"Top"},
    "analysis.quilt.on_point": {"_Field"},
    "analysis.quilt.pieces": {"Designs"},
    "analysis.quilt.settings": {"Words"},
    "analysis.recolouring": {"Recoloured"},
    "analysis.scope": {"Scope"},
    "cutting.cloth.greedy": {"_Shelf"},
    "cutting.cloth.lengthwise": {"LongPanel"},
    "cutting.cloth.search": {"Found"},
    "facts.sewn": {"_Found"},
    "sewing.classes": {"UnitGroup"},
    "sewing.foundation.search": {"SectionSearch"},
    "sewing.order.cuts": {"Cut"},
    "sewing.steps.tree": {"Thing"},
}
"""What one pass gathers while it works, by its module: no other may change once it is made."""
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
    changeable: dict[str, set[str]] = {}
    for kind in own:
        module_name = kind.__module__.removeprefix("blockdsl.")
        if not kind.__struct_config__.frozen and module_name.startswith(LAYERS):
            changeable.setdefault(module_name, set()).add(kind.__name__)
    assert changeable == GATHERERS
