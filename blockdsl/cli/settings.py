"""What a project says of warnings: `[problems]` in blockdsl.toml, `[tool.blockdsl.problems]` in pyproject.toml."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Callable, Mapping
from functools import cache, partial
from pathlib import Path
from typing import Final

from blockdsl.cli.saying import in_words
from blockdsl.cli.status import USAGE, CannotGoOn
from blockdsl.diagnostics import CATALOGUE, nearest_word
from blockdsl.diagnostics.levels import AS_THEY_ARE, Levels, is_warning

_FILES: Final = (("blockdsl.toml", ("problems",)), ("pyproject.toml", ("tool", "blockdsl", "problems")))
_KEYS: Final = ("allow", "deny", "warnings-as-errors")
_MOST_BYTES: Final = 1 << 20


def levels_asked(arguments: Namespace) -> Callable[[Path | None], Levels]:
    """For each file how its warnings count: what its project says, and what the command says beside it.

    Errors: CannotGoOn where the project's settings cannot be read, by file and line.
    """
    asked = Levels(frozenset(arguments.deny), frozenset(arguments.allow), arguments.warnings_as_errors)
    return partial(_levels_for, asked, cache(_of_project))


def _levels_for(asked: Levels, of_project: Callable[[Path], Levels], path: Path | None) -> Levels:
    try:
        folder = Path.cwd() if path is None else path.resolve().parent
    except (OSError, RuntimeError, ValueError):  # a ring of links, a path that no system knows
        return asked
    return of_project(folder).and_also(asked)


def _of_project(folder: Path) -> Levels:
    """What the nearest settings say, of this folder or one above it."""
    for place in (folder, *folder.parents):
        for name, keys in _FILES:
            path = place / name
            if path.is_file():
                table = _table(path, keys)
                if table is not None:
                    return _levels(path, table)
    return AS_THEY_ARE


def _table(path: Path, keys: tuple[str, ...]) -> Mapping[str, object] | None:
    """The table of settings in a file; None where it has none."""
    import tomllib

    try:
        with path.open("rb") as file:
            found: object = tomllib.loads(file.read(_MOST_BYTES).decode("utf-8"))
    except tomllib.TOMLDecodeError as fault:
        raise CannotGoOn(f"{path}: {fault}", USAGE) from None
    except UnicodeDecodeError:
        raise CannotGoOn(f"{path}: it is not UTF-8 text", USAGE) from None
    except OSError as fault:
        raise CannotGoOn(f"{path}: {in_words(fault)}", USAGE) from fault
    for key in keys:
        found = found.get(key) if isinstance(found, dict) else None
    if found is not None and not isinstance(found, dict):
        raise CannotGoOn(f"{path}: `{'.'.join(keys)}` should be a table: [{'.'.join(keys)}]", USAGE)
    return found


def _levels(path: Path, table: Mapping[str, object]) -> Levels:
    for key in table:
        if key not in _KEYS:
            raise CannotGoOn(f"{path}{_line_of(path, key)}: there is no setting {key!r}; there are {_listed()}", USAGE)
    every = table.get("warnings-as-errors", False)
    if not isinstance(every, bool):
        raise CannotGoOn(f"{path}{_line_of(path, 'warnings-as-errors')}: `warnings-as-errors` is true or false", USAGE)
    return Levels(_codes(path, table, "deny"), _codes(path, table, "allow"), every)


def _codes(path: Path, table: Mapping[str, object], key: str) -> frozenset[str]:
    codes = table.get(key, [])
    if not isinstance(codes, list) or not all(isinstance(code, str) for code in codes):
        raise CannotGoOn(f'{path}{_line_of(path, key)}: `{key}` is a list of codes, such as ["fabric-unused"]', USAGE)
    for code in codes:
        if (wrong := wrong_code(code)) is not None:
            raise CannotGoOn(f"{path}{_line_of(path, code)}: {wrong}", USAGE)
    return frozenset(codes)


def wrong_code(code: str) -> str | None:
    """What is wrong with a code that should be that of a warning; None where nothing is."""
    if is_warning(code):
        return None
    if code in CATALOGUE:
        return f"{code!r} is an error, and stays one; only warnings can be allowed or denied"
    near = nearest_word(code, filter(is_warning, CATALOGUE))
    hint = f"; did you mean {near!r}?" if near else "; `blockdsl explain` lists them all"
    return f"there is no problem {code!r}{hint}"


def _listed() -> str:
    return f"{', '.join(_KEYS[:-1])} and {_KEYS[-1]}"


def _line_of(path: Path, word: str) -> str:
    """`:3` where a word stands in the third line; nothing where it cannot be found again."""
    lines = path.read_text("utf-8").splitlines()
    return next((f":{number}" for number, line in enumerate(lines, start=1) if word in line), "")
