"""Who may ask the preview: the page itself, and nobody else."""

from __future__ import annotations

import asyncio
from collections.abc import Iterator
from pathlib import Path
from threading import Thread

import httpx
import pytest

from blockdsl.preview.app import Changes, app_of
from blockdsl.preview.seen import Seen
from blockdsl.preview.serving import Preview

WORD, PORT = "secret-word", 4711
HOST = f"127.0.0.1:{PORT}"
BLOCK = (
    'fabric fog "<script>alert(1)</script>" #dfe3e0\nfabric slate "Slate" #3a4750\n\n'
    'block "</svg><img src=x onerror=alert(1)>"\n  size 6 in\n  row fog slate\n  row slate fog\n'
)


@pytest.fixture
def file(tmp_path: Path) -> Path:
    """A block whose names are written as markup."""
    path = tmp_path / "mine.block"
    path.write_text(BLOCK, encoding="utf-8")
    (tmp_path / "letter.txt").write_text("private", encoding="utf-8")
    return path


def ask(file: Path, path: str, method: str = "GET", body: str = "", **headers: str) -> httpx.Response:
    """The answer to one request, as the server on `PORT` gives it."""
    app = app_of(Seen(file), Changes(), WORD, PORT)

    async def asked() -> httpx.Response:
        transport = httpx.ASGITransport(app=app)
        async with httpx.AsyncClient(transport=transport, base_url=f"http://{HOST}") as client:
            return await client.request(method, path, headers={"host": HOST} | headers, content=body)

    return asyncio.run(asked())


def test_the_page_is_given_to_who_has_its_address(file: Path) -> None:
    answer = ask(file, f"/{WORD}/")

    assert answer.status_code == 200
    assert "<main>" in answer.text


@pytest.mark.parametrize("path", ["/", "/data", "/secret-wor/", "/secret-wordy/data", "//data", "/events"])
def test_without_its_word_there_is_nothing(file: Path, path: str) -> None:
    assert ask(file, path).status_code == 404


@pytest.mark.parametrize(
    "host", ["evil.example", f"evil.example:{PORT}", "127.0.0.1", "127.0.0.1:80", "", f"[::1]:{PORT}"]
)
def test_a_name_that_was_made_to_lead_here_is_refused(file: Path, host: str) -> None:
    """DNS rebinding: the browser keeps the page's own host name, whatever address it leads to."""
    answer = ask(file, f"/{WORD}/data", host=host)

    assert answer.status_code == 403
    assert "fog" not in answer.text


@pytest.mark.parametrize(
    "headers",
    [
        {"origin": "http://evil.example"},
        {"origin": "null"},
        {"origin": f"https://{HOST}"},
        {"sec-fetch-site": "cross-site"},
        {"sec-fetch-site": "same-site"},
    ],
)
def test_another_page_in_the_same_browser_is_refused(file: Path, headers: dict[str, str]) -> None:
    assert ask(file, f"/{WORD}/data", **headers).status_code == 403
    assert ask(file, f"/{WORD}/cursor", "POST", '{"file": "x", "line": 1}', **headers).status_code == 403


def test_the_page_itself_may_ask_and_tell(file: Path) -> None:
    assert ask(file, f"/{WORD}/data", origin=f"http://{HOST}", **{"sec-fetch-site": "same-origin"}).status_code == 200
    assert ask(file, f"/{WORD}/cursor", "POST", '{"file": "x", "line": 1}', origin=f"http://{HOST}").status_code == 204


@pytest.mark.parametrize("path", ["", "data", "preview.js", "frame", "files", "nowhere"])
def test_every_answer_forbids_scripts_of_others_and_frames(file: Path, path: str) -> None:
    """Content Security Policy Level 3 (W3C): no inline script without 'unsafe-inline', a nonce or a hash."""
    policy = ask(file, f"/{WORD}/{path}").headers["content-security-policy"]

    rules = dict(rule.strip().split(" ", 1) for rule in policy.split(";"))
    assert rules["default-src"] == "'none'"
    assert rules["script-src"] == "'self'"
    assert rules["frame-ancestors"] == "'none'"
    assert "unsafe" not in policy


@pytest.mark.parametrize(
    "path",
    [
        "letter.txt",
        "../letter.txt",
        "..%2fletter.txt",
        "files/../../letter.txt",
        "files/%2e%2e%2fletter.txt",
        "mine.block",
    ],
)
def test_no_other_file_can_be_read(file: Path, path: str) -> None:
    answer = ask(file, f"/{WORD}/{path}")

    assert answer.status_code == 404
    assert "private" not in answer.text


def test_names_that_look_like_markup_are_text(file: Path) -> None:
    shown = ask(file, f"/{WORD}/data").json()["shown"]

    assert shown["name"] == "</svg><img src=x onerror=alert(1)>"  # as JSON; the page's script sets it as text
    assert "<img" not in shown["svg"]
    assert "<script" not in shown["svg"]


@pytest.mark.parametrize(
    "body",
    ["", "x" * 100_000, "[]", '{"file": 1, "line": 1}', '{"file": "x"}', '{"file": "x", "line": "1"}', "{" * 5000],
)
def test_what_is_no_cursor_is_refused(file: Path, body: str) -> None:
    assert ask(file, f"/{WORD}/cursor", "POST", body).status_code == 400


ODD_CHOICES = (
    "item=999",
    "item=-1",
    "item=x",
    "size=0 in",
    "size=1/0 in",
    "size=1e9999 in",
    "size=9 ell",
    "colourway=No",
    "setting=heap",
)


@pytest.mark.parametrize("query", ODD_CHOICES)
def test_odd_choices_still_show_the_block(file: Path, query: str) -> None:
    answer = ask(file, f"/{WORD}/data?{query}")

    assert answer.status_code == 200
    assert answer.json()["shown"]["name"].startswith("</svg>")
    assert ask(file, f"/{WORD}/frame?{query}&frame=99999").status_code == 200


@pytest.fixture
def preview(file: Path) -> Iterator[Preview]:
    """The real thing, at a port of its own."""
    served = Preview(file)
    serving = Thread(target=served.run, daemon=True)
    serving.start()
    yield served
    served.stop()
    serving.join(timeout=10)
    assert not serving.is_alive()


def test_it_listens_on_this_machine_alone_at_an_address_that_nobody_can_guess(preview: Preview) -> None:
    assert preview.address.startswith("http://127.0.0.1:")
    word = preview.address.rstrip("/").rpartition("/")[2]
    assert len(word) >= 20
    assert preview._socket.getsockname()[0] == "127.0.0.1"


def test_a_save_wakes_the_page_and_a_page_that_is_open_does_not_keep_it_alive(preview: Preview, file: Path) -> None:
    with httpx.stream("GET", f"{preview.address}events", timeout=30) as answer:
        lines = (line for line in answer.iter_lines() if line.startswith("data:"))
        assert next(lines) == "data: 0"
        file.write_text(BLOCK.replace("6 in", "9 in"), encoding="utf-8")
        assert next(lines) == "data: 1"
        assert httpx.get(f"{preview.address}data").json()["shown"]["size"] == "9 × 9 in"
        preview.typed(BLOCK.replace("6 in", "7 in"))
        assert next(lines) == "data: 2"
        assert httpx.get(f"{preview.address}data").json()["shown"]["size"] == "7 × 7 in"
        preview.moved(str(file), 7)
        assert next(lines) == "data: 3"
        lit = [patch["lit"] for patch in httpx.get(f"{preview.address}data").json()["shown"]["patches"]]
        assert lit == [False, False, True, True]
        preview.stop()
