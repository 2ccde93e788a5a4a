"""`blockdsl facts`: the numbers of files, on standard output; no file is written."""

from __future__ import annotations

from argparse import Namespace

from blockdsl.analysis.inputs import open_inputs
from blockdsl.cli.cache import asked_cache
from blockdsl.cli.overrides import refuse_without_quilts, what_if_of
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.remembering import memory_key, recall, remember
from blockdsl.cli.saying import write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.pipeline import Worked, work_through
from blockdsl.printing import facts_text


def run(arguments: Namespace) -> int:
    """The numbers of a file as one JSON document on standard output; a list of documents for several files."""
    printer = ProblemPrinter(arguments)
    what_if = what_if_of(arguments)
    cache = asked_cache(arguments)
    origins = open_inputs(arguments.files, levels_asked(arguments))
    documents = []
    works: list[Worked] = []
    for origin in origins:
        key = memory_key(origin, "facts", what_if, arguments.no_cloth, arguments.language)
        known = recall(cache, key, origin) if origin.readable and cache.folder is not None else None
        if known is not None:
            printer.show(known.problems)
            documents.append(known.data.decode())
            continue
        worked = work_through(origin, what_if=what_if, language=arguments.language)
        works.append(worked)
        refuse_without_quilts(works, [what_if])
        printer.show(origin.problems)
        documents.append(facts_text(worked, cloth=not arguments.no_cloth))
        remember(cache, key, worked, documents[-1].encode("utf-8", "surrogatepass"))
    cache.tidy()
    text = documents[0] if len(documents) == 1 else "[\n" + ",\n".join(documents) + "\n]"
    write_out(f"{text}\n")
    return ERRORS if printer.sum_up() else FINE
