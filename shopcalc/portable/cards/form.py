"""The form's fields: what was typed, and how it was understood or why it cannot be."""

from shopcalc.portable.cards.naming import input_of
from shopcalc.portable.cards.sentences import unbroken
from shopcalc.portable.measures.writing import ROWS, TAPES, write_value


def input_fields(about, entries, shop, world):
    """The form's fields: label, help, what was typed, and what it was read as or why it cannot be."""
    fields = []
    for declared in about["inputs"]:
        name = declared["name"]
        error = entries["errors"][name] if name in entries["errors"] else ""
        idle = name in entries["idle"]
        options = []
        for option in declared["options"]:
            options.append({"value": option[0], "label": option[1], "chosen": option[0] == entries["texts"][name]})
        fields.append(
            {
                "name": name,
                "label": declared["label"],
                "help": declared["help"],
                "text": entries["texts"][name],
                "is_choice": len(options) > 0,
                "kind": declared["kind"],
                "is_wide": len(options) > 0 or declared["kind"] in ROWS or declared["signed"],
                "is_sum": declared["signed"],
                "is_count": declared["kind"] == "count",
                "is_percent": declared["kind"] == "percent",
                "options": options,
                "is_reading": declared["reading"],
                "group": declared["group"],
                "is_shop": declared["shop"],
                "drawn": " ".join(declared["drawn"]),
                "wrong": len(error) > 0,
                "idle": idle,
                "note": error if len(error) > 0 else "not used" if idle else echo(declared, entries, shop, world),
            }
        )
    return fields


def tape_options(shop):
    """The tapes that there are, with the shop's chosen."""
    return [{"value": each, "label": "1/" + each + " in", "chosen": int(each) == shop["division"]} for each in TAPES]


def grouped(fields):
    """The fields under their headings, in the order in which they were declared."""
    groups = []
    for one in fields:
        if len(groups) == 0 or groups[len(groups) - 1]["legend"] != one["group"]:
            groups.append({"legend": one["group"], "fields": []})
        groups[len(groups) - 1]["fields"].append(one)
    return groups


def echo(declared, entries, shop, world):
    """How an entry was understood, so that a slip of the finger shows."""
    name = declared["name"]
    kind = declared["kind"]
    if name not in entries["values"] or len(declared["options"]) > 0:
        return ""
    value = entries["values"][name]
    if kind in ROWS:
        written = write_value(value, kind, 64, "none", shop["metric"], world["units"])
    else:
        written = write_value(value, kind, 64, "nearest", False, world["units"])
    if kind == "temperature":
        return both(written["text"], write_value(value, kind, 64, "nearest", True, world["units"])["text"], shop)
    if kind != "length":
        return "" if written["text"] == entries["texts"][name] else written["text"]
    # one line under its field: in feet from a foot on, unless that would round it
    in_feet = len(written["feet"]) > 0 and len(written["lean"]) == 0 and not shop["metric"]
    return both(written["feet"] if in_feet else written["decimal"] + " in", written["mm"] + " mm", shop)


def both(one, other, shop):
    """A measure in both units, the shop's own first, each on one line with its unit."""
    first = other if shop["metric"] else one
    second = one if shop["metric"] else other
    return unbroken(first) + " \u00b7 " + unbroken(second)


def change_label(about, name):
    """What a check asks for: another value, or another look at the scrap."""
    declared = input_of(about, name)
    if declared is None:
        return name
    return ("Read again: " if declared["reading"] else "Change: ") + declared["label"]
