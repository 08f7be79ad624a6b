"""A stretch of tape, drawn: the printed ticks, longer for halves than for quarters, and the mark.

Everything is in hundredths of a drawing unit and whole, so that both runtimes draw the same line.
"""

from shopcalc.portable.arithmetic.snap import above, ceiling_of, floor_of, nearest_of
from shopcalc.portable.measures.writing import fraction_text, millimetres, round_to, split_ticks

WIDTH = 340
# Drawing units to the inch for each division: finer tapes are drawn larger, so that a tick stays a tick.
INCH_WIDE = {"8": 104, "16": 136, "32": 208, "64": 340, "128": 512}
CENTIMETRE_WIDE = 68
# Of a numeral, in hundredths: room for a figure, in the widest letters that a phone may have, and between it and its tick.
FIGURE_WIDE = 1200
NUMERAL_OFF = 400
NUMERAL_FREE = 300  # what a mark keeps from it
LONGEST_RUN = 240  # inches or centimetres of tape that a thumb still swipes along
TICK_TALL = {"1": 46, "2": 36, "4": 29, "8": 23, "16": 18, "32": 14, "64": 11, "128": 8}


def draw_tape(inches, division, direction, metric, units):
    """The stretch around `inches`: path of the ticks, numerals, where the mark stands, the name of the tick to use.

    That is the nearest one, or the one below or above for a value that is rounded that way.
    """
    if metric:
        return stretch(millimetres(inches, units) / 10, 10, CENTIMETRE_WIDE, direction, True)
    return stretch(inches, division, INCH_WIDE[str(division)], direction, False)


def stretch(place, division, wide, direction, metric):
    """The stretch around `place`, in inches or centimetres of `wide` drawing units and `division` ticks each."""
    used = round_to(place, division, direction)
    nearest = nearest_of(place * division)
    shown = WIDTH * division // wide
    first = nearest - shown // 2
    if first < 0:
        first = 0
    mark = nearest_of((place * division - first) * wide * 100 / division)
    numerals = []
    for step in range(shown + 1):
        tick = first + step
        whole = tick // division
        if whole * division == tick and tick > 0:
            numerals = numerals + numeral(step * wide * 100 // division, str(tick if metric else whole), [mark], wide * 100)
    return {
        "ticks": tick_path(first, shown + 1, division, wide, metric),
        "numerals": numerals,
        "mark": hundredths(mark),
        "used": str(used) + " mm" if metric else fraction_text(used, division),
        "which": "the mark below, " if direction == "down" else "the mark above, " if direction == "up" else "nearest mark ",
        "between": floor_of(place * division) != nearest or floor_of(0 - place * division) != 0 - nearest,
    }


def numeral(at, text, marks, apart):
    """The numeral of the tick at `at`, in hundredths as the `marks` are and as it is to the next numeral, `apart`; in a list.

    It stands before its tick, as on a tape; behind it where it would be cut off or a mark goes through it, and nowhere
    where marks go through both, or where behind it would be beside the next one.
    """
    wide = len(text) * FIGURE_WIDE + NUMERAL_OFF
    before = at >= wide
    behind = 2 * wide + FIGURE_WIDE < apart
    for mark in marks:
        off = mark - at
        if 0 - wide - NUMERAL_FREE < off and off < NUMERAL_FREE - NUMERAL_OFF:
            before = False
        if NUMERAL_OFF - NUMERAL_FREE < off and off < wide + NUMERAL_FREE:
            behind = False
    return [{"x": hundredths(at), "text": text, "behind": not before}] if before or behind else []


def tick_path(first, count, division, wide, metric):
    """The printed ticks from the tick `first` on, from the left edge."""
    ticks = []
    for step in range(count):
        parts = split_ticks(first + step, division)
        tall = metric_tall(first + step) if metric else TICK_TALL[str(parts["under"] if parts["top"] > 0 else 1)]
        ticks.append("M" + hundredths(step * wide * 100 // division) + " 0v" + str(tall))
    return "".join(ticks)


def draw_run(row, division, metric, units):
    """A row of marks on one long tape, from the inch before the first to the inch after the last, in a list.

    The list is empty where there is nothing to draw, or a tape too long to swipe along. The ticks are those of one
    inch, or of one centimetre, to be repeated.
    """
    places = [millimetres(x, units) / 10 for x in row] if metric else row
    if len(places) == 0:
        return []
    wide = CENTIMETRE_WIDE if metric else INCH_WIDE[str(division)]
    low = places[0]
    high = low
    for place in places:
        low = min(low, place)
        high = max(high, place)
    first = max(0, floor_of(low) - 1)
    count = ceiling_of(high) + 1 - first
    if count > LONGEST_RUN or above(0, low):
        return []
    marks = [nearest_of((place - first) * wide * 100) for place in places]
    numerals = []
    for step in range(count - 1):
        here = first + step + 1
        numerals = numerals + numeral((step + 1) * wide * 100, str(here * 10 if metric else here), marks, wide * 100)
    pins = []
    for mark in marks:
        pins.append({"x": hundredths(mark), "text": str(len(pins) + 1)})
    ticks = tick_path(0, 10 if metric else division, 10 if metric else division, wide, metric)
    return [{"ticks": ticks, "unit": str(wide), "wide": str(count * wide), "numerals": numerals, "pins": pins}]


def metric_tall(tick):
    """The length of a millimetre tick: centimetres longest, then fives."""
    if (tick // 10) * 10 == tick:
        return 46
    return 29 if (tick // 5) * 5 == tick else 16


def hundredths(n):
    """A count of hundredths, not negative, as a number for a drawing."""
    whole = n // 100
    rest = n - whole * 100
    if rest == 0:
        return str(whole)
    if (rest // 10) * 10 == rest:
        return str(whole) + "." + str(rest // 10)
    return str(whole) + ("." if rest > 9 else ".0") + str(rest)
