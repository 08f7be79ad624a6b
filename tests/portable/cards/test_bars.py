"""The boards of a layout as bars."""

from typing import Any

from shopcalc.portable.cards.bars import cuts_in_words, shown_boards

from ...helpers import INCH_SHOP, MM_SHOP, UNITS
from ..wood.test_layout import KERF, TRIM, laid


def drawn(shop: dict[str, Any] = INCH_SHOP) -> list[dict[str, Any]]:
    """The boards as pictures."""
    found = laid()
    return list(shown_boards("bench", found["boards"], found["labels"], found["lengths"], KERF, TRIM, shop, UNITS))


def test_cuts_alike_are_counted_in_order() -> None:
    """Only neighbours are taken together."""
    assert ["a x2", "b", "a"] == cuts_in_words(["a", "a", "b", "a"])


def test_a_bar_is_drawn_to_scale() -> None:
    """The whole board stands hatched under its parts, every cut is marked, and the words say what is left."""
    first = drawn()[0]

    assert "bench-0" == first["id"]
    assert ["waste", "wood", "wood"] == [area["style"] for area in first["areas"]]
    assert "M4 7h352v30H4Z" == first["areas"][0]["path"]
    assert 2 == first["marks"][0]["path"].count("M")
    assert "1 of 96\u00a0in: rail 40 x2; 15\u00a01/4\u00a0in left." == first["caption"]


def test_a_metric_shop_has_millimetres() -> None:
    """Sizes and words are in the shop's unit."""
    assert "1 of 2438.4\u00a0mm: rail 1016.0\u00a0mm x2; 387.4\u00a0mm left." == drawn(MM_SHOP)[0]["caption"]
