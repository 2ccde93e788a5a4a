"""What cannot be in a quilt's cloth and finishing: cloth too narrow, prints that clash, fat quarters too few."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockdsl.cutting.finishing import JOIN
from blockdsl.cutting.finishing_binding import BindingCloth, can_be_cut
from blockdsl.cutting.quilt_cloth import QuiltPiece, backing_width, cloth_width
from blockdsl.diagnostics import Problems, Span
from blockdsl.facts.finishingfacts import ScrapsFacts
from blockdsl.facts.quiltrecord import QuiltCutFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.lengths import about, write_size
from blockdsl.model.quilt import QuiltDesign, ScrapsChoice

WIDER = "make the blocks smaller, give the fabric its `width`, or join two widths before you cut"
UPRIGHT = "its print is directional, so the piece cannot be turned: give the fabric its `width`, or use another one"
ACROSS = (
    "they are cut across the cloth, and joined where they are longer than it is wide; to have the whole {word} cut "
    "along the length, take a fabric without an up and a down"
)
NARROWER = "cut narrower strips, or bind with a wider fabric"
WHOLE_WIDTH = "give the fabric its whole `width`, from selvage to selvage"


def report_too_large(
    quilt: QuiltDesign,
    pieces: Iterable[tuple[str, QuiltPiece]],
    cuts: Sequence[QuiltCutFacts],
    problems: Problems,
) -> None:
    """Fabrics that do not hold what is cut from them, each with the first such piece; they are not bought."""
    for name, piece in pieces:
        width = cloth_width(quilt, name)
        stands = not piece.may_turn and min(piece.cut) <= width
        problems.report(
            "piece-wider-than-fabric",
            quilt.span,
            piece=f"a {cuts[int(piece.key)].piece} of {write_size(*piece.cut, quilt.unit)}",
            name=name,
            width=f"{about(width, quilt.unit, quilt.measure)} {quilt.unit}",
            help=UPRIGHT if stands else WIDER,
        )


def report_upright_borders(quilt: QuiltDesign, problems: Problems) -> None:
    """Borders along the length of a print with an up and a down, two sides of which must run across it."""
    upright = {fabric.name for fabric in quilt.fabrics if fabric.directional}
    for ring in quilt.rings:
        if ring.lengthwise and ring.fabric in upright:
            problems.report(
                "directional-border", ring.span, word=ring.word, name=ring.fabric, help=ACROSS.format(word=ring.word)
            )


def report_finishing(quilt: QuiltDesign, problems: Problems) -> None:
    """Binding, backing and sleeve whose cloth is too narrow for them; they are left out of the facts."""
    binding, backing, sleeve = quilt.binding, quilt.backing, quilt.sleeve
    if binding is not None:
        width = cloth_width(quilt, binding.fabric)
        if not can_be_cut(binding.strip_width, BindingCloth(width, quilt.measure, quilt.seam, quilt.unit)):
            piece = f"a binding of {write_size(binding.strip_width, binding.strip_width, quilt.unit)}"
            _too_narrow(quilt, (piece, binding.fabric, width, NARROWER), binding.span, problems)
    if backing is not None and (width := backing_width(quilt, backing)) <= 2 * JOIN[quilt.unit]:
        _too_narrow(quilt, ("a backing", backing.fabric, width, WHOLE_WIDTH), backing.span, problems)
    if sleeve is not None and (width := cloth_width(quilt, sleeve.fabric)) <= 2 * quilt.seam:
        _too_narrow(quilt, ("a sleeve", sleeve.fabric, width, WHOLE_WIDTH), sleeve.span, problems)


def _too_narrow(quilt: QuiltDesign, what: tuple[str, str, Fraction, str], span: Span, problems: Problems) -> None:
    """`what`: the thing, its fabric, the width that there is of it, and the mend."""
    piece, name, width, mend = what
    room = max(width, Fraction(0))
    said = write_size(room, room, quilt.unit)
    problems.report("piece-wider-than-fabric", span, piece=piece, name=name, width=said, help=mend)


def report_scraps(choice: ScrapsChoice, scraps: ScrapsFacts, problems: Problems) -> None:
    """Prints that meet their like although they are as few as that, and fat quarters that do not give their blocks."""
    if scraps.clashes:
        least = "fewer cannot be" if scraps.proved else f"fewer than {scraps.bound:,} cannot be"
        problems.report(
            "prints-too-few",
            choice.span,
            pairs=_many(scraps.clashes, "pair"),
            name=choice.fabric,
            prints=_many(choice.prints, "print"),
            least=least,
            help="four prints are always enough for neighbours, five or more for corners too in most settings",
        )
    if scraps.blocks and not scraps.blocks_each:
        problems.report(
            "fat-quarters-too-few",
            choice.span,
            name=choice.fabric,
            what="one block takes more than one fat quarter",
            help="make the blocks smaller, or buy the fabric by its length",
        )
    elif scraps.fat_quarters is not None and max(scraps.fat_quarters, default=0) > 1:
        wanted, each = -(-len(scraps.blocks) // scraps.blocks_each), _many(scraps.blocks_each, "block")
        problems.report(
            "fat-quarters-too-few",
            choice.span,
            name=choice.fabric,
            what=f"one gives {each}, and there are {len(scraps.blocks):,}",
            help=f"take {_many(wanted, 'fat quarter')}, or {max(scraps.fat_quarters)} of a print",
        )


def _many(count: int, word: str) -> str:
    return f"{count} {word}" if count == 1 else f"{count:,} {word}s"
