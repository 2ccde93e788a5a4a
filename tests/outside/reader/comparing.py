"""What was sewn held against the block: every patch in its place, in its fabric."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from tests.outside.reader.cloth import Cloth, Patch, pattern_of
from tests.outside.reader.landmarks import turns_of
from tests.outside.reader.stock import outline
from tests.outside.reader.table import Refused


def compare(cloth: Cloth, document: Mapping[str, Any]) -> None:
    """Nothing where both are the same, however what was sewn is turned.

    Errors: Refused where they differ.
    """
    names = {fabric["name"]: fabric["label"] for fabric in document["fabrics"]}
    placed = [
        Patch(patch["label"], names[patch["fabric"]], outline(patch["outline"], patch.get("bends"))[0])
        for patch in document["placed"]
    ]
    wanted = pattern_of(placed)
    sewn = [pattern_of(cloth.patches(turn)) for turn in turns_of(cloth)]
    if wanted not in sewn:
        nearest = max(sewn, key=lambda patches: len(patches & wanted))
        raise Refused(f"another block: {len(wanted - nearest)} of {len(wanted)} patches lie elsewhere")
