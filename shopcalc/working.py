"""Writes a formula the way it is worked on a scrap of wood: `({stock} − {groove_width}) / 2`.

The braces are filled twice by the card: with the names, and with the numbers.
"""

from typing import Any

import sympy

from shopcalc.terms import CONSTANTS, METHODS, TURNING, WHOLE, fahrenheit, inches

MINUS = "\u2212"
_TURNS = {"sind": "sin", "cosd": "cos", "tand": "tan", "atand": "arctan", "asind": "arcsin"}
_WHOLES = {"floor_of": "whole number below", "ceiling_of": "whole number above", "nearest_of": "nearest whole number to"}
CONSTANT_MARKS = {"inch": "", "degree": "\u00b0", "fahrenheit": " \u00b0F"}
_COMPARED = {">": "is more than", "<": "is less than", ">=": "is at least", "<=": "is at most", "==": "is", "!=": "is not"}

_SUM, _PRODUCT, _POWER, _ATOM = 1, 2, 3, 4


def working_text(expression: sympy.Basic) -> str:
    """The formula as text, with each name in braces."""
    return _write(expression)[0]


def working_cases(expression: sympy.Basic) -> list[str]:
    """The text of each case of a formula; the last holds when no other does."""
    if not isinstance(expression, sympy.Piecewise):
        return [working_text(expression)]
    return [working_text(value) for value, _ in expression.args]


def _write(node: Any) -> tuple[str, int]:
    """The text of a node and how tightly it holds together."""
    if isinstance(node, sympy.Symbol):
        return "{" + node.name + "}", _ATOM
    if isinstance(node, sympy.Rational):
        text = str(abs(node.p)) if node.q == 1 else f"{abs(node.p)}/{node.q}"
        return (MINUS + text, _SUM) if node < 0 else (text, _ATOM if node.q == 1 else _PRODUCT)
    if type(node) in CONSTANTS:
        return _write(node.args[0])[0] + CONSTANT_MARKS[CONSTANTS[type(node)]], _ATOM
    if isinstance(node, sympy.Add):
        return _write_sum(node)
    if isinstance(node, sympy.Mul):
        return _write_product(node)
    if isinstance(node, sympy.Pow):
        return _write_power(node)
    return _write_function(node), _ATOM


def _held(node: Any, least: int) -> str:
    text, hold = _write(node)
    return f"({text})" if hold < least else text


def _write_sum(node: sympy.Add) -> tuple[str, int]:
    content, inner = node.primitive()
    # (2 x 90 deg - a) / 2 is no plainer than 90 deg - a / 2
    if content != 1 and not any(type(factor) in CONSTANTS for term in node.args for factor in (term, *term.args)):
        return _write_product(sympy.Mul(content, inner, evaluate=False))
    terms = sorted(node.args, key=lambda term: (term.could_extract_minus_sign(), not term.is_number, str(term)))
    # a constant such as 180 leads where something is taken from it, and follows where it is added
    if not any(term.could_extract_minus_sign() for term in terms):
        terms.sort(key=lambda term: bool(term.is_number))
    out = ""
    for term in terms:
        minus = term.could_extract_minus_sign()
        text = _held(-term if minus else term, _PRODUCT)
        if out:
            out += f" {MINUS} " if minus else " + "
        elif minus:
            out += MINUS
        out += text
    return out, _SUM


def _write_product(node: Any) -> tuple[str, int]:
    above, below = [], []
    for factor in node.args:
        if (type(factor) in CONSTANTS and factor.args[0] == 1) or factor in (1 / inches(1), 1 / fahrenheit(1)):
            continue  # only there to turn inches into a plain number, or back
        if isinstance(factor, sympy.Rational) and abs(factor.p) != 1:
            above.append(factor)
        elif isinstance(factor, sympy.Rational):
            above += [sympy.Integer(factor.p)] if factor.p != 1 else []
            below += [sympy.Integer(factor.q)] if factor.q != 1 else []
        elif isinstance(factor, sympy.Pow) and factor.exp.could_extract_minus_sign():
            below.append(sympy.Pow(factor.base, -factor.exp))
        else:
            above.append(factor)
    minus = bool(above) and above[0] == -1
    above = above[1:] if minus else above
    text = " \u00d7 ".join(_held(factor, _PRODUCT) for factor in above) or "1"
    for factor in below:
        text += " / " + _held(factor, _POWER)
    return (MINUS + text, _SUM) if minus else (text, _PRODUCT)


def _write_power(node: sympy.Pow) -> tuple[str, int]:
    if node.exp == sympy.S.Half:
        return f"\u221a({_write(node.base)[0]})", _ATOM
    if node.exp.could_extract_minus_sign():
        return "1 / " + _held(sympy.Pow(node.base, -node.exp), _POWER), _PRODUCT
    return _held(node.base, _ATOM) + {2: "\u00b2", 3: "\u00b3"}.get(int(node.exp), f"^{node.exp}"), _POWER


def _write_function(node: Any) -> str:
    inner = [_write(argument)[0] for argument in node.args] if not isinstance(node, sympy.Piecewise) else []
    if isinstance(node, sympy.Max):
        return f"the larger of {' and '.join(inner)}"
    if isinstance(node, sympy.Min):
        return f"the smaller of {' and '.join(inner)}"
    if isinstance(node, sympy.Abs):
        return f"the size of ({inner[0]})"
    if type(node) in METHODS:
        return METHODS[type(node)].words.format(*inner)
    if type(node) in TURNING:
        return f"{_TURNS[TURNING[type(node)]]}({inner[0]})"
    if type(node) in WHOLE:
        return f"{_WHOLES[WHOLE[type(node)]]} {inner[0]}"
    if isinstance(node, sympy.core.relational.Relational):
        return f"{inner[0]} {_COMPARED[node.rel_op]} {inner[1]}"
    if isinstance(node, sympy.Piecewise):
        cases = [f"{_write(value)[0]} if {_write(condition)[0]}" for value, condition in node.args[:-1]]
        return "; ".join([*cases, f"otherwise {_write(node.args[-1][0])[0]}"])
    joint = {sympy.And: " and ", sympy.Or: " or "}.get(type(node))
    return joint.join(inner) if joint else f"not ({inner[0]})"
