"""The keys of the cache: a digest of all that decides what the bytes will be."""

from __future__ import annotations

import os
import sys
import zlib
from functools import cache
from hashlib import sha256
from pathlib import Path
from typing import Final

from blockdsl import __version__
from blockdsl.resources import grammar_folder, library_folder

_PACKAGES: Final = ("highspy", "uharfbuzz", "svgwrite", "lark", "markdown-it-py", "pillow", "segno")
"""Whose versions may show in what is made. cairo is not among them: only what it draws depends on its version."""

CODE: Final = (".py", ".ftl", ".lark", ".block", ".ttf", ".woff2", ".css", ".json")
"""The files that pages are made from, their messages among them."""


def key_of(*parts: object) -> str:
    """The key of what is made from these parts by this very program.

    Parts are told apart by their `repr`, which has to say all that matters of them: true of facts, words and numbers.
    """
    return sha256("\n".join((program(), *map(repr, parts))).encode("utf-8", "surrogatepass")).hexdigest()


def content_of(facts: object) -> str:
    """A digest of facts, to stand for them in several keys."""
    return sha256(repr(facts).encode("utf-8", "surrogatepass")).hexdigest()


@cache
def program() -> str:
    """What this program is: its version, its files, and the packages that it works with.

    The files count as well as the version, for in a working copy they change while the version stays. Their sizes and
    times are looked at, not their contents: that is done in a thousandth of a second.
    """
    from importlib.metadata import PackageNotFoundError, version

    told = [__version__, sys.version, zlib.ZLIB_RUNTIME_VERSION]
    for package in _PACKAGES:
        try:
            told.append(version(package))
        except PackageNotFoundError:  # put there by other means than pip
            told.append("unknown")
    for top in (Path(__file__).parent.parent, grammar_folder(), library_folder()):
        told += _looks(top)
    return sha256("\n".join(told).encode("utf-8", "surrogatepass")).hexdigest()


def _looks(top: Path) -> list[str]:
    """Name, size and time of every file of ours below a folder."""
    found = []
    for folder, _, names in os.walk(top):
        for name in names:
            if name.endswith(CODE):
                known = os.stat(os.path.join(folder, name))  # noqa: PTH116, PTH118 - pathlib takes five times as long
                found.append(f"{folder}/{name} {known.st_size} {known.st_mtime_ns}")
    return sorted(found)
