"""Writing a maker's own file anew, where a command was asked to."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path
from typing import Final

from blockdsl.cli.saying import in_words
from blockdsl.cli.status import CannotGoOn
from blockdsl.export.files import write_whole

_WRITABLE: Final = 0o222


def rewrite(path: Path, text: str) -> None:
    """Write the file anew where it really lies, with the permissions that it had. Errors: CannotGoOn."""
    real = path.resolve()
    try:
        mode = real.stat().st_mode
        if not mode & _WRITABLE:  # replacing it would be possible, and would not be what was meant
            raise CannotGoOn(f"{path} is write-protected and left as it is")
        write_whole(real, text.encode("utf-8"))
        with suppress(OSError):
            real.chmod(mode & 0o7777)
    except OSError as fault:
        raise CannotGoOn(f"{path} cannot be written: {in_words(fault)}") from fault
