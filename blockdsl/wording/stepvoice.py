"""What the sentences of one step share: names of its parts, what shows how they lie, what was said before."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct, field

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.geometry import Point
from blockdsl.sewing.steps.action import Baste, Landmark, Lay, Turn
from blockdsl.sewing.steps.directions import towards
from blockdsl.sewing.steps.plan import across
from blockdsl.sewing.steps.step import StepSeam
from blockdsl.sewing.steps.upright import upright
from blockdsl.wording.grammar import capital, listed, name_of, with_article
from blockdsl.wording.labels import Labels
from blockdsl.wording.messages import Messages

MOST_ALONG = 3
MOST_IN_A_PAIR = 2
_MOST_ORDINALS = 5


class Mentioned(Struct):
    """What the steps of a block have said already, so that it is said once."""

    sides: bool = False
    dots: int = 0
    dotted: set[str] = field(default_factory=set)
    set_in: tuple[str, int] = ("", 0)
    turning: bool = False
    backstitch: bool = False
    trimmed: dict[str, int] = field(default_factory=dict)
    halves: int = 0
    curve: int = 0
    baste: bool = False


class StepVoice:
    """What the sentences of one step share: names of its parts, what was said before."""

    def __init__(self, step: StepFacts, block: BlockFacts, words: Messages, mentioned: Mentioned) -> None:
        self._step = step
        self._block = block
        self._words = words
        self._mentioned = mentioned
        hand = upright(step.hands[0])  # as it lies on the table
        self._labels = Labels(step, hand, block, words)
        self._stages = hand.stages
        self._many = len(hand.ingredients)
        self._base: int | None = None
        self._same: tuple[object, ...] = ()
        self._by_hand = any(isinstance(action, Baste) for action in step.actions)
        self._ordinal: dict[int, str] = {}
        self._faces: dict[int, str] = {}
        self._row_lists: dict[int, int] = {}
        self._is_block = step.makes == "block"
        self._row_names = self._named_rows()
        self._met: dict[str, int] = {}
        self._last_out = ""
        self._lines: list[tuple[Point, Point]] = []
        self._sewn: dict[int, list[int]] = {}

    def _named_rows(self) -> dict[int, str]:
        """What stages are called that are joined with one another: `the first row`, on the slant `the first pair`."""
        found: dict[int, str] = {}
        for stage in self._stages:
            rows = [part for part in stage.parts if part >= self._many]
            if len(rows) > 1:
                way = self._kind_of(rows, stage.seams)
                for number, part in enumerate(rows[:_MOST_ORDINALS], start=1):
                    found[part] = name_of(f"joined-{way}", self._words, number=number)
        return found

    def _kind_of(self, rows: Sequence[int], seams: Sequence[StepSeam]) -> str:
        """Rows that lie one below the other, columns side by side; what lies aslant is pairs, or parts."""
        ways = {across(seam) for seam in seams}
        if ways <= {"top", "bottom"}:
            return "row"
        if ways <= {"left", "right"}:
            return "column"
        two = all(len(self._stages[part - self._many].parts) == MOST_IN_A_PAIR for part in rows)
        return "pair" if two and not self._labels.has_pairs else "part"

    def _pos(self, place: str) -> str:
        return self._words(f"place-{place}")

    def _where(self, landmark: Landmark) -> str:
        return listed([self._pos(place) for place in landmark.places], self._words)

    def _shows(self, landmarks: Sequence[Landmark], *, count: int = 1, short: bool = False) -> str:
        """`its point at the top`, `Foam at the upper left`, `Tide in the middle of its bottom edge`."""
        found = []
        for each in landmarks:
            kind = "seen" if each.kind in ("edge", "corner") else each.kind
            fabric = each.letter or self._labels.fabrics.get(each.fabric, each.fabric)
            edges = max(count, len(each.places)) if kind.endswith("edge") else count
            has = "no" if short else "yes"
            found.append(self._words(f"shows-{kind}", fabric=fabric, pos=self._where(each), count=edges, has=has))
        return listed(found, self._words)

    def _lay(self, lay: Lay) -> str:
        names = [self._labels.the(part) for part in lay.parts]
        if lay.on_point:
            self._base = lay.parts[0]
            shows = self._shows(lay.landmarks[0])
            return self._words("join-lay-on-point", part=names[0], shows=shows, has="yes" if shows else "no")
        if len(lay.parts) == 1:
            self._base = lay.parts[0]
            one = self._labels.an(lay.parts[0])
            return self._words("join-lay", part=one, shows=self._shows(lay.landmarks[0]))
        self._base = None
        alike = len({names[0], *names[1:]}) == 1
        same = len(set(lay.landmarks)) == 1
        if len(lay.parts) == 2 and alike:
            self._ordinal = {
                part: name_of("joined-one", self._words, number=place) for place, part in enumerate(lay.parts, start=1)
            }
        if same:
            kind = "both" if len(lay.parts) == 2 else "all"
            shows = self._shows(lay.landmarks[0], count=2)
            if not alike and len(self._labels.parts) > len(lay.parts):
                numbered = all(self._labels.is_numbered(part) for part in lay.parts)
                several = self._labels.numbered(lay.parts) if numbered else listed(names, self._words)
                return self._words("join-lay", part=several, shows=shows)
            is_all = alike and self._labels.count(lay.parts[0]) == len(self._labels.parts)
            plain = not alike or is_all or all(self._labels.is_numbered(part) for part in lay.parts)
            what = "" if plain else self._labels.many(lay.parts[0])
            return self._words(f"join-lay-{kind}", what=what, has="no" if plain else "yes", shows=shows)
        said = []
        for part, landmarks in zip(lay.parts, lay.landmarks, strict=True):
            name = self._ordinal.get(part, self._labels.the(part))
            if landmarks:
                said.append(capital(self._words("join-lay", part=name, shows=self._shows(landmarks))))
        return " ".join(said)

    def _turn(self, turn: Turn) -> str:
        self._base = None
        return self._words(
            "join-turn",
            part=capital(self._labels.the(turn.part)),
            like=self._labels.the(turn.like),
            quarters=turn.quarters,
        )

    def _added(self, part: int) -> str:
        if part in self._ordinal:
            return self._ordinal[part]
        return self._joined(part) if part >= self._many else self._labels.an(part)

    def _on(self, part: int, along: Sequence[int] = ()) -> str:
        if part in self._ordinal:
            return self._ordinal[part]
        if part < self._many:
            return self._one_of(part) if self._labels.count(part) > 1 else self._labels.the(part)
        if 0 < len(along) <= MOST_ALONG and part not in self._row_lists and part not in self._row_names:
            names = [self._labels.the(each) for each in along]
            if len(set(names)) == len(names):
                return listed(names, self._words)
        return self._joined(part)

    def _one_of(self, part: int) -> str:
        """One of several alike on the table: `one corner`, then `the other corner`, or `another` of more than two."""
        name = self._labels.short(part)
        before = self._met.get(name, 0)
        self._met[name] = before + 1
        if not before:
            return with_article(name, "one", self._words)
        return with_article(name, "other" if self._labels.count(part) == 2 else "another", self._words)

    def _alike_names(self, one: int, other: int) -> bool:
        return max(one, other) < self._many and self._labels.full(one) == self._labels.full(other)

    def _middle(self, part: int) -> str:
        """The piece in the middle of what has been sewn in rounds: what the first stage had on the table."""
        while part >= self._many:
            stage = self._stages[part - self._many]
            part = stage.parts[len(stage.parts) // 2] if len(stage.parts) != 2 else min(stage.parts)
        return self._labels.the(part)

    def _joined(self, part: int) -> str:
        """What an earlier stage of the step made."""
        if part in self._row_lists:
            return self._words("join-row-number", number=self._row_lists[part], way=self._way_of_rows())
        if part in self._row_names:
            return self._row_names[part]
        return self._words("join-joined")

    def _way_of_rows(self) -> str:
        return "row" if towards(self._stages[0].seams[0].over) in ("left", "right") else "column"

    def _backstitched(self) -> str:
        """Whether it was said before that seams are backstitched at a dot."""
        again, self._mentioned.backstitch = self._mentioned.backstitch, True
        return "yes" if again else "no"

    def _how(self, meeting: str, landmarks: Sequence[Landmark] = ()) -> dict[str, str]:
        """How a seam is sewn, as `seam-how` asks for it; right sides are named once in a block."""
        sides = not self._mentioned.sides and not self._by_hand
        self._mentioned.sides = self._mentioned.sides or sides
        return {
            "same": "no",
            "sides": "yes" if sides else "no",
            **self._lying(landmarks),
            "meeting": meeting if meeting and not self._by_hand else "none",
        }

    def _lying(self, landmarks: Sequence[Landmark], *, count: int = 1) -> dict[str, str]:
        """How a part lies, where that has to be said."""
        return {"lies": "yes" if landmarks else "no", "shows": self._shows(landmarks, count=count)}
