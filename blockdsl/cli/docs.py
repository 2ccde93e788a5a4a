"""`blockdsl docs`: the documentation as a web site, built on this machine and opened in the browser."""

from __future__ import annotations

import tempfile
import webbrowser
from argparse import Namespace
from pathlib import Path

from blockdsl.cli.saying import many, write_out
from blockdsl.cli.status import FINE
from blockdsl.cli.writing import DOCUMENTATION, Writer
from blockdsl.docs.site import documentation


def run(arguments: Namespace) -> int:
    """Write the site into the folder that is named, or into one for this time, and open it."""
    made = documentation()
    if arguments.output is not None:
        folder = Path(arguments.output)
        Writer(()).put(folder, made, DOCUMENTATION)
        write_out(f"{many(len(made), 'file')} written to {folder}\n")
        return FINE
    folder = Path(tempfile.mkdtemp(prefix="blockdsl-docs-"))
    for name, data in made.items():
        path = folder / name
        path.parent.mkdir(exist_ok=True)
        path.write_bytes(data)
    address = (folder / "index.html").as_uri()
    write_out(f"the documentation is at {address}\n")
    if not arguments.no_browser:
        webbrowser.open(address)
    return FINE
