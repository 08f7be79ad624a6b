"""The card of wood movement: the gap it gives, what it warns of, and what it says to do."""

import pytest

from shopcalc.catalogue import setups
from shopcalc.reference.species import MEMORY, RECOMPUTED, RECOMPUTED_FROM_22, SPECIES

from ..published.asking import ask, results_of

CLIMATE = {"by": "climate"}

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("swapped_moisture_dry", {"moisture_dry": "13.1"}, {"moisture_dry": "13"}),
    ("swapped_rh_dry", {"rh_dry": "71", "temperature_dry": "60", **CLIMATE}, {"rh_dry": "70", "temperature_dry": "60", **CLIMATE}),
    ("outside_moisture_now", {"moisture_now": "14.1"}, {"moisture_now": "14"}),
    ("outside_moisture_dry", {"moisture_dry": "5.9"}, {"moisture_dry": "6"}),
    ("outside_moisture_wet", {"moisture_wet": "14.1"}, {"moisture_wet": "14"}),
    ("outside_rh_now", {"rh_now": "80", **CLIMATE}, {"rh_now": "80"}),
    ("outside_rh_dry", {"rh_dry": "25", **CLIMATE}, {"rh_dry": "25"}),
    ("outside_rh_wet", {"rh_wet": "75", **CLIMATE}, {"rh_wet": "70", **CLIMATE}),
    ("cold_now", {"temperature_now": "29.9", **CLIMATE}, {"temperature_now": "30", **CLIMATE}),
    ("cold_dry", {"temperature_dry": "-5", **CLIMATE}, {"temperature_dry": "-5"}),
    ("cold_wet", {"temperature_wet": "-2 C", **CLIMATE}, {"temperature_wet": "0 C", **CLIMATE}),
    ("moves_much", {"width": "11.42"}, {"width": "11.41"}),
    # from 8 to 12 percent 12 in of white oak move 0.175 in, although from 6 percent they swell by 0.263
    (
        "moves_much",
        {"width": "18", "moisture_now": "6", "moisture_dry": "8", "moisture_wet": "12"},
        {"width": "12", "moisture_now": "6", "moisture_dry": "8", "moisture_wet": "12"},
    ),
    ("tight", {"moisture_now": "12.9"}, {"moisture_now": "13"}),
    ("only_swells", {"moisture_now": "6.9"}, {"moisture_now": "7"}),
    ("only_shrinks", {"moisture_now": "13"}, {"moisture_now": "12.9"}),
    ("saturated", {"moisture_now": "30"}, {"moisture_now": "29.9"}),
    ("recomputed", {"species": "western redcedar"}, {"species": "white oak"}),
    ("from_memory", {"species": "teak"}, {"species": "white oak"}),
]


def checks(**entries):
    """Give the checks that hold, by name."""
    return {check["name"]: check for check in ask("wood-movement", **entries)["checks"]}


def test_the_first_card_warns_of_nothing_by_meter_or_by_air():
    """The sizes it opens with are sensible either way: all it says is what the gap is for."""
    assert list(checks()) == ["tight"]
    assert list(checks(**CLIMATE)) == ["tight"]


@pytest.mark.parametrize("tape", ["8", "32", "128"])
def test_the_gap_is_a_plain_mark(tape):
    """A spacer is planed to a mark, never less than the board swells: 0.106 wants 1/8, on any tape, and no scant of it."""
    card = ask("wood-movement", tape=tape)

    assert card["results"]["gap_at_fitting"]["text"] == "1/8"
    assert "spacer of 1/8 in and set" in " ".join(card["steps"])


def test_the_first_card_says_what_a_tight_fit_would_do():
    """The sentence names the board, what it gains, and what breaks."""
    said = checks()["tight"]["text"]

    assert [words for words in ("7 1/4 in", "swells 3/32 in full", "between slats", "pushes its frame apart") if words not in said] == []


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in checks(**holds)
    assert check not in checks(**edge)


@pytest.mark.parametrize(("entries", "check", "change"), [
    ({"moisture_wet": "20"}, "outside_moisture_wet", "moisture_wet"),
    ({"rh_wet": "90", **CLIMATE}, "outside_rh_wet", "rh_wet"),
    ({"moisture_dry": "20"}, "swapped_moisture_dry", "moisture_dry"),
    ({"species": "teak"}, "from_memory", "species"),
])  # fmt: skip
def test_a_check_names_the_entry_that_was_used(entries, check, change):
    """By meter it leads to the meter's entry, by air to the humidity."""
    assert check in checks(**entries)
    assert setups()["wood-movement"].checks[check].change == change


def test_entries_that_are_not_used_change_nothing():
    """By meter the air does not matter, and by air the meter does not."""
    assert results_of("wood-movement", rh_now="99", temperature_wet="-40") == results_of("wood-movement")
    assert results_of("wood-movement", moisture_now="3", **CLIMATE) == results_of("wood-movement", **CLIMATE)


def test_seasons_that_are_exchanged_give_no_gap():
    """Where the driest is wetter than the wettest only the moistures are left, and nothing is drawn of them."""
    assert set(results_of("wood-movement", moisture_dry="20")) == {"emc_now", "emc_dry", "emc_wet", "coefficient"}


def test_wood_drier_than_its_driest_season_does_not_shrink():
    """It only swells, and its gap is never wider than when it is fitted."""
    values = results_of("wood-movement", moisture_now="6")

    assert values["shrink"] == 0
    assert values["gap_at_fitting"] > results_of("wood-movement")["gap_at_fitting"]
    assert values["gap_at_driest"] < values["gap_at_fitting"]


def test_wood_drier_than_its_driest_season_is_wider_in_it():
    """From 6 to 8 percent 7 1/4 in of white oak gain 0.053, and the gap closes by as much; a lap has to cover the gap as it is now."""
    card = ask("wood-movement", moisture_now="6", moisture_dry="8", moisture_wet="12")
    values = {name: result["value"] for name, result in card["results"].items()}

    assert values["width_dry"] == pytest.approx(7.25 * (1 + 0.00365 * 2))
    assert values["gap_at_driest"] == pytest.approx(values["gap_at_fitting"] - 7.25 * 0.00365 * 2)
    assert values["movement"] == pytest.approx(7.25 * 0.00365 * 4)
    assert "cover more than 3/16 in: the gap is at its widest now" in " ".join(card["steps"])


def test_wood_wetter_than_its_wettest_season_is_narrower_in_it():
    """From 16 to 12 percent 7 1/4 in of white oak lose 0.106."""
    values = results_of("wood-movement", moisture_now="16", moisture_wet="12")

    assert values["width_wet"] == pytest.approx(7.25 * (1 - 0.00365 * 4))
    assert values["movement"] == pytest.approx(7.25 * 0.00365 * 5)


def test_wood_wetter_than_its_wettest_season_wants_no_gap():
    """It only shrinks: it is fitted tight, and the gap comes by itself."""
    values = results_of("wood-movement", moisture_now="16")
    steps = " ".join(ask("wood-movement", moisture_now="16")["steps"])

    assert (values["swell"], values["gap_at_fitting"]) == (0, 0)
    assert values["gap_at_driest"] == values["shrink"] > 0
    assert "boards may touch" in steps and "spacer" not in steps


def test_wood_full_of_water_counts_as_thirty_percent():
    """A green board shrinks only from where its cells are full, and the dampest air leaves wood short of that."""
    assert results_of("wood-movement", moisture_now="80") == results_of("wood-movement", moisture_now="30")
    assert 28 < results_of("wood-movement", rh_wet="100", **CLIMATE)["emc_wet"] < 30


def test_a_quartersawn_board_moves_less():
    """White oak on the quarter moves by 1.80 where flatsawn moves by 3.65."""
    flat, quarter = results_of("wood-movement"), results_of("wood-movement", grain="quarter")

    assert quarter["swell"] / flat["swell"] == pytest.approx(1.80 / 3.65)


@pytest.mark.parametrize(
    ("source", "check"), [({RECOMPUTED, RECOMPUTED_FROM_22}, "recomputed"), ({RECOMPUTED_FROM_22}, "dries_late"), ({MEMORY}, "from_memory")]
)
def test_a_wood_that_was_not_read_says_where_its_figures_come_from(source, check):
    """Each such wood, and no other, has a note of its own."""
    assert {option for option in SPECIES if check in checks(species=option)} == {option for option, row in SPECIES.items() if row.source in source}


@pytest.mark.parametrize(("entries", "said", "unsaid"), [
    ({}, ["9% by meter", "spacer of 1/8 in", "half of it at the bottom of each groove", "cover more than 3/16 in scant"], ["air of"]),
    (CLIMATE, ["air of 70 \u00b0F and 50% humidity has 9.2% moisture"], ["by meter"]),
    ({"moisture_wet": "9", "moisture_dry": "9"}, ["boards may touch"], ["spacer", "must cover"]),
])  # fmt: skip
def test_the_steps_are_those_of_the_season(entries, said, unsaid):
    """Each step has its number, and steps for what does not move are left out."""
    steps = " ".join(ask("wood-movement", **entries)["steps"])

    assert [words for words in said if words not in steps] == []
    assert [words for words in unsaid if words in steps] == []


@pytest.mark.parametrize(
    ("name", "entry"), [("species", "mahogany"), ("rh_wet", "101"), ("moisture_now", "0"), ("width", "0"), ("temperature_now", "-101")]
)
def test_what_cannot_be_is_refused_at_its_entry(name, entry):
    """The fault stands at the entry, and the others keep theirs."""
    with pytest.raises(AssertionError, match=name):
        ask("wood-movement", **{"by": "climate" if name in ("rh_wet", "temperature_now") else "percent", name: entry})
