"""Formulas as they are worked on a scrap of wood."""

import pytest
import sympy

from shopcalc.terms import (
    asind,
    atand,
    boards_used,
    boards_waste,
    cosd,
    degrees,
    inches,
    joined,
    larger,
    left_out,
    longest_part,
    number,
    pick,
    row_of,
    sind,
    smaller,
    tand,
    total_of,
    whole_above,
    whole_nearest,
)
from shopcalc.working import working_cases, working_text

a, b, c = (sympy.Symbol(name, real=True) for name in ("a", "b", "c_d"))

WRITTEN = {
    "({a} \u2212 {b}) / 2": (a - b) / 2,
    "{a} + {b}": a + b,
    "{a} \u2212 {b}": a - b,
    "2 \u00d7 {a}": 2 * a,
    "{a} \u00d7 {b} / {c_d}": a * b / c,
    "{a} / ({b} + {c_d})": a / (b + c),
    "({a} + {b}) / {c_d}": (a + b) / c,
    "1 / tan({a})": 1 / tand(a),
    "{a}\u00b2": a**2,
    "{a} / {b}\u00b2": a / b**2,
    "\u221a({a}\u00b2 + {b}\u00b2)": sympy.sqrt(a**2 + b**2),
    "{a} / sin({b})": a / sind(b),
    "{a} \u00d7 cos({b})": a * cosd(b),
    "arctan({a} / {b})": atand(a / b),
    "arcsin({a})": asind(a),
    "90\u00b0 \u2212 {a}": degrees(90) - a,
    "180\u00b0 \u2212 {a} \u2212 {b}": degrees(180) - a - b,
    "90\u00b0 \u2212 {a} / 2": degrees(90) - a / 2,
    "{a} + 1/4": a + inches("1/4"),
    "3/4 \u00d7 {a}": number("3/4") * a,
    "the larger of {a} \u2212 {b} and 0": larger(a - b, 0),
    "the smaller of {a} and {b}": smaller(a, b),
    "the size of ({a} \u2212 {b})": abs(a - b),
    "whole number above ({a} / {b})": whole_above(a / b),
    "whole number above ({a} \u00d7 {b}) / {b}": whole_above(a * b) / b,
    "nearest whole number to ({a})": whole_nearest(a),
    "{a} / (1/64)": a / inches("1/64"),
    "\u2212{a}": -a,
    "{c_d}": c,
    "2": sympy.Integer(2),
}


def order(text: str) -> list[str]:
    """The words of a text in no order."""
    return sorted(text.replace("(", " ").replace(")", " ").split())


@pytest.mark.parametrize(("text", "formula"), WRITTEN.items())
def test_formulas_are_written_as_on_wood(text: str, formula: sympy.Basic) -> None:
    """A formula is written with the signs of arithmetic and its names in braces; larger and smaller take either order."""
    written = working_text(formula)

    assert order(text) == order(written) if text.startswith("the ") else text == written


@pytest.mark.parametrize(
    ("text", "formula"), [(text, formula) for text, formula in WRITTEN.items() if not text.startswith(("the ", "whole", "nearest"))]
)
def test_what_is_written_is_what_is_meant(text: str, formula: sympy.Basic) -> None:
    """Read back as arithmetic, the text comes to the value of the formula."""
    values = {"a": 0.3, "b": 0.2, "c_d": 0.7}
    code = (
        text.replace("\u2212", "-").replace("\u00d7", "*").replace("\u00b2", "**2").replace("\u00b0", "").replace("\u221a", "sqrt").format(**values)
    )
    turns = {"sin": sind, "cos": cosd, "tan": tand, "arctan": atand, "arcsin": asind}
    back = sympy.sympify(code, locals=turns)
    plain = formula.subs({a: values["a"], b: values["b"], c: values["c_d"]}).replace(
        lambda node: type(node) in (type(inches(1)), type(degrees(1))), lambda node: node.args[0]
    )

    assert abs(float(substituted(back)) - float(substituted(plain))) < 1e-9


def substituted(expression: sympy.Basic) -> sympy.Basic:
    """The expression with SymPy's own functions in place of those in degrees."""
    turn = sympy.pi / 180
    own = {sind: lambda x: sympy.sin(x * turn), cosd: lambda x: sympy.cos(x * turn), tand: lambda x: sympy.tan(x * turn),
           atand: lambda x: sympy.atan(x) / turn, asind: lambda x: sympy.asin(x) / turn}  # fmt: skip
    for function, replacement in own.items():
        expression = expression.replace(function, replacement)
    return expression.evalf()


IN_WORDS = {
    "the larger of {a} and ({b} / 2)": larger(a, b / 2),
    "(the larger of {a} and {b}) / 2": larger(a, b) / 2,
    "(the larger of {a} and {b}) + (the smaller of {a} and {c_d})": larger(a, b) + smaller(a, c),
    "the larger of {a} and (the smaller of {b} and {c_d})": larger(a, smaller(b, c)),
    "the larger of {a} and ({b} \u2212 {c_d})": larger(a, (b - c) / inches(1)),
    "{a} \u2212 ({b} if {b} is more than {c_d}; otherwise {c_d})": a - pick((b, b > c), otherwise=c),
    "(the larger of {a} and {b}) is more than {c_d}": larger(a, b) > c,
    "{a} \u00d7 (boards used less the parts) / (length of the boards used)": a * boards_waste(b) / boards_used(b),
    "sum of (longest of {b}) / 2": total_of(longest_part(b)) / 2,
    "{a} and {b} and (those of {c_d} that no board takes)": joined(row_of(a), joined(b, left_out(c, c))),
}


@pytest.mark.parametrize(("text", "formula"), IN_WORDS.items())
def test_words_show_how_far_they_reach(text: str, formula: sympy.Basic) -> None:
    """Words stand in brackets beside signs, and what is compound stands in brackets among words."""
    assert sorted(text.split()) == sorted(working_text(formula).split())


def test_cases_are_written_apart() -> None:
    """Each case has the key of its condition, and the last holds without one."""
    assert ["{a}", "2 \u00d7 {a}"] == working_cases(pick((a, a > b), otherwise=2 * a))


def test_a_formula_without_cases_always_holds() -> None:
    """A formula that is no choice is one case without a condition."""
    assert ["{a}"] == working_cases(a)


def test_inches_that_only_take_a_unit_away_are_not_written() -> None:
    """Dividing by one inch to get a plain number leaves no trace."""
    assert "{a} \u00d7 {b}" == working_text(a / inches(1) * b)
