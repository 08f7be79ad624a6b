"""Reading what a woodworker types."""

from fractions import Fraction

import pytest

from shopcalc.portable.measures.parsing import read_angle, read_count, read_length, read_percent, read_sum, read_temperature

from ...helpers import INCH_SHOP, MM_SHOP, NUMBERS, UNITS, close, exactly


def length(text: str, metric: bool = False) -> object:
    """The length read in inches, or the message."""
    got = read_length(text, MM_SHOP if metric else INCH_SHOP, UNITS, NUMBERS)
    return got["value"] if got["ok"] else got["message"]


def tape_sum(text: str) -> object:
    """The result of tape arithmetic in inches, or the message."""
    got = read_sum(text, INCH_SHOP, UNITS, NUMBERS)
    return got["value"] if got["ok"] else got["message"]


def angle(text: str) -> object:
    """The angle read in degrees, or the message."""
    got = read_angle(text, UNITS, NUMBERS)
    return got["value"] if got["ok"] else got["message"]


def count(text: str) -> object:
    """The count read, or the message."""
    got = read_count(text, UNITS, NUMBERS)
    return got["value"] if got["ok"] else got["message"]


LENGTHS = {
    "3 5/8": "3 5/8", "3 5 / 8": "3 5/8", "3 5 /8": "3 5/8", "3 5 / 8 / 2": "29/16",
    "3-5/8": "3 5/8", "3\u215d": "3 5/8", "3 \u215d": "3 5/8", "3-\u215d": "3 5/8", "\u215d": "5/8", "29/8": "29/8",
    "3.625": "3 5/8", ".625": "5/8", "3.": "3", '5/8"': "5/8", '3 5/8"': "3 5/8", "6' 6\"": "78", "6'6": "78", "6'-6\"": "78", "6'": "72",
    "6ft 6-1/2in": "78 1/2", "6 feet 6 1/2 inches": "78 1/2", "6' 6\u00bd\"": "78 1/2", "1/2 ft": "6", "2.5 ft": "30",
    "92.1 mm": "921/254", "9.21cm": "921/254", "1 m": "5000/127", "25.4mm": "1", "1 in.": "1", "1 INCH": "1",
    "2 1/4 + 1/16": "2 5/16", "(31 1/4 - 3/8)/2": "247/16", "31 1/4 - 3/8": "30 7/8", "31 1/4-3/8": "30 7/8", "3 - 5/8": "2 3/8",
    "31 1/4 / 3": "125/12", "2 * 4 5/8": "9 1/4", '2 * 4 5/8"': "9 1/4", "1/2/2": "1/4", "(1/2)": "1/2", "((2))": "2", "1 ft - 25.4 mm": "11",
    "(1 + 2) in": "3", "6' 6\" + 1/2": "78 1/2", "10 mm / 10 mm * 3 in": "3", "100 ft": "1200", "1200": "1200", "0": "0", "0/8": "0",
    "  3   5/8  ": "3 5/8", "3\u00a05/8": "3 5/8", "007": "7", "0.1 + 0.2": "3/10", "1/3": "1/3",
}  # fmt: skip


@pytest.mark.parametrize(("typed", "inches"), LENGTHS.items())
def test_lengths(typed: str, inches: str) -> None:
    """Every way of writing a length gives the same exact inches."""
    assert exactly(inches) == length(typed)


DRESSED = {
    "3 5\u20448": "3 5/8", "3 5\u22158": "3 5/8", "5/8\u2033": "5/8", "5/8\u201d": "5/8", "5/8\u201c": "5/8", "5/8''": "5/8", "6\u2032 6\u2033": "78",
    "6\u2019 6\u201d": "78", "6\u20186": "78", "3 \u2212 1": "2", "3 \u2013 1": "2", "3 \u2014 1": "2", "2 \u00d7 3": "6", "2\u00b73": "6",
    "6 \u00f7 2": "3", "3\u20135/8": "3 5/8", "6\u2032\u20116\u2033": "78", "2 \u2217 4": "8", "3 5/8\u200b": "3 5/8", "\ufeff3": "3",
    "\uff13 \uff15\uff0f\uff18": "3 5/8", "\uff13\u3000\uff15/\uff18": "3 5/8", "\uff13\uff0e\uff15": "3 1/2",
}  # fmt: skip


@pytest.mark.parametrize(("typed", "inches"), DRESSED.items())
def test_typographic_marks(typed: str, inches: str) -> None:
    """Marks as a phone's keyboard or a typesetter puts them are read like the plain ones."""
    assert exactly(inches) == length(typed)


@pytest.mark.parametrize(
    ("typed", "inches"), {"25.4": "1", "92.1": "921/254", '1"': "1", "1 in": "1", "10 + 15.4": "1", "1 in + 25.4": "2", "2.54 cm": "1"}.items()
)
def test_bare_numbers_in_a_metric_shop(typed: str, inches: str) -> None:
    """In a metric shop a bare number is millimetres, and a number with a unit is what it says."""
    assert exactly(inches) == length(typed, metric=True)


def test_a_fraction_behind_a_dash_with_spaces_is_taken_away() -> None:
    """`3 - 5/8` is a subtraction, `3-5/8` a mixed number."""
    assert (Fraction(19, 8), Fraction(29, 8)) == (length("3 - 5/8"), length("3-5/8"))


@pytest.mark.parametrize("typed", ["3-8/5", "2-9/8", "1-8/8", "3\u20138/5", "10 in + 2-9/8"])
def test_a_dash_that_joins_no_fraction_below_one_is_asked_about(typed: str) -> None:
    """`3-8/5` is a slip of `3-5/8`, and taking it for a difference would say nothing of it."""
    assert "The fraction after a whole number must be less than one: to subtract it, put spaces around the dash." == tape_sum(typed)


def test_a_fraction_above_one_is_taken_away_with_spaces() -> None:
    """Who means a difference can say so; and a dash behind a mixed number joins nothing."""
    assert (Fraction(7, 8), Fraction(7, 8), Fraction(17, 8)) == (length("2 - 9/8"), length("2 -9/8"), length("3 1/4-9/8"))


NO_LENGTH = {
    "": "Type a length, such as 3 5/8 in or 92 mm.",
    "   ": "Type a length, such as 3 5/8 in or 92 mm.",
    "abc": "I do not know \u201cabc\u201d: use in, ft, mm, cm or m.",
    "3 yards": "I do not know \u201cyards\u201d: use in, ft, mm, cm or m.",
    "1 3/8 full": "\u201cfull\u201d says no amount: leave it out, or type the decimal.",
    "3/8 Scant": "\u201cScant\u201d says no amount: leave it out, or type the decimal.",
    "1e3": "I do not know \u201ce\u201d: use in, ft, mm, cm or m.",
    "3,5": "Write decimals with a point, not a comma.",
    "3 $": "I cannot read \u201c$\u201d in a measurement.",
    "\U0001f4cf": "I cannot read \u201c\U0001f4cf\u201d in a measurement.",
    "<b>": "I cannot read \u201c<\u201d in a measurement.",
    "2^9": "I cannot read \u201c^\u201d in a measurement.",
    "9**9**9": "\u201c*\u201d cannot stand there.",
    "1..2": "A number has only one decimal point.",
    ".": "A point needs a digit beside it.",
    "1234567890": "That number has too many digits.",
    "1" * 80: "That number has too many digits.",
    "1" * 81: "That is too long: an entry has at most 80 characters.",
    "1/0": "A fraction cannot be over zero.",
    "3 1/0": "A fraction cannot be over zero.",
    "1 / 0": "That divides by zero.",
    "1 / (1 - 1)": "That divides by zero.",
    "3 9/8": "The fraction after a whole number must be less than one.",
    "34 x 76": "That is longer than 100 feet: an x here means times.",
    "3 5": "Two numbers stand side by side: put + or - between them, or finish the fraction, such as 1 3/8.",
    "3 +": "Something is missing after \u201c+\u201d.",
    "1 3/8/": "Something is missing after \u201c/\u201d.",
    "1 3/": "Something is missing after \u201c/\u201d.",
    "\u00f73": "\u201c\u00f7\u201d cannot stand there.",
    "x": "\u201cx\u201d cannot stand there.",
    "(3": "A bracket is opened and not closed.",
    "3)": "\u201c)\u201d cannot stand there.",
    "in": "The unit \u201cin\u201d has no number before it.",
    "1 in in": "That already has a unit.",
    '1" mm': "That already has a unit.",
    "0x10": "0x begins no measurement: put spaces around an x that multiplies.",
    "3\u200b5/8": "A character in there cannot be seen: type it anew.",
    "5:12": "\u201c:\u201d cannot stand there.",
    "10%": "\u201c%\u201d cannot stand there.",
    "10\u00b0": "This is a length: degrees do not belong in it.",
    "(3 in) in": "That already has a unit.",
    "6' 6 mm": "After feet come inches.",
    "6' 66\"": "After feet, inches are less than 12: type inches alone, or a sum.",
    "6 ft 12": "After feet, inches are less than 12: type inches alone, or a sum.",
    "-1": "A length cannot be negative.",
    "1 - 2": "That subtraction goes below zero.",
    "1200.01": "That is longer than 100 feet.",
    "101 ft": "That is longer than 100 feet.",
    "1000000 ft": "A number in there is too large.",
    "1001 * 1000": "A number in there is too large.",
    "2 in * 3 in": "A length times a length is an area.",
    "3 / 2 in": "A plain number cannot be divided by a length.",
    "6 in / 2 in": "A length divided by a length is a plain number, not a length.",
    "6 in / 2 in + 1 in": "A length and a plain number cannot be added.",
}


@pytest.mark.parametrize(("typed", "message"), NO_LENGTH.items())
def test_refused_lengths(typed: str, message: str) -> None:
    """What is no length is refused with the character or the rule that it breaks."""
    assert message == length(typed)


def test_eighty_characters_may_be_typed() -> None:
    """The longest entry that is read has eighty characters."""
    assert Fraction(3) == length("3" + " " * 79)


def test_a_tape_sum_may_pass_below_zero() -> None:
    """In tape arithmetic only the result counts."""
    assert (Fraction(5, 8), "That comes to less than nothing.") == (tape_sum("1/8 - 1 + 1 1/2"), tape_sum("1 - 2"))


ANGLES = {"10": "10", "10\u00b0": "10", "10\u02da": "10",
          "1/2\u00b0": "1/2", "5/12 deg": "5/12", "1 + 1/2": "3/2", "1-1/2": "3/2", "5 1/2 deg / 12": "11/24",
          "\u00bd\u00b0": "1/2", "0.42": "0.42", "1 1/2": "1 1/2",
          "10 deg": "10", "10 degrees": "10", "22 1/2": "22 1/2", "22.5\u00ba": "22 1/2",
          "90 - 22.5": "67 1/2", "90/4": "22 1/2",
          "12 in 12": "45", "1:1": "45", "100%": "45", "0:12": "0", "(90 - 30)/2": "30", "0": "0"}  # fmt: skip


@pytest.mark.parametrize(("typed", "degrees"), ANGLES.items())
def test_angles(typed: str, degrees: str) -> None:
    """Degrees in every dress, and slopes of a right angle's half, are exact."""
    assert exactly(degrees) == angle(typed)


# Arctangents to twelve places, by series.
SLOPES = {
    "5 in 12": 22.619864948040,
    "5:12": 22.619864948040,
    '5" 12': 22.619864948040,
    '5" in 12': 22.619864948040,
    '5" in 12"': 22.619864948040,
    '5" : 12"': 22.619864948040,
    "\uff15\uff1a\uff11\uff12": 22.619864948040,
    "1:6": 9.462322208026,
    "10%": 5.710593137500,
    "7 in 12": 30.256437163529,
}


@pytest.mark.parametrize(("typed", "degrees"), SLOPES.items())
def test_slopes(typed: str, degrees: float) -> None:
    """A slope is the angle whose tangent is rise over run."""
    assert close(degrees, angle(typed))


NO_ANGLE = {
    "": "Type an angle, such as 10 or 5 in 12.",
    "-10": "An angle cannot be negative.",
    "5 in 0": "The run of a slope cannot be zero.",
    "5:0": "The run of a slope cannot be zero.",
    "5:12\u00b0": "A slope has no degrees in it: write 5 in 12, or 22.6.",
    "10\u00b0 5": "Nothing can follow the degrees.",
    "10 mm": "An angle is in degrees, or a slope such as 5 in 12.",
    "5 in": "Something is missing at the end.",
    "1 in in": "Something is missing at the end.",
    "5 in in in 12": "That already has a unit.",
    "10% 3": "Two numbers stand side by side: put + or - between them, or finish the fraction, such as 1 3/8.",
    "5:12:3": "\u201c:\u201d cannot stand there.",
    "1/0": "A fraction cannot be over zero.",
}


@pytest.mark.parametrize(("typed", "message"), NO_ANGLE.items())
def test_refused_angles(typed: str, message: str) -> None:
    """What is no angle is refused with the rule that it breaks."""
    assert message == angle(typed)


@pytest.mark.parametrize(
    ("typed", "message"),
    {
        "5/12": "Write 5 in 12 for a slope, or 5/12 deg for degrees.",
        "5 / 12": "Write 5 in 12 for a slope, or 5/12 deg for degrees.",
        "5.5/12": "Write 5.5 in 12 for a slope, or 5.5/12 deg for degrees.",
        "5 1/2/12": "Write 5 1/2 in 12 for a slope, or 5 1/2/12 deg for degrees.",
        "5\u00bd / 12": "Write 5\u00bd in 12 for a slope, or 5\u00bd/12 deg for degrees.",
        "4-1/2/12": "Write 4-1/2 in 12 for a slope, or 4-1/2/12 deg for degrees.",
        "(5)/12": "Write (5) in 12 for a slope, or (5)/12 deg for degrees.",
        "(5/12)": "Write 5 in 12 for a slope, or 5/12 deg for degrees.",
        "((5 1/2/12))": "Write 5 1/2 in 12 for a slope, or 5 1/2/12 deg for degrees.",
        "(\u00bd)": "Write 1 in 2 for a slope, or 1/2 deg for degrees.",
        "18/12": "Write 18 in 12 for a slope, or 18/12 deg for degrees.",
        "\u00bd": "Write 1 in 2 for a slope, or 1/2 deg for degrees.",
    }.items(),
)
def test_a_fraction_alone_may_be_a_pitch_and_is_asked_about(typed: str, message: str) -> None:
    """A roof of 5/12 leans 22.6 degrees; taken for degrees it would be next to flat, and nothing would say so."""
    assert message == angle(typed)


def test_what_the_question_about_a_fraction_offers_is_read() -> None:
    """Both ways that the message names are taken."""
    assert close(22.619864948040, angle("5 in 12")) and close(5 / 12, angle("5/12 deg"))


def test_a_slope_downward_is_less_than_nothing() -> None:
    """A run that comes out negative gives a negative angle, which the input's limits then refuse."""
    assert close(-angle("5:1"), angle("5:1-2"))


@pytest.mark.parametrize(("typed", "number"), {"4": 4, " 12 ": 12, "0": 0}.items())
def test_counts(typed: str, number: int) -> None:
    """A whole number is read as it stands."""
    assert number == count(typed)


@pytest.mark.parametrize(
    ("typed", "message"),
    {
        "": "Type a whole number, such as 4.",
        "4.5": "Type a whole number, such as 4.",
        "-1": "This cannot be less than zero.",
        "four": "I do not know \u201cfour\u201d. Type a whole number, such as 4.",
        "1/2": "Type one whole number and nothing else.",
        "2 + 2": "Type one whole number and nothing else.",
        "4 in": "Type one whole number and nothing else.",
        "5,5": "Type one whole number and nothing else.",
    }.items(),
)
def test_refused_counts(typed: str, message: str) -> None:
    """A count is one whole number and no sum."""
    assert message == count(typed)


@pytest.mark.parametrize("typed", ["70", "70 F", "70\u00b0F", "70 \u02daF", "70\u00ba", "\uff17\uff10", "70\u00a0F", "\u00a070 F\u200b", "70 f"])
def test_temperatures_in_every_dress(typed: str) -> None:
    """A mark for degrees and a space of any kind say nothing."""
    assert {"ok": True, "value": 70} == read_temperature(typed, INCH_SHOP, UNITS, NUMBERS)


@pytest.mark.parametrize("typed", ["-5", "\u22125", "\u20135", "\u00a0-5", "- 5"])
def test_temperatures_below_zero(typed: str) -> None:
    """Any dash before a temperature is a minus."""
    assert {"ok": True, "value": -5} == read_temperature(typed, INCH_SHOP, UNITS, NUMBERS)


def test_a_unit_behind_a_percentage_is_named() -> None:
    """There is a number before it, and the message says nothing else."""
    assert {"ok": False, "message": "\u201cin\u201d cannot stand there."} == read_percent("12 in", UNITS, NUMBERS)
