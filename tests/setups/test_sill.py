"""The sill's card: what it gives, what it refuses, and what it tells the reader to do."""

import pytest

from shopcalc.portable.cards.pictures import draw_picture

from ..helpers import bench_of
from ..published.asking import ask, results_of, texts_of

# a check, entries that raise it, entries just beside them that do not
CHECKS = [
    ("past_the_saw", {"slope": "45.1"}, {"slope": "45"}),
    ("no_bottom", {"slope": "45", "depth": "1", "thickness": "1 1/2"}, {"slope": "45", "depth": "1 1/8", "thickness": "1 1/2"}),
    ("narrow_bearing", {"depth": "1 23/32", "overhang": "1"}, {"depth": "1 3/4", "overhang": "1"}),
    ("close_to_fence", {"depth": "2 7/32"}, {"depth": "2 1/4"}),
    ("too_much_blade", {"thickness": "3.08", "depth": "8"}, {"thickness": "3.07", "depth": "8"}),
    ("no_bearing", {"overhang": "5 3/8"}, {"overhang": "5 1/4"}),
    ("drip_on_wall", {"overhang": "3/4"}, {"overhang": "49/64"}),
    ("drip_close", {"overhang": "63/64"}, {"overhang": "1"}),
    ("narrow_drip", {"drip_kerf": "7/64"}, {"drip_kerf": "1/8"}),
    ("weak_nose", {"drip_setback": "23/64"}, {"drip_setback": "3/8"}),
    ("thin_sill", {"thickness": "47/64"}, {"thickness": "3/4"}),
    ("too_flat", {"slope": "4.9"}, {"slope": "5"}),
    ("steep", {"slope": "20.1"}, {"slope": "20"}),
    ("tilt_move_far_off", {"measured_offset": "0.403"}, {"measured_offset": "0.401"}),
    ("drip_move_far_off", {"measured_drip": "41/64"}, {"measured_drip": "5/8"}),
]


def raised(**entries):
    """Ask for the names of the checks that hold."""
    return {check["name"] for check in ask("sill", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """What the page opens with is a sensible sill."""
    assert raised() == set()


def test_a_sill_at_45_degrees():
    """At 45 degrees it falls as far as it is deep, and its faces differ by its thickness."""
    values = results_of("sill", slope="45", depth="6", thickness="1")

    assert values["fall"] == 6
    assert values["top_face"] == pytest.approx(6 * 2**0.5, abs=1e-12)
    assert values["top_face"] - values["bottom_face"] == pytest.approx(1, abs=1e-12)
    assert values["back_bevel"] == 45


@pytest.mark.parametrize(("overhang", "clear"), [("1 1/4", "1/2"), ("1", "1/4"), ("1.3", "17/32 full")])
def test_what_is_left_between_drip_and_wall(overhang, clear):
    """The overhang less setback and drip; the fraction is rounded down, so that nothing is promised that is not there."""
    assert texts_of("sill", overhang=overhang, drip_setback="1/2", drip_kerf="1/4")["drip_clear"] == clear


def test_the_drip_is_a_third_of_the_thickness_at_most():
    """A third of 1 1/2 is 1/2; a third of 1 is rounded down to the mark below it."""
    assert texts_of("sill", thickness="1 1/2")["drip_depth"] == "1/2"
    assert texts_of("sill", thickness="1")["drip_depth"] == "5/16 full"


@pytest.mark.parametrize(("name", "holds", "beside"), CHECKS)
def test_a_check_holds_where_it_should_and_not_beside_it(name, holds, beside):
    """Each check has an edge, and says nothing on the good side of it."""
    assert name in raised(**holds)
    assert name not in raised(**beside)


@pytest.mark.parametrize("entries", [{"slope": "60"}, {"slope": "90"}, {"overhang": "6"}, {"slope": "45", "depth": "1"}])
def test_an_impossible_sill_shows_no_number(entries):
    """A stop takes every result with it."""
    assert ask("sill", **entries)["results"] == {}


def test_a_drip_over_the_wall_takes_only_the_drip_away():
    """The sill can still be ripped: its faces stay, and what belongs to the drip goes, the step with it."""
    card = ask("sill", overhang="1/2")

    assert {"drip_depth", "drip_clear"} & set(card["results"]) == set()
    assert {"top_face", "bottom_face", "back_bevel", "fall"} <= set(card["results"])
    assert not any(step.startswith("Drip") for step in card["steps"])


@pytest.mark.parametrize(
    ("entries", "said"),
    [
        ({"slope": "30", "measured_offset": "0.9373"}, ["Tilt the blade 2\u00b0 less."]),
        ({"slope": "44", "measured_offset": "1.5"}, ["Tilt the blade 1\u00b0 less."]),
        ({"slope": "45", "measured_offset": "1.447"}, ["Tilt the blade 1.03\u00b0 more."]),
        ({"measured_drip": "33/64"}, ["Too deep: lower the blade 0.016 in (1/64)."]),
        ({"measured_drip": "31/64"}, ["Shallower than it may be: raise the blade 0.016 in (1/64)."]),
        ({"measured_drip": "1/2"}, ["It is right: leave the setting where it is."]),
    ],
)
def test_a_reading_moves_what_it_belongs_to(entries, said):
    """The faces' difference goes to the tilt, the drip's depth to the blade, and the words say which way."""
    assert ask("sill", **entries)["trial"]["corrections"] == said


def test_the_scrap_gives_the_bevel_and_the_fence_as_cut():
    """A scrap whose faces differ by its thickness was cut at 45 degrees, and the bottom face loses that much."""
    values = results_of("sill", slope="44", measured_offset="1.5")

    assert values["back_as_cut"] == 45
    assert values["bottom_as_cut"] == pytest.approx(values["top_face"] - 1.5, abs=1e-12)
    assert "bottom_as_cut" not in results_of("sill", measured_offset="6")
    assert "back_as_cut" not in results_of("sill")


def test_the_drip_is_cut_before_the_blade_is_tilted():
    """The blade stands square for the drip, so the drip comes first; the guard goes back on before the first cut at the tilt."""
    steps = ask("sill")["steps"]
    places = [
        next(place for place, step in enumerate(steps) if step.startswith(start))
        for start in ("Drip", "Unplug the saw. Saw blade in, tilted", "Guard", "Bevel the scrap", "Set the fence")
    ]

    assert places == sorted(places)
    assert "at most 1/2 in high" in steps[places[0]]


def test_the_room_behind_the_drip_is_not_hidden_by_its_own_number():
    """Half an inch on a sill of 5 1/2 is too short for a word in its middle: it is drawn where the drip is cut, the word beside its line."""
    bench = bench_of("sill")
    pages = [draw_picture(picture, bench, page)[0]["words"] for page, picture in enumerate(bench["about"]["pictures"])]

    assert [[word["anchor"] for word in words if word["of"] == "drip_clear"] for words in pages] == [[], ["start"], []]


def test_without_a_drip_nobody_is_told_to_cut_one():
    """Where it has no room the trial and the steps speak of the bevel alone."""
    data = ask("sill", overhang="1/2")

    assert "drip" not in " ".join([data["trial"]["text"], *data["steps"]]).lower()
    assert "Bevel one edge of a scrap" in data["trial"]["text"]
