"""Which parts one board can hold together, and what a part is worth by the cheapest mix of all such patterns.

The linear program of all patterns says what a part of each sort costs where parts of a board may be bought: its
columns are made when they are wanted (P. C. Gilmore and R. E. Gomory, A linear programming approach to the
cutting-stock problem, Operations Research 9, 1961).
"""

SLACK = 201  # ticks: what rounding can add to a board of as many pieces as are laid at once, half a tick each
PATTERN_SHARE = 2  # of a search that one pattern may take
LEAST_NODES = 100
MOST_NODES = 3000  # of one board's patterns; fewer where there are many kinds of boards
FEW_KINDS = 8
PASSED_OVER = 16  # sorts looked at cost what a node does
MOST_COLUMNS = 300  # of the linear program
MOST_PROGRAM = 1500000  # nodes of all its columns


def order_sorts(state):
    """Put the sorts in order of worth for their size, for the search of patterns."""
    sorts = state["sorts"]
    worths = state["worths"]
    state["ratios"] = [worth / sorts[place]["size"] for place, worth in enumerate(worths)]
    ratios = state["ratios"]
    state["order"] = [place for place in range(len(sorts))]
    state["order"].sort(key=lambda place: 0 - ratios[place])
    state["smallest"] = least_sizes([sorts[place]["size"] for place in state["order"]])


def least_sizes(sizes):
    """The least size from each place on: where that does not fit, nothing behind it does."""
    least = [size for size in sizes]
    place = len(sizes) - 2
    while place >= 0:
        least[place] = min(least[place], least[place + 1])
        place = place - 1
    return least


def nodes_for(kinds, work):
    """How many nodes one board's patterns may take, where there are so many kinds: all of them share what a few would take.

    Where there is little work for the whole search, no pattern takes more than a part of it.
    """
    return min(MOST_NODES * FEW_KINDS // max(FEW_KINDS, kinds), max(LEAST_NODES, work // PATTERN_SHARE))


def most_worth(state, room):
    """The most worth that one board can hold, or a little more where the search of it is cut off."""
    hold = patterns_of(state, room, -1, 1, 0)
    if hold["nodes"] > state["nodes"]:
        return int(room * state["ratios"][state["order"][0]]) + 1
    return hold["list"][0]["worth"] if len(hold["list"]) > 0 else 0


def patterns_of(state, room, first, keep, floor):
    """The patterns worth more than `floor` that a board of this room can hold of what is left, the best few first.

    With `first`, only those with one part of that sort.
    """
    hold = {"list": [], "keep": keep, "floor": floor, "nodes": 0}
    if first < 0:
        add_piece(state, hold, 0, room, 0, [])
        return hold
    state["left"][first] = state["left"][first] - 1
    add_piece(state, hold, 0, room - state["sorts"][first]["size"], state["worths"][first], [first])
    state["left"][first] = state["left"][first] + 1
    return hold


def add_piece(state, hold, at, room, worth, chosen):
    """Keep a pattern, and every one that has it and more of the sorts from place `at` in order."""
    hold["nodes"] = hold["nodes"] + 1
    if len(chosen) > 0 and worth > hold["floor"]:
        keep_pattern(hold, worth, [each for each in chosen])
    left = state["left"]
    sizes = state["sizes"]
    order = state["order"]
    ratios = state["ratios"]
    within = room + SLACK
    smallest = state["smallest"]
    last = len(order)
    place = at
    while place < last and smallest[place] <= within:
        sort = order[place]
        size = sizes[sort]
        if left[sort] > 0 and size <= within:
            if hold["nodes"] > state["nodes"] or 2 * (worth + room * ratios[sort] - hold["floor"]) < 1:
                return
            left[sort] = left[sort] - 1
            chosen.append(sort)
            add_piece(state, hold, place, room - size, worth + state["worths"][sort], chosen)
            chosen.pop()
            left[sort] = left[sort] + 1
        place = place + 1
    # where there are many sorts, looking through them is most of the work
    hold["nodes"] = hold["nodes"] + (place - at) // PASSED_OVER


def keep_pattern(hold, worth, chosen):
    """Put a pattern in its place among the best; when they are enough, only better ones are looked for."""
    best = hold["list"]
    place = len(best)
    while place > 0 and worth > best[place - 1]["worth"]:
        place = place - 1
    best.insert(place, {"worth": worth, "sorts": chosen})
    if len(best) > hold["keep"]:
        best.pop()
    if len(best) == hold["keep"]:
        hold["floor"] = best[-1]["worth"]


# The linear program of all patterns, by columns that are made when they are wanted.


def solve_program(state):
    """The cheapest mix of patterns, parts of a board allowed, and the `worths` of the sorts in it: the linear program and its dual."""
    program = first_columns(state)
    before = state["worths"]
    count = len(state["sorts"])
    for _ in range(MOST_COLUMNS):
        duals = dual_values(program)
        column = best_column(state, program, duals)
        # any worths give a bound: a program that is left early gives a lower one
        if column is None or not enter_column(program, column) or program["nodes"] > MOST_PROGRAM:
            break
    duals = dual_values(program)
    state["worths"] = before
    for row, one in enumerate(program["columns"]):
        one["amount"] = program["amounts"][row]
    program["worths"] = [int(max(0, duals[sort])) for sort in range(count)]
    return program


def first_columns(state):
    """The program with one column for each sort, alone on its board to buy, and one for each kind owned that is not used."""
    program = {"columns": [], "amounts": [], "costs": [], "inverse": [], "owned": {}, "nodes": 0}
    count = len(state["sorts"])
    rows = count
    for place, kind in enumerate(state["kinds"]):
        if kind["owned"]:
            program["owned"]["k" + str(place)] = rows
            rows = rows + 1
    for sort in range(count):
        size = state["sorts"][sort]["size"]
        for kind in state["kinds"]:
            if not kind["owned"] and size <= kind["room"] + SLACK:
                many = min((kind["room"] + SLACK) // size, len(state["sorts"][sort]["pieces"]))
                add_row(program, rows, len(state["sorts"][sort]["pieces"]) / many, kind["weight"], 1 / many)
                program["columns"].append({"kind": kind, "sorts": [sort for _ in range(many)]})
                break
    for kind in state["kinds"]:
        if kind["owned"]:
            add_row(program, rows, kind["have"], 0, 1)
            program["columns"].append({"kind": None, "sorts": []})
    return program


def add_row(program, rows, amount, cost, share):
    """Add a row whose basic column has nothing in any other."""
    line = [0 for _ in range(rows)]
    line[len(program["inverse"])] = share
    program["inverse"].append(line)
    program["amounts"].append(amount)
    program["costs"].append(cost)


def dual_values(program):
    """What one more of each row would cost."""
    inverse = program["inverse"]
    rows = len(inverse)
    duals = [0 for _ in inverse]
    for row in range(rows):
        cost = program["costs"][row]
        line = inverse[row]
        if cost > 0:
            for place in range(rows):
                if line[place] != 0:
                    duals[place] = duals[place] + line[place] * cost
    return duals


def best_column(state, program, duals):
    """The column that saves most for what it costs: a part too many of a sort, or a pattern on a kind of board; or None."""
    count = len(state["sorts"])
    for sort in range(count):
        if duals[sort] < -1:
            return {"cost": 0, "counts": [[sort, -1]], "kind": None, "sorts": []}
    for place, kind in enumerate(state["kinds"]):
        if kind["owned"] and duals[program["owned"]["k" + str(place)]] > 1:
            return {"cost": 0, "counts": [[program["owned"]["k" + str(place)], 1]], "kind": None, "sorts": []}
    state["worths"] = [max(0, duals[sort]) for sort in range(count)]
    order_sorts(state)
    best = None
    most = 0
    for place, kind in enumerate(state["kinds"]):
        row = program["owned"]["k" + str(place)] if kind["owned"] else -1
        price = kind["weight"] - (duals[row] if row >= 0 else 0)
        hold = patterns_of(state, kind["room"], -1, 1, price + 1)
        program["nodes"] = program["nodes"] + hold["nodes"]
        if len(hold["list"]) > 0 and hold["list"][0]["worth"] - price > most:
            most = hold["list"][0]["worth"] - price
            counts = [[row, 1]] if row >= 0 else []
            for sort in hold["list"][0]["sorts"]:
                counts.append([sort, 1])
            best = {"cost": kind["weight"], "counts": counts, "kind": kind, "sorts": hold["list"][0]["sorts"]}
    return best


def enter_column(program, column):
    """Take a column into the basis in place of the one that runs out first; says whether it could."""
    inverse = program["inverse"]
    amounts = program["amounts"]
    change = []
    for line in inverse:
        total = 0
        for pair_of in column["counts"]:
            total = total + line[pair_of[0]] * pair_of[1]
        change.append(total)
    out = -1
    for row, each in enumerate(change):
        if each * 1000000000 > 1 and (out < 0 or amounts[row] * change[out] < amounts[out] * each):
            out = row
    if out < 0:
        return False
    step = amounts[out] / change[out]
    pivot = [share / change[out] for share in inverse[out]]
    rows = len(pivot)
    for row, each in enumerate(change):
        if row != out and each != 0:
            amounts[row] = amounts[row] - each * step
            line = inverse[row]
            for place in range(rows):
                if pivot[place] != 0:
                    line[place] = line[place] - each * pivot[place]
    inverse[out] = pivot
    amounts[out] = step
    program["costs"][out] = column["cost"]
    program["columns"][out] = column
    return True
