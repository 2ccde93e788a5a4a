"""`blockdsl terms`: the words of the trade that pages use, each explained."""

from __future__ import annotations

import textwrap
from argparse import Namespace

from blockdsl.cli.saying import write_out
from blockdsl.cli.status import FINE, USAGE, CannotGoOn
from blockdsl.diagnostics import nearest_word
from blockdsl.wording.glossary import meanings
from blockdsl.wording.messages import messages

_WIDE = 78
_INDENT = "    "


def run(arguments: Namespace) -> int:
    """The words that are asked for, or all of them, in the order of the alphabet."""
    known = meanings(messages(arguments.language))
    asked = [_found(word, known) for word in arguments.words] or list(known)
    write_out("\n".join(_entry(term, known[term]) for term in asked))
    return FINE


def _entry(term: str, meaning: str) -> str:
    return f"{term}\n{textwrap.fill(meaning, _WIDE, initial_indent=_INDENT, subsequent_indent=_INDENT)}\n"


def _found(word: str, known: dict[str, str]) -> str:
    by_letters = {term.casefold(): term for term in known}
    if word.casefold() in by_letters:
        return by_letters[word.casefold()]
    near = nearest_word(word.casefold(), by_letters)
    hint = f"; did you mean {by_letters[near]!r}?" if near else "; `blockdsl terms` lists them all"
    raise CannotGoOn(f"the glossary does not have {word!r}{hint}", USAGE)
