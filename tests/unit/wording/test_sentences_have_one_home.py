"""Words that a maker reads are in the message files alone: no other layer holds a text of two English words or more.

Files of commands, of the language and of its problems speak to the maker about her file; those stay in English.
"""

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Final

import pytest

import blockdsl

LAYERS: Final = (
    "geometry", "model", "shapes", "sewing", "cutting", "facts", "marks", "pictures", "fullsize", "page", "document",
    "export",
)  # fmt: skip
ROOT: Final = Path(blockdsl.__file__).parent
TWO_WORDS: Final = re.compile(r"[A-Za-z]{2,}[,.:;]? [A-Za-z{]{2,}")

NAMES: Final = "names by which the facts tell things; `wording` has a message for each"
PROBLEMS: Final = "how to fix a problem of the file"
FAULTS: Final = "what a programmer reads who hands over something that cannot be written"
MARKUP: Final = "markup, no words"
REFERENCE: Final = "the reference of the language: how a shape is written, its name, and what it is"

EXCEPTIONS: Final[dict[str, tuple[int, str]]] = {
    "cutting/angled.py": (4, NAMES),
    "cutting/grain_lines.py": (4, PROBLEMS),
    "cutting/quilt_cuts.py": (2, NAMES),
    "cutting/quilt_pieces.py": (1, NAMES),
    "document/quilt.py": (3, NAMES),
    "export/cairo_library.py": (3, FAULTS),
    "export/cut_svg.py": (1, MARKUP),
    "export/html/elements.py": (1, MARKUP),
    "export/html/parts.py": (1, MARKUP),
    "export/html/site.py": (6, MARKUP),
    "export/html/steps.py": (1, MARKUP),
    "export/html/table.py": (1, MARKUP),
    "export/pdf.py": (1, FAULTS),
    "export/pdf_rights.py": (2, MARKUP),
    "export/pdf_structure.py": (1, FAULTS),
    "export/png.py": (1, FAULTS),
    "export/printable.py": (7, FAULTS),
    "export/svg.py": (1, MARKUP),
    "export/tables.py": (1, FAULTS),
    "export/xlsx.py": (1, FAULTS),
    "facts/applique_step.py": (1, NAMES),
    "facts/blockrecord.py": (1, NAMES),
    "facts/bookfacts.py": (1, NAMES),
    "facts/collect.py": (3, NAMES),
    "facts/collect_cloth.py": (1, NAMES),
    "facts/collect_quilt.py": (1, NAMES),
    "facts/drafting.py": (6, NAMES),
    "facts/drift.py": (6, PROBLEMS),
    "facts/expect.py": (5, PROBLEMS),
    "facts/finishing_report.py": (8, PROBLEMS),
    "facts/method_steps.py": (2, NAMES),
    "facts/quilt_steps.py": (4, NAMES),
    "facts/quiltfacts.py": (1, NAMES),
    "facts/quiltrecord.py": (1, NAMES),
    "facts/schema.py": (2, REFERENCE),
    "facts/star_steps.py": (1, NAMES),
    "facts/strip_steps.py": (1, NAMES),
    "facts/technique_example.py": (6, NAMES),
    "facts/techniques.py": (4, NAMES),
    "fullsize/pattern.py": (2, NAMES),
    "geometry/arc_recognise.py": (4, NAMES),
    "geometry/recognise.py": (2, NAMES),
    "pictures/quilt.py": (2, NAMES),
    "sewing/at_a_time.py": (10, NAMES),
    "sewing/choices.py": (9, PROBLEMS),
    "sewing/foundation/choose.py": (2, PROBLEMS),
    "sewing/making.py": (3, PROBLEMS),
    "sewing/method_steps/corners.py": (2, NAMES),
    "sewing/method_steps/geese.py": (1, NAMES),
    "sewing/method_steps/halves.py": (2, NAMES),
    "sewing/method_steps/instruct.py": (10, NAMES),
    "sewing/method_steps/quarters.py": (3, NAMES),
    "sewing/method_steps/star_sets.py": (4, NAMES),
    "sewing/method_steps/strip_sets.py": (1, NAMES),
    "sewing/methods.py": (7, NAMES),
    "sewing/order/rebuild.py": (2, FAULTS),
    "sewing/part_name.py": (6, NAMES),
    "sewing/steps/described.py": (6, NAMES),
    "sewing/steps/names.py": (13, NAMES),
    "sewing/strips.py": (2, NAMES),
    "sewing/techniques/lessons.py": (11, NAMES),
    "shapes/bars.py": (3, REFERENCE),
    "shapes/checker.py": (3, REFERENCE),
    "shapes/courthouse.py": (3, REFERENCE),
    "shapes/cubes.py": (3, REFERENCE),
    "shapes/curve.py": (3, REFERENCE),
    "shapes/diamond.py": (3, REFERENCE),
    "shapes/fan.py": (2, REFERENCE),
    "shapes/geese.py": (3, REFERENCE),
    "shapes/half.py": (3, REFERENCE),
    "shapes/half_rectangle.py": (3, REFERENCE),
    "shapes/hexagons.py": (4, REFERENCE),
    "shapes/hourglass.py": (2, REFERENCE),
    "shapes/kite.py": (3, REFERENCE),
    "shapes/log.py": (3, REFERENCE),
    "shapes/long_diamond.py": (3, REFERENCE),
    "shapes/octagon.py": (2, REFERENCE),
    "shapes/pineapple.py": (2, REFERENCE),
    "shapes/quarters.py": (3, REFERENCE),
    "shapes/rails.py": (4, REFERENCE),
    "shapes/slant.py": (3, REFERENCE),
    "shapes/snowball.py": (2, REFERENCE),
    "shapes/split.py": (3, REFERENCE),
    "shapes/spool.py": (2, REFERENCE),
    "shapes/square.py": (3, REFERENCE),
    "shapes/star45.py": (4, REFERENCE),
    "shapes/trapezoid.py": (3, REFERENCE),
    "shapes/triangle_in_square.py": (3, REFERENCE),
    "shapes/triangles60.py": (2, REFERENCE),
    "shapes/tumblers.py": (4, REFERENCE),
}
"""By file, how many such texts it may have, and why. A number may become smaller, never larger."""


def texts(tree: ast.AST) -> Iterator[tuple[int, str]]:
    """Line and text of every string of two words or more; docstrings, comparisons and faults that are raised aside."""
    aside: set[int] = set()
    for node in ast.walk(tree):
        if _is_no_text(node):
            aside |= {id(inner) for inner in ast.walk(node)}
        elif isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            aside.add(id(node.value))
        elif isinstance(node, ast.JoinedStr):
            aside |= {id(part) for part in node.values}
    for node in ast.walk(tree):
        if id(node) in aside:
            continue
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            text = node.value
        elif isinstance(node, ast.JoinedStr):
            text = "".join(str(part.value) if isinstance(part, ast.Constant) else "{}" for part in node.values)
        else:
            continue
        if TWO_WORDS.search(text):
            yield getattr(node, "lineno", 0), text


def _is_no_text(node: ast.AST) -> bool:
    """What compares or lists names, documents a field of a record, raises a fault, or reports a problem of the file."""
    if isinstance(node, ast.Subscript):
        return isinstance(node.value, ast.Name) and node.value.id == "Literal"
    if isinstance(node, ast.ClassDef | ast.keyword):
        return isinstance(node, ast.keyword) and node.arg in ("tag", "also_called")
    if isinstance(node, ast.Call):
        called = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        return called in ("report", "says", "Meta")
    return isinstance(node, ast.Raise | ast.Compare | ast.Assert | ast.MatchValue)


def files() -> list[str]:
    return sorted(str(path.relative_to(ROOT)) for layer in LAYERS for path in (ROOT / layer).rglob("*.py"))


@pytest.fixture(scope="module")
def found() -> dict[str, list[tuple[int, str]]]:
    return {name: list(texts(ast.parse((ROOT / name).read_text(encoding="utf-8")))) for name in files()}


def test_no_file_has_more_texts_than_are_allowed_with_a_reason(found: dict[str, list[tuple[int, str]]]) -> None:
    assert {name: said for name, said in found.items() if len(said) > EXCEPTIONS.get(name, (0, ""))[0]} == {}


def test_an_exception_that_is_not_needed_is_taken_off_the_list(found: dict[str, list[tuple[int, str]]]) -> None:
    assert {name: number for name, (number, _) in EXCEPTIONS.items() if len(found.get(name, ())) < number} == {}


def test_a_sentence_in_an_algorithm_would_be_found() -> None:
    tree = ast.parse('def f(n):\n    """Say so."""\n    return f"Make {n} of them"\n')
    assert [text for _, text in texts(tree)] == ["Make {} of them"]
