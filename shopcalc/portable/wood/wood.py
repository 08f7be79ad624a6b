"""The wood of a job: its sections on boards, and what is left of a board for narrower parts.

A section takes boards of its own width and strips ripped from wider ones. Boards are ripped over their full length
before they are crosscut, so of a board there is left a rest beside its strips, as long as the board, and an offcut
behind the last cut of each strip, square at one end already. Both serve the sections after it, which are narrower.

A piece of wood in the store is `{"board", "length", "width", "trim", "how", "of", "on_hand", "price"}`: the board or offcut
it is part of, by a name of its own, and how wide that was (`of`); what squaring takes; and `how` it came: "" a whole
board, "rest", or "offcut".
"""

from shopcalc.portable.arithmetic.snap import above, at_least, floor_of, nearest_of, same, smaller
from shopcalc.portable.wood.boards import lay_within, tick_of

MOST_PIECES = 400  # of one section
MOST_IN_ALL = 1600  # of all sections of a job
CALIPERS = 1000  # wood is of one thickness to a part in this of an inch
ONE_LAYOUT = 500  # steps that a layout takes beside its search
ONE_PIECE = 20


def make_task(section, lines, kerf, rough, first, most):
    """A section to lay: its single pieces and their labels, at most `most`, how many are wanted, the shortest, and the boards to buy for it.

    `first` is the widest of its thickness; `boards` is how many boards on hand there are of it, `has_boards` whether any board
    at all is wide enough.
    """
    task = {"section": section, "first": first, "lengths": [], "labels": [], "wanted": 0, "offers": [], "boards": 0, "has_boards": False}
    task["shortest"] = section["parts"][-1]["length"] + rough
    for part in section["parts"]:
        task["wanted"] = task["wanted"] + part["count"]
        for _ in range(int(smaller(part["count"], most - len(task["lengths"])))):
            task["lengths"].append(part["length"] + rough)
            task["labels"].append(part["label"])
    # lines come narrow before wide, so of boards that cost the same the narrow one is bought
    for line in lines:
        strips = strips_of(line["width"], section["width"], kerf)
        if not is_as_thick(line, section):
            continue
        task["boards"] = task["boards"] + len(line["on_hand"])
        if strips > 0:
            task["has_boards"] = task["has_boards"] or len(line["on_hand"]) + len(line["to_buy"]) > 0
            for board in line["to_buy"]:
                offer = {"length": board["length"], "board_price": board["price"], "width": line["width"], "line": line["place"], "strips": strips}
                # what a strip costs is only part of what its board costs: the cheapest strips need not be the cheapest boards
                offer["price"] = None if board["price"] is None else board["price"] / strips
                task["offers"].append(offer)
    return task


def is_as_thick(one, other):
    """Whether two are of one thickness, as calipers tell."""
    return nearest_of(one["thickness"] * CALIPERS) == nearest_of(other["thickness"] * CALIPERS)


def boards_on_hand(section, lines, trim):
    """The store of a section's thickness before anything is cut, narrow boards first."""
    store = []
    for line in lines:
        if is_as_thick(line, section):
            for at, length in enumerate(line["on_hand"]):
                store.append(whole_board("h" + str(line["place"]) + "-" + str(at), length, line["width"], trim, None, True))
    return store


def whole_board(name, length, width, trim, price, on_hand):
    """A board as it comes from the rack, or from the yard for its price or none."""
    return {"board": name, "length": length, "width": width, "of": width, "trim": trim, "how": "", "price": price, "on_hand": on_hand}


def is_bought(wood):
    """Whether a piece of wood is a whole board from the yard."""
    return len(wood["how"]) == 0 and not wood["on_hand"]


def strips_of(wide, width, kerf):
    """How many strips of a width come out of so wide a board."""
    if above(width, wide):
        return 0
    return int(smaller(floor_of((wide + kerf) / (width + kerf)), MOST_PIECES))


def lay_section(task, store, offers, cutting, later, work):
    """One step: a section on what there is and what is offered, and the store with what is left that is of use `later`.

    `cutting` has the `kerf`, the `trim`, what the search has `spent` and how many `steps` it made: to both this adds.
    """
    width = task["section"]["width"]
    kerf = cutting["kerf"]
    trim = cutting["trim"]
    all_strips = strips_on_hand(task, store, cutting)
    owned = all_strips[0:MOST_PIECES]
    to_buy = least_of_lengths(offers)
    layout = lay_within(task["lengths"], [each["length"] for each in owned], to_buy, kerf, trim, work)
    used = name_strips(layout, owned + bought_strips(layout, to_buy, task["section"]["name"], trim), task["section"]["name"])
    laid = {
        "section": task["section"],
        "lengths": task["lengths"],
        "labels": task["labels"],
        "layout": layout,
        "has_boards": task["has_boards"],
        "shopping": shopping(used, task["section"]["thickness"]),
        "unlaid": task["wanted"] - len(task["lengths"]),
        "proven": False,
    }
    if task["wanted"] == len(task["lengths"]) and len(owned) == len(all_strips):
        laid["proven"] = is_proven(layout, owned, used, len(offers) == len(task["offers"]) and len(store) == task["boards"], task)
    cutting["spent"] = cutting["spent"] + ONE_LAYOUT + ONE_PIECE * len(task["lengths"]) + len(store) + layout["steps"]
    taken = 0
    for wood in used:
        if len(wood["how"]) == 0:
            taken = taken + wood["length"] * wood["width"]
    # a board from the yard that was thought of and not used is not bought
    left = [wood for wood in store if not is_bought(wood) and len([one for one in used if one["board"] == wood["board"]]) == 0]
    cutting["steps"] = cutting["steps"] + 1
    return {
        "nth": cutting["steps"],
        "laid": laid,
        "missing": len(layout["too_long"]),
        "taken": taken,
        "store": left + left_over_of(layout, used, width, kerf, later),
    }


def strips_on_hand(task, store, cutting):
    """The strips that a store gives for a section, narrow wood first; the longest first where they are more than are laid at once."""
    found = []
    for wood in store:
        strips = strips_of(wood["width"], task["section"]["width"], cutting["kerf"])
        if above(task["shortest"], wood["length"] - wood["trim"]):
            continue
        # no more strips than there are pieces, or many narrow parts on wide boards would leave no place for the next board
        for _ in range(int(smaller(strips, len(task["lengths"])))):
            # the layout squares every board, and an offcut is square
            found.append({"length": wood["length"] - wood["trim"] + cutting["trim"], "wood": wood, "strips": strips, "owned": True})
    if len(found) > MOST_PIECES:
        found.sort(key=lambda strip: 0 - tick_of(strip["length"]))
    return found


def gives_several(woods):
    """Whether any of them gives more than one strip."""
    return len([one for one in woods if one["strips"] > 1]) > 0


def is_proven(layout, owned, used, untouched, task):
    """Whether no fewer boards could do: nothing to buy, or the widest section on the `untouched` store with all that is offered.

    What would be left over for a narrower one, had a wider one been laid otherwise, no bound says. Where a board gives
    several strips, or what is left over is used, nothing is claimed.
    """
    if not layout["proven"] or len(layout["too_long"]) > 0 or gives_several(owned) or gives_several(task["offers"]):
        return False
    if len([wood for wood in used if is_bought(wood)]) > 0:
        return task["first"] and untouched
    return len([wood for wood in used if len(wood["how"]) > 0]) == 0 and len(used) > 0


def least_of_lengths(offers):
    """The boards that could be bought, of each length the one that costs least for each strip."""
    found = []
    places = {}
    for offer in offers:
        key = "t" + str(tick_of(offer["length"]))
        if key not in places:
            places[key] = len(found)
            found.append(offer)
        elif is_cheaper(offer, found[places[key]]):
            found[places[key]] = offer
    return found


def is_cheaper(offer, known):
    """Whether a board has a price, and a lower one than another for each strip."""
    return offer["price"] is not None and (known["price"] is None or above(known["price"], offer["price"]))


def shopping(used, thickness):
    """What to buy of the wood that is used: of each size how many boards, and what they cost."""
    rows = []
    for wood in used:
        if is_bought(wood):
            add_boards(rows, {"thickness": thickness, "width": wood["width"], "length": wood["length"], "count": 1, "cost": wood["price"]})
    return rows


def add_boards(rows, row):
    """Add boards to buy to the row of their size; a cost is None where one of them has none."""
    for known in rows:
        if is_same_size(known, row):
            known["count"] = known["count"] + row["count"]
            known["cost"] = None if known["cost"] is None or row["cost"] is None else known["cost"] + row["cost"]
            return
    rows.append(row)


def is_same_size(one, other):
    """Whether two boards are of one thickness, width and length."""
    return same(one["thickness"], other["thickness"]) and is_of_size(one, other)


def is_of_size(one, other):
    """Whether two boards of one thickness are of one length and width."""
    return same(one["length"], other["length"]) and same(one["width"], other["width"])


def bought_strips(layout, to_buy, name, trim):
    """The strips of the boards that a layout buys, each with its board from the yard; `name` is in the names of those."""
    strips = []
    for at, offer in enumerate(to_buy):
        many = len([each for each in layout["boards"] if not each["owned"] and same(each["length"], offer["length"])])
        for nth in range(many):
            board = "b" + name + "-" + str(at) + "-" + str(nth // offer["strips"])
            wood = whole_board(board, offer["length"], offer["width"], trim, offer["board_price"], False)
            strips.append({"length": offer["length"], "wood": wood, "owned": False})
    return strips


def name_strips(layout, strips, name):
    """Give every board of a layout the `wood` it is ripped from, the first of its length among `strips`; returns that wood."""
    used = []
    for nth, each in enumerate(layout["boards"]):
        for place, strip in enumerate(strips):
            if each["owned"] == strip["owned"] and same(strip["length"], each["length"]):
                strips = strips[0:place] + strips[place + 1 : len(strips)]
                rip_strip(layout, each, strip["wood"], name + "-" + str(nth))
                if len([one for one in used if one["board"] == strip["wood"]["board"]]) == 0:
                    used.append(strip["wood"])
                break
    return used


def rip_strip(layout, board, wood, name):
    """Make a board of a layout a strip of `wood`, as long as that is, under a `name` of its own."""
    more = wood["length"] - board["length"]
    layout["used"] = layout["used"] + more
    layout["waste"] = layout["waste"] + more
    board["wood"] = wood
    board["owned"] = not is_bought(wood)
    board["name"] = wood["board"] + "/" + name
    board["length"] = wood["length"]
    board["trim"] = wood["trim"]


def left_over_of(layout, used, width, kerf, later):
    """What is left of boards: beside their strips, and behind the last cut of each strip; only what is of use later."""
    found = []
    for wood in used:
        strips = [each for each in layout["boards"] if each["wood"]["board"] == wood["board"]]
        rest = {"board": wood["board"], "length": wood["length"], "width": wood["width"] - len(strips) * (width + kerf), "trim": wood["trim"]}
        rest["how"] = "rest" if len(wood["how"]) == 0 else wood["how"]
        rest["of"] = wood["of"]
        rest["on_hand"] = wood["on_hand"]
        rest["price"] = None
        found.append(rest)
        for strip in strips:
            offcut = {"board": strip["name"], "length": strip["rest"], "width": width, "trim": 0, "how": "offcut", "of": width}
            offcut["on_hand"] = wood["on_hand"]
            offcut["price"] = None
            found.append(offcut)
    return [one for one in found if is_of_use(one, later, kerf)]


def is_of_use(wood, later, kerf):
    """Whether any of these sections has a part that comes out of it."""
    for task in later:
        if strips_of(wood["width"], task["section"]["width"], kerf) > 0 and at_least(wood["length"] - wood["trim"], task["shortest"]):
            return True
    return False


def whole_boards(laid):
    """The boards that sections are laid on, each once: its size, whether on hand, and the width of every strip ripped from it."""
    return ripped_from(laid, False)


def ripped_from(laid, offcuts):
    """The boards that strips are ripped from, or the `offcuts`."""
    boards = []
    places = {}
    for one in laid:
        for each in one["layout"]["boards"]:
            wood = each["wood"]
            if (wood["how"] == "offcut") == offcuts:
                if wood["board"] not in places:
                    places[wood["board"]] = len(boards)
                    board = {"thickness": one["section"]["thickness"], "width": wood["of"], "length": wood["length"]}
                    board["on_hand"] = wood["on_hand"]
                    board["strips"] = []
                    boards.append(board)
                boards[places[wood["board"]]]["strips"].append(one["section"]["width"])
    return boards


def waste_of(laid):
    """How much of the wood of all boards used, bought or on hand, becomes no part, in percent; 0 where there are none.

    Boards count whole, by their volume, and parts with what they are left long.
    """
    volume = 0
    for board in whole_boards(laid):
        volume = volume + board["thickness"] * board["width"] * board["length"]
    parts = 0
    for one in laid:
        for each in one["layout"]["boards"]:
            for piece in each["pieces"]:
                parts = parts + one["lengths"][piece] * one["section"]["width"] * one["section"]["thickness"]
    return (volume - parts) * 100 / volume if volume > 0 else 0
