"""In which order the runs of a job are made.

The trade's stages come first. In a stage what a card runs one after the other stays together, since a later run may go
from where the one before left the machine: the last pass of a dado from the fence of its first, the boards of a cap by
the tilt that was just proved.
"""

from shopcalc.portable.arithmetic.snap import above, same
from shopcalc.portable.arithmetic.sorting import merged_sort

BY_HAND = "saw in the hand"


def in_sequence(runs):
    """The runs in order: each is followed at once by those behind it on the same cards that wait for no other."""
    ordered = merged_sort(runs, is_earlier_run)
    lines = {}
    for run in ordered:
        run["begun"] = False
        run["lines"] = lines_of(run)
        for name in run["lines"]:
            lines[name] = {"runs": [], "at": 0}
    for run in ordered:
        for name in run["lines"]:
            lines[name]["runs"].append(run)
    found = []
    for run in ordered:
        if not run["begun"]:
            run_on(run, lines, found)
    return found


def lines_of(run):
    """The lines that a run stands in, one for each of its items: what the item's card runs in this stage, square or tilted, one after the other."""
    stage = str(run["operation"]["stage"]) + (" tilted " if is_tilted(run["operation"]) else " square ")
    return [stage + stint["operation"]["of"] + " " + str(stint["item"]["id"]) for stint in run["stints"]]


def run_on(run, lines, found):
    """Take a run, and then whatever stands first in every one of its lines; but what other cards run too waits for its turn."""
    run["begun"] = True
    found.append(run)
    for name in run["lines"]:
        behind = first_of(lines[name])
        if behind is not None and not is_shared(behind["operation"]) and is_first_of_all(behind, lines):
            run_on(behind, lines, found)


def is_shared(operation):
    """Whether an operation is not of its own card alone: ripping, cutting to length, the glue-up."""
    return operation["key"] != operation["of"] + "/" + operation["name"]


def is_first_of_all(run, lines):
    """Whether nothing is to be run before this in any of its lines."""
    for name in run["lines"]:
        if first_of(lines[name])["key"] != run["key"]:
            return False
    return True


def first_of(line):
    """The first run of a line that is not begun, or None."""
    while line["at"] < len(line["runs"]) and line["runs"][line["at"]]["begun"]:
        line["at"] = line["at"] + 1
    return line["runs"][line["at"]] if line["at"] < len(line["runs"]) else None


def is_earlier_run(one, other):
    """The trade's order; in a stage what is square before what is tilted; then the cards' own order.

    Then like by like, the larger setting first, as a fence is moved in one direction.
    """
    mine = one["operation"]
    theirs = other["operation"]
    if mine["stage"] != theirs["stage"]:
        return mine["stage"] < theirs["stage"]
    if is_tilted(mine) != is_tilted(theirs):
        return is_tilted(theirs)
    if one["place"] != other["place"]:
        return one["place"] < other["place"]
    if mine["key"] != theirs["key"]:
        return mine["key"] < theirs["key"]
    for place in range(min(len(mine["settings"]), len(theirs["settings"]))):
        here = mine["settings"][place]
        there = theirs["settings"][place]
        if here["kind"] != "lengths" and there["kind"] != "lengths" and not same(here["value"], there["value"]):
            return above(here["value"], there["value"])
    return one["key"] < other["key"]


def is_tilted(operation):
    """Whether a machine is set to an angle for it; a saw in the hand follows a line."""
    return (
        operation["machine"] != BY_HAND
        and len([setting for setting in operation["settings"] if setting["kind"] == "angle" and not same(setting["value"], 0)]) > 0
    )
