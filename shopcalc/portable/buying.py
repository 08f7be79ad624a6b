"""What to buy for a job: the least bill that is found for all its sections.

Sections of one thickness share a store of wood; a plan is the steps that lay them, the widest first, each with the
store that it leaves. Sections of another thickness have nothing to do with it.
"""

from shopcalc.portable.boards import MOST_WORK
from shopcalc.portable.snap import above, at_least, same
from shopcalc.portable.sorting import merged_sort
from shopcalc.portable.wood import (
    MOST_IN_ALL,
    MOST_PIECES,
    add_boards,
    boards_on_hand,
    gives_several,
    is_as_thick,
    is_of_size,
    lay_section,
    make_task,
    strips_of,
    whole_board,
)

MOST_CHOICES = 12  # of what to buy that are tried at one section
FEW_WORK = 3000  # steps of one search where what is left over is searched too: many plans are worth more than the best layout of one
MOST_SWAPS = 6  # of the last board of a length for one of another
MOST_BEGINNINGS = 4  # that are gone on with
MOST_STEPS = 64000  # in search of a lower bill, in one thickness; then what is begun is taken to its end
LEAST_WORK = 600  # steps of one search after that
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
            cutting = {
                "kerf": kerf,
                "trim": trim,
                "spent": 0,
                "steps": 0,
                "most": shared(MOST_STEPS, len(last)),
                "work": shared(MOST_WORK, len(last)),
            }
            laid = laid + [step["laid"] for step in best_plan(tasks, boards_on_hand(section, lines, trim), cutting)]
            tasks = []
    return laid


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
    plain = weighed(plain_plan(tasks, store, cutting), priced) if is_short(best["steps"]) else best
    return plain["steps"] if is_lighter(plain, best) else best["steps"]


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
    """What is offered for any of the sections, each board once."""
    found = []
    for task in tasks:
        for offer in task["offers"]:
            if len([one for one in found if is_same_offer(one, offer)]) == 0:
                found.append(offer)
    return merged_sort(found, is_of_earlier_line)


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


def can_search(cutting):
    """Whether there is time for another way."""
    return cutting["spent"] < cutting["most"]


def next_steps(usual, task, store, cutting, later):
    """The ways to lay a section that are worth trying, while there is time.

    As it comes; buying otherwise; with one of the woods that it used kept back for narrower parts; on one wood alone;
    on bought boards alone.
    """
    steps = [usual]
    if len(later) > 0 and (usual["missing"] > 0 or len(usual["laid"]["shopping"]) > 0):
        for offers in choices_of(task["offers"], False):
            if can_search(cutting) and buys_outside(usual, offers):
                steps.append(lay_section(task, store, offers, cutting, later, FEW_WORK))
    steps = steps + steps_by_swap(usual, task, store, cutting, later, FEW_WORK)
    if len(later) == 0:
        return steps
    for wood in unlike(store):
        if can_search(cutting):
            steps = steps + steps_by_wood(wood, usual, task, store, cutting, later)
    if can_search(cutting) and len(store) > 0 and len(task["offers"]) > 0:
        step = lay_section(task, [], task["offers"], cutting, later, FEW_WORK)
        step["store"] = store + step["store"]
        steps.append(step)
    return steps


def steps_by_wood(wood, usual, task, store, cutting, later):
    """A section with one wood kept back, if the `usual` step used it; or else on that alone, if it may hold all."""
    kept = [one for one in store if one["board"] == wood["board"]]
    others = [one for one in store if one["board"] != wood["board"]]
    if is_used(wood, usual, store):
        step = lay_section(task, others, task["offers"], cutting, later, FEW_WORK)
        step["store"] = kept + step["store"]
        return [step]
    if not holds_all(wood, task, cutting["kerf"]):
        return []
    step = lay_section(task, kept, [], cutting, later, FEW_WORK)
    step["store"] = others + step["store"]
    return [step] if step["missing"] == 0 else []


def unlike(store):
    """The woods of a store, of those of one size only the first; a few of them."""
    found = []
    for wood in store:
        if len(found) < MOST_CHOICES and len([one for one in found if is_alike(one, wood)]) == 0:
            found.append(wood)
    return found


def is_alike(one, other):
    """Whether two woods serve alike."""
    return is_of_size(one, other) and same(one["trim"], other["trim"])


def is_used(wood, step, store):
    """Whether a step took a wood, or one like it, out of the store."""
    before = len([one for one in store if is_alike(one, wood) and one["how"] == wood["how"]])
    after = len([one for one in step["store"] if is_alike(one, wood) and one["how"] == wood["how"]])
    return after < before


def holds_all(wood, task, kerf):
    """Whether a section may fit on one wood, by its length alone."""
    return at_least(room_on([wood], task, kerf), room_wanted(task, kerf))


def room_on(woods, task, kerf):
    """How much of a section's strips some woods give, each strip a kerf longer than it is, as its last part needs none."""
    room = 0
    for wood in woods:
        room = room + strips_of(wood["width"], task["section"]["width"], kerf) * (wood["length"] - wood["trim"] + kerf)
    return room


def room_wanted(task, kerf):
    """How long all of a section's parts are, each with its kerf."""
    wanted = 0
    for length in task["lengths"]:
        wanted = wanted + length + kerf
    return wanted


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


def lay_next(task, offers, store, cutting, later):
    """One section, with these boards to buy, or if it can be from what is left over alone, so that no board is touched."""
    kerf = cutting["kerf"]
    work = FEW_WORK if can_search(cutting) else LEAST_WORK
    left_over = [one for one in store if len(one["how"]) > 0]
    if len(left_over) > 0 and at_least(room_on(left_over, task, kerf), room_wanted(task, kerf)):
        step = lay_section(task, left_over, [], cutting, later, work)
        if step["missing"] == 0:
            step["store"] = [one for one in store if len(one["how"]) == 0] + step["store"]
            return step
    return lay_section(task, store, offers, cutting, later, work)


def plain_plan(tasks, store, cutting):
    """Every section by itself, nothing left over used; the sections share the work of one search."""
    steps = []
    work = cutting["work"] // len(tasks)
    own = {"kerf": cutting["kerf"], "trim": cutting["trim"], "spent": 0, "steps": 0, "most": cutting["most"]}
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


def steps_by_swap(usual, task, store, cutting, later, work):
    """For each size that was bought: all boards but the last of it, and another size for what is then left.

    Strips are laid by what each costs; of the last board that gives several, some may be bought and not used.
    """
    steps = []
    if not gives_several(task["offers"]):
        return steps
    for row in usual["laid"]["shopping"]:
        kept = boards_but_one(usual["laid"]["shopping"], row, task["section"]["name"], cutting["trim"])
        for offer in task["offers"]:
            if can_search(cutting) and not is_of_size(offer, row):
                steps.append(lay_section(task, store + kept, [offer], cutting, later, work))
    return steps


def boards_but_one(rows, but, name, trim):
    """The boards of these rows as wood from the yard, one less of the row `but`; `name` begins theirs."""
    boards = []
    for row in rows:
        price = None if row["cost"] is None else row["cost"] / row["count"]
        for _ in range(int(row["count"]) - (1 if is_of_size(but, row) else 0)):
            boards.append(whole_board("k" + name + "-" + str(len(boards)), row["length"], row["width"], trim, price, False))
    return boards


def choices_of(offers, is_last):
    """What else may be bought from than from all: one line of lumber, or one length of it where what is left is of use."""
    lines = []
    for offer in offers:
        if len(lines) == 0 or lines[-1][0]["line"] != offer["line"]:
            lines.append([])
        lines[-1].append(offer)
    choices = []
    if len(lines) > 1 and (not is_last or gives_several(offers)):
        choices = lines
    if (not is_last or gives_several(offers)) and len(offers) > 1:
        for line in lines:
            if len(line) > 1:
                choices = choices + [[offer] for offer in line]
    return choices[0:MOST_CHOICES]


def buys_outside(step, offers):
    """Whether a step buys a board that is not among these."""
    for row in step["laid"]["shopping"]:
        if len([one for one in offers if is_of_size(one, row)]) == 0:
            return True
    return False


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
