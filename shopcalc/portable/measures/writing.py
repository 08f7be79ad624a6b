"""Writes measurements the way a tape is read: fractions with full and scant, feet, decimals, mm.

Everything is done in whole numbers of the last place shown, so both runtimes write the same text.
"""

from shopcalc.portable.arithmetic.snap import above, ceiling_of, floor_of, magnitude, nearest_of, same

DIVISIONS = [8, 16, 32, 64, 128]
USUAL_TAPE = 32
TAPES = [str(division) for division in DIVISIONS]
ROWS = ["lengths", "pieces", "stock"]
MINUS = "\u2212"
FINEST_PIECE = 64  # drills and chippers come in these


def round_to(x, division, direction):
    """`x` in whole ticks of 1/division: "nearest", "down" or "up"."""
    if direction == "down":
        return floor_of(x * division)
    if direction == "up":
        return ceiling_of(x * division)
    return nearest_of(x * division)


def split_ticks(ticks, division):
    """Whole inches and the reduced fraction of a count of ticks, not negative."""
    whole = ticks // division
    top = ticks - whole * division
    under = division
    while top > 0 and halvable(top) and halvable(under):
        top = top // 2
        under = under // 2
    return {"whole": whole, "top": top, "under": under}


def halvable(n):
    """Whether a whole number is even."""
    return (n // 2) * 2 == n


def fraction_text(ticks, division):
    """A count of ticks as `3 5/8`."""
    parts = split_ticks(ticks, division)
    if parts["top"] == 0:
        return str(parts["whole"])
    fraction = str(parts["top"]) + "/" + str(parts["under"])
    return fraction if parts["whole"] == 0 else str(parts["whole"]) + " " + fraction


def decimal_text(x, places, trimmed):
    """`x` with `places` decimals; `trimmed` drops zeros at the end."""
    size = 0 - x if above(0, x) else x
    units = nearest_of(size * 10**places)
    out = digits_text(units, places, trimmed)
    return MINUS + out if above(0, x) and units > 0 else out


def digits_text(units, places, trimmed):
    """A whole count of units in the last of `places` decimals, not negative, as text."""
    scale = 10**places
    whole = units // scale
    rest = str(units - whole * scale)
    while len(rest) < places:
        rest = "0" + rest
    if trimmed:
        while len(rest) > 0 and rest[len(rest) - 1] == "0":
            rest = rest[0 : len(rest) - 1]
    return str(whole) if places == 0 or len(rest) == 0 else str(whole) + "." + rest


def millimetres(x, units):
    """`x` inches in millimetres."""
    factor = units["mm"]
    return x * factor[1] / factor[0]


def lean_of(x, ticks, division):
    """What rounding did: the true value is a little `full` or `scant` of the tick, by how much.

    Half a thousandth or less is nothing a hand can set, and goes without a word.
    """
    off = x * division - ticks  # in ticks
    thousandths = nearest_of((0 - off if above(0, off) else off) * 1000 / division)
    if thousandths == 0:
        return {"word": "", "amount": ""}
    return {
        "word": "full" if above(off, 0) else "scant",
        "amount": decimal_text(0 - off / division if above(0, off) else off / division, 3, False),
    }


def write_length(x, division, direction, metric, units):
    """A length as display texts; negative lengths carry a true minus sign.

    `text` is the fraction (or mm in a metric shop) with full or scant; `bare` is without.
    """
    negative = above(0, x)
    size = 0 - x if negative else x
    ticks = round_to(size, division, direction)
    parts = split_ticks(ticks, division)
    lean = lean_of(size, ticks, division)
    sign = MINUS if negative and (ticks > 0 or len(lean["word"]) > 0) else ""
    bare = sign + fraction_text(ticks, division)
    mm = decimal_text(millimetres(x, units), 1, False)
    tenths = round_to(millimetres(size, units), 10, direction)
    if ticks == 0 and len(lean["word"]) > 0 and not metric:
        # less than half a tick is no mark of this tape: it is said in thousandths
        lean = {"word": "", "amount": ""}
        bare = sign + decimal_text(size, 3, False)
        parts = {"whole": decimal_text(size, 3, False), "top": 0, "under": division}
    if metric:
        lean = {"word": "", "amount": ""}
        bare = sign + digits_text(tenths, 1, False) + " mm"
    return {
        "text": bare if len(lean["word"]) == 0 else bare + " " + lean["word"],
        "bare": bare,
        "sign": sign,
        "whole": str(parts["whole"]) if parts["top"] == 0 or parts["whole"] > 0 else "",
        "top": str(parts["top"]) if parts["top"] > 0 else "",
        "under": str(parts["under"]),
        "lean": lean["word"],
        "amount": lean["amount"],
        "decimal": decimal_text(x, 3, False),
        "mm": mm,
        "feet": feet_text(size, division, direction),
        "ticks": ticks,
    }


def feet_text(x, division, direction):
    """A length of a foot or more as `6 ft 6 1/2 in`; nothing below a foot."""
    ticks = round_to(x, division, direction)
    foot = 12 * division
    feet = ticks // foot
    if feet == 0:
        return ""
    rest = ticks - feet * foot
    return str(feet) + " ft" if rest == 0 else str(feet) + " ft " + fraction_text(rest, division) + " in"


def write_value(x, kind, division, direction, metric, units):
    """Any value as `{"text", "decimal", "mm"}` and, for a length, the parts of its fraction.

    Lengths with the direction "none" are picked up and not marked off, and are written as they are.
    """
    if kind == "length" and direction == "none":
        return write_piece(x, metric, units)
    if kind == "length":
        return write_length(x, division, direction, metric, units)
    if kind == "lengths":
        return write_row(x, division, direction, metric, units)
    if kind == "pieces":
        return plain_value(", ".join([written_part(one, metric, units) for one in x]))
    if kind == "stock":
        return plain_value(", ".join([written_stock(one, metric, units) for one in x]))
    if kind == "price":
        return plain_value(decimal_text(x, 2, False))
    if kind == "truth":
        return plain_value("yes" if x else "no")
    if kind == "temperature":
        return plain_value(decimal_text((x - 32) * 5 / 9, 1, True) + " \u00b0C" if metric else decimal_text(x, 1, True) + " \u00b0F")
    if kind == "angle":
        text = decimal_text(x, 2, True) if above(0, x) else digits_text(round_to(x, 100, direction), 2, True)
        return plain_value(text + "\u00b0")
    if kind == "percent":
        return plain_value(decimal_text(x, 1, True) + "%")
    if kind == "count":
        return plain_value(decimal_text(x, 0, False))
    return plain_value(decimal_text(x, 3, True))


def written_part(one, metric, units):
    """A sort of parts in words: `rail 22 15/16 in x2`."""
    size = quoted(write_piece(one["length"], metric, units), "length", metric)
    many = decimal_text(one["count"], 0, False)
    return (one["label"] + " " if len(one["label"]) > 0 else "") + size + (" x" + many if many != "1" else "")


def written_stock(one, metric, units):
    """A length to buy in words: `96 in @ 12.50`."""
    size = quoted(write_piece(one["length"], metric, units), "length", metric)
    return size if one["price"] is None else size + " @ " + decimal_text(one["price"], 2, False)


def write_row(row, division, direction, metric, units):
    """A row of lengths: each written, and the text of all."""
    each = [write_value(x, "length", division, direction, metric, units) for x in row]
    written = plain_value(", ".join([one["text"] for one in each]))
    written["each"] = each
    return written


def write_piece(x, metric, units):
    """A length that is picked up and not marked off: a fraction only where it is exactly one.

    A shim of eight thousandths is no 128th, and in tenths of a mm a shim of two would be gone.
    """
    written = write_length(x, FINEST_PIECE, "nearest", metric, units)
    if metric:
        written["text"] = decimal_text(millimetres(x, units), 2, True) + " mm"
    elif not same(magnitude(x) * FINEST_PIECE, written["ticks"]):
        written["text"] = written["decimal"]
        written["sign"] = ""
        written["whole"] = written["decimal"]
        written["top"] = ""
    written["bare"] = written["text"]
    written["lean"] = ""
    written["amount"] = ""
    return written


def plain_value(text):
    """A value that has no fraction on the tape."""
    return {"text": text, "bare": text, "sign": "", "whole": "", "top": "", "under": "", "lean": "", "amount": ""}


def quoted(written, kind, metric):
    """A value inside a sentence: a length says its unit."""
    if kind == "lengths" and not metric:
        return written["text"] if len(written["each"]) == 0 else written["text"] + " in"
    if kind != "length" or metric:
        return written["text"]
    return written["bare"] + " in" if written["lean"] == "" else written["bare"] + " in " + written["lean"]


def quoted_length(x, direction, shop, units):
    """A length inside a sentence, on the shop's tape."""
    return quoted(write_length(x, shop["division"], direction, shop["metric"], units), "length", shop["metric"])


def decimal_size(length, shop, units):
    """A size as a spreadsheet reckons with it: decimals of the shop's unit, rounded to no tape."""
    return decimal_text(millimetres(length, units), 2, True) if shop["metric"] else decimal_text(length, 4, True)
