"""A quilt's cloth and finishing as JSON: strips in the order in which they are cut, lengths as strings."""

from __future__ import annotations

from collections.abc import Callable

from blockdsl.cutting.buying import Buy
from blockdsl.cutting.cloth import ClothPlan, Panel, Section, Sheet, Strip
from blockdsl.cutting.fat_quarters import FatQuarterUse
from blockdsl.facts.finishingfacts import (
    BackingFacts,
    BindingFacts,
    ClothPieceFacts,
    FabricClothFacts,
    FinishingFacts,
    ScrapsFacts,
    SleeveFacts,
)
from blockdsl.geometry import Exact

Say = Callable[[Exact], str]


def finishing_document(facts: FinishingFacts, say: Say) -> dict[str, object]:
    """The members of a quilt's document that tell of its cloth and finishing; null for what it does not ask for."""
    wadding = facts.wadding
    return {
        "fabrics": [_fabric(each, say) for each in facts.fabrics],
        "backing": _backing(facts.backing, say) if facts.backing else None,
        "binding": _binding(facts.binding, say) if facts.binding else None,
        "wadding": {"size": _sizes(wadding.size, say), "overage": say(wadding.overage)} if wadding else None,
        "sleeve": _sleeve(facts.sleeve, say) if facts.sleeve else None,
        "scraps": [_scraps(each, say) for each in facts.scraps],
    }


def _sizes(size: tuple[Exact, Exact], say: Say) -> list[str]:
    return [say(size[0]), say(size[1])]


def _buy(buy: Buy, say: Say) -> dict[str, object]:
    return {"need": say(buy.need), "allowed": say(buy.allowed), "buy": buy.words}


def _fabric(cloth: FabricClothFacts, say: Say) -> dict[str, object]:
    plan = cloth.plan
    return {
        "fabric": cloth.fabric,
        "usable_width": say(cloth.usable_width),
        "pieces": [_piece(each, say) for each in cloth.pieces],
        "scraps": cloth.scraps,
        "lengthwise": [_panel(panel, say) for panel in plan.panels] if plan else [],
        "strips": [_strip(strip, say) for strip in plan.strips] if plan else [],
        "joined": [
            {"cut": say(each.cut_width), "strips": each.strips, "last": say(each.last), "pieces": list(each.keys)}
            for each in cloth.joined
        ],
        "need": say(plan.length) if plan else None,
        "bound": say(plan.bound) if plan else None,
        "proved": _proved(plan),
        "allowed": say(cloth.buy.allowed) if cloth.buy else None,
        "buy": cloth.buy.words if cloth.buy else None,
        "fat_quarters": _fat_quarters(cloth.fat_quarters, say) if cloth.fat_quarters else None,
    }


def _proved(plan: ClothPlan | None) -> bool:
    return plan is not None and plan.proved


def _piece(piece: ClothPieceFacts, say: Say) -> dict[str, object]:
    return {"key": piece.key, "cut": _sizes(piece.cut, say), "count": piece.count, "for": dict(piece.uses)}


def _strip(strip: Strip, say: Say) -> dict[str, object]:
    return {
        "cut": say(strip.height),
        "width": say(strip.width),
        "times": strip.times,
        "sections": [_section(section, say) for section in strip.sections],
        "left": say(strip.left),
    }


def _section(section: Section, say: Say) -> dict[str, object]:
    return {
        "width": say(section.width),
        "pieces": [{"piece": each.key, "lies": [say(each.width), say(each.height)]} for each in section.pieces],
    }


def _panel(panel: Panel, say: Say) -> dict[str, object]:
    return {
        "length": say(panel.height),
        "width": say(panel.width),
        "times": panel.times,
        "columns": [_section(column, say) for column in panel.columns],
        "beside": [_strip(strip, say) for strip in panel.strips],
    }


def _fat_quarters(use: FatQuarterUse, say: Say) -> dict[str, object]:
    return {
        "sheet": _sizes(use.sheet, say),
        "blocks_each": use.blocks_each,
        "one_print_a_block": use.one_print_a_block,
        "mixed": use.mixed,
        "mixed_bound": use.mixed_bound,
        "pieces": [{"cut": _sizes(cut, say), "each": each} for cut, each in use.per_piece],
    }


def _backing(backing: BackingFacts, say: Say) -> dict[str, object]:
    plan = backing.plan
    return {
        "fabric": backing.fabric,
        "size": _sizes(plan.size, say),
        "overage": say(plan.overage),
        "usable_width": say(plan.usable_width),
        "widths": plan.widths,
        "length": say(plan.piece_length),
        "seams": plan.seams,
        "join": say(plan.join),
        "sewn": _sizes(plan.sewn, say),
        **_buy(plan.buy, say),
        "one_width_fewer_with_overage": say(plan.one_fewer) if plan.one_fewer is not None else None,
    }


def _binding(binding: BindingFacts, say: Say) -> dict[str, object]:
    plan = binding.plan
    return {
        "fabric": binding.fabric,
        "cut": plan.cut,
        "strip": say(plan.strip_width),
        "around": say(plan.around),
        "room": say(plan.room),
        "strips": plan.strips,
        "squares": plan.squares,
        "square": say(plan.square) if plan.square is not None else None,
        "length": say(plan.length),
        "gives": say(plan.gives),
        **_buy(plan.buy, say),
    }


def _sleeve(sleeve: SleeveFacts, say: Say) -> dict[str, object]:
    plan = sleeve.plan
    return {
        "fabric": sleeve.fabric,
        "depth": say(plan.depth),
        "cut": [say(plan.cut_length), say(plan.cut_width)],
        "strips": plan.strips,
        "last": say(plan.last),
        "need": say(plan.need),
    }


def _scraps(scraps: ScrapsFacts, say: Say) -> dict[str, object]:
    return {
        "role": scraps.role,
        "prints": scraps.prints,
        "blocks": list(scraps.blocks),
        "assignment": list(scraps.assignment),
        "uses": list(scraps.uses),
        "clashes": scraps.clashes,
        "corner_clashes": scraps.corner_clashes,
        "bound": scraps.bound,
        "proved": scraps.proved,
        "balanced": scraps.balanced,
        "blocks_each": scraps.blocks_each,
        "fat_quarters": list(scraps.fat_quarters) if scraps.fat_quarters is not None else None,
        "layout": [_sheet(sheet, say) for sheet in scraps.layout.sheets] if scraps.layout else None,
    }


def _sheet(sheet: Sheet, say: Say) -> dict[str, object]:
    return {"times": sheet.times, "along": sheet.along, "strips": [_strip(strip, say) for strip in sheet.strips]}
