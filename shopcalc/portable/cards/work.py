"""Works a setup out: reads its entries, runs its program, and keeps only what can be.

`about` is the setup as data (`shopcalc/describe.py`), `formulas` its printed functions by key.
`known` maps names to values; a name that is absent is a value nobody gave or that cannot be.
"""

from shopcalc.portable.arithmetic.snap import above, nearest_of, same
from shopcalc.portable.cards.naming import applies_key, check_key, used_key
from shopcalc.portable.cards.sentences import quoted_names
from shopcalc.portable.measures.characters import DIGITS, unspaced
from shopcalc.portable.measures.listed import read_lengths, read_pieces, read_stock
from shopcalc.portable.measures.parsing import read_angle, read_count, read_length, read_percent, read_sum, read_temperature
from shopcalc.portable.measures.tokens import BELOW_NOTHING, NOTHING
from shopcalc.portable.measures.writing import TAPES, USUAL_TAPE, decimal_text, digits_text, millimetres, quoted, write_value

BARE_UNITS = ["in", "mm"]
SHOP_NAMES = ["tape", "units"]  # of an address, beside those of a card


def read_shop(query):
    """What the shop is set to: the tape's division, and whether bare numbers are mm."""
    tape = query["tape"] if "tape" in query else ""
    return {
        "division": int(tape) if tape in TAPES else USUAL_TAPE,
        "metric": "units" in query and query["units"] == "mm",
    }


def shop_faults(query):
    """What is wrong with the shop's part of an address, by name."""
    faults = {}
    if "tape" in query and query["tape"] not in TAPES:
        faults["tape"] = "A tape is marked in one of: " + ", ".join(TAPES) + "."
    if "units" in query and query["units"] not in BARE_UNITS:
        faults["units"] = "A bare number is in or mm."
    return faults


def starting_text(declared, shop, world):
    """What an input starts with. In a metric shop a length is the nearest that is milled or marked there; rows and sums say that they are inches."""
    text = declared["start"]
    if shop["metric"] and declared["kind"] == "lengths" and len(text) > 0:
        return ", ".join([unit_said(unspaced(part)) for part in text.split(",")])
    if shop["metric"] and declared["kind"] == "temperature" and len(text) > 0:
        return decimal_text(nearest_of((read_temperature(text, read_shop({}), world["units"], world["numbers"])["value"] - 32) * 5 / 9), 0, False)
    if shop["metric"] and declared["kind"] == "length" and len(text) > 0:
        return "(" + text + ") in" if declared["signed"] else metric_start(text, declared["shop"], world)
    return text


def metric_start(text, owned, world):
    """A length in inches as one would have it in mm: whole ones, halves of small ones, tenths and twentieths of fits; what the shop owns as it is."""
    mm = millimetres(read_length(text, read_shop({}), world["units"], world["numbers"])["value"], world["units"])
    if owned:
        return decimal_text(mm, 2, True)
    parts = 20 if above(1, 2 * mm) else 10 if above(3, mm) else 2 if above(30, mm) else 1
    return digits_text(nearest_of(mm * parts) * (100 // parts), 2, True)


def unit_said(text):
    """A length that says its unit; one that does not end in a digit, such as `8 ft`, says it already."""
    return text + " in" if text[len(text) - 1] in DIGITS else text


def read_entry(declared, text, shop, world):
    """Read one input's text as a value, and hold it against the input's limits."""
    kind = declared["kind"]
    numbers = world["numbers"]
    if kind == "choice" or kind == "division":
        return read_choice(declared, text, shop, world)
    if kind == "length" and declared["signed"]:
        got = read_sum(text, shop, world["units"], numbers)
    elif kind == "length":
        got = read_length(text, shop, world["units"], numbers)
    elif kind == "angle":
        got = read_angle(text, world["units"], numbers)
    elif kind == "lengths":
        got = read_lengths(text, declared["items"], shop, world["units"], numbers)
        if got["ok"] and len(got["value"]) == 0 and not declared["zero"]:
            return {"ok": False, "message": "Type at least one length."}
        return got
    elif kind == "pieces" or kind == "stock":
        read = read_pieces if kind == "pieces" else read_stock
        got = read(text, declared["items"], shop, world["units"], numbers)
        if got["ok"] and len(got["value"]) == 0 and not declared["zero"]:
            return {"ok": False, "message": "Type at least one."}
        return got
    elif kind == "temperature":
        return read_temperature(text, shop, world["units"], numbers)
    elif kind == "percent":
        got = read_percent(text, world["units"], numbers)
    else:
        got = read_count(text, world["units"], numbers)
    if not got["ok"]:
        return got
    return within_limits(declared, got["value"], shop, world)


def within_limits(declared, value, shop, world):
    """A value that may stand, or the reason why it may not."""
    if above(0, value):
        return {"ok": False, "message": BELOW_NOTHING}
    if same(value, 0) and not declared["zero"]:
        return {"ok": False, "message": NOTHING}
    most = declared["most"]
    if len(most) == 2:
        limit = world["numbers"]["ratio"](most[0], most[1])
        if above(value, limit):
            written = write_value(limit, declared["kind"], 64, "down", shop["metric"], world["units"])
            return {"ok": False, "message": "The most this can be is " + quoted(written, declared["kind"], shop["metric"]) + "."}
    return {"ok": True, "value": value}


def read_choice(declared, text, shop, world):
    """The place of the option among its like; of a tape's division, the ticks to the inch."""
    ratio = world["numbers"]["ratio"]
    for place, option in enumerate(declared["options"]):
        if option[0] == text:
            if declared["kind"] != "division":
                return {"ok": True, "value": ratio(place, 1)}
            # a metric tape is marked in millimetres, whatever inch tape is chosen
            in_mm = world["units"]["mm"]
            return {"ok": True, "value": ratio(in_mm[1], in_mm[0]) if shop["metric"] else ratio(int(text), 1)}
    names = [option[0] for option in declared["options"]]
    return {"ok": False, "message": "Choose one of: " + ", ".join(names) + "."}


def read_entries(about, query, shop, world):
    """All entries: the texts as typed, the values read, and a message for each that cannot be read.

    `idle` names the inputs that what is chosen, or the shop, does not use; one of those that cannot be read is as at the start.
    """
    idle = []
    texts = {}
    values = {}
    errors = {}
    for declared in about["inputs"]:
        name = declared["name"]
        text = query[name] if name in query else starting_text(declared, shop, world)
        if declared["kind"] == "choice":
            text = option_meant(declared, text)
        elif declared["kind"] == "division":
            text = unspaced(text)
        texts[name] = text
        if declared["reading"] and is_blank(text):
            continue
        got = read_entry(declared, text, shop, world)
        if declared["kind"] == "division" and shop["metric"]:
            idle.append(name)
        if declared["when"] and is_idle(name, world["setups"][about["slug"]]["formulas"], values, world["numbers"]):
            idle.append(name)
            if not got["ok"]:
                texts[name] = starting_text(declared, shop, world)
                got = read_entry(declared, texts[name], shop, world)
        if got["ok"]:
            values[name] = got["value"]
            read_columns(declared, values, world["numbers"])
        else:
            errors[name] = got["message"]
    return {"texts": texts, "values": values, "errors": errors, "idle": idle}


def is_idle(name, formulas, values, numbers):
    """Whether what is chosen leaves an input unused; while the choice itself cannot be read, nothing is."""
    return numbers["attempt"](formulas[used_key(name)], values, numbers) is False


def option_meant(declared, text):
    """The option that is meant: capitals, hyphens and the label on the form are forgiven."""
    wanted = plain_words(text)
    for option in declared["options"]:
        if plain_words(option[0]) == wanted or plain_words(option[1]) == wanted:
            return option[0]
    return text


def plain_words(text):
    """Words as they are compared: small letters, with spaces between."""
    return unspaced(text).lower().replace("-", " ").replace("_", " ")


def read_columns(declared, values, numbers):
    """Add to `values` what a table says of the option chosen, whose place is the value of the choice."""
    for column in declared["columns"]:
        told = column["values"][nearest_of(values[declared["name"]])]
        values[column["name"]] = numbers["ratio"](told[0], told[1])


def is_blank(text):
    """Whether an entry is empty but for spaces and what cannot be seen."""
    return len(unspaced(text)) == 0


def all_in(names, known):
    """Whether every one of `names` has a value."""
    for name in names:
        if name not in known:
            return False
    return True


def work_out(about, formulas, values, numbers):
    """Run the setup's program over the values read.

    Returns `known`, the values with every result that can be, and `raised`, the names of the checks that hold.
    """
    known = {}
    for name in values:
        known[name] = values[name]
    raised = []
    gone = []
    for line in about["program"]:
        if line in about["results"]:
            work_result(line, about["results"][line], formulas, known, gone, numbers)
        elif holds(check_key(line), formulas, known, numbers):
            raised.append(line)
            for name in about["checks"][line]["spoils"]:
                gone.append(name)
                if name in known:
                    known.pop(name)
    return {"known": known, "raised": [name for name in raised if still_true(name, about, formulas, known, gone, numbers)]}


def holds(key, formulas, known, numbers):
    """Whether the condition of that key holds; one about a value that is not known does not."""
    return numbers["attempt"](formulas[key], known, numbers) is True


def still_true(name, about, formulas, known, gone, numbers):
    """A stop stands; a caution about a value that a stop took away does not, whether it compares it or only quotes it."""
    check = about["checks"][name]
    if check["level"] == "stop" or len(check["spoils"]) > 0:
        return True
    for quoted_name in quoted_names(check["text"]):
        if quoted_name in gone:
            return False
    return holds(check_key(name), formulas, known, numbers)


def work_result(name, result, formulas, known, gone, numbers):
    """Work one result out into `known`, unless something it needs is missing or a check took it away."""
    if name in gone:
        return
    applies = not result["when"] or holds(applies_key(name), formulas, known, numbers)
    if len(result["reading"]) > 0 and result["reading"] in known and applies:
        known[name] = known[result["reading"]]
        return
    # what is as found is as planned where the reading is not followed
    if len(result["reading"]) == 0 and not applies:
        return
    value = numbers["attempt"](formulas[name], known, numbers)
    if value is not None:
        known[name] = value
