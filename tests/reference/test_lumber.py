"""What a yard calls its boards."""

import json
from fractions import Fraction

import pytest

from shopcalc import exact
from shopcalc.portable.jobs.woodview import dressed_name
from shopcalc.reference.lumber import THICKNESSES, WIDTHS, dressed_sizes

from ..helpers import NUMBERS

# Minimum dressed sizes, dry, of the American Softwood Lumber Standard PS 20, read in a page that quotes them:
# engineeringtoolbox.com, softwood lumber standard dimensions; 2 and more also in Tenn. Comp. R. & Regs. 0080-07-07-.06, Table 4
PUBLISHED = {
    "1 x 4": ("3/4", "7/2"),
    "1 x 12": ("3/4", "45/4"),
    "2 x 4": ("3/2", "7/2"),
    "2 x 10": ("3/2", "37/4"),
    "4 x 4": ("7/2", "7/2"),
    "5/4 x 6": ("1", "11/2"),
}


@pytest.mark.parametrize("name", PUBLISHED)
def test_a_board_measures_what_the_standard_says(name: str) -> None:
    """A name is of a thickness and a width."""
    thick, wide = name.split(" x ")

    assert PUBLISHED[name] == (str(THICKNESSES[thick]), str(WIDTHS[wide]))


def test_every_size_has_one_name() -> None:
    """What measures so much is found by its size, and what is no dressed size has none."""
    table = dressed_sizes()["width"]

    assert list(WIDTHS) == [dressed_name(size, table, NUMBERS) for size in WIDTHS.values()]
    assert "" == dressed_name(Fraction(5), table, NUMBERS)


def test_the_bill_says_what_to_ask_for_at_the_yard() -> None:
    """A board to buy that is a dressed size is named; one that is not, and one in a metric shop, is told by its measures alone."""
    job = {"format": "shopcalc job", "version": 1, "parts": [{"label": "Slat", "count": 1, "length": "20", "width": "2", "thickness": "3/4"}]}
    bought = []
    for shop, width in (({}, "3 1/2"), ({}, "3 3/8"), ({"units": "mm"}, "3 1/2")):
        unit = " in" if shop else ""
        lumber = [{"thickness": "3/4" + unit, "width": width + unit, "to_buy": "96" + unit}]
        parts = [{**part, **{name: part[name] + unit for name in ("length", "width", "thickness")}} for part in job["parts"]]
        view = exact.answer_document("/job", json.dumps({**job, "parts": parts, "shop": shop, "lumber": lumber}))["view"]
        bought.append(view["buy"][0]["text"])

    assert bought == [
        "1 of 3/4\u00a0in x 3\u00a01/2\u00a0in x 96\u00a0in, a dressed 1 x 4",
        "1 of 3/4\u00a0in x 3\u00a03/8\u00a0in x 96\u00a0in",
        "1 of 19.1\u00a0mm x 88.9\u00a0mm x 2438.4\u00a0mm",
    ]
