"""The pane's card: what it gives, what it warns of, how a pane that is off is put right, and what it says to do."""

import pytest

from shopcalc.exact import answer

from ..published.asking import ask, results_of, texts_of

ROOM = {"temp_cut": "20", "temp_cold": "20", "temp_hot": "120", "opening_width": "36", "opening_height": "12"}

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("wide_falls_out", {"groove_depth": "0.5", "measured_width": "22.56"}, {"groove_depth": "0.5", "measured_width": "22.58"}),
    ("high_falls_out", {"groove_depth": "0.5", "measured_height": "30.09"}, {"groove_depth": "0.5", "measured_height": "30.11"}),
    ("temperatures_swapped", {"temp_cold": "116"}, {"temp_cold": "115"}),
    # acrylic over 48 in and 100 degrees, all of it growth: half of 48 x 0.004 is a bite of nothing in a groove of 0.096
    ("no_bite", {**ROOM, "opening_width": "47.808", "groove_depth": "0.096"}, {**ROOM, "opening_width": "47.808", "groove_depth": "0.097"}),
    ("thin_bite", {"least_bite": "0.424"}, {"least_bite": "0.4237"}),
    ("falls_out", {**ROOM, "opening_width": "47.6", "groove_depth": "0.1917"}, {**ROOM, "opening_width": "47.6", "groove_depth": "0.193"}),
    ("slides", {"least_bite": "0.348"}, {"least_bite": "0.3475"}),
    ("slides", {"least_bite": "0.348"}, {**ROOM, "opening_width": "47.6", "groove_depth": "0.1917"}),
    ("hair_of_room", {"material": "glass"}, {"material": "acrylic"}),
    ("hair_of_room", {"temp_hot": "66"}, {"temp_hot": "65"}),
    ("cut_in_the_heat", {"temp_cut": "115"}, {"temp_cut": "114"}),
    ("cut_in_the_heat", {"temp_cut": "115"}, {"temp_cut": "117", "temp_cold": "116"}),
    ("cut_in_the_cold", {"temp_cut": "-10"}, {"temp_cut": "-9"}),
    ("cut_in_the_cold", {"temp_cut": "-10"}, {"temp_cut": "-10", "temp_cold": "116"}),
    ("large_pane", {"opening_width": "35.08", "opening_height": "35.08"}, {"opening_width": "35.07", "opening_height": "35.07"}),
    ("narrow_pane", {"measured_width": "22.568"}, {"measured_width": "22.569"}),
    ("low_pane", {"measured_height": "30.091"}, {"measured_height": "30.092"}),
]
HELD = {"cut_width", "cut_height", "bite_cold", "bite_slid", "width_move", "height_move"}


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("glazing", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """The sizes it opens with are a sensible pane."""
    assert raised() == set()


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


def test_a_pane_is_rounded_down_and_its_room_up():
    """What has to go in is never read too large, and what is kept free never too small."""
    texts = texts_of("glazing", tape="16")

    assert (texts["cut_width"], texts["cut_height"]) == ("22 15/16 full", "30 7/16 full")
    assert (texts["edge_clearance"], texts["bite_cold"], texts["groove_needed"]) == ("1/32 scant", "27/64 full", "21/64 scant")


def test_all_four_edges_have_the_room_of_the_larger_direction():
    """One spacer goes all round: the same is taken off the width and the height."""
    values = results_of("glazing", opening_width="20", opening_height="40")

    assert values["edge_clearance"] == pytest.approx(values["grow_height"] / 2)
    assert values["cut_height"] - values["cut_width"] == pytest.approx(20)


def test_a_groove_without_bite_takes_the_pane_away_and_names_the_groove():
    """No size is given for a pane that nothing would hold; how deep the groove must be is."""
    card = ask("glazing", groove_depth="1/16", measured_width="22 1/8")

    assert [check["name"] for check in card["checks"]] == ["no_bite", "narrow_pane", "wide_falls_out"]
    assert not HELD & set(card["results"])
    assert "at least 21/64 in scant deep" in card["checks"][0]["text"]


def test_temperatures_in_each_others_place_give_no_numbers():
    """A coldest night above the hottest day is asked about, and nothing is worked out from it."""
    card = ask("glazing", temp_cold="115", temp_hot="-10")

    assert card["results"] == {}
    assert card["checks"][0]["text"] == "The coldest, 115 °F, is hotter than the hottest, −10 °F: exchange the two."


@pytest.mark.parametrize(
    ("temp_cut", "still"), [("130", ("grow_width", "grow_height", "edge_clearance")), ("-20", ("shrink_width", "shrink_height"))]
)
def test_a_pane_cut_outside_its_weather_moves_one_way_only(temp_cut, still):
    """Cut hotter than it will ever be it has no growth to allow for, and cut colder no shrinking."""
    values = results_of("glazing", temp_cut=temp_cut)

    assert [values[name] for name in still] == [0] * len(still)
    assert min(values[name] for name in ("grow_width", "shrink_width", "bite_cold", "bite_slid")) >= 0


@pytest.mark.parametrize("temp_cut", ["-60", "120", "200"])
def test_the_year_moves_a_pane_as_much_whenever_it_was_cut(temp_cut):
    """From -10 to 115 degrees 30 1/2 in of acrylic move 0.1525, also where the pane was cut on a day that never comes."""
    assert results_of("glazing", temp_cut=temp_cut)["movement"] == pytest.approx(30.5 * 40e-6 * 125)


def test_a_pane_cut_colder_than_it_will_ever_be_has_grown_on_the_coldest_night():
    """Cut at -60 it has grown by the coldest night, -10, and its worst edge is held by half of what the shorter way gained more."""
    values = results_of("glazing", temp_cut="-60")

    assert values["bite_cold"] == pytest.approx(0.5 - values["edge_clearance"] + 23 * 40e-6 * 50 / 2)


def test_a_pane_without_room_is_not_set_on_blocks():
    """Cut on the hottest day it fills its grooves: it is said to be cut smaller, and no spacer of nothing is put anywhere."""
    card = ask("glazing", temp_cut="115")
    steps = " ".join(card["steps"])

    assert [check["level"] for check in card["checks"]] == ["caution"]
    assert "smaller than 23 in by 30 1/2 in" in steps
    assert [words for words in ("at least 0 in", "two soft blocks", "a little under") if words in steps] == []


def test_celsius_says_the_same():
    """A pane that is cut at 20 °C is cut at 68 °F."""
    assert results_of("glazing", temp_cut="20 C", temp_cold="-20 C", temp_hot="45 C") == results_of(
        "glazing", temp_cut="68", temp_cold="-4", temp_hot="113"
    )


def test_a_bite_that_is_gone_is_nothing_and_never_less():
    """A pane that slides out of one side has nothing left there."""
    assert results_of("glazing", **{**ROOM, "opening_width": "47.6", "groove_depth": "0.15"})["bite_slid"] == 0


@pytest.mark.parametrize(
    ("entries", "words"),
    [
        ({"measured_width": "22.97"}, "Too wide: take 0.031 in (1/32) off, or it has no room in the heat."),
        ({"measured_height": "30.377"}, "Shorter by 0.062 in (1/16 scant) than it may be: it has room."),
        ({"measured_width": "22.939"}, "It is right: leave the setting where it is."),
    ],
)
def test_the_first_pane_says_what_to_take_off(entries, words):
    """A pane too large is put right; of one too small the bite is told."""
    assert ask("glazing", **entries)["trial"]["corrections"] == [words]


def test_the_bite_as_cut_appears_with_the_reading():
    """How much of the pane that came is still held when it is coldest, each way."""
    values = results_of("glazing", measured_width="22 7/8", measured_height="30 1/4")

    assert values["width_bite"] == pytest.approx((0.875 - values["shrink_width"]) / 2)
    assert values["height_bite"] == pytest.approx((0.75 - values["shrink_height"]) / 2)
    assert not {"width_bite", "height_bite"} & set(results_of("glazing"))
    assert "width_bite" not in results_of("glazing", measured_width="22")


def test_the_steps_say_what_goes_wrong_without_the_room():
    """The first step puts a number on it: how much wider the pane is in July."""
    steps = ask("glazing")["steps"]

    assert steps[0].startswith("Leave the room at the edges: cut tight, this pane of acrylic sheet is 3/64 in scant wider and 1/16 in scant higher")
    assert "22 15/16 in full by 30 7/16 in full" in " ".join(steps)


def test_a_pane_that_does_not_grow_is_not_said_to_bow():
    """Cut on the hottest day it needs no room, and no step warns of it."""
    assert "Leave the room" not in " ".join(ask("glazing", temp_cut="115")["steps"])


@pytest.mark.parametrize("words", ["Weep holes", "the pane's maker says"])
def test_what_is_no_number_is_said_all_the_same(words):
    """Weep holes and edges are for makers."""
    assert words in " ".join(ask("glazing")["steps"])


@pytest.mark.parametrize("slug", ["glazing", "frame"])
def test_a_card_with_panes_says_where_they_must_be_safety_glazing(slug):
    """And that such a pane is bought to size: nobody trims tempered glass."""
    said = " ".join(answer(f"/{slug}", {}, "sheet")["view"]["sheets"][0]["cautions"])

    assert [words for words in ("In a door, beside one or low down a pane must be safety glazing", "order it to size") if words not in said] == []


def test_the_working_of_a_metric_shop_adds_up():
    """The material's expansion is for a degree Fahrenheit, so the temperatures beside it are in those, and give the answer."""
    [row] = [row for row in answer("/glazing", [("units", "mm")])["view"]["sheets"][0]["working"] if row["name"] == "grow width"]

    assert "(2 \u00d7 12.5 mm + 559.0 mm) \u00d7 (the larger of 0 and (114.8 \u00b0F \u2212 64.4 \u00b0F))" in row["numbers"].replace("\u00a0", " ")
    assert 40 * (2 * 12.5 + 559) * (114.8 - 64.4) / 1000000 == pytest.approx(float(row["answer"].replace("\u00a0", " ").split()[0]), abs=0.05)
