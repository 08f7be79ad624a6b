"""Decimal equivalents of the 64ths, from two printed tables.

ICS: *Building Trades Pocketbook* (International Correspondence Schools), "Decimal Equivalents of 64ths", read in the
publication: four decimals, halves rounded up. Cosgrove: *Principles and Practice of Plumbing*, Table LXIII, read in the
publication: six decimals, which are exact. (It misprints 3/64 as "3/62".)
"""

from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from math import gcd

import pytest

from .asking import results_of, texts_of

SIXTY_FOURTHS = range(1, 64)

# read in the publication
ICS = {
    "1/64": ".0156",
    "1/32": ".0313",
    "3/64": ".0469",
    "1/16": ".0625",
    "7/64": ".1094",
    "9/64": ".1406",
    "5/32": ".1563",
    "63/64": ".9844",
}
COSGROVE = {"1/64": ".015625", "63/64": ".984375"}

# ICS's worked cases of the nearest 64th, read in the publication. Its printed midpoint of 23/64 and 3/8 is .3672 where the
# exact one is .3671875, so nothing between those two is tried here; .3670 lies clear of both.
ICS_NEAREST = {".1330": "9/64", ".3670": "23/64", ".8979": "57/64"}


def reduced(ticks: int, division: int) -> str:
    """Write a fraction as a table prints it."""
    common = gcd(ticks, division)
    return f"{ticks // common}/{division // common}" if common < division else str(ticks // division)


def decimal_of(fraction: str, places: str) -> Decimal:
    """Ask for the value of a fraction, and round it as the tables do."""
    return Decimal(str(results_of("fractions", entry=fraction)["length"])).quantize(Decimal(places), ROUND_HALF_UP)


@pytest.mark.parametrize(("fraction", "printed"), ICS.items())
def test_a_fraction_is_the_four_decimals_ics_prints(fraction, printed):
    """The card's decimal rounds to the printed one."""
    assert decimal_of(fraction, ".0001") == Decimal(printed)


@pytest.mark.parametrize(("fraction", "printed"), COSGROVE.items())
def test_a_fraction_is_the_six_decimals_cosgrove_prints(fraction, printed):
    """Six decimals hold a 64th exactly, so the card's decimal is the printed one."""
    assert decimal_of(fraction, ".000001") == Decimal(printed)


@pytest.mark.parametrize("ticks", SIXTY_FOURTHS)
def test_every_64th_is_its_exact_decimal(ticks):
    """The rest of Cosgrove's table, recomputed in decimal arithmetic: a 64th goes into six decimals."""
    assert Decimal(str(results_of("fractions", entry=reduced(ticks, 64))["length"])) == Decimal(ticks) / 64


@pytest.mark.parametrize("ticks", SIXTY_FOURTHS)
def test_every_exact_decimal_is_its_64th(ticks):
    """Cosgrove's table read backward (recomputed): the decimal stands on the mark, between the 64ths beside it."""
    texts = texts_of("fractions", entry=Decimal(ticks) / 64, nearest=64)

    assert [texts["below"], texts["length"], texts["above"]] == [reduced(each, 64) for each in (ticks - 1, ticks, ticks + 1)]


@pytest.mark.parametrize("ticks", SIXTY_FOURTHS)
def test_every_four_place_decimal_finds_its_64th_again(ticks):
    """The rest of ICS's table, recomputed: what it rounds away is less than a hand can set, and goes without a word."""
    printed = (Decimal(ticks) / 64).quantize(Decimal(".0001"), ROUND_HALF_UP)

    assert texts_of("fractions", entry=printed, nearest=64)["length"] == reduced(ticks, 64)


@pytest.mark.parametrize(("entry", "printed"), ICS_NEAREST.items())
def test_the_nearest_64th_is_the_one_ics_works_out(entry, printed):
    """ICS's three worked cases, each with the side that it leans to."""
    leans = "full" if Decimal(entry) > Decimal(str(results_of("fractions", entry=printed)["length"])) else "scant"

    assert texts_of("fractions", entry=entry, nearest=64)["length"] == f"{printed} {leans}"


@pytest.mark.parametrize("division", [8, 16, 32, 64, 128])
@pytest.mark.parametrize("entry", ["0.133", "0.367", "0.8979", "1.0001", "15.4375", "48", "92.1 mm"])
def test_the_marks_below_and_above_hold_the_entry_between_them(division, entry):
    """The marks are whole ticks: one tick apart with the entry between them, or a tick to each side of an entry on a mark (recomputed)."""
    values = results_of("fractions", entry=entry, nearest=division)
    length = Fraction(entry) if "mm" not in entry else Fraction(entry.removesuffix(" mm")) / Fraction("25.4")
    below, above = Fraction(values["below"]), Fraction(values["above"])

    assert (below * division).denominator == (above * division).denominator == 1
    assert below < length < above
    assert above - below == Fraction(2 if (length * division).denominator == 1 else 1, division)


@pytest.mark.parametrize(
    ("entry", "length"),
    [
        ("(31 1/4 - 3/8) / 2", Fraction("15.4375")),
        ("6 ft 6 1/2 in", Fraction("78.5")),
        ("2 1/4 + 1/16", Fraction("2.3125")),
        ("3 * 4 5/8", Fraction("13.875")),
        ("25.4 mm + 1/64", Fraction("1.015625")),
    ],
)
def test_a_sum_is_what_decimal_arithmetic_makes_it(entry, length):
    """Sums added up by hand in decimals, the 64ths from Cosgrove's table."""
    assert results_of("fractions", entry=entry)["length"] == length
