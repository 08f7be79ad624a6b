"""Lays a declared picture out on a sheet 360 units wide: paths for shapes, lines and words for dimensions.

Points come in inches with y up; the sheet is in drawing units with y down. Lettering keeps its size whatever
the scale, so room for it is kept at the edges.
"""

from shopcalc.portable.arithmetic.snap import nearest_of, same
from shopcalc.portable.cards.naming import shape_key, shown_key
from shopcalc.portable.cards.sentences import fill, quoted_names
from shopcalc.portable.cards.tape import hundredths
from shopcalc.portable.cards.work import all_in, holds

SHEET = 360
TALLEST = 250
ROW = 26  # between rows of dimensions
WORD = 40  # as wide as a usual number beside the picture
EDGE = 14
GAP = 6  # between a dimension's line and its number
LETTER = 8  # a letter's width in the widest fonts, near enough to know what room a word takes
ARC = 34


def draw_picture(picture, bench, page):
    """One picture as strings ready for SVG, or an empty list where a shape it rests on is missing."""
    shapes = []
    for place, shape in enumerate(picture["shapes"]):
        shapes = shapes + place_shape(shape, page, place, bench)
    outlined = [one for one in shapes if one["shape"]["kind"] == "area" or one["shape"]["kind"] == "line"]
    if len(outlined) == 0:
        return []
    sheet = fit(shapes, outlined, bench)
    drawn = {"areas": [], "lines": [], "marks": [], "words": []}
    drawn["caption"] = picture["caption"]
    drawn["id"] = "picture-" + bench["about"]["slug"] + "-" + str(page)
    for one in shapes:
        draw_shape(one, sheet, drawn, bench)
    drawn["view"] = "0 0 " + str(SHEET) + " " + hundredths(sheet["height"])
    return [drawn]


def place_shape(shape, page, at, bench):
    """The shape with its numbers, in a list that is empty if it does not show; boxes are as many areas.

    Its picture's place and its own say where its formulas are.
    """
    known = bench["known"]
    formulas = bench["formulas"]
    numbers = bench["world"]["numbers"]
    if not all_in(quoted_names(shape["text"]), known) or (len(shape["of"]) > 0 and shape["of"] not in known):
        return []
    if shape["when"] and not holds(shown_key(page, at), formulas, known, numbers):
        return []
    found = numbers["attempt"](formulas[shape_key(page, at)], known, numbers)
    if found is None:
        return []
    return place_boxes(shape, found) if shape["kind"] == "box" else [{"shape": shape, "numbers": found}]


def place_boxes(shape, found):
    """A row of boxes as areas: `found` is left, bottom, width and height, each one length or a row of them."""
    rows = shape["rows"]
    count = -1 if len(rows) > 0 else 1
    for at, is_row in enumerate(rows):
        if is_row:
            count = len(found[at]) if count < 0 else min(count, len(found[at]))
    boxes = []
    for place in range(count):
        corner = found if len(rows) == 0 else [found[at][place] if is_row else found[at] for at, is_row in enumerate(rows)]
        right = corner[0] + corner[2]
        top = corner[1] + corner[3]
        points = [corner[0], corner[1], right, corner[1], right, top, corner[0], top]
        boxes.append({"shape": {"kind": "area", "style": shape["style"]}, "numbers": points})
    return boxes


def fit(shapes, outlined, bench):
    """The scale and the place of the origin, in hundredths, with room at the edges for dimensions."""
    box = extent(outlined)
    wide = box["right"] - box["left"]
    high = box["high"] - box["low"]
    widths = rows_beside(shapes, bench)
    columns = {"left": column_places(widths["left"]), "right": column_places(widths["right"])}
    left = columns["left"][len(widths["left"])] * 100
    right = columns["right"][len(widths["right"])] * 100
    above_it = (EDGE + ROW * len(widths["above"])) * 100
    below_it = (EDGE + ROW * len(widths["below"])) * 100
    # a picture with no width, such as a plumb line alone, is as large as its height lets it be
    across = TALLEST * 100 if same(wide, 0) else (SHEET * 100 - left - right) / wide
    # a picture with no height, such as a slope of nothing, is as large as its width lets it be
    upright = across if same(high, 0) else TALLEST * 100 / high
    scale = min(across, upright)
    spare = SHEET * 100 - left - right - wide * scale
    tall = nearest_of(high * scale)
    return {
        "scale": scale,
        "left": box["left"],
        "high": box["high"],
        "x": left + spare / 2,
        "y": above_it,
        "edge_left": left + nearest_of(spare / 2),
        "edge_right": SHEET * 100 - right - nearest_of(spare / 2),
        "edge_top": above_it,
        "edge_bottom": above_it + tall,
        "height": above_it + below_it + tall,
        "columns": columns,
    }


def extent(outlined):
    """The least box around all that is drawn, in inches."""
    across = []
    upright = []
    for one in outlined:
        values = one["numbers"]
        for at in range(len(values) // 2):
            across.append(values[2 * at])
            upright.append(values[2 * at + 1])
    box = {"left": across[0], "right": across[0], "low": upright[0], "high": upright[0]}
    for at, x in enumerate(across):
        box["left"] = min(box["left"], x)
        box["right"] = max(box["right"], x)
        box["low"] = min(box["low"], upright[at])
        box["high"] = max(box["high"], upright[at])
    return box


def rows_beside(shapes, bench):
    """Of the rows of dimensions on each side how wide the words of each are."""
    widths = {"above": [], "below": [], "left": [], "right": []}
    for one in shapes:
        shape = one["shape"]
        if shape["kind"] == "dimension":
            widen(widths[shape["side"]], shape["row"], len(lettering(shape, bench)["text"]) * LETTER)
        if shape["kind"] == "label" and shape["side"] in widths:
            widen(widths[shape["side"]], 1, WORD)
        if shape["kind"] == "slant":
            for side in widths:
                widen(widths[side], 1, WORD)
    return widths


def widen(widths, row, width):
    """Note how wide the words of a row of dimensions are; rows before it without any are as wide as a usual number."""
    while len(widths) < row - 1:
        widths.append(WORD)
    if len(widths) < row:
        widths.append(width)
    widths[row - 1] = max(widths[row - 1], width)


def column_places(widths):
    """How far from the picture the line of each row beside it stands, and at the end where the room for the last ends."""
    places = [EDGE]
    for width in widths:
        places.append(places[len(places) - 1] + GAP + width + GAP)
    return places


def sheet_x(sheet, x):
    """A place across the sheet, in whole hundredths."""
    return nearest_of(sheet["x"] + (x - sheet["left"]) * sheet["scale"])


def sheet_y(sheet, y):
    """A place down the sheet, in whole hundredths."""
    return nearest_of(sheet["y"] + (sheet["high"] - y) * sheet["scale"])


def coordinate(n):
    """A count of hundredths as a coordinate."""
    return "-" + hundredths(0 - n) if n < 0 else hundredths(n)


def pair(x, y):
    """Two counts of hundredths as a point of a path."""
    return coordinate(x) + " " + coordinate(y)


def draw_shape(one, sheet, drawn, bench):
    """Add what one shape puts on the sheet."""
    shape = one["shape"]
    kind = shape["kind"]
    if kind == "area":
        drawn["areas"].append({"path": outline(one, sheet) + "Z", "style": shape["style"]})
    elif kind == "line":
        drawn["lines"].append({"path": outline(one, sheet), "style": shape["style"]})
    elif kind == "dimension":
        draw_dimension(one, sheet, drawn, lettering(shape, bench))
    elif kind == "slant":
        draw_slant(one, sheet, drawn, lettering(shape, bench))
    elif kind == "turn":
        draw_turn(one, sheet, drawn, lettering(shape, bench))
    else:
        draw_label(one, sheet, drawn, bench)


def draw_label(one, sheet, drawn, bench):
    """A word centred on its point, or standing to one side of it."""
    side = one["shape"]["side"]
    x = sheet_x(sheet, one["numbers"][0])
    y = sheet_y(sheet, one["numbers"][1]) + 400
    text = fill(one["shape"]["text"], bench, False)
    if side == "left":
        add_word(drawn, x - 500, y, "end", text, "", "part")
    elif side == "right":
        add_word(drawn, x + 500, y, "start", text, "", "part")
    else:
        lift = -1000 if side == "above" else 1000 if side == "below" else 0
        add_word(drawn, x, y + lift, "middle", text, "", "part")


def outline(one, sheet):
    """The path through a shape's points."""
    path = ""
    values = one["numbers"]
    for at in range(len(values) // 2):
        path = path + ("M" if at == 0 else "L") + pair(sheet_x(sheet, values[2 * at]), sheet_y(sheet, values[2 * at + 1]))
    return path


def lettering(shape, bench):
    """What a dimension says: its value as on the tape, and a word where the picture needs one; on a drawing lengths go without their unit."""
    name = shape["of"]
    text = bench["written"][name]["bare"].replace(" mm", "")
    return {"text": text if len(shape["text"]) == 0 else shape["text"] + " " + text, "of": name}


def add_word(drawn, x, y, anchor, text, of, style):
    """A word on the sheet; `of` names the value it shows."""
    drawn["words"].append({"x": coordinate(x), "y": coordinate(y), "anchor": anchor, "text": text, "of": of, "style": style})


def add_mark(drawn, path, of):
    """The lines of a dimension."""
    drawn["marks"].append({"path": path, "of": of})


def draw_dimension(one, sheet, drawn, letters):
    """A dimension across or upright, standing off the picture's edge."""
    values = one["numbers"]
    side = one["shape"]["side"]
    off = (one["shape"]["row"] - 1) * ROW * 100 + 1400
    if side == "above" or side == "below":
        first = sheet_x(sheet, min(values[0], values[2]))
        last = sheet_x(sheet, max(values[0], values[2]))
        down = side == "below"
        y = sheet["edge_bottom"] + off if down else sheet["edge_top"] - off
        past = 400 if down else -400
        path = "M" + pair(first, sheet_y(sheet, values[1] if values[0] <= values[2] else values[3]) + past) + "V" + coordinate(y + past)
        path = path + "M" + pair(last, sheet_y(sheet, values[3] if values[0] <= values[2] else values[1]) + past) + "V" + coordinate(y + past)
        path = path + "M" + pair(first, y) + "H" + coordinate(last) + slash(first, y) + slash(last, y)
        add_mark(drawn, path, letters["of"])
        wide = len(letters["text"]) * LETTER * 100
        if last - first > wide + 600:
            add_word(drawn, (first + last) // 2, y + 400, "middle", letters["text"], letters["of"], "size")
        elif last + wide + 800 < SHEET * 100:
            add_word(drawn, last + 700, y + 400, "start", letters["text"], letters["of"], "size")
        else:
            add_word(drawn, first - 700, y + 400, "end", letters["text"], letters["of"], "size")
        return
    first = sheet_y(sheet, max(values[1], values[3]))
    last = sheet_y(sheet, min(values[1], values[3]))
    off = sheet["columns"][side][one["shape"]["row"] - 1] * 100
    x = sheet["edge_left"] - off if side == "left" else sheet["edge_right"] + off
    past = -400 if side == "left" else 400
    path = "M" + pair(sheet_x(sheet, values[0] if values[1] >= values[3] else values[2]) + past, first) + "H" + coordinate(x + past)
    path = path + "M" + pair(sheet_x(sheet, values[2] if values[1] >= values[3] else values[0]) + past, last) + "H" + coordinate(x + past)
    path = path + "M" + pair(x, first) + "V" + coordinate(last) + slash(x, first) + slash(x, last)
    add_mark(drawn, path, letters["of"])
    anchor = "end" if side == "left" else "start"
    add_word(drawn, x - GAP * 100 if side == "left" else x + GAP * 100, (first + last) // 2 + 400, anchor, letters["text"], letters["of"], "size")


def slash(x, y):
    """The stroke that ends a dimension line, as builders draw it."""
    return "M" + pair(x - 300, y + 300) + "L" + pair(x + 300, y - 300)


def draw_slant(one, sheet, drawn, letters):
    """A dimension along a sloping face, standing off it in the direction given."""
    values = one["numbers"]
    off = one["shape"]["row"] * 1700
    over = nearest_of(values[4] * off)
    up = nearest_of(values[5] * off)
    x1 = sheet_x(sheet, values[0])
    y1 = sheet_y(sheet, values[1])
    x2 = sheet_x(sheet, values[2])
    y2 = sheet_y(sheet, values[3])
    path = "M" + pair(x1, y1) + "L" + pair(x1 + over, y1 - up)
    path = path + "M" + pair(x2, y2) + "L" + pair(x2 + over, y2 - up)
    path = path + "M" + pair(x1 + over, y1 - up) + "L" + pair(x2 + over, y2 - up)
    path = path + slash(x1 + over, y1 - up) + slash(x2 + over, y2 - up)
    add_mark(drawn, path, letters["of"])
    x = (x1 + x2) // 2 + over
    y = (y1 + y2) // 2 - up
    add_word(drawn, x, y + 400, "middle", letters["text"], letters["of"], "size")


def draw_turn(one, sheet, drawn, letters):
    """The arc of an angle, from the first direction round to the second the short way."""
    values = one["numbers"]
    reach = ARC * 100 * one["shape"]["row"]
    x = sheet_x(sheet, values[0])
    y = sheet_y(sheet, values[1])
    x1 = x + nearest_of(values[2] * reach)
    y1 = y - nearest_of(values[3] * reach)
    x2 = x + nearest_of(values[4] * reach)
    y2 = y - nearest_of(values[5] * reach)
    sweep = "0" if (x1 - x) * (y2 - y) - (y1 - y) * (x2 - x) < 0 else "1"
    radius = hundredths(reach)
    add_mark(drawn, "M" + pair(x1, y1) + "A" + radius + " " + radius + " 0 0 " + sweep + " " + pair(x2, y2), letters["of"])
    out = nearest_of((values[2] + values[4]) * (reach + 1400) / 2)
    rise = nearest_of((values[3] + values[5]) * (reach + 1400) / 2)
    anchor = "start" if out > 800 else "end" if out < -800 else "middle"
    add_word(drawn, x + out, y - rise + 400, anchor, letters["text"], letters["of"], "size")
