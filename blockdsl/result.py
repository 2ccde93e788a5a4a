"""The public way in: `blockdsl.load` reads a file and gives what came of it, to be looked at, drawn and written.

What a quilter gets wrong is in `Result.problems` and never raises; of a file with errors nothing is written.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Final, Generic, Literal, TypeVar, overload

from msgspec import Struct

from blockdsl.analysis.inputs import Input, open_input
from blockdsl.diagnostics import Diagnostic, Problems, Source, nearest_word, render_text, summary
from blockdsl.export.files import identities
from blockdsl.export.output_folder import OutputFolder, Refused
from blockdsl.pipeline import Worked, work_through
from blockdsl.printing import (
    USUAL_MARGIN_MM,
    USUAL_PAPER,
    FullSize,
    Print,
    as_book,
    book_document,
    creation_date,
    facts_text,
    full_size_pdf,
    gallery_svg,
    parts_at_full_size,
    pdf_bytes,
    picture_svg,
    quilt_pdf,
    sheet_pdf,
    site_files,
    too_large,
)

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts, BookFacts, FileFacts, QuiltFacts
    from blockdsl.model.language import Language

PictureKind = Literal["colour", "letters", "grid", "cutting"]
"""A picture of a block: in colour, with the letters of its patches, on its grid, or its cutting table."""

TEXT: Final = "<text>"
"""What a text that comes from no file is called in problems."""

_PAGES: Final[dict[PictureKind, str]] = {
    "colour": "colour_page",
    "letters": "letters_page",
    "grid": "grid_page",
    "cutting": "cutting_page",
}
_MAKER: Final = "<python>"
_SITE_MAKER: Final = "<python site>"
"""Who has written a file, in the record of its folder: no file alone declares it, and a build leaves it alone."""


class HasErrors(ValueError):
    """The file has errors, so nothing is made of it; the words are those of `blockdsl check`."""


def load(file: str | os.PathLike[str], *, language: Language | None = None) -> Result:
    """Read a block file, or a text, all the way to its numbers.

    `file` is a path, or the text itself when it has more than one line; what a text uses is looked for from the
    current folder. `language` is what all pages are in, whatever the file says: `en-US`, `en-GB`, `de` or `fr`.

    Errors: none for what is wrong with the file, or when it cannot be read: that is in `problems`.
    """
    if isinstance(file, str) and ("\n" in file or "\r" in file):
        origin = Input(Source(TEXT, file), None, Problems(), readable=True)
    else:
        origin = open_input(str(Path(file)))
    return Result(work_through(origin, language=language))


_Made = TypeVar("_Made", "Block", "Quilt", "Book")


class ByName(Sequence[_Made], Generic[_Made]):
    """What a file declares, in its order: by place, `blocks[0]`, or by name, `blocks["Pinwheel"]`."""

    def __init__(self, made: Sequence[_Made], what: str) -> None:
        """`what` is the word for one of them in messages."""
        self._made: tuple[_Made, ...] = tuple(made)
        self._what = what

    @property
    def names(self) -> tuple[str, ...]:
        """The names in their order."""
        return tuple(each.name for each in self._made)

    @overload
    def __getitem__(self, key: int | str) -> _Made: ...

    @overload
    def __getitem__(self, key: slice) -> tuple[_Made, ...]: ...

    def __getitem__(self, key: int | str | slice) -> _Made | tuple[_Made, ...]:
        """Errors: KeyError for a name that is not there, with the nearest one that is; IndexError."""
        if not isinstance(key, str):
            return self._made[key]
        for each in self._made:
            if each.name == key:
                return each
        near = nearest_word(key, self.names)
        raise KeyError(f"there is no {self._what} {key!r}" + (f"; did you mean {near!r}?" if near else ""))

    def __len__(self) -> int:
        """How many."""
        return len(self._made)

    def __repr__(self) -> str:
        """The names."""
        return f"<{self._what}s: {', '.join(self.names)}>"


class Block(Struct, frozen=True):
    """One block: `facts` are its numbers, and it can be drawn, printed and written."""

    facts: BlockFacts
    _desk: Desk

    @property
    def name(self) -> str:
        """As the file has it."""
        return self.facts.name

    def svg(self, picture: PictureKind = "colour", *, colourway: str | None = None) -> str:
        """The picture as an SVG text; `colourway` is the name of one that the block has.

        Errors: KeyError for a colourway that the block does not have.
        """
        plan = None
        if colourway is not None:
            plan = next((each for each in self.facts.colourways if each.name == colourway), None)
            if plan is None:
                near = nearest_word(colourway, [each.name for each in self.facts.colourways])
                raise KeyError(f"there is no colourway {colourway!r}" + (f"; did you mean {near!r}?" if near else ""))
        with self._desk.at_work():
            about = "" if picture == "colour" else picture
            return picture_svg(_PAGES[picture], self.facts, about, plan).decode()

    def write_svg(
        self, path: str | os.PathLike[str], picture: PictureKind = "colour", *, colourway: str | None = None
    ) -> Path:
        """Write the picture; the errors are those of `svg` and of `Result.write_pdf`."""
        return self._desk.write(Path(path), lambda: self.svg(picture, colourway=colourway).encode())

    def write_pdf(
        self,
        path: str | os.PathLike[str],
        part: Literal["sheet"] | FullSize = "sheet",
        *,
        paper: str = USUAL_PAPER,
        margin_mm: float = USUAL_MARGIN_MM,
    ) -> Path:
        """Write the pattern sheet, or the templates, foundation papers or papers for folding at full size.

        Errors: ValueError for a paper that is not known, for papers that the block does not have, and for what is too
        large for any page; besides those of `Result.write_pdf`.
        """

        def make() -> bytes:
            printed = self._desk.printed(paper, margin_mm)
            if part == "sheet":
                return sheet_pdf(self.facts, printed)
            if part not in parts_at_full_size(self.facts):
                raise ValueError(f"nothing in {self.name} is made with {part}")
            if found := too_large(part, self.facts):
                raise ValueError(f"{part} of {self.name} are too large for a page: {', '.join(found)}")
            return full_size_pdf(part, self.facts, printed)

        return self._desk.write(Path(path), make)

    def _repr_svg_(self) -> str:
        """The block in colour, for notebooks."""
        return self.svg()

    def __repr__(self) -> str:
        """Its name."""
        return f"<block {self.name}>"


class Quilt(Struct, frozen=True):
    """One quilt: `facts` are its numbers, and it can be drawn, printed and written."""

    facts: QuiltFacts
    _desk: Desk

    @property
    def name(self) -> str:
        """As the file has it."""
        return self.facts.name

    def svg(self, picture: Literal["colour", "rows"] = "colour") -> str:
        """The quilt in colour, or its rows drawn apart, as an SVG text."""
        with self._desk.at_work():
            if picture == "rows":
                return picture_svg("rows_page", self.facts, "rows").decode()
            return picture_svg("quilt_page", self.facts).decode()

    def write_svg(self, path: str | os.PathLike[str], picture: Literal["colour", "rows"] = "colour") -> Path:
        """Write the picture; the errors are those of `Result.write_pdf`."""
        return self._desk.write(Path(path), lambda: self.svg(picture).encode())

    def write_pdf(self, path: str | os.PathLike[str], *, paper: str = USUAL_PAPER) -> Path:
        """Write the quilt's sheets; the errors are those of `Result.write_pdf`."""
        return self._desk.write(Path(path), lambda: quilt_pdf(self.facts, self._desk.printed(paper)))

    def _repr_svg_(self) -> str:
        """The quilt in colour, for notebooks."""
        return self.svg()

    def __repr__(self) -> str:
        """Its name."""
        return f"<quilt {self.name}>"


class Book(Struct, frozen=True):
    """One book: `facts` are its chapters with the numbers of all that is in them."""

    facts: BookFacts
    _desk: Desk

    @property
    def name(self) -> str:
        """As the file has it."""
        return self.facts.name

    def write_pdf(self, path: str | os.PathLike[str], *, paper: str | None = None) -> Path:
        """Write the book, on its own paper when none is asked for; the errors are those of `Result.write_pdf`."""

        def make() -> bytes:
            printed = self._desk.printed(paper or self.facts.paper)
            return pdf_bytes(book_document(self.facts, printed), printed)

        return self._desk.write(Path(path), make)

    def write_site(self, folder: str | os.PathLike[str]) -> Path:
        """Write the book as a web site into a folder of its own; the path of its first page.

        Pages of an earlier site there that this one does not have are taken away. The errors are those of
        `Result.write_pdf`.
        """
        return self._desk.write_site(Path(folder), self.facts)

    def __repr__(self) -> str:
        """Its name."""
        return f"<book {self.name}>"


class Result:
    """What came of a file: its numbers, its problems, and its blocks, quilts and books."""

    def __init__(self, worked: Worked) -> None:
        """Made by `load`."""
        self._worked = worked
        self._desk = desk = Desk(worked)
        self.facts: FileFacts = worked.facts
        """All the numbers of the file, exact."""
        self.problems: tuple[Diagnostic, ...] = tuple(worked.origin.problems)
        """All that is wrong, by file, line and column; `report` has it in words."""
        self.blocks: ByName[Block] = ByName([Block(each, desk) for each in self.facts.blocks], "block")
        """The file's own blocks, then those of other files that its quilts and books use."""
        self.quilts: ByName[Quilt] = ByName([Quilt(each, desk) for each in self.facts.quilts], "quilt")
        self.books: ByName[Book] = ByName([Book(each, desk) for each in self.facts.books], "book")

    @property
    def has_errors(self) -> bool:
        """Whether something is wrong that must be put right before anything is made of the file."""
        return self._worked.has_errors

    def report(self) -> str:
        """The problems in words, each with its line and how to fix it, as `blockdsl check` shows them."""
        return self._desk.report()

    def to_json(self) -> str:
        """The numbers and problems as the JSON text that `blockdsl facts` gives."""
        return facts_text(self._worked)

    def write_pdf(self, path: str | os.PathLike[str], *, paper: str | None = None) -> Path:
        """Write what the file is for: its book, its one quilt or block, or a plain book of all of them.

        The path that was written is given back. A file is replaced only when blockdsl wrote it there and nobody has
        changed it since; the folder has a record of that, as every folder of outputs.

        Errors: HasErrors, with nothing written; Refused when a file that is there must not be replaced; ValueError for
        a paper that is not known, when there is nothing to print, or when there are several books; OSError.
        """
        self._desk.refuse_errors()
        book = self._only_book()
        if book is not None:
            return book.write_pdf(path, paper=paper)
        shown = self._only()
        if shown is not None:
            return shown.write_pdf(path, paper=paper or USUAL_PAPER)
        return Book(self._as_book(), self._desk).write_pdf(path, paper=paper)

    def write_svg(self, path: str | os.PathLike[str]) -> Path:
        """Write one picture: the one quilt or block in colour, or all blocks side by side.

        Errors: as `write_pdf`.
        """
        return self._desk.write(Path(path), lambda: self.svg().encode())

    def write_site(self, folder: str | os.PathLike[str]) -> Path:
        """Write the file's book, or all its quilts and blocks, as a web site; the path of its first page.

        Errors: as `write_pdf`.
        """
        self._desk.refuse_errors()
        book = self._only_book()
        return self._desk.write_site(Path(folder), self._as_book() if book is None else book.facts)

    def svg(self) -> str:
        """What `write_svg` writes."""
        self._desk.refuse_errors()
        shown = self._only()
        if shown is not None:
            return shown.svg()
        with self._desk.at_work():
            return gallery_svg(self.facts.blocks, self._as_book().name).decode()

    def _only(self) -> Block | Quilt | None:
        """The one thing that the file is about: its only quilt, or without quilts its only block."""
        made: Sequence[Block | Quilt] = self.quilts or self.blocks
        return made[0] if len(made) == 1 else None

    def _only_book(self) -> Book | None:
        if len(self.books) > 1:
            raise ValueError(f"there are several books; take one of them, such as books[{self.books[0].name!r}]")
        return self.books[0] if self.books else None

    def _as_book(self) -> BookFacts:
        self._desk.refuse_errors()
        if not self.blocks and not self.quilts:
            raise ValueError("there is no block in this file")
        return as_book(self.facts.blocks, self._worked.origin.source.name, USUAL_PAPER, self.facts.quilts)

    def _repr_svg_(self) -> str | None:
        """For notebooks what `write_svg` writes; nothing where there are errors, so that they are read instead."""
        return None if self.has_errors or not self.blocks else self.svg()

    def __repr__(self) -> str:
        """What there is, and below it the problems."""
        made = [repr(each) for each in (self.blocks, self.quilts, self.books) if each]
        told = f"{self._worked.origin.source.name}: {', '.join(made) or 'no blocks'}"
        return f"{told}\n{self.report()}" if self.problems else told


class Desk(Struct, frozen=True):
    """Where the things of one file are drawn and written: with its own font, and never where it must not be."""

    worked: Worked

    def printed(self, paper: str, margin_mm: float = USUAL_MARGIN_MM) -> Print:
        """The printing on that paper. Errors: ValueError for one that is not known."""
        from blockdsl.marks.theme import paper_named

        paper_named(paper)
        return Print(paper, creation_date(os.environ), margin_mm, self.worked.facts.font)

    @contextmanager
    def at_work(self) -> Iterator[None]:
        """Draw with the maker's own font for letters that ours lacks, and in her colour."""
        from blockdsl.marks.typeset import printing_with

        facts = self.worked.facts
        accents = [book.maker.colour for book in facts.books] + [block.maker.colour for block in facts.blocks]
        with printing_with(facts.font, accent=next(iter(accents), "")):
            yield

    def report(self) -> str:
        """The problems in words."""
        problems = self.worked.origin.problems
        return "\n".join((*(render_text(problem, colour=False) for problem in problems), summary(problems)))

    def refuse_errors(self) -> None:
        """Errors: HasErrors."""
        if self.worked.has_errors:
            raise HasErrors(self.report())

    def write(self, path: Path, make: Callable[[], bytes]) -> Path:
        """Make a file and write it, whole or not at all."""
        self.refuse_errors()
        self._refuse_inputs([path])
        with self.at_work():
            data = make()
        OutputFolder(path.parent).write({path.name: data}, _MAKER, {})
        return path

    def write_site(self, folder: Path, book: BookFacts) -> Path:
        """Make a site and write it into its folder; what an earlier site had there and this one has not goes."""
        self.refuse_errors()
        with self.at_work():
            files = site_files(book)
        self._refuse_inputs([folder / name for name in files])
        place = OutputFolder(folder)
        place.write(files, _SITE_MAKER, {})
        gone = [name for name, known in place.known().items() if _SITE_MAKER in known.by and name not in files]
        place.remove(gone, _SITE_MAKER)
        return folder / "index.html"

    def _refuse_inputs(self, paths: Sequence[Path]) -> None:
        read = {identity for source in self.worked.sources for identity in identities(source)}
        for path in paths:
            if not read.isdisjoint(identities(path)):
                raise Refused(path, "is one of the files that were read")
