"""`blockdsl check` and `blockdsl facts`: they read and write no file."""

from __future__ import annotations

from argparse import Namespace

from blockdsl.cli.inputs import open_inputs
from blockdsl.cli.saying import write_out
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.cli.supposed import refuse_without_quilts, what_if_of
from blockdsl.cli.telling import Teller
from blockdsl.cli.working import work_through


def check(arguments: Namespace) -> int:
    """Tell the problems of the files, and nothing else."""
    teller = Teller(arguments.message_format)
    for origin in open_inputs(arguments.files):
        teller.tell(work_through(origin).origin.problems)
    return ERRORS if teller.sum_up() else FINE


def facts(arguments: Namespace) -> int:
    """The numbers of a file as one JSON document on standard output; a list of documents for several files."""
    from blockdsl.wording import facts_json

    teller = Teller(arguments.message_format)
    what_if = what_if_of(arguments)
    works = [work_through(origin, what_if=what_if) for origin in open_inputs(arguments.files)]
    refuse_without_quilts(works, [what_if])
    documents = []
    for worked in works:
        teller.tell(worked.origin.problems)
        documents.append(facts_json(worked.facts, worked.origin.problems))
    text = documents[0] if len(documents) == 1 else "[\n" + ",\n".join(documents) + "\n]"
    write_out(f"{text}\n")
    return ERRORS if teller.sum_up() else FINE
