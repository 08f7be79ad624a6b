"""What a tick remembers of a run, and whether that is still how it is set and how many pass.

A tick keeps the settings it was done with, to the thousandth, and behind a bar how many pieces had passed. What no
longer agrees is told and never changed.
"""

from shopcalc.portable.marks import DIGITS
from shopcalc.portable.reading import read_length
from shopcalc.portable.snap import above, size_of
from shopcalc.portable.writing import decimal_text

DONE_BETWEEN = "; "
PASSED = " | "  # between what a tick remembers of the settings and of how many had passed
FEW = 12  # marks that a tick remembers one by one
REACH = 500  # parts of an inch: two thousandths


def mark_done(run, shop, world):
    """Note of a run, and of every stint of it, whether it is done, and what has moved since it was."""
    run["done"] = True
    for stint in run["stints"]:
        stint["moved"] = moved_settings(stint, run, shop, world)
        stint["many"] = how_many(pieces_passing(stint))
        stint["is_short"] = stint["is_ticked"] and is_fewer(stint["passed"], stint["many"])
        stint["done"] = stint["is_ticked"] and len(stint["moved"]) == 0 and not stint["is_short"]
        run["done"] = run["done"] and stint["done"]


def done_text(setting):
    """What a tick remembers of a setting: a length to the thousandth, finer than the tape, since a tenon's fit is.

    So it does of a row; of a long one how many marks there are, the first and the last.
    """
    if setting["kind"] == "length":
        return thousandths(setting["value"]) + " in"
    if setting["kind"] != "lengths":
        return setting["mark"]
    marks = [thousandths(mark) for mark in setting["value"]]
    if len(marks) > FEW:
        return str(len(marks)) + " from " + marks[0] + " to " + marks[len(marks) - 1] + " in"
    return ", ".join(marks) + " in"


def thousandths(length):
    """A length whatever the tape and the unit of the shop."""
    return decimal_text(length, 3, False)


def moved_settings(stint, run, shop, world):
    """The settings of its run that are no longer what they were when the stint was ticked: label, then and now.

    All of a run is cut at the setting of its first stint, whatever within the tape's division the others would ask for.
    """
    if not stint["is_ticked"]:
        return []
    then = stint["ticked"].split(DONE_BETWEEN)
    first = run["stints"][0]
    settings = first["operation"]["settings"]
    if len(settings) == 0:
        return []
    if len(then) != len(settings):
        return [{"label": stint["operation"]["label"], "then": stint["ticked"], "now": first["done_at"]}]
    moved = []
    for place, setting in enumerate(settings):
        now = done_text(setting)
        if then[place] != now and not is_within_reach(then[place], setting, shop, world):
            moved.append({"label": setting["label"], "then": then[place], "now": now})
    return moved


def is_within_reach(then, setting, shop, world):
    """Whether a length, or each of a row, was the same to two thousandths, which is what a hand can repeat."""
    if setting["kind"] == "length":
        return was_within(then, setting["value"], shop, world)
    if setting["kind"] != "lengths" or not then.endswith(" in"):
        return False
    marks = then[0 : len(then) - 3].split(", ")
    if len(marks) != len(setting["value"]):
        return False
    for place, mark in enumerate(marks):
        if not was_within(mark + " in", setting["value"][place], shop, world):
            return False
    return True


def was_within(then, length, shop, world):
    """Whether a length that a tick remembers is within reach of what it is now."""
    got = read_length(then, shop, world["units"], world["numbers"])
    return got["ok"] and is_within(got["value"], length, REACH)


def is_within(a, b, parts):
    """Whether two lengths differ by no more than one in so many parts of an inch."""
    return not above(size_of(a - b) * parts, 1)


def wanted_otherwise(stint, run):
    """The settings that a stint by itself would want otherwise than the run has them, by more than a hand can repeat."""
    found = []
    first = run["stints"][0]["operation"]["settings"]
    for place, setting in enumerate(stint["operation"]["settings"]):
        if setting["kind"] == "length" and not is_within(setting["value"], first[place]["value"], REACH):
            found.append(setting)
    return found


def how_many(pieces):
    """How many pieces there are in all."""
    many = 0
    for piece in pieces:
        many = many + piece["count"]
    return many


def is_fewer(passed, many):
    """Whether fewer pieces had passed than there are now; a tick that does not say how many is good for all."""
    for one in passed:
        if one not in DIGITS:
            return False
    return len(passed) > 0 and above(many, int(passed))


def pieces_passing(stint):
    """Which parts of an item pass at a run, and how many: label and count."""
    quantity = stint["item"]["quantity"]
    if len(stint["operation"]["parts"]) == 0:
        return [{"label": stint["item"]["label"], "count": quantity, "whole": True}]
    return [{"label": part["label"], "count": part["count"] * quantity, "whole": False} for part in stint["operation"]["parts"]]
