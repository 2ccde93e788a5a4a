"""A table as flowables: columns as wide as their words want, a head that is said again on each page, groups, rows."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, Literal

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.document.content import ColumnKind, DataCell, Picture, RowGroup, SizeCell, Table, TickCell
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Element, Mark, moved, tagged
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, lines_of, rectangle, rule, together, width_of
from blockdsl.marks.theme import CONTENT_WIDTH_PT, HAIRLINE_PT, INK, QUIET, RULE, STEP_PT, Box
from blockdsl.page.flow import Flowable, stacked
from blockdsl.page.text import BODY, BOLD, CAPTION, LEAD, LETTER, QUIETLY, plain_words, rich, spans_of
from blockdsl.wording.messages import Messages

PADDING_PT: Final = 3.0
TICK_PT: Final = 8.0
_GAP_PT: Final = 3 * STEP_PT
_NARROW_GAP_PT: Final = 2.5 * STEP_PT
_MOST_MORE_PT: Final = 40.0
_STYLES: Final[dict[ColumnKind, TextStyle]] = {"count": BOLD, "letter": LETTER, "purpose": QUIETLY}
_FIXED_PT: Final[dict[ColumnKind, float]] = {"tick": 4 * STEP_PT, "swatch": 34.0}
_RIGHT: Final = ("count", "number", "spare")
_STRETCHED: Final[tuple[ColumnKind, ...]] = ("purpose", "letter", "then", "words", "size")
_GIVING: Final[tuple[ColumnKind, ...]] = ("purpose", "letter", "then", "words", "size")
"""Whose words are broken first where there is too little room."""
_FLOORS_PT: Final[dict[ColumnKind, float]] = {"purpose": 96.0, "then": 120.0}
"""At this width others give first."""
_SWATCH: Final = Box(0.0, 1.0, 24.0, 11.0)
Axes = Sequence[tuple[float, float]]


class TableColumn(Struct, frozen=True):
    """A column of a table; `gap_pt` is the white at its right, within its width; `axes` those of its sizes."""

    head: str
    width_pt: float
    kind: ColumnKind = "words"
    gap_pt: float = 2 * STEP_PT
    axes: Axes = ()

    @property
    def align(self) -> Literal["left", "right"]:
        """Where its words stand."""
        return "right" if self.kind in _RIGHT else "left"


class TableCell(Struct, frozen=True):
    """What stands in a column: its height and its marks, from (0, 0)."""

    height_pt: float
    marks: tuple[Mark, ...] = ()


EMPTY: Final = TableCell(0.0)


def table_flowables(
    table: Table, words: Messages, *, width_pt: float = CONTENT_WIDTH_PT, again: tuple[Flowable, ...] = ()
) -> list[Flowable]:
    """The table under its head; `again` is said above the head where it goes on on a new page."""
    flowables: list[Flowable] = []
    close = width_pt < CONTENT_WIDTH_PT / 2  # a small table: its lines are close to each other
    for part in _that_fit(table, width_pt):
        columns = _columns(part, width_pt)
        whole_table = Element("Table")
        head = _head(columns, whole_table)
        height, marks = stacked([*again, head])
        named = Flowable(height, marks, keep_with_next=True)
        flowables.append(replace(head, before_pt=4 * STEP_PT))
        for place, group in enumerate(part.groups):
            rows = [
                _row(columns, row, whole_table, ruled=number > 0, close=close) for number, row in enumerate(group.rows)
            ]
            if group.words:
                across = (whole_table, len(columns))
                again_named = _group(group, width_pt, across, words)
                whole = _grouped(named, _group(group, width_pt, across), rows, again_named)
                flowables += [replace(whole[0], before_pt=2.5 * STEP_PT if place else 0.0), *whole[1:]]
            else:
                flowables += _bound([replace(row, head=(named,)) for row in rows], whole=part.whole)
    return flowables


def _bound(rows: list[Flowable], *, whole: bool) -> list[Flowable]:
    """The rows kept together, or the first two and the last two of them: no row stands alone on a page."""
    kept = range(len(rows) - 1) if whole else {0, len(rows) - 2} & set(range(len(rows) - 1))
    return [replace(row, keep_with_next=place in kept) for place, row in enumerate(rows)]


def _grouped(head: Flowable, group: Flowable, rows: Sequence[Flowable], continued: Flowable) -> list[Flowable]:
    """A group's name and its rows: what is said again on a new page is bound to each."""
    rows = _bound([replace(row, head=(head, continued)) for row in rows], whole=False)
    return [replace(group, keep_with_next=True, head=(head,)), *rows]


# --- columns -------------------------------------------------------------------------------------------


def _that_fit(table: Table, width_pt: float) -> list[Table]:
    """The table in as few parts as the width allows: columns of sizes are divided, a small table loses its last."""
    if sum(_widths(table, width_pt)[1]) <= width_pt:
        return [table]
    sizes = [place for place, column in enumerate(table.columns) if column.kind == "size"]
    if len(sizes) > 1:
        middle = (len(sizes) + 1) // 2
        return [
            part
            for left_out in (sizes[middle:], sizes[:middle])
            for part in _that_fit(_less(table, left_out), width_pt)
        ]
    return [_less(table, [len(table.columns) - 1])] if width_pt < CONTENT_WIDTH_PT / 2 else [table]


def _less(table: Table, left_out: Sequence[int]) -> Table:
    """The table without some of its columns."""
    kept = [place for place in range(len(table.columns)) if place not in left_out]
    groups = tuple(
        replace(group, rows=tuple(tuple(row[place] for place in kept) for row in group.rows)) for group in table.groups
    )
    return replace(table, columns=tuple(table.columns[place] for place in kept), groups=groups)


def _widths(table: Table, width_pt: float) -> tuple[list[float], list[float], list[Axes]]:
    """What each column takes with its words on one line, the least that it can do with, and the axes of sizes."""
    natural, least, axes = [], [], []
    gap = _GAP_PT if width_pt > CONTENT_WIDTH_PT / 2 else _NARROW_GAP_PT
    for place, column in enumerate(table.columns):
        cells = [row[place] for group in table.groups for row in group.rows]
        found: Axes = ()
        if column.kind in _FIXED_PT:
            natural.append(_FIXED_PT[column.kind])
            least.append(_FIXED_PT[column.kind])
        else:
            wide, narrow, found = _needs(cells, _STYLES.get(column.kind, BODY))
            head = fraction_text(column.head)
            # What is just as wide as its column is not broken.
            narrow = max([narrow, *(width_of(word, CAPTION) for word in together(head))]) + 0.1
            wide = max(wide, width_of(head, CAPTION)) + 0.1
            after = 0.0 if place == len(table.columns) - 1 else gap - (STEP_PT if column.kind == "count" else 0.0)
            natural.append(wide + after)
            least.append((narrow if column.kind not in _RIGHT else wide) + after)
        axes.append(found)
    return natural, least, axes


def _needs(cells: Sequence[DataCell], style: TextStyle) -> tuple[float, float, Axes]:
    """The widest of the cells, their longest word, and the axes where they are sizes."""
    sizes = [_sides(cell) for cell in cells if isinstance(cell, SizeCell)]
    if sizes:
        axes, wide = lengths_axes(sizes, style)
        return wide, wide, axes
    wide = narrow = 0.0
    for cell in cells:
        if isinstance(cell, tuple):
            spans = spans_of(cell, style)
            wide = max(wide, sum(width_of(text, weight) for text, weight in spans))
            narrow = max([narrow, *(width_of(word, weight) for text, weight in spans for word in together(text))])
    return wide, narrow, ()


def _narrowed(
    widths: list[float], least: list[float], kinds: list[ColumnKind], kind: ColumnKind, floor_pt: float, over_pt: float
) -> list[float]:
    """The columns of a kind made so much narrower in all, but none below the floor or the least that it takes."""
    given = [
        max(0.0, wide - max(narrow, floor_pt)) if each == kind else 0.0
        for wide, narrow, each in zip(widths, least, kinds, strict=True)
    ]
    if over_pt <= 0 or not sum(given):
        return widths
    share = min(1.0, over_pt / sum(given))
    return [wide - give * share for wide, give in zip(widths, given, strict=True)]


def _columns(table: Table, width_pt: float) -> list[TableColumn]:
    """Narrow columns take what their words need; what is left spreads them, and the last of words takes the rest."""
    widths, least, axes = _widths(table, width_pt)
    kinds = [column.kind for column in table.columns]
    for floors in (_FLOORS_PT, dict[ColumnKind, float]()):
        for kind in _GIVING:
            widths = _narrowed(widths, least, kinds, kind, floors.get(kind, 0.0), sum(widths) - width_pt)
    free = width_pt - sum(widths)
    spread = [place for place, kind in enumerate(kinds[:-1]) if kind not in _FIXED_PT and kind != "count"]
    more = min(max(0.0, free) / (len(spread) + 1), _MOST_MORE_PT) if spread else 0.0
    widths = [width + (more if place in spread else 0.0) for place, width in enumerate(widths)]
    rest = width_pt - sum(widths)
    if rest > 0:
        stretched = next(
            (place for kind in _STRETCHED for place in reversed(range(len(kinds))) if kinds[place] == kind), -1
        )
        widths[stretched] += rest
    if all(kind == "size" for kind in kinds) and max(widths[:-1], default=0.0) <= width_pt / len(kinds):
        widths = [width_pt / len(kinds)] * len(kinds)
    gap = _GAP_PT if width_pt > CONTENT_WIDTH_PT / 2 else _NARROW_GAP_PT
    return [
        TableColumn(
            "" if column.kind in _FIXED_PT else fraction_text(column.head),
            width,
            column.kind,
            0.0 if place == len(kinds) - 1 else gap - (STEP_PT if column.kind == "count" else 0.0),
            axis,
        )
        for place, (column, width, axis) in enumerate(zip(table.columns, widths, axes, strict=True))
    ]


# --- rows and cells ------------------------------------------------------------------------------------


def _head(columns: Sequence[TableColumn], whole: Element) -> Flowable:
    """The names of the columns, of one line or more, standing on a rule; bound to the first row."""
    lines = [lines_of(column.head, column.width_pt - column.gap_pt, CAPTION) for column in columns]
    height = max(map(len, lines)) * CAPTION.line_pt
    marks: list[Mark] = []
    x = 0.0
    row = Element("TR", columns=len(columns))
    for number, (column, of_head) in enumerate(zip(columns, lines, strict=True)):
        cell = whole, row, Element("TH", scope="Column", column=number)
        y = height - len(of_head) * CAPTION.line_pt + CAPTION.baseline_pt
        for place, text in enumerate(of_head):
            baseline = y + place * CAPTION.line_pt
            if column.align == "right":
                marks += tagged(line_ending(text, x + column.width_pt - column.gap_pt, baseline, CAPTION), *cell)
            else:
                marks += tagged(line(text, x, baseline, CAPTION), *cell)
        x += column.width_pt
    bottom = height + STEP_PT / 2
    marks.append(rule(bottom, x, QUIET, HAIRLINE_PT))
    return Flowable(bottom, tuple(marks), keep_with_next=True)


def _row(
    columns: Sequence[TableColumn], row: Sequence[DataCell], whole: Element, *, ruled: bool, close: bool
) -> Flowable:
    """One row, as tall as its tallest cell, with a pale rule above it unless it follows a head."""
    cells = [_cell(cell, column) for cell, column in zip(row, columns, strict=True)]
    padding = 0.0 if close else PADDING_PT
    height = max(cell.height_pt for cell in cells) + 2 * padding
    marks: list[Mark] = []
    x = 0.0
    own = Element("TR", columns=len(columns))
    named = next((place for place, column in enumerate(columns) if column.kind not in _FIXED_PT), 0)
    for place, (column, cell) in enumerate(zip(columns, cells, strict=True)):
        read = Element("TH", scope="Row", column=place) if place == named else Element("TD", column=place)
        marks += moved(tagged(cell.marks, whole, own, read), x, padding)
        x += column.width_pt
    if ruled and not close:
        marks.append(rule(0.0, x, RULE, HAIRLINE_PT))
    return Flowable(height, tuple(marks))


def _cell(cell: DataCell, column: TableColumn) -> TableCell:
    style, room = _STYLES.get(column.kind, BODY), column.width_pt - column.gap_pt
    match cell:
        case TickCell():
            return tick_cell(BODY)
        case SizeCell():
            return lengths_cell(_sides(cell), column.axes, BODY)
        case Picture():
            return TableCell(BODY.line_pt, picture_marks(cell, _SWATCH))
        case ():
            return EMPTY
        case _ if column.align == "right":
            text, style = plain_words(cell), spans_of(cell, style)[0][1]
            return TableCell(style.line_pt, line_ending(text, room, style.baseline_pt, style))
        case _:
            return TableCell(*rich(cell, room, style))


def picture_marks(picture: Picture, box: Box) -> tuple[Mark, ...]:
    """A small picture that repeats the words beside it."""
    return picture.draw(box)[0]


def _group(group: RowGroup, width_pt: float, across: tuple[Element, int], again: Messages | None = None) -> Flowable:
    """A group's name beside its swatch, over its rows; said again on a new page in the words of `again`."""
    height, marks, x = 5.5 * STEP_PT, list[Mark](), 0.0
    before = 0.0
    if group.swatch is None:
        height, before = LEAD.line_pt + STEP_PT, 2 * STEP_PT
        baseline = STEP_PT + LEAD.baseline_pt
    else:
        box = Box(0.0, height / 2 - 6.5, 26.0, 13.0)
        marks += picture_marks(group.swatch, box)
        x, baseline = box.right_pt + 2 * STEP_PT, height / 2 + LEAD.capitals_pt / 2
    aside = group.aside if again is None else ""
    after = "" if again is None else again("fabric-continued")
    room = width_pt - x - width_of(aside + after, CAPTION) - 4 * STEP_PT
    label = fitted(plain_words(group.words), room, LEAD)
    marks += line(label, x, baseline, LEAD)
    marks += line(after, x + width_of(label, LEAD), baseline, CAPTION)
    marks += line_ending(aside, width_pt, baseline, CAPTION)
    whole, columns = across
    read = Element("TH", scope="Row", columns=columns)
    return Flowable(height, tagged(marks, whole, Element("TR", columns=columns), read), before_pt=before)


def tick_cell(style: TextStyle, side_pt: float = TICK_PT) -> TableCell:
    """An empty box to tick, level with the capitals of a line in that style."""
    top = style.baseline_pt - style.capitals_pt / 2 - side_pt / 2
    return TableCell(style.line_pt, (rectangle(0.0, top, side_pt, side_pt, stroke=INK, stroke_width_pt=0.7),))


def _sides(cell: SizeCell) -> list[str]:
    return [fraction_text(side) for side in cell.sides]


def aligned_parts(lengths: Sequence[str]) -> list[tuple[str, str]]:
    """Each length as the part that ends at the column's axis and the part that starts there.

    `2 ⁷⁄₈` is ("2", "⁷⁄₈"), `⁷⁄₈` ("", "⁷⁄₈"), `7.5` ("7", ".5"), `3` ("3", "").
    """
    parts = []
    for length in lengths:
        if "⁄" in length:
            whole, _, fraction = length.rpartition(" ")
            parts.append((whole, fraction))
        else:
            whole, point, rest = length.partition(".")
            parts.append((whole, point + rest))
    return parts


def lengths_cell(lengths: Sequence[str], axes: Axes, style: TextStyle) -> TableCell:
    """One or two lengths, the whole numbers ending and the fractions beginning at common axes, × between.

    `axes` holds for each length its axis and, for all but the first, the place of the × before it.
    """
    marks: list[Mark] = []
    for (whole, rest), (axis, times) in zip(aligned_parts(lengths), axes, strict=False):
        gap = 0.0 if rest.startswith(".") else 1.5
        marks += line_ending(whole, axis, style.baseline_pt, style)
        marks += line(rest, axis + gap, style.baseline_pt, style)
        if times:
            marks += line("×", times, style.baseline_pt, style)
    return TableCell(style.line_pt, tuple(marks))


def lengths_axes(rows: Sequence[Sequence[str]], style: TextStyle) -> tuple[list[tuple[float, float]], float]:
    """Axes that suit all the rows, for `lengths_cell`, and the width that they take."""
    axes: list[tuple[float, float]] = []
    x = 0.0
    for place in range(max((len(row) for row in rows), default=0)):
        parts = aligned_parts([row[place] for row in rows if len(row) > place])
        times = 0.0
        if place:
            times = x + STEP_PT
            x = times + width_of("×", style) + STEP_PT
        x += max(width_of(whole, style) for whole, _ in parts)
        axes.append((x, times))
        x += max(width_of(rest, style) + (1.5 if rest else 0.0) for _, rest in parts)
    return axes, x
