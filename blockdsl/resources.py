"""Finds the files that are not code: the grammar, the library of blocks, the pages about problems, the fonts.

In the source tree the grammars and the library lie at the top level, and the pages about problems in the language's
reference, where people read and edit them; in an installed wheel they lie inside the package under `_data`. Nothing
else knows of the places.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

_PACKAGE = Path(__file__).parent
_PLACES = (_PACKAGE / "_data", _PACKAGE / "_data" / "spec", _PACKAGE.parent, _PACKAGE.parent / "tests" / "spec")


@cache
def _folder(name: str) -> Path:
    for place in _PLACES:
        if (place / name).is_dir():
            return place / name
    message = f"the installation is incomplete: the folder {name!r} is missing"
    raise FileNotFoundError(message)


@cache
def grammar_text(name: str) -> str:
    """The text of the grammar `name`, for example `line`.

    Errors: FileNotFoundError when blockdsl is not installed whole.
    """
    return (_folder("grammars") / f"{name}.lark").read_text(encoding="utf-8")


def grammar_folder() -> Path:
    """The folder of the grammars."""
    return _folder("grammars")


def library_folder() -> Path:
    """The folder of the block files that come with blockdsl."""
    return _folder("library")


def library_names() -> tuple[str, ...]:
    """Names that `use library` knows, in order: the path below the library's folder, without its ending."""
    top = library_folder()
    return tuple(sorted(path.relative_to(top).with_suffix("").as_posix() for path in top.rglob("*.block")))


def library_path(name: str) -> Path:
    """The file of the library `name`; it exists when the name is one of `library_names()`."""
    return library_folder() / f"{name}.block"


def problem_page(code: str) -> str:
    """The page of the reference about a problem of the catalogue, as Markdown."""
    return (_folder("problems") / f"{code}.md").read_text(encoding="utf-8")


def problem_page_path(code: str) -> Path:
    """Where that page lies."""
    return _folder("problems") / f"{code}.md"


def documentation_folder() -> Path:
    """The folder of the reference's pages, with those about problems below it."""
    return _folder("problems").parent


def font_path(name: str) -> Path:
    """The file `name` among the fonts that come with blockdsl, for example `FiraGO-Regular.ttf`."""
    return _PACKAGE / "fonts" / name
