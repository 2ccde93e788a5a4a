"""The lessons of the methods in words: titles, what to do, what pictures show, tables of sizes."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.facts.blockfacts import CutFacts, RulerUnit
from blockdsl.facts.techniquefacts import LessonStep, ScenePicture, TechniqueFacts, TechniqueSection, UnitUse
from blockdsl.model.language import Language
from blockdsl.wording.grammar import capital, listed, name_of
from blockdsl.wording.lengths import figure, length_words, size_words
from blockdsl.wording.messages import Messages, messages
from blockdsl.wording.part_names import title_words
from blockdsl.wording.sentences import sentence


def technique_title(technique: TechniqueFacts) -> str:
    """`Four at a time`."""
    return messages(technique.sections[0].language)(f"{_key(technique)}.title")


def technique_about(technique: TechniqueFacts) -> str:
    """What the method is good for."""
    return messages(technique.sections[0].language)(_key(technique))


def _key(technique: TechniqueFacts) -> str:
    return f"technique-{technique.method.replace(' ', '-')}"


def take_care(technique: TechniqueFacts) -> str:
    """The heading of the cautions."""
    return messages(technique.sections[0].language)("take-care")


def section_title(section: TechniqueSection) -> str:
    """`Flying geese`."""
    return messages(section.language)(f"topic-{section.key}")


def section_shown(section: TechniqueSection) -> str:
    """At which size the steps are shown; nothing where they give none."""
    if not section.sized:
        return ""
    words = messages(section.language)
    return words("section-shown", size=size_words(section.finished, section.unit, words))


def step_title(step: LessonStep, section: TechniqueSection) -> str:
    """The name of a lesson's step."""
    return sentence(step.title, section.unit, messages(section.language))


def step_words(step: LessonStep, section: TechniqueSection) -> str:
    """What to do in a lesson's step, and why."""
    return sentence(step.text, section.unit, messages(section.language))


def describe_picture(picture: ScenePicture, unit: RulerUnit, language: Language) -> str:
    """What a picture shows, for those who cannot see it."""
    words = messages(language)
    key = f"picture-{picture.hand}" if picture.hand else "picture"
    return words(key, shows=sentence(picture.shows, unit, words))


# --- common sizes ----------------------------------------------------------------------------------


def table_heads(section: TechniqueSection) -> list[str]:
    """The finished size, the pieces, what the unit should measure."""
    words = messages(section.language)
    heads = [words("head-finished")]
    for key, oversized in section.table.heads:
        head = words(f"head-{key}")
        heads.append(words("head-oversized", head=head) if oversized else head)
    return [*heads, words("head-should-measure")]


def sizes_title(section: TechniqueSection) -> str:
    """`Flying geese: common sizes`."""
    return messages(section.language)("sizes-title", topic=section_title(section))


def sizes_aside(section: TechniqueSection) -> str:
    """In which measure, with which seam allowance, and how wide for its height where it is no square."""
    return _about_table("sizes-aside", section)


def sizes_caption(section: TechniqueSection) -> str:
    """The same in one sentence with the title."""
    return _about_table("sizes-caption", section, topic=section_title(section))


def _about_table(key: str, section: TechniqueSection, **more: str) -> str:
    words = messages(section.language)
    seam = length_words(section.seam, section.unit, words)
    wide, high = section.table.proportion
    return words(key, unit=section.unit, seam=seam, wide=wide if wide != high else 1, high=high, **more)


def sizes_remark(sections: Sequence[TechniqueSection]) -> str:
    """What the columns of all the tables mean."""
    words = messages(sections[0].language)
    seams = dict.fromkeys(length_words(each.seam, each.unit, words) for each in sections)
    extra = dict.fromkeys(
        length_words(each.table.oversized, each.unit, words) for each in sections if each.table.oversized
    )
    remark = words("sizes-remark", seam=_either(list(seams), words))
    return f"{remark} {words('sizes-oversized', extra=_either(list(extra), words))}" if extra else remark


def _either(lengths: list[str], words: Messages) -> str:
    """`1/4 in`, `1/4 in or 0.75 cm`."""
    return (
        lengths[0]
        if len(lengths) == 1
        else words("drift-either", first=_either(lengths[:-1], words), second=lengths[-1])
    )


# --- the units of the blocks at hand ---------------------------------------------------------------


def uses_title(section: TechniqueSection) -> str:
    """`Flying geese in Rip Current`, or in these blocks."""
    names = list(dict.fromkeys(use.block for use in section.uses))
    return messages(section.language)("uses-title", topic=section_title(section), block=names[0], count=len(names))


def use_words(use: UnitUse, *, named: bool) -> str:
    """One unit: how many, what is cut for it, what it should measure; `named` with its block's name."""
    words = messages(use.language)
    title = title_words(use.title, words)
    title = words("uses-of-block", block=use.block, title=title) if named else capital(title)
    size = size_words(use.finished, use.unit, words)
    said = [words("uses-head", title=title, count=use.count, spare=use.spare, size=size)]
    if use.cuts:
        said.append(words("uses-cut", cuts=listed([_cut(cut, use, words) for cut in use.cuts], words)))
    said.append(words("uses-measure", size=size_words(use.unfinished, use.unit, words)))
    return " ".join(said)


def _cut(cut: CutFacts, use: UnitUse, words: Messages) -> str:
    form = name_of(f"form-{cut.piece}", words, count=cut.count)
    sides = " × ".join(figure(side, use.unit, words) for side in cut.sides)
    return words(
        f"uses-piece-{cut.subcut}",
        count=cut.count,
        fabric=use.fabrics.get(cut.fabric, cut.fabric),
        form=form,
        size=words("length", length=sides, unit=use.unit),
    )


def uses_more(count: int, section: TechniqueSection) -> str:
    """How many units more there are."""
    return messages(section.language)("uses-more", count=count)
