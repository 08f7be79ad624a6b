"""The tables of characters."""

import unicodedata
from fractions import Fraction

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.marks import SIGNS, SPACES, UNIT_MARKS, UNIT_WORDS, VULGAR, VULGAR_VALUES, characters

from ..helpers import UNITS, close, run


def test_vulgar_fractions_are_what_unicode_says() -> None:
    """Every vulgar fraction stands for the value that Unicode gives it."""
    assert [] == [one for one, value in zip(VULGAR, VULGAR_VALUES, strict=True) if not close(Fraction(*value), unicodedata.numeric(one))]


def test_signs_become_what_the_grammar_knows() -> None:
    """Every dress of a sign is taken off."""
    assert set("+-*/():%") == set(SIGNS.values())


def test_no_character_is_two_things() -> None:
    """No character is a sign and a mark of a unit, or a space, at once."""
    assert set() == (set(SIGNS) & set(UNIT_MARKS)) | (set(SPACES) & (set(SIGNS) | set(UNIT_MARKS))) | (set(VULGAR) & set(SIGNS))


def test_every_unit_has_a_factor() -> None:
    """Every length unit that can be typed is one that can be turned into inches."""
    assert set(UNITS) == {*UNIT_MARKS.values(), *UNIT_WORDS.values()} - {"deg"}


@pytest.mark.parametrize("text", ["", "3 5/8", "\U0001f4cf3\U0001d7d8", "\u00bd\u2033"])
def test_characters_are_whole_on_both_sides(text: str, phone_brain: MiniRacer) -> None:
    """A character beyond the first plane is one character, also where strings are made of halves of it."""
    assert list(text) == characters(text)
    assert list(text) == run(phone_brain, "characters(given[0])", text)
