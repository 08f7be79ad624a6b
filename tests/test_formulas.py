"""One formula printed twice, as Python and as JavaScript."""

from fractions import Fraction

import pytest
import sympy
from py_mini_racer import MiniRacer

from shopcalc.formulas import compile_exact, print_phone
from shopcalc.terms import asind, atand, cosd, degrees, inches, larger, number, pick, sind, smaller, tand, whole_above, whole_below, whole_nearest

from .helpers import NUMBERS, close, run

a, b, c = (sympy.Symbol(name, real=True) for name in "abc")

# formula, values of a, b and c, what it comes to
WORKED = {
    "a difference halved": ((a - b) / 2, ("1.375", "0.3125", 0), "17/32"),
    "a negative factor": (-2 * a + b, (1, 5, 0), 3),
    "a quotient": (a / (b * c), (1, 3, "1/2"), "2/3"),
    "a power": (a**3 * b**-2, (2, 4, 0), "1/2"),
    "a root": (sympy.sqrt(a**2 + b**2), (3, 4, 0), 5),
    "one over a root": (1 / sympy.sqrt(a), ("1/4", 0, 0), 2),
    "a size": (abs(a - b), (1, 3, 0), 2),
    "the largest": (larger(a, b, c), (1, 3, 2), 3),
    "the smallest": (smaller(a, b, c, 5), (4, 3, 2), 2),
    "a sine": (a * sind(b), (3, 30, 0), "3/2"),
    "a cosine past a right angle": (cosd(a), (120, 0, 0), "-1/2"),
    "a tangent": (tand(a), (45, 0, 0), 1),
    "arcs": (atand(a) + asind(b), (1, "1/2", 0), 75),
    "the whole number below": (whole_below(a / b) + number("1/2"), ("0.6", "0.2", 0), "7/2"),
    "the whole number above": (whole_above(a / b), ("0.6", "0.2", 0), 3),
    "the nearest whole number": (whole_nearest(a / b) / 3, ("0.5", "0.2", 0), 1),
    "a constant": (inches("1/4") * a + degrees(2), (2, 0, 0), "5/2"),
    "cases": (pick((a, a > b), (b, b > c), otherwise=c), (1, 2, 3), 3),
    "the first case that holds": (pick((a, a > b), (b, b > c), otherwise=c), (3, 2, 1), 3),
    "a plain third": (number("1/3") * a, (1, 0, 0), "1/3"),
}
HELD = {
    "more": (a > b, [("0.3", "0.2", True), (1, 1, False), (1, 2, False)]),
    "less": (a < b, [("0.2", "0.3", True), (1, 1, False), (2, 1, False)]),
    "at least": (a >= b, [(1, 1, True), (2, 1, True), (1, 2, False)]),
    "at most": (a <= b, [(1, 1, True), (2, 1, False), (1, 2, True)]),
    "equal": (sympy.Eq(a, b), [(1, 1, True), (1, 2, False)]),
    "unequal": (sympy.Ne(a, b), [(1, 1, False), (1, 2, True)]),
    "both": (sympy.And(a > 0, b > 0), [(1, 1, True), (1, 0, False)]),
    "either": (sympy.Or(a > 1, b > 1), [(1, 2, True), (1, 1, False)]),
    "not": (sympy.Not(sympy.And(a > 0, b > 0)), [(1, 1, False), (0, 1, True)]),
    "always": (sympy.true, [(0, 0, True)]),
    "never": (sympy.false, [(0, 0, False)]),
}  # fmt: skip


def both(formula: sympy.Basic, values: tuple, brain: MiniRacer) -> list:
    """What a formula comes to on the server and on the phone."""
    exact = {name: Fraction(value) for name, value in zip("abc", values, strict=True)}
    on_server = compile_exact({"it": formula})["it"](exact, NUMBERS)
    on_phone = run(brain, f"({print_phone({'it': formula}, {})})[0](given[0], numbers)", {name: float(value) for name, value in exact.items()})
    return [on_server, on_phone]


@pytest.mark.parametrize("what", WORKED)
def test_values(what: str, phone_brain: MiniRacer) -> None:
    """A formula comes to the same on both sides, on the server exactly."""
    formula, values, expected = WORKED[what]
    on_server, on_phone = both(formula, values, phone_brain)

    assert Fraction(expected) == on_server
    assert close(float(Fraction(expected)), on_phone)


@pytest.mark.parametrize("what", HELD)
def test_conditions(what: str, phone_brain: MiniRacer) -> None:
    """A condition is a truth on both sides, and the same one."""
    formula, cases = HELD[what]
    for first, second, expected in cases:
        assert [expected, expected] == both(formula, (first, second, 0), phone_brain)


def test_sums_on_a_limit_are_decided_alike(phone_brain: MiniRacer) -> None:
    """0.1 and 0.2 are no more than 0.3 on either side, though doubles say so."""
    assert [False, False] == both(a + b > c, ("0.1", "0.2", "0.3"), phone_brain)


def test_a_list_of_formulas_is_a_list_of_values(phone_brain: MiniRacer) -> None:
    """The points of a picture are worked out together."""
    formulas = [a, b / 2, sympy.Integer(0)]

    assert [[1, 1, 0], [1, 1, 0]] == both(formulas, (1, 2, 0), phone_brain)


def test_results_are_exact_fractions() -> None:
    """No float comes out of a formula over fractions."""
    found = compile_exact({key: formula for key, (formula, _, _) in WORKED.items()})
    values = [each({name: Fraction(value) for name, value in zip("abc", WORKED[key][1], strict=True)}, NUMBERS) for key, each in found.items()]

    assert [] == [value for value in values if isinstance(value, float)]


@pytest.mark.parametrize("term", [sympy.Float("0.5") * a, sympy.sin(a), a**b, sympy.pi * a, sympy.floor(a)], ids=str)
def test_terms_that_one_side_lacks_are_not_printed(term: sympy.Basic) -> None:
    """A term that only one side knows is refused by both printers."""
    for printer in (compile_exact, lambda each: print_phone(each, {})):
        with pytest.raises(ValueError, match="cannot be worked out on both sides"):
            printer({"it": term})


@pytest.mark.parametrize("formula", [pick((a, a / b > 1), otherwise=2 * a), smaller(a * a / b, a), 1 / b, sympy.sqrt(-a)], ids=str)
def test_what_cannot_be_worked_out_is_absent_on_both_sides(formula: sympy.Basic, phone_brain: MiniRacer) -> None:
    """Nothing divided by nothing goes on as infinity, nor the root of less than nothing as no number."""
    exact = compile_exact({"it": formula})["it"]
    known = {"a": Fraction(3), "b": Fraction(0)}

    assert NUMBERS["attempt"](exact, known, NUMBERS) is None
    there = f"(known, numbers) => ({print_phone({'it': formula}, {})})[0](byShortName(known, {{ a: 'a', b: 'b' }}), numbers)"
    assert run(phone_brain, f"numbers.attempt({there}, given[0], numbers)", {"a": 3, "b": 0}) is None


def test_the_phone_is_sent_formulas_in_order(phone_brain: MiniRacer) -> None:
    """On the server formulas have their keys, which may be phrases; the phone gets them in the same order, with short names."""
    formulas = {"check thin_cheek": a > b, "shape 0 1": [a]}
    text = print_phone(formulas, {"a": "x", "b": "y"})

    assert list(formulas) == list(compile_exact(formulas))
    assert [True, [3]] == run(phone_brain, f"({text}).map(each => each({{ x: 3, y: 2 }}, numbers))")
