"""A setup as plain data."""

import json

import pytest

from shopcalc.catalogue import setups
from shopcalc.describe import describe, drawn_for
from shopcalc.records import symbols_of

from .helpers import worked


@pytest.mark.parametrize("slug", setups())
def test_the_data_is_json(slug: str) -> None:
    """Everything described survives the way through JSON unchanged, so the phone reads what the server reads."""
    about = describe(setups()[slug])

    assert about == json.loads(json.dumps(about))


def test_a_stop_spoils_everything_unless_it_names_what() -> None:
    """A stop takes away all results, or those named and what follows from them; a caution none."""
    groove, angle = describe(setups()["groove"]), describe(setups()["angle"])

    assert sorted(groove["results"]) == groove["checks"]["cutter_too_wide"]["spoils"]
    assert ["gauge_rise", "percent", "ratio", "rise_in_12"] == angle["checks"]["upright"]["spoils"]
    assert [] == groove["checks"]["thin_cheek"]["spoils"]


def test_limits_are_fractions() -> None:
    """The most an input can be is written as top and under."""
    angle = describe(setups()["angle"])["inputs"]

    assert ([90, 1], [120, 1], []) == tuple(each["most"] for each in angle[:3])


def test_a_way_on_names_the_checks_that_doubt_a_reading() -> None:
    """Beside each value that may be carried stand the checks that keep it here."""
    (way,) = describe(setups()["groove"])["onwards"]

    assert [
        "groove_width",
        [
            ["measured_groove", ["fence_move_far_off", "narrower_than_cutter", "one_pass_alone", "one_pass_off", "one_pass_far_off"]],
            ["groove_width", []],
        ],
    ] == way["carry"][1]


def test_a_tilted_blade_leans_away_from_the_fence() -> None:
    """The cap's step says so: leaning toward it the blade would pinch the strip and throw it."""
    assert 1 == len([step for step in worked("ridge-cap")["steps"] if "leaning away from the fence" in step])


def test_one_pass_off_the_middle_is_mended_away_from_the_thinner_cheek() -> None:
    """The fence goes away from the cutter where the cheek that ran against it is the thinner."""
    (check,) = [each for each in worked("groove", cutter="3/8", measured_groove="0.39")["checks"] if each["name"] == "one_pass_off"]

    assert "away from the cutter if the cheek at the fence is the thinner" in check["text"]


def test_a_thin_gauge_block_is_to_be_changed() -> None:
    """Beside a thin block an offcut wedges against the blade; the caution leads to the block's own field."""
    checks = describe(setups()["tenon"])["checks"]
    held = {each["name"] for each in worked("tenon", gauge_block="1/2")["checks"]} - {each["name"] for each in worked("tenon")["checks"]}

    assert {("caution", "gauge_block", True)} == {(checks[name]["level"], checks[name]["change"], "wedge" in checks[name]["text"]) for name in held}


def test_the_program_is_in_declared_order() -> None:
    """Results and checks are worked in the order in which they were written."""
    program = describe(setups()["groove"])["program"]

    assert program.index("cheek") < program.index("thin_cheek") < program.index("fence_move")


@pytest.mark.parametrize(
    ("slug", "name", "drawn"),
    [
        ("tenon", "stock", ["stock"]),
        ("tenon", "groove_width", ["tenon_thickness"]),
        ("ridge-cap", "pitch_left", ["inside_angle"]),
        ("boards", "kerf", []),
        ("slats", "measured_spacer", ["even_gap"]),
        ("groove", "measured_groove", ["groove_width"]),
        ("frame", "measured_groove", ["groove_found", "groove/groove_width"]),
        ("frame", "gauge_block", ["tenon/gauge_block"]),
    ],
    ids=["its own", "what follows", "what follows of two", "nothing", "a reading", "beside the stock", "as found", "on a card inside"],
)
def test_an_input_is_seen_on_the_drawing(slug: str, name: str, drawn: list[str]) -> None:
    """By its own dimension, else by those of what follows from it; a reading by that of what it is compared with."""
    (declared,) = (each for each in describe(setups()[slug])["inputs"] if each["name"] == name)

    assert drawn == declared["drawn"]


@pytest.mark.parametrize("slug", setups())
def test_whatever_an_input_lights_is_drawn(slug: str) -> None:
    """Every name is that of a dimension of some picture of the card."""
    about = describe(setups()[slug])
    inside = [describe(each.setup) for each in setups()[slug].includes]
    drawn = {shape["of"] for picture in about["pictures"] for shape in picture["shapes"]}
    drawn |= {f"{one['slug']}/{shape['of']}" for one in inside for picture in one["pictures"] for shape in picture["shapes"]}

    assert {name for each in about["inputs"] for name in each["drawn"]} <= drawn


@pytest.mark.parametrize("slug", setups())
def test_an_input_lights_itself_or_what_follows_from_it(slug: str) -> None:
    """What only stands beside it in a formula stays dark, unless it is a reading, which is compared with just that."""
    setup = setups()[slug]
    for declared in (each for each in setup.inputs.values() if not each.reading):
        following = {declared.name, *(column.name for column in declared.columns)}
        for result in setup.results.values():
            if following & {symbol.name for symbol in symbols_of(result.formula)}:
                following.add(result.name)

        assert set(drawn_for(setup, declared)) <= following, declared.name
