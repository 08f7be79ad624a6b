"""What is on hand is cut as little as can be: the search of what to buy does not care how much of it is begun."""

import random
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

import pytest

from shopcalc.portable.wood.boards import lay_parts
from shopcalc.portable.wood.sparing import best_fit, is_sparer, room_of, shrunk, spare_owned

KERF = Fraction(1, 8)


def least_begun(parts: Sequence[Fraction], owned: Sequence[int]) -> int | None:
    """The least length of boards that takes all parts, by trying every way; None if there is none."""
    least: list[int | None] = [None]

    def put(place: int, rooms: list[Fraction], begun: int) -> None:
        if least[0] is not None and begun >= least[0]:
            return
        if place == len(parts):
            least[0] = begun
            return
        tried = set()
        for board, room in enumerate(rooms):
            fresh = room == owned[board] + KERF
            if room >= parts[place] + KERF and (room, owned[board], fresh) not in tried:
                tried.add((room, owned[board], fresh))
                left = [*rooms[:board], room - parts[place] - KERF, *rooms[board + 1 :]]
                put(place + 1, left, begun + (owned[board] if fresh else 0))

    put(0, [board + KERF for board in owned], 0)
    return least[0]


@pytest.mark.parametrize(
    ("parts", "owned", "begun"),
    [(["10"] * 6, [100] * 10, 1), (["24"] * 4, [96] * 4, 2), (["46 1/2"] * 6, [97] * 6, 3), (["10"] * 6, [12, 100, 40, 60], 2)],
)
def test_no_board_is_begun_for_what_another_still_holds(parts: list[str], owned: list[int], begun: int) -> None:
    """Six parts of 10 in with their cuts are one board of 100; or one of 60 and one of 12, and the 100 stays whole."""
    lengths = [sum(Fraction(word) for word in part.split()) for part in parts]
    laid = lay_parts(lengths, owned, [{"length": 96, "price": None}], KERF, 0)

    assert (begun, 0, []) == (len(laid["boards"]), laid["bought"], laid["too_long"])


def test_hardly_more_is_begun_than_the_least() -> None:
    """Over a hundred small heaps of boards, by trying every way: a fiftieth more in all at most."""
    rng = random.Random(5)
    begun = least = heaps = 0
    while heaps < 100:
        owned = sorted((rng.choice([36, 48, 60, 72, 96]) for _ in range(rng.randint(2, 6))), reverse=True)
        parts = sorted((Fraction(rng.randint(40, 200), 4) for _ in range(rng.randint(2, 6))), reverse=True)
        exact = least_begun(parts, owned)
        if exact is not None:
            laid = lay_parts(parts, owned, [], KERF, 0)
            assert (len(parts), exact <= laid["used"]) == (sum(len(board["pieces"]) for board in laid["boards"]), True)
            begun, least, heaps = begun + laid["used"], least + exact, heaps + 1

    assert begun <= least * 1.02


def kind(room: int, have: int = 1) -> dict[str, Any]:
    """A kind of board that is owned."""
    return {"room": room, "have": have, "owned": True}


def test_a_part_goes_where_it_leaves_least_room() -> None:
    """A board is begun only for what no other holds; one that cannot be placed leaves nothing."""
    owned = [kind(1000), kind(5000, 2)]
    boards = best_fit([0, 0, 1], owned, [4000, 900])

    assert [(5000, [0, 1]), (5000, [0])] == [(board["kind"]["room"], board["sorts"]) for board in boards]
    assert [] == best_fit([0, 0, 0], owned, [4000])


def test_parts_go_to_the_shortest_board_that_holds_them() -> None:
    """And leave what is in use alone."""
    owned = [kind(1500), kind(3000), kind(9000, 2)]
    boards = [{"kind": owned[2], "sorts": [0]}, {"kind": owned[1], "sorts": [0]}, {"kind": owned[2], "sorts": [0]}]

    assert [1500, 3000, 9000] == [board["kind"]["room"] for board in shrunk(boards, owned, [1400])]
    assert [1, 1, 1] == [each["used"] for each in owned]


def test_less_length_is_sparer_and_then_fewer_boards() -> None:
    """Of two layouts of one length the one of fewer boards leaves more whole."""
    long, short = {"kind": kind(4000)}, {"kind": kind(2000)}

    assert (True, True, False) == (is_sparer([short], [long]), is_sparer([long], [short, short]), is_sparer([short, short], [long]))
    assert 6000 == room_of([long, short])


def test_what_is_bought_stays_as_it_is() -> None:
    """Only the parts on boards owned are laid again."""
    owned, bought = kind(9000, 3), {"room": 9000, "have": 1000, "owned": False}
    boards = [{"kind": owned, "sorts": [0]}, {"kind": bought, "sorts": [0]}, {"kind": owned, "sorts": [0]}]
    state = {"boards": boards, "kinds": [owned, bought], "sizes": [4000]}
    spare_owned(state)

    assert [(True, [0, 0]), (False, [0])] == [(board["kind"]["owned"], board["sorts"]) for board in state["boards"]]
