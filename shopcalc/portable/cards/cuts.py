"""The parts that a card gives for the cut list."""

from shopcalc.portable.arithmetic.snap import above
from shopcalc.portable.cards.naming import cut_key, part_key
from shopcalc.portable.cards.work import holds
from shopcalc.portable.measures.writing import quoted, write_value

PART_NUMBERS = ["count", "length", "width", "thickness"]


def worked_parts(bench):
    """The parts that can be cut: their label, how many, their length, width and thickness, and the names of those sizes."""
    parts = []
    known = bench["known"]
    numbers = bench["world"]["numbers"]
    for at, part in enumerate(bench["about"]["parts"]):
        if not part["when"] or holds(cut_key(at), bench["formulas"], known, numbers):
            found = numbers["attempt"](bench["formulas"][part_key(at)], known, numbers)
            if found is not None and above(found[0], 0):
                row = {"label": part["label"], "sizes": part["sizes"], "pane": part["pane"]}
                for place, name in enumerate(PART_NUMBERS):
                    row[name] = found[place]
                parts.append(row)
    return parts


def shown_parts(bench):
    """The parts as texts."""
    return [shown_part(part, bench) for part in worked_parts(bench)]


def shown_part(part, bench):
    """One part as texts, each size written as the card writes it; but a pane is at most as thick as its groove is wide."""
    shop = bench["shop"]
    units = bench["world"]["units"]
    row = {"label": part["label"], "pane": part["pane"], "count": write_value(part["count"], "count", 1, "nearest", False, units)["text"]}
    for place, name in enumerate(PART_NUMBERS[1 : len(PART_NUMBERS)]):
        of = part["sizes"][place]
        if part["pane"] and name == "thickness":
            written = write_value(part[name], "length", shop["division"], "down", shop["metric"], units)
        elif of in bench["written"]:
            written = bench["written"][of]
        else:
            written = write_value(part[name], "length", shop["division"], "nearest", shop["metric"], units)
        row[name] = quoted(written, "length", shop["metric"])
    return row
