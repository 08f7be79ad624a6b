"""Reads what is typed with commas between: rows of lengths, parts with how many of each, lengths with their prices.

What stands between two commas is read by `parsing.py`; what is wrong there is said with its place in the row.
"""

from shopcalc.portable.arithmetic.snap import above, same
from shopcalc.portable.measures.characters import DIGITS, SIGNS, SPACES, VULGAR, characters, first_letters, letters_in, plain_marks, unspaced
from shopcalc.portable.measures.grammar import parse_mixed
from shopcalc.portable.measures.parsing import read_count, read_length
from shopcalc.portable.measures.tokens import NOTHING, SIDE_BY_SIDE, begin, failed, misplaced, peek, refusal

LONGEST_ROW = 4000
LONGEST_LABEL = 40
TOO_LONG = "That is too long: a row has at most " + str(LONGEST_ROW) + " characters."
NO_COUNT = "As many can be bought as are wanted: leave out how many."
HOW_MANY = "Write how many after an x, such as x4."
DECIMAL_COMMA = "Write decimals with a point, such as 412.5, and a space after a comma that begins the next length."
DEAREST = 50000
MOST_ALIKE = 999


def read_lengths(text, most, shop, units, numbers):
    """Read a row of lengths with commas between them, `1/8 x3` for three of one, at most `most`; an empty text is an empty row."""
    got = read_row(text, most, False, shop, units, numbers)
    if not got["ok"]:
        return got
    lengths = []
    for one in got["value"]:
        lengths = lengths + [one["length"] for _ in range(one["count"])]
    return {"ok": True, "value": lengths}


def row_parts(text):
    """What stands between the commas of a row; a comma too many at its end is forgiven."""
    parts = "".join(plain_marks(text)).replace(";", ",").replace("\n", ",").split(",")
    if len(unspaced(parts[len(parts) - 1])) == 0:
        parts.pop()
    return parts


def read_boards(text, most, shop, units, numbers):
    """Read the boards that are on hand, written as parts are."""
    return read_some_of("Board", "boards", text, most, shop, units, numbers)


def read_pieces(text, most, shop, units, numbers):
    """Read parts as `36 x4, 24 1/2 x6, rail 22 15/16 x2`: a length, how many, and a label before or behind.

    Gives rows `{"label", "length", "count"}`, at most `most` parts in all.
    """
    return read_some_of("Part", "parts", text, most, shop, units, numbers)


def read_some_of(one, all_of_them, text, most, shop, units, numbers):
    """Read parts or boards, called so where one is wrong or they are too many."""
    if letters_in(text) > LONGEST_ROW:
        return {"ok": False, "message": TOO_LONG}
    if has_decimal_comma(text, shop):
        return {"ok": False, "message": DECIMAL_COMMA}
    rows = []
    total = 0
    for place, part in enumerate(row_parts(text)):
        row = split_piece(part)
        got = read_above_zero(row["length"], shop, units, numbers)
        if got["ok"] and len(row["asked"]) > 0:
            got = {"ok": False, "message": row["asked"]}
        if got["ok"] and letters_in(row["label"]) > LONGEST_LABEL:
            got = {"ok": False, "message": "A label has at most " + str(LONGEST_LABEL) + " characters."}
        many = read_count(row["count"], units, numbers)
        if got["ok"] and (not many["ok"] or same(many["value"], 0)):
            got = {"ok": False, "message": HOW_MANY}
        if not got["ok"]:
            return {"ok": False, "message": one + " " + str(place + 1) + ", " + part_name(part) + ": " + got["message"]}
        total = total + many["value"]
        rows.append({"label": row["label"], "length": got["value"], "count": many["value"]})
    if total > most:
        return {"ok": False, "message": "That is too many: at most " + str(most) + " " + all_of_them + " can be laid."}
    return {"ok": True, "value": rows}


def has_decimal_comma(text, shop):
    """Whether a comma in a metric row may stand for a point: between digits without a space, one or two behind it, as in `412,5`.

    In inches it begins the next length, since those have fractions.
    """
    marks = plain_marks(text)
    for place, one in enumerate(marks):
        if one == "," and shop["metric"] and place > 0 and marks[place - 1] in DIGITS and digits_behind(marks, place) in [1, 2]:
            return True
    return False


def digits_behind(marks, place):
    """How many digits follow a mark, where nothing follows them that makes a fraction or a decimal of them."""
    end = place + 1
    while end < len(marks) and marks[end] in DIGITS:
        end = end + 1
    return 0 if end < len(marks) and marks[end] in "./" else end - place - 1


def part_name(part):
    """A part as it was typed, cut short, to say which is meant."""
    return "\u201c" + first_letters(unspaced(part), 30) + "\u201d"


def split_piece(part):
    """The three texts of one part: what stands before its first number is a label, and what stands behind the count.

    Where they could be meant the other way round, what is `asked`.
    """
    chars = characters(unspaced(part))
    start = 0
    while start < len(chars) and not begins_number(chars, start):
        start = start + 1
    label = "".join(chars[0:start])
    named = "".join([" ", trimmed(label)])
    if is_times(named[len(named) - 1]) and named[len(named) - 2] in SPACES:
        return piece_texts("", "", "1", "")  # only how many: the length is missing
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
            count = "".join(chars[first:end])
            usual = chars[sign - 2] in SPACES and sign == first
            return piece_texts(label, length, count, "" if usual else asked_of(unspaced(length), count))
    return piece_texts(trimmed(label), "".join(chars[start : len(chars)]), "1", "")


def piece_texts(label, length, count, asked):
    """The texts of one part; a length with an x in it, which is no sign of arithmetic here, says how many before it."""
    if len([one for one in characters(length) if is_times(one) and one != "*"]) > 0:
        asked = "Write how many after the length, such as 36 x3."
    return {"label": label, "length": length, "count": count, "asked": asked}


def asked_of(length, count):
    """What to ask where `3 x 96` may be ninety-six of three inches, or three of ninety-six."""
    if len([one for one in length if one not in DIGITS]) > 0 or len(length) > 4 or len(count) > 4 or int(length) >= int(count):
        return ""
    return "Write " + so_many(count, length) + ", or " + so_many(length, count) + "."


def so_many(length, count):
    """How so many of a length are written, and what that says."""
    return length + " x" + count + " for " + count + " of " + length


def begins_number(chars, at):
    """Whether a measurement may begin there; the point behind a label does not begin one, nor does the hyphen in one."""
    one = chars[at]
    if one == "." or (one == "-" and at > 0):
        follows = at + 1 < len(chars) and chars[at + 1] in DIGITS
        return follows and (one == "." or chars[at - 1] in SPACES)
    return one in DIGITS or one in VULGAR or one == "(" or one == "-"


def is_times(one):
    """Whether a character stands for times."""
    return one == "x" or one == "X" or (one in SIGNS and SIGNS[one] == "*")


def trimmed(text):
    """A text without spaces, colons and hyphens at its ends."""
    start = 0
    end = len(text)
    while start < end and (text[start] in SPACES or text[start] in ":-"):
        start = start + 1
    while end > start and (text[end - 1] in SPACES or text[end - 1] in ":-"):
        end = end - 1
    return text[start:end]


def read_stock(text, most, shop, units, numbers):
    """Read lengths to buy as `96 @ 12.50, 120`: rows `{"length", "price", "count"}`, the count 1, the price None where there is none."""
    return read_row(text, most, True, shop, units, numbers)


def read_row(text, most, priced, shop, units, numbers):
    """Read lengths with commas between, each with a price behind @ where the row is `priced`."""
    if letters_in(text) > LONGEST_ROW:
        return {"ok": False, "message": TOO_LONG}
    if has_decimal_comma(text, shop):
        return {"ok": False, "message": DECIMAL_COMMA}
    rows = []
    total = 0
    parts = row_parts(text)
    for place, part in enumerate(parts):
        if place > 0 and is_split_price(parts[place - 1], part):
            return {"ok": False, "message": "Write a price with a point, such as 12.50: a comma begins the next length."}
        sides = part.split("@") if priced else [part]
        got = read_some(sides[0], priced, shop, units, numbers)
        if got["ok"] and priced and got["count"] != 1:
            got = {"ok": False, "message": NO_COUNT}
        price = {"ok": True, "value": None}
        if got["ok"] and len(sides) > 1:
            price = read_price("@".join(sides[1 : len(sides)]), units, numbers)
        wrong = price if got["ok"] else got
        if not wrong["ok"]:
            return {"ok": False, "message": "Number " + str(place + 1) + " in the row: " + wrong["message"]}
        rows.append({"length": got["value"], "price": price["value"], "count": got["count"]})
        total = total + got["count"]
    if total > most:
        return {"ok": False, "message": "That is too many: at most " + str(most) + " can be weighed."}
    return {"ok": True, "value": rows}


def read_some(text, priced, shop, units, numbers):
    """Read a length of a row and how many there are of it; 3 x 1/8 could be three pieces or one, and is asked about."""
    row = split_piece(text)
    named = len(row["label"]) > 0 or len(row["length"]) == 0
    length = text if named else row["length"]
    got = read_above_zero(length, shop, units, numbers)
    if got["ok"] and not named and len(row["asked"]) > 0:
        return {"ok": False, "message": NO_COUNT if priced else row["asked"]}
    many = {"ok": True, "value": 1} if named else read_count(row["count"], units, numbers)
    if got["ok"] and (not many["ok"] or same(many["value"], 0) or above(many["value"], MOST_ALIKE)):
        return {"ok": False, "message": HOW_MANY}
    return {"ok": True, "value": got["value"], "count": int(many["value"])} if got["ok"] else got


def is_split_price(before, part):
    """Whether a comma stands inside a price, as in `96 @ 12,50`."""
    if "@" not in before or "." in before or len(part) != 2:
        return False
    return part[0] in DIGITS and part[1] in DIGITS and before[len(before) - 1] in DIGITS


def read_above_zero(text, shop, units, numbers):
    """Read a length that is one: nothing is no length of a piece."""
    got = read_length(text, shop, units, numbers)
    if not got["ok"] and got["message"] == SIDE_BY_SIDE:
        return {"ok": False, "message": "Two numbers stand side by side: put a comma between them, or finish the fraction, such as 1 3/8."}
    return {"ok": False, "message": NOTHING} if got["ok"] and same(got["value"], 0) else got


def read_price(text, units, numbers):
    """Read a price, without its currency or with a sign for it."""
    state = begin(text.replace("$", " ").replace("\u20ac", " ").replace("\u00a3", " "), units, numbers, "price")
    value = 0 if failed(state) or peek(state)["kind"] != "number" else parse_mixed(state)
    if not failed(state) and peek(state)["kind"] != "end":
        misplaced(state)
    if failed(state):
        return refusal(state)
    if above(value, DEAREST):
        return {"ok": False, "message": "No board costs as much as that."}
    if same(value, 0):
        return {"ok": False, "message": "A board that costs nothing is one on hand."}
    return {"ok": True, "value": value}
