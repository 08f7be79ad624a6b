"""Chooses pieces that together come nearest to a size: chippers and shims on an arbor, blocks under a cutter.

A choice is `{"sum", "mains", "fills"}`; choices come ranked, the best first, each of another size. All sub-multisets
are weighed: of those with one sum only the one of fewest pieces can be best, so one is kept for each sum.
"""

from shopcalc.portable.arithmetic.snap import above, magnitude, nearest_of, same

KEEP = 4  # the best, and the next three
# sums that agree to this part of an inch are one size; thousandths, 128ths and hundredths of a mm come out whole, far from
# where a key turns
SAME_SIZE = 162560000
NO_LIMIT = 1000000  # more inches, and more pieces, than there are


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


def count_sums(row, shares, most):
    """How many sums the pieces of a row make, in the larger of two `shares` of it or in all; above `most` nobody counts on.

    Pieces that are alike, or by one scale, make few: some thirty drills by 64ths a few hundred.
    """
    count = 0
    for share in halves_of(row) if shares > 1 else [row]:
        count = max(count, count_totals([nearest_of(length * SAME_SIZE) for length in share], most))
    return count


def halves_of(row):
    """The larger half of a row and the smaller, each with its largest first."""
    pieces = [length for length in row]
    pieces.sort(key=lambda length: 0 - length)
    half = len(pieces) // 2
    return [pieces[0:half], pieces[half:]]


def count_totals(sizes, most):
    """How many totals whole sizes make, or some more than `most`."""
    totals = [0]
    for size in sizes:
        if len(totals) <= most:
            totals = with_and_without(totals, size)
    return len(totals)


def with_and_without(totals, size):
    """Rising totals without and with one size more, each once and rising: a phone looks a key up in a time that grows with their number."""
    both = []
    low = 0
    high = 0
    while high < len(totals):
        more = totals[high] + size
        if low < len(totals) and totals[low] <= more:
            if totals[low] >= more:
                high = high + 1
            both.append(totals[low])
            low = low + 1
        else:
            both.append(more)
            high = high + 1
    return both


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


def choose_between(wanted, mains, fills, under, over):
    """The choices that come nearest to `wanted`, ranked, for pieces between two that are always there: no piece at all may be best.

    None is more than `under` below `wanted`, nor more than `over` above it. Mains come before fills and few pieces before
    many where two make the same size.
    """
    limits = {"under": under, "over": over, "least": 0, "most": NO_LIMIT}
    return ranked_choices(wanted, sums_of(mains, NO_LIMIT), sums_of(fills, NO_LIMIT), limits, False)


def choose_blocks(wanted, row, most):
    """The choices of at most `most` pieces of one row that come nearest to `wanted`, from below or from above.

    The larger half of the row and the smaller are summed apart: twice the sums of ten pieces are far fewer than the
    sums of twenty.
    """
    halves = halves_of(row)
    limits = {"under": NO_LIMIT, "over": NO_LIMIT, "least": 1, "most": most}
    return ranked_choices(wanted, sums_of(halves[0], most), sums_of(halves[1], most), limits, True)


def ranked_choices(wanted, main_sums, fill_sums, limits, as_one):
    """The best choices of a sum of mains and a sum of fills within the limits; `as_one` makes no difference of the two."""
    best = []
    shorter = by_pieces(fill_sums)
    for main in main_sums:
        room = min(len(shorter) - 1, int(limits["most"]) - len(main["pieces"]))
        if room < 0:
            continue
        near = shorter[room]
        at = max(0, first_not_below(near, wanted - main["sum"]) - KEEP)
        last = min(len(near), at + 2 * KEEP)
        while at < last:
            if len(best) < KEEP or not above(off_by(main["sum"] + near[at]["sum"], wanted), off_by(best[KEEP - 1]["sum"], wanted)):
                choice = made_of(main, near[at], as_one)
                if may_be_used(choice, wanted, limits):
                    best = ranked_in(best, choice, wanted)
            at = at + 1
    return best


def off_by(total, wanted):
    """How far a sum is from what is wanted, to either side."""
    return magnitude(total - wanted)


def by_pieces(sums):
    """The sums of no piece, of at most one, of at most two and so on."""
    longest = 0
    for one in sums:
        longest = max(longest, len(one["pieces"]))
    lists = []
    for pieces in range(longest + 1):
        lists.append([each for each in sums if len(each["pieces"]) <= pieces])
    return lists


def made_of(main, fill, as_one):
    """The choice of two sums."""
    if as_one:
        return {"sum": main["sum"] + fill["sum"], "mains": main["pieces"] + fill["pieces"], "fills": []}
    return {"sum": main["sum"] + fill["sum"], "mains": main["pieces"], "fills": fill["pieces"]}


def may_be_used(choice, wanted, limits):
    """Whether a choice has pieces enough, and is neither too small nor too large."""
    if len(choice["mains"]) + len(choice["fills"]) < limits["least"]:
        return False
    return not above(wanted - choice["sum"], limits["under"]) and not above(choice["sum"] - wanted, limits["over"])


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
    off = off_by(one["sum"], wanted)
    other_off = off_by(other["sum"], wanted)
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
