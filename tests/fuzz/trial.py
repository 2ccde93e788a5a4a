"""A maker's folder in rough hands: builds killed, at once, into full and shut folders, with odd names and bad caches.

`python -m tests.fuzz.trial` prints what was tried and what was lost, mixed, stale or run: nothing, or it ends with 1.
Parts may be named, and `--builds N` sets how many builds are killed and how many inputs are changed meanwhile.
"""

from __future__ import annotations

import argparse
import os
import pickle
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from hashlib import sha256
from itertools import cycle
from pathlib import Path
from typing import Final

from tests.e2e.test_same_bytes import built_twice
from tests.outputs import bytes_below

BLOCKDSL: Final = (sys.executable, "-m", "blockdsl")
PALETTE: Final = 'fabric fog "Fog" {fog}\nfabric slate "Slate" #3a4750\n'
MILLS: Final = (
    'use "palette.block"\n'
    + "".join(
        f'\nblock "{name}"\n  size {{size}} in\n  row fog\\slate  fog/slate\n  row slate/fog  slate\\fog\n'
        for name in ("Mill", "Whirl", "Sail")
    ).replace("\\", "\\")
    + '\nbook "Mills"\n  text "words.md"\n  chapter "All"\n    block "Mill"\n    block "Whirl"\n'
)
COLOURS: Final = ("#dfe3e0", "#e0d0c0", "#c0d0e0")
SIZES: Final = ("6", "8", "10")
HOSTILE: Final = (
    "../escape", "..", ".", "/etc/passwd", "~", "~root", "-rf", "--help", "a/b", "a\\b", "con", "nul", "aux.pdf",
    "*", "?", "$(id)", "`id`", "; id", "| id", "&& id", "%s%n", "{0}", "<b>", "&amp;", "]]>", "(id)",
    "\u202egpj", "\u200b", "é" * 200,
    "e\u0301", "ﬁ", "İ", "ß", "ſ", "Ａ", "𝔘", "😀", "\ud7ff", " lead and trail ",
)  # fmt: skip
assert len(HOSTILE) == 39


class Trial:
    """Counts what was tried, and keeps what went wrong."""

    def __init__(self) -> None:
        self.wrong: list[str] = []

    def check(self, good: bool, words: str) -> None:
        """Keep the words where something is not as it should be."""
        if not good:
            self.wrong.append(words)
            print(f"  WRONG: {words}", flush=True)


def write(folder: Path, fog: str = COLOURS[0], size: str = SIZES[0], words: str = "Words.\n") -> None:
    """The maker's files, each saved as an editor saves it: whole."""
    files = {"palette.block": PALETTE.format(fog=fog), "mills.block": MILLS.format(size=size), "words.md": words}
    for name, text in files.items():
        if not (folder / name).exists() or (folder / name).read_text(encoding="utf-8") != text:
            beside = folder / f"{name}~"
            beside.write_text(text, encoding="utf-8")
            beside.replace(folder / name)


def build(folder: Path, *options: str, seconds: float = 1800) -> subprocess.CompletedProcess[str]:
    """One build of the mills, waited for: so long that a busy machine does not look like a build that hangs."""
    command = (*BLOCKDSL, "build", "mills.block", *options)
    return subprocess.run(command, cwd=folder, capture_output=True, text=True, timeout=seconds, check=False)


def started(folder: Path, *options: str) -> subprocess.Popen[bytes]:
    """A build of the mills that is not waited for."""
    command = (*BLOCKDSL, "build", "mills.block", *options)
    return subprocess.Popen(command, cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def at_work(running: subprocess.Popen[bytes], until: float = float("inf")) -> float:
    """Wait until a build has worked for so long, or is done: the seconds that it took of the processor.

    By the processor's time, not the clock's, moments are spread over the whole build on a busy machine too.
    """
    clock, worked = (~running.pid << 3) | 2, 0.0  # the clock of another process's work, as Linux numbers them
    while running.poll() is None and worked < until:
        with suppress(OSError):
            worked = time.clock_gettime(clock)
        time.sleep(0.002)
    return worked


def outputs(folder: Path) -> dict[str, bytes]:
    """What lies in a folder of outputs."""
    return bytes_below(folder) if folder.exists() else {}


def made_afresh(folder: Path, name: str) -> dict[str, bytes]:
    """What the files as they are give without a cache, in a folder of its own."""
    out = folder / name
    shutil.rmtree(out, ignore_errors=True)
    ended = build(folder, "-o", str(out), "--no-cache", "--jobs", "1")
    if ended.returncode:
        raise RuntimeError(ended.stderr)
    return outputs(out)


# --- the parts of the trial ------------------------------------------------------------------------


def kills(trial: Trial, folder: Path, builds: int) -> str:
    """Builds killed at random moments: every file whole and of one version with its neighbours after the next build."""
    chance = random.Random(11)  # noqa: S311 - the same moments every time, as far as the machine allows
    versions = {}
    for fog in COLOURS:
        write(folder, fog)
        versions[fog] = made_afresh(folder, "fresh")
    write(folder)
    shutil.rmtree(folder / "kept", ignore_errors=True)
    with started(folder, "-o", "out", "--cache", "kept") as running:
        long = at_work(running)
    cut_short = 0
    for number, fog in zip(range(builds), cycle(COLOURS), strict=False):
        write(folder, fog)
        with started(folder, "-o", "out", "--cache", "kept") as running:
            at_work(running, chance.uniform(0.1, 1.0) * long)
            cut_short += running.poll() is None
            running.send_signal(signal.SIGKILL)
        for name, data in outputs(folder / "out").items():
            if not name.rpartition("/")[2].startswith("."):
                good = any(version.get(name) == data for version in versions.values())
                trial.check(good, f"kill {number}: {name} is of no version")
        if number % 5 == 0:
            ended = build(folder, "-o", "out", "--cache", "kept")
            trial.check(ended.returncode == 0, f"kill {number}: the next build says {ended.stderr}")
            trial.check(outputs(folder / "out") == versions[fog], f"kill {number}: not put right by the next build")
    return f"{builds} builds killed, {cut_short} of them still at work, at moments up to {long:.1f} s of work"


def at_once(trial: Trial, folder: Path, builds: int) -> str:
    """Ten builds of three versions at once into one folder: what lies there in the end is of one of them."""
    versions = []
    for size in SIZES:
        write(folder)
        build(
            folder,
            "-o",
            f"size-{size}",
            "--no-cache",
            "--size",
            f"{size} in",
            "--only",
            "sheet,diagrams,table,templates",
        )
        versions.append(outputs(folder / f"size-{size}"))
    rounds = max(1, builds // 20)
    for number in range(rounds):
        shutil.rmtree(folder / "out", ignore_errors=True)
        running = [
            subprocess.Popen(
                (*BLOCKDSL, "build", "mills.block", "-o", "out", "--size", f"{size} in", "--cache", "kept",
                 "--only", "sheet,diagrams,table,templates"),
                cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True,
            )
            for _, size in zip(range(10), cycle(SIZES), strict=False)
        ]  # fmt: skip
        for process in running:
            _, said = process.communicate(timeout=3600)
            trial.check(process.returncode == 0, f"at once {number}: {said}")
        trial.check(outputs(folder / "out") in versions, f"at once {number}: the versions are mixed")
    return f"{10 * rounds} builds of 3 versions, 10 at a time"


def stale(trial: Trial, folder: Path, builds: int) -> str:
    """Every kind of input changed at random moments while builds are at work: the last build is of the last input."""
    chance = random.Random(12)  # noqa: S311
    write(folder)
    with started(folder, "-o", "out", "--cache", "kept") as running:
        long = at_work(running)
    for number in range(builds):
        write(folder, chance.choice(COLOURS), chance.choice(SIZES), f"Words {chance.randrange(3)}.\n")
        with started(folder, "-o", "out", "--cache", "kept") as running:
            at_work(running, chance.uniform(0.0, 1.0) * long)
            write(folder, chance.choice(COLOURS), chance.choice(SIZES), f"Words {chance.randrange(3)}.\n")
            running.wait()
        ended = build(folder, "-o", "out", "--cache", "kept")
        fresh = made_afresh(folder, "fresh")
        trial.check(ended.returncode == 0, f"stale {number}: {ended.stderr}")
        trial.check(outputs(folder / "out") == fresh, f"stale {number}: not what the files say now")
    return f"{builds} builds with inputs changed meanwhile"


def full_disk(trial: Trial, folder: Path, builds: int) -> str:
    """A disk that is full in the middle of a build: nothing half written, and put right when there is room."""
    del builds
    write(folder)
    out = folder / "small"
    out.mkdir()
    if subprocess.run(
        ("mount", "-t", "tmpfs", "-o", "size=96k", "tmpfs", str(out)), check=False, capture_output=True
    ).returncode:
        return "full disk not tried: a small disk cannot be mounted here"
    try:
        ended = build(folder, "-o", "small", "--no-cache")
        trial.check(ended.returncode == 1, f"full disk: ends with {ended.returncode}, {ended.stderr}")
        trial.check("Traceback" not in ended.stderr, "full disk: a traceback")
        trial.check(".part" not in ended.stderr, f"full disk: a temporary name in {ended.stderr}")
        trial.check(outputs(out) == {}, f"full disk: left {sorted(outputs(out))}")
        subprocess.run(("mount", "-o", "remount,size=64m", str(out)), check=True)
        trial.check(build(folder, "-o", "small", "--no-cache").returncode == 0, "full disk: not put right with room")
        trial.check(outputs(out) == made_afresh(folder, "fresh"), "full disk: other files with room")
        subprocess.run(("mount", "-o", "remount,ro", str(out)), check=True)
        before = outputs(out)
        write(folder, COLOURS[1])
        ended = build(folder, "-o", "small", "--no-cache")
        trial.check(ended.returncode == 1 and "Traceback" not in ended.stderr, f"read-only: {ended.stderr}")
        trial.check(outputs(out) == before, "read-only: files changed")
    finally:
        subprocess.run(("umount", str(out)), check=False)
    return "a full disk, and a read-only one"


def links(trial: Trial, folder: Path, builds: int) -> str:
    """Links among inputs and outputs: what they lead to is never written over."""
    del builds
    write(folder)
    own = folder / "own"
    own.mkdir()
    (own / "mine.svg").write_text("mine", encoding="utf-8")
    (folder / "out").mkdir()
    (folder / "out" / "mill.svg").symlink_to(own / "mine.svg")
    ended = build(folder, "-o", "out")
    trial.check(ended.returncode == 1, "links: an output that is a link was replaced")
    trial.check((own / "mine.svg").read_text(encoding="utf-8") == "mine", "links: written through a link")
    (folder / "out" / "mill.svg").unlink()
    (folder / "there").symlink_to(folder / "out", target_is_directory=True)
    trial.check(build(folder, "-o", "there").returncode == 0, "links: a folder that is a link")
    (folder / "alias.block").symlink_to(folder / "palette.block")
    before = (folder / "palette.block").read_bytes()
    ended = build(folder, "-o", "out", "--depfile", "alias.block")
    trial.check(
        ended.returncode == 1 and (folder / "palette.block").read_bytes() == before, "links: an input by a link"
    )
    os.link(folder / "palette.block", folder / "twin.pdf")
    ended = build(folder, "-o", "out", "--book", "twin.pdf")
    trial.check(ended.returncode == 1 and (folder / "palette.block").read_bytes() == before, "links: an input's twin")
    return "links to files, to folders and to inputs"


def names(trial: Trial, folder: Path, builds: int) -> str:
    """Hostile titles: every output stays in its folder, whatever a block is called."""
    del builds
    outside = {path.name for path in folder.iterdir()}
    for number, name in enumerate(HOSTILE):
        text = 'fabric fog "F" #dfe3e0\nfabric slate "S" #3a4750\nblock "{}"\n  size 6 in\n  row fog/slate\n'
        path = folder / "names.block"
        path.write_text(text.format(name), encoding="utf-8", errors="surrogatepass")
        out = folder / f"out-{number}"
        ended = subprocess.run(
            (*BLOCKDSL, "build", "names.block", "-o", out.name, "--no-cache", "--only", "diagrams,table,web"),
            cwd=folder, capture_output=True, text=True, timeout=1800, check=False,
        )  # fmt: skip
        trial.check(ended.returncode in (0, 1), f"name {name!r}: ends with {ended.returncode}, {ended.stderr}")
        trial.check("Traceback" not in ended.stderr, f"name {name!r}: a traceback")
        now = {path.name for path in folder.iterdir()} - {out.name, path.name}
        trial.check(now == outside, f"name {name!r}: wrote {now - outside}")
        shutil.rmtree(out, ignore_errors=True)
    return f"{len(HOSTILE)} hostile names"


class _Trap:
    def __init__(self, path: Path) -> None:
        self._path = path

    def __reduce__(self) -> tuple[object, tuple[str]]:
        return os.mkdir, (str(self._path),)


def caches(trial: Trial, folder: Path, builds: int) -> str:
    """Planted cache entries: nothing in them runs, hangs or ends the build."""
    del builds
    write(folder)
    build(folder, "-o", "out", "--cache", "kept")
    good = outputs(folder / "out")
    entries = [path for path in (folder / "kept").rglob("*") if path.is_file()]
    sprung = folder / "sprung"
    planted: list[Callable[[Path], object]] = [
        lambda path: path.write_bytes(pickle.dumps(_Trap(sprung))),
        lambda path: path.write_bytes(sha256(bomb := pickle.dumps(_Trap(sprung))).digest() + bomb),
        lambda path: path.write_bytes(os.urandom(5000)),
        os.mkfifo,
        lambda path: path.symlink_to("/dev/zero"),
        lambda path: path.symlink_to(folder / "palette.block"),
        Path.mkdir,
    ]
    for number, plant in enumerate(planted):
        for path in entries:
            if path.is_dir() and not path.is_symlink():
                path.rmdir()
            elif path.exists() or path.is_symlink():
                path.unlink()
            plant(path)
        ended = build(folder, "-o", f"out-{number}", "--cache", "kept", seconds=600)
        trial.check(ended.returncode == 0, f"cache {number}: {ended.stderr}")
        trial.check(not sprung.exists(), f"cache {number}: something ran")
        if number != 1:  # entry 1 has a good digest: it is bytes that somebody else put there, as bytes
            trial.check(outputs(folder / f"out-{number}") == good, f"cache {number}: other outputs")
    return f"{len(planted)} ways of planting in {len(entries)} cache entries"


def places(trial: Trial, folder: Path, builds: int) -> str:
    """The whole demo built in two places, by two people with other languages, time zones and terminals."""
    del builds
    demo = Path(__file__).parents[2] / "library" / "demo"
    one, other = built_twice(folder, str(Path(sys.executable).parent / "blockdsl"), demo)
    for name in sorted({*one, *other}):
        trial.check(one.get(name) == other.get(name), f"places: {name} differs")
    return f"{len(one)} files of the demo in two places"


PARTS: Final = {part.__name__: part for part in (kills, at_once, stale, full_disk, links, names, caches, places)}


@contextmanager
def _folder() -> Iterator[Path]:
    with tempfile.TemporaryDirectory() as name:
        yield Path(name)


def main() -> int:
    """Try all parts, or those named; print figures; 1 when anything was lost, mixed, stale or run."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("parts", nargs="*", choices=[*PARTS, []])
    options.add_argument("--builds", type=int, default=200)
    chosen = options.parse_args()
    trial = Trial()
    for name in chosen.parts or PARTS:
        with _folder() as folder:
            before = len(trial.wrong)
            told = PARTS[name](trial, folder, chosen.builds)
            print(f"{name}: {told}; {len(trial.wrong) - before} wrong", flush=True)
    print("nothing lost, mixed, stale or run" if not trial.wrong else f"{len(trial.wrong)} wrong")
    return 1 if trial.wrong else 0


if __name__ == "__main__":
    raise SystemExit(main())
