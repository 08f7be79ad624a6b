"""Portable Python means the same as JavaScript, construct by construct."""

import ast
import json

import pytest
from py_mini_racer import MiniRacer

from shopcalc.script import compiled, joined

# Each is the body of a function that returns something JSON can hold.
BODIES = {
    "a loop over a list": "out = []\nfor one in [3, 1, 2]:\n    out.append(one)\nreturn out",
    "a loop over the keys of a dictionary": "out = []\nfor name in {'b': 1, 'a': 2}:\n    out.append(name)\nreturn out",
    "a loop over a text": "out = []\nfor one in 'a\U0001d7d8\u00bd':\n    out.append(one)\nreturn out",
    "the codes of a text": "return [ord(one) for one in 'a\U0001d7d8\u00bd']",
    "a loop over pairs": "out = []\nfor place, one in enumerate('ab'):\n    out.append(str(place) + one)\nreturn out",
    "a loop over numbers": "out = []\nfor turn in range(3):\n    out.append(turn)\nreturn out",
    "a list that grows while it is gone over": "out = [1]\nfor one in out:\n    if one < 4:\n        out.append(one + 1)\nreturn out",
    "a loop left early": "out = []\nfor one in [1, 2, 3]:\n    if one == 3:\n        break\n    out.append(one)\nreturn out",
    "a turn left out": "out = []\nfor one in [1, 2, 3]:\n    if one == 2:\n        continue\n    out.append(one)\nreturn out",
    "a comprehension": "return [one * 2 for one in [1, 2, 3]]",
    "a comprehension that picks": "return [one for one in [1, 2, 3, 4] if one > 1 if one != 3]",
    "a comprehension over two lists": "return [str(one) + two for one in [1, 2] if one != 3 for two in 'ab' if two != 'c']",
    "a comprehension that uses what is around it": "most = 2\nreturn [{'one': one, 'is': one > most} for one in [1, 2, 3]]",
    "a comprehension over pairs": "return [[place, one] for place, one in enumerate([7, 8])]",
    "a comprehension in a comprehension": "return [[inner * outer for inner in [1, 2]] for outer in [3, 4]]",
    "a comprehension makes a new list": "first = [1]\nsecond = [one for one in first]\nsecond.append(2)\nreturn [first, second]",
    "a comprehension that picks makes a new list": "out = [1]\npicked = [one for one in out if one > 0]\npicked.append(2)\nreturn [out, picked]",
    "a comprehension that picks from pairs": "return [one for place, one in enumerate('ab') if place > 0]",
    "a comprehension put under a key": "out = {'rows': []}\nout['rows'] = [one for one in [1, 2]]\nreturn out",
    "texts and truths compared": "one = None\ntwo = 'a'\nreturn ['a' == 'a', 'a' != 'a', 1 == 2, 1 != 2, one is None, two is None]",
    "a product before a sum": "return 2 * (3 + 4) * 5 - 6 * 7",
    "both of two truths": "one = 1\nreturn [one > 0 and one < 2, one > 1 or one < 0, not one > 0]",
    "one or the other": "one = 1\nreturn 'more' if one > 1 and not one > 3 else 'less'",
    "lists put together": "return [1] + [one for one in [2, 3]]",
    "sums within products and quotients": "a = 5\nb = 2\nreturn [(a + b) * b // 3, (a + b - 1) / 2, a // b + b, 2 * (a + b) - a]",
    "differences and sums": "a = 5\nb = 2\nreturn [a - (b + 1), (a - b) + (a * b), a - b + b, b + (a - b)]",
    "what is added to a number": "out = [4]\nreturn [len(out) + out[0], out[0] + max(1, out[0]), int(out[0] / 3) + out[0] + 1, out + [out[0] - 1]]",
    "a comprehension over numbers": "return [turn * turn for turn in range(3)]",
    "a list with one put in between": "out = [1, 3]\nout.insert(1, 2)\nout.insert(3, 4)\nout.insert(0, 0)\nreturn out",
    "texts joined": "return ', '.join([str(one) for one in [1, 2]])",
    "sorting by a number of each": "out = [{'n': 2}, {'n': 1}]\nout.sort(key=lambda one: one['n'])\nreturn out",
    "what is in a list, a dictionary, a text": "return [1 in [1], 'a' in {'a': 1}, 'b' in 'abc', 2 not in [1]]",
    "nothing returned": "out = 1",
}  # fmt: skip


def function(body: str) -> ast.Module:
    """The function `asked` with this body."""
    return ast.parse("def asked():\n" + "\n".join(f"    {line}" for line in body.split("\n")))


@pytest.fixture(scope="module")
def engine():
    """V8, as in a phone."""
    with MiniRacer() as made:
        yield made


@pytest.mark.parametrize("named", BODIES)
def test_it_means_the_same(named, engine):
    """The function gives the same in Python and, compiled, in V8."""
    module = function(BODIES[named])
    known: dict = {}
    exec(compile(module, named, "exec"), known)

    made = engine.eval(f"(() => {{ {joined([compiled(module)])}\n return JSON.stringify([asked()]); }})()")

    assert [known["asked"]()] == json.loads(made)


def test_what_comes_from_another_module_is_told():
    """Names that a module does not define itself; those of the comprehension are its own."""
    script = compiled(function("return [elsewhere(one, two) for one, two in others if one > limit]"))

    assert {"elsewhere", "others", "limit"} == script.unknown


def test_loops_call_one_helper():
    """What a loop goes over is asked in one place, and no comparison or truth calls a helper."""
    script = compiled(function("for one in others:\n    if one['a'] == 'b' and not one['c']:\n        found.append(one['d'] * 2)"))

    assert set() == script.functions | script.methods
    assert "for (one of _each(others)) {" in script.text
    assert 'one["a"] === "b"' in script.text
