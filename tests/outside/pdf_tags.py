"""What a PDF must be to be read aloud as PDF/UA-1 (ISO 14289-1) wants it, looked at with pikepdf.

The rules are those that a program can judge: tags or artifacts round all that is painted, a tree of standard elements
that are nested as ISO 32000-1, 14.8.4 says, tables with as many columns in each row and heads that say what they head,
headings without gaps, figures with words, links with words, fonts with letters, a title and a language.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import pikepdf

HEADINGS = ("H1", "H2", "H3", "H4", "H5", "H6")
INSIDE = {
    "TR": {"Table"},
    "TH": {"TR"},
    "TD": {"TR"},
    "LI": {"L"},
    "Lbl": {"LI"},
    "LBody": {"LI"},
    "Caption": {"Figure", "Table"},
    "Sect": {"Document"},
}
ONLY = {"Table": {"TR"}, "TR": {"TH", "TD"}, "L": {"LI"}, "LI": {"Lbl", "LBody"}}
STANDARD = {*INSIDE, *ONLY, *HEADINGS, "Document", "P", "Span", "Link", "Figure"}
PAINTING = {"Tj", "TJ", "'", '"', "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "Do", "sh", "BI"}


@dataclass
class Piece:
    """A marked piece of a page: its words, where its first letter stands (points, y upward), whether it is turned."""

    words: str = ""
    x: float = 0.0
    y: float = 0.0
    turned: bool = False


@dataclass
class Node:
    """An element with what is in it: elements, and pieces by their page and number."""

    role: str
    kids: list[Node | tuple[int, int]] = field(default_factory=list)
    alternative: str = ""
    actual: str = ""
    scope: str = ""
    span: int = 1
    has_link: bool = False

    def walk(self) -> Iterator[Node]:
        yield self
        for kid in self.kids:
            if isinstance(kid, Node):
                yield from kid.walk()


@dataclass
class _Open:
    """A mark that has begun: its role, its number, and how its letters are read where that is said."""

    role: str
    place: int | None = None
    actual: str | None = None


def _opened(operands: Any) -> _Open:
    about = operands[1] if len(operands) > 1 else pikepdf.Dictionary()
    place, actual = about.get("/MCID"), about.get("/ActualText")
    return _Open(str(operands[0]), None if place is None else int(place), None if actual is None else str(actual))


class Tagged:
    """A file with its tree and the pieces of its pages."""

    def __init__(self, pdf: pikepdf.Pdf) -> None:
        self.pdf = pdf
        self.faults: list[str] = []
        self.places = {page.objgen: number for number, page in enumerate(pdf.pages)}
        self.pieces: dict[tuple[int, int], Piece] = {}
        self.maps: dict[Any, dict[str, str]] = {}
        for number in range(len(pdf.pages)):
            self._read_page(number)
        root = pdf.Root.get("/StructTreeRoot")
        self.tree = self._node(root.K, None) if root is not None else Node("none")
        self._check()

    # --- reading ---------------------------------------------------------------------------------

    def _read_page(self, number: int) -> None:
        page = self.pdf.pages[number]
        fonts: Any = page.Resources.get("/Font", {})
        open_: list[_Open] = []
        at, letters = (0.0, 0.0, False), dict[str, str]()
        instructions: Any = pikepdf.parse_content_stream(page)
        for operands, operator in instructions:
            name = str(operator)
            if name in ("BMC", "BDC"):
                open_.append(_opened(operands))
                self._begin(number, open_, at)
            elif name == "EMC":
                open_.pop()
            elif name == "Tf":
                letters = self._letters(fonts[str(operands[0])])
            elif name == "Tm":
                at = (float(operands[4]), float(page.MediaBox[3]) - float(operands[5]), bool(float(operands[1])))
            elif name in PAINTING:
                if not any(each.place is not None or each.role == "/Artifact" for each in open_):
                    self.faults.append(f"page {number + 1}: {name} outside of tags and artifacts")
                if name in ("Tj", "TJ") and all(each.actual is None for each in open_):
                    self._add(number, open_, self._shown(operands[0], letters), at)

    def _begin(self, number: int, open_: list[_Open], at: tuple[float, float, bool]) -> None:
        """What is marked from here on: a piece, an artifact, or letters that are read in another way."""
        place, actual = open_[-1].place, open_[-1].actual
        if actual is not None:
            self._add(number, open_, actual, at)
        if place is None:
            return
        if (number, place) in self.pieces:
            self.faults.append(f"page {number + 1}: two pieces have the number {place}")
        self.pieces[number, place] = Piece()
        if any(each.role == "/Artifact" for each in open_):
            self.faults.append(f"page {number + 1}: a tagged piece inside an artifact")

    def _add(self, number: int, open_: list[_Open], said: str, at: tuple[float, float, bool]) -> None:
        for each in open_:
            if each.place is not None:
                piece = self.pieces[number, each.place]
                if not piece.words:
                    piece.x, piece.y, piece.turned = at
                piece.words += said

    def _letters(self, font: Any) -> dict[str, str]:
        key = font.objgen
        if key not in self.maps:
            about = font.get("/DescendantFonts")[0].FontDescriptor
            if "/ToUnicode" not in font or "/FontFile2" not in about:
                self.faults.append(f"the font {font.BaseFont} has no letters or is not in the file")
            told = font.ToUnicode.read_bytes().decode("ascii")
            pairs = re.findall(r"^<([0-9a-f]{4})><([0-9a-f]+)>$", told, re.MULTILINE)
            self.maps[key] = {code: bytes.fromhex(text).decode("utf-16-be") for code, text in pairs}
        return self.maps[key]

    def _shown(self, operand: Any, letters: dict[str, str]) -> str:
        parts = operand if isinstance(operand, pikepdf.Array) else [operand]
        codes = "".join(bytes(part).hex() for part in parts if isinstance(part, pikepdf.String))
        return "".join(letters.get(codes[at : at + 4], "\N{REPLACEMENT CHARACTER}") for at in range(0, len(codes), 4))

    def _node(self, found: Any, page: int | None) -> Node:
        node = Node(str(found.S)[1:])
        page = self.places.get(found.Pg.objgen, page) if "/Pg" in found else page
        node.alternative, node.actual = str(found.get("/Alt", "")), str(found.get("/ActualText", ""))
        if "/A" in found:
            node.scope, node.span = str(found.A.get("/Scope", "")), int(found.A.get("/ColSpan", 1))
        kids = found.get("/K", pikepdf.Array([]))
        for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
            if isinstance(kid, pikepdf.Dictionary):
                if kid.get("/Type") == "/OBJR":
                    node.has_link = True
                    if not str(kid.Obj.get("/Contents", "")):
                        self.faults.append("a link without words")
                else:
                    node.kids.append(self._node(kid, page))
            elif page is not None:
                node.kids.append((page, int(kid)))
        return node

    # --- rules -----------------------------------------------------------------------------------

    def _check(self) -> None:
        root: Any = self.pdf.Root
        said = root.Metadata.read_bytes().decode() if "/Metadata" in root else ""
        rules = {
            "the file does not say that it is tagged": bool(root.get("/MarkInfo", {}).get("/Marked", False)),
            "no language": bool(str(root.get("/Lang", ""))),
            "no title": bool(str(self.pdf.docinfo.get("/Title", ""))),
            "the title is not shown": bool(root.get("/ViewerPreferences", {}).get("/DisplayDocTitle", False)),
            "PDF/UA-1 is not claimed": "<pdfuaid:part>1</pdfuaid:part>" in said and "<dc:title>" in said,
        }
        self.faults += [fault for fault, holds in rules.items() if not holds]
        self.faults += [
            f"page {number + 1}: no order of tabs"
            for number, page in enumerate(self.pdf.pages)
            if page.get("/Tabs") != "/S"
        ]
        self._check_pieces()
        self._check_nesting(self.tree, "")
        level = 0
        for node in self.tree.walk():
            if node.role in HEADINGS:
                if HEADINGS.index(node.role) > level:
                    self.faults.append(f"{node.role} after a heading of level {level}")
                level = HEADINGS.index(node.role) + 1
            if node.role == "Figure" and not node.alternative:
                self.faults.append("a figure without words")
            if node.role == "Link" and not node.has_link:
                self.faults.append("a link that leads nowhere")
            if node.role == "Table":
                self._check_table(node)

    def _check_pieces(self) -> None:
        listed = [kid for node in self.tree.walk() for kid in node.kids if isinstance(kid, tuple)]
        if len(listed) != len(set(listed)):
            self.faults.append("a piece is in two elements")
        if set(listed) != set(self.pieces):
            self.faults.append(f"{len(set(listed) ^ set(self.pieces))} pieces are in no element, or elements have none")
        entries: Any = self.pdf.Root.StructTreeRoot.ParentTree.Nums if "/StructTreeRoot" in self.pdf.Root else []
        known = {int(entries[at]): entries[at + 1] for at in range(0, len(entries), 2)}
        for number, page in enumerate(self.pdf.pages):
            owners = known.get(int(page.get("/StructParents", -1)), [])
            for place, owner in enumerate(owners):
                kids = owner.get("/K")
                if place not in [kid for kid in kids if isinstance(kid, int)]:
                    self.faults.append(f"page {number + 1}: piece {place} is not in the element that it names")
            for link in page.get("/Annots", []):
                if int(link.get("/StructParent", -1)) not in known:
                    self.faults.append(f"page {number + 1}: a link in no element")

    def _check_nesting(self, node: Node, parent: str) -> None:
        if node.role not in STANDARD:
            self.faults.append(f"no such element: {node.role}")
        if node.role in INSIDE and parent not in INSIDE[node.role]:
            self.faults.append(f"{node.role} in {parent}")
        for kid in node.kids:
            if isinstance(kid, Node):
                if kid.role not in ONLY.get(node.role, {kid.role}):
                    self.faults.append(f"{kid.role} in {node.role}")
                self._check_nesting(kid, node.role)
            elif node.role in ONLY:
                self.faults.append(f"words straight in {node.role}")

    def _check_table(self, table: Node) -> None:
        rows = [row for row in table.kids if isinstance(row, Node)]
        cells = [[cell for cell in row.kids if isinstance(cell, Node)] for row in rows]
        if len({sum(cell.span for cell in row) for row in cells}) != 1:
            self.faults.append(f"a table with rows of {[sum(cell.span for cell in row) for row in cells]} columns")
        heads = [cell for row in cells for cell in row if cell.role == "TH"]
        if not heads or not all(cell.scope for cell in heads):
            self.faults.append("a table without heads, or a head that does not say what it heads")

    # --- what is read ----------------------------------------------------------------------------

    def read(self, node: Node) -> str:
        """The words of an element as they are read aloud."""
        if node.actual or (node.role == "Figure" and node.alternative):
            return node.actual or node.alternative
        said = [self.pieces[kid].words if isinstance(kid, tuple) else self.read(kid) for kid in node.kids]
        return " ".join(filter(None, said))

    def blocks(self, page: int) -> Iterator[tuple[Node, Piece]]:
        """The elements of a page that hold words, each with its first piece, in the order of reading."""
        for node in self.tree.walk():
            held = [piece for kid in node.kids for piece in _inline(kid)]
            if held and held[0][0] == page and node.role not in ("Figure", "Span") and self.pieces[held[0]].words:
                yield node, self.pieces[held[0]]


def _inline(kid: Node | tuple[int, int]) -> list[tuple[int, int]]:
    """The pieces of a line: those of a stretch in it too."""
    if isinstance(kid, tuple):
        return [kid]
    return [piece for inner in kid.kids for piece in _inline(inner)] if kid.role == "Span" else []
