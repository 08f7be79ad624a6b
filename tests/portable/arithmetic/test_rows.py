"""Rows of lengths."""

from fractions import Fraction

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.arithmetic.rows import MOST_MARKS, count_in, even_marks, joined, row_of, shifted, starts_of, total_of

from ...helpers import run

THIRD = Fraction(1, 3)


def test_marks_come_from_exact_values() -> None:
    """The last of a hundred marks is as exact as the first."""
    assert [THIRD, 2 * THIRD, 1] == even_marks(THIRD, THIRD, Fraction(3))
    assert Fraction(100, 3) == even_marks(THIRD, THIRD, Fraction(100))[-1]


def test_no_endless_row_is_made() -> None:
    """A count beyond what anybody marks gives no marks at all."""
    assert MOST_MARKS == len(even_marks(1, 1, MOST_MARKS))
    assert [] == even_marks(1, 1, MOST_MARKS + 1)


def test_a_row_laid_end_to_end() -> None:
    """Each piece begins where the one before it ends."""
    assert [Fraction(1, 8), Fraction(3, 8), Fraction(7, 8)] == starts_of(Fraction(1, 8), [Fraction(1, 4), Fraction(1, 2), 1])
    assert (Fraction(7, 4), 3) == (total_of([Fraction(1, 4), Fraction(1, 2), 1]), count_in([1, 2, 3]))


def test_rows_are_moved_and_joined() -> None:
    """A row moved on by a length, and two rows as one, leave what they were made of alone."""
    row = [1, 2]

    assert ([4, 5], [1, 2, 9], [7]) == (shifted(row, 3), joined(row, [9]), row_of(7))
    assert [1, 2] == row


@pytest.mark.parametrize(
    ("code", "expected"),
    [("even_marks(0.5, 0.25, 3)", [0.5, 0.75, 1]), ("starts_of(1, [2, 3])", [1, 3]), ("joined([1], [2])", [1, 2]), ("shifted([1, 2], 1)", [2, 3])],
)
def test_the_phone_does_the_same(code: str, expected: list[float], phone_brain: MiniRacer) -> None:
    """Rows grow and join on the phone as they do here."""
    assert expected == run(phone_brain, code)
