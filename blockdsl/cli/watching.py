"""Files that are watched: what is made of them is made anew each time one is saved."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterable
from pathlib import Path

from blockdsl.cli.status import FINE, CannotGoOn


def again_and_again(make: Callable[[], tuple[int, Iterable[Path]]]) -> int:
    """Make it, and again whenever a file that it was made from is saved, until the user has had enough.

    `make` gives how it ended and the files that were read. Files with errors are watched too, so that mending one is
    enough; what stops a command otherwise is told, and the files of the time before are watched.
    """
    watched: frozenset[Path] = frozenset()
    try:
        while True:
            began = time.time_ns()
            try:
                _, read = make()
                watched = frozenset(map(_whole, read)) or watched
            except CannotGoOn as reason:
                sys.stderr.write(f"blockdsl: {reason}\n")
                if not watched:
                    return reason.status
            if not _saved_since(watched, began):
                _wait(watched)
    except KeyboardInterrupt:  # the way to end it
        return FINE


def _whole(path: Path) -> Path:
    """The path from the root, as the watcher names it; links are left, for their names are what is saved."""
    return Path.cwd() / path


def _saved_since(paths: Iterable[Path], began_ns: int) -> bool:
    """Whether one was saved after the work began: then the work is old already."""
    for path in paths:
        try:
            if path.stat().st_mtime_ns > began_ns:
                return True
        except OSError:  # gone for a moment, while an editor puts the new one in its place
            continue
    return False


def _wait(paths: frozenset[Path]) -> None:
    """Until one of the files is saved. Their folders are watched: editors often put a new file in place of the old."""
    from watchfiles import watch

    folders = {path.parent for path in paths if path.parent.is_dir()}
    names = {str(path) for path in paths} | {str(path.resolve()) for path in paths}

    def is_ours(_: object, name: str) -> bool:
        return name in names

    next(watch(*folders, watch_filter=is_ours, debounce=100, step=20, recursive=False, raise_interrupt=True), None)
