"""A cell of every shape of the language, each with fabrics of its own wherever it may have them."""

CELLS = {
    "half": "fog/slate",
    "hourglass": "(hourglass fog slate)",
    "quarters": "(quarters fog slate moss lantern)",
    "split": "(split fog slate moss)",
    "geese": "(geese lantern on fog moss)",
    "diamond": "(diamond lantern on fog slate moss fog)",
    "snowball": "(snowball fog with moss at tl br)",
    "rails": "(rails fog moss fog)",
    "bars": "(bars fog moss slate lantern)",
    "checker": "(checker 3 x 3 fog moss)",
    "half-rectangle": "(half-rectangle fog slate)",
    "triangle-in-square": "(triangle-in-square lantern on fog moss)",
    "long-diamond": "(long-diamond lantern on fog slate moss fog)",
    "kite": "(kite lantern on fog moss)",
    "trapezoid": "(trapezoid lantern on fog moss)",
    "slant": "(slant lantern between fog moss)",
    "octagon": "(octagon lantern with fog moss fog slate)",
    "tumblers": "(tumblers fog moss lantern slate)",
    "triangles60": "(triangles60 lantern fog rows 2)",
    "log": "(log centre lantern with fog slate moss fog narrow 1/2)",
    "courthouse": "(courthouse centre lantern with fog slate moss fog strip 1/2)",
    "pineapple": "(pineapple centre lantern with straight fog diagonal moss rounds 1 strip 1/3)",
}
OBLONG = ("geese", "half-rectangle", "long-diamond", "slant")
"""Shapes that are tried twice as wide as high."""
SET_IN = {
    "spool": "(spool centre lantern with fog moss)",
    "star45": "(star45 points lantern moss rows 2 ground fog corners slate)",
    "hexagons": "(hexagons lantern fog moss across 2)",
    "cubes": "(cubes lantern fog moss across 2)",
}
"""Shapes that no straight seams make, and so no papers."""
CURVED = {
    "curve": "(curve slate in fog)",
    "fan": "(fan slate lantern slate on fog)",
}
"""Shapes with arcs, which neither papers nor methods make."""
