"""Fixtures that many tests share."""

from collections.abc import Iterator

import pytest
from py_mini_racer import MiniRacer

from shopcalc import phone
from shopcalc.catalogue import setups


@pytest.fixture(scope="session")
def phone_brain() -> Iterator[MiniRacer]:
    """A JavaScript engine that has read everything the phone is sent to answer with."""
    with MiniRacer() as engine:
        engine.eval(phone.brain(setups()))
        yield engine
