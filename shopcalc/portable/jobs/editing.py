"""Edits of a job's document, made to it in place: the page makes them inside one transaction of the device's storage.

Each may be made again on what is stored by then, so none takes anything for granted: an item can be gone, a list shorter.
The names of ticks and readings begin with the number of their item, or of their line of parts: `3/groove/groove`.
"""

from shopcalc.portable.jobs.jobform import (
    JOB_IS_FULL,
    MOST_IDENTIFIER,
    MOST_ITEMS,
    MOST_QUANTITY,
    OWN_FROM,
    PASSED,
    empty_job,
    empty_line,
    is_empty_line,
    is_wordless,
)

FIGURES = "0123456789"
NO_BREAK = "\u00a0"
CARD_IS_GONE = "This item was taken out of its job: nothing is kept of what you type here."


def fill_in(job):
    """Write what a document may leave out into it."""
    usual = empty_job()
    for key in usual:
        if key not in job:
            job[key] = usual[key]


def enter(job, entry):
    """Write one entry of the job's page into its document.

    `entry` has the text or the tick as `value` and `checked`, and where it belongs as texts: the part of the document as
    `set`, and in it `key`, `id` of an item, `place` of a line, or of a run's stints their `names`, `counts` and `sizes`, and its `setting`.
    """
    sort = entry["set"]
    if sort == "shop":
        job["shop"][entry["key"]] = entry["value"]
    elif sort in ["ticks", "readings"]:
        enter_at_run(job, entry)
    elif sort == "items":
        enter_in_item(job, entry)
    elif sort in ["parts", "lumber"]:
        enter_in_line(job, entry)
    else:
        job[sort] = entry["value"]


def enter_at_run(job, entry):
    """Tick a run's stints, each with how many pass and how large, or write what was read; what another tab has taken out is neither."""
    for place, name in enumerate(entry["names"].split(" ")):
        if not is_there(job, name):
            continue
        if entry["set"] == "readings":
            job["readings"][name] = entry["value"]
        elif entry["checked"]:
            job["ticks"][name] = PASSED.join([entry["setting"], entry["counts"].split(" ")[place], entry["sizes"].split(" ")[place]])
        else:
            job["ticks"] = without(job["ticks"], [name])


def enter_in_item(job, entry):
    """Name an item, or say how many of it there are; a count that is none leaves it as it was."""
    for item in job["items"]:
        if str(item["id"]) == entry["id"]:
            if entry["key"] != "quantity":
                item[entry["key"]] = entry["value"]
            elif count_typed(entry["value"]) > 0:
                item["quantity"] = count_typed(entry["value"])


def enter_in_line(job, entry):
    """Write into a line of parts or lumber; lines keep their places, so one that is emptied before others stays, and is not shown."""
    sort = entry["set"]
    place = whole_typed(entry["place"])
    if not may_be_line(place):
        return
    lines = job[sort]
    while len(lines) <= place:
        lines.append(empty_line(sort))
    line = lines[place]
    if entry["key"] != "count":
        line[entry["key"]] = entry["value"]
        if is_wordless(line):
            forget_line(job, sort, place)
    elif count_typed(entry["value"]) > 0:
        line["count"] = count_typed(entry["value"])
    while len(lines) > 0 and is_empty_line(lines[len(lines) - 1]):
        lines.pop()


def may_be_line(place):
    """Whether a job has room for a line of parts or lumber at a place."""
    return place < MOST_ITEMS


def forget_line(job, sort, place):
    """What goes with a line that is emptied: its count, and the ticks that the next part in its place would find.

    A count that is typed first waits for its part, and is not forgotten here.
    """
    if sort == "parts":
        job["parts"][place]["count"] = 1
        job["ticks"] = without(job["ticks"], names_of(job["ticks"], str(OWN_FROM + place) + "/"))


def add_item(job, setup, title, inputs):
    """Put a card into a job with its entries. Says what to tell: `said`, or why not as `refused`."""
    if len(job["items"]) >= MOST_ITEMS:
        return {"refused": JOB_IS_FULL}
    alike = [each for each in job["items"] if each["setup"] == setup]
    again = len([each for each in alike if is_alike_in(inputs_of(each), inputs)]) > 0
    item = {"id": free_number(job), "setup": setup, "quantity": 1, "inputs": inputs}
    if len(alike) > 0:
        item["label"] = free_label(job, title, len(alike) + 1)
    job["items"].append(item)
    return {"said": "Added once more, with the same entries, to" if again else "Added to"}


def free_label(job, title, count):
    """The title with the first number, from this count on, that no item has: the order of work tells items by their labels."""
    labels = [item["label"] for item in job["items"] if "label" in item]
    while title + " " + str(count) in labels:
        count = count + 1
    return title + " " + str(count)


def keep_item(job, number, setup, inputs):
    """Keep the entries that were typed on the card of an item; the others are as another tab may have left them.

    Says what to tell: `said` and whether it was `read`, or why not as `refused`.
    """
    item = item_of(job, number, setup)
    if item is None:
        return {"refused": CARD_IS_GONE}
    kept = inputs_of(item)
    for name in inputs:
        kept[name] = inputs[name]
    return {"said": "Saved to", "read": len(names_of(job["readings"], str(number) + "/")) > 0}


def inputs_of(item):
    """The entries of an item, which a document may leave out."""
    if "inputs" not in item:
        item["inputs"] = {}
    return item["inputs"]


def item_of(job, number, setup):
    """The item of this number, if it is of this card still: another may have been given the number; else None."""
    for item in job["items"]:
        if item["id"] == number and item["setup"] == setup:
            return item
    return None


def take_out(job, number):
    """Take an item out with its ticks and readings, or the next of its number would find them; what `put_back` takes, or None."""
    places = [place for place, item in enumerate(job["items"]) if item["id"] == number]
    if len(places) == 0:
        return None
    out = {"item": job["items"][places[0]], "place": places[0]}
    for part in ["readings", "ticks"]:
        own = names_of(job[part], str(number) + "/")
        out[part] = only(job[part], own)
        job[part] = without(job[part], own)
    job["items"] = [item for item in job["items"] if item["id"] != number]
    return out


def put_back(job, taken):
    """Put an item back where it stood, under a free number if its own is taken. Returns its `number`, or why not as `refused`."""
    if len(job["items"]) >= MOST_ITEMS:
        return {"refused": JOB_IS_FULL}
    was = str(taken["item"]["id"])
    is_taken = len([each for each in job["items"] if str(each["id"]) == was]) > 0
    number = free_number(job) if is_taken else taken["item"]["id"]
    item = only(taken["item"], [key for key in taken["item"]])
    item["id"] = number
    for part in ["readings", "ticks"]:
        for name in taken[part]:
            job[part][str(number) + name[len(was) :]] = taken[part][name]
    place = taken["place"]
    job["items"] = job["items"][0:place] + [item] + job["items"][place:]
    return {"number": number}


def free_number(job):
    """The number after the largest, or where that is the last there is, the first that is free."""
    taken = {}
    largest = 0
    for item in job["items"]:
        taken[str(item["id"])] = True
        largest = max(largest, item["id"])
    if largest < MOST_IDENTIFIER:
        return largest + 1
    free = 1
    while str(free) in taken:
        free = free + 1
    return free


def is_there(job, name):
    """Whether the item or the line is still there to which a tick or a reading of this name belongs."""
    number = name.split("/")[0]
    own = [str(OWN_FROM + place) for place, _ in enumerate(job["parts"])]
    return number in own or len([item for item in job["items"] if str(item["id"]) == number]) > 0


def names_of(texts, begin):
    """The names that begin so."""
    return [name for name in texts if name[0 : len(begin)] == begin]


def only(texts, names):
    """The texts of these names."""
    found = {}
    for name in names:
        found[name] = texts[name]
    return found


def without(texts, names):
    """The texts but for those of these names."""
    return only(texts, [name for name in texts if name not in names])


def is_alike_in(one, other):
    """Whether two sets of entries have the same names and texts."""
    for name in one:
        if name not in other or one[name] != other[name]:
            return False
    return len([name for name in one]) == len([name for name in other])


def count_refused(text):
    """What to tell of a count that is none; nothing of one that is, or where nothing is typed."""
    if len(text) == 0 or count_typed(text) > 0:
        return ""
    return "“" + text + "” is no count from 1 to " + str(MOST_QUANTITY) + ": it stays as it was."


def count_typed(text):
    """A count as it is typed, or 0 where that is none."""
    words = [word for word in text.replace(NO_BREAK, " ").split(" ") if len(word) > 0]
    many = whole_typed(words[0]) if len(words) == 1 else 0
    return many if many <= MOST_QUANTITY else 0


def whole_typed(text):
    """A whole number in figures; 0 of anything else."""
    found = 0
    for one in text:
        if one not in FIGURES:
            return 0
        found = found * 10 + FIGURES.find(one)
    return found
