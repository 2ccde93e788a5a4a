"""How a role is spread over prints, in words."""

from __future__ import annotations

from blockdsl.facts.finishingfacts import ScrapsFacts
from blockdsl.wording.messages import Messages


def format_prints(spread: ScrapsFacts, words: Messages) -> tuple[str, ...]:
    """How the prints are spread, and what each gives."""
    if spread.clashes == 0:
        apart = words("prints-apart")
    else:
        key = "prints-share-least" if spread.proved else "prints-share"
        apart = words(key, count=spread.clashes, bound=spread.bound)
    least, most = min(spread.uses), max(spread.uses)
    if least == most:
        used = words("prints-used", count=most)
    else:
        used = words("prints-used-or" if most == least + 1 else "prints-used-to", least=least, most=most)
    gives = words("prints-gives", count=spread.blocks_each) if spread.blocks_each else words("prints-takes-more")
    return (" ".join((words("prints-numbered"), apart, used, gives)),)
