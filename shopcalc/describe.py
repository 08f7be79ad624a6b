"""Turns a declared setup into plain data: what the portable code and the phone read.

The data says everything about a card but its arithmetic, which `formulas.py` prints. Keys of formulas are
those of `Setup.formulas`; `when` says that a line has a condition among them.
"""

from collections.abc import Iterable
from typing import Any

import sympy

from shopcalc.declare import Setup
from shopcalc.drawing import Shape
from shopcalc.portable.jobs.own import OWN_RUNS
from shopcalc.records import RUNS, STAGES, Check, Input, Line, Operation, Part, Result, symbols_of
from shopcalc.terms import constant_of, is_row
from shopcalc.whole import lines_of
from shopcalc.working import working_cases


def describe(setup: Setup) -> dict[str, Any]:
    """The card as data."""
    return {
        "slug": setup.slug,
        "title": setup.title,
        "stand": setup.stand,
        "job": setup.job,
        "icon": setup.icon,
        "inputs": [_describe_input(setup, each) for each in setup.inputs.values()],
        "results": {each.name: _describe_result(each) for each in setup.results.values()},
        "checks": {each.name: _describe_check(setup, each) for each in setup.checks.values()},
        "program": list(setup.program),
        "lines": {word: _describe_lines(lines) for word, lines in lines_of(setup).items()},
        "pictures": [
            {
                "caption": picture.caption,
                "shapes": [_describe_shape(setup, shape) for shape in picture.shapes],
            }
            for picture in setup.pictures
        ],
        "sources": list(setup.sources),
        "parts": [_describe_part(part) for part in setup.parts],
        "onwards": [
            {
                "slug": each.slug,
                "label": each.label,
                "carry": [[target, [[name, _doubts(setup, name)] for name in names]] for target, names in each.carry.items()],
            }
            for each in setup.onwards
        ],
        "includes": [
            {
                "slug": each.setup.slug,
                "given": [[name, f"given {place} {name}"] for name in each.given],
                "passes": {name: _places(setup, labels) for name, labels in each.passes.items()},
            }
            for place, each in enumerate(setup.includes)
        ],
        "operations": [_describe_operation(setup, each) for each in setup.operations.values()],
    }


def describe_runs() -> dict[str, dict[str, Any]]:
    """The runs that a part of no card goes through, in the words that all setups share."""
    shared = {word: RUNS[word] for word, _ in OWN_RUNS}
    return {
        word: {"stage": STAGES.index(run.stage), "machine": run.machine, "label": run.label, "setting": run.settings[0], "face": run.face}
        for word, run in shared.items()
    }


def _of(*formulas: Any) -> list[str]:
    """The names that formulas use; None has none."""
    return sorted({symbol.name for each in formulas if each is not None for symbol in symbols_of(each)})


def _describe_lines(lines: Iterable[Line]) -> list[dict[str, Any]]:
    return [{"text": line.text, "when": line.when is not None} for line in lines]


def _describe_input(setup: Setup, declared: Input) -> dict[str, Any]:
    return {
        "name": declared.name,
        "kind": declared.kind,
        "label": declared.label,
        "start": declared.start,
        "help": declared.help,
        "zero": declared.zero,
        "most": _limit(declared.most),
        "options": [list(option) for option in declared.options],
        "reading": declared.reading,
        "signed": declared.signed,
        "items": declared.items,
        "group": declared.group,
        "columns": [{"name": each.name, "kind": each.kind, "values": [_limit(value) for value in each.values]} for each in declared.columns],
        "shop": declared.shop,
        "when": declared.when is not None,
        "drawn": drawn_for(setup, declared) + drawn_inside(setup, declared.name),
    }


def drawn_for(setup: Setup, declared: Input) -> list[str]:
    """The values on whose dimensions an input shows: its own, else those of the nearest results that follow from it.

    A reading shows where that stands with which it is compared.
    """
    drawn = {shape.of for picture in setup.pictures for shape in picture.shapes}
    names = {declared.name, *(column.name for column in declared.columns)}
    while names and not names & drawn:
        following = [each for each in setup.results.values() if names & {*_of(each.formula), each.reading}]
        beside = {name for each in following for name in _of(each.formula) if declared.reading and each.role == "correction"}
        names = beside if beside & drawn else {each.name for each in following} - names
    return sorted(names & drawn)


def drawn_inside(setup: Setup, name: str) -> list[str]:
    """The same in the drawings of the cards inside this one that share the input: `tenon/gauge_block`."""
    sharing = [each.setup for each in setup.includes if name in each.setup.inputs and name not in each.given]
    return [f"{inner.slug}/{drawn}" for inner in sharing for drawn in drawn_for(inner, inner.inputs[name])]


def _describe_part(part: Part) -> dict[str, Any]:
    """A part; a size that is a value of the card is named, so that it is written as that is."""
    sizes = ["" if not isinstance(each, sympy.Symbol) else each.name for each in part.numbers[1:]]
    return {"label": part.label, "when": part.when is not None, "sizes": sizes, "pane": part.pane}


def _places(setup: Setup, labels: Iterable[str]) -> list[int]:
    """Where in the cut list the parts with these labels stand."""
    return [place for place, part in enumerate(setup.parts) if part.label in labels]


def _describe_operation(setup: Setup, declared: Operation) -> dict[str, Any]:
    return {
        "name": declared.name,
        "stage": STAGES.index(declared.stage),
        "label": declared.label,
        "machine": declared.machine,
        "settings": [list(each) for each in declared.settings],
        "face": declared.face,
        "parts": _places(setup, declared.parts),
        "reading": declared.reading,
        "when": declared.when is not None,
        "run": declared.run,
    }


def _limit(most: Any) -> list[int]:
    """A limit as [numerator, denominator], or nothing."""
    if most is None:
        return []
    value = constant_of(most)
    return [int(value.p), int(value.q)]


def _doubts(setup: Setup, name: str) -> list[str]:
    """The checks that say of a reading that it is a slip."""
    return [check.name for check in setup.checks.values() if check.doubts == name]


def _describe_result(declared: Result) -> dict[str, Any]:
    return {
        "label": declared.label,
        "kind": declared.kind,
        "role": declared.role,
        "rounding": declared.rounding,
        "division": declared.division,
        "when": declared.when is not None,
        "reading": declared.reading,
        "more": declared.more,
        "less": declared.less,
        "known_as": declared.known_as,
        "working": working_cases(declared.formula),
        "source": declared.source,
    }


def _describe_check(setup: Setup, declared: Check) -> dict[str, Any]:
    spoiled = list(setup.results) if declared.spoils is None else list(declared.spoils)
    return {
        "level": declared.level,
        "text": declared.text,
        "change": declared.change,
        "spoils": _with_followers(setup, spoiled),
        "source": declared.source,
    }


def _with_followers(setup: Setup, names: list[str]) -> list[str]:
    """The results named and all that are worked out from them; declared order makes one pass enough."""
    spoiled = set(names)
    for result in setup.results.values():
        if spoiled & set(_of(result.formula, result.when)):
            spoiled.add(result.name)
    return sorted(spoiled)


def _rows(setup: Setup, shape: Shape) -> list[bool]:
    """Which of a box's four numbers are rows; nothing if none is."""
    kinds = setup.kinds()
    rows = [shape.kind == "box" and is_row(each, kinds) for each in shape.numbers()]
    return rows if any(rows) else []


def _describe_shape(setup: Setup, shape: Shape) -> dict[str, Any]:
    return {
        "rows": _rows(setup, shape),
        "kind": shape.kind,
        "style": shape.style,
        "of": shape.of,
        "text": shape.text,
        "side": shape.side,
        "row": shape.row,
        "when": shape.when is not None,
    }
