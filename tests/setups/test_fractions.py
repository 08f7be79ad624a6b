"""Tape arithmetic."""

import pytest

from shopcalc import exact

from ..helpers import close, raised, value, worked

SUMS = {
    "(31 1/4 - 3/8) / 2": "15 7/16",
    "31 1/4 / 3": "10 27/64 scant",
    "2 * 4 5/8": "9 1/4",
    "1/8 - 1 + 1 1/2": "5/8",
    "6' 6-1/2\" + 1/16": "78 9/16",
    "92.1 mm": "3 5/8 full",
    "1/3": "21/64 full",
    "0": "0",
}


@pytest.mark.parametrize(("entry", "text"), SUMS.items())
def test_the_answer_is_read_on_the_tape(entry: str, text: str) -> None:
    """A sum of measurements is read to the nearest 64th, full or scant."""
    assert text == worked("fractions", entry=entry)["results"]["length"]["text"]


@pytest.mark.parametrize(
    ("nearest", "text"), {"8": "1/4 full", "16": "5/16 scant", "32": "5/16 scant", "64": "19/64 full", "128": "19/64 full"}.items()
)
def test_the_reader_chooses_the_tape(nearest: str, text: str) -> None:
    """Three tenths of an inch is read on any tape."""
    assert text == worked("fractions", entry="0.3", nearest=nearest)["results"]["length"]["text"]


def test_neighbouring_marks() -> None:
    """The marks below and above stand a tick apart with the number between them."""
    data = worked("fractions", entry="0.3", nearest="16")

    assert (0.25, 0.3125) == (value(data, "below"), value(data, "above"))


def test_neighbouring_marks_in_a_metric_shop() -> None:
    """A metric tape is marked in millimetres, whatever inch tape is chosen, in step and data alike."""
    data = worked("fractions", entry="10.4", nearest="16", units="mm")

    assert ["Hook the tape, find 10.0 mm and 11.0 mm; the true place is between them."] == data["steps"]
    assert [("10.0 mm", 10.0), ("11.0 mm", 11.0)] == [
        (data["results"][name]["text"], float(data["results"][name]["mm"])) for name in ("below", "above")
    ]


@pytest.mark.parametrize("entry", ["5/8", "0.1 + 0.2 + 0.2", "12.7 mm", "(0.6 / 0.2)"])
def test_on_a_mark_the_neighbours_are_the_marks_beside_it(entry: str) -> None:
    """A number on a mark has a neighbour a tick to each side, also where doubles lie beside the mark."""
    data = worked("fractions", entry=entry)

    assert value(data, "length") - value(data, "below") == value(data, "above") - value(data, "length") == 1 / 64
    assert {"on_the_mark"} == raised(data)


def test_off_the_mark_nothing_is_noted() -> None:
    """A number between two marks has no note."""
    assert set() == raised(worked("fractions", entry="0.3"))


def test_steps_say_between_what_or_on_what() -> None:
    """Between two marks both are named, on a mark the one."""
    assert ["Hook the tape, find 19/64 in and 5/16 in; the true place is between them."] == worked("fractions", entry="0.3")["steps"]
    assert ["Hook the tape and mark 5/8 in."] == worked("fractions", entry="5/8")["steps"]


def test_a_sum_below_nothing_is_refused() -> None:
    """A sum may pass below zero on the way but not end there."""
    assert {"errors": {"entry": "That comes to less than nothing."}} == exact.answer("/fractions.json", {"entry": "1 - 2"})["data"]


def test_decimals_and_millimetres() -> None:
    """The answer has its decimals and millimetres."""
    result = worked("fractions", entry="3 5/8")["results"]["length"]

    assert close(3.625, result["decimal"])
    assert close(92.1, result["mm"])


def test_nothing_is_below_nothing() -> None:
    """The end of the tape has a mark above it only."""
    data = worked("fractions", entry="0")

    assert (False, 1 / 64) == ("below" in data["results"], value(data, "above"))


def test_a_metric_working_shows_how_many_marks_an_inch_has() -> None:
    """Whole millimetres are 25.4 to the inch, and not 25."""
    [sheet] = exact.answer("/fractions", {"entry": "392.1", "units": "mm"})["view"]["sheets"]
    [below] = [row["numbers"] for row in sheet["working"] if row["name"] == "below"]

    assert "(392.1 mm \N{MULTIPLICATION SIGN} 25.4)" in below
