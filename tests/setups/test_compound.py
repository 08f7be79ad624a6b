"""The compound mitre's card: what it gives, what it refuses, and what it tells the reader to do."""

import re

import pytest

from shopcalc.portable.cards.pictures import draw_picture
from shopcalc.portable.jobs.operations import worked_operations

from ..helpers import bench_of
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


def drawn_of(slug, page, **entries):
    """Draw one picture of a card."""
    bench = bench_of(slug, **entries)
    (drawn,) = draw_picture(bench["about"]["pictures"][page], bench, page)
    return drawn


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


@pytest.mark.parametrize(("lean", "told"), [("0", False), ("10", True), ("45", True), ("46", True), ("90", False)])
def test_the_edges_are_bevelled_where_the_frame_leans(lean, told):
    """Edges that stand flat are bevelled by the lean; an upright side stands flat as it is, and a flat frame on its face."""
    assert any("bevel both edges" in step for step in ask("compound", lean=lean)["steps"]) is told


@pytest.mark.parametrize(
    ("entries", "said", "unsaid"),
    [
        (
            {"lean": "90"},
            ["Blade square to the table", "the outer edge against the gauge", "band clamp"],
            ["leans", "upper edge", "Tilt the blade", "tape"],
        ),
        (
            {"lean": "0"},
            ["Mitre gauge square to the blade", "the upper edge against the gauge.", "Tilt the blade 45\u00b0"],
            ["Swing", "the longer."],
        ),
        ({"sides": "3", "lean": "80"}, ["Check every corner: 60\u00b0"], ["opposite"]),
        ({"lean": "10"}, ["bevel gauge set to 45.86\u00b0", "on the side the blade leans to"], ["outer edge", "band clamp"]),
    ],
)
def test_the_steps_are_those_of_the_frame_asked_for(entries, said, unsaid):
    """A flat frame has no lean to follow, an upright one no gauge to swing, and a triangle no sides that lie opposite."""
    steps = " ".join(ask("compound", **entries)["steps"])

    assert [words for words in said if words not in steps] == []
    assert [words for words in unsaid if words in steps] == []


def test_a_tilt_that_no_saw_has_is_sawn_by_hand():
    """Past 45 degrees nothing is said of tilting a blade or swinging a gauge: both angles are knifed and planed to."""
    sawn, by_hand = (" ".join(ask("compound", sides=sides)["steps"]) for sides in ("4", "3"))

    assert ("Tilt the blade" in sawn, "by hand" in sawn) == (True, False)
    assert ("Tilt the blade" in by_hand, "gauge 1" in by_hand, "16.74" in by_hand, "by hand" in by_hand) == (False, False, False, True)
    assert "Knife 73.26\u00b0, between edge and cut, on the outside face at both ends of every side, the upper edge the longer" in by_hand
    assert "31.47\u00b0 between face and cut, held square to the cut" in by_hand
    assert "square across the outside face" in " ".join(ask("compound", sides="3", lean="0")["steps"])


def test_steep_edges_are_bevelled_on_edge():
    """Past 45 degrees the saw takes what the lean leaves of a right angle, the sides standing on edge."""
    steps = " ".join(ask("compound", lean="60")["steps"])

    assert "bevel both edges 60\u00b0, leaning the same way: sides on edge at a tall fence, blade tilted 30\u00b0" in steps
    assert "edge_tilt" not in texts_of("compound", lean="45")
    assert "edge_tilt" not in texts_of("compound", lean="90")


@pytest.mark.parametrize(("lean", "name"), [("0", "upright"), ("10", "mitre"), ("90", "flat")])
def test_one_run_is_asked_for_beside_the_tilt(lean, name):
    """Each kind of frame has its own words for the run at the saw, and only those."""
    assert [run["name"] for run in worked_operations(bench_of("compound", lean=lean))] == ["tilt", name]


@pytest.mark.parametrize(("page", "of", "style"), [(1, "mitre_gauge", "waste"), (2, "blade_tilt", "blade")])
def test_the_numbers_in_the_pictures_stand_off_the_cut(page, of, style):
    """Each stands in the wood or over it, left of the cut and of the blade at the right end of the piece."""
    drawn = drawn_of("compound", page)
    [word] = [word for word in drawn["words"] if word["of"] == of]
    path = next(each["path"] for each in drawn["areas"] if each["style"] == style)

    assert word["anchor"] == "end"
    assert float(word["x"]) < min(float(x) for x in re.findall(r"[ML]([\d.]+)", path))


def test_the_first_picture_takes_the_edges_off():
    """Where the frame leans, what a level edge takes off is hatched at all four edges; upright nothing comes off."""
    hatched = [[each["style"] for each in drawn_of("compound", 0, lean=lean)["areas"]].count("waste") for lean in ("10", "0")]

    assert hatched == [4, 0]


@pytest.mark.parametrize(("lean", "labels"), [("10", ["upper edge", "lower edge"]), ("90", ["outer edge", "inner edge"])])
def test_the_edges_are_named_as_in_the_steps(lean, labels):
    """A flat frame has an outer and an inner edge."""
    assert [word["text"] for word in drawn_of("compound", 1, lean=lean)["words"] if word["of"] == ""] == labels


@pytest.mark.parametrize(
    ("entries", "told"),
    [
        ({"measured_face": "75"}, ["face_by_hand"]),
        ({"measured_edge": "33"}, ["edge_by_hand"]),
        ({"measured_face": "74", "measured_edge": "32"}, []),
        ({"measured_face": "60", "measured_edge": "60", "sides": "4"}, []),
    ],
    ids=["the face", "the edge", "within a degree", "at the saw"],
)
def test_a_cut_by_hand_that_is_off_is_planed(entries, told):
    """No saw is set, so nothing is tilted or swung: the line and the bevel gauge say where wood stands."""
    checks = ask("compound", **{"sides": "3", "lean": "10", **entries})["checks"]

    assert [check["name"] for check in checks if check["name"].endswith("_by_hand")] == told
