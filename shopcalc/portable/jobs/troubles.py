"""What of a job is left out of its lists, or had better not be worked, and why: told over every list."""

from shopcalc.portable.cards.card import shown_stops
from shopcalc.portable.jobs.job import nth_line

LEFT_OUT = " is left out. "
LINE_NAMES = {"parts": "Part", "lumber": "Lumber, line"}
# the lengths of a job, as its fields are called
SIZE_NAMES = {"kerf": "Kerf", "trim": "Squared off one end", "rough": "Left long, each part"}


def shown_troubles(solved, job):
    """A line for each item and each line of parts or lumber with something wrong, and for each length of the job that cannot be read."""
    rows = []
    for each in solved["worked"]:
        if len(each["faults"]) > 0:
            why = " ".join([one["label"] + ": " + one["note"] for one in each["faults"]])
            rows.append({"label": each["item"]["label"], "text": (LEFT_OUT if each["refused"] else ": ") + why})
    for name in LINE_NAMES:
        for at, line in enumerate(job[name]):
            place = nth_line(name, at)
            if place in solved["errors"]:
                label = line["label"] if name == "parts" and len(line["label"]) > 0 else LINE_NAMES[name] + " " + str(at + 1)
                rows.append({"label": label, "text": (LEFT_OUT if name == "parts" else ": ") + solved["errors"][place]})
    for name in SIZE_NAMES:
        if name in solved["errors"]:
            rows.append({"label": SIZE_NAMES[name], "text": ": " + solved["errors"][name]})
    return rows


def unread_entries(each):
    """What is wrong with the entries of an item that cannot be read, by name; a reading that has a run is told there."""
    wrong = {}
    errors = each["found"]["entries"]["errors"]
    at_runs = [operation["reading"] for operation in each["found"]["operations"]]
    for declared in each["about"]["inputs"]:
        name = declared["name"]
        if name in errors:
            wrong[name] = errors[name]
        elif name in each["slips"] and name not in at_runs:
            wrong[name] = each["slips"][name]
    return wrong


def faults_of(each):
    """What is wrong with an item: entries that cannot be read, and what its card stops at."""
    errors = unread_entries(each)
    wrong = []
    for declared in each["about"]["inputs"]:
        if declared["name"] in errors:
            wrong.append({"label": declared["label"], "note": errors[declared["name"]]})
    for bench in each["found"]["benches"]:
        wrong = wrong + [{"label": "Stop", "note": check["text"]} for check in shown_stops(bench)]
    return wrong
