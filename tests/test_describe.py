"""A setup as plain data."""

import json
from typing import Any

import pytest

from shopcalc.catalogue import setups
from shopcalc.declare import Setup
from shopcalc.describe import USUAL, describe


@pytest.mark.parametrize("slug", setups())
def test_the_data_is_json(slug: str) -> None:
    """Everything described survives the way through JSON unchanged, so the phone reads what the server reads."""
    about = describe(setups()[slug])

    assert about == json.loads(json.dumps(about))


@pytest.mark.parametrize("slug", setups())
def test_every_formula_named_is_there(slug: str) -> None:
    """Every key of a formula that the data names is a formula of the setup."""
    setup = setups()[slug]
    about: dict[str, Any] = describe(setup)
    keys = {f"check {name}" for name in about["checks"]} | set(about["results"])
    keys |= {f"when {name}" for name, result in about["results"].items() if result["when"]}
    keys |= {f"step {place}" for place, step in enumerate(about["steps"]) if step["when"]}
    for page, picture in enumerate(about["pictures"]):
        keys |= {f"shape {page} {place}" for place in range(len(picture["shapes"]))}
        keys |= {f"shown {page} {place}" for place, shape in enumerate(picture["shapes"]) if shape["when"]}
    for place, part in enumerate(about["parts"]):
        keys |= {f"part {place}", f"part {place} when"} if part["when"] else {f"part {place}"}
    keys |= {key for included in about["includes"] for _, key in included["given"]}
    keys |= {case[0] for result in about["results"].values() for case in result["working"] if case[0]}

    assert keys == set(setup.formulas())


@pytest.mark.parametrize("slug", setups())
def test_what_is_usual_is_a_part_of_every_line(slug: str) -> None:
    """The phone puts back what is usual: every line has those keys, and no others are ever put back."""
    about = describe(setups()[slug])
    lines = {"inputs": about["inputs"], "steps": about["steps"], "results": about["results"].values(), "checks": about["checks"].values()}
    lines["shapes"] = [shape for picture in about["pictures"] for shape in picture["shapes"]]

    assert [] == [(part, line) for part, usual in USUAL.items() for line in lines[part] if set(usual) - set(line)]


def test_a_stop_spoils_everything_unless_it_names_what() -> None:
    """A stop takes away all results, or those named and what follows from them; a caution none."""
    groove, angle = describe(setups()["groove"]), describe(setups()["angle"])

    assert sorted(groove["results"]) == groove["checks"]["cutter_too_wide"]["spoils"]
    assert ["gauge_rise", "percent", "ratio", "rise_in_12"] == angle["checks"]["upright"]["spoils"]
    assert [] == groove["checks"]["thin_cheek"]["spoils"]


def test_limits_are_fractions() -> None:
    """The most an input can be is written as top and under."""
    angle = describe(setups()["angle"])["inputs"]

    assert ([90, 1], [120, 1], []) == tuple(each["most"] for each in angle[:3])


def test_a_machine_without_cautions_is_refused() -> None:
    """A machine for which nobody has written cautions cannot be named."""
    with pytest.raises(KeyError, match="router"):
        describe(Setup(slug="small", title="Small", stand="at the bench", job="A job.", machines=("router",)))


def test_the_program_is_in_declared_order() -> None:
    """Results and checks are worked in the order in which they were written."""
    program = describe(setups()["groove"])["program"]

    assert program.index("cheek") < program.index("thin_cheek") < program.index("fence_move")
