"""What one line of a setup must be to be taken: each function says what is wrong with it, or an empty text."""

import keyword
import re
from collections.abc import Collection, Mapping

import sympy

from shopcalc.numbers import NUMBERS
from shopcalc.portable.cards.work import SHOP_NAMES, read_entry, starting_text
from shopcalc.portable.measures.writing import TAPES, USUAL_TAPE
from shopcalc.records import ROUNDINGS, STANDS, Input, Result
from shopcalc.reference.cautions import CAUTIONS
from shopcalc.terms import constant_of, forbidden
from shopcalc.units import INNER, KIND_UNITS, KINDS, UnitsError, dimension_of, length_factors

# Names of the query that belong to the shop and not to a setup, and the one plain word that every object in JavaScript has
# of its own. Words of that language itself may be names: in formulas on the phone values have short names.
RESERVED = {*SHOP_NAMES, "constructor"}

# What a form in the browser and the list of its fields have of their own: a field of that name would hide it, or be hidden.
FORM_WORDS = {"elements", "length", "item"}

# Addresses of pages that are no cards.
PAGES = {"job", "shop"}

# What can be read on a scrap, and corrected.
READABLE = ("length", "angle", "count", "percent")


def fault_of_card(slug: str, stand: str, icon: str) -> str:
    """A card has an address of its own, a place where one stands, and a path for its small drawing."""
    if stand not in STANDS:
        return f"nobody stands {stand!r}: use one of {', '.join(STANDS)}"
    if not re.fullmatch(r"[MLHVCQAZmlhvcqaz0-9 .-]*", icon):
        return "its icon is not the data of a path"
    if not re.fullmatch(r"[a-z][a-z0-9]*(-[a-z0-9]+)*", slug):
        return "the address is not of small letters and digits with hyphens between"
    return "the address is that of another page" if slug in PAGES else ""


def fault_of_machine(name: str) -> str:
    """A machine has cautions."""
    return "" if name in CAUTIONS else f"nobody has written cautions for {name!r}: use one of {', '.join(CAUTIONS)}"


def fault_of_name(name: str) -> str:
    """An input is given to an included card, and carried on, as a keyword argument, which a word of Python cannot be."""
    fits = re.fullmatch(r"[a-z][a-z0-9_]*", name) and name not in RESERVED and not keyword.iskeyword(name)
    return "" if fits else f"{name!r} cannot be a name"


def fault_of_input(declared: Input) -> str:
    """An input has a name that a form can hold, help, and as a reading a kind that can be read off a scrap."""
    if declared.name in FORM_WORDS:
        return f"{declared.name!r} cannot be the name of an input: a form has that word for itself"
    if declared.reading and declared.kind not in READABLE:
        return f"the reading {declared.name} cannot be of the kind {declared.kind!r}"
    return "" if declared.help else f"{declared.name} has no help: say where to put the calipers"


def fault_of_start(declared: Input) -> str:
    """A card opens with its starts: each can be read in either shop, as the same value, within the input's own limits."""
    try:
        most = [] if declared.most is None else [int(each) for each in constant_of(declared.most).as_numer_denom()]
    except ValueError as reason:
        return f"{declared.name}: {reason}"
    about = {**vars(declared), "most": most}
    started = []
    world = {"numbers": NUMBERS, "units": length_factors()}
    for metric in (False, True):
        shop = {"metric": metric, "division": USUAL_TAPE}
        text = starting_text(about, shop, world)  # type: ignore[no-untyped-call]
        got = read_entry(about, text, shop, world)  # type: ignore[no-untyped-call]
        if not got["ok"]:
            return f"{declared.name} cannot start with {text!r}: {got['message']}"
        started.append(got["value"])
    # lengths and temperatures start with what is usual in either shop, and the ticks of a metric tape are its own
    if started[0] != started[1] and declared.kind not in ("length", "temperature", "division"):
        return f"{declared.name} starts with {declared.start!r}, which is something else in a metric shop: say the unit"
    return ""


def fault_of_result(declared: Result, inputs: Collection[str]) -> str:
    """A result has a kind that its role can have, and is rounded to what there is."""
    if declared.name == "parts":
        return "'parts' cannot be a name: among the results it is the cut list"
    if declared.kind not in KIND_UNITS or (declared.kind in INNER) != (declared.role == "inner"):
        return f"{declared.name} cannot be of the kind {declared.kind!r}"
    if declared.role == "correction" and declared.kind not in READABLE:
        return f"the correction {declared.name} cannot be of the kind {declared.kind!r}"
    if declared.rounding not in ROUNDINGS or (declared.rounding == "none" and declared.kind not in ("length", "lengths")):
        return f"{declared.name} cannot be rounded {declared.rounding!r}"
    if declared.known_as and declared.known_as not in inputs:
        return f"{declared.name} is known as {declared.known_as!r}, which is no input's name: it can have that name itself"
    if declared.division and declared.division not in (*inputs, *TAPES):
        return f"{declared.name} is to be rounded to {declared.division!r}, which is no input"
    return ""


def fault_of_formula(name: str, expression: sympy.Basic, kind: str, kinds: Mapping[str, str]) -> str:
    """A formula is over values declared above it, of terms that both runtimes know, and its units add up to its kind."""
    for symbol in sorted(each.name for each in expression.free_symbols):
        if symbol not in kinds:
            return f"{name} uses {symbol!r}, which is declared nowhere above it"
    unknown = forbidden(expression)
    if unknown:
        return f"{name} uses {unknown}, which cannot be worked out exactly"
    try:
        found = dimension_of(expression, kinds)
    except UnitsError as disagreement:
        return f"{name}: {disagreement}"
    wanted = kind if kind in (*KINDS, "truth") else "number"
    if found != wanted and (expression != 0 or wanted == "truth") and expression not in (sympy.true, sympy.false):
        return f"{name} should be a {wanted} and comes out as a {found}"
    return ""
