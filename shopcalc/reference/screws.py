"""Wood screws by their gauge: what the shank, the thread and the head of a number measure.

Each figure stands with its source. Of ASME B18.6.1 (wood screws) nothing was seen; where it has what was read for
machine screws, that is said.
"""

from typing import Any, NamedTuple

from shopcalc.terms import degrees, inches, number


class Figure(NamedTuple):
    """A published figure: its value, and where it was read."""

    value: Any
    source: str


LEAST_GAUGE, MOST_GAUGE = 2, 14

_BODY = (
    "Body 0.060 in + 0.013 in a gauge: Machinery's Handbook, read in the publication for machine screws; for wood screws (ANSI B18.6.1) from memory."
)
BODY_OF_NONE = Figure(inches("0.060"), _BODY)
BODY_STEP = Figure(inches("0.013"), _BODY)

_TOLERANCE = "Body +0.004, \u22120.007 in: read in a seller's page that gives the tolerance of wood screws"
BODY_OVER = Figure(inches("0.004"), _TOLERANCE)
BODY_UNDER = Figure(inches("0.007"), _TOLERANCE)

_ROOT = (
    "Root of the thread about two thirds of the body: Wood Handbook, chapter 8, read in the publication. "
    "NDS, Appendix L, has about four fifths (from memory)."
)
ROOT_OF_BODY = Figure(number("2/3"), _ROOT)

_PILOT = (
    "Pilot 90% of the root in hardwood, 70% in softwood: the rule of the NDS before 1962, read in its commentary. Drills come in 64ths: "
    "ANSI B94.11M, read in a page that quotes it."
)
PILOT_IN_HARDWOOD = Figure(number("9/10"), _PILOT)
PILOT_IN_SOFTWOOD = Figure(number("7/10"), _PILOT)
DRILL_STEP = Figure(inches("1/64"), _PILOT)

_HEAD = (
    "Countersink 82\u00b0: flat heads are 80\u00b0 to 82\u00b0, Machinery's Handbook, read in the publication for machine screws. "
    "Head 0.119 in + 0.0266 in a gauge: a line through the largest heads in sellers' tables, within 0.001 in; one in the hand may be smaller."
)
HEAD_OF_NONE = Figure(inches("0.119"), _HEAD)
HEAD_STEP = Figure(inches("0.0266"), _HEAD)
HALF_COUNTERSINK = Figure(degrees(41), _HEAD)

SOURCES = (_BODY, _ROOT, _PILOT, _HEAD)
