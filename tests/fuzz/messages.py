"""An editor that has lost its mind: messages to the language server that are cut short, shuffled, or make no sense.

Whatever comes, the server goes on and answers the next message that is whole: `python -m tests.fuzz.messages` sends
ten thousand, the tests a few hundred.
"""

from __future__ import annotations

import json
import subprocess
import sys
import threading
from collections.abc import Iterator
from pathlib import Path
from queue import Empty, Queue
from random import Random
from typing import Any, Final

from blockdsl.resources import library_path

SEED: Final = 14
_PATIENCE_S: Final = 60
_METHODS: Final = (
    "textDocument/hover",
    "textDocument/completion",
    "textDocument/signatureHelp",
    "textDocument/definition",
    "textDocument/references",
    "textDocument/documentHighlight",
    "textDocument/prepareRename",
    "textDocument/rename",
    "textDocument/documentSymbol",
    "textDocument/foldingRange",
    "textDocument/selectionRange",
    "textDocument/documentLink",
    "textDocument/formatting",
    "textDocument/rangeFormatting",
    "textDocument/semanticTokens/full",
    "textDocument/semanticTokens/range",
    "textDocument/documentColor",
    "textDocument/colorPresentation",
    "textDocument/inlayHint",
    "textDocument/codeLens",
    "textDocument/codeAction",
    "codeLens/resolve",
    "completionItem/resolve",
    "workspace/symbol",
    "workspace/willRenameFiles",
    "initialize",
    "no/such/method",
)
_TOLD: Final = (
    "textDocument/didOpen",
    "textDocument/didChange",
    "textDocument/didSave",
    "textDocument/didClose",
    "workspace/didRenameFiles",
    "workspace/didChangeWatchedFiles",
    "workspace/didChangeWorkspaceFolders",
    "$/cancelRequest",
    "$/setTrace",
)
_ODD: Final[tuple[object, ...]] = (
    None,
    -1,
    10**12,
    1.5,
    "",
    "é😀",
    [],
    {},
    [[]],
    True,
    "file:///",
    "file://%zz",
    "untitled:Untitled-1",
)


class Server:
    """The language server as a process, with what it says read as it comes."""

    def __init__(self, folder: Path) -> None:
        """Start it in a folder."""
        command = str(Path(sys.executable).parent / "blockdsl")
        self.process = subprocess.Popen(
            [command, "language-server"],
            cwd=folder,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
        )
        self.said: Queue[dict[str, Any]] = Queue()
        self._reader = threading.Thread(target=self._read, daemon=True)
        self._reader.start()

    def _read(self) -> None:
        assert self.process.stdout is not None
        while header := self.process.stdout.readline():
            if header.lower().startswith(b"content-length:"):
                length = int(header.split(b":")[1])
                while self.process.stdout.readline().strip():
                    pass
                self.said.put(json.loads(self.process.stdout.read(length)))

    def send(self, body: bytes) -> None:
        """Send one message."""
        assert self.process.stdin is not None
        self.process.stdin.write(b"Content-Length: %d\r\n\r\n%s" % (len(body), body))
        self.process.stdin.flush()

    def ask(self, number: str, method: str, params: object) -> dict[str, Any]:
        """Ask something sensible, and wait for the answer. Errors: TimeoutError."""
        self.send(json.dumps({"jsonrpc": "2.0", "id": number, "method": method, "params": params}).encode())
        try:
            while (said := self.said.get(timeout=_PATIENCE_S)).get("id") != number or "method" in said:
                pass
        except Empty:
            raise TimeoutError(f"no answer to {method} in {_PATIENCE_S} s") from None
        return said

    def stop(self) -> None:
        """End it as an editor does, or by force."""
        try:
            self.ask("the end", "shutdown", None)
            self.send(b'{"jsonrpc": "2.0", "method": "exit"}')
            self.process.wait(timeout=_PATIENCE_S)
        finally:
            self.process.kill()
            self.close()

    def close(self) -> int:
        """Go away without a word, and wait for it to end; its exit status."""
        assert self.process.stdin is not None
        assert self.process.stdout is not None
        self.process.stdin.close()
        status = self.process.wait(timeout=_PATIENCE_S)
        self._reader.join()
        self.process.stdout.close()
        return status


def messages(chance: Random, folder: Path) -> Iterator[bytes]:
    """Without end: requests and tidings, sound ones among those that are cut, changed or shuffled."""
    text = library_path("stars").read_text(encoding="utf-8")[:2000]
    uris = [(folder / name).as_uri() for name in ("a.block", "b.block", "no.block")]
    waiting: list[bytes] = []
    number = 0
    while True:
        number += 1
        body = json.dumps(_message(chance, number, uris, text)).encode()
        match chance.randrange(10):
            case 0:  # cut short
                yield body[: chance.randrange(1, len(body) + 1)]
            case 1:  # a byte changed
                at = chance.randrange(len(body))
                yield body[:at] + bytes([chance.randrange(256)]) + body[at + 1 :]
            case 2:  # kept for later
                waiting.append(body)
            case _:
                yield body
        if len(waiting) > 5:
            chance.shuffle(waiting)
            yield from waiting
            waiting.clear()


def _message(chance: Random, number: int, uris: list[str], text: str) -> dict[str, object]:
    told = chance.random() < 0.4
    method = chance.choice(_TOLD if told else _METHODS)
    params = _params(chance, method, uris, text)
    if params and chance.random() < 0.2:
        params[chance.choice(list(params))] = chance.choice(_ODD)
    message: dict[str, object] = {"jsonrpc": "2.0", "method": method, "params": params}
    if not told:
        message["id"] = chance.choice([number, f"request {number}"])
    if chance.random() < 0.05:
        message.pop(chance.choice(list(message)))
    return message


def _place(chance: Random) -> dict[str, object]:
    far = chance.random() < 0.1
    return {"line": chance.choice([-1, 10**9]) if far else chance.randrange(70), "character": chance.randrange(90)}


def _params(chance: Random, method: str, uris: list[str], text: str) -> dict[str, Any]:
    uri = chance.choice(uris)
    start = chance.randrange(len(text))
    span = {"start": _place(chance), "end": _place(chance)}
    item = {"uri": uri, "languageId": "blockdsl", "version": 1, "text": text[start : start + chance.randrange(900)]}
    change = {"range": span, "text": chance.choice([text[start : start + 9], "", "\n", "é😀", "#", "(", '"'])}
    files = [{"oldUri": uri, "newUri": chance.choice(uris)}]
    return {
        "textDocument": item if method == "textDocument/didOpen" else {"uri": uri, "version": 2},
        "position": _place(chance),
        "positions": [_place(chance)],
        "range": span,
        "contentChanges": [change],
        "context": {"diagnostics": [], "includeDeclaration": True},
        "options": {"tabSize": 2, "insertSpaces": True},
        "newName": chance.choice(["fog", "", "x y", "😀", "a-b"]),
        "color": {"red": 0.5, "green": 2, "blue": -1, "alpha": 1},
        "query": chance.choice(["", "s", "é"]),
        "files": files,
        "changes": [{"uri": uri, "type": 2}],
        "event": {"added": [], "removed": []},
        "label": "geese",
        "data": chance.choice([None, {"what": "shape", "name": "geese"}, {"what": 3}, {"uri": uri, "quilt": "?"}]),
        "capabilities": {},
        "id": 3,
        "value": "off",
    }


def trouble(count: int, folder: Path, seed: int = SEED) -> None:
    """Send so many messages, asking now and then for something sensible. Errors: TimeoutError, AssertionError."""
    server = Server(folder)
    chance = Random(seed)  # noqa: S311  the same trouble every time
    coming = messages(chance, folder)
    uri = (folder / "good.block").as_uri()
    try:
        server.send(next(coming))  # even before the first word
        server.ask("first", "initialize", {"capabilities": {}, "rootUri": folder.as_uri()})
        item = {"uri": uri, "languageId": "blockdsl", "version": 1, "text": 'block "B"\n  size 2 in\n  row fog\n'}
        opened = {"jsonrpc": "2.0", "method": "textDocument/didOpen", "params": {"textDocument": item}}
        server.send(json.dumps(opened).encode())
        for number in range(count):
            server.send(next(coming))
            if number % 100 == 99:
                said = server.ask(f"good {number}", "textDocument/documentSymbol", {"textDocument": {"uri": uri}})
                assert [each["name"] for each in said["result"]] == ["B"], said
                assert server.process.poll() is None
    finally:
        server.stop()


if __name__ == "__main__":
    from tempfile import TemporaryDirectory

    with TemporaryDirectory() as place:
        trouble(10_000, Path(place))
    print("ten thousand messages, and the server still answers")
