"""Decides everything a card says, as strings, truths and lists that the templates only put in their places.

A `bench` is one card being worked: `about` and `formulas` of its setup, the `shop`, the `texts` typed, the
values `known`, each of them `written`, and the `world` (all setups, units, arithmetic).
"""

from shopcalc.portable.pictures import draw_picture
from shopcalc.portable.sentences import fill, fill_known, spell, value_text
from shopcalc.portable.snap import above
from shopcalc.portable.tape import draw_tape
from shopcalc.portable.work import all_in, read_entries, work_out
from shopcalc.portable.writing import DIVISIONS, decimal_text, fraction_text, millimetres, quoted, write_value

FINEST = 128  # a correction is small, and is read off a rule or calipers rather than the tape
LEVEL_WORDS = {"stop": "Stop", "caution": "Caution", "note": "Note"}


def set_bench(world, slug, entries, shop):
    """Work a setup out and write every value it has."""
    about = world["setups"][slug]["about"]
    formulas = world["setups"][slug]["formulas"]
    worked = work_out(about, formulas, entries["values"], world["numbers"])
    bench = {
        "about": about,
        "formulas": formulas,
        "shop": shop,
        "world": world,
        "texts": entries["texts"],
        "known": worked["known"],
        "raised": worked["raised"],
        "written": {},
        "kinds": {},
    }
    for declared in about["inputs"]:
        if declared["name"] in bench["known"]:
            write_known(bench, declared["name"], declared["kind"], shop["division"], "nearest")
    for name in about["results"]:
        result = about["results"][name]
        if name in bench["known"]:
            write_known(bench, name, result["kind"], division_of(result, bench), result["rounding"])
    return bench


def write_known(bench, name, kind, division, rounding):
    """Write one value, and remember what kind it is."""
    shop = bench["shop"]
    bench["written"][name] = write_value(bench["known"][name], kind, division, rounding, shop["metric"], bench["world"]["units"])
    bench["kinds"][name] = kind


def division_of(result, bench):
    """The tape's division for a result: its own input's, or the shop's."""
    if result["role"] == "correction":
        return FINEST
    if len(result["division"]) == 0:
        return bench["shop"]["division"]
    found = DIVISIONS[0]
    for division in DIVISIONS:
        if not above(division, bench["known"][result["division"]]):
            found = division
    return found


def input_fields(about, entries, shop, world):
    """The form's fields: label, help, what was typed, and what it was read as or why it cannot be."""
    fields = []
    for declared in about["inputs"]:
        name = declared["name"]
        error = entries["errors"][name] if name in entries["errors"] else ""
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
                "options": options,
                "is_reading": declared["reading"],
                "wrong": len(error) > 0,
                "note": error if len(error) > 0 else echo(declared, entries, shop, world),
            }
        )
    return fields


def echo(declared, entries, shop, world):
    """How an entry was understood, so that a slip of the finger shows."""
    name = declared["name"]
    kind = declared["kind"]
    if name not in entries["values"] or len(declared["options"]) > 0:
        return ""
    written = write_value(entries["values"][name], kind, 64, "nearest", False, world["units"])
    if kind != "length":
        return "" if written["text"] == entries["texts"][name] else written["text"]
    feet = "" if len(written["feet"]) == 0 else " \u00b7 " + written["feet"]
    return written["decimal"] + " in \u00b7 " + written["mm"] + " mm" + feet


def show_value(name, label, bench):
    """A result as the card shows it: the stacked fraction, what rounding did, decimal and mm."""
    written = bench["written"][name]
    kind = bench["kinds"][name]
    metric = bench["shop"]["metric"]
    is_length = kind == "length"
    stacked = is_length and not metric
    under = ""
    if is_length:
        under = written["decimal"] + " in" if metric else written["decimal"] + " in \u00b7 " + written["mm"] + " mm"
        if len(written["feet"]) > 0 and not metric:
            under = under + " \u00b7 " + written["feet"]
    return {
        "name": name,
        "label": label,
        "text": quoted(written, kind, metric),
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
        "small": under,
        "has_small": is_length,
    }


def shown_results(bench, role):
    """The results of one role that have a value, in declared order."""
    shown = []
    about = bench["about"]
    for name in about["results"]:
        if about["results"][name]["role"] == role and name in bench["known"]:
            shown.append(show_value(name, about["results"][name]["label"], bench))
    return shown


def shown_settings(bench):
    """The settings, each length with its stretch of tape."""
    settings = shown_results(bench, "setting")
    for place, one in enumerate(settings):
        one["first"] = place == 0
        one["has_tape"] = bench["kinds"][one["name"]] == "length"
        one["tape"] = []
        if one["has_tape"]:
            division = division_of(bench["about"]["results"][one["name"]], bench)
            one["tape"] = [draw_tape(bench["known"][one["name"]], division, bench["shop"]["metric"], bench["world"]["units"])]
    return settings


def shown_checks(bench):
    """The checks that hold, stops before cautions before notes."""
    shown = []
    for level in LEVEL_WORDS:
        for name in bench["raised"]:
            check = bench["about"]["checks"][name]
            if check["level"] == level:
                shown.append(
                    {
                        "level": level,
                        "word": LEVEL_WORDS[level],
                        "name": name,
                        "text": fill_known(check["text"], bench),
                        "source": check["source"],
                        "has_source": len(check["source"]) > 0,
                        "change": check["change"],
                        "change_label": input_label(bench["about"], check["change"]),
                    }
                )
    return shown


def input_label(about, name):
    """What the form calls an input."""
    for declared in about["inputs"]:
        if declared["name"] == name:
            return declared["label"]
    return name


def shown_steps(bench):
    """The steps that apply, with the numbers in them."""
    numbers = bench["world"]["numbers"]
    steps = []
    for step in bench["about"]["steps"]:
        if all_in(step["needs"], bench["known"]):
            if len(step["when"]) == 0 or numbers["attempt"](bench["formulas"][step["when"]], bench["known"], numbers) is True:
                steps.append({"text": fill(step["text"], bench, False)})
    return steps


def shown_corrections(bench):
    """After the trial: how far and which way to move, or to leave it alone."""
    shown = []
    about = bench["about"]
    for name in about["results"]:
        result = about["results"][name]
        if result["role"] != "correction" or name not in bench["known"]:
            continue
        shown.append(correction(result, bench))
    return shown


def correction(result, bench):
    """One correction in words: `Raise the blade 0.009 in, 1/128 full`."""
    value = bench["known"][result["name"]]
    size = 0 - value if above(0, value) else value
    metric = bench["shop"]["metric"]
    units = bench["world"]["units"]
    kind = result["kind"]
    written = write_value(size, kind, FINEST, "nearest", metric, units)
    if kind == "length":
        nothing = decimal_text(size, 3, False) == "0.000"
        amount = written["decimal"] + " in"
        if metric:
            amount = decimal_text(millimetres(size, units), 2, False) + " mm"
        elif written["ticks"] > 0:
            amount = amount + " (" + fraction_text(written["ticks"], FINEST) + ("" if written["lean"] == "" else " " + written["lean"]) + ")"
    else:
        nothing = written["text"] == "0\u00b0"
        amount = written["text"]
    words = result["more"] if above(value, 0) else result["less"]
    return {
        "name": result["name"],
        "label": result["label"],
        "nothing": nothing,
        "move": not nothing,
        "amount": amount,
        "text": "It is right: leave the setting where it is." if nothing else words.replace("{size}", amount),
    }


def shown_working(bench):
    """Each result's formula, with the numbers put in."""
    rows = []
    about = bench["about"]
    for name in about["results"]:
        result = about["results"][name]
        if name not in bench["known"] or not all_in(result["needs"], bench["known"]):
            continue
        if len(result["reading"]) > 0 and result["reading"] in bench["known"]:
            formula = spell(result["reading"])
            numbers = value_text(result["reading"], bench, True)
        else:
            text = case_in_force(result["working"], bench)
            formula = spell(text)
            numbers = fill(text, bench, True)
        answer = quoted(bench["written"][name], result["kind"], bench["shop"]["metric"])
        rows.append(
            {
                "name": spell(name),
                "formula": formula,
                "numbers": numbers,
                "differs": numbers != answer and numbers != bench["written"][name]["text"],
                "answer": answer,
                "source": result["source"],
                "has_source": len(result["source"]) > 0,
            }
        )
    return rows


def case_in_force(cases, bench):
    """The text of the first case whose condition holds; a case without a condition always does."""
    numbers = bench["world"]["numbers"]
    for one in cases:
        if len(one[0]) == 0 or numbers["attempt"](bench["formulas"][one[0]], bench["known"], numbers) is True:
            return one[1]
    return ""


def shown_divisions(bench):
    """The first setting on every tape, from eighths to 128ths, where the setup lets the reader choose one."""
    rows = []
    about = bench["about"]
    for name in about["results"]:
        result = about["results"][name]
        if len(result["division"]) == 0 or name not in bench["known"] or len(rows) > 0:
            continue
        for division in DIVISIONS:
            written = write_value(bench["known"][name], "length", division, "nearest", False, bench["world"]["units"])
            rows.append(
                {
                    "division": "1/" + str(division),
                    "text": written["text"],
                    "amount": "exact" if len(written["lean"]) == 0 else "by " + written["amount"],
                }
            )
    return rows


def shown_onwards(bench):
    """Links to the cards this one leads to, with the entries carried along."""
    links = []
    for onward in bench["about"]["onwards"]:
        if onward["slug"] not in bench["world"]["setups"]:
            continue
        parts = []
        for carried in onward["carry"]:
            for name in carried[1]:
                if name in bench["known"]:
                    parts.append(carried[0] + "=" + encoded(bench["texts"][name]))
                    break
        links.append({"label": onward["label"], "address": "/" + onward["slug"] + "?" + "&".join(parts + shop_query(bench["shop"]))})
    return links


def shop_query(shop):
    """The shop's settings as parts of an address; what is usual goes unsaid."""
    parts = []
    if shop["division"] != 32:
        parts.append("tape=" + str(shop["division"]))
    if shop["metric"]:
        parts.append("units=mm")
    return parts


UNRESERVED = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-._~"
HEXADECIMAL = "0123456789ABCDEF"


def encoded(text):
    """`text` for the query of an address (RFC 3986), as UTF-8; entries that were read hold no surrogates."""
    out = ""
    for one in text:
        code = ord(one)
        if one in UNRESERVED:
            out = out + one
        elif one == " ":
            out = out + "+"
        elif code < 0x80:
            out = out + percent(code)
        elif code < 0x800:
            out = out + percent(0xC0 + code // 64) + percent(0x80 + code - (code // 64) * 64)
        else:
            high = code // 4096
            rest = code - high * 4096
            out = out + percent(0xE0 + high) + percent(0x80 + rest // 64) + percent(0x80 + rest - (rest // 64) * 64)
    return out


def percent(byte):
    """One byte, percent-encoded."""
    return "%" + HEXADECIMAL[byte // 16] + HEXADECIMAL[byte - (byte // 16) * 16]


def show_answer(bench):
    """What is read at the machine: the settings, what forbids them, what the scrap says of them."""
    settings = shown_settings(bench)
    checks = shown_checks(bench)
    stopped = [one for one in checks if one["level"] == "stop"]
    return {
        "first": settings[0:1],
        "stopped": stopped[0:1],
        "settings": settings,
        "has_settings": len(settings) > 0,
        "checks": checks,
        "corrections": shown_corrections(bench),
    }


def show_sheet(bench):
    """The rest of the card: drawings, steps, trial, sizes, working, cautions and sources."""
    about = bench["about"]
    drawn = []
    for page, picture in enumerate(about["pictures"]):
        for one in draw_picture(picture, bench, page):
            drawn.append(one)
    sizes = shown_results(bench, "size")
    after = shown_results(bench, "after")
    corrections = shown_corrections(bench)
    divisions = shown_divisions(bench)
    working = shown_working(bench)
    steps = shown_steps(bench)
    onwards = shown_onwards(bench)
    return {
        "title": about["title"],
        "pictures": drawn,
        "steps": steps,
        "has_steps": len(steps) > 0,
        "trial": about["trial"],
        "has_trial": len(about["trial"]) > 0,
        "corrections": corrections,
        "awaits_reading": len(about["trial"]) > 0 and len(corrections) == 0,
        "after": after,
        "has_after": len(after) > 0,
        "sizes": sizes,
        "has_sizes": len(sizes) > 0,
        "divisions": divisions,
        "has_divisions": len(divisions) > 0,
        "working": working,
        "has_working": len(working) > 0,
        "cautions": about["cautions"],
        "sources": about["sources"],
        "onwards": onwards,
        "has_onwards": len(onwards) > 0,
        "inner": included_cards(bench),
    }


def included_cards(bench):
    """The cards that stand inside this one, worked out from this one's values."""
    cards = []
    world = bench["world"]
    for included in bench["about"]["includes"]:
        inner = included_bench(included, bench, world)
        if len(inner) > 0:
            cards.append({"slug": included["slug"], "answers": [show_answer(inner[0])], "sheets": [show_sheet(inner[0])]})
    return cards


def included_bench(included, bench, world):
    """The bench of one included setup, or nothing while a value it is given is missing."""
    about = world["setups"][included["slug"]]["about"]
    values = {}
    texts = {}
    given = {}
    for pair_of in included["given"]:
        given[pair_of[0]] = pair_of[1]
    for declared in about["inputs"]:
        name = declared["name"]
        if name in given:
            # a formula over values that a stop took away cannot be worked out, and gives no card
            if not all_in(included["needs"], bench["known"]):
                return []
            value = world["numbers"]["attempt"](bench["formulas"][given[name]], bench["known"], world["numbers"])
            if value is None:
                return []
            values[name] = value
            texts[name] = decimal_text(value, 6, True)
        elif name in bench["known"]:
            values[name] = bench["known"][name]
            texts[name] = bench["texts"][name]
    return [set_bench(world, included["slug"], {"values": values, "texts": texts}, bench["shop"])]


def read_and_set(world, slug, query, shop):
    """Read a setup's entries and, if all can be read, set its bench. Returns both; no bench while any is wrong."""
    about = world["setups"][slug]["about"]
    entries = read_entries(about, query, shop, world)
    wrong = len(entries["errors"].keys()) > 0
    return {"entries": entries, "benches": [] if wrong else [set_bench(world, slug, entries, shop)]}
