"""Fixes that several passes offer: the name that was meant, a fabric that is missing, a line that is too much."""

from __future__ import annotations

from blockdsl.diagnostics import Edit, Fix, Span, change_to
from blockdsl.syntax import ast

_COLOUR = "#c0c0c0"


def did_you_mean(said: ast.Word | ast.Text, near: str | None) -> tuple[Fix, ...]:
    """The name that was probably meant, in quotation marks where one was said so; nothing where none is near."""
    if near is None:
        return ()
    return (change_to(said.span, f'"{near}"' if isinstance(said, ast.Text) else near),)


def declare_fabric(word: ast.Word, file: ast.File) -> Fix:
    """A `fabric` line for a word, below the file's other fabrics or above its first declaration."""
    source = file.source
    line = f'fabric {word.text} "{word.text.replace("-", " ").replace("_", " ").capitalize()}" {_COLOUR}'
    end = "\r\n" if "\r\n" in source.text else "\n"
    fabrics = [each for each in file.declarations if isinstance(each, ast.FabricDeclaration)]
    if fabrics:
        number = fabrics[-1].span.line
        at = source.offset(number, len(source.line(number)) + 1)
        edit = Edit(Span(source, at, at), f"{end}{line}")
    else:
        first = next((each for each in file.declarations if not isinstance(each, ast.Use)), None)
        at = source.offset(first.span.line if first else 1, 1)
        edit = Edit(Span(source, at, at), f"{line}{end}{end}")
    return Fix(f"Declare the fabric `{word.text}`", (edit,))


def without_line(line: Span, what: str) -> Fix:
    """The fix that takes a whole line away; `what` it is called."""
    source = line.source
    here, below = source.offset(line.line, 1), source.offset(line.line + 1, 1)
    if line.line == len(source.line_starts):  # the last line has none below it
        below = source.offset(line.line, len(source.line(line.line)) + 1)
    return Fix(f"Take the {what} line out", (Edit(Span(source, here, below), ""),))


def line_below(line: Span, text: str) -> Edit:
    """A new line below another, indented as lines of a declaration are."""
    source = line.source
    at = source.offset(line.line, len(source.line(line.line)) + 1)
    end = "\r\n" if "\r\n" in source.text else "\n"
    return Edit(Span(source, at, at), f"{end}  {text}")
