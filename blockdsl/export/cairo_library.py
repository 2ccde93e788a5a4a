"""The system libraries cairo and FreeType, and our font files as cairo's font faces.

The faces are made from our own bytes through FreeType and never through fontconfig, so that the fonts
of the machine cannot get in.
"""

from __future__ import annotations

from functools import cache
from types import ModuleType
from typing import Any, Final

from blockdsl.fonts import FontWeight, font_bytes

_MEND: Final = "install it: apt install libcairo2, or dnf install cairo, or brew install cairo"
_DECLARATIONS: Final = """
    typedef struct FT_LibraryRec_ *FT_Library;
    typedef struct FT_FaceRec_ *FT_Face;
    int FT_Init_FreeType(FT_Library *library);
    int FT_New_Memory_Face(FT_Library library, const unsigned char *base, long size, long index, FT_Face *face);
    cairo_font_face_t *cairo_ft_font_face_create_for_ft_face(FT_Face face, int load_flags);
"""
_FT_LOAD_NO_HINTING: Final = 2


class CairoMissing(RuntimeError):
    """PNG needs cairocffi and the system library cairo, with FreeType; the message says how to get what is missing."""


@cache
def load_cairo() -> ModuleType:
    """The module cairocffi.

    Errors: CairoMissing when Python has no cairocffi, or the system no libcairo.
    """
    try:
        import cairocffi  # noqa: PLC0415 - it loads the library at once, and everything but PNG works without
    except ImportError as fault:
        message = "the package cairocffi is missing: install it: pip install cairocffi"
        raise CairoMissing(message) from fault
    except OSError as fault:
        message = f"the system library cairo is missing: {_MEND}"
        raise CairoMissing(message) from fault
    else:
        module: ModuleType = cairocffi
        return module


def cairo_version() -> str:
    """The version of the system's cairo, whose images are the same bytes for one version; empty where there is none."""
    try:
        return str(load_cairo().cairo_version_string())
    except CairoMissing:
        return ""


@cache
def _libraries() -> tuple[Any, Any, Any, Any]:
    """The declarations, cairo's and FreeType's functions, and FreeType's own state."""
    cairocffi = load_cairo()
    ffi = type(cairocffi.ffi)()  # cffi's own class, got where it is used already
    ffi.include(cairocffi.ffi)
    ffi.cdef(_DECLARATIONS)
    try:
        freetype = cairocffi.dlopen(
            ffi, ("freetype", "freetype-6"), ("libfreetype.so.6", "libfreetype.6.dylib", "libfreetype-6.dll")
        )
        cairo = cairocffi.dlopen(
            ffi, ("cairo-2", "cairo", "libcairo-2"), ("libcairo.so.2", "libcairo.2.dylib", "libcairo-2.dll")
        )
        create = cairo.cairo_ft_font_face_create_for_ft_face
        state = ffi.new("FT_Library *")
        failed = freetype.FT_Init_FreeType(state)
    except (OSError, AttributeError) as fault:
        message = f"the system library FreeType, or a cairo that knows it, is missing: {_MEND}"
        raise CairoMissing(message) from fault
    if failed:
        message = f"the system library FreeType did not start (its error {failed}): {_MEND}"
        raise CairoMissing(message)
    return ffi, create, freetype, state


@cache
def font_face(weight: FontWeight) -> Any:
    """One weight as a cairocffi FontFace, made once and kept for as long as the program runs.

    Errors: CairoMissing when cairo or FreeType cannot be loaded.
    """
    ffi, create, freetype, state = _libraries()
    cairocffi = load_cairo()
    data = font_bytes(weight)
    kept = ffi.from_buffer("unsigned char[]", data)
    face = ffi.new("FT_Face *")
    failed = freetype.FT_New_Memory_Face(state[0], kept, len(data), 0, face)
    if failed:
        message = f"FreeType cannot read the {weight} font of this package (its error {failed})"
        raise CairoMissing(message)
    pointer = ffi.cast("cairo_font_face_t *", create(face[0], _FT_LOAD_NO_HINTING))
    made = cairocffi.FontFace._from_pointer(cairocffi.ffi.cast("cairo_font_face_t *", pointer), incref=False)  # noqa: SLF001 - the way that cairocffi's own documentation gives
    _KEPT.append((kept, data, face))
    return made


_KEPT: Final[list[Any]] = []
"""FreeType reads the bytes for as long as the face lives, and cairo keeps the face: neither may be freed."""
