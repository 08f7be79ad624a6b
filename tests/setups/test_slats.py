"""The slats' card: how many, how far apart, what it warns of, and what it says to do."""

import pytest

from shopcalc.portable.arithmetic.rows import MOST_MARKS

from ..helpers import value, worked
from ..published.asking import ask, results_of, texts_of

GAP = {"by": "gap"}
SPACER = {"by": "spacer"}
WANTED = 2.25 * 8 * 0.00369  # what the swelling slat takes

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("slat_too_wide", {"slat": "16.251", "count": "1"}, {"slat": "16 1/4", "count": "1"}),
    ("too_many", {"run": "13.499"}, {"run": "13 1/2"}),
    ("none_fits", {"run": "3.249", "ends": "gap", **SPACER}, {"run": "3 1/4", "ends": "gap", **SPACER}),
    ("none_fits", {"run": "3.249", "ends": "gap", **SPACER}, {"run": "3.249", "ends": "gap", **GAP}),
    ("too_many_marks", {"run": "1200", "slat": "1", "count": "401"}, {"run": "1200", "slat": "1", "count": "400"}),
    ("too_many_marks", {"run": "1200", "slat": "1", "gap": "1.99", **GAP}, {"run": "1200", "slat": "1", "gap": "2.01", **GAP}),
    ("one_slat", {"count": "1"}, {"count": "1", "slat": "16 1/4"}),
    ("one_slat", {"count": "1"}, {"count": "1", "ends": "gap"}),
    ("not_even", {"gap": "0.549", **SPACER}, {"gap": "0.55", **SPACER}),
    ("one_more_is_nearer", {"run": "20", "slat": "2", "gap": "5.4", **GAP}, {"run": "20", "slat": "2", "gap": "5.5", **GAP}),
    ("gap_closes", {"gap": f"{WANTED - 0.00001:.6f}", **SPACER}, {"gap": f"{WANTED:.6f}", **SPACER}),
    ("spacer_move_far_off", {"measured_spacer": "0.676"}, {"measured_spacer": "0.675"}),
]
STOPS = [check for check, _, _ in CHECKS[:6]]


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("slats", **entries)["checks"]}


def steps(**entries):
    """Give the steps as one text."""
    return " ".join(ask("slats", **entries)["steps"])


def test_the_first_card_raises_nothing():
    """The sizes it opens with are a sensible bench."""
    assert raised() == set()


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize(("check", "holds"), [(check, holds) for check, holds, _ in CHECKS if check in STOPS])
def test_a_stop_leaves_no_number_to_cut_by(check, holds):
    """What cannot be laid has no settings, no marks and no steps."""
    card = ask("slats", **holds)

    assert [each["name"] for each in card["checks"] if each["level"] == "stop"] == [check]
    assert (card["results"], card["steps"]) == ({}, [])


def test_the_most_marks_are_those_that_are_worked_out():
    """The stop stands where the row of marks ends, not one sooner."""
    assert len(results_of("slats", run="1200", slat="1", count=MOST_MARKS)["marks"]) == MOST_MARKS
    assert "too_many_marks" in raised(run="1200", slat="1", count=MOST_MARKS + 1)


def test_every_mark_leans_by_itself():
    """Each mark says for itself what rounding did: the error of one is not carried to the next."""
    assert texts_of("slats")["marks"] == "0, 2 13/16 scant, 5 19/32 full, 8 13/32 scant, 11 3/16 full, 14"


def test_a_gap_at_both_ends_is_one_gap_more():
    """As many slats with a gap at both ends stand closer, and the first begins at the gap."""
    values = results_of("slats", ends="gap", run="17", slat="2", count="6")

    assert (values["gaps"], values["gap"], values["end_gap"]) == (7, 5 / 7, 5 / 7)
    assert values["marks"][0] == 5 / 7


def test_one_slat_stands_in_the_middle():
    """With one slat there is no gap between, no spacer, and as much open at each side."""
    values = results_of("slats", count="1")

    assert (values["marks"], values["end_share"]) == ([7], 7)
    assert not {"gap", "pitch", "spacer", "gap_one_fewer", "drift"} & set(values)


def test_one_slat_between_two_gaps():
    """One slat with a gap at both ends has two even gaps."""
    assert results_of("slats", count="1", ends="gap")["gap"] == 7


def test_one_slat_as_wide_as_the_run_is_just_that():
    """It fills the run, and nothing is said."""
    values = results_of("slats", count="1", slat="16 1/4")

    assert (values["marks"], values["left_over"]) == ([0], 0)
    assert raised(count="1", slat="16 1/4") == set()


def test_slats_that_touch_have_no_spacer():
    """A gap of nothing gives marks a slat apart, no spacer, and a warning that wood swells."""
    values = results_of("slats", run="13 1/2")

    assert (values["gap"], values["marks"]) == (0, [0, 2.25, 4.5, 6.75, 9, 11.25])
    assert "spacer" not in values
    assert raised(run="13 1/2") == {"gap_closes"}


@pytest.mark.parametrize(("run", "slat", "gap", "count"), [("11", "3", "0", 3), ("10", "4", "10", 2), ("10", "6", "4", 1)])
def test_a_gap_liked_never_asks_for_slats_that_do_not_fit(run, slat, gap, count):
    """The count found is one that can be laid: no more than fit edge to edge, and two at the ends where two fit."""
    assert results_of("slats", run=run, slat=slat, gap=gap, by="gap")["count"] == count


def test_a_gap_wider_than_the_run_still_leaves_one_slat():
    """With a gap at both ends one slat is the fewest."""
    assert results_of("slats", run="10", slat="2", gap="20", by="gap", ends="gap")["count"] == 1


def test_what_is_not_given_does_not_count():
    """The gap is left alone when the number is given, and the number when the gap is."""
    assert results_of("slats", gap="3") == results_of("slats", gap="1/4")
    assert results_of("slats", count="2", **GAP) == results_of("slats", count="9", **GAP)


def test_the_number_asked_for_stands_first():
    """Where the number of slats is found it is the first setting; where it is given the spacer is."""
    settings = ("to_cut", "spacer", "marks")

    assert [name for name in results_of("slats") if name in settings] == ["spacer", "marks"]
    assert [name for name in results_of("slats", **GAP) if name in settings] == list(settings)


@pytest.mark.parametrize(
    ("measured", "words"),
    [
        ("0.566", "Spacer too thick: take 0.016 in (1/64) off it."),
        ("0.534", "Spacer too thin: add 0.016 in (1/64) of card or veneer to it."),
        ("0.55", "It is right: leave the setting where it is."),
    ],
)
def test_the_block_is_corrected(measured, words):
    """The reading says how far the block is out and which way."""
    said = ask("slats", measured_spacer=measured)["trial"]["corrections"]

    assert [text.replace(" full)", ")").replace(" scant)", ")") for text in said] == [words]


def test_a_block_far_out_is_not_corrected():
    """It is cut anew, and how far the last slat would be out is still told."""
    card = ask("slats", measured_spacer="0.7")

    assert card["trial"]["corrections"] == []
    assert card["results"]["creep"]["value"] == 0.75


@pytest.mark.parametrize(
    ("entries", "said", "unsaid"),
    [
        ({}, ["Rip 6 slats", "a block of 9/16 in scant", "flush with the end", "the spacer only keeps it parallel"], ["short of it", "Rip the slat"]),
        ({"ends": "gap"}, ["its near edge 13/32 in scant from the end", "stops 13/32 in scant short"], ["flush with"]),
        ({"count": "1"}, ["Rip the slat and measure it: 2 1/4 in", "its near edge 7 in from the end"], ["a block of", "the spacer only", "1 slats"]),
        ({"count": "1", "ends": "gap"}, ["its near edge 7 in from the end"], ["a block of", "the spacer only", "hard against"]),
        ({"gap": "0", "run": "14 1/4", **SPACER}, ["its near edge 3/8 in from the end", "hard against the one before"], ["flush", "a block of"]),
        ({"run": "13 1/2"}, ["the last comes out flush", "hard against the one before"], ["a block of", "the spacer only", "fix these two"]),
        ({"units": "mm"}, ["the spacer only keeps it parallel"], ["1/64"]),
    ],
)
def test_the_steps_are_those_of_the_run(entries, said, unsaid):
    """Only what is to be done has a step, with its number."""
    found = steps(**entries)

    assert [words for words in said if words not in found] == []
    assert [words for words in unsaid if words in found] == []


@pytest.mark.parametrize(("typed", "count"), [({"gap": "1/4"}, 7), ({"gap": "0.2", "ends": "gap"}, 7)])
def test_by_a_gap_there_are_as_many_slats_as_come_nearest(typed: dict[str, str], count: int) -> None:
    """Of 16 1/4 in seven slats of 2 1/4 leave gaps of 1/12 in, and six of 0.55: seven are nearer to 1/4. So with gaps at the ends."""
    assert count == value(worked("slats", by="gap", **typed), "count")


def test_another_spacer_is_told_where_a_spacer_is_given() -> None:
    """Ten thousandths off, and not one; by count the block is cut to the reading."""
    told = ["other_spacer" in raised(**SPACER, gap="1/2", measured_spacer=reading) for reading in ("0.51", "0.501")]

    assert [True, False, False] == [*told, "other_spacer" in raised(measured_spacer="0.51")]


def test_slats_wider_than_the_run_are_too_many() -> None:
    """Two of 2 1/4 in four inches; and one slat is only told of where one is asked for."""
    assert "too_many" in raised(run="4", slat="2 1/4", count="2")
    assert ("one_slat" in raised(count="1"), "one_slat" in raised(by="spacer")) == (True, False)
