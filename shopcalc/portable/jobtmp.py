"""Stand-ins until the boards' own arrive."""

from shopcalc.portable.reading import read_length


def read_pieces(text, most, shop, units, numbers):
    """Stand-in."""
    rows = []
    for part in text.split(","):
        bits = part.split(" x")
        got = read_length(bits[0], shop, units, numbers)
        if not got["ok"]:
            return got
        rows.append({"label": "", "count": int(bits[1]) if len(bits) > 1 else 1, "length": got["value"]})
    return {"ok": True, "value": rows}


def read_stock(text, most, shop, units, numbers):
    """Stand-in."""
    rows = []
    for part in text.split(","):
        bits = part.split("@")
        got = read_length(bits[0], shop, units, numbers)
        if not got["ok"]:
            return got
        rows.append({"length": got["value"], "price": None})
    return {"ok": True, "value": rows}


def shown_boards(layout, labels, lengths, shop, world):
    """Stand-in."""
    return {"boards": [{"words": str(len(board["pieces"])) + " pieces"} for board in layout["boards"]]}
