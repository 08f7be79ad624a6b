"""Searches the layout of parts on boards that weighs least: the fewest boards, or the cheapest.

Every sort of part is given a worth, such that no board can hold more worth than it costs: then no layout can cost less
than the worth of all parts, and each board wastes what it costs beyond the worth on it. The search puts the largest part
left on the board that wastes least, then widens; it is cut off after so much work, the same everywhere. Worths come from
the length itself, and from the linear program of all patterns.
"""

from shopcalc.portable.wood.patterns import SLACK, most_worth, order_sorts, patterns_of, solve_program

ONE_BOARD = 3000000000  # a board weighs more than the lengths of all boards together
ONE_CENT = 1000  # below a cent the number of boards counts
NO_BOARD = 20000000000000  # weighs more than any layout, by ten for the longest part that is left without one
NO_LAYOUT = NO_BOARD * 401  # weighs more than a layout that leaves as many parts without one as are laid at once
MANY = 1000  # boards to buy: as many as are wanted
SHARES = [0, 5, 8, 2]
TURNS = 9  # with worths shaken by up to a tenth
MOST_SPARE = 100  # turns from what looks best
WIDEST = 30  # patterns weighed at one place
SHELVES = 509  # for what was searched before


def search_boards(state):
    """Search a layout, first by the plain lengths and, if no bound proves it, by the linear program."""
    sizes = [one["size"] for one in state["sorts"]]
    set_worths(state, sizes)
    fill_boards(state, 0, 0, 0)
    weigh_bounds(state)
    if is_over(state):
        return
    program = solve_program(state)
    best = program["worths"]
    set_worths(state, best)
    weigh_bounds(state)
    search_with(state, 0)
    search_with(state, MOST_SPARE)
    for share in SHARES:
        search_rest(state, program, share)
    scale = common_worth(state, best) / common_worth(state, sizes)
    for turn in range(TURNS):
        if not is_over(state):
            set_worths(state, shaken(best, sizes, scale, turn))
            search_with(state, 2)


def is_over(state):
    """Whether no other search is begun, since none can be better or it is enough: one that is begun finds a layout whatever that takes."""
    return state["done"] or state["steps"] > state["enough"]


def search_with(state, spare):
    """Search by the worths as they are; a search that was not cut off has found the best."""
    if is_over(state):
        return
    state["cut"] = False
    state["work"] = 0
    state["seen"] = [[] for _ in range(SHELVES)]
    fill_boards(state, 0, 0, spare)
    state["done"] = not state["cut"]
    weigh_bounds(state)


def search_rest(state, program, share):
    """Take the program's patterns as often as whole boards of them are wanted, and search what is left.

    `share` tenths are added first, so that a pattern may also be taken once too often rather than too seldom.
    """
    if is_over(state):
        return
    columns = [one for one in program["columns"] if one["kind"] is not None]
    columns.sort(key=lambda one: int(one["amount"]) - one["amount"])
    taken = []
    weight = 0
    waste = 0
    for one in columns:
        for _ in range(int(one["amount"] + share / 10 + 1 / 1000000)):
            choice = {"kind": one["kind"], "sorts": [], "waste": one["kind"]["dual"]}
            for sort in one["sorts"]:
                if state["left"][sort] > 0 and one["kind"]["have"] > 0:
                    state["left"][sort] = state["left"][sort] - 1
                    choice["sorts"].append(sort)
                    choice["waste"] = choice["waste"] - state["worths"][sort]
            if len(choice["sorts"]) > 0:
                one["kind"]["have"] = one["kind"]["have"] - 1
                weight = weight + one["kind"]["weight"]
                waste = waste + choice["waste"]
                taken.append(choice)
    state["found"] = [each for each in taken]
    state["work"] = 0
    state["seen"] = [[] for _ in range(SHELVES)]
    fill_boards(state, weight, waste, MOST_SPARE)
    state["found"] = []
    for choice in taken:
        take_pattern(state, choice, -1)
    weigh_bounds(state)


def common_worth(state, worths):
    """The worth of all parts together."""
    total = 0
    for place, worth in enumerate(worths):
        total = total + worth * len(state["sorts"][place]["pieces"])
    return total


def shaken(best, sizes, scale, turn):
    """Worths between those of the program and the plain lengths, each shaken a little, another way at every turn."""
    worths = []
    seed = 7 + 31 * turn
    share = turn - turn // 3 * 3
    for place, worth in enumerate(best):
        seed = seed * 137 + 59
        seed = seed - seed // 1009 * 1009
        mixed = worth * (2 - share) + sizes[place] * scale * share
        worths.append(int(mixed * (10090 + seed)))
    return worths


def weigh_bounds(state):
    """Hold the best layout against what no layout can be below; `done` when none can be better."""
    grain = 0
    prices = 0
    for kind in state["kinds"]:
        grain = common_part(grain, kind["weight"])
        prices = common_part(prices, kind["weight"] // ONE_CENT)
    best = state["weight"]
    state["least"] = max(state["least"], state["fewest"])
    if state["done"] or best - state["bound"] < grain or best == 0:
        state["done"] = True
        state["cheapest"] = state["priced"]
        if not state["priced"]:
            state["least"] = best // ONE_BOARD
    elif state["priced"] and (best // ONE_CENT - prices) * ONE_CENT < state["bound"] - MANY:
        state["cheapest"] = True  # boards that cost the same may still be fewer


def common_part(one, other):
    """The greatest whole number that divides both."""
    while other > 0:
        rest = one - one // other * other
        one = other
        other = rest
    return one


def set_worths(state, worths):
    """Give every sort a worth, made so that no board to buy holds more than it weighs; a board owned weighs what it can hold."""
    state["worths"] = worths
    order_sorts(state)
    total = common_worth(state, worths)
    most = 0
    scale = 0
    for kind in state["kinds"]:
        kind["dual"] = most_worth(state, kind["room"])
        if kind["owned"]:
            total = total - kind["dual"] * kind["have"]
        elif kind["dual"] > 0:
            most = max(most, kind["dual"])
            ratio = kind["weight"] / kind["dual"]
            scale = ratio if scale == 0 else min(scale, ratio)
    state["fewest"] = 0 if most == 0 or total < 0 else int(total / most - 1 / 1000000) + 1
    state["worths"] = [int(worth * scale) for worth in worths]
    order_sorts(state)
    bound = common_worth(state, state["worths"])
    for kind in state["kinds"]:
        if kind["owned"]:
            kind["dual"] = int(kind["dual"] * scale) + 1
            bound = bound - kind["dual"] * kind["have"]
        else:
            kind["dual"] = kind["weight"]
    state["bound"] = max(0, bound)


def fill_boards(state, weight, waste, spare):
    """Put the longest part left on every board it can go on, the least wasteful patterns first, and go on from there."""
    left = state["left"]
    first = 0
    while first < len(left) and left[first] == 0:
        first = first + 1
    if first == len(left):
        if weight < state["weight"]:
            state["weight"] = weight
            state["boards"] = [each for each in state["found"]]
        return
    if spare > WIDEST and was_here(state, waste):
        return
    gap = state["weight"] - state["bound"] - waste
    width = min(spare + 1, WIDEST)
    choices = []
    for kind in state["kinds"]:
        if kind["have"] > 0 and state["sorts"][first]["size"] <= kind["room"] + SLACK:
            hold = patterns_of(state, kind["room"], first, width, kind["dual"] - gap)
            state["work"] = state["work"] + hold["nodes"]
            state["steps"] = state["steps"] + hold["nodes"]
            if hold["nodes"] > state["nodes"] or len(hold["list"]) == width:
                state["cut"] = True
            for one in hold["list"]:
                choices.append({"kind": kind, "sorts": one["sorts"], "waste": kind["dual"] - one["worth"]})
    choices.sort(key=lambda choice: choice["waste"])
    if len(choices) > width:
        state["cut"] = True
    for turns, choice in enumerate(choices[0:width]):
        if state["weight"] < NO_LAYOUT and state["work"] > state["limit"]:
            state["cut"] = True
            return
        kind = choice["kind"]
        if waste + choice["waste"] < state["weight"] - state["bound"]:
            take_pattern(state, choice, 1)
            state["found"].append(choice)
            fill_boards(state, weight + kind["weight"], waste + choice["waste"], spare - turns)
            state["found"].pop()
            take_pattern(state, choice, -1)


def was_here(state, waste):
    """Whether the same parts and boards were left before, with no more wasted on the way; remembers that they are now."""
    counts = [count for count in state["left"]] + [kind["have"] for kind in state["kinds"] if kind["owned"]]
    place = 0
    for count in counts:
        place = place * 31 + count
        place = place - place // SHELVES * SHELVES
    key = ",".join([str(count) for count in counts])
    for one in state["seen"][place]:
        if one["key"] == key:
            if one["waste"] <= waste:
                return True
            one["waste"] = waste
            return False
    state["seen"][place].append({"key": key, "waste": waste})
    return False


def take_pattern(state, choice, times):
    """Take the parts of a pattern and its board from what is left, or with -1 put them back."""
    for sort in choice["sorts"]:
        state["left"][sort] = state["left"][sort] - times
    choice["kind"]["have"] = choice["kind"]["have"] - times
