"""The grammar of a measurement: sums, products, brackets, mixed numbers and units, from tokens to a value.

A value is `{"x": number, "sort": BARE, LENGTH or RATIO}`. Arithmetic on bare numbers stays bare until the end, or until it
meets a number with a unit: so `(31 1/4 - 3/8) / 2` halves a length and `2 * 4 5/8"` doubles one, and neither needs a rule of
its own.
"""

from shopcalc.portable.arithmetic.snap import above, magnitude, same
from shopcalc.portable.measures.tokens import fail, failed, misplaced, peek, peek_after

FINEST_SHARE = 2000000  # a difference below this share of all that went into it is refused
LARGEST_NUMBER = 100000  # of anything on the way to an answer; doubles stay good far below a tick

BARE = 0  # a number with no unit yet
LENGTH = 1
RATIO = 2  # a length over a length: a plain number that can no longer become a length


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
    if not above(in_inches(state, 1, "ft"), inches):
        fail(state, "After feet, inches are less than 12: type inches alone, or a sum.")
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
    # beside a whole number only a fraction can stand, so the spaces in 3 5 / 8 say nothing
    follows = is_slash_fraction(state, ahead + 1) or (not joined and is_spaced_fraction(state, 1))
    if start["kind"] != "number" or not start["whole"] or not follows:
        return whole
    under = peek_after(state, ahead + 2)
    if start["top"] >= under["top"] and under["top"] > 0:
        wrong = "The fraction after a whole number must be less than one"
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


def is_spaced_fraction(state, ahead):
    """Whether a slash and a whole number follow, however they are spaced."""
    return peek_after(state, ahead)["kind"] == "/" and peek_after(state, ahead + 1)["kind"] == "number" and peek_after(state, ahead + 1)["whole"]


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
    return value["noise"] if "noise" in value else magnitude(value["x"])


def with_noise(value, noise):
    """A value with all that went into it."""
    value["noise"] = noise
    return value


def difference(state, left, right, noise):
    """Left - right. What is left of two nearly equal numbers is mostly a double's noise, and is not worked on with."""
    out = left - right
    if same(left, right):
        return state["numbers"]["ratio"](0, 1)
    if above(1, magnitude(out) * FINEST_SHARE / noise):
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
    noise = noise_of(left) * magnitude(right["x"]) + noise_of(right) * magnitude(left["x"])
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
    noise = (noise_of(left) + noise_of(right) * magnitude(left["x"] / right["x"])) / magnitude(right["x"])
    return with_noise(limited(state, left["x"] / right["x"], sort), noise)
