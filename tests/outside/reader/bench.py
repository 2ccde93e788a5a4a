"""One step being sewn: what was taken, the tables that are still possible, what `it` and `the first` mean."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field, replace
from typing import Any

from tests.outside.reader.cloth import Cloth, pattern_of
from tests.outside.reader.landmarks import different, is_upright, turns_of
from tests.outside.reader.sentences import Title
from tests.outside.reader.stock import Kind, Stock
from tests.outside.reader.table import Item, Refused, Seam, Table, each
from tests.outside.reader.words import ORDINALS, Unreadable, listed, stem

Handler = Callable[["Bench", re.Match[str]], None]
PATTERNS: list[tuple[re.Pattern[str], Handler]] = []


def reads(*patterns: str) -> Callable[[Handler], Handler]:
    """A sentence of one of these patterns is followed so."""

    def keep(handler: Handler) -> Handler:
        PATTERNS.extend((re.compile(pattern), handler) for pattern in patterns)
        return handler

    return keep


@dataclass
class Bench:
    """A step at the table."""

    title: Title
    stock: Stock
    number: int
    texts: dict[int, list[str]]
    """The sentences of the steps before, for `as in step 1`."""
    takes: dict[int, list[Kind]]
    """What was taken in the steps before, in order."""
    items: list[Item] = field(default_factory=list)
    tables: list[Table] = field(default_factory=lambda: [Table()])
    taken: list[tuple[Kind, int, int]] = field(default_factory=list)
    """What was taken, how many, and for which group of pairs."""
    for_one: list[Kind] = field(default_factory=list)
    """What is taken for one, each as often as it is taken."""
    base: list[int] = field(default_factory=list)
    """What `it` stands for."""
    used: set[int] = field(default_factory=set)
    last: dict[str, Any] = field(default_factory=dict)
    """The last sewing sentence, for `in the same way`."""
    in_order: int | None = None
    """The group that was laid last as a whole: the first and the second of it."""
    ordinal_of: str | None = None
    """What the first and the second were said of: row, column."""
    press_each: str = ""
    """Where each seam is pressed as soon as it is sewn, if that was said: `on`, toward what was sewn on, or `base`."""
    beside: str | None = None
    """One of what was named just now, when `the other` follows."""
    seams: int = 0
    each_pair: int = 0
    """More than 0 while a pair is made of which several are needed; the takes are per pair."""
    method: dict[str, Any] = field(default_factory=dict)
    groups_sewn: list[set[int]] = field(default_factory=list)
    """Things sewn to each other, in the order in which it was begun: the first row, the second column."""
    assemblies: dict[str, set[int]] = field(default_factory=dict)
    """Rows and columns that this step names itself."""
    joined_last: set[int] = field(default_factory=set)
    row_seams: list[int] = field(default_factory=list)
    """The seams of the row sewn last, from its first to its last."""
    seams_of_row: dict[str, list[int]] = field(default_factory=dict)
    pressed_by_row: dict[str, dict[int, str]] = field(default_factory=dict)
    items_said: Item | None = None
    measured: bool = False
    by_hand: bool = False
    """Whether the seams are whip-stitched over papers: none has an allowance pressed to a side yet."""
    trimmed: tuple[float, float] | None = None

    # --- taking -------------------------------------------------------------------------------------------

    def add(self, names: Iterable[str], cloth: Cloth, *, form: str = "patch", group: int, extra: object = None) -> Item:
        """One more thing on the table."""
        item = Item(len(self.items), frozenset(names), form, group, extra)
        self.items.append(item)
        cloth = cloth.tagged(item.mark)
        self.tables = [
            replace(table, bodies={**table.bodies, item.key: cloth}, home={**table.home, item.key: item.key})
            for table in self.tables
        ]
        return item

    def groups(self) -> dict[int, list[Item]]:
        found: dict[int, list[Item]] = {}
        for item in self.items:
            found.setdefault(item.group, []).append(item)
        return found

    # --- what a phrase stands for --------------------------------------------------------------------------

    def named(self, phrase: str) -> list[Item]:
        """All things that a phrase may stand for."""
        bare = re.sub(r"^(?:a|an|the|each|one|both|its|all(?: \w+)?) ", "", phrase.strip())
        if named := [item for item in self.items if stem(bare) in item.names and item.form == "unit"]:
            return named
        if found := re.fullmatch(rf"(?:the )?({'|'.join(ORDINALS)})(?: (.+))?", bare):
            return self._ordinal(ORDINALS.index(found[1]), found[2])
        if phrase in ("it", "them", "both"):
            return [self.items[key] for key in self.base]
        wanted = {bare, stem(bare)}
        exact = [item for item in self.items if item.names & wanted]
        return exact or self._short(phrase, stem(bare))

    def _short(self, phrase: str, name: str) -> list[Item]:
        """A row of this step by its name, what was sewn last, or a name cut short."""
        sewn = self.assemblies.get(name)
        if not sewn and re.fullmatch(r"the (?:strip|pair|part|row|column|joined pieces?)", phrase):
            sewn = self.joined_last
        if sewn:
            return [self.items[key] for key in sorted(sewn)]
        return [item for item in self.items if any(_ends_so(other, name) for other in item.names)]

    def _ordinal(self, place: int, name: str | None) -> list[Item]:
        """The first of two alike; the first row that was sewn in this step."""
        several = [group for group in self.groups().values() if len(group) > 1]
        of = name or self.ordinal_of
        if of in ("row", "column", "pair", "part", "strip") and not any(of in item.names for item in self.items):
            if place >= len(self.groups_sewn):
                raise Refused(f"there is no {ORDINALS[place]} {name}")
            return [self.items[key] for key in sorted(self.groups_sewn[place])]
        if name and name != "row":
            several = [group for group in several if stem(name) in group[0].names]
        if len(several) > 1:
            several = [group for group in several if group[0].group == self.in_order]
        if len(several) != 1 or place >= len(several[0]):
            raise Refused(f"nothing or more than one thing can be the {ORDINALS[place]}")
        return [several[0][place]]

    def one(self, phrase: str, *, base: bool = False) -> Item:
        """The one thing that a phrase stands for: the next one that is not sewn yet, where several are alike.

        Errors: Refused where it stands for nothing or for things of two kinds.
        """
        if other := re.fullmatch(r"the other(?: (.+))?", phrase):
            return self._other(other[1] or self.beside)
        found = self.named(phrase) or self._of_last_step(phrase)
        if one := re.match(r"one (?:half of )?(.+)", phrase):
            self.beside = one[1]
        if not found:
            raise Refused(f"there is no {phrase!r} on the table")
        if self._sewn_together(found):
            return found[0]
        free = [item for item in found if item.key not in self.used]
        if len({item.group for item in found}) > 1 and (
            len({item.group for item in free}) != 1 or not re.match(r"(?:a|an|one) ", phrase)
        ):
            raise Refused(f"{phrase!r} may be one thing or another")
        if len(found) > 1 and re.match(rf"the (?!(?:{'|'.join(ORDINALS)})\b)", phrase) and not base:
            raise Refused(f"there is more than one for {phrase!r}")
        if base and not re.match(r"(?:a|an|one) ", phrase):
            in_play = [item for item in found if item.key in self.used]
            return (in_play or free)[0]
        return free[0] if free else found[0]

    def _sewn_together(self, items: list[Item]) -> bool:
        """Whether things are in one body already, in every way of following the words."""
        return len(items) > 1 and all(len({table.home[item.key] for item in items}) == 1 for table in self.tables)

    def _other(self, name: str | None) -> Item:
        pairs = [group for group in self.groups().values() if len(group) == 2]
        if name:
            pairs = [group for group in pairs if {name, stem(name)} & group[0].names]
        left = [item for group in pairs for item in group if item.key not in self.used]
        if len(pairs) != 1 or len(left) != 1:
            raise Refused("the other of what?")
        return left[0]

    def several(self, text: str) -> list[tuple[str, Item]]:
        """The things of a list: B, the half-square triangle of Main and Pale, and C.

        Errors: Refused where a part of it stands for nothing.
        """
        found: list[tuple[str, Item]] = []
        open_part = ""
        for part in listed(text):
            phrase = f"{open_part} and {part}" if open_part else part
            try:
                known = phrase.startswith("the other") or bool(self.named(phrase)) or bool(self._of_last_step(phrase))
            except Refused:
                known = False
            if known:
                found.append((phrase, self.one(phrase, base=True)))
                open_part = ""
            else:
                open_part = phrase
        if open_part:
            raise Refused(f"there is no {open_part!r} on the table")
        return found

    def marks(self, phrase: str) -> frozenset[str]:
        """What is to be found along the outline of whatever a phrase stands for."""
        try:
            items = self.named(phrase)
        except Refused:
            items = []
        return frozenset(item.mark for item in items if not self.brought(item))

    def note_joint(self, on: int, base: int) -> None:
        """Keep in mind which things were sewn to which: rows, columns, pairs of this step."""
        mine = next((group for group in self.groups_sewn if on in group), None)
        ground = next((group for group in self.groups_sewn if base in group), None)
        if mine is None and ground is None:
            self.groups_sewn.append({on, base})
        elif mine is None and ground is not None:
            ground.add(on)
        elif ground is None and mine is not None:
            mine.add(base)
        self.joined_last = next(group for group in self.groups_sewn if on in group or base in group)

    def _of_last_step(self, phrase: str) -> list[Item]:
        """What the step before left on the table, when words name a part of it that was not taken now."""
        name = self.stock.last
        if name is None or self.stock.made[name] != 1 or self.title.count != 1 or self.method.get("brought"):
            return []
        cloth = self.stock.units[name]
        shown = {tag for edge in cloth.edges for tag in edge.tags}
        if re.sub(r"^the ", "", phrase) not in shown:
            return []
        self.method["brought"] = True
        kind = Kind(name, form="unit")
        self.taken.append((kind, 1, 0))
        item = self.add(shown | {name}, cloth, group=999)
        self.tables = [replace(table, laid=table.laid | {item.key}) for table in self.tables]
        return [item]

    def brought(self, item: Item) -> bool:
        """Whether it is what the step before left on the table."""
        return item.group == 999

    def follow(self, step: Callable[[Table], Iterable[Table]], why: str) -> None:
        self.tables = each(self.tables, step, why)

    # --- laying -------------------------------------------------------------------------------------------

    def lying(self, table: Table, item: Item, *, on_point: bool = False) -> list[Table]:
        """The table with a thing lying in every way that it may lie."""
        place = table.home[item.key]
        if place in table.laid:
            return [table]
        body = table.bodies[place]
        level = different(body.moved(turn) for turn in turns_of(body, on_point=on_point))
        found = [table.with_body(place, cloth) for cloth in level]
        if not on_point and not is_upright(body):
            more = different(body.moved(turn) for turn in turns_of(body, on_point=True))
            found += [replace(table.with_body(place, cloth), tilted=table.tilted + 1) for cloth in more]
        return found

    # --- seams --------------------------------------------------------------------------------------------

    def next_seam(self) -> int:
        self.seams += 1
        return self.seams


def follow(bench: Bench, sentence: str) -> None:
    """Carry out one sentence.

    Errors: Unreadable where no pattern reads it; Refused where it cannot be followed.
    """
    of = re.search(rf"(?:{'|'.join(ORDINALS)}) (row|column|pair|part|strip)\b", sentence)
    bench.ordinal_of = of[1] if of else None
    for pattern, handler in PATTERNS:
        if found := pattern.fullmatch(sentence):
            handler(bench, found)
            if bench.press_each:
                bench.follow(press_added(bench.press_each), "nothing can be pressed so")
            return
    raise Unreadable("no pattern reads this")


def _ends_so(name: str, short: str) -> bool:
    """Whether a name may be shortened so: set 2 for segment of set 2, half-square triangle for one of Main and Pale."""
    if name[0].isupper():
        return False
    kind, _, fabrics = name.partition(" of ")
    of_fabric = any(short == f"{fabric} {kind}" for fabric in re.split(r", and |, | and ", fabrics))
    return of_fabric or name.endswith(f" {short}") or name.startswith(f"{short} of ")


def press(table: Table, sides: dict[int, str]) -> Table:
    """The table with seams pressed: number to side."""
    bodies = {
        place: replace(
            cloth,
            ends=tuple(replace(end, pressed=sides[end.seam]) if end.seam in sides else end for end in cloth.ends),
        )
        for place, cloth in table.bodies.items()
    }
    waiting = tuple(seam for seam in table.waiting if seam.number not in sides)
    return replace(table, bodies=bodies, waiting=waiting)


def press_added(side: str) -> Callable[[Table], Iterator[Table]]:
    """Every seam pressed toward what was sewn on, or away from it."""

    def follow(table: Table) -> Iterator[Table]:
        yield press(table, {seam.number: side for seam in table.waiting})

    return follow


def merged(table: Table, on: int, base: int, cloth: Cloth, seam: Seam | None) -> Table:
    """The table after what is in body `on` was sewn to body `base`."""
    bodies = {place: body for place, body in table.bodies.items() if place != on}
    bodies[base] = cloth
    home = {item: base if place == on else place for item, place in table.home.items()}
    waiting = (*table.waiting, seam) if seam else table.waiting
    return replace(table, bodies=bodies, home=home, laid=table.laid - {on} | {base}, waiting=waiting)


def items_in(table: Table, place: int) -> frozenset[int]:
    return frozenset(item for item, home in table.home.items() if home == place)


__all__ = ["PATTERNS", "Bench", "Counter", "Iterator", "items_in", "merged", "pattern_of", "press", "reads"]
