"""French: nouns have their articles, words are elided and contracted, lists and figures are as French writes them.

After the rules of any French grammar, from memory.
"""

from __future__ import annotations

import pytest

from blockdsl.wording import messages
from blockdsl.wording.grammar import Article, in_figures, in_thousands, listed, name_of, with_article


@pytest.mark.parametrize(
    ("key", "article", "count", "said"),
    [
        ("part-block", "a", 1, "un bloc"),
        ("part-unit", "the", 1, "l\u2019unité"),
        ("part-octagon", "other", 1, "l\u2019autre octogone"),
        ("part-strip", "another", 1, "une autre bande"),
        ("part-block", "the", 2, "les blocs"),
    ],
)
def test_a_noun_has_its_article(key: str, article: Article, count: int, said: str) -> None:
    number = {"number": "none"} if key == "part-unit" else {}
    assert name_of(key, messages("fr"), count=count, article=article, **number) == said


@pytest.mark.parametrize(
    ("written", "said"),
    [
        ("de le bloc", "du bloc"),
        ("de les blocs", "des blocs"),
        ("à le bloc", "au bloc"),
        ("de la unité", "de l\u2019unité"),
        ("de octogone", "d\u2019octogone"),
        ("de A", "de A"),
        ("Brume à le haut et la gauche", "Brume en haut et à gauche"),
        ("les bords de le haut et le bas", "les bords du haut et du bas"),
        ("vers le haut à gauche", "vers le haut à gauche"),
    ],
)
def test_words_are_drawn_together(written: str, said: str) -> None:
    assert messages("fr").grammar.contracted(written) == said


def test_lists_figures_and_letters_are_as_french_writes_them() -> None:
    french = messages("fr")
    assert listed(["A", "B", "C"], french) == "A, B et C"
    assert in_figures("2.5", french) == "2,5"
    assert in_thousands(1250, french) == "1\u202f250"
    assert french("length", length="2 7/8", unit="in") == "2 7/8 po"
    assert with_article("A", "other", french) == "l\u2019autre A"
