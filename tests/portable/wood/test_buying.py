"""The least bill for a whole job, held against sections by themselves and against an integer program."""

import random
from fractions import Fraction
from itertools import combinations_with_replacement
from typing import Any

import numpy
import pytest
from scipy.optimize import Bounds, LinearConstraint, milp

from shopcalc import exact
from shopcalc.portable.jobs.cutlist import solve_cuts, solve_job
from shopcalc.portable.jobs.job import read_job
from shopcalc.portable.wood import buying, ways, wood
from shopcalc.portable.wood.buying import bill_of, bought_rows, orders_of

from ... import jobs
from ..jobs.test_cutlist import boards, laid, slats


def sizes(found: list[dict[str, Any]]) -> list[tuple[Any, Any, Any, Any]]:
    """The boards to buy: width, length, how many, cost."""
    return [(row["width"], row["length"], row["count"], row["cost"]) for row in bought_rows(found)]


TWO = [slats(1, width="3", length="20"), slats(1, length="20")]


@pytest.mark.parametrize(("price", "bought"), [("18", [(5, 20, 1, 18)]), ("22", [(3, 20, 1, 12), (2, 20, 1, 8)])])
def test_one_wide_board_or_two_narrow_ones_by_price(price: str, bought: Any) -> None:
    """Two narrow boards are twenty together: a wide one for eighteen is bought though the wide part alone would have it for twelve."""
    lumber = [boards(to_buy="20 @ 8"), boards(to_buy="20 @ 12", width="3"), boards(to_buy=f"20 @ {price}", width="5")]

    assert sizes(laid(parts=TWO, lumber=lumber)) == bought


def test_fewest_is_not_said_where_other_boards_were_not_looked_at() -> None:
    """The wide board was chosen for the bill of the whole job: no bound says that it is the fewest."""
    lumber = [boards(to_buy="20 @ 8"), boards(to_buy="20 @ 12", width="3"), boards(to_buy="20 @ 18", width="5")]

    assert [one["proven"] for one in laid(parts=TWO, lumber=lumber)] == [False, False]


def test_fewest_is_not_said_where_a_board_on_hand_is_kept_back() -> None:
    """The board in the rack is kept for the narrow part, by price: without prices one board is bought, so two are not the fewest."""
    parts = [slats(2, width="3", length="40"), slats(1, length="90")]
    found = laid(parts=parts, lumber=[boards(on_hand="96", to_buy="48 @ 5", width="3"), boards(to_buy="96 @ 50")])

    assert sizes(found) == [(3, 48, 2, 10)]
    assert not found[0]["proven"]


def test_a_longer_board_is_bought_for_its_offcut() -> None:
    """One of thirty for thirteen gives both parts; of twenty two for ten each would be wanted."""
    lumber = [boards(to_buy="20 @ 10, 30 @ 13", width="3")]

    assert sizes(laid(parts=[slats(1, width="3", length="20"), slats(1, length="10")], lumber=lumber)) == [(3, 30, 1, 13)]


def test_the_last_board_may_be_a_cheaper_one() -> None:
    """Boards are bought whole: of two of 144 in the second would give one strip too many, and one of 96 in is enough."""
    lumber = [boards(to_buy="96 @ 14, 144 @ 20", width="5 1/2")]
    found = laid(parts=[slats(23, width="2 1/4", length="17 1/2")], lumber=lumber, kerf="1/8", trim="1/2")

    assert sorted(sizes(found)) == [(Fraction(11, 2), 96, 1, 14), (Fraction(11, 2), 144, 1, 20)]


def test_one_more_board_to_choose_from_makes_no_bill_dearer() -> None:
    """The strips of a board of 96 are the cheaper ones; but one of 120 gives both and the short part, and the board on hand the wide ones."""
    parts = [
        slats(1, width="8", length="26"),
        slats(1, width="6", length="26"),
        slats(2, width="4 1/2", length="80"),
        slats(1, width="4 1/2", length="26"),
    ]
    sold = ["120 @ 60", "96 @ 59, 120 @ 60"]
    found = [laid(parts=parts, lumber=[boards(on_hand="62", to_buy=each, width="9 1/4")], kerf="1/8", trim="1/2", rough="1") for each in sold]

    assert [[(Fraction(37, 4), 120, 1, 60)]] * 2 == [sizes(each) for each in found]


def test_without_prices_the_fewest_boards_are_bought() -> None:
    """One board of thirty, and not two of twenty."""
    lumber = [boards(to_buy="20, 30", width="3")]

    assert sizes(laid(parts=[slats(1, width="3", length="20"), slats(1, length="10")], lumber=lumber)) == [(3, 30, 1, None)]


def test_sections_of_another_thickness_have_nothing_to_do_with_it() -> None:
    """What is left of an inch board is no three-quarter board."""
    parts = [slats(1, width="3", length="20", thickness="1"), slats(1, length="20")]
    lumber = [boards(to_buy="20", width="5", thickness="1"), boards(to_buy="20", width="5")]

    assert [len(one["shopping"]) for one in laid(parts=parts, lumber=lumber)] == [1, 1]


def test_boards_of_one_size_are_one_row_of_the_bill() -> None:
    """Two sections that each need a board of their own are two boards in one row, with their cost together."""
    parts = [slats(1, width="4", length="20"), slats(1, width="3", length="20")]

    assert sizes(laid(parts=parts, lumber=[boards(to_buy="20 @ 9", width="5")])) == [(5, 20, 2, 18)]


CAP = [
    slats(1, width="4 7/16", length="81"),
    slats(1, width="3 9/16", length="81"),
    slats(6, width="2 1/4", length="49"),
]  # of three boards 96 long and two slats from each: 2 1/4 + 2 1/4 of 5 1/2, and a cap board + 2 1/4 + 2 1/4 of 9 1/4


def test_narrow_boards_in_the_rack_are_kept_for_narrow_parts() -> None:
    """The caps are taken from the wide boards, though the widest would fit the narrow one: only so is there wood for six slats."""
    rack = [boards(on_hand="96", width="5 1/2"), boards(on_hand="96 x2", width="9 1/4")]
    found = laid(parts=CAP, lumber=rack, kerf="1/8", trim="1/2")

    assert [[], [], []] == [one["layout"]["too_long"] for one in found]


def test_a_long_board_in_the_rack_is_begun_for_the_narrow_part_that_wants_it() -> None:
    """The wide parts alone would go on fewer boards; the strip of 55 in comes out of none of the short ones."""
    parts = [slats(1, width="3 1/2", length="61 1/4"), slats(4, width="3 1/2", length="34 1/4"), slats(1, width="1 1/2", length="55")]
    for to_buy in ("", "144 @ 20.59"):
        found = laid(parts=parts, lumber=[boards(on_hand="42 x3, 76", to_buy=to_buy, width="7 1/4")])

        assert ([[], []], []) == ([one["layout"]["too_long"] for one in found], sizes(found))


@pytest.mark.parametrize(("many", "orders"), [(1, 0), (2, 1), (3, 5), (8, 7), (9, 0)])
def test_sections_are_laid_in_other_orders_while_they_are_few(many: int, orders: int) -> None:
    """Each order holds every section once, and none is the usual one."""
    found = orders_of(many)

    assert len(found) == orders == len({tuple(order) for order in found})
    assert all(sorted(order) == list(range(many)) and order != list(range(many)) for order in found)


def test_boards_are_bought_for_wide_parts_where_that_leaves_the_rack_for_narrow_ones() -> None:
    """The same with the wide boards to buy: two, and not three."""
    lumber = [boards(on_hand="96", width="5 1/2"), boards(to_buy="96 @ 18", width="9 1/4")]

    assert [(Fraction("9.25"), 96, 2, 36)] == sizes(laid(parts=CAP, lumber=lumber, kerf="1/8", trim="1/2"))


def test_one_section_buys_one_length_where_its_strips_are_all_of_use() -> None:
    """Seven parts of thirty: nine come out of one board of 96 ripped in three, whatever a longer one would give."""
    lumber = [boards(to_buy="96 @ 22, 144 @ 30", width="9 1/4")]

    assert [(Fraction("9.25"), 96, 1, 22)] == sizes(laid(parts=[slats(7, width="3", length="30")], lumber=lumber, kerf="1/8"))


def test_short_boards_do_not_hide_a_long_one_behind_them() -> None:
    """A hundred boards too short for the part, each of many strips, stand before the one that it fits."""
    rack = [boards(on_hand="12 x101", width="5"), boards(on_hand="96", width="6")]
    [one] = laid(parts=[slats(1, width="1", length="90")], lumber=rack)

    assert [] == one["layout"]["too_long"]


def test_four_hundred_short_strips_do_not_hide_a_long_one_behind_them() -> None:
    """More strips than are laid at once are taken by their length, and nothing is bought that is in the rack."""
    narrow = [slats(20, width="1/2", length="40"), slats(1, width="1/2", length="100")]
    racks = [boards(on_hand="30 x200", width="3")] * 2 + [boards(on_hand="100", to_buy="96", width="3")]

    assert sizes(laid(parts=narrow, lumber=[boards(on_hand="48 x23, 120", to_buy="120", width="11 1/4")], kerf="1/8")) == []
    assert sizes(laid(parts=[slats(1, width="3", length="25"), slats(1, width="3", length="90")], lumber=racks)) == []


def test_a_large_job_is_given_up_in_time(monkeypatch: pytest.MonkeyPatch) -> None:
    """However many sections and boards a job has, each is laid a few times at most."""
    laid_sections = []

    def lay_section(*given: Any) -> Any:
        laid_sections.append(given[0]["section"]["name"])
        return wood.lay_section(*given)

    for room in (buying, ways):
        monkeypatch.setattr(room, "lay_section", lay_section)
    parts = [slats(999, width=f"{1 + place / 20:.2f}", length="24") for place in range(30)]
    racks = [boards(on_hand=", ".join(f"{30 + place % 40 + nth} x9" for nth in range(22)), width=str(3 + place / 10)) for place in range(40)]
    laid(parts=parts, lumber=[*racks, boards(to_buy="96 @ 20, 120 @ 26", width="11 1/4"), boards(to_buy="96 @ 13", width="7 1/4")])

    assert len(laid_sections) < 6 * len(parts)


@pytest.mark.parametrize("to_buy", ["20, 20 @ 3", "20 @ 3, 20"])
def test_of_one_length_the_one_with_a_price_is_bought(to_buy: str) -> None:
    """In whatever order they were typed."""
    assert [(2, 20, 1, 3)] == sizes(laid(parts=[slats(1, length="15")], lumber=[boards(to_buy=to_buy)]))


def bill(document: dict[str, Any]) -> tuple[int, Any, int]:
    """Parts without a board, the cost or None, boards to buy."""
    found = solve_job(read_job(document, exact.world())["job"], exact.world())["cutting"]["laid"]
    total = bill_of(bought_rows(found))
    return sum(len(one["layout"]["too_long"]) for one in found), total["cost"], total["count"]


def section_by_section(document: dict[str, Any]) -> tuple[int, Any, int]:
    """The same of a job for each section, added up."""
    rows = []
    for section in solve_cuts(read_job(document, exact.world())["job"], exact.world())["sections"]:
        kept = [part for part in document["parts"] if (width_of(part), thickness_of(part)) == (section["width"], section["thickness"])]
        rows.append(bill({**document, "parts": kept}))
    return sum(row[0] for row in rows), None if None in [row[1] for row in rows] else sum(row[1] for row in rows), sum(row[2] for row in rows)


def width_of(part: dict[str, Any]) -> Fraction:
    """The width typed, as a number."""
    return sum((Fraction(text) for text in part["width"].split()), Fraction(0))


def thickness_of(part: dict[str, Any]) -> Fraction:
    """The thickness typed, as a number."""
    return Fraction(part["thickness"])


def saved(seeds: range) -> int:
    """How many generated jobs are cheaper than section by section; none is dearer."""
    found = 0
    for seed in seeds:
        document = jobs.wood_job(seed)
        document["lumber"] = [{**line, "on_hand": ""} for line in document["lumber"]]
        ours, theirs = bill(document), section_by_section(document)
        mine = (ours[0], ours[1] if ours[1] is not None else ours[2])
        alone = (theirs[0], theirs[1] if ours[1] is not None else theirs[2])
        assert (seed, mine) <= (seed, alone)
        found += mine < alone
    return found


def test_no_job_is_dearer_than_its_sections_by_themselves() -> None:
    """Of twenty jobs none, and most are cheaper."""
    assert saved(range(20)) > 8


@pytest.mark.sweep
def test_no_job_is_dearer_than_its_sections_by_themselves_in_many() -> None:
    """The same of sixty more."""
    assert saved(range(20, 80)) > 24


def fits(room: Fraction, size: Fraction, kerf: Fraction) -> int:
    """How many of a size come out of a room with kerfs between."""
    return max(0, int((room + kerf) // (size + kerf)))


def patterns(board: tuple[Fraction, Fraction], wide: Any, narrow: Any, kerf: Fraction) -> set[tuple[int, int]]:
    """What one board can give of wide and of narrow parts: ripped, crosscut, and the rest and the offcuts ripped again."""
    found = set()
    for strips in range(fits(board[0], wide[0], kerf) + 1):
        beside = fits(board[0] - strips * (wide[0] + kerf), narrow[0], kerf) * fits(board[1], narrow[1], kerf)
        for cut in combinations_with_replacement(range(1, fits(board[1], wide[1], kerf) + 1), strips):
            offcuts = [fits(board[1] - many * (wide[1] + kerf), narrow[1], kerf) * fits(wide[0], narrow[0], kerf) for many in cut]
            found.add((sum(cut), beside + sum(offcuts)))
    return found


def least_cost(offers: Any, wide: Any, narrow: Any, wanted: tuple[int, int], kerf: Fraction) -> float:
    """The cheapest boards by an integer program over all patterns."""
    columns = [(price, *pattern) for price, *board in offers for pattern in patterns(tuple(board), wide, narrow, kerf)]
    found = milp(
        numpy.array([float(column[0]) for column in columns]),
        constraints=LinearConstraint(numpy.array([[column[1] for column in columns], [column[2] for column in columns]]), wanted, numpy.inf),
        integrality=numpy.ones(len(columns)),
        bounds=Bounds(0, 50),
    )
    return float(found.fun)


def small_case(seed: int) -> tuple[float, float]:
    """A job of one wide and one narrow sort of part: its bill, and the least that can be."""
    rng = random.Random(seed)
    wide, narrow = (Fraction(rng.randint(6, 9), 2), Fraction(rng.randint(15, 45))), (Fraction(rng.randint(3, 5), 2), Fraction(rng.randint(8, 40)))
    wanted, kerf = (rng.randint(1, 5), rng.randint(1, 8)), Fraction(1, 8)
    widths = rng.sample([5, 6, 8, 10], 2)
    offers = [
        (rng.randint(8, 20) + length // 8, Fraction(width), Fraction(length))
        for width in widths
        for length in rng.sample([48, 72, 96], rng.randint(1, 2))
    ]
    parts = [slats(count, str(sort[1]), str(sort[0])) for count, sort in zip(wanted, (wide, narrow), strict=True)]
    priced = {width: ", ".join(f"{length} @ {price}" for price, own, length in offers if own == width) for width in widths}
    lumber = [boards(to_buy=to_buy, width=str(width)) for width, to_buy in priced.items()]
    found = bill_of(bought_rows(laid(parts=parts, lumber=lumber, kerf="1/8")))
    return float(found["cost"]), least_cost(offers, wide, narrow, wanted, kerf)


def test_small_jobs_cost_what_an_integer_program_says() -> None:
    """With a length or two of each width none of forty is below it, which would be wood from nowhere, and most are on it."""
    found = [small_case(seed) for seed in range(40)]

    assert all(ours >= least - 1e-6 for ours, least in found)
    assert sum(ours <= least + 1e-6 for ours, least in found) >= 36


def test_many_thicknesses_share_the_work_of_a_few() -> None:
    """Up to four have each a whole search; however many there are, all together have no more than four would."""
    assert [buying.shared(1000, many) for many in (1, 4, 8, 40)] == [1000, 1000, 500, 100]
