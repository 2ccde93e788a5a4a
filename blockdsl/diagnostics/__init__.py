"""Problems as data.

Takes:    nothing; the other layers report through it.
Gives:    `Source`, `Span`, `Diagnostic` with its `Fix`es, `Problems` (the collector), the catalogue, renderers.
Measures: code points, lines and columns from 1.
Reports:  -
Does not know: blocks.
"""

from blockdsl.diagnostics.catalogue import CATALOGUE, Entry, Severity
from blockdsl.diagnostics.problems import Diagnostic, Edit, Fix, Problems, change_to, nearest_word
from blockdsl.diagnostics.render import render_json, render_short, render_text, summary
from blockdsl.diagnostics.source import Source, Span

__all__ = [
    "CATALOGUE",
    "Diagnostic",
    "Edit",
    "Entry",
    "Fix",
    "Problems",
    "Severity",
    "Source",
    "Span",
    "change_to",
    "nearest_word",
    "render_json",
    "render_short",
    "render_text",
    "summary",
]
