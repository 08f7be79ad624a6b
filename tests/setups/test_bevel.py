"""The bevelled rip's card: what it gives, what it refuses, and what it tells the reader to do."""

import re

import pytest

from shopcalc.portable.cards.pictures import draw_picture

from ..helpers import bench_of
from ..published.asking import ask, results_of, texts_of

# a check, entries that raise it, entries just beside them that do not
CHECKS = [
    ("past_the_saw", {"tilt": "45.1"}, {"tilt": "45"}),
    ("no_narrow_face", {"tilt": "45", "wide_face": "3/4"}, {"tilt": "45", "wide_face": "49/64"}),
    ("no_narrow_face", {"tilt": "45", "wide_face": "1 1/2", "edges": "2"}, {"tilt": "45", "wide_face": "1 1/2"}),
    ("square_rip", {"tilt": "0"}, {"tilt": "1"}),
    ("narrow_bearing", {"tilt": "45", "wide_face": "1 31/64"}, {"tilt": "45", "wide_face": "1 1/2"}),
    ("close_to_fence", {"tilt": "0", "wide_face": "1 63/64"}, {"tilt": "0", "wide_face": "2"}),
    ("close_to_fence", {"tilt": "40", "wide_face": "2.4"}, {"tilt": "40", "wide_face": "2.7"}),
    ("too_much_blade", {"tilt": "0", "thickness": "3 9/64"}, {"tilt": "0", "thickness": "3 1/8"}),
    ("too_much_blade", {"tilt": "45", "thickness": "2 1/4", "wide_face": "6"}, {"tilt": "45", "thickness": "2 3/16", "wide_face": "6"}),
    ("tilt_move_far_off", {"measured_offset": "0.274"}, {"measured_offset": "0.272"}),
]


def raised(**entries):
    """Ask for the names of the checks that hold."""
    return {check["name"] for check in ask("bevel", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """What the page opens with is a sensible cut."""
    assert raised() == set()


def test_one_edge_at_45_degrees():
    """At 45 degrees a face loses the thickness, the cut is its diagonal, and the gauge rises as much as it runs."""
    values = results_of("bevel", thickness="3/4", tilt="45", wide_face="4", gauge_run="6")

    assert values.pop("blade_travel") == pytest.approx(0.75 * 2**0.5, abs=1e-12)
    assert values == {"offset": 0.75, "fence": 3.25, "gauge_rise": 6, "narrow_face": 3.25}


def test_two_edges_take_the_offset_twice_and_leave_the_fence():
    """The second bevel is ripped at the fence of the first."""
    one, two = (texts_of("bevel", tilt="45", edges=edges) for edges in ("1", "2"))

    assert (one["narrow_face"], two["narrow_face"]) == ("3 1/4", "2 1/2")
    assert one["fence"] == two["fence"] == "3 1/4"


def test_the_blade_stands_out_by_no_less_than_the_cut_is_long():
    """A clearance is rounded up: the fraction on the tape is never short of the cut."""
    result = ask("bevel", thickness="3/4", tilt="45", tape="8")["results"]["blade_travel"]

    assert result["value"] == pytest.approx(1.0607, abs=5e-5)
    assert result["text"] == "1 1/8 scant"


@pytest.mark.parametrize(("name", "holds", "beside"), CHECKS)
def test_a_check_holds_where_it_should_and_not_beside_it(name, holds, beside):
    """Each check has an edge, and says nothing on the good side of it."""
    assert name in raised(**holds)
    assert name not in raised(**beside)


@pytest.mark.parametrize("entries", [{"tilt": "60"}, {"tilt": "90"}, {"wide_face": "1/8"}])
def test_an_impossible_rip_shows_no_number(entries):
    """A stop takes every result with it."""
    assert ask("bevel", **entries)["results"] == {}


@pytest.mark.parametrize(
    ("measured", "said"),
    [
        ("0.5", "Tilt the blade 3.69\u00b0 less."),
        ("0.433013", "It is right: leave the setting where it is."),
        ("0.37", "Tilt the blade 3.74\u00b0 more."),
    ],
)
def test_a_reading_says_which_way_to_tilt(measured, said):
    """Faces that differ too much were cut too far over, faces that differ too little not far enough."""
    assert ask("bevel", thickness="3/4", tilt="30", measured_offset=measured)["trial"]["corrections"] == [said]


def test_the_scrap_gives_the_bevel_and_the_fence_as_cut():
    """A scrap whose faces differ by its thickness was cut at 45 degrees, and the fence for that loses the thickness."""
    assert "tilt_as_cut" not in texts_of("bevel")
    values = texts_of("bevel", thickness="3/4", wide_face="4", measured_offset="3/4", tilt="44")

    assert (values["tilt_as_cut"], values["fence_as_cut"]) == ("45\u00b0", "3 1/4")
    assert "fence_as_cut" not in texts_of("bevel", wide_face="4", measured_offset="4")
    assert "fence_as_cut" not in texts_of("bevel", tilt="30", measured_offset="3/4")  # far off: measured again first


def test_the_steps_turn_the_piece_only_for_a_second_edge():
    """The fence comes after the tilt, and end for end only where two edges are bevelled."""
    one, two = (ask("bevel", tilt="45", edges=edges)["steps"] for edges in ("1", "2"))

    assert not any("end for end" in step for step in one)
    assert any("end for end" in step for step in two)
    assert [place for place, step in enumerate(one) if "Tilt the blade 45\u00b0 from square" in step] < [
        place for place, step in enumerate(one) if "Set the fence 3 1/4 in" in step
    ]


def test_room_for_a_hand_is_what_stands_between_fence_and_blade():
    """A wide face of 2.4 in has 1.77 in between fence and blade at the table, and the caution says so."""
    [text] = [check["text"] for check in ask("bevel", tilt="40", wide_face="2.4")["checks"] if check["name"] == "close_to_fence"]

    assert text.startswith("1 25/32 in scant between fence and blade")


def test_the_gauge_is_set_from_a_line_square_to_the_edge():
    """A blade tilted 15 degrees stands 75 from the table: that is between the line drawn and one square to the edge."""
    steps = ask("bevel", tilt="15")["steps"]

    assert steps[1].endswith("the angle between that line and a line square to the edge.")
    assert "on the side the blade leans to" in steps[2]


def test_a_square_rip_sets_no_gauge():
    """Without a bevel the blade is tried with a square."""
    steps = " ".join(ask("bevel", tilt="0")["steps"])

    assert "gauge" not in steps
    assert "Blade square to the table" in steps


def test_the_bevels_number_stands_off_the_blade():
    """The number of a slim bevel stands left of the cut, where it covers neither blade nor waste."""
    bench = bench_of("bevel", tilt="15")
    (drawn,) = draw_picture(bench["about"]["pictures"][0], bench, 0)
    [word] = [word for word in drawn["words"] if word["of"] == "tilt"]
    blade = min(float(x) for x in re.findall(r"[ML]([\d.]+)", next(each["path"] for each in drawn["areas"] if each["style"] == "blade")))

    assert word["anchor"] == "end"
    assert float(word["x"]) < blade
