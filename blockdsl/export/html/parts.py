"""Each part of a web page as markup."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from blockdsl.document.content import (
    AtSize,
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
    Picture,
    Places,
    Plate,
    Prose,
    Quotation,
    Reference,
    RichText,
    Section,
    Signs,
    Step,
    StepPart,
    Steps,
    Table,
    TextRun,
    Tick,
    Verbatim,
    WebLink,
)
from blockdsl.export.html.elements import address, element, words
from blockdsl.export.html.picture import picture_markup
from blockdsl.export.html.table import table_markup

_WEIGHTS: Final = {"strong": "strong", "emphasis": "em"}
_LAYOUTS: Final = {"below": None, "beside": "beside"}


def parts_markup(parts: Iterable[Part], level: int = 1) -> str:
    """All parts, one behind the other, under a heading of that level."""
    return "".join(_part(part, level) for part in parts)


def _part(part: Part, level: int) -> str:  # noqa: C901, PLR0911, PLR0912 - one line for each part there is
    match part:
        case Heading():
            return _heading(part)
        case Paragraph():
            return element("p", runs(part.words), dir="auto", class_="small" if part.small else None)
        case Listing():
            return _listing(part, level)
        case Quotation():
            return element("blockquote", parts_markup(part.parts, level))
        case Verbatim():
            return element("pre", words(part.text).replace("<br>", "\n"), tabindex="0")
        case Divider():
            return element("hr")
        case Picture():
            return _picture(part)
        case Plate():
            return _plate(part, level)
        case DefinitionList():
            return _pairs(part)
        case FabricKey():
            return _key(part)
        case Signs():
            return _signs(part)
        case Tick():
            return _tick(runs(part.words))
        case Table():
            return table_markup(part, runs)
        case Cards():
            return element("ul", *(_card(card, level) for card in part.cards), class_=f"cards {part.kind}")
        case Steps():
            return element("ol", *(_step(step, level + 1) for step in part.steps), class_=f"cards steps {part.kind}")
        case Places():
            return _places(part)
        case Reference():
            return element("p", element("a", words(part.text), href=address(part.target)))
        case WebLink():
            return _web_link(part)
        case Prose():
            return parts_markup(part.parts, level)
        case Columns():
            return element("div", parts_markup(part.sections, level), class_="columns")
        case AtSizes():
            return "".join(_at_size(size, level + 1) for size in part.sizes)
        case Section():
            inner = parts_markup(part.parts, part.heading.level)
            return element("section", _heading(part.heading), inner, class_=_LAYOUTS[part.layout])


def _web_link(link: WebLink) -> str:
    return element("p", element("a", words(link.words), href=link.address), class_="out", dir="auto")


def _heading(part: Heading) -> str:
    """A heading with its remark beside it; nothing for one without words."""
    if not part.words[0].text:
        return ""
    heading = element(f"h{part.level}", runs(part.words), id=part.anchor or None, dir="auto")
    if not part.aside:
        return heading
    return element("div", heading, element("p", words(part.aside), class_="aside"), class_="head")


def _at_size(size: AtSize, level: int) -> str:
    heading = element(f"h{level}", words(size.name), id=size.anchor)
    return element("section", heading, parts_markup(size.parts(), level))


def _plate(plate: Plate, level: int) -> str:
    """The pictures, then the key; cards that repeat what follows find no room beside them."""
    pictures = element("ul", *(element("li", _picture(each)) for each in plate.pictures), class_="cards pictures")
    others = (part for part in plate.beside if not isinstance(part, Cards))
    return pictures + (_key(plate.key) if plate.key.fabrics else "") + parts_markup(others, level)


def _tick(said: str) -> str:
    return element("p", element("label", element("input", type="checkbox"), " ", said))


# --- steps -------------------------------------------------------------------------------------------


def _step(step: Step, level: int) -> str:
    """One step: its pictures, its number and name, then what to do part by part."""
    made = f", {step.made}" if step.made else ""
    heading = element(f"h{level}", element("span", f"{step.number} ", class_="number"), words(step.name + made))
    size = element("p", words(step.size), class_="quiet") if step.size else ""
    remark = element("p", words(step.remark), class_="quiet") if step.remark else ""
    remark += "".join(element("p", words(note), class_="note", dir="auto") for note in step.notes)
    remark += "".join(map(_picture, step.photos)) + "".join(map(_web_link, step.links))
    pictured = "with-pictures" if any(part.picture is not None for part in step.parts) else None
    parts = "".join(_step_part(part, level + 1) for part in step.parts)
    if pictured:
        parts = element("ol", *(element("li", _step_part(part, level + 1)) for part in step.parts), class_="parts")
    return element("li", *map(_picture, step.pictures), heading, size, parts, remark, class_=pictured)


def _step_part(part: StepPart, level: int) -> str:
    picture = _picture(part.picture) if part.picture is not None else ""
    named = element(f"h{level}", words(f"{part.letter} {part.heading}".strip())) if part.heading else ""
    sentences = " ".join(filter(None, ("" if part.heading else part.letter, *part.sentences)))
    said = element("p", words(sentences), dir="auto") if sentences else ""
    measure = _tick(element("strong", words(part.measure))) if part.measure else ""
    after = element("p", words(" ".join(part.after))) if part.after else ""
    return picture + named + said + measure + after


# --- words -------------------------------------------------------------------------------------------


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


def _listing(listing: Listing, level: int) -> str:
    items = [element("li", parts_markup(item, level)) for item in listing.items]
    if listing.start is None:
        return element("ul", *items)
    return element("ol", *items, start=None if listing.start == 1 else str(listing.start))


def _picture(picture: Picture) -> str:
    drawing = picture_markup(picture)
    if not picture.caption:
        return drawing
    return element("figure", drawing, element("figcaption", words(picture.caption)))


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


def _card(card: Card, level: int) -> str:
    """A card that leads somewhere is one link, of words alone inside, so that it is heard as one."""
    if not card.target:
        number = element("span", str(card.number), class_="number") if card.number else ""
        return element("li", number, parts_markup(card.parts, level))
    inside = [_inside(part, level) for part in card.parts]
    return element("li", element("a", *inside, href=address(card.target)))


def _inside(part: Part, level: int) -> str:
    """What a card that leads somewhere holds: its picture repeats its words."""
    if isinstance(part, Picture):
        return picture_markup(part, unseen=True)
    return element("span", runs(part.words), class_="line") if isinstance(part, Paragraph) else _part(part, level)


def _places(places: Places) -> str:
    items = [element("li", _run(entry)) for entry in places.entries]
    if not places.label:
        return element("ul", *items, class_="places")
    return element("nav", element("ul", *items, class_="places"), aria_label=places.label)
