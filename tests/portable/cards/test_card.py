"""What a card says."""

from typing import Any

import pytest

from shopcalc.portable.cards.card import correction, show_answer, show_sheet, shown_checks
from shopcalc.reference.cautions import CAUTIONS

from ...helpers import INCH_SHOP, UNITS, bench_of, exactly


def sheet(slug: str, **typed: str) -> dict[str, Any]:
    """The sheet of a card."""
    return dict(show_sheet(bench_of(slug, **typed), "2"))


def answer(slug: str, **typed: str) -> dict[str, Any]:
    """The answer of a card."""
    return dict(show_answer(bench_of(slug, **typed)))


def test_the_answer_begins_with_the_first_setting() -> None:
    """The setting declared first is read first."""
    assert ["fence"] == [one["name"] for one in answer("groove")["first"]]


def test_a_stop_stands_in_the_answer() -> None:
    """What forbids the work stands where the number would be."""
    found = answer("groove", cutter="1/2")

    assert ["The cutter, 1/2 in, is wider than the groove, 3/8 in."] == [one["text"] for one in found["stopped"]]
    assert [] == found["first"]
    assert "stop" not in [one["level"] for one in found["checks"]]


def test_a_stop_stands_in_the_answer_beside_what_is_left_too() -> None:
    """Where only some of a card cannot be, the number that is left stays, with the stop over it: both stay in sight while the form goes by."""
    found = answer("frame", cutter="3/4")

    assert ["The cutter, 3/4 in, is wider than the groove, 3/8 in."] == [one["text"] for one in found["stopped"]]
    assert ["rail_length"] == [one["name"] for one in found["first"]]


def test_what_the_scrap_says_of_a_card_inside_stands_in_the_answer() -> None:
    """The frame's reading is typed far above its groove's card: the move is said where it is seen, under that card's name."""
    said = [one["text"] for one in answer("frame", measured_groove="0.4", measured_tenon="0.4")["corrections"]]

    assert [
        "Centred groove: Too wide: move the fence 0.013 in (1/64 scant) away from the cutter.",
        "Stub tenon: Too thick: raise the blade 0.003 in.",
    ] == said


def test_stops_come_before_cautions_and_notes() -> None:
    """Checks are listed by how much they forbid."""
    bench = bench_of("tenon", fit="0", groove_width="1/8", end_play="1/2", gauge_block="1/2")

    assert ["stop", "caution", "note"] == list(dict.fromkeys(one["level"] for one in shown_checks(bench)))


def test_a_check_says_what_to_change_and_why() -> None:
    """A check names the input to change, its words and its source."""
    check = next(one for one in answer("groove", stock="3/4")["checks"] if one["name"] == "thin_cheek")

    assert ("Caution", "groove_width", "Change: Groove width", True) == (check["word"], check["change"], check["change_label"], check["has_source"])
    assert "common practice, no published source" == check["source"]


def test_settings_have_their_stretch_of_tape() -> None:
    """A length to set is drawn on the tape; an angle is not."""
    assert [0, 1] == [len(one["tape"]) for one in sheet("angle")["settings"]]


def test_steps_quote_the_numbers() -> None:
    """The steps are in cutting order with the numbers in them."""
    texts = [step["text"] for step in sheet("groove", groove_width="5/16")["steps"]]

    assert "Set the fence 17/32 in from the near side of the cutter, to a tooth that leans toward the fence." in texts


def test_a_trial_ends_in_a_correction() -> None:
    """Once the scrap is read, the card says how far to move."""
    before, after = sheet("groove"), sheet("groove", measured_groove="0.383")

    assert ([], 1) == (before["corrections"], len(after["corrections"]))


@pytest.mark.parametrize(
    ("measured", "text"),
    [
        ("0.391", "Too wide: move the fence 0.008 in (1/128) away from the cutter."),
        ("0.419", "Too wide: move the fence 0.022 in (1/64 full) away from the cutter."),
        ("0.367", "Too narrow: move the fence 0.004 in (1/128 scant) toward the cutter."),
        ("0.376", "Too wide: move the fence 0.001 in away from the cutter."),
        ("3/8", "It is right: leave the setting where it is."),
        ("0.3755", "It is right: leave the setting where it is."),
    ],
)
def test_corrections(measured: str, text: str) -> None:
    """A correction has its direction and its size, and what nobody can set is right."""
    assert text == sheet("groove", measured_groove=measured)["corrections"][0]["text"]


def test_a_correction_in_a_metric_shop() -> None:
    """A metric shop corrects in hundredths of a millimetre."""
    found = sheet("groove", units="mm", stock="36", groove_width="9", groove_depth="12", cutter="6", measured_groove="9.3")

    assert "Too wide: move the fence 0.15 mm away from the cutter." == found["corrections"][0]["text"]


def test_a_correction_of_an_angle() -> None:
    """A tilt is corrected in degrees."""
    assert "Tilt the blade 0.5\u00b0 more." == sheet("ridge-cap", measured_bevel="29.5")["corrections"][0]["text"]
    assert "It is right: leave the setting where it is." == sheet("ridge-cap", measured_bevel="30")["corrections"][0]["text"]


@pytest.mark.parametrize(
    ("kind", "move", "text"),
    [("percent", "0.04", "It is right: leave the setting where it is."), ("percent", "0.06", "0.1% more."), ("percent", "-2", "2% less."),
    ("count", "0", "It is right: leave the setting where it is."), ("count", "-1", "1 less."),
    ("angle", "0.004", "It is right: leave the setting where it is."), ("angle", "0.006", "0.01\u00b0 more.")],
)  # fmt: skip
def test_a_correction_of_any_kind_knows_when_there_is_nothing_to_correct(kind: str, move: str, text: str) -> None:
    """What is written as nothing is right, in percent and pieces as in degrees."""
    bench = {"known": {"move": exactly(move)}, "shop": INCH_SHOP, "world": {"units": UNITS}}

    assert text == correction("move", {"kind": kind, "label": "Move", "more": "{size} more.", "less": "{size} less."}, bench)


def test_the_working_shows_formula_numbers_and_result() -> None:
    """The working is the formula in words, then with the numbers, then the result."""
    row = next(one for one in sheet("groove", groove_width="5/16")["working"] if one["name"] == "fence")

    assert ("(stock \u2212 groove width) / 2", "(1 3/8 \u2212 5/16) / 2", "17/32 in", True) == tuple(
        row[name] for name in ("formula", "numbers", "answer", "differs")
    )


def test_the_working_shows_the_case_that_holds() -> None:
    """Of a formula with cases the one in force is shown."""
    rows = [{one["name"]: one["formula"] for one in sheet("ridge-cap", joint=joint)["working"]} for joint in ("lapped", "mitred")]

    assert ["cover \u2212 thickness / sin(inside angle)", "cover"] == [row["narrow outside"] for row in rows]


def test_other_tapes_are_shown_where_the_reader_chooses_one() -> None:
    """Tape arithmetic shows its answer on all five tapes; a groove does not, nor a drill, which is in 64ths whatever the tape."""
    rows = sheet("fractions", entry="0.3")["divisions"]

    assert [("1/8", "1/4 full"), ("1/16", "5/16 scant"), ("1/32", "5/16 scant"), ("1/64", "19/64 full"), ("1/128", "19/64 full")] == [
        (row["division"], row["text"]) for row in rows
    ]
    assert [] == sheet("groove")["divisions"] == sheet("screw")["divisions"]


def test_cautions_and_sources_are_on_every_card() -> None:
    """A card ends with the cautions of its machines and its sources."""
    found = sheet("groove")

    assert ("Guard and riving knife on for every cut that goes through.", 1) == (found["cautions"][0], len(found["sources"]))


def test_a_machine_that_is_not_used_adds_no_caution() -> None:
    """A rabbet by the dado head says nothing of work on its edge, and by one blade nothing of a dado head."""
    texts = [sheet("rabbet", method=method)["cautions"] for method in ("dado", "two cuts")]

    assert [(True, False), (False, True)] == [(CAUTIONS["dado head"][0] in each, CAUTIONS["on edge"][0] in each) for each in texts]


def test_a_card_has_the_cautions_of_the_cards_inside_it() -> None:
    """The frame's grooves and tenons are cut by the same hands: each caution of theirs stands there, once."""
    found = sheet("frame")["cautions"]

    assert {*sheet("groove")["cautions"], *sheet("tenon")["cautions"]} <= set(found)
    assert len(set(found)) == len(found)


def test_the_trial_says_what_belongs_to_this_cut() -> None:
    """A groove of one pass is told nothing of two."""
    trials = [sheet("groove", groove_width="1/4", cutter=cutter)["trial"] for cutter in ("1/8", "1/4")]

    assert [(True, False), (False, True)] == [("half the error" in trial, "One pass" in trial) for trial in trials]


def test_a_short_row_stands_mark_by_mark_at_the_top() -> None:
    """Up to six marks stand at the top of the card, each by itself, so that no line breaks inside one."""
    row = answer("slats")["others"][0]

    assert ["0", "2 13/16", "5 19/32", "8 13/32", "11 3/16", "14"] == [mark["text"] for mark in row["listed"]]
    assert "" == row["text"]


def test_of_a_long_row_only_the_number_of_marks_stands_at_the_top() -> None:
    """Seven marks or more are read further down."""
    row = answer("slats", run="72", count="31", slat="1 1/2")["others"][0]

    assert ("31 marks", []) == (row["text"], row["listed"])


def test_a_setting_that_is_no_row_lists_no_marks() -> None:
    """A length at the top of the card is its text."""
    others = answer("groove")["others"]

    assert [("1/2 in", [])] == [(one["text"], one["listed"]) for one in others[:1]]


def test_a_metric_row_has_no_feet() -> None:
    """Beside a mark in millimetres stands the inch, and not feet and inches as well."""
    rows = [sheet("slats", run="72 in", units=units)["settings"][1]["marks"][-1] for units in ("in", "mm")]

    assert [True, False] == ["ft" in mark["small"] for mark in rows]
