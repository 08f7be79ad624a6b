"""Tape arithmetic and conversion: any sum of measurements, in the fraction of any tape."""

from sympy import Not, Or

from shopcalc.declare import Setup
from shopcalc.drawing import box, label, line
from shopcalc.terms import inches, number, pick, whole_above, whole_below

setup = Setup(
    slug="fractions",
    title="Tape arithmetic",
    stand="at the desk",
    job="Add, take away, double and divide measurements as they stand on the tape, and read the answer on any tape, in decimals and in mm.",
    machines=("bench",),
    icon="M4 12h16M10 4l2-2v7M9 15h6v3H9v4h6",
)

# What is measured

entry = setup.tape_sum(
    "entry",
    "Measurement or sum",
    "(31 1/4 - 3/8) / 2",
    "Fractions, feet, decimals, mm: 3 5/8, 6' 6-1/2\", 92.1 mm, with + \u2212 \u00d7 / and brackets.",
)
nearest = setup.division("nearest", "To the nearest", "64", "The finest tick on the tape or rule that the answer will be read on.")

# What follows

length = setup.setting("length", "On the tape", entry, division="nearest")
# marks of the tape that is read, in a metric shop of millimetres: rounded once more, away from each other, they would be no neighbours
_at = entry / inches(1) * nearest
_between = whole_above(_at) > whole_below(_at)
_one_below = pick((whole_below(_at), _between), otherwise=whole_below(_at) - 1)
_one_above = pick((whole_above(_at), _between), otherwise=whole_above(_at) + 1)
below = setup.size("below", "The mark below", _one_below / nearest * inches(1), division="nearest", when=Or(_between, entry > 0))
above = setup.size("above", "The mark above", _one_above / nearest * inches(1), division="nearest")

setup.note("on_the_mark", Not(_between), "It falls on a mark of this tape: nothing is rounded.")

setup.step("Hook the tape, find {below} and {above}; the true place is between them.", when=_between)
setup.step("Hook the tape and mark {length}.", when=Not(_between))

# The picture: a tick and a half each side of the place, magnified

_tick = inches(1) / nearest
setup.picture(
    "The place between its neighbours on the tape, magnified.",
    box("wood", entry - _tick * number("3/2"), 0, 3 * _tick, _tick * number("1/2")),
    line("edge", (below, 0), (below, _tick * number("1/2"))),
    line("edge", (above, 0), (above, _tick * number("1/2"))),
    line("face", (entry, 0), (entry, _tick * number("2/3"))),
    label("{below}", (below, 0), "below"),
    label("{above}", (above, 0), "below"),
    label("{length}", (entry, _tick * number("2/3")), "above"),
)

setup.source("1 in = 25.4 mm exactly, since 1 July 1959: addendum (1960) to NBS Circular 572.")
