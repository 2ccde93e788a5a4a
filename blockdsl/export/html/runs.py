"""Words of a web page as markup: runs with their emphasis and links, boxes to tick, headings."""

from __future__ import annotations

from typing import Final

from blockdsl.document.content import Heading, Reference, RichText, TextRun, WebLink
from blockdsl.export.html.elements import address, element, words

_WEIGHTS: Final = {"strong": "strong", "emphasis": "em"}


def runs(said: RichText) -> str:
    """Words with their emphasis and their links."""
    return "".join(map(run_markup, said))


def run_markup(run: TextRun) -> str:
    """One run."""
    markup = words(run.text)
    if run.weight in _WEIGHTS:
        markup = element(_WEIGHTS[run.weight], markup)
    elif run.weight == "quiet":
        markup = element("span", markup, class_="quiet")
    return element("a", markup, href=address(run.target)) if run.target else markup


def heading_markup(part: Heading) -> str:
    """A heading with its remark beside it; nothing for one without words."""
    if not part.words[0].text:
        return ""
    heading = element(f"h{part.level}", runs(part.words), id=part.anchor or None, dir="auto")
    if not part.aside:
        return heading
    return element("div", heading, element("p", words(part.aside), class_="aside"), class_="head")


def tick_markup(said: str) -> str:
    """A box to tick before the words."""
    return element(
        "p", element("label", element("input", type="checkbox"), " ", element("span", said)), class_="tickable"
    )


def reference_markup(reference: Reference) -> str:
    """Words that lead to another part of the site."""
    return element("p", element("a", words(reference.text), href=address(reference.target)))


def web_link_markup(link: WebLink) -> str:
    """Words that lead to an address of the web."""
    return element("p", element("a", words(link.words), href=link.address), class_="out", dir="auto")
