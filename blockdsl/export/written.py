"""The record of a folder of outputs: what was written there, and what a writer that was killed had in hand."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from msgspec import Struct, field

FORM: Final = 1
"""The form of the record; one of another form is not read."""

PART: Final = ".part"
_OURS: Final = ".blockdsl-"


class Written(Struct, frozen=True):
    """What is known of a file that was written.

    `by` are the files whose builds make it, the same from each, and `of` the file that declares what it shows, all as
    seen from the folder; `digest` is that of its bytes, `size` and `time_ns` as the system told them then.
    """

    by: tuple[str, ...]
    of: str
    digest: str
    size: int
    time_ns: int

    def as_list(self) -> list[object]:
        """As it stands in the record."""
        return [list(self.by), self.of, self.digest, self.size, self.time_ns]


class FolderRecord(Struct):
    """What the lines of a record say, line by line.

    `known` is what lies in the folder by its name; `begun` are files that were about to be written and are not whole
    yet, `ready` those that are whole and wait to be moved, by the names that they will have. `is_ours` is whether there
    is a record of this form at all.
    """

    known: dict[str, Written] = field(default_factory=dict)
    begun: tuple[str, ...] = ()
    ready: dict[str, str] = field(default_factory=dict)
    is_ours: bool = False
    _coming: dict[str, Written] = field(default_factory=dict)

    def take(self, line: object) -> None:
        """Read a line; one that is torn, planted or from another program says nothing."""
        match line:
            case {"blockdsl": form}:
                self.is_ours = form == FORM
            case {"begin": [*parts]}:
                self.begun = tuple(part for part in parts if is_part(part))
            case {"dropped": _}:
                self.begun = ()
            case {"ready": dict(parts), "known": dict(known)}:
                self.ready = {name: part for name, part in parts.items() if is_inside(name) and is_part(part)}
                self._coming = _entries(known)
            case {"done": _}:
                self.known |= self._coming
                self.begun, self.ready, self._coming = (), {}, {}
            case {"known": dict(known)}:
                self.known |= _entries(known)
            case {"gone": [*names]}:
                self.known = {name: entry for name, entry in self.known.items() if name not in names}
            case _:
                pass


def part_name(name: str, run: str, number: int) -> str:
    """What a file is called beside its place until it is whole; nobody else gives such names."""
    folder, slash, _ = name.rpartition("/")
    return f"{folder}{slash}{_OURS}{run}-{number}{PART}"


def is_part(name: object) -> bool:
    """Whether a name is one that `part_name` gives, inside the folder."""
    if not is_inside(name):
        return False
    last = str(name).rpartition("/")[2]
    return last.startswith(_OURS) and last.endswith(PART)


def is_inside(name: object) -> bool:
    """Whether a name of the record lies in the folder: a record that somebody planted may say anything."""
    if not isinstance(name, str) or not name or name.startswith("/"):
        return False
    return not ({"\\", ":"} & set(name)) and not ({"", ".", ".."} & set(name.split("/")))


def _entries(known: Mapping[object, object]) -> dict[str, Written]:
    found = {}
    for name, entry in known.items():
        match entry:
            case [[*by], str(of), str(digest), int(size), int(time_ns)] if isinstance(name, str) and is_inside(name):
                makers = tuple(each for each in by if isinstance(each, str))
                found[name] = Written(makers, of, digest, size, time_ns)
            case _:
                pass
    return found
