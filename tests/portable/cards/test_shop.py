"""What belongs to the shop, and not to a piece."""

from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact
from shopcalc.catalogue import setups
from shopcalc.portable.cards.shop import shop_declared, with_shop_defaults

from ...helpers import run

WORLD = exact.world()
NAMES = ["kerf", "outer_pair", "chippers", "shims", "arbor", "cutter", "gauge_block", "blocks", "bit", "collar"]


def filled(slug: str, query: dict[str, str], kept: dict[str, str]) -> dict[str, str]:
    """A query with the shop's texts in it."""
    return dict(with_shop_defaults(WORLD["setups"][slug]["about"], query, kept))


def test_each_thing_of_the_shop_is_listed_once() -> None:
    """The kerf of three cards is one kerf; the order is that of the cards."""
    assert NAMES == [one["name"] for one in shop_declared(WORLD)]


@pytest.mark.parametrize("name", NAMES)
def test_a_name_means_the_shops_in_every_card(name: str) -> None:
    """An input of that name is the shop's wherever it stands, is of one kind, and starts alike."""
    found = [setup.inputs[name] for setup in setups().values() if name in setup.inputs]

    assert {(True, found[0].kind, found[0].start)} == {(each.shop, each.kind, each.start) for each in found}


def test_the_shop_is_alike_on_the_phone(phone_brain: MiniRacer) -> None:
    """Both sides list the same."""
    assert shop_declared(WORLD) == run(phone_brain, "shop_declared(world)")


QUERIES: dict[str, tuple[dict[str, str], dict[str, str], dict[str, str]]] = {
    "what the address leaves open is the shop's": ({"stock": "2"}, {"kerf": "0.098"}, {"stock": "2", "kerf": "0.098"}),
    "what the address says stands": ({"kerf": "1/8"}, {"kerf": "0.098"}, {"kerf": "1/8"}),
    "what the card has no use for stays away": ({}, {"collar": "1/2"}, {}),
    "what is the piece's stays away": ({}, {"stock": "2"}, {}),
    "tape and units come along": ({}, {"tape": "64", "units": "mm"}, {"tape": "64", "units": "mm"}),
}


@pytest.mark.parametrize("what", QUERIES)
def test_a_query_is_filled_from_the_shop(what: str, phone_brain: MiniRacer) -> None:
    """Alike on both sides."""
    query, kept, wanted = QUERIES[what]

    assert wanted == filled("tenon", query, kept) == run(phone_brain, "with_shop_defaults(world.setups.tenon.about, given[0], given[1])", query, kept)


def test_filling_leaves_the_query_as_it_was() -> None:
    """The query that is given is not changed."""
    query = {"stock": "2"}
    filled("tenon", query, {"kerf": "1/8"})

    assert {"stock": "2"} == query


def shown(query: dict[str, str]) -> dict[str, Any]:
    """The page of the shop."""
    return exact.answer("/shop", query)


def test_the_page_of_the_shop_says_how_each_thing_was_understood() -> None:
    """Every thing of the shop has its field, and its echo."""
    view = shown({"kerf": "0.098"})["view"]
    notes = {one["name"]: one["note"] for one in view["fields"]}

    assert sorted(NAMES) == sorted(notes)
    assert "0.098\u00a0in \u00b7 2.5\u00a0mm" == notes["kerf"]


def test_the_page_of_the_shop_says_what_is_wrong() -> None:
    """What cannot be read is told at its field."""
    found = shown({"kerf": "1/0"})

    assert (422, ["kerf"]) == (found["status"], [one["name"] for one in found["view"]["wrong"]])


def test_the_starting_values_keep_what_is_the_shops() -> None:
    """The way back to the starting values takes the shop's own things along, and no others."""
    assert "/tenon?kerf=0.098&tape=64" == exact.answer("/tenon", {"kerf": "0.098", "stock": "2", "tape": "64"})["view"]["starting"]
