"""Lists and names of French, its elisions and contractions. Nouns take their articles from `the` in `parts.ftl`."""

from __future__ import annotations

import re
from typing import Final

from blockdsl.wording.grammar import WithGenders

_PLACE: Final = "le haut à gauche|le haut à droite|le bas à gauche|le bas à droite|le haut|le bas|la gauche|la droite"
_PLACES: Final = re.compile(rf"\b([dD]e|[àÀ]) ((?:{_PLACE})(?:(?:, | et )(?:{_PLACE}))*)\b")
"""Places after a preposition: `à le haut et le bas`."""

_ARTICLE: Final = re.compile(r"\b([lL])[ea] (?=(?:[aeiouéèêâîôœ]|hexag|heptag))")
_OF: Final = re.compile(r"\b([dD])e (?=(?:[aeiouéèêâîôœ]\w|hexag|heptag))")
"""Before a vowel or a silent h, that is not a single letter."""

_DRAWN_TOGETHER: Final = {"de le": "du", "de les": "des", "à le": "au", "à les": "aux", "De le": "Du", "De les": "Des"}
_APART: Final = re.compile(rf"\b(?:{'|'.join(_DRAWN_TOGETHER)})(?= )")


def _placed(preposition: str, place: str) -> str:
    """`en haut`, `à gauche`, `du haut`, `de gauche`."""
    noun = place.removeprefix("la ").removeprefix("le ")
    if place.startswith("la "):
        return f"{preposition} {noun}"
    return f"{'en' if preposition in 'àÀ' else preposition[0] + 'u'} {noun}"


def _all_placed(found: re.Match[str]) -> str:
    """Each place of a list with its preposition: `du haut et du bas`."""
    preposition = found[1]
    return re.sub(_PLACE, lambda place: _placed(preposition, place[0]), found[2])


class French(WithGenders):
    """French: letters are masculine."""

    conjunction = " et "
    decimal = ","
    endings = "(?:e|es|s|x)?"
    thousands = "\u202f"

    def contracted(self, text: str) -> str:
        """`du bloc`, `au coin`, `l’unité`, `d’octogones`, `en haut`."""
        text = _PLACES.sub(_all_placed, text)
        text = _ARTICLE.sub(r"\1’", text)
        text = _APART.sub(lambda found: _DRAWN_TOGETHER[found[0]], text)
        return _OF.sub(r"\1’", text)


GRAMMAR: Final = French()
