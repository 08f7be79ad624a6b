"""Generates what people type: sensible entries, entries on the edge of a check, extreme and wrong ones.

Everything is drawn from a `random.Random` that the caller seeds, and goes by what an input declares, so a new
setup is swept without a line here.
"""

import random
from fractions import Fraction
from typing import Any

from shopcalc.portable.measures.parsing import read_length

from .helpers import INCH_SHOP, NUMBERS, UNITS

GRAINS = [Fraction(1, n) for n in (8, 16, 32, 64, 128, 10, 10, 100, 1000)] + [Fraction(5, 127), Fraction(1, 254)]
EXTREME_LENGTHS = [Fraction(text) for text in ("0", "1/128", "0.000001", "0.001", "1/3", "1199", "1200", "1200.01", "99999")]
EXTREME_ANGLES = ["0", "0.001", "0.000001", "89", "89.999", "89.999999", "90", "90.1", "180", "1000 in 1", "1:1000", "1000%"]
ANGLES = ["5", "10", "15", "22.5", "22 1/2", "30", "30\u00b0", "45", "60", "67.5", "75 deg", "90 - 22.5", "90/4"]
SLOPES = ["5 in 12", "5:12", "7 in 12", "12:12", "1:6", "10%", "100%", "24:12", "1 in 1.5", "0:12"]
TEMPERATURES = ["0", "-40", "-40 C", "32", "0 C", "70", "70", "21 C", "100", "250", "251", "-100", "-101", "\u22125", "1/2"]
WRONG = [
    "", " ", "-1", "1/0", "abc", "1,5", "3 5", "1..2", "2**9", "9" * 12, "9" * 90, "((1)", "1)", "5 kg",
    "<b>1</b>", '"', "\U0001f600", "0x10", "1e3", "NaN",
]  # fmt: skip
VULGAR = {Fraction(n, 8): mark for n, mark in ((1, "\u215b"), (2, "\u00bc"), (3, "\u215c"), (4, "\u00bd"), (5, "\u215d"), (6, "\u00be"))}


def queries(inputs: list[dict[str, Any]], count: int, rng: random.Random) -> list[dict[str, str]]:
    """`count` queries for a setup whose inputs are described so; the first are slips of the unit."""
    slips = [unit_slip(declared) for declared in inputs if declared["kind"] == "length" and declared["start"]]
    return [*slips, *(query(inputs, rng) for _ in range(count - len(slips)))]


def unit_slip(declared: dict[str, Any]) -> dict[str, str]:
    """The millimetres that an input starts with, typed where bare numbers are inches."""
    start = read_length(declared["start"], INCH_SHOP, UNITS, NUMBERS)["value"]
    return {declared["name"]: str(round(float(start * Fraction(127, 5)), 1))}


def query(inputs: list[dict[str, Any]], rng: random.Random) -> dict[str, str]:
    """One query: mostly sensible, often with values that sit exactly on one another, sometimes extreme or wrong."""
    temper = rng.choices(["sensible", "edge", "extreme", "wrong"], [50, 30, 13, 7])[0]
    typed: dict[str, str] = {}
    values: list[Fraction] = []
    grain = rng.choice(GRAINS)
    if rng.random() < 0.2:
        typed["units"] = rng.choice(["mm", "mm", "mm", "in", "ell"])
    if rng.random() < 0.4:
        typed["tape"] = rng.choice(["8", "16", "32", "64", "128", "7", ""])
    # where few entries are typed the rest are as the card starts, and what has many of them is seldom stopped
    left_out = rng.choice([0.1, 0.1, 0.7, 0.85])
    for declared in inputs:
        if rng.random() < left_out:
            if declared["kind"] == "length" and declared["start"]:
                values.append(read_length(declared["start"], INCH_SHOP, UNITS, NUMBERS)["value"])  # what a scrap measures is near it
            continue
        typed[declared["name"]] = entry(declared, rng, temper, grain, values, typed.get("units") == "mm")
    if rng.random() < 0.05:
        typed[rng.choice(["colour", "Stock", "x y", "<i>"])] = "1"
    return typed


def entry(declared: dict[str, Any], rng: random.Random, temper: str, grain: Fraction, values: list[Fraction], metric: bool) -> str:
    """What is typed for one input; `values` are the lengths typed before it."""
    if declared["reading"] and rng.random() < 0.5:
        return rng.choice(["", "", "  "])
    if temper == "wrong" and rng.random() < 0.4:
        return rng.choice(WRONG)
    if declared["options"]:
        return str(rng.choice([*declared["options"], ["no such option"]] if temper == "wrong" else declared["options"])[0])
    if declared["kind"] == "angle":
        return angle(rng, temper)
    if declared["kind"] == "temperature":
        return rng.choice(TEMPERATURES) if temper in ("edge", "extreme") else f"{rng.randint(-20, 140)}" + rng.choice(["", "", " F", "\u00b0F", " C"])
    if declared["kind"] == "percent":
        return rng.choice(["0", "30", "100", "100.1", "99%"]) if temper == "extreme" else str(rng.randint(1, 40) / rng.choice([1, 2, 10]))
    if declared["kind"] == "lengths":
        return row(declared, rng, temper, grain, values, metric)
    if declared["kind"] in ("pieces", "stock"):
        return rows(declared, rng, temper, grain, values, metric)
    if declared["kind"] == "count":
        return str(rng.choice([0, 1, 10**6, 10**9 - 1]) if temper == "extreme" else rng.randint(0, most_of(declared) + 1))
    value = length(declared, rng, temper, grain, values)
    values.append(value)
    return written(value, rng, metric)


def most_of(declared: dict[str, Any]) -> int:
    """The most that a count may be, or a dozen."""
    return int(declared["most"][0] // declared["most"][1]) if declared["most"] else 12


def row(declared: dict[str, Any], rng: random.Random, temper: str, grain: Fraction, values: list[Fraction], metric: bool) -> str:
    """A row of lengths, many of them alike, some too many."""
    few = min(declared["items"], 6)
    count = rng.choice([0, 1, 10, declared["items"] + 1]) if temper == "extreme" else rng.randint(0, few)
    pieces = [length(declared, rng, temper, grain, values) for _ in range(max(1, count // 2))]
    return rng.choice([", ", ",", "; "]).join(written(rng.choice(pieces), rng, metric) for _ in range(count))


LABELS = ["", "", "slat", "end rail", "leg:", "<b>", "x", "Ä", "no."]


def rows(declared: dict[str, Any], rng: random.Random, temper: str, grain: Fraction, values: list[Fraction], metric: bool) -> str:
    """Parts with how many and a name before or behind, or lengths to buy with a price, some wrong."""
    pieces = declared["kind"] == "pieces"
    count = rng.choice([0, 1, 12, declared["items"] + 1]) if temper == "extreme" else rng.randint(1, 4 if pieces else 3)
    some = [written(whole_length(rng, temper, grain, values, pieces), rng, metric) for _ in range(max(1, count // 2))]
    return rng.choice([", ", ",", "; "]).join(
        named(rng.choice(some), rng, temper) if pieces else priced(rng.choice(some), rng, temper) for _ in range(count)
    )


def whole_length(rng: random.Random, temper: str, grain: Fraction, values: list[Fraction], piece: bool) -> Fraction:
    """The length of a part, or of a board it may come from."""
    if temper == "edge" and values and rng.random() < 0.5:
        value = rng.choice(values) / rng.choice([1, 1, 2, 3, 4])
    elif temper == "extreme" and rng.random() < 0.3:
        value = rng.choice(EXTREME_LENGTHS)
    else:
        value = grain * rng.randint(1, int(60 / grain)) if piece else Fraction(rng.choice([48, 72, 96, 96, 120, 144]))
    values.append(value)
    return value


def named(text: str, rng: random.Random, temper: str) -> str:
    """A part with how many of it and perhaps a name."""
    many = (
        rng.choice(["", " x2", " x 3", "x1", " X4", " \u00d72", " *2"])
        if temper != "wrong"
        else rng.choice([" x0", " x", " x2 x3", " xx2", "@2", " x99999"])
    )
    label = rng.choice(LABELS)
    return f"{label} {text}{many}" if rng.random() < 0.6 else f"{text}{many} {label}".strip()


def priced(text: str, rng: random.Random, temper: str) -> str:
    """A length to buy, perhaps with its price."""
    return (
        text + rng.choice(["", "", " @ 12.50", "@9", " @ $14.25"])
        if temper != "wrong"
        else text + rng.choice(["@", "@@2", "@x", "@1000000", " @ -2"])
    )


def angle(rng: random.Random, temper: str) -> str:
    """An angle or a slope."""
    if temper == "extreme":
        return rng.choice(EXTREME_ANGLES)
    if temper == "edge":
        return rng.choice([*ANGLES, *SLOPES, "90", "90", "90", "45", "45", "30", "60"])
    return rng.choice([rng.choice(ANGLES), rng.choice(SLOPES), str(rng.randint(1, 89)), f"{rng.randint(1, 899) / 10}", f"{rng.randint(1, 24)} in 12"])


def length(declared: dict[str, Any], rng: random.Random, temper: str, grain: Fraction, values: list[Fraction]) -> Fraction:
    """A length, often one that equals another length typed, or a sum or a part of some."""
    near = Fraction(rng.choice([0, 0, 1, -1, 2, -2]), rng.choice([8, 64, 1000]))
    if temper == "extreme" and rng.random() < 0.5:
        return rng.choice(EXTREME_LENGTHS)
    if values and (rng.random() < 0.7 if temper == "edge" or declared["reading"] else rng.random() < 0.2):
        first, second = rng.choice(values), rng.choice(values)
        sums = [first, first + second, abs(first - second), 2 * first, 4 * first, first / 2, first / 4, first + Fraction(1, 8), (first + second) / 2]
        return max(Fraction(0), rng.choice(sums) + (near if declared["reading"] else 0))
    if temper == "edge":
        few = grain * rng.choice([0, 1, 2, 3, 4, 6, 8])
        return rng.choice([few, Fraction(rng.choice(["1/4", "3/4", "1/2", "1", "0.1", "0.2", "0.3"]))])
    return grain * rng.randint(1, int(rng.choice(scales(declared["start"])) / grain))


def scales(start: str) -> list[int]:
    """How long a length that starts so may be, in inches: a gap is not measured in feet, nor an opening in 64ths."""
    first = start.split(" ")[0]
    if first.isdigit() and int(first) >= 20:
        return [24, 60, 96]
    return [1, 1, 3, 12] if "/" in first or first.startswith("0.") else [1, 3, 12, 40]


def written(value: Fraction, rng: random.Random, metric: bool) -> str:
    """A length in one of the ways it may be typed, exactly as long."""
    ways = [fraction(value) + '"', f"{decimal(value)} in", f"{decimal(value * Fraction(127, 5))} mm", f"{decimal(value * Fraction(127, 50))}cm"]
    ways += [f"({decimal(2 * value)} in)/2", f"{fraction(value / 3)} in + {fraction(value / 3 * 2)} in"]
    if value >= 12:
        feet = int(value) // 12
        ways += [f"{feet}' {fraction(value - 12 * feet)}\"", f"{feet} ft {fraction(value - 12 * feet)} in"]
    if value % 1 in VULGAR:
        ways.append(f"{int(value) or ''}{VULGAR[value % 1]}\u2033")
    bare = decimal(value * Fraction(127, 5)) if metric else rng.choice([fraction(value), decimal(value), decimal(value)])
    usual = [bare] * len(ways)
    return rng.choice([way for way in ways + usual if "?" not in way] or [fraction(value) + " in"])


def fraction(value: Fraction) -> str:
    """`3 5/8`."""
    whole, rest = divmod(value, 1)
    return f"{whole} {rest}" if whole and rest else str(value)


def decimal(value: Fraction) -> str:
    """A decimal of at most nine places, or `?` where there is none."""
    scaled = value * 10**9
    if scaled.denominator != 1:
        return "?"
    text = f"{int(scaled):010d}"
    return f"{text[:-9]}.{text[-9:]}".rstrip("0").rstrip(".")
