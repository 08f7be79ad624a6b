"""Cuts what is typed into numbers, signs and units, and keeps the next of them and the first fault found.

A token is a dictionary with its kind ("number", "vulgar", "unit", a sign, or "end"), its text, and whether a space
stands before it; numbers carry a whole number `top` over a power of ten `under`.
"""

from shopcalc.portable.measures.characters import (
    DIGITS,
    LETTERS,
    SIGNS,
    SPACES,
    UNIT_MARKS,
    UNIT_WORDS,
    UNSEEN,
    VULGAR,
    VULGAR_VALUES,
    characters,
    plain_marks,
    unspaced,
)

LONGEST_ENTRY = 80
SIDE_BY_SIDE = "Two numbers stand side by side: put + or - between them, or finish the fraction, such as 1 3/8."
MOST_DIGITS = 9  # before or after the point: both runtimes hold such numbers exactly; what follows is below all that is compared

BELOW_NOTHING = "This cannot be less than zero."
NOTHING = "This cannot be zero."
ONE_COUNT = "Type one whole number and nothing else."
EXAMPLES = {
    "length": "Type a length, such as 3 5/8 in or 92 mm.",
    "angle": "Type an angle, such as 10 or 5 in 12.",
    "count": "Type a whole number, such as 4.",
    "percent": "Type a part of a hundred, such as 12.",
    "price": "Type a price, such as 12.50.",
    "temperature": "Type a temperature, such as 70 or 21 C.",
}


def begin(text, units, numbers, what):
    """A state ready to parse `text` as `what`, one of `EXAMPLES`."""
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
    if len(characters(text)) > LONGEST_ENTRY:
        fail(state, "That is too long: an entry has at most " + str(LONGEST_ENTRY) + " characters.")
    else:
        tokenize(state, plain_marks(unspaced(text)))
    if len(state["tokens"]) == 0 and not failed(state):
        fail(state, EXAMPLES[what])
    add_token(state, "end", "", True)
    return state


def fail(state, message):
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


def misplaced(state):
    """Refuse the next token: it cannot stand where it stands."""
    kind = peek(state)["kind"]
    shown = "\u201c" + peek(state)["text"] + "\u201d"
    before = state["tokens"][state["next"] - 1]["kind"] if state["next"] > 0 else ""
    if kind == "end" and before in ["+", "-", "*", "/", ":"]:
        fail(state, "Something is missing after \u201c" + state["tokens"][state["next"] - 1]["text"] + "\u201d.")
    elif kind == "end":
        fail(state, "Something is missing at the end.")
    elif kind == "number" and peek_after(state, 1)["kind"] == "/" and peek_after(state, 2)["kind"] == "end":
        fail(state, "Something is missing after \u201c" + peek_after(state, 1)["text"] + "\u201d.")
    elif kind == "number" or kind == "vulgar":
        fail(state, SIDE_BY_SIDE)
    elif kind == "unit" and before == "unit":
        fail(state, "That already has a unit.")
    elif kind == "unit" and before != "number" and before != "vulgar":
        fail(state, "The unit " + shown + " has no number before it.")
    else:
        fail(state, shown + " cannot stand there.")


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
        if one in DIGITS or one == ".":
            at = token_number(state, chars, at, spaced)
        elif one in VULGAR:
            top = VULGAR_VALUES[VULGAR.find(one)]
            add_token(state, "vulgar", one, spaced)
            last_token(state)["top"] = top[0]
            last_token(state)["under"] = top[1]
            at += 1
        elif one == "'" and at + 1 < len(chars) and chars[at + 1] == "'":
            add_token(state, "unit", "in", spaced)
            at += 2
        elif one in UNIT_MARKS:
            add_token(state, "unit", UNIT_MARKS[one], spaced)
            at += 1
        elif one in SIGNS:
            add_token(state, SIGNS[one], one, spaced)
            at += 1
        elif one in LETTERS:
            at = token_word(state, chars, at, spaced)
        else:
            fail(state, unknown_character(one, state["what"]))
        spaced = False


def unknown_character(one, what):
    """What to say of a character that no measurement has; a count has no decimals to write with a point."""
    if one == ",":
        return ONE_COUNT if what == "count" else "Write decimals with a point, not a comma."
    if one in UNSEEN:
        return "A character in there cannot be seen: type it anew."
    return "I cannot read \u201c" + one + "\u201d in a measurement."


def add_token(state, kind, text, spaced):
    """Append a token."""
    state["tokens"].append({"kind": kind, "text": text, "spaced": spaced})


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
                fail(state, "A number has only one decimal point.")
                return at
            whole = False
        elif whole or after < MOST_DIGITS:
            top = top * 10 + int(chars[at])
            if whole:
                before += 1
            else:
                after += 1
                under = under * 10
            if before > MOST_DIGITS:
                fail(state, "That number has too many digits.")
                return at
        at += 1
    if before + after == 0:
        fail(state, "A point needs a digit beside it.")
    add_token(state, "number", "".join(chars[start:at]), spaced)
    last_token(state)["top"] = top
    last_token(state)["under"] = under
    last_token(state)["whole"] = whole
    return at


def unknown_word(word, plain, what):
    """Why a word is none of a measurement."""
    if plain in ["full", "scant"]:
        return "\u201c" + word + "\u201d says no amount: leave it out, or type the decimal."
    unknown = "I do not know \u201c" + word + "\u201d"
    return unknown + (": use in, ft, mm, cm or m." if what == "length" else ". " + EXAMPLES[what])


def token_word(state, chars, at, spaced):
    """A run of letters: a unit, or nothing we know."""
    word = ""
    while at < len(chars) and chars[at] in LETTERS:
        word = word + chars[at]
        at += 1
    plain = word.lower()
    if plain == "x":
        if is_hexadecimal(state, chars, at, spaced):
            fail(state, "0x begins no measurement: put spaces around an x that multiplies.")
        add_token(state, "*", word, spaced)
        return at
    if plain not in UNIT_WORDS:
        fail(state, unknown_word(word, plain, state["what"]))
        return at
    add_token(state, "unit", UNIT_WORDS[plain], spaced)
    if at < len(chars) and chars[at] == ".":
        # "in." as carpenters write it; a digit behind the point would be a number of its own
        if at + 1 >= len(chars) or chars[at + 1] not in DIGITS:
            at += 1
    return at


def is_hexadecimal(state, chars, at, spaced):
    """Whether the x just before `at` has a 0 close before it and a digit close behind, as in 0x10: no one multiplies so."""
    if spaced or len(state["tokens"]) == 0 or at == len(chars):
        return False
    return last_token(state)["text"] == "0" and chars[at] in DIGITS
