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

_WORDS, _SUM, _PRODUCT, _POWER, _ATOM = 0, 1, 2, 3, 4


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
        text, hold = _write(node.args[0])
        return text + CONSTANT_MARKS[CONSTANTS[type(node)]], hold
    if isinstance(node, sympy.Add):
        return _write_sum(node)
    if isinstance(node, sympy.Mul):
        return _write_product(node)
    if isinstance(node, sympy.Pow):
        return _write_power(node)
    if type(node) in (sympy.Abs, *TURNING, *WHOLE):
        return f"{_named(node)}({_write(node.args[0])[0]})", _ATOM
    return _write_method(node) if type(node) in METHODS else (_write_words(node), _WORDS)


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
    if len(above) == 1 and not below and not minus:
        return _write(above[0])
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


def _named(node: Any) -> str:
    """What stands before the brackets of a function of one value."""
    if isinstance(node, sympy.Abs):
        return "the size of "
    return _TURNS[TURNING[type(node)]] if type(node) in TURNING else _WHOLES[WHOLE[type(node)]] + " "


def _write_method(node: Any) -> tuple[str, int]:
    """An algorithm in its own words, some of which have brackets of their own; a row of rows is one row."""
    words = METHODS[type(node)].words
    inner = [
        _write(argument)[0] if f"({{{place}}})" in words or type(argument) is type(node) else _held(argument, _SUM)
        for place, argument in enumerate(node.args)
    ]
    if words == "{0}":
        return _write(node.args[0])
    return words.format(*inner), _ATOM if words.endswith(")") else _WORDS


def _write_words(node: Any) -> str:
    """What is said in words, which do not show how far they reach: around them and in them what is compound is in brackets."""
    if isinstance(node, (sympy.Max, sympy.Min)):
        compared = " and ".join(_held(argument, _ATOM) for argument in node.args)
        return f"the {'larger' if isinstance(node, sympy.Max) else 'smaller'} of {compared}"
    if isinstance(node, sympy.Piecewise):
        cases = [f"{_write(value)[0]} if {_write(condition)[0]}" for value, condition in node.args[:-1]]
        return "; ".join([*cases, f"otherwise {_write(node.args[-1][0])[0]}"])
    if isinstance(node, sympy.core.relational.Relational):
        return f" {_COMPARED[node.rel_op]} ".join(_held(argument, _SUM) for argument in node.args)
    inner = [_write(argument)[0] for argument in node.args]
    joint = {sympy.And: " and ", sympy.Or: " or "}.get(type(node))
    return joint.join(inner) if joint else f"not ({inner[0]})"
