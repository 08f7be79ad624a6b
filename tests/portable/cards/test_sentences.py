"""Values in sentences and in sums."""

import pytest

from shopcalc.portable.cards.sentences import fill, fill_known, option_text, quoted_names, spell, value_text

from ...helpers import bench_of


def test_a_sentence_quotes_values_with_their_units() -> None:
    """A length in a sentence says its unit, an angle its degrees."""
    assert "Set 17/32 in." == fill("Set {fence}.", bench_of("groove", groove_width="5/16"), False)
    assert "Tilt 30\u00b0." == fill("Tilt {edge_bevel}.", bench_of("ridge-cap"), False)


def test_a_sum_quotes_bare_numbers() -> None:
    """In a sum a number on the mark is its fraction, and one beside it its decimals."""
    bench = bench_of("groove", stock="1.4")

    assert "1.4 \u2212 3/8" == fill("{stock} \u2212 {groove_width}", bench, True).replace("1.400", "1.4")


def test_a_metric_shop_quotes_millimetres() -> None:
    """In a metric shop a sentence says millimetres."""
    assert "Set 13.5 mm." == fill("Set {fence}.", bench_of("groove", units="mm", stock="36", groove_width="9", groove_depth="12", cutter="6"), False)


def test_a_choice_is_quoted_by_its_words() -> None:
    """A choice is named as the form names it."""
    bench = bench_of("ridge-cap", joint="mitred")

    assert "mitred: both alike" == value_text("joint", bench, False) == option_text(bench["about"], "joint", bench["known"])


def test_names_are_spelt_for_reading() -> None:
    """In a formula a name is written as words."""
    assert "(stock \u2212 groove width) / 2" == spell("({stock} \u2212 {groove_width}) / 2")


def test_a_value_that_a_stop_took_is_a_dash() -> None:
    """A message may quote a value that cannot be; a dash stands for it."""
    bench = bench_of("groove", cutter="1/2")

    assert "Cheeks of \u2014 beside 3/8 in." == fill_known("Cheeks of {cheek} beside {groove_width}.", bench)


def test_names_between_braces_are_found() -> None:
    """All names that a text quotes are found, in order."""
    assert ["a", "b_c"] == quoted_names("x {a} y {b_c} z")


def test_text_without_names_stays() -> None:
    """A text that quotes nothing is left as it is, whatever characters it has."""
    assert "plain \U0001f4cf <text>" == fill("plain \U0001f4cf <text>", bench_of("groove"), False)


@pytest.mark.parametrize(
    ("text", "inches", "metric"), [("{1/4 in}", "1/4 in", "6.4 mm"), ("{1 1/2 in}", "1 1/2 in", "38.1 mm"), ("{1/64 in}", "1/64 in", "0.4 mm")]
)
def test_a_length_in_a_text_is_written_in_the_shop_s_unit(text: str, inches: str, metric: str) -> None:
    """A limit that a message names is read in the unit of the shop, and is no name of a value."""
    sizes = {"stock": "35 mm", "groove_width": "9 mm", "groove_depth": "12 mm", "cutter": "6 mm"}

    assert [inches, metric] == [fill_known(text, bench_of("groove", units=units, **sizes)).replace("\u00a0", " ") for units in ("in", "mm")]
    assert [] == quoted_names(text)
