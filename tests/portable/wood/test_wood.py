"""A section on boards, and what is left of them: every part once, nothing from wood that is not there."""

from collections import defaultdict
from fractions import Fraction
from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.arithmetic.snap import above, same
from shopcalc.portable.jobs.cutlist import solve_job
from shopcalc.portable.jobs.job import read_job
from shopcalc.portable.wood.buying import bought_rows
from shopcalc.portable.wood.wood import strips_of, waste_of, whole_boards

from ... import jobs
from ..jobs.test_cutlist import boards, laid, slats


def bars(found: list[dict[str, Any]]) -> list[list[tuple[Any, str]]]:
    """The length of every bar, and how it came, section by section."""
    return [[(bar["length"], bar["wood"]["how"]) for bar in one["layout"]["boards"]] for one in found]


def test_the_rest_of_a_wide_board_serves_a_narrower_section() -> None:
    """Of a board of five inches three are used; from the rest, as long as the board, come the two-inch parts."""
    found = laid(parts=[slats(1, width="3", length="20"), slats(1, length="20")], lumber=[boards(to_buy="20", width="5 1/8")], kerf="1/8")

    assert bars(found) == [[(20, "")], [(20, "rest")]]
    assert [len(one["shopping"]) for one in found] == [1, 0]


def test_a_rip_takes_a_kerf() -> None:
    """A hair less than two strips and a kerf, and a second board is bought."""
    found = laid(parts=[slats(1, width="3", length="20"), slats(1, length="20")], lumber=[boards(to_buy="20", width="5 1/16")], kerf="1/8")

    assert [len(one["shopping"]) for one in found] == [1, 1]


def test_an_offcut_serves_a_narrower_section() -> None:
    """Twelve inches of a board are used; the eight less a kerf behind the cut give one part of seven, ripped down."""
    found = laid(parts=[slats(1, width="3", length="12"), slats(1, length="7")], lumber=[boards(to_buy="20", width="3")], kerf="1/8")

    assert bars(found) == [[(20, "")], [(Fraction(63, 8), "offcut")]]


def test_an_offcut_is_not_squared_again() -> None:
    """A board of twenty is squared by a half and cut at twelve: of what is behind the cut every inch counts."""
    lumber = [boards(to_buy="20", width="3")]
    found = laid(parts=[slats(1, width="3", length="12"), slats(1, length="7 1/2")], lumber=lumber, trim="1/2")
    [_, narrow] = found

    assert bars(found)[1] == [(Fraction(15, 2), "offcut")]
    assert (narrow["layout"]["boards"][0]["trim"], narrow["layout"]["used"], narrow["layout"]["waste"]) == (0, Fraction(15, 2), 0)


def test_a_rest_is_squared_as_a_board_is() -> None:
    """It is as long as its board, whose end nothing has squared: a part of its full length does not come out of it."""
    parts = [slats(1, width="3", length="12"), slats(1, length="20")]
    found = laid(parts=parts, lumber=[boards(to_buy="20", width="5")], trim="1/2")

    assert len(found[1]["layout"]["too_long"]) == 1


def test_what_is_left_over_goes_before_a_board_on_hand() -> None:
    """The rest of the wide board serves, and the narrow board stays in the rack."""
    lumber = [boards(on_hand="20"), boards(on_hand="20", width="5")]
    found = laid(parts=[slats(1, width="3", length="20"), slats(1, length="20")], lumber=lumber)

    assert bars(found) == [[(20, "")], [(20, "rest")]]


def test_a_rest_is_ripped_again() -> None:
    """Three sections come out of one board, one after the other."""
    parts = [slats(1, width="4", length="20"), slats(1, width="3", length="20"), slats(1, length="20")]
    found = laid(parts=parts, lumber=[boards(to_buy="20", width="9 1/4")], kerf="1/8")

    assert bars(found) == [[(20, "")], [(20, "rest")], [(20, "rest")]]
    assert [board["strips"] for board in whole_boards(found)] == [[4, 3, 2]]


def test_fewest_is_not_said_of_what_could_come_from_a_wider_section() -> None:
    """The widest section is proven; of the next no bound knows what might have been left for it."""
    lumber = [boards(to_buy="20", width="3"), boards(to_buy="20")]
    found = laid(parts=[slats(1, width="3", length="20"), slats(1, length="20")], lumber=lumber)

    assert [one["proven"] for one in found] == [True, False]


def test_waste_is_of_whole_boards() -> None:
    """Of a board of forty square inches two parts of ten and five are used."""
    found = laid(parts=[slats(1, width="2", length="5"), slats(1, width="1", length="5")], lumber=[boards(to_buy="10", width="4")])

    assert waste_of(found) == Fraction(250, 4)
    assert waste_of([]) == 0


@pytest.mark.parametrize(("wide", "width", "kerf", "count"), [(4, 2, 0, 2), (4, 2, 1, 1), (5, 2, 1, 2), (1, 2, 0, 0), (2, 2, 1, 1)])
def test_strips_have_a_kerf_between_them(wide: int, width: int, kerf: int, count: int) -> None:
    """Two strips of two inches come out of four, or with a kerf of one out of five."""
    assert strips_of(wide, width, kerf) == count


def solved(document: dict[str, Any]) -> tuple[dict[str, Any], dict[str, Any]]:
    """A job and its wood."""
    job = read_job(document, exact.world())["job"]
    return job, solve_job(job, exact.world())["cutting"]


def faults(cutting: dict[str, Any]) -> list[str]:
    """What a saw could not do of a job's layout, worked out from the bars alone."""
    kerf, found = cutting["kerf"], []
    containers: dict[str, dict[str, Any]] = {}
    widths = defaultdict(list)
    strips: dict[str, tuple[Any, Any]] = {}
    for one in cutting["laid"]:
        placed = [piece for bar in one["layout"]["boards"] for piece in bar["pieces"]] + one["layout"]["too_long"]
        if sorted(placed) != list(range(len(one["lengths"]))):
            found.append("not every part once")
        for bar in one["layout"]["boards"]:
            wood = bar["wood"]
            known = containers.setdefault(wood["board"], {"of": wood["of"], "length": wood["length"], "cut_off": wood["how"] == "offcut"})
            if known != {"of": wood["of"], "length": wood["length"], "cut_off": wood["how"] == "offcut"}:
                found.append("one name for two boards")
            if wood["how"] == "offcut" and strips.get(wood["board"]) != (wood["of"], wood["length"]):
                found.append("an offcut of no strip")
            if bar["name"] in strips:
                found.append("a strip twice")
            trim = 0 if wood["how"] == "offcut" else cutting["trim"]
            length = sum(one["lengths"][piece] for piece in bar["pieces"]) + kerf * (len(bar["pieces"]) - 1) + trim
            if above(length, wood["length"]) or bar["trim"] != trim:
                found.append("more than a strip is long")
            if bar["owned"] != (wood["on_hand"] or wood["how"] != ""):
                found.append("owned and not there")
            strips[bar["name"]] = (one["section"]["width"], bar["rest"])
            widths[wood["board"]].append(one["section"]["width"])
    return found + [
        "more than a board is wide" for name, all_of in widths.items() if above(sum(all_of) + kerf * (len(all_of) - 1), containers[name]["of"])
    ]


def bill_faults(job: dict[str, Any], cutting: dict[str, Any]) -> list[str]:
    """How the boards used differ from the boards bought and those on hand."""
    found = []
    used = whole_boards(cutting["laid"])
    rows = bought_rows(cutting["laid"])
    if sum(row["count"] for row in rows) != len([board for board in used if not board["on_hand"]]):
        found.append("the bill has another number of boards")
    for row in rows:
        alike = [board for board in used if not board["on_hand"] and all(same(board[name], row[name]) for name in ("thickness", "width", "length"))]
        if len(alike) != row["count"]:
            found.append("the bill has other boards")
    rack = sum(len(line["on_hand"].split(",")) for line in job["lumber"] if line["on_hand"])
    if len([board for board in used if board["on_hand"]]) > rack:
        found.append("more boards than are on hand")
    return found


def check(seeds: range) -> None:
    """All of it for some generated jobs; some of them must use what is left over."""
    hows = set()
    for seed in seeds:
        job, cutting = solved(jobs.wood_job(seed))
        hows |= {bar["wood"]["how"] for one in cutting["laid"] for bar in one["layout"]["boards"]}
        assert (seed, faults(cutting) + bill_faults(job, cutting)) == (seed, [])

    assert hows == {"", "rest", "offcut"}


def test_nothing_is_cut_twice_or_from_nowhere() -> None:
    """Every part once; strips fit their board with kerfs, parts their strip, offcuts are there; boards bought are those of the bill."""
    check(range(25))


@pytest.mark.sweep
def test_nothing_is_cut_twice_or_from_nowhere_in_many_jobs() -> None:
    """The same of a hundred jobs more."""
    check(range(25, 125))
