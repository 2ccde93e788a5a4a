"""An editor asks at any moment, in the middle of a word too."""

from __future__ import annotations

from pathlib import Path

from lsprotocol import types

from blockdsl.diagnostics import Problems, Source
from blockdsl.editor import answers
from blockdsl.editor.columns import Columns
from blockdsl.editor.mentions import DECLARING, NAMING, PLAIN, mentions
from blockdsl.editor.pictures import example_of, shape_image
from blockdsl.editor.project import Project
from blockdsl.resources import library_names, library_path
from blockdsl.shapes import SHAPES
from blockdsl.syntax import ast, parse

_FILE = """\
use library "basics"
fabric sky "É 🏮" #c0d0ff light
unit beam = geese sky on main
block "B"
  size 4 x 2 in
  row beam
  make geese as foundation
  colourway "N" sky=main
quilt "Q"
  set straight 2 x 2 of "B"
  sash 1 in sky
book "K"
  paper a4
  block "B" sizes 4 in
"""


def _asked(desk: answers.Desk, at: types.Position) -> None:
    """Everything that can be asked at a place and of the file."""
    everything = types.Range(types.Position(0, 0), at)
    name = types.TextDocumentIdentifier(desk.file.uri)
    options = types.FormattingOptions(2, insert_spaces=True)
    answers.diagnostics(desk)
    answers.hovered(desk, types.HoverParams(name, at))
    answers.completed(desk, types.CompletionParams(name, at))
    answers.signature_help(desk, types.SignatureHelpParams(name, at))
    answers.definition(desk, types.DefinitionParams(name, at))
    answers.highlighted(desk, types.DocumentHighlightParams(name, at))
    answers.document_symbols(desk, types.DocumentSymbolParams(name))
    answers.folding(desk, types.FoldingRangeParams(name))
    answers.selected(desk, types.SelectionRangeParams(name, [at]))
    answers.document_links(desk, types.DocumentLinkParams(name))
    answers.formatted(desk, types.DocumentFormattingParams(name, options))
    answers.semantic_tokens(desk, types.SemanticTokensParams(name))
    answers.document_colours(desk, types.DocumentColorParams(name))
    answers.inlay_hints(desk, types.InlayHintParams(name, everything))
    answers.code_lenses(desk, types.CodeLensParams(name))


def test_every_beginning_of_a_file_is_answered(tmp_path: Path) -> None:
    project = Project()
    uri = (tmp_path / "a.block").as_uri()
    file = project.open(uri, "")
    columns = Columns()
    for stop in range(len(_FILE) + 1):
        project.change(uri, _FILE[:stop])
        _asked(answers.Desk(project, file, columns), columns.whole(file.source).end)


def test_each_word_of_the_language_is_known_to_name_something_or_not() -> None:
    # The editor follows names by these tables; a new line of the language has its place in one of them.
    missing = []
    for name, node in vars(ast).items():
        if (
            not isinstance(node, type)
            or not hasattr(node, "__struct_fields__")
            or name in {"Word", "Text", "ShapeCall"}
        ):
            continue
        for field, kind in node.__annotations__.items():
            words = {"Word", "Text", "Quoted"} & set(str(kind).replace("|", " ").split())
            known = field in NAMING.get(name, {}) or field in DECLARING.get(name, {}) or (name, field) in PLAIN
            if words and not known:
                missing.append((name, field))
    assert missing == []


def test_every_name_that_the_library_says_is_declared_in_it() -> None:
    project = Project()
    for name in library_names():
        source = project.shelved(f"library/{name}.block")
        names = project.names_of(source)
        for mention in mentions(names.main):
            if mention.kind == "fabric or unit" and mention.name not in SHAPES:
                assert mention.name in names.declared, (name, mention.name)


def test_a_mention_is_spelled_as_it_stands_in_the_text() -> None:
    for name in library_names():
        source = Source(name, library_path(name).read_text(encoding="utf-8"))
        for mention in mentions(parse(source, Problems())):
            assert mention.span.text == mention.name


def test_every_shape_is_drawn_from_the_way_it_is_written() -> None:
    assert [name for name in SHAPES if not shape_image(name)] == []
    assert example_of("geese") == "geese cloth-a on cloth-b"
