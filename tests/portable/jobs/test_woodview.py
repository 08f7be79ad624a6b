"""What the page says of the wood: the bill, what to rip, and where each bar comes from."""

import json
from typing import Any

from shopcalc import exact
from shopcalc.portable.cards.bars import words_on

from .test_cutlist import boards, slats
from .test_jobview import asked

NO_SAW = {"format": "shopcalc job", "version": 1, "kerf": "0", "trim": "0", "rough": "0"}


def wood(path: str = "/job", **fields: Any) -> dict[str, Any]:
    """What is answered to a job without kerf, trim and rough length."""
    found = exact.answer_document(path, json.dumps({**NO_SAW, **fields}))
    return dict(found["view"] if path == "/job" else found["data"])


PARTS = [slats(1, width="3", length="12"), slats(1, length="20"), slats(1, width="1", length="8")]
LUMBER = [boards(to_buy="20 @ 9", width="5")]


def test_a_bar_says_what_it_is_taken_from() -> None:
    """A wider board, the rest of one, an offcut."""
    view = wood(parts=PARTS, lumber=LUMBER)
    heads = [[bar["caption"].split(":")[0] for bar in one["boards"]] for one in view["laid"]]

    assert heads[0] == ["1 of 20\u00a0in, a strip of a 5\u00a0in board"]
    assert heads[1] == ["1 of 20\u00a0in, a strip of the rest of a 5\u00a0in board"]
    assert heads[2] == ["1 of 8\u00a0in, from an offcut 3\u00a0in wide"]


def test_a_board_of_its_own_section_says_nothing_more() -> None:
    """On hand or bought, its length is enough."""
    view = wood(parts=[slats(2, length="20")], lumber=[boards(on_hand="20", to_buy="20")])

    assert [bar["caption"].split(":")[0] for bar in view["laid"][0]["boards"]] == ["1 of 20\u00a0in on hand", "1 of 20\u00a0in"]
    assert view["rips"] == []


def test_the_bill_is_of_the_whole_job() -> None:
    """Each board once, whatever sections it serves; and how much of them becomes no part."""
    view = wood(parts=PARTS, lumber=LUMBER)

    assert view["buy"] == [{"text": "1 of 3/4\u00a0in x 5\u00a0in x 20\u00a0in, 9.00"}]
    assert view["bill"] == "In all 1 to buy, 9.00. 16% of the boards left over."


def test_nothing_to_buy_and_nothing_used_is_no_bill() -> None:
    """Without boards there is nothing to say; with those on hand only what is left over of them."""
    assert wood(parts=PARTS)["bill"] == ""
    assert wood(parts=[slats(1, length="10")], lumber=[boards(on_hand="20")])["bill"] == "50% of the boards left over."


def test_boards_to_rip_are_named_with_their_strips() -> None:
    """The strips of a board in the order they are ripped, boards that are ripped alike together."""
    view = wood(parts=[slats(2, width="3", length="20"), slats(2, length="20")], lumber=[boards(to_buy="20", width="5")])

    assert view["rips"] == [{"text": "2 of 3/4\u00a0in x 5\u00a0in x 20\u00a0in: 3\u00a0in, 2\u00a0in"}]
    assert wood(parts=[slats(4, length="20")], lumber=[boards(on_hand="20 x2", width="4")])["rips"] == [
        {"text": "2 of 3/4\u00a0in x 4\u00a0in x 20\u00a0in on hand: 2\u00a0in x2"}
    ]


def test_a_strip_is_as_wide_in_words_as_on_the_cut_list() -> None:
    """A card's width in 64ths is not another one, full or scant, where the boards are ripped."""
    view = asked("/job")["view"]
    sections = [one["section"].split(" x ")[1] for one in view["laid"] if "17/64" in one["section"]]

    assert sections == ["2 17/64 in"]
    assert [row["text"].split(": ")[1] for row in view["rips"] if "2\u00a017/64" in row["text"]] == ["2\u00a017/64\u00a0in x2"] * 2


def test_an_offcut_that_is_ripped_again_is_on_the_list() -> None:
    """What is left behind a wide part is ripped for narrow ones; an offcut that serves at its own width is not."""
    narrow = wood(parts=[slats(1, width="5", length="10"), slats(2, length="9")], lumber=[boards(on_hand="20", width="5")])
    wide = wood(parts=[slats(1, width="5", length="10"), slats(1, width="5", length="9")], lumber=[boards(on_hand="20", width="5")])

    assert narrow["rips"] == [{"text": "1 of 3/4\u00a0in x 5\u00a0in x 10\u00a0in left over: 2\u00a0in x2"}]
    assert wide["rips"] == []


def test_a_script_is_given_the_bill_and_where_each_bar_comes_from() -> None:
    """Boards to buy with their cost, boards used with their strips, the waste in percent."""
    data = wood("/job.json", parts=[slats(2, width="3", length="20"), slats(2, length="20")], lumber=[boards(to_buy="20 @ 9", width="5")])

    assert data["bill"]["buy"] == [{"count": 2, "cost": 18, "thickness": 0.75, "width": 5, "length": 20}]
    assert [board["strips"] for board in data["bill"]["used"]] == [[3, 2], [3, 2]]
    assert (data["bill"]["count"], data["bill"]["cost"], data["bill"]["waste"]) == (2, 18, 0)
    assert [(bar["from"], bar["wide"], bar["owned"]) for one in data["boards"] for bar in one["layout"]] == [
        ("board", 5, False), ("board", 5, False), ("rest", 5, False), ("rest", 5, False),
    ]  # fmt: skip


def test_the_boathouse_rips_its_narrow_parts_from_what_is_left() -> None:
    """The rails of the door come from the offcut of its bottom rail, and no board is bought for them."""
    laid = {one["section"]: one for one in asked("/job")["view"]["laid"]}

    assert not laid["1 3/8 in x 4 1/2 in"]["is_bought"]
    assert laid["1 3/8 in x 4 1/2 in"]["boards"][-1]["caption"].startswith("1 of 71\u00a07/16\u00a0in, from an offcut 9\u00a0in wide: ")


def test_what_another_section_takes_is_not_called_left_over() -> None:
    """Whoever works from the top down would throw it away: the offcut of the widest part is cut up for the narrowest."""
    [first, second, _] = wood(parts=PARTS, lumber=LUMBER)["laid"]

    assert first["boards"][0]["caption"].endswith("; 8\u00a0in left for another section.")
    assert "left" not in second["boards"][0]["caption"]


def test_a_size_stands_on_a_bar_only_where_it_fits() -> None:
    """Beside its cuts it would be read wrong: fractions go under their inches, mm go without their unit, and then there is none."""
    assert [["17 1/2"], ["17", "1/2"], []] == [[word["text"] for word in words_on("17 1/2", wide)] for wide in (48, 24, 23)]
    assert [["600.5 mm"], ["600.5"], []] == [[word["text"] for word in words_on("600.5 mm", wide)] for wide in (64, 40, 39)]


def test_a_rip_names_its_wood_as_the_cut_list_does() -> None:
    """Where two widths are one to the tape, what is ripped from which could not be told."""
    parts = [slats(1, width="2.52", length="30"), slats(1, width="2.51", length="60")]
    view = wood(parts=parts, lumber=[boards(to_buy="96", width="2.52")], shop={"tape": "8"})

    assert ["0.75 in x 2.52 in", "0.75 in x 2.51 in"] == [one["section"] for one in view["laid"]]
    assert ["1 of 3/4\u00a0in x 2.52\u00a0in x 66\u00a0in left over: 2.51\u00a0in"] == [row["text"] for row in view["rips"]]
    assert "from an offcut 2.52\u00a0in wide" in view["laid"][1]["boards"][0]["caption"]
