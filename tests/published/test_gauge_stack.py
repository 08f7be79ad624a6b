"""The gauge stack, piled up: every set of blocks tried, and larger sets given to an integer program.

Source: enumeration in exact fractions and scipy's mixed-integer solver (HiGHS) (recomputed). Nothing here knows how the card
searches, nor that it sums the row in two halves.
"""

import random
from fractions import Fraction

import pytest

from .asking import results_of
from .pieces import every_set, fewest_by_program, nearest_by_program


def exactly(value):
    """Take a number from the card as the fraction it stands for."""
    return Fraction(value).limit_denominator(10**6)


def row(pieces):
    """Write a row as it is typed."""
    return ", ".join(str(piece) for piece in pieces)


def box_of(seed, count):
    """Take so many blocks and drill shanks out of a box, and a height within their reach."""
    rng = random.Random(seed)
    blocks = [Fraction(rng.choice((rng.randint(2, 32), 4 * rng.randint(1, 16))), 64) for _ in range(count - 1)] + [
        Fraction(rng.randint(20, 300), 1000)
    ]
    return blocks, Fraction(rng.randint(20, 1600), 1000)


def tried(blocks, height, most):
    """Try every set of at most `most` blocks: each reach with the fewest that make it, the nearest first, rather over than under."""
    found = {}
    for reach, count in every_set(blocks):
        if 0 < count <= most:
            found[reach] = min(found.get(reach, 99), count)
    return [(reach, found[reach]) for reach in sorted(found, key=lambda reach: (abs(reach - height), -reach))]


@pytest.mark.parametrize("seed", range(60))
def test_no_other_stack_comes_nearer(seed):
    """stack, reach and error, second, third and fourth with their reach are the first four of all that may be piled."""
    rng = random.Random(2000 + seed)
    blocks, height = box_of(seed, rng.randint(1, 9))
    most = rng.randint(1, 6)
    values = results_of("gauge-stack", height=height, blocks=row(blocks), most=most)
    order = tried(blocks, height, most)
    error = order[0][0] - height

    assert exactly(values["reach"]) == order[0][0]
    assert exactly(values["error"]) == error
    felt = error if abs(error) > Fraction("0.0005") else 0  # no hand feels less
    assert (exactly(values.get("over", 0)), exactly(values.get("short", 0))) == (max(felt, 0), max(-felt, 0))
    assert [exactly(values[name]) for name in ("second_reach", "third_reach", "fourth_reach") if name in values] == [reach for reach, _ in order[1:4]]
    for name, (reach, count) in zip(("stack", "second", "third", "fourth"), order, strict=False):
        pieces = [exactly(piece) for piece in values[name]]
        assert (sum(pieces), len(pieces)) == (reach, count)
        assert all(pieces.count(piece) <= blocks.count(piece) for piece in pieces)


@pytest.mark.parametrize("seed", range(8))
def test_an_integer_program_finds_nothing_nearer(seed):
    """With twenty blocks: the nearest reach with few pieces, and more_reach with any number of them."""
    blocks, height = box_of(700 + seed, 20)
    most = 2 + seed % 3
    values = results_of("gauge-stack", height=height, blocks=row(blocks), most=most)
    free = nearest_by_program(height, blocks)

    assert abs(exactly(values["reach"]) - height) == nearest_by_program(height, blocks, most=most)
    assert abs(exactly(values.get("more_reach", values["reach"])) - height) == free
    assert ("more_reach" in values) == (free < abs(exactly(values["error"])))
    assert fewest_by_program(exactly(values["reach"]), blocks, [1] * 20) == len(values["stack"])


@pytest.mark.parametrize("off", [Fraction(text) for text in ("0.006", "-0.004", "1/32")])
@pytest.mark.parametrize("height", [Fraction(text) for text in ("1/2", "0.555", "0.57")])
def test_a_height_felt_wrong_is_put_right(height, off):
    """A cut deeper than the cutter stood by so much: height_move takes it back, and height_again, felt in the same way, cuts the height."""
    blocks = [Fraction(piece, 64) for piece in (4, 8, 12, 16, 24, 32)]
    stack = exactly(results_of("gauge-stack", height=height, blocks=row(blocks))["reach"])
    paper, light = max(height - stack, 0), max(stack - height, 0)  # on the stack, and under the straightedge
    cut = stack + paper - light + off
    values = results_of("gauge-stack", height=height, blocks=row(blocks), measured_depth=cut)

    assert cut - exactly(values["height_move"]) == height
    assert exactly(values["height_again"]) + off == height
