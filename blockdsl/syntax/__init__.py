"""The words of a block file.

Takes:    text.
Gives:    the ast (frozen, every node has its span), and text again (format).
Measures: code points.
Reports:  mistakes of grammar.
Does not know: sizes, colours.
"""

from blockdsl.syntax.format import format_text
from blockdsl.syntax.parse import parse

__all__ = ["format_text", "parse"]
