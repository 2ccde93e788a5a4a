"""How long the commands take, start to finish, as someone at the keyboard feels it: `make bench`.

Each line is the best and the middle of five runs of the whole command, Python's own start included.
Nothing is judged here: look at it before and after a change that may be slow.
"""

import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
COMMAND = str(Path(sys.executable).parent / "blockdsl")
RUNS = 5


def large_block(cells: int) -> str:
    """A block of `cells` × `cells` squares in two fabrics."""
    row = "  row " + "light dark " * (cells // 2)
    fabrics = 'fabric light "Light" #eeeeee\nfabric dark "Dark" #333333\n'
    return f'{fabrics}\nblock "Large"\n  size {cells} in\n' + "\n".join([row] * cells) + "\n"


def seconds(arguments: list[str]) -> float:
    """Time of one run, whatever its outcome."""
    start = time.perf_counter()
    subprocess.run([COMMAND, *arguments], capture_output=True, check=False)
    return time.perf_counter() - start


def main() -> None:
    """Print one line for each command."""
    demo = [str(path) for path in sorted((ROOT / "library" / "demo").glob("*.block"))]
    with tempfile.TemporaryDirectory() as folder:
        large = Path(folder) / "large.block"
        large.write_text(large_block(100), encoding="utf-8")
        jobs = {
            "help": ["--help"],
            "check, one block": ["check", *demo[:1]],
            "check, the demo": ["check", *demo],
            "check, 100 x 100 squares": ["check", str(large)],
            "facts, one block": ["facts", *demo[:1]],
            "build, one block": ["build", *demo[:1], "-o", folder],
            "build, the demo": ["build", *demo, "-o", folder],
        }
        print(f"{'command':26} {'best':>8} {'middle':>8}")
        for name, arguments in jobs.items():
            runs = [seconds(arguments) for _ in range(RUNS)]
            print(f"{name:26} {min(runs):7.3f}s {statistics.median(runs):7.3f}s")


if __name__ == "__main__":
    main()
