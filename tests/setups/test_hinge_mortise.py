"""The hinge mortise's card: what it gives, what it warns of, which way it corrects, and what it says to do."""

import pytest

from ..published.asking import ask, results_of, texts_of

MOVING = {"cut_in": "moving part"}
FIXED = {"cut_in": "fixed part"}

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("bit_in_collar", {"collar": "1/2"}, {"collar": "0.501"}),
    ("bit_too_wide", {"hinge_length": "0.499"}, {"hinge_length": "1/2"}),
    ("bit_over_edge", {"leaf_width": "0.499"}, {"leaf_width": "1/2"}),
    ("thin_bushing", {"collar": "0.624"}, {"collar": "5/8"}),
    ("deep_pass", {"bit": "0.249", **MOVING}, {"bit": "1/4", **MOVING}),
    ("tight_gap", {"gap": "0.031"}, {"gap": "1/32"}),
    ("sunk_moving", {"gap": "0.124", **MOVING}, {"gap": "1/8", **MOVING}),
    ("sunk_fixed", {"gap": "0.124", **FIXED}, {"gap": "1/8", **FIXED}),
    ("shimmed", {"gap": "0.219"}, {"gap": "7/32"}),
    ("on_the_surface", {"gap": "7/32"}, {"gap": "0.219"}),
    ("depth_move_far_off", {"measured_gap": "0.219"}, {"measured_gap": "7/32"}),
    ("shim_move_far_off", {"gap": "1/4", "measured_gap": "0.313", **MOVING}, {"gap": "1/4", "measured_gap": "5/16", **MOVING}),
    ("length_move_far_off", {"measured_length": "3.126"}, {"measured_length": "3 1/8"}),
]
TEMPLATE = {"template_offset", "template_length", "template_width"}


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("hinge-mortise", **entries)["checks"]}


def corrections(**entries):
    """Give the corrections in words."""
    return ask("hinge-mortise", **entries)["trial"]["corrections"]


def test_the_first_card_raises_nothing():
    """The sizes it opens with are a sensible joint."""
    assert raised() == set()


def test_the_first_card_gives_every_setting():
    """Depths, template and corner of the hinge it opens with."""
    values = results_of("hinge-mortise")

    assert [values[name] for name in ("depth_moving", "depth_fixed", "rout_moving", "rout_fixed")] == [1 / 16] * 4
    assert [values[name] for name in ("template_offset", "template_length", "template_width", "corner_radius")] == [1 / 8, 3.25, 1.25, 1 / 4]
    assert not {"shim_moving", "shim_fixed"} & set(values)


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize(("entries", "gone"), [({"collar": "1/2"}, TEMPLATE), ({"hinge_length": "1/4"}, TEMPLATE | {"corner_radius"})])
def test_a_stop_takes_away_just_what_cannot_be(entries, gone):
    """No template is given for a bit that does not fit, and the depths stay."""
    found = set(results_of("hinge-mortise", **entries))

    assert not gone & found
    assert {"depth_moving", "depth_fixed"} <= found


@pytest.mark.parametrize(("cut_in", "moving", "fixed"), [("both", 1 / 16, 1 / 16), ("moving part", 1 / 8, 0), ("fixed part", 0, 1 / 8)])
def test_the_depth_goes_where_the_hinge_is_let_in(cut_in, moving, fixed):
    """Half each, or all of it in the one part."""
    values = results_of("hinge-mortise", cut_in=cut_in)

    assert (values["depth_moving"], values["depth_fixed"]) == (moving, fixed)
    assert ("rout_moving" in values, "rout_fixed" in values) == (moving > 0, fixed > 0)


@pytest.mark.parametrize(("cut_in", "moving", "fixed"), [("both", 1 / 64, 1 / 64), ("moving part", 1 / 32, None), ("fixed part", None, 1 / 32)])
def test_a_depth_below_nothing_is_a_shim(cut_in, moving, fixed):
    """The signed depth stays in the data, and the card names the shim."""
    values = results_of("hinge-mortise", cut_in=cut_in, gap="1/4")

    assert (values.get("shim_moving"), values.get("shim_fixed")) == (moving, fixed)
    assert (values["depth_moving"], values["depth_fixed"]) == (-(moving or 0), -(fixed or 0))
    assert not {"rout_moving", "rout_fixed"} & set(values)


@pytest.mark.parametrize(
    ("entries", "words"),
    [
        ({"measured_gap": "1/8"}, "Gap too wide: seat each leaf that is let in 0.016 in (1/64) deeper."),
        (
            {"measured_gap": "1/16"},
            "Gap too narrow: seat each leaf that is let in 0.016 in (1/64) less deep, or lay card of that thickness under it.",
        ),
        ({"measured_gap": "1/8", **MOVING}, "Gap too wide: seat each leaf that is let in 0.031 in (1/32) deeper."),
        ({"measured_length": "3 1/64"}, "Mortise too long: make the template opening 0.016 in (1/64) shorter."),
        ({"measured_length": "2 63/64"}, "Mortise too short: make the template opening 0.016 in (1/64) longer."),
        ({"measured_gap": "3/32"}, "It is right: leave the setting where it is."),
    ],
)
def test_the_trial_says_how_far_and_which_way(entries, words):
    """Half of an error in the gap goes on each of two mortises, all of it on one."""
    assert corrections(**entries) == [words]


def test_a_reading_goes_on_to_the_next_trial():
    """Depth and template for the next scrap appear with the readings, and not before."""
    values = results_of("hinge-mortise", measured_gap="1/8", measured_length="3 1/32")

    assert values["depth_again"] == 1 / 16 + 1 / 64
    assert values["template_again"] == 3.25 - 1 / 32
    assert not {"depth_again", "template_again"} & set(results_of("hinge-mortise"))


def test_a_correction_deeper_than_the_mortise_gives_a_shim():
    """A gap far too narrow needs a shim in place of the mortise, and no depth is made up for it."""
    values = results_of("hinge-mortise", gap="0.2", measured_gap="0.1")

    assert "depth_again" not in values
    assert values["shim_again"] == pytest.approx(0.05 - 0.009375)


@pytest.mark.parametrize(
    ("measured", "words", "shim"),
    [
        (
            "17/64",
            "Gap too wide: seat the leaf, or both where both parts are chosen, 0.016 in (1/64) deeper: on a thinner shim, on none, or let in.",
            1 / 64,
        ),
        ("15/64", "Gap too narrow: lay 0.016 in (1/64) more of shim under the leaf, or under both where both parts are chosen.", 3 / 64),
    ],
)
@pytest.mark.parametrize("part", [MOVING, FIXED])
def test_a_shim_is_corrected_and_no_mortise_spoken_of(part, measured, words, shim):
    """Where nothing is let in the trial mends the shim: a gap too wide by 1/64 takes a shim as much thinner."""
    card = ask("hinge-mortise", gap="1/4", measured_gap=measured, **part)

    assert card["trial"]["corrections"] == [words]
    assert card["results"]["shim_again"]["value"] == shim
    assert "depth_again" not in card["results"]


def test_a_shim_that_is_wanted_no_more_becomes_a_mortise():
    """A gap too wide by more than the shim is thick asks for a mortise at the next trial."""
    values = results_of("hinge-mortise", gap="1/4", measured_gap="19/64", **MOVING)

    assert values["depth_again"] == 1 / 64
    assert "shim_again" not in values


def test_a_gap_far_off_gives_neither_depth_nor_shim():
    """A slip of the calipers is not worked on with."""
    assert not {"depth_again", "shim_again"} & set(results_of("hinge-mortise", gap="1/4", measured_gap="1/2", **MOVING))


@pytest.mark.parametrize(
    ("entries", "said", "unsaid"),
    [
        ({}, ["Set the depth stop 1/16 in below it", "3 1/4 in long, its back 1 1/4 in from that fence", "a radius of 1/4 in"], ["shim of"]),
        (MOVING, ["Set the depth stop 1/8 in"], ["Fixed part"]),
        (
            FIXED,
            ["that is zero. Set the depth stop 1/8 in", "Fixed part: template's fence", "Rout in from the open face"],
            ["Moving part", "the same"],
        ),
        ({"gap": "9/32"}, ["shim of 1/32 in"], ["Rout a scrap", "template", "chisel"]),
        ({"gap": "7/32"}, ["look at the gap: 7/32 in"], ["shim of", "Rout a scrap"]),
    ],
)
def test_the_steps_are_those_of_the_work_chosen(entries, said, unsaid):
    """Only the parts that are cut have a step, each with its number; a shim has one where nothing is cut."""
    steps = " ".join(ask("hinge-mortise", **entries)["steps"])

    assert [words for words in said if words not in steps] == []
    assert [words for words in unsaid if words in steps] == []


def test_a_shim_is_as_thick_as_it_measures():
    """It is no mark on a tape: rounded to one it would be twice as thick."""
    assert texts_of("hinge-mortise", gap="1/4")["shim_moving"] == "1/64"
    assert texts_of("hinge-mortise", leaf=".085", other_leaf=".085", closed_gap=".03")["rout_moving"].startswith("3/64")


def test_where_nothing_is_cut_no_bit_is_asked_about():
    """A bit that would fit no bushing, or be wider than the leaf, is no matter for a hinge that is shimmed."""
    assert raised(gap="1/4", bit="1") == {"shimmed"}
    assert raised(gap="1/4", bit="5") == {"shimmed"}


def test_where_nothing_is_cut_no_template_is_made():
    """On the surface there is no template, no corner to square and no mortise to measure; nor with a bit that fits no bushing."""
    assert not {"template_offset", "template_length", "template_width", "corner_radius"} & set(texts_of("hinge-mortise", gap="7/32"))
    assert not any("Router" in step or "template" in step for step in ask("hinge-mortise", bit="1", collar="3/4")["steps"])


def test_the_template_is_laid_outside_the_knife_lines():
    """The cut stays an eighth inside the opening all round: on the lines the mortise would come out that much off."""
    said = [step for entries in ({}, {"cut_in": "fixed part"}) for step in ask("hinge-mortise", **entries)["steps"] if "knife line." in step]

    assert len(said) == 2
    assert all("each end of the opening 1/8 in outside its knife line" in step for step in said)
