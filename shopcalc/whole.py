"""What only the whole page of a setup shows: every expression on it, and what is still missing."""

import re
from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

import sympy

from shopcalc.drawing import Picture
from shopcalc.formulas import Formula
from shopcalc.numbers import NUMBERS
from shopcalc.portable.measures.parsing import read_length
from shopcalc.records import LITERAL, QUOTED, Line, Part, Result, symbols_of
from shopcalc.units import is_shown, length_factors

if TYPE_CHECKING:
    from shopcalc.declare import Setup


def formulas_of(setup: "Setup") -> dict[str, Formula]:
    """Every expression of a setup, by key: `fence`, `when fence`, `check weak`, `step 2`, `shape 0 3`.

    The phone makes the same keys in the same order from a card's data, in `portable/cards/naming.py`.
    """
    found: dict[str, Formula] = {}
    for result in setup.results.values():
        found |= _of_result(result)
    found |= {f"check {check.name}": check.relation for check in setup.checks.values()}
    for word, lines in lines_of(setup).items():
        found |= {f"{word} {place}": line.when for place, line in enumerate(lines) if line.when is not None}
    for page, picture in enumerate(setup.pictures):
        found |= _of_picture(page, picture)
    for place, part in enumerate(setup.parts):
        found |= _of_part(place, part)
    for place, include in enumerate(setup.includes):
        found |= {f"given {place} {name}": formula for name, formula in include.given.items()}
    found |= {f"run {place}": operation.when for place, operation in enumerate(setup.operations.values()) if operation.when is not None}
    found |= {f"used {declared.name}": declared.when for declared in setup.inputs.values() if declared.when is not None}
    return found


def lines_of(setup: "Setup") -> dict[str, list[Line]]:
    """What the card says while a relation holds, by the word under which its conditions are kept."""
    return {"step": setup.steps, "trial": setup.trials, "machine": setup.at_machines()}


def _of_result(result: Result) -> dict[str, Formula]:
    found: dict[str, Formula] = {result.name: result.formula}
    if result.when is not None:
        found[f"when {result.name}"] = result.when
    if isinstance(result.formula, sympy.Piecewise):
        # the working shows the case that holds, and not the others
        for place, (_, condition) in enumerate(result.formula.args[:-1]):
            found[f"case {result.name} {place}"] = condition
    return found


def _of_picture(page: int, picture: Picture) -> dict[str, Formula]:
    found: dict[str, Formula] = {}
    for place, shape in enumerate(picture.shapes):
        found[f"shape {page} {place}"] = shape.numbers()
        if shape.when is not None:
            found[f"shown {page} {place}"] = shape.when
    return found


def _of_part(place: int, part: Part) -> dict[str, Formula]:
    found: dict[str, Formula] = {f"part {place}": list(part.numbers)}
    if part.when is not None:
        found[f"part {place} when"] = part.when
    return found


def faults_of(setup: "Setup") -> Iterator[str]:
    """Why a page is not whole: what it quotes or names and does not have, inputs that nothing uses, no source, no trial."""
    yield from _faults_of_texts(setup)
    yield from _faults_of_names(setup)
    yield from _unused_inputs(setup)
    if not setup.sources:
        yield "no source is given"
    if any(each.reading for each in setup.inputs.values()) and not setup.trials and not setup.includes:
        yield "a reading is taken, but no trial cut is described"


def _faults_of_texts(setup: "Setup") -> Iterator[str]:
    kinds = setup.kinds()
    for where, text in _texts(setup):
        for name in QUOTED.findall(text):
            if not is_shown(kinds.get(name)):
                yield f"{where} quotes {name!r}, which is declared nowhere"
        if re.search(r"[{}]", LITERAL.sub("", QUOTED.sub("", text))):
            yield f"{where} has braces around what is neither a name nor a length"
        for length in LITERAL.findall(text):
            if not read_length(f"{length} in", {"metric": False, "division": 128}, length_factors(), NUMBERS)["ok"]:  # type: ignore[no-untyped-call]
                yield f"{where} has '{{{length} in}}', which is no length"


def _texts(setup: "Setup") -> list[tuple[str, str]]:
    """Every text that may quote values, and where it stands."""
    texts = [(f"step {place}", step.text) for place, step in enumerate(setup.steps, 1)]
    texts += [(f"the check {check.name}", check.text) for check in setup.checks.values()]
    texts += [("the trial", trial.text) for trial in setup.trials]
    texts += [(f"the operation {each.name}", each.face) for each in setup.operations.values()]
    texts += [("a picture", shape.text) for picture in setup.pictures for shape in picture.shapes]
    return texts


def _faults_of_names(setup: "Setup") -> Iterator[str]:
    for each in setup.results.values():
        # {size} in a correction is the correction itself, without its sign; no more is filled in there
        if re.search(r"[{}]", (each.more + each.less).replace("{size}", "")):
            yield f"the correction {each.name} quotes more than its own {{size}}"
    for check in setup.checks.values():
        for name in check.spoils or ():
            if name not in setup.results:
                yield f"the check {check.name} spoils {name!r}, which is no result"
    for include in setup.includes:
        for name, labels in include.passes.items():
            yield from passing_faults(setup, f"{include.setup.slug}'s operation {name}", labels)


def passing_faults(setup: "Setup", where: str, labels: Iterable[str]) -> Iterator[str]:
    """The parts that are said to pass at an operation, and are none."""
    known = {part.label for part in setup.parts}
    for label in labels:
        if label not in known:
            yield f"{where} passes {label!r}, which is no part"


def _unused_inputs(setup: "Setup") -> Iterator[str]:
    used = {symbol.name for formula in formulas_of(setup).values() for symbol in symbols_of(formula)}
    # what an inner card is given is worked out from this one's values, of whatever name
    used |= {name for include in setup.includes for name in include.setup.inputs if name not in include.given}
    used |= {name for result in setup.results.values() for name in (result.division, result.reading)}
    for name, declared in setup.inputs.items():
        if not {name, *(column.name for column in declared.columns)} & used:
            yield f"the input {name!r} is used by nothing"
