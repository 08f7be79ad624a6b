"""The compound mitre's card: what it gives, what it refuses, and what it tells the reader to do."""

import pytest

from ..published.asking import ask, texts_of

# a check, entries that raise it, entries just beside them that do not
CHECKS = [
    ("too_few_sides", {"sides": "2"}, {"sides": "3"}),
    ("steep_tilt", {"sides": "3", "lean": "35"}, {"sides": "3", "lean": "36"}),
    ("steep_tilt", {"sides": "3", "lean": "10"}, {"sides": "4", "lean": "10"}),
    ("many_cuts", {"sides": "9"}, {"sides": "8"}),
    ("upright", {"lean": "0"}, {"lean": "1"}),
    ("flat", {"lean": "90"}, {"lean": "89"}),
    ("mitre_move_far_off", {"measured_face": "75"}, {"measured_face": "75.2"}),
    ("tilt_move_far_off", {"measured_edge": "51"}, {"measured_edge": "50.8"}),
]


def raised(**entries):
    """Ask for the names of the checks that hold."""
    return {check["name"] for check in ask("compound", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """What the page opens with is a frame that can be cut."""
    assert raised() == set()
    assert texts_of("compound") == {
        "mitre_gauge": "9.85\u00b0",
        "blade_tilt": "44.14\u00b0",
        "face_angle": "80.15\u00b0",
        "edge_angle": "45.86\u00b0",
        "corner": "90\u00b0",
    }


def test_a_flat_frame_is_a_plain_mitre():
    """Lying flat, four sides want the gauge at 45 degrees and the blade square."""
    values = texts_of("compound", sides="4", lean="90")

    assert (values["mitre_gauge"], values["blade_tilt"]) == ("45\u00b0", "0\u00b0")


def test_an_upright_box_is_a_square_cut_with_the_blade_tilted():
    """Upright, six sides want the gauge square and the blade at 30 degrees."""
    values = texts_of("compound", sides="6", lean="0")

    assert (values["mitre_gauge"], values["blade_tilt"], values["corner"]) == ("0\u00b0", "30\u00b0", "120\u00b0")


@pytest.mark.parametrize(("name", "holds", "beside"), CHECKS)
def test_a_check_holds_where_it_should_and_not_beside_it(name, holds, beside):
    """Each check has an edge, and says nothing on the good side of it."""
    assert name in raised(**holds)
    assert name not in raised(**beside)


@pytest.mark.parametrize("sides", ["1", "2"])
def test_sides_that_enclose_nothing_show_no_number(sides):
    """The stop takes every result with it."""
    assert ask("compound", sides=sides)["results"] == {}


@pytest.mark.parametrize(
    ("entries", "said"),
    [
        ({"lean": "90", "measured_face": "61"}, ["Swing the mitre gauge 1\u00b0 further from square."]),
        ({"lean": "90", "measured_face": "59"}, ["Swing the mitre gauge 1\u00b0 back toward square."]),
        ({"lean": "0", "measured_edge": "61"}, ["Tilt the blade 1\u00b0 more."]),
        ({"lean": "0", "measured_edge": "59.5"}, ["Tilt the blade 0.5\u00b0 less."]),
        ({"lean": "0", "measured_edge": "60"}, ["It is right: leave the setting where it is."]),
    ],
)
def test_a_reading_moves_what_it_belongs_to(entries, said):
    """Six sides are cut at 60 degrees on the face when flat, and at 60 to the face when upright: the words say which way to move."""
    assert ask("compound", sides="6", **entries)["trial"]["corrections"] == said


def test_the_steps_swing_the_gauge_for_the_other_end():
    """The second end is cut with the gauge on the other side of square; at square there is nothing to swing."""
    leaning, upright = (" ".join(ask("compound", lean=lean)["steps"]) for lean in ("10", "0"))

    assert "Swing the gauge 9.85\u00b0 to the other side of square" in leaning
    assert "other side of square" not in upright
    assert "Turn each side end for end" in upright


@pytest.mark.parametrize(("lean", "told"), [("0", False), ("10", True), ("45", True), ("46", False)])
def test_the_edges_are_bevelled_only_where_a_saw_can(lean, told):
    """Edges that stand flat are bevelled by the lean, up to the 45 degrees a saw tilts."""
    assert any("Bevel both edges" in step for step in ask("compound", lean=lean)["steps"]) is told
