"""Reading a card's entries and running its program."""

from fractions import Fraction
from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.cards.work import all_in, is_blank, read_choice, read_entries, read_entry, read_shop, shop_faults, work_out

from ...helpers import INCH_SHOP, MM_SHOP, NUMBERS, bench_of, raised


def declared(kind: str, **more: Any) -> dict[str, Any]:
    """An input as data."""
    return {"name": "x", "kind": kind, "zero": False, "most": [], "options": [], "reading": False, "signed": False, **more}


@pytest.mark.parametrize(
    ("query", "division", "metric"),
    [
        ({}, 32, False),
        ({"tape": "64"}, 64, False),
        ({"tape": "7"}, 32, False),
        ({"tape": ""}, 32, False),
        ({"units": "mm"}, 32, True),
        ({"units": "ell"}, 32, False),
    ],
)
def test_the_shop(query: dict[str, str], division: int, metric: bool) -> None:
    """A tape that no shop has is thirty-seconds, and anything but mm is inches."""
    assert {"division": division, "metric": metric} == read_shop(query)


@pytest.mark.parametrize(
    ("kind", "more", "typed", "answer"),
    [
        ("length", {}, "3 5/8", Fraction(29, 8)),
        ("length", {}, "0", "This cannot be zero."),
        ("length", {}, "0.0000000001", "This cannot be zero."),
        ("length", {"zero": True}, "0", 0),
        ("length", {"most": [6, 1]}, "6 1/64", "The most this can be is 6 in."),
        ("length", {"most": [6, 1]}, "6", 6),
        ("length", {}, "1/8 - 1 + 1", "That subtraction goes below zero."),
        ("length", {"signed": True, "zero": True}, "1/8 - 1 + 1", Fraction(1, 8)),
        ("angle", {"most": [90, 1]}, "90.1", "The most this can be is 90\u00b0."),
        ("angle", {"most": [90, 1]}, "10 - 20", "This cannot be less than zero."),
        ("angle", {"most": [90, 1]}, "5:1 - 2", "This cannot be less than zero."),
        ("count", {}, "4", 4),
        ("count", {}, "0", "This cannot be zero."),
    ],
)
def test_entries_are_held_against_their_limits(kind: str, more: dict[str, Any], typed: str, answer: object) -> None:
    """A value may stand where its input allows it, and else the reason is given."""
    got = read_entry(declared(kind, **more), typed, INCH_SHOP, exact.world())

    assert answer == (got["value"] if got["ok"] else got["message"])


def test_a_limit_is_told_in_the_shops_unit() -> None:
    """A metric shop is told the most in millimetres."""
    got = read_entry(declared("length", most=[1, 1]), "26", MM_SHOP, exact.world())

    assert "The most this can be is 25.4 mm." == got["message"]


def test_a_choice_is_known_by_its_place() -> None:
    """Formulas know an option by its place among its like."""
    options = [["lapped", "lapped"], ["mitred", "mitred"]]

    assert {"ok": True, "value": 1} == read_choice(declared("choice", options=options), "mitred", INCH_SHOP, exact.world())
    assert {"ok": False, "message": "Choose one of: lapped, mitred."} == read_choice(
        declared("choice", options=options), "glued", INCH_SHOP, exact.world()
    )


def test_a_division_is_its_own_number() -> None:
    """A tape's division is known by its ticks to the inch: a metric tape has a millimetre's, whatever is chosen."""
    tape = declared("division", options=[["8", ""], ["64", ""]])

    assert {"ok": True, "value": 64} == read_choice(tape, "64", INCH_SHOP, exact.world())
    assert {"ok": True, "value": Fraction("25.4")} == read_choice(tape, "64", MM_SHOP, exact.world())


def test_entries_start_where_the_setup_says() -> None:
    """What is not typed is what the setup starts with, and a blank reading is no value and no error."""
    found = read_entries(exact.world()["setups"]["groove"]["about"], {"stock": "2"}, INCH_SHOP, exact.world())

    assert ("2", "3/8", "") == (found["texts"]["stock"], found["texts"]["groove_width"], found["texts"]["measured_groove"])
    assert {} == found["errors"]
    assert "measured_groove" not in found["values"]


def test_every_wrong_entry_has_its_message() -> None:
    """All entries that cannot be read are named at once."""
    found = read_entries(exact.world()["setups"]["groove"]["about"], {"stock": "x", "cutter": ""}, INCH_SHOP, exact.world())

    assert {"stock", "cutter"} == set(found["errors"])


@pytest.mark.parametrize(("text", "blank"), [("", True), ("  ", True), (" 1", False), ("\t", True)])
def test_blank(text: str, blank: bool) -> None:
    """A reading is blank if it is empty but for spaces, of whatever kind."""
    assert blank == is_blank(text)


def test_all_in() -> None:
    """All of no names are known."""
    assert (True, True, False) == (all_in([], {}), all_in(["a"], {"a": 1}), all_in(["a", "b"], {"a": 1}))


def test_a_stop_takes_away_what_it_spoils_and_what_follows() -> None:
    """Where the cutter is too wide no fence is shown, and nothing that is worked out from it."""
    bench = bench_of("groove", cutter="1/2")

    assert set() == {"fence", "cheek", "rib_fence", "blade_height"} & set(bench["known"])
    assert "cutter_too_wide" in bench["raised"]


def test_a_caution_about_a_value_that_is_gone_is_not_given() -> None:
    """A caution about cheeks that a stop took away is left out."""
    assert "thin_cheek" not in bench_of("groove", groove_width="1 3/8")["raised"]


def test_a_caution_that_only_quotes_a_value_that_is_gone_is_not_given() -> None:
    """The rib that a stop took away is not warned of, though the cutter is narrow enough; without the stop it is."""
    stopped, narrow = bench_of("groove", groove_width="2"), bench_of("groove", groove_width="1", cutter="1/8")

    assert ("no_cheeks" in stopped["raised"], "narrow_cutter" in stopped["raised"]) == (True, False)
    assert "narrow_cutter" in narrow["raised"]


def test_a_result_is_absent_while_its_condition_does_not_hold() -> None:
    """The rib's fence is worked out only where a rib is left."""
    assert ("rib_fence" in bench_of("groove")["known"], "rib_fence" in bench_of("groove", cutter="1/8")["known"]) == (False, True)


def test_work_out_leaves_the_entries_alone() -> None:
    """The values read are not changed by working out."""
    setup = exact.world()["setups"]["groove"]
    values = {"stock": Fraction(1), "groove_width": Fraction(2), "groove_depth": Fraction(1), "cutter": Fraction(3)}
    work_out(setup["about"], setup["formulas"], values, NUMBERS)

    assert {"stock": 1, "groove_width": 2, "groove_depth": 1, "cutter": 3} == values


@pytest.mark.parametrize(
    ("query", "faults"),
    [({"tape": "64", "units": "mm"}, []), ({"tape": "7"}, ["tape"]), ({"units": "ell"}, ["units"]), ({"tape": "", "units": ""}, ["tape", "units"])],
)
def test_a_shop_that_cannot_be_is_told(query: dict[str, str], faults: list[str]) -> None:
    """A tape or a unit that no shop has is named."""
    assert faults == list(shop_faults(query))


@pytest.mark.parametrize(("slug", "name"), [("fractions", "entry"), ("ridge-cap", "pitch_left"), ("gauge-stack", "blocks"), ("boards", "lengths")])
def test_rows_sums_and_angles_start_the_same_in_a_metric_shop(slug: str, name: str) -> None:
    """They say that they are inches where bare numbers are millimetres."""
    assert bench_of(slug)["known"][name] == bench_of(slug, units="mm")["known"][name]


@pytest.mark.parametrize(
    ("slug", "name", "text"),
    [
        ("groove", "stock", "35"), ("groove", "groove_width", "9.5"), ("tenon", "fit", "0.15"), ("dado-stack", "under", "0.05"),
        ("tenon", "kerf", "3.18"), ("dado-stack", "outer_pair", "6.35"), ("rafter", "span", "2438"),
        ("wood-movement", "temperature_now", "21"),
    ],
)  # fmt: skip
def test_a_length_starts_as_one_has_it_in_a_metric_shop(slug: str, name: str, text: str) -> None:
    """In whole millimetres, small ones in halves, fits in tenths; what the shop owns as it is, to the hundredth."""
    assert text == bench_of(slug, units="mm")["texts"][name]


@pytest.mark.parametrize("slug", exact.world()["setups"])
def test_a_card_starts_as_soundly_in_a_metric_shop(slug: str) -> None:
    """Rounding the starting values brings no stop and no caution."""
    inch, metric = (exact.answer(f"/{slug}.json", {"units": units})["data"] for units in ("in", "mm"))

    assert raised(metric) <= raised(inch)


UNUSED = {
    "a gap, when the number is given": ("slats", {"by": "count", "gap": "banana"}, {"gap"}),
    "the number, when the gap is given": ("slats", {"by": "gap", "count": "1/0"}, {"count"}),
    "the air, by a meter": (
        "wood-movement",
        {"rh_dry": "x"},
        {"temperature_now", "rh_now", "temperature_dry", "rh_dry", "temperature_wet", "rh_wet"},
    ),
    "the meter, by the air": ("wood-movement", {"by": "climate", "moisture_dry": ""}, {"moisture_now", "moisture_dry", "moisture_wet"}),
    "a rail that is not there": ("frame", {"mid_rail": "0", "foot": "shed"}, {"mid_rail"}),
    "what hangs below no shed foot": ("frame", {"mid_rails": "1", "shed_overhang": "-1"}, {"shed_overhang"}),
}


@pytest.mark.parametrize("what", UNUSED)
def test_an_input_that_is_not_used_does_not_block_the_answer(what: str) -> None:
    """What the chosen option does not use may be unreadable; the form says that it is not used."""
    slug, query, idle = UNUSED[what]
    view = exact.answer(f"/{slug}", query)["view"]

    assert idle == {one["name"] for one in view["fields"] if one["idle"]}
    assert {"not used"} == {one["note"] for one in view["fields"] if one["idle"]}
    assert (False, 1) == (view["is_wrong"], len(view["answers"]))


def test_an_input_that_is_used_again_has_its_value() -> None:
    """A value that is not used now stands in its field, for when it is."""
    view = exact.answer("/slats", {"by": "count", "gap": "5/8"})["view"]

    assert "5/8" == next(one["text"] for one in view["fields"] if one["name"] == "gap")


def test_while_the_choice_cannot_be_read_nothing_is_unused() -> None:
    """Then every entry counts, and the choice is what is wrong."""
    view = exact.answer("/slats", {"by": "guess"})["view"]

    assert [] == [one["name"] for one in view["fields"] if one["idle"]]
    assert ["by"] == [one["name"] for one in view["wrong"]]


@pytest.mark.parametrize(
    ("slug", "name", "text"), [("ridge-cap", "joint", " lapped\t"), ("fractions", "nearest", "64\u00a0"), ("tenon", "measured_tenon", "\u00a0")]
)
def test_spaces_that_a_keyboard_adds_are_forgiven(slug, name, text):
    """Behind an option, a division, or where nothing was read."""
    assert 200 == exact.answer(f"/{slug}.json", {name: text})["status"]
