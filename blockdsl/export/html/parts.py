"""Each part of a web page as markup."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final

from blockdsl.document.content import (
    AtSizes,
    Card,
    Cards,
    Columns,
    DefinitionList,
    Divider,
    FabricKey,
    Heading,
    Listing,
    Paragraph,
    Part,
    Parts,
    Picture,
    Places,
    Plate,
    Prose,
    Quotation,
    Reference,
    Section,
    Signs,
    Steps,
    Table,
    Tick,
    Verbatim,
    WebLink,
)
from blockdsl.export.html.elements import address, element, words
from blockdsl.export.html.picture import Enlarging, figure_markup, picture_markup
from blockdsl.export.html.runs import heading_markup, reference_markup, run_markup, runs, tick_markup, web_link_markup
from blockdsl.export.html.sizes import at_each, places_of
from blockdsl.export.html.steps import steps_markup
from blockdsl.export.html.table import table_markup

_LAYOUTS: Final = {"below": None, "beside": "beside"}


def parts_markup(parts: Iterable[Part], enlarging: Enlarging, level: int = 1) -> str:
    """All parts, one behind the other, under a heading of that level."""
    return "".join(_part(part, level, enlarging) for part in parts)


def _part(part: Part, level: int, enlarging: Enlarging) -> str:  # noqa: C901, PLR0911, PLR0912 - one line for each part there is
    match part:
        case Heading():
            return heading_markup(part)
        case Paragraph():
            return element("p", runs(part.words), dir="auto", class_="small" if part.small else None)
        case Listing():
            return _listing(part, level, enlarging)
        case Quotation():
            return element("blockquote", parts_markup(part.parts, enlarging, level))
        case Verbatim():
            return element("pre", words(part.text).replace("<br>", "\n"), tabindex="0")
        case Divider():
            return element("hr")
        case Picture():
            return figure_markup(part, enlarging)
        case Plate():
            return _plate(part, level, enlarging)
        case DefinitionList():
            return _pairs(part)
        case FabricKey():
            return _key(part)
        case Signs():
            return _signs(part)
        case Tick():
            return tick_markup(runs(part.words))
        case Table():
            return table_markup(part, runs)
        case Cards():
            return element("ul", *(_card(card, level, enlarging) for card in part.cards), class_=f"cards {part.kind}")
        case Steps():
            return steps_markup((part,), ("",), level + 1, enlarging) or ""
        case Places():
            return _places(part)
        case Reference():
            return reference_markup(part)
        case WebLink():
            return web_link_markup(part)
        case Prose():
            return parts_markup(part.parts, enlarging, level)
        case Columns():
            return element("div", parts_markup(part.sections, enlarging, level), class_="columns")
        case AtSizes():
            return _at_sizes(part, level, enlarging)
        case Section():
            inner = parts_markup(part.parts, enlarging, part.heading.level)
            heading, layout = heading_markup(part.heading), _LAYOUTS[part.layout]
            return element("section", heading, inner, class_=layout, data_at=places_of(part.at))


def _at_sizes(part: AtSizes, level: int, enlarging: Enlarging) -> str:
    """What is the same at every size once; where the parts are not the same ones, all of them for each size."""
    names = [size.name for size in part.sizes]
    told = [size.parts() for size in part.sizes]
    merged = _merged(told, names, level, enlarging)
    if merged is not None:
        return merged
    whole = (
        element("section", element(f"h{level + 1}", words(size.name)), parts_markup(parts, enlarging, level + 1))
        for size, parts in zip(part.sizes, told, strict=True)
    )
    return at_each(list(whole), names)


def _merged(told: Sequence[Parts], names: Sequence[str], level: int, enlarging: Enlarging) -> str | None:
    if len({len(parts) for parts in told}) > 1:
        return None
    markups = []
    for column in zip(*told, strict=True):
        steps = [part for part in column if isinstance(part, Steps)]
        if len(steps) == len(column):
            markup = steps_markup(steps, names, level + 1, enlarging)
            if markup is None:
                return None
            markups.append(markup)
        else:
            markups.append(at_each([_part(part, level, enlarging) for part in column], names))
    return "".join(markups)


def _plate(plate: Plate, level: int, enlarging: Enlarging) -> str:
    """The pictures, then the key; cards that repeat what follows find no room beside them."""
    pictures = element(
        "ul", *(element("li", figure_markup(each, enlarging)) for each in plate.pictures), class_="cards pictures"
    )
    others = (part for part in plate.beside if not isinstance(part, Cards))
    return pictures + (_key(plate.key) if plate.key.fabrics else "") + parts_markup(others, enlarging, level)


def _listing(listing: Listing, level: int, enlarging: Enlarging) -> str:
    items = [element("li", parts_markup(item, enlarging, level)) for item in listing.items]
    if listing.start is None:
        return element("ul", *items)
    return element("ol", *items, start=None if listing.start == 1 else str(listing.start))


def _pairs(pairs: DefinitionList) -> str:
    entries = [
        element(
            "div",
            element("dt", words(entry.name)),
            *(element("dd", runs(line)) for line in (*entry.lines, *((entry.where,) if entry.where else ()))),
        )
        for entry in pairs.entries
    ]
    return element("dl", *entries, class_="terms" if pairs.kind == "index" else pairs.kind)


def _key(key: FabricKey) -> str:
    lines = [
        element(
            "li",
            picture_markup(line.swatch),
            element("span", str(line.number), class_="number"),
            " ",
            element("bdi", words(line.label)),
            " ",
            element("span", words(line.value), class_="quiet"),
        )
        for line in key.fabrics
    ]
    return element("ul", *lines, class_="key")


def _signs(signs: Signs) -> str:
    lines = [element("li", picture_markup(sign.drawing), words(sign.words)) for sign in signs.entries]
    return element("ul", *lines, class_="signs")


def _card(card: Card, level: int, enlarging: Enlarging) -> str:
    """A card that leads somewhere is one link, of words alone inside, so that it is heard as one."""
    if not card.target:
        number = element("span", str(card.number), class_="number") if card.number else ""
        return element("li", number, parts_markup(card.parts, enlarging, level))
    inside = [_inside(part, level, enlarging) for part in card.parts]
    return element("li", element("a", *inside, href=address(card.target)))


def _inside(part: Part, level: int, enlarging: Enlarging) -> str:
    """What a card that leads somewhere holds: its picture repeats its words."""
    if isinstance(part, Picture):
        return picture_markup(part, unseen=True)
    return (
        element("span", runs(part.words), class_="line")
        if isinstance(part, Paragraph)
        else _part(part, level, enlarging)
    )


def _places(places: Places) -> str:
    items = [element("li", run_markup(entry)) for entry in places.entries]
    if not places.label:
        return element("ul", *items, class_="places")
    return element("nav", element("ul", *items, class_="places"), aria_label=places.label)
