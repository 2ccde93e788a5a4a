"""Whether the font of the pages has every letter of the words that a file wants printed."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator

from msgspec import Struct

from blockdsl.analysis.fixes import did_you_mean
from blockdsl.analysis.reading import CannotRead, Reader
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Problems
from blockdsl.fonts import has_letter
from blockdsl.fonts.further import MOST_BYTES, FurtherFont, NotAFont, further_font, letters_of
from blockdsl.syntax import ast

_MOST_NAMED = 6
_NOT_PRINTED = (ast.Use, ast.BookText, ast.Applique, ast.Font, ast.PhotoLine)
"""Lines whose quoted text names a file or draws a path."""


def read_further_font(names: Scope, reader: Reader, problems: Problems) -> FurtherFont | None:
    """The font that the maker names for letters that ours lacks; None where there is none that can be read."""
    lines = names.maker.lines if names.maker is not None else ()
    line = next((line for line in lines if isinstance(line, ast.Font)), None)
    if line is None:
        return None
    try:
        return further_font(reader.binary(line.path.text, line.span.source.name, MOST_BYTES))
    except CannotRead as fault:
        problems.report(
            fault.code,
            line.path.span,
            help=fault.help,
            related=(),
            fixes=did_you_mean(line.path, fault.near),
            **fault.values,
        )
    except NotAFont:
        help_text = "name a TrueType or OpenType file, whose name ends in .ttf or .otf"
        problems.report("font-unreadable", line.path.span, path=line.path.text, help=help_text)
    return None


def report_letters_not_in_font(file: ast.File, further: FurtherFont | None, problems: Problems) -> None:
    """Warn at each text with letters that would be printed as empty boxes; `further` is the maker's own font."""
    if file.source.text.isascii():
        return
    for text in _texts(file.declarations):
        missing = dict.fromkeys(letter for letter in text.text if _is_seen(letter) and not _is_printed(letter, further))
        if missing:
            named = ", ".join(f"“{letter}”" for letter in list(missing)[:_MOST_NAMED])
            more = f" and {len(missing) - _MOST_NAMED} more" if len(missing) > _MOST_NAMED else ""
            help_text = (
                'an empty box is printed in its place; name a font that has it, `font "My.ttf"` in the `maker`'
                if further is None
                else "the maker's own font has it neither; an empty box is printed in its place"
            )
            problems.report("letter-not-in-font", text.span, letters=f"{named}{more}", help=help_text)


def _is_printed(letter: str, further: FurtherFont | None) -> bool:
    return has_letter(letter) or (further is not None and ord(letter) in letters_of(further))


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
        case Struct() if not isinstance(found, _NOT_PRINTED):
            for name in found.__struct_fields__:
                yield from _texts(getattr(found, name))
        case _:
            pass
