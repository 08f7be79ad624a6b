"""The choice of pieces."""

import random
from fractions import Fraction
from itertools import combinations

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.arithmetic.choose import KEEP, choices_in, choose_between, choose_blocks, chosen_fills, chosen_mains, count_sums, sums_of

from ...helpers import close, run

FAR = Fraction(99)


def f(*texts: str) -> list[Fraction]:
    """Lengths from texts."""
    return [Fraction(text) for text in texts]


def test_every_sum_is_made_of_the_fewest_pieces() -> None:
    """Of two ways to one sum the one with fewer pieces is kept."""
    sums = {one["sum"]: one["pieces"] for one in sums_of(f("1/8", "1/8", "1/4"), 9)}

    assert [0, *f("1/8", "1/4", "3/8", "1/2")] == list(sums)
    assert f("1/4") == sums[Fraction(1, 4)]


def test_no_more_pieces_than_allowed() -> None:
    """A sum that needs too many pieces is no sum."""
    assert [0, *f("1/8", "1/4")] == [one["sum"] for one in sums_of(f("1/8", "1/8", "1/8"), 2)]


def test_the_nearest_comes_first_then_the_next_three() -> None:
    """Choices are ranked by how far off they are, and each is of another size."""
    ranked = choose_between(Fraction("0.5"), f("1/8", "1/8", "1/4", "1/16"), f("0.004", "0.008"), Fraction("0.002"), FAR)

    assert [Fraction(text) for text in ("0.5", "0.504", "0.508", "0.512")] == [one["sum"] for one in ranked]
    assert (KEEP, f("1/4", "1/8", "1/8")) == (choices_in(ranked), chosen_mains(ranked, 0))
    assert ([], f("0.004")) == (chosen_fills(ranked, 0), chosen_fills(ranked, 1))
    assert [] == chosen_mains(ranked, 4)


@pytest.mark.parametrize("seed", range(40))
def test_sums_are_counted_before_they_are_made(seed: int, phone_brain: MiniRacer) -> None:
    """Of all of a row, and of the larger half as blocks are summed; the same on the phone. Above the most nobody counts on."""
    rng = random.Random(seed)
    row = [Fraction(rng.randint(1, 60), rng.choice([64, 1000, 127])) for _ in range(rng.randint(0, 9))]
    falling = sorted(row, reverse=True)
    halves = [falling[: len(row) // 2], falling[len(row) // 2 :]]
    phone = run(phone_brain, "[count_sums(given[0], 1, 999), count_sums(given[0], 2, 999)]", [float(each) for each in row])

    assert phone == [count_sums(row, 1, 999), count_sums(row, 2, 999)]
    assert len(sums_of(row, 99)) == count_sums(row, 1, 999)
    assert max(len(sums_of(half, 99)) for half in halves) == count_sums(row, 2, 999)
    assert min(8, len(sums_of(row, 99))) == min(8, count_sums(row, 1, 7))


def test_pieces_by_one_scale_make_few_sums() -> None:
    """Thirty drills by 64ths are a few hundred sums, though there are a thousand million ways to take some of them; one odd strip doubles them."""
    drills = [Fraction(each, 64) for each in range(4, 34)]

    assert count_sums(drills, 1, 1000) == sum(range(4, 34)) + 1 - 2 * len([1, 2, 3])
    assert count_sums([*drills, Fraction(30, 127)], 1, 9999) < 2 * count_sums(drills, 1, 1000) + 1


def test_chippers_come_before_shims() -> None:
    """The same size from a main alone is better than from a fill."""
    best = choose_between(Fraction("1/16"), f("1/16"), f("1/16"), Fraction(0), FAR)[0]

    assert (f("1/16"), []) == (best["mains"], best["fills"])


def test_none_is_too_small() -> None:
    """Nothing under the size by more than is allowed is offered, however near it is."""
    ranked = choose_between(Fraction("0.5"), f("0.497", "0.51"), [], Fraction("0.002"), FAR)

    assert f("0.51") == [one["sum"] for one in ranked][:1]
    assert f("0.497", "0.51") == [one["sum"] for one in choose_between(Fraction("0.5"), f("0.497", "0.51"), [], Fraction("0.003"), FAR)][:2]


def brute_force(wanted: Fraction, mains: list[Fraction], fills: list[Fraction], under: Fraction) -> Fraction:
    """How far off the best of all subsets is."""
    pieces = [*mains, *fills]
    sums = [sum(some, Fraction(0)) for count in range(len(pieces) + 1) for some in combinations(pieces, count)]
    return min((abs(total - wanted) for total in sums if wanted - total <= under), default=Fraction(-1))


@pytest.mark.parametrize("seed", range(40))
def test_nothing_nearer_exists(seed: int, phone_brain: MiniRacer) -> None:
    """Against every subset of a random set, on the server and on the phone."""
    rng = random.Random(seed)
    mains = [Fraction(rng.choice([1, 2, 3, 4]), rng.choice([16, 32])) for _ in range(rng.randint(0, 6))]
    fills = [Fraction(rng.randint(1, 31), 1000) for _ in range(rng.randint(0, 5))]
    wanted, under = Fraction(rng.randint(1, 600), 1000), Fraction(rng.choice([0, 2, 9]), 1000)
    ranked = choose_between(wanted, mains, fills, under, FAR)
    phone = run(
        phone_brain, "choose_between(given[0], given[1], given[2], given[3], 99)",
        float(wanted), [float(each) for each in mains], [float(each) for each in fills], float(under),
    )  # fmt: skip

    assert brute_force(wanted, mains, fills, under) == (abs(ranked[0]["sum"] - wanted) if ranked else -1)
    assert len(ranked) == len(phone)
    for one, other in zip(ranked, phone, strict=True):
        assert close(one["sum"], other["sum"])
        assert (len(one["mains"]), len(one["fills"])) == (len(other["mains"]), len(other["fills"]))


def test_between_two_nothing_may_be_best() -> None:
    """What goes between pieces that are always there may be no piece; of blocks there is at least one."""
    between = choose_between(Fraction("0.001"), f("1/8"), f("0.004"), Fraction(0), Fraction(1))
    less_than_nothing = choose_between(Fraction("-0.001"), f("1/8"), [], Fraction(0), Fraction(1))
    blocks = choose_blocks(Fraction(0), f("1/8"), 9)

    assert f("0.004", "0.125", "0.129") == [one["sum"] for one in between]
    assert (0, [], []) == tuple(less_than_nothing[0][key] for key in ("sum", "mains", "fills"))
    assert f("1/8") == [one["sum"] for one in blocks]


def test_none_is_too_large() -> None:
    """Nothing over the size by more than is allowed is offered: there is no more room on the arbor."""
    ranked = choose_between(Fraction("0.5"), f("0.25", "0.26"), f("0.01"), Fraction("0.3"), Fraction("0.01"))

    assert f("0.51", "0.27", "0.26", "0.25") == [one["sum"] for one in ranked]


def test_two_shims_a_hair_apart_are_two() -> None:
    """A tenth of a thousandth is kept, and a hundred-thousandth of that is not."""
    assert f("0.0041", "0.004") == [one["sum"] for one in choose_between(Fraction("0.0041"), f("0.004", "0.0041"), [], FAR, FAR)][:2]
    assert f("0.004000001") == [one["sum"] for one in choose_between(Fraction("0.0041"), f("0.004", "0.004000001"), [], FAR, FAR)][:1]


def fewest_by_sum(pieces: list[Fraction], most: int) -> dict[Fraction, int]:
    """Every sum that at most so many pieces can make, with the fewest pieces that do."""
    found: dict[Fraction, int] = {}
    for count in range(1, min(most, len(pieces)) + 1):
        for some in combinations(pieces, count):
            found.setdefault(sum(some, Fraction(0)), count)
    return found


@pytest.mark.parametrize("seed", range(40))
def test_no_nearer_blocks_exist(seed: int, phone_brain: MiniRacer) -> None:
    """Against every subset of a random row, from below and above, each size with the fewest pieces, on both sides."""
    rng = random.Random(seed)
    row = [rng.choice([Fraction(rng.randint(1, 64), 64), Fraction(rng.randint(1, 999), 1000)]) for _ in range(rng.randint(1, 9))]
    wanted, most = Fraction(rng.randint(1, 2000), 1000), rng.randint(1, 10)
    ranked = choose_blocks(wanted, row, most)
    phone = run(phone_brain, "choose_blocks(given[0], given[1], given[2])", float(wanted), [float(each) for each in row], most)
    sums = fewest_by_sum(row, most)
    nearest = sorted(sums, key=lambda total: (abs(total - wanted), -total))[:KEEP]

    assert [(total, sums[total]) for total in nearest] == [(one["sum"], len(one["mains"])) for one in ranked]
    assert [one["mains"] for one in ranked] == [sorted(one["mains"], reverse=True) for one in ranked]
    assert all(close(one["sum"], other["sum"]) for one, other in zip(ranked, phone, strict=True))
