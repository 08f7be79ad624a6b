"""Lays parts on boards: the fewest to buy, or the cheapest.

Lengths are weighed in whole ticks, so both runtimes decide alike; a tick divides 1024ths and thousandths of an inch,
thirds, and hundredths of a millimetre. A part counts with one kerf, and so does a board: parts fit when their sum
with a kerf between neighbours is at most the length less what squaring takes.

Parts of one length are one sort.
"""

from shopcalc.portable.arithmetic.snap import above, nearest_of
from shopcalc.portable.wood.patterns import SLACK, nodes_for
from shopcalc.portable.wood.search import MANY, NO_BOARD, NO_LAYOUT, ONE_BOARD, ONE_CENT, search_boards
from shopcalc.portable.wood.sparing import spare_owned

TICKS = 6096000000  # in an inch
FINE = 10000  # what an inch of a board weighs
CENTS = 1000  # in a unit of price; below them the number of boards counts
NO_BOARDS = 5  # sizes of them
MOST_WORK = 320000  # steps of one search, shared among the sorts: many sorts are seldom searched to the end anyhow
SEARCHES = 4  # times the work of one: after that no other is begun


def lay_parts(lengths, on_hand, to_buy, kerf, trim):
    """Lay parts of these lengths on boards owned and boards to buy, each `{"length", "price"}`.

    A price is a number or None, and prices count when every length has one: then the layout is the cheapest found,
    else the one of fewest boards bought, then of the least length bought. Boards owned cost nothing.

    Returns `boards` (each with `length`, `owned`, `price`, `pieces` as places in `lengths`, the longest first, and
    the `rest` behind the last cut), `too_long` (places of the parts that no board takes), how many are `bought`, the
    `least` that can be, whether that is `proven`, the `cost` or None, whether no lower cost can be (`cheapest`), the
    length `used` and the `waste` of it that is no part.
    """
    return lay_within(lengths, on_hand, to_buy, kerf, trim, MOST_WORK)


def lay_within(lengths, on_hand, to_buy, kerf, trim, most):
    """What `lay_parts` gives, with `most` steps to a search; and how many were taken in all, as `steps`."""
    priced = len(to_buy) > 0
    for one in to_buy:
        priced = priced and one["price"] is not None
    kinds = kinds_of(on_hand, to_buy, kerf, trim, priced)
    sorts = sorts_of(lengths, kinds, tick_of(kerf))
    state = {
        "sorts": sorts,
        "sizes": [one["size"] for one in sorts],
        "left": [len(one["pieces"]) for one in sorts],
        "kinds": kinds,
        "worths": [],
        "order": [],
        "ratios": [],
        "smallest": [],
        "bound": 0,
        "seen": [],
        "boards": [],
        "found": [],
        "weight": NO_LAYOUT,
        "nodes": nodes_for(len(kinds), most),
        "work": 0,
        "steps": 0,
        "enough": most * SEARCHES,
        "limit": max(most // 60, min(most // 6, most // max(1, len(sorts)))),
        "fewest": 0,
        "least": 0,
        "priced": priced,
        "cheapest": False,
        "cut": False,
        "done": False,
    }
    if len(sorts) > 0:
        search_boards(state)
        spare_owned(state)
    return laid_out(state, lengths, kerf, trim)


def tick_of(length):
    """A length in whole ticks."""
    return int(nearest_of(length * TICKS))


def kinds_of(on_hand, to_buy, kerf, trim, priced):
    """The boards there are, by kind, boards of one length and price together: `room`, `weight`, how many there are."""
    kinds = []
    places = {}
    for length in on_hand:
        add_kind(kinds, places, length, True, None, 0, tick_of(length - trim + kerf))
    for one in to_buy:
        if priced:
            weight = int(nearest_of(one["price"] * CENTS)) * ONE_CENT + 1
        else:
            weight = ONE_BOARD + int(nearest_of(one["length"] * FINE))
        add_kind(kinds, places, one["length"], False, one["price"] if priced else None, weight, tick_of(one["length"] - trim + kerf))
    kinds.sort(key=lambda kind: 0 - kind["room"])
    kinds.sort(key=lambda kind: kind["weight"])
    return kinds


def add_kind(kinds, places, length, owned, price, weight, room):
    """Add a board to its kind, whose place `places` keeps; of two of one length to buy the cheaper counts."""
    key = ("own" if owned else "buy") + str(room)
    if key in places:
        kind = kinds[places[key]]
        if owned:
            kind["have"] = kind["have"] + 1
        elif weight < kind["weight"]:
            kind["weight"] = weight
            kind["price"] = price
        return
    places[key] = len(kinds)
    have = 1 if owned else MANY
    kinds.append({"length": length, "room": room, "owned": owned, "price": price, "weight": weight, "have": have, "dual": 0})


def sorts_of(lengths, kinds, kerf):
    """The parts that some board can take by their length, the longest first; what nothing to buy can take adds a kind that is no board."""
    sorts = []
    places = {}
    widest = 0
    bought = 0
    for kind in kinds:
        widest = max(widest, kind["room"])
        if not kind["owned"]:
            bought = max(bought, kind["room"])
    longest = 0
    for piece, length in enumerate(lengths):
        size = tick_of(length) + kerf
        key = "s" + str(size)
        if size <= widest + SLACK and key not in places:
            places[key] = len(sorts)
            sorts.append({"size": size, "pieces": []})
            longest = max(longest, size)
        if size <= widest + SLACK:
            sorts[places[key]]["pieces"].append(piece)
    sorts.sort(key=lambda one: 0 - one["size"])
    if longest > bought + SLACK:
        add_no_boards(kinds, sorts, longest)
    return sorts


def add_no_boards(kinds, sorts, longest):
    """Kinds that are no board, for parts that are left without one: the longer the part, the more it weighs to leave it."""
    steps = max(1, len(sorts) // NO_BOARDS)
    for place, one in enumerate(sorts):
        if place // steps * steps == place:
            weight = NO_BOARD // 10 * max(1, int(10 * one["size"] / longest))
            kinds.append({"length": 0, "room": one["size"], "owned": False, "price": None, "weight": weight, "have": MANY, "dual": 0})


# What comes of it.


def laid_out(state, lengths, kerf, trim):
    """The layout in the caller's own terms: owned boards first, the longest first, parts by their places."""
    boards = []
    waiting = [[piece for piece in one["pieces"]] for one in state["sorts"]]
    placed = {}
    totals = {"bought": 0, "cost": 0, "used": 0, "parts": 0}
    for kind in state["kinds"]:
        for choice in state["boards"]:
            if choice["kind"]["length"] == kind["length"] and choice["kind"]["owned"] == kind["owned"] and kind["length"] > 0:
                boards.append(cut_board(choice, waiting, placed, lengths, kerf, trim, totals))
    too_long = [piece for piece in range(len(lengths)) if "p" + str(piece) not in placed]
    least = min(state["least"], totals["bought"])
    return {
        "boards": boards,
        "too_long": too_long,
        "bought": totals["bought"],
        "least": least,
        "proven": least == totals["bought"],
        "cheapest": state["cheapest"],
        "cost": totals["cost"] if state["priced"] else None,
        "waste": totals["used"] - totals["parts"],
        "used": totals["used"],
        "steps": state["steps"],
    }


def cut_board(choice, waiting, placed, lengths, kerf, trim, totals):
    """One board with the parts that are cut from it, the longest first."""
    kind = choice["kind"]
    pieces = []
    rest = kind["length"] - trim
    chosen = [sort for sort in choice["sorts"]]
    chosen.sort(key=lambda sort: sort)
    for sort in chosen:
        piece = waiting[sort].pop(0)
        placed["p" + str(piece)] = True
        pieces.append(piece)
        rest = rest - lengths[piece] - kerf
        totals["parts"] = totals["parts"] + lengths[piece]
    totals["used"] = totals["used"] + kind["length"]
    if not kind["owned"]:
        totals["bought"] = totals["bought"] + 1
        if kind["price"] is not None:
            totals["cost"] = totals["cost"] + kind["price"]
    return {"length": kind["length"], "owned": kind["owned"], "price": kind["price"], "pieces": pieces, "rest": rest if above(rest, 0) else 0}
