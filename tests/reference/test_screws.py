"""The figures of wood screws, each with its source."""

import pytest

from shopcalc.reference import screws
from shopcalc.terms import constant_of

FIGURES = {name: value for name, value in vars(screws).items() if isinstance(value, screws.Figure)}


@pytest.mark.parametrize("name", FIGURES)
def test_a_figure_says_where_it_was_read(name: str) -> None:
    """It names a book, a standard or a page, and says so where it is from memory."""
    assert any(word in FIGURES[name].source for word in ("read in", "from memory"))
    assert FIGURES[name].source in screws.SOURCES or "tolerance" in FIGURES[name].source


def test_a_number_eight_is_as_published() -> None:
    """0.164 in, the basic diameter of a No. 8 in Machinery's Handbook (machine screws, ANSI/ASME B18.6.3)."""
    assert 0.164 == pytest.approx(float(constant_of(screws.BODY_OF_NONE.value) + 8 * constant_of(screws.BODY_STEP.value)))
