"""Exact numbers obey the laws of arithmetic and agree with fifty digits."""

from decimal import Decimal, localcontext

from hypothesis import assume, given
from hypothesis import strategies as st

from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.number import (
    Exact,
    Surd,
    ceil_to,
    floor_to,
    sign,
    square_root,
    to_float,
    write_exact,
)

fractions = st.fractions(min_value=-50, max_value=50, max_denominator=16).map(lambda x: Fraction(*x.as_integer_ratio()))
measures = st.sampled_from([Fraction(1, 8), Fraction(1, 16), Fraction(1, 10), Fraction(1)])


@st.composite
def numbers(draw: st.DrawFn) -> Exact:
    total: Exact = draw(fractions)
    for n in draw(st.lists(st.sampled_from([2, 3, 5, 6, 10]), max_size=3)):
        total = total + draw(fractions) * square_root(n)
    return total


def digits(number: Exact) -> Decimal:
    """The number to fifty digits, worked out without the code under test."""
    terms = number.terms if isinstance(number, Surd) else ((1, number),)
    total = Decimal(0)
    for n, c in terms:
        total += Decimal(c.numerator) / Decimal(c.denominator) * Decimal(n).sqrt()
    return total


@given(numbers(), numbers(), numbers())
def test_sums_and_products_may_be_taken_in_any_order(a: Exact, b: Exact, c: Exact) -> None:
    assert a + b == b + a
    assert a * b == b * a
    assert (a + b) + c == a + (b + c)
    assert (a * b) * c == a * (b * c)
    assert a * (b + c) == a * b + a * c
    assert a - b == -(b - a)


@given(numbers(), numbers())
def test_division_undoes_multiplication(a: Exact, b: Exact) -> None:
    assume(b != 0)
    assert a * b / b == a
    assert (a / b) * b == a


@given(numbers())
def test_the_root_of_a_square_is_the_number_again(a: Exact) -> None:
    assert square_root(a * a) == abs(a)


def test_numbers_too_near_to_nothing_for_a_float_have_the_sign_of_pells_equation() -> None:
    # a² - 2b² is 1 and -1 by turns for 1/1, 3/2, 7/5, 17/12 … (Pell's equation), so a - b√2 has that sign.
    a, b, root = 1, 1, square_root(2)
    for turn in range(60):
        assert sign(a - b * root) == (1 if turn % 2 else -1)
        assert sign(b * root - a) == (-1 if turn % 2 else 1)
        assert sign(-a - b * root) == -1
        a, b = a + 2 * b, a + b


@given(numbers(), numbers())
def test_order_sign_and_float_agree_with_fifty_digits(a: Exact, b: Exact) -> None:
    with localcontext() as context:
        context.prec = 50
        difference = digits(a) - digits(b)
        if a == b:
            assert abs(difference) < Decimal("1e-40")
        else:
            assert sign(a - b) == (1 if difference > 0 else -1)
            assert (a < b) is (difference < 0)
            assert (a >= b) is (difference > 0)
        assert abs(Decimal(to_float(a)) - digits(a)) <= abs(digits(a)) * Decimal("4e-16")


@given(numbers(), measures)
def test_rounding_up_gives_the_least_multiple_that_is_not_less(a: Exact, measure: Fraction) -> None:
    up, down = ceil_to(a, measure), floor_to(a, measure)
    assert (up / measure).denominator == 1
    assert up >= a > up - measure
    assert down <= a < down + measure
    assert up - down == (0 if up == a else measure)


@given(numbers())
def test_what_is_written_can_be_read_back(a: Exact) -> None:
    text = write_exact(a)
    total: Exact = Fraction(0)
    if isinstance(a, Surd):
        for part in text.replace("-", " -").replace("+", " ").split():
            factor, _, n = part.partition("r")
            if n:
                factor += "1" if factor in ("", "-") else ""
                total = total + read_fraction(factor) * square_root(int(n))
            else:
                total = total + read_fraction(factor)
    else:
        size = sum((read_fraction(part) for part in text.removeprefix("-").split()), Fraction(0))
        total = -size if text.startswith("-") else size
    assert total == a


@given(st.integers(min_value=1, max_value=10**9), st.integers(min_value=1, max_value=10**6))
def test_the_root_of_any_everyday_fraction_is_exact(numerator: int, denominator: int) -> None:
    number = Fraction(numerator, denominator)
    root = square_root(number)
    assert root * root == number
