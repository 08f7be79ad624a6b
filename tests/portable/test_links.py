"""Addresses of cards that carry entries along."""

from urllib.parse import parse_qs, quote_plus, urlsplit

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.links import encoded, shop_query, shown_onwards

from ..helpers import bench_of, run

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


@pytest.mark.parametrize(
    ("division", "metric", "parts"), [(32, False, []), (64, False, ["tape=64"]), (32, True, ["units=mm"]), (8, True, ["tape=8", "units=mm"])]
)
def test_the_shop_goes_along_where_it_is_not_the_usual(division: int, metric: bool, parts: list[str]) -> None:
    """Tape and units are carried along; what is usual goes unsaid."""
    assert parts == shop_query({"division": division, "metric": metric})
