"""A page as a whole: every expression by its key, and what only its end shows."""

from collections.abc import Callable
from typing import Any

import pytest

from shopcalc.declare import DeclarationError, Setup
from shopcalc.drawing import label
from shopcalc.terms import cosd, inches, pick

from .test_declare import nothing, small, stock, tilt


def whole() -> Setup:
    """A page that is whole."""
    setup = small()
    setup.setting("fence", "Fence", stock * cosd(tilt))
    setup.source("Geometry.")
    return setup


UNFINISHED: dict[str, tuple[Callable[[Setup], Any], str]] = {
    "a step that quotes an unknown value": (lambda s: s.step("Set {nothing}."), "small: step 1 quotes 'nothing', which is declared nowhere"),
    "a check that quotes one": (lambda s: s.stop("no", stock > inches(1), "It is {nothing}.", change=stock), "small: the check no quotes 'nothing'"),
    "a trial that quotes one": (lambda s: s.trial("Measure {nothing}."), "small: the trial quotes 'nothing'"),
    "a picture that quotes one": (lambda s: s.picture("A word.", label("{nothing}", (stock, stock))), "small: a picture quotes 'nothing'"),
    "a correction that quotes one": (lambda s: s.correction("move", "Move", stock, more="{nothing}", less="{size}", far=None),
    "small: the correction move quotes more than its own {size}"),
    "a correction that quotes a value": (lambda s: s.correction("move", "Move", stock, more="{size} from {stock}", less="{size}", far=None),
    "small: the correction move quotes more than its own {size}"),
    "braces around neither": (lambda s: s.step("Set {1/4}."), "small: step 1 has braces around what is neither a name nor a length"),
    "a length that is none": (lambda s: s.step("Leave {1/0 in}."), "small: step 1 has '{1/0 in}', which is no length"),
    "an input that nothing uses": (lambda s: s.length("depth", "Depth", "1", "The depth."), "small: the input 'depth' is used by nothing"),
    "a reading without a trial": (
        lambda s: s.after("cut", "Cut", s.reading("read", "Read", "On the scrap.")), "small: a reading is taken, but no trial cut is described",
    ),
    "no source": (lambda s: s.sources.clear(), "small: no source is given"),
}  # fmt: skip


@pytest.mark.parametrize("what", UNFINISHED)
def test_a_page_that_is_not_whole_is_refused_at_its_end(what: str) -> None:
    """What only the whole page shows is refused by name when it is finished."""
    declare, message = UNFINISHED[what]
    setup = whole()
    declare(setup)
    with pytest.raises(DeclarationError) as refusal:
        setup.finish()

    assert str(refusal.value).startswith(message)


def test_a_whole_page_is_accepted() -> None:
    """A page with nothing wrong is finished."""
    assert "small" == whole().finish().slug


def test_a_check_that_spoils_what_is_not_there_is_refused() -> None:
    """A stop can only take away results that are declared."""
    setup = whole()
    with pytest.raises(DeclarationError, match="nothing"):
        setup.stop("no", stock > inches(1), "No.", change=stock, spoils=(nothing,))
        setup.finish()


def test_formulas_are_listed_by_what_they_are_for() -> None:
    """Every expression of a page has its key."""
    setup = whole()
    setup.stop("thick", stock > inches(2), "Too thick.", change=stock)
    setup.step("Cut.", when=stock > inches(1))

    assert ["fence", "check thick", "step 0"] == list(setup.formulas())


def test_a_formula_with_cases_has_a_key_for_each_condition() -> None:
    """Each condition but the last, which always holds, can be asked by itself."""
    setup = whole()
    setup.size("side", "Side", pick((stock, stock > inches(1)), otherwise=2 * stock))

    assert "case side 0" in setup.formulas()
    assert "case side 1" not in setup.formulas()
