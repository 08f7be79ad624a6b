"""Reads what a woodworker types: lengths, angles and slopes, counts.

One grammar everywhere (page, command line, JSON). A reading is returned as
`{"ok": True, "value": number}` or `{"ok": False, "message": text}`; nothing is raised.

`numbers` is the platform's arithmetic, `units` the length units as `{"mm": [5, 127], ...}` in inches.
"""

from shopcalc.portable.arithmetic.snap import above, same
from shopcalc.portable.arithmetic.turning import atand
from shopcalc.portable.measures.characters import SIGNS, UNIT_MARKS, plain_marks, unspaced
from shopcalc.portable.measures.grammar import RATIO, as_length, parse_mixed, parse_sum
from shopcalc.portable.measures.tokens import BELOW_NOTHING, EXAMPLES, ONE_COUNT, begin, fail, failed, misplaced, peek, peek_after, refusal

LONGEST_LENGTH = 1200  # inches: 100 ft
STEEPEST = 2  # rise over run, where a fraction alone may be a pitch: 24 in 12
COLDEST = -100
HOTTEST = 250


def read_length(text, shop, units, numbers):
    """Read a length in inches. A bare number is inches, or mm in a metric shop. Never negative."""
    state = begin(text, units, numbers, "length")
    state["metric"] = shop["metric"]
    return finish_length(state, parse_sum(state))


def read_sum(text, shop, units, numbers):
    """Read tape arithmetic: a length that may pass below zero on the way to its result."""
    state = begin(text, units, numbers, "length")
    state["metric"] = shop["metric"]
    state["below_zero"] = True
    return finish_length(state, parse_sum(state))


def read_angle(text, units, numbers):
    """Read an angle in degrees: `10`, `22 1/2`, `5 in 12`, `1:6` (rise:run) or `10%`."""
    state = begin(text, units, numbers, "angle")
    first = parse_sum(state)
    if failed(state):
        return refusal(state)
    token = peek(state)
    marked = state["marked"]
    if token["kind"] == "end":
        refuse_doubtful(state, first["x"])
        return refusal(state) if failed(state) else {"ok": True, "value": first["x"]}
    if marked:
        fail(state, "Nothing can follow the degrees.")
        return refusal(state)
    slope = first["x"]
    if token["kind"] == "%":
        state["next"] += 1
        slope = slope / 100
    elif token["kind"] == ":" or token["text"] == "in":
        state["next"] += 1
        if token["text"] == "in" and (peek(state)["text"] == "in" or peek(state)["kind"] == ":"):
            state["next"] += 1  # 5" in 12, 5":12"
        run = parse_sum(state)
        if failed(state):
            return refusal(state)
        if peek(state)["text"] == "in":
            state["next"] += 1
        if state["marked"]:
            fail(state, "A slope has no degrees in it: write 5 in 12, or 22.6.")
        elif same(run["x"], 0):
            fail(state, "The run of a slope cannot be zero.")
        else:
            slope = slope / run["x"]
    if peek(state)["kind"] != "end":
        misplaced(state)
    if failed(state):
        return refusal(state)
    return {"ok": True, "value": atand(slope, numbers)}


def refuse_doubtful(state, degrees):
    """Ask what a number over a number is: `5/12` is how many write a pitch, and as degrees it would be next to nothing."""
    tokens = state["tokens"]
    first = 0
    last = len(tokens) - 2  # the end stands behind it
    if state["marked"] or above(degrees, STEEPEST):
        return
    while tokens[first]["kind"] == "(" and tokens[last]["kind"] == ")":
        first = first + 1
        last = last - 1
    if last == first and tokens[first]["kind"] == "vulgar":
        ask_slope(state, str(tokens[first]["top"]), str(tokens[first]["under"]))
    elif is_quotient(tokens[first : last + 1]):
        ask_slope(state, text_of_tokens(tokens[first : last - 1]), tokens[last]["text"])


def ask_slope(state, rise, run):
    """Ask for a slope or for degrees."""
    fail(state, "Write " + rise + " in " + run + " for a slope, or " + rise + "/" + run + " deg for degrees.")


def is_quotient(tokens):
    """Whether an entry ends in a division by a number, and not in the fraction of a mixed number or of a sum."""
    last = len(tokens) - 1
    if last < 2 or tokens[last]["kind"] != "number" or tokens[last - 1]["kind"] != "/":
        return False
    before = tokens[last - 3]["kind"] if last > 2 else ""
    if before == "/" and tokens[last - 2]["kind"] == "number":
        return True  # a fraction over a number: 4-1/2/12
    mixed = before == "number" and tokens[last - 2]["kind"] == "number"
    return not mixed and len([one for one in tokens if one["kind"] == "+" or one["kind"] == "-"]) == 0


def text_of_tokens(tokens):
    """Tokens as they were typed, a space for many."""
    texts = [(" " if place > 0 and token["spaced"] else "") + token["text"] for place, token in enumerate(tokens)]
    return "".join(texts)


def read_count(text, units, numbers):
    """Read a whole number."""
    state = begin(text, units, numbers, "count")
    token = peek(state)
    if not failed(state) and token["kind"] == "-":
        fail(state, BELOW_NOTHING)
    if not failed(state) and (token["kind"] != "number" or not token["whole"]):
        fail(state, EXAMPLES["count"])
    if not failed(state) and peek_after(state, 1)["kind"] != "end":
        fail(state, ONE_COUNT)
    if failed(state):
        return refusal(state)
    return {"ok": True, "value": numbers["ratio"](token["top"], 1)}


def read_percent(text, units, numbers):
    """Read a part of a hundred: `12`, `12 1/2 %`."""
    state = begin(text, units, numbers, "percent")
    if not failed(state) and peek(state)["kind"] == "-":
        fail(state, BELOW_NOTHING)
    if not failed(state) and peek(state)["kind"] != "number" and peek(state)["kind"] != "vulgar":
        misplaced(state)
    value = 0 if failed(state) else parse_mixed(state)
    if not failed(state) and peek(state)["kind"] == "%":
        state["next"] += 1
    if not failed(state) and peek(state)["kind"] != "end":
        misplaced(state)
    return refusal(state) if failed(state) else {"ok": True, "value": value}


def read_temperature(text, shop, units, numbers):
    """Read a temperature in degrees Fahrenheit: `70`, `-5`, `21 C`. A bare number is Celsius in a metric shop."""
    body = unspaced("".join([temperature_mark(one) for one in plain_marks(text)])).lower()
    below = body[0:1] == "-"
    celsius = shop["metric"]
    if body.endswith("c") or body.endswith("f"):
        celsius = body.endswith("c")
        body = body[0 : len(body) - 1]
    state = begin(body[1 : len(body)] if below else body, units, numbers, "temperature")
    value = 0 if failed(state) or peek(state)["kind"] != "number" else parse_mixed(state)
    if not failed(state) and peek(state)["kind"] != "end":
        misplaced(state)
    if failed(state):
        return refusal(state)
    value = 0 - value if below else value
    value = value * 9 / 5 + 32 if celsius else value
    if above(COLDEST, value) or above(value, HOTTEST):
        return {"ok": False, "message": "No shop is as cold or as hot as that."}
    return {"ok": True, "value": value}


def temperature_mark(one):
    """A character of a temperature: every dash is a minus, and the mark of degrees says nothing."""
    if one in UNIT_MARKS and UNIT_MARKS[one] == "deg":
        return " "
    return "-" if one in SIGNS and SIGNS[one] == "-" else one


def finish_length(state, value):
    """The whole entry is read: give it its unit and check that it is a length."""
    if not failed(state) and peek(state)["kind"] != "end":
        misplaced(state)
    if not failed(state) and value["sort"] == RATIO:
        fail(state, "A length divided by a length is a plain number, not a length.")
    if failed(state):
        return refusal(state)
    inches = as_length(state, value)["x"]
    if above(0, inches):
        return {"ok": False, "message": "That comes to less than nothing."}
    if above(inches, LONGEST_LENGTH):
        times = len([one for one in state["tokens"] if one["kind"] == "*"]) > 0
        return {"ok": False, "message": "That is longer than 100 feet" + (": an x here means times." if times else ".")}
    return {"ok": True, "value": inches}
