"""What the page of a job shows: its items, order of work, cut list and boards."""

from shopcalc.portable.arithmetic.snap import same
from shopcalc.portable.cards.bench import inner_benches
from shopcalc.portable.cards.card import shown_checks
from shopcalc.portable.cards.form import tape_options
from shopcalc.portable.cards.links import item_address
from shopcalc.portable.cards.naming import input_of
from shopcalc.portable.cards.sentences import unbroken
from shopcalc.portable.jobs.cutlist import solve_job
from shopcalc.portable.jobs.doubts import shown_doubts
from shopcalc.portable.jobs.job import LINE_LETTERS, MOST_NAMED, nth_line
from shopcalc.portable.jobs.jobform import MOST_ITEMS, is_empty_line
from shopcalc.portable.jobs.order import job_shop, nearly_one
from shopcalc.portable.jobs.passing import faces_of, left_to_pass, passing_of, pieces_of
from shopcalc.portable.jobs.ticks import changed_since, spread_of
from shopcalc.portable.jobs.troubles import SIZE_NAMES, shown_troubles
from shopcalc.portable.jobs.woodview import shown_section, shown_wood
from shopcalc.portable.measures.characters import first_letters
from shopcalc.portable.measures.writing import decimal_text

# The fields of a line: its key in the document, its label, what is typed there.
LINE_FIELDS = {
    "parts": [
        ["label", "Part", "text"],
        ["count", "How many", "count"],
        ["length", "Length", "length"],
        ["width", "Width", "length"],
        ["thickness", "Thickness", "length"],
    ],
    "lumber": [
        ["thickness", "Thickness", "length"],
        ["width", "Width", "length"],
        ["on_hand", "On hand", "text"],
        ["to_buy", "To buy", "text"],
    ],
}

BEFORE_THE_FIT = ["mill", "rip", "crosscut", "groove and rabbet", "shoulders", "cheeks"]


def job_view(job, world):
    """All that the page of a job shows, under the page's own head."""
    solved = solve_job(job, world)
    shop = job_shop(job)
    items = [shown_item(each, shop) for each in solved["worked"]]
    stages = shown_stages(solved["runs"], shop, world)
    sections = [shown_section(section, solved["rough"], shop, world) for section in solved["sections"]]
    wood = shown_wood(solved["cutting"], shop, world)
    doubts = shown_doubts(solved["worked"], shop)
    partless = [each["item"]["label"] for each in solved["worked"] if len(each["about"]["parts"]) == 0 and shapes_parts(each["about"], world)]
    return {
        "title": job["title"],
        "notes": job["notes"],
        "items": items,
        "has_items": len(items) > 0,
        "troubles": shown_troubles(solved, job),
        "doubts": doubts,
        "has_doubts": len(doubts) > 0,
        "stages": stages,
        "has_stages": len(stages) > 0,
        "progress": progress_text(solved["runs"]),
        "sections": sections,
        "laid": wood["laid"],
        "bill": wood["bill"],
        "buy": wood["buy"],
        "has_buy": len(wood["buy"]) > 0,
        "rips": wood["rips"],
        "has_rips": len(wood["rips"]) > 0,
        "partless": ", ".join(partless),
        "has_partless": len(partless) > 0,
        "kerf": shown_entry("kerf", job["kerf"], solved["errors"]),
        "trim": shown_entry("trim", job["trim"], solved["errors"]),
        "rough": shown_entry("rough", job["rough"], solved["errors"]),
        "lumber": shown_lines(job["lumber"], "lumber", solved["errors"]),
        "loose": shown_lines(job["parts"], "parts", solved["errors"]),
        "units": "mm" if shop["metric"] else "in",
        "some": "2400" if shop["metric"] else "96",
        "more": "3000" if shop["metric"] else "120",
        "tape": str(shop["division"]),
        "tapes": tape_options(shop),
        "shop_says": "Bare numbers in this job are " + ("mm." if shop["metric"] else "inches."),
    }


def shapes_parts(about, world):
    """Whether a card runs anything that parts pass through before they are put together."""
    for operation in about["operations"]:
        if world["stages"][operation["stage"]] in BEFORE_THE_FIT:
            return True
    return False


def shown_entry(name, text, errors):
    """One length of the job as a field."""
    wrong = name in errors
    return {"name": name, "label": SIZE_NAMES[name], "text": text, "wrong": wrong, "note": errors[name] if wrong else ""}


def shown_lines(lines, name, errors):
    """Lines of parts or lumber that are typed in fields, and an empty one to go on with while there is room."""
    rows = [shown_line(line, at, name, errors) for at, line in enumerate(lines) if not is_empty_line(line)]
    if len(lines) < MOST_ITEMS:
        rows.append(shown_line({}, len(lines), name, errors))
    return rows


def shown_line(line, at, name, errors):
    """One line as its fields."""
    place = nth_line(name, at)
    note = errors[place] if place in errors else ""
    fields = []
    for declared in LINE_FIELDS[name]:
        key = declared[0]
        fields.append(
            {
                "id": "-".join([name, key.replace("_", "-"), str(at)]),
                "key": key,
                "label": declared[1],
                "value": str(line[key]) if key in line else "",
                "is_count": declared[2] == "count",
                "is_length": declared[2] == "length",
                # a fault begins with the name of its field
                "amiss": len(note.split(declared[1] + ": ")) > 1,
            }
        )
    return {
        "set": name,
        "place": str(at),
        "nth": str(at + 1),
        "most": str(LINE_LETTERS[name]),
        "fields": fields,
        "wrong": place in errors,
        "note": note,
    }


def shown_item(each, shop):
    """One item: what it is, how many, where its card is, what is wrong with it."""
    item = each["item"]
    entries = first_entries(each)
    return {
        "id": str(item["id"]),
        "label": item["label"],
        "card": each["about"]["title"],
        "quantity": str(item["quantity"]),
        "address": item_address(each, shop),
        "entries": entries,
        "has_entries": len(entries) > 0,
        "wrong": each["faults"],
        "is_wrong": len(each["faults"]) > 0,
        "cautions": [{"text": check["text"]} for bench in each["found"]["benches"] for check in shown_checks(bench) if check["level"] == "caution"],
    }


def first_entries(each):
    """What tells an item from others of its card: the first lengths that were typed for it, as they were."""
    inputs = each["item"]["inputs"]
    typed = [
        one
        for one in each["about"]["inputs"]
        if one["kind"] == "length" and not one["shop"] and one["name"] in inputs and len(inputs[one["name"]]) > 0
    ]
    return ", ".join([one["label"] + " " + unbroken(first_letters(inputs[one["name"]], MOST_NAMED)) for one in typed[0:2]])


def shown_stages(runs, shop, world):
    """The runs under the stages of the work, those that have any."""
    stages = []
    for place, name in enumerate(world["stages"]):
        rows = [shown_run(run, shop, world) for run in runs if run["operation"]["stage"] == place]
        if len(rows) > 0:
            stages.append({"stage": name, "runs": rows})
    return stages


def shown_run(run, shop, world):
    """One run: its setting, what passes, which face goes where, its tick and its reading."""
    operation = run["operation"]
    stints = run["stints"]
    names = " ".join([stint["name"] for stint in stints])
    pieces = pieces_of(stints)
    left = left_to_pass(stints)
    is_partly = len(left) > 0 and len(left) < len(pieces)
    settings = []
    for setting in operation["settings"]:
        leans = len(setting["lean"]) > 0
        shown = ", ".join([unbroken(mark) for mark in setting["text"].split(", ")])
        settings.append(
            {"label": setting["label"], "text": shown, "leans": leans, "amount": setting["amount"], "is_row": setting["kind"] == "lengths"}
        )
    near = [other for other in run["akin"] if other["nth"] != run["nth"] and nearly_one(run, other)]
    return {
        "place": str(run["nth"]),
        "names": names,
        "label": operation["label"],
        "machine": operation["machine"],
        "settings": settings,
        "has_settings": len(settings) > 0,
        "done_at": stints[0]["done_at"],
        "counts": " ".join([decimal_text(stint["many"], 0, False) for stint in stints]),
        "sizes": " ".join([stint["operation"]["sizes"] for stint in stints]),
        "pieces": pieces,
        "passing": passing_of(stints),
        "faces": faces_of(stints),
        "done": run["done"],
        "partly": is_partly,
        "left": ", ".join([one["text"] for one in left]) if is_partly else "",
        "changed": changed_since(stints, shop, world),
        "spread": spread_of(run, shop, world),
        "has_reading": len(operation["reading"]) > 0,
        "reading_label": operation["reading_label"],
        "reading_kind": reading_kind(stints[0]),
        "reading": run["reading"],
        "reading_note": run["fault"],
        "reading_wrong": len(run["fault"]) > 0,
        "corrections": [{"text": text} for text in operation["corrections"]],
        "warnings": warnings_of(run),
        "near": near_text(near, shop),
        "is_near": len(near) > 0,
    }


def reading_kind(stint):
    """What sort of measurement a run's reading is."""
    declared = input_of(stint["about"], stint["operation"]["reading"])
    return "" if declared is None else declared["kind"]


def warnings_of(run):
    """What the cards of a run say of its reading: that nothing can be so wide, or that it had better be measured again."""
    rows = []
    if len(run["reading"]) == 0:
        return rows
    for stint in run["stints"]:
        # each card came with its own; typed at the run it is that of all
        if stint["read"] is not None and not is_one_reading(stint["read"], run["read"]):
            rows.append({"level": "caution", "text": other_reading(stint["item"]["label"], stint["reading"], run["reading"])})
    for stint in run["stints"]:
        told = checks_about(stint["operation"]["reading"], stint["benches"])
        # what the whole card says goes before what a card inside it says
        if len(told) == 0:
            for bench in stint["benches"]:
                told = told + checks_about(stint["operation"]["reading"], inner_benches(bench))
        for check in told:
            if len([row for row in rows if row["text"] == check["text"]]) == 0:
                rows.append({"level": check["level"], "text": check["text"]})
    return rows


def is_one_reading(one, other):
    """Whether two readings say the same, or what they say cannot be told."""
    return not one["ok"] or not other["ok"] or same(one["value"], other["value"])


def other_reading(label, other, used):
    """That an item came with a reading of its own, which one scrap for all of a run leaves aside."""
    return label + " came with " + other + ". One scrap serves all of this run, and it goes by " + used + ": type what the last scrap measured."


def checks_about(reading, benches):
    """What cards say of a reading."""
    found = []
    for bench in benches:
        found = found + [check for check in shown_checks(bench) if check["change"] == reading]
    return found


def near_text(near, shop):
    """That another run's setting is within reach of this one."""
    if len(near) == 0:
        return ""
    reach = "0.4 mm" if shop["metric"] else "1/64 in"
    return "Within " + reach + " of the run at " + setting_in_full(near[0]) + ": if its parts may differ by so little, one setting serves both."


def setting_in_full(run):
    """A run's settings with what rounding did: 2 9/32 scant by 0.016 is as near to 2 1/4."""
    texts = []
    for setting in run["operation"]["settings"]:
        texts.append(setting["text"] + (" by " + setting["amount"] if len(setting["lean"]) > 0 else ""))
    return ", ".join(texts)


def progress_text(runs):
    """How far the work has come."""
    done = 0
    for run in runs:
        if run["done"]:
            done = done + 1
    return str(done) + " of " + str(len(runs)) + " runs done"
