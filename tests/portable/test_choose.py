"""The choice of pieces."""

import random
from fractions import Fraction
from itertools import combinations

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.choose import KEEP, choices_in, choose_pieces, chosen_fills, chosen_mains, sums_of

from ..helpers import close, run


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
    ranked = choose_pieces(Fraction("0.5"), f("1/8", "1/8", "1/4", "1/16"), f("0.004", "0.008"), Fraction("0.002"), 99)

    assert [Fraction(text) for text in ("0.5", "0.504", "0.508", "0.512")] == [one["sum"] for one in ranked]
    assert (KEEP, f("1/4", "1/8", "1/8")) == (choices_in(ranked), chosen_mains(ranked, 0))
    assert ([], f("0.004")) == (chosen_fills(ranked, 0), chosen_fills(ranked, 1))
    assert [] == chosen_mains(ranked, 4)


def test_chippers_come_before_shims() -> None:
    """The same size from a main alone is better than from a fill."""
    best = choose_pieces(Fraction("1/16"), f("1/16"), f("1/16"), Fraction(0), 9)[0]

    assert (f("1/16"), []) == (best["mains"], best["fills"])


def test_none_is_too_small() -> None:
    """Nothing under the size by more than is allowed is offered, however near it is."""
    ranked = choose_pieces(Fraction("0.5"), f("0.497", "0.51"), [], Fraction("0.002"), 9)

    assert f("0.51") == [one["sum"] for one in ranked][:1]
    assert f("0.497", "0.51") == [one["sum"] for one in choose_pieces(Fraction("0.5"), f("0.497", "0.51"), [], Fraction("0.003"), 9)][:2]


def brute_force(wanted: Fraction, mains: list[Fraction], fills: list[Fraction], under: Fraction) -> Fraction:
    """How far off the best of all subsets is."""
    pieces = [*mains, *fills]
    sums = [sum(some, Fraction(0)) for count in range(1, len(pieces) + 1) for some in combinations(pieces, count)]
    return min((abs(total - wanted) for total in sums if wanted - total <= under), default=Fraction(-1))


@pytest.mark.parametrize("seed", range(40))
def test_nothing_nearer_exists(seed: int, phone_brain: MiniRacer) -> None:
    """Against every subset of a random set, on the server and on the phone."""
    rng = random.Random(seed)
    mains = [Fraction(rng.choice([1, 2, 3, 4]), rng.choice([16, 32])) for _ in range(rng.randint(0, 6))]
    fills = [Fraction(rng.randint(1, 31), 1000) for _ in range(rng.randint(0, 5))]
    wanted, under = Fraction(rng.randint(1, 600), 1000), Fraction(rng.choice([0, 2, 9]), 1000)
    ranked = choose_pieces(wanted, mains, fills, under, 99)
    phone = run(
        phone_brain, "choose_pieces(given[0], given[1], given[2], given[3], 99)",
        float(wanted), [float(each) for each in mains], [float(each) for each in fills], float(under),
    )  # fmt: skip

    assert brute_force(wanted, mains, fills, under) == (abs(ranked[0]["sum"] - wanted) if ranked else -1)
    assert len(ranked) == len(phone)
    for one, other in zip(ranked, phone, strict=True):
        assert close(one["sum"], other["sum"])
        assert (len(one["mains"]), len(one["fills"])) == (len(other["mains"]), len(other["fills"]))
