"""Addresses of cards that carry entries along."""

from urllib.parse import parse_qs, quote_plus, urlsplit

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.cards.links import encoded, shop_query, shown_onwards

from ...helpers import bench_of, run

TEXTS = ["3 5/8", "3\u215d\u2033", "6' 6\"", "1 + 2 & 3 = 4", "100%", "a/b?c#d", "-._~", "\u2212\u00d7"]


@pytest.mark.parametrize("text", TEXTS)
def test_texts_are_encoded_as_the_standard_library_does(text: str, phone_brain: MiniRacer) -> None:
    """Any entry survives in an address, encoded alike on both sides."""
    assert quote_plus(text) == encoded(text) == run(phone_brain, "encoded(given[0])", text)


def test_the_way_on_carries_entries_as_they_were_typed() -> None:
    """From a groove to its tenon go stock, width and depth, as typed."""
    links = shown_onwards(bench_of("groove", stock="1\u215c", groove_width="5/16"))
    address = urlsplit(links[0]["address"])

    assert ("/tenon", {"stock": ["1\u215c"], "groove_width": ["5/16"], "groove_depth": ["1/2"]}) == (address.path, parse_qs(address.query))


def test_a_reading_goes_on_before_what_was_planned() -> None:
    """Once the groove is measured, its tenon is worked out from the groove as it is."""
    links = shown_onwards(bench_of("groove", measured_groove="0.382"))

    assert ["0.382"] == parse_qs(urlsplit(links[0]["address"]).query)["groove_width"]


def test_a_length_that_was_worked_out_goes_on_as_it_is() -> None:
    """From a frame to its hinges and its edge go height and width, never rounded: as a fraction, as decimals, in millimetres."""
    ways = carried("frame", opening_width="32 1/2", opening_height="78 1/4", gap_head="0.1", gap_side="1/16")

    assert (["78.025"], ["32 3/8"]) == (ways["/hinge-layout"]["door_height"], ways["/door-edge"]["door_width"])
    assert ["822.325"] == carried("frame", opening_width="32 1/2 in", gap_side="1/16 in", units="mm")["/door-edge"]["door_width"]


def test_a_length_that_cannot_be_goes_nowhere() -> None:
    """From a frame that its gaps eat up goes no width."""
    assert "door_width" not in carried("frame", opening_width="3", gap_side="2")["/door-edge"]


def carried(slug: str, **typed: str) -> dict[str, list[str]]:
    """What each way on from a card carries along, by the card it leads to."""
    addresses = [urlsplit(link["address"]) for link in shown_onwards(bench_of(slug, **typed))]
    return {address.path: parse_qs(address.query) for address in addresses}


def test_a_reading_that_is_told_to_be_far_off_goes_nowhere() -> None:
    """A slip of the calipers is not carried on: the tenon is for the groove as planned, and where nothing was planned nothing goes."""
    assert ["3/8"] == carried("groove", measured_groove="1")["/tenon"]["groove_width"]
    assert ["3/4"] == carried("dado-stack", measured_dado="3/4")["/groove"]["cutter"]
    assert "cutter" not in carried("dado-stack", measured_dado="2")["/groove"]


def test_a_reading_that_no_correction_follows_still_goes_on() -> None:
    """One pass says nothing of the fence, and is the width of the groove all the same."""
    assert ["0.379"] == carried("groove", cutter="3/8", measured_groove="0.379")["/tenon"]["groove_width"]


@pytest.mark.parametrize(
    ("division", "metric", "parts"), [(32, False, []), (64, False, ["tape=64"]), (32, True, ["units=mm"]), (8, True, ["tape=8", "units=mm"])]
)
def test_the_shop_goes_along_where_it_is_not_the_usual(division: int, metric: bool, parts: list[str]) -> None:
    """Tape and units are carried along; what is usual goes unsaid."""
    assert parts == shop_query({"division": division, "metric": metric})
