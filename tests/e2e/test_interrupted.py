"""A build that is killed at any moment leaves the book as it was or as it should be: never half of it."""

import random
import signal
import subprocess
import time
from pathlib import Path

KILLS = 20
FABRICS = 'fabric fog "Harbour fog" #dfe3e0\nfabric slate "Wet slate" {colour}\n'
BLOCK = '\nblock "{name}"\n  size 6 in\n  row fog\\slate  fog/slate\n  row slate/fog  slate\\fog\n'


def write_blocks(folder: Path, colour: str) -> None:
    blocks = "".join(BLOCK.format(name=name) for name in ("Pinwheel", "Mill", "Whirl"))
    (folder / "mills.block").write_text(FABRICS.format(colour=colour) + blocks, encoding="utf-8")


def test_a_book_killed_while_it_is_made_is_the_old_one_or_the_new_one(tmp_path: Path, blockdsl_command: str) -> None:
    build = (blockdsl_command, "build", "mills.block", "-o", "out", "--only", "book", "--book", "out/book.pdf")
    command = (*build, "--cache", "kept")  # what was killed before its end must not harm the next build either
    book = tmp_path / "out" / "book.pdf"
    whole: dict[str, bytes] = {}
    for colour in ("#3a4750", "#17293f"):
        write_blocks(tmp_path, colour)
        start = time.monotonic()
        subprocess.run((*build, "--no-cache"), cwd=tmp_path, check=True, capture_output=True, timeout=60)
        long = time.monotonic() - start
        whole[colour] = book.read_bytes()
    old, new = whole.values()
    assert old != new

    moments = random.Random(20)  # noqa: S311 - the same moments in every run, as far as the machine allows
    for number in range(KILLS):
        write_blocks(tmp_path, f"#{number:06x}" if number % 4 == 0 else "#3a4750")
        before = book.read_bytes()
        running = subprocess.Popen(command, cwd=tmp_path, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        time.sleep(moments.uniform(0.2, 1.0) * min(long, 0.5))
        running.send_signal(signal.SIGKILL)
        running.wait(timeout=30)
        after = book.read_bytes()
        if after not in (before, old):
            alone = (*build[:-1], "alone/book.pdf", "--no-cache")
            subprocess.run(alone, cwd=tmp_path, check=True, capture_output=True, timeout=60)
            assert after == (tmp_path / "alone" / "book.pdf").read_bytes()
        assert [path.name for path in book.parent.iterdir() if not path.name.startswith(".")] == ["book.pdf"]

    write_blocks(tmp_path, "#17293f")
    subprocess.run(command, cwd=tmp_path, check=True, capture_output=True, timeout=60)
    assert book.read_bytes() == new
