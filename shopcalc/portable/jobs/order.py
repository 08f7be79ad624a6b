"""The order of work of a job: what every item asks for, run together where one machine setting serves.

A `stint` is one operation of one item; a run is all stints with the same operation, machine and setting, to the
tape's division. A reading taken at a run flows into every item of it, and so may move the settings of later runs.
"""

from shopcalc.portable.arithmetic.sorting import merged_sort
from shopcalc.portable.cards.bench import inner_benches, is_stopped, read_and_set
from shopcalc.portable.cards.links import encoded
from shopcalc.portable.cards.naming import input_of
from shopcalc.portable.cards.shop import with_shop_defaults
from shopcalc.portable.cards.work import read_entry, read_shop
from shopcalc.portable.jobs.jobform import PASSED
from shopcalc.portable.jobs.operations import wooden_parts, worked_operations
from shopcalc.portable.jobs.own import own_parts, own_work
from shopcalc.portable.jobs.sequence import in_sequence
from shopcalc.portable.jobs.ticks import DONE_BETWEEN, done_text, is_within, mark_done, note_pieces

NEAR = 64  # settings within one part in this of an inch could be one
BETWEEN = "\n"


def job_shop(job):
    """The shop's tape and unit for a job."""
    return read_shop(job["shop"])


def work_job(job, world):
    """Every item worked out with the readings of its runs: `{"worked": [...], "own": {...}, "runs": [...]}`.

    An item that is `refused` has no runs and no parts; `own` are the parts that belong to no item.
    Readings flow one stage at a time, so there are at most as many rounds as stages.
    """
    done = {}
    own = own_parts(job, world)
    others = own_work(own["parts"], job_shop(job), world)
    # what cannot be made as it was typed is not begun; a reading that shows it later leaves its run, where it can be mended
    refused = [item["id"] for item in job["items"] if is_refused(work_item(item, unread(item, world), job, world, done))]
    worked = [work_item(item, {}, job, world, done) for item in job["items"]]
    runs = gather(begun(worked, refused) + others, job, world)
    for _ in world["stages"]:
        given = flow(runs, worked)
        if not given["moved"]:
            break
        worked = [work_item(item, given["readings"][str(item["id"])], job, world, done) for item in job["items"]]
        runs = gather(begun(worked, refused) + others, job, world)
    akin = {}
    for nth, run in enumerate(runs):
        kind = kind_of_run(run["operation"])
        if kind not in akin:
            akin[kind] = []
        akin[kind].append(run)
        run["nth"] = nth
        run["akin"] = akin[kind]
        mark_done(run, world)
    for each in worked:
        each["refused"] = each["item"]["id"] in refused
    return {"worked": worked, "own": own, "runs": runs}


def begun(worked, refused):
    """The items that are worked, without those of these numbers."""
    return [each for each in worked if each["item"]["id"] not in refused]


def unread(item, world):
    """The readings that were typed on an item's card, as if they had not been taken."""
    blank = {}
    for declared in world["setups"][item["setup"]]["about"]["inputs"]:
        if declared["reading"] and declared["name"] in item["inputs"]:
            blank[declared["name"]] = ""
    return blank


def is_refused(each):
    """Whether an item cannot be made: an entry cannot be read, or a stop leaves nothing of its card or of one inside it."""
    benches = each["found"]["benches"]
    if len(benches) == 0 or is_stopped(benches[0]):
        return True
    return len([inner for inner in inner_benches(benches[0]) if is_stopped(inner)]) > 0


def kind_of_run(operation):
    """What runs have in common that one setting could serve: stage, operation and machine."""
    return BETWEEN.join([str(operation["stage"]), operation["key"], operation["machine"]])


def work_item(item, readings, job, world, done):
    """One item worked out. Equal items share their bench: `done` remembers them by card and entries."""
    about = world["setups"][item["setup"]]["about"]
    query = with_shop_defaults(about, item["inputs"], job["shop"])
    for name in readings:
        query[name] = readings[name]
    slips = slips_of(about, query, job, world)
    legible = {}
    for name in query:
        legible[name] = "" if name in slips else query[name]
    key = item["setup"] + "?" + "&".join([given + "=" + encoded(legible[given]) for given in legible])
    if key not in done:
        found = read_and_set(world, item["setup"], legible, job_shop(job))
        found["operations"] = worked_operations(found["benches"][0]) if len(found["benches"]) > 0 else []
        wood = wooden_parts(found["benches"][0]) if len(found["operations"]) > 0 else []
        for operation in found["operations"]:
            note_pieces(operation, wood)
        done[key] = found
    return {"item": item, "about": about, "query": query, "slips": slips, "asked": key, "found": done[key]}


def slips_of(about, query, job, world):
    """What is wrong with readings that cannot be read, by name. An item is worked without them: a scrap half read stops no work."""
    slips = {}
    for declared in about["inputs"]:
        name = declared["name"]
        if declared["reading"] and name in query and len(query[name]) > 0:
            got = read_entry(declared, query[name], job_shop(job), world)
            if not got["ok"]:
                slips[name] = got["message"]
    return slips


def gather(worked, job, world):
    """All stints in runs, in the trade's order."""
    by_key = {}
    runs = []
    places = {}
    for each in worked:
        for operation in each["found"]["operations"]:
            stint = make_stint(each, operation, job)
            place = operation["place"]
            if operation["key"] not in places or place < places[operation["key"]]:
                places[operation["key"]] = place
            key = BETWEEN.join([kind_of_run(operation)] + [setting["mark"] for setting in operation["settings"]])
            if key not in by_key:
                by_key[key] = {"key": key, "stints": []}
                runs.append(by_key[key])
            by_key[key]["stints"].append(stint)
    for run in runs:
        run["stints"] = merged_sort(run["stints"], is_earlier_stint)
        run["operation"] = run["stints"][0]["operation"]
        run["place"] = places[run["operation"]["key"]]
        take_reading(run, job, world)
    return in_sequence(runs)


def make_stint(each, operation, job):
    """One operation of one item: what it was ticked with, what was read for it."""
    item = each["item"]
    name = str(item["id"]) + "/" + operation["of"] + "/" + operation["name"]
    ticked = (job["ticks"][name] if name in job["ticks"] else "").split(PASSED)
    return {
        "name": name,
        "item": item,
        "about": each["about"],
        "benches": each["found"]["benches"],
        "operation": operation,
        "done_at": DONE_BETWEEN.join([done_text(setting) for setting in operation["settings"]]),
        "ticked": ticked[0],
        "passed": ticked[1] if len(ticked) > 1 else "",
        "sized": ticked[2] if len(ticked) > 2 else "",
        "is_ticked": name in job["ticks"],
        "reading": reading_of(name, item, operation, job),
    }


def reading_of(name, item, operation, job):
    """What was typed for a stint: at the run, or on its own card before it came into the job."""
    if name in job["readings"]:
        return job["readings"][name]
    return item["inputs"][operation["reading"]] if operation["reading"] in item["inputs"] else ""


def take_reading(run, job, world):
    """What was read at a run: one scrap serves all of it, so the first reading that can be read; else the first, and its `fault`.

    One that cannot be read is shown as it was typed, and flows nowhere.
    """
    run["reading"] = ""
    run["read"] = None
    for stint in run["stints"]:
        stint["read"] = read_for(stint, job, world)
        if stint["read"] is not None and (run["read"] is None or (stint["read"]["ok"] and not run["read"]["ok"])):
            run["reading"] = stint["reading"]
            run["read"] = stint["read"]
    run["fault"] = "" if run["read"] is None or run["read"]["ok"] else run["read"]["message"]


def read_for(stint, job, world):
    """The reading of a stint, read; None where nothing was typed, or nothing is measured."""
    if len(stint["operation"]["reading"]) == 0 or len(stint["reading"]) == 0:
        return None
    declared = input_of(stint["about"], stint["operation"]["reading"])
    return None if declared is None else read_entry(declared, stint["reading"], job_shop(job), world)


def flow(runs, worked):
    """The readings of every item from the runs it is part of, and whether that changes any item."""
    readings = {}
    moved = False
    for each in worked:
        readings[str(each["item"]["id"])] = {}
    for run in runs:
        text = run["reading"] if len(run["fault"]) == 0 else ""
        for stint in run["stints"]:
            if len(stint["operation"]["reading"]) > 0:
                readings[str(stint["item"]["id"])][stint["operation"]["reading"]] = text
    for each in worked:
        given = readings[str(each["item"]["id"])]
        for name in given:
            if given[name] != (each["query"][name] if name in each["query"] else ""):
                moved = True
    return {"readings": readings, "moved": moved}


def is_earlier_stint(one, other):
    """Stints of a run stand in the order of their items."""
    if one["item"]["id"] == other["item"]["id"]:
        return one["name"] < other["name"]
    return one["item"]["id"] < other["item"]["id"]


def nearly_one(one, other):
    """Whether two runs of one operation at one machine differ by so little that one setting could serve both."""
    mine = one["operation"]
    theirs = other["operation"]
    if len(mine["settings"]) != len(theirs["settings"]):
        return False
    for place, here in enumerate(mine["settings"]):
        there = theirs["settings"][place]
        if here["kind"] != there["kind"]:
            return False
        if here["kind"] == "length":
            if not is_within(here["value"], there["value"], NEAR):
                return False
        elif here["mark"] != there["mark"]:
            return False
    return len(mine["settings"]) > 0
