"""Reading and writing on both sides: anything may be typed, and both read the same in it."""

import random
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from py_mini_racer import MiniRacer

from shopcalc.portable.measures.parsing import read_angle, read_count, read_length, read_percent, read_sum, read_temperature
from shopcalc.portable.measures.writing import decimal_text, feet_text, fraction_text

from .helpers import INCH_SHOP, MM_SHOP, NUMBERS, UNITS, run, unlike

pytestmark = pytest.mark.sweep

COUNT = 10_000
BATCH = 500
VALID = [
    "3 5/8", "3-5/8", "3\u215d", "29/8", "3.625", ".625", '5/8"', "6' 6\"", "6ft 6-1/2in", "92.1 mm", "9.21cm", "2 1/4 + 1/16",
    "(31 1/4 - 3/8)/2", "31 1/4 / 3", "2 * 4 5/8", "6\u2032-6\u2033", "1\u20442 in.", "\u00bd\u201d", "1.5 m", "10", "10\u00b0", "5 in 12", "5:12",
    "1:6", "10%", "22 1/2 deg", "4", "12", "1 ft - 3/4 in", "3 \u2212 5/8", "5''", "7 feet 3 inches", "1/3", "0", "5:1-2", "4-7 in 3",
    "100 ft", "0.1 + 0.2", "3-8/5", "5/12", "5/12 deg", '5" in 12"', "2 \u2217 4", "0x10", "2x4", "\uff15\uff1a\uff11\uff12",
    "-5 \u02daC", "70F", "12 1/2 %",
]  # fmt: skip
TOKENS = [*"0123456789+-*/()'\".:%  ", "1/2", "3 5/8", "in", "ft", "mm", "deg", "\u00bd", "\u2033", "\u2212", "\u00d7", "12", "0.1", "1000000"]
ODD = [
    "\u00a0", "\u200b", "\ufeff", "\u00b2", "\u0661", "\u2155", "\U0001f4cf", "\U0001d7d8", "\u0130", "K", "\x7f", "e", "_", ",", "<",
    "&", "\\", "\ufffd", "\u02da", "\uff15", "\uff0f", "\u3000", "\u2060", "C",
]  # fmt: skip


def any_text(rng: random.Random) -> str:
    """Printable characters from all of Unicode, beyond the first plane too."""
    blocks = [(0x20, 0x7E), (0xA0, 0x17F), (0x2000, 0x22FF), (0x1F300, 0x1F6FF), (0x10000, 0x1FFFF)]
    return "".join(chr(rng.randint(*rng.choice(blocks))) for _ in range(rng.choice([1, 2, 3, 5, 8, 20, 90])))


def like_an_entry(rng: random.Random) -> str:
    """Pieces of entries in any order."""
    return "".join(rng.choice(TOKENS) for _ in range(rng.randint(1, 14)))


def spoiled(rng: random.Random) -> str:
    """A valid entry with up to three characters put in, taken out or changed."""
    text = rng.choice(VALID)
    for _ in range(rng.randint(0, 3)):
        at = rng.randint(0, len(text))
        text = text[:at] + rng.choice(["", rng.choice(TOKENS), rng.choice(ODD)]) + text[at + rng.randint(0, 1) :]
    return text


def entries() -> list[tuple[str, str, bool]]:
    """What is read as what, and whether in a metric shop; always the same."""
    rng = random.Random("entries")
    makers = [any_text, like_an_entry, like_an_entry, spoiled, spoiled]
    return [(rng.choice(list(READERS)), rng.choice(makers)(rng), rng.random() < 0.3) for _ in range(COUNT)]


READERS = {
    "length": lambda text, shop: read_length(text, shop, UNITS, NUMBERS),
    "sum": lambda text, shop: read_sum(text, shop, UNITS, NUMBERS),
    "angle": lambda text, shop: read_angle(text, UNITS, NUMBERS),
    "count": lambda text, shop: read_count(text, UNITS, NUMBERS),
    "percent": lambda text, shop: read_percent(text, UNITS, NUMBERS),
    "temperature": lambda text, shop: read_temperature(text, shop, UNITS, NUMBERS),
}

ON_THE_PHONE = """given[0].map(([what, text, metric]) => ({
    length: () => read_length(text, { metric }, UNITS, numbers),
    sum: () => read_sum(text, { metric }, UNITS, numbers),
    angle: () => read_angle(text, UNITS, numbers),
    count: () => read_count(text, UNITS, numbers),
    percent: () => read_percent(text, UNITS, numbers),
    temperature: () => read_temperature(text, { metric }, UNITS, numbers),
})[what]())"""


def on_the_server(what: str, text: str, metric: bool) -> dict[str, Any]:
    """How the server reads an entry."""
    return dict(READERS[what](text, MM_SHOP if metric else INCH_SHOP))


def test_both_sides_read_the_same(phone_brain: MiniRacer) -> None:
    """Whatever is typed is read alike on both sides: the same value, or refused in the same words; nothing is raised."""
    typed = entries()
    faults = []
    for start in range(0, COUNT, BATCH):
        batch = typed[start : start + BATCH]
        for entry, phone in zip(batch, run(phone_brain, ON_THE_PHONE, batch), strict=True):
            faults += [(entry, fault) for fault in unlike(on_the_server(*entry), phone)]

    assert [] == faults[:10]


NOISE = [
    *(f"{tenths / 10:.1f} - {tenths / 10 * (1 - 1e-6):.7f}" for tenths in range(1, 60)),
    "(((1/3 - 0.33333)*100000 - 0.33333)*100000 - 0.33333)*100000",
    "((((((1/3 - .33)*100 - .33)*100 - .33)*100 - .33)*100 - .33)*100 - .33)*100",
    "96 - 95 7/8 + 48 - 47 7/8 + 30 - 29 7/8",
]


@pytest.mark.parametrize("text", NOISE)
def test_what_is_left_of_two_nearly_equal_numbers_is_judged_alike(text: str, phone_brain: MiniRacer) -> None:
    """At the share below which a difference is refused, and where several differences come to it one after another."""
    server, [phone] = on_the_server("sum", text, False), run(phone_brain, ON_THE_PHONE, [["sum", text, False]])

    assert server["ok"] == phone["ok"]
    assert [] == unlike(server, phone)


def test_differences_that_hide_in_one_another_are_refused() -> None:
    """A number of which a thin slice is taken again and again is no measurement, and a phone would read noise; thin slices side by side are."""
    *_, third, _, slices = NOISE

    assert {"ok": False, "message": "That difference is too small for any tape."} == on_the_server("sum", third, False)
    assert {"ok": True, "value": Fraction(3, 8)} == on_the_server("sum", slices, False)


def test_the_sweep_reads_and_refuses() -> None:
    """The generated entries are no idle noise: of each kind some can be read, and many different refusals are given."""
    answers = [(entry[0], on_the_server(*entry)) for entry in entries()]

    assert set(READERS) == {what for what, answer in answers if answer["ok"]}
    assert len({answer["message"] for _, answer in answers if not answer["ok"]}) > 100


@settings(max_examples=500, derandomize=True, deadline=None)
@given(ticks=st.integers(min_value=0, max_value=1200 * 128), division=st.sampled_from([8, 16, 32, 64, 128]))
def test_a_fraction_reads_as_it_was_written(ticks: int, division: int) -> None:
    """A length written as a fraction of the tape is read as the same length."""
    length = Fraction(min(ticks, 1200 * division), division)
    text = fraction_text(int(length * division), division)

    assert {"ok": True, "value": length} == read_length(text, INCH_SHOP, UNITS, NUMBERS)


@settings(max_examples=300, derandomize=True, deadline=None)
@given(ticks=st.integers(min_value=12 * 128, max_value=1200 * 128))
def test_feet_read_as_they_were_written(ticks: int) -> None:
    """A length written in feet and inches is read as the same length."""
    text = feet_text(Fraction(ticks, 128), 128, "nearest")

    assert {"ok": True, "value": Fraction(ticks, 128)} == read_length(text, INCH_SHOP, UNITS, NUMBERS)


@settings(max_examples=300, derandomize=True, deadline=None)
@given(ticks=st.integers(min_value=0, max_value=1200 * 128))
def test_a_decimal_reads_as_it_was_written(ticks: int) -> None:
    """A 128th of an inch has seven decimals; written out, it is read as the same length."""
    text = decimal_text(Fraction(ticks, 128), 7, True)

    assert {"ok": True, "value": Fraction(ticks, 128)} == read_length(text, INCH_SHOP, UNITS, NUMBERS)


@settings(max_examples=300, derandomize=True, deadline=None)
@given(tenths=st.integers(min_value=0, max_value=304800))
def test_millimetres_read_as_they_were_written(tenths: int) -> None:
    """A length written in millimetres is read as the same length, with its unit or in a metric shop without."""
    text = decimal_text(Fraction(tenths, 10), 1, True)
    length = Fraction(tenths, 254)

    assert {"ok": True, "value": length} == read_length(text + " mm", INCH_SHOP, UNITS, NUMBERS)
    assert {"ok": True, "value": length} == read_length(text, MM_SHOP, UNITS, NUMBERS)
