"""The centred groove, cut: both passes are taken out of a piece, and what is left is measured.

Source: the construction itself, in exact fractions and on a grid (recomputed). A pass takes away everything from the fence
setting to the fence setting plus the cutter; the second pass does the same from the other face.
"""

from fractions import Fraction
from itertools import product

import numpy as np
import pytest

from .asking import ask, results_of
from .wood import both_ways, cells, cut_out

STOCKS = [Fraction(text) for text in ("1/2", "3/4", "13/16", "1", "11/8", "1.381", "7/4", "7/2")]
GROOVES = [Fraction(text) for text in ("1/8", "5/32", "1/4", "5/16", "0.327", "3/8", "1/2", "5/8", "3/4", "1.25")]
CUTTERS = [Fraction(text) for text in ("3/32", "1/8", "0.126", "1/4", "3/8")]
MAKEABLE = [(stock, groove, cutter) for stock, groove, cutter in product(STOCKS, GROOVES, CUTTERS) if cutter <= groove < stock]


def line_left(stock, fence, cutter):
    """Cut both passes, and give the wood that is left along the thickness of the piece."""
    return both_ways([(Fraction(0), stock)], stock, fence, fence + cutter)


def groove_in(left):
    """Measure the groove: from the inside of the first cheek to the inside of the last."""
    return left[-1][0] - left[0][1]


def lengths(*texts):
    """Read texts as fractions of an inch."""
    return [Fraction(text) for text in texts]


def test_the_worked_example_of_the_groove():
    """Stock 1 3/8, groove 5/16: the fence stands at 17/32 (worked out from the construction, and cut here)."""
    stock, groove, cutter = lengths("11/8", "5/16", "1/4")
    left = line_left(stock, Fraction(17, 32), cutter)

    assert groove_in(left) == groove
    assert results_of("groove", stock="1 3/8", groove_width="5/16", cutter="1/4")["fence"] == 17 / 32


@pytest.mark.parametrize(("stock", "groove", "cutter"), MAKEABLE)
def test_the_fence_setting_cuts_the_groove_wanted_in_the_middle(stock, groove, cutter):
    """Both passes at the card's fence leave cheeks alike, of the size the card says, the groove wanted, and its rib."""
    values = results_of("groove", stock=stock, groove_width=groove, cutter=cutter)
    left = line_left(stock, (stock - groove) / 2, cutter)
    cheeks = [left[0][1] - left[0][0], left[-1][1] - left[-1][0]]
    rib = sum(high - low for low, high in left[1:-1])

    assert groove_in(left) == groove
    assert values["fence"] == pytest.approx(float(left[0][1]), abs=1e-12)
    assert [values["cheek"]] * 2 == pytest.approx([float(cheek) for cheek in cheeks], abs=1e-12)
    assert values["rib"] == pytest.approx(float(rib), abs=1e-12)


@pytest.mark.parametrize(("stock", "groove", "cutter"), MAKEABLE)
def test_one_pass_is_enough_exactly_when_turning_the_piece_cuts_nothing_more(stock, groove, cutter):
    """The card asks for a second pass when, and only when, it takes away wood that the first has left."""
    fence = (stock - groove) / 2
    once = cut_out([(Fraction(0), stock)], fence, fence + cutter)

    assert results_of("groove", stock=stock, groove_width=groove, cutter=cutter)["passes"] == (1 if once == line_left(stock, fence, cutter) else 2)


@pytest.mark.parametrize(("stock", "groove", "cutter"), [each for each in MAKEABLE if 2 * each[2] < each[1] <= Fraction(7, 2) * each[2]])
def test_one_more_fence_position_clears_the_rib_and_leaves_the_cheeks_alone(stock, groove, cutter):
    """With a groove of up to three and a half cutters, both ways at the extra fence position leave two cheeks and nothing between."""
    rib_fence = Fraction(results_of("groove", stock=stock, groove_width=groove, cutter=cutter)["rib_fence"]).limit_denominator(10**6)
    left = both_ways(line_left(stock, (stock - groove) / 2, cutter), stock, rib_fence, rib_fence + cutter)

    assert len(left) == 2
    assert groove_in(left) == groove


@pytest.mark.parametrize(("stock", "groove", "cutter"), [each for each in MAKEABLE if 2 * each[2] < each[1]])
def test_the_extra_passes_run_over_the_first_ones_and_over_each_other(stock, groove, cutter):
    """An eighth of the cutter at least, or a fin as thin as the fence is off would stand; a wider rib is cut at once as far as that allows."""
    rib_fence = Fraction(results_of("groove", stock=stock, groove_width=groove, cutter=cutter)["rib_fence"]).limit_denominator(10**6)
    over_the_first = (stock - groove) / 2 + cutter - rib_fence
    over_each_other = (rib_fence + cutter) - (stock - rib_fence - cutter)

    assert over_the_first >= cutter / 8
    assert over_each_other >= cutter / 4 or groove > Fraction(7, 2) * cutter


@pytest.mark.parametrize(("stock", "groove", "cutter"), [each for each in MAKEABLE if each[1] <= 2 * each[2]])
def test_no_extra_fence_position_where_there_is_no_rib(stock, groove, cutter):
    """Two passes that meet leave nothing to clear, and the card offers no position for it."""
    assert len(line_left(stock, (stock - groove) / 2, cutter)) == 2
    assert "rib_fence" not in results_of("groove", stock=stock, groove_width=groove, cutter=cutter)


@pytest.mark.parametrize(
    ("groove", "depth", "cutter"), [lengths("5/16", "1/2", "1/4"), lengths("3/8", "19/32", "3/16"), lengths("1/4", "1/4", "1/4")]
)
def test_the_cutter_height_gives_the_depth_wanted(groove, depth, cutter):
    """On a grid of the end grain, a cutter raised as the card says empties the groove to its depth and no further."""
    stock = Fraction(11, 8)
    values = results_of("groove", stock=stock, groove_width=groove, groove_depth=depth, cutter=cutter)
    wood = np.ones((cells(Fraction(2)), cells(stock)), dtype=bool)
    near, wide, high = (cells(Fraction(length)) for length in (values["fence"], cutter, values["blade_height"]))
    for _ in range(2):
        wood[:high, near : near + wide] = False
        wood = wood[:, ::-1]  # turned end for end
    hollow = np.argwhere(~wood)

    assert hollow[:, 0].max() + 1 == cells(depth)
    assert hollow[:, 1].max() + 1 - hollow[:, 1].min() == cells(groove)
    assert len(hollow) == cells(depth) * cells(groove)


@pytest.mark.parametrize("error", lengths("-1/16", "-1/50", "-0.003", "0.002", "1/64", "1/20"))
@pytest.mark.parametrize(
    ("stock", "groove", "cutter"), [lengths("11/8", "3/8", "1/4"), lengths("3/4", "1/4", "1/8"), lengths("1.381", "0.327", "1/8")]
)
def test_a_fence_that_is_off_is_put_right_by_the_correction(stock, groove, cutter, error):
    """A fence that stands off cuts a scrap; moved by what the card says to that scrap, it cuts the groove that was wanted."""
    stands = (stock - groove) / 2 + error
    scrap = line_left(stock, stands, cutter)
    values = results_of("groove", stock=stock, groove_width=groove, cutter=cutter, measured_groove=groove_in(scrap))
    moved = stands + Fraction(values["fence_move"]).limit_denominator(10**6)

    assert values["cheek_as_cut"] == pytest.approx(float(scrap[0][1]), abs=1e-12)
    assert groove_in(line_left(stock, moved, cutter)) == groove


@pytest.mark.parametrize(("error", "words"), [("-1/64", "away from the cutter"), ("1/64", "toward the cutter")])
def test_the_correction_says_which_way_to_move_the_fence(error, words):
    """A fence too near the cutter leaves a groove too wide and must go away from it; one too far off must come closer."""
    stock, groove, cutter = lengths("11/8", "3/8", "1/4")
    measured = groove_in(line_left(stock, (stock - groove) / 2 + Fraction(error), cutter))

    (correction,) = ask("groove", stock=stock, groove_width=groove, cutter=cutter, measured_groove=measured)["trial"]["corrections"]
    assert correction.endswith(f" {words}.")
