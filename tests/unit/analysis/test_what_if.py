"""What is supposed, in the words of a command."""

from __future__ import annotations

import pytest

from blockdsl.analysis.override import WhatIf
from blockdsl.geometry.fraction import Fraction


@pytest.mark.parametrize(
    ("what_if", "typed"),
    [
        (WhatIf(), ""),
        (WhatIf(size=(Fraction(9), "in")), "--size '9 in'"),
        (WhatIf(places=(6, 8), pattern="on point"), "--set '6 x 8 on point'"),
        (WhatIf(colourway="Night"), "--colourway Night"),
        (WhatIf(colourway="Winter's day"), '--colourway "Winter\'s day"'),
    ],
)
def test_a_shell_reads_every_value_as_one_word(what_if: WhatIf, typed: str) -> None:
    assert what_if.options == typed
