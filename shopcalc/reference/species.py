"""How much the woods move: the dimensional change coefficients of the Wood Handbook, one line a species.

Wood Handbook (USDA Forest Products Laboratory, FPL-GTR-190, 2010), Table 13-5: the part of its width that a board gains for
each percent of moisture, from 6 to 14 percent, radially (quartersawn) and tangentially (flatsawn). How each row was come by
is kept in words. Mahogany is left out: what is remembered of its row (0.00172, 0.00238) does not follow from the shrinkage
printed in the same book, and the two could not be reconciled.
"""

from typing import Any, NamedTuple

from shopcalc.terms import number

READ = "read in Table 13-5"
# by the rule of that table, from the shrinkage
RECOMPUTED = "recomputed from shrinkage values read in Table 4-3"
RECOMPUTED_FROM_22 = f"{RECOMPUTED}; that it starts to shrink at 22 percent of moisture is from memory"
MEMORY = "from memory"


class Species(NamedTuple):
    """A row of the table; `radial` and `tangential` are parts of the width, for each percent of moisture."""

    label: str
    radial: Any
    tangential: Any
    source: str

    @property
    def radial_thousandths(self) -> Any:
        """Thousandths of an inch that an inch of quartersawn width moves for each percent."""
        return self.radial * 1000

    @property
    def tangential_thousandths(self) -> Any:
        """Thousandths of an inch that an inch of flatsawn width moves for each percent."""
        return self.tangential * 1000


def _row(label: str, radial: str, tangential: str, source: str) -> Species:
    marked = f"{label} ({MEMORY})" if source == MEMORY else label
    return Species(marked, number(radial), number(tangential), source)


SPECIES = {
    # where the form starts; the others by the alphabet
    "white oak": _row("White oak", "0.00180", "0.00365", READ),
    "alaska yellow cedar": _row("Alaska yellow-cedar", "0.00095", "0.00208", RECOMPUTED),
    "american beech": _row("American beech", "0.00190", "0.00431", READ),
    "american chestnut": _row("American chestnut", "0.00116", "0.00234", READ),
    "american elm": _row("American elm", "0.00144", "0.00338", READ),
    "atlantic white cedar": _row("Atlantic white-cedar", "0.00099", "0.00187", RECOMPUTED),
    "baldcypress": _row("Baldcypress", "0.00130", "0.00216", MEMORY),
    "basswood": _row("Basswood", "0.00230", "0.00330", READ),
    "black cherry": _row("Black cherry", "0.00126", "0.00248", READ),
    "black locust": _row("Black locust", "0.00158", "0.00252", READ),
    "black walnut": _row("Black walnut", "0.00190", "0.00274", READ),
    "butternut": _row("Butternut", "0.00116", "0.00223", READ),
    "douglas fir": _row("Douglas-fir (coast)", "0.00165", "0.00267", RECOMPUTED),
    "eastern redcedar": _row("Eastern redcedar", "0.00106", "0.00162", RECOMPUTED),
    "eastern white pine": _row("Eastern white pine", "0.00071", "0.00212", MEMORY),
    "incense cedar": _row("Incense cedar", "0.00112", "0.00180", RECOMPUTED),
    "live oak": _row("Live oak", "0.00230", "0.00338", READ),
    "loblolly pine": _row("Loblolly pine", "0.00165", "0.00259", MEMORY),
    "longleaf pine": _row("Longleaf pine", "0.00176", "0.00263", MEMORY),
    "northern white cedar": _row("Northern white-cedar", "0.00101", "0.00229", RECOMPUTED_FROM_22),
    "oregon white oak": _row("Oregon white oak", "0.00144", "0.00327", READ),
    "pecan hickory": _row("Pecan hickory", "0.00169", "0.00315", READ),
    "ponderosa pine": _row("Ponderosa pine", "0.00133", "0.00216", MEMORY),
    "port orford cedar": _row("Port-Orford-cedar", "0.00158", "0.00241", RECOMPUTED),
    "quaking aspen": _row("Quaking aspen", "0.00119", "0.00234", READ),
    "red alder": _row("Red alder", "0.00151", "0.00256", READ),
    "red maple": _row("Red maple", "0.00137", "0.00289", READ),
    "red oak": _row("Red oak", "0.00158", "0.00369", READ),
    "redwood old growth": _row("Redwood, old growth", "0.00120", "0.00205", MEMORY),
    "redwood second growth": _row("Redwood, second growth", "0.00101", "0.00229", MEMORY),
    "sitka spruce": _row("Sitka spruce", "0.00148", "0.00263", MEMORY),
    "hard maple": _row("Sugar maple (hard maple)", "0.00165", "0.00353", READ),
    "sweetgum": _row("Sweetgum", "0.00183", "0.00365", READ),
    "sycamore": _row("Sycamore", "0.00172", "0.00296", READ),
    "teak": _row("Teak", "0.00101", "0.00186", MEMORY),
    "western redcedar": _row("Western redcedar", "0.00111", "0.00234", RECOMPUTED_FROM_22),
    "white ash": _row("White ash", "0.00169", "0.00274", READ),
    "white fir": _row("White fir", "0.00112", "0.00245", RECOMPUTED),
    "yellow birch": _row("Yellow birch", "0.00256", "0.00338", READ),
    "yellow poplar": _row("Yellow-poplar", "0.00158", "0.00289", RECOMPUTED),
}
