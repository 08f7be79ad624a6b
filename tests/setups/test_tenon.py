"""The stub tenon."""

import pytest

from ..helpers import close, exactly, raised, value, worked

RESULTS = {
    "tenon_thickness": "5/16", "tenon_length": "15/32", "shoulder_height": "17/32", "fence_to_blade": "1 11/32", "cheek_height": "15/32",
    "jig_to_blade": "27/32",
}  # fmt: skip


@pytest.mark.parametrize(("name", "expected"), RESULTS.items())
def test_results(name: str, expected: str) -> None:
    """Stock 1 3/8, groove 5/16 with no play: the shoulder is 17/32 high."""
    assert close(exactly(expected), value(worked("tenon", groove_width="5/16", fit="0"), name))


def test_the_play_is_taken_off_the_tenon() -> None:
    """A tenon is thinner than its groove by all of its play."""
    assert close(0.375 - 0.006, value(worked("tenon"), "tenon_thickness"))


def test_two_shoulders_and_a_tenon_make_up_the_stock() -> None:
    """What the shoulders leave is the tenon, and the jig leaves it too."""
    data = worked("tenon", stock="1.41", groove_width="0.33")

    assert close(1.41, 2 * value(data, "shoulder_height") + value(data, "tenon_thickness"))
    assert close(value(data, "tenon_thickness"), value(data, "jig_to_blade") - value(data, "shoulder_height"))


def test_the_shoulder_cut_ends_where_the_tenon_ends() -> None:
    """The far side of the blade stands a block and a tenon's length from the fence."""
    data = worked("tenon", kerf="0.1", gauge_block="1.1")

    assert close(1.1 + value(data, "tenon_length"), value(data, "fence_to_blade") + 0.1)


FIRES = {
    "no_tenon": ({"fit": "3/8"}, {"fit": "0.374"}),
    "no_length": ({"end_play": "1/2"}, {"end_play": "0.499"}),
    "no_shoulder": ({"groove_width": "1.375"}, {"groove_width": "1.374"}),
    "fence_in_blade": ({"gauge_block": "1/16", "groove_depth": "3/32"}, {"gauge_block": "1/16", "groove_depth": "0.094"}),
    "thin_tenon": ({"groove_width": "0.249"}, {"groove_width": "1/4"}),
    "thin_cheek": ({"stock": "0.868", "fit": "0"}, {"stock": "7/8", "fit": "0"}),
    "loose_fit": ({"fit": "0.032"}, {"fit": "1/32"}),
    "short_block": ({"gauge_block": "0.749"}, {"gauge_block": "3/4"}),
    "no_room_for_glue": ({"end_play": "0"}, {"end_play": "0.001"}),
    "press_fit": ({"fit": "0"}, {"fit": "0.001"}),
    "will_not_enter": ({"measured_tenon": "0.376"}, {"measured_tenon": "3/8"}),
    "blade_move_far_off": ({"measured_tenon": "0.495"}, {"measured_tenon": "0.494"}),
    "jig_move_far_off": ({"measured_cheeks": "0.495"}, {"measured_cheeks": "0.494"}),
    "past_the_blade": ({"stock": "6.37"}, {"stock": "6.369"}),
    "no_saw_for_stock": ({"stock": "16.37"}, {"stock": "16.369"}),
    "no_saw_for_length": ({"groove_depth": "8.032"}, {"groove_depth": "8.031"}),
}


@pytest.mark.parametrize("check", FIRES)
def test_checks(check: str) -> None:
    """Each check holds just past its limit and not on the safe side of it."""
    past, on = FIRES[check]

    assert (True, False) == (check in raised(worked("tenon", **past)), check in raised(worked("tenon", **on)))


def test_a_usual_tenon_has_nothing_to_say() -> None:
    """The tenon that the card starts with raises no check."""
    assert set() == raised(worked("tenon"))


@pytest.mark.parametrize("check", ["no_tenon", "no_length", "no_shoulder", "no_saw_for_stock", "no_saw_for_length"])
def test_a_stop_leaves_no_setting(check: str) -> None:
    """Where no tenon can be, no number is given to set."""
    assert {} == worked("tenon", **FIRES[check][0])["results"]


@pytest.mark.parametrize(("measured", "move", "word"), [("0.389", 0.01, "raise"), ("0.349", -0.01, "lower"), ("0.369", 0, "leave the setting")])
def test_the_trial_moves_the_blade_by_half(measured: str, move: float, word: str) -> None:
    """Both faces are cut, so half of what the tenon is off goes on the blade: up when it is too thick."""
    data = worked("tenon", measured_tenon=measured)

    assert close(move, value(data, "blade_move"))
    assert word in data["trial"]["corrections"][0]


def test_the_blade_after_its_move_cuts_the_tenon_wanted() -> None:
    """A tenon too thick was cut with the blade too low; the move brings it to the shoulder's height."""
    data = worked("tenon", measured_tenon="0.4")
    cut_at = (1.375 - 0.4) / 2

    assert close(value(data, "shoulder_height"), cut_at + value(data, "blade_move"))


def test_sizes_as_cut() -> None:
    """Once the tenon is measured, its play and its shoulder are known as they are."""
    data = worked("tenon", measured_tenon="0.365")

    assert close(0.01, value(data, "play_as_cut"))
    assert close((1.375 - 0.365) / 2, value(data, "shoulder_as_cut"))


def test_a_tenon_far_off_is_taken_for_a_slip() -> None:
    """What is measured again has no size as cut to go by."""
    assert not {"play_as_cut", "shoulder_as_cut"} & set(worked("tenon", measured_tenon="0.9")["results"])


def test_a_coarse_tape_says_one_length_alike_everywhere() -> None:
    """Set at the bare marks of a tape in sixteenths, fence and blade leave a tenon that is no longer than it is said to be."""
    results = worked("tenon", tape="16")["results"]

    assert ["7/16 full", "7/16 full", "1 5/16 full"] == [results[name]["text"] for name in ("tenon_length", "cheek_height", "fence_to_blade")]


def test_a_tenon_that_will_not_enter_has_no_play() -> None:
    """A tenon wider than its groove has no play to tell."""
    assert "play_as_cut" not in worked("tenon", measured_tenon="0.38")["results"]


def test_steps_cut_the_shoulders_first() -> None:
    """The shoulders come before the cheeks, each with its numbers."""
    steps = worked("tenon", groove_width="5/16", fit="0")["steps"]
    shoulders = "Set the blade 17/32 in high, the fence 1 11/32 in"
    cheeks = "Set the blade 15/32 in high, just to the shoulder cut, the jig's face 27/32 in"

    assert [[1], [5]] == [[place for place, step in enumerate(steps) if text in step] for text in (shoulders, cheeks)]


@pytest.mark.parametrize(
    ("measured", "move", "word"), [("0.389", 0.01, "toward the blade"), ("0.349", -0.01, "away from the blade"), ("0.369", 0, "leave the setting")]
)
def test_the_cheeks_have_their_own_trial(measured: str, move: float, word: str) -> None:
    """Cheeks too thick want the jig nearer to the blade, by half of what they are off."""
    data = worked("tenon", measured_cheeks=measured)

    assert close(move, value(data, "jig_move"))
    assert word in data["trial"]["corrections"][0]
