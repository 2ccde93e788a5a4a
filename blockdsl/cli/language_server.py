"""`blockdsl language-server`: what editors ask about block files, over standard input and output."""

from __future__ import annotations

from argparse import Namespace
from importlib.util import find_spec

from blockdsl.cli.status import FINE, CannotGoOn


def run(_arguments: Namespace) -> int:
    """Serve one editor until it says that it is done."""
    if find_spec("pygls") is None:
        raise CannotGoOn('the language server needs pygls: pip install "blockdsl[editor]"')
    from blockdsl.editor.server import serve

    serve()
    return FINE
