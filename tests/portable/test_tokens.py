"""Cutting an entry into numbers, fractions, signs and units."""

import pytest

from shopcalc.portable.tokens import LONGEST_ENTRY, begin, misplaced, peek, peek_after

from ..helpers import NUMBERS, UNITS


def kinds(text: str) -> list[str]:
    """The kinds of the tokens of an entry."""
    return [token["kind"] for token in begin(text, UNITS, NUMBERS, "length")["tokens"]]


@pytest.mark.parametrize(
    ("text", "found"),
    {
        "3 5/8": ["number", "number", "/", "number", "end"],
        "3\u215d": ["number", "vulgar", "end"],
        "6' 6''": ["number", "unit", "number", "unit", "end"],
        "(1+2)*3": ["(", "number", "+", "number", ")", "*", "number", "end"],
        "1 in.": ["number", "unit", "end"],
        "": ["end"],
    }.items(),
)
def test_kinds_of_tokens(text: str, found: list[str]) -> None:
    """An entry falls into its tokens, and an end stands behind the last."""
    assert found == kinds(text)


def test_a_number_is_whole_over_a_power_of_ten() -> None:
    """A decimal is kept as two whole numbers, so that nothing is lost."""
    token = begin("2.50", UNITS, NUMBERS, "length")["tokens"][0]

    assert (250, 100, False) == (token["top"], token["under"], token["whole"])


def test_spaces_before_a_token_are_remembered() -> None:
    """Whether a space stands before a token tells 3-5/8 from 3 - 5/8."""
    assert [True, False, False] == [token["spaced"] for token in begin("3-5", UNITS, NUMBERS, "length")["tokens"]][:3]
    assert [True, True, True] == [token["spaced"] for token in begin("3 - 5", UNITS, NUMBERS, "length")["tokens"]][:3]


def test_the_end_stands_behind_itself() -> None:
    """Looking past the last token finds the end."""
    state = begin("1", UNITS, NUMBERS, "length")

    assert ("number", "end") == (peek(state)["kind"], peek_after(state, 5)["kind"])


def test_a_point_before_a_digit_is_not_the_dot_of_in() -> None:
    """In `1 in .5` the point belongs to the number."""
    assert ["number", "unit", "number", "end"] == kinds("1 in.5")


def test_only_the_first_fault_is_kept() -> None:
    """Of several unreadable characters the first is named."""
    assert "I cannot read \u201c#\u201d in a measurement." == begin("#$", UNITS, NUMBERS, "length")["fault"]


def test_length_of_an_entry_counts_characters() -> None:
    """A character beyond the first plane of Unicode counts as one, on both sides."""
    state = begin("\U0001f4cf" * LONGEST_ENTRY, UNITS, NUMBERS, "length")

    assert "I cannot read \u201c\U0001f4cf\u201d in a measurement." == state["fault"]


def test_misplaced_unit_is_named() -> None:
    """A unit with no number before it is named."""
    assert "The unit \u201cmm\u201d has no number before it." == misplaced({"kind": "unit", "text": "mm"})
