"""What the page of a job says of its wood: what to buy, what to rip, and each section on its boards."""

from shopcalc.portable.arithmetic.snap import same
from shopcalc.portable.cards.bars import cuts_in_words, length_said, named_size, shown_boards
from shopcalc.portable.cards.sentences import unbroken
from shopcalc.portable.measures.writing import decimal_text, quoted_length
from shopcalc.portable.wood.buying import bill_of, bought_rows
from shopcalc.portable.wood.wood import ripped_from, waste_of, whole_boards


def shown_wood(cutting, shop, world):
    """The wood of a job: the bill in words, the boards to `buy`, those to rip, and the sections."""
    laid = cutting["laid"]
    taken = taken_by(laid)
    buy = []
    for row in bought_rows(laid):
        buy.append({"text": count_text(row) + board_text(row, laid, shop, world["units"]) + yard_text(row, shop, world) + cost_text(row["cost"])})
    return {
        "laid": [shown_laid(each, "laid" + str(at), taken, cutting, shop, world) for at, each in enumerate(laid)],
        "bill": bill_text(laid) if cutting["readable"] else "No boards are laid while kerf, squaring or what is left long cannot be read.",
        "buy": buy,
        "rips": shown_rips(laid, shop, world),
    }


def taken_by(laid):
    """The woods that any section is laid on, by their names."""
    taken = {}
    for each in laid:
        for board in each["layout"]["boards"]:
            taken[board["wood"]["board"]] = True
    return taken


def count_text(row):
    """How many boards of a row."""
    return decimal_text(row["count"], 0, False) + " of "


def section_title(section):
    """A section as the lumber rack names it."""
    if section["pane"]:
        return "Panes " + section["texts"]["width"] + " wide, at most " + section["texts"]["thickness"] + " thick"
    return section["texts"]["thickness"] + " x " + section["texts"]["width"]


def shown_laid(laid, name, taken, cutting, shop, world):
    """One section on boards: the bars, what to buy, what is missing."""
    layout = laid["layout"]
    units = world["units"]
    too_long = cuts_in_words(
        [named_size(laid["labels"][place], length_said(laid["lengths"][place], "up", shop, units)) for place in layout["too_long"]]
    )
    bought = []
    for row in laid["shopping"]:
        size = length_said(row["length"], "nearest", shop, units)
        if not same(row["width"], laid["section"]["width"]):
            size = size + ", " + length_said(row["width"], "nearest", shop, units) + " wide"
        bought.append({"text": count_text(row) + size + cost_text(row["cost"])})
    bars = [bar_from(board, laid["section"], taken, cutting["laid"], shop, units) for board in layout["boards"]]
    return {
        "section": section_title(laid["section"]),
        "none": not laid["has_boards"],
        "boards": shown_boards(name, bars, laid["labels"], laid["lengths"], cutting["kerf"], cutting["trim"], shop, units),
        "too_long": [{"text": text} for text in too_long],
        "is_too_long": laid["has_boards"] and len(too_long) > 0,
        "unlaid": str(laid["unlaid"]),
        "is_unlaid": laid["unlaid"] > 0,
        "bought": bought,
        "is_bought": len(bought) > 0,
        "proven": laid["proven"] and cutting["is_whole"],
    }


def bar_from(board, section, taken, laid, shop, units):
    """A board of a layout as it is drawn, with what it is taken `from`, and the `use` of its rest where that is among what is `taken`."""
    wide = width_said(section["thickness"], board["wood"]["of"], laid, shop, units)
    bar = {"from": from_text(board, section["width"], wide), "use": " for another section" if board["name"] in taken else ""}
    for name in ["length", "owned", "pieces", "rest", "trim"]:
        bar[name] = board[name]
    return bar


def from_text(board, width, wide):
    """What a bar is taken from, behind its length: a wood that was so `wide`, in words."""
    wood = board["wood"]
    if wood["how"] == "offcut":
        return ", from an offcut " + wide + " wide"
    if wood["how"] == "rest":
        return ", a strip of the rest of a " + wide + " board"
    return (" on hand" if wood["on_hand"] else "") + ("" if same(wood["of"], width) else ", a strip of a " + wide + " board")


def shown_rips(laid, shop, world):
    """The boards to rip, then the offcuts, those that are ripped alike as one: their size, and the width of each strip."""
    texts = []
    for board in whole_boards(laid):
        texts = texts + rip_texts(board, " on hand" if board["on_hand"] else "", laid, shop, world)
    for offcut in ripped_from(laid, True):
        texts = texts + rip_texts(offcut, " left over", laid, shop, world)
    rows = []
    for at, text in enumerate(texts):
        if text not in texts[0:at]:
            rows.append({"text": str(len([one for one in texts if one == text])) + " of " + text})
    return rows


def rip_texts(board, which, laid, shop, world):
    """A board with its strips in words, or nothing if it is its own only strip."""
    strips = [width_said(board["thickness"], width, laid, shop, world["units"]) for width in board["strips"]]
    if len(strips) == 1 and same(board["strips"][0], board["width"]):
        return []
    return [board_text(board, laid, shop, world["units"]) + which + ": " + ", ".join(cuts_in_words(strips))]


def width_said(thickness, width, laid, shop, units):
    """A width in the words that the cut list has for a section of it, if there is one."""
    for each in laid:
        section = each["section"]
        if same(section["thickness"], thickness) and same(section["width"], width):
            return unbroken(section["texts"]["width"])
    return length_said(width, "nearest", shop, units)


def board_text(row, laid, shop, units):
    """The size of a board."""
    sides = [length_said(row["thickness"], "nearest", shop, units), width_said(row["thickness"], row["width"], laid, shop, units)]
    return " x ".join(sides + [length_said(row["length"], "nearest", shop, units)])


def yard_text(row, shop, world):
    """What a yard calls a board of this section, if it is a dressed softwood size: a `1 x 4` measures 3/4 by 3 1/2 inches."""
    names = [dressed_name(row[word], world["lumber"][word], world["numbers"]) for word in ["thickness", "width"]]
    return "" if shop["metric"] or "" in names else ", a dressed " + " x ".join(names)


def dressed_name(size, table, numbers):
    """The name of what measures so much."""
    for one in table:
        if same(numbers["ratio"](one[1], one[2]), size):
            return one[0]
    return ""


def cost_text(cost):
    """A cost behind what it is for, if there is one."""
    return "" if cost is None else ", " + decimal_text(cost, 2, False)


def bill_text(laid):
    """How many boards are to buy, what they cost, and how much of all boards becomes no part."""
    rows = []
    for each in laid:
        rows = rows + each["shopping"]
    bill = bill_of(rows)
    said = []
    if bill["count"] > 0:
        said.append("In all " + decimal_text(bill["count"], 0, False) + " to buy" + cost_text(bill["cost"]) + ".")
    if len(whole_boards(laid)) > 0:
        said.append(decimal_text(waste_of(laid), 0, False) + "% of the boards left over.")
    unlaid = 0
    none = 0
    for each in laid:
        unlaid = unlaid + each["unlaid"]
        none = none + len(each["layout"]["too_long"])
    # where there are boards at all, what stands behind them is not all
    if none > 0 and len(said) > 0:
        said.append("No board for " + decimal_text(none, 0, False) + (" piece" if none == 1 else " pieces") + ": see below.")
    if unlaid > 0:
        said.append("Without " + decimal_text(unlaid, 0, False) + " pieces that are on no board: make two jobs of it.")
    return " ".join(said)


def shown_section(section, rough, shop, world):
    """The parts of one section for the cut list; `rough`, what is left long, is None while it cannot be read."""
    rows = []
    for part in section["parts"]:
        known = not section["pane"] and rough is not None
        rows.append(
            {
                "count": decimal_text(part["count"], 0, False),
                "label": part["label"],
                "of": part["of"],
                "finished": part["texts"]["length"],
                "rough": quoted_length(part["length"] + rough, "up", shop, world["units"]) if known else "",
            }
        )
    return {"section": section_title(section), "pane": section["pane"], "rows": rows}
