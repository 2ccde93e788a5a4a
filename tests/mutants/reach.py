"""Which tests reach which changes: a plugin for pytest, in a copy of the project whose places report themselves.

`-p tests.mutants.reach`; the file that it adds to is named in BLOCKDSL_REACHED, a line of JSON for each test: its name,
how long it took, whether it failed, and the numbers of the places. What modules work out when they are imported has an
empty name, since every later test stands on it.
"""

from __future__ import annotations

import builtins
import json
import os
import time
from collections.abc import Generator
from pathlib import Path

import pytest

_reached: set[int] = set()
builtins.__dict__["__reached__"] = _reached.add


def _keep(name: str, seconds: float, *, failed: bool) -> None:
    line = json.dumps([name, seconds, failed, sorted(_reached)])
    with Path(os.environ["BLOCKDSL_REACHED"]).open("a", encoding="utf-8") as file:
        file.write(f"{line}\n")
    _reached.clear()


def pytest_collection_finish() -> None:
    """What was reached by importing."""
    _keep("", 0.0, failed=False)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_protocol(item: pytest.Item) -> Generator[None, object, object]:
    """What one test reached, with its fixtures."""
    start = time.process_time()
    failed_before = item.session.testsfailed
    ended = yield
    _keep(item.nodeid, time.process_time() - start, failed=item.session.testsfailed > failed_before)
    return ended
