"""The steps of putting a quilt together: rows that are alike, their joining, border by border, and the finishing."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cached_property
from itertools import pairwise

from msgspec.structs import replace

from blockdsl.cutting.quilt_pieces import PlainPiece
from blockdsl.facts.block_landmark import BlockLandmark, Where, landmarks_of
from blockdsl.facts.collect_finishing import can_be_backed, can_be_bound, can_have_sleeve
from blockdsl.facts.quilt_border_steps import places_of, ring_steps
from blockdsl.facts.quilt_groups import groups_of
from blockdsl.facts.quiltrecord import QuiltKindFacts, QuiltRowFacts, RingFacts
from blockdsl.facts.quiltstepfacts import (
    CornerTriangles,
    JoinRows,
    LayAlike,
    Makes,
    PressRows,
    QuiltAction,
    QuiltPart,
    QuiltStepFacts,
    QuiltTake,
    SewInOrder,
    TrimStrips,
    Way,
)
from blockdsl.geometry import Exact, Point, sign
from blockdsl.geometry.polygon import dot, step
from blockdsl.geometry.symmetry import QUARTER_CLOCKWISE, Symmetry
from blockdsl.model.quilt import AssemblyRow, InRow, PieceRole, QuiltDesign, RowKind

Signature = tuple[QuiltPart, ...]
_WAYS: dict[RowKind, Way] = {"row": "across", "column": "down", "diagonal row": "across", "strip": "along"}
_BLOCK_ROWS: tuple[RowKind, ...] = ("row", "column", "diagonal row")


def quilt_steps(
    quilt: QuiltDesign,
    kinds: Sequence[QuiltKindFacts],
    pieces: Sequence[PlainPiece],
    rows: Sequence[QuiltRowFacts],
    rings: Sequence[RingFacts],
) -> tuple[QuiltStepFacts, ...]:
    """All steps in order, numbered from 1: rows, their joining, border by border, then the finishing."""
    middle = MiddleSteps(quilt, kinds, places_of(pieces), rows)
    of_middle, borders = middle.steps(), list(ring_steps(quilt, rings, pieces, middle.part_of))
    if borders and not of_middle:
        borders[0] = replace(borders[0], actions=(*middle.block_alone(), *borders[0].actions))
    steps = [*of_middle, *borders, *_finishing(quilt)]
    return tuple(replace(each, number=number) for number, each in enumerate(steps, start=1))


def _finishing(quilt: QuiltDesign) -> Iterator[QuiltStepFacts]:
    """What is done to a top that is sewn. A sleeve is basted on before the binding, which holds its raw edges."""
    asked: tuple[tuple[Makes, bool], ...] = (
        ("backing", can_be_backed(quilt)),
        ("layers", True),
        ("quilting", True),
        ("sleeve", can_have_sleeve(quilt)),
        ("binding", can_be_bound(quilt)),
        ("label", True),
    )
    for makes, wanted in asked:
        if wanted:
            yield QuiltStepFacts(number=0, makes=makes, of_top=False)


class MiddleSteps:
    """The steps of the quilt's middle: its rows, then their joining."""

    def __init__(
        self,
        quilt: QuiltDesign,
        kinds: Sequence[QuiltKindFacts],
        piece_of: Mapping[int, int],
        rows: Sequence[QuiltRowFacts],
    ) -> None:
        """The quilt, its blocks, the piece of each cloth, and its rows."""
        self._quilt, self._kinds, self._piece_of, self._rows = quilt, kinds, piece_of, rows
        self._landmarks: dict[tuple[int, str, Symmetry], tuple[BlockLandmark, ...]] = {}
        self._laid: dict[QuiltPart, int] = {}

    # --- what lies in a row ------------------------------------------------------------------------

    def part_of(self, place: int, turned: Symmetry | None = None) -> QuiltPart:
        """A block of the quilt as it lies; `turned` further, in a row that is laid out another way."""
        block = self._quilt.blocks[place]
        lies = block.symmetry if turned is None else block.symmetry.then(turned)
        key = (block.kind, block.colourway, lies)
        if key not in self._landmarks:
            self._landmarks[key] = landmarks_of(self._kinds[block.kind].block, block.colourway, lies)
        return QuiltPart("block", block.kind, block.colourway, self._landmarks[key])

    def _member(self, member: InRow) -> QuiltPart:
        if member.what == "block":
            # A row on point is laid out from left to right: what faced up and to the right then faces right.
            on_point = self._quilt.blocks[member.index].on_point
            return self.part_of(member.index, QUARTER_CLOCKWISE if on_point else None)
        return QuiltPart("cloth", self._piece_of[member.index], corner=self._square_corner(member.index))

    def _square_corner(self, place: int) -> Where | None:
        """Where the square corner of a triangle lies in its row, laid out from the lower left end to the right."""
        outline = self._quilt.cloth[place].outline
        if len(outline) != 3:
            return None
        for index, corner in enumerate(outline):
            before, after = outline[index - 1], outline[(index + 1) % 3]
            if not dot(step(corner, before), step(corner, after)):
                middle = Point((before.x + after.x) / 2, (before.y + after.y) / 2)
                x, y = step(middle, corner)
                # turned an eighth clockwise: what points up and to the right points right
                across, down = sign(x - y), sign(x + y)
                upper = "upper" if down < 0 else "lower"
                return f"{upper}-{'left' if across < 0 else 'right'}"  # type: ignore[return-value]
        return None

    def _signature(self, row: AssemblyRow) -> Signature:
        return tuple(map(self._member, row.members))

    def _role(self, part: QuiltPart) -> PieceRole | None:
        return None if part.what == "block" else self._roles[part.index]

    @cached_property
    def _roles(self) -> dict[int, PieceRole]:
        return {piece: self._quilt.cloth[place].role for place, piece in self._piece_of.items()}

    # --- steps -------------------------------------------------------------------------------------

    def steps(self) -> list[QuiltStepFacts]:
        """Rows that are alike, one step for each; then the joining."""
        quilt = self._quilt
        blocks = [place for place, row in enumerate(quilt.rows) if row.kind in _BLOCK_ROWS]
        others = [place for place, row in enumerate(quilt.rows) if row.kind not in _BLOCK_ROWS]
        if len(quilt.rows) < 2 and not self._corner_places:
            only = [place for place in blocks if len(quilt.rows[place].members) > 1]
            return [self._of_rows(only, only, 1, center=True)] if only else []
        if len(quilt.rows) == 1 and len(quilt.rows[0].members) == 1:
            return [self._block_on_point(quilt.rows[0].members[0])]
        if all(len(row.members) == 1 for row in quilt.rows):
            return [self._one_line()]
        steps: list[QuiltStepFacts] = []
        for places in (blocks, others):
            for alike in self._alike(places):
                if len(quilt.rows[alike[0]].members) > 1:
                    steps.append(self._of_rows(alike, places, len(steps) + 1))
        steps.append(self._joining(blocks, others))
        return steps

    def block_alone(self) -> list[QuiltAction]:
        """How the only block of the middle lies, when the borders are sewn to it."""
        return self._laid_alike(tuple(self._member(member) for row in self._quilt.rows for member in row.members), 1)[0]

    def _alike(self, places: Sequence[int]) -> list[list[int]]:
        found: dict[Signature, list[int]] = {}
        for place in places:
            found.setdefault(self._signature(self._quilt.rows[place]), []).append(place)
        return list(found.values())

    def _numbers(self, places: Iterable[int], kind: RowKind) -> tuple[int, ...]:
        """Rows by their numbers, counted among those of a kind from 1."""
        of_kind = [place for place, row in enumerate(self._quilt.rows) if row.kind == kind]
        return tuple(of_kind.index(place) + 1 for place in places)

    def _of_rows(
        self, alike: Sequence[int], places: Sequence[int], number: int, *, center: bool = False
    ) -> QuiltStepFacts:
        row = self._quilt.rows[alike[0]]
        way: Way = "across" if row.kind == "sash row" and self._on_point else _WAYS.get(row.kind, "along")
        signature = self._signature(row)
        laid, parts = self._laid_alike(signature, number)
        facts = self._rows[alike[0]]
        finished, unfinished = facts.finished, facts.unfinished
        if row.kind in ("column", "strip"):
            finished, unfinished = finished[::-1], unfinished[::-1]
        takes = Counter((part.what, part.index, part.colourway) for part in signature)
        return QuiltStepFacts(
            number=0,
            makes="center" if center else "rows",
            count=len(alike),
            takes=tuple(QuiltTake(*what, count) for what, count in takes.items()),
            actions=(*laid, SewInOrder(way, groups_of(parts)), self._pressing(alike, places)),
            finished=finished,
            unfinished=unfinished,
            rows=tuple(alike),
        )

    def _laid_alike(self, signature: Signature, number: int) -> tuple[list[QuiltAction], Signature]:
        """Blocks of a kind that all lie alike are laid once; the parts of the row then need no landmarks."""
        ways: dict[tuple[int, str], set[tuple[BlockLandmark, ...]]] = {}
        for part in signature:
            if part.what == "block":
                ways.setdefault((part.index, part.colourway), set()).add(part.landmarks)
        alike = {key for key, landmarks in ways.items() if len(landmarks) == 1}
        actions: dict[QuiltPart, QuiltAction] = {}
        parts = []
        for part in signature:
            if part.what != "block" or (part.index, part.colourway) not in alike:
                parts.append(part)
                continue
            if part.landmarks:
                actions.setdefault(part, LayAlike(part, self._laid.get(part, 0)))
                self._laid.setdefault(part, number)
            parts.append(replace(part, landmarks=()))
        return list(actions.values()), tuple(parts)

    # --- pressing ----------------------------------------------------------------------------------

    @property
    def _open(self) -> bool:
        return self._quilt.pressing == "open"

    def _pressing(self, alike: Sequence[int], places: Sequence[int]) -> PressRows:
        """Toward sashes or plain squares, where each seam has one on one side alone; else row by row to either end."""
        if self._open:
            return PressRows("open")
        if self._all_beside(places, ("sash",)):
            return PressRows("sashes")
        if self._all_beside(places, ("plain square",)):
            return PressRows("plain squares")
        kind = self._quilt.rows[alike[0]].kind
        numbers = self._numbers(alike, kind)
        odd, even = tuple(each for each in numbers if each % 2), tuple(each for each in numbers if not each % 2)
        return PressRows("ends", odd, even)

    def _all_beside(self, places: Sequence[int], roles: tuple[PieceRole, ...]) -> bool:
        """Whether at every seam of the rows just one of the two is of these roles."""
        for place in places:
            of = [self._role(part) in roles for part in self._signature(self._quilt.rows[place])]
            if any(one == other for one, other in pairwise(of)):
                return False
        return True

    # --- joining -----------------------------------------------------------------------------------

    @property
    def _on_point(self) -> bool:
        return any(row.kind == "diagonal row" for row in self._quilt.rows)

    @cached_property
    def _corner_places(self) -> list[int]:
        return [place for place, cloth in enumerate(self._quilt.cloth) if cloth.role == "corner triangle"]

    def _sized(self, step: QuiltStepFacts) -> QuiltStepFacts:
        """A step that makes the middle, with its size."""
        width, height = self._quilt.middle
        allowance = 2 * self._quilt.seam
        return replace(step, finished=(width, height), unfinished=(width + allowance, height + allowance))

    def _block_on_point(self, member: InRow) -> QuiltStepFacts:
        """A single block on point, with a triangle at each side."""
        piece = self._piece_of[self._corner_places[0]]
        part = self._member(member)
        takes = (QuiltTake("block", part.index, part.colourway, 1), QuiltTake("cloth", piece, "", 4))
        return self._sized(
            QuiltStepFacts(
                number=0, makes="center", takes=takes, actions=(CornerTriangles(piece, part, self._open),), rows=(0,)
            )
        )

    def _one_line(self) -> QuiltStepFacts:
        """Every row is of one piece: all of them are sewn one below the other, or one beside the other."""
        quilt = self._quilt
        columns = any(row.kind in ("column", "strip") for row in quilt.rows)
        signature = tuple(self._member(row.members[0]) for row in quilt.rows)
        laid, parts = self._laid_alike(signature, 1)
        trimmed = self._trimmed([place for place, row in enumerate(quilt.rows) if row.kind not in _BLOCK_ROWS])
        takes = Counter((part.what, part.index, part.colourway) for part in signature)
        pressed = PressRows("open") if self._open else PressRows("ends", (), (1,))
        if not self._open and any(self._role(part) in ("sash strip", "strip") for part in signature):
            pressed = PressRows("sashes")
        return self._sized(
            QuiltStepFacts(
                number=0,
                makes="center",
                takes=tuple(QuiltTake(*what, count) for what, count in takes.items()),
                actions=(*trimmed, *laid, SewInOrder("across" if columns else "down", groups_of(parts)), pressed),
                rows=tuple(range(len(quilt.rows))),
            )
        )

    def _trimmed(self, others: Sequence[int]) -> list[TrimStrips]:
        """Plain strips between rows or columns, trimmed to what these measure."""
        plain = [place for place in others if len(self._quilt.rows[place].members) == 1]
        if not plain:
            return []
        row = self._quilt.rows[plain[0]]
        kind: RowKind = "row" if row.kind == "sash row" else "column"
        piece = self._piece_of[row.members[0].index]
        return [TrimStrips(kind, row.length + 2 * self._quilt.seam, piece, len(plain))]

    def _joining(self, blocks: Sequence[int], others: Sequence[int]) -> QuiltStepFacts:
        quilt = self._quilt
        kind = quilt.rows[blocks[0]].kind
        trimmed = self._trimmed(others)
        posted = bool(others) and not trimmed
        plain = bool(trimmed)
        pressing = self._pressing(blocks, blocks)
        toward = "open" if self._open else "strips" if others else "last"
        dropped = quilt.setting == "dropped columns" and len(blocks) > 1
        actions: list[QuiltAction] = [
            *trimmed,
            JoinRows(
                kind=kind,
                count=len(blocks),
                way="across" if kind == "column" else "down",
                between="posted" if posted else "plain" if plain else "",
                strips=len(others),
                outer=bool(others) and min(others) < min(blocks),
                nest=not self._open and not plain and (posted or pressing.toward != "sashes"),
                toward=toward,  # type: ignore[arg-type]
                cornerstones=self._cornerstones(blocks, others) if dropped and posted else (),
                halfway=dropped and not posted,
                shifts=self._shifts(blocks) if self._on_point else (),
            ),
        ]
        if self._corner_places:
            actions.append(CornerTriangles(self._piece_of[self._corner_places[0]], None, self._open))
        rows = tuple(range(len(quilt.rows)))
        return self._sized(QuiltStepFacts(number=0, makes="center", actions=tuple(actions), rows=rows))

    def _cornerstones(
        self, columns: Sequence[int], strips: Sequence[int]
    ) -> tuple[tuple[tuple[int, ...], tuple[int, ...]], ...]:
        """Which cornerstones of a strip, counted from the top, lie beside the ends of the sashes of which columns."""
        quilt = self._quilt
        tops = [
            quilt.cloth[member.index].outline[0].y
            for member in quilt.rows[strips[0]].members
            if quilt.cloth[member.index].role == "post"
        ]
        found: dict[tuple[int, ...], list[int]] = {}
        for number, place in enumerate(columns, start=1):
            sashes = {
                quilt.cloth[member.index].outline[0].y
                for member in quilt.rows[place].members
                if member.what == "cloth" and quilt.cloth[member.index].role == "sash"
            }
            beside = tuple(post for post, top in enumerate(tops, start=1) if top in sashes)
            found.setdefault(beside, []).append(number)
        return tuple((posts, tuple(numbers)) for posts, numbers in sorted(found.items()))

    def _shifts(self, rows: Sequence[int]) -> tuple[tuple[int, int], ...]:
        """For each row on point but the first: whether its blocks begin and end beyond those of the row before."""
        along = []
        for place in rows:
            ends = [self._along(member) for member in self._quilt.rows[place].members if self._is_square(member)]
            along.append((ends[0], ends[-1]))
        return tuple((sign(before[0] - after[0]), sign(after[1] - before[1])) for before, after in pairwise(along))

    def _is_square(self, member: InRow) -> bool:
        return member.what == "block" or self._quilt.cloth[member.index].role == "plain square"

    def _along(self, member: InRow) -> Exact:
        """How far along its row a square lies, times √2; of both kinds their topmost corner is meant."""
        if member.what == "block":
            block = self._quilt.blocks[member.index]
            return block.x - block.y
        x, y = min(self._quilt.cloth[member.index].outline, key=lambda corner: corner.y)
        return x - y
