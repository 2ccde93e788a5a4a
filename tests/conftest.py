"""What every test may ask for."""

import gc
import io
import os
import signal
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from tests.kept import FOLDER

ROOT = Path(__file__).resolve().parent.parent

# The same examples on every machine and every run; the two cores of a small machine may be busy, hence no deadline.
settings.register_profile("blockdsl", derandomize=True, deadline=None, max_examples=30)
settings.load_profile("blockdsl")

# The commands keep their compiled code, as for whoever installed blockdsl; where Python was told to keep none, each of
# hundreds of them would compile all of it anew.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)

# The tests may be run by a make of their own; what that tells the makes below it would stand in what they print.
for name in ("MAKEFLAGS", "MAKELEVEL", "MFLAGS"):
    os.environ.pop(name, None)

# A shell that runs the tests behind it lets them ignore an interrupt, and so would the commands that they interrupt.
if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
    signal.signal(signal.SIGINT, signal.default_int_handler)

# Python's search for rings of objects goes through all that the tests keep, again and again; the commands go without.
gc.set_threshold(200_000, 20, 20)


@pytest.fixture(scope="session")
def project() -> Path:
    """The project's top folder."""
    return ROOT


@pytest.fixture(autouse=True)
def no_text_was_given_to_a_compiled_fraction() -> Iterator[None]:
    """Python's own bytes are whole after a test: see `blockdsl.geometry.fraction` for what would spoil them."""
    yield
    assert io.BytesIO(bytes(2)).read(1)[0] == 0, "read numbers with read_fraction, not with Fraction"


@pytest.fixture(scope="session")
def blockdsl_command() -> str:
    """The installed command, as a quilter would type it."""
    return str(Path(sys.executable).parent / "blockdsl")


@pytest.fixture(scope="session", autouse=True)
def cache_of_its_own(tmp_path_factory: pytest.TempPathFactory) -> None:
    """The commands keep what they made for this run alone: a test never meets what an earlier run made."""
    os.environ["XDG_CACHE_HOME"] = str(tmp_path_factory.mktemp("cache"))


@pytest.fixture(scope="session", autouse=True)
def kept_in_this_run(tmp_path_factory: pytest.TempPathFactory) -> None:
    """All processes of a run have one folder for what each test would otherwise work out anew."""
    top = tmp_path_factory.getbasetemp()
    folder = (top.parent if "PYTEST_XDIST_WORKER" in os.environ else top) / "kept"
    folder.mkdir(exist_ok=True)
    os.environ[FOLDER] = str(folder)


DEAR_AT_FIRST = ("test_web_judges", "test_svg_anywhere", "test_pdf_tags", "test_painters_agree", "test_web_driven")
"""Modules whose tests share what takes long to make."""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Tests that share something dear come first, while both processes have work of their own.

    At the end one process takes over half of what the other has left, and would make the same again, or wait for it.
    """
    items.sort(key=lambda item: item.path.stem not in DEAR_AT_FIRST)
