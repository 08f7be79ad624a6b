"""The usual cautions by machine."""

import pytest

from shopcalc.catalogue import setups
from shopcalc.reference.cautions import CAUTIONS


@pytest.mark.parametrize("slug", setups())
def test_every_setup_has_its_cautions(slug: str) -> None:
    """The machines of every setup have cautions written."""
    assert [] != [text for machine in setups()[slug].at_machines() for text in CAUTIONS[machine.text]]


def test_no_caution_is_written_twice() -> None:
    """A card that names several machines repeats nothing."""
    texts = [text for many in CAUTIONS.values() for text in many]

    assert len(texts) == len(set(texts))


def test_cautions_are_sentences() -> None:
    """A caution is a short sentence with its full stop."""
    assert [] == [text for many in CAUTIONS.values() for text in many if not text.endswith(".") or len(text) > 160]


def test_every_machine_with_cautions_is_used() -> None:
    """No caution waits for a machine that no setup names."""
    assert set(CAUTIONS) == {machine.text for setup in setups().values() for machine in setup.at_machines()}
