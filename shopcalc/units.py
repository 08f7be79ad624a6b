"""Pint: the one registry, the factors the phone is sent, and the proof that formulas add like to like.

An angle is given a dimension of its own here. In SI it has none, and a proof that lets an angle be added
to a count would prove little.
"""

from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from typing import Any

import pint
import sympy

from shopcalc.terms import CONSTANTS, METHODS, TURNING, WHOLE, asind, atand

LENGTH_UNITS = {"in": "inch", "ft": "foot", "mm": "millimeter", "cm": "centimeter", "m": "meter"}
KIND_UNITS = {"length": "inch", "angle": "arc", "count": "", "division": "", "choice": "", "number": "", "percent": ""}
KIND_UNITS |= {
    "temperature": "hotness",
    "lengths": "row",
    "ranking": "ranking",
    "truth": "",
    "price": "",
    "pieces": "pieces",
    "stock": "stock",
    "layout": "layout",
}
INNER = ("ranking", "layout")  # what results are taken from, and is no result itself
LISTS = ("lengths", "pieces", "stock", *INNER)
KINDS = ("length", "angle", "number", "temperature", *LISTS)

CONSTANT_UNITS = {"inch": "inch", "degree": "arc", "fahrenheit": "hotness"}


def is_shown(kind: str | None) -> bool:
    """Whether a value of this kind can be quoted or drawn; None is the kind of a name that is not declared."""
    return kind is not None and kind not in INNER


@cache
def registry() -> pint.UnitRegistry[Any]:
    """The project's unit registry, with exact fractions and `arc`, the degree that is no mere number."""
    made: pint.UnitRegistry[Any] = pint.UnitRegistry(non_int_type=Fraction, cache_folder=None)
    made.define("arc = [arc_length]")
    # a degree of a thermometer: Pint's own have a zero, which a difference of temperatures has not
    made.define("hotness = [hotness]")
    # rows, rankings and layouts are no quantities: by dimensions of their own they are known, and refused in arithmetic
    made.define("row = [row]")
    for name in LISTS[1:]:
        made.define(f"{name} = [{name}]")
    return made


@cache
def length_factors() -> dict[str, list[int]]:
    """The length units in inches, each as [numerator, denominator]: 1 mm is [5, 127]."""
    made = registry()
    factors = {}
    for name, unit in LENGTH_UNITS.items():
        inches = Fraction(made.Quantity(Fraction(1), unit).to("inch").magnitude)
        factors[name] = [inches.numerator, inches.denominator]
    return factors


class UnitsError(ValueError):
    """A formula adds, compares or turns what cannot be added, compared or turned."""


def dimension_of(expression: sympy.Basic, kinds: Mapping[str, str]) -> str:
    """The kind of value an expression gives: `length`, `angle`, `number`, or `truth` for a condition.

    `kinds` names the kind of each symbol. Raises UnitsError, naming the part at fault.
    """
    value = _quantity(expression, kinds)
    if value is None:
        return "truth"
    for kind in KINDS:
        if value.check(registry().Quantity(1, KIND_UNITS[kind]).dimensionality):
            return kind
    raise UnitsError(f"{expression} comes out as {_named(value)}")


def _named(value: Any) -> str:
    """The dimension of a quantity in words; Pint cannot format units with fractions for exponents."""
    powers = [f"{name.strip('[]')}^{float(power):g}" for name, power in value.dimensionality.items()]
    return " ".join(powers) or "a plain number"


def _quantity(node: sympy.Basic, kinds: Mapping[str, str]) -> Any:
    """Evaluate `node` with Pint quantities; None for a condition. Every branch is visited."""
    made = registry()
    if isinstance(node, sympy.Symbol):
        return made.Quantity(Fraction(3), KIND_UNITS[kinds[node.name]])
    if isinstance(node, sympy.Rational):
        return made.Quantity(Fraction(int(node.p), int(node.q)), "")
    if type(node) in CONSTANTS:
        return made.Quantity(_quantity(node.args[0], kinds).magnitude, CONSTANT_UNITS[CONSTANTS[type(node)]])
    if type(node) in METHODS:
        return _given_by_method(node, kinds)
    if isinstance(node, sympy.Piecewise):
        for _, condition in node.args:
            _quantity(condition, kinds)
        return _alike(node, [value for value, _ in node.args], kinds)
    if isinstance(node, (sympy.logic.boolalg.BooleanFunction, sympy.logic.boolalg.BooleanAtom)):
        for argument in node.args:
            _quantity(argument, kinds)
        return None
    if isinstance(node, sympy.core.relational.Relational):
        _no_rows(node, [_alike(node, list(node.args), kinds)])
        return None
    if isinstance(node, (sympy.Add, sympy.Max, sympy.Min)):
        return _no_rows(node, [_alike(node, list(node.args), kinds)])[0]
    return _product_or_function(node, _no_rows(node, [_quantity(argument, kinds) for argument in node.args]))


def _no_rows(node: sympy.Basic, values: list[Any]) -> list[Any]:
    """The values, unless one is a row or a ranking: only methods and cases take those."""
    for value in values:
        if value is not None and any(value.check(registry().Quantity(1, unit).dimensionality) for unit in ("row", *LISTS[1:])):
            raise UnitsError(f"{node}: a row is no quantity")
    return values


def _given_by_method(node: sympy.Basic, kinds: Mapping[str, str]) -> Any:
    """What a method gives, once it is sure that it takes what it is given; zero goes with any number."""
    method = METHODS[type(node)]
    for argument, kind in zip(node.args, method.takes, strict=True):
        found = dimension_of(argument, kinds)
        if found != kind and argument != 0:
            raise UnitsError(f"{node}: {type(node).__name__} takes a {kind}, and {argument} is a {found}")
    return registry().Quantity(Fraction(1), KIND_UNITS[method.gives])


def _alike(node: sympy.Basic, terms: list[sympy.Basic], kinds: Mapping[str, str]) -> Any:
    """The terms' common quantity; zero goes with anything."""
    found: list[Any] = [_quantity(term, kinds) for term in terms if term != 0]
    if not found:
        return registry().Quantity(Fraction(0), "")
    total = found[0]
    try:
        for each in found[1:]:
            total = total + each
    except pint.DimensionalityError as disagreement:
        raise UnitsError(f"{node}: {disagreement}") from disagreement
    return found[0]


def _product_or_function(node: sympy.Basic, values: list[Any]) -> Any:
    """A product, power, absolute value or declared function of quantities."""
    made = registry()
    if isinstance(node, sympy.Mul):
        product = values[0]
        for each in values[1:]:
            product = product * each
        return product
    if isinstance(node, sympy.Pow):
        exponent = values[1].magnitude
        # only the dimension is wanted, and Fraction ** (1/2) would be a float
        return made.Quantity(Fraction(1), values[0].units ** exponent)
    if isinstance(node, sympy.Abs):
        return values[0]
    given = values[0]
    inverse = isinstance(node, (atand, asind))
    wanted = "arc" if type(node) in TURNING and not inverse else ""
    if type(node) not in WHOLE and type(node) not in TURNING:
        raise UnitsError(f"{node} is no term of a formula")
    # zero goes with anything here too: the sine of no turn at all
    if node.args[0] != 0 and not given.check(made.Quantity(1, wanted).dimensionality):
        raise UnitsError(f"{node}: {type(node).__name__} takes {'an angle' if wanted else 'a plain number'}, not {_named(given)}")
    return made.Quantity(Fraction(1), "arc" if inverse else "")
