"""One angle in every way it is named and set."""

import math

import pytest

from shopcalc.exact import answer

from ..helpers import close, raised, value, worked

EQUAL = {
    "45": {"degrees": 45, "rise_in_12": 12, "ratio": 1, "percent": 100, "complement": 45, "saw_tilt": 45, "gauge_rise": 12},
    "12 in 12": {"degrees": 45, "gauge_rise": 12},
    "5 in 12": {"degrees": 22.619864948040, "rise_in_12": 5, "ratio": 2.4, "percent": 500 / 12, "complement": 67.380135051960, "gauge_rise": 5},
    "1:6": {"rise_in_12": 2, "ratio": 6, "percent": 100 / 6},
    "10%": {"rise_in_12": 1.2, "ratio": 10, "percent": 10},
    "60": {"saw_tilt": 30, "complement": 30, "rise_in_12": 12 * math.sqrt(3)},
    "0": {"degrees": 0, "rise_in_12": 0, "percent": 0, "gauge_rise": 0, "complement": 90, "saw_tilt": 0},
}


@pytest.mark.parametrize("typed", EQUAL)
def test_results(typed: str) -> None:
    """The same angle in degrees, as a rise in 12, a ratio and a percentage."""
    data = worked("angle", angle=typed)

    assert [] == [(name, expected) for name, expected in EQUAL[typed].items() if not close(expected, value(data, name))]


def test_the_gauge_rises_over_its_base() -> None:
    """Over a longer base the gauge rises as much more."""
    assert close(2 * value(worked("angle", base="10"), "gauge_rise"), value(worked("angle", base="20"), "gauge_rise"))


@pytest.mark.parametrize(("check", "past", "on"), [("upright", "89.6", "89.5"), ("level", "0", "0.01"), ("complement_set", "45.1", "45")])
def test_checks(check: str, past: str, on: str) -> None:
    """Each check holds past its limit and not on it."""
    assert (True, False) == (check in raised(worked("angle", angle=past)), check in raised(worked("angle", angle=on)))


@pytest.mark.parametrize(("rise", "expected"), [("14.31", True), ("14.29", False)])
def test_a_trial_that_is_far_off_is_measured_again(rise: str, expected: bool) -> None:
    """A rise of 14.30 on a base of 12 is 50 degrees, five more than the 45 wanted."""
    assert expected == ("tilt_move_far_off" in raised(worked("angle", angle="45", base="12", measured_rise=rise)))


def test_an_upright_angle_has_no_slope() -> None:
    """At a right angle no rise, ratio or percentage is given, but the saw's zero is."""
    data = worked("angle", angle="90")

    assert set() == {"gauge_rise", "rise_in_12", "ratio", "percent"} & set(data["results"])
    assert (90, 0) == (value(data, "degrees"), value(data, "saw_tilt"))


def test_a_level_has_no_ratio() -> None:
    """No run belongs to a rise of 1 where nothing rises."""
    assert "ratio" not in worked("angle", angle="0")["results"]


@pytest.mark.parametrize(
    ("angle", "measured", "move", "word"),
    [("30", "6", 30 - math.degrees(math.atan(6 / 12)), "more"), ("30", "8", 30 - math.degrees(math.atan(8 / 12)), "less"),
     ("60", "7", 30 - math.degrees(math.atan(7 / 12)), "less"), ("45", "12", 0, "leave")],
)  # fmt: skip
def test_the_trial_turns_the_blade(angle: str, measured: str, move: float, word: str) -> None:
    """A cut too near to square wants more tilt; past 45 degrees it is the rest of the right angle that is set and read."""
    data = worked("angle", angle=angle, measured_rise=measured)

    assert close(move, value(data, "tilt_move"))
    assert word in data["trial"]["corrections"][0]


def test_the_angle_as_cut() -> None:
    """Once the scrap is measured the angle is known as cut, past 45 degrees as the rest of the right angle."""
    assert close(45, value(worked("angle", measured_rise="12"), "angle_as_cut"))
    assert close(90 - math.degrees(math.atan(7 / 12)), value(worked("angle", angle="60", measured_rise="7"), "angle_as_cut"))


def test_steps_quote_base_rise_and_tilt() -> None:
    """The gauge is set by base and rise, the saw by its tilt."""
    steps = worked("angle", angle="5 in 12")["steps"]

    assert "measure 12 in along the edge, then 5 in square to it" in steps[0]
    assert steps[1].endswith("a line square to the edge of the board.")
    assert steps[2].startswith("Unplug the saw. Tilt the blade 22.62\u00b0 from square")
    assert worked("angle", angle="60")["steps"][1].endswith("that line and the edge of the board.")
    assert not any("bevel gauge" in step for step in worked("angle", angle="90")["steps"])


@pytest.mark.parametrize(("angle", "on_edge"), [("45", False), ("60", True), ("90", False)])
def test_work_on_its_edge_has_its_cautions(angle: str, on_edge: bool) -> None:
    """Where the rest of the right angle is set the work stands on its edge, which wants a tall fence."""
    cautions = answer("/angle", {"angle": angle}, "sheet")["view"]["sheets"][0]["cautions"]

    assert on_edge is any("wants a tall fence" in each for each in cautions)


@pytest.mark.parametrize("angle", ["20", "45", "70"])
def test_a_perfect_cut_is_right(angle: str) -> None:
    """A scrap at just the saw's tilt stands off square by its tangent over the base, and nothing is to be moved."""
    tilt = value(worked("angle", angle=angle), "saw_tilt")
    data = worked("angle", angle=angle, base="8", measured_rise=f"{8 * math.tan(math.radians(tilt)):.6f}")

    assert "tilt_move_far_off" not in raised(data)
    assert "It is right" in data["trial"]["corrections"][0]
    assert close(float(angle), round(value(data, "angle_as_cut"), 4))


def test_the_trial_measures_from_a_line_square_to_the_edge() -> None:
    """Where the base runs and what is measured at its end are said in the trial."""
    assert "8 in along the square line, measure across to the gauge's" in worked("angle", base="8")["trial"]["text"]


def test_nothing_is_tilted_for_a_square_cut() -> None:
    """At no angle the blade is tried with a square and no gauge is set."""
    assert worked("angle", angle="0")["steps"][0].startswith("Unplug the saw. Blade square to the table")
