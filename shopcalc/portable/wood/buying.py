"""What to buy for a job: the least bill that is found for all its sections.

Sections of one thickness share a store of wood; a plan is the steps that lay them, the widest first, each with the
store that it leaves. Sections of another thickness have nothing to do with it.
"""

from shopcalc.portable.arithmetic.snap import above, same
from shopcalc.portable.arithmetic.sorting import merged_sort
from shopcalc.portable.wood.boards import MOST_WORK
from shopcalc.portable.wood.ways import FEW_WORK, buys_outside, can_search, choices_of, lay_next, next_steps, steps_by_swap
from shopcalc.portable.wood.wood import MOST_IN_ALL, MOST_PIECES, add_boards, boards_on_hand, is_as_thick, lay_section, make_task

MOST_SWAPS = 6  # of the last board of a length for one of another
MOST_BEGINNINGS = 4  # that are gone on with
MOST_ORDERED = 8  # sections of one thickness that are laid in other orders
MOST_STEPS = 64000  # in search of a lower bill, in one thickness; then what is begun is taken to its end
FEW_THICKNESSES = 4  # that have each the work of a whole job
NO_COST = 1000000000000  # comes after every cost


def lay_wood(sections, lines, kerf, trim, rough):
    """Every section on boards, with `rough` added to each part; `sections` are sorted by thickness, then the widest first."""
    laid = []
    tasks = []
    room = MOST_IN_ALL
    last = [at for at, section in enumerate(sections) if at == len(sections) - 1 or not is_as_thick(sections[at + 1], section)]
    for at, section in enumerate(sections):
        tasks.append(make_task(section, lines, kerf, rough, len(tasks) == 0, min(room, MOST_PIECES)))
        room = room - len(tasks[-1]["lengths"])
        if at in last:
            cutting = begin_cutting(kerf, trim, shared(MOST_STEPS, len(last)), shared(MOST_WORK, len(last)))
            laid = laid + [step["laid"] for step in best_plan(tasks, boards_on_hand(section, lines, trim), cutting)]
            tasks = []
    return laid


def begin_cutting(kerf, trim, most, work):
    """What every step of a thickness needs: what a cut and squaring take, what may be `spent` at most, and what the first search may."""
    return {"kerf": kerf, "trim": trim, "spent": 0, "steps": 0, "most": most, "work": work}


def shared(most, thicknesses):
    """What one thickness may take where there are so many: all of them no more than a few would."""
    return most * FEW_THICKNESSES // max(FEW_THICKNESSES, thicknesses)


def best_plan(tasks, store, cutting):
    """The steps whose bill is the least that was found; never more than if nothing left over were used.

    What may be bought alone has a plan of its own. Section by section, a few of the best beginnings are gone on with, each
    in several ways; every beginning is taken to its end to see what it is worth.
    """
    if len(tasks) == 1:
        return plain_plan(tasks, store, cutting)
    priced = all_priced(tasks)
    first = lay_section(tasks[0], store, tasks[0]["offers"], cutting, tasks[1 : len(tasks)], cutting["work"])
    cutting["after"] = first
    best = weighed(follow_plan([], tasks, store, cutting), priced)
    # the first layout is searched longer than any after it
    cutting["spent"] = 0
    plans = [best] + [weighed(steps, priced) for steps in plans_of_choices(tasks, store, cutting)]
    beginnings = [[]]
    for at, task in enumerate(tasks):
        for before in beginnings:
            usual = step_after(before, tasks, store, cutting)
            for step in next_steps(usual, task, left_by(before, store), cutting, tasks[at + 1 : len(tasks)]):
                if can_search(cutting):
                    plans.append(weighed(follow_plan(before + [step], tasks, store, cutting), priced))
        plans = merged_sort(plans, is_lighter)
        best = plans[0]
        beginnings = begun_in(plans, at + 1)
        plans = [best]
    if is_short(best["steps"]):
        others = [plain_plan(tasks, store, cutting)] + plans_of_orders(tasks, store, cutting)
        best = merged_sort([best] + [weighed(steps, priced) for steps in others], is_lighter)[0]
    return best["steps"]


def plans_of_orders(tasks, store, cutting):
    """A plan for other orders of the sections: a long board may be wanted for a narrow part, before the wide ones are laid on it."""
    found = []
    own = begin_cutting(cutting["kerf"], cutting["trim"], 0, cutting["work"])
    for order in orders_of(len(tasks)):
        store_left = store
        steps = [None for _ in tasks]
        for nth, place in enumerate(order):
            later = [tasks[at] for at in order[nth + 1 : len(order)]]
            steps[place] = lay_next(unranked(tasks[place]), tasks[place]["offers"], store_left, own, later)
            store_left = steps[place]["store"]
        found.append(steps)
    return found


def orders_of(many):
    """Orders of so many sections other than the usual one: of few all, of more those that begin with another, of very many none."""
    if many > MOST_ORDERED:
        return []
    usual = [place for place in range(many)]
    if many != 3:
        return [[place] + [other for other in usual if other != place] for place in usual[1:many]]
    return [[0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]]


def unranked(task):
    """A section that is not the first to be laid, so that nothing is proven by its boards."""
    found = {}
    for name in task:
        found[name] = task[name]
    found["first"] = False
    return found


def plans_of_choices(tasks, store, cutting):
    """A plan for each of what may be bought alone: what suits all sections together need not suit the first of them."""
    found = []
    for choice in choices_of(all_offers(tasks), False):
        if can_search(cutting):
            found.append(follow_only(choice, tasks, store, cutting))
    return found


def follow_only(choice, tasks, store, cutting):
    """A plan that buys nothing but this choice, but for sections that cannot be had from it."""
    steps = []
    for at, task in enumerate(tasks):
        offers = [offer for offer in task["offers"] if len([one for one in choice if is_same_offer(one, offer)]) > 0]
        if len(offers) == 0:
            offers = task["offers"]
        steps = steps + [lay_next(task, offers, left_by(steps, store), cutting, tasks[at + 1 : len(tasks)])]
    return steps


def all_offers(tasks):
    """What is offered for any of the sections: the narrowest, which is the last, may be ripped from all of it."""
    return merged_sort(tasks[-1]["offers"], is_of_earlier_line)


def is_of_earlier_line(one, other):
    """Offers of one line stand together."""
    return above(other["line"], one["line"])


def is_same_offer(one, other):
    """Whether two offers are of one board of one line."""
    return one["line"] == other["line"] and same(one["length"], other["length"])


def begun_in(plans, many):
    """The first steps of the best plans, as `many` as that, each beginning once."""
    found = []
    for plan in plans:
        begun = plan["steps"][0:many]
        if len(found) < MOST_BEGINNINGS and len([one for one in found if is_same_beginning(one, begun)]) == 0:
            found.append(begun)
    return found


def is_same_beginning(one, other):
    """Whether two beginnings are made of the same steps."""
    return len([place for place, step in enumerate(one) if step["nth"] != other[place]["nth"]]) == 0


def left_by(steps, store):
    """What is left of a store after some steps."""
    return store if len(steps) == 0 else steps[-1]["store"]


def follow_plan(steps, tasks, store, cutting):
    """A plan taken to its end, each section with all that can be bought for it."""
    while len(steps) < len(tasks):
        steps = steps + [step_after(steps, tasks, store, cutting)]
    return steps


def step_after(steps, tasks, store, cutting):
    """The usual step after some others, which is laid once."""
    held = cutting if len(steps) == 0 else steps[-1]
    if "after" not in held:
        at = len(steps)
        left = left_by(steps, store)
        step = lay_next(tasks[at], tasks[at]["offers"], left, cutting, tasks[at + 1 : len(tasks)])
        held["after"] = step if at + 1 < len(tasks) else lay_last(step, tasks[at], left, cutting)
    return held["after"]


def lay_last(usual, task, store, cutting):
    """The last section on what costs least of all that may be bought alone."""
    best = usual
    priced = all_priced([task])
    if len(usual["laid"]["shopping"]) > 0:
        for offers in choices_of(task["offers"], True):
            if can_search(cutting) and buys_outside(usual, offers):
                step = lay_section(task, store, offers, cutting, [], FEW_WORK)
                if is_lighter(weighed([step], priced), weighed([best], priced)):
                    best = step
    return best


def plain_plan(tasks, store, cutting):
    """Every section by itself, nothing left over used; the sections share the work of one search."""
    steps = []
    work = cutting["work"] // len(tasks)
    own = begin_cutting(cutting["kerf"], cutting["trim"], cutting["most"], work)
    for task in tasks:
        priced = all_priced([task])
        best = lay_section(task, left_by(steps, store), task["offers"], own, [], work)
        for offers in choices_of(task["offers"], True):
            if len(tasks) == 1 or can_search(own):
                step = lay_section(task, left_by(steps, store), offers, own, [], work)
                if is_lighter(weighed([step], priced), weighed([best], priced)):
                    best = step
        for _ in range(MOST_SWAPS):
            better = False
            for step in steps_by_swap(best, task, left_by(steps, store), own, [], work):
                if is_lighter(weighed([step], priced), weighed([best], priced)):
                    best = step
                    better = True
            if not better:
                break
        steps.append(best)
    return steps


def is_short(steps):
    """Whether anything is to buy or missing."""
    return len([step for step in steps if step["missing"] > 0 or len(step["laid"]["shopping"]) > 0]) > 0


def all_priced(tasks):
    """Whether every board that may be bought has a price."""
    return len([task for task in tasks if len([offer for offer in task["offers"] if offer["board_price"] is None]) > 0]) == 0


def weighed(steps, priced):
    """A plan with what it is compared by."""
    return {"steps": steps, "weights": weights_of(steps, priced)}


def is_lighter(one, other):
    """Whether a plan is better: fewer parts without a board; where all boards have prices the lower cost, else fewer boards; less wood."""
    for place, mine in enumerate(one["weights"]):
        theirs = other["weights"][place]
        if not same(mine, theirs):
            return above(theirs, mine)
    return False


def weights_of(steps, priced):
    """What plans are compared by, what weighs most first."""
    missing = 0
    taken = 0
    rows = []
    for step in steps:
        missing = missing + step["missing"]
        taken = taken + step["taken"]
        rows = rows + step["laid"]["shopping"]
    bill = bill_of(rows)
    cost = NO_COST if bill["cost"] is None else bill["cost"]
    return [missing, cost, bill["count"], taken] if priced else [missing, bill["count"], cost, taken]


def bill_of(rows):
    """How many boards are to buy, and what they cost if every one has a price."""
    count = 0
    cost = 0
    for row in rows:
        count = count + row["count"]
        cost = None if cost is None or row["cost"] is None else cost + row["cost"]
    return {"count": count, "cost": cost}


def bought_rows(laid):
    """The boards to buy for all sections, those of one size together: thickness, width, length, how many, and what they cost."""
    rows = []
    for one in laid:
        for each in one["shopping"]:
            row = {}
            for name in each:
                row[name] = each[name]
            add_boards(rows, row)
    return rows
