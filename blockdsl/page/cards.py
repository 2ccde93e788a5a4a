"""Cards beside each other: a picture, and words at its right or below it."""

from __future__ import annotations

from typing import Final

from msgspec import Struct

from blockdsl.document.content import (
    Card,
    CardKind,
    Cards,
    FabricKey,
    Heading,
    Paragraph,
    Part,
    Parts,
    Picture,
    Table,
    Tick,
)
from blockdsl.marks.display_list import Mark, moved, tagged
from blockdsl.marks.prose import line, lines_of, rule
from blockdsl.marks.theme import CONTENT_WIDTH_PT, GUTTER_PT, HAIRLINE_PT, RULE, STEP_PT, Box, span_pt
from blockdsl.page.flow import Drawn, Flowable, stacked
from blockdsl.page.headings import continued, heading_element
from blockdsl.page.key import key_column
from blockdsl.page.table import table_flowables, tick_cell
from blockdsl.page.text import BODY, BOLD, LEAD, SMALL, plain_words, rich
from blockdsl.wording.messages import Messages

_NUMBER_PT: Final = 20.0
_NOTHING: Final[Drawn] = (0.0, ())


class _Deck(Struct, frozen=True):
    """How cards of a kind lie: how many across, how large their pictures are, whether words stand beside those.

    Tiny ones have small type, and no room for words that are only looked up.
    """

    across: int
    picture_pt: float
    tallest_pt: float = 10_000.0
    beside: bool = False
    ruled: bool = False
    before_pt: float = 0.0
    tiny: bool = False
    between_pt: float = 5 * STEP_PT


_FIFTH_PT: Final = (CONTENT_WIDTH_PT - 4 * GUTTER_PT) / 5
_DECKS: Final[dict[CardKind, _Deck]] = {
    "units": _Deck(2, 66.0, 66.0, beside=True, ruled=True),
    "few": _Deck(1, 50.0, 50.0, beside=True, between_pt=STEP_PT),
    "kinds": _Deck(3, 108.0, 108.0),
    "colourways": _Deck(4, span_pt(3), span_pt(3), before_pt=STEP_PT),
    "strips": _Deck(2, span_pt(6), before_pt=2 * STEP_PT, between_pt=2 * STEP_PT),
    "cuts": _Deck(4, span_pt(3), before_pt=2 * STEP_PT, between_pt=2 * STEP_PT),
    "cloth": _Deck(1, 300.0, beside=True, before_pt=2 * STEP_PT, between_pt=2 * STEP_PT),
    "gallery": _Deck(5, _FIFTH_PT, _FIFTH_PT, between_pt=3 * STEP_PT, tiny=True),
    "blocks": _Deck(3, span_pt(4), span_pt(4), before_pt=2 * STEP_PT),
}
_BESIDE: Final = _Deck(1, 50.0, beside=True, between_pt=STEP_PT)


def card_flowables(
    cards: Cards, words: Messages, again: tuple[Flowable, ...] = (), *, width_pt: float | None = None
) -> list[Flowable]:
    """As many cards on each flowable as lie beside each other; `again` is said above one that opens a page.

    `width_pt` is that of one card, where they stand beside something else.
    """
    deck = _DECKS[cards.kind]
    again = (continued(cards.name, words),) if cards.name else again
    width = (CONTENT_WIDTH_PT - (deck.across - 1) * GUTTER_PT) / deck.across if width_pt is None else width_pt
    flowables = []
    for start in range(0, len(cards.cards), deck.across):
        row = [_card(card, deck, width, words) for card in cards.cards[start : start + deck.across]]
        top = 2.5 * STEP_PT if deck.ruled else 0.0
        marks: list[Mark] = [rule(0.0, CONTENT_WIDTH_PT, RULE, HAIRLINE_PT)] if start and deck.ruled else []
        for place, (_, drawn) in enumerate(row):
            marks += moved(drawn, place * (width + GUTTER_PT), top)
        height = max(height for height, _ in row) + (top + 2 * STEP_PT if deck.ruled else 0.0)
        before = 0.0 if deck.ruled else deck.between_pt if start else deck.before_pt
        flowables.append(Flowable(height, tuple(marks), before, head=again))
    return flowables


def _card(card: Card, deck: _Deck, width: float, words: Messages) -> Drawn:
    """Height and marks of one card: its picture at the left of its words, or where it stands among them."""
    if not deck.beside:
        return column(card.parts, width, words, deck)
    pictures = [part for part in card.parts if isinstance(part, Picture)]
    left = _NUMBER_PT if card.number else 0.0
    marks: list[Mark] = [*line(str(card.number), 0.0, BOLD.baseline_pt - 3.0, BOLD)] if card.number else []
    bottom = 0.0
    for picture in pictures:
        drawn, filled = picture.draw(Box(0.0, 0.0, deck.picture_pt, deck.tallest_pt))
        marks += moved(drawn, left + ((deck.picture_pt - filled.width_pt) / 2 if deck.ruled else 0.0), bottom)
        bottom += filled.height_pt
    x = left + deck.picture_pt + 3 * STEP_PT
    others = tuple(part for part in card.parts if not isinstance(part, Picture))
    height, said = column(others, width - x, words, deck)
    return max(bottom, height - 3.0), (*marks, *moved(said, x, -3.0))


def column(parts: Parts, width: float, words: Messages, deck: _Deck = _BESIDE) -> Drawn:
    """Parts one under the other, as on a card.

    Errors: TypeError for a part that has no place on a card.
    """
    y = 0.0
    marks: list[Mark] = []
    for place, part in enumerate(parts):
        before, height, drawn = _part(part, deck, width, words)
        y += before if place else 0.0
        marks += moved(drawn, 0.0, y)
        y += height
    return y, tuple(marks)


def _part(  # noqa: PLR0911 - one line for each part that a card has
    part: Part, deck: _Deck, width: float, words: Messages
) -> tuple[float, float, tuple[Mark, ...]]:
    """The white above a part, its height and its marks."""
    match part:
        case Picture():
            drawn, filled = part.draw(Box(0.0, 0.0, min(width, deck.picture_pt), deck.tallest_pt))
            high = deck.tallest_pt if deck.tiny else filled.height_pt  # names stand level with each other
            return STEP_PT, high + (0.0 if deck.between_pt < 3 * STEP_PT else STEP_PT), drawn
        case Heading():
            marks: list[Mark] = []
            lines = lines_of(plain_words(part.words), width, LEAD)
            whole = heading_element(part.level)
            for place, text in enumerate(lines):
                marks += tagged(line(text, 0.0, place * LEAD.line_pt + LEAD.baseline_pt, LEAD), whole)
            return 0.0, len(lines) * LEAD.line_pt, tuple(marks)
        case Paragraph():
            return 0.0, *(
                _NOTHING if deck.tiny and part.small else rich(part.words, width, SMALL if deck.tiny else BODY)
            )
        case Tick():
            return STEP_PT / 2, *ticked(part, width)
        case FabricKey():
            return 1.5 * STEP_PT, *key_column(part, width)
        case Cards():
            return 0.0, *stacked(card_flowables(part, words, width_pt=width))
        case Table():
            return STEP_PT, *stacked(table_flowables(part, words, width_pt=width))
        case _:
            raise TypeError(f"a card has no place for {type(part).__name__}")


def ticked(tick: Tick, width: float) -> Drawn:
    """A box to tick before its words."""
    indent = 3.5 * STEP_PT
    height, words = rich(tick.words, width - indent, BODY)
    return height, (*tick_cell(BODY).marks, *moved(words, indent, 0.0))
