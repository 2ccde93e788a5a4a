"""What needs care in words: creases and dots, partial and set-in seams, curves, English paper piecing."""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.facts.stepfacts import StepSeam
from blockdsl.sewing.steps.action import Action, Baste, Close, Crease, Curve, Dot, Fold, Papers, Partial, Pin, SetIn
from blockdsl.wording.grammar import listed
from blockdsl.wording.lengths import figure, length_words
from blockdsl.wording.pressing import PressingSentences
from blockdsl.wording.stepvoice import MOST_ALONG


class Care(PressingSentences):
    """Everything but plain seams."""

    def _with_care(self, action: Action) -> Iterator[str]:
        match action:
            case Crease():
                yield self._crease(action)
            case Dot():
                yield self._dot(action)
            case Partial() | Fold() | Close():
                yield from self._left_open(action)
            case SetIn():
                yield from self._set_in(action)
            case Curve():
                yield from self._curve(action)
            case Baste():
                yield from self._baste()
            case Pin():
                yield self._words("join-pin-top", pos=self._pos(action.side))
            case Papers():
                yield self._words("join-papers-out" if action.out else "join-papers-in")

    def _left_open(self, action: Partial | Fold | Close) -> Iterator[str]:
        match action:
            case Partial():
                yield from self._partial(action)
            case Fold():
                yield self._words("join-fold", part=self._loose(action.part))
            case Close():
                yield from self._close(action)

    def _crease(self, crease: Crease) -> str:
        base = self._middle(crease.base) if crease.base >= self._many else self._labels.the(crease.base)
        parts = list(dict.fromkeys(self._labels.short(part) for part in crease.parts))
        key = "join-crease" if self._labels.is_patch(crease.parts[0]) else "join-crease-units"
        return self._words(key, base=base, parts=listed(parts, self._words))

    def _dot(self, dot: Dot) -> str:
        """Each letter once in the block."""
        letters = [self._labels.parts[part].name for part in dot.parts if self._labels.is_patch(part)]
        new = [letter for letter in dict.fromkeys(letters) if letter not in self._mentioned.dotted]
        if not new:
            return ""
        before = self._mentioned.dots
        self._mentioned.dots = before or self._step.number
        self._mentioned.dotted |= set(new)
        if before:
            return self._words("join-dot-as", parts=listed(new, self._words), number=before)
        length = length_words(self._block.seam, self._block.unit, self._words)
        return self._words("join-dot", parts=listed(new, self._words), length=length)

    def _baste(self) -> Iterator[str]:
        if any(self._labels.is_patch(number) for number in range(self._many)):
            yield self._words("join-baste-same" if self._mentioned.baste else "join-baste")
        yield self._words("join-whip-same" if self._mentioned.baste else "join-whip")
        self._mentioned.baste = True

    def _partial(self, partial: Partial) -> Iterator[str]:
        unit = self._block.unit
        edge = (
            "" if partial.edge_length is None else figure(partial.edge_length + 2 * self._block.seam, unit, self._words)
        )
        yield self._words(
            "join-place-partial",
            part=self._added(partial.part),
            name=self._labels.short(partial.part) if partial.part < self._many else self._joined(partial.part),
            base=self._on(partial.base),
            edge=edge,
            has="yes" if edge else "no",
            unit=unit,
            side=self._pos(partial.side),
            even=self._pos(partial.even),
            rest=self._pos(partial.rest),
        )
        self._base = None
        length = length_words(partial.length + self._block.seam, unit, self._words)
        yield self._words("join-sew-partial", length=length, even=self._pos(partial.even))

    def _loose(self, part: int) -> str:
        return self._labels.short(part) if part < self._many else self._joined(part)

    def _close(self, close: Close) -> Iterator[str]:
        onto = self._words("join-joined")
        if 0 < len(close.onto) <= MOST_ALONG:
            onto = listed(list(dict.fromkeys(self._labels.short(part) for part in close.onto)), self._words)
        yield self._words("join-close", part=self._loose(close.part), side=self._pos(close.side), onto=onto)
        yield self._words("join-close-sew", pos=self._pos(close.end))
        stage, place = close.seam
        yield self._closed(self._stages[stage].seams[place], close.part)
        self._base = None

    def _closed(self, seam: StepSeam, loose: int) -> str:
        """Pressing by the full name of what was loose: across the seam there lies more than when it was begun."""
        if seam.toward is None:
            return self._pressed([seam])
        word = "toward" if seam.parts[seam.toward] == loose else "away"
        return self._words(f"press-{word}", count=1, name=self._loose(loose), row="", has="no")

    def _set_in(self, set_in: SetIn) -> Iterator[str]:
        how = {"same": "no", "sides": "no", "meeting": "none", **self._lying(set_in.landmarks)}
        name, number = self._mentioned.set_in
        part, pos = self._added(set_in.part), self._pos(set_in.side)
        self._base = None
        if self._by_hand:
            yield self._words("join-set-in-hand", part=part, pos=pos, **how)
        elif set_in.turns > 1:
            key = "join-turning-again" if self._mentioned.turning else "join-turning"
            self._mentioned.turning = True
            yield self._words(key, part=part, base=self._on(set_in.base), pos=pos, **how)
        elif number:
            here = "yes" if number == self._step.number else "no"
            yield self._words("join-set-in-same", part=part, pos=pos, **how, name=name, number=number, here=here)
        else:
            bare = self._labels.short(set_in.part) if set_in.part < self._many else self._joined(set_in.part)
            self._mentioned.set_in = (bare, self._step.number)
            base = self._on(set_in.base)
            has = "no" if base == self._words("join-joined") else "yes"
            yield self._words("join-set-in", part=part, base=base, has=has, pos=pos, **how)
            yield self._words("join-set-in-sew", again=self._backstitched())

    def _curve(self, curve: Curve) -> Iterator[str]:
        upper, under = self._curved(curve.upper), self._curved(curve.under)
        self._base = None
        if self._mentioned.curve:
            same = self._mentioned.curve == self._step.number
            key = "join-curve-same" if same else "join-curve-as"
            yield self._words(key, upper=upper, under=under, number=self._mentioned.curve)
            return
        self._mentioned.curve = self._step.number
        yield self._words("join-curve-crease")
        yield self._words("join-curve-place", upper=upper, under=under)
        yield self._words("join-curve-pin")
        yield self._words("join-curve-sew", upper=upper)

    def _curved(self, part: int) -> str:
        return self._labels.the(part) if part < self._many else self._words("join-joined")
