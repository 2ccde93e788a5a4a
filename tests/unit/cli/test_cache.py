"""What was made before is taken from the cache, and never when anything that it depends on has changed."""

import os
import pickle
import shutil
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from hashlib import sha256
from pathlib import Path

import pytest

import blockdsl
from blockdsl.cli.cache import Cache, usual_folder
from blockdsl.cli.cache_keys import CODE, content_of, key_of
from blockdsl.facts import collect_facts
from tests.unit.cli.pinwheel import PALETTE, PINWHEEL, Run, spoil


def key(words: str) -> str:
    """A key as they are made, ending in the figure after which the shelf is looked at."""
    return sha256(words.encode()).hexdigest()[:-1] + "0"


def outputs(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}


def test_what_was_put_there_is_found_and_nothing_else(tmp_path: Path) -> None:
    cache = Cache(tmp_path / "kept")

    cache.put(key("one"), b"first")

    assert cache.get(key("one")) == b"first"
    assert cache.has(key("one"))
    assert cache.get(key("two")) is None
    assert not cache.has(key("two"))


def test_work_is_done_once_and_then_remembered(tmp_path: Path) -> None:
    done = []

    def work() -> bytes:
        done.append("once")
        return b"made"

    assert [Cache(tmp_path).made(key("one"), work) for _ in range(3)] == [b"made"] * 3
    assert done == ["once"]


@pytest.mark.parametrize("damage", [b"", b"short", b"x" * 500])
def test_a_damaged_entry_is_as_good_as_none_and_is_made_anew(tmp_path: Path, damage: bytes) -> None:
    cache = Cache(tmp_path)
    cache.put(key("one"), b"good")
    (entry,) = (path for path in tmp_path.rglob("*") if path.is_file())
    entry.write_bytes(damage)

    assert cache.get(key("one")) is None
    assert cache.made(key("one"), lambda: b"good") == b"good"
    assert cache.get(key("one")) == b"good"


def test_the_folder_stays_in_bounds_and_what_was_used_last_stays_in_it(tmp_path: Path) -> None:
    cache = Cache(tmp_path, most_bytes=16 * 10_000)
    shelf = [name for number in range(2000) if (name := key(f"{number}"))[0] == "7"][:30]
    for age, name in enumerate(shelf):
        cache.put(name, bytes(1000))
        os.utime(tmp_path / "7" / name[1:], (age, age))
    assert cache.get(shelf[0]) is not None  # it counts as used just now

    cache.tidy()

    held = [name for name in shelf if cache.has(name)]
    assert sum(path.stat().st_size for path in (tmp_path / "7").iterdir()) <= 10_000
    assert held == [shelf[0], *shelf[-8:]]


def test_what_is_larger_than_a_share_of_the_folder_is_not_kept(tmp_path: Path) -> None:
    cache = Cache(tmp_path, most_bytes=16 * 1000)

    cache.put(key("large"), bytes(1001))

    assert cache.get(key("large")) is None


def test_where_nothing_can_be_kept_the_work_is_done_all_the_same(tmp_path: Path) -> None:
    in_the_way = tmp_path / "file"
    in_the_way.write_bytes(b"")

    for cache in (Cache(in_the_way), Cache(None)):
        assert cache.made(key("one"), lambda: b"made") == b"made"
        cache.tidy()
    assert in_the_way.read_bytes() == b""


def test_keys_tell_apart_what_differs_in_content_paper_or_kind() -> None:
    keys = {key_of("sheet", content_of(facts), paper) for facts in ("a", "b") for paper in ("letter", "a4")}

    assert len(keys | {key_of("templates", content_of("a"), "letter")}) == 5
    assert key_of("sheet", content_of("a"), "letter") in keys


def test_the_usual_folder_is_where_the_system_says_and_none_for_somebody_without_a_home(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    assert usual_folder() == tmp_path / "blockdsl"

    monkeypatch.setenv("XDG_CACHE_HOME", "not/absolute")
    monkeypatch.setenv("HOME", str(tmp_path / "nowhere"))
    assert usual_folder() is None


def test_with_or_without_a_cache_the_bytes_are_the_same(folder: Path, run: Run) -> None:
    build = ("build", "pinwheel.block", "--book", "book.pdf", "-o")
    books = []
    for words in (("anew", "--no-cache"), ("first", "--cache", "kept"), ("again", "--cache", "kept")):
        assert run(*build, *words).status == 0
        books.append((folder / "book.pdf").read_bytes())

    assert outputs(folder / "anew") == outputs(folder / "first") == outputs(folder / "again")
    assert len(set(books)) == 1
    assert any((folder / "kept").iterdir())


def test_without_a_cache_nothing_is_kept_anywhere(folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_CACHE_HOME", str(folder / "usual"))

    run("build", "pinwheel.block", "-o", "out", "--no-cache")

    assert not (folder / "usual").exists()


def test_a_changed_palette_changes_what_is_made_from_it(folder: Path, run: Run) -> None:
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")
    run(*build)
    before = outputs(folder / "out")
    (folder / "palette.block").write_text(PALETTE.replace("#dfe3e0", "#e0d0c0"), encoding="utf-8")

    run(*build)

    after = outputs(folder / "out")
    assert b"#e0d0c0" in after["pinwheel.svg"]
    assert after["pinwheel.cutting.csv"] == before["pinwheel.cutting.csv"]


def test_a_comment_more_makes_nothing_anew(folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")
    run(*build)
    before = outputs(folder / "out")
    (folder / "pinwheel.block").write_text(f"# Tried on Sunday.\n{PINWHEEL}", encoding="utf-8")
    monkeypatch.setattr("blockdsl.export.pdf.write_pdf", None)  # it would fail if it were asked

    assert run(*build).status == 0
    assert outputs(folder / "out") == before


def test_warnings_are_told_each_time(folder: Path, run: Run) -> None:
    text = PINWHEEL.replace("size 6 in", "size 6 1/7 in")
    assert text != PINWHEEL
    (folder / "pinwheel.block").write_text(text, encoding="utf-8")
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")

    first, again = run(*build), run(*build)

    assert "warning[size-off-ruler]" in first.told
    assert again == first


def test_a_file_with_errors_is_looked_at_anew_each_time(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")

    first, again = run(*build), run(*build)

    assert first.status == again.status == 1
    assert again.told == first.told


def test_several_builds_at_once_share_a_cache_and_a_folder_without_harm(folder: Path, run: Run) -> None:
    run("build", "pinwheel.block", "-o", "alone", "--no-cache")
    command = (sys.executable, "-m", "blockdsl", "build", "pinwheel.block", "-o", "out", "--cache", "kept")

    with ThreadPoolExecutor(4) as pool:
        ended = list(pool.map(lambda _: subprocess.run(command, capture_output=True, check=False), range(4)))

    assert [(one.returncode, one.stderr) for one in ended] == [(0, b"")] * 4
    assert outputs(folder / "out") == outputs(folder / "alone")
    assert not list((folder / "kept").rglob("*.part"))


# --- nothing stale ---------------------------------------------------------------------------------


def test_a_palette_saved_while_the_build_is_at_work_is_seen_by_the_next_one(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It was read before it was saved, so what is kept is of the old one, and is not taken for the new one's."""
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")

    def save_meanwhile(*given: object) -> object:
        (folder / "palette.block").write_text(PALETTE.replace("#dfe3e0", "#e0d0c0"), encoding="utf-8")
        return collect_facts(*given)  # type: ignore[arg-type]

    with monkeypatch.context() as during:
        during.setattr("blockdsl.pipeline.collect_facts", save_meanwhile)
        run(*build)
    assert b"#dfe3e0" in (folder / "out" / "pinwheel.svg").read_bytes()

    run(*build)

    assert b"#e0d0c0" in (folder / "out" / "pinwheel.svg").read_bytes()


def test_a_file_that_is_unchanged_is_not_worked_through_again(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")
    run(*build)
    before = outputs(folder / "out")
    monkeypatch.setattr("blockdsl.pipeline.analyse", None)  # it would fail if it were asked

    assert run(*build).out == "8 files written to out\n"
    assert outputs(folder / "out") == before


def test_files_that_share_a_title_are_planned_together_however_one_was_remembered(folder: Path, run: Run) -> None:
    other = PINWHEEL.replace("size 6 in", "size 8 in")
    (folder / "other.block").write_text(other, encoding="utf-8")
    for name in ("pinwheel.block", "other.block"):
        run("build", name, "-o", name.removesuffix(".block"), "--cache", "kept")

    run("build", "pinwheel.block", "other.block", "-o", "both", "--cache", "kept")
    run("build", "pinwheel.block", "other.block", "-o", "anew", "--no-cache")

    assert outputs(folder / "both") == outputs(folder / "anew")
    assert (folder / "both" / "pinwheel-2.svg").exists()


# --- nothing run -----------------------------------------------------------------------------------


class Trap:
    """What somebody may plant: a pickle that makes a file when it is read."""

    def __init__(self, path: Path) -> None:
        self._path = path

    def __reduce__(self) -> tuple[object, tuple[str]]:
        return os.mkdir, (str(self._path),)


def test_a_planted_entry_runs_nothing_and_ends_no_build(folder: Path, run: Run) -> None:
    build = (
        "build",
        "pinwheel.block",
        "-o",
        "out",
        "--only",
        "sheet,web,book",
        "--book",
        "book.pdf",
        "--cache",
        "kept",
    )
    run(*build)
    before = outputs(folder / "out")
    sprung = folder / "sprung"
    bombs = [pickle.dumps(Trap(sprung)), b"\x81\xa9../../own\xc4\x01x", b"\xc1", b"\x90", b"\x91\x92\x90\xa0"]
    entries = [path for path in (folder / "kept").rglob("*") if path.is_file()]
    assert len(entries) > 3

    for bomb in bombs:
        for entry in entries:
            entry.write_bytes(sha256(bomb).digest() + bomb)
        ended = run(*build)
        assert (ended.status, ended.told) == (0, "")

    assert not sprung.exists()
    assert not (folder / "own").exists()
    shutil.rmtree(folder / "kept")
    assert run(*build).status == 0
    assert outputs(folder / "out") == before


@pytest.mark.parametrize("kind", ["pipe", "device", "link"])
def test_a_pipe_or_a_device_in_the_cache_is_passed_over(folder: Path, run: Run, kind: str) -> None:
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")
    run(*build)
    (folder / "own.txt").write_bytes(b"mine")
    for entry in [path for path in (folder / "kept").rglob("*") if path.is_file()]:
        entry.unlink()
        if kind == "pipe":
            os.mkfifo(entry)
        else:
            entry.symlink_to("/dev/zero" if kind == "device" else folder / "own.txt")

    assert run(*build).status == 0
    assert (folder / "own.txt").read_bytes() == b"mine"


def test_only_what_the_cache_put_there_is_ever_taken_away(tmp_path: Path) -> None:
    cache = Cache(tmp_path, most_bytes=16 * 1000)
    own = tmp_path / "7" / "my-own-notes.part"
    own.parent.mkdir()
    own.write_bytes(bytes(5000))
    os.utime(own, (1, 1))
    for number in range(300):
        if (name := key(f"{number}"))[0] == "7":
            cache.put(name, bytes(400))

    cache.tidy()

    assert own.exists()


def test_the_usual_folder_is_shut_to_others_and_not_used_where_it_is_not_the_users_own(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    (tmp_path / "blockdsl").mkdir(mode=0o755)

    assert usual_folder() == tmp_path / "blockdsl"
    assert (tmp_path / "blockdsl").stat().st_mode & 0o777 == 0o700

    monkeypatch.setattr(os, "getuid", lambda: 12345)
    assert usual_folder() is None

    monkeypatch.undo()
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "linked"))
    (tmp_path / "linked").mkdir()
    (tmp_path / "linked" / "blockdsl").symlink_to(tmp_path / "blockdsl")
    assert usual_folder() is None


def test_every_kind_of_file_that_pages_are_made_from_counts_in_a_key() -> None:
    """Messages too: else a page keeps its old words in a working copy."""
    folder = Path(blockdsl.__file__).parent
    kinds = {path.suffix for path in folder.rglob("*") if path.is_file() and "__pycache__" not in path.parts}
    assert kinds - set(CODE) <= {"", ".md", ".txt", ".typed", ".html", ".js"}  # the starter and the page of the preview
