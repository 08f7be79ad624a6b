"""One angle in all its names, against the framing square's rafter table, a locksmith's bevel and numpy.

Square: the row "length common rafters per foot run" stamped on the square, in inches. The whole row was read in a page that
transcribes it; 6, 7, 13 and 16 were also read in publications: 13 and 16 in U.S. Army subcourse EN0069, 7 in U.S. Navy
14044, 6 in Griffith, *Carpentry*.
"""

from decimal import ROUND_HALF_UP, Decimal

import numpy as np
import pytest

from .asking import ask, results_of, texts_of

COMMON_RAFTER_PER_FOOT = {
    2: "12.17", 3: "12.37", 4: "12.65", 5: "13.00", 6: "13.42", 7: "13.89", 8: "14.42", 9: "15.00", 10: "15.62",
    11: "16.28", 12: "16.97", 13: "17.69", 14: "18.44", 15: "19.21", 16: "20.00", 17: "20.81", 18: "21.63",
}  # fmt: skip

SWEEP = [0.05, 0.5, 1, 7.5, 18.4, 22.5, 30, 44.9, 45, 45.1, 60, 66.6, 75, 89, 89.9]


@pytest.mark.parametrize(("rise", "printed"), COMMON_RAFTER_PER_FOOT.items())
def test_a_rise_in_12_gives_the_length_on_the_framing_square(rise, printed):
    """The rafter over a run of 12 in is 12 over the cosine of the card's degrees, to the hundredth that is stamped."""
    degrees = results_of("angle", angle=f"{rise} in 12")["degrees"]
    length = Decimal(12 / np.cos(np.radians(degrees))).quantize(Decimal(".01"), ROUND_HALF_UP)

    assert length == Decimal(printed)


@pytest.mark.parametrize("rise", COMMON_RAFTER_PER_FOOT)
def test_a_rise_in_12_comes_back_as_it_was_typed(rise):
    """The slopes of the same table in the square's own terms: rise in 12, run for a rise of 1, percent (recomputed)."""
    values = results_of("angle", angle=f"{rise} in 12", base=12)

    assert values["rise_in_12"] == pytest.approx(rise, abs=1e-12)
    assert values["gauge_rise"] == pytest.approx(rise, abs=1e-12)
    assert values["ratio"] == pytest.approx(12 / rise, abs=1e-12)
    assert values["percent"] == pytest.approx(rise / 12 * 100, abs=1e-12)


def test_the_navys_rafter_measures_nine_feet_three_and_an_eighth():
    """U.S. Navy 14044, read in the publication: 7 in 12 over a run of 8 ft is 8 x 13.89 = 111.12, framed as 9 ft 3 1/8 in."""
    exact = 8 * 12 / np.cos(np.radians(results_of("angle", angle="7 in 12")["degrees"]))

    assert texts_of("fractions", entry="8 * 13.89", nearest=16)["length"] == "111 1/8 scant"
    assert texts_of("fractions", entry=f"{exact:.4f}", nearest=16)["length"] == "111 1/8 full"
    assert results_of("fractions", entry="9 ft 3 1/8 in")["length"] == 111.125


@pytest.mark.parametrize(
    ("slope", "degrees"),
    [
        ("1/8 in 2 1/4", 3.180),  # the bevel locks are made to: ICS, Building Trades Pocketbook, read in the publication; degrees recomputed
        ("1/8 in 2", 3.576),  # the usual bevel of a door's leading edge: from memory; degrees recomputed
    ],
)
def test_the_bevel_of_a_door_edge_in_degrees(slope, degrees):
    """A bevel named by its rise and run comes to the angle that the saw is tilted."""
    values = results_of("angle", angle=slope)

    assert round(values["degrees"], 3) == degrees
    assert round(values["saw_tilt"], 3) == degrees


@pytest.mark.parametrize("rise", [0.25, 1, 3.5, 5, 7, 11.9, 12, 12.1, 24, 500])
def test_every_way_to_type_a_slope_is_numpys_arctangent(rise):
    """Rise in 12, rise to run and percent are one slope; numpy says which angle it has."""
    expected = np.degrees(np.arctan(rise / 12))

    for typed in (f"{rise} in 12", f"{rise}:12", f"{rise} : 12"):
        assert results_of("angle", angle=typed)["degrees"] == pytest.approx(expected, abs=1e-12)
    assert results_of("angle", angle=f"{100 * rise / 12:.8f}%")["degrees"] == pytest.approx(expected, abs=1e-8)


@pytest.mark.parametrize("degrees", SWEEP)
@pytest.mark.parametrize("base", [3.5, 12, 100])
def test_degrees_become_the_slopes_numpy_gives(degrees, base):
    """The tangent of the angle as rise over the base, rise in 12, percent, and its inverse as the run for a rise of 1."""
    values = results_of("angle", angle=degrees, base=base)
    slope = np.tan(np.radians(degrees))

    if degrees > 89.5:
        assert "gauge_rise" not in values  # no gauge is drawn within half a degree of upright
        return
    assert values["gauge_rise"] == pytest.approx(base * slope, rel=1e-12)
    assert values["rise_in_12"] == pytest.approx(12 * slope, rel=1e-12)
    assert values["percent"] == pytest.approx(100 * slope, rel=1e-12)
    assert values["ratio"] == pytest.approx(1 / slope, rel=1e-12)


@pytest.mark.parametrize("degrees", SWEEP)
def test_the_saw_is_set_to_whichever_angle_is_within_its_reach(degrees):
    """Angle and complement fill a right angle, and the tilt is the one of the two that is 45 or less."""
    values = results_of("angle", angle=degrees)

    assert values["degrees"] + values["complement"] == pytest.approx(90, abs=1e-12)
    assert values["saw_tilt"] in (values["degrees"], values["complement"])
    assert values["saw_tilt"] <= 45


@pytest.mark.parametrize("degrees", [10, 22.5, 30, 45, 50, 67.5, 80])
@pytest.mark.parametrize("error", [-1.5, -0.2, 0.3, 2])
def test_a_saw_that_is_off_is_put_right_by_the_correction(degrees, error):
    """A saw that tilts too far by so much cuts a scrap; what that scrap is off square asks for the same tilt back.

    The gauge is set to the scrap from its face to the cut, which stands at the tilt from square. So does the gauge's line on a
    board, and as far up the square line as the base it is the tangent away. The angle as cut is the tilt itself, or past 45
    degrees what the tilt leaves of a right angle.
    """
    base = 12
    tilt = results_of("angle", angle=degrees)["saw_tilt"] + error
    cut = tilt if degrees <= 45 else 90 - tilt
    values = results_of("angle", angle=degrees, base=base, measured_rise=f"{base * np.tan(np.radians(tilt)):.8f}")

    assert values["angle_as_cut"] == pytest.approx(cut, abs=1e-6)
    assert tilt + values["tilt_move"] == pytest.approx(values["saw_tilt"], abs=1e-6)


@pytest.mark.parametrize(("measured_rise", "words"), [("2 3/4", "less"), ("2 1/2", "more")])
def test_the_correction_says_which_way_to_tilt(measured_rise, words):
    """A rise of more than 12 x tan 12.5 = 2.66 (numpy) is too steep a bevel and wants less tilt; one of less wants more."""
    assert (float(results_of("fractions", entry=measured_rise)["length"]) > 12 * np.tan(np.radians(12.5))) == (words == "less")

    (correction,) = ask("angle", angle="12.5", base=12, measured_rise=measured_rise)["trial"]["corrections"]
    assert correction.endswith(f"{words}.")
