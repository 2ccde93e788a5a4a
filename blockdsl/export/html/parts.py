"""Each part of a web page as markup."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from blockdsl.document.parts import (
    Card,
    Cards,
    DefinitionList,
    Divider,
    DocumentPart,
    DocumentSection,
    FabricKey,
    Heading,
    Image,
    Listing,
    Paragraph,
    Places,
    Quotation,
    RichText,
    Signs,
    Table,
    TextRun,
    Tick,
    Verbatim,
)
from blockdsl.export.html.elements import address, element, words
from blockdsl.export.html.picture import picture_markup
from blockdsl.export.html.table import table_markup

_WEIGHTS: Final = {"strong": "strong", "emphasis": "em"}


def parts_markup(parts: Iterable[DocumentPart]) -> str:
    """All parts, one behind the other."""
    return "".join(map(_part, parts))


def _part(part: DocumentPart) -> str:  # noqa: C901, PLR0911, PLR0912 - one line for each part there is
    match part:
        case Heading():
            return element(f"h{part.level}", runs(part.words), id=part.anchor or None, dir="auto")
        case Paragraph():
            return element("p", runs(part.words), dir="auto")
        case Listing():
            return _listing(part)
        case Quotation():
            return element("blockquote", parts_markup(part.parts))
        case Verbatim():
            return element("pre", words(part.text).replace("<br>", "\n"), tabindex="0")
        case Divider():
            return element("hr")
        case Image():
            return _picture(part)
        case DefinitionList():
            return _pairs(part)
        case FabricKey():
            return _key(part)
        case Signs():
            return _signs(part)
        case Tick():
            return element("p", element("label", element("input", type="checkbox"), " ", runs(part.words)))
        case Table():
            return table_markup(part, runs)
        case Cards():
            return element("ol" if part.kind == "steps" else "ul", *map(_card, part.cards), class_=f"cards {part.kind}")
        case Places():
            return _places(part)
        case DocumentSection():
            return element("section", _part(part.heading), parts_markup(part.parts))


def runs(said: RichText) -> str:
    """Words with their emphasis and their links."""
    return "".join(map(_run, said))


def _run(run: TextRun) -> str:
    markup = words(run.text)
    if run.weight in _WEIGHTS:
        markup = element(_WEIGHTS[run.weight], markup)
    elif run.weight == "quiet":
        markup = element("span", markup, class_="quiet")
    return element("a", markup, href=address(run.target)) if run.target else markup


def _listing(listing: Listing) -> str:
    items = [element("li", parts_markup(item)) for item in listing.items]
    if listing.start is None:
        return element("ul", *items)
    return element("ol", *items, start=None if listing.start == 1 else str(listing.start))


def _picture(picture: Image) -> str:
    drawing = picture_markup(picture.page, unseen=picture.beside)
    if not picture.caption:
        return drawing
    return element("figure", drawing, element("figcaption", words(picture.caption)))


def _pairs(pairs: DefinitionList) -> str:
    entries = [
        element("div", element("dt", words(name)), *(element("dd", runs(line)) for line in lines))
        for name, lines in pairs.entries
    ]
    return element("dl", *entries, class_=pairs.kind)


def _key(key: FabricKey) -> str:
    lines = [
        element(
            "li",
            picture_markup(line.swatch, unseen=True),
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
    lines = [element("li", picture_markup(sign.drawing, unseen=True), words(sign.words)) for sign in signs.entries]
    return element("ul", *lines, class_="signs")


def _card(card: Card) -> str:
    """A card that leads somewhere is one link, of words alone inside, so that it is heard as one."""
    if not card.target:
        return element("li", parts_markup(card.parts))
    inside = [
        element("span", runs(part.words), class_="line") if isinstance(part, Paragraph) else _part(part)
        for part in card.parts
    ]
    return element("li", element("a", *inside, href=address(card.target)))


def _places(places: Places) -> str:
    items = [element("li", _run(entry)) for entry in places.entries]
    if not places.label:
        return element("ul", *items, class_="places")
    return element("nav", element("ul", *items, class_="places"), aria_label=places.label)
