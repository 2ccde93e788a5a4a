"""What is said for each of a block's finished sizes: once where it is the same, else each for the sizes it is for.

A style sheet shows those of the chosen size alone, as `sizes_rules` says; where it cannot, all stand one below the
other, each with the name of its size.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.export.html.elements import element, plain_fractions, words

_NAME: Final = "finished-size"
SIZES: Final = "data-at"
"""The attribute that says for which sizes something is, by their places from 1."""


def at_each(markups: Sequence[str], names: Sequence[str]) -> str:
    """The same thing for each of the sizes, which have these names."""
    groups: dict[str, list[int]] = {}
    for place, markup in enumerate(markups, start=1):
        groups.setdefault(markup, []).append(place)
    if len(groups) == 1:
        return markups[0]
    return "".join(
        element("div", markup, data_at=places_of(places), data_sizes=", ".join(names[place - 1] for place in places))
        for markup, places in groups.items()
        if markup
    )


def places_of(places: Sequence[int]) -> str | None:
    """The value of the attribute, None for what is for all sizes."""
    return " ".join(map(str, places)) or None


def switch_markup(names: Sequence[str], label: str) -> str:
    """The sizes to choose from, the first of them chosen; nothing for a page without."""
    if not names:
        return ""
    choices = [
        element(
            "label",
            element(
                "input",
                type="radio",
                name=_NAME,
                id=f"at-{place}",
                value=plain_fractions(name),
                checked="" if place == 1 else None,
            ),
            element("span", words(name)),
        )
        for place, name in enumerate(names, start=1)
    ]
    return element("fieldset", element("legend", words(label), class_="unseen"), *choices, class_="switch")


def sizes_rules(most: int) -> str:
    """The rules that show one size, for pages of as many sizes as `most`."""
    return "".join(
        f":root:has(#at-{place}:checked) [{SIZES}]:not([{SIZES}~='{place}']){{display:none}}\n"
        for place in range(1, most + 1)
    )
