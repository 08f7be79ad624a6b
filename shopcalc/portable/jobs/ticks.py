"""What a tick remembers of a run, and whether that is still how it is set and how many pass.

A tick keeps the settings it was done with, to the thousandth, behind a bar how many pieces had passed, and behind another
how long and wide they were: a rail that is cut anew has not seen the groover. What no longer agrees is told and never changed.
"""

from shopcalc.portable.arithmetic.snap import above, magnitude, nearest_of, same
from shopcalc.portable.jobs.passing import how_many, pieces_passing
from shopcalc.portable.measures.characters import DIGITS
from shopcalc.portable.measures.parsing import read_count, read_length
from shopcalc.portable.measures.writing import decimal_text, digits_text, millimetres

DONE_BETWEEN = "; "
FEW = 12  # marks that a tick remembers one by one
REACH = 500  # parts of an inch: two thousandths
RESIZED = 64  # parts of an inch from which a piece is another
TRY_IT = "Try the pieces already cut before they are used."
CUT_TO_SIZE = ["mill", "rip", "crosscut"]  # runs whose setting is the size of the piece


def mark_done(run, world):
    """Note of a run, and of every stint of it, whether it is done, and what has moved since it was."""
    run["done"] = True
    for stint in run["stints"]:
        stint["moved"] = moved_settings(stint, run, world)
        stint["resized"] = resized_pieces(stint, world) if len(stint["moved"]) == 0 else []
        stint["many"] = how_many(pieces_passing(stint))
        stint["is_short"] = stint["is_ticked"] and is_fewer(stint["passed"], stint["many"])
        stint["done"] = stint["is_ticked"] and len(stint["moved"]) + len(stint["resized"]) == 0 and not stint["is_short"]
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


def note_pieces(operation, wood):
    """Note of an operation which pieces pass, all the `wood` of an item that is run whole, and how large they are."""
    operation["pieces"] = operation["parts"] if len(operation["parts"]) > 0 else wood
    operation["sizes"] = sizes_text(operation["pieces"])


def sizes_text(pieces):
    """What a tick remembers of the pieces, without a space: the length and the width of each."""
    return ",".join([thousandths(piece["length"]) + "x" + thousandths(piece["width"]) for piece in pieces])


def resized_pieces(stint, world):
    """The pieces that are not as large as those that passed: labels, which size, then and now.

    What is not yet cut to size is long and wide enough for less: for a run that comes before that only more counts.
    """
    if not stint["is_ticked"] or len(stint["sized"]) == 0:
        return []
    then = stint["sized"].split(",")
    if len(then) != len(stint["operation"]["pieces"]):
        return pieces_not_among(then, stint)
    found = []
    for place, piece in enumerate(stint["operation"]["pieces"]):
        for nth, was in enumerate(then[place].split("x")):
            size = "length" if nth == 0 else "width"
            before = remembered(was + " in", world)
            if before["count"] == 1 and is_another(before["marks"][0], piece[size], stint["operation"]["key"] in CUT_TO_SIZE):
                add_resized(
                    found, {"labels": [piece["label"]], "size": size, "was": was, "then": before, "now": {"count": 1, "marks": [piece[size]]}}
                )
    return found


def pieces_not_among(then, stint):
    """Of a run through which other kinds of pieces pass than did: those as large as none that passed."""
    found = []
    for piece in stint["operation"]["pieces"]:
        if sizes_text([piece]) not in then:
            none = {"count": 0, "marks": []}
            add_resized(
                found, {"labels": [piece["label"]], "size": "length", "was": "", "then": none, "now": {"count": 1, "marks": [piece["length"]]}}
            )
    return found


def add_resized(found, row):
    """Add a piece that is resized; those of one item that were as large and are as large now share a line."""
    for known in found:
        if known["size"] == row["size"] and known["was"] == row["was"] and same(known["now"]["marks"][0], row["now"]["marks"][0]):
            known["labels"] = known["labels"] + row["labels"]
            return
    found.append(row)


def is_another(was, now, unless_less):
    """Whether a size is another one, or where less does no harm, a larger one."""
    return not is_within(was, now, RESIZED) and (above(now, was) or not unless_less)


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
    """The lengths that are found as a metric shop says them; in inches, or where there are none, what is `usual`."""
    if not shop["metric"] or found["count"] == 0:
        return usual
    return row_text(found, [in_twentieths(millimetres(mark, world["units"])) for mark in found["marks"]]) + " mm"


def in_twentieths(mm):
    """Millimetres to the twentieth: a thousandth of an inch is half of that, and hundredths of a mm would be made up."""
    return digits_text(nearest_of(mm * 20) * 5, 2, False)


def is_within(a, b, parts):
    """Whether two lengths differ by no more than one in so many parts of an inch."""
    return not above(magnitude(a - b) * parts, 1)


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
    """What was cut before a setting moved, or before there was more of it, or before its pieces were others."""
    rows = []
    for stint in stints:
        if stint["is_short"]:
            told = stint["item"]["label"] + ", " + stint["operation"]["label"] + ": "
            rows.append({"text": told + stint["passed"] + " had passed, now there are " + decimal_text(stint["many"], 0, False) + "."})
        for moved in stint["moved"]:
            then = said_marks(remembered(moved["then"], world), moved["then"], shop, world)
            now = said_marks(moved["marks"], moved["now"], shop, world)
            told = stint["item"]["label"] + ", " + moved["label"] + ": cut at " + then + ", now " + now + ". "
            rows.append({"text": told + what_to_do(stint, moved, world)})
        for piece in stint["resized"]:
            told = stint["item"]["label"] + ", " + ", ".join(piece["labels"]) + ": " + said_resized(piece, shop, world)
            rows.append({"text": told + " What is cut new has yet to pass here."})
    return rows


def said_resized(piece, shop, world):
    """How a piece is another than when its run was done."""
    now = said_size(piece["now"], shop, world)
    if piece["then"]["count"] == 0:
        return "none so large had passed when this was done; now it is " + now + " long."
    return "the " + piece["size"] + " was " + said_size(piece["then"], shop, world) + " when this was done, now it is " + now + "."


def said_size(found, shop, world):
    """One length as the shop says it."""
    return said_marks(found, thousandths(found["marks"][0]) + " in", shop, world)


def what_to_do(stint, moved, world):
    """What becomes of pieces whose run is set otherwise: a piece that was cut to its size is too small, or can be cut again."""
    then = remembered(moved["then"], world)
    if stint["operation"]["key"] not in CUT_TO_SIZE or then["count"] != 1 or moved["marks"]["count"] != 1:
        return TRY_IT
    if not is_another(then["marks"][0], moved["marks"]["marks"][0], False):
        return TRY_IT
    return "What was cut is too small: cut it new." if above(moved["marks"]["marks"][0], then["marks"][0]) else "Trim the pieces already cut to that."


def spread_of(run, shop, world):
    """What single items of a run would want by themselves: within the tape's division, but more than a hair away."""
    rows = []
    for stint in run["stints"]:
        for setting in wanted_otherwise(stint, run):
            wanted = said_marks(marks_of(setting), done_text(setting), shop, world)
            rows.append({"text": stint["item"]["label"] + " by itself, " + setting["label"] + ": " + wanted + "."})
    return rows
