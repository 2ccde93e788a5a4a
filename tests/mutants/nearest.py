"""Which tests lie nearest to a file: those that are run first, and for most changes alone."""

from __future__ import annotations

from pathlib import Path

NEAREST: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("blockdsl/cutting/cloth", ("tests/unit/cutting", "tests/outside/test_cloth_plans.py")),
    ("blockdsl/cutting/drift", ("tests/unit/cutting/test_drift.py", "tests/outside/test_careful_maker.py")),
    (
        "blockdsl/cutting/finishing",
        (
            "tests/unit/cutting",
            "tests/unit/facts",
            "tests/outside/test_finishing.py",
            "tests/outside/test_calculator.py",
        ),
    ),
    (
        "blockdsl/cutting/quilt",
        (
            "tests/unit/cutting",
            "tests/unit/facts",
            "tests/outside/test_quilt_values.py",
            "tests/outside/test_careful_maker.py",
            "tests/outside/test_calculator.py",
            "tests/properties/test_quilts.py",
        ),
    ),
    ("blockdsl/cutting/fat_quarters", ("tests/unit/cutting", "tests/outside/test_fat_quarters.py")),
    (
        "blockdsl/cutting",
        (
            "tests/unit/cutting",
            "tests/spec",
            "tests/outside/test_cut_shapely.py",
            "tests/outside/test_angled_shapely.py",
            "tests/outside/test_virtual_sewing.py",
            "tests/outside/test_published_values.py",
        ),
    ),
    (
        "blockdsl/sewing/order",
        ("tests/unit/sewing", "tests/properties/test_order.py", "tests/outside/test_order_bruteforce.py"),
    ),
    (
        "blockdsl/sewing/foundation",
        ("tests/unit/sewing", "tests/properties/test_foundation_blocks.py", "tests/outside/test_foundation_pieces.py"),
    ),
    (
        "blockdsl/sewing/techniques",
        ("tests/unit/sewing", "tests/unit/facts", "tests/outside/test_technique_tables.py", "tests/unit/drawing"),
    ),
    (
        "blockdsl/sewing",
        ("tests/unit/sewing", "tests/unit/facts", "tests/spec", "tests/outside/test_virtual_sewing.py"),
    ),
    ("blockdsl/analysis/quilt", ("tests/unit/analysis", "tests/spec", "tests/outside/test_quilt_cover_shapely.py")),
    ("blockdsl/analysis", ("tests/unit/analysis", "tests/spec", "tests/unit/cli")),
    (
        "blockdsl/facts/quilt",
        (
            "tests/unit/facts",
            "tests/unit/wording",
            "tests/outside/test_quilt_values.py",
            "tests/outside/test_calculator.py",
        ),
    ),
    (
        "blockdsl/facts",
        ("tests/unit/facts", "tests/unit/wording", "tests/spec", "tests/unit/cli", "tests/unit/drawing"),
    ),
)
"""By the beginning of a file's path, the longest first; a test of the file's own name goes before them."""


def nearest(file: str, root: Path) -> tuple[str, ...]:
    """The tests to run first for a change in a file, in order."""
    own = sorted(path.relative_to(root).as_posix() for path in (root / "tests").rglob(f"test_{Path(file).stem}*.py"))
    for beginning, tests in sorted(NEAREST, key=lambda each: -len(each[0])):
        if file.startswith(beginning):
            return (*own, *(test for test in tests if (root / test).exists()))
    return (*own, "tests/unit")
