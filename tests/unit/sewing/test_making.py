"""What units are called in the list of what to make."""

from tests.unit.model.blocks import block


def test_a_unit_that_has_the_name_of_its_shape_is_called_so_once() -> None:
    above = "unit hourglass = hourglass fog slate\nunit lamp = hourglass slate moss"
    units = block("row hourglass lamp", above=above, size="6 x 3 in").units
    assert [unit.title for unit in units] == ["hourglass", "lamp (hourglass)"]
