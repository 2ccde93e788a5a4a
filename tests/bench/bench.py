"""How long things take, and how that grows: `make bench`.

Each line gives the best and the middle of some runs, the target, and the best as a multiple of one fixed loop of
fractions timed just before: that ratio can be compared between machines, the seconds cannot. Nothing is judged here.
"""

from __future__ import annotations

import gc
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from fractions import Fraction as PlainFraction  # noqa: TID251 - the loop stays as it was, to be compared with
from functools import partial
from pathlib import Path

from blockdsl import pipeline
from blockdsl.analysis import FileReader, TextReader, analyse
from blockdsl.analysis.letters import letter_patches
from blockdsl.analysis.reading import Reader
from blockdsl.diagnostics import Problems, Source
from blockdsl.export.pdf import write_pdf
from blockdsl.export.png import write_png
from blockdsl.export.svg import write_svg
from blockdsl.facts import FileFacts
from blockdsl.geometry.cover import prove_cover
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import write_exact
from blockdsl.page.sheet import block_sheet
from blockdsl.page.single import quilt_page
from blockdsl.page.step_slide import PIXELS_AN_INCH, StepSlides
from blockdsl.sewing.order import find_order
from blockdsl.wording import facts_json

ROOT = Path(__file__).resolve().parents[2]
COMMAND = str(Path(sys.executable).parent / "blockdsl")
EXAMPLE = ROOT / "library" / "demo" / "harbour-light.block"
GRIDS = (50, 100, 200)
IN_CHILD = "--grid"


def reference() -> float:
    """Seconds of a fixed piece of exact arithmetic."""
    start = time.perf_counter()
    total = PlainFraction(0)
    for number in range(1, 10_001):
        total += PlainFraction(number % 7, number % 12 + 1)
    return time.perf_counter() - start


def timed(job: Callable[[], object], runs: int) -> list[float]:
    """Seconds of each run, after one that is not counted."""
    job()
    found = []
    for _ in range(runs):
        start = time.perf_counter()
        job()
        found.append(time.perf_counter() - start)
    return found


def show(name: str, seconds: list[float], target: float | None = None) -> None:
    """One line of the table."""
    unit = min(reference() for _ in range(5))
    best, middle = min(seconds), statistics.median(seconds)
    wanted = f"{target * 1000:8.0f}" if target else " " * 8
    print(f"{name:44} {best * 1000:9.1f} {middle * 1000:9.1f} {wanted} {best / unit:9.2f}", flush=True)


def worked(source: Source, reader: Reader) -> tuple[FileFacts, Problems]:
    """A text worked through to its facts."""
    problems = Problems()
    return pipeline.run(source, reader, problems).facts, problems


def checkerboard(across: int) -> str:
    """A block of `across` × `across` squares in two fabrics."""
    row = "  row " + "light dark " * (across // 2)
    fabrics = 'fabric light "Light" #eeeeee\nfabric dark "Dark" #333333\n'
    return f'{fabrics}\nblock "Large"\n  size {across} in\n' + "\n".join([row] * across) + "\n"


def in_child(across: int) -> None:
    """Check one large block in this process, and say how long that took and how much memory it had at most."""
    source = Source("large.block", checkerboard(across))
    worked(Source("small.block", checkerboard(2)), TextReader())
    gc.disable()  # as the commands do
    start = time.perf_counter()
    facts, _ = worked(source, TextReader())
    seconds = time.perf_counter() - start
    # Kilobytes, except on a Mac, where they are bytes.
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / (1 << 20 if sys.platform == "darwin" else 1 << 10)
    print(seconds, peak, len(facts.blocks[0].placed))


def growth() -> None:
    """Blocks of more and more patches, each in a process of its own."""
    before: float | None = None
    for across in GRIDS:
        runs, peak = [], 0.0
        for _ in range(3):
            command = [sys.executable, __file__, IN_CHILD, str(across)]
            said = subprocess.run(command, capture_output=True, check=True, text=True).stdout.split()
            runs.append(float(said[0]))
            peak = float(said[1])
        show(f"{across * across:,} patches checked ({peak:.0f} MB)", runs, 2.0 if across == GRIDS[-1] else None)
        if before is not None:
            print(f"{'    times as long for 4 times the patches':44} {min(runs) / before:9.1f}")
        before = min(runs)


def one_block() -> None:
    """The usual block in a process that is warm, as an editor would have it."""
    source, reader = Source(str(EXAMPLE), EXAMPLE.read_text("utf-8")), FileReader(ROOT)
    facts = worked(source, reader)[0].blocks[0]
    show("facts of one block", timed(lambda: facts_json(*worked(source, reader)), 40), 0.005)
    sheet = block_sheet(facts)
    show(
        f"its sheet as SVG ({len(sheet.pages)} pages)",
        timed(lambda: [write_svg(page, title=sheet.title) for page in block_sheet(facts).pages], 20),
        0.020,
    )
    show("its sheet as PDF", timed(lambda: write_pdf(block_sheet(facts)), 20), 0.150)
    slide = StepSlides(facts).page(2)
    show("a step of it as PNG, 1920 x 1080", timed(partial(write_png, slide, PIXELS_AN_INCH), 5))


def orders() -> None:
    """The order of sewing of grids: a usual one, and one of a few thousand squares."""
    for across, target in ((8, 0.020), (44, 1.0)):
        block = analyse(Source("grid.block", checkerboard(across)), TextReader(), Problems()).blocks[0]
        show(f"order of sewing {across * across:,} squares", timed(partial(find_order, block), 5), target)


def cells(cell: str, across: int, inches: Fraction) -> str:
    """A block of `across` × `across` cells alike, each so many inches wide."""
    fabrics = "".join(f'fabric {name} "{name}" #{colour}\n' for name, colour in (("a", "b84a3a"), ("b", "2f5f8f")))
    row = "  row " + f"({cell}) " * across
    return f'{fabrics}\nblock "Cells"\n  size {write_exact(inches * across)} in\n' + "\n".join([row] * across) + "\n"


def roots() -> None:
    """As many patches with √2 in their corners as without: proved, recognised, and worked through to the facts."""
    shapes = {
        "400 patches of quarters": ("quarters a b a b", 10, 4),
        "400 patches of stars": ("star45 points a b ground a", 5, 8),
        "400 patches of one star": ("star45 points a b rows 7 ground a", 1, 40),
    }
    before: list[float] = []
    for name, (cell, across, inches) in shapes.items():
        runs: list[list[float]] = [[], [], []]
        for run in range(5):  # each of another size: what has been seen before is remembered
            source = Source("cells.block", cells(cell, across, inches + Fraction(run, 8)))
            design = analyse(source, TextReader(), Problems()).blocks[0]
            outlines = [patch.outline for patch in design.patches]
            start = time.perf_counter()
            prove_cover(outlines, design.width, design.height)
            proved = time.perf_counter()
            letter_patches(design.patches)
            lettered = time.perf_counter()
            worked(source, TextReader())
            times = (proved - start, lettered - proved, time.perf_counter() - lettered)
            for each, seconds in zip(runs, times, strict=True):
                each.append(seconds)
        for what, each in zip(("cover", "recognition", "facts"), runs, strict=True):
            show(f"{name}: {what}", each)
        least = [min(each) for each in runs]
        if before:
            ratios = ", ".join(f"{one / other:.1f}" for one, other in zip(least, before, strict=True))
            print(f"{'    times as long as without roots (5 at most)':44} {sum(least) / sum(before):9.1f} ({ratios})")
        before = before or least


def large_quilt(across: int, down: int) -> Source:
    """A quilt of so many blocks of 60 patches, with sashing, posts and two colourways."""
    fabrics = "".join(f'fabric {name} "{name}" #{colour}\n' for name, colour in (("a", "eeeeee"), ("b", "2f5f8f")))
    block = 'block "Sixty"\n  size 5 x 3 in\n' + "  row a b a b a b a b a b\n" * 6 + '  colourway "Other" a=b b=a\n'
    setting = f'  set straight {across} x {down} of "Sixty"\n  sash 1 in b posts a\n'
    setting += '  colourway "Other" on every second\n'
    return Source("quilt.block", f'{fabrics}\n{block}\nquilt "Large"\n{setting}')


def quilts() -> None:
    """A quilt of 2,000 blocks: a block is drawn once and stamped, so it takes little more than one of twenty."""
    source = large_quilt(40, 50)
    show("facts of 2,000 blocks of 60 patches", timed(lambda: worked(source, TextReader()), 3), 2.0)
    facts = worked(source, TextReader())[0].quilts[0]
    picture = write_svg(quilt_page(facts), title="Large")
    size = f"{len(picture) / 1e6:.2f} MB, 3 at most"
    show(f"its picture as SVG ({size})", timed(lambda: write_svg(quilt_page(facts), title="Large"), 3), 5.0)
    few = worked(large_quilt(4, 5), TextReader())[0].quilts[0]
    show("the same of 20 blocks", timed(lambda: write_svg(quilt_page(few), title="Large"), 3))


def commands() -> None:
    """Whole commands, Python's own start included, as someone at the keyboard feels them."""
    library = [str(path) for path in sorted((ROOT / "library").rglob("*.block"))]
    demo = [path for path in library if "demo" in path]

    def run(*arguments: str) -> Callable[[], object]:
        return lambda: subprocess.run([COMMAND, *arguments], capture_output=True, check=False)

    with tempfile.TemporaryDirectory() as folder:
        large = Path(folder) / "large.block"
        large.write_text(checkerboard(200), encoding="utf-8")
        show("blockdsl --help", timed(run("--help"), 3))
        small = ROOT / "library" / "demo" / "breakwater.block"
        show("blockdsl check, a file of 18 lines", timed(run("check", str(small)), 5), 0.150)
        show("blockdsl facts, one file", timed(run("facts", str(EXAMPLE)), 3))
        show(f"blockdsl check, the library ({len(library)} files)", timed(run("check", *library), 3), 1.0)
        show("blockdsl check, 40,000 patches", timed(run("check", str(large)), 3), 2.0)
        show("blockdsl build, one file", timed(run("build", str(EXAMPLE), "-o", folder), 3))
        show("blockdsl build, the demo", timed(run("build", *demo, "-o", folder), 3))


def main() -> None:
    """Print the table."""
    if IN_CHILD in sys.argv:
        in_child(int(sys.argv[-1]))
        return
    print(f"{'':44} {'best ms':>9} {'middle':>9} {'target':>8} {'in loops':>9}")
    show("the loop of fractions", timed(reference, 20))
    one_block()
    orders()
    roots()
    growth()
    quilts()
    commands()


if __name__ == "__main__":
    main()
