"""An editor at work: every request that `blockdsl language-server` answers, over standard input and output.

The client is pytest-lsp's; the messages are those of the Language Server Protocol 3.17.
"""

from __future__ import annotations

import asyncio
import base64
import sys
from collections.abc import AsyncIterator, Callable
from pathlib import Path
from typing import Any, Final

import httpx
import pytest
import pytest_lsp
from lsprotocol import types
from pytest_lsp import ClientServerConfig, LanguageClient
from pytest_lsp.client import make_test_lsp_client

pytestmark = pytest.mark.asyncio(loop_scope="module")

COMMAND: Final = str(Path(sys.executable).parent / "blockdsl")

CLOTH: Final = """\
fabric fog     "Harbour fog"  #dfe3e0 light
fabric lantern "Lantern"      #e0a030 medium
fabric slate   "Wet slate"    #3a4750 dark

unit beam = geese lantern on fog
"""

LIGHT: Final = """\
use "cloth.block"

# Beams round a
# slate middle.
block "Lumière 🏮"
  size 8 in
  columns 1 2 1
  heights 1 2 1
  row fog/slate  beam                   fog\\slate
  row beam<      (hourglass fog slate)  beam>
  row slate/fog  beam<<                 slate\\fog
  make half as two at a time
  colourway "Night" fog=slate slate=fog
"""

QUILT: Final = """\
use "light.block"

quilt "Breakwater"
  set straight 2 x 3 of "Lumière 🏮"
  sash 1 in slate
  backing fog
"""


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = tmp_path_factory.mktemp("harbour")
    for name, text in (("cloth.block", CLOTH), ("light.block", LIGHT), ("quilt.block", QUILT)):
        (made / name).write_text(text, encoding="utf-8")
    (made / "intro.md").write_text("Words.\n", encoding="utf-8")
    return made


def _editor() -> LanguageClient:
    """A client that takes the edits that the server asks for."""
    made = make_test_lsp_client()

    @made.feature(types.WORKSPACE_APPLY_EDIT)  # type: ignore[untyped-decorator]
    def apply(params: types.ApplyWorkspaceEditParams) -> types.ApplyWorkspaceEditResult:
        made.on_edit(params)  # type: ignore[attr-defined]  # each test has its own
        return types.ApplyWorkspaceEditResult(applied=True)

    return made


SERVER: Final = ClientServerConfig(server_command=[COMMAND, "language-server"], client_factory=_editor)


@pytest_lsp.fixture(config=SERVER, scope="module")  # type: ignore[untyped-decorator]
async def client(lsp_client: LanguageClient, folder: Path) -> AsyncIterator[None]:
    capabilities = types.ClientCapabilities(
        workspace=types.WorkspaceClientCapabilities(
            apply_edit=True,
            file_operations=types.FileOperationClientCapabilities(did_rename=True, will_rename=True),
        ),
        window=types.WindowClientCapabilities(show_document=types.ShowDocumentClientCapabilities(support=True)),
        text_document=types.TextDocumentClientCapabilities(
            completion=types.CompletionClientCapabilities(
                completion_item=types.ClientCompletionItemOptions(
                    snippet_support=True, documentation_format=[types.MarkupKind.Markdown]
                )
            ),
            hover=types.HoverClientCapabilities(content_format=[types.MarkupKind.Markdown]),
        ),
    )
    root = types.WorkspaceFolder(folder.as_uri(), "harbour")
    params = types.InitializeParams(capabilities, workspace_folders=[root])
    started = await lsp_client.initialize_session(params)
    lsp_client.started = started  # type: ignore[attr-defined]  # kept for the tests
    for name in ("cloth.block", "light.block", "quilt.block"):
        await opened(lsp_client, folder, name, (folder / name).read_text(encoding="utf-8"))
    yield
    await lsp_client.shutdown_session()


# --- an editor's hands ---------------------------------------------------------------------------


async def opened(client: LanguageClient, folder: Path, name: str, text: str) -> str:
    """Open a file and wait for its problems."""
    uri = (folder / name).as_uri()
    item = types.TextDocumentItem(uri, "blockdsl", 1, text)
    client.diagnostics.pop(uri, None)
    client.text_document_did_open(types.DidOpenTextDocumentParams(item))
    await told(client, uri)
    return uri


async def told(client: LanguageClient, uri: str) -> list[types.Diagnostic]:
    """Wait until the problems of a file have come; that the lantern is not in the page font is no surprise here."""
    async with asyncio.timeout(30):
        while uri not in client.diagnostics:  # noqa: ASYNC110  the client has no event for one that was missed
            await asyncio.sleep(0.005)
    return [each for each in client.diagnostics[uri] if each.code != "letter-not-in-font"]


async def typed(client: LanguageClient, uri: str, text: str, version: int = 2) -> list[types.Diagnostic]:
    """Write a whole new text, and wait for its problems."""
    document = types.VersionedTextDocumentIdentifier(version, uri)
    change = types.TextDocumentContentChangeWholeDocument(text)
    client.diagnostics.clear()
    client.text_document_did_change(types.DidChangeTextDocumentParams(document, [change]))
    return await told(client, uri)


def place(text: str, words: str, within: int = 0) -> types.Position:
    """Where words stand for an editor that counts in UTF-16."""
    at = text.index(words) + within
    line = text.count("\n", 0, at)
    before = text[text.rfind("\n", 0, at) + 1 : at]
    return types.Position(line, len(before.encode("utf-16-le")) // 2)


def spelled(text: str, found: types.Range) -> str:
    """The letters of a range of one line, again in UTF-16."""
    line = text.split("\n")[found.start.line].encode("utf-16-le")
    return line[2 * found.start.character : 2 * found.end.character].decode("utf-16-le")


def document(folder: Path, name: str) -> types.TextDocumentIdentifier:
    return types.TextDocumentIdentifier((folder / name).as_uri())


def drawn(markdown: str) -> str:
    """The picture in words of Markdown, as SVG."""
    start = markdown.index("base64,") + len("base64,")
    return base64.b64decode(markdown[start : markdown.index(")", start)]).decode()


# --- problems ------------------------------------------------------------------------------------


async def test_problems_come_as_one_types_with_their_pages_and_places_in_utf16(
    client: LanguageClient, folder: Path
) -> None:
    uri = await opened(client, folder, "try.block", "")
    text = 'use "cloth.block"\nblock "É 🏮"\n  size 2 in\n  row fog lantrn\n'
    (problem,) = await typed(client, uri, text)
    assert (problem.code, problem.source, problem.severity) == (
        "name-unknown",
        "blockdsl",
        types.DiagnosticSeverity.Error,
    )
    assert spelled(text, problem.range) == "lantrn"
    assert problem.code_description is not None
    assert problem.code_description.href.endswith("problems/name-unknown.md")
    text = 'use "cloth.block"\nblock "É 🏮" siz\n  size 2 in\n  row fog lantern\n'
    problems = await typed(client, uri, text, 3)
    assert spelled(text, problems[0].range) == "siz"
    assert await typed(client, uri, text.replace(" siz\n", "\n"), 4) == []


async def test_one_key_after_another_is_followed_as_it_is_typed(client: LanguageClient, folder: Path) -> None:
    uri = await opened(client, folder, "keys.block", 'use "cloth.block"\nblock "🏮é"\n  size 2 in\n  row fog\n')
    names = types.VersionedTextDocumentIdentifier(2, uri)
    client.diagnostics.clear()
    end = types.Position(3, 9)
    for letter in " slate":
        change = types.TextDocumentContentChangePartial(types.Range(end, end), letter)
        client.text_document_did_change(types.DidChangeTextDocumentParams(names, [change]))
        end = types.Position(3, end.character + 1)
    inside = types.Range(types.Position(1, 7), types.Position(1, 9))  # the lantern takes two columns
    change = types.TextDocumentContentChangePartial(inside, "x")
    client.text_document_did_change(types.DidChangeTextDocumentParams(names, [change]))
    await told(client, uri)
    symbols = await client.text_document_document_symbol_async(
        types.DocumentSymbolParams(types.TextDocumentIdentifier(uri))
    )
    assert symbols is not None
    assert [each.name for each in symbols] == ["cloth.block", "xé"]
    hover = await client.text_document_hover_async(
        types.HoverParams(types.TextDocumentIdentifier(uri), types.Position(3, 12))
    )
    assert hover is not None
    assert "Wet slate" in str(hover.contents)


async def test_a_file_that_is_not_saved_is_seen_by_those_that_use_it(client: LanguageClient, folder: Path) -> None:
    cloth, light = (folder / "cloth.block").as_uri(), (folder / "light.block").as_uri()
    document = types.VersionedTextDocumentIdentifier(9, cloth)
    broken = types.TextDocumentContentChangeWholeDocument(CLOTH.replace("unit beam", "unit beams"))
    client.diagnostics.clear()
    client.text_document_did_change(types.DidChangeTextDocumentParams(document, [broken]))
    problems = await told(client, light)
    assert [problem.code for problem in problems] == ["name-unknown"]
    whole = types.TextDocumentContentChangeWholeDocument(CLOTH)
    client.diagnostics.clear()
    client.text_document_did_change(types.DidChangeTextDocumentParams(document, [whole]))
    assert await told(client, light) == []


async def test_an_error_in_a_file_is_told_at_the_line_that_brings_it_in(client: LanguageClient, folder: Path) -> None:
    (folder / "cracked.block").write_text("fabric sea\n", encoding="utf-8")
    text = 'use "cloth.block"\nuse "cracked.block"\n'
    uri = await opened(client, folder, "uses.block", "")
    (problem,) = await typed(client, uri, text)
    assert spelled(text, problem.range) == '"cracked.block"'
    assert problem.related_information is not None
    assert problem.related_information[0].location.uri == (folder / "cracked.block").as_uri()


async def test_a_problem_is_put_right_by_a_choice_of_the_editor(client: LanguageClient, folder: Path) -> None:
    uri = await opened(client, folder, "mend.block", "")
    text = 'use "cloth.block"\n\nblock "É 🏮"\n  size 4 in\n  row fog lantrn\n  row (geese fog on slate) fog\n'
    problems = await typed(client, uri, text)
    here = next(each for each in problems if each.code == "name-unknown").range
    params = types.CodeActionParams(types.TextDocumentIdentifier(uri), here, types.CodeActionContext(problems))
    actions = [
        each
        for each in await client.text_document_code_action_async(params) or ()
        if isinstance(each, types.CodeAction)
    ]
    assert [each.title for each in actions] == ["Change to `lantern`", "Declare the fabric `lantrn`"]
    assert actions[0].is_preferred
    assert actions[0].kind == types.CodeActionKind.QuickFix
    edit = actions[0].edit
    assert edit is not None
    assert edit.changes is not None
    assert [(spelled(text, each.range), each.new_text) for each in edit.changes[uri]] == [("lantrn", "lantern")]


# --- what is under the pointer -------------------------------------------------------------------


@pytest.mark.parametrize(
    ("file", "words", "within", "expected"),
    [
        ("light.block", "beam  ", 1, ["4 × 2 in finished", "4 1/2 × 2 1/2 in unfinished", "4 in Lumière"]),
        ("light.block", "hourglass", 2, ["4 in finished", "4 1/2 in unfinished", "hourglass UPRIGHT SIDES"]),
        ("light.block", "fog/slate", 1, ["2 in finished", "two at a time", "2 squares 2 7/8 in"]),
        ("light.block", "Lumière", 3, ["8 in finished", "8 1/2 in unfinished", "24 patches in 3 fabrics"]),
        ("quilt.block", "Breakwater", 3, ["17 × 26 in finished", "6 Lumière"]),
        ("cloth.block", "lantern", 3, ["Lantern", "#e0a030", "medium"]),
    ],
)
async def test_the_pointer_shows_a_picture_with_sizes_and_what_is_cut(
    client: LanguageClient, folder: Path, file: str, words: str, within: int, expected: list[str]
) -> None:
    # By hand: cells of 2, 4 and 2 in; geese of 4 x 2 in; half squares of 2 in are two from a square of 2 7/8 in;
    # eight halves, four hourglass triangles and four geese of three patches; 2 x 8 + 1 and 3 x 8 + 2 x 1 in.
    text = (folder / file).read_text(encoding="utf-8")
    params = types.HoverParams(document(folder, file), place(text, words, within))
    found = await client.text_document_hover_async(params)
    assert found is not None
    markdown = found.contents.value  # type: ignore[union-attr]  # it is always Markdown here
    assert [each for each in expected if each not in markdown] == []
    assert drawn(markdown).lstrip().startswith(("<?xml", "<svg"))


async def test_the_pointer_shows_how_a_line_is_written(client: LanguageClient, folder: Path) -> None:
    params = types.HoverParams(document(folder, "light.block"), place(LIGHT, "make half", 1))
    found = await client.text_document_hover_async(params)
    assert found is not None
    assert "make half as two at a time" in str(found.contents)


# --- what comes next -----------------------------------------------------------------------------


async def completed(client: LanguageClient, folder: Path, line: str) -> dict[str, types.CompletionItem]:
    """What is offered at the end of a line in a block; `|` marks another place."""
    place_in = line.index("|") if "|" in line else len(line)
    line = line.replace("|", "")
    quilt = "quilt:" in line
    line = line.replace("quilt:", "") if quilt else line
    head = 'quilt "Q"' if quilt else 'block "B"'
    text = f'use "light.block"\n{head}\n{line}\n'
    uri = (folder / "complete.block").as_uri()
    await opened(client, folder, "complete.block", text)
    at = types.Position(2, place_in - (6 if quilt and "|" in line else 0))
    found = await client.text_document_completion_async(types.CompletionParams(types.TextDocumentIdentifier(uri), at))
    items = found.items if isinstance(found, types.CompletionList) else found or []
    return {item.label: item for item in items}


@pytest.mark.parametrize(
    ("line", "expected", "absent"),
    [
        ("  ", ["row", "size", "colourway", "fabric", "block"], ["set", "chapter"]),
        ("  row fo", ["fog", "lantern", "slate", "beam"], ["geese", "row"]),
        ("  row fog/", ["lantern"], ["beam"]),
        ("  row (", ["geese", "hourglass", "star45"], ["fog"]),
        ("  row (geese ", ["on", "fog"], ["with", "beam"]),
        ("  size 12 ", ["in", "cm", "mm"], ["fog"]),
        ("  make half as ", ["two at a time", "foundation"], ["fog"]),
        ("  make ", ["beam", "half"], ["two at a time"]),
        ("  language ", ["en-GB", "de"], []),
        ("  expect ", ["cut", "finished", "unit"], ["fog"]),
        ("  press ", ["open", "as it nests"], []),
        ('use library "', ["stars", "basics", "demo/palette"], []),
        ('use "', ["cloth.block"], ["intro.md"]),
        ("quilt:  set ", ["straight", "on", "rows", "medallion"], ["fog"]),
        ('quilt:  set straight 2 x 3 of "', ["Lumière 🏮"], ["fog"]),
        ("quilt:  sash 1 in ", ["fog"], ["beam"]),
        ('quilt:  colourway "', ["Night"], []),
        ("  # row ", [], ["fog", "row"]),
    ],
)
async def test_what_can_come_next_is_offered(
    client: LanguageClient, folder: Path, line: str, expected: list[str], absent: list[str]
) -> None:
    found = await completed(client, folder, line)
    assert [word for word in expected if word not in found] == []
    assert [word for word in absent if word in found] == []


async def test_papers_are_offered_in_a_book(client: LanguageClient, folder: Path) -> None:
    uri = await opened(client, folder, "book.block", 'book "B"\n  paper \n  text "\n')
    book = types.TextDocumentIdentifier(uri)
    papers = await client.text_document_completion_async(types.CompletionParams(book, types.Position(1, 8)))
    assert {"letter", "a4", "roll"} <= {item.label for item in papers.items}  # type: ignore[union-attr]
    files = await client.text_document_completion_async(types.CompletionParams(book, types.Position(2, 8)))
    assert "intro.md" in {item.label for item in files.items}  # type: ignore[union-attr]


async def test_a_shape_is_drawn_with_its_words_explained_and_a_fabric_has_its_swatch(
    client: LanguageClient, folder: Path
) -> None:
    shape = (await completed(client, folder, "  row ("))["geese"]
    assert shape.text_edit is not None
    assert shape.text_edit.new_text == "geese ${1:GOOSE} on ${2:SKY}"
    whole = await client.completion_item_resolve_async(shape)
    markdown = whole.documentation.value  # type: ignore[union-attr]
    assert "geese GOOSE on SKY [RIGHT-SKY]" in markdown
    assert "- `GOOSE`: a fabric" in markdown
    assert "- `[RIGHT-SKY]`: may be left out: a fabric" in markdown
    assert drawn(markdown).count("<path") >= 3
    swatch = await client.completion_item_resolve_async((await completed(client, folder, "  row "))["lantern"])
    assert "#e0a030" in drawn(swatch.documentation.value)  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("line", "active", "meaning"),
    [
        ("  row (geese ", 0, "a fabric: goose"),
        ("  row (geese fog ", 1, "the word `on`"),
        ("  row (geese fog on ", 2, "a fabric: sky"),
        ("  row (rails fog slate fog ", 0, "a fabric: top"),
        ("  row fog (log centre fog with ", 3, "a fabric: top"),
    ],
)
async def test_inside_brackets_the_word_that_comes_next_is_explained(
    client: LanguageClient, folder: Path, line: str, active: int, meaning: str
) -> None:
    await completed(client, folder, line)
    at = types.Position(2, len(line))
    found = await client.text_document_signature_help_async(
        types.SignatureHelpParams(document(folder, "complete.block"), at)
    )
    assert found is not None
    signature = found.signatures[0]
    assert signature.active_parameter == active
    assert signature.parameters is not None
    assert signature.parameters[active].documentation == meaning
    assert (
        await client.text_document_signature_help_async(
            types.SignatureHelpParams(document(folder, "light.block"), types.Position(0, 3))
        )
        is None
    )


# --- names ---------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("file", "words", "leads_to", "there"),
    [
        ("light.block", "beam  ", "cloth.block", "beam"),
        ("light.block", "slate=fog", "cloth.block", "slate"),
        ("quilt.block", "Lumière", "light.block", "Lumière 🏮"),
        ("light.block", "cloth.block", "cloth.block", ""),
    ],
)
async def test_a_name_leads_to_where_it_is_declared(
    client: LanguageClient, folder: Path, file: str, words: str, leads_to: str, there: str
) -> None:
    text = (folder / file).read_text(encoding="utf-8")
    found = await client.text_document_definition_async(
        types.DefinitionParams(document(folder, file), place(text, words, 1))
    )
    assert isinstance(found, types.Location)
    assert found.uri == (folder / leads_to).as_uri()
    assert spelled((folder / leads_to).read_text(encoding="utf-8"), found.range) == there


async def test_a_name_is_found_wherever_it_is_used_in_the_project(client: LanguageClient, folder: Path) -> None:
    params = types.ReferenceParams(
        types.ReferenceContext(include_declaration=True), document(folder, "cloth.block"), place(CLOTH, "slate", 1)
    )
    found = await client.text_document_references_async(params)
    counts: dict[str, int] = {}
    for name in (Path(each.uri).name for each in found or ()):
        counts[name] = counts.get(name, 0) + (name in {"cloth.block", "light.block", "quilt.block"})
    counts = {name: count for name, count in counts.items() if count}  # other tests have files of their own
    # By hand: declared once; four half squares, an hourglass and two changes of a colourway; one sash.
    assert counts == {"cloth.block": 1, "light.block": 7, "quilt.block": 1}
    marked = await client.text_document_document_highlight_async(
        types.DocumentHighlightParams(document(folder, "light.block"), place(LIGHT, "slate=fog", 1))
    )
    assert len(marked or ()) == 7


async def test_a_name_is_changed_in_every_file_at_once(client: LanguageClient, folder: Path) -> None:
    at = place(QUILT, "Lumière", 1)
    prepared = await client.text_document_prepare_rename_async(
        types.PrepareRenameParams(document(folder, "quilt.block"), at)
    )
    assert spelled(QUILT, prepared) == "Lumière 🏮"  # type: ignore[arg-type]
    edit = await client.text_document_rename_async(types.RenameParams(document(folder, "quilt.block"), at, "Lantern"))
    assert edit is not None
    assert edit.changes is not None
    changed = {Path(uri).name: len(edits) for uri, edits in edit.changes.items()}
    assert changed == {"light.block": 1, "quilt.block": 1}


@pytest.mark.parametrize(("new", "why"), [("fog", "taken"), ("9 patch", "starts with a letter")])
async def test_a_name_that_cannot_be_is_refused_in_words(
    client: LanguageClient, folder: Path, new: str, why: str
) -> None:
    params = types.RenameParams(document(folder, "light.block"), place(LIGHT, "beam ", 1), new)
    with pytest.raises(Exception, match=why):
        await client.text_document_rename_async(params)


async def test_use_lines_follow_a_file_that_is_moved(client: LanguageClient, folder: Path) -> None:
    move = types.FileRename((folder / "cloth.block").as_uri(), (folder / "cloth" / "harbour.block").as_uri())
    edit = await client.workspace_will_rename_files_async(types.RenameFilesParams([move]))
    assert edit is not None
    assert edit.changes is not None
    (change,) = edit.changes[(folder / "light.block").as_uri()]
    assert change.new_text == "cloth/harbour.block"
    assert spelled(LIGHT, change.range) == "cloth.block"
    asked = asyncio.get_running_loop().create_future()
    client.on_edit = asked.set_result  # type: ignore[attr-defined]  # see below
    client.workspace_did_rename_files(types.RenameFilesParams([move]))
    assert (await asyncio.wait_for(asked, 10)).edit.changes == edit.changes


# --- how the file is built -----------------------------------------------------------------------


async def test_the_outline_has_what_the_file_declares(client: LanguageClient, folder: Path) -> None:
    found = await client.text_document_document_symbol_async(
        types.DocumentSymbolParams(document(folder, "light.block"))
    )
    assert found is not None
    block = found[1]
    assert isinstance(block, types.DocumentSymbol)
    assert (block.name, block.detail, [below.name for below in block.children or ()]) == (
        "Lumière 🏮",
        "size 8 in",
        ["Night"],
    )
    assert (block.range.start.line, block.range.end.line) == (4, 12)
    everywhere = await client.workspace_symbol_async(types.WorkspaceSymbolParams("bea"))
    assert [each.name for each in everywhere or ()] == ["beam"]


async def test_declarations_and_comments_fold(client: LanguageClient, folder: Path) -> None:
    found = await client.text_document_folding_range_async(types.FoldingRangeParams(document(folder, "light.block")))
    assert {(each.start_line, each.end_line) for each in found or ()} == {(2, 3), (4, 12)}


async def test_a_selection_grows_from_word_to_cell_to_line_to_block_to_file(
    client: LanguageClient, folder: Path
) -> None:
    at = place(LIGHT, "hourglass fog", 11)
    found = await client.text_document_selection_range_async(
        types.SelectionRangeParams(document(folder, "light.block"), [at])
    )
    assert found is not None
    steps, here = [], found[0] or None
    while here is not None:
        steps.append(
            spelled(LIGHT, here.range) if here.range.start.line == here.range.end.line else here.range.start.line
        )
        here = here.parent
    row = "row beam<      (hourglass fog slate)  beam>"
    assert steps == ["", "fog", "hourglass fog slate", "(hourglass fog slate)", row, 4, 0]


async def test_names_of_files_are_links(client: LanguageClient, folder: Path) -> None:
    found = await client.text_document_document_link_async(types.DocumentLinkParams(document(folder, "quilt.block")))
    assert [(spelled(QUILT, each.range), each.target) for each in found or ()] == [
        ("light.block", (folder / "light.block").as_uri())
    ]


async def test_a_file_is_laid_out_whole_or_in_part(client: LanguageClient, folder: Path) -> None:
    text = 'use "cloth.block"\nblock "B"\nsize   2 in\n    row fog   slate\n'
    uri = await opened(client, folder, "layout.block", text)
    options = types.FormattingOptions(2, insert_spaces=True)
    name = types.TextDocumentIdentifier(uri)
    edits = await client.text_document_formatting_async(types.DocumentFormattingParams(name, options))
    assert _applied(text, list(edits or ())) == 'use "cloth.block"\n\nblock "B"\n  size 2 in\n  row fog  slate\n'
    lines = types.Range(types.Position(2, 0), types.Position(2, 11))
    part = await client.text_document_range_formatting_async(types.DocumentRangeFormattingParams(name, lines, options))
    assert _applied(text, list(part or ())) == text.replace("size   2 in", "  size 2 in")


def _applied(text: str, edits: list[types.TextEdit]) -> str:
    lines = text.splitlines(keepends=True)
    for edit in sorted(edits, key=lambda each: each.range.start.line, reverse=True):
        assert (edit.range.start.character, edit.range.end.character) == (0, 0)
        lines[edit.range.start.line : edit.range.end.line] = [edit.new_text]
    return "".join(lines)


async def test_each_word_has_its_kind(client: LanguageClient, folder: Path) -> None:
    found = await client.text_document_semantic_tokens_full_async(
        types.SemanticTokensParams(document(folder, "light.block"))
    )
    assert found is not None
    legend = client.started.capabilities.semantic_tokens_provider.legend.token_types  # type: ignore[attr-defined]
    kinds: dict[str, str] = {}
    line = column = 0
    lines = LIGHT.split("\n")
    for at in range(0, len(found.data), 5):
        down, across, length, kind, _ = found.data[at : at + 5]
        line, column = line + down, across + (0 if down else column)
        encoded = lines[line].encode("utf-16-le")
        kinds[encoded[2 * column : 2 * (column + length)].decode("utf-16-le")] = legend[kind]
    wanted = {"row": "keyword", "beam": "function", "fog": "variable", "hourglass": "type", "8": "number"}
    assert {word: kinds.get(word) for word in wanted} == wanted
    assert kinds['"Lumière 🏮"'] == "class"
    assert kinds["# slate middle."] == "comment"
    some = await client.text_document_semantic_tokens_range_async(
        types.SemanticTokensRangeParams(
            document(folder, "light.block"), types.Range(types.Position(5, 0), types.Position(5, 3))
        )
    )
    assert some is not None
    assert len(some.data) == 15  # size, 8, in


async def test_colours_are_seen_and_written(client: LanguageClient, folder: Path) -> None:
    found = await client.text_document_document_color_async(types.DocumentColorParams(document(folder, "cloth.block")))
    assert found is not None
    assert [spelled(CLOTH, each.range) for each in found] == ["#dfe3e0", "#e0a030", "#3a4750"]
    params = types.ColorPresentationParams(document(folder, "cloth.block"), found[1].color, found[1].range)
    (written,) = await client.text_document_color_presentation_async(params)
    assert written.label == "#e0a030"


async def test_real_sizes_and_counts_stand_between_the_lines(client: LanguageClient, folder: Path) -> None:
    whole = types.Range(types.Position(0, 0), types.Position(20, 0))
    found = await client.text_document_inlay_hint_async(types.InlayHintParams(document(folder, "light.block"), whole))
    by_line: dict[int, list[str]] = {}
    for hint in found or ():
        by_line.setdefault(hint.position.line, []).append(str(hint.label))
    # By hand: 1, 2 and 1 parts of 8 in; a row of 2 in, then one of 4 in.
    assert by_line[6] == ["2 in", "4 in", "2 in"]
    assert by_line[8][-1] == "8 × 2 in"
    assert by_line[9][-1] == "8 × 4 in"
    cloth = await client.text_document_inlay_hint_async(types.InlayHintParams(document(folder, "cloth.block"), whole))
    assert not cloth  # the palette has no block of its own


async def test_above_blocks_and_quilts_stand_their_pieces_and_cloth(client: LanguageClient, folder: Path) -> None:
    block = await client.text_document_code_lens_async(types.CodeLensParams(document(folder, "light.block")))
    preview, title = [lens.command.title for lens in block or () if lens.command]
    assert preview == "open preview"
    # By hand: 8 half squares, 4 of an hourglass, 4 geese of 3; fog has 4 + 2 + 8.
    assert title == "24 pieces: fog 14, slate 6, lantern 4"
    quilt = await client.text_document_code_lens_async(types.CodeLensParams(document(folder, "quilt.block")))
    assert quilt is not None
    _, pieces, cloth = quilt
    assert pieces.command is not None
    assert pieces.command.title.startswith("6 blocks, ")
    resolved = await client.code_lens_resolve_async(cloth)
    assert resolved.command is not None
    assert "fog" in resolved.command.title
    assert " yd" in resolved.command.title


# --- the preview ---------------------------------------------------------------------------------


async def _shows(address: str, holds: Callable[[dict[str, Any]], bool]) -> dict[str, Any]:
    """What the preview shows when it is as it should be; asked again until it is."""
    for _ in range(200):
        data: dict[str, Any] = await asyncio.to_thread(lambda: httpx.get(f"{address}data").json())
        if holds(data):
            return data
        await asyncio.sleep(0.05)
    raise AssertionError(data)


async def test_the_preview_shows_what_is_typed_and_the_cursor_lights_what_its_line_draws(
    client: LanguageClient, folder: Path
) -> None:
    text = LIGHT.replace('"cloth.block"', '"cloth.block"  # shown')
    (folder / "shown.block").write_text(text, encoding="utf-8")
    await opened(client, folder, "shown.block", text)
    uri = (folder / "shown.block").as_uri()
    lenses = await client.text_document_code_lens_async(types.CodeLensParams(document(folder, "shown.block")))
    command = (lenses or ())[0].command
    assert command is not None
    asked = types.ExecuteCommandParams(command.command, command.arguments)
    address = str(await client.workspace_execute_command_async(asked))

    assert client.shown_documents[-1].uri == address
    assert client.shown_documents[-1].external
    await _shows(address, lambda data: data["shown"]["size"] == "8 × 8 in")

    typed = text.replace("size 8 in", "size 10 in")
    whole = types.TextDocumentContentChangeWholeDocument(typed)
    version = types.VersionedTextDocumentIdentifier(2, uri)
    client.text_document_did_change(types.DidChangeTextDocumentParams(version, [whole]))
    await _shows(address, lambda data: data["shown"]["size"] == "10 × 10 in")
    assert (folder / "shown.block").read_text(encoding="utf-8") == text  # it was typed, not saved

    line = typed.splitlines().index("  row beam<      (hourglass fog slate)  beam>")
    there = types.Position(line, 4)
    await client.text_document_document_highlight_async(
        types.DocumentHighlightParams(document(folder, "shown.block"), there)
    )
    data = await _shows(address, lambda data: any(patch["lit"] for patch in data["shown"]["patches"]))
    # Two geese of three patches and an hourglass of four stand in the row.
    assert sum(patch["lit"] for patch in data["shown"]["patches"]) == 10

    told = {"file": str(folder / "shown.block"), "line": line + 1}
    answer = await asyncio.to_thread(lambda: httpx.post(f"{address}chosen", json=told))
    assert answer.status_code == 204
    for _ in range(100):
        if client.shown_documents[-1].uri == uri:
            break
        await asyncio.sleep(0.05)
    selection = client.shown_documents[-1].selection
    assert selection is not None
    assert selection.start.line == line

    client.text_document_did_close(types.DidCloseTextDocumentParams(document(folder, "shown.block")))
    for _ in range(100):
        try:
            await asyncio.to_thread(lambda: httpx.get(address))
        except httpx.ConnectError:
            return
        await asyncio.sleep(0.05)
    raise AssertionError("the preview went on after its file was closed")
