"""The terms a setup's formulas may use, as SymPy functions, and nothing else.

Each is one function in both runtimes (`turning.py` and `snap.py` in `shopcalc/portable/`, the methods in `rows.py`,
`choose.py` and `moisture.py`), so a formula means the same on the server and on the phone.
`inches` and `degrees` put a unit on a number in a formula:
`tilt > degrees(45)`; without it the unit proof could not tell an angle from a count.
"""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any, NamedTuple

import sympy
from sympy.core.relational import Relational
from sympy.logic.boolalg import And, BooleanFalse, BooleanTrue, Not, Or


class sind(sympy.Function):
    """Sine of an angle in degrees."""

    nargs = 1


class cosd(sympy.Function):
    """Cosine of an angle in degrees, 0 to 180."""

    nargs = 1


class tand(sympy.Function):
    """Tangent of an angle in degrees, below 90."""

    nargs = 1


class atand(sympy.Function):
    """The angle in degrees whose tangent is given."""

    nargs = 1


class asind(sympy.Function):
    """The angle in degrees whose sine is given."""

    nargs = 1


class whole_below(sympy.Function):
    """The whole number at or below."""

    nargs = 1


class whole_above(sympy.Function):
    """The whole number at or above."""

    nargs = 1


class whole_nearest(sympy.Function):
    """The nearest whole number; a tie goes up."""

    nargs = 1


class Method(NamedTuple):
    """An algorithm as a term: the kinds it takes, the kind it gives, and how the working words it."""

    takes: tuple[str, ...]
    gives: str
    words: str


class even_marks(sympy.Function):
    """Row of marks: even_marks(first, pitch, count)."""

    nargs = 3


class starts_of(sympy.Function):
    """Where the pieces of a row begin, laid end to end: starts_of(first, row)."""

    nargs = 2


class shifted(sympy.Function):
    """A row moved on by a length: shifted(row, by)."""

    nargs = 2


class joined(sympy.Function):
    """Two rows as one: joined(row, more)."""

    nargs = 2


class row_of(sympy.Function):
    """A row of one length."""

    nargs = 1


class total_of(sympy.Function):
    """The sum of a row."""

    nargs = 1


class count_in(sympy.Function):
    """How many lengths a row has."""

    nargs = 1


class choose_between(sympy.Function):
    """The pieces between two that come nearest to a size, ranked; there may be none: choose_between(wanted, mains, fills, under, over)."""

    nargs = 5


class choose_blocks(sympy.Function):
    """The blocks nearest to a height, ranked: choose_blocks(wanted, row, most)."""

    nargs = 3


class count_sums(sympy.Function):
    """How many sums a row makes, counted no further than above `most`: count_sums(row, shares, most), of the larger of two shares or of all."""

    nargs = 3


class choices_in(sympy.Function):
    """How many choices a ranking has."""

    nargs = 1


class chosen_mains(sympy.Function):
    """The mains of the choice at a place, 0 being the best: chosen_mains(ranking, place)."""

    nargs = 2


class chosen_fills(sympy.Function):
    """The fills of the choice at a place: chosen_fills(ranking, place)."""

    nargs = 2


class lay_on_boards(sympy.Function):
    """Parts laid on boards: lay_on_boards(parts, on_hand, stock, kerf, trim)."""

    nargs = 5


class boards_bought(sympy.Function):
    """How many boards of a layout are to buy."""

    nargs = 1


class boards_least(sympy.Function):
    """What the number of boards to buy cannot be below."""

    nargs = 1


class boards_cost(sympy.Function):
    """What the boards to buy cost."""

    nargs = 1


class boards_priced(sympy.Function):
    """1 where every length has a price, 2 where no lower cost can be, else 0."""

    nargs = 1


class boards_waste(sympy.Function):
    """The length of the boards used that is no part."""

    nargs = 1


class boards_used(sympy.Function):
    """The length of all boards used."""

    nargs = 1


class left_out(sympy.Function):
    """The parts that no board takes: left_out(parts, layout)."""

    nargs = 2


class longest_part(sympy.Function):
    """The length of the longest part."""

    nargs = 1


class longest_board(sympy.Function):
    """The length of the longest board: longest_board(on_hand, stock)."""

    nargs = 2


class settled_moisture(sympy.Function):
    """The percent of moisture at which wood rests in air: settled_moisture(temperature, humidity in percent)."""

    nargs = 2


class fahrenheit_constant(sympy.Function):
    """A temperature, or a difference of two, in a formula."""

    nargs = 1
    is_extended_real = True
    is_comparable = True  # so that it may stand among larger and smaller


class inch_constant(sympy.Function):
    """A number of inches in a formula."""

    nargs = 1
    is_extended_real = True
    is_comparable = True  # so that it may stand among larger and smaller


class degree_constant(sympy.Function):
    """A number of degrees in a formula."""

    nargs = 1
    is_extended_real = True
    is_comparable = True  # so that it may stand among larger and smaller


TURNING = {sind: "sind", cosd: "cosd", tand: "tand", atand: "atand", asind: "asind"}
WHOLE = {whole_below: "floor_of", whole_above: "ceiling_of", whole_nearest: "nearest_of"}
CONSTANTS = {inch_constant: "inch", degree_constant: "degree", fahrenheit_constant: "fahrenheit"}
# What is an algorithm and no formula.
METHODS = {
    even_marks: Method(("length", "length", "number"), "lengths", "{2} marks from {0} every {1}"),
    starts_of: Method(("length", "lengths"), "lengths", "{1} laid end to end from {0}"),
    shifted: Method(("lengths", "length"), "lengths", "{0}, each + {1}"),
    joined: Method(("lengths", "lengths"), "lengths", "{0} and {1}"),
    row_of: Method(("length",), "lengths", "{0}"),
    total_of: Method(("lengths",), "length", "sum of ({0})"),
    count_in: Method(("lengths",), "number", "number of ({0})"),
    choose_between: Method(("length", "lengths", "lengths", "length", "length"), "ranking", "nearest to {0}"),
    choose_blocks: Method(("length", "lengths", "number"), "ranking", "nearest to {0}"),
    count_sums: Method(("lengths", "number", "number"), "number", "sums of {0}"),
    choices_in: Method(("ranking",), "number", "number of choices"),
    chosen_mains: Method(("ranking", "number"), "lengths", "the larger pieces of the choice ranked {1}, the best being 0"),
    chosen_fills: Method(("ranking", "number"), "lengths", "the smaller pieces of the choice ranked {1}, the best being 0"),
    lay_on_boards: Method(("pieces", "lengths", "stock", "length", "length"), "layout", "{0} on boards"),
    boards_bought: Method(("layout",), "number", "boards to buy in {0}"),
    boards_least: Method(("layout",), "number", "what the boards to buy cannot be below"),
    boards_cost: Method(("layout",), "number", "sum of the prices"),
    boards_priced: Method(("layout",), "number", "whether all have a price"),
    boards_waste: Method(("layout",), "length", "boards used less the parts"),
    boards_used: Method(("layout",), "length", "length of the boards used"),
    left_out: Method(("pieces", "layout"), "pieces", "those of {0} that no board takes"),
    longest_part: Method(("pieces",), "length", "longest of {0}"),
    longest_board: Method(("lengths", "stock"), "length", "longest of {0} and {1}"),
    settled_moisture: Method(("temperature", "number"), "number", "moisture of wood at rest in air of {0} and {1}"),
}
ALLOWED = (
    sympy.Symbol,
    sympy.Rational,  # Integer is one; Float is not, and never may be
    sympy.Add,
    sympy.Mul,
    sympy.Pow,
    sympy.Max,
    sympy.Min,
    sympy.Abs,
    sympy.Piecewise,
    sympy.functions.elementary.piecewise.ExprCondPair,
    Relational,
    And,
    Or,
    Not,
    BooleanTrue,
    BooleanFalse,
    *TURNING,
    *WHOLE,
    *CONSTANTS,
    *METHODS,
)


def number(value: int | str) -> sympy.Rational:
    """An exact number from `3`, `"1/4"` or `"0.013"`. Raises ValueError on anything else."""
    exact = Fraction(value)
    return sympy.Rational(exact.numerator, exact.denominator)


def constant_of(expression: Any) -> sympy.Rational:
    """The number in a constant such as `inches(6)`. Raises ValueError for anything else, such as a sum of two."""
    value = sympy.sympify(expression)
    value = value.args[0] if value.func in CONSTANTS else value
    if not value.is_Rational:
        raise ValueError(f"{expression} is no constant such as inches(6)")
    return value


def inches(value: int | str) -> sympy.Expr:
    """A constant length: `inches("1/4")`."""
    return inch_constant(number(value))


def degrees(value: int | str) -> sympy.Expr:
    """A constant angle: `degrees(45)`."""
    return degree_constant(number(value))


def fahrenheit(value: int | str) -> sympy.Expr:
    """A constant temperature, or a difference of two: `fahrenheit(1)`."""
    return fahrenheit_constant(number(value))


def larger(*terms: sympy.Expr) -> sympy.Expr:
    """The largest of the terms."""
    return sympy.Max(*terms)


def smaller(*terms: sympy.Expr) -> sympy.Expr:
    """The smallest of the terms."""
    return sympy.Min(*terms)


def pick(*cases: tuple[object, object], otherwise: object) -> sympy.Expr:
    """The value of the first case `(value, condition)` whose condition holds."""
    return sympy.Piecewise(*cases, (otherwise, True))


def is_row(value: object, kinds: Mapping[str, str]) -> bool:
    """Whether a value is a row of lengths: one by its kind, one that a method gives, or cases of such."""
    if isinstance(value, sympy.Symbol):
        return kinds.get(value.name) == "lengths"
    if isinstance(value, sympy.Piecewise):
        return is_row(value.args[0][0], kinds)
    return type(value) in METHODS and METHODS[type(value)].gives == "lengths"


def forbidden(expression: sympy.Basic) -> str:
    """What in `expression` neither runtime knows, or an empty string."""
    for node in sympy.preorder_traversal(expression):
        if not isinstance(node, ALLOWED):
            return str(node)
        if isinstance(node, sympy.Pow) and not (node.exp.is_Integer or node.exp in (sympy.S.Half, -sympy.S.Half)):
            return str(node)
    return ""
