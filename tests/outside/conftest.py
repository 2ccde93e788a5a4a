"""What the judges of one kind of output share."""

import subprocess
from pathlib import Path

import pytest


@pytest.fixture(scope="session")
def web_sites(project: Path, blockdsl_command: str, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with two web sites: the demo book, and one whose names and words are hard on web pages."""
    folder = tmp_path_factory.mktemp("sites")
    files = [project / "library/demo/book.block", project / "tests/outside/web/rough.block"]
    for file in files:
        ended = subprocess.run(
            [blockdsl_command, "build", file.name, "-o", folder, "--only", "web", "--no-cache"],
            cwd=file.parent,
            check=False,
            capture_output=True,
            text=True,
        )
        assert ended.returncode == 0, ended.stderr
    return folder


@pytest.fixture(scope="session")
def demo_site(web_sites: Path) -> Path:
    """The site of the demo book."""
    return web_sites / "a-harbour-sampler.web"


@pytest.fixture(scope="session")
def rough_site(web_sites: Path) -> Path:
    """The site that is hard on web pages."""
    return web_sites / "rough-em-ready-em.web"
