"""Parts that belong to no card: lines typed into a job, on its cut list and in its order of work like any other part.

A line that is emptied keeps its place, so its place is its name: `1000002/part/rip` is the rip of the third line.
"""

from shopcalc.portable.arithmetic.snap import above, at_least
from shopcalc.portable.cards.work import read_shop
from shopcalc.portable.jobs.job import nth_line
from shopcalc.portable.jobs.jobform import OWN_FROM, is_wordless
from shopcalc.portable.jobs.operations import length_setting
from shopcalc.portable.jobs.ticks import note_pieces
from shopcalc.portable.measures.characters import DIGITS, SPACES, characters
from shopcalc.portable.measures.listed import is_times
from shopcalc.portable.measures.parsing import read_length
from shopcalc.portable.measures.tokens import BELOW_NOTHING
from shopcalc.portable.measures.writing import quoted_length

OWN_RUNS = [["mill", "thickness"], ["rip", "width"], ["crosscut", "length"]]
OWN_SIZES = ["length", "width", "thickness"]
SIZE_LABELS = {"length": "Length", "width": "Width", "thickness": "Thickness"}


def read_setting(text, zero, job, world, errors, place):
    """One length of the job, which may be `zero` or may not; or nothing and an error."""
    got = read_length(text, read_shop(job["shop"]), world["units"], world["numbers"])
    if got["ok"] and (above(got["value"], 0) or (zero and at_least(got["value"], 0))):
        return got["value"]
    too_little = BELOW_NOTHING if zero else "This cannot be zero or less."
    errors[place] = got["message"] if not got["ok"] else too_little
    return 0


def read_size(line, name, job, world, errors, place):
    """One size of a line; the error of a line names the first of its boxes that cannot be read."""
    wrong = {}
    value = read_setting(line[name], False, job, world, wrong, place)
    if name != "length" and is_named_size(line[name]):
        wrong[place] = "Type one measure, thickness and width apart: what a yard calls 2x6 measures 1 1/2 by 5 1/2 in."
    if place in wrong and place not in errors:
        errors[place] = SIZE_LABELS[name] + ": " + wrong[place]
    return value


def is_named_size(text):
    """Whether a text has a times behind a number, as a yard names its boards: no width and no thickness is a product."""
    before = ""
    for one in characters(text):
        if is_times(one) and len(before) > 0 and before in DIGITS + '"':
            return True
        before = before if one in SPACES else one
    return False


def own_parts(job, world):
    """The lines that are whole as parts of the cut list, and what cannot be read in the others, by place."""
    errors = {}
    parts = []
    shop = read_shop(job["shop"])
    for at, line in enumerate(job["parts"]):
        if is_wordless(line):
            continue
        place = nth_line("parts", at)
        part = {"label": line["label"], "count": line["count"], "pane": False, "of": "", "id": OWN_FROM + at, "texts": {}}
        for name in OWN_SIZES:
            part[name] = read_size(line, name, job, world, errors, place)
            part["texts"][name] = quoted_length(part[name], "nearest", shop, world["units"])
        if place not in errors:
            parts.append(part)
    return {"parts": parts, "errors": errors}


def own_work(parts, shop, world):
    """Parts as items of which each is milled, ripped and cut to length."""
    worked = []
    for part in parts:
        label = part["label"] if len(part["label"]) > 0 else "Part"
        operations = [own_operation(each[0], each[1], part, shop, world) for each in OWN_RUNS]
        worked.append(
            {
                "item": {"id": part["id"], "label": label, "quantity": part["count"], "inputs": {}},
                "about": {"inputs": []},
                "found": {"benches": [], "operations": operations},
            }
        )
    return worked


def own_operation(word, size, part, shop, world):
    """One run of a part, in the words that it shares with the cards and by which it merges with theirs."""
    run = world["runs"][word]
    operation = {
        "key": word,
        "of": "part",
        "name": word,
        "place": OWN_FROM,
        "stage": run["stage"],
        "machine": run["machine"],
        "label": run["label"],
        "settings": [length_setting(size, run["setting"], part[size], shop, world["units"])],
        "face": run["face"],
        "parts": [],
        "reading": "",
        "reading_label": "",
        "corrections": [],
    }
    note_pieces(operation, [part])
    return operation
