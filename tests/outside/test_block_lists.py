"""Whole cutting lists as published against ours: the same pieces, counts and sizes, or just so much roomier or shorter.

The lists and their sources are in published/block_lists.toml, the blocks in block_lists/. Of two blocks a part is left
out, and the row says so: quarter triangles that are cut once, so that the bias comes to lie outside, and a folded stem
that is sewn on top.
"""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import Any

import pytest

from blockdsl.diagnostics import Source
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.syntax.format import format_text
from tests.outside.published.judge import Key, assert_holds, block_facts, count_of, cutting, load, pieces

BLOCKS = Path(__file__).parent / "block_lists"
LISTS = load("block_lists.toml")
FILES = sorted(path.name for path in BLOCKS.glob("*.block"))


SAME = {(Fraction(0), Fraction(0))}
"""What a piece that is the same has more than ours, and how much shorter it is."""


def _name(row: dict[str, Any]) -> str:
    return f"{row['what']}: {row['input']}"


def _facts(row: dict[str, Any]) -> tuple[BlockFacts, list[str]]:
    return block_facts((BLOCKS / f"{row['file']}.block").read_text(encoding="utf-8"), row["block"])


def _ours(row: dict[str, Any], facts: BlockFacts) -> Counter[Key]:
    """What we cut for as many blocks as the source, without what the row sets aside."""
    aside = {tuple(words.split()) for words in row.get("not_compared", ())}
    counted: Counter[Key] = Counter()
    for (fabric, piece, sides, subcut), count in cutting(facts).items():
        if (fabric, subcut) not in aside:
            counted["any" if row["published"][0].startswith("any ") else fabric, piece, sides, subcut] += count
    return Counter({key: count * row.get("blocks", 1) for key, count in counted.items()})


@pytest.mark.parametrize("row", LISTS, ids=_name)
def test_a_published_cutting_list_is_ours_or_differs_by_just_what_is_said(row: dict[str, Any]) -> None:
    facts, problems = _facts(row)
    assert problems == row.get("warns", [])
    published, ours = pieces(row), _ours(row, facts)
    for piece in published:
        if piece.piece == "strip" and len(piece.sides) == 1:
            # The source says how wide the strips are and how many, and leaves their length to the maker.
            assert count_of(facts, piece) == piece.count
            ours = Counter({key: count for key, count in ours.items() if key[:2] != (piece.fabric, "strip")})
    wanted = Counter({piece.ours: piece.count for piece in published if piece.piece != "strip" or len(piece.sides) > 1})
    assert ours == wanted
    assert_holds(row, facts, [piece for piece in published if piece.fabric != "any"])


@pytest.mark.parametrize("row", LISTS, ids=_name)
def test_a_row_calls_a_list_the_same_only_when_all_its_pieces_are(row: dict[str, Any]) -> None:
    different = {(piece.off, piece.shorter) for piece in pieces(row)}
    assert (different == SAME) == (row["verdict"] == "same")
    assert (len(different) > 1) == (row["verdict"] == "mixed")


@pytest.mark.parametrize("name", FILES)
def test_a_block_of_the_published_lists_is_used_and_in_its_usual_form(name: str) -> None:
    text = (BLOCKS / name).read_text(encoding="utf-8")
    assert format_text(Source(name, text)) == text
    assert name.removesuffix(".block") in {row["file"] for row in LISTS}


def test_the_area_of_each_block_is_covered_by_its_patches_alone() -> None:
    for row in LISTS:
        facts, _ = _facts(row)
        assert (
            sum((area for _, area in facts.area_by_fabric), 0 * facts.cover.area)
            == facts.finished[0] * facts.finished[1]
        )
