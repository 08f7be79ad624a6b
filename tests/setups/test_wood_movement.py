"""The card of wood movement: the gap it gives, what it warns of, and what it says to do."""

import pytest

from shopcalc.catalogue import setups
from shopcalc.reference.species import MEMORY, RECOMPUTED, SPECIES

from ..published.asking import ask, results_of, texts_of

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


def test_the_gap_stands_first_and_is_rounded_up():
    """A gap is a clearance: the mark on the tape is never less than the board swells."""
    assert texts_of("wood-movement")["gap_at_fitting"] == "1/8 scant"
    assert texts_of("wood-movement", tape="64")["gap_at_fitting"] == "7/64 scant"


def test_the_first_card_says_what_a_tight_fit_would_do():
    """The sentence names the board, what it gains, and what breaks."""
    said = checks()["tight"]["text"]

    assert [words for words in ("7 1/4 in", "3/32 in full of swelling", "between slats", "pushes its frame apart") if words not in said] == []


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
    assert values["gap_at_driest"] == values["gap_at_fitting"] > results_of("wood-movement")["gap_at_fitting"]


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


@pytest.mark.parametrize(("source", "check"), [(RECOMPUTED, "recomputed"), (MEMORY, "from_memory")])
def test_a_wood_that_was_not_read_says_where_its_figures_come_from(source, check):
    """Each such wood, and no other, has a note of its own."""
    assert {option for option in SPECIES if check in checks(species=option)} == {option for option, row in SPECIES.items() if row.source == source}


@pytest.mark.parametrize(("entries", "said", "unsaid"), [
    ({}, ["9% by meter", "spacer of 1/8 in scant", "half of it at the bottom of each groove", "cover 3/16 in scant"], ["air of"]),
    (CLIMATE, ["air of 70 \u00b0F and 50% has 9.2%"], ["by meter"]),
    ({"moisture_wet": "9", "moisture_dry": "9"}, ["boards may touch"], ["spacer", "must still cover"]),
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
