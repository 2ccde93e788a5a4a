"""Any block: grids of cells, shapes and units of units, for the properties that every block has."""

from dataclasses import dataclass

from hypothesis import strategies as st

from tests.unit.model.blocks import CLOTH

FABRICS = ("fog", "lantern", "slate", "moss")
CHOICES = (
    "half as two at a time",
    "half as eight at a time",
    "half as stitch and flip",
    "quarters as two at a time",
    "hourglass as two at a time",
    "split as two at a time",
    "geese as four at a time",
    "geese as stitch and flip",
    "diamond as stitch and flip",
    "snowball as stitch and flip",
    "rails as strip set",
    "bars as strip set",
    "checker as strip set",
)


@dataclass(frozen=True)
class AnyBlock:
    """The parts of a file; `{a}` … `{d}` stand for fabrics in the rows and units."""

    units: str
    rows: tuple[str, ...]
    choices: tuple[str, ...]
    size: str

    def text(self, fabrics: tuple[str, ...] = FABRICS, turns: str = "") -> str:
        """The whole block is a unit of its own, laid with `turns` into a block of one cell."""
        words = dict(zip("abcd", fabrics, strict=True))
        whole = "\n".join(["unit whole", *(f"  row {row}" for row in self.rows)])
        drawn = f"{self.units}\n{whole}".format(**words)
        lines = [f"size {self.size}", f"row whole{turns}", *(f"make {choice}" for choice in self.choices)]
        return f'{CLOTH}\n{drawn}\nblock "Any"\n' + "".join(f"  {line}\n" for line in lines)


cloth = st.sampled_from(["{a}", "{b}", "{c}", "{d}"])
turns = st.sampled_from(["", "", ">", "<", "~", ">>", "~>", "~<", "~>>"])


def shaped(pattern: str, fabrics: int) -> st.SearchStrategy[str]:
    return st.lists(cloth, min_size=fabrics, max_size=fabrics).map(lambda words: pattern % tuple(words))


plain = st.one_of(
    cloth,
    shaped("%s/%s", 2),
    shaped("%s\\%s", 2),
    shaped("(hourglass %s %s)", 2),
    shaped("(quarters %s %s %s %s)", 4),
    shaped("(split %s %s %s)", 3),
    shaped("(diamond %s on %s)", 2),
    shaped("(diamond %s on %s %s %s %s)", 5),
    shaped("(snowball %s with %s)", 2),
    shaped("(snowball %s with %s at tl br cut 1/2)", 2),
    shaped("(snowball %s with %s at tr cut 1/4)", 2),
    shaped("(rails %s %s %s)", 3),
    shaped("(bars %s %s)", 2),
    shaped("(checker 3 x 2 %s %s)", 2),
    shaped("(half-rectangle %s %s)", 2),
    shaped("(triangle-in-square %s on %s)", 2),
    shaped("(kite %s on %s %s)", 3),
    shaped("(slant %s between %s %s cut 1/3)", 3),
    shaped("(octagon %s with %s)", 2),
    shaped("(tumblers %s %s %s)", 3),
    shaped("(log centre %s with %s %s %s %s narrow 1/2)", 5),
    shaped("(courthouse centre %s with %s %s %s %s)", 5),
    shaped("(pineapple centre %s with straight %s diagonal %s rounds 1)", 3),
)
cells = st.builds(str.__add__, plain, turns)


@st.composite
def any_blocks(draw: st.DrawFn) -> AnyBlock:
    """Square blocks of one to three cells a side, with units two and three deep in them."""
    beam = f"unit beam = geese {draw(cloth)} on {draw(cloth)} {draw(cloth)}"
    pair = f"unit pair\n  columns 2\n  row beam{draw(st.sampled_from(['', '~', '>>']))}\n  row beam"
    corner = "unit corner\n" + "".join(f"  row {draw(cells)} {draw(cells)}\n" for _ in range(2))
    nest = "unit nest\n  columns 1 2\n  heights 2 1\n  row (bars {a} {b}) corner"
    nest += f"{draw(turns)}\n  row {draw(cells)} {{c}}"
    named = st.builds(str.__add__, st.sampled_from(["pair", "corner", "nest"]), turns)
    across = draw(st.integers(1, 3))
    rows = tuple(" ".join(draw(st.one_of(cells, named)) for _ in range(across)) for _ in range(across))
    # One line for a shape: a second one would have nothing left to make.
    one_each = st.lists(st.sampled_from(CHOICES), max_size=4, unique_by=lambda choice: choice.partition(" as ")[0])
    choices = tuple(draw(one_each))
    cell = draw(st.sampled_from(["6 in", "4 in", "3 1/2 in", "10 cm"]))
    number, unit = cell.rsplit(" ", 1)
    whole = {"6": 6, "4": 4, "3 1/2": 3.5, "10": 10}[number] * across
    return AnyBlock(f"{beam}\n{pair}\n{corner}\n{nest}", rows, choices, f"{whole:g} {unit}")
