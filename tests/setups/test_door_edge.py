"""The door edge's card: what it gives, what it warns of, which way it corrects, and what it says to do."""

import pytest

from ..published.asking import ask, results_of

SMALL = {"door_width": "4", "thickness": "1"}

# a check, entries for which it holds, and entries near its edge for which it does not
CHECKS = [
    ("nothing_left", {"door_width": "1", "thickness": "1", "bevel": "45"}, {"door_width": "1.001", "thickness": "1", "bevel": "45"}),
    ("too_thick", {"door_width": "1", "thickness": "7/8"}, {"door_width": "1", "thickness": "3/4"}),
    ("pin_too_proud", {"gap_latch": "0.0017"}, {"gap_latch": "0.0018"}),
    ("fouls", {"bevel": "0.84"}, {"bevel": "0.85"}),
    ("barely_clears", {"bevel": "2"}, {"bevel": "2.1"}),
    ("barely_clears_in_front", {"gap_latch": "0.0329"}, {"gap_latch": "0.0330"}),
    ("steep_bevel", {"bevel": "10.01"}, {"bevel": "10"}),
    ("square_will_do", {"gap_latch": "1/8"}, {"gap_latch": "1/16"}),
    ("would_foul", {"measured_taper": "0.022"}, {"measured_taper": "0.023"}),
    ("tilt_move_far_off", {"measured_taper": "0.212"}, {"measured_taper": "0.210"}),
]


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("door-edge", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """The sizes it opens with are a sensible door."""
    assert raised() == set()


def test_the_first_card_gives_every_result():
    """Gauge line, least bevel, both swings and what is between them and the jamb."""
    values = {name: round(value, 4) for name, value in results_of("door-edge").items()}

    assert values == {
        "pin_to_edge": 18.0625,
        "pin_to_jamb": 18.125,
        "near_corner": 18.0642,
        "taper": 0.1312,
        "far_corner": 18.0165,
        "clearance": 0.0608,
        "least_bevel": 0.8472,
        "back_width": 17.8688,
    }


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not just before it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize(
    ("entries", "gone", "kept"),
    [
        (CHECKS[0][1], {"taper", "far_corner", "clearance", "back_width"}, {"near_corner"}),
        (CHECKS[1][1], {"least_bevel"}, {"clearance", "taper"}),
        (CHECKS[2][1], set(), {"clearance", "taper", "least_bevel"}),
        ({"bevel": "0"}, set(), {"least_bevel", "clearance", "foul"}),
    ],
)
def test_a_stop_takes_away_just_what_cannot_be(entries, gone, kept):
    """No bevel is named where none helps; a door that fouls keeps the figures that say by how much."""
    found = set(results_of("door-edge", **entries))

    assert not gone & found
    assert kept <= found


def test_one_stop_speaks_for_one_fault():
    """Where no bevel helps, the card does not ask for more bevel as well."""
    assert "fouls" not in raised(**CHECKS[1][1], bevel="0")


def test_a_proud_pin_stops_no_door():
    """The corner on the opening face meets only a casing that comes out past the door, which the card does not know of."""
    levels = {check["name"]: check["level"] for check in ask("door-edge", pin_offset="1 3/4", bevel="12")["checks"]}

    assert levels["pin_too_proud"] == "caution"
    assert "stop" not in levels.values()


def test_the_stop_names_the_bevel_that_is_needed():
    """A square edge that meets the jamb is told how far, and what bevel clears."""
    (check,) = ask("door-edge", bevel="0")["checks"]

    assert check["level"] == "stop"
    assert "needs 0.85° at least" in check["text"]


@pytest.mark.parametrize(
    ("taper", "words"),
    [
        ("0.12", "Too little taper: bevel 0.43° more."),
        ("0.14", "Too much taper: bevel 0.33° less."),
        ("0.13123", "It is right: leave the setting where it is."),
    ],
)
def test_the_trial_says_how_far_and_which_way(taper, words):
    """A scrap with less taper wants more tilt, one with more wants less."""
    assert ask("door-edge", measured_taper=taper)["trial"]["corrections"] == [words]


def test_a_reading_goes_on_to_the_clearance():
    """The bevel as cut and its clearance appear with the reading, and not before."""
    values = results_of("door-edge", measured_taper="0.03")

    assert round(values["bevel_as_cut"], 3) == 1.146
    assert 0 < values["clearance_as_cut"] < values["clearance"]
    assert not {"bevel_as_cut", "clearance_as_cut"} & set(results_of("door-edge"))


def test_a_taper_wider_than_the_door_has_no_clearance():
    """A reading that would leave no door gives no clearance."""
    assert "clearance_as_cut" not in results_of("door-edge", **SMALL, measured_taper="4")


@pytest.mark.parametrize(
    ("entries", "said", "unsaid"),
    [
        ({}, ["Gauge a line on the stop face, 1/8 in full in", "tilt the blade 5° from square, away from the fence", "clears by 1/16 in scant"], []),
        ({"bevel": "0", "gap_latch": "1/8"}, ["clears by"], ["Gauge a line", "tilt the blade"]),
        ({"bevel": "0"}, ["Fit the door square first: 18 in wide"], ["Gauge a line", "clears by"]),
    ],
)
def test_the_steps_are_those_of_the_work_chosen(entries, said, unsaid):
    """A square edge is not planed, and a door that meets its jamb is not cut."""
    steps = " ".join(ask("door-edge", **entries)["steps"])

    assert [words for words in said if words not in steps] == []
    assert [words for words in unsaid if words in steps] == []


def test_the_gauge_line_is_joined_to_the_corner_that_stays():
    """A line square across the ends would not show the bevel, which runs to the corner of the opening face."""
    assert ask("door-edge")["steps"][2].endswith("on both ends join it to the corner of the opening face.")


@pytest.mark.parametrize(("entries", "said"), [({"gap_latch": "0"}, "0.002"), ({"bevel": "0"}, "1/32 scant")])
def test_how_far_it_is_too_far_in_reads_to_the_nearest(entries, said):
    """Two thousandths are not told as a thirty-second."""
    assert ask("door-edge", **entries)["results"]["foul"]["text"] == said
