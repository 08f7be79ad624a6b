"""Results as a card shows them: the stacked fraction with what rounding did, decimals and mm, marks, and their stretch of tape."""

from shopcalc.portable.cards.bench import division_of
from shopcalc.portable.cards.sentences import in_one_piece
from shopcalc.portable.cards.tape import draw_run, draw_tape
from shopcalc.portable.measures.spoken import spoken
from shopcalc.portable.measures.writing import ROWS, decimal_text, millimetres, quoted


def show_value(name, label, bench):
    """A result as the card shows it: the stacked fraction, what rounding did, decimal and mm."""
    written = bench["written"][name]
    kind = bench["kinds"][name]
    metric = bench["shop"]["metric"]
    is_length = kind == "length"
    stacked = is_length and not metric
    # pieces are picked up and not marked off: they stand in one line
    is_row = kind == "lengths" and bench["about"]["results"][name]["rounding"] != "none"
    return {
        "name": name,
        "label": label,
        "text": quoted(written, kind, metric),
        "spoken": spoken(written, kind, metric),
        "stacked": stacked,
        "sign": written["sign"],
        "whole": written["whole"],
        "has_whole": stacked and len(written["whole"]) > 0,
        "has_fraction": stacked and len(written["top"]) > 0,
        "top": written["top"],
        "under": written["under"],
        "plain": "" if stacked else written["text"],
        "lean": written["lean"],
        "leans": len(written["lean"]) > 0,
        "amount": written["amount"],
        "small": small_of(bench["known"][name], written, bench) if is_length else "",
        "has_small": is_length,
        "marks": shown_marks(bench["known"][name], written, bench) if is_row else [],
        "is_row": is_row,
        "pieces": kind in ROWS and not is_row,
    }


def small_of(length, written, bench):
    """What stands under a length, as one text that breaks only between its parts."""
    lines = metric_small(length, written, bench) if bench["shop"]["metric"] else inch_small(written)
    return " \u00b7 ".join([in_one_piece(line, bench) for line in lines])


def metric_small(length, written, bench):
    """What stands under a length in a metric shop: its hundredths, where the tenth above leaves some out, and inches."""
    fine = decimal_text(millimetres(length, bench["world"]["units"]), 2, True) + " mm"
    inches = written["decimal"] + " in"
    return [inches] if fine == written["text"].replace(".0 mm", " mm") else [fine, inches]


def inch_small(written):
    """What stands under a length in inches: its decimal, its millimetres, and its feet from a foot on."""
    lines = [written["decimal"] + " in", written["mm"] + " mm"]
    if len(written["feet"]) > 0:
        lines.append(written["feet"])
    return lines


def shown_marks(row, written, bench):
    """A row as marks on one tape, to be read from the top down."""
    marks = []
    for place, one in enumerate(written["each"]):
        mark = {"text": one["bare"], "lean": one["lean"], "leans": len(one["lean"]) > 0, "amount": one["amount"]}
        mark["small"] = small_of(row[place], one, bench)
        marks.append(mark)
    return marks


def shown_results(bench, role):
    """The results of one role that have a value, in declared order."""
    shown = []
    about = bench["about"]
    for name in about["results"]:
        if about["results"][name]["role"] == role and name in bench["known"]:
            shown.append(show_value(name, about["results"][name]["label"], bench))
    return shown


def shown_tapes(bench):
    """The settings, each length with its stretch of tape, each row of marks with its run of it."""
    settings = shown_results(bench, "setting")
    for one in settings:
        one["has_large"] = not one["is_row"] and not one["pieces"]
        one["tape"] = []
        one["run"] = []
        result = bench["about"]["results"][one["name"]]
        value = bench["known"][one["name"]]
        metric = bench["shop"]["metric"]
        division = division_of(result, bench)
        if bench["kinds"][one["name"]] == "length":
            one["tape"] = [draw_tape(value, division, result["rounding"], metric, bench["world"]["units"])]
        if one["is_row"]:
            one["run"] = draw_run(value, division, metric, bench["world"]["units"])
    return settings
