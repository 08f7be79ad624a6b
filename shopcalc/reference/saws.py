"""How far the cutters of a common table saw stand out of its table, at most.

Common practice, no published source: of a 10 in blade arbor, flange and table take some two inches of the five above the middle.
"""

TEN_INCH_BLADE = "25/8"
