"""What the page of a job shows: its items, order of work, cut list and boards."""

from shopcalc.portable.bench import inner_benches
from shopcalc.portable.card import shown_checks, shown_stops
from shopcalc.portable.cutlist import solve_job
from shopcalc.portable.doubts import shown_doubts
from shopcalc.portable.form import tape_options
from shopcalc.portable.job import LINE_LETTERS, MOST_ITEMS, nth_line
from shopcalc.portable.links import encoded, shop_query, with_parts
from shopcalc.portable.naming import input_of
from shopcalc.portable.order import job_shop, nearly_one
from shopcalc.portable.own import is_empty_line
from shopcalc.portable.sentences import unbroken
from shopcalc.portable.ticks import done_text, pieces_passing, wanted_otherwise
from shopcalc.portable.woodview import section_title, shown_wood
from shopcalc.portable.writing import decimal_text, quoted_length

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
    faults = [faults_of(each) for each in solved["worked"]]
    items = [shown_item(each, faults[at], shop) for at, each in enumerate(solved["worked"])]
    stages = shown_stages(solved["runs"], world)
    sections = [shown_section(section, solved["rough"], shop, world) for section in solved["sections"]]
    wood = shown_wood(solved["cutting"], shop, world)
    doubts = shown_doubts(solved["worked"])
    partless = [each["item"]["label"] for each in solved["worked"] if len(each["about"]["parts"]) == 0 and shapes_parts(each["about"], world)]
    return {
        "title": job["title"],
        "notes": job["notes"],
        "items": items,
        "has_items": len(items) > 0,
        "troubles": shown_troubles(solved["worked"], faults),
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
        "kerf": shown_entry("kerf", "Kerf", job["kerf"], solved["errors"]),
        "trim": shown_entry("trim", "Squared off one end", job["trim"], solved["errors"]),
        "rough": shown_entry("rough", "Left long, each part", job["rough"], solved["errors"]),
        "lumber": shown_lines(job["lumber"], "lumber", solved["errors"]),
        "loose": shown_lines(job["parts"], "parts", solved["errors"]),
        "units": "mm" if shop["metric"] else "in",
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


def shown_entry(name, label, text, errors):
    """One length of the job as a field."""
    wrong = name in errors
    return {"name": name, "label": label, "text": text, "wrong": wrong, "note": errors[name] if wrong else ""}


def shown_lines(lines, name, errors):
    """Lines of parts or lumber that are typed in fields, and an empty one to go on with while there is room."""
    rows = [shown_line(line, at, name, errors) for at, line in enumerate(lines) if not is_empty_line(line)]
    if len(lines) < MOST_ITEMS:
        rows.append(shown_line({}, len(lines), name, errors))
    return rows


def shown_line(line, at, name, errors):
    """One line as its fields."""
    place = nth_line(name, at)
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
            }
        )
    return {
        "set": name,
        "place": str(at),
        "nth": str(at + 1),
        "most": str(LINE_LETTERS[name]),
        "fields": fields,
        "wrong": place in errors,
        "note": errors[place] if place in errors else "",
    }


def shown_item(each, wrong, shop):
    """One item: what it is, how many, where its card is, what is `wrong` with it."""
    item = each["item"]
    given = [one["name"] for one in each["about"]["inputs"] if one["name"] in each["query"]]
    parts = [name + "=" + encoded(each["query"][name]) for name in given] + shop_query(shop)
    return {
        "id": str(item["id"]),
        "label": item["label"],
        "card": each["about"]["title"],
        "quantity": str(item["quantity"]),
        "address": with_parts("/" + item["setup"], parts),
        "wrong": wrong,
        "is_wrong": len(wrong) > 0,
        "cautions": [{"text": check["text"]} for bench in each["found"]["benches"] for check in shown_checks(bench) if check["level"] == "caution"],
    }


def faults_of(each):
    """What is wrong with an item: entries that cannot be read, and what its card stops at."""
    errors = each["found"]["entries"]["errors"]
    wrong = []
    for declared in each["about"]["inputs"]:
        if declared["name"] in errors:
            wrong.append({"label": declared["label"], "note": errors[declared["name"]]})
    for bench in each["found"]["benches"]:
        wrong = wrong + [{"label": "Stop", "note": check["text"]} for check in shown_stops(bench)]
    return wrong


def shown_troubles(worked, faults):
    """Over every list of the job: which items are not in it, or had better not be worked, and why; `faults` as the items stand."""
    rows = []
    for at, each in enumerate(worked):
        if len(faults[at]) > 0:
            why = " ".join([one["label"] + ": " + one["note"] for one in faults[at]])
            left_out = " is left out. " if each["refused"] else ": "
            rows.append({"label": each["item"]["label"], "text": left_out + why})
    return rows


def shown_stages(runs, world):
    """The runs under the stages of the work, those that have any."""
    stages = []
    for place, name in enumerate(world["stages"]):
        rows = [shown_run(run) for run in runs if run["operation"]["stage"] == place]
        if len(rows) > 0:
            stages.append({"stage": name, "runs": rows, "slug": name.replace(" ", "-")})
    return stages


def shown_run(run):
    """One run: its setting, what passes, which face goes where, its tick and its reading."""
    operation = run["operation"]
    stints = run["stints"]
    names = " ".join([stint["name"] for stint in stints])
    done = [stint for stint in stints if stint["done"]]
    left = [stint for stint in stints if not stint["done"]]
    settings = []
    for setting in operation["settings"]:
        leans = len(setting["lean"]) > 0
        shown = ", ".join([unbroken(mark) for mark in setting["text"].split(", ")])
        settings.append({"label": setting["label"], "text": shown, "leans": leans, "amount": setting["amount"]})
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
        "pieces": pieces_of(stints),
        "passing": passing_of(stints),
        "faces": faces_of(stints),
        "done": run["done"],
        "partly": len(done) > 0 and len(left) > 0,
        "left": ", ".join([one["text"] for one in pieces_of(left)]) if len(done) > 0 else "",
        "changed": changed_since(stints),
        "spread": spread_of(run),
        "has_reading": len(operation["reading"]) > 0,
        "reading_label": operation["reading_label"],
        "reading_kind": reading_kind(stints[0]),
        "reading": run["reading"],
        "reading_note": run["fault"],
        "reading_wrong": len(run["fault"]) > 0,
        "corrections": [{"text": text} for text in operation["corrections"]],
        "warnings": warnings_of(run),
        "near": near_text(near),
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
        told = checks_about(stint["operation"]["reading"], stint["benches"])
        # what the whole card says goes before what a card inside it says
        if len(told) == 0:
            for bench in stint["benches"]:
                told = told + checks_about(stint["operation"]["reading"], inner_benches(bench))
        for check in told:
            if len([row for row in rows if row["text"] == check["text"]]) == 0:
                rows.append({"level": check["level"], "text": check["text"]})
    return rows


def checks_about(reading, benches):
    """What cards say of a reading."""
    found = []
    for bench in benches:
        found = found + [check for check in shown_checks(bench) if check["change"] == reading]
    return found


def changed_since(stints):
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
                    + moved["then"]
                    + ", now "
                    + moved["now"]
                    + ". Try what has passed before it is used."
                }
            )
    return rows


def spread_of(run):
    """What single items of a run would want by themselves: within the tape's division, but more than a hair away."""
    rows = []
    for stint in run["stints"]:
        for setting in wanted_otherwise(stint, run):
            rows.append({"text": stint["item"]["label"] + " by itself, " + setting["label"] + ": " + done_text(setting) + "."})
    return rows


def near_text(near):
    """That another run's setting is within reach of this one."""
    if len(near) == 0:
        return ""
    return "Within 1/64 in of the run at " + setting_in_full(near[0]) + ": if its parts may differ by so little, one setting serves both."


def setting_in_full(run):
    """A run's settings with what rounding did: 2 9/32 scant by 0.016 is as near to 2 1/4."""
    texts = []
    for setting in run["operation"]["settings"]:
        texts.append(setting["text"] + (" by " + setting["amount"] if len(setting["lean"]) > 0 else ""))
    return ", ".join(texts)


def pieces_of(stints):
    """What passes at a run: how many of which part, of which item."""
    rows = []
    for stint in stints:
        for part in pieces_passing(stint):
            count = decimal_text(part["count"], 0, False)
            of = "" if part["whole"] else " (" + stint["item"]["label"] + ")"
            rows.append({"text": count + " " + part["label"] + of, "count": count, "label": part["label"], "of": stint["item"]["label"]})
    return rows


def faces_of(stints):
    """Which face goes where at a run; items may differ in it."""
    rows = []
    for stint in stints:
        text = stint["operation"]["face"]
        if len(text) > 0 and len([row for row in rows if row["text"] == text]) == 0:
            rows.append({"text": text})
    return rows


def passing_of(stints):
    """What passes at a run, a line for each item."""
    rows = []
    before = 0
    for stint in stints:
        parts = pieces_passing(stint)
        text = ", ".join([decimal_text(part["count"], 0, False) + " " + part["label"] for part in parts])
        if stint["item"]["id"] == before and not parts[0]["whole"]:
            rows[len(rows) - 1]["text"] = rows[len(rows) - 1]["text"] + ", " + text
        else:
            rows.append({"of": stint["item"]["label"], "named": not parts[0]["whole"], "text": text})
        before = stint["item"]["id"]
    return rows


def progress_text(runs):
    """How far the work has come."""
    done = 0
    for run in runs:
        if run["done"]:
            done = done + 1
    return str(done) + " of " + str(len(runs)) + " runs done"


def shown_section(section, rough, shop, world):
    """The parts of one section for the cut list."""
    rows = []
    for part in section["parts"]:
        left_long = part["length"] if section["pane"] else part["length"] + rough
        rows.append(
            {
                "count": decimal_text(part["count"], 0, False),
                "label": part["label"],
                "of": part["of"],
                "finished": part["texts"]["length"],
                "rough": "" if section["pane"] else quoted_length(left_long, "up", shop, world["units"]),
            }
        )
    return {"section": section_title(section), "pane": section["pane"], "rows": rows}
