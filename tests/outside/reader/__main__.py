"""Read blocks of the library by name, or all of them and every shape by every method, and tell where the words fail.

`python -m tests.outside.reader [name …]`, or `make read`.
"""

from __future__ import annotations

import sys

from tests.outside.reader.library import FAMILIES, check, documents, steps_of
from tests.outside.reader.reading import Fault
from tests.outside.reader.shapes import ROWS, shape_document, shapes_by_methods
from tests.outside.reader.table import Refused

SIDES = ("3 in", "7.5 cm")


def main(names: list[str]) -> int:
    """The number of blocks that cannot be sewn by their words."""
    bad = good = 0
    for family in FAMILIES:
        for document in documents(family):
            if names and document["name"] not in names:
                continue
            if names:
                for step in steps_of(document):
                    print(f"{step.number} {step.title}\n    {step.text}")
            try:
                check(document)
                good += 1
            except (Fault, Refused) as fault:
                bad += 1
                print(f"{document['name']}: {fault}")
    print(f"{good} blocks are sewn by their words, {bad} are not")
    return bad if names else bad + shapes()


def shapes() -> int:
    """The number of shapes and methods whose words fail, in a row or two, in inches or centimetres."""
    tried = [(*made, rows, side) for made in shapes_by_methods() for rows in ROWS for side in SIDES]
    bad = 0
    for shape, method, rows, side in tried:
        try:
            check(shape_document(shape, method, rows, side))
        except (Fault, Refused) as fault:
            bad += 1
            print(f"{shape} as {method}, {rows}, {side}: {fault}")
    print(f"{len(tried) - bad} shapes and methods are sewn by their words, {bad} are not")
    return bad


if __name__ == "__main__":
    sys.exit(min(main(sys.argv[1:]), 1))
