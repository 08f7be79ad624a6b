"""The dado stack, put together: every set of chippers and shims tried, and larger sets given to an integer program.

Source: enumeration in exact fractions and scipy's mixed-integer solver (HiGHS), and the dado cut out of a board pass by pass
(recomputed). Nothing here knows how the card searches.
"""

import random
from fractions import Fraction

import pytest

from .asking import ask, results_of
from .pieces import every_set, fewest_by_program, nearest_by_program
from .wood import cut_out

PAIR = Fraction(1, 4)


def exactly(value):
    """Take a number from the card as the fraction it stands for."""
    return Fraction(value).limit_denominator(10**6)


def row(pieces):
    """Write a row as it is typed."""
    return ", ".join(str(piece) for piece in pieces)


def drawer(seed, chippers, shims):
    """Take so many chippers and shims out of a drawer, many of them alike."""
    rng = random.Random(seed)
    some = [Fraction(rng.choice((4, 4, 6, 8, 8, 8)), 64) for _ in range(chippers)]
    thin = [Fraction(rng.choice((2, 4, 4, 5, 8, 10, 12, 20, 31)), 1000) for _ in range(shims)]
    most = PAIR + sum(some, Fraction(0)) + sum(thin, Fraction(0))
    target = PAIR + Fraction(rng.randint(1, max(1, int((most - PAIR) * 1000))), 1000)
    return some, thin, target, Fraction(rng.choice((0, 2, 2, 6)), 1000)


def asked(some, thin, target, under):
    """Name the entries, on an arbor that is long enough, without a clearance."""
    return {"target": target, "clearance": "0", "outer_pair": PAIR, "chippers": row(some), "shims": row(thin), "arbor": "3", "under": under}


def tried(some, thin, target, under):
    """Try every stack: of each size the one of fewest shims, then of fewest pieces, the nearest first, rather over than under."""
    found = {}
    for chipper_sum, chipper_count in every_set(some):
        for shim_sum, shim_count in every_set(thin):
            size = PAIR + chipper_sum + shim_sum
            if target - size <= under:
                found[size] = min(found.get(size, (99, 99)), (shim_count, chipper_count))
    return [(size, found[size]) for size in sorted(found, key=lambda size: (abs(size - target), -size))]


@pytest.mark.parametrize("seed", range(60))
def test_no_other_stack_comes_nearer(seed):
    """stack, width and error, second, third and fourth with their widths are the first four of all."""
    rng = random.Random(1000 + seed)
    some, thin, target, under = drawer(seed, rng.randint(0, 6), rng.randint(0, 5))
    values = results_of("dado-stack", **asked(some, thin, target, under))
    order = tried(some, thin, target, under)

    if not order:  # wider than all the pieces together by more than is allowed
        assert values["passes"] == 2
        return
    assert values["passes"] == 1
    assert exactly(values["width"]) == order[0][0]
    assert exactly(values["error"]) == order[0][0] - target
    assert [exactly(values[name]) for name in ("second_width", "third_width", "fourth_width") if name in values] == [size for size, _ in order[1:4]]
    for name, (size, (shim_count, chipper_count)) in zip(("stack", "second", "third", "fourth"), order, strict=False):
        pieces = [exactly(piece) for piece in values[name]]
        assert pieces[0] == PAIR
        assert sum(pieces) == size
        assert len(pieces) == 1 + shim_count + chipper_count
    used, thin_used = ([exactly(piece) for piece in values.get(name, [])] for name in ("chippers_used", "shims_used"))
    assert (len(thin_used), len(used)) == order[0][1]
    assert [PAIR, *used, *thin_used] == [exactly(piece) for piece in values["stack"]]
    for taken, owned in ((used, some), (thin_used, thin)):
        assert all(taken.count(piece) <= owned.count(piece) for piece in taken)


@pytest.mark.parametrize(("target", "thin"), [("23/32", ()), ("0.47", ()), ("0.3", ()), ("0.7", ("0.012", "0.02")), ("0.33", ("0.012", "0.02"))])
def test_of_the_narrower_stacks_the_widest_is_told_with_what_it_lacks(target, thin):
    """Where the nearest is loose: narrower, narrower_width and, up to the far wall of the dado, narrower_pass."""
    some, shims, wanted = [Fraction(1, 8)] * 4, [Fraction(piece) for piece in thin], Fraction(target)
    values = results_of("dado-stack", **asked(some, shims, wanted, Fraction(0)))
    sizes = [PAIR + one + two for one, _ in every_set(some) for two, _ in every_set(shims)]
    widest = max(size for size in sizes if size <= wanted)

    assert exactly(values["width"]) - wanted > Fraction("0.005")
    assert sum(exactly(piece) for piece in values["narrower"]) == exactly(values["narrower_width"]) == widest
    assert exactly(values["narrower_pass"]) + widest == wanted


@pytest.mark.parametrize("seed", range(8))
def test_an_integer_program_finds_nothing_nearer(seed):
    """With ten chippers and ten shims, a million stacks: width, and the fewest pieces that make it."""
    some, thin, target, under = drawer(500 + seed, 10, 10)
    values = results_of("dado-stack", **asked(some, thin, target, under))
    pieces = [*some, *thin]

    assert abs(exactly(values["width"]) - target) == nearest_by_program(target - PAIR, pieces, under)
    cost = fewest_by_program(exactly(values["width"]) - PAIR, pieces, [1] * 10 + [100] * 10)  # a shim is dearer than all chippers
    assert cost == len(values.get("chippers_used", [])) + 100 * len(values.get("shims_used", []))


@pytest.mark.parametrize(("target", "clearance"), [("23/32", "0.004"), ("3/4", "0"), ("0.5", "0.0125")])
def test_the_dado_is_the_piece_and_its_clearance(target, clearance):
    """A piece put against one wall of a dado as wide as wanted leaves just the clearance at the other."""
    values = results_of("dado-stack", target=target, clearance=clearance)
    wanted = exactly(values["wanted"])

    left = cut_out([(Fraction(0), wanted)], Fraction(0), Fraction(target))
    assert sum((high - low for low, high in left), Fraction(0)) == Fraction(clearance)


@pytest.mark.parametrize(
    ("target", "some", "thin"),
    [("1", "1/8, 1/8", "0.01"), ("0.9", "1/8, 1/4", ""), ("1 1/4", "", ""), ("0.521", "", "0.008, 0.012"), ("2", "3/8", "")],
)
def test_the_passes_cut_the_dado_and_nothing_more(target, some, thin):
    """Taken out of a board, first where the dado begins and at last with the fence moved by second_pass, no wood stays between (widest)."""
    wide = sum((Fraction(part) for part in target.split()), Fraction(0))
    values = results_of("dado-stack", target=target, clearance="0", chippers=some, shims=thin, arbor="3")
    width, second_pass, passes = exactly(values["width"]), exactly(values["second_pass"]), values["passes"]
    owned = [PAIR, *(Fraction(piece) for piece in f"{some}, {thin}".replace(",", " ").split())]
    board = [(Fraction(-1), wide + 1)]
    for number in range(passes):
        at = second_pass if number == passes - 1 else number * width
        board = cut_out(board, at, at + width)

    assert exactly(values["widest"]) == width == sum(owned)
    assert board == [(-1, 0), (wide, wide + 1)]
    assert (passes - 1) * width <= wide < passes * width  # with one pass less nothing runs over the last, and a fin can stand


@pytest.mark.parametrize("arbor", [Fraction(text) for text in ("1/4", "3/8", "0.5", "0.66", "0.72")])
def test_no_wider_stack_goes_on_the_arbor(arbor):
    """Of all stacks within the usable length the widest is taken for a dado that none of them can cut at once."""
    some, thin = [Fraction(piece, 32) for piece in (4, 4, 4, 3, 2)], [Fraction(piece, 1000) for piece in (4, 8, 12)]
    values = results_of("dado-stack", target="3/4", clearance="0", chippers=row(some), shims=row(thin), arbor=arbor)
    sizes = [PAIR + one + two for one, _ in every_set(some) for two, _ in every_set(thin)]

    assert exactly(values["width"]) == max(size for size in sizes if size <= arbor)
    assert exactly(values["second_pass"]) == Fraction(3, 4) - exactly(values["width"])


@pytest.mark.parametrize("more", [Fraction(text) for text in ("0.004", "0.0085", "-0.003", "1/64")])
def test_a_stack_that_cuts_wider_than_its_sum_is_put_right(more):
    """shim_move brings the trial's own stack to the size; stack_again is the best that cuts so, width_again what it cuts."""
    some, thin = [Fraction(piece, 32) for piece in (4, 4, 4, 3, 2)], [Fraction(piece, 1000) for piece in (4, 4, 8, 12, 20)]
    entries = asked(some, thin, Fraction("0.72275"), Fraction("0.002"))
    width = exactly(results_of("dado-stack", **entries)["width"])
    values = results_of("dado-stack", **entries, measured_dado=width + more)
    order = tried(some, thin, Fraction("0.72275") - more, Fraction("0.002"))

    assert width + more - exactly(values["shim_move"]) == Fraction("0.72275")
    assert sum(exactly(piece) for piece in values["stack_again"]) == order[0][0]
    assert exactly(values["width_again"]) == order[0][0] + more


@pytest.mark.parametrize("more", [Fraction(text) for text in ("0.006", "-0.004", "1/32")])
def test_a_fence_moved_too_far_is_put_right(more):
    """Two passes cut from the first wall to the far side of the last; fence_move and second_pass_again end it where it should."""
    entries = {"target": "1", "clearance": "0"}
    first = ask("dado-stack", **entries)["results"]
    width, shift = exactly(first["width"]["value"]), exactly(first["second_pass"]["value"])
    board = cut_out(cut_out([(Fraction(0), Fraction(3))], Fraction(1), 1 + width), 1 + shift + more, 1 + shift + more + width)
    measured = board[1][0] - board[0][1]
    values = results_of("dado-stack", **entries, measured_dado=measured)

    assert shift + more - exactly(values["fence_move"]) + width == 1
    assert exactly(values["second_pass_again"]) + more + width == 1
