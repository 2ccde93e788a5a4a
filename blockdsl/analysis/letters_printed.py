"""Whether the font of the pages has every letter of the words that a file wants printed."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator
from dataclasses import fields, is_dataclass

from blockdsl.diagnostics import Problems
from blockdsl.fonts import has_letter
from blockdsl.syntax import ast

_MOST_NAMED = 6
_NOT_PRINTED = (ast.Use, ast.BookText, ast.Applique)
"""Lines whose quoted text names a file or draws a path."""


def report_letters_not_in_font(file: ast.File, problems: Problems) -> None:
    """Warn at each text with letters that would be printed as empty boxes."""
    if file.source.text.isascii():
        return
    for text in _texts(file.declarations):
        missing = dict.fromkeys(letter for letter in text.text if not has_letter(letter) and _is_seen(letter))
        if missing:
            named = ", ".join(f"“{letter}”" for letter in list(missing)[:_MOST_NAMED])
            more = f" and {len(missing) - _MOST_NAMED} more" if len(missing) > _MOST_NAMED else ""
            help_text = (
                "use Latin, Greek, Cyrillic, Hebrew, Arabic or Thai letters; a box is printed in place of others"
            )
            problems.report("letter-not-in-font", text.span, letters=f"{named}{more}", help=help_text)


def _is_seen(letter: str) -> bool:
    """Whether something is printed for it: joiners and variation marks only change their neighbours."""
    return unicodedata.category(letter) not in ("Cf", "Mn", "Zs")


def _texts(found: object) -> Iterator[ast.Text]:
    """All quoted words below a node of the tree that are printed."""
    match found:
        case ast.Text():
            yield found
        case tuple():
            for each in found:
                yield from _texts(each)
        case _ if is_dataclass(found) and not isinstance(found, _NOT_PRINTED):
            for field in fields(found):
                yield from _texts(getattr(found, field.name))
        case _:
            pass
