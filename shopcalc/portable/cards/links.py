"""Addresses of cards that carry entries along."""

from shopcalc.portable.arithmetic.snap import nearest_of, same
from shopcalc.portable.cards.bench import FINEST
from shopcalc.portable.measures.writing import USUAL_TAPE, decimal_text, fraction_text, millimetres

UNRESERVED = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-._~"
HEXADECIMAL = "0123456789ABCDEF"


def shown_onwards(bench):
    """Links to the cards this one leads to, with the entries carried along; a reading that is told to be a slip stays here."""
    links = []
    for onward in bench["about"]["onwards"]:
        if onward["slug"] not in bench["world"]["setups"]:
            continue
        parts = []
        for carried in onward["carry"]:
            for source in carried[1]:
                if source[0] in bench["known"] and not any_in(source[1], bench["raised"]):
                    parts.append(carried[0] + "=" + encoded(carried_text(source[0], bench)))
                    break
        links.append({"label": onward["label"], "address": "/" + onward["slug"] + "?" + "&".join(parts + shop_query(bench["shop"]))})
    return links


def carried_text(name, bench):
    """A value as it is typed: an entry as it was, a length that was worked out as its fraction where it is one, else by its decimals."""
    if name in bench["texts"]:
        return bench["texts"][name]
    length = bench["known"][name]
    if bench["shop"]["metric"]:
        return decimal_text(millimetres(length, bench["world"]["units"]), 3, True)
    ticks = nearest_of(length * FINEST)
    return fraction_text(ticks, FINEST) if same(length * FINEST, ticks) else decimal_text(length, 6, True)


def any_in(names, raised):
    """Whether one of `names` is among the checks raised."""
    for name in names:
        if name in raised:
            return True
    return False


def shop_query(shop):
    """The shop's settings as parts of an address; what is usual goes unsaid."""
    parts = []
    if shop["division"] != USUAL_TAPE:
        parts.append("tape=" + str(shop["division"]))
    if shop["metric"]:
        parts.append("units=mm")
    return parts


def item_address(each, shop):
    """Where the card of a job's item is, with its entries."""
    given = [one["name"] for one in each["about"]["inputs"] if one["name"] in each["query"]]
    parts = [name + "=" + encoded(each["query"][name]) for name in given]
    return with_parts("/" + each["item"]["setup"], parts + shop_query(shop)) + "#item=" + str(each["item"]["id"])


def with_shop(address, shop):
    """An address that keeps the shop as it is set."""
    return with_parts(address, shop_query(shop))


def with_parts(address, parts):
    """An address with these parts as its query."""
    return address if len(parts) == 0 else address + "?" + "&".join(parts)


def encoded(text):
    """`text` for the query of an address (RFC 3986), as UTF-8."""
    out = ""
    for one in text:
        code = ord(one)
        if code >= 0x10000:
            out = out + in_four_bytes(code)
        elif one in UNRESERVED:
            out = out + one
        elif one == " ":
            out = out + "+"
        elif code < 0x80:
            out = out + percent(code)
        elif code < 0x800:
            out = out + percent(0xC0 + code // 64) + percent(0x80 + code - (code // 64) * 64)
        else:
            high = code // 4096
            rest = code - high * 4096
            out = out + percent(0xE0 + high) + percent(0x80 + rest // 64) + percent(0x80 + rest - (rest // 64) * 64)
    return out


def in_four_bytes(code):
    """A character beyond the first 65,536."""
    top = code // 262144
    high = code // 4096
    middle = code // 64
    return percent(0xF0 + top) + percent(0x80 + high - top * 64) + percent(0x80 + middle - high * 64) + percent(0x80 + code - middle * 64)


def percent(byte):
    """One byte, percent-encoded."""
    return "%" + HEXADECIMAL[byte // 16] + HEXADECIMAL[byte - (byte // 16) * 16]
