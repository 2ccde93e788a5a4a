"""The JSON schema of the facts, made from the records: what they may hold, and what each field says."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any, Final

from msgspec import UNSET
from msgspec.json import schema_components
from msgspec.structs import fields

from blockdsl.facts.document import SCHEMA, FactsDocument
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.record import Record

_LENGTH: Final = {
    "description": (
        "An exact number in the block's own unit: `3`, `2 7/8`, in centimetres `7.3`; with roots `2-r2`, `1/2r3` (r2 "
        "and r3 are the square roots of two and three)."
    ),
    "type": "string",
    "anyOf": [
        {"pattern": r"^-?[0-9]+( [0-9]+/[0-9]+|\.[0-9]+)?$"},
        {"pattern": "^-?[0-9]+/[0-9]+$"},
        {"pattern": "^-?([0-9]+(/[0-9]+)?)?(r[0-9]+)?([+-]([0-9]+(/[0-9]+)?)?r[0-9]+)*$", "minLength": 2},
    ],
}


def facts_schema() -> dict[str, Any]:
    """What `blockdsl facts` writes, as JSON Schema (2020-12): every field that is always there is required."""
    _, found = schema_components([FactsDocument], schema_hook=_of_number, ref_template="#/$defs/{name}")
    for kind in _kinds(Record):
        if kind.__name__ in found:
            _require(found[kind.__name__], kind)
    for schema in found.values():
        if "description" in schema:
            schema["description"] = " ".join(schema["description"].split())
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": f"urn:blockdsl:facts:{SCHEMA}",
        **found.pop(FactsDocument.__name__),
        "title": f"blockdsl facts, schema {SCHEMA}",
        "$defs": {"length": _LENGTH, **found},
    }


def schema_json() -> str:
    """The schema as it is printed."""
    return json.dumps(facts_schema(), ensure_ascii=False, indent=1)


def _of_number(kind: type) -> dict[str, Any]:
    if kind in (Fraction, Exact):
        return {"$ref": "#/$defs/length"}
    raise NotImplementedError(kind)  # how msgspec is told that a type has no schema; it reports the type


def _kinds(kind: type[Record]) -> Iterator[type[Record]]:
    for each in kind.__subclasses__():
        yield each
        yield from _kinds(each)


def _require(schema: dict[str, Any], kind: type[Record]) -> None:
    """What is written even where it is as usual is required, and has no default."""
    if kind.__struct_config__.omit_defaults:
        return
    always = [each.encode_name for each in fields(kind) if each.default is not UNSET]
    for name in always:
        schema["properties"][name].pop("default", None)
    tag = kind.__struct_config__.tag_field
    schema["required"] = [*([tag] if tag else []), *always]
