"""What a tick remembers of a run, and whether that is still how it is set and how many pass.

A tick keeps the settings it was done with, to the thousandth, and behind a bar how many pieces had passed. What no
longer agrees is told and never changed.
"""

from shopcalc.portable.marks import DIGITS
from shopcalc.portable.passing import how_many, pieces_passing
from shopcalc.portable.reading import read_count, read_length
from shopcalc.portable.snap import above, size_of
from shopcalc.portable.writing import decimal_text, millimetres

DONE_BETWEEN = "; "
FEW = 12  # marks that a tick remembers one by one
REACH = 500  # parts of an inch: two thousandths


def mark_done(run, world):
    """Note of a run, and of every stint of it, whether it is done, and what has moved since it was."""
    run["done"] = True
    for stint in run["stints"]:
        stint["moved"] = moved_settings(stint, run, world)
        stint["many"] = how_many(pieces_passing(stint))
        stint["is_short"] = stint["is_ticked"] and is_fewer(stint["passed"], stint["many"])
        stint["done"] = stint["is_ticked"] and len(stint["moved"]) == 0 and not stint["is_short"]
        run["done"] = run["done"] and stint["done"]


def done_text(setting):
    """What a tick remembers of a setting: a length to the thousandth, finer than the tape, since a tenon's fit is.

    So it does of a row; of a long one how many marks there are, the first and the last.
    """
    found = marks_of(setting)
    if found["count"] == 0:
        return setting["mark"]
    return row_text(found, [thousandths(mark) for mark in found["marks"]]) + " in"


def marks_of(setting):
    """The lengths of a setting and how many there are, of a long row the first and the last only; none of what is no length."""
    if setting["kind"] == "length":
        return {"count": 1, "marks": [setting["value"]]}
    if setting["kind"] != "lengths" or len(setting["value"]) == 0:
        return {"count": 0, "marks": []}
    marks = setting["value"]
    return {"count": len(marks), "marks": [marks[0], marks[len(marks) - 1]] if len(marks) > FEW else marks}


def row_text(found, texts):
    """Marks as written texts; of a long row how many, from where to where."""
    if found["count"] > len(texts):
        return str(found["count"]) + " from " + texts[0] + " to " + texts[1]
    return ", ".join(texts)


def thousandths(length):
    """A length whatever the tape and the unit of the shop."""
    return decimal_text(length, 3, False)


def moved_settings(stint, run, world):
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
        return [{"label": stint["operation"]["label"], "then": stint["ticked"], "now": first["done_at"], "marks": {"count": 0, "marks": []}}]
    moved = []
    for place, setting in enumerate(settings):
        now = done_text(setting)
        if then[place] != now and not is_within_reach(then[place], setting, world):
            moved.append({"label": setting["label"], "then": then[place], "now": now, "marks": marks_of(setting)})
    return moved


def is_within_reach(then, setting, world):
    """Whether a length, or each of a row, was the same to two thousandths, which is what a hand can repeat."""
    was = remembered(then, world)
    now = marks_of(setting)
    if was["count"] != now["count"] or was["count"] == 0:
        return False
    for place, mark in enumerate(was["marks"]):
        if not is_within(mark, now["marks"][place], REACH):
            return False
    return True


def remembered(text, world):
    """The lengths that a tick remembers, and how many they were: of a long row only two. None where it says none."""
    none = {"count": 0, "marks": []}
    if not text.endswith(" in"):
        return none
    body = text[0 : len(text) - 3]
    sides = body.split(" from ")
    texts = sides[len(sides) - 1].split(" to " if len(sides) == 2 else ", ")
    marks = []
    for mark in texts:
        got = read_length(mark, {"metric": False}, world["units"], world["numbers"])
        if not got["ok"]:
            return none
        marks.append(got["value"])
    if len(sides) == 1:
        return {"count": len(marks), "marks": marks}
    many = read_count(sides[0], world["units"], world["numbers"])
    return {"count": int(many["value"]), "marks": marks} if many["ok"] and len(marks) == 2 else none


def said_marks(found, usual, shop, world):
    """The lengths that are found as a metric shop says them, to the hundredth; in inches, or where there are none, what is `usual`."""
    if not shop["metric"] or found["count"] == 0:
        return usual
    return row_text(found, [decimal_text(millimetres(mark, world["units"]), 2, False) for mark in found["marks"]]) + " mm"


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


def is_fewer(passed, many):
    """Whether fewer pieces had passed than there are now; a tick that does not say how many is good for all."""
    for one in passed:
        if one not in DIGITS:
            return False
    return len(passed) > 0 and above(many, int(passed))


def changed_since(stints, shop, world):
    """What was cut before a setting moved, or before there was more of it."""
    rows = []
    for stint in stints:
        if stint["is_short"]:
            told = stint["item"]["label"] + ", " + stint["operation"]["label"] + ": "
            rows.append({"text": told + stint["passed"] + " had passed, now there are " + decimal_text(stint["many"], 0, False) + "."})
        for moved in stint["moved"]:
            rows.append(
                {
                    "text": stint["item"]["label"]
                    + ", "
                    + moved["label"]
                    + ": cut at "
                    + said_marks(remembered(moved["then"], world), moved["then"], shop, world)
                    + ", now "
                    + said_marks(moved["marks"], moved["now"], shop, world)
                    + ". Try what has passed before it is used."
                }
            )
    return rows


def spread_of(run, shop, world):
    """What single items of a run would want by themselves: within the tape's division, but more than a hair away."""
    rows = []
    for stint in run["stints"]:
        for setting in wanted_otherwise(stint, run):
            wanted = said_marks(marks_of(setting), done_text(setting), shop, world)
            rows.append({"text": stint["item"]["label"] + " by itself, " + setting["label"] + ": " + wanted + "."})
    return rows
