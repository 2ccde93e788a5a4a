"""What the records of the facts are made of: each field is written once.

The field's name, type and description are its name in the JSON, its entry in the schema and its line in the reference.
"""

from __future__ import annotations

from typing import Annotated, TypeAlias

from msgspec import Meta, Struct


class Record(Struct, frozen=True, forbid_unknown_fields=True):
    """Plain data that leaves as JSON: numbers, words, and further records."""


def says(description: str) -> Meta:
    """The description of a field."""
    return Meta(description=description)


Name: TypeAlias = Annotated[str, Meta(min_length=1)]
Letter: TypeAlias = Annotated[
    str, Meta(pattern=r"^[A-Z]+r?$", description="A, B, … Z, AA, …; with an r for the mirror image.")
]
Colour: TypeAlias = Annotated[str, Meta(pattern="^#[0-9a-f]{6}$")]
Count: TypeAlias = Annotated[int, Meta(ge=1)]
Rest: TypeAlias = Annotated[int, Meta(ge=0)]
"""A number that may be 0."""
