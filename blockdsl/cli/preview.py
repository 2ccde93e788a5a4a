"""`blockdsl preview`: what a file declares, drawn in the browser as it is saved."""

from __future__ import annotations

import webbrowser
from argparse import Namespace
from pathlib import Path

from blockdsl.cli.saying import in_words, write_out
from blockdsl.cli.status import FINE, USAGE, CannotGoOn


def run(arguments: Namespace) -> int:
    """Serve the page until Ctrl+C."""
    path = Path(arguments.file)
    if arguments.file == "-":
        raise CannotGoOn("the preview needs a file: standard input cannot be watched", USAGE)
    if not path.is_file():
        raise CannotGoOn(f"{path}: there is no such file")
    from blockdsl.preview.serving import Preview

    try:
        preview = Preview(path, arguments.port)
    except OSError as fault:
        raise CannotGoOn(f"port {arguments.port} cannot be had: {in_words(fault)}") from fault

    def ready() -> None:
        write_out(f"{path} is shown at {preview.address}\nCtrl+C ends it.\n")
        if not arguments.no_browser:
            webbrowser.open(preview.address)

    preview.run(ready)
    return FINE
