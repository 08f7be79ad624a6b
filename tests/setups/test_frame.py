"""The grooved frame."""

from typing import Any

import pytest

from shopcalc import exact

from ..helpers import raised, value, worked

DOOR = {
    "opening_width": "31 1/4", "opening_height": "78", "gap_side": "1/8", "gap_head": "1/8", "gap_foot": "3/8", "stile": "4 1/2",
    "top_rail": "4 1/2", "bottom_rail": "9", "mid_rails": "1", "mid_rail": "5", "groove_width": "5/16", "groove_depth": "1/2",
    "end_play": "1/32", "panel_clearance": "1/8", "horn": "0",
}  # fmt: skip


def door(**typed: str) -> dict[str, Any]:
    """The boathouse's side door."""
    return worked("frame", **{**DOOR, **typed})


def test_the_side_door_from_its_opening() -> None:
    """Every size of a door with one mid rail."""
    texts = {name: each["text"] for name, each in door()["results"].items()}

    assert ("31 in", "77 1/2 in", "22 in", "22 15/16 in", "29 1/2 in") == tuple(
        texts[name] + " in" for name in ("frame_width", "frame_height", "rail_shoulder", "rail_length", "bay_height")
    )
    assert ("22 3/4", "30 1/4", "38 1/2") == tuple(texts[name] for name in ("panel_width", "panel_height", "mid_rail_marks"))


def test_a_sensible_sash_raises_nothing() -> None:
    """What the card starts with is a joint to be trusted, and so are the cards inside it."""
    data = worked("frame")

    assert [] == data["checks"]
    assert {"groove": [], "tenon": []} == {slug: inner["checks"] for slug, inner in data["includes"].items()}


def test_changing_the_opening_changes_all_of_it() -> None:
    """An inch more of opening is an inch more of rail, of stile and of pane."""
    before, after = door(), door(opening_width="32 1/4", opening_height="79")

    assert {1} == {value(after, name) - value(before, name) for name in ("frame_width", "rail_length", "panel_width", "stile_length")}


def test_the_cards_inside_are_for_this_stock() -> None:
    """Groove and tenon are set for the frame's own wood and joint."""
    inner = door(stock="1 3/8", fit="0")["includes"]

    assert ("17/32", "17/32") == (inner["groove"]["results"]["fence"]["text"], inner["tenon"]["results"]["shoulder_height"]["text"])
    assert 15 / 32 == value(inner["tenon"], "tenon_length")


def test_the_groove_as_measured_goes_on_into_tenon_and_panes() -> None:
    """A groove that came out wider makes a thicker tenon, takes a thicker pane and leaves a thinner rail behind a shed pane."""
    data = door(measured_groove="21/64", foot="shed", fit="0")

    assert 21 / 64 == value(data, "groove_found") == value(data["includes"]["tenon"], "tenon_thickness")
    assert 21 / 64 == data["results"]["parts"]["value"][-1]["thickness"]
    assert (1.375 - 21 / 64) / 2 == value(data, "shed_rail_thickness")


def test_a_shed_foot_sheds_water() -> None:
    """The lowest pane runs down over the bottom rail; the panes above stay captive."""
    data = door(foot="shed")

    assert value(data, "panel_height") - 0.375 + 9 + 0.25 == value(data, "shed_panel_height")
    labels = [part["label"] for part in data["results"]["parts"]["value"]]
    assert ["Stile", "Top rail", "Mid rail", "Bottom rail", "Pane", "Lowest pane"] == labels
    assert any("saw its outside away over the whole width" in step for step in data["steps"])


def test_the_tenons_of_a_shed_rail_keep_their_root() -> None:
    """The outer cheek stays at both shoulders, and the pane is notched over what stayed."""
    data = door(foot="shed")

    assert ("1", "8 7/8") == tuple(data["results"][name]["text"] for name in ("notch_width", "notch_height"))
    assert any("Stop 1/2 in short of each shoulder" in step for step in data["steps"])
    assert any("Notch its lower corners 1 in wide and 8 7/8 in high" in step for step in data["steps"])
    assert {"notch_width", "notch_height"}.isdisjoint(door()["results"])


def test_a_frame_with_horns_is_measured_between_them() -> None:
    """With the horns on it does not go into its opening; without, it is tried there."""
    assert any("Between its horns the frame is 31 in by 77 1/2 in" in step for step in door(horn="1/2")["steps"])
    assert any("stands in its opening" in step for step in door()["steps"])


def test_the_panes_of_a_shed_frame_are_tried_dry_before_the_glue() -> None:
    """They are not cut yet at the first dry fit."""
    steps = worked("frame", foot="shed", mid_rails="1")["steps"]
    places = [
        next(nth for nth, step in enumerate(steps) if start in step) for start in ("Dry fit", "Notch its lower corners", "Dry once more", "Glue-up")
    ]

    assert places == sorted(places)


def test_one_shed_pane_has_no_captive_ones() -> None:
    """A shed sash without mid rails has one pane, and no height for others."""
    data = worked("frame", foot="shed")

    assert "panel_height" not in data["results"]
    assert ["Lowest pane"] == [part["label"] for part in data["results"]["parts"]["value"] if "pane" in part["label"].lower()]


def test_without_mid_rails_nothing_is_marked() -> None:
    """No mid rail, no mark, no rail ripped for it."""
    data = worked("frame", mid_rails="0")

    assert "mid_rail_marks" not in data["results"]
    assert not any("mid rails" in step or "tick" in step for step in data["steps"])


def test_panes_round_down() -> None:
    """A pane that would be a hair too large does not go in: it is cut to the tick below."""
    assert "22 23/32 full" == door(panel_clearance="0.13")["results"]["panel_width"]["text"]


def test_a_stile_without_horns_is_no_longer_than_its_frame() -> None:
    """Both are the same length, and the tick below it."""
    results = worked("frame", horn="0", opening_height="21.02")["results"]

    assert results["stile_length"]["text"] == results["frame_height"]["text"]


@pytest.mark.parametrize(("entries", "holes"), [({}, True), ({"foot": "shed"}, False), ({"foot": "shed", "mid_rails": "1"}, True)])
def test_weep_holes_are_drilled_where_water_can_stand(entries: dict[str, str], holes: bool) -> None:
    """A shed foot without mid rails has no groove that would hold any."""
    assert holes == any("weep holes" in step for step in worked("frame", **entries)["steps"])


LAST = ("Apart again, drill weep holes", "Cut the panes", "Glue-up", "Saw the horns off")


def test_glue_up_comes_last() -> None:
    """Holes are drilled while no pane is behind them; rails to one stile, panes in, second stile; then the horns off."""
    steps = door(horn="1/2")["steps"]

    assert list(LAST) == [step[: len(start)] for step, start in zip(steps[-4:], LAST, strict=True)]


CHECKS = {
    "no_frame": {"gap_side": "16"},
    "no_height": {"gap_foot": "78"},
    "no_pane_width": {"stile": "15 1/2"},
    "rails_too_tall": {"bottom_rail": "70"},
    "no_tongue": {"end_play": "1/2"},
    "pane_falls_out": {"panel_clearance": "1/2"},
    "no_cheeks": {"groove_width": "2"},
    "mid_rail_through": {"mid_rail": "1"},
    "no_shed": {"foot": "shed", "stile": "15"},
    "no_room_for_pane": {"panel_clearance": "0"},
    "no_gap": {"gap_head": "0"},
    "thin_mid_rail": {"mid_rail": "1 5/16"},
    "little_hold": {"panel_clearance": "5/16"},
    "groove_too_deep": {"top_rail": "7/8"},
    "rails_past_boards": {"opening_width": "860"},
    "stiles_past_boards": {"opening_height": "860"},
    "tall_without_rail": {"mid_rails": "0"},
    "through_groove": {"groove_depth": "4 1/2"},
    "groove_found_far_off": {"measured_groove": "1/2"},
    "pane_on_sill": {"foot": "shed", "shed_overhang": "3/8"},
    "no_drip": {"foot": "shed", "shed_overhang": "1/16"},
}


def test_a_mid_rail_that_is_cut_in_two_is_not_called_thin() -> None:
    """Where the two grooves meet nothing is left between them, and the stop alone says so."""
    assert {"mid_rail_through"} == raised(door(mid_rail="1")) - raised(door())


@pytest.mark.parametrize("name", CHECKS)
def test_checks_speak_when_they_should(name: str) -> None:
    """Each check holds for its own mistake and not for the door as it is."""
    assert name not in raised(door())
    assert name in raised(door(**CHECKS[name]))


def test_a_lowest_pane_whose_notches_meet_is_none() -> None:
    """Two notches of an inch, and a pane an eighth short of the bottom on both sides: of 1 1/4 in between the shoulders nothing is left."""
    shed = {"foot": "shed", "gap_side": "0", "stile": "2"}

    assert ["no_shed" in raised(worked("frame", opening_width=width, **shed)) for width in ("5 1/4", "5 17/64")] == [True, False]


def test_a_tall_frame_is_told_of_its_tenons() -> None:
    """Half an inch of tenon is little for a door, and enough for a sash."""
    assert {"short_tenons"} == raised(door()) and set() == raised(door(groove_depth="3/4"))
    assert set() == raised(worked("frame"))


def test_a_reading_that_cannot_be_leaves_the_sizes_alone() -> None:
    """A slip in the reading moves nothing: tenons and panes stay with the groove that was planned."""
    data = door(measured_groove="2")

    assert 22.9375 == value(data, "rail_length")
    assert value(door(), "groove_found") == value(data, "groove_found")
    assert value(door(measured_groove="0.4"), "groove_found") == 0.4


def test_the_working_of_a_reading_that_is_not_followed_is_that_of_the_plan() -> None:
    """The groove stays as planned, and is worked out of what was planned."""

    def found(measured: str) -> str:
        [sheet] = exact.answer("/frame", {"measured_groove": measured})["view"]["sheets"]
        return next(row["formula"] for row in sheet["working"] if row["name"] == "groove found")

    assert (found("0.9"), found("0.4")) == ("groove width", "measured groove")


def test_a_stop_leaves_no_sizes() -> None:
    """With no glass left there is nothing to cut."""
    data = door(stile="16")

    assert {} == data["results"]


@pytest.mark.parametrize(("name", "text"), [("mid_rails", "7"), ("mid_rails", "1.5"), ("foot", "loose"), ("opening_width", "0"), ("stock", "1/0")])
def test_wrong_entries_are_refused(name: str, text: str) -> None:
    """Each is told at its own field."""
    found = exact.answer("/frame.json", {name: text})

    assert (422, [name]) == (found["status"], list(found["data"]["errors"]))


def test_the_cut_list_writes_a_size_as_the_card_does() -> None:
    """A pane that is rounded down on the card is not rounded up in the list of parts."""
    view = exact.answer("/frame", {"opening_width": "33.3", "tape": "16"})["view"]["sheets"][0]
    width = next(row["text"] for row in view["settings"] if row["name"] == "panel_width")

    assert ("29 3/8 in full", width) == (width, next(row["width"] for row in view["parts"] if row["label"].startswith("Pane")))


def test_what_a_groove_cuts_in_two_is_no_frame() -> None:
    """A mid rail, or the narrowest of the stiles and rails: no size is left, and no step that would groove it."""
    for foot in ("captive", "shed"):
        for entries in ({"mid_rail": "1"}, {"top_rail": "3/8"}):
            data = door(foot=foot, **entries)

            assert ({}, []) == (data["results"], data["steps"])


def test_nothing_may_be_nothing_where_that_is_sensible() -> None:
    """No gap, no play, no room, no horn, no overhang: each is an answer."""
    for name in ("gap_foot", "gap_head", "gap_side", "panel_clearance", "end_play", "horn"):
        worked("frame", **{name: "0"})
    worked("frame", foot="shed", shed_overhang="0")


def test_a_pane_stands_on_the_sill_when_it_hangs_lower_than_the_gap() -> None:
    """Half an inch over a gap of 3/8, and not a quarter."""
    assert [True, False] == ["pane_on_sill" in raised(door(foot="shed", shed_overhang=each)) for each in ("1/2", "1/4")]


def test_short_rails_are_made_on_a_longer_piece():
    """No hand holds a rail of a few inches beside a cutter; one of a foot is no matter."""
    short, long = (raised(worked("frame", opening_width=width, stile="2")) for width in ("10", "18"))

    assert ("short_rails" in short, "short_rails" in long) == (True, False)
