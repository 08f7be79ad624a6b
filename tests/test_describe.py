"""A setup as plain data."""

import json

import pytest

from shopcalc.catalogue import setups
from shopcalc.declare import Setup
from shopcalc.describe import describe


@pytest.mark.parametrize("slug", setups())
def test_the_data_is_json(slug: str) -> None:
    """Everything described survives the way through JSON unchanged, so the phone reads what the server reads."""
    about = describe(setups()[slug])

    assert about == json.loads(json.dumps(about))


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
