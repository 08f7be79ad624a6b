"""Portable modules as JavaScript: PScript, made to write what every phone reads today.

PScript writes loops, comprehensions and comparisons for the browsers of its time, and guards them against code that the
portable modules do not contain (tests/portable/test_contract.py): a third of all that it writes. What is written here means
the same for them, is shorter, and calls no helper where JavaScript has the operator. PScript's own classes stay the parser.
"""

import ast
import re
from dataclasses import dataclass

from pscript import Parser
from pscript import commonast as tree
from pscript.parser0 import unify
from pscript.stdlib import get_partial_std_lib

# Calls that always give a list, calls that always give a number, and signs that do.
LISTS = ("enumerate", "range", "zip")
COUNTS = ("int", "len", "max", "min")
NUMBERS = (tree.BinOp.OPS.Sub, tree.BinOp.OPS.Mult, tree.BinOp.OPS.Div, tree.BinOp.OPS.FloorDiv)

# What a loop goes over: a list, the keys of a dictionary, the characters of a text.
EACH = "const _each = seq => Array.isArray(seq) ? seq : typeof seq === 'string' ? [...seq] : Object.keys(seq);"


@dataclass(frozen=True)
class Script:
    """A module's JavaScript, which of PScript's helpers it calls, and the names that it takes from elsewhere."""

    text: str
    functions: frozenset[str]
    methods: frozenset[str]
    unknown: frozenset[str]


def compiled(module: ast.Module) -> Script:
    """One portable module, without imports and docstrings, as JavaScript."""
    writer = _Writer(ast.unparse(module), inline_stdlib=False)
    # no function here has a `this`; indentation and the names that PScript gives functions only weigh on the way to the phone
    arrows = re.sub(r"\bfunction flx_\w+ (\([\w, ]*\)) \{", r"\1 => {", writer.dump())
    unknown = {usage.split(".")[0] for _, usages in writer.vars.get_undefined() for usage in usages}
    text = re.sub(r"^ +", "", arrows, flags=re.MULTILINE)
    return Script(text, frozenset(writer._std_functions), frozenset(writer._std_methods), frozenset(unknown - {"_each"}))


def joined(scripts: list[Script]) -> str:
    """Modules as one script, with just those helpers that they call."""
    functions: set[str] = set().union(*(each.functions for each in scripts))
    methods: set[str] = set().union(*(each.methods for each in scripts))
    return "\n".join([str(get_partial_std_lib(functions, methods)), EACH, *(each.text for each in scripts)])


class _Writer(Parser):  # type: ignore[misc]
    """PScript, with today's loops, comprehensions, lambdas and operators."""

    def parse_For(self, node: tree.For) -> list[str]:  # noqa: N802
        if _is_call(node.iter_node, ("range",)):
            return list(super().parse_For(node))
        target, each = self._target(node.target_node), self._each(node.iter_node)
        self._indent += 1
        body = [part for line in node.body_nodes for part in self.parse(line)]
        self._indent -= 1
        return [self.lf(f"for ({target} of {each}) {{"), *body, self.lf("}")]

    def parse_ListComp(self, node: tree.ListComp) -> list[str]:  # noqa: N802
        # the namespace of the comprehension's own names, which the arrows declare; what it takes from outside leaks out of it
        self.push_stack("function", "comprehension")
        made = "".join(self.parse(node.element_node))
        turn = "map"
        for loop in reversed(node.comp_nodes):
            target, each = self._target(loop.target_node), self._each(loop.iter_node)
            if loop.if_nodes:
                truths = " && ".join(unify(self.parse(truth)) for truth in loop.if_nodes)
                each += f".filter({_arrow(target, truths)})"
            # what is picked is in a list of its own already
            made = each if loop.if_nodes and made == target else f"{each}.{turn}({_arrow(target, made)})"
            turn = "flatMap"
        self.pop_stack()
        return [made]

    def parse_Lambda(self, node: tree.Lambda) -> list[str]:  # noqa: N802
        names = [argument.name for argument in node.arg_nodes]
        self.push_stack("function", "lambda")
        for name in names:
            self.vars.add(name)
        made = "".join(self.parse(node.body_node))
        self.pop_stack()
        return [f"({_arrow(', '.join(names), made)})"]

    def parse_Assign(self, node: tree.Assign) -> list[str]:  # noqa: N802
        if not isinstance(node.value_node, tree.ListComp):
            return list(super().parse_Assign(node))
        # PScript would write it out as a loop before the assignment
        [target] = node.target_nodes
        made = "".join(self.parse(node.value_node))
        name = "".join(self.parse(target))
        if isinstance(target, tree.Name):
            self.vars.add(name)
        return [self.lf(f"{name} = {made};")]

    def parse_Compare(self, node: tree.Compare) -> list[str]:  # noqa: N802
        sign = {node.COMP.Eq: "===", node.COMP.NotEq: "!=="}.get(node.op)
        if sign is None:
            return [*super().parse_Compare(node)]
        return [f"{unify(self.parse(node.left_node))} {sign} {unify(self.parse(node.right_node))}"]

    def parse_BinOp(self, node: tree.BinOp) -> list[str]:  # noqa: N802
        sign = {node.OPS.Mult: "*", node.OPS.Add: "+"}.get(node.op)
        if sign is None or not _is_number(node):
            return [*super().parse_BinOp(node)]
        return [f"{unify(self.parse(node.left_node))} {sign} {unify(self.parse(node.right_node))}"]

    def _wrap_truthy(self, node: tree.Node) -> str:
        return str(unify(self.parse(node)))

    def method_append(self, node: tree.Call, base: str) -> list[str]:
        return [f"{base}.push({self._arguments(node)})"]

    def method_join(self, node: tree.Call, base: str) -> list[str]:
        return [f"{self._arguments(node)}.join({base})"]

    def function_ord(self, node: tree.Call) -> list[str]:
        # a loop over a text gives whole characters, also those that JavaScript holds as two halves
        return [f"{self._arguments(node)}.codePointAt(0)"]

    def _arguments(self, node: tree.Call) -> str:
        return ", ".join(unify(self.parse(each)) for each in node.arg_nodes)

    def _each(self, node: tree.Node) -> str:
        made = "".join(self.parse(node))
        return made if _is_call(node, LISTS) else f"_each({made})"

    def _target(self, node: tree.Node) -> str:
        """The name or the pair of names that a loop gives values to, declared."""
        names = [each.name for each in node.element_nodes] if isinstance(node, tree.Tuple) else [node.name]
        for name in names:
            self.vars.add(name)
        return f"[{', '.join(names)}]" if len(names) > 1 else str(names[0])


def _is_call(node: tree.Node, names: tuple[str, ...]) -> bool:
    """Whether this calls one of Python's own functions of these names."""
    return isinstance(node, tree.Call) and isinstance(node.func_node, tree.Name) and node.func_node.name in names


def _is_number(node: tree.Node) -> bool:
    """Whether this is sure to be a number, so that adding to it joins no lists."""
    if isinstance(node, tree.BinOp) and node.op == node.OPS.Add:
        return _is_number(node.left_node) or _is_number(node.right_node)
    return isinstance(node, tree.Num) or _is_call(node, COUNTS) or (isinstance(node, tree.BinOp) and node.op in NUMBERS)


def _arrow(arguments: str, made: str) -> str:
    """A function that gives an expression; braces alone would be its body."""
    return f"({arguments}) => {f'({made})' if made.startswith('{') else made}"
