"""Pictures of pixels in a block's steps: what is printed of a file, and what is not."""

from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image
from pypdf import PdfReader
from pypdf.generic import DictionaryObject

from blockdsl.raster import NotAPicture, pixels_of, read_raster
from tests.unit.cli.pinwheel import PINWHEEL, Run

PLACE_OF_A_CAMERA = 0x8825
MAKE = 0x010F
ORIENTATION = 0x0112
LINES = '  picture "foot.jpg" "The pair after trimming" at half\n  picture "foot.jpg" "The block on my wall"\n'


def photograph(path: Path, size: tuple[int, int] = (3000, 2000), orientation: int = 1) -> None:
    """A JPEG file whose upper left quarter is red, with a camera's remarks in it."""
    picture = Image.new("RGB", size, "#3a4750")
    picture.paste("#c02020", (0, 0, size[0] // 2, size[1] // 2))
    told = Image.Exif()
    told[MAKE] = "Ann's own camera"
    told[ORIENTATION] = orientation
    told[PLACE_OF_A_CAMERA] = {1: "N", 2: (54.0, 35.0, 1.0)}
    picture.save(path, quality=95, exif=told)


@pytest.fixture
def built(folder: Path, run: Run) -> Path:
    """The outputs of a block with a picture in a step and above, and of a book of it at two sizes."""
    photograph(folder / "foot.jpg")
    book = '\nbook "Shores"\n  block "Pinwheel" sizes 6 9 in\n'
    (folder / "pinwheel.block").write_text(PINWHEEL.rstrip("\n") + "\n" + LINES + book, encoding="utf-8")
    ended = run("build", "pinwheel.block", "-o", "out")
    assert (ended.status, ended.told) == (0, "")
    return folder / "out"


def test_a_picture_is_in_the_file_once_at_300_dots_to_the_inch_at_most(built: Path) -> None:
    """By the numbers of the file itself: pixels over the size at which the page shows them."""
    for name in ("pinwheel.sheet.pdf", "shores.pdf"):
        document = PdfReader(built / name)
        shown = [image for page in document.pages for image in page.images]
        assert len({str(image.indirect_reference) for image in shown}) == 1
        picture = Image.open(BytesIO(shown[0].data))
        assert picture.width / picture.height == pytest.approx(3 / 2, abs=0.01)
        assert picture.width <= 254 / 72 * 300 + 2
    contents = (page.get_contents() for page in PdfReader(built / "pinwheel.sheet.pdf").pages)
    drawn = [stream.get_data().decode("latin-1") for stream in contents if stream is not None]
    assert sum(page.count(" Do\n") for page in drawn) == 2


def test_where_and_by_what_a_picture_was_taken_stays_at_home(built: Path) -> None:
    written = b"".join(path.read_bytes() for path in built.rglob("*") if path.is_file())
    assert b"Ann's own camera" not in written
    assert b"Exif" not in written
    for image in PdfReader(built / "pinwheel.sheet.pdf").pages[0].images:
        assert dict(Image.open(BytesIO(image.data)).getexif()) == {}


def test_a_picture_says_what_it_shows_to_those_who_do_not_see_it(built: Path) -> None:
    page = (built / "shores.web" / "pinwheel.html").read_text("utf-8")
    assert page.count('aria-label="The pair after trimming"') >= 1
    assert page.count('aria-label="The block on my wall"') == 1
    assert "data:image/jpeg;base64," in page
    assert {"The pair after trimming", "The block on my wall"} <= _alternatives(built / "pinwheel.sheet.pdf")


def _alternatives(path: Path) -> set[str]:
    """All alternative texts of a tagged file."""
    document = PdfReader(path)
    numbers = range(1, int(str(document.trailer["/Size"])))
    told = (each for each in map(document.get_object, numbers) if isinstance(each, DictionaryObject))
    return {str(each["/Alt"]) for each in told if "/Alt" in each}


def test_a_picture_is_turned_as_the_camera_was_held() -> None:
    """Exif 2.32, table 4: with orientation 6 the first row of the file is at the right."""
    held = BytesIO()
    picture = Image.new("RGB", (40, 20), "#000000")
    picture.paste("#ff0000", (0, 0, 20, 10))
    told = Image.Exif()
    told[ORIENTATION] = 6
    picture.save(held, "PNG", exif=told)
    raster = read_raster(held.getvalue(), (100, 100))
    assert (raster.width_px, raster.height_px) == (20, 40)
    pixels = pixels_of(raster)
    assert pixels[(0 * 20 + 19) * 3 :][:3] == b"\xff\x00\x00"  # upper right
    assert pixels[(0 * 20 + 0) * 3 :][:3] == b"\x00\x00\x00"  # upper left


def test_what_is_transparent_is_white() -> None:
    held = BytesIO()
    Image.new("RGBA", (3, 3), (10, 20, 30, 0)).save(held, "PNG")
    assert set(pixels_of(read_raster(held.getvalue(), (100, 100)))) == {255}


def test_a_small_picture_is_not_made_larger() -> None:
    held = BytesIO()
    Image.new("RGB", (30, 20)).save(held, "PNG")
    raster = read_raster(held.getvalue(), (1060, 710))
    assert (raster.width_px, raster.height_px) == (30, 20)


def test_the_pictures_file_is_watched_and_a_change_of_it_is_seen(folder: Path, run: Run) -> None:
    photograph(folder / "foot.jpg")
    (folder / "pinwheel.block").write_text(PINWHEEL.rstrip("\n") + "\n" + LINES, encoding="utf-8")
    told = ("build", "pinwheel.block", "-o", "out", "--only", "sheet", "--cache", "kept", "--depfile", "rules.d")
    assert run(*told).status == 0
    before = (folder / "out" / "pinwheel.sheet.pdf").read_bytes()
    assert "foot.jpg" in (folder / "rules.d").read_text("utf-8")
    photograph(folder / "foot.jpg", (2000, 3000))
    assert run(*told).status == 0
    assert (folder / "out" / "pinwheel.sheet.pdf").read_bytes() != before


@pytest.mark.parametrize(
    ("data", "why"),
    [
        (b"", "it is neither a JPEG nor a PNG file"),
        (b"<svg xmlns='http://www.w3.org/2000/svg'/>", "it is neither a JPEG nor a PNG file"),
        (b"GIF89a\x01\x00\x01\x00\x00\x00\x00;", "it is neither a JPEG nor a PNG file"),
        (b"\x89PNG\r\n\x1a\n" + b"\x00" * 40, "it is neither a JPEG nor a PNG file"),
        (b"\xff\xd8\xff\xe0" + b"\x00" * 400, "it is neither a JPEG nor a PNG file"),
    ],
)
def test_a_file_that_is_no_picture_is_told_and_nothing_is_written(
    folder: Path, run: Run, data: bytes, why: str
) -> None:
    (folder / "foot.jpg").write_bytes(data)
    (folder / "pinwheel.block").write_text(PINWHEEL.rstrip("\n") + "\n" + LINES, encoding="utf-8")
    ended = run("build", "pinwheel.block", "-o", "out")
    assert ended.status == 1
    assert ended.told.count("error[") == 1
    assert "error[picture-unreadable]" in ended.told
    assert why in ended.told
    assert not (folder / "out").exists()


def test_a_picture_cut_off_in_the_middle_is_damaged(tmp_path: Path) -> None:
    photograph(tmp_path / "foot.jpg")
    data = (tmp_path / "foot.jpg").read_bytes()
    with pytest.raises(NotAPicture, match="damaged"):
        read_raster(data[: len(data) // 2], (1060, 710))


def test_a_picture_of_too_many_pixels_is_refused_before_it_is_unpacked() -> None:
    """A file of a few kilobytes may hold a picture of gigabytes."""
    held = BytesIO()
    Image.new("1", (20_000, 20_000)).save(held, "PNG")
    with pytest.raises(NotAPicture):
        read_raster(held.getvalue(), (1060, 710))


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ('picture "feet.jpg" "Words"', "use-missing"),
        ('picture "../foot.jpg" "Words"', "use-leaves-project"),
        ('picture "/etc/passwd" "Words"', "use-leaves-project"),
        ('picture "." "Words"', "file-unreadable"),
        ('picture "foot.jpg"', "line-ends-early"),
        ('picture "foot.jpg" "Words" at halves', "name-unknown"),
        ('picture "foot.jpg" Words', "word-unexpected"),
    ],
)
def test_a_picture_line_that_cannot_be_is_told_once(folder: Path, run: Run, line: str, code: str) -> None:
    photograph(folder / "foot.jpg", (30, 20))
    (folder / "pinwheel.block").write_text(PINWHEEL.rstrip("\n") + f"\n  {line}\n", encoding="utf-8")
    ended = run("check", "pinwheel.block")
    assert ended.status == 1
    assert ended.told.count("error[") == 1
    assert f"error[{code}]" in ended.told, ended.told
