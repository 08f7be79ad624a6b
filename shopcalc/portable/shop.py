"""What belongs to the shop and not to a piece: the tape, the units, and its own blades, blocks and collars.

Inputs that a setup marks so have one meaning in every card, and one name.
"""

from shopcalc.portable.form import input_fields
from shopcalc.portable.work import read_entries, read_shop


def shop_declared(world):
    """The shop's own inputs over all cards, each name once."""
    names = []
    found = []
    for slug in world["setups"]:
        for declared in world["setups"][slug]["about"]["inputs"]:
            if declared["shop"] and declared["name"] not in names:
                names.append(declared["name"])
                found.append(declared)
    return found


def shop_fields(world, query, shop):
    """The shop's own inputs as fields of a form."""
    declared = shop_declared(world)
    about = {"inputs": [one for one in declared if one["kind"] != "lengths"] + [one for one in declared if one["kind"] == "lengths"]}
    return input_fields(about, read_entries(about, query, shop, world), shop, world)


def with_shop_defaults(about, query, kept):
    """A query in which what it does not say of the shop is as the shop keeps it; a kept text means what it meant there."""
    filled = {}
    for name in query:
        filled[name] = query[name]
    for name in ["tape", "units"]:
        if name not in query and name in kept:
            filled[name] = kept[name]
    unit = "mm" if read_shop(kept)["metric"] else "in"
    other = read_shop(filled)["metric"] != read_shop(kept)["metric"]
    for declared in about["inputs"]:
        name = declared["name"]
        if declared["shop"] and name not in query and name in kept:
            filled[name] = in_unit(kept[name], unit) if other else kept[name]
    return filled


def in_unit(text, unit):
    """A length or a row of them with its unit said, where the text does not say one itself."""
    parts = []
    for part in text.replace(";", ",").split(","):
        parts.append("(" + part + ") " + unit if is_bare(part) else part)
    return ",".join(parts)


def is_bare(text):
    """Whether a text is figures alone: no letter but the sign of multiplying, and no mark of feet or inches."""
    figures = False
    for one in text:
        if one == '"' or one == "'" or one in "\u2032\u2033\u2018\u2019\u201c\u201d" or (one.lower() in "abcdefghijklmnopqrstuvwyz"):
            return False
        if one != " ":
            figures = True
    return figures
