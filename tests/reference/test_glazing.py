"""The table of panes: what each row is, and where it was read."""

import pytest
import sympy

from shopcalc.reference.glazing import PANES, per_kelvin


@pytest.mark.parametrize("name", PANES)
def test_every_pane_has_an_exact_expansion_and_its_source(name: str) -> None:
    """A figure is a fraction and no float, and says whether it was read in a publication or in a page that quotes one."""
    pane = PANES[name]

    assert isinstance(pane.expansion, sympy.Rational)
    assert 0 < pane.expansion < 50
    assert "read in a page that quotes it" in pane.source
    assert pane.label


def test_a_kelvin_is_nine_fifths_of_a_degree() -> None:
    """Glass at 9 millionths for a kelvin moves 5 for a degree Fahrenheit, exactly."""
    assert per_kelvin("9") == 5 == PANES["glass"].expansion
    assert per_kelvin("72") == PANES["acrylic"].expansion


def test_glass_moves_least() -> None:
    """Plastics move seven times as much as glass and more."""
    assert all(pane.expansion > 7 * PANES["glass"].expansion for name, pane in PANES.items() if name != "glass")
