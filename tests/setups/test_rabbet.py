"""The rabbet's card: what it gives for each method, what it refuses, and what it tells the reader to do."""

import pytest

from ..published.asking import ask, texts_of

DADO = {"exposed", "blade_height"}
TWO_CUTS = {"first_fence", "first_height", "second_fence", "second_height"}

# a check, entries that raise it, entries just beside them that do not
CHECKS = [
    ("no_lip", {"depth": "3/4"}, {"depth": "47/64"}),
    ("blade_in_fence", {"method": "two cuts", "width": "1/8"}, {"method": "two cuts", "width": "9/64"}),
    ("blade_in_fence", {"method": "two cuts", "width": "1/16"}, {"method": "dado", "width": "1/16"}),
    ("tall_fence_at_blade", {"method": "two cuts", "depth": "41/64"}, {"method": "two cuts", "depth": "5/8"}),
    ("tall_fence_at_blade", {"method": "two cuts", "depth": "41/64"}, {"method": "dado", "depth": "41/64"}),
    ("thin_lip", {"depth": "33/64"}, {"depth": "1/2"}),
    ("deep_rabbet", {"depth": "33/64"}, {"depth": "1/2"}),
    ("wide_for_dado", {"width": "49/64"}, {"width": "3/4"}),
    ("wide_for_dado", {"head": "23/64"}, {"head": "3/8"}),
    ("fence_move_far_off", {"width": "1 1/4", "measured_width": "1 25/64"}, {"width": "1 1/4", "measured_width": "1 3/8"}),
    ("wide_for_dado", {"width": "1"}, {"width": "1", "method": "two cuts"}),
    ("unsteady_on_edge", {"method": "two cuts", "stock": "31/64", "depth": "1/8"}, {"method": "two cuts", "stock": "1/2", "depth": "1/8"}),
    ("unsteady_on_edge", {"method": "two cuts", "stock": "3/8", "depth": "1/8"}, {"stock": "3/8", "depth": "1/8"}),
    ("loose_strip", {"method": "two cuts", "depth": "9/64"}, {"method": "two cuts", "depth": "1/8"}),
    ("exposed_move_far_off", {"measured_width": "33/64"}, {"measured_width": "1/2"}),
    ("past_the_head", {"depth": "2.001", "stock": "4"}, {"depth": "2", "stock": "4"}),
    ("past_the_head", {"depth": "2.5", "stock": "4"}, {"depth": "2.5", "stock": "4", "method": "two cuts"}),
    ("past_the_blade", {"width": "3.001", "method": "two cuts"}, {"width": "3", "method": "two cuts"}),
    ("height_move_far_off", {"measured_depth": "15/64"}, {"measured_depth": "1/4"}),
]


def raised(**entries):
    """Ask for the names of the checks that hold."""
    return {check["name"] for check in ask("rabbet", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """What the page opens with is a sensible joint."""
    assert raised() == set()
    assert texts_of("rabbet") == {"exposed": "3/8", "blade_height": "3/8", "lip": "3/8"}


def test_two_cuts_give_four_settings():
    """Each cut has a fence and a height: width less the kerf, and stock less the depth."""
    assert texts_of("rabbet", width="1/2", depth="5/16", stock="7/8", kerf="3/32", method="two cuts") == {
        "first_fence": "13/32",
        "first_height": "5/16",
        "second_fence": "9/16",
        "second_height": "1/2",
        "lip": "9/16",
    }


@pytest.mark.parametrize(("method", "given", "withheld"), [("dado", DADO, TWO_CUTS), ("two cuts", TWO_CUTS, DADO)])
def test_a_method_shows_its_own_settings_only(method, given, withheld):
    """A setting of the other method would be read off by mistake."""
    results = set(ask("rabbet", method=method)["results"])

    assert given <= results
    assert not withheld & results


@pytest.mark.parametrize(("name", "holds", "beside"), CHECKS)
def test_a_check_holds_where_it_should_and_not_beside_it(name, holds, beside):
    """Each check has an edge, and says nothing on the good side of it."""
    assert name in raised(**holds)
    assert name not in raised(**beside)


@pytest.mark.parametrize("entries", [{"depth": "1"}, {"method": "two cuts", "width": "1/8"}])
def test_an_impossible_rabbet_shows_no_number(entries):
    """A stop takes every result with it, and every step that quotes one."""
    card = ask("rabbet", **entries)

    assert card["results"] == {}
    assert not any("Raise" in step or "Set the fence" in step for step in card["steps"])


@pytest.mark.parametrize(
    ("entries", "said"),
    [
        ({"measured_width": "0.390"}, ["Too wide: motor off, move the fence 0.015 in (1/64 scant) further over the cutter, into the pocket."]),
        ({"measured_width": "0.360"}, ["Too narrow: motor off, move the fence 0.015 in (1/64 scant) back off the cutter."]),
        ({"measured_depth": "0.383"}, ["Too deep: lower the cutter 0.008 in (1/128)."]),
        ({"measured_depth": "0.367"}, ["Too shallow: raise the cutter 0.008 in (1/128) with the motor on: it cuts its own room in the fence."]),
        ({"measured_depth": "3/8"}, ["It is right: leave the setting where it is."]),
        ({"method": "two cuts", "measured_width": "0.390"}, ["Too wide: move the fence of the first cut 0.015 in (1/64 scant) toward the blade."]),
        (
            {"method": "two cuts", "measured_width": "0.360"},
            ["Too narrow: move the fence of the first cut 0.015 in (1/64 scant) away from the blade."],
        ),
        ({"method": "two cuts", "measured_depth": "0.383"}, ["Too deep: move the fence of the second cut 0.008 in (1/128) away from the blade."]),
        ({"method": "two cuts", "measured_depth": "0.367"}, ["Too shallow: move the fence of the second cut 0.008 in (1/128) toward the blade."]),
    ],
)
def test_a_reading_moves_what_it_belongs_to(entries, said):
    """Width goes to the fence of the shoulder, depth to the cutter or to the second fence, and the words say which way."""
    assert ask("rabbet", **entries)["trial"]["corrections"] == said


def test_the_lip_is_known_from_the_scrap():
    """Once the depth is read, the lip is what the wood has left and not what was planned."""
    assert "lip_as_cut" not in texts_of("rabbet")
    assert texts_of("rabbet", measured_depth="13/32")["lip_as_cut"] == "11/32"
    assert "lip_as_cut" not in texts_of("rabbet", measured_depth="3/4")


def test_a_rabbet_wider_than_the_head_is_cut_in_passes():
    """The whole head stands out, the fence is moved by what it lacks, and nothing asks for more cutter than there is."""
    card = ask("rabbet", width="1 1/4")
    steps = " ".join(card["steps"])

    assert {name: card["results"][name]["value"] for name in ("exposed", "second_pass", "passes")} == {
        "exposed": 0.75,
        "second_pass": 0.5,
        "passes": 2,
    }
    assert "the whole cutter, 3/4 in, stands out" in steps
    assert "1 1/4 in of the cutter" not in steps
    assert card["steps"][-3:-1] == ["Move the fence 1/2 in away from the cutter.", "Run the scrap, measure, correct. Then run every piece."]
    assert not {"second_pass", "passes"} & set(ask("rabbet", width="3/4")["results"])


def test_a_very_wide_rabbet_is_cut_by_less_than_the_head_at_a_time():
    """The steps leave no rib between two passes."""
    assert "by less than 3/4 in at a time, 1 1/2 in in all" in " ".join(ask("rabbet", width="2 1/4")["steps"])


@pytest.mark.parametrize(
    ("measured", "said", "again"),
    [
        ("1.26", "Too wide: at the last pass move the fence 0.010 in (1/128 full) less.", 0.49),
        ("1.24", "Too narrow: at the last pass move the fence 0.010 in (1/128 full) more.", 0.51),
    ],
)
def test_the_last_pass_sets_the_width_of_several(measured, said, again):
    """With the whole head out there is no more of it to show: the width is mended where the fence moves last."""
    card = ask("rabbet", width="1 1/4", measured_width=measured)

    assert card["trial"]["corrections"] == [said]
    assert card["results"]["second_pass_again"]["value"] == pytest.approx(again)


def test_the_corner_is_looked_into_after_two_cuts_only():
    """One pass of a dado head leaves neither ridge nor nick of a second blade height."""
    one, two = (ask("rabbet", method=method) for method in ("dado", "two cuts"))

    assert "A ridge: a blade is too low. A nick: it is too high." in " ".join(two["steps"])
    assert "ridge" not in " ".join(one["steps"]) + one["trial"]["text"]


def test_the_steps_go_with_the_method():
    """The dado head has one cut with a sacrificial fence, the blade two with the shoulder first."""
    dado = " ".join(ask("rabbet", width="1/2")["steps"])
    two = ask("rabbet", method="two cuts", width="1/2")["steps"]

    assert "1/2 in of the cutter stands out" in dado
    assert "Second cut" not in dado
    assert "sacrificial" not in " ".join(two)
    assert [step.partition(".")[0] for step in two if "cut." in step][:2] == ["First cut", "Second cut"]
    assert "the fence 3/8 in" in two[1]


def test_a_rabbet_of_two_heads_needs_a_third_pass():
    """Where two passes only touch, a fin as thin as the fence is off stays between them: the fence is moved by less than the head."""
    just, less = (ask("rabbet", width=width, head="3/4") for width in ("1 1/2", "1 15/32"))

    assert [card["results"]["passes"]["value"] for card in (just, less)] == [3, 2]
    assert any("by less than 3/4 in at a time" in step for step in just["steps"])
    assert any(step == "Move the fence 23/32 in away from the cutter." for step in less["steps"])


def test_the_cutter_is_never_raised_or_moved_where_the_fence_may_be_caught():
    """The pocket is cut with the fence locked, deeper than it will be used by as much as a correction may ask."""
    steps = " ".join(ask("rabbet")["steps"])

    assert "1/8 in less of the cutter will stand out than is wanted; then raise the spinning cutter" in steps
    assert "Motor off: draw the fence back so that 3/8 in of the cutter stands out" in steps
    assert ask("rabbet", measured_width="0.51")["trial"]["corrections"] == []
