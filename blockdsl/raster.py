"""Pictures of pixels, ready for any page: upright, without anything said of where and when they were taken.

Photographs are JPEG; what came as PNG stays without loss.
"""

from __future__ import annotations

import warnings
from functools import lru_cache
from hashlib import sha256
from io import BytesIO
from typing import TYPE_CHECKING, Final, Literal

from msgspec import Struct

if TYPE_CHECKING:
    from PIL.Image import Image

MOST_BYTES: Final = 40 << 20
"""Of a file; a photograph of 50 million pixels has about half of it."""
_MOST_PIXELS: Final = 120_000_000
_QUALITY: Final = 88
Form = Literal["jpeg", "png"]


class NotAPicture(ValueError):
    """The file is no picture that can be printed; the message says why, in words for the user."""


class Raster(Struct, frozen=True, eq=False):
    """A JPEG or PNG file in the colours of a screen, without transparency; two are the same when their digests are."""

    digest: str
    data: bytes
    form: Form
    width_px: int
    height_px: int

    def __eq__(self, other: object) -> bool:
        """By the digest."""
        return self.digest == other.digest if isinstance(other, Raster) else NotImplemented

    def __hash__(self) -> int:
        """Equal for equal files."""
        return hash(self.digest)

    def __repr__(self) -> str:
        """Without the bytes: keys of caches are made of it."""
        return f"Raster({self.digest!r}, {self.width_px}, {self.height_px})"

    @property
    def ratio(self) -> float:
        """Its width over its height."""
        return self.width_px / self.height_px


@lru_cache(maxsize=32)
def read_raster(data: bytes, most_px: tuple[int, int]) -> Raster:
    """The picture in the bytes of a JPEG or PNG file, made smaller until it fits into a box of pixels.

    It is turned as the camera was held. Nothing else of what the file says beside its pixels is kept: cameras write
    there where the maker lives. Transparent parts are white, as the paper is.

    Errors: NotAPicture for another kind of file, a damaged one, and one of too many pixels.
    """
    from PIL import Image  # noqa: PLC0415 - for files with pictures alone

    form, flat = _opened(data)
    flat.thumbnail(most_px, Image.Resampling.LANCZOS)
    written = BytesIO()
    if form == "png":
        flat.save(written, "PNG", optimize=True)
    else:
        flat.save(written, "JPEG", quality=_QUALITY, optimize=True)
    file = written.getvalue()
    return Raster(sha256(file).hexdigest(), file, form, *flat.size)


def _opened(data: bytes) -> tuple[Form, Image]:
    """The picture upright, in red, green, and blue, on white where it is transparent; and what file it was.

    Errors: NotAPicture.
    """
    from PIL import Image, ImageOps, UnidentifiedImageError  # noqa: PLC0415 - as above

    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error")
            opened = Image.open(BytesIO(data), formats=("JPEG", "PNG"))
            size = opened.size
            upright = ImageOps.exif_transpose(opened) if size[0] * size[1] <= _MOST_PIXELS else None
            if upright is not None and (upright.mode in ("RGBA", "LA", "PA") or "transparency" in upright.info):
                ground = Image.new("RGBA", upright.size, (255, 255, 255, 255))
                upright = Image.alpha_composite(ground, upright.convert("RGBA"))
            flat = None if upright is None else upright.convert("RGB")
    except UnidentifiedImageError:
        raise NotAPicture("it is neither a JPEG nor a PNG file") from None
    except Exception:  # noqa: BLE001 - whatever a damaged file does to the library that reads it
        raise NotAPicture("the file is damaged") from None
    if flat is None:
        raise NotAPicture(f"it has {size[0]} × {size[1]} pixels")
    return ("png" if opened.format == "PNG" else "jpeg"), flat


def pixels_of(raster: Raster) -> bytes:
    """Its pixels from the top left, row by row, three bytes each."""
    from PIL import Image  # noqa: PLC0415

    return Image.open(BytesIO(raster.data)).convert("RGB").tobytes()
