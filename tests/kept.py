"""What one process of a run has worked out, for the others: the dear facts of the library, which many tests judge."""

from __future__ import annotations

import os
from collections.abc import Callable
from hashlib import sha256
from pathlib import Path
from tempfile import NamedTemporaryFile

from filelock import FileLock

FOLDER = "BLOCKDSL_KEPT_IN_THIS_RUN"
"""The variable that names a run's own folder, which is new with every run; without it nothing is kept."""


def once_in_a_run(make: Callable[[], str], *about: str) -> str:
    """A text that is worked out by the first process that asks; the others wait for it.

    `about` are the words that tell it from other texts.
    """
    top = os.environ.get(FOLDER)
    if top is None:
        return make()
    place = Path(top) / sha256("\n".join(about).encode()).hexdigest()
    with FileLock(f"{place}.lock"):
        if place.is_file():
            return place.read_text("utf-8")
        text = make()
        with NamedTemporaryFile("w", encoding="utf-8", dir=top, delete=False) as file:
            file.write(text)
        Path(file.name).replace(place)
        return text
