"""How setups are packed for the phone, and unpacked there."""

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact, phone
from shopcalc.catalogue import setups
from shopcalc.describe import describe
from shopcalc.packing import KEYS, text_literal

from .helpers import run


def test_a_setup_is_made_when_it_is_first_asked_for(phone_brain: MiniRacer) -> None:
    """The data of a setup is read once."""
    assert run(phone_brain, "world.setups.groove === world.setups.groove")
    assert sorted(setups()) == sorted(run(phone_brain, "Object.keys(world.setups)"))


def test_the_phone_has_the_same_data() -> None:
    """A setup with quotes, dashes and line separators in its texts arrives as it is."""
    with MiniRacer() as engine:
        engine.eval(phone.brain(setups()))
        for slug in setups():
            assert exact.world()["setups"][slug]["about"] == run(engine, "world.setups[given[0]].about", slug)


@pytest.mark.parametrize("slug", setups())
def test_every_line_says_what_its_sort_says(slug: str) -> None:
    """The phone unpacks a line by the keys of its sort: it has all of them, and no others."""
    about = describe(setups()[slug])
    lines = {"inputs": about["inputs"], "results": about["results"].values(), "checks": about["checks"].values()}
    lines["operations"] = about["operations"]
    lines["lines"] = [line for lines in about["lines"].values() for line in lines]
    lines["shapes"] = [shape for picture in about["pictures"] for shape in picture["shapes"]]

    assert [] == [(sort, line) for sort, keys in KEYS.items() for line in lines[sort] if set(keys) != set(line)]


@pytest.mark.parametrize("text", ["", 'it\'s "quoted"', "back\\slash", "line\u2028separator", "\u00bd \U0001f600", "</script>"])
def test_texts_survive_as_literals(text: str, phone_brain: MiniRacer) -> None:
    """Whatever a text holds, the literal gives it back."""
    assert text == run(phone_brain, text_literal(text))
