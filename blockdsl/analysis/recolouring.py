"""Another colourway throughout, with a note that says so, once blocks and quilts have been laid."""

from __future__ import annotations

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.analysis.override import WhatIf
from blockdsl.analysis.quilt.fabrics import fabrics_of
from blockdsl.model import BlockDesign, BookDesign, QuiltDesign
from blockdsl.model.book import BlockInBook, ChapterDesign, QuiltInBook, WordsInBook
from blockdsl.model.quilt import PlacedBlock
from blockdsl.model.recolour import recoloured


class Recoloured(Struct):
    """The designs of one file in another colourway. What was one design before is one design after."""

    what_if: WhatIf
    _blocks: dict[int, tuple[BlockDesign, BlockDesign]] = field(default_factory=dict)
    _quilts: dict[int, tuple[QuiltDesign, QuiltDesign]] = field(default_factory=dict)

    def block(self, design: BlockDesign) -> BlockDesign:
        """The block in the colourway, if it has that; a note says what was changed."""
        # The design before is kept beside the other, so that no other design comes by its number.
        if id(design) not in self._blocks:
            self._blocks[id(design)] = design, self._block(design)
        return self._blocks[id(design)][1]

    def _block(self, design: BlockDesign) -> BlockDesign:
        plan = next((plan for plan in design.colourways if plan.name == self.what_if.colourway), None)
        coloured = design if plan is None else recoloured(design, plan)
        return replace(coloured, notes=(*design.notes, *self._note(in_colourway=plan is not None, in_quilt=False)))

    def quilt(self, design: QuiltDesign) -> QuiltDesign:
        """The quilt with every block in the colourway that has it, those of borders too."""
        if id(design) not in self._quilts:
            self._quilts[id(design)] = design, self._quilt(design)
        return self._quilts[id(design)][1]

    def _quilt(self, design: QuiltDesign) -> QuiltDesign:
        colourway = self.what_if.colourway or ""
        having = {
            place
            for place, kind in enumerate(design.kinds)
            if any(plan.name == colourway for plan in kind.design.colourways)
        }

        def placed(place: PlacedBlock) -> PlacedBlock:
            return replace(place, colourway=colourway) if place.kind in having else place

        blocks = tuple(map(placed, design.blocks))
        named = {cloth.fabric for cloth in design.cloth}
        named |= {choice.fabric for choice in (design.binding, design.backing, design.sleeve) if choice}
        return replace(
            design,
            blocks=blocks,
            fabrics=fabrics_of(named, design.kinds, blocks, design.palette),
            notes=(*design.notes, *self._note(in_colourway=bool(having), in_quilt=True)),
        )

    def book(self, design: BookDesign) -> BookDesign:
        """The book with its blocks and quilts in the colourway, at the sizes that it prints."""

        def item(found: WordsInBook | BlockInBook | QuiltInBook) -> WordsInBook | BlockInBook | QuiltInBook:
            match found:
                case BlockInBook():
                    return replace(found, sizes=tuple(map(self.block, found.sizes)))
                case QuiltInBook():
                    return replace(found, design=self.quilt(found.design))
                case _:
                    return found

        chapters = tuple(ChapterDesign(part.title, tuple(map(item, part.items))) for part in design.chapters)
        return replace(design, chapters=chapters)

    def _note(self, *, in_colourway: bool, in_quilt: bool) -> tuple[str, ...]:
        """In one sentence what is not as the file says, so that a printed sheet is not taken for that of the file."""
        said = [f"blocks of {self.what_if.size_words}"] if self.what_if.size and in_quilt else []
        said += [f"at {self.what_if.size_words}"] if self.what_if.size and not in_quilt else []
        said += [f"set {self.what_if.set_words}"] if self.what_if.sets and in_quilt else []
        said += [f"in the colourway {self.what_if.colourway}"] if in_colourway else []
        return (f"What if, not as the file says: {', '.join(said)}.",) if said else ()
