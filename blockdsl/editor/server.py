"""The language server: what an editor tells it and asks it, each answered by the file beside this one for it.

Problems are published when a text was opened or changed, once for a burst of changes. Rings of objects are collected
when the answer has gone out, so that no key waits for it.
"""

from __future__ import annotations

import asyncio
import gc
import logging
import re
from functools import lru_cache
from pathlib import Path
from typing import Any, Final

from lsprotocol import types
from pygls import uris
from pygls.capabilities import get_capability
from pygls.lsp.server import LanguageServer

from blockdsl import __version__
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Source
from blockdsl.editor import answers
from blockdsl.editor.columns import Columns
from blockdsl.editor.previewing import Previews
from blockdsl.editor.project import OpenFile, Project
from blockdsl.pipeline import run

_IDLE_S: Final = 0.3
_MOST_UNCOLLECTED: Final = 40
_MOST_UNEMPTIED: Final = 1000
_LINE_END: Final = re.compile(r"\r\n|\n|\r")


class BlockServer(LanguageServer):
    """The server with the project that its editor has open."""

    def __init__(self) -> None:
        """Nothing is open yet."""
        super().__init__("blockdsl", __version__, text_document_sync_kind=types.TextDocumentSyncKind.Incremental)
        self.project = Project()
        self._waiting: asyncio.TimerHandle | None = None
        self._collecting: asyncio.TimerHandle | None = None
        self._changed: set[str] = set()
        self._since_collected = self._since_emptied = 0
        self.previews = Previews(self._pointed)
        self.loop: asyncio.AbstractEventLoop | None = None

    @property
    def columns(self) -> Columns:
        """Columns as this editor counts them."""
        encoding = self.workspace.position_encoding
        return Columns(str(getattr(encoding, "value", encoding) or "utf-16"))

    def desk(self, uri: str) -> answers.Desk | None:
        """The open file with all that is known of it; None for a file that is not open."""
        file = self.project.file(uri)
        return (
            None
            if file is None
            else answers.Desk(
                self.project, file, self.columns, self.shows_markdown("text_document.hover.content_format")
            )
        )

    def shows_markdown(self, where: str) -> bool:
        """Whether the editor shows Markdown in this kind of window."""
        found = get_capability(self.client_capabilities, where, [])
        return types.MarkupKind.Markdown in (found or [])

    def _pointed(self, file: str, line: int) -> None:
        """Ask the editor to go to a line; called from a preview's thread."""
        uri = uris.from_fs_path(str(Path(file).resolve()))
        if uri is None or not get_capability(self.client_capabilities, "window.show_document.support", default=False):
            return
        place = types.Position(line - 1, 0)
        asked = types.ShowDocumentParams(uri, take_focus=True, selection=types.Range(place, place))
        if self.loop is not None:
            self.loop.call_soon_threadsafe(self.window_show_document, asked)

    def close(self, uri: str) -> None:
        """The editor has closed a file: its preview ends, and what is said of it is what lies on the disk."""
        file = self.project.file(uri)
        self.project.close(uri)
        self.text_document_publish_diagnostics(types.PublishDiagnosticsParams(uri, []))
        if file is not None:
            self.previews.close(file.source.name)
            self.soon(file.source.name)

    # --- problems ------------------------------------------------------------------------------

    def soon(self, name: str) -> None:
        """Tell the problems of a file, and of those that use it, when no further change is waiting."""
        self._changed.add(name)
        if self._waiting is not None:
            self._waiting.cancel()
        self._waiting = asyncio.get_running_loop().call_later(0, self._publish)

    def _publish(self) -> None:
        changed, self._changed = self._changed, set()
        for file in self.project.opened():
            if file.source.name in changed:
                self.previews.typed(file.source.name, file.source.text)
        files = sorted(self.project.opened(), key=lambda file: file.source.name not in changed)
        for file in files:
            if file.source.name in changed or file.reading is None or self._uses(file, changed):
                self.publish(file)
        self._collect_later()

    def _uses(self, file: OpenFile, changed: set[str]) -> bool:
        """Whether the file read one of those that changed, or looked for one that was missing."""
        reading = file.reading
        if reading is None:
            return True
        missing = any(problem.code == "use-missing" for problem in reading.problems)
        return missing or not changed.isdisjoint(reading.stages.program.sources)

    def publish(self, file: OpenFile) -> None:
        """Tell the problems of one file."""
        desk = answers.Desk(self.project, file, self.columns)
        known = self.workspace.text_documents.get(file.uri)
        version = known.version if known is not None else None
        found = answers.diagnostics(desk)
        self.text_document_publish_diagnostics(types.PublishDiagnosticsParams(file.uri, found, version))

    def _collect_later(self) -> None:
        """Look for rings of objects when the editor pauses, or when it has not for long."""
        self._since_collected += 1
        if self._collecting is not None:
            self._collecting.cancel()
        wait = _IDLE_S if self._since_collected < _MOST_UNCOLLECTED else 0
        self._collecting = asyncio.get_running_loop().call_later(wait, self._collect)

    def _collect(self) -> None:
        self._since_emptied += self._since_collected
        self._since_collected = 0
        if self._since_emptied >= _MOST_UNEMPTIED:
            self._since_emptied = 0
            for found in _CACHES:
                found.cache_clear()
        gc.collect()


def changed_text(text: str, change: types.TextDocumentContentChangeEvent, columns: Columns) -> str:
    """A text after one change of the editor's."""
    if isinstance(change, types.TextDocumentContentChangeWholeDocument):
        return change.text
    starts = [0, *(end.end() for end in _LINE_END.finditer(text))]

    def place(position: types.Position) -> int:
        if position.line >= len(starts):
            return len(text)
        start = starts[max(position.line, 0)]
        whole = _LINE_END.split(
            text[start : starts[position.line + 1] if position.line + 1 < len(starts) else len(text)], maxsplit=1
        )[0]
        return start + columns.letters(whole, position.character)

    first, last = sorted((place(change.range.start), place(change.range.end)))
    return text[:first] + change.text + text[last:]


def serve() -> None:
    """Speak with an editor over standard input and output until it says that it is done."""
    logging.getLogger("pygls").setLevel(logging.CRITICAL)  # what goes wrong is told to the editor
    make_server().start_io()


def make_server() -> BlockServer:
    """A server with all that it answers."""
    server = BlockServer()
    _follow(server)
    _follow_files(server)
    _answer(server)
    _show(server)
    return server


_SMALL: Final = 'fabric a "A" #ffffff\nfabric b "B" #000000\nblock "C"\n  size 2 in\n  row a/b\n'


_CACHED: Final = type(lru_cache(lambda: None))
_CACHES: Final[list[Any]] = []
"""What the steps keep to be quicker: a command ends before that is much, a server empties it after many keys."""


def _warm_up() -> None:
    """Load all that a reading takes while the editor opens its first file; what is loaded is never collected."""
    run(Source("warm-up", _SMALL), TextReader())
    found = (each for each in gc.get_objects() if isinstance(each, _CACHED) and each.__module__.startswith("blockdsl"))
    _CACHES[:] = [each for each in found if each.cache_parameters()["maxsize"]]
    gc.collect()
    gc.freeze()


def _follow(server: BlockServer) -> None:
    """What an editor tells."""

    @server.feature(types.INITIALIZE)
    def initialize(params: types.InitializeParams) -> None:
        folders = [folder.uri for folder in params.workspace_folders or ()]
        root = [params.root_uri] if params.root_uri and not folders else []
        paths = [uris.to_fs_path(uri) for uri in (*folders, *root)]
        server.project.folders = [Path(path) for path in paths if path]

    @server.feature(types.INITIALIZED)
    def initialized(_params: types.InitializedParams) -> None:
        asyncio.get_running_loop().call_soon(_warm_up)

    @server.feature(types.TEXT_DOCUMENT_DID_OPEN)
    def opened(params: types.DidOpenTextDocumentParams) -> None:
        server.soon(server.project.open(params.text_document.uri, params.text_document.text).source.name)

    @server.feature(types.TEXT_DOCUMENT_DID_CHANGE)
    def changed(params: types.DidChangeTextDocumentParams) -> None:
        file = server.project.file(params.text_document.uri)
        text = "" if file is None else file.source.text
        for change in params.content_changes:
            text = changed_text(text, change, server.columns)
        server.soon(server.project.change(params.text_document.uri, text).source.name)

    @server.feature(types.TEXT_DOCUMENT_DID_SAVE)
    def saved(params: types.DidSaveTextDocumentParams) -> None:
        if (file := server.project.file(params.text_document.uri)) is not None:
            server.project.touched()
            server.soon(file.source.name)

    @server.feature(types.TEXT_DOCUMENT_DID_CLOSE)
    def closed(params: types.DidCloseTextDocumentParams) -> None:
        server.close(params.text_document.uri)


def _follow_files(server: BlockServer) -> None:
    """What an editor tells of files and folders on the disk."""

    @server.feature(types.WORKSPACE_DID_CHANGE_WORKSPACE_FOLDERS)
    def folders(params: types.DidChangeWorkspaceFoldersParams) -> None:
        gone = {uris.to_fs_path(folder.uri) for folder in params.event.removed}
        added = [uris.to_fs_path(folder.uri) for folder in params.event.added]
        kept = [folder for folder in server.project.folders if str(folder) not in gone]
        server.project.folders = [*kept, *(Path(path) for path in added if path)]
        server.project.touched()

    @server.feature(types.WORKSPACE_DID_CHANGE_WATCHED_FILES)
    def watched(_params: types.DidChangeWatchedFilesParams) -> None:
        server.project.touched()
        for file in server.project.opened():
            server.soon(file.source.name)

    @server.feature(types.WORKSPACE_WILL_RENAME_FILES, _RENAMED)
    def will_rename(params: types.RenameFilesParams) -> types.WorkspaceEdit | None:
        return answers.moved_files(server.project, params.files, server.columns)

    @server.feature(types.WORKSPACE_DID_RENAME_FILES, _RENAMED)
    def did_rename(params: types.RenameFilesParams) -> None:
        server.project.touched()
        edit = answers.moved_files(server.project, params.files, server.columns)
        if edit is not None:
            server.workspace_apply_edit(types.ApplyWorkspaceEditParams(edit, "Follow the files that were renamed"))


_RENAMED: Final = types.FileOperationRegistrationOptions(
    [
        types.FileOperationFilter(types.FileOperationPattern("**/*", types.FileOperationPatternKind.File)),
        types.FileOperationFilter(types.FileOperationPattern("**", types.FileOperationPatternKind.Folder)),
    ]
)


def _show(server: BlockServer) -> None:
    """Previews, and the cursor that lights what its line draws."""

    @server.command(answers.OPEN_PREVIEW)
    def preview(uri: str) -> str | None:
        file = server.project.file(str(uri))
        if file is None or not Path(file.source.name).is_file():
            server.window_show_message(types.ShowMessageParams(types.MessageType.Info, "Save the file first."))
            return None
        server.loop = asyncio.get_running_loop()
        address = server.previews.open(file.source.name, file.source.text)
        if get_capability(server.client_capabilities, "window.show_document.support", default=False):
            server.window_show_document(types.ShowDocumentParams(address, external=True))
        else:
            server.window_show_message(types.ShowMessageParams(types.MessageType.Info, f"The preview is at {address}"))
        return address

    @server.feature(types.SHUTDOWN)
    def shutdown(_params: None) -> None:
        server.previews.end()


def _answer(server: BlockServer) -> None:
    """What an editor asks of one file: each request with the function that answers it."""
    for method, (answer, options) in answers.ANSWERS.items():
        _register(server, method, answer, options)

    @server.feature(types.WORKSPACE_SYMBOL)
    def symbols(params: types.WorkspaceSymbolParams) -> list[types.WorkspaceSymbol]:
        return answers.workspace_symbols(server.project, params.query, server.columns)

    @server.feature(types.COMPLETION_ITEM_RESOLVE)
    def resolve(item: types.CompletionItem) -> types.CompletionItem:
        where = "text_document.completion.completion_item.documentation_format"
        return answers.resolved(item, server.project, markdown=server.shows_markdown(where))

    @server.feature(types.CODE_LENS_RESOLVE)
    async def resolve_lens(lens: types.CodeLens) -> types.CodeLens:
        find = answers.cloth_asked_for(lens, server.project)
        words = await asyncio.get_running_loop().run_in_executor(server.thread_pool, find)
        lens.command = types.Command(words or "cloth: not known", "")
        return lens


def _register(server: BlockServer, method: str, answer: answers.Answer, options: object) -> None:
    # What is asked is in each request; what pygls wants to know of it is in the protocol already.
    def asked(params: answers.Asked) -> object:
        desk = server.desk(params.text_document.uri)
        if desk is not None and isinstance(params, types.DocumentHighlightParams):
            # Editors ask this when the cursor has moved; the protocol has no message for that alone.
            server.previews.moved(desk.source.name, params.position.line + 1)
        return None if desk is None else answer(desk, params)

    if options is None:
        server.feature(method)(asked)
    else:
        server.feature(method, options)(asked)
