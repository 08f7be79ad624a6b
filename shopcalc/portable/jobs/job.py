"""The document of a job: what it may hold, and the reason and the place when it holds something else.

`static/job.schema.json` is its published form. Lengths stay the texts that were typed, so a job means the same
on every device; only versions, identifiers and counts are numbers.
"""

from shopcalc.portable.arithmetic.snap import above, floor_of
from shopcalc.portable.cards.work import is_blank, shop_faults
from shopcalc.portable.jobs.jobform import JOB_FORMAT, JOB_VERSION, MOST_IDENTIFIER, MOST_ITEMS, MOST_QUANTITY, empty_job, empty_line
from shopcalc.portable.measures.characters import first_letters, letters_in

JOB_SIZES = {"kerf": "1/8 in", "trim": "1/2 in", "rough": "1 in"}
METRIC_JOB_SIZES = {"kerf": "3.18 mm", "trim": "12 mm", "rough": "25 mm"}
MOST_NAMED = 40  # letters of a name in a message
NAME_MARKS = "abcdefghijklmnopqrstuvwxyz0123456789_"
KEY_MARKS = "abcdefghijklmnopqrstuvwxyz0123456789_-/"
JOB_KEYS = ["format", "version", "title", "notes", "shop", "items", "parts", "readings", "ticks", "lumber", "kerf", "trim", "rough"]
ITEM_KEYS = ["id", "setup", "label", "quantity", "inputs"]
LOOSE_KEYS = ["label", "count", "length", "width", "thickness"]
LUMBER_KEYS = ["thickness", "width", "on_hand", "to_buy"]
LINE_LETTERS = {"parts": 80, "lumber": 400}  # at most, in a field of a line
KIND_WORDS = {"text": "a text", "number": "a number", "list": "a list", "object": "an object", "truth": "true or false", "nothing": "null"}


def read_job(document, world):
    """A job whose every field may stand, with what was left out filled in; or why it is refused, and where.

    Returns `{"ok": True, "job"}` or `{"ok": False, "place", "why"}`.
    """
    kind_of = world["numbers"]["kind_of"]
    faults = []
    if document is None:
        return refused("", "This is no job: it is cut short, or is no JSON at all.")
    if kind_of(document) != "object":
        return refused("", "This is no job: it should be an object, and it is " + KIND_WORDS[kind_of(document)] + ".")
    if "format" not in document or document["format"] != JOB_FORMAT:
        return refused("format", "This is no job of shopcalc: its format should say “" + JOB_FORMAT + "”.")
    version = whole_of(document, "version", 1, MOST_IDENTIFIER, 0, "", faults, kind_of)
    if len(faults) == 0 and version > JOB_VERSION:
        return refused("version", "This job was made by a newer shopcalc. Take the newer version here first; nothing was changed.")
    check_keys(document, JOB_KEYS, "", faults)
    shop = texts_of(document, "shop", NAME_MARKS, 400, "", faults, kind_of)
    usual = METRIC_JOB_SIZES if "units" in shop and shop["units"] == "mm" else JOB_SIZES
    job = empty_job()
    job["title"] = text_of(document, "title", job["title"], 120, "", faults, kind_of)
    job["notes"] = text_of(document, "notes", job["notes"], 4000, "", faults, kind_of)
    job["kerf"] = text_of(document, "kerf", shop["kerf"] if "kerf" in shop else usual["kerf"], 60, "", faults, kind_of)
    job["trim"] = text_of(document, "trim", usual["trim"], 60, "", faults, kind_of)
    job["rough"] = text_of(document, "rough", usual["rough"], 60, "", faults, kind_of)
    job["shop"] = shop
    job["readings"] = texts_of(document, "readings", KEY_MARKS, 400, "", faults, kind_of)
    job["ticks"] = texts_of(document, "ticks", KEY_MARKS, 2000, "", faults, kind_of)
    for place, item in enumerate(rows_of(document, "items", MOST_ITEMS, faults, kind_of)):
        job["items"].append(read_item(item, nth_line("items", place), faults, world))
    for place, part in enumerate(rows_of(document, "parts", MOST_ITEMS, faults, kind_of)):
        job["parts"].append(read_loose(part, nth_line("parts", place), faults, kind_of))
    for place, line in enumerate(rows_of(document, "lumber", MOST_ITEMS, faults, kind_of)):
        job["lumber"].append(read_lumber(line, nth_line("lumber", place), faults, kind_of))
    check_identifiers(job["items"], faults)
    wrong = shop_faults(job["shop"])
    for name in wrong:
        fault(faults, inside("shop", name), wrong[name])
    if len(faults) > 0:
        return refused(faults[0]["place"], faults[0]["why"])
    return {"ok": True, "job": job}


def refused(place, why):
    """A document that is not taken."""
    return {"ok": False, "place": place, "why": why}


def nth_line(name, place):
    """A line of a list, as one counts."""
    return name + " " + str(place + 1)


def joins_jobs(about):
    """Whether a card has anything for a job: something that is run, or parts."""
    return len(about["operations"]) + len(about["parts"]) + len(about["includes"]) > 0


def inside(place, key):
    """A field of a line."""
    return key if len(place) == 0 else place + ", " + key


def fault(faults, place, why):
    """Note why a field is refused."""
    faults.append({"place": place, "why": why})


def check_keys(given, known, place, faults):
    """A field that nobody knows is refused: it may be a slip, and would be lost."""
    for key in given:
        if key not in known:
            fault(faults, place, "There is no field “" + first_letters(key, MOST_NAMED) + "” here.")


def field_of(given, key, wanted, place, faults, kind_of):
    """Whether a field is there and of the kind wanted; one of another kind is a fault."""
    if key not in given:
        return False
    kind = kind_of(given[key])
    if kind == wanted:
        return True
    fault(faults, inside(place, key), "This should be " + KIND_WORDS[wanted] + ", and it is " + KIND_WORDS[kind] + ".")
    return False


def text_of(given, key, usual, most, place, faults, kind_of):
    """A text field, or what is usual."""
    if not field_of(given, key, "text", place, faults, kind_of):
        return usual
    if letters_in(given[key]) > most:
        fault(faults, inside(place, key), "This is longer than " + str(most) + " letters.")
    return given[key]


def whole_of(given, key, least, most, usual, place, faults, kind_of):
    """A whole number between two others."""
    if not field_of(given, key, "number", place, faults, kind_of):
        if key not in given and usual == 0:
            fault(faults, inside(place, key), "This is missing.")
        return usual
    value = given[key]
    if above(least, value) or above(value, most) or value != floor_of(value):
        fault(faults, inside(place, key), "This should be a whole number from " + str(least) + " to " + str(most) + ".")
        return usual
    return int(floor_of(value))


def is_key(key, marks):
    """Whether a key is made of the marks allowed, and is none that the language itself uses."""
    if len(key) == 0 or len(key) > 200 or key == "constructor" or key[0] in "_-/":
        return False
    for one in key:
        if one not in marks:
            return False
    return True


def texts_of(given, key, marks, most, place, faults, kind_of):
    """An object of texts by name."""
    found = {}
    if not field_of(given, key, "object", place, faults, kind_of):
        return found
    for name in given[key]:
        where = inside(inside(place, key), first_letters(name, MOST_NAMED))
        if not is_key(name, marks):
            fault(faults, where, "This cannot be a name.")
        elif kind_of(given[key][name]) != "text":
            fault(faults, where, "This should be a text, and it is " + KIND_WORDS[kind_of(given[key][name])] + ".")
        elif letters_in(given[key][name]) > most:
            fault(faults, where, "This is longer than " + str(most) + " letters.")
        else:
            found[name] = given[key][name]
    return found


def rows_of(given, key, most, faults, kind_of):
    """A list that is not too long."""
    if not field_of(given, key, "list", "", faults, kind_of):
        return []
    if len(given[key]) > most:
        fault(faults, key, "There are more than " + str(most) + " lines.")
        return []
    return given[key]


def is_object(line, place, faults, kind_of):
    """Whether a line is an object."""
    if kind_of(line) == "object":
        return True
    fault(faults, place, "This should be an object, and it is " + KIND_WORDS[kind_of(line)] + ".")
    return False


def read_item(given, place, faults, world):
    """One item: a card with its entries, how many of it, and what it is called."""
    kind_of = world["numbers"]["kind_of"]
    item = {"id": 0, "setup": "", "label": "", "quantity": 1, "inputs": {}}
    if not is_object(given, place, faults, kind_of):
        return item
    check_keys(given, ITEM_KEYS, place, faults)
    item["id"] = whole_of(given, "id", 1, MOST_IDENTIFIER, 0, place, faults, kind_of)
    item["setup"] = text_of(given, "setup", "", 60, place, faults, kind_of)
    item["label"] = text_of(given, "label", "", 80, place, faults, kind_of)
    item["quantity"] = whole_of(given, "quantity", 1, MOST_QUANTITY, 1, place, faults, kind_of)
    item["inputs"] = texts_of(given, "inputs", NAME_MARKS, 400, place, faults, kind_of)
    if not is_key(item["setup"], KEY_MARKS) or item["setup"] not in world["setups"]:
        fault(faults, inside(place, "setup"), "There is no card called “" + first_letters(item["setup"], MOST_NAMED) + "”.")
        return item
    about = world["setups"][item["setup"]]["about"]
    if not joins_jobs(about):
        fault(faults, inside(place, "setup"), "This card runs nothing and gives no part: it has no place in a job.")
    declared = [one["name"] for one in about["inputs"]]
    for name in item["inputs"]:
        if name not in declared:
            fault(faults, inside(place, "inputs"), "The card " + about["slug"] + " has no input “" + name + "”.")
    if is_blank(item["label"]):
        item["label"] = about["title"]
    return item


def read_loose(given, place, faults, kind_of):
    """A part that belongs to no card, as it was typed."""
    part = empty_line("parts")
    if not is_object(given, place, faults, kind_of):
        return part
    check_keys(given, LOOSE_KEYS, place, faults)
    for key in LOOSE_KEYS:
        if key == "count":
            part[key] = whole_of(given, key, 1, MOST_QUANTITY, 1, place, faults, kind_of)
        else:
            part[key] = text_of(given, key, "", LINE_LETTERS["parts"], place, faults, kind_of)
    return part


def read_lumber(given, place, faults, kind_of):
    """Boards of one section: on hand and to buy, as they were typed."""
    line = empty_line("lumber")
    if not is_object(given, place, faults, kind_of):
        return line
    check_keys(given, LUMBER_KEYS, place, faults)
    for key in LUMBER_KEYS:
        line[key] = text_of(given, key, "", LINE_LETTERS["lumber"], place, faults, kind_of)
    return line


def check_identifiers(items, faults):
    """Two items with one identifier would share their ticks and readings."""
    seen = {}
    for place, item in enumerate(items):
        key = str(item["id"])
        if key in seen:
            fault(faults, inside(nth_line("items", place), "id"), "Another item has this identifier too.")
        seen[key] = True
