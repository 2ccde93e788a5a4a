"""A web site as files: a page each, one style sheet, two scripts, the font files.

Links are relative, and a page may load nothing but these files: a content security policy in it says so. All can be
read without scripts; those only remember the chosen size and search. The chosen size, enlarged pictures and dark
colours are the style sheet's.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from importlib.resources import files as resources
from typing import Final
from urllib.parse import quote

import msgspec

from blockdsl.document.content import WebPage, WebSite
from blockdsl.document.said import words_on
from blockdsl.document.site import SEARCH
from blockdsl.export.html.elements import address, element, file_name, plain_fractions, unset, words
from blockdsl.export.html.fonts import web_fonts
from blockdsl.export.html.parts import parts_markup
from blockdsl.export.html.sizes import sizes_rules, switch_markup
from blockdsl.export.recognised import PRODUCER
from blockdsl.fonts import FAMILY
from blockdsl.marks import theme
from blockdsl.marks.typeset import painted
from blockdsl.model.maker import Maker
from blockdsl.wording.messages import Messages, messages

_STYLE: Final = "style.css"
_SCRIPT: Final = "site.js"
_SEARCH_SCRIPT: Final = "search.js"
_SEARCH_WORDS: Final = "search-words.js"
_POLICY: Final = (
    "default-src 'none'; style-src 'self'; font-src 'self'; script-src 'self'; img-src data:; "
    "base-uri 'none'; form-action 'none'"
)
_MAIN: Final = "main"
_COLOURS: Final = {
    "ink": theme.INK,
    "quiet": theme.QUIET,
    "rule": theme.RULE,
    "tint": theme.TINT,
    "accent": theme.ACCENT,
    "paper": theme.WHITE,
    "panel": theme.TINT,
}
_DARK: Final = {
    "ink": "#e8ebea",
    "quiet": "#aab5b9",
    "rule": "#414b50",
    "tint": "#1e2529",
    "accent": "#f0a08c",
    "paper": "#13181b",
    "panel": "#f1f1ec",
}


def site_files(site: WebSite) -> dict[str, bytes]:
    """The bytes of every file by its name; the same each time.

    Errors: Unprintable where a word or a picture cannot be written.
    """
    pages = {file_name(page.name): _document(site, place) for place, page in enumerate(site.pages)}
    files = {_SCRIPT: _resource(_SCRIPT)}
    if len(site.pages) > 1:
        pages[file_name(SEARCH)] = _search_page(site)
        files |= {_SEARCH_SCRIPT: _resource(_SEARCH_SCRIPT), _SEARCH_WORDS: _search_words(site)}
    fonts = web_fonts(frozenset("".join(pages.values())))
    files |= {name: markup.encode() for name, markup in pages.items()}
    most = max(len(page.sizes) for page in site.pages)
    return files | {_STYLE: f"{fonts.rules}\n{_rules()}{sizes_rules(most)}".encode()} | fonts.files


@cache
def _resource(name: str) -> bytes:
    return resources(__package__).joinpath(name).read_bytes()


def _rules() -> str:
    """The style sheet but for the font files: the colours of the printed sheet, and the rules of `site.css`."""
    colours = "".join(f"--{name}:{painted(colour)};" for name, colour in _COLOURS.items())
    dark = "".join(f"--{name}:{colour};" for name, colour in _DARK.items())
    rules = resources(__package__).joinpath("site.css").read_text(encoding="utf-8")
    at_night = f"@media screen and (prefers-color-scheme:dark){{:root{{{dark}}}}}"
    return f":root{{{colours}--font:{FAMILY},sans-serif}}\n{at_night}\n{rules}"


def _document(site: WebSite, place: int) -> str:
    page, say = site.pages[place], messages(site.language)
    title = page.title if place == 0 else f"{page.title} – {site.title}"
    enlarging = say("site-enlarge")
    parts = parts_markup(page.parts, enlarging) + _files(page, say)
    switch = switch_markup(page.sizes, say("site-choose-size"))
    main = element("main", _title(page), switch, parts, id=_MAIN, tabindex="-1")
    return _whole(site, title, (_top(site, page if place else None, say), main, _turn(site, place, say)), say)


def _whole(site: WebSite, title: str, inner: Sequence[str], say: Messages, scripts: Sequence[str] = (_SCRIPT,)) -> str:
    """A page around its header, what it is about, and the way on."""
    head = element(
        "head",
        element("meta", charset="utf-8"),
        element("meta", http_equiv="Content-Security-Policy", content=_POLICY),
        element("meta", name="viewport", content="width=device-width, initial-scale=1"),
        element("meta", name="color-scheme", content="light dark"),
        element("meta", name="generator", content=PRODUCER),
        element("title", unset(title)),
        *((element("meta", name="author", content=site.author),) if site.author else ()),
        element("link", rel="stylesheet", href=_STYLE),
        *(element("script", src=script, defer="") for script in scripts),
    )
    skip = element("a", say("site-skip"), class_="skip", href=f"#{_MAIN}")
    body = element("body", skip, *inner, _foot(site.maker))
    return f"<!DOCTYPE html>\n{element('html', head, body, lang=site.language)}\n"


def _top(site: WebSite, page: WebPage | None, say: Messages) -> str:
    """Where in the site this is, with the way home, and the way to the search; `page` None for the home page."""
    if len(site.pages) == 1:
        return ""
    here = ""
    if page is not None:
        home = element("a", words(site.title), href=address(site.pages[0].name))
        over = element("span", words(page.over)) if page.over else ""
        here = element("p", home, " " if over else "", over, dir="auto")
    search = element("p", element("a", say("site-search"), href=file_name(SEARCH)), class_="find")
    return element("header", here, search, class_="top")


def _files(page: WebPage, say: Messages) -> str:
    """What can be printed; nothing where nothing can."""
    if not page.files:
        return ""
    links = (element("li", element("a", words(file.words), href=quote(file.name))) for file in page.files)
    return element("section", element("h2", say("site-print")), element("ul", *links, class_="places"))


def _search_page(site: WebSite) -> str:
    """A list of all pages, and where scripts run a field to search them with."""
    say = messages(site.language)
    items = [
        element(
            "li",
            element("a", words(page.title), href=address(page.name)),
            element("span", words(page.over), class_="quiet") if page.over else "",
            element("span", class_="passage"),
            dir="auto",
        )
        for page in site.pages
    ]
    field = element("input", id="find", type="search", autocomplete="off", spellcheck="false")
    form = element("search", element("label", say("site-find"), for_="find"), field, id="search", hidden="")
    status = element("p", id="status", role="status", data_found=say("site-found"))
    title = say("site-search")
    heading = element("h1", title)
    home = element(
        "header", element("p", element("a", words(site.title), href=address(site.pages[0].name))), class_="top"
    )
    main = element("main", heading, form, status, element("ul", *items, id="found"), id=_MAIN, tabindex="-1")
    scripts = (_SEARCH_WORDS, _SEARCH_SCRIPT)
    return _whole(site, f"{title} – {site.title}", (home, main), say, scripts)


def _search_words(site: WebSite) -> bytes:
    """What the search looks through, in the order of the list: a script, since pages from a disk may load no data."""
    told = [
        {"title": page.title, "over": page.over, "text": plain_fractions(" ".join(words_on(page).split()))}
        for page in site.pages
    ]
    return f'"use strict";\nconst siteWords = {msgspec.json.encode(told).decode()};\n'.encode()


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
