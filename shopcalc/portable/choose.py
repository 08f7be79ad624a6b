"""Chooses pieces that together come nearest to a size: chippers and shims on an arbor, blocks under a cutter.

A choice is `{"sum", "mains", "fills"}`; choices come ranked, the best first, each of another size. All sub-multisets
are weighed: of those with one sum only the one of fewest pieces can be best, so one is kept for each sum.
"""

from shopcalc.portable.snap import above, nearest_of, same, size_of

KEEP = 4  # the best, and the next three
SAME_SIZE = 100000  # sums that agree to this part of an inch are one size


def sums_of(row, most):
    """Every sum that at most `most` pieces of the row can make, each with the fewest pieces, the largest first."""
    pieces = [length for length in row]
    pieces.sort(key=lambda length: 0 - length)
    sums = [{"sum": 0, "pieces": []}]
    places = {}
    places[size_key(0)] = 0
    for piece in pieces:
        for one in [before for before in sums]:
            if len(one["pieces"]) < most:
                add_sum(sums, places, one["sum"] + piece, one["pieces"] + [piece])
    sums.sort(key=lambda each: each["sum"])
    return sums


def add_sum(sums, places, total, pieces):
    """Keep a sum, unless it is there with no more pieces; `places` says where each size is among the sums."""
    key = size_key(total)
    if key not in places:
        places[key] = len(sums)
        sums.append({"sum": total, "pieces": pieces})
    elif len(sums[places[key]]["pieces"]) > len(pieces):
        sums[places[key]] = {"sum": total, "pieces": pieces}


def size_key(total):
    """The name of a size among the sums found."""
    return "s" + str(nearest_of(total * SAME_SIZE))


def choose_pieces(wanted, mains, fills, under, most):
    """The choices that come nearest to `wanted`, ranked: no more than `under` below it.

    Mains come before fills and few pieces before many where two make the same size.
    """
    best = []
    fill_sums = sums_of(fills, most)
    for main in sums_of(mains, most):
        at = max(0, first_not_below(fill_sums, wanted - main["sum"]) - KEEP)
        last = min(len(fill_sums), at + 2 * KEEP)
        while at < last:
            fill = fill_sums[at]
            choice = {"sum": main["sum"] + fill["sum"], "mains": main["pieces"], "fills": fill["pieces"]}
            if may_be_used(choice, wanted, under, most):
                best = ranked_in(best, choice, wanted)
            at = at + 1
    return best


def may_be_used(choice, wanted, under, most):
    """Whether a choice has pieces, not too many of them, and is not too small."""
    count = len(choice["mains"]) + len(choice["fills"])
    return count > 0 and count <= most and not above(wanted - choice["sum"], under)


def first_not_below(sums, least):
    """The place of the first sum that is not below `least`."""
    low = 0
    high = len(sums)
    while low < high:
        middle = (low + high) // 2
        if above(least, sums[middle]["sum"]):
            low = middle + 1
        else:
            high = middle
    return low


def ranked_in(best, choice, wanted):
    """The best with a choice in its place among them, if it has one; of one size only the better stays."""
    if len(best) == KEEP and is_better(best[KEEP - 1], choice, wanted):
        return best
    key = size_key(choice["sum"])
    for one in best:
        if size_key(one["sum"]) == key and not is_better(choice, one, wanted):
            return best
    ranked = []
    waiting = True
    for one in best:
        if waiting and is_better(choice, one, wanted):
            ranked.append(choice)
            waiting = False
        if size_key(one["sum"]) != key:
            ranked.append(one)
    if waiting:
        ranked.append(choice)
    return ranked[0:KEEP]


def is_better(one, other, wanted):
    """Whether `one` comes before `other`: nearer, rather over than under, fewer fills, fewer pieces."""
    off = size_of(one["sum"] - wanted)
    other_off = size_of(other["sum"] - wanted)
    if not same(off, other_off):
        return off < other_off
    if not same(one["sum"], other["sum"]):
        return one["sum"] > other["sum"]
    if len(one["fills"]) != len(other["fills"]):
        return len(one["fills"]) < len(other["fills"])
    return len(one["mains"]) < len(other["mains"])


def choices_in(ranked):
    """How many choices there are."""
    return len(ranked)


def chosen_mains(ranked, place):
    """The mains of the choice at a place, the largest first; none if there is no such choice."""
    return ranked[int(place)]["mains"] if place < len(ranked) else []


def chosen_fills(ranked, place):
    """The fills of the choice at a place, the largest first; none if there is no such choice."""
    return ranked[int(place)]["fills"] if place < len(ranked) else []
