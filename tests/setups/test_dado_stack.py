"""The dado stack's card: what goes on the arbor, what it warns of, which way it corrects, and what it says to do."""

import pytest

from shopcalc import exact

from ..published.asking import ask, results_of, texts_of

FEW = {"chippers": "1/8", "shims": ""}
NONE = {"chippers": "", "shims": ""}
TINY = {"chippers": "", "shims": "0.001, 0.001, 0.001, 0.001, 0.001", "clearance": "0", "under": "0"}

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("narrower_than_pair", {"target": "0.245", "under": "0.2"}, {"target": "0.246"}),
    ("arbor_too_short", {"arbor": "0.249"}, {"arbor": "1/4"}),
    ("arbor_short", {"arbor": "0.7"}, {"arbor": "0.72275"}),
    ("wider_than_widest", {"target": "0.828", "arbor": "2"}, {"target": "0.82725", "arbor": "2"}),
    ("more_than_two", {"target": "0.496", **NONE}, {"target": "0.495", **NONE}),
    ("loose", {"target": "0.365", **FEW}, {"target": "0.366", **FEW}),
    ("tighter_than_piece", {"target": "0.376", "clearance": "0", **FEW}, {"target": "0.375", "clearance": "0", **FEW}),
    ("much_clearance", {"clearance": "0.032"}, {"clearance": "1/32"}),
    ("many_shims", {"target": "0.255", **TINY}, {"target": "0.254", **TINY}),
]


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("dado-stack", **entries)["checks"]}


def corrections(**entries):
    """Give the corrections in words."""
    return ask("dado-stack", **entries)["trial"]["corrections"]


def test_the_first_card_raises_nothing():
    """The pieces it opens with make a sensible stack."""
    assert raised() == set()


def test_the_first_card_says_what_goes_on():
    """The width stands largest, and the pieces in one line after it: outer pair, chippers, shims."""
    answer = exact.answer("/dado-stack", {}, "answer")["view"]["answers"][0]

    assert [one["text"] for one in answer["first"]] == ["23/32 in full"]
    assert [one["text"] for one in answer["others"]] == ["1/4, 1/8, 1/8, 1/8, 3/32, 0.004 in"]


def test_a_long_stack_is_still_named_piece_by_piece():
    """Pieces are not counted as marks would be, however many they are."""
    texts = texts_of("dado-stack", chippers="1/16, 1/16, 1/16, 1/16, 1/16, 1/16, 1/16", shims="0.036")

    assert texts["stack"] == "1/4" + ", 1/16" * 7 + ", 0.036"
    answer = exact.answer("/dado-stack", {"chippers": "1/16, 1/16, 1/16, 1/16, 1/16, 1/16, 1/16", "shims": "0.036"}, "answer")["view"]["answers"][0]
    assert answer["others"][0]["text"] == texts["stack"] + " in"


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize("entries", [{"target": "0.2"}, {"arbor": "0.2"}])
def test_a_stop_leaves_nothing(entries):
    """A head that does not go on the saw, or is wider than the dado, has no stack and no steps."""
    card = ask("dado-stack", **entries)

    assert (card["results"], card["steps"]) == ({}, [])


def test_the_pair_alone_may_be_best():
    """A dado just as wide as the outer pair is cut with nothing between the blades."""
    card = ask("dado-stack", target="0.246")

    assert card["results"]["stack"]["value"] == [0.25]
    assert not {"chippers_used", "shims_used"} & set(card["results"])
    assert "chippers" not in " ".join(card["steps"])


def test_with_no_pieces_the_pair_is_all_there_is():
    """Empty rows of chippers and shims are allowed, and nothing comes next."""
    values = results_of("dado-stack", target="0.246", **NONE)

    assert (values["stack"], values["width"], values["widest"]) == ([0.25], 0.25, 0.25)
    assert not {"second", "third", "fourth", "second_width"} & set(values)


def test_never_narrower_unless_asked():
    """A thousandth under is taken where it is allowed, and not where it is not."""
    entries = {"target": "0.376", "clearance": "0", "chippers": "1/8, 0.130", "shims": ""}

    assert results_of("dado-stack", **entries)["error"] == -0.001
    assert results_of("dado-stack", under="0", **entries)["error"] == 0.004


def test_chippers_come_before_shims():
    """Of two stacks of one width the one without a shim is taken, though it has as many pieces."""
    values = results_of("dado-stack", target="0.371", chippers="1/16, 1/16, 1/8", shims="1/8, 1/16")

    assert (values["stack"], values["chippers_used"]) == ([0.25, 0.125], [0.125])
    assert "shims_used" not in values


def test_the_next_three_are_withheld_where_there_are_none():
    """With one chipper there is one other stack wide enough, and no third."""
    values = results_of("dado-stack", target="0.246", chippers="1/8", shims="")

    assert (values["second"], values["second_width"]) == ([0.25, 0.125], 0.375)
    assert not {"third", "third_width", "fourth", "fourth_width"} & set(values)


def test_a_dado_wider_than_every_stack_takes_two_passes():
    """The widest stack goes on, and the fence is moved by what it lacks; no other stack is offered."""
    card = ask("dado-stack", target="1 1/4", clearance="0", arbor="2")
    values = {name: result["value"] for name, result in card["results"].items()}

    assert (values["width"], values["second_pass"], values["passes"]) == (0.82925, 0.42075, 2)
    assert len(values["stack"]) == 11 and "second" not in values
    assert card["steps"][-2] == "Move the fence 13/32 in full away from the cutter."


def test_what_the_arbor_cannot_take_is_cut_in_two_passes():
    """A stack beyond the usable length is never offered: the widest that goes on is."""
    values = results_of("dado-stack", arbor="5/8")

    assert values["width"] <= 0.625
    assert values["second_pass"] == pytest.approx(0.72275 - values["width"])


def test_a_very_wide_dado_is_cut_by_less_than_a_stack_at_a_time():
    """The steps do not leave a rib between two passes."""
    steps = ask("dado-stack", target="1", **NONE)["steps"]

    assert "Move the fence away from the cutter by less than 1/4 in at a time" in steps[-2]


@pytest.mark.parametrize("target", ["1 1/2", "2 1/2"])
def test_the_scrap_of_several_passes_is_measured_after_the_last(target):
    """Only when the fence has moved for the last time has the dado its width; the fence is corrected, and no stack is chosen."""
    steps = ask("dado-stack", target=target)["steps"]
    measured = [place for place, step in enumerate(steps) if "measure. Wanted" in step]

    assert measured == [len(steps) - 1]
    assert "Correct the fence" in steps[-1]
    assert "last move of the fence" in ask("dado-stack", target=target)["trial"]["text"]


@pytest.mark.parametrize(
    ("entries", "words"),
    [
        ({"measured_dado": "0.72675"}, "Too wide by 0.004 in (1/128 scant): build the stack for the next trial."),
        ({"measured_dado": "0.71875"}, "Too narrow by 0.004 in (1/128 scant): build the stack for the next trial."),
        ({"measured_dado": "0.72275"}, "It is right: leave the setting where it is."),
        ({"measured_dado": "1.514", "target": "1.5"}, "Too wide: at the last pass move the fence 0.010 in (1/128 full) less."),
        ({"measured_dado": "1.494", "target": "1.5"}, "Too narrow: at the last pass move the fence 0.010 in (1/128 full) more."),
    ],
)
def test_the_trial_says_how_far_and_which_way(entries, words):
    """One pass is put right by shims, two by the fence."""
    assert corrections(**entries) == [words]


def test_a_reading_chooses_the_next_stack():
    """What the stack cut beyond its sum is taken off the next one; without a reading there is none."""
    values = results_of("dado-stack", measured_dado="0.72675")

    assert values["stack_again"] == [0.25, 0.125, 0.125, 0.125, 0.09375]
    assert values["width_again"] == 0.72275
    assert not {"stack_again", "width_again", "second_pass_again"} & set(results_of("dado-stack"))


def test_a_reading_far_off_chooses_nothing():
    """A slip of the calipers is not worked on with."""
    values = results_of("dado-stack", measured_dado="1")

    assert not {"stack_again", "width_again", "shim_move"} & set(values)


@pytest.mark.parametrize(
    ("entries", "said", "unsaid"),
    [
        (
            {},
            ["Then the chippers 1/8, 1/8, 1/8, 3/32 in", "The shims 0.004 in go between the plates", "Of 13/16 in usable", "One pass"],
            ["First pass", "Move the fence"],
        ),
        ({"target": "1 1/2"}, ["First pass", "Move the fence 11/16 in full away"], ["One pass", "at a time"]),
        ({"target": "1/4"}, ["The shims 0.004 in go between the plates"], ["chippers"]),
        ({"shims": ""}, ["Then the chippers"], ["The shims"]),
    ],
)
def test_the_steps_are_those_of_the_stack(entries, said, unsaid):
    """Chippers, shims and a second pass are spoken of where there are any."""
    steps = " ".join(ask("dado-stack", **entries)["steps"])

    assert [words for words in said if words not in steps] == []
    assert [words for words in unsaid if words in steps] == []


@pytest.mark.parametrize(
    ("name", "typed", "words"),
    [("chippers", "1/8,,1/8", "Number 2 in the row"), ("shims", ", ".join(["1/64"] * 31), "at most 30"), ("target", "0", "zero")],
)
def test_what_cannot_be_read_says_why(name, typed, words):
    """A row with a hole, too many shims, a piece of nothing."""
    found = exact.answer("/dado-stack.json", {name: typed})

    assert found["status"] == 422
    assert words in found["data"]["errors"][name]


def test_a_whole_pack_of_shims_is_weighed():
    """Twenty-six shims of seven sizes are no more than some hundred sums."""
    pack = ", ".join(["0.004"] * 5 + ["0.005"] * 5 + ["0.008"] * 4 + ["0.010"] * 4 + ["0.012"] * 3 + ["0.020"] * 3 + ["0.031"] * 2)

    assert results_of("dado-stack", shims=pack, target="0.777", clearance="0.003")["error"] == pytest.approx(0, abs=1e-12)


@pytest.mark.parametrize("name", ["chippers", "shims"])
def test_pieces_that_nobody_can_weigh_are_told(name):
    """Twelve sizes with nothing in common are left to be told apart by hand."""
    odd = ", ".join(f"0.0{size * size:06}" for size in range(307, 307 + 12))
    data = ask("dado-stack", **{name: odd})

    assert [check["name"] for check in data["checks"]] == [f"too_many_{name}"]
    assert "stack" not in data["results"]
