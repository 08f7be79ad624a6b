"""Answers a request: the server's and the service worker's one idea of what an address means.

`respond` is a pure function of the world, the path and the query. What it returns names the template to
render (or the data to send) and the HTTP status. A page asks for its parts again as its form changes: first the
`answer`, the settings at once at every key, then the `sheet`, all that is read when the fingers rest.
"""

from shopcalc.portable.arithmetic.snap import nearest_of
from shopcalc.portable.cards.bars import laid_layouts, layout_data, shown_boards
from shopcalc.portable.cards.bench import inner_benches, read_and_set
from shopcalc.portable.cards.card import show_answer, show_sheet, shown_checks, shown_corrections, shown_steps, shown_trial
from shopcalc.portable.cards.cuts import PART_NUMBERS, shown_part, worked_parts
from shopcalc.portable.cards.form import grouped, input_fields, tape_options
from shopcalc.portable.cards.links import encoded, shop_query, with_parts, with_shop
from shopcalc.portable.cards.shop import shop_fields
from shopcalc.portable.cards.work import SHOP_NAMES, read_shop, shop_faults
from shopcalc.portable.jobs.job import joins_jobs, read_job
from shopcalc.portable.jobs.jobdata import cut_list_csv, job_data
from shopcalc.portable.jobs.jobview import job_view
from shopcalc.portable.measures.writing import millimetres

PARTS = ["answer", "sheet", "rest"]
WHAT_IT_IS = "Machine settings for joinery, in the fraction on your tape. Works with no signal."


def respond(world, path, query, part):
    """The answer to a request.

    `path` is the address without its query, `query` the first text of each name,
    `part` is "answer" or "sheet" for a part of the card, or empty for the whole page; "opening" is a page with its answer
    alone, which fetches the "rest" once that is painted. Returns
    `{"status", "template", "view"}` or, for an address that ends in .json, `{"status", "data"}`.
    """
    name = name_at(path)
    if name == "" or name == "index.html":
        return {"status": 200, "template": "list", "view": list_view(world, read_shop(query))}
    if name.endswith(".json"):
        return respond_data(world, name[0 : len(name) - 5], query)
    if name == "job":
        return {
            "status": 200,
            "template": "job",
            "view": page_view("The job", "Order of work, cut list and boards for all that is built together.", world),
        }
    if name == "shop":
        return respond_shop(world, query, part)
    if name in world["setups"]:
        return respond_card(world, name, query, part)
    return {"status": 404, "template": "missing", "view": page_view("No such card", "", world)}


def name_at(path):
    """What an address names: a static host serves a card as a folder."""
    name = path[1:]
    if name.endswith("/index.html"):
        name = name[0 : len(name) - 11]
    if name.endswith("/"):
        name = name[0 : len(name) - 1]
    return name


def respond_document(world, path, document):
    """What is said of a job: its page, its data or its cut list, as a pure function of the document sent along.

    `document` is the job as decoded from JSON, or None where there was no JSON. Returns `{"status", "template", "view"}`,
    `{"status", "data"}`, or `{"status", "text"}` for the cut list as CSV. A document that is refused is a 422 that says where and why.
    """
    got = read_job(document, world)
    if not got["ok"]:
        if path == "/job.json":
            errors = {}
            errors[got["place"]] = got["why"]
            return {"status": 422, "data": {"errors": errors}}
        view = {"place": got["place"], "has_place": len(got["place"]) > 0, "why": got["why"]}
        return {"status": 422, "template": "refused", "view": view}
    if path == "/job.json":
        return {"status": 200, "data": job_data(got["job"], world)}
    if path == "/job.csv":
        return {"status": 200, "text": cut_list_csv(got["job"], world)}
    return {"status": 200, "template": "work", "view": job_view(got["job"], world)}


def page_view(title, job, world):
    """What every page carries."""
    return {"title": title, "description": job, "version": world["version"], "home": "/", "renewed": False, "opening": False}


def list_view(world, shop):
    """The list of setups, by where one stands."""
    view = page_view("shopcalc", WHAT_IT_IS, world)
    view["home"] = with_shop("/", shop)
    view["stands"] = []
    for stand in world["stands"]:
        rows = []
        for slug in world["setups"]:
            about = world["setups"][slug]["about"]
            if about["stand"] == stand:
                own = [one["name"] for one in about["inputs"] if one["shop"]]
                row = {"address": with_shop("/" + slug, shop), "title": about["title"], "job": about["job"]}
                row["icon"] = about["icon"]
                row["own"] = " ".join(own)
                rows.append(row)
        if len(rows) > 0:
            view["stands"].append({"stand": stand, "setups": rows})
    return view


def respond_shop(world, query, part):
    """The page of what belongs to the shop: how each thing was understood. It has no answer and no sheet but that."""
    shop = read_shop(query)
    view = page_view("The shop", "Your tape, blades, blocks and collars, as they measure: every card starts from them.", world)
    view["slug"] = "shop"
    view["fields"] = shop_fields(world, query, shop)
    view["readings"] = []
    set_shop(view, shop)
    view["renewed"] = part == "sheet"
    view["wrong"] = [one for one in view["fields"] if one["wrong"]]
    view["is_wrong"] = part == "sheet" and len(view["wrong"]) > 0
    view["answers"] = []
    view["sheets"] = []
    return {"status": 422 if len(view["wrong"]) > 0 else 200, "template": part if part == "answer" or part == "sheet" else "shop", "view": view}


def set_shop(view, shop):
    """What a form says of the shop."""
    view["tapes"] = tape_options(shop)
    view["metric"] = shop["metric"]
    view["home"] = with_shop("/", shop)
    view["shop"] = "tape and bare numbers in mm" if shop["metric"] else "tape in 1/" + str(shop["division"]) + ", bare numbers are inches"


def respond_card(world, slug, query, part):
    """A setup's page, or a part of its card."""
    shop = read_shop(query)
    worked = read_and_set(world, slug, query, shop)
    for bench in worked["benches"]:
        bench["unbroken"] = True
    fields = []
    # the answer alone is asked for at every key, and shows no field that can be read
    if part != "answer" or len(worked["benches"]) == 0:
        fields = input_fields(world["setups"][slug]["about"], worked["entries"], shop, world)
    view = page_view("", "", world) if part == "answer" else card_view(world, slug, query, part, fields, shop)
    view["wrong"] = [one for one in fields if one["wrong"]]
    view["is_wrong"] = len(view["wrong"]) > 0
    view["answers"] = [show_answer(bench) for bench in worked["benches"]]
    view["sheets"] = [] if part == "answer" or part == "opening" else [show_sheet(bench, "2") for bench in worked["benches"]]
    return {"status": 422 if view["is_wrong"] else 200, "template": part if part in PARTS else "page", "view": view}


def card_view(world, slug, query, part, fields, shop):
    """What a card's page has around its answer: the form, the shop, what of the query nobody knows."""
    about = world["setups"][slug]["about"]
    view = page_view(about["title"], about["job"], world)
    view["slug"] = slug
    view["stand"] = about["stand"]
    view["job"] = about["job"]
    view["fields"] = [one for one in fields if not one["is_reading"]]
    view["groups"] = grouped(view["fields"])
    view["readings"] = [one for one in fields if one["is_reading"]]
    view["has_readings"] = len(view["readings"]) > 0
    set_shop(view, shop)
    own = [one["name"] + "=" + encoded(one["text"]) for one in fields if one["is_shop"] and one["name"] in query and not one["wrong"]]
    view["starting"] = with_parts("/" + slug, own + shop_query(shop))
    view["renewed"] = part == "sheet"
    # a card that neither runs nor gives anything has no place in a job
    view["joins"] = joins_jobs(about)
    view["opening"] = part == "opening"
    view["unknown"] = unknown_names(about, query) + [{"name": name, "shown": name + "=" + query[name]} for name in shop_faults(query)]
    view["has_unknown"] = len(view["unknown"]) > 0
    return view


def unknown_names(about, query):
    """Names in the address that the card does not have."""
    declared = [one["name"] for one in about["inputs"]]
    unknown = [name for name in query if name not in declared and name not in SHOP_NAMES]
    return [{"name": name, "shown": name[1:] if name[0:1] == "~" else name} for name in unknown]


def respond_data(world, slug, query):
    """The same answer as data. A name the setup does not have is an error here: a slip in a script must not pass."""
    if slug not in world["setups"]:
        return {"status": 404, "data": {"errors": {"setup": "There is no card called " + slug + "."}}}
    about = world["setups"][slug]["about"]
    worked = read_and_set(world, slug, query, read_shop(query))
    errors = worked["entries"]["errors"]
    faults = shop_faults(query)
    for name in faults:
        errors[name] = faults[name]
    for unknown in unknown_names(about, query):
        errors[unknown["name"]] = about["slug"] + " has no input of this name."
    if len(errors.keys()) > 0:
        return {"status": 422, "data": {"errors": errors}}
    return {"status": 200, "data": card_data(worked["benches"][0])}


def card_data(bench):
    """A worked card as plain data: lengths in inches, angles in degrees; the cards inside it under `includes`."""
    plain = bench["world"]["numbers"]["plain"]
    about = bench["about"]
    inputs = {}
    for declared in about["inputs"]:
        name = declared["name"]
        if name in bench["known"]:
            chosen = declared["kind"] == "choice"
            value = bench["texts"][name] if chosen else plain_of(bench["known"][name], declared["kind"], plain)
            inputs[name] = {"value": value, "text": bench["texts"][name]}
    results = {}
    for name in about["results"]:
        if name in bench["written"]:
            known_as = about["results"][name]["known_as"]
            results[known_as if len(known_as) > 0 else name] = result_data(name, bench)
    for one in laid_layouts(bench):
        results[one["name"]] = layout_result(one, bench)
    parts = worked_parts(bench)
    if len(parts) > 0:
        results["parts"] = parts_data(parts, bench)
    return {
        "setup": about["slug"],
        "title": about["title"],
        "inputs": inputs,
        "results": results,
        "checks": [{"level": one["level"], "name": one["name"], "text": one["text"]} for one in shown_checks(bench)],
        "steps": [one["text"] for one in shown_steps(bench)],
        "includes": included_data(bench),
        "trial": {
            "text": shown_trial(bench),
            "corrections": [one["text"] for one in shown_corrections(bench)],
        },
    }


def included_data(bench):
    """The cards inside this one as data, by their names."""
    found = {}
    for inner in inner_benches(bench):
        found[inner["about"]["slug"]] = card_data(inner)
    return found


def plain_of(value, kind, plain):
    """A value as JSON has it: a row is a list."""
    if kind == "truth":
        return value
    if kind == "pieces":
        return [{"label": one["label"], "length": plain(one["length"]), "count": plain(one["count"])} for one in value]
    if kind == "stock":
        return [{"length": plain(one["length"]), "price": None if one["price"] is None else plain(one["price"])} for one in value]
    return [plain(each) for each in value] if kind == "lengths" else plain(value)


def parts_data(parts, bench):
    """The parts for the cut list, as a result."""
    plain = bench["world"]["numbers"]["plain"]
    rows = []
    texts = []
    for part in parts:
        row = {"label": part["label"]}
        for name in PART_NUMBERS:
            row[name] = plain(part[name])
        rows.append(row)
        shown = shown_part(part, bench)
        texts.append(shown["count"] + " " + shown["label"] + " " + shown["length"])
    return {"value": rows, "text": ", ".join(texts), "kind": "parts", "decimal": None, "mm": None}


def layout_result(one, bench):
    """A layout as a result: its boards as data, and in words."""
    shown = shown_boards("", one["layout"]["boards"], one["labels"], one["lengths"], one["kerf"], one["trim"], bench["shop"], bench["world"]["units"])
    value = layout_data(one["layout"], one["labels"], one["lengths"], bench["world"]["numbers"])
    text = " ".join([each["caption"] for each in shown])
    return {"value": value, "text": text, "kind": "layout", "decimal": None, "mm": None}


def result_data(name, bench):
    """One result as data; decimal and mm belong to lengths, to a row of them as rows, and are null elsewhere."""
    written = bench["written"][name]
    kind = bench["kinds"][name]
    value = bench["known"][name]
    units = bench["world"]["units"]
    lengths = value if kind == "lengths" else [value] if kind == "length" else []
    return {
        "value": plain_of(value, kind, bench["world"]["numbers"]["plain"]),
        "text": written["text"],
        "kind": kind,
        "decimal": row_or_one([nearest_of(each * 1000) / 1000 for each in lengths], kind),
        "mm": row_or_one([nearest_of(millimetres(each, units) * 10) / 10 for each in lengths], kind),
    }


def row_or_one(found, kind):
    """What was found of a row as a row, of one length by itself, of no length None."""
    if kind == "lengths":
        return found
    return found[0] if len(found) > 0 else None
