"""From a command line to an exit status; whatever happens, the user reads plain words."""

from __future__ import annotations

import os
import sys
import traceback
from argparse import Namespace
from collections.abc import Callable, Sequence
from importlib import import_module
from io import TextIOWrapper
from pathlib import Path

from blockdsl.cli.arguments import parser
from blockdsl.cli.status import ERRORS, FINE, OUR_FAULT, USAGE, CannotGoOn

_INTERRUPTED = 130


def run(argv: Sequence[str] | None) -> int:
    """Run one command, as `blockdsl.cli.main` says."""
    _speak_utf8()
    try:
        return _run(parser().parse_args(argv))
    except SystemExit as end:  # argparse has told what is wrong, or has shown the help
        return end.code if isinstance(end.code, int) else USAGE
    except CannotGoOn as reason:
        sys.stderr.write(f"blockdsl: {reason}\n")
        return reason.status
    except KeyboardInterrupt:
        return _INTERRUPTED
    except BrokenPipeError:
        # Whoever read our output has had enough. Python would complain once more when it flushes at its end.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return FINE
    except Exception as fault:  # noqa: BLE001 - the last resort: a plain line in place of a traceback
        return _own_up(fault)


def _run(arguments: Namespace) -> int:
    """Load the command that was asked for, and no other: the file beside this one that has its name."""
    command: Callable[[Namespace], int] = import_module(f"blockdsl.cli.{arguments.command.replace('-', '_')}").run
    return command(arguments)


def _own_up(fault: Exception) -> int:
    if type(fault).__name__ == "CairoMissing":  # named, not imported: loading it would load cairo
        print(f"blockdsl: {fault}; only the pictures of steps as PNG need it", file=sys.stderr)
        return ERRORS
    if os.environ.get("BLOCKDSL_DEBUG"):
        traceback.print_exception(fault)
    where = "".join(f" {note}" for note in getattr(fault, "__notes__", ()))
    said = " ".join(f"{type(fault).__name__}: {fault}".split())
    print(
        f"blockdsl: a fault of ours{where} ({said}); please report it together with the file. "
        "BLOCKDSL_DEBUG=1 shows where it happened.",
        file=sys.stderr,
    )
    return OUR_FAULT


def _speak_utf8() -> None:
    """The same bytes on every machine, and no failure over a letter that the terminal does not have.

    Streams that the caller has closed (`>&-`) lead nowhere.
    """
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        if getattr(sys, name) is None:
            setattr(sys, name, Path(os.devnull).open(mode, encoding="utf-8"))  # noqa: SIM115 - open until the end
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
