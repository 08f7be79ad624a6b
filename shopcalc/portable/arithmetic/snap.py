"""Comparing and rounding so that exact fractions and doubles agree.

Both runtimes treat two numbers closer than one part in `GRAIN` of a unit as the same number: a billionth of an
inch is far below anything a tape shows, and far above a double's noise. It is a hair over a billionth, so that no
difference of decimals somebody types lies on the very edge, where the two would decide apart.
"""

GRAIN = 990000007
TWICE = 1980000014
HALF = 990000009  # half a whole in the same grains, and a hair, so that a tie goes up in both runtimes


def floor_of(x):
    """The whole number at or below `x`; a hair under a whole number counts as that number."""
    return (x * GRAIN + 1) // GRAIN


def ceiling_of(x):
    """The whole number at or above `x`; a hair over a whole number counts as that number."""
    return 0 - floor_of(0 - x)


def nearest_of(x):
    """The whole number nearest to `x`; a tie goes up."""
    return (x * TWICE + HALF) // TWICE


def above(a, b):
    """Whether `a` is more than `b`."""
    return (a - b) * GRAIN > 1


def at_least(a, b):
    """Whether `a` is `b` or more."""
    return (a - b) * GRAIN >= -1


def same(a, b):
    """Whether `a` and `b` are one number."""
    return at_least(a, b) and at_least(b, a)


def larger(a, b):
    """The larger of two numbers."""
    return a if a > b else b


def smaller(a, b):
    """The smaller of two numbers."""
    return b if a > b else a


def magnitude(a):
    """A number without its sign."""
    return 0 - a if a < 0 else a
