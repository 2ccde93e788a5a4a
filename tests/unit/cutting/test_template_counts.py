"""How many patches of each fabric a template is for."""

from __future__ import annotations

from tests.unit.model.blocks import block


def test_a_template_counts_its_patches_fabric_by_fabric() -> None:
    facts = block("row fog slate fog", "row slate fog moss", size="9 x 6 in")
    (template,) = facts.templates
    assert dict(template.uses) == {"fog": 3, "slate": 2, "moss": 1}
