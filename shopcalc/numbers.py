"""The server's arithmetic: exact fractions, and irrational values to forty digits as fractions.

The phone's twin of this table is `static/numbers.js`. Everything the portable code needs of a platform
beyond + - * / and comparison is in these few entries.
"""

from collections.abc import Callable
from functools import lru_cache, partial
from math import isqrt
from typing import Any

import mpmath
from mpmath.libmp import to_rational
from quicktions import Fraction

DIGITS = 40

# A context of our own: the precision of mpmath's shared one belongs to whoever else uses it.
_context = mpmath.MPContext()
_context.dps = DIGITS


def _as_float(x: Fraction) -> Any:
    return _context.mpf(x.numerator) / x.denominator


def _as_fraction(x: Any) -> Fraction:
    """A real result as the fraction it is. Raises ValueError where there is none, such as the arcsine of 2."""
    if isinstance(x, _context.mpc):
        raise ValueError("there is no such number")
    numerator, denominator = to_rational(x._mpf_)
    return Fraction(int(numerator), int(denominator))


# One answer asks for the same sine many times: in its results, its drawing, its marks and its steps.
@lru_cache(maxsize=256)
def _of_angle(function: Callable[[Any], Any], angle: Fraction) -> Fraction:
    """A function of an angle in degrees."""
    return _as_fraction(function(_as_float(Fraction(angle)) * _context.pi / 180))


def _angle_of(function: Callable[[Any], Any], value: Fraction) -> Fraction:
    """The angle in degrees that a function gives."""
    return _as_fraction(function(_as_float(Fraction(value))) * 180 / _context.pi)


def exact_root(square: Fraction) -> Fraction:
    """The square root: exact where the square is one, else to `DIGITS` digits. Raises ValueError below zero."""
    square = Fraction(square)
    if square < 0:
        raise ValueError("the square root of a negative number")
    top, under = isqrt(square.numerator), isqrt(square.denominator)
    if top * top == square.numerator and under * under == square.denominator:
        return Fraction(top, under)
    return _as_fraction(_context.sqrt(_as_float(square)))


def attempt(formula: Callable[..., Any], known: dict[str, Any], numbers: dict[str, Any]) -> Any:
    """What `formula` gives for the known values, or None where one of them is missing or there is no such number."""
    try:
        return formula(known, numbers)
    except (KeyError, ZeroDivisionError, ValueError):
        return None


def plain(x: Fraction) -> int | float:
    """The value as JSON writes it: a whole number stays one."""
    return int(x) if x == int(x) else float(x)


def kind_of(value: Any) -> str:
    """What sort of JSON value this is."""
    if value is None:
        return "nothing"
    for kind, types in (("truth", bool), ("text", str), ("number", (int, float)), ("list", list)):
        if isinstance(value, types):
            return kind
    return "object"


NUMBERS: dict[str, Callable[..., Any]] = {
    "ratio": Fraction,
    "sin": partial(_of_angle, _context.sin),
    "tan": partial(_of_angle, _context.tan),
    "asin": partial(_angle_of, _context.asin),
    "atan": partial(_angle_of, _context.atan),
    "root": exact_root,
    "attempt": attempt,
    "plain": plain,
    "kind_of": kind_of,
}
