"""Putting a book together: its blocks found in this file or another, laid out at each size; its words read."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from msgspec import Struct, field

from blockdsl.analysis.fixes import did_you_mean
from blockdsl.analysis.maker_choices import read_language, read_maker, read_pressing, report_choices
from blockdsl.analysis.place import Placer
from blockdsl.analysis.quilt import Designs, QuiltReader
from blockdsl.analysis.reading import CannotRead, Reader
from blockdsl.analysis.resize import block_at_width, design_at_all_sizes, measured
from blockdsl.analysis.scope import Scope, bring_in
from blockdsl.diagnostics import Fix, Problems, Span, change_to, nearest_word
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, QuiltDesign
from blockdsl.model.book import SHEETS, BlockInBook, BookDesign, ChapterDesign, QuiltInBook, WordsInBook
from blockdsl.syntax import ast

_NARROWEST_ROLL: Final = {"in": 9, "cm": 22, "mm": 220}
_WIDEST_ROLL: Final = {"in": 200, "cm": 508, "mm": 5080}
_UNPRINTABLE: Final = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u2028-\u202e\u2060-\u2069\ufff9-\ufffb\ufffe\uffff\ud800-\udfff]"
)

_Declared = tuple[ast.BlockDeclaration, BlockDesign]


class _Chapter(Struct):
    """A chapter while it is read."""

    title: str
    items: list[WordsInBook | BlockInBook | QuiltInBook] = field(default_factory=list)


class Shelf:
    """The books and quilts of a file.

    `quilts` are its own and those of other files that its books print; `brought_in` are blocks of other files that
    quilts and books use, `texts` the files of words.
    """

    def __init__(self, names: Scope, placer: Placer, reader: Reader, problems: Problems) -> None:
        """`placer` lays the file's own blocks."""
        self.brought_in: list[_Declared] = []
        self.quilts: list[tuple[ast.QuiltDeclaration, QuiltDesign]] = []
        self.texts: list[str] = []
        self._names = names
        self._reader = reader
        self._problems = problems
        self._scopes: dict[str, tuple[Scope, Placer]] = {names.main.source.name: (names, placer)}
        self._known: dict[int, BlockDesign | None] = {}
        self._sized: dict[tuple[int, str, Fraction], BlockDesign | None] = {}
        self._quilts: dict[int, QuiltDesign | None] = {}

    def know(self, declaration: ast.BlockDeclaration, design: BlockDesign | None) -> None:
        """Keep a block of the file itself, laid at its own size; None when it has errors."""
        self._known[id(declaration)] = design

    def books(self) -> tuple[BookDesign, ...]:
        """All books, in order. What is wrong with one is reported, and its other parts are kept."""
        seen: dict[str, Span] = {}
        books = []
        for declaration in self._names.main.declarations:
            if isinstance(declaration, ast.BookDeclaration):
                name = declaration.name
                if name.text in seen:
                    related = ((seen[name.text], "first declared here"),)
                    advice = "give one of them another title"
                    self._report("name-twice", name.span, advice, related, kind="book", name=name.text)
                seen.setdefault(name.text, name.span)
                books.append(self._book(declaration))
        return tuple(books)

    def _report(
        self,
        code: str,
        span: Span,
        advice: str | None,
        related: tuple[tuple[Span, str], ...] = (),
        fixes: tuple[Fix, ...] = (),
        **values: str,
    ) -> None:
        self._problems.report(code, span, help=advice, related=related, fixes=fixes, **values)

    def _book(self, book: ast.BookDeclaration) -> BookDesign:
        report_choices(book.lines, self._problems)
        author, subtitle, paper, techniques = "", "", "letter", False
        chapters = [_Chapter("")]
        for line in book.lines:
            match line:
                case ast.By(maker=maker):
                    author = author or maker.text
                case ast.Subtitle(text=text):
                    subtitle = subtitle or text.text
                case ast.Paper():
                    paper = self._paper(line)
                case ast.Techniques():
                    techniques = True
                case ast.Chapter(title=title):
                    chapters.append(_Chapter(title.text))
                case _:
                    chapters[-1].items += self._item(line)
        if not any(isinstance(line, ast.BookBlock | ast.BookQuilt | ast.UnreadableLine) for line in book.lines):
            advice = 'name one, for example `block "Harbour Light" sizes 6 12 in`'
            self._report("book-without-blocks", book.name.span, advice, name=book.name.text)
        kept = tuple(ChapterDesign(part.title, tuple(part.items)) for part in chapters if part.title or part.items)
        pressing, language = read_pressing(book.lines), read_language(book.lines)
        said = book.name.text, book.name.span, author, paper, kept, techniques, pressing, language
        return BookDesign(*said, read_maker(book.lines), subtitle)

    def _item(self, line: ast.BookLine) -> Sequence[WordsInBook | BlockInBook | QuiltInBook]:
        """What the line puts into its chapter."""
        match line:
            case ast.BookText(path=path):
                return self._words(path)
            case ast.BookBlock():
                return self._block(line)
            case ast.BookQuilt():
                return self._quilt(line)
        return ()

    # --- paper and words -----------------------------------------------------------------------

    def _paper(self, line: ast.Paper) -> str:
        """The paper's name as the list of papers has it; Letter when it is unknown, which is reported."""
        name, width = line.name.text.lower(), line.width
        if name == "roll" and width is not None:
            if _NARROWEST_ROLL[width.unit] <= width.value <= _WIDEST_ROLL[width.unit]:
                unit = "in" if width.unit == "in" else "cm"
                across = width.value / 10 if width.unit == "mm" else width.value
                return f"roll {float(across):g} {unit}"
            advice = "a roll is from 9 in (22 cm) to 200 in (508 cm) wide"
            self._report("paper-unknown", width.span, advice, name=f"roll {width.span.text}")
        elif name == "roll":
            self._report("paper-unknown", line.name.span, "say how wide it is: `paper roll 36 in`", name=name)
        elif name not in SHEETS:
            near = nearest_word(name, SHEETS)
            advice = f"did you mean `{near}`?" if near else f"there are {', '.join(SHEETS)}, and `roll 36 in`"
            self._report(
                "paper-unknown", line.name.span, advice, fixes=did_you_mean(line.name, near), name=line.name.text
            )
        elif width is not None:
            fixes = (change_to(line.span, f"paper {name}", sure=True),)
            self._report(
                "paper-unknown", line.span, f"write `paper {name}`", fixes=fixes, name=f"{name} {width.span.text}"
            )
        else:
            return name
        return "letter"

    def _words(self, path: ast.Text) -> list[WordsInBook]:
        """The words of a file, or nothing when it cannot be read."""
        try:
            source = self._reader.used(path.text, self._names.main.source.name)
        except CannotRead as fault:
            self._problems.report(
                fault.code, path.span, help=fault.help, related=(), fixes=did_you_mean(path, fault.near), **fault.values
            )
            return []
        self.texts.append(source.name)
        text = source.text.replace("\r\n", "\n").replace("\r", "\n").expandtabs(4)
        bad = _UNPRINTABLE.search(text)
        if bad:
            place = source.text.find(bad.group())
            span, name = Span(source, place, place + 1), f"U+{ord(bad.group()):04X}"
            self._report("control-character", span, "delete it, or type the line again", name=name)
            return []
        return [WordsInBook(path.text, text)]

    # --- quilts ------------------------------------------------------------------------------

    def set_quilts(self) -> None:
        """Set the file's own quilts, in order; those of other files are set when a book asks for them."""
        for declaration in self._names.main.declarations:
            if isinstance(declaration, ast.QuiltDeclaration):
                self._quilt_design(declaration)

    def _quilt(self, line: ast.BookQuilt) -> list[QuiltInBook]:
        """The quilt, or nothing when it is unknown or has errors."""
        declaration = self._names.quilts.get(line.name.text)
        if declaration is None:
            if not self._names.incomplete:
                near = nearest_word(line.name.text, self._names.quilts)
                advice = f'did you mean "{near}"?' if near else "bring its file in with a `use` line, or set it here"
                fixes = did_you_mean(line.name, near)
                self._report("name-unknown", line.name.span, advice, fixes=fixes, kind="quilt", name=line.name.text)
            return []
        design = self._quilt_design(declaration)
        return [] if design is None else [QuiltInBook(design)]

    def _quilt_design(self, quilt: ast.QuiltDeclaration) -> QuiltDesign | None:
        if id(quilt) not in self._quilts:
            names, placer = self.scope(quilt)
            designs = Designs(names, placer, self.block_of_quilt, self._problems)
            design = QuiltReader(quilt, names, designs, self._problems).design()
            self._quilts[id(quilt)] = design
            if design is not None:
                self.quilts.append((quilt, design))
        return self._quilts[id(quilt)]

    # --- blocks --------------------------------------------------------------------------------

    def _block(self, line: ast.BookBlock) -> list[BlockInBook]:
        """The block at its sizes, or nothing when it is unknown or has errors."""
        declaration = self._names.blocks.get(line.name.text)
        if declaration is None:
            if not self._names.incomplete:
                near = nearest_word(line.name.text, self._names.blocks)
                advice = f'did you mean "{near}"?' if near else "bring its file in with a `use` line, or draw it here"
                fixes = did_you_mean(line.name, near)
                self._report("name-unknown", line.name.span, advice, fixes=fixes, kind="block", name=line.name.text)
            return []
        design = self._at_own_size(declaration)
        if design is None:
            return []
        sizes: dict[tuple[str, Fraction], BlockDesign] = {}
        for width in line.widths:
            key = measured(width)
            if key in sizes:
                self._report("setting-twice", width.span, "leave one of them out", what=f"{width.span.text}")
            elif key == (design.unit, design.width):
                sizes[key] = design
            else:
                found = self._at_width(declaration, width, design)
                sizes |= {} if found is None else {key: found}
        own = (design, *design.sizes)
        return [BlockInBook(design.name, tuple(sizes.values()) or own)]

    def block_of_quilt(self, block: ast.BlockDeclaration, width: ast.LengthLiteral | None) -> BlockDesign | None:
        """A block at its own size or so wide, for a quilt; None when it has errors, which are reported."""
        block = self._as_first_read(block)
        own = self._at_own_size(block)
        if own is None or width is None or measured(width) == (own.unit, own.width):
            return own
        return self._at_width(block, width, own)

    def _as_first_read(self, block: ast.BlockDeclaration) -> ast.BlockDeclaration:
        """The very declaration that this file brings in: another file's names hold it from a reading of their own."""
        place = block.span.source.name, block.span.start
        return next(
            known
            for file in self._names.files
            for known in file.declarations
            if isinstance(known, ast.BlockDeclaration) and (known.span.source.name, known.span.start) == place
        )

    def _at_width(self, block: ast.BlockDeclaration, width: ast.LengthLiteral, own: BlockDesign) -> BlockDesign | None:
        asked = (id(block), *measured(width))
        if asked not in self._sized:
            names, placer = self.scope(block)
            self._sized[asked] = block_at_width(block, width, own, names, placer, self._problems)
        return self._sized[asked]

    def scope(self, declared: ast.BlockDeclaration | ast.QuiltDeclaration) -> tuple[Scope, Placer]:
        """The names that a block's own file knows, its fabrics recoloured by those that this file declares itself.

        Two files may call different units `corner`; each block, and each quilt, keeps those of its file.
        """
        file = next(file for file in self._names.files if file.source is declared.span.source)
        if file.source.name not in self._scopes:
            names = bring_in(file, self._reader, self._names.memory)
            for declaration in self._names.main.declarations:
                if isinstance(declaration, ast.FabricDeclaration) and declaration.name.text in names.fabrics:
                    names.fabrics[declaration.name.text] = self._names.fabrics[declaration.name.text]
            self._scopes[file.source.name] = names, Placer(names, self._problems)
        return self._scopes[file.source.name]

    def _at_own_size(self, block: ast.BlockDeclaration) -> BlockDesign | None:
        if id(block) not in self._known:
            names, placer = self.scope(block)
            design = design_at_all_sizes(block, names, placer, self._problems)
            self._known[id(block)] = design
            if design is not None:
                self.brought_in.append((block, design))
        return self._known[id(block)]
