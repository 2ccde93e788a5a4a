"""The facts as JSON, schema 2: lengths as strings in the block's own unit, lists in a stable order.

Lengths are as the language writes them: `2 7/8`, in centimetres `7.3`; with roots `2-r2` (r2, r3: square roots).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import lru_cache
from itertools import chain
from typing import Annotated, Any, Final, Literal, Protocol

from msgspec import UNSET, Meta, Struct, UnsetType, field
from msgspec.json import Encoder
from msgspec.structs import astuple

from blockdsl.cutting.finishing import WaddingPlan
from blockdsl.cutting.sizes import Extent
from blockdsl.diagnostics import Diagnostic
from blockdsl.facts import cloth_document
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.blockrecord import Alternative, AtSize, BlockRecord, FabricFacts, RulerUnit, UnitFacts
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, WordsFacts
from blockdsl.facts.cloth_document import Backing, Binding, FabricCloth, Scraps, Sleeve
from blockdsl.facts.collect import FileFacts
from blockdsl.facts.drafting import DraftFacts, draft
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltrecord import QuiltRecord
from blockdsl.facts.quiltstepfacts import QuiltStepFacts
from blockdsl.facts.stepfacts import Part, StepFacts, StepRecord
from blockdsl.geometry import Exact
from blockdsl.geometry.arc import CurvedArea
from blockdsl.geometry.polygon import Point
from blockdsl.model.fabric import PressingChoice
from blockdsl.model.language import Language
from blockdsl.model.lengths import write_length
from blockdsl.model.maker import Maker
from blockdsl.model.quilt import KindRole, PlacedBlock
from blockdsl.record import Count, Name, Record, Rest, says
from blockdsl.sewing.order import SeamCount

SCHEMA: Final = 2
_ID: Final = "urn:blockdsl:facts:2"
_RECORDS: Final = 4
"""How deep the records of a block lie: in a list, in a block, in the list of blocks, in the document."""


class StepWords(Protocol):
    """The words of a step: its title, and all that there is to do."""

    @property
    def title(self) -> str:
        """Its name, how many are made, their size."""

    @property
    def text(self) -> str:
        """All sentences and measures on one line."""


Describe = Callable[[BlockFacts], Sequence[StepWords]]
"""Gives the words of all steps of a block, in order; they are made where a document is written."""
DescribeQuilt = Callable[[QuiltFacts], Sequence[StepWords]]
"""The same for a quilt."""

Title = Annotated[
    str, Meta(description="What is made, how many, its finished size; empty where no words are asked for.")
]
Text = Annotated[str, Meta(description="The step in words; empty where none are asked for.")]


class UnitDocument(UnitFacts, frozen=True, kw_only=True):
    """A unit to make. Mirror images are units of their own."""

    alternatives: Annotated[
        tuple[Alternative, ...],
        says("Every way in which the units can be made. None for units of very many patches."),
    ]


class StepDocument(StepRecord, frozen=True, kw_only=True):
    """One step. A method's unit takes cut pieces and has no seams of its own."""

    title: Title
    text: Text
    parts: Annotated[
        tuple[Part, ...],
        says("The patches and units that one result takes, as its actions number them, from 0."),
    ]


class SizeDocument(AtSize, frozen=True, kw_only=True):
    """What differs at a further size of a block."""

    units: tuple[UnitDocument, ...]


class BlockDocument(BlockRecord, frozen=True, kw_only=True):
    """One block at one size."""

    drawn_on: DraftFacts
    units: tuple[UnitDocument, ...]
    steps: Annotated[
        tuple[StepDocument, ...],
        says(
            "In the order of making; empty when the block is one patch, when no order of sewing is known, or when it "
            "has more than 4,000 patches."
        ),
    ]
    seams: Annotated[SeamCount | None, says("How many seams of each kind; null when no order of sewing is known.")]
    area_by_fabric: Annotated[Mapping[str, str], says("Exact; with curves a sum with a multiple of pi: `36-9/4pi`.")]
    extents: Annotated[
        tuple[Extent, ...],
        says("Its own size, then the further sizes that it or books ask for, in the same unit."),
    ] = field(name="sizes")
    at_sizes: Annotated[
        tuple[SizeDocument, ...],
        says("What differs at each further size that the block's own `sizes` line asks for."),
    ]


class QuiltKind(Record, frozen=True):
    """A block, a half block or the unit of a border, and how often it is made."""

    name: Name
    role: KindRole
    finished: Extent
    count: Count
    colourways: Annotated[
        Mapping[str, Count], says("How many in which colourway; the block's own colours have no name.")
    ]


class BlockPlace(Record, frozen=True):
    """A block in its place."""

    kind: Annotated[Rest, says("Its place in the list of kinds.")]
    turns: Annotated[str, says("As the language writes them after a block.")]
    at: Annotated[
        Point,
        says(
            "The top left corner of its box, from that of the quilt; on point its topmost corner, about which the "
            "turned block is turned an eighth clockwise."
        ),
    ]
    on_point: bool
    colourway: str
    row: Annotated[Rest, says("Counted from 0; in a border the side: top, right, bottom, left.")]
    column: Annotated[Rest, says("Counted from 0; in a border the place along its side, clockwise.")]
    round: Annotated[Rest, says("The border that it is in, 0 for none.")]


class QuiltStepDocument(QuiltStepFacts, frozen=True, kw_only=True):
    """One step of putting the quilt together. Of a diagonal row with triangles the length is that of its blocks."""

    title: Title
    text: Text


class QuiltDocument(QuiltRecord, frozen=True, kw_only=True):
    """A quilt: what lies where, all that is cut, the order of sewing, and what the whole quilt takes.

    What it takes is left out where it is not asked for, and null for what the quilt does not have.
    """

    places: Annotated[tuple[Count, Count], says("Blocks across and down, as they were asked for.")]
    blocks: Annotated[Mapping[str, Count], says("Whole blocks by name.")]
    half_blocks: Annotated[Mapping[str, Count], says("Half blocks that are pieced, by name.")]
    kinds: tuple[QuiltKind, ...]
    colours: Annotated[tuple[FabricFacts, ...], says("All fabrics of the quilt, backing and binding too.")]
    fabrics: tuple[FabricCloth, ...] | UnsetType = UNSET
    backing: Backing | UnsetType | None = UNSET
    binding: Binding | UnsetType | None = UNSET
    wadding: WaddingPlan | UnsetType | None = UNSET
    sleeve: Sleeve | UnsetType | None = UNSET
    scraps: tuple[Scraps, ...] | UnsetType = UNSET
    steps: tuple[QuiltStepDocument, ...]
    placed: tuple[BlockPlace, ...]


class BookItem(Record, frozen=True, omit_defaults=True):
    """Words of the maker's own (the file's name, as she wrote it), a quilt by its name, or a block and its sizes."""

    text: str = ""
    quilt: str = ""
    block: str = ""
    sizes: tuple[SizeDocument, ...] = ()


class ChapterDocument(Record, frozen=True):
    """A chapter; what stands before the first one has an empty title."""

    title: str
    items: tuple[BookItem, ...]


class BookDocument(Record, frozen=True):
    """What a book prints."""

    name: str
    author: str
    subtitle: str
    paper: Annotated[str, says("`letter`, `a4`, `legal`, `tabloid`, `a3`, or a roll such as `roll 36 in`.")]
    pressing: PressingChoice
    language: Language
    maker: Annotated[Maker, says("Who made it, and what stands at the foot of its pages.")]
    chapters: tuple[ChapterDocument, ...]
    techniques: Annotated[bool, says("Whether the ways of making are told.")]


class Problem(Record, frozen=True):
    """A problem, where it is, and how to fix it."""

    code: Annotated[str, Meta(pattern="^[a-z0-9]+(-[a-z0-9]+)*$")]
    severity: Literal["error", "warning"]
    file: str
    line: Count
    column: Count
    message: Name
    help: str | None


class FactsDocument(Record, frozen=True):
    """What `blockdsl facts FILE` writes. All lists are in a stable order."""

    schema: Literal[2]
    file: str
    unit: Annotated[Literal["in", "cm", "mixed"], says("Of all blocks, or `mixed` when they differ.")]
    blocks: tuple[BlockDocument, ...]
    quilts: Annotated[
        tuple[QuiltDocument, ...],
        says("The file's own quilts, and those of other files that its books print."),
    ]
    books: tuple[BookDocument, ...]
    problems: tuple[Problem, ...]


# --- from facts to the document --------------------------------------------------------------------


def facts_document(
    facts: FileFacts, problems: Iterable[Diagnostic], describe: Describe, describe_quilt: DescribeQuilt
) -> FactsDocument:
    """The document of a file, problems included."""
    units = {block.unit for block in facts.blocks}
    return FactsDocument(
        SCHEMA,
        _readable(facts.file),
        units.pop() if len(units) == 1 else ("in" if not units else "mixed"),
        tuple(block_document(block, _asked_sizes(block, facts.books), describe) for block in facts.blocks),
        tuple(quilt_document(quilt, describe_quilt) for quilt in facts.quilts),
        tuple(map(_book, facts.books)),
        tuple(map(_problem, problems)),
    )


def block_document(block: BlockFacts, asked: Sequence[Extent] = (), describe: Describe | None = None) -> BlockDocument:
    """One block; `asked` are further sizes that books print, in its unit.

    Without `describe` the steps have their data and no words.
    """
    words = describe(block) if describe else [None] * len(block.steps)
    return BlockDocument(
        **_shared(block, BlockRecord),
        drawn_on=draft(block),
        units=_units(block),
        steps=tuple(_step(step, said) for step, said in zip(block.steps, words, strict=True)),
        seams=block.seams,
        area_by_fabric={name: _area(area, block.unit) for name, area in block.area_by_fabric},
        extents=(block.finished, *asked),
        at_sizes=tuple(map(_size, block.sizes)),
    )


def _shared(facts: Struct, kind: type[Struct]) -> dict[str, Any]:
    """The fields that facts have in common with their document; its units are the document's own."""
    return {name: getattr(facts, name) for name in kind.__struct_fields__ if name != "units"}


def _units(block: BlockFacts) -> tuple[UnitDocument, ...]:
    ways = block.alternatives or ((),) * len(block.units)
    return tuple(UnitDocument(*astuple(unit), alternatives=each) for unit, each in zip(block.units, ways, strict=True))


def _size(block: BlockFacts) -> SizeDocument:
    return SizeDocument(**_shared(block, AtSize), units=_units(block))


def _step(step: StepFacts, words: StepWords | None) -> StepDocument:
    parts = (part for hand in step.hands[:1] for part in hand.ingredients)
    return StepDocument(
        **_shared(step, StepRecord),
        title=words.title if words else "",
        text=words.text if words else "",
        parts=tuple(
            Part(unit=part.name, step=part.step or 0)
            if part.fabric is None
            else Part(patch=part.name, fabric=part.fabric)
            for part in parts
        ),
    )


def _area(area: Exact | CurvedArea, unit: RulerUnit) -> str:
    return str(area) if isinstance(area, CurvedArea) else write_length(area, unit)


def _asked_sizes(block: BlockFacts, books: Iterable[BookFacts]) -> list[Extent]:
    """The further sizes that the block or books ask for, each once, those in the block's own unit alone."""
    asked = (size for book in books for found in book.blocks if found.name == block.name for size in found.sizes)
    sizes = (
        size.finished
        for size in chain(block.sizes, asked)
        if size.unit == block.unit and size.finished != block.finished
    )
    return list(dict.fromkeys(sizes))


def quilt_document(quilt: QuiltFacts, describe: DescribeQuilt | None = None) -> QuiltDocument:
    """One quilt; without `describe` its steps have no words."""
    words = describe(quilt) if describe else [None] * len(quilt.steps)
    found = quilt.finishing.facts if quilt.finishing is not None else None
    takes: dict[str, Any] = {}
    if found is not None:
        takes = {
            "fabrics": tuple(map(cloth_document.fabric_cloth, found.fabrics)),
            "backing": found.backing and cloth_document.backing(found.backing),
            "binding": found.binding and cloth_document.binding(found.binding),
            "wadding": found.wadding,
            "sleeve": found.sleeve and cloth_document.sleeve(found.sleeve),
            "scraps": tuple(map(cloth_document.scraps, found.scraps)),
        }
    return QuiltDocument(
        **_shared(quilt, QuiltRecord),
        **takes,
        places=(quilt.across, quilt.down),
        blocks=dict(quilt.blocks),
        half_blocks=dict(quilt.half_blocks),
        kinds=tuple(
            QuiltKind(kind.name, kind.role, kind.block.finished, kind.count, dict(kind.colourways))
            for kind in quilt.kinds
        ),
        colours=quilt.fabrics_used,
        steps=tuple(
            QuiltStepDocument(
                **_shared(step, QuiltStepFacts), title=said.title if said else "", text=said.text if said else ""
            )
            for step, said in zip(quilt.steps, words, strict=True)
        ),
        placed=tuple(map(_placed, quilt.placed)),
    )


def _placed(place: PlacedBlock) -> BlockPlace:
    return BlockPlace(
        kind=place.kind,
        turns=place.turns,
        at=Point(place.x, place.y),
        on_point=place.on_point,
        colourway=place.colourway,
        row=place.row,
        column=place.column,
        round=place.ring,
    )


def _book(book: BookFacts) -> BookDocument:
    chapters = tuple(ChapterDocument(chapter.title, tuple(map(_book_item, chapter.items))) for chapter in book.chapters)
    said = book.name, book.author, book.subtitle, book.paper, book.pressing, book.language, book.maker
    return BookDocument(*said, chapters, book.techniques)


def _book_item(found: WordsFacts | BookBlockFacts | QuiltFacts) -> BookItem:
    if isinstance(found, WordsFacts):
        return BookItem(text=found.path)
    if isinstance(found, QuiltFacts):
        return BookItem(quilt=found.name)
    return BookItem(block=found.name, sizes=tuple(map(_size, found.sizes)))


def _problem(problem: Diagnostic) -> Problem:
    span = problem.span
    message, fix = _readable(problem.message), problem.help and _readable(problem.help)
    return Problem(problem.code, problem.severity, _readable(span.source.name), span.line, span.column, message, fix)


def _readable(text: str) -> str:
    """With question marks for halves of characters, which names of files may have and JSON may not."""
    return text.encode("utf-8", "replace").decode()


# --- from the document to JSON ---------------------------------------------------------------------


def _encoder(unit: RulerUnit) -> Callable[[object], bytes]:
    @lru_cache(maxsize=4096)  # a block has few lengths, each of them many times
    def written(number: Exact) -> str:
        return write_length(number, unit)

    return Encoder(enc_hook=written).encode


_ENCODE: Final[Mapping[RulerUnit, Callable[[object], bytes]]] = {"in": _encoder("in"), "cm": _encoder("cm")}


def write_json(document: Struct) -> str:
    """JSON over several lines, with each record of a list on one: to be read, compared, and written quickly."""
    return _laid_out(document, 0, _ENCODE["in"]).decode()


def _laid_out(value: object, depth: int, encode: Callable[[object], bytes]) -> bytes:
    if isinstance(value, AtSize | QuiltRecord):
        encode = _ENCODE[value.unit]
    names: list[bytes] = []
    inside: Sequence[object] = value if isinstance(value, tuple) else ()
    if isinstance(value, Struct):
        named = [
            (name, item)
            for name, item in zip(value.__struct_encode_fields__, astuple(value), strict=True)
            if item is not UNSET and (item or not isinstance(value, BookItem))
        ]
        names, inside = [encode(name) + b": " for name, _ in named], [item for _, item in named]
    if _is_on_a_line(value, inside, depth):
        return encode(value)
    start, end = b"\n" + b" " * (depth + 1), b"\n" + b" " * depth
    items = [_laid_out(item, depth + 1, encode) for item in inside]
    opening, closing = (b"{", b"}") if names else (b"[", b"]")
    lines = map(bytes.__add__, names, items) if names else items
    return opening + start + (b"," + start).join(lines) + end + closing


def _is_on_a_line(value: object, inside: Sequence[object], depth: int) -> bool:
    """Whether nothing is to be seen in it; the sizes in a book may be in different units, so each is by itself."""
    if isinstance(value, ChapterDocument | BookItem) or (inside and isinstance(inside[0], BookItem | SizeDocument)):
        return False
    return depth >= _RECORDS or not any(isinstance(item, Struct | tuple | dict) for item in inside)
