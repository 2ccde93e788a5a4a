"""How hard to look for a shorter plan. Counted in work, never in seconds: the same plan on every machine."""

from __future__ import annotations

from enum import Enum


class Effort(Enum):
    """How much work a plan is worth."""

    QUICK = "quick"
    """Well under a second: simple ways of filling strips, the best of them taken."""

    USUAL = "usual"
    """About three seconds at most, while somebody waits."""

    THOROUGH = "thorough"
    """About ten seconds at most, before the cloth is bought."""
