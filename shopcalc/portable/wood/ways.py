"""The ways to lay one section of a job's wood that are worth trying.

Which of them is best is not decided here: a way that costs more now may leave what a narrower section needs.
"""

from shopcalc.portable.arithmetic.snap import at_least, same
from shopcalc.portable.wood.wood import gives_several, is_of_size, lay_section, strips_of, whole_board

MOST_CHOICES = 12  # of what to buy that are tried at one section
FEW_WORK = 3000  # steps of one search where what is left over is searched too: many plans are worth more than the best layout of one
LEAST_WORK = 600  # steps of one search after that


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
