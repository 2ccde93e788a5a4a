"""Every language has every message, with the same places for arguments, and the functions that sentences need."""

import re
from importlib.resources import files
from typing import get_args

import pytest
from fluent.runtime import FluentResource
from fluent.syntax import FluentSerializer
from fluent.syntax.ast import Message, SelectExpression, Term, TermReference, VariableReference
from fluent.syntax.visitor import Visitor

from blockdsl.model.language import LANGUAGES as KNOWN
from blockdsl.model.language import Language
from blockdsl.wording import LANGUAGES, messages
from blockdsl.wording.grammar import MODULES, listed, name_of

BASE = "en-US"
MAY_LEAVE_OUT = {"count", "case", "article", "has", "here", "pin", "sides"}
"""Arguments that only choose between forms: a language without those forms does not need them."""


class _Places(Visitor):
    """The arguments that a message puts in, or chooses by."""

    def __init__(self) -> None:
        self.put: set[str] = set()
        self.chosen: set[str] = set()

    def visit_SelectExpression(self, node: SelectExpression) -> None:  # noqa: N802  named by fluent.syntax
        if isinstance(node.selector, VariableReference):
            self.chosen.add(node.selector.id.name)
        for variant in node.variants:
            self.visit(variant)

    def visit_VariableReference(self, node: VariableReference) -> None:  # noqa: N802  named by fluent.syntax
        self.put.add(node.id.name)

    def visit_TermReference(self, node: TermReference) -> None:  # noqa: N802  named by fluent.syntax
        if node.arguments is not None:
            self.visit(node.arguments)


def entries(folder: str) -> dict[str, Message | Term]:
    found: dict[str, Message | Term] = {}
    for source in files("blockdsl.wording").joinpath(folder).iterdir():
        if source.name.endswith(".ftl"):
            body = FluentResource(source.read_text(encoding="utf-8")).body
            found |= {entry.id.name: entry for entry in body if isinstance(entry, (Message, Term))}
    return found


def places(entry: Message | Term) -> tuple[set[str], set[str]]:
    found = _Places()
    found.visit(entry)
    return found.put, found.chosen


def own_folders() -> list[str]:
    return [folder for language in KNOWN for folder in LANGUAGES[language][:1]]


def test_the_languages_that_files_can_name_are_those_with_messages_and_a_grammar() -> None:
    assert tuple(KNOWN) == get_args(Language)
    assert set(KNOWN) == set(LANGUAGES) == set(MODULES)


@pytest.mark.parametrize("language", KNOWN)
def test_every_language_has_every_message(language: str) -> None:
    have = {key for folder in LANGUAGES[language] for key in entries(folder)}
    wanted = {key for key, entry in entries(BASE).items() if isinstance(entry, Message)}
    assert sorted(wanted - have) == []


@pytest.mark.parametrize("folder", own_folders())
def test_no_message_puts_in_another_argument_than_the_american_one(folder: str) -> None:
    """An argument that a language lacks would lose a size or a name; one that it has too many is never given."""
    base = entries(BASE)
    differing = []
    for key, entry in entries(folder).items():
        if key not in base or isinstance(entry, Term):
            continue
        (put, chosen), (put_there, chosen_there) = places(entry), places(base[key])
        given = put_there | chosen_there | MAY_LEAVE_OUT
        needed = put_there - chosen_there - MAY_LEAVE_OUT
        if not needed <= put | chosen <= given:
            differing.append(
                f"{key}: {sorted(needed - put - chosen)} missing, {sorted((put | chosen) - given)} unknown"
            )
    assert differing == []


@pytest.mark.parametrize("folder", own_folders())
def test_no_language_has_a_message_that_nothing_asks_for(folder: str) -> None:
    lacking = {key for key, entry in entries(folder).items() if isinstance(entry, Message)} - set(entries(BASE))
    assert sorted(lacking) == []


@pytest.mark.parametrize("language", KNOWN)
def test_every_language_lists_any_number_of_things(language: str) -> None:
    words = messages(language)
    assert listed([], words) == ""
    assert listed(["A"], words) == "A"
    for several in (["A", "B"], ["A", "B", "C"]):
        said = listed(several, words)
        assert all(letter in said for letter in several)


@pytest.mark.parametrize("language", KNOWN)
def test_a_noun_stands_in_every_language_alone_and_with_its_articles(language: str) -> None:
    words = messages(language)
    for article in ("", "a", "the"):
        assert name_of("quilt-sash", words, article=article).strip()


AMERICAN = (
    "color", "colors", "colorway", "colorways", "gray", "center", "centers", "toward", "neighbor", "neighbors",
    "baste", "basted", "basting", "batting", "miter", "miters", "mitered", "selvage", "selvages", "cornerstone",
    "cornerstones", "centimeter", "centimeters",
)  # fmt: skip
BRITISH = (
    "colour", "colours", "colourway", "colourways", "grey", "centre", "centres", "towards", "neighbour", "neighbours",
    "tack", "tacked", "tacking", "wadding", "mitre", "mitres", "mitred", "selvedge", "selvedges", "post", "posts",
    "centimetre", "centimetres", "per cent",
)  # fmt: skip
"""The two word sets of the trade: dictionaries of both Englishes, and common practice, no source."""


def effective(language: str) -> dict[str, str]:
    """Every message of a language as it stands in its files, with the terms of that language put in."""
    bodies: dict[str, str] = {}
    for folder in reversed(LANGUAGES[language]):
        for source in files("blockdsl.wording").joinpath(folder).iterdir():
            if source.name.endswith(".ftl"):
                body = FluentResource(source.read_text(encoding="utf-8")).body
                bodies |= {
                    f"-{entry.id.name}"
                    if isinstance(entry, Term)
                    else entry.id.name: FluentSerializer().serialize_entry(entry)
                    for entry in body
                    if isinstance(entry, (Message, Term))
                }
    return bodies


@pytest.mark.parametrize(("language", "foreign"), [("en-US", BRITISH), ("en-GB", AMERICAN)])
def test_a_page_never_mixes_american_and_british_words(language: str, foreign: tuple[str, ...]) -> None:
    pattern = re.compile(rf"(?<![-\w$])(?:{'|'.join(foreign)})(?![-\w])", re.IGNORECASE)
    mixed = {}
    for key, text in effective(language).items():
        # Arguments and keys are not printed.
        said = re.sub(r"\{\s*[-$][^{}]*\}|^\S+ =|\$[\w-]+|\[[\w-]+\]|\.[a-z]+ =", " ", text, flags=re.MULTILINE)
        if found := pattern.findall(said):
            mixed[key] = found
    assert mixed == {}
