"""Where a file says the names of things: what it declares, and what it uses."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final, Literal

from msgspec import Struct

from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Span
from blockdsl.shapes import SHAPES
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.shapes.words import WordReader
from blockdsl.syntax import ast

Kind = Literal["fabric or unit", "block", "quilt", "book", "maker", "cutter", "colourway", "shape"]
"""Fabrics and units share their names, so a word in a row is either."""

NAMING: Final[dict[str, dict[str, Kind]]] = {
    "NameCell": {"name": "fabric or unit"},
    "PairCell": {"left": "fabric or unit", "right": "fabric or unit"},
    "FreePatch": {"fabric": "fabric or unit"},
    "Applique": {"fabric": "fabric or unit"},
    "Make": {"what": "fabric or unit"},
    "Note": {"place": "fabric or unit"},
    "See": {"place": "fabric or unit"},
    "PhotoLine": {"place": "fabric or unit"},
    "Colourway": {"name": "colourway"},
    "ExpectCut": {"fabric": "fabric or unit"},
    "ExpectUnit": {"unit": "fabric or unit"},
    "BookBlock": {"name": "block"},
    "BookQuilt": {"name": "quilt"},
    "SetGrid": {"block": "block"},
    "SetCount": {"block": "block"},
    "SetMedallion": {"block": "block"},
    "RowPlace": {"name": "block"},
    "Fill": {"fabric": "fabric or unit"},
    "Alternate": {"what": "block"},
    "ColourwayRule": {"name": "colourway"},
    "Sash": {"fabric": "fabric or unit", "posts": "fabric or unit"},
    "Band": {"what": "block", "corner": "fabric or unit"},
    "Binding": {"fabric": "fabric or unit"},
    "Backing": {"fabric": "fabric or unit"},
    "Sleeve": {"fabric": "fabric or unit"},
    "Scraps": {"fabric": "fabric or unit"},
    "ExpectBlocks": {"block": "block"},
}
"""For each line or cell the fields that name something; a bare word where a title can stand is a fabric or a unit."""

DECLARING: Final[dict[str, dict[str, Kind]]] = {
    "FabricDeclaration": {"name": "fabric or unit"},
    "UnitDeclaration": {"name": "fabric or unit"},
    "BlockDeclaration": {"name": "block"},
    "QuiltDeclaration": {"name": "quilt"},
    "BookDeclaration": {"name": "book"},
    "MakerDeclaration": {"name": "maker"},
    "CutterDeclaration": {"label": "cutter"},
}
"""For each declaration the field that has its name."""

PLAIN: Final = frozenset(
    {
        ("CutterDeclaration", "shape"),
        ("ExpectCut", "piece"),
        ("ExpectCut", "subcut"),
        ("FabricDeclaration", "label"),
        ("FabricDeclaration", "value"),
        ("Use", "path"),
        ("Applique", "path"),
        ("Make", "method"),
        ("Grain", "letter"),
        ("Grain", "edge"),
        ("Note", "text"),
        ("FootLine", "text"),
        ("MakerLink", "address"),
        ("See", "address"),
        ("See", "text"),
        ("PhotoLine", "path"),
        ("PhotoLine", "text"),
        ("Level", "text"),
        ("Time", "text"),
        ("Subtitle", "text"),
        ("Family", "name"),
        ("Origin", "text"),
        ("Language", "tag"),
        ("By", "maker"),
        ("Paper", "name"),
        ("Chapter", "title"),
        ("BookText", "path"),
        ("Font", "path"),
    }
)
"""Fields of words that name nothing that is declared; a test holds that each field is in one of the three."""


class Mention(Struct, frozen=True):
    """A name where it is said; `declares` is the declaration where this is its first line.

    `inside` is the title of the block of a colourway.
    """

    kind: Kind
    name: str
    span: Span
    declares: bool = False
    inside: str = ""


def mentions(file: ast.File) -> Iterator[Mention]:
    """All names that the file says, in order; those that nothing declares too."""
    for declaration in file.declarations:
        title = declaration.name.text if isinstance(declaration, ast.BlockDeclaration) else ""
        for mention in _of_node(declaration):
            colourway = mention.kind == "colourway" and title
            yield Mention(mention.kind, mention.name, mention.span, mention.declares, title) if colourway else mention


def _of_node(node: object) -> Iterator[Mention]:
    if isinstance(node, tuple):
        for part in node:
            yield from _of_node(part)
        return
    if not isinstance(node, Struct) or isinstance(node, Span | ast.Word | ast.Text | ast.Number | ast.LengthLiteral):
        return
    if isinstance(node, ast.ShapeCall):
        yield from _of_shape(node)
        return
    named = type(node).__name__
    naming, declaring = NAMING.get(named, {}), DECLARING.get(named, {})
    for field in node.__struct_fields__:
        value = getattr(node, field)
        kind = naming.get(field) or declaring.get(field)
        if kind is None:
            yield from _of_pairs(value) if field == "changes" else _of_node(value)
        elif isinstance(value, ast.Word):
            yield Mention("fabric or unit", value.text, value.span, field in declaring)
        elif isinstance(value, ast.Text):
            inside = Span(value.span.source, value.span.start + 1, value.span.stop - 1)
            yield Mention(kind, value.text, inside, field in declaring or named == "Colourway")


def _of_pairs(changes: tuple[tuple[ast.Word, ast.Word], ...]) -> Iterator[Mention]:
    for pair in changes:
        for word in pair:
            yield Mention("fabric or unit", word.text, word.span)


def _of_shape(call: ast.ShapeCall) -> Iterator[Mention]:
    """The shape, and those of its words that are fabrics and none of its own."""
    yield Mention("shape", call.shape.text, call.shape.span)
    shape = SHAPES.get(FORMER_NAMES.get(call.shape.text, call.shape.text))
    filling = shape.read(WordReader(call.words)) if shape else None
    usage = set(shape.usage.split()) if shape else set()
    for word in call.words:
        if not isinstance(word, ast.Word):
            continue
        if word.text in filling.fabrics if filling else word.text not in usage:
            yield Mention("fabric or unit", word.text, word.span)


def mention_at(file: ast.File, offset: int) -> Mention | None:
    """The name that a place lies in, or right behind."""
    number = file.source.position(offset)[0]
    for mention in mentions(file):
        span = mention.span
        if span.line == number and span.start <= offset <= span.stop:
            return mention
    return None


def target(mention: Mention, names: Scope) -> Span | None:
    """Where the thing is declared that a name means in the file whose names these are; its name there."""
    if mention.declares and mention.kind != "fabric or unit":
        return mention.span
    match mention.kind:
        case "fabric or unit":
            declared = names.declared.get(mention.name)
            return declared.name.span if declared else None
        case "block":
            return _inside(names.blocks[mention.name].name.span) if mention.name in names.blocks else None
        case "quilt":
            return _inside(names.quilts[mention.name].name.span) if mention.name in names.quilts else None
        case "colourway":
            return _colourway(mention, names)
        case _:
            return None


def _inside(quoted: Span) -> Span:
    """The words between quotation marks."""
    return Span(quoted.source, quoted.start + 1, quoted.stop - 1)


def _colourway(mention: Mention, names: Scope) -> Span | None:
    """The first colourway of that name in a block that the file knows."""
    for block in names.blocks.values():
        for line in block.lines:
            if isinstance(line, ast.Colourway) and line.name.text == mention.name:
                return _inside(line.name.span)
    return None
