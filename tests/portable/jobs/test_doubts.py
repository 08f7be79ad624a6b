"""What items of a job say differently of one thing."""

import json
from typing import Any

from py_mini_racer import MiniRacer

from shopcalc import exact, files

from ...helpers import run


def doubts(*items: dict[str, Any], **shop: str) -> list[str]:
    """What is asked about a job of these items, with plain spaces."""
    numbered = [{"id": place, "label": item["setup"], **item} for place, item in enumerate(items, 1)]
    document = {"format": "shopcalc job", "version": 1, "items": numbered, "shop": shop}
    return [row["text"].replace("\u00a0", " ") for row in exact.answer_document("/job", json.dumps(document))["view"]["doubts"]]


LAYOUT: dict[str, Any] = {"setup": "hinge-layout", "inputs": {"hinge_length": "4 in"}}
MORTISE: dict[str, Any] = {"setup": "hinge-mortise", "inputs": {"hinge_length": "3 in"}}


def test_one_hinge_of_two_lengths_is_asked_about_once() -> None:
    """Each card leads on to the other: the question is one, whichever came first."""
    assert ["hinge-layout: Hinge length 4 in; hinge-mortise: Hinge length 3 in"] == doubts(LAYOUT, MORTISE)
    assert 1 == len(doubts(MORTISE, LAYOUT))


def test_one_gap_by_two_names_is_asked_about_once() -> None:
    """What one card wants for a gap is on the other the gap on the hinge side."""
    mortise: dict[str, Any] = {"setup": "hinge-mortise", "inputs": {"gap": "1/8"}}
    [text] = doubts(mortise, {"setup": "door-edge", "inputs": {"gap_hinge": "3/32"}})

    assert text == "hinge-mortise: Gap wanted 1/8 in; door-edge: Gap on the hinge side 3/32 in"


def test_what_follows_on_one_card_is_held_against_the_next() -> None:
    """The height of a frame, which is worked out, and the height of its door."""
    frame: dict[str, Any] = {"setup": "frame", "inputs": {"opening_height": "78 1/4", "gap_head": "1/8", "gap_foot": "1/8"}}

    assert [] == doubts(frame, {"setup": "hinge-layout", "inputs": {"door_height": "78", "gap_head": "1/8"}})
    [text] = doubts(frame, {"setup": "hinge-layout", "inputs": {"door_height": "77 1/2", "gap_head": "1/8"}})
    assert text.startswith("frame: Frame height 78 in; hinge-layout: Door height 77 1/2 in")


def test_no_line_ends_inside_a_size() -> None:
    """A mixed number and its unit stay together, however narrow the screen."""
    items = [{"id": 1, **LAYOUT, "inputs": {"hinge_length": "3 1/2"}}, {"id": 2, **MORTISE}]
    document = {"format": "shopcalc job", "version": 1, "items": items}
    [doubt] = exact.answer_document("/job", json.dumps(document))["view"]["doubts"]

    assert "3\u00a01/2\u00a0in;" in doubt["text"]


def test_what_a_tape_hardly_tells_is_no_doubt() -> None:
    """A hair under a 64th is the same, in the shop's own unit."""
    near = {**MORTISE, "inputs": {"hinge_length": "101.5 mm"}}

    assert [] == doubts(LAYOUT, near)
    assert ["hinge-layout: Hinge length 101.6 mm; hinge-mortise: Hinge length 76.2 mm"] == doubts(LAYOUT, MORTISE, units="mm")


def frame(label: str, height: str) -> dict[str, Any]:
    """A frame as high as this, in its opening."""
    return {"setup": "frame", "label": label, "inputs": {"opening_height": height, "gap_head": "0", "gap_foot": "0"}}


def hung(height: str) -> dict[str, Any]:
    """Where the hinges go of a door as high as this."""
    return {"setup": "hinge-layout", "inputs": {"door_height": height, "gap_head": "0"}}


def test_of_several_one_that_agrees_is_enough() -> None:
    """A door and a sash, and the hinges of the door: with the sash nothing is wrong."""
    assert [] == doubts(frame("Sash", "36 1/2"), frame("Door", "79"), hung("79"))
    assert [] == doubts(frame("Sash", "36 1/2"), frame("Door", "79"), hung("36 1/2"), hung("79"))


def test_of_several_none_that_agrees_is_asked_about() -> None:
    """A second frame does not silence the question about the door: it is held against the one that is nearest."""
    assert ["Door: Frame height 79 in; hinge-layout: Door height 79 1/4 in"] == doubts(frame("Sash", "36 1/2"), frame("Door", "79"), hung("79 1/4"))


def test_each_of_the_fewer_is_held_against_the_others() -> None:
    """Two doors of which one has its hinges laid out: the other need not."""
    assert [] == doubts(LAYOUT, MORTISE, {**MORTISE, "inputs": {"hinge_length": "4 in"}})
    assert ["hinge-layout: Hinge length 4 in; hinge-mortise: Hinge length 3 in"] == doubts(LAYOUT, MORTISE, MORTISE)


def test_what_agrees_in_most_is_what_is_meant() -> None:
    """A door that was made wider still has the gaps of its edge; a sash that is nearer in width has others."""
    typed = {"opening_height": "79", "gap_side": "1/8"}
    door = {"setup": "frame", "label": "Door", "inputs": {**typed, "opening_width": "35"}}
    sash = {"setup": "frame", "label": "Sash", "inputs": {**typed, "opening_width": "33 1/4", "gap_side": "1/16"}}
    edge = {"setup": "door-edge", "inputs": {"thickness": "1 3/8", "door_width": "31", "gap_hinge": "1/8", "gap_latch": "1/8"}}

    assert ["Door: Frame width 34 3/4 in; door-edge: Door width 31 in"] == doubts(sash, door, edge)


def test_items_that_are_alike_are_asked_about_once() -> None:
    """Twice the same sash is one sash."""
    assert 1 == len(doubts(frame("Sash", "36 1/2"), frame("Other sash", "36 1/2"), hung("36")))


def test_what_cannot_be_worked_says_nothing() -> None:
    """Its entries are asked about where they stand."""
    assert [] == doubts(LAYOUT, {**MORTISE, "inputs": {"hinge_length": "x"}})


def test_each_side_leads_to_its_card() -> None:
    """With its entries, and as the item that it is."""
    items = [{"id": 3, **LAYOUT}, {"id": 7, **MORTISE}]
    [doubt] = exact.answer_document("/job", json.dumps({"format": "shopcalc job", "version": 1, "items": items}))["view"]["doubts"]

    assert ["/hinge-layout?hinge_length=4+in#item=3", "/hinge-mortise?hinge_length=3+in#item=7"] == [side["address"] for side in doubt["sides"]]


def test_the_boathouse_is_of_one_mind_on_both_sides(phone_brain: MiniRacer) -> None:
    """The job that shows everything contradicts itself nowhere."""
    text = files.static_text("boathouse.json")

    assert [] == exact.answer_document("/job", text)["view"]["doubts"] == run(phone_brain, "decideDocument('/job', given[0]).view.doubts", text)


def test_a_groove_that_was_measured_is_held_close_to_its_tenon() -> None:
    """A joint is made to the wood as it is: a 64th that a tape would forgive is asked about, and none that agrees."""
    groove: dict[str, Any] = {"setup": "groove", "inputs": {"groove_width": "3/8", "measured_groove": "25/64"}}
    [text] = doubts(groove, {"setup": "tenon", "inputs": {"groove_width": "3/8"}})

    assert "25/64 in" in text
    assert "tenon: Groove width 3/8 in" in text
    assert [] == doubts(groove, {"setup": "tenon", "inputs": {"groove_width": "25/64"}})


def test_what_has_nothing_alike_is_of_two_things() -> None:
    """A bench of slats and a panel, a sill and a cleat: nobody meant one width, or one thickness, for both."""
    bench: dict[str, Any] = {"setup": "slats", "inputs": {"slat": "2 1/4"}}
    sill: dict[str, Any] = {"setup": "sill", "inputs": {"thickness": "1 1/2"}}

    assert [] == doubts(bench, {"setup": "wood-movement", "inputs": {"width": "11"}})
    assert 1 == len(doubts(bench, {"setup": "wood-movement", "inputs": {"width": "2 1/2"}}))
    assert [] == doubts(sill, {"setup": "bevel", "inputs": {"thickness": "3/4"}})
    assert 1 == len(doubts(sill, {"setup": "bevel", "inputs": {"thickness": "1 3/8", "tilt": "10"}}))


def test_one_gross_slip_among_what_agrees_is_asked_about() -> None:
    """A decimal point that slipped leaves the rest of the joint as it was."""
    for slip in ({"groove_width": "1"}, {"stock": "13.8"}):
        assert 1 == len(doubts({"setup": "groove"}, {"setup": "tenon", "inputs": slip}))


def test_a_gap_twice_the_other_is_asked_about() -> None:
    """Small things are alike however much one is of the other."""
    frame: dict[str, Any] = {"setup": "frame", "inputs": {"gap_side": "1/8"}}

    assert 1 == len(doubts(frame, {"setup": "hinge-mortise", "inputs": {"gap": "1/16"}}))


RAFTER = {"cap_thickness": "3/4", "cap_inside": "3 9/16"}
CAP = {"thickness": "3/4", "cover": "4"}


def test_a_rafter_and_its_cap_agree_in_pitch_and_face() -> None:
    """Another pitch, or another inside face, and the cap lies hollow or its notch is short on every rafter."""
    roof: list[dict[str, Any]] = [{"setup": "rafter", "inputs": {**RAFTER, "pitch": "30"}}, {"setup": "ridge-cap", "inputs": CAP}]
    steeper = {"setup": "rafter", "inputs": {**RAFTER, "pitch": "35"}}
    shorter = {"setup": "rafter", "inputs": {**RAFTER, "pitch": "30", "cap_inside": "3 3/8"}}

    assert [] == doubts(*roof)
    assert ["ridge-cap: Pitch, left 30\u00b0; rafter: Pitch 35\u00b0"] == doubts(steeper, roof[1])
    assert ["ridge-cap: Narrow board, inside face 3 9/16 in full; rafter: Ridge cap, inside face 3 3/8 in"] == doubts(shorter, roof[1])


def test_under_a_lopsided_roof_each_rafter_has_its_own_pitch() -> None:
    """One of the cap's two pitches is its own; a third belongs to neither side."""
    cap = {"setup": "ridge-cap", "inputs": {**CAP, "pitch_left": "30", "pitch_right": "45", "joint": "mitred"}}

    def asked(pitch: str) -> list[str]:
        return doubts({"setup": "rafter", "inputs": {"pitch": pitch, "cap_inside": "3.4245"}}, cap)

    assert [[], []] == [asked("30"), asked("45")]
    assert [] != asked("38")


def test_a_slope_is_no_doubt_where_little_else_agrees() -> None:
    """Two boards of one thickness are bevelled for many things, and a rafter into which no cap is let has none."""
    assert [] == doubts(
        {"setup": "sill", "inputs": {"thickness": "3/4", "slope": "10"}}, {"setup": "bevel", "inputs": {"thickness": "3/4", "tilt": "30"}}
    )
    assert [] == doubts({"setup": "rafter", "inputs": {"pitch": "35", "cap_thickness": "0"}}, {"setup": "ridge-cap", "inputs": CAP})


def test_of_two_gaps_from_one_each_is_asked_about() -> None:
    """The gap at each side of a frame is that of the hinges and that of the latch: one that agrees does not speak for the other."""
    frame: dict[str, Any] = {"setup": "frame", "inputs": {"opening_width": "31 1/4", "gap_side": "1/8", "stock": "1 3/8"}}
    edge = {"setup": "door-edge", "inputs": {"thickness": "1 3/8", "door_width": "31", "gap_hinge": "1/8", "gap_latch": "1/4"}}

    assert ["frame: Gap at each side 1/8 in; door-edge: Gap on the latch side 1/4 in"] == doubts(frame, edge)
