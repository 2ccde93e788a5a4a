"""Bringing files together, and the one table of names that cells may say."""

from __future__ import annotations

from msgspec import Struct, field

from blockdsl.analysis.fixes import did_you_mean
from blockdsl.analysis.maker_choices import report_choices, report_repeats
from blockdsl.analysis.memory import NO_MEMORY, Memory
from blockdsl.analysis.reading import CannotRead, Reader
from blockdsl.diagnostics import Problems, Source, Span, nearest_word
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import Fabric, RulerUnit, value_of
from blockdsl.model.cutter import CUTTER_SHAPES, Cutter, CutterShape
from blockdsl.syntax import ast
from blockdsl.syntax.parse import parse

Named = ast.FabricDeclaration | ast.UnitDeclaration
MOST_NESTING = 32
VALUES = ("light", "medium", "dark")


class Scope(Struct):
    """Fabrics and units by name, blocks and quilts by title.

    `main` is the file that was asked for, `files` all that were read. `maker` is the project's one maker, if any.
    """

    main: ast.File
    files: list[ast.File] = field(default_factory=list)
    fabrics: dict[str, Fabric] = field(default_factory=dict)
    units: dict[str, ast.UnitDeclaration] = field(default_factory=dict)
    blocks: dict[str, ast.BlockDeclaration] = field(default_factory=dict)
    quilts: dict[str, ast.QuiltDeclaration] = field(default_factory=dict)
    cutters: dict[str, Cutter] = field(default_factory=dict)
    declared: dict[str, Named] = field(default_factory=dict)
    incomplete: bool = False
    """Some declaration could not be read: an unknown name may be in it and is not reported."""
    cutter_labels: dict[str, Span] = field(default_factory=dict)
    maker: ast.MakerDeclaration | None = None
    damaged: set[str] = field(default_factory=set)
    """Names whose declarations could not be read."""
    memory: Memory = NO_MEMORY
    reader: Reader | None = None
    """Brings in pictures, for whoever lays a block."""

    def nearest(self, word: str) -> str | None:
        """The fabric or unit that was probably meant."""
        return nearest_word(word, [*self.fabrics, *self.units, *self.damaged])

    def file_of(self, span: Span) -> ast.File | None:
        """The file that a place lies in, if it is one that the maker can change."""
        found = next((file for file in self.files if file.source is span.source), None)
        return None if found is None or found.source.name.startswith("library/") else found

    def may_be_declared(self, word: str) -> bool:
        """Whether an unknown word may stand in what could not be read; that has been reported already."""
        return word in self.damaged or (self.incomplete and not self.nearest(word))


def bring_together(source: Source, reader: Reader, problems: Problems, memory: Memory = NO_MEMORY) -> Scope:
    """Parse a file and all that it uses; a file's own declarations stand over those it brings in."""
    main = parse(source, problems)
    names = Scope(main, memory=memory, reader=reader)
    _gather(main, reader, problems, names, (source.name,))
    return names


def bring_in(file: ast.File, reader: Reader, memory: Memory = NO_MEMORY) -> Scope:
    """The names that a file itself knows, when it was brought in by another; its problems have been reported."""
    names = Scope(file, memory=memory, reader=reader)
    _gather(file, reader, Problems(), names, (file.source.name,))
    return names


def _gather(file: ast.File, reader: Reader, problems: Problems, names: Scope, chain: tuple[str, ...]) -> None:
    names.files.append(file)
    own: set[str] = set()
    # What a file brings in comes first, wherever its `use` lines stand, so that its own declarations stand over it.
    for declaration in sorted(file.declarations, key=lambda declaration: not isinstance(declaration, ast.Use)):
        match declaration:
            case ast.Use():
                _use(declaration, reader, problems, names, chain)
            case ast.UnreadableLine(name=None):
                names.incomplete = True
            case ast.UnreadableLine(name=str(name)):
                names.damaged.add(name)
            case ast.CutterDeclaration():
                _declare_cutter(declaration, problems, names, file)
            case ast.MakerDeclaration():
                _declare_maker(declaration, problems, names)
            case ast.BlockDeclaration():
                _declare_block(declaration, problems, names, own, file)
            case ast.QuiltDeclaration():
                _declare_quilt(declaration, problems, names, file)
            case ast.FabricDeclaration() | ast.UnitDeclaration():
                _declare(declaration, problems, names, own, file)


def _use(use: ast.Use, reader: Reader, problems: Problems, names: Scope, chain: tuple[str, ...]) -> None:
    if len(chain) > MOST_NESTING:
        problems.report("nesting-too-deep", use.span, help=f"files may use one another {MOST_NESTING} deep")
        names.incomplete = True
        return
    try:
        found = reader.library(use.path.text) if use.library else reader.used(use.path.text, chain[-1])
    except CannotRead as fault:
        problems.report(
            fault.code,
            use.path.span,
            help=fault.help,
            related=(),
            fixes=did_you_mean(use.path, fault.near),
            **fault.values,
        )
        names.incomplete = True
        return
    if found.name in chain:
        problems.report("use-cycle", use.path.span, path=use.path.text, help="take one of the two `use` lines out")
        return
    if any(known.source.name == found.name for known in names.files):
        return
    before = {name: declared.span.source.name for name, declared in names.declared.items()}
    read_before = {file.source.name for file in names.files}
    _gather(names.memory.parse(found, problems), reader, problems, names, (*chain, found.name))
    if not use.library and len(chain) == 1:
        _report_given_way(use, before, read_before, names, problems)


def _report_given_way(
    use: ast.Use, before: dict[str, str], read_before: set[str], names: Scope, problems: Problems
) -> None:
    """Warn when a file takes the place of what another file beside it has brought in; the library may give way."""
    lost: dict[tuple[str, str], list[str]] = {}
    for name, source in before.items():
        now = names.declared[name].span.source.name
        if now != source and now not in read_before and not source.startswith("library/"):
            lost.setdefault((source, now), []).append(f"`{name}`")
    for (one, other), given_way in lost.items():
        shown = ", ".join(given_way[:4]) + (" and more" if len(given_way) > 4 else "")
        help_text = "take the name out of one of the two files, or declare it here"
        problems.report("brought-in-twice", use.path.span, one=one, other=other, names=shown, help=help_text)


def _stands(name: str, before: Span, own: set[str], file: ast.File) -> bool:
    """Whether an earlier declaration of the same name gives way: brought in from another file, and not one of ours."""
    return name not in own and before.source is not file.source


def _declare(declaration: Named, problems: Problems, names: Scope, own: set[str], file: ast.File) -> None:
    name = declaration.name.text
    before = names.declared.get(name)
    if before and not _stands(name, before.span, own, file):
        _report_twice(problems, declaration.name.span, before.name.span, name)
        return
    own.add(name)
    names.declared[name] = declaration
    names.fabrics.pop(name, None)
    names.units.pop(name, None)
    if isinstance(declaration, ast.UnitDeclaration):
        report_repeats(declaration.lines, problems)
        names.units[name] = declaration
    else:
        names.fabrics[name] = _fabric(declaration, problems)


def _report_twice(problems: Problems, here: Span, before: Span, name: str) -> None:
    related = ((before, "first declared here"),)
    problems.report("name-twice", here, kind="name", name=name, related=related, help="give one of them another name")


def _fabric(declaration: ast.FabricDeclaration, problems: Problems) -> Fabric:
    value = value_of(declaration.colour)
    match declaration.value:
        case ast.Word(text="light" | "medium" | "dark" as said):
            value = said
        case ast.Word(span, text):
            problems.report("value-unknown", span, name=text, help=f"a fabric is {', '.join(VALUES[:2])} or dark")
        case None:
            pass
    name, label = declaration.name.text, declaration.label.text
    return Fabric(name, label, declaration.colour, value, declaration.directional, _width(declaration, problems))


def _width(declaration: ast.FabricDeclaration, problems: Problems) -> tuple[Fraction, RulerUnit] | None:
    said = declaration.width
    if said is None:
        return None
    if said.value <= 0:
        problems.report("length-not-positive", said.span, what="width of a fabric")
        return None
    return (said.value, "in") if said.unit == "in" else (said.value / (10 if said.unit == "mm" else 1), "cm")


def _declare_maker(maker: ast.MakerDeclaration, problems: Problems, names: Scope) -> None:
    """The first stands; none gives way to another, because a project has one maker."""
    report_choices(maker.lines, problems)
    first = names.maker
    if first is None:
        names.maker = maker
        return
    related = ((first.name.span, "first declared here"),)
    help_text = "keep one `maker`, in a file that all others bring in with `use`"
    name = maker.name.text
    problems.report("maker-twice", maker.name.span, name=name, first=first.name.text, related=related, help=help_text)


def _declare_cutter(declaration: ast.CutterDeclaration, problems: Problems, names: Scope, file: ast.File) -> None:
    """A cutter of the same label that another file brought in gives way."""
    label = declaration.label
    before = names.cutter_labels.get(label.text)
    if before is not None and before.source is file.source:
        related = ((before, "first declared here"),)
        help_text = "give one of them another label"
        problems.report("name-twice", label.span, kind="cutter", name=label.text, related=related, help=help_text)
        return
    names.cutter_labels[label.text] = label.span
    cutter = read_cutter(declaration, problems)
    if cutter is not None:
        names.cutters[label.text] = cutter


def _declare_block(
    block: ast.BlockDeclaration, problems: Problems, names: Scope, own: set[str], file: ast.File
) -> None:
    key = block.name.text
    before = names.blocks.get(key)
    if before and not _stands(f'"{key}"', before.span, own, file):
        _report_twice(problems, block.name.span, before.name.span, key)
        return
    own.add(f'"{key}"')
    names.blocks[key] = block


def _declare_quilt(quilt: ast.QuiltDeclaration, problems: Problems, names: Scope, file: ast.File) -> None:
    """A quilt of the same title that another file brought in gives way."""
    key = quilt.name.text
    before = names.quilts.get(key)
    if before is not None and before.name.span.source is file.source:
        related = ((before.name.span, "first declared here"),)
        help_text = "give one of them another title"
        problems.report("name-twice", quilt.name.span, kind="quilt", name=key, related=related, help=help_text)
        return
    names.quilts[key] = quilt


def read_cutter(declaration: ast.CutterDeclaration, problems: Problems) -> Cutter | None:
    """The cutter, or None when its shape is unknown or its size cannot be; that is reported."""
    shape = declaration.shape.text
    if shape not in CUTTER_SHAPES:
        near = nearest_word(shape, CUTTER_SHAPES)
        known = ", ".join(f"`{each}`" for each in CUTTER_SHAPES)
        help_text = f"did you mean `{near}`?" if near else f"a cutter cuts {known}"
        fixes = did_you_mean(declaration.shape, near)
        problems.report("cutter-shape-unknown", declaration.shape.span, name=shape, help=help_text, fixes=fixes)
        return None
    sides = (declaration.width, declaration.height)
    for side in dict.fromkeys(sides):
        if side.value <= 0:
            problems.report("length-not-positive", side.span, what="size of a cutter")
            return None
    if sides[0] != sides[1] and shape != "rectangle":
        help_text = f'write one measure: `cutter "{declaration.label.text}" {shape} {CUTTER_SHAPES[shape]}`'
        problems.report("cutter-size", sides[0].span.to(sides[1].span), shape=shape, help=help_text)
        return None
    shorter, longer = sorted(side.value / (10 if side.unit == "mm" else 1) for side in sides)
    kind: CutterShape = "square" if shape == "rectangle" and shorter == longer else shape
    return Cutter(declaration.label.text, kind, (shorter, longer), "in" if sides[0].unit == "in" else "cm")
