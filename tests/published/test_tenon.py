"""The stub tenon, cut: shoulders and cheeks are taken out of a rail, the waste falls off, and what is left is measured.

Source: the construction itself, in exact fractions and on a grid (recomputed).
"""

from fractions import Fraction
from itertools import product

import numpy as np
import pytest

from .asking import ask, results_of
from .wood import both_ways, cells, joined

STOCKS = [Fraction(text) for text in ("3/4", "1", "11/8", "1.381", "7/4")]
GROOVES = [Fraction(text) for text in ("1/4", "5/16", "0.327", "3/8", "1/2")]
FITS = [Fraction(text) for text in ("0", "0.004", "0.006", "1/64")]
ORDERS = list(product(STOCKS, GROOVES, FITS))

# stock, groove, play, depth, room at the bottom, kerf, block: in 64ths that keep every setting a whole number of them
RAILS = [
    [Fraction(text) for text in row]
    for row in (
        ("11/8", "5/16", "0", "1/2", "1/32", "1/8", "1"),
        ("11/8", "3/8", "1/32", "1/2", "0", "3/32", "1"),
        ("3/4", "1/4", "0", "3/8", "1/32", "1/8", "3/4"),
        ("7/4", "1/2", "1/32", "3/4", "1/16", "1/16", "5/4"),
    )
]
# a blade 1/64 too low spoils nothing: the kerf of the other cut already passes there
SPOILING = [("shoulder_height", "1/64"), ("cheek_height", "1/64"), ("fence_to_blade", "1/64"), ("fence_to_blade", "-1/64")]
SPOILING += [("jig_to_blade", "1/64"), ("jig_to_blade", "-1/64")]
NAMES = ("stock", "groove_width", "fit", "groove_depth", "end_play", "kerf", "gauge_block")


def exactly(value):
    """Take a number from the card as the fraction it stands for."""
    return Fraction(value).limit_denominator(10**6)


def tenon_at(stock, height):
    """Cut both shoulders at one blade height, and measure what is left."""
    ((low, high),) = both_ways([(Fraction(0), stock)], stock, Fraction(0), height)
    return high - low


def rail_after(values, entries):
    """Make all four cuts in the end of a rail on a grid, thickness down and length to the right, and let the waste fall off."""
    stock, kerf, block = (cells(entries[name]) for name in ("stock", "kerf", "gauge_block"))
    fence, shoulder, cheek, jig = (cells(exactly(values[name])) for name in ("fence_to_blade", "shoulder_height", "cheek_height", "jig_to_blade"))
    wood = np.ones((stock, 200), dtype=bool)
    near = fence - block  # the rail ends at the block, so much nearer to the blade than the fence
    for _ in range(2):
        wood[:shoulder, near : near + kerf] = False
        wood[jig : jig + kerf, :cheek] = False
        wood = wood[::-1]  # the other face
    return joined(wood, stock // 2, 199)


def test_the_worked_example_of_the_tenon():
    """Stock 1 3/8, groove 5/16, no play: the blade stands at 17/32 for the shoulder (worked out from the construction)."""
    assert tenon_at(Fraction(11, 8), Fraction(17, 32)) == Fraction(5, 16)
    assert results_of("tenon", stock="1 3/8", groove_width="5/16", fit="0")["shoulder_height"] == 17 / 32


@pytest.mark.parametrize(("stock", "groove", "fit"), ORDERS)
def test_the_shoulder_height_leaves_a_tenon_with_the_play_wanted(stock, groove, fit):
    """Two shoulders at the card's height leave the card's tenon, and the groove is wider by just the play."""
    values = results_of("tenon", stock=stock, groove_width=groove, fit=fit)
    left = tenon_at(stock, exactly(values["shoulder_height"]))

    assert groove - left == fit
    assert values["tenon_thickness"] == pytest.approx(float(left), abs=1e-12)


@pytest.mark.parametrize(("stock", "groove", "fit"), ORDERS)
def test_the_jig_setting_leaves_the_same_tenon(stock, groove, fit):
    """Two cheeks cut at the card's jig setting, waste outside, leave between them what the shoulders leave."""
    values = results_of("tenon", stock=stock, groove_width=groove, fit=fit)
    jig = exactly(values["jig_to_blade"])
    left = both_ways([(Fraction(0), stock)], stock, jig, jig + stock)  # kerf and waste gone

    assert left == [(stock - jig, jig)]
    assert jig - (stock - jig) == groove - fit


@pytest.mark.parametrize("rail", RAILS)
def test_the_four_cuts_free_a_tenon_of_the_thickness_and_length_wanted(rail):
    """With all four cuts made the waste falls off, and the tenon that stays is as thick and as long as the groove asks."""
    entries = dict(zip(NAMES, rail, strict=True))
    values = results_of("tenon", **entries)
    settings = {name: values[name] for name in ("shoulder_height", "fence_to_blade", "cheek_height", "jig_to_blade")}
    end = rail_after(settings, entries)
    length = cells(entries["groove_depth"] - entries["end_play"])
    thickness = cells(entries["groove_width"] - entries["fit"])
    body = cells(entries["stock"])

    assert list(end.sum(axis=0)) == [thickness] * length + [body] * (200 - length)
    assert values["tenon_length"] * 64 == length


@pytest.mark.parametrize("rail", RAILS)
@pytest.mark.parametrize(("setting", "off"), SPOILING)
def test_a_setting_that_is_off_spoils_the_tenon_on_the_grid(rail, setting, off):
    """The grid can tell a good cut from a bad one: a setting moved by 1/64 changes what is left."""
    entries = dict(zip(NAMES, rail, strict=True))
    values = results_of("tenon", **entries)
    wrong = {**values, setting: exactly(values[setting]) + Fraction(off)}

    assert (rail_after(wrong, entries) != rail_after(values, entries)).any()


@pytest.mark.parametrize("error", [Fraction(text) for text in ("-1/32", "-0.011", "-0.002", "0.001", "1/100", "1/40")])
@pytest.mark.parametrize(("stock", "groove", "fit"), [ORDERS[0], ORDERS[42]])
def test_a_blade_that_is_off_is_put_right_by_the_correction(stock, groove, fit, error):
    """A blade that stands off cuts a trial; raised or lowered by what the card says to it, it leaves the tenon wanted."""
    stands = (stock - (groove - fit)) / 2 + error
    trial = tenon_at(stock, stands)
    values = results_of("tenon", stock=stock, groove_width=groove, fit=fit, measured_tenon=trial)

    assert values["shoulder_as_cut"] == pytest.approx(float(stands), abs=1e-12)
    assert tenon_at(stock, stands + exactly(values["blade_move"])) == groove - fit


@pytest.mark.parametrize("error", [Fraction(text) for text in ("-1/32", "-0.011", "0.001", "1/40")])
@pytest.mark.parametrize(("stock", "groove", "fit"), [ORDERS[0], ORDERS[42]])
def test_a_jig_that_is_off_is_put_right_by_the_correction(stock, groove, fit, error):
    """A jig that stands off cuts the cheeks of a trial; moved by what the card says to it, it leaves the tenon wanted."""
    stands = (stock + groove - fit) / 2 + error
    trial = 2 * stands - stock  # both cheeks stand `stands` from the face that was against the jig
    values = results_of("tenon", stock=stock, groove_width=groove, fit=fit, measured_cheeks=trial)

    # too thick is positive, and brings the jig toward the blade
    assert 2 * (stands - exactly(values["jig_move"])) - stock == groove - fit


def test_a_trial_tenon_of_0_330_raises_the_blade_by_half_of_what_it_is_over():
    """A trial of 0.330 in for a groove of 5/16 and no play is 0.0175 too thick, and the blade rises 0.00875 (recomputed)."""
    card = ask("tenon", stock="1 3/8", groove_width="5/16", fit="0", measured_tenon="0.330")

    assert card["results"]["blade_move"]["value"] == pytest.approx(0.00875, abs=1e-12)
    assert card["trial"]["corrections"] == ["Too thick: raise the blade 0.009 in (1/128 full)."]
    assert tenon_at(Fraction(11, 8), (Fraction(11, 8) - Fraction("0.330")) / 2 + Fraction("0.00875")) == Fraction(5, 16)


def test_a_trial_tenon_that_is_too_thin_lowers_the_blade():
    """A blade 1/64 too high leaves the tenon 1/32 too thin, and must come down by that 1/64 (recomputed)."""
    trial = tenon_at(Fraction(11, 8), Fraction(17, 32) + Fraction(1, 64))

    assert ask("tenon", stock="1 3/8", groove_width="5/16", fit="0", measured_tenon=trial)["trial"]["corrections"] == [
        "Too thin: lower the blade 0.016 in (1/64)."
    ]


@pytest.mark.parametrize(("measured", "play"), [("0.300", "0.0125"), ("0.3125", "0"), ("0.330", None)])
def test_the_play_as_cut_is_what_the_groove_has_left_over(measured, play):
    """A trial tenon taken out of the groove leaves the play; one thicker than the groove leaves none to speak of."""
    values = results_of("tenon", stock="1 3/8", groove_width="5/16", measured_tenon=measured)

    assert values.get("play_as_cut") == (None if play is None else pytest.approx(float(play), abs=1e-12))


@pytest.mark.parametrize(("measured", "play"), [("0.300", "0.0125"), ("0.3125", "0"), ("0.330", None)])
def test_the_play_at_the_cheeks_is_what_the_groove_has_left_over(measured, play):
    """What decides is the thickest place of the tenon: the cheeks are measured apart from the shoulders."""
    values = results_of("tenon", stock="1 3/8", groove_width="5/16", measured_tenon="0.300", measured_cheeks=measured)

    assert values.get("cheek_play_as_cut") == (None if play is None else pytest.approx(float(play), abs=1e-12))
