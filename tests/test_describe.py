"""A setup as plain data."""

import json
from typing import Any

import pytest

from shopcalc.catalogue import setups
from shopcalc.declare import Setup
from shopcalc.describe import describe


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
    lines = [*about["results"].values(), *about["steps"], *(shape for picture in about["pictures"] for shape in picture["shapes"])]
    keys = {each["when"] for each in lines if each["when"]} | {f"check {name}" for name in about["checks"]} | set(about["results"])
    keys |= {shape["numbers"] for picture in about["pictures"] for shape in picture["shapes"]}
    keys |= {part["numbers"] for part in about["parts"]} | {part["when"] for part in about["parts"] if part["when"]}
    keys |= {key for included in about["includes"] for _, key in included["given"]}
    keys |= {case[0] for result in about["results"].values() for case in result["working"] if case[0]}

    assert keys == set(setup.formulas())


def test_needs_are_the_names_a_line_rests_on() -> None:
    """A result needs what its formula and its condition use, a step what it quotes."""
    about = describe(setups()["groove"])

    assert ["groove_width", "stock"] == about["results"]["fence"]["needs"]
    assert ["cutter", "fence", "groove_width", "stock"] == about["results"]["rib_fence"]["needs"]
    assert ["cutter", "groove_width", "rib", "rib_fence"] == about["steps"][-2]["needs"]


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

    assert program.index(["result", "cheek"]) < program.index(["check", "thin_cheek"]) < program.index(["result", "fence_move"])
