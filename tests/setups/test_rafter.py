"""The rafter's card: what it gives, what it warns of, which way it corrects, and what it says to do."""

import re

import pytest

from shopcalc.portable.cards.pictures import draw_picture

from ..helpers import bench_of
from ..published.asking import ask, results_of

# a check, entries for which it holds, and entries on or near its edge for which it does not
CHECKS = [
    ("no_run", {"span": "3/4"}, {"span": "1"}),
    ("seat_past_ridge", {"span": "4.75", "seat": "2"}, {"span": "4.76", "seat": "2"}),
    ("cut_through", {"pitch": "30", "seat": "7"}, {"pitch": "30", "seat": "6.99"}),
    ("cap_too_thick", {"cap_thickness": "3 1/2"}, {"cap_thickness": "3.49"}),
    ("cap_on_the_ridge", {"pitch": "60", "cap_inside": "3/4"}, {"pitch": "60", "cap_inside": "0.76"}),
    ("cap_too_long", {"pitch": "60", "cap_inside": "8 ft"}, {"pitch": "60", "cap_inside": "95.9"}),
    ("deep_birdsmouth", {"pitch": "30", "rafter_depth": "2.99"}, {"pitch": "30", "rafter_depth": "3"}),
    ("deep_notch", {"cap_thickness": "1.17"}, {"cap_thickness": "1.16"}),
    ("short_seat", {"seat": "1.49"}, {"seat": "1 1/2"}),
    ("saw_move_far_off", {"pitch": "30", "measured_plumb": "35.1"}, {"pitch": "30", "measured_plumb": "35"}),
]
NOTCH = {"peak_notch", "notch_on_edge", "notch_length", "notch_on_rafter"}
SEAT = {"birdsmouth", "left_at_seat", "above_plate"}


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("rafter", **entries)["checks"]}


def drawn_of(page, **entries):
    """Draw one picture of the card."""
    bench = bench_of("rafter", **entries)
    (drawn,) = draw_picture(bench["about"]["pictures"][page], bench, page)
    return drawn


def ys(drawn, style):
    """How far down the sheet the last area of a style goes, point by point."""
    path = [each["path"] for each in drawn["areas"] if each["style"] == style][-1]
    return [float(y) for y in re.findall(r"[ML][-\d.]+ ([-\d.]+)", path)]


def test_the_first_card_raises_nothing():
    """The sizes it opens with are a sensible rafter."""
    assert raised() == set()


def test_a_rafter_of_5_in_12_in_whole_inches():
    """The triangle of 5, 12 and 13: every length of the card by hand."""
    values = results_of("rafter", span="10 ft", pitch="5 in 12", ridge="0", overhang="12", rafter_depth="6", seat="3", cap_inside="4")
    expected = {
        "run": 60, "rise": 25, "line_length": 65, "tail": 13, "birdsmouth": 5 / 4, "peak_notch": 3 / 4, "notch_length": 4, "notch_on_rafter": 4,
        "plumb_length": 6.5, "above_plate": 5.25, "left_at_seat": 6 - 15 / 13, "board_needed": 65 + 13 + 2.5,
    }  # fmt: skip

    assert {name: values[name] for name in expected} == pytest.approx(expected, abs=1e-12)
    assert [round(values[name], 2) for name in ("plumb_angle", "seat_angle")] == [22.62, 67.38]


def test_half_of_the_ridge_comes_off_each_rafter():
    """A ridge board of 1 1/2 in makes the run 3/4 in shorter, and the cap's notch starts that much nearer its end."""
    values = results_of("rafter", span="10 ft", pitch="60", ridge="1 1/2", cap_inside="4")

    assert values["run"] == 59.25
    assert values["notch_length"] - values["notch_on_rafter"] == 1.5


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not just before it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize(
    ("entries", "gone"),
    [
        ({"span": "1/2"}, {"run", "line_length", "tail"} | NOTCH | SEAT),
        (CHECKS[1][1], SEAT),
        (CHECKS[2][1], SEAT),
        (CHECKS[3][1], NOTCH),
        (CHECKS[4][1], NOTCH),
        (CHECKS[5][1], NOTCH),
        ({"cap_thickness": "0"}, NOTCH),
    ],
)
def test_a_stop_takes_away_just_what_cannot_be(entries, gone):
    """What cannot be cut is not shown, and what does not hang on it stays."""
    found = set(results_of("rafter", **entries))

    assert not gone & found
    assert "run" in gone or {"line_length", "tail", "board_needed"} <= found


def test_no_cap_is_nothing_to_warn_of():
    """A rafter without a cap has no notch and no stop about one."""
    assert raised(cap_thickness="0", cap_inside="1/8") == set()


@pytest.mark.parametrize(
    ("measured", "words"),
    [
        ("29", "Swing the saw 1° further from square."),
        ("31.5", "Swing the saw 1.5° back toward square."),
        ("30", "It is right: leave the setting where it is."),
    ],
)
def test_the_trial_says_how_far_and_which_way(measured, words):
    """A plumb cut short of the pitch wants more angle, one past it less."""
    assert ask("rafter", pitch="30", measured_plumb=measured)["trial"]["corrections"] == [words]


def test_a_reading_goes_on_to_the_joint():
    """How far the joint would stand open appears with the reading, and not before."""
    assert results_of("rafter", pitch="30", measured_plumb="30")["open_joint"] == 0
    with_ridge, without = (results_of("rafter", pitch="30", measured_plumb="31", ridge=ridge)["open_joint"] for ridge in ("3/4", "0"))
    assert without == 2 * with_ridge > 0  # with no ridge board two rafters meet, each as far off
    assert "open_joint" not in results_of("rafter", pitch="30") | results_of("rafter", pitch="30", measured_plumb="90")


@pytest.mark.parametrize(
    ("entries", "said", "unsaid"),
    [
        (
            {},
            [
                "local code",
                "55 1/8 in full along the rafter",
                "measure 6 15/16 in full on",
                "mark 3 9/16 in full along the upper edge, and saw there, square to it, 3/4 in deep",
            ],
            ["No overhang"],
        ),
        ({"overhang": "0"}, ["No overhang"], ["measure 0 in"]),
        ({"ridge": "0"}, ["mark 4 in along the upper edge", "the ridge cut is 3 9/16 in long."], ["Set the ridge board"]),
        ({"cap_thickness": "0"}, ["strike the seat level, 2 in long"], ["Notch"]),
    ],
)
def test_the_steps_are_those_of_the_work_chosen(entries, said, unsaid):
    """Tail and notch have a step where there is one; that sizing is for local code stands first."""
    steps = " ".join(ask("rafter", **entries)["steps"])

    assert [words for words in said if words not in steps] == []
    assert [words for words in unsaid if words in steps] == []


def test_the_trial_needs_no_ridge_board():
    """Two rafters may meet each other: the scraps are held as they will meet."""
    assert "ridge board" not in ask("rafter", ridge="0")["trial"]["text"]


@pytest.mark.parametrize("page", [0, 2])
def test_the_ridge_board_is_drawn_up_to_the_floor_of_the_notch(page):
    """In the whole and enlarged it stays as far under the rafter's upper edge as the notch is deep, plumb."""
    deep, none = (drawn_of(0, cap_thickness=each) for each in ("3/4", "0"))
    tops = [min(ys(each, "end-grain")) for each in (deep, none)]
    capped = drawn_of(page)

    assert tops[0] > tops[1]
    assert min(ys(capped, "end-grain")) > min(ys(capped, "waste"))


def test_the_number_of_the_tail_stands_off_the_rafter():
    """It stands at the end of a leader, left of the rafter and above its tail."""
    drawn = drawn_of(0)
    [word] = [word for word in drawn["words"] if word["of"] == "tail"]
    lowest = min(float(x) for x in re.findall(r"[ML]([\d.]+)", next(each["path"] for each in drawn["areas"] if each["style"] == "wood")))

    assert float(word["x"]) < lowest
