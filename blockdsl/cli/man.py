"""`blockdsl man`: the manual page, from the commands and their options."""

from __future__ import annotations

from argparse import Namespace

from argparse_manpage.manpage import Manpage

from blockdsl import __version__
from blockdsl.cli.arguments import parser
from blockdsl.cli.saying import write_out
from blockdsl.cli.status import FINE


def run(_: Namespace) -> int:
    """Print the page as troff, for `man`."""
    whole = parser()
    page = Manpage(
        whole,
        {
            "project_name": "blockdsl",
            "version": __version__,
            "manual_title": "blockdsl",
            "description": "patchwork blocks written as text: proved, cut, drawn and printed at full size",
        },
    )
    page.date = ""  # the same page every day
    write_out(str(page))
    return FINE
