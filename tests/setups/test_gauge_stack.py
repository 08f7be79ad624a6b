"""The gauge stack's card: which blocks it takes, what it warns of, which way it corrects, and what it says to do."""

import pytest

from shopcalc import exact

from ..published.asking import ask, results_of

HALF = {"blocks": "1/2"}
EIGHTHS = {"blocks": "1/8, 1/8, 1/8, 1/8, 1/8", "most": "9"}

# a check, entries for which it holds, and entries on the edge for which it does not
CHECKS = [
    ("off", {"height": "0.6", "blocks": "1/4, 1/2"}, {"height": "0.515", "blocks": "1/4, 1/2"}),
    ("too_high", {"height": "0.516", **HALF}, {"height": "33/64", **HALF}),
    ("a_little_over", {"height": "0.499", **HALF}, {"height": "0.4995", **HALF}),
    ("a_little_short", {"height": "0.501", **HALF}, {"height": "0.5005", **HALF}),
    ("more_pieces", {"height": "0.4", "most": "2"}, {"height": "0.4", "most": "3"}),
    ("tall_stack", {"height": "5/8", **EIGHTHS}, {"height": "1/2", **EIGHTHS}),
    ("height_move_far_off", {"measured_depth": "0.657"}, {"measured_depth": "21/32"}),
]


def raised(**entries):
    """Name the checks that hold."""
    return {check["name"] for check in ask("gauge-stack", **entries)["checks"]}


def test_the_first_card_raises_nothing():
    """The blocks it opens with make the height it opens with."""
    assert raised() == set()
    assert results_of("gauge-stack")["error"] == 0


def test_the_first_card_says_what_to_stack():
    """The reach stands largest, and the blocks in one line after it."""
    answer = exact.answer("/gauge-stack", {}, "answer")["view"]["answers"][0]

    assert [one["text"] for one in answer["first"]] == ["17/32 in"]
    assert [one["text"] for one in answer["others"]] == ["1/4, 3/16, 3/32 in"]


@pytest.mark.parametrize("height", ["0.484", "0.516"])
def test_a_stack_far_off_is_warned_of_once(height):
    """Beyond 1/64 in the caution speaks, and the note about a little does not."""
    assert len(raised(height=height, **HALF)) == 1


@pytest.mark.parametrize(("check", "holds", "edge"), CHECKS)
def test_a_check_holds_up_to_its_edge(check, holds, edge):
    """A check holds just past its edge and not on it."""
    assert check in raised(**holds)
    assert check not in raised(**edge)


@pytest.mark.parametrize(("height", "reach", "name"), [("0.26", 0.25, "short"), ("0.36", 0.375, "over"), ("1/4", 0.25, "")])
def test_either_side_may_be_nearest(height, reach, name):
    """The stack may stand over the height or short of it, and the card says which."""
    values = results_of("gauge-stack", height=height, blocks="1/4, 1/8")

    assert values["reach"] == reach
    assert {"over", "short"} & set(values) == ({name} if name else set())


def test_of_two_as_near_the_one_over_comes_first():
    """Half-way between two stacks the larger is taken: light under a straightedge is seen, a lack is not."""
    assert results_of("gauge-stack", height="3/16", blocks="1/8, 1/4")["reach"] == 0.25


def test_no_more_pieces_than_allowed():
    """With one piece allowed the nearest block is taken, and what more would reach is said."""
    values = results_of("gauge-stack", most="1")

    assert (values["stack"], values["more_reach"]) == ([0.5], 0.53125)


def test_the_next_three_are_withheld_where_there_are_none():
    """One block makes one stack."""
    values = results_of("gauge-stack", **HALF)

    assert values["stack"] == [0.5]
    assert not {"second", "second_reach", "third", "third_reach", "fourth", "fourth_reach", "more_reach"} & set(values)


@pytest.mark.parametrize(
    ("measured", "words", "again"),
    [
        ("35/64", "Too deep: lower the cutter 0.016 in (1/64).", 33 / 64),
        ("33/64", "Too shallow: raise the cutter 0.016 in (1/64).", 35 / 64),
        ("17/32", "It is right: leave the setting where it is.", 17 / 32),
    ],
)
def test_the_trial_says_how_far_and_which_way(measured, words, again):
    """The cutter is moved by what the cut is off, or the next stack is built for as much less."""
    card = ask("gauge-stack", measured_depth=measured)

    assert card["trial"]["corrections"] == [words]
    assert card["results"]["height_again"]["value"] == again


def test_a_reading_far_off_moves_nothing():
    """A slip of the calipers is not worked on with."""
    assert not {"height_move", "height_again"} & set(results_of("gauge-stack", measured_depth="1"))


@pytest.mark.parametrize(
    ("entries", "said", "unsaid"),
    [
        ({}, ["Stack 1/4, 3/16, 3/32 in on the table", "together 17/32 in", "not rock", "Unplug"], ["short of", "hair of light"]),
        ({"height": "0.53"}, ["the stack is 0.001 in over 0.530 in, so leave a hair of light"], ["short of", "does not lift it"]),
        ({"height": "0.533"}, ["The stack is 0.002 in short of 0.533 in", "does not lift it"], ["hair of light"]),
        ({"height": "5"}, ["does not lift it"], ["short of", "hair of light"]),
        ({"height": "1/4", "blocks": "1/2"}, ["stop as far under the straightedge"], ["short of", "hair of light", "does not lift it"]),
    ],
)
def test_the_steps_say_how_it_is_felt(entries, said, unsaid):
    """Over or short, the step says what to do about it, and only where it is so."""
    steps = " ".join(ask("gauge-stack", **entries)["steps"])

    assert [words for words in said if words not in steps] == []
    assert [words for words in unsaid if words in steps] == []


def test_what_a_stack_is_short_of_is_laid_on_it_before_the_straightedge():
    """The cutter is raised to a straightedge that already lies at the height wanted."""
    steps = ask("gauge-stack", height="0.55")["steps"]
    places = [
        next(place for place, step in enumerate(steps) if step.startswith(words)) for words in ("Cutter well", "The stack is 0.003", "Lay a", "Raise")
    ]

    assert places == [1, 2, 3, 4]


@pytest.mark.parametrize(("height", "measured", "again"), [("0.54", "0.56", 0.52), ("0.55", "0.53", 0.57)])
def test_both_corrections_of_a_stack_a_little_off_agree(height, measured, again):
    """The light or the paper made up for the stack: the next entry is moved by just what the cutter is."""
    values = results_of("gauge-stack", height=height, measured_depth=measured)

    assert values["height_again"] == pytest.approx(again)
    assert values["height_again"] == pytest.approx(float(height) - values["height_move"])


def test_a_stack_far_off_is_not_built_again():
    """Nothing makes up for a stack beyond 1/64 in: the cutter is moved by what the cut is off, and the same stack is not asked for anew."""
    values = results_of("gauge-stack", height="0.45", blocks="1/2", measured_depth="1/2")

    assert values["height_move"] == pytest.approx(0.05)
    assert "height_again" not in values


@pytest.mark.parametrize(
    ("name", "typed", "words"),
    [("blocks", "", "at least one"), ("blocks", ", ".join(["1"] * 41), "at most 40"), ("most", "0", "zero"), ("most", "41", "40")],
)
def test_what_cannot_be_read_says_why(name, typed, words):
    """No blocks, too many, or a stack of none."""
    found = exact.answer("/gauge-stack.json", {name: typed})

    assert found["status"] == 422
    assert words in found["data"]["errors"][name]


def test_twenty_blocks_of_no_common_measure_are_weighed():
    """Of a million stacks one is found that is nearer than any hand can feel."""
    values = results_of("gauge-stack", height="3.14159", blocks=", ".join(f"0.{317 + 7 * place * place}{place}3" for place in range(20)), most="20")

    assert abs(values["error"]) < 0.0001


def test_a_whole_index_of_drills_is_weighed():
    """Twenty-nine drills by 64ths from 1/16 to 1/2, and two strips beside: whatever stands in 64ths up to an inch is two drills."""
    drills = ", ".join(f"{size}/64" for size in range(4, 33))
    values = results_of("gauge-stack", height="39/64", blocks=f"{drills}, 6 mm, 0.748", most="2")

    assert (values["error"], len(values["stack"])) == (0, 2)


def test_pieces_that_nobody_can_weigh_are_told():
    """Forty sizes with nothing in common: no answer is better than one that comes in an hour."""
    odd = ", ".join(f"0.{size * size:06}" for size in range(307, 307 + 40))
    data = ask("gauge-stack", blocks=odd)

    assert [check["name"] for check in data["checks"]] == ["too_many_sums"]
    assert data["results"] == {}
