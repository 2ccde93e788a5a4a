"""The same sheet is the same bytes, whichever process writes it and whenever: judged by writing it elsewhere."""

import os
import subprocess
import sys
from hashlib import sha256

import pytest

WRITE = """
import sys
from hashlib import sha256
from blockdsl.marks.display_list import Document, Figure, Page, Path, TextMark
from blockdsl.export.pdf import write_pdf
from blockdsl.export.png import write_png
from blockdsl.export.svg import write_svg

ring = ((72.0, 72.0), (144.0, 72.0), (144.0, 144.0))
words = TextMark(9, 9, "2 ⁷⁄₈ שלום ΩЖ", 9)
page = Page(612, 792, (Figure("f", (Path((ring,), fill="#e0a030"),)), words))
written = {"pdf": write_pdf(Document("T", (page, page))), "svg": write_svg(page, title="T"), "png": write_png(page)}
sys.stdout.buffer.write(written[sys.argv[1]])
"""


def written(kind: str, seed: str, zone: str) -> str:
    settings = {**os.environ, "PYTHONHASHSEED": seed, "TZ": zone, "LC_ALL": "C", "LANG": "C"}
    found = subprocess.run([sys.executable, "-c", WRITE, kind], capture_output=True, check=True, env=settings)
    assert len(found.stdout) > 1000
    return sha256(found.stdout).hexdigest()


@pytest.mark.parametrize("kind", ["pdf", "svg", "png"])
def test_two_runs_in_two_zones_write_the_same_bytes(kind: str) -> None:
    assert written(kind, "1", "UTC") == written(kind, "2", "Asia/Tokyo")
