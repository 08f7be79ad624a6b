"""The tables of characters."""

import unicodedata
from fractions import Fraction

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.measures.characters import (
    NARROW,
    SIGNS,
    SPACES,
    UNIT_MARKS,
    UNIT_WORDS,
    UNSEEN,
    VULGAR,
    VULGAR_VALUES,
    WIDE,
    characters,
    plain_marks,
    unspaced,
)

from ...helpers import UNITS, close, run


def test_vulgar_fractions_are_what_unicode_says() -> None:
    """Every vulgar fraction stands for the value that Unicode gives it."""
    assert [] == [one for one, value in zip(VULGAR, VULGAR_VALUES, strict=True) if not close(Fraction(*value), unicodedata.numeric(one))]


def test_signs_become_what_the_grammar_knows() -> None:
    """Every dress of a sign is taken off."""
    assert set("+-*/():%") == set(SIGNS.values())


def test_no_character_is_two_things() -> None:
    """No character is a sign and a mark of a unit, or a space, at once."""
    assert set() == (set(SIGNS) & set(UNIT_MARKS)) | (set(SPACES) & (set(SIGNS) | set(UNIT_MARKS))) | (set(VULGAR) & set(SIGNS))


def test_full_width_marks_are_what_unicode_says() -> None:
    """Every full-width mark stands for the one that Unicode gives it."""
    assert NARROW == unicodedata.normalize("NFKC", WIDE)


def test_what_is_empty_to_the_eye_is_no_mark() -> None:
    """Spaces take room, and what cannot be seen takes none; neither is anything else."""
    assert {"Cf"} == {unicodedata.category(one) for one in UNSEEN}
    assert {"Zs", "Cc"} == {unicodedata.category(one) for one in SPACES}
    assert set() == set(SPACES) & set(UNSEEN)


@pytest.mark.parametrize(
    ("text", "plain", "bare"),
    [
        ("\uff13\u3000\uff15/8", "3\u30005/8", "\uff13\u3000\uff15/8"),
        ("\t 3\u00a05 \u200b\n", "\t 3\u00a05 \u200b\n", "3\u00a05"),
        ("\u00a0\u200b", "\u00a0\u200b", ""),
        ("\U0001f4cf ", "\U0001f4cf ", "\U0001f4cf"),
        ("", "", ""),
    ],
)
def test_marks_are_undressed_alike_on_both_sides(text: str, plain: str, bare: str, phone_brain: MiniRacer) -> None:
    """Full-width marks become plain, and an end loses its spaces and what cannot be seen."""
    assert (plain, bare) == ("".join(plain_marks(text)), unspaced(text))
    assert [list(plain), bare] == run(phone_brain, "[plain_marks(given[0]), unspaced(given[0])]", text)


def test_every_unit_has_a_factor() -> None:
    """Every length unit that can be typed is one that can be turned into inches."""
    assert set(UNITS) == {*UNIT_MARKS.values(), *UNIT_WORDS.values()} - {"deg"}


@pytest.mark.parametrize("text", ["", "3 5/8", "\U0001f4cf3\U0001d7d8", "\u00bd\u2033"])
def test_characters_are_whole_on_both_sides(text: str, phone_brain: MiniRacer) -> None:
    """A character beyond the first plane is one character, also where strings are made of halves of it."""
    assert list(text) == characters(text)
    assert list(text) == run(phone_brain, "characters(given[0])", text)
