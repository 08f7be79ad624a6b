"""Reads what a woodworker types: lengths, angles and slopes, counts.

One grammar everywhere (page, command line, JSON). A reading is returned as
`{"ok": True, "value": number}` or `{"ok": False, "message": text}`; nothing is raised.

Arithmetic on bare numbers stays bare until the end, or until it meets a number with a unit: so
`(31 1/4 - 3/8) / 2` halves a length and `2 * 4 5/8"` doubles one, and neither needs a rule of its own.

`numbers` is the platform's arithmetic, `units` the length units as `{"mm": [5, 127], ...}` in inches.
"""

from shopcalc.portable.marks import SIGNS, UNIT_MARKS, plain_marks, unspaced
from shopcalc.portable.snap import above, same, size_of
from shopcalc.portable.tokens import begin, fail, failed, misplaced, peek, peek_after, refusal
from shopcalc.portable.turning import atand

FINEST_SHARE = 2000000  # a difference below this share of all that went into it is refused
LARGEST_NUMBER = 100000  # of anything on the way to an answer; doubles stay good far below a tick
LONGEST_LENGTH = 1200  # inches: 100 ft
STEEPEST = 2  # rise over run, where a fraction alone may be a pitch: 24 in 12
COLDEST = -100
HOTTEST = 250

BARE = 0  # a number with no unit yet
LENGTH = 1
RATIO = 2  # a length over a length: a plain number that can no longer become a length


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
    """Ask what a fraction alone is: `5/12` is how many write a pitch, and as degrees it would be next to nothing."""
    tokens = state["tokens"]
    first = tokens[0]
    over = len(tokens) == 4 and tokens[1]["kind"] == "/"
    alone = len(tokens) == 2 and first["kind"] == "vulgar"
    if (over or alone) and not above(degrees, STEEPEST):
        top = first["text"] if over else str(first["top"])
        under = tokens[2]["text"] if over else str(first["under"])
        fail(state, "Write " + top + " in " + under + " for a slope, or " + top + "/" + under + " deg for degrees.")


def read_count(text, units, numbers):
    """Read a whole number."""
    state = begin(text, units, numbers, "count")
    token = peek(state)
    if not failed(state) and token["kind"] == "-":
        fail(state, "This cannot be less than zero.")
    if not failed(state) and (token["kind"] != "number" or not token["whole"]):
        fail(state, "Type a whole number, such as 4.")
    if not failed(state) and peek_after(state, 1)["kind"] != "end":
        fail(state, "Type one whole number and nothing else.")
    if failed(state):
        return refusal(state)
    return {"ok": True, "value": numbers["ratio"](token["top"], 1)}


def read_percent(text, units, numbers):
    """Read a part of a hundred: `12`, `12 1/2 %`."""
    state = begin(text, units, numbers, "percent")
    if not failed(state) and peek(state)["kind"] == "-":
        fail(state, "This cannot be less than zero.")
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
        return {"ok": False, "message": "That is longer than 100 feet."}
    return {"ok": True, "value": inches}


# Tokens to a value: {"x": number, "sort": BARE, LENGTH or RATIO}.


def parse_sum(state):
    """Parse sum := product (("+" | "-") product)*."""
    left = parse_product(state)
    while not failed(state) and (peek(state)["kind"] == "+" or peek(state)["kind"] == "-"):
        sign = peek(state)
        state["next"] += 1
        right = parse_product(state)
        if not failed(state):
            left = add(state, left, right, sign)
    return left


def parse_product(state):
    """Parse product := factor (("*" | "/") factor)*."""
    left = parse_factor(state)
    while not failed(state) and (peek(state)["kind"] == "*" or peek(state)["kind"] == "/"):
        sign = peek(state)
        state["next"] += 1
        right = parse_factor(state)
        if not failed(state):
            left = multiply(state, left, right) if sign["kind"] == "*" else divide(state, left, right)
    return left


def parse_factor(state):
    """Parse factor := "(" sum ")" | quantity."""
    token = peek(state)
    if token["kind"] == "(":
        state["next"] += 1
        inner = parse_sum(state)
        if not failed(state) and peek(state)["kind"] != ")":
            fail(state, "A bracket is opened and not closed.")
        state["next"] += 1
        return inner if failed(state) else with_unit(state, inner)
    if token["kind"] == "-":
        fail(state, "A length cannot be negative." if state["what"] == "length" else "An angle cannot be negative.")
        return bare(0)
    if token["kind"] == "number" or token["kind"] == "vulgar":
        return parse_quantity(state)
    misplaced(state)
    return bare(0)


def parse_quantity(state):
    """Parse quantity := mixed unit? | mixed "ft" mixed "in"?."""
    first = with_unit(state, bare(parse_mixed(state)))
    if failed(state) or first["sort"] != LENGTH or state["tokens"][state["next"] - 1]["text"] != "ft":
        return first
    token = peek(state)
    if token["kind"] == "-" and not token["spaced"] and not peek_after(state, 1)["spaced"]:
        # 6'-6" is six feet six; with spaces around the dash it is a subtraction
        token = peek_after(state, 1)
        if token["kind"] != "number" and token["kind"] != "vulgar":
            return first
        state["next"] += 1
    if token["kind"] != "number" and token["kind"] != "vulgar":
        return first
    inches = parse_mixed(state)
    if failed(state):
        return first
    token = peek(state)
    if token["kind"] == "unit":
        if token["text"] != "in":
            fail(state, "After feet come inches.")
        state["next"] += 1
    return {"x": first["x"] + inches, "sort": LENGTH}


def with_unit(state, value):
    """Take a unit that stands behind `value`, if one does."""
    token = peek(state)
    if token["kind"] != "unit":
        return value
    if state["what"] == "angle":
        if token["text"] == "deg":
            state["next"] += 1
            state["marked"] = True
        elif token["text"] != "in":
            fail(state, "An angle is in degrees, or a slope such as 5 in 12.")
        return value
    if token["text"] == "deg":
        fail(state, "This is a length: degrees do not belong in it.")
        return value
    state["next"] += 1
    if value["sort"] != BARE:
        fail(state, "That already has a unit.")
        return value
    return turned(state, value, token["text"])


def turned(state, value, unit):
    """A bare value as a length of that unit, with its noise where a sum has left it some of its own."""
    found = limited(state, in_inches(state, value["x"], unit), LENGTH)
    return with_noise(found, in_inches(state, value["noise"], unit)) if "noise" in value else found


def in_inches(state, x, unit):
    """`x` of a unit, in inches."""
    factor = state["units"][unit]
    return x * factor[0] / factor[1]


def parse_mixed(state):
    """Parse mixed := decimal | fraction | whole (" " | "-")? fraction."""
    numbers = state["numbers"]
    token = peek(state)
    state["next"] += 1
    if token["kind"] == "vulgar":
        return numbers["ratio"](token["top"], token["under"])
    if not token["whole"]:
        return numbers["ratio"](token["top"], token["under"])
    if is_slash_fraction(state, 0):
        state["next"] += 2
        return fraction_of(state, token, state["tokens"][state["next"] - 1])
    whole = numbers["ratio"](token["top"], 1)
    after = peek(state)
    joined = after["kind"] == "-" and not after["spaced"] and not peek_after(state, 1)["spaced"]
    ahead = 1 if joined else 0
    start = peek_after(state, ahead)
    if start["kind"] == "vulgar":
        state["next"] += ahead + 1
        return whole + numbers["ratio"](start["top"], start["under"])
    if start["kind"] != "number" or not start["whole"] or not is_slash_fraction(state, ahead + 1):
        return whole
    under = peek_after(state, ahead + 2)
    if start["top"] >= under["top"] and under["top"] > 0:
        wrong = "The fraction behind a whole number must be less than one"
        fail(state, wrong + (": to subtract it, put spaces around the dash." if joined else "."))
        return whole
    state["next"] += ahead + 3
    return whole + fraction_of(state, start, under)


def is_slash_fraction(state, ahead):
    """Whether a slash and a whole number follow, with no space between: 5/8, not 5 / 8."""
    slash = peek_after(state, ahead)
    under = peek_after(state, ahead + 1)
    if slash["kind"] != "/" or slash["spaced"] or under["kind"] != "number":
        return False
    return under["whole"] and not under["spaced"]


def fraction_of(state, top, under):
    """The fraction of two number tokens."""
    if under["top"] == 0:
        fail(state, "A fraction cannot be over zero.")
        return state["numbers"]["ratio"](0, 1)
    return state["numbers"]["ratio"](top["top"], under["top"])


def bare(x):
    """A number with no unit."""
    return {"x": x, "sort": BARE}


def limited(state, x, sort):
    """A value, unless it is too large to mean anything in a shop."""
    if above(x, LARGEST_NUMBER) or above(0 - LARGEST_NUMBER, x):
        fail(state, "A number in there is too large.")
    return {"x": x, "sort": sort}


def as_length(state, value):
    """`value` as a length: a bare number is in the shop's unit."""
    if value["sort"] != BARE:
        return value
    unit = "mm" if state["metric"] else "in"
    return turned(state, value, unit)


def add(state, left, right, sign):
    """Left + right or left - right."""
    if left["sort"] != right["sort"]:
        if left["sort"] == RATIO or right["sort"] == RATIO:
            fail(state, "A length and a plain number cannot be added.")
            return left
        left = as_length(state, left)
        right = as_length(state, right)
    noise = noise_of(left) + noise_of(right)
    if sign["kind"] == "+":
        return with_noise(limited(state, left["x"] + right["x"], left["sort"]), noise)
    out = difference(state, left["x"], right["x"], noise)
    if above(0, out) and not state["below_zero"]:
        fail(state, "That subtraction goes below zero.")
    return with_noise(limited(state, out, left["sort"]), noise)


def noise_of(value):
    """All that went into a value, of which a double's noise is a share: what is left of two nearly equal numbers keeps theirs."""
    return value["noise"] if "noise" in value else size_of(value["x"])


def with_noise(value, noise):
    """A value with all that went into it."""
    value["noise"] = noise
    return value


def difference(state, left, right, noise):
    """Left - right. What is left of two nearly equal numbers is mostly a double's noise, and is not worked on with."""
    out = left - right
    if same(left, right):
        return state["numbers"]["ratio"](0, 1)
    if above(1, size_of(out) * FINEST_SHARE / noise):
        fail(state, "That difference is too small for any tape.")
    return out


def multiply(state, left, right):
    """Left * right; two lengths would be an area."""
    if left["sort"] == LENGTH and right["sort"] == LENGTH:
        fail(state, "A length times a length is an area.")
        return left
    sort = LENGTH if left["sort"] == LENGTH or right["sort"] == LENGTH else BARE
    if sort == BARE and (left["sort"] == RATIO or right["sort"] == RATIO):
        sort = RATIO
    noise = noise_of(left) * size_of(right["x"]) + noise_of(right) * size_of(left["x"])
    return with_noise(limited(state, left["x"] * right["x"], sort), noise)


def divide(state, left, right):
    """Left / right; a plain number cannot be divided by a length."""
    if same(right["x"], 0):
        fail(state, "That divides by zero.")
        return left
    sort = left["sort"]
    if right["sort"] == LENGTH:
        if left["sort"] != LENGTH:
            fail(state, "A plain number cannot be divided by a length.")
        sort = RATIO
    elif sort == BARE and right["sort"] == RATIO:
        sort = RATIO
    noise = (noise_of(left) + noise_of(right) * size_of(left["x"] / right["x"])) / size_of(right["x"])
    return with_noise(limited(state, left["x"] / right["x"], sort), noise)
