"""The cut list of a job by section, a thickness and a width, and the boards that are on hand and to buy."""

from shopcalc.portable.arithmetic.snap import above, nearest_of, same, smaller
from shopcalc.portable.arithmetic.sorting import merged_sort
from shopcalc.portable.cards.card import shown_stops
from shopcalc.portable.cards.cuts import shown_part, worked_parts
from shopcalc.portable.jobs.job import nth_line
from shopcalc.portable.jobs.jobform import is_wordless
from shopcalc.portable.jobs.order import job_shop, work_job
from shopcalc.portable.jobs.own import read_setting, read_size
from shopcalc.portable.jobs.troubles import faults_of, unread_entries
from shopcalc.portable.measures.listed import read_boards, read_stock
from shopcalc.portable.measures.writing import decimal_size, decimal_text
from shopcalc.portable.wood.buying import lay_wood
from shopcalc.portable.wood.layout import each_part


def solve_job(job, world):
    """A job worked through: what `solve_cuts` says, and its wood on boards."""
    solved = solve_cuts(job, world)
    solved["cutting"] = lay_sections(solved, job, world)
    return solved


def solve_cuts(job, world):
    """A job as far as its cut list: items, runs, sections with their parts, and what could not be read, by place.

    `rough` is what each part is left long, or None while that cannot be read.
    """
    errors = {}
    solved = work_job(job, world)
    for each in solved["worked"]:
        each["faults"] = faults_of(each)
        found = unread_entries(each)
        for name in found:
            place = "item " + str(each["item"]["id"]) + ", " + name
            errors[place] = found[name]
        for bench in each["found"]["benches"] if each["refused"] else []:
            errors["item " + str(each["item"]["id"])] = "Stop: " + " ".join([check["text"] for check in shown_stops(bench)])
    for run in solved["runs"]:
        told = []
        for stint in run["stints"]:
            # typed at the run it is that of all, and told once
            if stint["read"] is not None and not stint["read"]["ok"] and stint["reading"] not in told:
                told.append(stint["reading"])
                errors["readings, " + stint["name"]] = stint["read"]["message"]
    for place in solved["own"]["errors"]:
        errors[place] = solved["own"]["errors"][place]
    solved["sections"] = by_section(item_parts(solved["worked"]) + solved["own"]["parts"])
    tell_apart(solved["sections"], job_shop(job), world["units"])
    rough = read_setting(job["rough"], True, job, world, errors, "rough")
    solved["rough"] = None if "rough" in errors else rough
    solved["errors"] = errors
    return solved


def item_parts(worked):
    """Every part of every item: label, how many, finished length, width, thickness, which item it is of, whether a pane."""
    parts = []
    for each in worked:
        for bench in [] if each["refused"] else each["found"]["benches"]:
            for part in worked_parts(bench):
                texts = shown_part(part, bench)
                parts.append(
                    {
                        "label": part["label"],
                        "count": nearest_of(part["count"]) * each["item"]["quantity"],
                        "length": part["length"],
                        "width": part["width"],
                        "thickness": part["thickness"],
                        "pane": part["pane"],
                        "texts": texts,
                        "of": each["item"]["label"],
                        "id": each["item"]["id"],
                    }
                )
    return parts


def section_name(part):
    """What is the same for parts of one section: to the thousandth, as calipers tell."""
    kind = "pane" if part["pane"] else "wood"
    return kind + " " + decimal_text(part["thickness"], 3, True) + " x " + decimal_text(part["width"], 3, True)


def by_section(parts):
    """Parts of one section together, the widest first, and the longest part first in each."""
    named = {}
    sections = []
    for part in parts:
        name = section_name(part)
        if name not in named:
            named[name] = {
                "name": name,
                "thickness": part["thickness"],
                "width": part["width"],
                "pane": part["pane"],
                "texts": part["texts"],
                "parts": [],
            }
            sections.append(named[name])
        named[name]["parts"].append(part)
        # of widths that calipers take for one the least: a board of it is wide enough
        named[name]["width"] = smaller(named[name]["width"], part["width"])
    for section in sections:
        section["parts"] = merged_sort(section["parts"], is_earlier_part)
    return merged_sort(sections, is_earlier_section)


def tell_apart(sections, shop, units):
    """Write sections that a tape does not tell apart in decimals: two of one title would be ripped to one width."""
    titles = [section["texts"]["thickness"] + " x " + section["texts"]["width"] for section in sections]
    for at, section in enumerate(sections):
        if len([title for title in titles if title == titles[at]]) > 1 and not section["pane"]:
            exact = {}
            for name in ["thickness", "width"]:
                exact[name] = decimal_size(section[name], shop, units) + (" mm" if shop["metric"] else " in")
            section["texts"] = exact


def is_earlier_part(one, other):
    """The longest first; parts of one length in the order of their items."""
    if not same(one["length"], other["length"]):
        return above(one["length"], other["length"])
    if one["id"] != other["id"]:
        return one["id"] < other["id"]
    return one["label"] < other["label"]


def is_earlier_section(one, other):
    """Wood before panes, the thick before the thin, the wide before the narrow."""
    if one["pane"] != other["pane"]:
        return other["pane"]
    if not same(one["thickness"], other["thickness"]):
        return above(one["thickness"], other["thickness"])
    if not same(one["width"], other["width"]):
        return above(one["width"], other["width"])
    return one["name"] < other["name"]


def read_lumber_lines(job, world, errors):
    """The boards on hand and to buy, read; a line that cannot be read is an error and left out."""
    shop = job_shop(job)
    lines = []
    for at, typed in enumerate(job["lumber"]):
        if is_wordless(typed):
            continue
        place = nth_line("lumber", at)
        line = {"place": at, "on_hand": [], "to_buy": []}
        for name in ["thickness", "width"]:
            line[name] = read_size(typed, name, job, world, errors, place)
        # a slip in one box leaves what the other says
        sized = place not in errors
        if len(typed["on_hand"]) > 0:
            got = read_boards(typed["on_hand"], 200, shop, world["units"], world["numbers"])
            if got["ok"]:
                line["on_hand"] = each_part(got["value"], "length")
            else:
                add_fault(errors, place, "On hand: " + got["message"])
        if len(typed["to_buy"]) > 0:
            got = read_stock(typed["to_buy"], 50, shop, world["units"], world["numbers"])
            if got["ok"]:
                line["to_buy"] = got["value"]
            else:
                add_fault(errors, place, "To buy: " + got["message"])
        if sized:
            lines.append(line)
    return merged_sort(lines, is_narrower)


def add_fault(errors, place, message):
    """Note a fault behind those that a line has already."""
    errors[place] = (errors[place] + " " if place in errors else "") + message


def is_narrower(one, other):
    """Whether a line of lumber is narrower than another."""
    return above(other["width"], one["width"])


def lay_sections(solved, job, world):
    """The wood of every section on the job's boards, with the kerf and what squaring one end takes; adds what cannot be read to the errors.

    While one of those, or what parts are left long, cannot be read nothing is laid: it would be a bill for other cuts. While an
    item, a part or a board is left out it `is_whole` no more: nobody knows what more, or what less, is to buy.
    """
    errors = solved["errors"]
    rough = solved["rough"]
    kerf = read_setting(job["kerf"], True, job, world, errors, "kerf")
    trim = read_setting(job["trim"], True, job, world, errors, "trim")
    unread = {}
    lines = read_lumber_lines(job, world, unread)
    for place in unread:
        errors[place] = unread[place]
    readable = "kerf" not in errors and "trim" not in errors and "rough" not in errors
    wood = [each for each in solved["sections"] if readable and not each["pane"]]
    laid = kept_laid(wood, lines, [kerf, trim, 0 if rough is None else rough], world)
    left_out = [each for each in solved["worked"] if each["refused"]] + [place for place in solved["own"]["errors"]] + [place for place in unread]
    return {"laid": laid, "is_whole": len(left_out) == 0, "kerf": kerf, "trim": trim, "readable": readable}


def kept_laid(wood, lines, cutting, world):
    """What `lay_wood` gives, kept for the next time: a tick or a reading seldom changes the boards, and a large job takes long to lay.

    The world keeps the last one only, with all that it depends on, put in its place at once: a server answers in many threads.
    """
    said = [exact_text(each) for each in cutting]
    for section in wood:
        said.append("|" + section["name"] + section["texts"]["thickness"] + section["texts"]["width"])
        said = said + [exact_text(section["thickness"]), exact_text(section["width"])]
        for part in section["parts"]:
            said.append(exact_text(part["count"]) + "x" + exact_text(part["length"]) + ":" + str(len(part["label"])) + part["label"])
    for line in lines:
        said.append("|" + str(line["place"]) + ":" + exact_text(line["thickness"]) + "x" + exact_text(line["width"]))
        said = said + [exact_text(length) for length in line["on_hand"]]
        for board in line["to_buy"]:
            said.append("@" + exact_text(board["length"]) + "," + ("" if board["price"] is None else exact_text(board["price"])))
    key = "; ".join(said)
    kept = world["laid"]
    if kept["key"] != key:
        kept = {"key": key, "laid": lay_wood(wood, lines, cutting[0], cutting[1], cutting[2])}
        world["laid"] = kept
    return kept["laid"]


def exact_text(x):
    """A number as it is told apart from another, well below what a saw can."""
    return decimal_text(x, 9, True)
