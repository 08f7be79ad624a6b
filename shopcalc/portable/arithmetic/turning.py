"""Sines, cosines and tangents in degrees, exact where a protractor's marks are exact.

`numbers` is the platform's arithmetic: see `shopcalc/numbers.py`. The special values are those of
Niven's theorem: the only whole-numbered fractions of a turn whose sine is rational.
"""

from shopcalc.portable.arithmetic.snap import at_least, same

SPECIAL_SINES = [[0, 0, 1], [30, 1, 2], [90, 1, 1], [150, 1, 2], [180, 0, 1]]
SPECIAL_TANGENTS = [[0, 0, 1], [45, 1, 1]]


def special_value(table, angle, numbers):
    """The exact value that `table` lists for `angle`, or None."""
    for row in table:
        if same(angle, row[0]):
            return numbers["ratio"](row[1], row[2])
    return None


def special_angle(table, value, numbers):
    """The angle in degrees whose exact value in `table` is `value`, or None."""
    for row in table:
        if row[0] <= 90 and same(value * row[2], row[1]):
            return numbers["ratio"](row[0], 1)
    return None


def sind(angle, numbers):
    """Sine of an angle in degrees."""
    known = special_value(SPECIAL_SINES, angle, numbers)
    return numbers["sin"](angle) if known is None else known


def cosd(angle, numbers):
    """Cosine of an angle in degrees, 0 to 180; negative past 90."""
    if at_least(90, angle):
        return sind(90 - angle, numbers)
    return 0 - sind(angle - 90, numbers)


def tand(angle, numbers):
    """Tangent of an angle in degrees, 0 to below 90."""
    known = special_value(SPECIAL_TANGENTS, angle, numbers)
    return numbers["tan"](angle) if known is None else known


def atand(slope, numbers):
    """The angle in degrees whose tangent is `slope`."""
    known = special_angle(SPECIAL_TANGENTS, slope, numbers)
    return numbers["atan"](slope) if known is None else known


def asind(value, numbers):
    """The angle in degrees, 0 to 90, whose sine is `value`."""
    known = special_angle(SPECIAL_SINES, value, numbers)
    return numbers["asin"](value) if known is None else known


def root(square, numbers):
    """The square root of `square`, which may be a length times a length."""
    return numbers["root"](square)
