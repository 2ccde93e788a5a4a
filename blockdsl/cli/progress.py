"""A bar for long builds, on a terminal only; piped, nothing is said."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Final

_LONG: Final = 8
"""So many outputs take long enough that one wants to see them come."""


@contextmanager
def progress(total: int) -> Iterator[Callable[[str], None]]:
    """Gives a function that is told, before each output, its name."""
    if total < _LONG or not sys.stderr.isatty():
        yield lambda _: None
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn

    console = Console(stderr=True)
    columns = (BarColumn(), MofNCompleteColumn(), TextColumn("{task.description}", markup=False))
    with Progress(*columns, console=console, transient=True) as bar:
        task = bar.add_task("", total=total, completed=-1)

        def next_is(name: str) -> None:
            bar.update(task, advance=1, description=name)

        yield next_is
