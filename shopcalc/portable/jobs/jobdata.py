"""What a job says to a script and to a spreadsheet: its data for JSON, and its cut list as CSV."""

from shopcalc.portable.cards.bars import layout_data
from shopcalc.portable.jobs.cutlist import solve_cuts, solve_job
from shopcalc.portable.jobs.jobview import warnings_of
from shopcalc.portable.jobs.order import job_shop
from shopcalc.portable.jobs.passing import faces_of, pieces_of
from shopcalc.portable.jobs.ticks import changed_since, spread_of
from shopcalc.portable.jobs.troubles import shown_troubles
from shopcalc.portable.jobs.woodview import shown_section
from shopcalc.portable.measures.writing import decimal_size
from shopcalc.portable.wood.buying import bill_of, bought_rows
from shopcalc.portable.wood.wood import waste_of, whole_boards


def job_data(job, world):
    """A job as data for a script: lengths in inches, angles in degrees, settings with their texts."""
    solved = solve_job(job, world)
    rough = solved["rough"]
    shop = job_shop(job)
    plain = world["numbers"]["plain"]
    order = []
    for run in solved["runs"]:
        operation = run["operation"]
        order.append(
            {
                "stage": world["stages"][operation["stage"]],
                "machine": operation["machine"],
                "operation": operation["label"],
                "settings": [setting_data(one, plain) for one in operation["settings"]],
                "parts": [{"label": one["label"], "count": int(one["count"]), "item": one["of"]} for one in pieces_of(run["stints"])],
                "faces": [one["text"] for one in faces_of(run["stints"])],
                "reading": run["reading"],
                "corrections": operation["corrections"],
                "warnings": [one["text"] for one in warnings_of(run)],
                "spread": [one["text"] for one in spread_of(run, shop, world)],
                "done": run["done"],
                "changed": [one["text"] for one in changed_since(run["stints"], shop, world)],
                "stints": [stint["name"] for stint in run["stints"]],
            }
        )
    cuts = []
    for section in solved["sections"]:
        for part in section["parts"]:
            cuts.append(
                {
                    "label": part["label"],
                    "item": part["of"],
                    "count": plain(part["count"]),
                    "length": plain(part["length"]),
                    "rough": rough_data(part, section, rough, plain),
                    "width": plain(part["width"]),
                    "thickness": plain(part["thickness"]),
                }
            )
    boards = [laid_data(laid, solved["cutting"]["is_whole"], world["numbers"]) for laid in solved["cutting"]["laid"]]
    return {"order": order, "cuts": cuts, "boards": boards, "bill": bill_data(solved["cutting"]["laid"], plain), "errors": solved["errors"]}


def setting_data(setting, plain):
    """A setting of a run: as it is read, what rounding did, and its value; of a row the value of each."""
    found = {"name": setting["name"], "label": setting["label"], "text": setting["text"], "amount": setting["amount"]}
    if setting["kind"] == "lengths":
        found["value"] = [plain(each) for each in setting["value"]]
    else:
        found["value"] = plain(setting["value"])
    return found


def rough_data(part, section, rough, plain):
    """The length that a part is cut to first; none while it cannot be read how much is left long."""
    if section["pane"]:
        return plain(part["length"])
    return None if rough is None else plain(part["length"] + rough)


def laid_data(laid, whole, numbers):
    """One section on boards, as data: each bar says what it is taken `from`, a board, the rest of one or an offcut, how `wide` that was.

    Of a job that is not `whole`, since something is left out of it, nothing is proven.
    The waste is the length of the bars that becomes no part of this section; some of it may serve a narrower one.
    """
    plain = numbers["plain"]
    layout = laid["layout"]
    bars = layout_data(layout, laid["labels"], laid["lengths"], numbers)
    for place, bar in enumerate(bars):
        wood = layout["boards"][place]["wood"]
        bar["owned"] = wood["on_hand"]
        bar["from"] = "board" if len(wood["how"]) == 0 else wood["how"]
        bar["wide"] = plain(wood["of"])
    return {
        "thickness": plain(laid["section"]["thickness"]),
        "width": plain(laid["section"]["width"]),
        "layout": bars,
        "buy": [
            {"length": plain(row["length"]), "width": plain(row["width"]), "count": plain(row["count"]), "cost": cost_data(row["cost"], plain)}
            for row in laid["shopping"]
        ],
        "too_long": [laid["labels"][place] for place in layout["too_long"]],
        "waste": plain(layout["waste"]),
        "unlaid": plain(laid["unlaid"]),
        "proven": laid["proven"] and whole,
    }


def bill_data(laid, plain):
    """All that is to buy as data, the boards that are used with the strips ripped from each, and the waste of them in percent."""
    rows = bought_rows(laid)
    bill = bill_of(rows)
    buy = []
    for row in rows:
        buy.append(size_data(row, {"count": plain(row["count"]), "cost": cost_data(row["cost"], plain)}, plain))
    used = []
    for board in whole_boards(laid):
        used.append(size_data(board, {"on_hand": board["on_hand"], "strips": [plain(width) for width in board["strips"]]}, plain))
    return {
        "count": plain(bill["count"]),
        "cost": cost_data(bill["cost"], plain),
        "waste": plain(waste_of(laid)),
        "buy": buy,
        "used": used,
    }


def size_data(row, found, plain):
    """The size of a board as data, added to what is `found` of it."""
    for name in ["thickness", "width", "length"]:
        found[name] = plain(row[name])
    return found


def cost_data(cost, plain):
    """A cost, or none."""
    return None if cost is None else plain(cost)


def csv_field(text):
    """A field of a CSV file (RFC 4180); one that a spreadsheet would take for a formula is kept a text."""
    if len(text) > 0 and text[0] in "=+-@\t\r":
        text = "'" + text
    return '"' + text.replace('"', '""') + '"'


def cut_list_csv(job, world):
    """The cut list as a CSV file (RFC 4180), a line for each part; at the end one for each item that has none since something is wrong with it."""
    solved = solve_cuts(job, world)
    shop = job_shop(job)
    unit = "mm" if shop["metric"] else "inches"
    lines = ["Section,Count,Part,Item,Finished,Rough," + ",".join([name + " " + unit for name in ["Finished", "Width", "Thickness"]])]
    for section in solved["sections"]:
        shown = shown_section(section, solved["rough"], shop, world)
        for place, row in enumerate(shown["rows"]):
            fields = [shown["section"], row["count"], row["label"], row["of"], row["finished"], row["rough"]]
            for name in ["length", "width", "thickness"]:
                fields.append(decimal_size(section["parts"][place][name], shop, world["units"]))
            lines.append(",".join([csv_field(field) for field in fields]))
    for trouble in shown_troubles(solved, job):
        lines.append(",".join([csv_field(field) for field in ["", "", trouble["label"] + trouble["text"], trouble["label"], "", "", "", "", ""]]))
    return "\r\n".join(lines) + "\r\n"
