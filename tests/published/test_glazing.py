"""A pane heated and cooled in its groove: with Pint's differences of temperature, with numpy, and against what sheet makers say.

Sources of the expansion, each read in a page that quotes it: acrylic 40e-6 /°F or 7.2e-5 /K, some grades 44e-6 /°F, and
polycarbonate 38e-6 /°F or 6.84e-5 /K, a sheet maker's glazing note; multiwall polycarbonate 0.065 mm/(m·°C), ASTM D696, a
maker's catalogue; glass 9e-6 /K, EN 572, a glass maker's data. A general table has 8e-6 for glass, which would ask for less
room. That 48 in of acrylic move about 3/16 in over 100 °F was read in a page of another maker.
"""

import numpy as np
import pint
import pytest

from shopcalc.reference.glazing import PANES

from .asking import ask, results_of

UNITS = pint.UnitRegistry()
PER_KELVIN = {"acrylic": 7.2e-5, "acrylic that moves more": 7.92e-5, "polycarbonate": 6.84e-5, "multiwall": 6.5e-5, "glass": 9e-6}
PANES_HUNG = [  # opening, groove, and the temperatures when cut, coldest and hottest in °F
    ("22", "29 1/2", "1/2", "65", "-10", "115"),
    ("48", "20", "5/8", "70", "-30", "150"),
    ("10", "10", "3/8", "40", "20", "100"),
    ("30", "72", "3/4", "32", "32", "90"),
    # cut colder, and hotter, than it will ever be
    ("22", "40", "1/2", "0", "20", "110"),
    ("22", "29 1/2", "1/2", "120", "-10", "115"),
]
ORDERS = [(material, *hung) for material in PER_KELVIN for hung in PANES_HUNG]
NAMES = ("material", "opening_width", "opening_height", "groove_depth", "temp_cut", "temp_cold", "temp_hot")


def inches_of(text):
    """Read `29 1/2`."""
    return sum(float(np.divide(*map(float, part.split("/")))) if "/" in part else float(part) for part in text.split())


def strain(material, start, end):
    """Work out how much an inch of it moves from one temperature to another, with Pint's own degrees."""
    difference = UNITS.Quantity(float(end), "degF") - UNITS.Quantity(float(start), "degF")
    return (UNITS.Quantity(PER_KELVIN[material], "1/delta_degC") * difference).to("").magnitude


def asked(order, **more):
    """Ask the card for a pane."""
    return results_of("glazing", **dict(zip(NAMES, order, strict=True)), **more)


def held(sizes, mouths, slid=0.0):
    """Lay a pane of such sizes in the middle of its mouths, or to one side, and measure what each edge has in the groove."""
    middle = mouths / 2 + slid
    return np.concatenate([sizes / 2 - middle, middle + sizes / 2 - mouths])


@pytest.mark.parametrize("material", PER_KELVIN)
def test_the_table_has_the_expansion_that_was_published(material):
    """Turned from a kelvin to a degree Fahrenheit by Pint, each row of the table is the figure published."""
    published = UNITS.Quantity(PER_KELVIN[material], "1/delta_degC").to("1/delta_degF").magnitude

    assert set(PANES) == set(PER_KELVIN)
    assert float(PANES[material].expansion) / 1e6 == pytest.approx(published, rel=1e-9)


def test_four_feet_of_acrylic_move_three_sixteenths_in_a_hundred_degrees():
    """Another maker's rule, read in a page: 48 in move about 0.002 in a degree, about 3/16 in over 100 °F; grow_width and shrink_width say so too."""
    hung = {"material": "acrylic", "opening_width": "47", "groove_depth": "1/2", "opening_height": "20"}
    values = results_of("glazing", **hung, temp_cold="-30", temp_cut="70", temp_hot="170")

    assert values["grow_width"] == pytest.approx(3 / 16, abs=1 / 64)
    assert values["shrink_width"] == pytest.approx(100 * 0.002, abs=1 / 64)


@pytest.mark.parametrize("order", ORDERS)
def test_the_pane_moves_as_pint_says(order):
    """grow_width, grow_height, shrink_width, shrink_height, and movement in all, are length × difference × expansion; a hair over the pane's own."""
    material, width, height, _, cut, cold, hot = order
    values = asked(order)
    pane = np.array([values["cut_width"], values["cut_height"]])
    grows = np.array([values["grow_width"], values["grow_height"]])
    shrinks = np.array([values["shrink_width"], values["shrink_height"]])
    bottoms = np.array([inches_of(width), inches_of(height)]) + 2 * inches_of(order[3])

    growth, shrinkage = max(strain(material, cut, hot), 0), max(-strain(material, cut, cold), 0)
    assert grows == pytest.approx(bottoms * growth, rel=1e-9)
    assert shrinks == pytest.approx(bottoms * shrinkage, rel=1e-9, abs=1e-12)
    assert values["movement"] == pytest.approx(bottoms.max() * strain(material, cold, hot), rel=1e-9)
    assert (grows >= pane * growth).all()
    assert grows == pytest.approx(pane * growth, rel=0.03, abs=1e-3)


@pytest.mark.parametrize("order", ORDERS)
def test_the_pane_has_room_on_every_day_of_the_year(order):
    """Heated degree by degree from coldest to hottest, a pane of cut_width by cut_height never fills its groove; less edge_clearance would."""
    material, width, height, depth, cut, cold, hot = order
    values = asked(order)
    mouths = np.array([inches_of(width), inches_of(height)])
    bottoms = mouths + 2 * inches_of(depth)
    pane = np.array([values["cut_width"], values["cut_height"]])
    days = [pane * (1 + strain(material, cut, day)) for day in np.arange(float(cold), float(hot) + 1)]

    assert (bottoms - pane) / 2 == pytest.approx(values["edge_clearance"])
    assert (np.array(days) <= bottoms).all()
    # a tenth less room, and the larger direction is out of it on the hottest day; cut hotter than that, it wants none
    tight = pane + values["edge_clearance"] / 5
    assert (tight * (1 + strain(material, cut, hot)) > bottoms).any() or float(cut) > float(hot)


@pytest.mark.parametrize("order", ORDERS)
def test_the_pane_is_held_on_the_coldest_night(order):
    """Shrunk and in the middle the pane has bite_cold at its worst edge, to a hair; pushed against one groove's bottom it keeps bite_slid."""
    material, width, height, depth, cut, cold, _ = order
    values = asked(order)
    mouths = np.array([inches_of(width), inches_of(height)])
    pane = np.array([values["cut_width"], values["cut_height"]]) * (1 + strain(material, cut, cold))
    centred = held(pane, mouths)
    pushed = held(pane, mouths, inches_of(depth) - centred[:2])

    assert centred.min() == pytest.approx(values["bite_cold"], abs=1e-3)
    # what it has grown since it was cut is reckoned a hair too large
    assert centred.min() >= values["bite_cold"] - max(strain(material, cut, cold), 0) * values["edge_clearance"] - 1e-12
    assert max(pushed.min(), 0) == pytest.approx(values["bite_slid"], abs=2e-3)


@pytest.mark.parametrize("least_bite", ["1/8", "1/4", "0.4"])
@pytest.mark.parametrize("order", ORDERS)
def test_the_groove_needed_is_found_by_trying_depths(order, least_bite):
    """Depths are tried by halving until the coldest pane just keeps the bite wanted: groove_needed is that depth, a hair over at most."""
    material, width, height, _, cut, cold, hot = order
    mouths = np.array([inches_of(width), inches_of(height)])
    shallow, deep = 0.0, 5.0
    for _ in range(60):
        depth = (shallow + deep) / 2
        largest = (mouths + 2 * depth).max()
        room = largest - largest / (1 + max(strain(material, cut, hot), 0))  # cut so that the hottest pane just fills the larger way
        pane = (mouths + 2 * depth - room) * (1 + strain(material, cut, cold))
        shallow, deep = (depth, deep) if held(pane, mouths).min() < inches_of(least_bite) else (shallow, depth)
    needed = asked(order, least_bite=least_bite)["groove_needed"]

    assert deep - 1e-9 <= needed <= deep + 2e-3
    # and the card, given that groove, has just the bite wanted
    assert asked((*order[:3], f"{needed:.9f}", *order[4:]), least_bite=least_bite)["bite_cold"] == pytest.approx(inches_of(least_bite), abs=1e-8)


@pytest.mark.parametrize("off", [-3 / 16, -1 / 32, 1 / 64, 1 / 8])
def test_a_pane_that_is_off_is_put_right_or_told(off):
    """What width_move and height_move take off leaves the pane wanted; width_bite and height_bite are what it has in the groove as it came."""
    order = ORDERS[0]
    material, width, height, groove, cut, cold, _ = order
    planned = asked(order)
    came = np.array([planned["cut_width"] + off, planned["cut_height"] + off / 2])
    values = asked(order, measured_width=f"{came[0]:.6f}", measured_height=f"{came[1]:.6f}")
    mouths = np.array([inches_of(width), inches_of(height)])
    cold_bite = held(came * (1 + strain(material, cut, cold)), mouths)

    assert came - [values["width_move"], values["height_move"]] == pytest.approx([planned["cut_width"], planned["cut_height"]], abs=1e-5)
    for name, size, mouth, bite in zip(("width_bite", "height_bite"), came, mouths, cold_bite[:2], strict=True):
        # one that is larger than from bottom to bottom does not go in, and has no bite
        assert values.get(name) == (pytest.approx(bite, abs=1e-3) if size <= mouth + 2 * inches_of(groove) else None)


def test_nine_square_feet_is_where_the_stricter_category_begins():
    """16 CFR 1201.2(a)(3) and (4), read in the publication: Category II if a pane of a door exceeds 9 sq ft (0.83 m²) on a side."""
    nine = UNITS.Quantity(9.0, "ft**2")

    assert nine.to("m**2").magnitude == pytest.approx(0.83, abs=0.01)
    for side, over in ((34.9, False), (35.3, True)):
        card = ask("glazing", opening_width=side, opening_height=side)
        pane = card["results"]["cut_width"]["value"] * card["results"]["cut_height"]["value"]
        assert (UNITS.Quantity(pane, "in**2") > nine) is over
        assert ("large_pane" in {check["name"] for check in card["checks"]}) is over
