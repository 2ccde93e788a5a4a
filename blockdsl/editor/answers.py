"""Answers in the protocol's own types: each request of one open file with the function that answers it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from functools import partial
from typing import Any, Final, Protocol

from lsprotocol import types
from msgspec import Struct
from pygls.exceptions import JsonRpcInvalidParams

from blockdsl.diagnostics import Diagnostic, Edit, Fix, Source, Span
from blockdsl.editor.columns import Columns
from blockdsl.editor.completing import Offer, completions
from blockdsl.editor.hints import hints, lenses, quilt_cloth
from blockdsl.editor.hovering import fabric_words, hover, shape_words
from blockdsl.editor.layout import layout
from blockdsl.editor.mentions import mentions, target
from blockdsl.editor.naming import CannotRename, file_at, moved, named_at, rename, renameable, uses
from blockdsl.editor.outline import Entry, folds, links, outline, paths_said, selections, target_of
from blockdsl.editor.project import OpenFile, Project, ProjectReader, Reading, uri_of
from blockdsl.editor.signatures import signatures
from blockdsl.editor.tokens import MODIFIERS, TYPES, Token, colours, tokens
from blockdsl.fixing import offered
from blockdsl.resources import problem_page_path
from blockdsl.syntax import ast


class Desk(Struct, frozen=True):
    """One open file: its project, and how its editor counts columns."""

    project: Project
    file: OpenFile
    columns: Columns
    markdown: bool = True

    @property
    def source(self) -> Source:
        """Its text."""
        return self.file.source

    @property
    def reading(self) -> Reading:
        """What it comes to."""
        return self.project.reading(self.file)

    def offset(self, position: types.Position) -> int:
        """A place that the editor means."""
        return self.columns.offset(self.source, position)

    def range(self, span: Span) -> types.Range:
        """A span for the editor."""
        return self.columns.range(span)

    def location(self, span: Span) -> types.Location:
        """A span in any file."""
        return types.Location(uri_of(span.source.name), self.columns.range(span))


class Asked(Protocol):
    """A request about one file."""

    text_document: Any


Answer = Callable[[Desk, Any], object]


# --- problems and what helps -----------------------------------------------------------------------

_MOST_PROBLEMS: Final = 200


def diagnostics(desk: Desk) -> list[types.Diagnostic]:
    """The problems that lie in the file, in order; those in a file that it uses are told there."""
    found = [_diagnostic(desk, problem) for problem in _own(desk)]
    elsewhere = _in_used_files(desk)
    return [*found[:_MOST_PROBLEMS], *elsewhere]


def _own(desk: Desk) -> list[Diagnostic]:
    return [problem for problem in desk.reading.problems if problem.span.source is desk.source]


def _in_used_files(desk: Desk) -> list[types.Diagnostic]:
    """One problem at each `use` line whose file has errors, so that nobody looks for them here."""
    broken: dict[str, Diagnostic] = {}
    for problem in desk.reading.problems:
        if problem.severity == "error" and problem.span.source is not desk.source:
            broken.setdefault(problem.span.source.name, problem)
    if not broken:
        return []
    said = {uri: path.span for path, library in paths_said(desk.reading.file) if (uri := _leads(desk, path, library))}
    first_line = Span(desk.source, desk.source.line_starts[0], desk.source.line_starts[0])
    first_use = next(iter(said.values()), first_line)
    return [
        types.Diagnostic(
            # A file that is used by one that is used is told of at the first `use` line.
            desk.range(said.get(uri_of(name), first_use)),
            _short(f"this file has errors: {name}:{problem.span.line}: {problem.message}", desk),
            types.DiagnosticSeverity.Warning,
            problem.code,
            source="blockdsl",
            related_information=[types.DiagnosticRelatedInformation(desk.location(problem.span), problem.message)],
        )
        for name, problem in broken.items()
    ]


def _leads(desk: Desk, path: ast.Text, library: bool) -> str | None:
    return target_of(desk.project, desk.source, path, library=library)


def _diagnostic(desk: Desk, problem: Diagnostic) -> types.Diagnostic:
    page = problem_page_path(problem.code)
    words = f"{problem.message}\n{problem.help}" if problem.help else problem.message
    return types.Diagnostic(
        desk.range(problem.span),
        _short(words, desk),
        types.DiagnosticSeverity.Error if problem.severity == "error" else types.DiagnosticSeverity.Warning,
        problem.code,
        types.CodeDescription(page.resolve().as_uri()),
        "blockdsl",
        [types.DiagnosticTag.Unnecessary] if problem.code == "fabric-unused" else None,
        [types.DiagnosticRelatedInformation(desk.location(span), said) for span, said in problem.related] or None,
    )


def _short(words: str, desk: Desk) -> str:
    """Files by their paths inside the project."""
    return words.replace(f"{desk.project.folder_of(desk.source.name)}/", "")


def code_actions(desk: Desk, params: types.CodeActionParams) -> list[types.CodeAction]:
    """The fixes of the problems on the lines that are asked for, each tried before it is offered."""
    if params.context.only and not any(str(kind).startswith("quickfix") for kind in params.context.only):
        return []
    first, last = params.range.start.line + 1, params.range.end.line + 1
    reading = desk.reading
    own = _own(desk)
    reader = ProjectReader(project=desk.project.folder_of(desk.source.name), texts=desk.project)
    actions = []
    for problem in own:
        if problem.fixes and first <= problem.span.line <= last:
            fixes = offered(problem, desk.source, reader, reading.problems)
            actions += [_action(desk, problem, fix, preferred=not place) for place, fix in enumerate(fixes)]
    return actions


def _action(desk: Desk, problem: Diagnostic, fix: Fix, *, preferred: bool) -> types.CodeAction:
    return types.CodeAction(
        fix.title,
        types.CodeActionKind.QuickFix,
        [_diagnostic(desk, problem)],
        is_preferred=preferred,
        edit=_workspace_edit(fix.edits, desk.columns),
    )


def _workspace_edit(edits: Iterable[Edit], columns: Columns) -> types.WorkspaceEdit:
    changes: dict[str, list[types.TextEdit]] = {}
    for edit in edits:
        place = types.TextEdit(columns.range(edit.span), edit.text)
        changes.setdefault(uri_of(edit.span.source.name), []).append(place)
    return types.WorkspaceEdit(changes=dict(changes))


# --- what is under the pointer ---------------------------------------------------------------------


def hovered(desk: Desk, params: types.HoverParams) -> types.Hover | None:
    """A picture, sizes and what is cut."""
    found = hover(desk.reading, desk.offset(params.position))
    if found is None:
        return None
    return types.Hover(marked(found.markdown, markdown=desk.markdown), desk.range(found.span))


def marked(words: str, *, markdown: bool) -> types.MarkupContent:
    """Words in Markdown as the editor can show them: plain, and without pictures, where it cannot."""
    if markdown:
        return types.MarkupContent(types.MarkupKind.Markdown, words)
    plain = re.sub(r"!\[[^\]]*\]\([^)]*\)\s*|\*\*|`|\\(?=[^\w\s])", "", words)
    return types.MarkupContent(types.MarkupKind.PlainText, plain)


# --- what comes next -------------------------------------------------------------------------------

_KINDS: Final = {
    "line": types.CompletionItemKind.Keyword,
    "word": types.CompletionItemKind.Keyword,
    "fabric": types.CompletionItemKind.Color,
    "unit": types.CompletionItemKind.Function,
    "shape": types.CompletionItemKind.Class,
    "block": types.CompletionItemKind.Reference,
    "quilt": types.CompletionItemKind.Reference,
    "colourway": types.CompletionItemKind.Reference,
    "choice": types.CompletionItemKind.EnumMember,
    "file": types.CompletionItemKind.File,
    "library": types.CompletionItemKind.Module,
}


def completed(desk: Desk, params: types.CompletionParams) -> types.CompletionList:
    """What can be written here."""
    offset = desk.offset(params.position)
    offers = completions(desk.project, desk.reading, desk.source, offset)
    return types.CompletionList(
        is_incomplete=False,
        items=[_item(desk, offer, offset, place) for place, offer in enumerate(offers)],
    )


def _item(desk: Desk, offer: Offer, offset: int, place: int) -> types.CompletionItem:
    replaced = desk.range(Span(desk.source, offset - offer.typed, offset))
    colour = desk.reading.names.fabrics[offer.label].colour if offer.what == "fabric" else None
    return types.CompletionItem(
        offer.label,
        kind=_KINDS[offer.what],
        detail=offer.detail or None,
        documentation=colour,
        sort_text=f"{place:04d}",
        insert_text_format=types.InsertTextFormat.Snippet if offer.written else types.InsertTextFormat.PlainText,
        text_edit=types.TextEdit(replaced, offer.written or offer.label),
        data={"what": offer.what, "name": offer.label, "uri": desk.file.uri},
    )


def resolved(item: types.CompletionItem, project: Project, *, markdown: bool) -> types.CompletionItem:
    """The same with a picture: of a shape as it is written, of a fabric its swatch."""
    data = item.data if isinstance(item.data, dict) else {}
    file = project.file(str(data.get("uri", "")))
    words: Sequence[str] = ()
    if data.get("what") == "shape":
        words = shape_words(str(data.get("name")))
    elif data.get("what") == "fabric" and file is not None:
        fabric = project.reading(file).names.fabrics.get(str(data.get("name")))
        words = fabric_words(fabric) if fabric else ()
    if words:
        item.documentation = marked("\n\n".join(words), markdown=markdown)
    return item


def signature_help(desk: Desk, params: types.SignatureHelpParams) -> types.SignatureHelp | None:
    """The words of the shape that is being written."""
    found = signatures(desk.source, desk.offset(params.position))
    if not found:
        return None
    shown = [
        types.SignatureInformation(
            each.usage,
            each.summary,
            [types.ParameterInformation((part.start, part.stop), part.meaning) for part in each.parts],
            each.active,
        )
        for each in found
    ]
    return types.SignatureHelp(shown, active_signature=0, active_parameter=found[0].active)


# --- names -----------------------------------------------------------------------------------------


def definition(desk: Desk, params: types.DefinitionParams) -> types.Location | None:
    """Where the thing is declared, or the file that the line names."""
    offset = desk.offset(params.position)
    file = file_at(desk.project, desk.source, offset)
    if file is not None:
        start = types.Position(0, 0)
        return types.Location(file, types.Range(start, start))
    named = named_at(desk.project, desk.source, offset)
    return desk.location(named.declared) if named and named.declared else None


def references(desk: Desk, params: types.ReferenceParams) -> list[types.Location]:
    """Everywhere in the project that names the thing."""
    named = named_at(desk.project, desk.source, desk.offset(params.position))
    if named is None:
        return []
    found = uses(desk.project, named, with_declaration=params.context.include_declaration)
    return [desk.location(span) for span in found]


def highlighted(desk: Desk, params: types.DocumentHighlightParams) -> list[types.DocumentHighlight]:
    """Everywhere in this file that names the thing."""
    names = desk.reading.names
    named = named_at(desk.project, desk.source, desk.offset(params.position))
    if named is None:
        return []
    return [
        types.DocumentHighlight(desk.range(mention.span))
        for mention in mentions(names.main)
        if (mention.kind, mention.name) == (named.mention.kind, named.mention.name)
        and target(mention, names) == named.declared
    ]


def prepared(desk: Desk, params: types.PrepareRenameParams) -> types.Range:
    """The place of the name that can be changed."""
    try:
        return desk.range(renameable(desk.project, desk.source, desk.offset(params.position)))
    except CannotRename as reason:
        raise JsonRpcInvalidParams(str(reason)) from None


def renamed(desk: Desk, params: types.RenameParams) -> types.WorkspaceEdit:
    """The edits in all files."""
    try:
        edits = rename(desk.project, desk.source, desk.offset(params.position), params.new_name)
    except CannotRename as reason:
        raise JsonRpcInvalidParams(str(reason)) from None
    return _workspace_edit(edits, desk.columns)


def moved_files(project: Project, files: Sequence[types.FileRename], columns: Columns) -> types.WorkspaceEdit | None:
    """The edits that let `use`, `text` and `font` lines follow files that move."""
    edits = moved(project, [(file.old_uri, file.new_uri) for file in files])
    return _workspace_edit(edits, columns) if edits else None


# --- how the file is built -------------------------------------------------------------------------

_SYMBOLS: Final = {
    "use": types.SymbolKind.Module,
    "fabric": types.SymbolKind.Variable,
    "unit": types.SymbolKind.Function,
    "block": types.SymbolKind.Class,
    "cutter": types.SymbolKind.Constant,
    "quilt": types.SymbolKind.Package,
    "book": types.SymbolKind.Namespace,
    "maker": types.SymbolKind.Object,
    "colourway": types.SymbolKind.EnumMember,
    "chapter": types.SymbolKind.String,
}


def document_symbols(desk: Desk, _params: types.DocumentSymbolParams) -> list[types.DocumentSymbol]:
    """The outline."""
    return [_symbol(desk, entry) for entry in outline(desk.reading.file)]


def _symbol(desk: Desk, entry: Entry) -> types.DocumentSymbol:
    return types.DocumentSymbol(
        entry.name,
        _SYMBOLS[entry.what],
        desk.range(entry.whole),
        desk.range(entry.named),
        entry.detail or None,
        children=[_symbol(desk, below) for below in entry.below],
    )


def workspace_symbols(project: Project, query: str, columns: Columns) -> list[types.WorkspaceSymbol]:
    """What the files of the project declare whose names have the letters that are asked for."""
    found = []
    for source in project.all_files():
        for entry in outline(project.parsed(source)):
            if entry.what != "use" and query.casefold() in entry.name.casefold():
                place = types.Location(uri_of(source.name), columns.range(entry.named))
                found.append(types.WorkspaceSymbol(place, entry.name, _SYMBOLS[entry.what], container_name=source.name))
    return found


def folding(desk: Desk, _params: types.FoldingRangeParams) -> list[types.FoldingRange]:
    """What can be folded."""
    return [types.FoldingRange(first - 1, last - 1, kind=kind) for first, last, kind in folds(desk.reading.file)]


def selected(desk: Desk, params: types.SelectionRangeParams) -> list[types.SelectionRange]:
    """What each selection grows to."""
    return [_selection(desk, position) for position in params.positions]


def _selection(desk: Desk, position: types.Position) -> types.SelectionRange:
    around: types.SelectionRange | None = None
    for span in reversed(selections(desk.reading.file, desk.offset(position))):
        around = types.SelectionRange(desk.range(span), around)
    assert around is not None  # noqa: S101  the file itself is always the last
    return around


def document_links(desk: Desk, _params: types.DocumentLinkParams) -> list[types.DocumentLink]:
    """Names of files, as links to them."""
    return [types.DocumentLink(desk.range(span), to) for span, to in links(desk.project, desk.reading.file)]


# --- layout ----------------------------------------------------------------------------------------


def formatted(desk: Desk, _params: types.DocumentFormattingParams) -> list[types.TextEdit]:
    """The edits that lay the whole file out."""
    return _line_edits(desk, 0, None)


def formatted_range(desk: Desk, params: types.DocumentRangeFormattingParams) -> list[types.TextEdit]:
    """Those that lie in a range of lines."""
    end = params.range.end
    return _line_edits(desk, params.range.start.line, end.line + (1 if end.character else 0))


def _line_edits(desk: Desk, first: int, stop: int | None) -> list[types.TextEdit]:
    last = len(desk.source.line_starts)
    end = desk.columns.whole(desk.source).end

    def at(line: int) -> types.Position:
        return types.Position(line, 0) if line < last else end

    return [
        types.TextEdit(types.Range(at(edit.first), at(edit.stop)), edit.text)
        for edit in layout(desk.source, first, stop)
    ]


# --- words and colours -----------------------------------------------------------------------------

LEGEND: Final = types.SemanticTokensLegend(list(TYPES), list(MODIFIERS))


def semantic_tokens(desk: Desk, _params: types.SemanticTokensParams) -> types.SemanticTokens:
    """What each word is."""
    return _encoded(desk, tokens(desk.reading))


def semantic_tokens_range(desk: Desk, params: types.SemanticTokensRangeParams) -> types.SemanticTokens:
    """The same of some lines."""
    return _encoded(desk, tokens(desk.reading, params.range.start.line + 1, params.range.end.line + 1))


def _encoded(desk: Desk, found: Iterable[Token]) -> types.SemanticTokens:
    """As the protocol wants it: each token by its distance from the one before."""
    data: list[int] = []
    line = column = 0
    for token in found:
        start = desk.columns.position(desk.source, token.span.start)
        if start.line != line:
            column = 0
        length = desk.columns.width(token.span.text)
        data += [start.line - line, start.character - column, length, TYPES.index(token.type), token.modifiers]
        line, column = start.line, start.character
    return types.SemanticTokens(data)


def document_colours(desk: Desk, _params: types.DocumentColorParams) -> list[types.ColorInformation]:
    """The colours of fabrics."""
    return [types.ColorInformation(desk.range(span), _channels(colour)) for span, colour in colours(desk.reading.file)]


def _channels(colour: str) -> types.Color:
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    return types.Color(red, green, blue, float(1))


def colour_presentations(_desk: Desk, params: types.ColorPresentationParams) -> list[types.ColorPresentation]:
    """A colour as it is written."""
    channels = (params.color.red, params.color.green, params.color.blue)
    return [types.ColorPresentation("#" + "".join(f"{round(min(max(c, 0), 1) * 255):02x}" for c in channels))]


# --- hints -----------------------------------------------------------------------------------------


def inlay_hints(desk: Desk, params: types.InlayHintParams) -> list[types.InlayHint]:
    """Sizes and counts in the lines that are asked for."""
    first, last = params.range.start.line + 1, params.range.end.line + 1
    return [
        types.InlayHint(
            desk.columns.position(hint.at.source, hint.at.start), hint.words, tooltip=hint.meaning, padding_left=True
        )
        for hint in hints(desk.reading)
        if first <= hint.at.line <= last
    ]


def code_lenses(desk: Desk, _params: types.CodeLensParams) -> list[types.CodeLens]:
    """Above each block and quilt its pieces; the cloth of a quilt is planned when it is looked at."""
    found = []
    top = desk.range(Span(desk.source, 0, 0))
    if desk.reading.stages.program.blocks or desk.reading.stages.program.quilts:
        found.append(types.CodeLens(top, types.Command("open preview", OPEN_PREVIEW, arguments=[desk.file.uri]), None))
    for span, words, quilt in lenses(desk.reading):
        data = {"uri": desk.file.uri, "quilt": quilt} if quilt else None
        found.append(types.CodeLens(desk.range(span), types.Command(words, ""), None))
        if data is not None:
            found.append(types.CodeLens(desk.range(span), None, data))
    return found


def cloth_asked_for(lens: types.CodeLens, project: Project) -> Callable[[], str]:
    """What finds the cloth that a quilt takes: that may take seconds, so it is called beside the server's own work."""
    data = lens.data if isinstance(lens.data, dict) else {}
    file = project.file(str(data.get("uri", "")))
    if file is None:
        return str
    return partial(quilt_cloth, project.reading(file), str(data.get("quilt", "")))


OPEN_PREVIEW: Final = "blockdsl.openPreview"
"""The command that an editor sends back for the lens above a file: it opens the preview."""

ANSWERS: Final[dict[str, tuple[Answer, object]]] = {
    types.TEXT_DOCUMENT_CODE_ACTION: (code_actions, types.CodeActionOptions([types.CodeActionKind.QuickFix])),
    types.TEXT_DOCUMENT_HOVER: (hovered, None),
    types.TEXT_DOCUMENT_COMPLETION: (
        completed,
        types.CompletionOptions(trigger_characters=[" ", '"', "(", "=", "/", "\\"], resolve_provider=True),
    ),
    types.TEXT_DOCUMENT_SIGNATURE_HELP: (signature_help, types.SignatureHelpOptions(["(", " "])),
    types.TEXT_DOCUMENT_DEFINITION: (definition, None),
    types.TEXT_DOCUMENT_REFERENCES: (references, None),
    types.TEXT_DOCUMENT_DOCUMENT_HIGHLIGHT: (highlighted, None),
    types.TEXT_DOCUMENT_PREPARE_RENAME: (prepared, None),
    types.TEXT_DOCUMENT_RENAME: (renamed, types.RenameOptions(prepare_provider=True)),
    types.TEXT_DOCUMENT_DOCUMENT_SYMBOL: (document_symbols, None),
    types.TEXT_DOCUMENT_FOLDING_RANGE: (folding, None),
    types.TEXT_DOCUMENT_SELECTION_RANGE: (selected, None),
    types.TEXT_DOCUMENT_DOCUMENT_LINK: (document_links, None),
    types.TEXT_DOCUMENT_FORMATTING: (formatted, None),
    types.TEXT_DOCUMENT_RANGE_FORMATTING: (formatted_range, None),
    types.TEXT_DOCUMENT_SEMANTIC_TOKENS_FULL: (semantic_tokens, LEGEND),
    types.TEXT_DOCUMENT_SEMANTIC_TOKENS_RANGE: (semantic_tokens_range, LEGEND),
    types.TEXT_DOCUMENT_DOCUMENT_COLOR: (document_colours, None),
    types.TEXT_DOCUMENT_COLOR_PRESENTATION: (colour_presentations, None),
    types.TEXT_DOCUMENT_INLAY_HINT: (inlay_hints, None),
    types.TEXT_DOCUMENT_CODE_LENS: (code_lenses, types.CodeLensOptions(resolve_provider=True)),
}
"""Each request with what answers it, and what the editor is told about it."""
