"""The hinge layout's card: where the marks are, what it warns of, and what the door says when it hangs on one hinge."""

import pytest

from ..published.asking import ask, results_of

TALL = {"door_height": "90"}

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("too_few", {"hinges": "1"}, {"hinges": "2"}),
    ("too_many", {"hinges": "6"}, {"hinges": "5"}),
    ("do_not_fit", {"door_height": "29.999"}, {"door_height": "30"}),
    ("crowded", {"door_height": "37.999"}, {"door_height": "38"}),
    ("wants_three", {"hinges": "2"}, {"hinges": "3"}),
    ("wants_three", {"hinges": "2", "door_height": "60.001"}, {"hinges": "2", "door_height": "60"}),
    ("wants_three", {"hinges": "2", **TALL}, {"hinges": "2", "door_height": "90.001"}),
    ("past_three", {"door_height": "90.001"}, TALL),
    ("past_three", {"door_height": "91"}, {"door_height": "91", "hinges": "4"}),
    ("unusual_top", {"top_offset": "4.374"}, {"top_offset": "4.375"}),
    ("unusual_top", {"top_offset": "7.501"}, {"top_offset": "7.5"}),
    ("unusual_top", {"top_offset": "3", "door_height": "60.1"}, {"top_offset": "3", "door_height": "60"}),
    ("unusual_foot", {"bottom_offset": "3", "door_height": "60.1"}, {"bottom_offset": "3", "door_height": "60"}),
    ("unusual_foot", {"bottom_offset": "9.499"}, {"bottom_offset": "9.5"}),
    ("unusual_foot", {"bottom_offset": "11.501"}, {"bottom_offset": "11.5"}),
    ("head_move_far_off", {"measured_head": "0.376"}, {"measured_head": "3/8"}),
]


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("hinge-layout", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """The door it opens with has its hinges where they usually are."""
    assert raised() == set()


def test_the_first_card_gives_both_rows():
    """The marks on the frame are those on the door and the gap above it."""
    values = results_of("hinge-layout")

    assert (values["spacing"], values["between"]) == (27.75, 23.75)
    assert values["door_marks"] == [7, 34.75, 62.5]
    assert values["frame_marks"] == [7.125, 34.875, 62.625]
    assert values["door_ends"] == [11, 38.75, 66.5]


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize("entries", [{"hinges": "1"}, {"hinges": "6"}, {"hinges": "999999999"}, {"door_height": "20"}])
def test_a_stop_leaves_no_mark_to_cut_by(entries):
    """What cannot be hung has no rows and no steps."""
    card = ask("hinge-layout", **entries)

    assert [check["level"] for check in card["checks"]] == ["stop"]
    assert (card["results"], card["steps"]) == ({}, [])


def test_no_hinge_at_all_is_refused():
    """None is no number of hinges: it is refused where it is typed."""
    with pytest.raises(AssertionError, match="cannot be zero"):
        ask("hinge-layout", hinges="0")


def test_two_hinges_have_nothing_between_them():
    """The first and the last are where they are put, whatever the number."""
    values = results_of("hinge-layout", hinges="2")

    assert values["door_marks"] == [7, 62.5]
    assert values["spacing"] == 55.5


@pytest.mark.parametrize("hinges", ["2", "3", "4", "5"])
def test_the_outer_hinges_stay_where_they_are(hinges):
    """More hinges share the middle; the outer ones do not move."""
    marks = results_of("hinge-layout", hinges=hinges)["door_marks"]

    assert (len(marks), marks[0], marks[-1]) == (int(hinges), 7, 62.5)


@pytest.mark.parametrize(
    ("measured", "words"),
    [
        ("3/16", "The door hangs 0.063 in (1/16) low: move the top hinge on the frame 0.063 in (1/16) up,"),
        (
            "1/16",
            "The door hangs 0.063 in (1/16) high: move the top hinge on the frame 0.063 in (1/16) down,",
        ),
        ("1/8", "It is right: leave the setting where it is."),
    ],
)
def test_the_trial_says_how_far_and_which_way(measured, words):
    """A gap too wide is a door that hangs low."""
    (said,) = ask("hinge-layout", measured_head=measured)["trial"]["corrections"]

    assert said.removesuffix(" or leave it and take the marks that this card gives for the door as it hangs.") == words


def test_a_reading_goes_on_to_the_other_hinges():
    """The frame's marks for a door left as it hangs appear with the reading, and not for one that is far off."""
    assert results_of("hinge-layout", measured_head="3/16")["frame_as_hung"] == [7.1875, 34.9375, 62.6875]
    assert not {"frame_as_hung", "head_move"} & set(results_of("hinge-layout", measured_head="1/2"))
    assert "frame_as_hung" not in results_of("hinge-layout")


def test_the_steps_have_both_rows_in_them():
    """The rows stand in the steps, each said from where it is measured."""
    steps = " ".join(ask("hinge-layout")["steps"])

    assert "on the top edge, and tick every mark, 7, 34 3/4, 62 1/2 in:" in steps
    assert "against the head, and tick 7 1/8, 34 7/8, 62 5/8 in:" in steps
