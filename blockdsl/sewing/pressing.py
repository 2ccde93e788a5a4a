"""Which way each seam is pressed: so that meeting seams lie opposite ways and lock, then by what is customary.

Two seams that meet from both sides in a third one lock when their allowances point opposite ways along it. Each seam
of a unit is one yes-or-no choice, the same in every copy of the unit; each meeting ties two choices together. The ties
are followed as far as they agree with each other; where they do not, the meeting is counted as unnested.
Toward the darker fabric, and away from the side with more seams: common practice, no source.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from collections.abc import Set as AbstractSet

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.geometry import Point, sign
from blockdsl.geometry.polygon import cross, dot, step
from blockdsl.model import BlockDesign
from blockdsl.model.fabric import luminance
from blockdsl.sewing.pressing_seams import SeamEnd, SeamKey, UnitSeam, UnitSeams, on_line

_FEWER_SEAMS = 2.0
_OUTWARD = 5.0
_SETTLED = 1e9
Wish = tuple[SeamKey, SeamKey, bool]
"""Two seams of one unit that should go the same way, or where the last is true opposite ways."""
_MOST_WISHES = 16
_ORDER = ("light", "medium", "dark")


class Pressing(Struct, frozen=True):
    """For each seam the part that it is pressed toward (0, 1, or None: open), its meetings, how many do not lock.

    `fans` are the hubs of seams that are pressed so only as far as there, and to the other side beyond: all that meets
    at the hub is pressed the same way round, and the allowances are fanned. Each is a place in its unit's own frame.
    """

    toward: Mapping[SeamKey, int | None]
    meetings: Mapping[SeamKey, int]
    unnested: Mapping[SeamKey, int]
    fans: Mapping[SeamKey, Point] = field(default_factory=dict)


class Meeting(Struct, frozen=True):
    """Two seams that meet in a third, at a place of it. `opposite`: one choice must be yes where the other is no.

    `rank` is 3 about a hub, 2 for two seams square to the third, 1 for two that lie on each other when the work is
    folded, else 0.
    """

    where: tuple[SeamKey, Point]
    one: SeamKey
    other: SeamKey
    opposite: bool
    rank: int
    locks: bool = False


def plan_pressing(
    design: BlockDesign,
    seams: UnitSeams,
    wanted: Sequence[int],
    fixed: Mapping[SeamKey, int],
    outward: Mapping[SeamKey, int],
) -> Pressing:
    """Choose for all seams of the units `wanted`.

    `fixed` are seams that a method presses its own way; `outward` those that the trade presses away from the middle
    piece of their unit, unless meetings ask otherwise. What the maker wants stands in the design: pressed open,
    meeting seams are matched and none locks; toward the dark, the darker side decides alone. Curves, set-in seams and
    partial seams, whose first half lies to a side before the rest is sewn, are never pressed open.
    """
    while True:
        plan = _Plan(design, seams, wanted, outward)
        chosen = plan.choose(fixed)
        spoiled = [key for key in chosen.fans if chosen.unnested.get(key) or design.pressing == "open"]
        if not spoiled:
            break
        seams.leave_unfanned(spoiled)
    if design.pressing != "open":
        return chosen
    toward = {key: None if key in plan.straight else part for key, part in chosen.toward.items()}
    return Pressing(toward, chosen.meetings, chosen.meetings)


class _Plan:
    """What is known of all seams before any is chosen: their meetings, and which way each leans by itself."""

    def __init__(
        self, design: BlockDesign, seams: UnitSeams, wanted: Sequence[int], outward: Mapping[SeamKey, int]
    ) -> None:
        self.straight: set[SeamKey] = set()
        self._to_dark = design.pressing == "toward dark"
        self._meetings: list[Meeting] = []
        self._leaning: dict[SeamKey, float] = {}
        self._fans: dict[SeamKey, Point] = {}
        self._seams, self._wanted = seams, wanted
        # The block itself, which comes last, is laid no more.
        self._alike = [tie for number in sorted(wanted)[:-1] for tie in seams.alike(number)]
        for number in wanted:
            by_part = seams.ends_by_part(number)
            for seam in seams.of(number):
                part, hub = seam.key[1], seams.hub(seam.key)
                before, after = _on(seam, by_part[part]), _on(seam, by_part[part + 1])
                if hub is not None:
                    self._fans[seam.key] = hub
                    self._meetings += _round_a_hub(seam, hub, [end for end, _ in (*before, *after) if end.place == hub])
                    before, after = ([each for each in side if each[0].place != hub] for side in (before, after))
                self._meetings += _meetings(seam, before, after)
                fewer = 0.0 if self._to_dark else _FEWER_SEAMS * _more(len(before), len(after))
                self._leaning[seam.key] = seams.copies(number) * (fewer + _darker(design, seam))
                if seam.kind == "straight":
                    self.straight.add(seam.key)
        for key, part in outward.items():
            if not self._to_dark or not self._leaning.get(key):
                outside = seams.copies(key[0]) * _OUTWARD
                self._leaning[key] = self._leaning.get(key, 0.0) + (outside if part else -outside)

    def choose(self, fixed: Mapping[SeamKey, int]) -> Pressing:
        """A way of pressing in which as many meetings lock as can be found."""
        if self._to_dark:
            fixed = {key: int(value > 0) for key, value in self._leaning.items() if value} | dict(fixed)
        chosen = _chosen(self._meetings, self._leaning, fixed, self._alike)
        return replace(chosen if self._to_dark else self._plainer(chosen, fixed), fans=self._fans)

    def _plainer(self, chosen: Pressing, fixed: Mapping[SeamKey, int]) -> Pressing:
        """Where the way to press has no short name: what is alike at both ends outward or inward, a row all one way.

        A wish is granted where more units are then plain and no fewer meetings lock.
        """
        wishes: list[Wish] = []
        loose, odd = sum(chosen.unnested.values()), self._odd(chosen)
        for number in odd[:_MOST_WISHES]:
            keys = [seam.key for seam in self._seams.of(number)]
            wished = [*wishes, *((keys[0], key, len(keys) == 2) for key in keys[1:])]
            other = _chosen(self._meetings, self._leaning, fixed, self._alike, wished)
            now = self._odd(other)
            if len(now) < len(odd) and sum(other.unnested.values()) <= loose:
                chosen, wishes, odd = other, wished, now
        return chosen

    def _odd(self, chosen: Pressing) -> list[int]:
        """The units of which no few words say how they are pressed."""
        return [
            number
            for number in self._wanted
            if not self._is_plain(number, [chosen.toward.get(seam.key) for seam in self._seams.of(number)])
        ]

    def _is_plain(self, number: int, toward: Sequence[int | None]) -> bool:
        """Whether a few words say it: toward what, away from what, outward, inward, or all one way."""
        parts = self._seams.parts(number)
        if len(toward) < 2 or None in toward or len(parts) != len(toward) + 1:
            return True
        to, away = (
            {parts[place + (side if part else 1 - side)] for place, part in enumerate(toward)} for side in (1, 0)
        )
        if min(len(to), len(away)) == 1 and not to & away:
            return True
        middle = len(toward) // 2
        if len(toward) == 2 * middle and len({*toward[:middle], *(1 - (part or 0) for part in toward[middle:])}) == 1:
            return True
        return len(set(toward)) == 1 and (len(toward) > 2 or parts[0] != parts[2] or parts[0] == parts[1])


def meetings_of(seams: UnitSeams, key: SeamKey) -> list[Meeting]:
    """The meetings in one seam, those at a hub left out."""
    seam, hub, by_part = seams.of(key[0])[key[1]], seams.hub(key), seams.ends_by_part(key[0])
    before, after = ([each for each in _on(seam, by_part[key[1] + side]) if each[0].place != hub] for side in (0, 1))
    return _meetings(seam, before, after)


def _more(one: int, other: int) -> int:
    return (one > other) - (one < other)


def _round_a_hub(seam: UnitSeam, hub: Point, ends: Sequence[SeamEnd]) -> list[Meeting]:
    """All that meets at a hub is pressed the same way round: the seam itself, from the hub to its start, the first."""
    first = SeamEnd(hub, step(hub, seam.line[0]), seam.over, seam.key)
    turns = [sign(cross(end.inward, end.over)) for end in (first, *ends)]
    return [
        Meeting((seam.key, hub), seam.key, end.key, turn != turns[0], 3, locks=True)
        for end, turn in zip(ends, turns[1:], strict=True)
    ]


def _on(seam: UnitSeam, ends: Sequence[SeamEnd]) -> list[tuple[SeamEnd, int]]:
    found = []
    for end in ends:
        stretch = on_line(end.place, seam.line)
        if stretch is not None:
            found.append((end, stretch))
    return found


def _meetings(
    seam: UnitSeam, before: Sequence[tuple[SeamEnd, int]], after: Sequence[tuple[SeamEnd, int]]
) -> list[Meeting]:
    """Place by place: the upright seams lock, or else the slanted ones; what else meets there is merely flatter so.

    What meets where the seam itself ends is not crossed by it: there nothing locks.
    """
    there: dict[Point, list[SeamEnd]] = {}
    for end, _ in after:
        there.setdefault(end.place, []).append(end)
    places: dict[Point, list[Meeting]] = {}
    for end, stretch in before:
        way = step(seam.line[stretch], seam.line[stretch + 1])
        for other in there.get(end.place, ()):
            tied = _tied((seam.key, end.place), way, end, other)
            if tied is not None:
                places.setdefault(end.place, []).append(tied)
    found = []
    for place, meetings in places.items():
        first = max(meeting.rank for meeting in meetings)
        crossed = first > 0 and place not in (seam.line[0], seam.line[-1])
        found += [replace(meeting, locks=crossed and meeting.rank == first) for meeting in meetings]
    return found


def _tied(where: tuple[SeamKey, Point], way: Point, one: SeamEnd, other: SeamEnd) -> Meeting | None:
    """Seams that lie on each other when the work is folded lock; those that run straight on merely lie flatter."""
    along, back = sign(dot(one.over, way)), sign(dot(other.over, way))
    if not along or not back:
        return None
    right = Point(-way.y, way.x)
    # The mirror image in the seam: the same share along it, the opposite one across.
    mirrored = dot(one.inward, way) * dot(other.inward, right) + dot(one.inward, right) * dot(other.inward, way) == 0
    straight_on = not sign(cross(one.inward, other.inward))
    if not mirrored and not straight_on:
        return None
    upright = not sign(dot(one.inward, way)) and not sign(dot(other.inward, way))
    return Meeting(where, one.key, other.key, along == back, 2 if upright else 1 if mirrored else 0)


def _darker(design: BlockDesign, seam: UnitSeam) -> float:
    """Above zero when part 1 is the darker side, by the patches along the seam."""
    shine = [
        sum(luminance(_colour(design, patch)) for patch in side) / len(side) if side else 1.0 for side in seam.beside
    ]
    return shine[0] - shine[1]


def _colour(design: BlockDesign, patch: int) -> str:
    name = design.patches[patch].fabric
    return next(fabric.colour for fabric in design.fabrics if fabric.name == name)


def _chosen(
    meetings: Sequence[Meeting],
    leaning: Mapping[SeamKey, float],
    fixed: Mapping[SeamKey, int],
    alike: Sequence[Wish],
    wishes: Sequence[Wish] = (),
) -> Pressing:
    """What must be `alike` comes first, then what locks, the wishes, what merely lies flatter, what each leans to."""
    ties = _Ties(leaning)
    for key, part in fixed.items():
        ties.tie(key, None, opposite=part == 0)
    for one, other, opposite in alike:
        ties.tie(one, other, opposite=opposite)
    locking = sorted((meeting for meeting in meetings if meeting.locks), key=lambda meeting: -meeting.rank)
    for meeting in locking:
        ties.tie(meeting.one, meeting.other, opposite=meeting.opposite)
    for one, other, opposite in wishes:
        ties.tie(one, other, opposite=opposite)
    # The others merely lie flatter: they gain less by agreeing than a seam by lying as is customary.
    for meeting in meetings:
        if not meeting.locks and ties.would_please(meeting.one, meeting.other, opposite=meeting.opposite):
            ties.tie(meeting.one, meeting.other, opposite=meeting.opposite)
    keys = {*leaning, *fixed, *(key for meeting in locking for key in (meeting.one, meeting.other))}
    toward = {key: ties.choice(key) for key in keys}
    # What hands cannot tell apart is not pressed by itself.
    _mend(toward, locking, {*fixed, *(key for one, other, _ in alike for key in (one, other))})
    found: dict[tuple[SeamKey, Point], bool] = {}
    for meeting in locking:
        found[meeting.where] = found.get(meeting.where, True) and _agrees(meeting, toward)
    return Pressing(
        toward, Counter(key for key, _ in found), Counter(key for (key, _), agrees in found.items() if not agrees)
    )


def _agrees(meeting: Meeting, toward: Mapping[SeamKey, int]) -> bool:
    return (toward[meeting.one] != toward[meeting.other]) == meeting.opposite


def _mend(toward: dict[SeamKey, int], locking: Sequence[Meeting], fixed: AbstractSet[SeamKey]) -> None:
    """Press a seam that is not `fixed` the other way where more of its meetings then lock, until none gains by it."""
    of_seam: dict[SeamKey, list[Meeting]] = {}
    for meeting in locking:
        if meeting.one != meeting.other:  # two copies of one seam meet: both ways are as good
            for key in (meeting.one, meeting.other):
                of_seam.setdefault(key, []).append(meeting)
    waiting = [key for key in of_seam if key not in fixed]
    while waiting:
        key = waiting.pop()
        lost = sum(1 if _agrees(meeting, toward) else -1 for meeting in of_seam[key])
        if lost < 0:
            toward[key] = 1 - toward[key]
            near = {other for meeting in of_seam[key] for other in (meeting.one, meeting.other)}
            waiting += [other for other in near if other != key and other not in fixed]


class _Ties:
    """Choices tied together, each the same as its group's or the opposite. None is the choice that is always yes.

    `leaning` says how much each choice would rather be yes, or less than zero, no.
    """

    def __init__(self, leaning: Mapping[SeamKey, float]) -> None:
        self._above: dict[SeamKey | None, tuple[SeamKey | None, bool]] = {}
        self._leaning: dict[SeamKey | None, float] = {None: _SETTLED}
        self._leaning.update(leaning.items())

    def root(self, key: SeamKey | None) -> tuple[SeamKey | None, bool]:
        """The group's own choice, and whether this one is its opposite."""
        trail = []
        flipped = False
        while key in self._above and self._above[key][0] != key:
            trail.append((key, flipped))
            key, turned = self._above[key][0], self._above[key][1]
            flipped ^= turned
        for passed, before in trail:
            self._above[passed] = key, flipped ^ before
        return key, flipped

    def tie(self, one: SeamKey | None, other: SeamKey | None, *, opposite: bool) -> bool:
        """Tie two choices; False when what is tied already says otherwise."""
        (one_root, one_flipped), (other_root, other_flipped) = self.root(one), self.root(other)
        if one_root == other_root:
            return (one_flipped ^ other_flipped) == opposite
        flipped = one_flipped ^ other_flipped ^ opposite
        self._above[one_root] = other_root, flipped
        leaning = self._leaning.get(one_root, 0.0)
        self._leaning[other_root] = self._leaning.get(other_root, 0.0) + (-leaning if flipped else leaning)
        return True

    def would_please(self, one: SeamKey, other: SeamKey, *, opposite: bool) -> bool:
        """Whether neither choice has to give up what it leans to when they are tied so."""
        (one_root, one_flipped), (other_root, other_flipped) = self.root(one), self.root(other)
        leanings = [self._leaning.get(root, 0.0) for root in (one_root, other_root)]
        same = one_flipped ^ other_flipped == opposite
        return leanings[0] * leanings[1] * (1 if same else -1) >= 0

    def choice(self, key: SeamKey) -> int:
        """1 for yes, 0 for no."""
        root, flipped = self.root(key)
        return int((self._leaning.get(root, 0.0) >= 0) != flipped)


def darker_of(values: Sequence[str], first: int, second: int) -> int:
    """Of two patches of a unit the one that is pressed toward: the darker, the second when they are alike.

    `values` are those of all the unit's fabrics: dark is what is darker than the lightest of them.
    """
    lightest = min(_ORDER.index(value) for value in values)
    dark = [_ORDER.index(values[place]) > lightest for place in (first, second)]
    return 0 if dark[0] and not dark[1] else 1
