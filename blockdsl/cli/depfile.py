"""Rules for make: what was written, and the files that it was made from."""

from __future__ import annotations

import re
from collections.abc import Iterable
from pathlib import Path
from typing import Final

from blockdsl.cli.status import CannotGoOn
from blockdsl.export.recognised import RULES_MARK

# What means something to GNU make in a name, and the backslashes before it, which must be doubled to stay.
_IN_SOURCES: Final = re.compile(r"(\\*)([ #:*?\[\]|])")
_IN_TARGETS: Final = re.compile(r"(\\*)([ #:*?\[\]%])")

# No backslash helps against this one; make does not look for it in what a variable gives.
_EQUALS: Final = "equals_sign"

# There is no way to say these in a rule. A name that ends in brackets would be a member of an archive.
_UNSPEAKABLE: Final = re.compile(r"[;\t\r\n]|\(.*\)$")


def make_rules(targets: Iterable[Path], sources: Iterable[Path]) -> str:
    """One rule with all targets and all sources, then an empty rule for each source.

    The empty rules keep make going when a source is taken away or renamed later.

    Errors: CannotGoOn for a name that GNU make cannot know.
    """
    needed = list(dict.fromkeys(sources))
    wanted = _listed(escape_target(path) for path in dict.fromkeys(targets))
    rules = [f"{wanted}: {_listed(map(escape_source, needed))}".rstrip()]
    rules += [f"{escape_target(path)}:" for path in needed]
    text = f"{RULES_MARK.decode()}: what was made, and from which files.\n" + "\n\n".join(rules) + "\n"
    return f"{_EQUALS} := =\n{text}" if f"$({_EQUALS})" in text else text


def escape_target(path: Path) -> str:
    r"""The path as GNU make reads it before a rule's colon, where `%` would make a pattern of it."""
    return _escaped(path, _IN_TARGETS)


def escape_source(path: Path) -> str:
    r"""The path as GNU make reads it behind a rule's colon: `\ `, `\#`, `\:`, `$$` and so on.

    Backslashes are doubled only where they stand before something that is escaped: make leaves others alone.
    """
    return _escaped(path, _IN_SOURCES)


def _escaped(path: Path, special: re.Pattern[str]) -> str:
    name = path.as_posix()
    if _UNSPEAKABLE.search(name):
        raise CannotGoOn(f"a makefile cannot name {name!r}: give the file a name of letters and digits")
    text = special.sub(r"\1\1\\\2", name).replace("$", "$$").replace("=", f"$({_EQUALS})")
    return f"./{text}" if text.startswith("~") else text  # a `~` at the start would be a home folder


def _listed(names: Iterable[str]) -> str:
    return " \\\n  ".join(names)
