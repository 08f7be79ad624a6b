"""Prints a setup's formulas as Python and as JavaScript, from the same SymPy expressions.

A printed formula is a function of `known` (values by name) and `numbers` (the platform's arithmetic).
Comparisons, Max and Min, sines and whole numbers go to portable functions, so both runtimes decide alike.
"""

from collections.abc import Callable, Mapping, Sequence
from typing import Any

import sympy
from quicktions import Fraction
from sympy.printing.jscode import JavascriptCodePrinter
from sympy.printing.pycode import PythonCodePrinter

from shopcalc.portable.arithmetic import choose, moisture, rows, snap, turning
from shopcalc.portable.wood import layout
from shopcalc.terms import CONSTANTS, METHODS, TURNING, WHOLE, forbidden

# An expression, a condition, or a list of them; SymPy has no types to say so.
Formula = Any


class _ShopPrinter:
    """What the two printers have in common: every call goes to a portable function by its own name."""

    def _known(self, name: str) -> str:
        raise NotImplementedError

    def _print_Symbol(self, node: sympy.Symbol) -> str:
        return self._known(node.name)

    def _print_Function(self, node: Any) -> str:
        if type(node) in METHODS:
            return self._method(node)
        first: str = self._print(node.args[0])  # type: ignore[attr-defined]
        if type(node) in CONSTANTS:
            return f"({first})"
        if type(node) in TURNING:
            return f"{TURNING[type(node)]}({first}, numbers)"
        return self._whole(f"{WHOLE[type(node)]}({first})")

    def _whole(self, call: str) -> str:
        return call

    def _method(self, node: Any) -> str:
        args = ", ".join(self._print(each) for each in node.args)  # type: ignore[attr-defined]
        return f"{type(node).__name__}({args})"

    def _nested(self, function: str, args: Sequence[sympy.Basic]) -> str:
        printed: list[str] = [self._print(each) for each in args]  # type: ignore[attr-defined]
        out = printed[0]
        for each in printed[1:]:
            out = f"{function}({out}, {each})"
        return out

    def _print_Max(self, node: sympy.Max) -> str:
        return self._nested("larger", node.args)

    def _print_Min(self, node: sympy.Min) -> str:
        return self._nested("smaller", node.args)

    def _print_Abs(self, node: sympy.Abs) -> str:
        return f"magnitude({self._print(node.args[0])})"  # type: ignore[attr-defined]

    def _print_Relational(self, node: Any) -> str:
        left, right = (self._print(each) for each in node.args)  # type: ignore[attr-defined]
        printed: dict[str, str] = {
            ">": f"above({left}, {right})",
            "<": f"above({right}, {left})",
            ">=": f"at_least({left}, {right})",
            "<=": f"at_least({right}, {left})",
            "==": f"same({left}, {right})",
            "!=": self._negated(f"same({left}, {right})"),
        }
        return printed[node.rel_op]

    def _negated(self, condition: str) -> str:
        raise NotImplementedError

    def _print_Pow(self, node: sympy.Pow, rational: bool = False) -> str:
        base = self._print(node.base)  # type: ignore[attr-defined]
        if node.exp == sympy.S.Half:
            return f"root({base}, numbers)"
        if node.exp == -sympy.S.Half:
            return f"(1 / root({base}, numbers))"
        power = " * ".join([f"({base})"] * abs(int(node.exp)))
        return f"(1 / ({power}))" if node.exp < 0 else f"({power})"


class ExactPrinter(_ShopPrinter, PythonCodePrinter):
    """Prints Python over Fractions: every number literal is a Fraction, so nothing turns into a float."""

    def _known(self, name: str) -> str:
        return f'known["{name}"]'

    def _negated(self, condition: str) -> str:
        return f"(not {condition})"

    def _whole(self, call: str) -> str:
        return f"Fraction({call})"

    def _method(self, node: Any) -> str:
        call = super()._method(node)
        return f"Fraction({call})" if METHODS[type(node)].gives in ("length", "number") else call

    def _print_Integer(self, node: sympy.Integer) -> str:
        return f"Fraction({node.p})"

    def _print_Rational(self, node: sympy.Rational) -> str:
        return f"Fraction({node.p}, {node.q})"

    def _print_Half(self, node: sympy.Rational) -> str:
        return "Fraction(1, 2)"

    def _print_Piecewise(self, node: sympy.Piecewise) -> str:
        out = self._print(node.args[-1][0])
        for value, condition in reversed(node.args[:-1]):
            out = f"({self._print(value)} if {self._print(condition)} else {out})"
        return str(out)


def _divides(node: sympy.Basic) -> bool:
    """Whether a factor is something divided by."""
    return isinstance(node, sympy.Pow) and bool(node.exp.is_negative)


class PhonePrinter(_ShopPrinter, JavascriptCodePrinter):
    """Prints JavaScript over doubles, each value by its short name where it has one."""

    def __init__(self, names: Mapping[str, str]) -> None:
        super().__init__({"human": False})
        self._names = names

    def _known(self, name: str) -> str:
        return f"known.{self._names.get(name, name)}"

    def _negated(self, condition: str) -> str:
        return f"!{condition}"

    def _print_Mul(self, node: sympy.Mul) -> str:
        """A product; what is divided by is divided by in a function, since JavaScript goes on with infinity."""
        under = [sympy.Pow(each.base, -each.exp) for each in node.args if _divides(each)]
        if not under:
            return str(super()._print_Mul(node))
        over = sympy.Mul(*(each for each in node.args if not _divides(each)))
        return f"divided({self._print(over)}, {self._print(sympy.Mul(*under))})"

    def _print_Pow(self, node: sympy.Pow, rational: bool = False) -> str:
        if _divides(node):
            return f"divided(1, {self._print(sympy.Pow(node.base, -node.exp))})"
        return super()._print_Pow(node, rational)

    def _print_BooleanTrue(self, node: Any) -> str:
        return "true"

    def _print_BooleanFalse(self, node: Any) -> str:
        return "false"

    def _print_Piecewise(self, node: sympy.Piecewise) -> str:
        out = self._print(node.args[-1][0])
        for value, condition in reversed(node.args[:-1]):
            out = f"({self._print(condition)} ? {self._print(value)} : {out})"
        return str(out)


_NAMES = {
    "Fraction": Fraction,
    **{name: getattr(turning, name) for name in (*TURNING.values(), "root")},
    **{
        each.__name__: next(getattr(module, each.__name__) for module in (choose, layout, moisture, rows) if hasattr(module, each.__name__))
        for each in METHODS
    },
    **{name: getattr(snap, name) for name in (*WHOLE.values(), "above", "at_least", "same", "larger", "smaller", "magnitude")},
}


def compile_exact(formulas: Mapping[str, Formula]) -> dict[str, Callable[..., Any]]:
    """The formulas as Python functions of exact values.

    Raises ValueError for an expression that has no meaning on both sides.
    """
    printer = ExactPrinter({"fully_qualified_modules": False})
    lines = []
    for key, formula in formulas.items():
        lines.append(f"{key!r}: lambda known, numbers: {_printed(printer, formula)},")
    # The text compiled here is printed from this package's own declarations, never from anything typed.
    return dict(eval("{" + "\n".join(lines) + "}", dict(_NAMES)))  # noqa: S307


def print_phone(formulas: Mapping[str, Formula], names: Mapping[str, str]) -> str:
    """The formulas as the text of a JavaScript array of functions, in order; `names` gives values their short names."""
    printer = PhonePrinter(names)
    return "[" + ",\n".join(f"(known,numbers)=>{_printed(printer, formula)}" for formula in formulas.values()) + "]"


def _printed(printer: Any, formula: Formula) -> str:
    if isinstance(formula, (list, tuple)):
        return "[" + ", ".join(_printed(printer, each) for each in formula) + "]"
    expression = sympy.sympify(formula)
    fault = forbidden(expression)
    if fault:
        raise ValueError(f"{fault} cannot be worked out on both sides")
    return str(printer._print(expression))
