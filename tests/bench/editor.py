"""Typing in a file of 500 lines and 34 blocks: how long the language server computes for each key, and its memory.

A thousand single keys, each put right by the next. Computing time is that of all the server's threads, from
the system; on a busy machine it says more than the clock. With `--compare` each answer is held to a fresh reading.
"""

from __future__ import annotations

import json
import sys
import tempfile
import time
from pathlib import Path
from queue import Queue
from random import Random
from typing import Any

from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.pipeline import run
from blockdsl.resources import library_path
from tests.fuzz.messages import Server

_EDITS = 1000
_TYPED = 'abeghinorstw 12/"()-|<~é😀'


def whole_file() -> str:
    """Three files of the library as one, each block with a title of its own."""
    lines: list[str] = []
    for name in ("basics", "four-patch", "stars"):
        text = library_path(name).read_text(encoding="utf-8")
        lines += [line for line in text.splitlines() if not line.startswith(("use ", "  source "))]
    seen: set[str] = set()
    for place, line in enumerate(lines):
        if line.startswith(("block ", "unit ")):
            lines[place] = line if line not in seen else line.replace('"', '"Another ', 1)
            seen.add(line)
    return "\n".join(lines) + "\n"


def computed(server: Server) -> float:
    """Milliseconds that the server has computed so far, all its threads together."""
    tasks = Path(f"/proc/{server.process.pid}/task").glob("*/schedstat")
    return sum(int(task.read_text().split()[0]) for task in tasks) / 1e6


def resident(server: Server) -> float:
    """Megabytes of memory that the server has in use."""
    status = Path(f"/proc/{server.process.pid}/status").read_text()
    return int(status.split("VmRSS:")[1].split()[0]) / 1024


def main() -> None:
    """Type, and print the table."""
    text, chance = whole_file(), Random(14)  # noqa: S311  the same keys every time
    blocks, lines = text.count("\nblock "), text.count("\n")
    with tempfile.TemporaryDirectory() as folder:
        server = Server(Path(folder))
        try:
            _type(server, (Path(folder) / "a.block").as_uri(), text, chance)
        finally:
            server.stop()
    print(f"({lines} lines, {blocks} blocks)")


def _type(server: Server, uri: str, text: str, chance: Random) -> None:
    server.ask("first", "initialize", {"capabilities": {"general": {"positionEncodings": ["utf-32"]}}})
    _tell(server, "initialized", {})
    item = {"uri": uri, "languageId": "blockdsl", "version": 1, "text": text}
    _tell(server, "textDocument/didOpen", {"textDocument": item})
    _problems(server.said)
    clock, busy, memory = [], [], []
    shown = text
    for number in range(_EDITS):
        at = chance.randrange(len(text))
        kind = chance.randrange(3)
        now = text[:at] + text[at + 1 :] if kind == 0 else text[:at] + chance.choice(_TYPED) + text[at:]
        for each in (now, text):
            params = {"textDocument": {"uri": uri, "version": number}, "contentChanges": [_change(shown, each)]}
            shown = each
            before, started = computed(server), time.perf_counter()
            _tell(server, "textDocument/didChange", params)
            problems = _problems(server.said)
            clock.append((time.perf_counter() - started) * 1000)
            busy.append(computed(server) - before)
            if "--compare" in sys.argv:
                _compare(each, problems, number)
        if number % 200 == 199:
            time.sleep(1)  # she looks at it
            memory.append(resident(server))
    print(f"{len(busy)} keys: computing {_spread(busy)}; by the clock {_spread(clock)}")
    print(f"memory after each 200: {', '.join(f'{each:.0f}' for each in memory)} MB; not to grow")
    print("target: 50 ms at the 95th percentile")


def _change(before: str, after: str) -> dict[str, object]:
    """The change from one text to the other as an editor tells it: where, and what came in; in UTF-32."""
    most = min(len(before), len(after))
    top = next((at for at in range(most) if before[at] != after[at]), most)
    foot = next((at for at in range(most - top) if before[-1 - at] != after[-1 - at]), most - top)

    def place(at: int) -> dict[str, int]:
        return {"line": before.count("\n", 0, at), "character": at - before.rfind("\n", 0, at) - 1}

    span = {"start": place(top), "end": place(len(before) - foot)}
    return {"range": span, "text": after[top : len(after) - foot]}


def _tell(server: Server, method: str, params: object) -> None:
    server.send(json.dumps({"jsonrpc": "2.0", "method": method, "params": params}).encode())


def _problems(said: Queue[dict[str, Any]]) -> list[dict[str, Any]]:
    while (message := said.get(timeout=60)).get("method") != "textDocument/publishDiagnostics":
        pass
    found: list[dict[str, Any]] = message["params"]["diagnostics"]
    return found


def _compare(text: str, told: list[dict[str, Any]], number: int) -> None:
    problems = Problems()
    run(Source("a.block", text), TextReader(), problems)
    fresh = [(each.code, each.span.line - 1, each.span.column - 1) for each in problems][:200]
    warm = [(each["code"], each["range"]["start"]["line"], each["range"]["start"]["character"]) for each in told]
    if fresh != warm:
        sys.exit(f"after edit {number} the server says {warm} and a fresh reading {fresh}")


def _spread(times: list[float]) -> str:
    ordered = sorted(times)
    return (
        f"{ordered[len(ordered) // 2]:.1f} ms in the middle, {ordered[int(len(ordered) * 0.95)]:.1f} at the 95th of 100"
    )


if __name__ == "__main__":
    main()
