"""`blockdsl dump`: what each layer hands to the next, so that a fault can be placed in a layer."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator, Mapping, Sequence

from msgspec import Struct

from blockdsl.analysis.inputs import Input, RememberingReader, open_input, project_folder
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.diagnostics import Source, Span
from blockdsl.geometry import Surd
from blockdsl.geometry.fraction import Fraction

_INDENT = "  "
_SHORT = 100


def run(arguments: Namespace) -> int:
    """Run the command: the stage on standard output, problems up to that stage on standard error."""
    origin = open_input(arguments.file, levels_asked(arguments))
    printer = ProblemPrinter(arguments)
    if origin.readable:
        write_out("\n".join(outline(_stage(origin, arguments.stage))) + "\n")
    printer.show(origin.problems)
    return ERRORS if printer.sum_up() else FINE


def _stage(origin: Input, stage: str) -> object:
    if stage == "tree":
        from blockdsl.syntax.read import read_lines

        return list(read_lines(origin.source, origin.problems))
    if stage == "ast":
        from blockdsl import pipeline

        return pipeline.parse(origin.source, origin.problems).declarations
    return _meaning(origin, stage)


def _meaning(origin: Input, stage: str) -> object:
    from blockdsl import pipeline

    reader = RememberingReader(project_folder(origin.path))
    if stage in {"model", "making"}:
        program = pipeline.analyse(origin.source, reader, origin.problems)
        if stage == "model":
            return (*program.blocks, *program.quilts)
        names = [design.name for design in program.blocks]
        return dict(zip(names, pipeline.plan(program, origin.problems), strict=True))
    facts = pipeline.run(origin.source, reader, origin.problems).facts
    if stage == "cuts":
        cuts: dict[str, object] = {block.name: block.cutting for block in facts.blocks}
        return cuts | {quilt.name: quilt.cutting for quilt in facts.quilts}
    from blockdsl.page.sheet import block_sheet

    return {block.name: block_sheet(block) for block in facts.blocks}


def outline(value: object, name: str = "") -> Iterator[str]:
    """The value as indented lines: records by field, lists by entry; what is short stands on one line."""
    lead = f"{name}: " if name else ""
    short = _on_one_line(value)
    if short is not None and len(short) <= _SHORT:
        yield lead + short
        return
    title, parts = _parts(value)
    yield lead + title
    for part, inner in parts:
        for line in outline(inner, part):
            yield _INDENT + line


def _parts(value: object) -> tuple[str, Sequence[tuple[str, object]]]:
    """What a value is, and its parts with their names."""
    if names := _names(value):
        return type(value).__name__, [(name, getattr(value, name)) for name in names]
    if isinstance(value, Mapping):
        return "", [(str(key), inner) for key, inner in value.items()]
    if isinstance(value, Sequence) and not isinstance(value, str):
        return f"{len(value)} of", [("", inner) for inner in value]
    return str(_on_one_line(value)), []


def _on_one_line(value: object) -> str | None:
    """A short way to write the value; None for what is best told by its parts. Nothing tells an address in memory."""
    match value:
        case Span():
            line, column = value.source.position(value.stop)
            words = f"{value.line}:{value.column}-{line}:{column}"
        case Source():
            words = value.name
        case Fraction():
            words = str(value)
        case Surd():
            return _on_one_line(value.terms)
        case str():
            words = repr(value)
        case Mapping():
            return None
        case Sequence():
            return _joined([_on_one_line(inner) for inner in value])
        case _ if names := _names(value):
            return _record(value, names)
        case _:
            words = repr(value)
    return words


def _joined(words: Sequence[str | None]) -> str | None:
    told = [word for word in words if word is not None]
    return f"({', '.join(told)})" if len(told) == len(words) else None


def _names(value: object) -> tuple[str, ...]:
    """The fields of a record; none of other things."""
    if isinstance(value, Struct):
        return value.__struct_fields__
    return ()


def _record(value: object, names: Sequence[str]) -> str | None:
    told = []
    for name in names:
        words = _on_one_line(getattr(value, name))
        if words is None:
            return None
        told.append(f"{name}={words}")
    return f"{type(value).__name__}({', '.join(told)})"
