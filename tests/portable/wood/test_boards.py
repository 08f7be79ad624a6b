"""Laying parts on boards."""

import json
import random
from fractions import Fraction
from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.wood.boards import lay_parts, lay_within

from ...helpers import unlike

NONE = Fraction(0)


def stock(*lengths: int, prices: tuple[Any, ...] = ()) -> list[dict[str, Any]]:
    """Lengths to buy, with prices or without."""
    return [{"length": Fraction(length), "price": prices[place] if prices else None} for place, length in enumerate(lengths)]


def cuts(found: dict[str, Any], lengths: list[Any]) -> list[tuple[Any, list[Any]]]:
    """Each board's length with the lengths cut from it, in an order of its own."""
    return sorted((board["length"], [lengths[piece] for piece in board["pieces"]]) for board in found["boards"])


def lay(texts: str, on_hand: str = "", to_buy: Any = None, kerf: str = "0", trim: str = "0") -> dict[str, Any]:
    """Lay the lengths of a text with spaces between."""
    boards = stock(96) if to_buy is None else to_buy
    return dict(
        lay_parts([Fraction(each) for each in texts.split()], [Fraction(each) for each in on_hand.split()], boards, Fraction(kerf), Fraction(trim))
    )


def test_fewer_steps_still_lay_every_part() -> None:
    """With hardly a step to a search the layout is whole, and takes no more steps than one that may search long."""
    lengths = [Fraction(30 + 17 * place, 8) for place in range(40)]
    short = lay_within(lengths, [], stock(96, 120), Fraction(1, 8), NONE, 600)
    long = lay_within(lengths, [], stock(96, 120), Fraction(1, 8), NONE, 600000)

    assert sorted(piece for board in short["boards"] for piece in board["pieces"]) == list(range(40))
    assert short["steps"] <= long["steps"]
    assert short["bought"] >= long["bought"]


def test_nothing_to_lay_needs_no_board() -> None:
    """No parts, no boards, and that is proven the fewest."""
    found = lay("")

    assert ([], [], 0, True) == (found["boards"], found["too_long"], found["bought"], found["proven"])


@pytest.mark.parametrize(("kerf", "bought"), [("0", 1), ("1/8", 2)])
def test_a_kerf_stands_between_neighbours(kerf: str, bought: int) -> None:
    """Two halves fit a board only if the saw takes nothing; one part as long as the board needs no cut."""
    assert bought == lay("48 48", kerf=kerf)["bought"]
    assert 1 == lay("96", kerf=kerf)["bought"]


def test_squaring_takes_its_share_of_every_board() -> None:
    """A part as long as the board no longer fits once an end is squared."""
    assert [0] == lay("96", trim="1/2")["too_long"]
    assert [] == lay("95.5", trim="1/2")["too_long"]


def test_boards_on_hand_come_first_and_cost_nothing() -> None:
    """What is owned is cut before anything is bought."""
    found = lay("40 40 30", on_hand="82", to_buy=stock(96, prices=(Fraction(10),)))

    assert [True, False] == [board["owned"] for board in found["boards"]]
    assert (1, Fraction(10)) == (found["bought"], found["cost"])


def test_without_prices_the_fewest_boards_then_the_shortest() -> None:
    """One long board rather than two short, and of the lengths that do the shortest."""
    assert [96] == [board["length"] for board in lay("48 48", to_buy=stock(48, 96, 120))["boards"]]


def test_with_prices_the_cheapest() -> None:
    """Two short boards rather than one long, where they cost less."""
    found = lay("48 48", to_buy=stock(48, 96, prices=(Fraction(4), Fraction(9))))

    assert (2, Fraction(8), True) == (found["bought"], found["cost"], found["cheapest"])


def test_a_price_counts_only_if_every_length_has_one() -> None:
    """With one price missing the fewest boards are bought, and nothing is said of cost."""
    found = lay("48 48", to_buy=stock(48, 96, prices=(Fraction(4), None)))

    assert (1, None) == (found["bought"], found["cost"])


def test_what_is_left_without_a_board_is_named() -> None:
    """Parts longer than any board, and parts for which no board on hand is left."""
    assert [1] == lay("40 100 30")["too_long"]
    assert 1 == len(lay("40 40", on_hand="60", to_buy=[])["too_long"])


def test_the_order_of_the_parts_makes_no_difference() -> None:
    """The same cuts come out of any order of the same parts."""
    rng = random.Random(1)
    lengths = [Fraction(rng.randint(100, 700), 16) for _ in range(14)]
    first = cuts(lay_parts(lengths, [Fraction(50)], stock(96, 120), Fraction(1, 8), NONE), lengths)
    for _ in range(5):
        rng.shuffle(lengths)

        assert first == cuts(lay_parts(lengths, [Fraction(50)], stock(96, 120), Fraction(1, 8), NONE), lengths)


def test_parts_that_just_fit_do_whatever_they_are_typed_in() -> None:
    """Thirds, sevenths, thousandths and millimetres that add up to the board fill it."""
    for divisor in (3, 7, 11, 1000, 127):
        assert 1 == lay_parts([Fraction(96, divisor)] * min(divisor, 127), [], stock(96), NONE, NONE)["bought"] or divisor == 1000


def asked(rng: random.Random) -> list[Any]:
    """A job in numbers that both runtimes hold: parts, boards on hand, to buy, kerf and trim."""
    grain = rng.choice([2, 16, 64, 1000, 3])
    few = [Fraction(rng.randint(4 * grain, 70 * grain), grain) for _ in range(rng.choice([2, 4, 30]))]
    prices = rng.choice([(None,) * 3, (Fraction(8), Fraction("10.40"), Fraction("12.65"))])
    lengths = [rng.choice(few) for _ in range(rng.randint(1, 25))]
    return [
        lengths,
        [Fraction(rng.randint(20, 90)) for _ in range(rng.choice([0, 0, 2]))],
        stock(72, 96, 120, prices=prices),
        Fraction(1, 8),
        Fraction(1, 2),
    ]


def plainly(value: Any) -> Any:
    """Fractions as the doubles they are on the phone."""
    if isinstance(value, dict):
        return {key: plainly(each) for key, each in value.items()}
    if isinstance(value, list):
        return [plainly(each) for each in value]
    return float(value) if isinstance(value, Fraction) else value


@pytest.mark.sweep
def test_the_phone_lays_parts_as_the_server_does(phone_brain: MiniRacer) -> None:
    """A hundred jobs come out alike over fractions and over doubles, board by board and cut by cut."""
    rng = random.Random(4)
    faults = []
    for _ in range(100):
        job = asked(rng)
        phone = json.loads(str(phone_brain.eval(f"JSON.stringify(lay_parts(...{json.dumps(plainly(job))}))")))
        faults += unlike(plainly(lay_parts(*job)), phone)

    assert faults == []
