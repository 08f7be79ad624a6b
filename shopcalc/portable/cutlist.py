"""The cut list of a job by section, and its parts on boards.

A section is a thickness and a width. Boards of a section serve it, and so do wider boards of its thickness, from
which strips are ripped.
"""

from shopcalc.portable.boards import lay_parts
from shopcalc.portable.cuts import shown_part, worked_parts
from shopcalc.portable.job import nth_line
from shopcalc.portable.laying import each_part
from shopcalc.portable.listed import read_pieces, read_stock
from shopcalc.portable.order import job_shop, merged_sort, work_job
from shopcalc.portable.reading import read_length
from shopcalc.portable.snap import above, at_least, floor_of, nearest_of, same, smaller
from shopcalc.portable.writing import decimal_text, quoted_length

MOST_PIECES = 400
MOST_LINES = 6  # of lumber that are tried alone


def solve_job(job, world):
    """A job worked through: what `solve_cuts` says, and its wood on boards."""
    solved = solve_cuts(job, world)
    solved["cutting"] = lay_sections(solved["sections"], solved["rough"], job, world, solved["errors"])
    return solved


def solve_cuts(job, world):
    """A job as far as its cut list: items, runs, sections with their parts, and what could not be read, by place."""
    errors = {}
    solved = work_job(job, world)
    for each in solved["worked"]:
        found = each["found"]["entries"]["errors"]
        for name in found:
            place = "item " + str(each["item"]["id"]) + ", " + name
            errors[place] = found[name]
    solved["sections"] = by_section(all_parts(solved["worked"], job, world, errors))
    solved["rough"] = read_setting(job["rough"], True, job, world, errors, "rough")
    solved["errors"] = errors
    return solved


def read_setting(text, zero, job, world, errors, place):
    """One length of the job, which may be `zero` or may not; or nothing and an error."""
    got = read_length(text, job_shop(job), world["units"], world["numbers"])
    if got["ok"] and (above(got["value"], 0) or (zero and at_least(got["value"], 0))):
        return got["value"]
    too_little = "This cannot be less than zero." if zero else "This cannot be zero or less."
    errors[place] = got["message"] if not got["ok"] else too_little
    return 0


def is_empty_line(line):
    """Whether nothing is typed in a line of parts or lumber."""
    for key in line:
        if key != "count" and len(line[key]) > 0:
            return False
    return True


def all_parts(worked, job, world, errors):
    """Every part of the job: label, how many, finished length, width, thickness, which item it is of, whether a pane."""
    parts = []
    for each in worked:
        for bench in each["found"]["benches"]:
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
    for at, loose in enumerate(job["parts"]):
        if is_empty_line(loose):
            continue
        place = nth_line("parts", at)
        before = len(errors.keys())
        part = {"label": loose["label"], "count": loose["count"], "pane": False, "of": "", "id": 1000000 + at}
        for name in ["length", "width", "thickness"]:
            part[name] = read_setting(loose[name], False, job, world, errors, place)
        if len(errors.keys()) == before:
            part["texts"] = {}
            for name in ["length", "width", "thickness"]:
                part["texts"][name] = quoted_length(part[name], "nearest", job_shop(job), world["units"])
            parts.append(part)
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
    for section in sections:
        section["parts"] = merged_sort(section["parts"], is_earlier_part)
    return merged_sort(sections, is_earlier_section)


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
        if is_empty_line(typed):
            continue
        place = nth_line("lumber", at)
        before = len(errors.keys())
        line = {"place": at, "on_hand": [], "to_buy": []}
        for name in ["thickness", "width"]:
            line[name] = read_setting(typed[name], False, job, world, errors, place)
        # a slip in one box leaves what the other says
        sized = len(errors.keys()) == before
        if len(typed["on_hand"]) > 0:
            got = read_pieces(typed["on_hand"], 200, shop, world["units"], world["numbers"])
            if got["ok"]:
                line["on_hand"] = each_part(got["value"], "length")
            else:
                errors[place] = "On hand: " + got["message"]
        if len(typed["to_buy"]) > 0:
            got = read_stock(typed["to_buy"], 50, shop, world["units"], world["numbers"])
            if got["ok"]:
                line["to_buy"] = got["value"]
            else:
                errors[place] = (errors[place] + " " if place in errors else "") + "To buy: " + got["message"]
        if sized:
            lines.append(line)
    return merged_sort(lines, is_narrower)


def is_narrower(one, other):
    """Whether a line of lumber is narrower than another."""
    return above(other["width"], one["width"])


def lay_sections(sections, rough, job, world, errors):
    """The wood of every section on boards, the widest section first; a board used for one is gone for the next."""
    kerf = read_setting(job["kerf"], True, job, world, errors, "kerf")
    trim = read_setting(job["trim"], True, job, world, errors, "trim")
    lines = read_lumber_lines(job, world, errors)
    laid = []
    for section in sections:
        if not section["pane"]:
            laid.append(lay_section(section, lines, kerf, trim, rough))
    return {"laid": laid, "kerf": kerf, "trim": trim}


def strips_of(line, section, kerf):
    """How many strips of a section's width a board gives: none if it is too narrow or of another thickness."""
    if not same(line["thickness"], section["thickness"]) or above(section["width"], line["width"]):
        return 0
    return int(smaller(floor_of((line["width"] + kerf) / (section["width"] + kerf)), MOST_PIECES))


def lay_section(section, lines, kerf, trim, rough):
    """One section's pieces, with the rough allowance on each, on the strips that its boards give."""
    lengths = []
    labels = []
    wanted = 0
    for part in section["parts"]:
        wanted = wanted + part["count"]
        for _ in range(int(smaller(part["count"], MOST_PIECES - len(lengths)))):
            lengths.append(part["length"] + rough)
            labels.append(part["label"])
    owned = []
    serving = []
    for line in lines:
        strips = strips_of(line, section, kerf)
        if strips > 0:
            serving.append({"line": line, "strips": strips})
            for at in range(len(line["on_hand"])):
                left = strips if above(line["on_hand"][at], 0) else 0
                for _ in range(int(smaller(left, MOST_PIECES - len(owned)))):
                    owned.append({"length": line["on_hand"][at], "line": line, "at": at})
    best = best_choice(serving, lengths, [each["length"] for each in owned], kerf, trim)
    take_used(best["layout"], owned)
    return {
        "section": section,
        "lengths": lengths,
        "labels": labels,
        "layout": best["layout"],
        "has_boards": len(owned) + len(best["to_buy"]) > 0,
        "shopping": best["shopping"],
        "unlaid": wanted - len(lengths),
        "proven": is_proven(best, serving) and wanted == len(lengths),
    }


def best_choice(serving, lengths, owned, kerf, trim):
    """The layout that buys least: of all lines of lumber together, and of each alone.

    What a strip costs is only part of what its board costs, so the cheapest strips need not be the cheapest boards.
    """
    best = laid_from(serving, lengths, owned, kerf, trim)
    if len(serving) > 1 and has_strips(serving):
        for one in serving[0:MOST_LINES]:
            other = laid_from([one], lengths, owned, kerf, trim)
            if buys_less(other, best):
                best = other
    return best


def laid_from(serving, lengths, owned, kerf, trim):
    """A layout that buys only from these lines of lumber."""
    to_buy = []
    # lines come narrow before wide, so of boards that cost the same the narrow one is bought
    for one in serving:
        for board in one["line"]["to_buy"]:
            price = board["price"]
            choice = {"length": board["length"], "strips": one["strips"], "whole": price, "width": one["line"]["width"]}
            choice["price"] = None if price is None else price / one["strips"]
            add_choice(to_buy, choice)
    layout = lay_parts(lengths, owned, to_buy, kerf, trim)
    return {"layout": layout, "to_buy": to_buy, "shopping": shopping(layout, to_buy)}


def has_strips(serving):
    """Whether any board gives more than one strip."""
    return len([one for one in serving if one["strips"] > 1]) > 0


def buys_less(one, other):
    """Whether a layout leaves fewer parts without a board, or costs less, or buys fewer boards."""
    if len(one["layout"]["too_long"]) != len(other["layout"]["too_long"]):
        return len(one["layout"]["too_long"]) < len(other["layout"]["too_long"])
    mine = bill_of(one["shopping"])
    theirs = bill_of(other["shopping"])
    if mine["cost"] is not None and theirs["cost"] is not None and not same(mine["cost"], theirs["cost"]):
        return above(theirs["cost"], mine["cost"])
    return mine["count"] < theirs["count"]


def bill_of(rows):
    """How many boards are to buy, and what they cost if every one has a price."""
    count = 0
    cost = 0
    for row in rows:
        count = count + row["count"]
        cost = None if cost is None or row["cost"] is None else cost + row["cost"]
    return {"count": count, "cost": cost}


def is_proven(best, serving):
    """Whether no fewer boards could do; where a board gives several strips nothing is claimed."""
    layout = best["layout"]
    return layout["proven"] and len(layout["too_long"]) == 0 and len(layout["boards"]) > 0 and not has_strips(serving)


def add_choice(to_buy, board):
    """Add a board that could be bought, unless there is one of its length that costs no more for each strip."""
    for place, known in enumerate(to_buy):
        if same(known["length"], board["length"]):
            if known["price"] is not None and board["price"] is not None and above(known["price"], board["price"]):
                to_buy[place] = board
            return
    to_buy.append(board)


def take_used(layout, owned):
    """Boards on hand of which a strip was used are no longer there for the next section."""
    taken = {}
    for board in layout["boards"]:
        if board["owned"]:
            for place, strip in enumerate(owned):
                if str(place) not in taken and same(strip["length"], board["length"]):
                    taken[str(place)] = strip
                    break
    for place in taken:
        strip = taken[place]
        strip["line"]["on_hand"][strip["at"]] = 0


def shopping(layout, to_buy):
    """What to buy: of each length how many boards, and what they cost; a wide board gives several strips."""
    rows = []
    for board in to_buy:
        strips = 0
        for each in layout["boards"]:
            if not each["owned"] and same(each["length"], board["length"]):
                strips = strips + 1
        known = [row for row in rows if same(row["length"], board["length"])]
        if strips > 0 and len(known) == 0:
            count = (strips + board["strips"] - 1) // board["strips"]
            cost = None if board["whole"] is None else board["whole"] * count
            rows.append({"length": board["length"], "width": board["width"], "count": count, "cost": cost, "strips": board["strips"]})
    return rows
