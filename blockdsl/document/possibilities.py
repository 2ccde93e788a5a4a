"""A page of possibilities: one block in every setting that suits it, with the size and the cloth of each quilt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockdsl.document.content import Card, Cards, Paragraph, Parts, WebPage, WebSite, plain, quiet, strong
from blockdsl.document.pictures import of_quilt
from blockdsl.facts.possibility import Plan, Possibility
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.wording.grammar import capital, many
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.quilt_words import format_buy, format_setting


def possibility_parts(found: Sequence[Possibility]) -> Parts:
    """How to choose, then a card for each, numbered; there is at least one."""
    words = words_of(found[0].quilt)
    cards = tuple(_card(number, each) for number, each in enumerate(found, start=1))
    return Paragraph(plain(words("possible-about"))), Cards("blocks", cards)


def possibility_site(found: Sequence[Possibility], title: str) -> WebSite:
    """The same as a web page."""
    words = words_of(found[0].quilt)
    under = words("possible-under", quilts=many(len(found), "quilts", words))
    return WebSite(
        title, "", found[0].quilt.language, (WebPage("index", title, possibility_parts(found), under=under),)
    )


def _card(number: int, found: Possibility) -> Card:
    quilt = found.quilt
    words = words_of(quilt)
    name = words("possible-name", number=number, setting=_setting(found.plan, quilt, words))
    size = show_extent(quilt.finished, quilt.unit, words)
    blocks = many(sum(count for _, count in quilt.blocks), "blocks", words)
    return Card(
        (
            of_quilt(quilt, f"possible-{number}", small=True),
            Paragraph(strong(name)),
            Paragraph(plain(words("possible-size", size=size, blocks=blocks))),
            Paragraph(plain("; ".join(_cloth(quilt, words)))),
            *(Paragraph(quiet(line)) for line in found.plan.lines),
        )
    )


def _setting(plan: Plan, quilt: QuiltFacts, words: Messages) -> str:
    """`On point, turned, with sashing`: what tells it from the others."""
    labels = {fabric.name: fabric.label or fabric.name for fabric in quilt.fabrics_used}
    said = [capital(format_setting(quilt))]
    if plan.turned:
        said.append(words("possible-turned"))
    if plan.colourway:
        said.append(words("possible-colorway", colorway=plan.colourway))
    if plan.alternate:
        said.append(words("possible-plain", fabric=labels[plan.alternate]))
    if plan.sashed:
        said.append(words("possible-posts" if plan.posts else "possible-sashing"))
    return ", ".join(said)


def _cloth(quilt: QuiltFacts, words: Messages) -> Iterator[str]:
    """Each fabric with about how much of it to buy."""
    if quilt.finishing is None:
        return
    labels = {fabric.name: fabric.label or fabric.name for fabric in quilt.fabrics_used}
    for cloth in quilt.finishing.estimated.fabrics:
        buy = words("buy-wider") if cloth.buy is None else format_buy(cloth.buy, words)
        yield words("possible-cloth", fabric=labels[cloth.fabric], buy=buy)
