"""Waiting until one of some files is saved, however that is done and whenever it comes."""

from __future__ import annotations

import time
from collections.abc import Iterable
from pathlib import Path
from threading import Event
from typing import Final

_LOOK_MS: Final = 400
"""How often it is looked whether something was saved before the system's watcher was at work."""
_SETTLED_MS: Final = 60
"""A save is often several changes; so long nothing more may come before it counts as done."""


def wait_for_save(paths: Iterable[Path], began_ns: int, stop: Event | None = None) -> None:
    """Until one of the files was saved after a moment (in nanoseconds of the clock), or `stop` is set.

    Their folders are watched, for editors often put a new file in place of the old. What is saved before the watching
    begins is found by its time. Errors: KeyboardInterrupt.
    """
    from watchfiles import watch  # noqa: PLC0415 - takes a while to load, and only this needs it

    whole = {Path.cwd() / path for path in paths}
    names = {str(path) for path in whole} | {str(path.resolve()) for path in whole}
    folders = {path.parent for path in whole if path.parent.is_dir()}

    def is_ours(_: object, name: str) -> bool:
        return name in names

    for changes in watch(
        *folders,
        watch_filter=is_ours,
        debounce=_SETTLED_MS,
        step=20,
        recursive=False,
        raise_interrupt=True,
        rust_timeout=_LOOK_MS,
        yield_on_timeout=True,
        stop_event=stop,
    ):
        if changes or _saved_since(whole, began_ns):
            return


def _saved_since(paths: Iterable[Path], began_ns: int) -> bool:
    """Whether one was; times that are still to come (of another machine's clock) say nothing."""
    for path in paths:
        try:
            if began_ns < path.stat().st_mtime_ns <= time.time_ns():
                return True
        except OSError:  # gone for a moment, while an editor puts the new one in its place
            continue
    return False
