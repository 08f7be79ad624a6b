"""What belongs to the shop and not to a piece: the tape, the units, and its own blades, blocks and collars.

Inputs that a setup marks so have one meaning in every card, and one name.
"""

from shopcalc.portable.cards.form import input_fields
from shopcalc.portable.cards.work import SHOP_NAMES, read_entries


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
    """A query in which what it does not say of the shop is as the shop keeps it."""
    filled = {}
    for name in query:
        filled[name] = query[name]
    for name in SHOP_NAMES:
        if name not in query and name in kept:
            filled[name] = kept[name]
    for declared in about["inputs"]:
        name = declared["name"]
        if declared["shop"] and name not in query and name in kept:
            filled[name] = kept[name]
    return filled
