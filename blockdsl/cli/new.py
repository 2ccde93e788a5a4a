"""`blockdsl new`: a folder to begin with."""

from __future__ import annotations

import shlex
import sys
from argparse import Namespace
from pathlib import Path
from typing import Final

from blockdsl.cli.saying import in_words, write_out
from blockdsl.cli.status import FINE, CannotGoOn
from blockdsl.export.files import write_all

_OURSELVES: Final = b"@BLOCKDSL@"
_STARTER: Final = Path(__file__).with_name("starter")

# In the package the file has another name, so that it hides nothing of the package itself.
_NAMES: Final = {"gitignore": ".gitignore"}


def run(arguments: Namespace) -> int:
    """Run the command.

    Errors: CannotGoOn for a folder that has something in it, or where nothing can be written.
    """
    folder = Path(arguments.folder)
    try:
        if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
            raise CannotGoOn(f"{folder} is there already and not empty; name a new folder")
        files = {folder / _NAMES.get(path.name, path.name): path.read_bytes() for path in sorted(_STARTER.iterdir())}
        makefile = folder / "Makefile"
        files[makefile] = files[makefile].replace(_OURSELVES, our_command().replace("$", "$$").encode())
        write_all(files)
    except OSError as fault:
        raise CannotGoOn(f"{folder} cannot be written: {in_words(fault)}") from fault
    write_out(f"{folder} is ready: read its README.txt, then type `make` there\n")
    return FINE


def our_command() -> str:
    """How a shell calls the very blockdsl that is running, wherever its folder is on the path or not."""
    script = Path(sys.executable).with_name("blockdsl")
    if script.is_file():
        return shlex.quote(str(script))
    return f"{shlex.quote(sys.executable)} -m blockdsl"
