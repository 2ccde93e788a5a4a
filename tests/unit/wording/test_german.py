"""German: no English word is left on a page, nouns have their articles, lists and figures are as German writes them."""

from __future__ import annotations

from pathlib import Path
from typing import Final

import pypdf
import pytest

import blockdsl
from blockdsl.wording import messages
from blockdsl.wording.grammar import Article, in_figures, listed, name_in_case, name_of, with_article
from tests.unit.wording.test_no_english_left import SHARED, english, words

CLOTH: Final = """
fabric fog     "Nebel"   #dfe3e0 light
fabric lantern "Laterne" #e0a030 medium
fabric slate   "Schiefer" #3a4750 dark
"""
SAMPLES: Final = {
    "units": """
block "Leuchtturm"
  size 30 cm
  make half as two at a time
  make checker as strip set
  row fog/lantern         (hourglass lantern fog)      fog\\lantern
  row (hourglass fog slate) (checker 2 x 2 fog slate)  (square slate)
  row fog\\lantern         (snowball fog with slate at tl br) fog/lantern

block "Schwarm"
  size 10 cm
  make geese as four at a time
  row (geese lantern on fog)
  row (geese slate on fog)
""",
    "paper": """
block "Segel"
  size 6 in
  make diamond as foundation
  row fog            (diamond slate on fog)
  row slate/lantern  fog
""",
    "curves": """
block "Welle"
  size 20 cm
  row (curve slate in fog)   (curve fog in slate)
  row (curve fog in slate)>  (log centre lantern with fog fog slate slate)
""",
}


def pages_in_german(text: str, folder: Path) -> str:
    """The words of the sheet of every block, as a reader of PDF finds them."""
    result = blockdsl.load(text, language="de")
    assert [problem for problem in result.problems if problem.severity == "error"] == []
    said = ""
    for block in result.blocks:
        sheet = folder / f"{block.name}.pdf"
        block.write_pdf(sheet)
        said += " ".join(page.extract_text() for page in pypdf.PdfReader(sheet).pages)
    return said


@pytest.mark.parametrize("sample", SAMPLES)
def test_no_english_word_is_left_on_a_german_sheet(sample: str, tmp_path: Path) -> None:
    said = pages_in_german(CLOTH + SAMPLES[sample], tmp_path)
    assert "Nahtzugabe" in said
    assert sorted(words(said) & english() - SHARED["de"]) == []


def test_an_english_sheet_would_be_found_out(tmp_path: Path) -> None:
    """The test above would see English: most words of the same sheet in English are among those it looks for."""
    result = blockdsl.load(CLOTH + SAMPLES["paper"], language="en-US")
    result.blocks[0].write_pdf(tmp_path / "english.pdf")
    said = words(" ".join(page.extract_text() for page in pypdf.PdfReader(tmp_path / "english.pdf").pages))
    assert len(said & english()) > len(said) / 2


def test_the_names_and_notes_of_the_maker_stay_as_she_wrote_them(tmp_path: Path) -> None:
    block = 'block "Lights"\n  size 6 in\n  note "Mind the gap."\n  row fog slate\n  row slate fog\n'
    said = pages_in_german(CLOTH.replace("Nebel", "Harbour fog") + block, tmp_path)
    assert [name for name in ("Harbour fog", "Lights", "Mind the gap.") if name not in said] == []


@pytest.mark.parametrize(
    ("article", "case", "said"),
    [
        ("", "nominative", "Block"),
        ("a", "nominative", "ein Block"),
        ("a", "accusative", "einen Block"),
        ("the", "dative", "dem Block"),
        ("other", "accusative", "den anderen Block"),
        ("another", "nominative", "ein weiterer Block"),
    ],
)
def test_a_noun_has_its_article_in_every_case(article: Article, case: str, said: str) -> None:
    """After the tables of any German grammar, from memory."""
    german = messages("de")
    assert name_in_case(name_of("part-block", german, article=article), case, german) == said


def test_nouns_in_the_plural_and_in_lists_decline_too() -> None:
    german = messages("de")
    assert name_in_case(name_of("part-block", german, count=2, article="the"), "dative", german) == "den Blöcken"
    several = listed(
        [name_of("part-strip", german, article="the"), name_of("part-goose", german, article="the")], german
    )
    assert several == "der Streifen und die Fluggans"
    assert name_in_case(several, "accusative", german) == "den Streifen und die Fluggans"


def test_letters_are_neuter_and_other_names_have_no_article() -> None:
    german = messages("de")
    assert with_article("A", "other", german) == "das andere A"
    assert with_article("Balken", "the", german) == "Balken"


def test_lists_and_figures_are_as_german_writes_them() -> None:
    german = messages("de")
    assert listed(["A", "B", "C"], german) == "A, B und C"
    assert listed(["Reihen 1 und 3", "A"], german) == "Reihen 1 und 3 sowie A"
    assert in_figures("2.5", german) == "2,5"
    assert german("length", length="2 7/8", unit="in") == "2 7/8 Zoll"


def test_a_preposition_and_its_article_are_drawn_together() -> None:
    assert messages("de").grammar.contracted("zu der Mitte, zu dem Rand") == "zur Mitte, zum Rand"
