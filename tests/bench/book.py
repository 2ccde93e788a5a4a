"""How soon a book is there, beside Typst with the very same pages, and how make does with a thousand files.

Typst gets the pages as finished SVG and binds them; ours are painted from their marks, so the two do like work. Each
runs in a process of its own, once to warm the disk and then some times; the best counts. Memory is the most that the
process held. Nothing is judged here, but each figure stands beside its target.
"""

from __future__ import annotations

import os
import pickle
import re
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
COMMAND = str(Path(sys.executable).parent / "blockdsl")
PAGES = 200
SIZES = (6, 9, 12)
RUNS = 3
FILES = 1000
PAPER_PT = (612, 792)


def main() -> None:
    """Print the tables, or do one piece of work in a process of its own."""
    if len(sys.argv) > 1:
        {"paint": paint, "again": paint_again, "typst": typeset}[sys.argv[1]](Path(sys.argv[2]))
        return
    with tempfile.TemporaryDirectory() as folder:
        theirs = beside_typst(Path(folder))
        whole_book(Path(folder) / "blocks", theirs)
        memory(Path(folder))
        thousand_files(Path(folder) / "thousand")


def say(name: str = "", found: str = "", target: str = "") -> None:
    """One line of the table."""
    print(f"{name:58} {found:>14} {target:>22}", flush=True)


# --- the same pages, ours and Typst's ----------------------------------------------------------------


def sheet_pages() -> Iterator[object]:
    """Pages of the library's sheets at several sizes, the book's own mixture of pictures, tables and words."""
    from blockdsl import pipeline  # noqa: PLC0415
    from blockdsl.analysis import FileReader  # noqa: PLC0415 - the children do without
    from blockdsl.diagnostics import Problems, Source  # noqa: PLC0415
    from blockdsl.page.sheet import block_sheet  # noqa: PLC0415

    while True:
        for name, text in library_blocks():
            problems = Problems()
            for block in pipeline.run(Source(name, text), FileReader(ROOT), problems).facts.blocks:
                yield from block_sheet(block).pages


def library_blocks() -> Iterator[tuple[str, str]]:
    """The library's files, each at several sizes, by the path that they would have."""
    for path in sorted((ROOT / "library").rglob("*.block")):
        text = path.read_text(encoding="utf-8")
        if "\nblock " not in text:
            continue
        text = re.sub(r"^\s*expect .*\n", "", text, flags=re.MULTILINE)
        for size in SIZES:
            sized = re.sub(r"^(\s*)size [^x\n]*$", rf"\1size {size} in", text, flags=re.MULTILINE)
            yield str(path.with_name(f"{path.stem}-{size}.block")), sized


def beside_typst(folder: Path) -> float:
    """The cold book, ours and Typst's; gives Typst's seconds as a whole process."""
    from blockdsl.export.svg import write_svg  # noqa: PLC0415

    pages = [page for page, _ in zip(sheet_pages(), range(PAGES), strict=False)]
    (folder / "pages.pickle").write_bytes(pickle.dumps(pages))
    for place, page in enumerate(pages):
        (folder / f"{place}.svg").write_bytes(write_svg(page, title="Sheet"))  # type: ignore[arg-type]
    width, height = PAPER_PT
    images = [f'#image("{place}.svg", width: {width}pt, height: {height}pt)' for place in range(PAGES)]
    book = f"#set page(width: {width}pt, height: {height}pt, margin: 0pt)\n" + "\n#pagebreak()\n".join(images)
    (folder / "book.typ").write_text(book, encoding="utf-8")
    ours, theirs = child("paint", folder), child("typst", folder)
    say("", "ours", "Typst")
    say(f"cold book of {PAGES} pages, binding alone, seconds", f"{ours[0]:.2f}", f"{theirs[0]:.2f}")
    say("as whole processes, seconds", f"{ours[3]:.2f}", f"{theirs[3]:.2f}")
    again = child("again", folder)
    say("again with one block changed, binding alone, seconds", f"{again[0]:.3f}", "the same as cold")
    say("as whole processes, seconds", f"{again[3]:.2f}")
    say("file, kB", f"{ours[1] / 1000:.0f}", f"{theirs[1] / 1000:.0f}")
    say("memory, MB", f"{ours[2]:.0f}", f"{theirs[2]:.0f}")
    say()
    say("", "found", "target")
    say("time of the cold book, ours to Typst's", f"{ours[0] / theirs[0]:.2f}", "at most 1")
    say("cold Typst to ours with one block changed", f"{theirs[0] / again[0]:.1f}", "at least 5")
    say("size of the file, ours to Typst's", f"{ours[1] / theirs[1]:.2f}", "at most 1.5")
    return theirs[3]


def child(work: str, folder: Path) -> tuple[float, float, float, float]:
    """The best seconds of the work itself, bytes of the file, megabytes of memory, best seconds of the process."""
    found = []
    for run in range(RUNS + 1):
        start = time.perf_counter()
        command = (sys.executable, __file__, work, str(folder))
        said = subprocess.run(command, capture_output=True, check=True, text=True).stdout.split()
        if run:
            found.append((*map(float, said), time.perf_counter() - start))
    return min(found)[0], found[0][1], max(one[2] for one in found), min(one[3] for one in found)


def paint(folder: Path) -> None:
    """Paint the pages in this process."""
    from blockdsl.export.pdf import write_pdf  # noqa: PLC0415
    from blockdsl.marks.display_list import Document  # noqa: PLC0415

    pages = pickle.loads((folder / "pages.pickle").read_bytes())  # noqa: S301 - written a moment ago
    tell(lambda: write_pdf(Document("Book", tuple(pages))))


def paint_again(folder: Path) -> None:
    """Bind pages that were painted before, as the cache has them, with the two of one block painted anew."""
    from blockdsl.export.pdf import bind  # noqa: PLC0415
    from blockdsl.export.pdf_page import paint_page  # noqa: PLC0415
    from blockdsl.marks.display_list import Document  # noqa: PLC0415

    changed = pickle.loads((folder / "pages.pickle").read_bytes())[:2]  # noqa: S301
    kept = folder / "painted.pickle"
    if not kept.exists():
        pages = pickle.loads((folder / "pages.pickle").read_bytes())  # noqa: S301
        kept.write_bytes(pickle.dumps([paint_page(page) for page in pages]))

    def work() -> bytes:
        painted = pickle.loads(kept.read_bytes())  # noqa: S301
        return bind(Document("Book", ()), [*map(paint_page, changed), *painted[2:]])

    tell(work)


def typeset(folder: Path) -> None:
    """Bind the drawings with Typst in this process, with our font and no other."""
    import typst  # noqa: PLC0415 - only the children need it

    fonts = [str(ROOT / "blockdsl" / "fonts")]
    tell(lambda: typst.compile(str(folder / "book.typ"), font_paths=fonts, ignore_system_fonts=True))


def tell(work: Callable[[], bytes]) -> None:
    """Say how long the work took, how large the file is and how much memory the process had at most."""
    start = time.perf_counter()
    size = len(work())
    seconds = time.perf_counter() - start
    print(seconds, size, most_held())


def most_held() -> float:
    """Megabytes that this process held at most. Linux's `ru_maxrss` would count the process that started it too."""
    status = Path("/proc/self/status")
    if status.exists():
        return int(next(line for line in status.read_text().splitlines() if line.startswith("VmHWM")).split()[1]) / 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / (1 << 20 if sys.platform == "darwin" else 1 << 10)


# --- the whole command -------------------------------------------------------------------------------


def whole_book(folder: Path, theirs: float) -> None:
    """From block files to the book: anew, with nothing changed, and with one block changed."""
    folder.mkdir()
    names = []
    for name, text in library_blocks():
        # Names of their own, so that every block is in the book.
        renamed = re.sub(r'^block "', f'block "{Path(name).stem.rsplit("-", 1)[1]} in ', text, flags=re.MULTILINE)
        path = folder / Path(name).name
        path.write_text(renamed, encoding="utf-8")
        names.append(path.name)
    for used in (ROOT / "library" / "demo" / "palette.block", ROOT / "library" / "basics.block"):
        (folder / used.name).write_bytes(used.read_bytes())
    build = (COMMAND, "build", *names, "-o", "out", "--only", "book", "--book", "out/book.pdf", "--cache", "kept")
    cold = min(seconds((*build, "--no-cache"), folder) for _ in range(RUNS))
    seconds(build, folder)
    idle = min(seconds(build, folder) for _ in range(RUNS))
    changed = min(change_and_build(folder / names[0], build, run) for run in range(RUNS))
    say()
    say(f"blockdsl build, a book of {len(names)} files, seconds", f"{cold:.2f}")
    say("with nothing changed", f"{idle:.2f}")
    say("with one block changed", f"{changed:.2f}")
    say("a cold Typst process to that, times as long", f"{theirs / changed:.1f}", "at least 5")


def change_and_build(path: Path, build: tuple[str, ...], run: int) -> float:
    """Another note on the last block of the file, then the build."""
    with path.open("a", encoding="utf-8") as file:
        file.write(f'  note "Tried {run}"\n')
    return seconds(build, path.parent)


def seconds(command: tuple[str, ...], folder: Path) -> float:
    """How long a command takes that must succeed."""
    start = time.perf_counter()
    subprocess.run(command, cwd=folder, capture_output=True, check=True)
    return time.perf_counter() - start


def memory(folder: Path) -> None:
    """What the process holds when pages are made one after the other, for more and more pages."""
    pages = pickle.loads((folder / "pages.pickle").read_bytes())  # noqa: S301 - ours
    say()
    for count in (PAGES // 4, PAGES // 2, PAGES, 2 * PAGES):
        (folder / "pages.pickle").write_bytes(pickle.dumps([pages[at % PAGES] for at in range(count)]))
        command = (sys.executable, __file__, "paint", str(folder))
        said = subprocess.run(command, capture_output=True, check=True, text=True).stdout.split()
        say(f"memory for {count} pages, MB", f"{float(said[2]):.0f}", "under 300")


# --- make --------------------------------------------------------------------------------------------


def thousand_files(folder: Path) -> None:
    """A folder of a thousand block files under make: nothing to do, and one file changed."""
    from blockdsl.cli import main as blockdsl  # noqa: PLC0415 - a thousand processes would take minutes

    subprocess.run((COMMAND, "new", str(folder)), check=True, capture_output=True)
    for path in folder.glob("*.block"):
        if path.name != "palette.block":
            path.unlink()
    fabrics = 'fabric fog "Fog" #dfe3e0 light\nfabric slate "Slate" #3a4750 dark\n'
    here = Path.cwd()
    os.chdir(folder)
    for number in range(FILES):
        name = f"block-{number}"
        text = f'{fabrics}\nblock "{name}"\n  size {number % 12 + 2} in\n  row fog slate\n  row slate fog\n'
        Path(f"{name}.block").write_text(text, encoding="utf-8")
    sys.stdout.flush()
    kept = os.dup(1)
    with Path(os.devnull).open("w", encoding="utf-8") as nowhere:
        os.dup2(nowhere.fileno(), 1)
        for number in range(FILES):
            name = f"block-{number}"
            blockdsl(["build", f"{name}.block", "-o", "out", "--only", "table", "--depfile", f"out/{name}.d"])
        sys.stdout.flush()
        os.dup2(kept, 1)
    os.chdir(here)
    make = ("make", f"BLOCKDSL={COMMAND}")
    idle = min(seconds(make, folder) for _ in range(RUNS))
    changed = []
    for run in range(RUNS):
        path = folder / "block-500.block"
        path.write_text(f"{path.read_text(encoding='utf-8')}# {run}\n", encoding="utf-8")
        changed.append(seconds(make, folder))
    say()
    say(f"make, {FILES:,} block files, nothing to do, seconds", f"{idle:.2f}", "under 1")
    say("one file changed", f"{min(changed):.2f}", "under 2")


if __name__ == "__main__":
    main()
