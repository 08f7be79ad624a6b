"""A setup that stands inside another."""

from collections.abc import Iterator
from typing import Any

import pytest
import sympy
from py_mini_racer import MiniRacer

from shopcalc import phone
from shopcalc.catalogue import setups
from shopcalc.declare import DeclarationError, Setup
from shopcalc.exact import make_world
from shopcalc.portable.answer import respond
from shopcalc.reference.species import SPECIES
from shopcalc.render import render
from shopcalc.terms import inches

from .helpers import fold, phone_answer, phone_respond, unlike


def frame() -> Setup:
    """A groove and the tenon for it, of one stock: the groove as it measures is what the tenon is made for."""
    setup = Setup(slug="frame", title="Groove and tenon", stand="at the saw", job="Both joints of a frame.", machines=("table saw",))
    stock = setup.length("stock", "Stock", "1 1/2", "Calipers across it.")
    third = setup.size("third", "A third of the stock", stock / 3)
    groove = setup.include(setups()["groove"], stock=stock, groove_width=third)
    found = setup.as_found("groove_found", "Groove as found", groove["measured_groove"], third)
    setup.include(setups()["tenon"], stock=stock, groove_width=found, groove_depth=groove["groove_depth"])
    setup.source("Geometry.")
    return setup.finish()


PAGES = {**setups(), "frame": frame()}


@pytest.fixture(scope="module")
def engine() -> Iterator[MiniRacer]:
    """The phone with the frame among its setups."""
    with MiniRacer() as made:
        made.eval(phone.brain(PAGES))
        yield made


@pytest.fixture(scope="module")
def world() -> dict[str, Any]:
    """The server with the frame among its setups."""
    return make_world(PAGES)


def inner(world: dict[str, Any], slug: str, **typed: str) -> dict[str, str]:
    """The results of an included card as texts."""
    cards = respond(world, "/frame", typed, "")["view"]["sheets"][0]["inner"]
    card = next(each for each in cards if each["slug"] == slug)
    rows = [*card["sheets"][0]["settings"], *card["sheets"][0]["sizes"]]
    return {row["name"]: row["text"] for row in rows}


def test_included_cards_are_worked_out_from_this_one(world: dict[str, Any]) -> None:
    """The groove inside is a third of the stock, and the tenon fits it."""
    assert "1/2 in" == inner(world, "groove")["fence"]
    assert "1 in" == inner(world, "groove", stock="3")["cheek"]
    assert ("1/2 in scant", "1/2 in full") == (inner(world, "tenon")["tenon_thickness"], inner(world, "tenon")["shoulder_height"])


def test_inputs_that_are_not_given_are_lifted(world: dict[str, Any]) -> None:
    """What is not given is asked for once, on this card."""
    assert [
        "stock",
        "groove_depth",
        "cutter",
        "measured_groove",
        "fit",
        "end_play",
        "kerf",
        "gauge_block",
        "measured_tenon",
        "measured_cheeks",
    ] == list(PAGES["frame"].inputs)
    assert "5/8 in" == inner(world, "groove", groove_depth="5/8")["blade_height"]
    assert "19/32 in" == inner(world, "tenon", groove_depth="5/8")["tenon_length"]


def test_a_reading_flows_on(world: dict[str, Any]) -> None:
    """Once the groove is measured the tenon is made for the groove as it is."""
    assert "17/32 in" == inner(world, "tenon", measured_groove="17/32", fit="0")["tenon_thickness"]
    assert "1/2 in" == inner(world, "groove", measured_groove="17/32")["fence"]


@pytest.mark.parametrize("part", ["", "opening", "answer", "sheet"])
@pytest.mark.parametrize(
    "typed",
    [{}, {"measured_groove": "17/32"}, {"measured_groove": "17/32", "measured_tenon": "0.53"}, {"cutter": "2"}, {"fit": "9"}, {"stock": "x"},
    {"tape": "8", "units": "mm"}],
)  # fmt: skip
def test_both_sides_show_the_same(part: str, typed: dict[str, str], engine: MiniRacer, world: dict[str, Any]) -> None:
    """A card with cards inside is the same on the server and on the phone."""
    server = respond(world, "/frame", typed, part)
    phone_page = phone_answer(engine, "/frame", typed, part)

    assert [] == unlike(server, phone_respond(engine, "/frame", typed, part))
    assert (server["status"], fold(render(server["template"], server["view"]))) == (phone_page["status"], fold(phone_page["body"]))


def test_checks_of_an_included_card_are_shown_in_it(world: dict[str, Any]) -> None:
    """A cutter too wide for the groove is told where the groove stands, and the tenon is still worked out."""
    cards = respond(world, "/frame", {"cutter": "1"}, "")["view"]["sheets"][0]["inner"]

    assert {"groove": ["cutter_too_wide"], "tenon": []} == {
        card["slug"]: [check["name"] for check in card["checks"] if check["level"] == "stop"] for card in cards
    }


def test_inputs_that_clash_are_refused() -> None:
    """An included setup may not bring an input that is here already."""
    setup = Setup(slug="clash", title="Clash", stand="at the saw", job="A job.")
    setup.length("stock", "Stock", "1", "Calipers.")
    with pytest.raises(DeclarationError, match="clash: groove brings an input 'stock' that is here already: give it a value"):
        setup.include(setups()["groove"])


def test_no_card_is_inside_another_twice() -> None:
    """Its results and its operations are told apart by its name alone."""
    setup = Setup(slug="clash", title="Clash", stand="at the saw", job="A job.")
    stock = setup.length("stock", "Stock", "1", "Calipers.")
    setup.include(setups()["groove"], stock=stock)
    with pytest.raises(DeclarationError, match="clash: groove is inside it already"):
        setup.include(setups()["groove"], stock=stock)


def test_a_column_that_clashes_is_refused() -> None:
    """A table that an included setup brings has values too, and no other value may have their names."""
    inner = Setup(slug="inner", title="Inner", stand="at the saw", job="A job.")
    inner.table("species", "Wood", "The wood.", SPECIES, radial="number")
    setup = Setup(slug="clash", title="Clash", stand="at the saw", job="A job.")
    setup.setting("species_radial", "A setting", setup.length("stock", "Stock", "1", "Calipers."))
    with pytest.raises(DeclarationError, match="clash: 'species_radial' is declared twice"):
        setup.include(inner)


def test_an_input_does_not_count_as_used_because_an_inner_card_has_its_name() -> None:
    """What the inner card is given a value for is not this card's input of the same name."""
    setup = Setup(slug="clash", title="Clash", stand="at the saw", job="A job.")
    stock = setup.length("stock", "Stock", "1", "Calipers.")
    setup.length("fit", "Fit", "1/64", "The play.")
    setup.include(setups()["tenon"], stock=stock, fit=inches(0))
    setup.source("Geometry.")
    with pytest.raises(DeclarationError, match="clash: the input 'fit' is used by nothing"):
        setup.finish()


@pytest.mark.parametrize(
    ("given", "message"),
    [
        ({"depth": inches(1)}, "groove has no input 'depth'"),
        ({"stock": sympy.Symbol("nothing", real=True)}, "groove.stock uses 'nothing', which is declared nowhere above it"),
        ({"stock": sympy.Integer(1)}, "groove.stock should be a length and comes out as a number"),
    ],
)
def test_what_is_given_must_fit(given: dict[str, sympy.Basic], message: str) -> None:
    """A value is given to an input that exists, from names that exist, in its unit."""
    setup = Setup(slug="clash", title="Clash", stand="at the saw", job="A job.")
    with pytest.raises(DeclarationError) as refusal:
        setup.include(setups()["groove"], **given)

    assert f"clash: {message}" == str(refusal.value)
