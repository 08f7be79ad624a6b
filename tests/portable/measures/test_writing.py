"""Writing measurements the way a tape is read."""

from fractions import Fraction

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.measures.writing import (
    decimal_text,
    feet_text,
    fraction_text,
    lean_of,
    millimetres,
    quoted,
    round_to,
    split_ticks,
    write_length,
    write_value,
)

from ...helpers import UNITS, exactly, run


@pytest.mark.parametrize(
    ("ticks", "division", "text"),
    [(0, 32, "0"), (1, 32, "1/32"), (16, 32, "1/2"), (20, 32, "5/8"), (32, 32, "1"), (116, 32, "3 5/8"), (5, 8, "5/8"), (129, 128, "1 1/128")],
)
def test_fractions_are_reduced(ticks: int, division: int, text: str) -> None:
    """A count of ticks is written as whole inches and the plainest fraction."""
    assert text == fraction_text(ticks, division)


def test_split_ticks() -> None:
    """A count of ticks falls into whole inches, top and under."""
    assert {"whole": 3, "top": 5, "under": 8} == split_ticks(116, 32)


@pytest.mark.parametrize(("direction", "ticks"), [("nearest", 19), ("down", 18), ("up", 19)])
def test_each_number_is_rounded_its_own_way(direction: str, ticks: int) -> None:
    """18.6 ticks are 19 to the nearest, 18 down, 19 up."""
    assert ticks == round_to(Fraction(186, 320), 32, direction)


@pytest.mark.parametrize("direction", ["nearest", "down", "up"])
def test_a_number_on_the_mark_stays_there(direction: str, phone_brain: MiniRacer) -> None:
    """A number on a mark is not rounded away from it, though doubles lie beside it: 0.3 / 0.1 inches."""
    assert 96 == round_to(Fraction(3), 32, direction) == run(phone_brain, "round_to(0.3 / 0.1, 32, given[0])", direction)


@pytest.mark.parametrize(
    ("x", "places", "trimmed", "text"),
    [
        ("0.125", 2, False, "0.13"), ("2.5", 0, False, "3"), ("0.5", 3, False, "0.500"), ("0.5", 3, True, "0.5"), ("3", 3, True, "3"),
        ("0.0004", 3, False, "0.000"),
        ("-0.0004", 3, False, "0.000"), ("-1.5", 1, False, "\u22121.5"), ("1/3", 3, False, "0.333"), ("2/3", 3, False, "0.667"), ("10", 0,
        False, "10"), ("100", 1, True, "100"),
    ],
)  # fmt: skip
def test_decimals(x: str, places: int, trimmed: bool, text: str, phone_brain: MiniRacer) -> None:
    """Decimals are rounded half up on both sides, keep their zeros unless told, and a minus is a true one."""
    assert text == decimal_text(Fraction(x), places, trimmed) == run(phone_brain, f"decimal_text({x}, given[0], given[1])", places, trimmed)


@pytest.mark.parametrize(
    ("x", "word", "amount"),
    [("0.597", "full", "0.003"), ("0.590", "scant", "0.004"), ("19/32", "", ""), ("0.5941", "", ""), ("0.5945", "full", "0.001")],
)
def test_full_and_scant(x: str, word: str, amount: str) -> None:
    """A little more than the mark is full, a little less scant; half a thousandth goes without a word."""
    assert {"word": word, "amount": amount} == lean_of(Fraction(x), 19, 32)


def test_a_length_in_all_its_texts() -> None:
    """A length carries fraction, lean, decimal, millimetres and feet."""
    written = write_length(Fraction("78.597"), 32, "nearest", False, UNITS)

    assert ("78 19/32 full", "78 19/32", "full", "0.003") == tuple(written[name] for name in ("text", "bare", "lean", "amount"))
    assert ("78", "19", "32", "") == tuple(written[name] for name in ("whole", "top", "under", "sign"))
    assert ("78.597", "1996.4", "6 ft 6 19/32 in") == tuple(written[name] for name in ("decimal", "mm", "feet"))


def test_a_negative_length_has_a_true_minus() -> None:
    """A negative length is its size behind a minus sign."""
    assert "\u22121 1/2" == write_length(Fraction(-3, 2), 32, "nearest", False, UNITS)["text"]


def test_a_metric_shop_reads_millimetres() -> None:
    """In a metric shop a length is written in millimetres and does not lean."""
    written = write_length(Fraction("0.597"), 32, "nearest", True, UNITS)

    assert ("15.2 mm", "") == (written["text"], written["lean"])


@pytest.mark.parametrize(
    ("x", "text"),
    [("11 31/32", ""), ("12", "1 ft"), ("78 1/2", "6 ft 6 1/2 in"), ("1200", "100 ft"), ("12 1/32", "1 ft 1/32 in"), ("11 127/128", "1 ft")],
)
def test_feet(x: str, text: str) -> None:
    """From a foot on a length is also written in feet and inches."""
    assert text == feet_text(exactly(x), 32, "nearest")


@pytest.mark.parametrize(
    ("x", "kind", "text"),
    [
        ("22.5", "angle", "22.5\u00b0"), ("45", "angle", "45\u00b0"), ("1/3", "angle", "0.33\u00b0"), ("41.666", "percent", "41.7%"), ("2",
        "count", "2"),
        ("64", "division", "64"), ("2.4", "number", "2.4"), ("1/3", "number", "0.333"), ("3 5/8", "length", "3 5/8"),
    ],
)  # fmt: skip
def test_each_kind_is_written_its_own_way(x: str, kind: str, text: str) -> None:
    """Angles have degrees, percents their sign, counts no decimals."""
    assert text == write_value(exactly(x), kind, 32, "nearest", False, UNITS)["text"]


@pytest.mark.parametrize(
    ("x", "kind", "metric", "text"),
    [
        ("17/32", "length", False, "17/32 in"),
        ("0.597", "length", False, "19/32 in full"),
        ("1", "length", True, "25.4 mm"),
        ("10", "angle", False, "10\u00b0"),
    ],
)
def test_inside_a_sentence_a_length_says_its_unit(x: str, kind: str, metric: bool, text: str) -> None:
    """A length in a sentence has its unit before full or scant."""
    assert text == quoted(write_value(Fraction(x), kind, 32, "nearest", metric, UNITS), kind, metric)


def test_an_inch_is_25_4_millimetres() -> None:
    """Inches become millimetres exactly."""
    assert Fraction("25.4") == millimetres(Fraction(1), UNITS)


@pytest.mark.parametrize(
    ("length", "text", "mm"),
    [("1/8", "1/8", "3.18 mm"), ("7/64", "7/64", "2.78 mm"), ("0.008", "0.008", "0.2 mm"), ("0.002", "0.002", "0.05 mm"),
    ("-1/32", "\u22121/32", "\u22120.79 mm"), ("-0.02", "\u22120.020", "\u22120.51 mm"),
    ("1 1/4", "1 1/4", "31.75 mm"), ("0", "0", "0 mm"), ("1/128", "0.008", "0.2 mm")],
)  # fmt: skip
def test_a_piece_is_written_as_it_is(length: str, text: str, mm: str, phone_brain: MiniRacer) -> None:
    """A fraction only where it is exactly a 64th or coarser, else thousandths; hundredths of a mm in a metric shop."""
    x = Fraction(exactly(length)) if not length.startswith("-") else -exactly(length[1:])

    assert (text, mm) == tuple(write_value(x, "length", 128, "none", metric, UNITS)["text"] for metric in (False, True))
    assert f"{text}, {text}" == write_value([x, x], "lengths", 128, "none", False, UNITS)["text"]
    assert mm == run(phone_brain, "write_value(given[0], 'length', 128, 'none', true, given[1]).text", float(x), UNITS)
