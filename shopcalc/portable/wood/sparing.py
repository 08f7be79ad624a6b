"""Leaves of what is on hand as much uncut as can be.

The search of a layout weighs what is bought: boards that are owned cost it nothing, and it may begin a new one for every
part. What it put on them is laid again here, each part on the board that it fills best (best fit decreasing), and each
board is exchanged for the shortest that still holds its parts.
"""

from shopcalc.portable.wood.patterns import SLACK

MOST_WHOLE = 12  # kinds of boards that are tried without


def spare_owned(state):
    """Put what lies on boards owned on the least length of them that is found; what this layout buys stays as it is."""
    used = [choice for choice in state["boards"] if choice["kind"]["owned"]]
    owned = [kind for kind in state["kinds"] if kind["owned"]]
    parts = []
    for choice in used:
        parts = parts + choice["sorts"]
    parts.sort(key=lambda sort: sort)  # the longest first, as the sorts stand
    best = shrunk(used, owned, state["sizes"])
    for turn in [1, -1]:
        owned.sort(key=lambda kind: kind["room"] * turn)
        # with one kind left whole, and at last with all: the first that holds a part is not always one to begin
        few = min(len(owned), MOST_WHOLE)
        for whole in range(few + 1):
            found = best_fit(parts, [kind for place, kind in enumerate(owned) if place != whole or whole == few], state["sizes"])
            if len(found) > 0:
                found = shrunk(found, owned, state["sizes"])
                if is_sparer(found, best):
                    best = found
    state["boards"] = best + [choice for choice in state["boards"] if not choice["kind"]["owned"]]


def best_fit(parts, owned, sizes):
    """Each part where it leaves the least room, or on the next board of the kinds in this order; nothing if some part finds none."""
    boards = []
    for kind in owned:
        kind["used"] = 0
    for sort in parts:
        chosen = None
        for board in boards:
            if sizes[sort] <= board["room"] and (chosen is None or board["room"] < chosen["room"]):
                chosen = board
        if chosen is None:
            for kind in owned:
                if chosen is None and sizes[sort] <= kind["room"] + SLACK and kind["used"] < kind["have"]:
                    chosen = {"kind": kind, "sorts": [], "room": kind["room"] + SLACK}
            if chosen is None:
                return []
            chosen["kind"]["used"] = chosen["kind"]["used"] + 1
            boards.append(chosen)
        chosen["room"] = chosen["room"] - sizes[sort]
        chosen["sorts"].append(sort)
    return boards


def shrunk(boards, owned, sizes):
    """The same parts together, each lot on the shortest board that holds it and is not in use."""
    found = [{"kind": board["kind"], "sorts": board["sorts"]} for board in boards]
    for kind in owned:
        kind["used"] = len([board for board in found if board["kind"]["room"] == kind["room"]])
    for board in found:
        filled = 0
        for sort in board["sorts"]:
            filled = filled + sizes[sort]
        for kind in owned:
            if filled <= kind["room"] + SLACK and kind["room"] < board["kind"]["room"] and kind["used"] < kind["have"]:
                board["kind"]["used"] = board["kind"]["used"] - 1
                kind["used"] = kind["used"] + 1
                board["kind"] = kind
    return found


def is_sparer(one, other):
    """Whether a layout cuts less of what is on hand than another, or as much of fewer boards."""
    less = room_of(one) - room_of(other)
    return less < 0 or (less == 0 and len(one) < len(other))


def room_of(boards):
    """The room of boards together."""
    total = 0
    for board in boards:
        total = total + board["kind"]["room"]
    return total
