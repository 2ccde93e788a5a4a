"""Files that are watched: what is made of them is made anew each time one is saved."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterable
from pathlib import Path

from blockdsl.cli.status import FINE, CannotGoOn
from blockdsl.watching import wait_for_save


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
                watched = frozenset(read) or watched
            except CannotGoOn as reason:
                sys.stderr.write(f"blockdsl: {reason}\n")
                if not watched:
                    return reason.status
            wait_for_save(watched, began)
    except KeyboardInterrupt:  # the way to end it
        return FINE
