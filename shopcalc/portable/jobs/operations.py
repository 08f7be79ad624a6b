"""What is run at the machines for one item, so that the runs of many items can be merged."""

from shopcalc.portable.arithmetic.snap import nearest_of
from shopcalc.portable.cards.bench import inner_benches, is_stopped
from shopcalc.portable.cards.card import correction
from shopcalc.portable.cards.cuts import worked_parts
from shopcalc.portable.cards.naming import input_of, run_key
from shopcalc.portable.cards.sentences import fill_known, quoted_names
from shopcalc.portable.cards.work import holds
from shopcalc.portable.measures.writing import quoted, write_value


def worked_operations(bench):
    """The operations that this card and those inside it ask for now, the inner ones first, as they were included.

    Left out is one whose condition does not hold, that has settings but no value for any, or parts but none to cut.
    Of an inner card's operation the parts are this card's, and the reading is this card's input of the same name.
    """
    if is_stopped(bench):
        return []
    found = []
    for inner in inner_benches(bench):
        for operation in worked_operations(inner):
            if operation["name"] in inner["passes"]:
                operation["parts"] = passing_parts(inner["passes"][operation["name"]], bench)
            if operation["name"] not in inner["passes"] or len(operation["parts"]) > 0:
                found.append(operation)
    for place, declared in enumerate(bench["about"]["operations"]):
        if not declared["when"] or holds(run_key(place), bench["formulas"], bench["known"], bench["world"]["numbers"]):
            found = found + worked_operation(declared, place, bench)
    return found


def worked_operation(declared, place, bench):
    """One operation of this card, or nothing where there is nothing to set or to pass; those of inner cards come before it."""
    settings = [run_setting(pair_of, bench) for pair_of in declared["settings"] if pair_of[0] in bench["written"]]
    parts = passing_parts(declared["parts"], bench)
    if len(settings) == 0 and len(declared["settings"]) > 0:
        return []
    if len(parts) == 0 and len(declared["parts"]) > 0:
        return []
    about = bench["about"]
    reading = declared["reading"]
    corrections = []
    for name in about["results"]:
        result = about["results"][name]
        if result["role"] == "correction" and name in bench["known"] and reading in quoted_names(", ".join(result["working"])):
            corrections.append(correction(name, result, bench))
    return [
        {
            "key": declared["run"] if len(declared["run"]) > 0 else about["slug"] + "/" + declared["name"],
            "of": about["slug"],
            "name": declared["name"],
            "place": place + (100 if len(about["includes"]) > 0 else 0),
            "stage": declared["stage"],
            "machine": declared["machine"],
            "label": declared["label"],
            "settings": settings,
            "face": fill_known(declared["face"], bench),
            "parts": parts,
            "reading": reading,
            "reading_label": setting_label(reading, about),
            "corrections": corrections,
        }
    ]


def passing_parts(places, bench):
    """How many of each of these parts one item has; parts of one label count as one."""
    labels = [bench["about"]["parts"][place]["label"] for place in places]
    found = []
    for part in worked_parts(bench):
        if part["label"] in labels:
            found.append({"label": part["label"], "count": nearest_of(part["count"]), "length": part["length"], "width": part["width"]})
    return found


def wooden_parts(bench):
    """The parts of an item that are no panes: what is run whole is made of them."""
    return [part for part in worked_parts(bench) if not part["pane"]]


def run_setting(pair_of, bench):
    """What a machine is set to. An input that is a length is written on the shop's tape, as results are."""
    name = pair_of[0]
    kind = bench["kinds"][name]
    shop = bench["shop"]
    label = pair_of[1] if len(pair_of[1]) > 0 else setting_label(name, bench["about"])
    if kind == "length" and name not in bench["about"]["results"]:
        return length_setting(name, label, bench["known"][name], shop, bench["world"]["units"])
    return written_setting(name, label, kind, bench["known"][name], bench["written"][name], shop)


def length_setting(name, label, value, shop, units):
    """A length that was typed, as a setting on the shop's tape."""
    return written_setting(name, label, "length", value, write_value(value, "length", shop["division"], "nearest", shop["metric"], units), shop)


def written_setting(name, label, kind, value, written, shop):
    """A setting: `mark` is what runs are merged by, `text` what is read."""
    return {
        "name": name,
        "label": label,
        "kind": kind,
        "value": value,
        "mark": ", ".join([each["bare"] for each in written["each"]]) if kind == "lengths" else written["bare"],
        "text": quoted(written, kind, shop["metric"]),
        "lean": written["lean"],
        "amount": written["amount"],
    }


def setting_label(name, about):
    """What a value is called on its card."""
    if name in about["results"]:
        return about["results"][name]["label"]
    declared = input_of(about, name)
    return "" if declared is None else declared["label"]
