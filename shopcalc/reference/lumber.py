"""What a yard's names of softwood boards measure, dry and dressed.

American Softwood Lumber Standard, Voluntary Product Standard PS 20: minimum dressed sizes at 19 percent of moisture or
less, read in a page that quotes them; the thickness of 2 and more and the widths also in a state's rule of the same
numbers (Tenn. Comp. R. & Regs. 0080-07-07-.06, Table 4). A board in the hand may be wider, and is what it measures.
"""

from fractions import Fraction

# the name, and what it measures in inches
THICKNESSES = {"1": Fraction(3, 4), "5/4": Fraction(1), "2": Fraction(3, 2), "3": Fraction(5, 2), "4": Fraction(7, 2)}
WIDTHS = {
    "2": Fraction(3, 2),
    "3": Fraction(5, 2),
    "4": Fraction(7, 2),
    "5": Fraction(9, 2),
    "6": Fraction(11, 2),
    "8": Fraction(29, 4),
    "10": Fraction(37, 4),
    "12": Fraction(45, 4),
}


def dressed_sizes() -> dict[str, list[list[str | int]]]:
    """Names with what they measure, as data: `[name, numerator, denominator]` in inches, for thickness and width."""
    tables = {"thickness": THICKNESSES, "width": WIDTHS}
    return {word: [[name, size.numerator, size.denominator] for name, size in table.items()] for word, table in tables.items()}
