"""Exact numbers. Values worked out by hand unless a source is named."""

from decimal import Decimal, localcontext

import pytest

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, Surd, ceil_to, floor_to, sign, square_root, to_float, write_exact

ROOT_TWO = square_root(2)
ROOT_THREE = square_root(3)


def test_a_root_times_itself_is_a_plain_fraction_again() -> None:
    product = ROOT_TWO * ROOT_TWO
    assert isinstance(product, Fraction)
    assert product == 2


def test_roots_multiply_into_one_root() -> None:
    assert square_root(6) == ROOT_TWO * ROOT_THREE
    assert square_root(6) * square_root(10) == 2 * square_root(15)


@pytest.mark.parametrize(
    ("number", "root"),
    [
        (0, Fraction(0)),
        (9, Fraction(3)),
        (Fraction(9, 4), Fraction(3, 2)),
        (8, 2 * ROOT_TWO),
        (Fraction(1, 2), ROOT_TWO / 2),
        (Fraction(75, 4), Fraction(5, 2) * ROOT_THREE),
    ],
)
def test_the_root_of_a_fraction_is_exact(number: Fraction | int, root: Exact) -> None:
    assert square_root(number) == root


def test_a_sum_of_roots_gives_its_root_where_there_is_one() -> None:
    # (√6/2 + √2/2)² = 6/4 + 2/4 + 2√12/4 = 2 + √3, and (√2 - 1)² = 3 - 2√2
    assert square_root(2 + ROOT_THREE) == (square_root(6) + ROOT_TWO) / 2
    assert square_root(3 - 2 * ROOT_TWO) == ROOT_TWO - 1


def test_a_root_that_is_no_sum_of_roots_is_too_large_by_next_to_nothing() -> None:
    square = 4 - 2 * ROOT_TWO
    root = square_root(square)
    assert isinstance(root, Fraction)
    assert root * root > square
    shorter = root - Fraction(1, 10**30)
    assert shorter * shorter < square


def test_a_fraction_too_long_to_take_apart_still_has_a_root_that_is_not_too_small() -> None:
    square = Fraction(10**40 + 1, 3)
    root = square_root(square)
    assert root * root >= square
    shorter = root - Fraction(1, 10**30)
    assert shorter * shorter < square


def test_a_negative_number_has_no_root() -> None:
    with pytest.raises(ValueError, match="negative"):
        square_root(1 - ROOT_TWO)


def test_division_leaves_no_root_below_the_line() -> None:
    assert 1 / (1 + ROOT_TWO) == ROOT_TWO - 1
    assert (1 + ROOT_TWO) / (1 + ROOT_TWO) == 1
    assert Fraction(1) / ROOT_THREE == ROOT_THREE / 3


def test_dividing_by_nothing_is_refused() -> None:
    with pytest.raises(ZeroDivisionError):
        _ = ROOT_TWO / 0


def test_numbers_that_nearly_cancel_are_still_told_apart() -> None:
    # 1393² = 2 · 985² - 1 and 665857² = 2 · 470832² + 1, so the second is too large by 1/(2√2 · 470832²) = 1.5947e-12
    assert Fraction(1393, 985) < ROOT_TWO
    assert Fraction(665857, 470832) > ROOT_TWO
    assert sign(Fraction(665857, 470832) - ROOT_TWO) == 1
    assert to_float(Fraction(665857, 470832) - ROOT_TWO) == pytest.approx(1.5947e-12, rel=1e-3)


def test_order_of_plain_and_rooted_numbers() -> None:
    numbers: list[Exact] = [ROOT_THREE, Fraction(3, 2), ROOT_TWO, Fraction(0), -ROOT_TWO]
    assert sorted(numbers) == [-ROOT_TWO, Fraction(0), ROOT_TWO, Fraction(3, 2), ROOT_THREE]
    assert abs(1 - ROOT_TWO) == ROOT_TWO - 1
    assert ROOT_TWO >= 1
    assert 2 >= ROOT_THREE >= ROOT_TWO


def test_equal_numbers_have_equal_hashes_and_others_differ() -> None:
    one, two = (1 + ROOT_TWO) * (1 + ROOT_TWO), 3 + 2 * ROOT_TWO
    assert one == two
    assert hash(one) == hash(two)
    assert Fraction(7, 5) != ROOT_TWO
    assert ROOT_TWO != 1


def test_floats_are_refused() -> None:
    with pytest.raises(TypeError):
        ROOT_TWO + 0.5  # type: ignore[operator]  # the refusal is what is tested


def test_the_leg_of_a_half_square_triangle_rounds_up_to_seven_eighths() -> None:
    # 3 + (2 + √2)/4 = 3.8536 in
    assert ceil_to(3 + (2 + ROOT_TWO) / 4, Fraction(1, 8)) == Fraction(31, 8)
    assert floor_to(3 + (2 + ROOT_TWO) / 4, Fraction(1, 8)) == Fraction(30, 8)


def test_what_the_ruler_reads_already_is_not_rounded() -> None:
    assert ceil_to(Fraction(7, 2), Fraction(1, 8)) == Fraction(7, 2)
    assert ceil_to(Fraction(7, 2) + Fraction(1, 10**40), Fraction(1, 8)) == Fraction(29, 8)
    assert floor_to(-ROOT_TWO, Fraction(1)) == -2


def test_a_ruler_without_measure_is_refused() -> None:
    with pytest.raises(ValueError, match="measure"):
        ceil_to(Fraction(1), Fraction(0))


@pytest.mark.parametrize(
    ("number", "written"),
    [
        (Fraction(3), "3"),
        (Fraction(0), "0"),
        (Fraction(1, 2), "1/2"),
        (Fraction(23, 8), "2 7/8"),
        (Fraction(-5, 2), "-2 1/2"),
        (2 - ROOT_TWO, "2-r2"),
        (ROOT_THREE / 2, "1/2r3"),
        (3 * ROOT_TWO, "3r2"),
        (ROOT_TWO - 1, "-1+r2"),
        (-ROOT_TWO, "-r2"),
        (Fraction(5, 2) + ROOT_THREE * Fraction(3, 2), "5/2+3/2r3"),
    ],
)
def test_numbers_are_written_as_the_language_reads_them(number: Exact, written: str) -> None:
    assert write_exact(number) == written
    if isinstance(number, Surd):
        assert str(number) == written


def test_a_sum_of_roots_agrees_with_fifty_digits() -> None:
    number = Fraction(7, 3) - 5 * ROOT_TWO + ROOT_THREE / 7 + square_root(5)
    with localcontext() as context:
        context.prec = 50
        expected = Decimal(7) / 3 - 5 * Decimal(2).sqrt() + Decimal(3).sqrt() / 7 + Decimal(5).sqrt()
    assert to_float(number) == float(expected)


def test_numbers_beyond_the_reach_of_floats_are_still_compared_exactly() -> None:
    # 1.4142 · 10⁴⁰⁰ lies between 1.4 and 1.5 times 10⁴⁰⁰, and so does its like with 10⁻⁴⁰⁰
    for large in (Fraction(10**400), Fraction(1, 10**400)):
        assert Fraction(7, 5) * large < ROOT_TWO * large < Fraction(3, 2) * large
        assert sign(ROOT_TWO * large - Fraction(3, 2) * large) == -1
        assert ROOT_TWO * large < ROOT_THREE * large


def test_numbers_that_floats_cannot_tell_apart_are_told_apart() -> None:
    # √2 and √2 + 10⁻⁴⁰ are the same float
    more = ROOT_TWO + Fraction(1, 10**40)
    assert more > ROOT_TWO
    assert not more <= ROOT_TWO
    assert more != ROOT_TWO
    assert sign(ROOT_TWO - more) == -1
