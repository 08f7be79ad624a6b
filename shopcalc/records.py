"""What a setup is made of, as plain records. `declare.py` fills them; everything else reads them."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import sympy

from shopcalc.terms import constant_of

if TYPE_CHECKING:
    from shopcalc.declare import Setup

STANDS = ("at the saw", "at the bench", "on the building", "at the desk")

# The order of the trade: what is run on every piece before anything that follows it.
STAGES = (
    "mill", "rip", "crosscut", "groove and rabbet", "shoulders", "cheeks", "dry fit", "panes", "glue-up", "hinges", "edge bevel", "fit",
)  # fmt: skip
MACHINES = ("table saw", "planer", "drill", "router", "saw in the hand", "bench")

ROUNDINGS = ("nearest", "down", "up", "none")  # none: a piece is no mark on a tape, and keeps its own size
NO_SOURCE = "common practice, no published source"

# A value quoted in a text: {fence}
QUOTED = re.compile(r"\{([a-z]\w*)\}")
# A length that stands in a text as it is, to be written in the shop's own unit: {1/4 in}
LITERAL = re.compile(r"\{(\d[\d /]*) in\}")


class DeclarationError(ValueError):
    """A setup declares something that cannot be; the message names the setup and the thing."""


@dataclass(frozen=True)
class Input:
    """One value that is measured or chosen."""

    name: str
    kind: str
    label: str
    start: str
    help: str
    zero: bool = False
    most: Any = None
    options: tuple[tuple[str, str], ...] = ()
    reading: bool = False
    signed: bool = False
    items: int = 0
    group: str = ""
    columns: "tuple[Column, ...]" = ()
    shop: bool = False
    when: sympy.Basic | None = None


@dataclass(frozen=True)
class Column:
    """What a table says of each option of a choice: one number an option, as it was published."""

    name: str
    kind: str
    values: tuple[Any, ...]


@dataclass(frozen=True)
class Result:
    """One value that is worked out. `role`: setting, size, after (known once the scrap is read), correction, inner (a ranking).

    Data call it `known_as`, where an input has that name already.
    """

    name: str
    label: str
    formula: sympy.Basic
    kind: str
    role: str
    rounding: str = "nearest"
    division: str = ""
    when: sympy.Basic | None = None
    reading: str = ""
    more: str = ""
    less: str = ""
    source: str = ""
    known_as: str = ""


@dataclass(frozen=True)
class Check:
    """A relation that says something when it holds; `doubts` names the reading that is a slip then, and is followed by nothing."""

    name: str
    level: str
    relation: sympy.Basic
    text: str
    change: str
    spoils: tuple[str, ...] | None
    source: str
    doubts: str = ""


@dataclass(frozen=True)
class Line:
    """What the card says, or a machine whose cautions it shows, while a relation holds; always, with none."""

    text: str
    when: sympy.Basic | None = None


@dataclass(frozen=True)
class Part:
    """A part for the cut list: how many, and how long, wide and thick."""

    label: str
    numbers: tuple[Any, ...]
    when: sympy.Basic | None = None
    pane: bool = False


@dataclass(frozen=True)
class Run:
    """What many setups run alike: its stage, machine and labels, and which face goes where."""

    stage: str
    machine: str
    label: str
    settings: tuple[str, ...]
    face: str


# Runs that merge across setups when their settings are the same.
RUNS = {
    "mill": Run("mill", "planer", "Mill to thickness", ("Thickness",), "Flat face down; mark it as the reference face."),
    "spacer": Run(
        "rip",
        "table saw",
        "Rip the spacer block",
        ("Spacer",),
        "From a wide scrap long enough to hold, so that the spacer falls free on the side of the blade away from the fence.",
    ),
    "rip": Run("rip", "table saw", "Rip to width", ("Fence to blade",), "Jointed edge to the fence."),
    "crosscut": Run(
        "crosscut",
        "table saw",
        "Cut to length",
        ("Stop to blade",),
        "Squared end to a stop, not to the fence. What is too long for the saw is marked and cut by hand.",
    ),
    "dry fit": Run("dry fit", "bench", "Dry fit", (), "Reference faces to one side."),
    "pane width": Run("panes", "bench", "Cut panes to width", ("Width",), "Measured from one straight edge."),
    "pane height": Run("panes", "bench", "Cut panes to height", ("Height",), "Measured from one straight edge."),
    "glue-up": Run("glue-up", "bench", "Glue up", (), "Reference faces to one side."),
}


@dataclass(frozen=True)
class Operation:
    """What is run at one machine with one setting; `run` is the word by which it merges with those of other setups.

    `settings` are names of values, each with the label that it has in this run, or none for its own. `parts` are the labels
    of the parts that pass, none for the whole piece; `reading` is the input that is read on the scrap of this run.
    """

    name: str
    stage: str
    machine: str
    label: str
    settings: tuple[tuple[str, str], ...]
    face: str = ""
    parts: tuple[str, ...] = ()
    reading: str = ""
    when: sympy.Basic | None = None
    run: str = ""


@dataclass(frozen=True)
class Onward:
    """A card this one leads to: its inputs, each from the first of these names that has been given."""

    slug: str
    label: str
    carry: Mapping[str, tuple[str, ...]]


@dataclass(frozen=True)
class Included:
    """A setup whose card stands inside another's, with some of its inputs worked out there; `passes` are the parts in its operations."""

    setup: "Setup"
    given: Mapping[str, sympy.Basic]
    passes: Mapping[str, tuple[str, ...]]


class Choice:
    """A choice among named options, as formulas see it; `columns` are what a table says of the option chosen."""

    def __init__(self, symbol: sympy.Symbol, options: Sequence[str], columns: Mapping[str, sympy.Symbol] | None = None) -> None:
        self.symbol = symbol
        self.name = symbol.name
        self.columns = dict(columns or {})
        self._options = list(options)

    def is_(self, option: str) -> sympy.Basic:
        """The condition that `option` is chosen. Raises DeclarationError for an unknown option."""
        if option not in self._options:
            raise DeclarationError(f"{self.name} has no option {option!r}")
        return sympy.Eq(self.symbol, self._options.index(option))


def symbols_of(formula: Any) -> set[sympy.Symbol]:
    """The free symbols of a formula or of a list of them."""
    parts = formula if isinstance(formula, (list, tuple)) else [formula]
    return {symbol for part in parts for symbol in sympy.sympify(part).free_symbols}


def limit_text(limit: Any, kind: str) -> str:
    """A limit as a text quotes it: `{1/16 in}` or `5\u00b0`. Raises ValueError where it cannot be said just so."""
    value = constant_of(limit)
    if kind == "angle":
        return f"{value}\u00b0"
    if kind != "length" or (value * 128).q != 1:
        raise ValueError("that is no angle, and no whole number of 128ths of an inch")
    return f"{{{value} in}}"
