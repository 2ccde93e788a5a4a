"""Elements and words of HTML, escaped in one place, so that no name of a quilter's can become markup."""

from __future__ import annotations

import re
from html import escape
from typing import Final
from urllib.parse import quote

from blockdsl.export.printable import check_text

_VOID: Final = frozenset({"hr", "input", "link", "meta", "br"})
_FIGURES: Final = {ord(letter): str(place % 10) for place, letter in enumerate("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉")}
_SET: Final = re.compile(r"([⁰¹²³⁴⁵⁶⁷⁸⁹]+)⁄([₀₁₂₃₄₅₆₇₈₉]+)")
_FRACTION: Final = re.compile(r"(?<![\w/.,])(\d+)/(\d+)(?![\w/]|[.,]\d)", re.ASCII)
_HELD: Final = re.compile(r"(?<=\d) (?=\d+/\d)|(?<=\d) (?=(?:in|cm|mm|yd)\b|×)|(?<=×) (?=\d)")


def element(name: str, /, *inner: str, **attributes: str | None) -> str:
    """An element around markup. `class_` means `class`, `aria_label` means `aria-label`; None leaves one out.

    An empty value leaves the attribute's name alone: `hidden`.
    """
    told = "".join(
        f" {key.rstrip('_').replace('_', '-')}" + (f'="{escape(check_text(value))}"' if value else "")
        for key, value in attributes.items()
        if value is not None
    )
    return f"<{name}{told}>" if name in _VOID else f"<{name}{told}>{''.join(inner)}</{name}>"


def plain_fractions(text: str) -> str:
    """Set fractions as plain ones, for those who hear the page or copy from it: `2 ⁷⁄₈` becomes `2 7/8`."""
    return _SET.sub(lambda found: f"{found[1].translate(_FIGURES)}/{found[2].translate(_FIGURES)}", text)


def words(text: str) -> str:
    """Words as markup: fractions marked to be set as such, and held on one line with their number and unit."""
    held = _HELD.sub("\N{NO-BREAK SPACE}", plain_fractions(text))
    marked = []
    end = 0
    for found in _FRACTION.finditer(held):
        marked += [_line_breaks(held[end : found.start()]), f'<span class="fraction">{found[0]}</span>']
        end = found.end()
    return "".join([*marked, _line_breaks(held[end:])])


def _line_breaks(text: str) -> str:
    return "<br>".join(map(unset, text.split("\n")))


def unset(text: str) -> str:
    """Words as markup with nothing in them set in any way."""
    return escape(check_text(text), quote=False)


def address(target: str) -> str:
    """The relative address of a target: `harbour-light#size-2` becomes `harbour-light.html#size-2`."""
    name, mark, anchor = target.partition("#")
    return f"{quote(file_name(name))}{mark}{quote(anchor)}"


def file_name(page: str) -> str:
    """The name of a page's file."""
    return f"{page}.html"
