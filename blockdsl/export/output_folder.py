"""A folder of outputs that knows what was written into it, by whom, and puts right what a killed build left.

The record is a file of JSON lines, `.blockdsl/written.jsonl`, that only grows until it is written anew: what is about
to be written, that all of it is on the disk, that it has moved in. Each line is on the disk before the next thing
happens, so whoever reads it after a kill either takes the half-written files away or moves the rest of them in. A
lock on the folder lets one writer at a time do so.
"""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager, suppress
from hashlib import sha256
from pathlib import Path
from stat import S_ISREG
from typing import Final

from filelock import FileLock, Timeout
from msgspec.structs import replace

from blockdsl.export.files import READABLE, umask
from blockdsl.export.recognised import is_recognised
from blockdsl.export.written import FORM, PART, FolderRecord, Written, part_name

_KEPT: Final = ".blockdsl"
_RECORD: Final = "written.jsonl"
_LOCK: Final = "lock"

_FIRST_WAIT_SECONDS: Final = 1.0
LONGEST_WAIT_SECONDS: Final = 120.0
_FEWEST_LINES: Final = 64
_LINES_A_FILE: Final = 4
"""The record is written anew when it has grown to so many lines for each file in it."""


class Refused(Exception):
    """A file that must not be replaced; `path` is where it lies, `why` completes the sentence "it …"."""

    def __init__(self, path: Path, why: str) -> None:
        """Keep both."""
        super().__init__(f"{path} {why}")
        self.path = path
        self.why = why


class Busy(Exception):
    """Another writer kept the folder locked for longer than anybody waits."""


class OutputFolder:
    """One folder and the record in it."""

    def __init__(self, path: Path, waiting: Callable[[Path], None] = lambda _: None) -> None:
        """`waiting` is called when another writer has the folder, before we wait for it."""
        self._path = path
        self._waiting = waiting
        self._lock = FileLock(path / _KEPT / _LOCK)
        self._record = FolderRecord()
        self._lines = 0
        self._seen: tuple[int, int, int] | None = None
        self._run = f"{os.getpid():x}-{os.urandom(4).hex()}"
        self._turn = 0

    @property
    def path(self) -> Path:
        """Where it is."""
        return self._path

    def told(self, path: Path | None) -> str:
        """A path as the record has it: from the folder, so that the project may be moved; nothing for no path."""
        if path is None:
            return ""
        try:
            return Path(os.path.relpath(path.resolve(), self._path.resolve())).as_posix()
        except (OSError, ValueError):  # a ring of links; another drive
            return path.as_posix()

    def lies(self, told: str) -> Path:
        """Where a path of the record lies."""
        return self._path / told

    def known(self) -> Mapping[str, Written]:
        """What is in it by its name, as of now; leftovers of killed writers are put right first."""
        if not self._path.is_dir():
            return {}
        with self._locked():
            return dict(self._record.known)

    def refuse_strangers(self, names: Iterable[str], data: Mapping[str, bytes] | None = None) -> None:
        """See that nothing lies under these names but what was written here; `data` is what will be written, if known.

        Errors: Refused.
        """
        known = self.known()
        for name in names:
            self._refuse_stranger(name, known.get(name), None if data is None else data.get(name))

    def write(self, files: Mapping[str, bytes], by: str, of: Mapping[str, str]) -> None:
        """Write the files, all as one step. Of a file that is the same as before only the time is set anew, for make.

        `by` is the file that was built, `of` for each name the one that declares what it shows.

        Errors: Refused for a file that was not written here; OSError of the system; Busy.
        """
        self._path.mkdir(parents=True, exist_ok=True)
        with self._locked():
            for name, data in files.items():
                self._refuse_stranger(name, self._record.known.get(name), data)
            same = [name for name, data in files.items() if self._holds(name, data)]
            entries = {name: self._entry(name, data, by, of.get(name, "")) for name, data in files.items()}
            self._move_in({name: data for name, data in files.items() if name not in same}, entries)
            for name in same:
                os.utime(self._path / name)
            if same:
                self._append({"known": {name: self._as_it_lies(name, entries[name]).as_list() for name in same}})
            self._write_anew_if_long()

    def remove(self, names: Iterable[str], by: str) -> list[str]:
        """Take away files that the build of `by` made and nobody else does, unless they were changed since.

        Gives the names of those taken.
        """
        with self._locked():
            gone, left = [], {}
            for name in names:
                known = self._record.known.get(name)
                if known is None or by not in known.by:
                    continue
                makers = tuple(maker for maker in known.by if maker != by)
                if makers:
                    left[name] = replace(known, by=makers).as_list()
                elif self._is_as_written(name, known):
                    with suppress(FileNotFoundError):
                        (self._path / name).unlink()
                    gone.append(name)
            if left:
                self._append({"known": left})
            if gone:
                self._append({"gone": gone})
            self._remove_empty({(self._path / name).parent for name in gone})
            return gone

    def _entry(self, name: str, data: bytes, by: str, of: str) -> Written:
        """What to record of a file; of the very bytes that others make too, they are among its makers."""
        digest, known = sha256(data).hexdigest(), self._record.known.get(name)
        others = known.by if known is not None and known.digest == digest else ()
        return Written(tuple(dict.fromkeys((*others, by))), of, digest, len(data), 0)

    # --- what lies there ---------------------------------------------------------------------------

    def _refuse_stranger(self, name: str, known: Written | None, data: bytes | None) -> None:
        path = self._path / name
        try:
            there = path.lstat()
        except (FileNotFoundError, NotADirectoryError):
            self._refuse_blocked(path)
            return
        if not S_ISREG(there.st_mode):
            raise Refused(path, "is no file that blockdsl wrote")
        if data is not None and self._holds(name, data):
            return
        if known is not None:
            if not self._is_as_written(name, known):
                raise Refused(path, "was changed after blockdsl wrote it")
        elif not (not self._record.is_ours and is_recognised(path, data)):
            raise Refused(path, "was not written by blockdsl")

    def _refuse_blocked(self, path: Path) -> None:
        """A file where a folder of ours has to be."""
        for above in path.parents:
            if above == self._path:
                return
            if above.is_symlink() or (above.exists() and not above.is_dir()):
                raise Refused(above, "was not written by blockdsl")

    def _is_as_written(self, name: str, known: Written) -> bool:
        path = self._path / name
        try:
            there = path.lstat()
            if not S_ISREG(there.st_mode):
                return False
            if (there.st_size, there.st_mtime_ns) == (known.size, known.time_ns):
                return True
            return there.st_size == known.size and sha256(path.read_bytes()).hexdigest() == known.digest
        except FileNotFoundError:
            return True
        except OSError:
            return False

    def _holds(self, name: str, data: bytes) -> bool:
        """Whether the file is there with these very bytes; a link is not looked behind."""
        path = self._path / name
        try:
            there = path.lstat()
            return S_ISREG(there.st_mode) and there.st_size == len(data) and path.read_bytes() == data
        except OSError:
            return False

    def _as_it_lies(self, name: str, entry: Written) -> Written:
        there = (self._path / name).lstat()
        return replace(entry, size=there.st_size, time_ns=there.st_mtime_ns)

    def _remove_empty(self, folders: Iterable[Path]) -> None:
        """Folders of ours with nothing left in them, from the inside out."""
        for folder in folders:
            for each in (folder, *folder.parents):
                if each == self._path:
                    break
                try:
                    each.rmdir()
                except OSError:
                    break

    # --- moving in ---------------------------------------------------------------------------------

    def _move_in(self, files: Mapping[str, bytes], entries: Mapping[str, Written]) -> None:
        if not files:
            return
        self._turn += 1
        run = f"{self._run}-{self._turn}"
        parts = {name: part_name(name, run, number) for number, name in enumerate(files)}
        self._append({"begin": list(parts.values())})
        try:
            for name, data in files.items():
                self._write_part(parts[name], data)
        except BaseException:
            self._drop(parts.values())
            self._append({"dropped": True})
            raise
        known = {}
        for name, part in parts.items():
            there = (self._path / part).lstat()
            known[name] = replace(entries[name], size=there.st_size, time_ns=there.st_mtime_ns)
        self._append({"ready": parts, "known": {name: entry.as_list() for name, entry in known.items()}})
        for name, part in parts.items():
            (self._path / part).replace(self._path / name)
        self._append({"done": True})

    def _write_part(self, part: str, data: bytes) -> None:
        path = self._path / part
        path.parent.mkdir(parents=True, exist_ok=True)
        with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, READABLE & ~umask()), "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())

    def _drop(self, parts: Iterable[str]) -> None:
        for part in parts:
            with suppress(OSError):
                (self._path / part).unlink()

    # --- the record --------------------------------------------------------------------------------

    @contextmanager
    def _locked(self) -> Iterator[None]:
        if self._lock.is_locked:
            yield
            return
        (self._path / _KEPT).mkdir(exist_ok=True)
        try:
            self._lock.acquire(timeout=_FIRST_WAIT_SECONDS)
        except Timeout:
            self._waiting(self._path)
            try:
                self._lock.acquire(timeout=LONGEST_WAIT_SECONDS)
            except Timeout:
                raise Busy(str(self._path)) from None
        try:
            self._read()
            yield
        finally:
            self._seen = self._stamp()
            self._lock.release()

    @property
    def _place(self) -> Path:
        return self._path / _KEPT / _RECORD

    def _stamp(self) -> tuple[int, int, int] | None:
        try:
            there = self._place.lstat()
        except OSError:
            return None
        return there.st_ino, there.st_size, there.st_mtime_ns

    def _read(self) -> None:
        """Read the record unless it is as we left it, and put right what is unfinished in it."""
        stamp = self._stamp()
        if stamp is not None and stamp == self._seen:
            return
        self._record, self._lines = FolderRecord(), 0
        for line in self._lines_there():
            self._lines += 1
            self._record.take(line)
            if not self._record.is_ours:
                break
        if self._record.ready:
            for name, part in self._record.ready.items():
                with suppress(FileNotFoundError):
                    (self._path / part).replace(self._path / name)
            self._record.take({"done": True})
            self._write_anew()
        elif self._record.begun:
            self._drop(self._record.begun)
            self._record.take({"dropped": True})
            self._write_anew()

    def _lines_there(self) -> Iterator[object]:
        """Every line that is whole; the last one may be torn."""
        try:
            if not S_ISREG(self._place.lstat().st_mode):
                return
            text = self._place.read_bytes()
        except OSError:
            return
        for line in text.splitlines():
            try:
                yield json.loads(line)
            except (ValueError, RecursionError):
                yield None

    def _append(self, line: Mapping[str, object]) -> None:
        lines: list[Mapping[str, object]] = [line] if self._record.is_ours else [{"blockdsl": FORM}, line]
        with self._place.open("ab" if self._record.is_ours else "wb") as file:
            file.write(_as_bytes(lines))
            file.flush()
            os.fsync(file.fileno())
        for each in lines:
            self._record.take(each)
        self._lines += len(lines)

    def _write_anew_if_long(self) -> None:
        if self._lines > _FEWEST_LINES + _LINES_A_FILE * len(self._record.known):
            self._write_anew()

    def _write_anew(self) -> None:
        known = {name: entry.as_list() for name, entry in self._record.known.items()}
        lines: list[Mapping[str, object]] = [{"blockdsl": FORM}, {"known": known}]
        beside = self._place.with_name(f"{_RECORD}.{self._run}{PART}")
        with beside.open("wb") as file:
            file.write(_as_bytes(lines))
            file.flush()
            os.fsync(file.fileno())
        beside.replace(self._place)
        self._lines = len(lines)


def _as_bytes(lines: Iterable[Mapping[str, object]]) -> bytes:
    return b"".join(b"%s\n" % json.dumps(line, ensure_ascii=True).encode() for line in lines)
