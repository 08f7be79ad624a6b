"""Parts on boards, against optima that others found: published instances, and an integer program.

Sources: the bin packing instances in `instances/`, each with its family, where it was read and how its optimum is known
(read in the publication's data files; optima recomputed there); and scipy's mixed-integer solver (HiGHS) over every
pattern of cuts (recomputed), which knows nothing of how the card searches.
"""

import json
import random
from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path

import numpy as np
import pytest
from scipy.optimize import Bounds, LinearConstraint, milp

from shopcalc.portable.wood.boards import lay_parts

from .asking import results_of

INSTANCES = [json.loads(path.read_text("utf-8")) for path in sorted((Path(__file__).parent / "instances").glob("*.json"))]
SMALL = [each for each in INSTANCES if each["n"] <= 50]
KERF, TRIM = Fraction(1, 8), Fraction(1, 2)
JOBS = 160


def laid(instance):
    """Lay a published instance: bins are boards, and there is neither kerf nor trim."""
    return lay_parts(instance["items"], [], [{"length": instance["capacity"], "price": None}], 0, 0)


def is_whole(layout, lengths, kerf, trim):
    """Whether every part lies once on a board or is named, and none reaches over another or over an end."""
    pieces = [piece for board in layout["boards"] for piece in board["pieces"]]
    if sorted(pieces + layout["too_long"]) != list(range(len(lengths))):
        return False
    for board in layout["boards"]:
        cuts = [lengths[piece] for piece in board["pieces"]]
        if not cuts or cuts != sorted(cuts, reverse=True) or sum(cuts) + kerf * (len(cuts) - 1) > board["length"] - trim:
            return False
        if board["rest"] != max(0, board["length"] - trim - sum(cuts) - kerf * len(cuts)):
            return False
    return layout["used"] - layout["waste"] == sum(lengths[piece] for piece in pieces)


@pytest.mark.parametrize("instance", SMALL, ids=lambda instance: instance["name"])
def test_published_instances_come_out_at_their_optimum(instance):
    """As many boards as the optimum, and the lower bound is not above it."""
    found = laid(instance)

    assert is_whole(found, instance["items"], 0, 0)
    assert found["bought"] == instance["optimal_bins"]
    assert found["least"] <= instance["optimal_bins"]


@pytest.mark.sweep
@pytest.mark.parametrize("instance", INSTANCES, ids=lambda instance: instance["name"])
def test_large_published_instances_come_within_one_board(instance):
    """A hundred and twenty parts that fill their boards to the last: never more than one board above the optimum."""
    found = laid(instance)

    assert is_whole(found, instance["items"], 0, 0)
    assert instance["optimal_bins"] <= found["bought"] <= instance["optimal_bins"] + 1
    assert found["least"] <= instance["optimal_bins"]


def patterns(sizes: list[int], wanted: list[int], room: int, at: int = 0) -> Iterator[tuple[int, ...]]:
    """Every way to fill a board to which no part more could be added."""
    if at == len(sizes):
        yield ()
        return
    most = min(wanted[at], room // sizes[at])
    for count in range(most, -1, -1):
        for rest in patterns(sizes, wanted, room - count * sizes[at], at + 1):
            left = room - count * sizes[at] - sum(each * size for each, size in zip(rest, sizes[at + 1 :], strict=True))
            if count == most or left < sizes[at]:
                yield (count, *rest)


def optimum(job):
    """Give the job to the integer program: the least cost or count, or None where it ran out of time."""
    grain = 16
    counted = Counter(int((length + KERF) * grain) for length in job["lengths"])
    sizes, wanted = sorted(counted, reverse=True), [counted[size] for size in sorted(counted, reverse=True)]
    columns, costs, owners = [], [], []
    boards = [(length, 0, place) for place, length in enumerate(job["on_hand"])]
    boards += [(each["length"], 1 if each["price"] is None else float(each["price"]), -1) for each in job["to_buy"]]
    for length, cost, owner in boards:
        for pattern in patterns(sizes, wanted, int((length - TRIM + KERF) * grain)):
            columns.append(pattern)
            costs.append(cost)
            owners.append(owner)
    rules = [LinearConstraint(np.array(columns).T, lb=wanted)]
    for place in range(len(job["on_hand"])):
        rules.append(LinearConstraint(np.array([[owner == place for owner in owners]], dtype=float), ub=1))
    found = milp(
        np.array(costs, dtype=float), constraints=rules, integrality=np.ones(len(costs)), bounds=Bounds(0, np.inf), options={"time_limit": 4}
    )
    return found.fun if found.status == 0 else None


def job_of(rng, priced):
    """A job as a small shop has it: up to forty parts of a few lengths, up to three lengths to buy, now and then boards on hand."""
    stock = rng.sample([72, 84, 96, 108, 120, 144], rng.randint(1, 3))
    longest = min(70, max(stock) - 1)
    menu = [Fraction(rng.randint(10 * 16, longest * 16), 16) for _ in range(rng.randint(2, 7))]
    prices = {length: Fraction(round(length * rng.uniform(0.9, 1.15) * 13), 100) for length in stock}
    return {
        "lengths": [rng.choice(menu) for _ in range(rng.randint(3, 40))],
        "on_hand": [Fraction(rng.randint(30, 100)) for _ in range(rng.choice([0, 0, 0, 1, 3]))],
        "to_buy": [{"length": Fraction(length), "price": prices[length] if priced else None} for length in stock],
    }


def compared(count, seed, priced):
    """How many generated jobs were decided by the integer program, how many came out alike, and by how much the worst did not."""
    rng = random.Random(seed)
    decided, alike, worst = 0, 0, 0.0
    for _ in range(count):
        job = job_of(rng, priced)
        best = optimum(job)
        if best is None:
            continue
        found = lay_parts(job["lengths"], job["on_hand"], job["to_buy"], KERF, TRIM)
        got = float(found["cost"]) if priced else found["bought"]
        board = max(float(each["price"]) for each in job["to_buy"]) if priced else 1
        assert is_whole(found, job["lengths"], KERF, TRIM)
        assert got > best - 1e-6
        assert priced or found["least"] <= best + 1e-6
        assert not (found["cheapest"] if priced else found["proven"]) or got < best + 1e-6
        decided, alike, worst = decided + 1, alike + (got < best + 1e-6), max(worst, (got - best) / board)
    return decided, alike, worst


@pytest.mark.parametrize("priced", [False, True])
def test_a_few_jobs_come_out_as_the_integer_program_says(priced):
    """The fewest boards, or the least cost, of a few jobs."""
    decided, alike, _ = compared(12, 1, priced)

    assert decided == alike > 8


@pytest.mark.sweep
@pytest.mark.parametrize("priced", [False, True])
def test_jobs_come_out_as_the_integer_program_says(priced):
    """Of many jobs at least 99 in 100 are as few, or as cheap, as can be, and none is worse by more than a board."""
    decided, alike, worst = compared(JOBS // 2, 2, priced)

    assert decided > JOBS // 2 * 0.98
    assert alike >= 0.99 * decided
    assert worst <= 1


@pytest.mark.sweep
def test_every_part_is_cut_once_and_none_overlap():
    """In five thousand jobs of any sort each part lies on one board or is named, and no board is too short for its cuts."""
    rng = random.Random(3)
    faults = []
    for _ in range(5000):
        grain = rng.choice([1, 2, 16, 64, Fraction(127, 5), 1000])
        lengths = [Fraction(rng.randint(1, int(80 * grain))) / grain for _ in range(rng.randint(0, 9))]
        on_hand = [Fraction(rng.randint(1, 120)) for _ in range(rng.choice([0, 0, 1, 4]))]
        prices = rng.choice([[None, None], [Fraction(9), Fraction(25, 2)], [None, Fraction(3)]])
        to_buy = [{"length": Fraction(rng.randint(40, 144)), "price": price} for price in prices[: rng.randint(0, 2)]]
        kerf, trim = Fraction(rng.choice([0, 1, 2]), 16), Fraction(rng.choice([0, 1, 4]), 4)
        if not is_whole(lay_parts(lengths, on_hand, to_buy, kerf, trim), lengths, kerf, trim):
            faults.append((lengths, on_hand, to_buy, kerf, trim))

    assert faults == []


def test_the_card_says_what_the_integer_program_says():
    """Count, cost, waste and the layout of the card are those of the optimum, and the bound is no higher."""
    typed = {"parts": "36 x4, 24 1/2 x6, 17 3/4 x5", "lengths": "96 @ 8.50, 120 @ 11", "kerf": "1/8", "trim": "1/2"}
    lengths = [Fraction(36)] * 4 + [Fraction(49, 2)] * 6 + [Fraction(71, 4)] * 5
    stock = [{"length": Fraction(96), "price": Fraction(17, 2)}, {"length": Fraction(120), "price": Fraction(11)}]
    card = results_of("boards", **typed)
    cuts = [[cut["length"] for cut in board["cuts"]] for board in card["layout"]]
    used = sum(board["length"] for board in card["layout"])

    assert card["cost"] == optimum({"lengths": lengths, "on_hand": [], "to_buy": stock})
    assert card["count"] == len(card["layout"]) == sum(1 for board in card["layout"] if not board["owned"])
    assert card["fewest"] <= optimum({"lengths": lengths, "on_hand": [], "to_buy": [{**each, "price": None} for each in stock]})
    assert card["proven"] == (card["count"] == card["fewest"])
    assert results_of("boards", parts="46 x4", lengths="96 @ 8.50, 120 @ 11", kerf="1/8", trim="1/2")["cheapest"] is True
    assert sorted(cut for board in cuts for cut in board) == sorted(lengths)
    assert card["waste"] == used - sum(lengths)
    assert abs(card["waste_percent"] - 100 * card["waste"] / used) < 1e-9


def test_a_part_that_no_board_takes_is_named():
    """A part a hair longer than what squaring leaves of a board is in left_over, and one just as long is cut."""
    assert results_of("boards", parts="rail 95.51", lengths="96")["left_over"] == [{"label": "rail", "length": 95.51, "count": 1}]
    assert "left_over" not in results_of("boards", parts="rail 95.5", lengths="96")
