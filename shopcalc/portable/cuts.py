"""The parts that a card gives for the cut list."""

from shopcalc.portable.snap import above
from shopcalc.portable.work import holds
from shopcalc.portable.writing import quoted, write_value

PART_NUMBERS = ["count", "length", "width", "thickness"]


def worked_parts(bench):
    """The parts that can be cut: their label, how many, and their length, width and thickness."""
    parts = []
    known = bench["known"]
    numbers = bench["world"]["numbers"]
    for at, part in enumerate(bench["about"]["parts"]):
        key = "part " + str(at)
        if not part["when"] or holds(key + " when", bench["formulas"], known, numbers):
            found = numbers["attempt"](bench["formulas"][key], known, numbers)
            if found is not None and above(found[0], 0):
                row = {"label": part["label"]}
                for place, name in enumerate(PART_NUMBERS):
                    row[name] = found[place]
                parts.append(row)
    return parts


def shown_parts(bench):
    """The parts as texts, each length as on the tape."""
    shop = bench["shop"]
    rows = []
    for part in worked_parts(bench):
        row = {"label": part["label"], "count": write_value(part["count"], "count", 1, "nearest", False, bench["world"]["units"])["text"]}
        for name in ["length", "width", "thickness"]:
            written = write_value(part[name], "length", shop["division"], "nearest", shop["metric"], bench["world"]["units"])
            row[name] = quoted(written, "length", shop["metric"])
        rows.append(row)
    return rows
