"""A stretch of tape, drawn."""

from fractions import Fraction
from typing import Any

import pytest

from shopcalc.portable.cards.tape import INCH_WIDE, LONGEST_RUN, TICK_TALL, WIDTH, draw_run, draw_tape, hundredths, metric_tall, numeral

from ...helpers import UNITS


def test_a_value_rounded_one_way_is_named_by_that_mark() -> None:
    """What must not be too large stands by the mark below, and says so; a clearance by the mark above."""
    below, above = (draw_tape(Fraction(35, 64), 32, direction, False, UNITS) for direction in ("down", "up"))

    assert ("the mark below, ", "17/32") == (below["which"], below["used"])
    assert ("the mark above, ", "9/16") == (above["which"], above["used"])


def test_the_nearest_mark_is_named() -> None:
    """17/32 on a tape of sixteenths has the nearest mark 9/16, and lies between two."""
    tape = draw_tape(Fraction(17, 32), 16, "nearest", False, UNITS)

    assert ("9/16", True) == (tape["used"], tape["between"])


def test_a_number_on_a_mark_is_not_between() -> None:
    """17/32 on a tape of thirty-seconds is on its mark."""
    tape = draw_tape(Fraction(17, 32), 32, "nearest", False, UNITS)

    assert ("17/32", False) == (tape["used"], tape["between"])


def test_the_pointer_stands_at_the_number() -> None:
    """Near the tape's end the stretch starts at zero, and the pointer stands as far in as the number says."""
    tape = draw_tape(Fraction(1, 2), 32, "nearest", False, UNITS)

    assert str(INCH_WIDE["32"] // 2) == tape["mark"]


def test_further_along_the_pointer_stands_in_the_middle() -> None:
    """Away from the end the number stands in the middle of the stretch, to a tick."""
    tape = draw_tape(Fraction(40), 32, "nearest", False, UNITS)

    assert abs(float(tape["mark"]) - WIDTH / 2) <= INCH_WIDE["32"] / 32


@pytest.mark.parametrize(("inches", "numerals"), [("1/2", ["1"]), ("40", ["40"]), ("39.5", ["39", "40"])])
def test_whole_inches_are_numbered(inches: str, numerals: list[str]) -> None:
    """The whole inches in the stretch have their numerals, all but zero."""
    assert numerals == [each["text"] for each in draw_tape(Fraction(inches), 32, "nearest", False, UNITS)["numerals"]]


@pytest.mark.parametrize("division", [8, 16, 32, 64, 128])
def test_every_tick_of_the_stretch_is_drawn(division: int) -> None:
    """A stretch has as many ticks as fit its width, and one."""
    ticks = draw_tape(Fraction(40), division, "nearest", False, UNITS)["ticks"]

    assert WIDTH * division // INCH_WIDE[str(division)] + 1 == ticks.count("M")


def test_halves_are_longer_than_quarters() -> None:
    """The coarser a tick, the longer."""
    tall = [TICK_TALL[each] for each in ("1", "2", "4", "8", "16", "32", "64", "128")]

    assert tall == sorted(tall, reverse=True)
    assert "M0 0v46M6.5 0v14M13 0v18" == draw_tape(Fraction(1, 2), 32, "nearest", False, UNITS)["ticks"][:24]


def test_a_metric_tape_counts_millimetres() -> None:
    """In a metric shop the tape shows centimetres of ten ticks each, numbered in millimetres."""
    tape = draw_tape(Fraction(1), 32, "nearest", True, UNITS)

    assert ("25 mm", True, ["10", "20", "30", "40", "50"]) == (tape["used"], tape["between"], [each["text"] for each in tape["numerals"]])


@pytest.mark.parametrize(("tick", "tall"), [(10, 46), (5, 29), (15, 29), (3, 16), (0, 46)])
def test_metric_ticks(tick: int, tall: int) -> None:
    """Centimetres are longest, then fives."""
    assert tall == metric_tall(tick)


@pytest.mark.parametrize(("n", "text"), [(0, "0"), (100, "1"), (150, "1.5"), (105, "1.05"), (1234, "12.34"), (7, "0.07")])
def test_hundredths(n: int, text: str) -> None:
    """A count of hundredths is written without needless zeros."""
    assert text == hundredths(n)


def test_a_row_of_marks_is_pinned_on_one_long_tape() -> None:
    """The marks of a row stand where the tape says, numbered, from the inch before the first to the inch after the last."""
    (run,) = draw_run([Fraction(5, 2), Fraction(4)], 32, False, UNITS)
    inch = INCH_WIDE["32"]

    assert [{"x": str(inch * 3 // 2), "text": "1"}, {"x": str(inch * 3), "text": "2"}] == run["pins"]
    assert (["2", "3", "4"], str(inch * 4)) == ([each["text"] for each in run["numerals"]], run["wide"])
    assert run["ticks"].count("M") == 32


def test_a_metric_run_is_numbered_in_millimetres() -> None:
    """On a metric tape a mark at 50.8 mm stands behind the numeral 50."""
    (run,) = draw_run([Fraction(2)], 32, True, UNITS)

    assert (["50", "60"], "73.44") == ([each["text"] for each in run["numerals"]], run["pins"][0]["x"])


@pytest.mark.parametrize("row", [[], [Fraction(0), Fraction(LONGEST_RUN)], [Fraction(-1), Fraction(3)]])
def test_what_no_thumb_would_swipe_along_is_not_drawn(row: list[Fraction]) -> None:
    """No marks, marks on twenty feet of tape and more, or a mark before the hook: the list of marks says it all."""
    assert [] == draw_run(row, 32, False, UNITS)


def stood(tape: dict[str, Any]) -> list[tuple[str, bool]]:
    """The numerals of a tape, each with whether it stands behind its tick."""
    return [(each["text"], each["behind"]) for each in tape["numerals"]]


@pytest.mark.parametrize(
    ("inches", "division", "numerals"),
    [
        ("119/4", 32, [("29", True), ("30", False)]),
        ("479/16", 16, [("29", False), ("30", True), ("31", False)]),
        ("957/32", 32, [("30", True)]),
        ("30", 32, [("30", False)]),
        ("111/4", 32, [("27", True), ("28", False)]),
    ],
)
def test_no_numeral_is_cut_or_crossed(inches: str, division: int, numerals: list[tuple[str, bool]]) -> None:
    """A numeral stands before its tick, as on a tape, but behind it at the edge of the drawing and where the mark is."""
    assert numerals == stood(draw_tape(Fraction(inches), division, "nearest", False, UNITS))


@pytest.mark.parametrize(("marks", "behind"), [([], [False]), ([9000], [True]), ([11000], [False]), ([9000, 11000], []), ([10000], [False])])
def test_a_numeral_goes_where_no_mark_is(marks: list[int], behind: list[bool]) -> None:
    """With a mark on both sides of its tick it is left out; a mark on the tick touches it nowhere."""
    assert behind == [each["behind"] for each in numeral(10000, "30", marks, 20800)]


@pytest.mark.parametrize(("millimetres", "numerals"), [("96.9", ["80", "90", "110", "120"]), ("19.7", ["10", "30", "40", "50"])])
def test_no_two_numerals_stand_between_the_same_ticks(millimetres: str, numerals: list[str]) -> None:
    """Where centimetres are numbered there is room for one: the one that the mark goes through is left out."""
    tape = draw_tape(Fraction(millimetres) * 5 / 127, 32, "nearest", True, UNITS)

    assert [(text, False) for text in numerals] == stood(tape)
