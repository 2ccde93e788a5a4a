"""Quilts drawn by lot, the same ones in every run: blocks by all methods, scraps, borders, bindings, backs."""

from __future__ import annotations

import os
from random import Random

EVERY_ONE = bool(os.environ.get("BLOCKDSL_EVERY_SIZE"))
MOST = 60
NUMBERS = range(MOST) if EVERY_ONE else range(0, MOST, 6)
"""A tenth or so in every run, all of them by `make sewn`."""
FABRICS = ("fog", "lantern", "slate", "moss")
CLOTH = """
fabric fog     "Harbour fog" #dfe3e0{width}
fabric lantern "Lantern"     #e0a030
fabric slate   "Wet slate"   #3a4750
fabric moss    "Moss"        #5f7a3a
"""
UNITS = (
    ("half", "{a}/{b}", ("two at a time", "eight at a time", "cut patches", "foundation")),
    ("hourglass", "(hourglass {a} {b})", ("two at a time", "cut patches")),
    ("quarters", "(quarters {a} {b} {c} {d})", ("two at a time", "cut patches")),
    ("split", "(split {a} {b} {c})", ("two at a time", "cut patches")),
    ("diamond", "(diamond {a} on {b})", ("stitch and flip", "cut patches")),
    ("snowball", "(snowball {a} with {b})", ("stitch and flip",)),
    ("rails", "(rails {a} {b} {c})", ("strip set", "cut patches")),
    ("checker", "(checker 3 x 3 {a} {b})", ("strip set",)),
    ("geese", "(geese {a} on {b})", ("four at a time", "stitch and flip", "cut patches")),
)


def quilt_text(number: int, *, scraps: bool | None = None) -> str:
    """A file with a block or two and a quilt, by its number; every second one has scraps unless it is said."""
    lot = Random(number)  # noqa: S311  quilts, not secrets
    unit, step = lot.choice((("in", 1), ("in", 1), ("cm", 2)))
    shape, cell, methods = UNITS[number % len(UNITS)]
    cloths = lot.sample(FABRICS, 4)
    words = cell.format(**dict(zip("abcd", cloths, strict=True)))
    across = lot.randint(1, 3)
    width = across * lot.choice((3, 4, 6)) * step
    rows = [
        " ".join(words if lot.random() < 0.7 or shape == "geese" else cloths[0] for _ in range(across))
        for _ in range(2 * across if shape == "geese" else across)
    ]
    if not any(words in row for row in rows):
        rows[0] = " ".join([words] * across)
    lines = [f'block "Lot"\n  size {width} {unit}']
    lines += [f"  row {row}" for row in rows]
    lines.append(f"  make {shape} as {lot.choice(methods)}")
    return "\n".join([CLOTH.format(width=""), *lines, *_quilt(lot, unit, cloths, (number, scraps)), ""])


def _quilt(lot: Random, unit: str, cloths: list[str], asked: tuple[int, bool | None]) -> list[str]:
    number, scraps = asked
    small, large = {"in": ("1", "3 1/2"), "cm": ("3", "9")}[unit]
    down, across = lot.randint(1, 6), lot.randint(1, 6)
    lines = ['quilt "Lots"', f'  set {lot.choice(("straight", "straight", "on point"))} {across} x {down} of "Lot"']
    if "on point" in lines[1]:
        lines.append(f"  fill {lot.choice(cloths)}")
    if lot.random() < 0.4:
        lines.append(f"  sash {small} {unit} {lot.choice(cloths)}")
    corners = ("", " mitred", " butted top first", f" corners {lot.choice(cloths)}")
    borders = range(lot.randint(0, 2))
    lines += [f"  border {large} {unit} {lot.choice(cloths)}{lot.choice(corners)}" for _ in borders]
    if lot.random() < 0.7:
        strip = {"in": lot.choice(("2 1/4", "2 1/2")), "cm": "6"}[unit]
        lines.append(f"  binding {strip} {unit} {lot.choice(cloths)} {lot.choice(('straight', 'straight', 'bias'))}")
    if lot.random() < 0.6:
        over = {"in": lot.choice(("1/4", "3", "4")), "cm": lot.choice(("1", "10"))}[unit]
        lines.append(f"  backing {lot.choice(cloths)} overage {over} {unit}")
    if (number % 2 == 0 if scraps is None else scraps) and down * across > 1:
        lines.append(f"  scraps {cloths[0]} from {lot.randint(2, min(8, down * across))} fat quarters")
    if lot.random() < 0.3:
        lines.append({"in": "  fabric width 42 in usable", "cm": "  fabric width 106 cm usable"}[unit])
    return lines
