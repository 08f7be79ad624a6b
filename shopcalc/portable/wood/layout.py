"""What is worked out of parts laid on boards: the terms of a formula that a layout gives.

Parts are rows `{"label", "length", "count"}` as they are read; a layout is what `lay_parts` gives, with no None in it.
"""

from shopcalc.portable.arithmetic.snap import larger
from shopcalc.portable.wood.boards import lay_parts


def each_part(parts, name):
    """One thing of every single part: its `label` or its `length`, as often as it is wanted."""
    found = []
    for part in parts:
        for _ in range(int(part["count"])):
            found.append(part[name])
    return found


def lay_on_boards(parts, on_hand, stock, kerf, trim):
    """The layout of parts on boards owned and bought; `priced` says whether it is the cheapest that was looked for."""
    layout = lay_parts(each_part(parts, "length"), on_hand, stock, kerf, trim)
    layout["labels"] = each_part(parts, "label")
    layout["lengths"] = each_part(parts, "length")
    layout["kerf"] = kerf
    layout["trim"] = trim
    layout["priced"] = layout["cost"] is not None
    if not layout["priced"]:
        layout["cost"] = 0
    for board in layout["boards"]:
        if board["price"] is None:
            board["price"] = 0
    return layout


def boards_bought(layout):
    """How many boards are to buy."""
    return layout["bought"]


def boards_least(layout):
    """What the number of boards to buy cannot be below."""
    return layout["least"]


def boards_cost(layout):
    """What the boards to buy cost."""
    return layout["cost"]


def boards_priced(layout):
    """1 where every length to buy has a price, 2 where no lower cost can be, else 0."""
    if not layout["priced"]:
        return 0
    return 2 if layout["cheapest"] else 1


def boards_waste(layout):
    """The length of the boards used that is no part: what is left, what squaring takes, and sawdust."""
    return layout["waste"]


def boards_used(layout):
    """The length of all boards used."""
    return layout["used"]


def left_out(parts, layout):
    """The parts that no board takes, each sort with how many."""
    without = {}
    for piece in layout["too_long"]:
        without["p" + str(piece)] = True
    found = []
    piece = 0
    for part in parts:
        count = 0
        for _ in range(int(part["count"])):
            count = count + (1 if "p" + str(piece) in without else 0)
            piece = piece + 1
        if count > 0:
            found.append({"label": part["label"], "length": part["length"], "count": count})
    return found


def longest_part(parts):
    """The length of the longest part."""
    longest = 0
    for part in parts:
        longest = larger(longest, part["length"])
    return longest


def longest_board(on_hand, stock):
    """The length of the longest board, owned or to buy."""
    longest = 0
    for length in on_hand:
        longest = larger(longest, length)
    for one in stock:
        longest = larger(longest, one["length"])
    return longest
