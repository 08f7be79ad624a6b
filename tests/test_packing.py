"""How setups are packed for the phone, and unpacked there."""

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact, phone
from shopcalc.catalogue import setups
from shopcalc.packing import text_literal

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


@pytest.mark.parametrize("text", ["", "it's \"quoted\"", "back\\slash", "line\u2028separator", "\u00bd \U0001f600", "</script>"])
def test_texts_survive_as_literals(text: str, phone_brain: MiniRacer) -> None:
    """Whatever a text holds, the literal gives it back."""
    assert text == run(phone_brain, text_literal(text))
