"""A web site as files: a page each, one style sheet, the font files; links are relative, and nothing leads outside."""

from __future__ import annotations

from importlib.resources import files as resources
from typing import Final

from blockdsl.document.content import WebPage, WebSite
from blockdsl.export.html.elements import address, element, file_name, unset, words
from blockdsl.export.html.fonts import web_fonts
from blockdsl.export.html.parts import parts_markup
from blockdsl.export.recognised import PRODUCER
from blockdsl.fonts import FAMILY
from blockdsl.marks import theme
from blockdsl.marks.typeset import painted
from blockdsl.model.maker import Maker
from blockdsl.wording.messages import Messages, messages

_STYLE: Final = "style.css"
_MAIN: Final = "main"
_COLOURS: Final = {
    "ink": theme.INK,
    "quiet": theme.QUIET,
    "rule": theme.RULE,
    "tint": theme.TINT,
    "accent": theme.ACCENT,
    "paper": theme.WHITE,
}


def site_files(site: WebSite) -> dict[str, bytes]:
    """The bytes of every file by its name; the same each time.

    Errors: Unprintable where a word or a picture cannot be written.
    """
    pages = {file_name(page.name): _document(site, place) for place, page in enumerate(site.pages)}
    fonts = web_fonts(frozenset("".join(pages.values())))
    files = {name: markup.encode() for name, markup in pages.items()}
    return files | {_STYLE: f"{fonts.rules}\n{_rules()}".encode()} | fonts.files


def _rules() -> str:
    """The style sheet but for the font files: the colours of the printed sheet, and the rules of `site.css`."""
    colours = "".join(f"--{name}:{painted(colour)};" for name, colour in _COLOURS.items())
    rules = resources(__package__).joinpath("site.css").read_text(encoding="utf-8")
    return f":root{{{colours}--font:{FAMILY},sans-serif}}\n{rules}"


def _document(site: WebSite, place: int) -> str:
    page, say = site.pages[place], messages(site.language)
    title = page.title if place == 0 else f"{page.title} – {site.title}"
    head = element(
        "head",
        element("meta", charset="utf-8"),
        element("meta", name="viewport", content="width=device-width, initial-scale=1"),
        element("meta", name="generator", content=PRODUCER),
        element("title", unset(title)),
        *((element("meta", name="author", content=site.author),) if site.author else ()),
        element("link", rel="stylesheet", href=_STYLE),
    )
    body = element(
        "body",
        element("a", say("site-skip"), class_="skip", href=f"#{_MAIN}"),
        *((_top(site, page),) if place else ()),
        element("main", _title(page), parts_markup(page.parts), id=_MAIN, tabindex="-1"),
        _turn(site, place, say),
        _foot(site.maker),
    )
    return f"<!DOCTYPE html>\n{element('html', head, body, lang=site.language)}\n"


def _top(site: WebSite, page: WebPage) -> str:
    """Where in the site this is, with the way home."""
    home = element("a", words(site.title), href=address(site.pages[0].name))
    over = element("span", words(page.over)) if page.over else ""
    return element("header", element("p", home, " " if over else "", over, dir="auto"), class_="top")


def _title(page: WebPage) -> str:
    heading = element("h1", words(page.title), dir="auto")
    return heading + (element("p", words(page.under), class_="under", dir="auto") if page.under else "")


def _turn(site: WebSite, place: int, say: Messages) -> str:
    """The pages before and after this one; nothing for a site of one page."""
    if len(site.pages) == 1:
        return ""
    links = []
    if place:
        links.append(_leaf(site.pages[place - 1], "prev", say("site-before")))
    if place + 1 < len(site.pages):
        links.append(_leaf(site.pages[place + 1], "next", say("site-next")))
    return element("nav", element("ul", *links), class_="turn", aria_label=say("site-turn"))


def _foot(maker: Maker) -> str:
    """The maker's own lines and her link; nothing for a maker who prints nothing there."""
    said = [element("p", words(line), dir="auto") for line in maker.lines]
    if maker.link:
        said.append(element("p", element("a", words(maker.link_shown), href=maker.link)))
    return element("footer", *said, class_="maker") if said else ""


def _leaf(page: WebPage, rel: str, word: str) -> str:
    link = element("a", element("span", word, class_="quiet"), " ", words(page.title), href=address(page.name), rel=rel)
    return element("li", link, class_=rel)
