"""Cuts what is typed into numbers, signs and units, and keeps the place in them and the first fault found.

A token is a dictionary with its kind ("number", "vulgar", "unit", a sign, or "end"), its text, its place, and
whether a space stands before it; numbers carry a whole number `top` over a power of ten `under`.
"""

from shopcalc.portable.marks import (
    DIGITS,
    LETTERS,
    SIGNS,
    SPACES,
    UNIT_MARKS,
    UNIT_WORDS,
    VULGAR,
    VULGAR_VALUES,
    characters,
)

LONGEST_ENTRY = 80
MOST_DIGITS = 9  # before or after the point: both runtimes hold such numbers exactly

EXAMPLES = {
    "length": "Type a length, such as 3 5/8.",
    "angle": "Type an angle, such as 10 or 5 in 12.",
    "count": "Type a whole number, such as 4.",
    "percent": "Type a part of a hundred, such as 12.",
    "price": "Type a price, such as 12.50.",
    "temperature": "Type a temperature, such as 70 or 21 C.",
}

UNITLESS = ["count", "percent", "temperature", "price"]


def begin(text, units, numbers, what):
    """A state ready to parse `text` as `what`: length or angle."""
    state = {
        "units": units,
        "numbers": numbers,
        "what": what,
        "metric": False,
        "below_zero": what == "angle",
        "marked": False,
        "next": 0,
        "tokens": [],
        "fault": "",
    }
    chars = characters(text)
    if len(chars) > LONGEST_ENTRY:
        fail(state, 0, "That is too long: an entry has at most 80 characters.")
    else:
        tokenize(state, chars)
    if len(state["tokens"]) == 0 and not failed(state):
        fail(state, 0, EXAMPLES[what])
    state["tokens"].append({"kind": "end", "text": "", "at": len(chars), "spaced": True})
    return state


def fail(state, at, message):
    """Keep the first fault; what follows from it is noise."""
    if len(state["fault"]) == 0:
        state["fault"] = message


def failed(state):
    """Whether a fault was found."""
    return len(state["fault"]) > 0


def refusal(state):
    """The fault as an answer."""
    return {"ok": False, "message": state["fault"]}


def peek(state):
    """The next token."""
    return state["tokens"][state["next"]]


def peek_after(state, ahead):
    """The token `ahead` places further on; the end stands behind itself."""
    tokens = state["tokens"]
    place = state["next"] + ahead
    return tokens[place] if place < len(tokens) else tokens[len(tokens) - 1]


def misplaced(token):
    """What to say of a token that cannot stand where it stands."""
    if token["kind"] == "end":
        return "Something is missing at the end."
    if token["kind"] == "number" or token["kind"] == "vulgar":
        return "Two numbers stand side by side: put + or - between them."
    if token["kind"] == "unit":
        return "The unit \u201c" + token["text"] + "\u201d has no number before it."
    return "\u201c" + token["text"] + "\u201d cannot stand there."


# Characters to tokens.


def tokenize(state, chars):
    """Cut the entry into numbers, fractions, signs and units."""
    at = 0
    spaced = True
    while at < len(chars) and not failed(state):
        one = chars[at]
        if one in SPACES:
            spaced = True
            at += 1
            continue
        start = at
        if one in DIGITS or one == ".":
            at = token_number(state, chars, at, spaced)
        elif one in VULGAR:
            top = VULGAR_VALUES[VULGAR.find(one)]
            add_token(state, "vulgar", one, start, spaced)
            last_token(state)["top"] = top[0]
            last_token(state)["under"] = top[1]
            at += 1
        elif one == "'" and at + 1 < len(chars) and chars[at + 1] == "'":
            add_token(state, "unit", "in", start, spaced)
            at += 2
        elif one in UNIT_MARKS:
            add_token(state, "unit", UNIT_MARKS[one], start, spaced)
            at += 1
        elif one in SIGNS:
            add_token(state, SIGNS[one], SIGNS[one], start, spaced)
            at += 1
        elif one in LETTERS:
            at = token_word(state, chars, at, spaced)
        else:
            fail(state, at, unknown_character(one))
        spaced = False


def unknown_character(one):
    """What to say of a character that no measurement has."""
    if one == ",":
        return "Write decimals with a point, not a comma."
    return "I cannot read \u201c" + one + "\u201d in a measurement."


def add_token(state, kind, text, at, spaced):
    """Append a token."""
    state["tokens"].append({"kind": kind, "text": text, "at": at, "spaced": spaced})


def last_token(state):
    """The token appended last."""
    return state["tokens"][len(state["tokens"]) - 1]


def token_number(state, chars, at, spaced):
    """A run of digits with at most one point, kept as a whole number over a power of ten."""
    start = at
    top = 0
    under = 1
    before = 0
    after = 0
    whole = True
    while at < len(chars) and (chars[at] in DIGITS or chars[at] == "."):
        if chars[at] == ".":
            if not whole:
                fail(state, at, "A number has only one decimal point.")
                return at
            whole = False
        else:
            top = top * 10 + int(chars[at])
            if whole:
                before += 1
            else:
                after += 1
                under = under * 10
            if before > MOST_DIGITS or after > MOST_DIGITS:
                fail(state, start, "That number has too many digits.")
                return at
        at += 1
    if before + after == 0:
        fail(state, start, "A point needs a digit beside it.")
    add_token(state, "number", "", start, spaced)
    last_token(state)["top"] = top
    last_token(state)["under"] = under
    last_token(state)["whole"] = whole
    return at


def token_word(state, chars, at, spaced):
    """A run of letters: a unit, or nothing we know."""
    start = at
    word = ""
    while at < len(chars) and chars[at] in LETTERS:
        word = word + chars[at]
        at += 1
    plain = word.lower()
    if plain == "x":
        add_token(state, "*", "*", start, spaced)
        return at
    if plain not in UNIT_WORDS:
        hint = EXAMPLES[state["what"]] if state["what"] in UNITLESS else "use in, ft, mm, cm or m."
        fail(state, start, "I do not know \u201c" + word + "\u201d: " + hint)
        return at
    add_token(state, "unit", UNIT_WORDS[plain], start, spaced)
    if at < len(chars) and chars[at] == ".":
        # "in." as carpenters write it; a digit behind the point would be a number of its own
        if at + 1 >= len(chars) or chars[at + 1] not in DIGITS:
            at += 1
    return at
