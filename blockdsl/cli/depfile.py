"""Rules for make: what was written, and the files that it was made from."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path


def make_rules(targets: Iterable[Path], sources: Iterable[Path]) -> str:
    """One rule with all targets and all sources, then an empty rule for each source.

    The empty rules keep make going when a source is taken away or renamed later.
    """
    wanted = [escape_target(path) for path in targets]
    needed = list(dict.fromkeys(escape_prerequisite(path) for path in sources))
    rules = [f"{_listed(wanted)}:{' ' if needed else ''}{_listed(needed)}"]
    rules += [f"{name}:" for name in needed]
    return "\n\n".join(rules) + "\n"


def escape_prerequisite(path: Path) -> str:
    r"""The path as GNU make reads it among the sources of a rule: `\ `, `\#`, `\:`, `$$`.

    Backslashes are doubled only where they stand before something that is escaped: make leaves others alone.
    """
    return _escaped(path, " \t#:")


def escape_target(path: Path) -> str:
    r"""The path as GNU make reads it before a rule's colon; there `%` would make a pattern of it."""
    return _escaped(path, " \t#:%")


def _escaped(path: Path, special: str) -> str:
    text = ""
    backslashes = 0
    for letter in path.as_posix():
        if letter == "\\":
            backslashes += 1
            text += letter
            continue
        if letter in special:
            text += "\\" * backslashes + "\\"
        text += "$$" if letter == "$" else letter
        backslashes = 0
    return text


def _listed(names: list[str]) -> str:
    return " \\\n  ".join(names)
