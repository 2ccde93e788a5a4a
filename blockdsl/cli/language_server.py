"""`blockdsl language-server`: what editors ask about block files, over standard input and output."""

from __future__ import annotations

from argparse import Namespace

from blockdsl.cli.status import FINE, CannotGoOn


def run(_arguments: Namespace) -> int:
    """Serve one editor until it says that it is done."""
    try:
        from blockdsl.editor.server import serve
    except ModuleNotFoundError as missing:
        if missing.name not in {"pygls", "lsprotocol"}:
            raise
        raise CannotGoOn('the language server needs pygls: pip install "blockdsl[editor]"') from None
    serve()
    return FINE
