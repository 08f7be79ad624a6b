"""The wood screw's card: what it gives, what it warns of, which way it corrects, and what it says to do."""

import pytest

from ..published.asking import ask, results_of, texts_of

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("gauge_small", {"gauge": "1"}, {"gauge": "2"}),
    ("gauge_large", {"gauge": "15"}, {"gauge": "14"}),
    ("thinner_than_any", {"measured_body": "0.078"}, {"measured_body": "0.079"}),
    ("thicker_than_any", {"measured_body": "0.249"}, {"measured_body": "0.248"}),
    ("off_its_gauge", {"measured_body": "0.169"}, {"measured_body": "0.168"}),
    ("not_its_gauge", {"measured_body": "0.171"}, {"measured_body": "0.170"}),
    ("not_its_gauge", {"measured_body": "0.156"}, {"measured_body": "0.157"}),
    ("body_far_off", {"measured_body": "0.290"}, {"measured_body": "0.289"}),
    ("depth_move_far_off", {"measured_countersink": "0.441"}, {"measured_countersink": "0.440"}),
]


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("screw", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """A No. 8 with a flat head in softwood."""
    assert raised() == set()


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize("gauge", ["0", "1", "15", "100"])
def test_a_gauge_out_of_reach_gives_nothing(gauge):
    """Outside 2 to 14 no drill is named, whatever was measured."""
    assert results_of("screw", gauge=gauge, measured_body="0.164") == {}


@pytest.mark.parametrize("tape", ["8", "16", "32", "64", "128"])
def test_drills_are_in_64ths_whatever_the_tape(tape):
    """A drill has its own size, and a tape in eighths does not change it."""
    texts = texts_of("screw", tape=tape)

    assert (texts["pilot_hole"], texts["clearance_hole"]) == ("5/64", "11/64")


@pytest.mark.parametrize("gauge", range(2, 15))
def test_every_drill_is_one_that_is_sold(gauge):
    """Pilot and clearance are whole 64ths, the pilot smaller, and hardwood's pilot no smaller than softwood's."""
    soft, hard = (results_of("screw", gauge=gauge, wood=wood) for wood in ("soft", "hard"))

    assert all((values[name] * 64).is_integer() for values in (soft, hard) for name in ("pilot_hole", "clearance_hole"))
    assert soft["pilot_hole"] <= hard["pilot_hole"] < hard["body"] <= hard["clearance_hole"]


def test_a_round_head_has_no_countersink():
    """Neither number nor step nor correction is given for it."""
    card = ask("screw", head="round", measured_countersink="0.3")

    assert not {"countersink", "countersink_depth", "depth_move"} & set(card["results"])
    assert "Countersink of" not in " ".join(card["steps"])
    assert "No countersink" in " ".join(card["steps"])


def test_the_shank_as_it_measures_goes_on_to_the_drills():
    """A thinner shank takes smaller drills, and the card says what gauge it is."""
    values = results_of("screw", wood="hard", measured_body="0.138")

    assert (values["body"], values["gauge_by_shank"]) == (0.138, 6)
    assert (values["pilot_hole"], values["clearance_hole"]) == (6 / 64, 9 / 64)
    assert "gauge_by_shank" not in results_of("screw")


def test_a_shank_thicker_than_the_head_has_no_countersink_depth():
    """A cone that would stand on its point is left out."""
    assert "countersink_depth" not in results_of("screw", gauge="2", head="flat", measured_body="0.19")


def test_a_shank_finer_than_any_gauge_has_none():
    """No gauge is made up for a shank below No. 0, and the caution still reads; nor is one named that has no card."""
    card = ask("screw", measured_body="0.05")

    assert "gauge_by_shank" not in card["results"]
    assert "thinner than that of a No. 2" in card["checks"][0]["text"]
    assert {"thinner_than_any"} == raised(measured_body="0.065")
    assert {"thicker_than_any"} == raised(measured_body="0.25")


@pytest.mark.parametrize(
    ("measured", "words"),
    [
        ("0.3", "Mouth too small: set the stop of the countersink 0.018 in (1/64 full) deeper."),
        ("0.35", "Mouth too wide: set the stop of the countersink 0.010 in (1/128 full) less deep."),
        ("0.3318", "It is right: leave the setting where it is."),
    ],
)
def test_the_mouth_of_the_cone_says_how_far_to_move_the_stop(measured, words):
    """The cone of 82° is 1.15 times as deep as its mouth is off at each side."""
    assert ask("screw", measured_countersink=measured)["trial"]["corrections"] == [words]


@pytest.mark.parametrize("words", ["Pilot drill 5/64 in", "Clearance drill 11/64 in", "21/64 in full across its mouth", "Soap or wax", "brass"])
def test_the_steps_name_drills_and_countersink(words):
    """What is drilled first, what next, and what keeps the screw from twisting off."""
    assert words in " ".join(ask("screw")["steps"])


def test_a_shank_of_the_next_gauge_but_one_is_told() -> None:
    """0.242 in is a No. 14, whatever the gauge says."""
    assert "not_its_gauge" in raised(gauge="12", measured_body="0.242")
