"""Decides everything a card says, as strings, truths and lists that the templates only put in their places."""

from shopcalc.portable.arithmetic.snap import above, at_least, same
from shopcalc.portable.cards.bars import laid_layouts, shown_boards
from shopcalc.portable.cards.bench import FINEST, inner_benches, is_stopped
from shopcalc.portable.cards.cuts import shown_parts
from shopcalc.portable.cards.form import change_label
from shopcalc.portable.cards.links import shown_onwards
from shopcalc.portable.cards.naming import case_key, line_key
from shopcalc.portable.cards.pictures import draw_picture
from shopcalc.portable.cards.results import shown_results, shown_tapes
from shopcalc.portable.cards.sentences import fill, fill_known, quoted_names, spell, value_text
from shopcalc.portable.cards.work import all_in, holds
from shopcalc.portable.measures.writing import DIVISIONS, decimal_text, fraction_text, millimetres, quoted, write_value

MOST_AT_ONCE = 6  # marks that can still be read in one line
LEVEL_WORDS = {"stop": "Stop", "caution": "Caution", "note": "Note"}


def shown_checks(bench):
    """The checks that hold, stops before cautions before notes; those of the cards inside this one too that are stops."""
    own = own_checks(bench)
    stops = [one for one in own if one["level"] == "stop"]
    for inner in inner_benches(bench):
        stops = stops + [one for one in own_checks(inner) if one["level"] == "stop"]
    return stops + [one for one in own if one["level"] != "stop"]


def shown_stops(bench):
    """The stops among the checks."""
    return [check for check in shown_checks(bench) if check["level"] == "stop"]


def own_checks(bench):
    """The checks of one card that hold, without those of the cards inside it."""
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
                        "change_label": change_label(bench["about"], check["change"]),
                        "has_change": len(check["change"]) > 0,
                    }
                )
    return shown


def shown_steps(bench):
    """The steps that apply, with the numbers in them."""
    return [] if is_stopped(bench) else [{"text": each} for each in said("step", bench)]


def shown_trial(bench):
    """What to cut on scrap, with the numbers in it; nothing where nothing can be cut."""
    return "" if is_stopped(bench) else " ".join(said("trial", bench))


def said(word, bench):
    """The lines of a kind that apply and whose values are there, with the numbers in them."""
    numbers = bench["world"]["numbers"]
    told = []
    for place, line in enumerate(bench["about"]["lines"][word]):
        if all_in(quoted_names(line["text"]), bench["known"]):
            if not line["when"] or holds(line_key(word, place), bench["formulas"], bench["known"], numbers):
                told.append(fill(line["text"], bench, False))
    return told


def shown_corrections(bench):
    """After the trial: how far and which way to move, or to leave it alone."""
    shown = []
    about = bench["about"]
    for name in about["results"]:
        result = about["results"][name]
        if result["role"] != "correction" or name not in bench["known"]:
            continue
        shown.append({"text": correction(name, result, bench)})
    return shown


def correction(name, result, bench):
    """One correction in words: `Raise the blade 0.009 in, 1/128 full`."""
    value = bench["known"][name]
    size = 0 - value if above(0, value) else value
    metric = bench["shop"]["metric"]
    units = bench["world"]["units"]
    kind = result["kind"]
    # past a sixty-fourth nobody counts in 128ths
    division = FINEST // 2 if at_least(size * FINEST, 2) else FINEST
    written = write_value(size, kind, division, "nearest", metric, units)
    if kind == "length":
        nothing = decimal_text(size, 3, False) == "0.000"
        amount = written["decimal"] + " in"
        if metric:
            amount = decimal_text(millimetres(size, units), 2, False) + " mm"
        elif written["ticks"] > 0:
            amount = amount + " (" + fraction_text(written["ticks"], division) + ("" if written["lean"] == "" else " " + written["lean"]) + ")"
    else:
        nothing = written["text"] == write_value(0, kind, FINEST, "nearest", metric, units)["text"]
        amount = written["text"]
    words = result["more"] if above(value, 0) else result["less"]
    return "It is right: leave the setting where it is." if nothing else words.replace("{size}", amount)


def shown_working(bench):
    """Each result's formula, with the numbers put in."""
    rows = []
    about = bench["about"]
    for name in about["results"]:
        result = about["results"][name]
        if name not in bench["written"]:
            continue
        # one that is too far off is not followed
        if result["reading"] in bench["known"] and same(bench["known"][name], bench["known"][result["reading"]]):
            formula = spell(result["reading"])
            numbers = value_text(result["reading"], bench, True)
        else:
            text = case_in_force(name, result["working"], bench)
            if not all_in(quoted_names(text), bench["written"]):
                continue
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


def case_in_force(name, cases, bench):
    """The text of the first case whose condition holds; the last holds when no other does."""
    numbers = bench["world"]["numbers"]
    last = len(cases) - 1
    for place in range(last):
        if holds(case_key(name, place), bench["formulas"], bench["known"], numbers):
            return cases[place]
    return cases[last]


def shown_divisions(bench):
    """The first setting on every tape, from eighths to 128ths, where the setup lets the reader choose one."""
    rows = []
    about = bench["about"]
    for name in about["results"]:
        result = about["results"][name]
        if result["division"] not in bench["known"] or name not in bench["known"] or len(rows) > 0:
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


def show_answer(bench):
    """What is read at the machine: the settings, what forbids them, what the scrap says of them."""
    settings = shown_results(bench, "setting")
    checks = shown_checks(bench)
    others = [counted(one) for one in settings[1:] + included_firsts(bench)]
    # what cannot be is said with the settings, which stay in sight
    stopped = [one for one in checks[0:1] if one["level"] == "stop"]
    return {
        "first": [shortened(one) for one in settings[0:1]],
        "others": others,
        "has_others": len(others) > 0,
        "stopped": stopped,
        "checks": checks[len(stopped) :],
        "warned": [one for one in checks[len(stopped) :] if one["level"] != "note"],
        "corrections": shown_corrections(bench) + included_corrections(bench),
    }


def shortened(one):
    """The first setting; of a long row only how many marks it has."""
    if len(one["marks"]) > MOST_AT_ONCE:
        one["text"] = str(len(one["marks"])) + " marks"
        one["plain"] = one["text"]
        one["spoken"] = one["text"]
    return one


def counted(one):
    """A setting among the others at the top of the card: a short row mark by mark, of a long one only how many there are."""
    short = len(one["marks"]) > 0 and len(one["marks"]) <= MOST_AT_ONCE
    one["listed"] = one["marks"] if short else []
    one["text"] = "" if short else shortened(one)["text"]
    return one


def show_sheet(bench, rank):
    """The rest of the card: drawings, steps, trial, sizes, working, cautions and sources, under headings of that rank."""
    about = bench["about"]
    drawn = []
    for page, picture in enumerate([] if is_stopped(bench) else about["pictures"]):
        for one in draw_picture(picture, bench, page):
            drawn.append(one)
    sizes = shown_results(bench, "size")
    after = shown_results(bench, "after")
    corrections = shown_corrections(bench)
    divisions = shown_divisions(bench)
    working = shown_working(bench)
    steps = shown_steps(bench)
    onwards = shown_onwards(bench)
    settings = shown_tapes(bench)
    parts = shown_parts(bench)
    trial = shown_trial(bench)
    boards = boards_drawn(bench)
    return {
        "title": about["title"],
        "rank": rank,
        "settings": settings,
        "has_settings": len(settings) > 0,
        "heading": "Read it off" if about["stand"] == "at the desk" else "Set the machine",
        "boards": boards,
        "has_boards": len(boards) > 0,
        "pictures": drawn,
        "steps": steps,
        "has_steps": len(steps) > 0,
        "trial": trial,
        "has_trial": len(trial) > 0,
        "corrections": corrections,
        "after": after,
        "has_after": len(after) > 0,
        "parts": parts,
        "has_parts": len(parts) > 0,
        "sizes": sizes,
        "has_sizes": len(sizes) > 0,
        "divisions": divisions,
        "has_divisions": len(divisions) > 0,
        "working": working,
        "has_working": len(working) > 0,
        "cautions": shown_cautions(bench),
        "sources": about["sources"],
        "onwards": onwards,
        "has_onwards": len(onwards) > 0,
        "inner": included_cards(bench),
    }


def boards_drawn(bench):
    """The card's parts laid on boards, unless one of them is left without."""
    drawn = []
    for one in laid_layouts(bench):
        name = "boards-" + bench["about"]["slug"]
        drawn = drawn + shown_boards(
            name, one["layout"]["boards"], one["labels"], one["lengths"], one["kerf"], one["trim"], bench["shop"], bench["world"]["units"]
        )
    return drawn


def shown_cautions(bench):
    """The usual cautions of every machine the card is for, and the cards inside it, each once."""
    shown = []
    for one in [bench] + inner_benches(bench):
        for machine in said("machine", one):
            shown = shown + [each for each in bench["world"]["cautions"][machine] if each not in shown]
    return shown


def included_cards(bench):
    """The cards that stand inside this one, worked out from this one's values."""
    cards = []
    for inner in inner_benches(bench):
        cards.append({"slug": inner["about"]["slug"], "checks": shown_checks(inner), "sheets": [show_sheet(inner, "3")]})
    return cards


def included_corrections(bench):
    """What the scraps say of the cards inside this one, under the names of those."""
    corrections = []
    for inner in inner_benches(bench):
        for one in shown_corrections(inner):
            corrections.append({"text": inner["about"]["title"] + ": " + one["text"]})
    return corrections


def included_firsts(bench):
    """The first setting of each card inside this one, under that card's name."""
    firsts = []
    for inner in inner_benches(bench):
        for one in shown_results(inner, "setting")[0:1]:
            one["label"] = inner["about"]["title"] + ": " + one["label"]
            firsts.append(one)
    return firsts
