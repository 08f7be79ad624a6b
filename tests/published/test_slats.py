"""The slats, laid: one by one along a run in exact fractions, and set beside numpy's even spacing.

Source: the construction itself (recomputed): a piece is laid, then a gap, then a piece, and the end must come out at the end
of the run. numpy's linspace puts as many points evenly between two ends, and knows nothing of slats. The moisture
coefficient of red oak is the Wood Handbook's, Table 13-5, read in the publication.
"""

from fractions import Fraction
from itertools import product

import numpy as np
import pytest

from .asking import ask, results_of

RUNS = [Fraction(text) for text in ("65/4", "16", "31.37", "72", "1211/16")]
SLATS = [Fraction(text) for text in ("3/4", "3/2", "9/4", "2.03")]
GAPS = [Fraction(text) for text in ("0", "1/4", "3/8", "0.61", "2", "5")]
ENDS = ("slat", "gap")
COUNTED = [(run, slat, ends, count) for run, slat, ends, count in product(RUNS, SLATS, ENDS, (2, 3, 6, 7)) if count * slat <= run]
MEASURED = list(product(RUNS, SLATS, ENDS, GAPS))


def exactly(value):
    """Take a number from the card as the fraction it stands for."""
    return Fraction(value).limit_denominator(10**6)


def row(values):
    """Take a row from the card as fractions."""
    return [exactly(value) for value in values]


def gaps_of(count, ends):
    """Count the gaps: one between every two slats, and one more at each end where a gap stands there."""
    return count - 1 + (2 if ends == "gap" else 0)


def evened(run, slat, ends, count):
    """Share what the slats leave of the run among the gaps."""
    left = run
    for _ in range(count):
        left -= slat
    return left / gaps_of(count, ends)


def laid(start, slat, gap, count):
    """Lay slat after slat from a place on the run: where each begins, and where the last ends."""
    starts, place = [], start
    for _ in range(count):
        starts.append(place)
        place += slat + gap
    return starts, place - gap


def fitting(run, slat, ends, spacer):
    """Lay slats with exactly this spacer while there is room, and count them."""
    place = spacer if ends == "gap" else Fraction(0)
    count = 0
    while place + slat + (spacer if ends == "gap" else 0) <= run:
        count += 1
        place += slat + spacer
    return count


def entries(run, slat, ends, **more):
    """Name the entries of a run."""
    return {"run": run, "slat": slat, "ends": ends, **more}


@pytest.mark.parametrize(("run", "slat", "ends", "count"), COUNTED)
def test_the_slats_laid_with_the_gap_come_out_at_the_end(run, slat, ends, count):
    """even_gap, pitch, end_gap, slats, gaps and spacer fill the run with nothing over: left_over is nothing."""
    values = results_of("slats", **entries(run, slat, ends, by="count", count=count))
    gap, start = exactly(values["gap"]), exactly(values["end_gap"])
    starts, end = laid(start, slat, gap, values["count"])

    assert (values["count"], values["gaps"], values["left_over"]) == (count, gaps_of(count, ends), 0)
    assert end + start == run
    assert start == (gap if ends == "gap" else 0)
    assert starts[1] - starts[0] == exactly(values["pitch"])
    assert exactly(values.get("spacer", 0)) == gap


@pytest.mark.parametrize(("run", "slat", "ends", "count"), COUNTED)
def test_every_mark_is_where_the_slat_is_laid(run, slat, ends, count):
    """The marks and centres are those of slats laid one by one, and of numpy's even spacing."""
    values = results_of("slats", **entries(run, slat, ends, by="count", count=count))
    gap = evened(run, slat, ends, count)
    first = gap if ends == "gap" else Fraction(0)
    starts, _ = laid(first, slat, gap, count)

    assert row(values["marks"]) == starts
    assert values["marks"] == pytest.approx(np.linspace(float(first), float(run - first - slat), count), abs=1e-9)
    assert row(values["centres"]) == [start + slat / 2 for start in starts]


@pytest.mark.parametrize(("run", "slat", "ends", "count"), COUNTED)
def test_the_parts_and_the_gaps_fill_the_run(run, slat, ends, count):
    """As many parts as are counted, laid with the even gap, are as wide together as the run."""
    values = results_of("slats", **entries(run, slat, ends, by="count", count=count), slat_length="16 1/2", slat_thickness="3/4")
    [part] = values["parts"]

    assert (16.5, 0.75) == (part["length"], part["thickness"])
    assert part["count"] * exactly(part["width"]) + values["gaps"] * exactly(values["gap"]) == run


def test_four_hundred_marks_add_up_no_error():
    """The last of 400 marks is the run less a slat, to the last digit: none of them is measured from the one before it."""
    values = results_of("slats", run="1200", slat="1", by="count", count="400")

    assert len(values["marks"]) == 400
    assert values["marks"] == pytest.approx(np.linspace(0, 1199, 400), rel=1e-14)
    assert values["marks"][-1] == 1199


@pytest.mark.parametrize(("run", "slat", "ends", "gap"), MEASURED)
def test_the_count_is_the_one_whose_even_gap_comes_nearest(run, slat, ends, gap):
    """Every count that fits is tried: slats, to_cut, is the one nearest to the gap, or the card says that one more is nearer."""
    card = ask("slats", **entries(run, slat, ends, by="gap", gap=gap))
    found = card["results"]["count"]["value"]
    least = 2 if ends == "slat" else 1
    tried = {count: abs(evened(run, slat, ends, count) - gap) for count in range(least, int(run / slat) + 1)}
    nearest = min(tried, key=lambda count: (tried[count], -count))
    names = [check["name"] for check in card["checks"]]

    assert found + names.count("one_more_is_nearer") == nearest
    assert card["results"]["to_cut"]["value"] == found


@pytest.mark.parametrize("ends", ENDS)
@pytest.mark.parametrize("count", range(2, 30))
def test_a_gap_that_comes_out_even_gives_its_own_count(ends, count):
    """The even gap of a count, typed as the gap liked, gives back that count of slats and that gap."""
    run, slat = Fraction(72), Fraction(3, 2)
    values = results_of("slats", **entries(run, slat, ends, by="gap", gap=evened(run, slat, ends, count)))

    assert (values["count"], exactly(values["gap"])) == (count, evened(run, slat, ends, count))


@pytest.mark.parametrize(("run", "slat", "ends", "gap"), MEASURED)
def test_as_many_as_fit_are_laid_with_the_spacer(run, slat, ends, gap):
    """Slats are laid with the spacer until no more fit; left_over, end_share and end_gap put them in the middle of the run."""
    values = results_of("slats", **entries(run, slat, ends, by="spacer", gap=gap))
    count = fitting(run, slat, ends, gap)
    starts, end = laid(exactly(values["end_gap"]), slat, gap, count)
    left = run - count * slat - gaps_of(count, ends) * gap

    assert (values["count"], exactly(values["left_over"])) == (count, left)
    assert exactly(values.get("end_share", 0)) * 2 == left
    assert exactly(values["end_gap"]) == run - end
    assert row(values["marks"]) == starts
    if left and gaps_of(count, ends):
        assert exactly(values["evened_gap"]) == evened(run, slat, ends, count)


@pytest.mark.parametrize(("run", "slat", "ends", "count"), COUNTED)
def test_a_slat_more_or_fewer_is_shared_out_anew(run, slat, ends, count):
    """gap_one_more and gap_one_fewer are the even gaps of the neighbouring counts, where there are such."""
    values = results_of("slats", **entries(run, slat, ends, by="count", count=count))

    assert ("gap_one_more" in values) == ((count + 1) * slat <= run)
    if "gap_one_more" in values:
        assert exactly(values["gap_one_more"]) == evened(run, slat, ends, count + 1)
    assert ("gap_one_fewer" in values) == (gaps_of(count - 1, ends) > 0)
    if "gap_one_fewer" in values:
        assert exactly(values["gap_one_fewer"]) == evened(run, slat, ends, count - 1)


@pytest.mark.parametrize("error", [Fraction(text) for text in ("-1/64", "-0.007", "0.004", "1/64")])
@pytest.mark.parametrize("ends", ENDS)
def test_a_block_that_is_out_runs_away_when_it_is_stepped(ends, error):
    """Stepped along from the first slat, at its mark, they end out by creep, by drift where the block is 1/64 out; spacer_move mends it."""
    run, slat, count = Fraction(31), Fraction(3, 2), 14
    gap = evened(run, slat, ends, count)
    values = results_of("slats", **entries(run, slat, ends, by="count", count=count, measured_spacer=gap + error))
    block = gap + error
    open_end = gap if ends == "gap" else Fraction(0)
    _, end = laid(open_end, slat, block, count)
    out = abs(end + open_end - run)

    assert exactly(values["creep"]) == out
    assert exactly(values["drift"]) * abs(error) * 64 == out
    assert block - exactly(values["spacer_move"]) == gap


def test_a_gap_closes_when_red_oak_swells():
    """Wood Handbook, Table 13-5, read in the publication: red oak, flat grain, 0.00369 for each 1% of moisture; 8% on a slat of 2 1/4 is 0.0664."""
    swell = 2.25 * 0.00369 * (14 - 6)
    names = [[check["name"] for check in ask("slats", by="spacer", slat="2 1/4", gap=f"{swell + off:.5f}")["checks"]] for off in (-0.0001, 0.0001)]

    assert swell == pytest.approx(0.06642, abs=1e-5)
    assert ["gap_closes" in each for each in names] == [True, False]
