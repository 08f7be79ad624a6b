"""The portable code keeps to the Python that becomes the same JavaScript.

PScript refuses little and silently changes much. What is not on the lists here is not used.
"""

import ast
import re
from collections import Counter
from collections.abc import Iterator
from functools import cache

import pytest
from py_mini_racer import MiniRacer

from shopcalc import files, phone
from shopcalc.script import compiled, joined

MODULES = list(phone.portable_modules())

NODES = (
    ast.Module, ast.FunctionDef, ast.arguments, ast.arg, ast.Import, ast.ImportFrom, ast.alias, ast.Expr,
    ast.Assign, ast.AugAssign, ast.Return, ast.If, ast.For, ast.While, ast.Break, ast.Continue,
    ast.Name, ast.Constant, ast.Attribute, ast.Subscript, ast.Slice, ast.Call, ast.keyword, ast.Lambda,
    ast.List, ast.Tuple, ast.Dict, ast.ListComp, ast.comprehension, ast.IfExp,
    ast.BinOp, ast.Add, ast.Sub, ast.Mult, ast.Div, ast.FloorDiv, ast.Pow,
    ast.UnaryOp, ast.USub, ast.Not, ast.BoolOp, ast.And, ast.Or,
    ast.Compare, ast.Eq, ast.NotEq, ast.Lt, ast.LtE, ast.Gt, ast.GtE, ast.Is, ast.IsNot, ast.In, ast.NotIn,
    ast.Load, ast.Store,
)  # fmt: skip
FUNCTIONS = {"len": 1, "str": 1, "int": 1, "ord": 1, "range": 1, "enumerate": 1, "min": 2, "max": 2}
METHODS = {"append", "endswith", "find", "insert", "join", "keys", "lower", "pop", "replace", "sort", "split"}


@cache
def tree(module: str) -> ast.Module:
    """A module as it stands in its file."""
    return ast.parse(phone.portable_modules()[module].read_text("utf-8"))


def found(module: str, *kinds: type) -> Iterator[ast.AST]:
    """Every node of these kinds in a module."""
    return (node for node in ast.walk(tree(module)) if isinstance(node, kinds))


def shown(nodes: Iterator[ast.AST] | list[ast.AST]) -> list[str]:
    """Nodes as lines to look for."""
    return [f"line {getattr(node, 'lineno', '?')}: {ast.unparse(node)}" for node in nodes]


def functions(module: str) -> list[ast.FunctionDef]:
    """The functions of a module."""
    return [node for node in tree(module).body if isinstance(node, ast.FunctionDef)]


DEFINED = {
    module: {each.name for each in functions(module)}
    | {target.id for each in tree(module).body if isinstance(each, ast.Assign) for target in each.targets if isinstance(target, ast.Name)}
    for module in MODULES
}
EVERYTHING = set().union(*DEFINED.values())


@pytest.mark.parametrize("module", MODULES)
class TestSyntax:
    """What may stand in a portable module."""

    def test_only_listed_syntax(self, module: str) -> None:
        """No class, try, set, generator, format string, decorator of syntax or other construct that is not on the list."""
        assert [] == [f"{type(node).__name__}: {ast.unparse(node)}" for node in found(module, ast.AST) if not isinstance(node, NODES)]

    def test_imports_only_portable_modules(self, module: str) -> None:
        """Nothing from outside this folder is imported."""
        assert [] == shown(node for node in found(module, ast.Import))
        assert [] == shown(node for node in found(module, ast.ImportFrom) if not str(node.module).startswith("shopcalc.portable."))

    def test_imports_rename_nothing(self, module: str) -> None:
        """On the phone all modules share one scope, so a name is imported as it is."""
        assert [] == shown(node for node in found(module, ast.alias) if node.asname)

    def test_calls_only_what_both_sides_have(self, module: str) -> None:
        """Calls go to portable functions, to a few built-ins with the usual number of arguments, or to the platform's table."""
        local = {each.id for each in found(module, ast.Name) if isinstance(each.ctx, ast.Store)}
        local |= {each.arg for each in found(module, ast.arg)}
        strange = []
        for node in found(module, ast.Call):
            called = node.func
            if isinstance(called, ast.Name):
                usual = called.id in EVERYTHING or called.id in local or FUNCTIONS.get(called.id) == len(node.args)
            else:
                usual = called.attr in METHODS if isinstance(called, ast.Attribute) else isinstance(called, ast.Subscript)
            strange += [] if usual else [node]

        assert [] == shown(strange)

    def test_arguments_are_positional(self, module: str) -> None:
        """A keyword argument arrives corrupted; the key of a sort is the one exception."""
        keyed = [node for node in found(module, ast.Call) if node.keywords]

        assert [] == shown(node for node in keyed if not isinstance(node.func, ast.Attribute) or node.func.attr != "sort")
        assert [] == shown(node for node in found(module, ast.Starred))

    def test_sorting_goes_by_a_number(self, module: str) -> None:
        """Without a key numbers sort as strings, and a key of several parts does too."""
        sorts = [node for node in found(module, ast.Call) if isinstance(node.func, ast.Attribute) and node.func.attr == "sort"]
        keys = [word.value for node in sorts for word in node.keywords if word.arg == "key"]

        assert len(sorts) == len(keys)
        assert [] == shown(key.body for key in keys if isinstance(key, ast.Lambda) and isinstance(key.body, (ast.Tuple, ast.List, ast.Constant)))
        assert len(list(found(module, ast.Lambda))) == len([key for key in keys if isinstance(key, ast.Lambda)])

    def test_functions_are_plain(self, module: str) -> None:
        """Functions stand at the top of the module, with no decorators, defaults, or arguments gathered up."""
        assert len(functions(module)) == len(list(found(module, ast.FunctionDef)))
        for node in functions(module):
            assert ([], [], [], None, None) == (node.decorator_list, node.args.defaults, node.args.kwonlyargs, node.args.vararg, node.args.kwarg)

    def test_constants_are_exact(self, module: str) -> None:
        """No float, complex number or bytes: on the server numbers are exact fractions."""
        assert [] == shown(node for node in found(module, ast.Constant) if type(node.value) not in (str, int, bool, type(None)))

    def test_comparisons_are_of_two(self, module: str) -> None:
        """A chained comparison works its middle out twice."""
        assert [] == shown(node for node in found(module, ast.Compare) if len(node.ops) > 1)

    def test_identity_only_of_nothing_and_truth(self, module: str) -> None:
        """`is` compares with None or True alone."""
        checked = [node for node in found(module, ast.Compare) if isinstance(node.ops[0], (ast.Is, ast.IsNot))]

        assert [] == shown(node for node in checked if not isinstance(node.comparators[0], ast.Constant))

    def test_only_plain_values_are_compared(self, module: str) -> None:
        """Two lists are never equal on the phone, and a list times a number is no list there."""
        sides = [
            side for node in found(module, ast.Compare) if isinstance(node.ops[0], (ast.Eq, ast.NotEq)) for side in (node.left, *node.comparators)
        ]
        factors = [side for node in found(module, ast.BinOp) if isinstance(node.op, ast.Mult) for side in (node.left, node.right)]

        assert [] == shown(side for side in sides if isinstance(side, (ast.List, ast.ListComp, ast.Dict, ast.Tuple)))
        assert [] == shown(side for side in factors if isinstance(side, (ast.List, ast.ListComp)) or isinstance(getattr(side, "value", 0), str))

    def test_slices_have_no_step(self, module: str) -> None:
        """PScript refuses a step in a slice, or forgets it; and a slice is never assigned to."""
        assert [] == shown(node for node in found(module, ast.Slice) if node.step)
        assert [] == shown(node for node in found(module, ast.Subscript) if isinstance(node.slice, ast.Slice) and not isinstance(node.ctx, ast.Load))

    def test_lists_grow_by_append(self, module: str) -> None:
        """`a += [2]` makes a new list on the phone."""
        assert [] == shown(node for node in found(module, ast.AugAssign) if isinstance(node.value, (ast.List, ast.ListComp)))

    def test_loops_unpack_at_most_a_pair(self, module: str) -> None:
        """Nested unpacking in a loop makes the whole bundle fail to load, and a loop has no else."""
        loops = list(found(module, ast.For, ast.While))
        targets = [part for node in found(module, ast.For) if isinstance(node.target, ast.Tuple) for part in node.target.elts]

        assert [] == shown(node for node in loops if node.orelse)
        assert [] == shown(part for part in targets if not isinstance(part, ast.Name))

    def test_keys_of_dictionaries_are_texts(self, module: str) -> None:
        """Numbers as keys become texts on the phone, and come first."""
        keys = [key for node in found(module, ast.Dict) for key in node.keys]

        assert [] == [ast.unparse(key) for key in keys if not (isinstance(key, ast.Constant) and isinstance(key.value, str))]


TRUTHS = (ast.Compare, ast.BoolOp, ast.Call, ast.Subscript)


def is_truth(node: ast.expr, within: ast.AST) -> bool:
    """Whether an expression is a truth as far as can be seen; a name is, unless something else is put into it."""
    if isinstance(node, ast.UnaryOp):
        return isinstance(node.op, ast.Not) and is_truth(node.operand, within)
    if isinstance(node, ast.BoolOp):
        return all(is_truth(each, within) for each in node.values)
    if isinstance(node, ast.Call):
        return not (isinstance(node.func, ast.Name) and node.func.id in FUNCTIONS)
    if isinstance(node, ast.Name):
        assigned = [each for each in ast.walk(within) if isinstance(each, ast.Assign)]
        put = [each.value for each in assigned if node.id in [ast.unparse(target) for target in each.targets]]
        return all(isinstance(each, TRUTHS) or ast.unparse(each) in ("True", "False") for each in put)
    return isinstance(node, (*TRUTHS, ast.Constant))


@pytest.mark.parametrize("module", MODULES)
def test_conditions_are_truths(module: str) -> None:
    """No bare list, text or number is asked whether it is true: an empty list is, on the phone."""
    doubtful = []
    for function in functions(module):
        for node in ast.walk(function):
            tests = [node.test] if isinstance(node, (ast.If, ast.While, ast.IfExp)) else node.ifs if isinstance(node, ast.comprehension) else []
            doubtful += [test for test in tests if not is_truth(test, function)]

    assert [] == shown(doubtful)


def names_in(node: ast.AST) -> set[str]:
    """The names that are given a value inside a node."""
    return {each.id for each in ast.walk(node) if isinstance(each, ast.Name) and isinstance(each.ctx, ast.Store)}


@pytest.mark.parametrize("module", MODULES)
def test_comprehensions_keep_to_their_own_names(module: str) -> None:
    """A comprehension's variable would overwrite an argument, a variable or the loop around it, if one had its name."""
    clashes = []
    for function in functions(module):
        taken = {argument.arg for argument in function.args.args}
        taken |= set().union(*(names_in(target) for node in ast.walk(function) if isinstance(node, ast.Assign) for target in node.targets))
        places = [(function, taken), *((loop, names_in(loop.target)) for loop in ast.walk(function) if isinstance(loop, ast.For))]
        for place, names in places:
            inner = [node.target for node in ast.walk(place) if isinstance(node, ast.comprehension)]
            clashes += [f"{function.name}: {name}" for target in inner for name in names_in(target) & names]

    assert [] == clashes


@pytest.mark.parametrize("module", MODULES)
def test_loop_variables_are_left_alone(module: str) -> None:
    """A loop's variable is not assigned inside the loop: on the phone that would change the loop."""
    changed = []
    for loop in found(module, ast.For):
        own = {node.id for node in ast.walk(loop.target) if isinstance(node, ast.Name)}
        stores = [node for line in loop.body for node in ast.walk(line) if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store)]
        changed += [node for node in stores if node.id in own]

    assert [] == shown(changed)


@pytest.mark.parametrize("module", MODULES)
def test_compiled_names_are_known(module: str) -> None:
    """Every name that a compiled module takes from outside is defined by another portable module."""
    others = set().union(*(names for name, names in DEFINED.items() if name != module))

    assert set() == compiled(phone.portable_source(module)).unknown - others


@pytest.mark.parametrize("module", MODULES)
def test_compiled_module_loads(module: str) -> None:
    """JavaScript reads every compiled module without complaint."""
    script = joined([compiled(phone.portable_source(module))])
    with MiniRacer() as engine:
        assert module == engine.eval(f"(() => {{ {script}\n return '{module}'; }})()")


def test_names_are_unique() -> None:
    """No two portable modules define one name: on the phone the later would replace the earlier."""
    counted = Counter(name for names in DEFINED.values() for name in names)

    assert [] == [name for name, times in counted.items() if times > 1]


def test_names_differ_from_the_scripts() -> None:
    """No portable name is also a name of the scripts it is bundled with, or of JavaScript."""
    scripts = files.static_text("brain.js") + files.static_text("numbers.js") + files.static_text("worker.js")
    taken = set(re.findall(r"^(?:async )?(?:const|let|var|function) (\w+)", scripts, re.MULTILINE))
    taken |= {*phone.constants(), "BUILD", "KEPT", "KEPT_LATER", "SUM", "STYLE", "POLICY", "Mustache"}
    taken |= {"self", "caches", "fetch", "Math", "Object", "String", "Number", "Array", "Error", "Request", "Response"}

    assert {"answer", "addPart", "numbers", "world", "keptFile"} <= taken
    assert set() == EVERYTHING & taken
