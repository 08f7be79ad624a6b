"""Cutting an entry into numbers, fractions, signs and units."""

import pytest

from shopcalc.portable.measures.tokens import LONGEST_ENTRY, begin, misplaced, peek, peek_after

from ...helpers import NUMBERS, UNITS


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


@pytest.mark.parametrize(
    ("text", "place", "fault"),
    [
        ("mm", 0, "The unit \u201cmm\u201d has no number before it."),
        ("+ mm", 1, "The unit \u201cmm\u201d has no number before it."),
        ("1 mm in", 2, "That already has a unit."),
        ("12 in", 1, "\u201cin\u201d cannot stand there."),
    ],
)
def test_a_misplaced_unit_is_told_by_what_stands_before_it(text: str, place: int, fault: str) -> None:
    """Only a unit that follows no number is said to follow none."""
    state = begin(text, UNITS, NUMBERS, "length")
    state["next"] = place
    misplaced(state)

    assert fault == state["fault"]


def test_a_token_carries_no_more_than_the_grammar_asks() -> None:
    """Every phone downloads what fills a token: its place was never read."""
    tokens = begin("3 5/8 in", UNITS, NUMBERS, "length")["tokens"]

    assert {"kind", "text", "spaced", "top", "under", "whole"} == {key for token in tokens for key in token}


def test_full_width_digits_and_colon_are_plain_ones() -> None:
    """What a phone set to a wide script types is cut like the rest."""
    assert ["number", ":", "number", "end"] == [token["kind"] for token in begin("\uff15\uff1a\uff11\uff12", UNITS, NUMBERS, "angle")["tokens"]]


@pytest.mark.parametrize("text", ["\u200b3", "3\u200b", "3 \ufeff", "\u2068 3 \u2069"])
def test_what_cannot_be_seen_is_forgiven_at_the_ends(text: str) -> None:
    """A mark that comes along with pasted text is no fault of who pastes it."""
    assert ["number", "end"] == kinds(text)


def test_what_cannot_be_seen_is_told_inside() -> None:
    """Between figures it could be a space or nothing, and a quote of it would look empty."""
    assert "A character in there cannot be seen: type it anew." == begin("1\u200b5/8", UNITS, NUMBERS, "length")["fault"]


@pytest.mark.parametrize("text", ["0 x 10", "2x4", "2 x 4 5/8", "10x10", "0 x10"])
def test_an_x_between_numbers_multiplies(text: str) -> None:
    """A letter x is the sign of multiplying, with spaces or without."""
    assert "*" in kinds(text)


def test_an_x_behind_a_zero_is_asked_about() -> None:
    """`0x10` is how machines write sixteen, and would be read as nothing."""
    assert "0x begins no measurement: put spaces around an x that multiplies." == begin("2 + 0x10", UNITS, NUMBERS, "length")["fault"]
