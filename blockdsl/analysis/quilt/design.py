"""One quilt from its declaration: its blocks found, its places filled, its borders sewn round."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final, cast

from msgspec.structs import replace

from blockdsl.analysis.maker_choices import read_language, read_maker, read_pressing, report_choices
from blockdsl.analysis.quilt.bands import plan_rings
from blockdsl.analysis.quilt.choosing import by_rows, every_second, with_rules
from blockdsl.analysis.quilt.counting import MOST_COUNT, with_places
from blockdsl.analysis.quilt.fabrics import fabrics_of
from blockdsl.analysis.quilt.fits import (
    are_alike,
    colourways_are_known,
    few_enough,
    halves_fit,
    is_square,
    small_enough,
    turns_fit,
)
from blockdsl.analysis.quilt.idle import report_idle_lines
from blockdsl.analysis.quilt.middle import BlockHere, Here, PlainSquare, Sashing, Top
from blockdsl.analysis.quilt.pieces import Designs
from blockdsl.analysis.quilt.plan import SettingPlan
from blockdsl.analysis.quilt.rings import RingPlan, lay_rings
from blockdsl.analysis.quilt.ruler import report_quilt_off_the_ruler
from blockdsl.analysis.quilt.settings import Finish, SettingWords, first_line, read_finish
from blockdsl.analysis.scope import Scope
from blockdsl.analysis.settings import whole_number
from blockdsl.diagnostics import Problems, Span
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import from_turns
from blockdsl.model import BlockDesign
from blockdsl.model.quilt import PlacedCloth, QuiltDesign, Setting
from blockdsl.syntax import ast

SetLine = ast.SetGrid | ast.SetRows | ast.SetMedallion
_TURNS: Final = "><~"


class QuiltReader:
    """Puts one quilt together. What is wrong is reported, and then there is no quilt."""

    def __init__(self, quilt: ast.QuiltDeclaration, names: Scope, designs: Designs, problems: Problems) -> None:
        """`names` are those of the file that the quilt is written in."""
        self._quilt = quilt
        self._names = names
        self._designs = designs
        self._problems = problems
        width = first_line(quilt.lines, ast.BlocksSize)
        self._width = None if width is None else width.width

    def design(self) -> QuiltDesign | None:
        """The quilt as it will look when it is finished; None when it has errors."""
        lines = self._quilt.lines
        report_choices(lines, self._problems)
        errors = sum(1 for problem in self._problems if problem.severity == "error")
        line = self._set_line()
        if isinstance(line, ast.SetCount):
            line = self._with_places(line)
        if line is None:
            return None
        lines = self._quilt.lines
        rows, main = self._blocks(line)
        if main is None:
            return None
        words = SettingWords(self._names, main.unit, self._problems)
        finish = read_finish(lines, words)
        plan = self._plan(line, rows, main, words)
        rings = None if plan is None else plan_rings(lines, plan.size(), main, words, self._designs)
        if plan is None or rings is None or not self._is_small_enough(plan, rings):
            return None
        if sum(1 for problem in self._problems if problem.severity == "error") > errors:
            return None
        quilt = self._assemble(plan, rings, finish)
        report_idle_lines(lines, plan, _of_blocks(quilt), self._problems)
        report_quilt_off_the_ruler(lines, plan, rings, self._problems)
        return quilt

    def _is_small_enough(self, plan: SettingPlan, rings: list[RingPlan]) -> bool:
        around = 2 * sum((ring.width for ring in rings), Fraction(0))
        width, height = plan.size()
        return small_enough((width + around, height + around), plan.main, self._quilt.name.span, self._problems)

    def _report(self, code: str, span: Span, advice: str | None, **values: object) -> None:
        self._problems.report(code, span, help=advice, related=(), fixes=(), **values)

    # --- the setting -------------------------------------------------------------------------

    def _with_places(self, line: ast.SetCount) -> ast.SetGrid | None:
        """The same line with the blocks across and down worked out; all that follows reads it so."""
        main = self._designs.block(line.block, self._width)
        if main is None:
            return None
        alternates = first_line(self._quilt.lines, ast.Alternate) is not None
        grid = with_places(line, main, alternates=alternates, problems=self._problems)
        if grid is not None:
            lines = tuple(grid if each is line else each for each in self._quilt.lines)
            self._quilt = replace(self._quilt, lines=lines)
        return grid

    def _set_line(self) -> SetLine | ast.SetCount | None:
        """How the blocks are set; rows alone are enough. None when nothing is said that can be laid."""
        lines = self._quilt.lines
        line = next((line for line in lines if isinstance(line, SetLine | ast.SetCount)), None)
        row = first_line(lines, ast.QuiltRow)
        if row is not None and isinstance(line, ast.SetGrid | ast.SetCount | ast.SetMedallion):
            advice = "take the rows out, or write `set rows` and name every place in them"
            self._report("setting-twice", row.span, advice, what="set")
            return None
        if any(isinstance(each, ast.UnreadableLine) and each.keyword in ("set", "row") for each in lines):
            return None
        if line is None or isinstance(line, ast.SetRows):
            if row is not None:
                return line or ast.SetRows(row.span)
            advice = 'say how its blocks are set, for example `set straight 4 x 6 of "Harbour Light"`'
            if line is not None:
                advice = 'name the blocks of each row, for example `row "Harbour Light" "Chain"> fog`'
            self._report("quilt-without-blocks", self._quilt.name.span, advice, name=self._quilt.name.text)
            return None
        return line

    def _blocks(self, line: SetLine) -> tuple[list[list[Here]], BlockDesign | None]:
        """What the rows name, place by place, and the block that gives the size; None when one of them is wrong."""
        if not isinstance(line, ast.SetRows):
            return [], self._designs.block(line.block, self._width)
        rows: list[list[Here]] = []
        complete = True
        for row in (each for each in self._quilt.lines if isinstance(each, ast.QuiltRow)):
            found = [self._place(place) for place in row.places]
            complete = complete and None not in found
            if rows and len(found) != len(rows[0]):
                code = "row-too-short" if len(found) < len(rows[0]) else "row-too-long"
                places, wanted = (f"{len(each)} place{'s' * (len(each) != 1)}" for each in (found, rows[0]))
                self._report(code, row.span, "give every row as many places", found=places, wanted=wanted)
                complete = False
            rows.append(cast("list[Here]", found))
        blocks = [here.design for row in rows for here in row if isinstance(here, BlockHere)]
        if complete and not blocks:
            advice = 'name a block by its title, for example `row "Harbour Light" fog`'
            self._report("quilt-without-blocks", self._quilt.name.span, advice, name=self._quilt.name.text)
        return rows, blocks[0] if complete and blocks else None

    def _place(self, place: ast.RowPlace) -> Here | None:
        if isinstance(place.name, ast.Word):
            fabric = SettingWords(self._names, "in", self._problems).fabric(place.name)
            return None if fabric is None else PlainSquare(fabric)
        title, turns = place.name, "".join(place.turns)
        bare = title.text.rstrip(_TURNS)
        if title.text not in self._names.blocks and bare in self._names.blocks:
            # The turns may stand inside the quotation marks as well.
            title, turns = ast.Text(title.span, bare), title.text[len(bare) :] + turns
        design = self._designs.block(title, self._width)
        return None if design is None else BlockHere(design, from_turns(turns))

    def _plan(
        self, line: SetLine, rows: list[list[Here]], main: BlockDesign, words: SettingWords
    ) -> SettingPlan | None:
        """The setting with all that lies between its blocks; None when something does not fit, which is reported."""
        lines = self._quilt.lines
        other, other_is_right = self._other(words)
        fill_line, sash_line = first_line(lines, ast.Fill), first_line(lines, ast.Sash)
        fill = words.fabric(fill_line.fabric) if fill_line else None
        sashing = _sashing(sash_line, words) if sash_line else None
        counts = self._counts(line, rows)
        if counts is None or not other_is_right or (fill_line and not fill) or (sash_line and not sashing):
            return None
        setting, on_point = _setting_of(line)
        choose = by_rows(rows) if rows else every_second(main, other, on_point=on_point)
        plan = SettingPlan(
            setting=setting,
            on_point=on_point,
            across=counts[0],
            down=counts[1],
            main=main,
            choose=with_rules(choose, lines, on_point=on_point),
            sashing=None if setting == "strippy" else sashing,
            fill=fill or (other if on_point and isinstance(other, str) else None),
            strip=_strip(sashing, fill, main) if setting == "strippy" else None,
        )
        designs = [main, *(here.design for row in rows for here in row if isinstance(here, BlockHere))]
        designs += [other] if isinstance(other, BlockDesign) else []
        return plan if self._fits(plan, line.span, rows, designs) else None

    def _counts(self, line: SetLine, rows: list[list[Here]]) -> tuple[int, int] | None:
        if isinstance(line, ast.SetRows):
            return len(rows[0]), len(rows)
        if isinstance(line, ast.SetMedallion):
            return 1, 1
        across = whole_number(line.across, "number of blocks", self._problems, most=MOST_COUNT)
        down = whole_number(line.down, "number of blocks", self._problems, most=MOST_COUNT)
        return None if across is None or down is None else (across, down)

    def _other(self, words: SettingWords) -> tuple[BlockDesign | str | None, bool]:
        """The second block or the fabric that `alternate` names, and whether nothing is wrong with it."""
        line = first_line(self._quilt.lines, ast.Alternate)
        if line is None:
            return None, True
        if isinstance(line.what, ast.Text):
            design = self._designs.block(line.what, self._width)
            return design, design is not None
        fabric = words.fabric(line.what)
        return fabric, fabric is not None

    def _fits(self, plan: SettingPlan, span: Span, rows: list[list[Here]], designs: list[BlockDesign]) -> bool:
        lines, problems = self._quilt.lines, self._problems
        if not few_enough(plan.places, span, problems):
            return False
        alternate = first_line(lines, ast.Alternate)
        fits = are_alike(plan.main, designs, alternate.span if alternate else span, problems)
        fits = turns_fit(plan.main, lines, rows, problems) and fits
        fits = colourways_are_known(lines, designs, problems) and fits
        if plan.on_point:
            fits = is_square(plan.main, span, problems) and fits
        if (plan.on_point and plan.fill is None) or (plan.setting == "strippy" and plan.strip is None):
            wanted = "the plain strips" if plan.setting == "strippy" else "the setting triangles"
            self._report("fill-missing", span, "add the fabric, for example `fill fog`", wanted=wanted)
            return False
        if fits and plan.setting == "dropped columns":
            return halves_fit(designs, plan.sashing, pieced=plan.fill is None, span=span, problems=problems)
        return fits

    # --- the whole ---------------------------------------------------------------------------

    def _assemble(self, plan: SettingPlan, rings: list[RingPlan], finish: Finish) -> QuiltDesign:
        around = sum((ring.width for ring in rings), Fraction(0))
        top = Top(around, around)
        plan.lay(top)
        middle = plan.size()
        laid = lay_rings(top, rings, middle)
        main, palette = plan.main, tuple(self._names.fabrics.values())
        return QuiltDesign(
            name=self._quilt.name.text,
            span=self._quilt.name.span,
            unit=main.unit,
            seam=main.seam,
            measure=main.measure,
            setting=plan.setting,
            across=plan.across,
            down=plan.down,
            width=middle[0] + 2 * around,
            height=middle[1] + 2 * around,
            middle=middle,
            kinds=tuple(top.kinds),
            blocks=tuple(top.blocks),
            cloth=tuple(top.cloth),
            rows=tuple(top.rows),
            rings=tuple(laid),
            fabrics=fabrics_of(_named(top.cloth, finish), top.kinds, top.blocks, palette),
            palette=palette,
            notes=tuple(line.text.text for line in self._quilt.lines if isinstance(line, ast.Note)),
            binding=finish.binding,
            backing=finish.backing,
            wadding=finish.wadding,
            sleeve=finish.sleeve,
            scraps=finish.scraps,
            usable_width=finish.usable_width,
            shrinkage=finish.shrinkage,
            pressing=read_pressing(self._quilt.lines),
            language=read_language(self._quilt.lines),
            maker=read_maker(self._quilt.lines),
        )


def _named(cloth: Iterable[PlacedCloth], finish: Finish) -> set[str]:
    """The fabrics of the plain cloth, and of what is sewn round and behind."""
    choices = (finish.binding, finish.backing, finish.sleeve)
    return {each.fabric for each in cloth} | {choice.fabric for choice in choices if choice}


def _of_blocks(quilt: QuiltDesign) -> list[str]:
    """The fabrics that its blocks are pieced from, whatever their colourway, in order."""
    names = {fabric.name for kind in quilt.kinds for fabric in kind.design.fabrics}
    names |= {new for kind in quilt.kinds for plan in kind.design.colourways for _, new in plan.replaces}
    return [fabric.name for fabric in quilt.fabrics if fabric.name in names]


def _setting_of(line: SetLine) -> tuple[Setting, bool]:
    """The setting, and whether its blocks are on point."""
    if isinstance(line, ast.SetGrid):
        return line.pattern, line.pattern == "on point"
    if isinstance(line, ast.SetMedallion):
        return "medallion", line.on_point
    return "rows", False


def _sashing(line: ast.Sash, words: SettingWords) -> Sashing | None:
    width, fabric = words.length(line.width, "width of the sashing"), words.fabric(line.fabric)
    posts = words.fabric(line.posts)
    if width is None or fabric is None or (line.posts is not None and posts is None):
        return None
    return Sashing(width, fabric, posts, line.outer)


def _strip(sashing: Sashing | None, fill: str | None, main: BlockDesign) -> tuple[Fraction, str, bool] | None:
    """The plain strips of a strippy quilt: as the `sash` line says, or of the filling, as wide as a block."""
    if sashing is not None:
        return sashing.width, sashing.fabric, sashing.outer
    return None if fill is None else (main.width, fill, False)
