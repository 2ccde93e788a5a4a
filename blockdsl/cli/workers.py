"""Work that is shared among several processes, its results in the order in which it was asked for."""

from __future__ import annotations

import os
from collections import deque
from collections.abc import Callable, Generator, Sequence
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import get_context
from typing import Final, TypeVar

_Item = TypeVar("_Item")
_Result = TypeVar("_Result")

_AHEAD: Final = 4
"""So many pieces of work for each process are handed out before the first result is taken: enough to keep it busy,
and few enough that finished work does not pile up."""


def processors() -> int:
    """How many processes can work at once on this machine, for us."""
    try:
        return len(os.sched_getaffinity(0))
    except AttributeError:  # a Mac or Windows
        return os.cpu_count() or 1


def run_all(
    function: Callable[[_Item], _Result], items: Sequence[_Item], processes: int, worth: int
) -> Generator[_Result | Exception, None, None]:
    """The function's result for each item in their order, or the exception that it raised.

    Other processes take a moment to start: they are asked only when there are `worth` items or more. Function, items
    and results must be able to travel (pickle).
    """
    if processes < 2 or len(items) < max(worth, 2):
        for item in items:
            yield _tried(function, item)
        return
    yield from _shared(function, items, min(processes, len(items)))


def _shared(
    function: Callable[[_Item], _Result], items: Sequence[_Item], processes: int
) -> Generator[_Result | Exception, None, None]:
    # Started anew and not forked: a copy of a process that has threads or libraries at work may hang.
    pool = ProcessPoolExecutor(processes, mp_context=get_context("spawn"))
    waiting: deque[tuple[_Item, Future[_Result] | None]] = deque()
    try:
        for asked in items:
            waiting.append((asked, _handed_out(pool, function, asked)))
            if len(waiting) >= _AHEAD * processes:
                item, future = waiting.popleft()
                found = _result(function, item, future)
                yield found
        while waiting:
            item, future = waiting.popleft()
            found = _result(function, item, future)
            yield found
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


def _handed_out(pool: ProcessPoolExecutor, function: Callable[[_Item], _Result], item: _Item) -> Future[_Result] | None:
    try:
        return pool.submit(function, item)
    except BrokenProcessPool:
        return None


def _result(function: Callable[[_Item], _Result], item: _Item, future: Future[_Result] | None) -> _Result | Exception:
    """What the other process found. When it has died (the system may be short of memory) we do its work ourselves."""
    if future is None:
        return _tried(function, item)
    try:
        return future.result()
    except BrokenProcessPool:
        return _tried(function, item)
    except Exception as fault:  # noqa: BLE001 - handed on to who asked, who tells it when all is done
        return fault


def _tried(function: Callable[[_Item], _Result], item: _Item) -> _Result | Exception:
    try:
        return function(item)
    except Exception as fault:  # noqa: BLE001 - the same
        return fault
