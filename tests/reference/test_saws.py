"""How far cutters stand out of a saw's table: common practice, held against the blade's own size."""

from fractions import Fraction

from shopcalc.reference.saws import TEN_INCH_BLADE


def test_less_than_half_of_a_blade_stands_out_of_its_table() -> None:
    """A blade 10 in across turns about a middle that is below the table, and a flange on its arbor below that."""
    arbor = Fraction(5, 8)

    assert Fraction(TEN_INCH_BLADE) < 5 - arbor / 2
