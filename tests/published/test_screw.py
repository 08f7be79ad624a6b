"""Wood screws out of handbooks, sellers' tables and shop charts, and a cone turned with numpy.

Sources: bodies, Machinery's Handbook, 31st ed., p. 1777 (ANSI/ASME B18.6.3, machine screws), read in the publication; that
wood screws (B18.6.1) have the same is from memory. Heads of 82°, the same page. Root about two thirds of the body, Wood
Handbook, chapter 8, read in the publication; NDS, Appendix L, from memory, disagrees and has about four fifths. 90 and 70 per
cent of the root, the rule of the NDS before 1962, read in its commentary. Heads: tables of three sellers of wood and tapping
screws, read in pages that give them. Drills: two shop charts, "Wood screw pilot hole sizes", plate 6B of a makers' newsletter,
and a boatbuilder's table with columns after the wood council's rule, read in pages that give them.
"""

from fractions import Fraction

import numpy as np
import pytest

from .asking import results_of

BODIES = {2: 0.086, 3: 0.099, 4: 0.112, 5: 0.125, 6: 0.138, 7: 0.151, 8: 0.164, 10: 0.190, 12: 0.216, 14: 0.242}
NDS_ROOTS = {6: 0.113, 7: 0.122, 8: 0.131, 9: 0.142, 10: 0.152, 12: 0.171, 14: 0.196}  # from memory
HEADS = {2: 0.172, 3: 0.199, 4: 0.225, 5: 0.252, 6: 0.279, 7: 0.305, 8: 0.332, 9: 0.358, 10: 0.385, 12: 0.438, 14: 0.491}
HEIGHTS = {2: 0.051, 4: 0.067, 5: 0.075, 6: 0.083, 7: 0.091, 8: 0.100, 9: 0.108, 10: 0.116, 12: 0.132, 14: 0.148}
CLEARANCES = {6: "9/64", 7: "5/32", 8: "11/64", 9: "3/16", 11: "13/64", 12: "7/32", 14: "1/4"}
PLATE_PILOTS = {
    "hard": {8: "7/64", 9: "7/64", 10: "1/8"},
    "soft": {6: "1/16", 7: "1/16", 8: "5/64", 9: "5/64", 10: "3/32", 11: "3/32", 12: "7/64", 14: "7/64"},
}
COUNCIL_PILOTS = {
    "hard": {2: "3/64", 4: "1/16", 6: "5/64", 8: "3/32", 10: "7/64", 12: "1/8", 14: "9/64"},
    "soft": {2: "1/32", 4: "3/64", 6: "1/16", 8: "5/64", 10: "3/32", 12: "7/64", 14: "7/64"},
}
CHARTED = [(wood, gauge, pilot) for chart in (PLATE_PILOTS, COUNCIL_PILOTS) for wood, row in chart.items() for gauge, pilot in row.items()]
INDEX = [Fraction(n, 64) for n in range(1, 65)]  # the drills in the box


def fits(size):
    """Take drills out of the box, the smallest first, until one is as large as the size."""
    return next(float(drill) for drill in INDEX if float(drill) > size - 1e-12)


def cone(mouth, depths):
    """Turn a line 41° from the axis round it, and give how wide the hole is at each depth below a mouth."""
    along = np.array([[np.cos(a := np.radians(41)), -np.sin(a)], [np.sin(a), np.cos(a)]]) @ np.array([0.0, -1.0])
    return mouth - 2 * along[0] * (np.asarray(depths) / -along[1])


@pytest.mark.parametrize(("gauge", "published"), BODIES.items())
def test_the_body_is_the_one_in_machinerys_handbook(gauge, published):
    """Basic diameters of the American numbered screws, read in the publication."""
    assert results_of("screw", gauge=gauge)["body"] == pytest.approx(published, abs=1e-9)


@pytest.mark.parametrize(("gauge", "published"), BODIES.items())
def test_the_root_is_two_thirds_of_the_body_published(gauge, published):
    """Wood Handbook, read in the publication: the root averages about two thirds of the shank."""
    assert results_of("screw", gauge=gauge)["root"] == pytest.approx(published * 2 / 3, abs=1e-9)


@pytest.mark.parametrize("wood", ["soft", "hard"])
@pytest.mark.parametrize(("gauge", "nds_root"), NDS_ROOTS.items())
def test_the_pilot_bites_by_the_larger_root_too(gauge, nds_root, wood):
    """With the root of NDS, Appendix L (from memory), pilot_hole is below the root all the same, and the root of the card below that one."""
    values = results_of("screw", gauge=gauge, wood=wood)

    assert values["root"] < nds_root
    assert values["pilot_hole"] < nds_root


@pytest.mark.parametrize(("wood", "share"), [("soft", 0.7), ("hard", 0.9)])
@pytest.mark.parametrize(("gauge", "body"), BODIES.items())
def test_the_pilot_is_the_drill_for_its_share_of_the_root(gauge, body, wood, share):
    """70 or 90 per cent of the root, the rule of the NDS before 1962: pilot_hole is the first drill of the box that large."""
    assert results_of("screw", gauge=gauge, wood=wood)["pilot_hole"] == fits(body * 2 / 3 * share)


@pytest.mark.parametrize(("wood", "gauge", "charted"), CHARTED)
def test_the_pilot_is_near_that_of_two_shop_charts(wood, gauge, charted):
    """The charts take the nearest drill: pilot_hole is never smaller than theirs, and at most 1/64 in larger."""
    assert 0 <= results_of("screw", gauge=gauge, wood=wood)["pilot_hole"] - float(Fraction(charted)) <= 1 / 64


@pytest.mark.parametrize(("gauge", "charted"), CLEARANCES.items())
def test_the_clearance_drill_is_that_of_a_shop_chart(gauge, charted):
    """Plate 6B, read in a page: clearance_hole is its drill. Its 3/16 for No. 10 is left out: the shank, 0.190, is larger."""
    assert results_of("screw", gauge=gauge)["clearance_hole"] == float(Fraction(charted))
    assert results_of("screw", gauge=10)["clearance_hole"] == fits(BODIES[10]) == 13 / 64


@pytest.mark.parametrize(("gauge", "published"), HEADS.items())
def test_the_countersink_takes_the_largest_head(gauge, published):
    """Largest heads in sellers' tables: countersink is as wide, within 0.001 in."""
    assert results_of("screw", gauge=gauge)["countersink"] == pytest.approx(published, abs=0.001)


@pytest.mark.parametrize(("gauge", "body"), BODIES.items())
def test_the_countersink_is_as_deep_as_a_cone_turned_to_the_shank(gauge, body):
    """A line of 41° turned round the axis is as wide as the shank at countersink_depth."""
    values = results_of("screw", gauge=gauge)

    assert cone(values["countersink"], values["countersink_depth"]) == pytest.approx(body, abs=1e-9)


@pytest.mark.parametrize(("gauge", "published"), HEIGHTS.items())
def test_the_countersink_is_as_deep_as_the_heads_sold(gauge, published):
    """Largest heights of heads of 82° in a seller's table: countersink_depth is theirs, or up to 0.005 in less, since theirs are limits."""
    assert 0 <= published - results_of("screw", gauge=gauge)["countersink_depth"] <= 0.005


@pytest.mark.parametrize(("gauge", "published"), BODIES.items())
def test_the_shank_tells_the_gauge(gauge, published):
    """A shank of the size published, or within 0.004 in of it, gives its gauge_by_shank."""
    found = [results_of("screw", gauge=8, measured_body=f"{published + off:.4f}")["gauge_by_shank"] for off in (-0.004, 0, 0.004)]

    assert found == [gauge] * 3


@pytest.mark.parametrize("error", [-0.02, -0.004, 0.01, 0.03])
def test_a_stop_that_is_off_is_put_right_by_the_correction(error):
    """A countersink sent in too deep by so much has too wide a mouth; depth_move takes the same back."""
    wanted = results_of("screw")["countersink"]
    # seen from the tip of the cone, a mouth that lies higher by the error is wider
    mouth = float(cone(wanted, -error))

    assert results_of("screw", measured_countersink=f"{mouth:.8f}")["depth_move"] == pytest.approx(-error, abs=1e-6)
