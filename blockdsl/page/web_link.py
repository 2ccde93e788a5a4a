"""An address of the web on paper: its QR code, and beside it the words and the address, which a click follows too."""

from __future__ import annotations

from blockdsl.document.content import WebLink
from blockdsl.marks.display_list import Link, Mark, moved
from blockdsl.marks.prose import paragraph
from blockdsl.marks.theme import GUTTER_PT
from blockdsl.model.maker import shown_address
from blockdsl.page.flow import Drawn
from blockdsl.page.text import BOLD, QUIETLY
from blockdsl.pictures.qr import qr_code


def web_link(link: WebLink, width_pt: float) -> Drawn:
    """The code at the left, the words in the middle of its height."""
    side, code = qr_code(link.address, link.alternative)
    room = width_pt - side - GUTTER_PT / 2
    tall, words = paragraph(link.words, room, BOLD)
    more, address = paragraph(shown_address(link.address), room, QUIETLY)
    height = max(side, tall + more)
    top = (height - tall - more) / 2
    left = side + GUTTER_PT / 2
    marks: list[Mark] = [code, *moved(words, left, top), *moved(address, left, top + tall)]
    return height, (Link(link.address, 0.0, 0.0, width_pt, height, tuple(marks)),)
