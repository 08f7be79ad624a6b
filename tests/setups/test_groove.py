"""The centred groove."""

from fractions import Fraction

import pytest

from shopcalc.portable.cards.links import shown_onwards

from ..helpers import bench_of, close, exactly, raised, value, worked

RESULTS = {"fence": "17/32", "blade_height": "1/2", "rib": "0", "cheek": "17/32", "passes": "2"}


@pytest.mark.parametrize(("name", "expected"), RESULTS.items())
def test_results(name: str, expected: str) -> None:
    """Stock 1 3/8 with a groove of 5/16: the fence stands 17/32 from the cutter."""
    assert close(exactly(expected), value(worked("groove", groove_width="5/16"), name))


def test_two_passes_are_centred() -> None:
    """Cheek, groove and cheek make up the stock."""
    data = worked("groove", stock="1.37", groove_width="0.29")

    assert close(1.37, 2 * value(data, "cheek") + 0.29)


def test_a_cutter_as_wide_as_the_groove_passes_once() -> None:
    """Equal widths need one pass."""
    assert 1 == value(worked("groove", cutter="3/8"), "passes")


def test_a_narrow_cutter_leaves_a_rib_and_says_how_to_clear_it() -> None:
    """With a cutter under half the groove a rib is left, and a second fence clears it from both sides."""
    data = worked("groove", stock="2", groove_width="3/4", cutter="1/4")

    assert (0.25, 1 - 0.1875) == (value(data, "rib"), value(data, "rib_fence"))
    assert "rib_fence" not in worked("groove")["results"]


def test_the_second_fence_runs_over_what_was_cut() -> None:
    """As far inside the first cut as past the middle; with a rib that is too wide an eighth of the cutter inside it."""
    assert close(1 - 0.5 / 4, value(worked("groove", stock="2", groove_width="1/2", cutter="0.2"), "rib_fence"))
    assert close(0.5 + 0.25 * 7 / 8, value(worked("groove", stock="2", groove_width="1", cutter="1/4"), "rib_fence"))


FIRES = {
    "cutter_too_wide": ({"cutter": "13/32"}, {"cutter": "3/8"}),
    "no_cheeks": ({"groove_width": "1 3/8"}, {"groove_width": "1 11/32"}),
    "thin_cheek": ({"stock": "27/32"}, {"stock": "7/8"}),
    "fence_at_cutter": ({"stock": "39/64"}, {"stock": "5/8"}),
    "narrow_groove": ({"stock": "1 9/16"}, {"stock": "1 1/2"}),
    "wide_groove": ({"stock": "23/32"}, {"stock": "3/4"}),
    "past_the_blade": ({"groove_depth": "2.001"}, {"groove_depth": "2"}),
    "narrow_cutter": ({"cutter": "0.1", "groove_width": "0.36"}, {"cutter": "0.1", "groove_width": "0.35"}),
    "fence_move_far_off": ({"measured_groove": "0.501"}, {"measured_groove": "1/2"}),
    "one_pass_far_off": ({"cutter": "3/8", "measured_groove": "0.438"}, {"cutter": "3/8", "measured_groove": "7/16"}),
}


@pytest.mark.parametrize("check", FIRES)
def test_checks(check: str) -> None:
    """Each check holds just past its limit and not on it."""
    past, on = FIRES[check]

    assert (True, False) == (check in raised(worked("groove", **past)), check in raised(worked("groove", **on)))


def test_a_usual_groove_has_nothing_to_say() -> None:
    """A groove of 3/8 in stock of 1 3/8 raises no check."""
    assert set() == raised(worked("groove"))


@pytest.mark.parametrize(("measured", "move"), [("0.395", 0.01), ("0.355", -0.01), ("3/8", 0)])
def test_the_trial_moves_the_fence_by_half(measured: str, move: float) -> None:
    """Both sides move, so half of what the groove is off goes on the fence: away from the cutter when too wide."""
    data = worked("groove", measured_groove=measured)
    direction = {1: "away from the cutter", -1: "toward the cutter", 0: "leave the setting"}[(move > 0) - (move < 0)]

    assert close(move, value(data, "fence_move"))
    assert direction in data["trial"]["corrections"][0]


def test_the_fence_after_its_move_cuts_the_groove_wanted() -> None:
    """Moved as the trial says, the fence would have cut what was wanted."""
    data = worked("groove", measured_groove="0.4")
    cut_at = (1.375 - 0.4) / 2

    assert close(value(data, "fence"), cut_at + value(data, "fence_move"))


def test_the_cheek_as_cut() -> None:
    """Once the groove is measured the cheek is known as it is."""
    assert close((1.375 - 0.4) / 2, value(worked("groove", measured_groove="0.4"), "cheek_as_cut"))
    assert "cheek_as_cut" not in worked("groove")["results"]


def test_steps_for_two_passes_and_for_one() -> None:
    """The steps speak of turning end for end only where there are two passes, and of a rib only where one is left."""
    two, one, rib = (" ".join(worked("groove", cutter=cutter)["steps"]) for cutter in ("1/4", "3/8", "1/8"))

    assert (True, False) == ("run them all again" in two, "run them all again" in one)
    assert (False, True) == ("one pass" in two, "one pass" in one)
    assert (False, True) == ("clear the rib" in two, "clear the rib" in rib)
    assert "one thickness of 1 3/8 in" in two


def test_the_trial_does_not_halve_an_error_of_one_pass() -> None:
    """The half belongs to two passes; one pass leaves the cheeks to be compared, as its caution says too."""
    one, two = (worked("groove", cutter=cutter)["trial"]["text"] for cutter in ("3/8", "1/4"))

    assert (True, False) == ("compare its cheeks" in one, "half the error" in one)
    assert (False, True) == ("compare its cheeks" in two, "half the error" in two.lower())


def test_one_pass_does_not_say_which_way_the_fence_is_off() -> None:
    """A cutter as wide as the groove cuts its own width wherever the fence stands: no move is given, but the cheeks are to be measured."""
    data = worked("groove", cutter="3/8", measured_groove="0.381")

    assert set() == {"fence_move", "cheek_as_cut"} & set(data["results"])
    assert "one_pass_off" in raised(data)
    assert "one_pass_off" not in raised(worked("groove", cutter="3/8", measured_groove="0.38"))


def test_one_pass_that_is_far_off_goes_on_to_no_tenon() -> None:
    """Turned end for end a scrap is wider than the pieces get, which are cut once: the tenon is for one pass, or for the groove as planned."""
    ways = [shown_onwards(bench_of("groove", cutter="3/8", measured_groove=measured))[0]["address"] for measured in ("0.379", "0.40", "0.45")]

    assert [True, False, False] == ["groove_width=0." in each for each in ways]
    assert [False, True, True] == ["groove_width=3" in each for each in ways]


@pytest.mark.parametrize("measured", ["0.40", "0.33"])
def test_a_frame_does_not_follow_a_groove_that_is_turned_for_one_pass(measured: str) -> None:
    """Its tenons are for the one pass that the pieces get: made for the turned scrap they would not enter."""
    width = "3/8" if measured == "0.40" else "1/4"
    results = worked("frame", groove_width=width, cutter=width, measured_groove=measured)["results"]

    assert results["groove_found"]["value"] == float(Fraction(width))


def test_one_pass_is_no_word_of_two() -> None:
    """What is said of a groove as wide as its cutter is not said of one that is turned end for end."""
    assert set() == {"one_pass_far_off"} & raised(worked("groove", measured_groove="0.5")) | {"one_pass_off"} & raised(
        worked("groove", measured_groove="0.38")
    )
    assert {"one_pass_far_off"} == raised(worked("groove", cutter="3/8", measured_groove="0.45"))
