"""Reads what a woodworker types: lengths, angles and slopes, counts.

One grammar everywhere (page, command line, JSON). A reading is returned as
`{"ok": True, "value": number}` or `{"ok": False, "message": text}`; nothing is raised.

Arithmetic on bare numbers stays bare until the end, or until it meets a number with a unit: so
`(31 1/4 - 3/8) / 2` halves a length and `2 * 4 5/8"` doubles one, and neither needs a rule of its own.

`numbers` is the platform's arithmetic, `units` the length units as `{"mm": [5, 127], ...}` in inches.
"""

from shopcalc.portable.marks import DIGITS, SIGNS, SPACES, VULGAR, characters
from shopcalc.portable.snap import above, larger, same, size_of
from shopcalc.portable.tokens import begin, fail, failed, misplaced, peek, peek_after, refusal
from shopcalc.portable.turning import atand

FINEST_SHARE = 1000000  # a difference below this share of what it is taken from is refused
LARGEST_NUMBER = 100000  # of anything on the way to an answer; doubles stay good far below a tick
LONGEST_LENGTH = 1200  # inches: 100 ft
LONGEST_ROW = 4000
LONGEST_LABEL = 40
TOO_LONG = "That is too long: a row has at most 4,000 characters."
DEAREST = 50000
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
        return {"ok": True, "value": first["x"]}
    if marked:
        fail(state, token["at"], "Nothing can follow the degrees.")
        return refusal(state)
    state["next"] += 1
    if token["kind"] == "%":
        slope = first["x"] / 100
    elif token["kind"] == ":" or token["text"] == "in":
        run = parse_sum(state)
        if failed(state):
            return refusal(state)
        if state["marked"]:
            fail(state, token["at"], "A slope has no degrees in it: write 5 in 12, or 22.6.")
        elif same(run["x"], 0):
            fail(state, token["at"], "The run of a slope cannot be zero.")
        slope = first["x"] if failed(state) else first["x"] / run["x"]
    else:
        fail(state, token["at"], misplaced(token))
        return refusal(state)
    if peek(state)["kind"] != "end":
        fail(state, peek(state)["at"], misplaced(peek(state)))
    if failed(state):
        return refusal(state)
    return {"ok": True, "value": atand(slope, numbers)}


def read_count(text, units, numbers):
    """Read a whole number."""
    state = begin(text, units, numbers, "count")
    token = peek(state)
    if not failed(state) and token["kind"] == "-":
        fail(state, token["at"], "This cannot be less than zero.")
    if not failed(state) and (token["kind"] != "number" or not token["whole"]):
        fail(state, token["at"], "Type a whole number, such as 4.")
    if not failed(state) and peek_after(state, 1)["kind"] != "end":
        fail(state, token["at"], "Type one whole number and nothing else.")
    if failed(state):
        return refusal(state)
    return {"ok": True, "value": numbers["ratio"](token["top"], 1)}


def read_percent(text, units, numbers):
    """Read a part of a hundred: `12`, `12 1/2 %`."""
    state = begin(text, units, numbers, "percent")
    if not failed(state) and peek(state)["kind"] == "-":
        fail(state, peek(state)["at"], "This cannot be less than zero.")
    if not failed(state) and peek(state)["kind"] != "number" and peek(state)["kind"] != "vulgar":
        fail(state, peek(state)["at"], misplaced(peek(state)))
    value = 0 if failed(state) else parse_mixed(state)
    if not failed(state) and peek(state)["kind"] == "%":
        state["next"] += 1
    if not failed(state) and peek(state)["kind"] != "end":
        fail(state, peek(state)["at"], misplaced(peek(state)))
    return refusal(state) if failed(state) else {"ok": True, "value": value}


def read_temperature(text, shop, units, numbers):
    """Read a temperature in degrees Fahrenheit: `70`, `-5`, `21 C`. A bare number is Celsius in a metric shop."""
    rest = text.replace("\u2212", "-").replace("\u00b0", " ").lower().split(" ")
    body = " ".join([part for part in rest if len(part) > 0])
    below = body[0:1] == "-"
    celsius = shop["metric"]
    if body.endswith("c") or body.endswith("f"):
        celsius = body.endswith("c")
        body = body[0 : len(body) - 1]
    state = begin(body[1 : len(body)] if below else body, units, numbers, "temperature")
    value = 0 if failed(state) or peek(state)["kind"] != "number" else parse_mixed(state)
    if not failed(state) and peek(state)["kind"] != "end":
        fail(state, peek(state)["at"], misplaced(peek(state)))
    if failed(state):
        return refusal(state)
    value = 0 - value if below else value
    value = value * 9 / 5 + 32 if celsius else value
    if above(COLDEST, value) or above(value, HOTTEST):
        return {"ok": False, "message": "No shop is as cold or as hot as that."}
    return {"ok": True, "value": value}


def read_lengths(text, most, shop, units, numbers):
    """Read a row of lengths with commas between them, at most `most`; an empty text is an empty row."""
    got = read_row(text, most, False, shop, units, numbers)
    return {"ok": True, "value": [one["length"] for one in got["value"]]} if got["ok"] else got


def row_parts(text):
    """What stands between the commas of a row; a comma too many at its end is forgiven."""
    parts = text.replace(";", ",").replace("\n", ",").split(",")
    if len(parts[len(parts) - 1].replace(" ", "")) == 0:
        parts.pop()
    return parts


def read_pieces(text, most, shop, units, numbers):
    """Read parts as `36 x4, 24 1/2 x6, rail 22 15/16 x2`: a length, how many, and a label before or behind.

    Gives rows `{"label", "length", "count"}`, at most `most` parts in all.
    """
    if len(text) > LONGEST_ROW:
        return {"ok": False, "message": TOO_LONG}
    rows = []
    total = 0
    for place, part in enumerate(row_parts(text)):
        row = split_piece(part)
        got = read_above_zero(row["length"], shop, units, numbers)
        if got["ok"] and len(row["label"]) > LONGEST_LABEL:
            got = {"ok": False, "message": "A label has at most 40 characters."}
        many = read_count(row["count"], units, numbers)
        if got["ok"] and (not many["ok"] or same(many["value"], 0)):
            got = {"ok": False, "message": "Write how many behind an x, such as x4."}
        if not got["ok"]:
            return {"ok": False, "message": "Part " + str(place + 1) + ", " + part_name(part) + ": " + got["message"]}
        total = total + many["value"]
        rows.append({"label": row["label"], "length": got["value"], "count": many["value"]})
    if total > most:
        return {"ok": False, "message": "That is too many: at most " + str(most) + " parts can be laid."}
    return {"ok": True, "value": rows}


def part_name(part):
    """A part as it was typed, cut short, to say which is meant."""
    return "\u201c" + trimmed(part)[0:30] + "\u201d"


def split_piece(part):
    """The three texts of one part: what stands before its first number is a label, and what stands behind the count."""
    chars = characters(part)
    start = 0
    while start < len(chars) and not begins_number(chars, start):
        start = start + 1
    label = "".join(chars[0:start])
    named = "".join([" ", trimmed(label)])
    if is_times(named[len(named) - 1]) and named[len(named) - 2] in SPACES:
        return {"label": "", "length": "", "count": "1"}  # only how many: the length is missing
    end = len(chars)
    while end > start and chars[end - 1] not in DIGITS:
        end = end - 1
    first = end
    while first > start and chars[first - 1] in DIGITS:
        first = first - 1
    sign = first
    while sign > start and chars[sign - 1] in SPACES:
        sign = sign - 1
    behind = "".join(chars[end : len(chars)])
    spaced = end == len(chars) or chars[end] in SPACES
    if first < end and spaced and sign > start + 1 and is_times(chars[sign - 1]):
        label = trimmed(label) if len(trimmed(label)) > 0 else trimmed(behind)
        length = "".join(chars[start : sign - 1])
        if len(trimmed(behind)) == 0 or label == trimmed(behind):
            return {"label": label, "length": length, "count": "".join(chars[first:end])}
    return {"label": trimmed(label), "length": "".join(chars[start : len(chars)]), "count": "1"}


def begins_number(chars, at):
    """Whether a measurement may begin there; the point behind a label does not begin one."""
    one = chars[at]
    if one == ".":
        return at + 1 < len(chars) and chars[at + 1] in DIGITS
    return one in DIGITS or one in VULGAR or one == "(" or one == "-"


def is_times(one):
    """Whether a character stands for times."""
    return one == "x" or one == "X" or (one in SIGNS and SIGNS[one] == "*")


def trimmed(text):
    """A text without spaces and colons at its ends."""
    start = 0
    end = len(text)
    while start < end and (text[start] in SPACES or text[start] == ":"):
        start = start + 1
    while end > start and (text[end - 1] in SPACES or text[end - 1] == ":"):
        end = end - 1
    return text[start:end]


def read_stock(text, most, shop, units, numbers):
    """Read lengths to buy as `96 @ 12.50, 120`: rows `{"length", "price"}`, the price None where there is none."""
    return read_row(text, most, True, shop, units, numbers)


def read_row(text, most, priced, shop, units, numbers):
    """Read lengths with commas between, each with a price behind @ where the row is `priced`."""
    if len(text) > LONGEST_ROW:
        return {"ok": False, "message": TOO_LONG}
    rows = []
    for place, part in enumerate(row_parts(text)):
        sides = part.split("@") if priced else [part]
        got = read_above_zero(sides[0], shop, units, numbers)
        price = {"ok": True, "value": None}
        if got["ok"] and len(sides) > 1:
            price = read_price("@".join(sides[1 : len(sides)]), units, numbers)
        wrong = price if got["ok"] else got
        if not wrong["ok"]:
            return {"ok": False, "message": "Number " + str(place + 1) + " in the row: " + wrong["message"]}
        rows.append({"length": got["value"], "price": price["value"]})
    if len(rows) > most:
        return {"ok": False, "message": "That is too many: at most " + str(most) + " can be weighed."}
    return {"ok": True, "value": rows}


def read_above_zero(text, shop, units, numbers):
    """Read a length that is one: nothing is no length of a piece."""
    got = read_length(text, shop, units, numbers)
    return {"ok": False, "message": "This cannot be zero."} if got["ok"] and same(got["value"], 0) else got


def read_price(text, units, numbers):
    """Read a price, without its currency or with a sign for it."""
    state = begin(text.replace("$", " ").replace("\u20ac", " ").replace("\u00a3", " "), units, numbers, "price")
    value = 0 if failed(state) or peek(state)["kind"] != "number" else parse_mixed(state)
    if not failed(state) and peek(state)["kind"] != "end":
        fail(state, peek(state)["at"], misplaced(peek(state)))
    if failed(state):
        return refusal(state)
    if above(value, DEAREST):
        return {"ok": False, "message": "No board costs as much as that."}
    return {"ok": True, "value": value}


def finish_length(state, value):
    """The whole entry is read: give it its unit and check that it is a length."""
    if not failed(state) and peek(state)["kind"] != "end":
        fail(state, peek(state)["at"], misplaced(peek(state)))
    if not failed(state) and value["sort"] == RATIO:
        fail(state, 0, "A length divided by a length is a plain number, not a length.")
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
            left = multiply(state, left, right) if sign["kind"] == "*" else divide(state, left, right, sign)
    return left


def parse_factor(state):
    """Parse factor := "(" sum ")" | quantity."""
    token = peek(state)
    if token["kind"] == "(":
        state["next"] += 1
        inner = parse_sum(state)
        if not failed(state) and peek(state)["kind"] != ")":
            fail(state, token["at"], "A bracket is opened and not closed.")
        state["next"] += 1
        return inner if failed(state) else with_unit(state, inner)
    if token["kind"] == "-":
        fail(state, token["at"], "A length cannot be negative." if state["what"] == "length" else "An angle cannot be negative.")
        return bare(token["at"])
    if token["kind"] == "number" or token["kind"] == "vulgar":
        return parse_quantity(state)
    fail(state, token["at"], misplaced(token))
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
            fail(state, token["at"], "After feet come inches.")
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
            fail(state, token["at"], "An angle is in degrees, or a slope such as 5 in 12.")
        return value
    if token["text"] == "deg":
        fail(state, token["at"], "This is a length: degrees do not belong in it.")
        return value
    state["next"] += 1
    if value["sort"] != BARE:
        fail(state, token["at"], "That already has a unit.")
        return value
    return limited(state, in_inches(state, value["x"], token["text"]), LENGTH)


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
        if not joined:
            fail(state, start["at"], "The fraction behind a whole number must be less than one.")
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
        fail(state, under["at"], "A fraction cannot be over zero.")
        return state["numbers"]["ratio"](0, 1)
    return state["numbers"]["ratio"](top["top"], under["top"])


def bare(x):
    """A number with no unit."""
    return {"x": x, "sort": BARE}


def limited(state, x, sort):
    """A value, unless it is too large to mean anything in a shop."""
    if above(x, LARGEST_NUMBER) or above(0 - LARGEST_NUMBER, x):
        fail(state, 0, "A number in there is too large.")
    return {"x": x, "sort": sort}


def as_length(state, value):
    """`value` as a length: a bare number is in the shop's unit."""
    if value["sort"] != BARE:
        return value
    unit = "mm" if state["metric"] else "in"
    return {"x": in_inches(state, value["x"], unit), "sort": LENGTH}


def add(state, left, right, sign):
    """Left + right or left - right."""
    if left["sort"] != right["sort"]:
        if left["sort"] == RATIO or right["sort"] == RATIO:
            fail(state, sign["at"], "A length and a plain number cannot be added.")
            return left
        left = as_length(state, left)
        right = as_length(state, right)
    if sign["kind"] == "+":
        return limited(state, left["x"] + right["x"], left["sort"])
    out = difference(state, left["x"], right["x"], sign)
    if above(0, out) and not state["below_zero"]:
        fail(state, sign["at"], "That subtraction goes below zero.")
    return limited(state, out, left["sort"])


def difference(state, left, right, sign):
    """Left - right. What is left of two nearly equal numbers is mostly a double's noise, and is not worked on with."""
    out = left - right
    if same(left, right):
        return state["numbers"]["ratio"](0, 1)
    if size_of(out) * FINEST_SHARE < larger(size_of(left), size_of(right)):
        fail(state, sign["at"], "That difference is too small for any tape.")
    return out


def multiply(state, left, right):
    """Left * right; two lengths would be an area."""
    if left["sort"] == LENGTH and right["sort"] == LENGTH:
        fail(state, 0, "A length times a length is an area.")
        return left
    sort = LENGTH if left["sort"] == LENGTH or right["sort"] == LENGTH else BARE
    if sort == BARE and (left["sort"] == RATIO or right["sort"] == RATIO):
        sort = RATIO
    return limited(state, left["x"] * right["x"], sort)


def divide(state, left, right, sign):
    """Left / right; a plain number cannot be divided by a length."""
    if same(right["x"], 0):
        fail(state, sign["at"], "That divides by zero.")
        return left
    if right["sort"] == LENGTH:
        if left["sort"] != LENGTH:
            fail(state, sign["at"], "A plain number cannot be divided by a length.")
        return limited(state, left["x"] / right["x"], RATIO)
    sort = left["sort"]
    if sort == BARE and right["sort"] == RATIO:
        sort = RATIO
    return limited(state, left["x"] / right["x"], sort)
