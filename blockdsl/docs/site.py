"""The pages of the documentation, their examples drawn, as the files of a site."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from html import escape
from importlib.resources import files
from pathlib import Path
from typing import Final

from markdown_it import MarkdownIt
from markdown_it.token import Token
from msgspec import Struct

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source, render_text
from blockdsl.export.html.fonts import shipped_bytes
from blockdsl.export.html.picture import page_markup
from blockdsl.facts import BlockFacts, QuiltFacts
from blockdsl.marks.display_list import Page
from blockdsl.marks.theme import Box
from blockdsl.pictures.block import block_picture
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.resources import documentation_folder

_SIDE_PT: Final = 150.0
_EDGE_PT: Final = 3.0
_MOST_PICTURES: Final = 4
_HOME: Final = "index.html"
_POLICY: Final = "default-src 'none'; style-src 'self'; font-src 'self'; img-src data:"
_FIRST: Final = ("README", "tutorial", "cookbook")
_ELSEWHERE: Final = re.compile(r"^\.\./\.\./")
"""Files of the project that are no page: their names stay, the links go."""


class _PageOf(Struct, frozen=True):
    """A page of the reference: where it lies below the folder, its title, its Markdown."""

    path: Path
    title: str
    text: str

    @property
    def address(self) -> str:
        """Where it lies in the site."""
        return _address(self.path.as_posix())

    @property
    def up(self) -> str:
        """The way from it to the top of the site."""
        return "../" * (len(self.path.parts) - 1)


def documentation() -> dict[str, bytes]:
    """All files of the site by their paths; `index.html` is the first page."""
    folder = documentation_folder()
    pages = sorted((_read(path, folder) for path in sorted(folder.glob("*.md"))), key=_place)
    problems = [_read(path, folder) for path in sorted((folder / "problems").glob("*.md"))]
    cloth = (folder / "cloth.block").read_text(encoding="utf-8")
    made = {page.address: _page(page, pages, problems, cloth).encode() for page in (*pages, *problems)}
    made["problems/index.html"] = _list_of_problems(problems, pages).encode()
    style = (files("blockdsl.docs") / "docs.css").read_bytes()
    fonts = {"regular.woff2": shipped_bytes("regular"), "bold.woff2": shipped_bytes("bold")}
    return made | {"docs.css": style} | fonts


def _place(page: _PageOf) -> int:
    """What is read first comes first: the first page, the tutorial, the cookbook; then the reference in its order."""
    return next((place for place, word in enumerate(_FIRST) if word in page.path.stem), len(_FIRST))


def _read(path: Path, folder: Path) -> _PageOf:
    text = path.read_text(encoding="utf-8")
    title = text.partition("\n")[0].removeprefix("# ").strip()
    return _PageOf(path.relative_to(folder), title, text)


def _address(path: str) -> str:
    """`15-quilts.md` is `15-quilts.html`, the README the first page."""
    return re.sub(r"README\.html$", _HOME, re.sub(r"\.md\b", ".html", path))


def _page(page: _PageOf, pages: Sequence[_PageOf], problems: Sequence[_PageOf], cloth: str) -> str:
    markdown = MarkdownIt("commonmark", {"html": False}).enable("table")
    tokens = markdown.parse(page.text)
    for token in tokens:
        _mend_links(token)
    body = markdown.renderer.render(list(_drawn(tokens, cloth)), markdown.options, {})
    row = problems if page in problems else pages
    place = row.index(page)
    before = row[place - 1] if place else None
    after = row[place + 1] if place + 1 < len(row) else None
    return _whole(page.title, body, page.up, pages, (before, after))


def _mend_links(token: Token) -> None:
    for inner in token.children or ():
        href = inner.attrGet("href")
        if isinstance(href, str):
            if _ELSEWHERE.match(href) or href.endswith(".block"):
                inner.hidden, inner.tag = True, "span"
                inner.attrs = {}
            elif href.rstrip("/") == "problems":
                inner.attrSet("href", "problems/index.html")
            elif "://" not in href:
                inner.attrSet("href", _address(href))


def _drawn(tokens: Sequence[Token], cloth: str) -> Iterator[Token]:
    """The tokens, each example followed by its picture, or by what is wrong with it."""
    beside = {"cloth.block": cloth}
    for token in tokens:
        yield token
        if token.type == "fence" and token.info.split(maxsplit=1)[:1] == ["block"]:
            name = token.info.split(maxsplit=1)[1:]
            if name:
                beside[name[0].strip()] = token.content
            shown = Token("html_block", "", 0)
            shown.content = _shown(token.content, beside)
            yield shown


def _shown(text: str, beside: dict[str, str]) -> str:
    problems = Problems()
    stages = pipeline.run(Source("example.block", text), TextReader(beside), problems)
    if problems.has_errors or "# warning:" in text or "# error:" in text:
        told = "\n".join(render_text(problem, colour=False) for problem in problems)
        return f'<pre class="told">{escape(told)}</pre>\n' if told else ""
    facts = stages.facts
    own = [block for block in facts.blocks if not facts.quilts][:_MOST_PICTURES]
    shown: list[BlockFacts | QuiltFacts] = [*facts.quilts[:_MOST_PICTURES], *own]
    figures = [_picture(each) for each in shown]
    return f'<div class="pictures">{"".join(figures)}</div>\n' if figures else ""


def _picture(shown: BlockFacts | QuiltFacts) -> str:
    box = Box(_EDGE_PT, _EDGE_PT, _SIDE_PT, _SIDE_PT)
    figure, filled = quilt_picture(shown, box) if isinstance(shown, QuiltFacts) else block_picture(shown, box)
    page = Page(filled.width_pt + 2 * _EDGE_PT, filled.height_pt + 2 * _EDGE_PT, (figure,))
    return f"<figure>{page_markup(page)}<figcaption>{escape(shown.name)}</figcaption></figure>"


def _list_of_problems(problems: Sequence[_PageOf], pages: Sequence[_PageOf]) -> str:
    rows = "".join(f'<li><a href="{page.path.stem}.html">{escape(page.title)}</a></li>' for page in problems)
    return _whole("Problems", f'<h1>Problems</h1><ul class="columns">{rows}</ul>', "../", pages, (None, None))


def _whole(
    title: str, body: str, up: str, pages: Sequence[_PageOf], around: tuple[_PageOf | None, _PageOf | None]
) -> str:
    links = "".join(f'<li><a href="{up}{page.address}">{escape(page.title)}</a></li>' for page in pages)
    before, after = around
    turn = "".join(
        f'<a href="{up}{page.address}" rel="{rel}">{escape(page.title)}</a>'
        for page, rel in ((before, "prev"), (after, "next"))
        if page is not None
    )
    return f"""<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="blockdsl">
<meta http-equiv="Content-Security-Policy" content="{_POLICY}">
<title>{escape(title)}</title>
<link rel="stylesheet" href="{up}docs.css">
</head>
<body>
<nav aria-label="Pages"><ul>{links}<li><a href="{up}problems/index.html">Problems</a></li></ul></nav>
<main>
{body}
<p class="turn">{turn}</p>
</main>
</body>
</html>
"""
