"""The rabbet, cut: the cuts are taken out of the end grain, the waste falls off, and what is left is measured.

Source: the construction itself, on a grid of 64ths and in exact fractions (recomputed). Across the grid lies the face, from
the marked edge inward; down it lies the thickness, from the marked face inward.
"""

from fractions import Fraction
from itertools import product

import numpy as np
import pytest

from .asking import ask, results_of
from .wood import cells, cut_out, joined

FACE = 200  # cells of face drawn: more than three inches
DADOS = [[Fraction(text) for text in row] for row in product(("1/8", "3/8", "33/64", "3/4"), ("1/16", "3/8", "29/64"), ("1/2", "3/4", "11/8"))]
PAIRS = [
    [Fraction(text) for text in row]
    for row in product(("1/4", "3/8", "41/64", "1"), ("1/16", "1/8", "3/8", "29/64"), ("1/2", "3/4", "11/8"), ("3/32", "1/8"))
]
SPOILING = [("first_fence", 1), ("first_fence", -1), ("first_height", 1), ("second_fence", 1), ("second_fence", -1), ("second_height", 1)]
ERRORS = [Fraction(text) for text in ("-1/16", "-1/64", "1/32", "3/64")]


def exactly(value):
    """Take a number from the card as the fraction it stands for."""
    return Fraction(value).limit_denominator(10**6)


def solid(stock):
    """A piece before it is cut."""
    return np.ones((cells(stock), FACE), dtype=bool)


def one_pass(stock, exposed, height):
    """Run a dado head that stands so far out of the fence, and so high."""
    wood = solid(stock)
    wood[: cells(height), : cells(exposed)] = False
    return wood


def two_cuts(stock, kerf, values):
    """Cut the shoulder flat, then the bottom on edge with the far face against the fence, and let the waste fall off."""
    near, high, fence, tall = (cells(exactly(values[name])) for name in ("first_fence", "first_height", "second_fence", "second_height"))
    wood = solid(stock)
    wood[:high, near : near + cells(kerf)] = False
    wood = wood[::-1]  # the far face is the fence's now
    wood[fence : fence + cells(kerf), :tall] = False
    return joined(wood[::-1], cells(stock) - 1, FACE - 1)


def measured(wood):
    """Measure the width of the rabbet along the face and its depth along the edge."""
    hollow = ~wood
    return Fraction(int(hollow[0].sum()), 64), Fraction(int(hollow[:, 0].sum()), 64)


def is_a_step(wood):
    """Whether what was taken away is one rectangle at the corner and nothing else."""
    width, depth = (cells(each) for each in measured(wood))
    hollow = ~wood
    return bool(hollow[:depth, :width].all() and hollow.sum() == depth * width)


@pytest.mark.parametrize(("width", "depth", "stock"), DADOS)
def test_one_pass_of_a_dado_head_leaves_the_rabbet_wanted(width, depth, stock):
    """The cutter as exposed and as high as the card says takes away width times depth and leaves the card's lip (recomputed)."""
    values = results_of("rabbet", width=width, depth=depth, stock=stock, method="dado")
    wood = one_pass(stock, exactly(values["exposed"]), exactly(values["blade_height"]))
    (left,) = cut_out([(Fraction(0), stock)], Fraction(0), exactly(values["blade_height"]))

    assert is_a_step(wood)
    assert measured(wood) == (width, depth)
    assert exactly(values["lip"]) == left[1] - left[0]


@pytest.mark.parametrize(("width", "depth", "stock", "kerf"), PAIRS)
def test_two_cuts_free_the_waste_and_leave_the_rabbet_wanted(width, depth, stock, kerf):
    """With both cuts made at the card's settings the waste falls off, and a clean step of the size wanted is left (recomputed)."""
    values = results_of("rabbet", width=width, depth=depth, stock=stock, kerf=kerf, method="two cuts")
    settings = {name: values[name] for name in ("first_fence", "first_height", "second_fence", "second_height")}
    wood = two_cuts(stock, kerf, settings)

    assert is_a_step(wood)
    assert measured(wood) == (width, depth)
    assert values["lip"] == pytest.approx(float(stock - depth), abs=1e-12)


@pytest.mark.parametrize(("setting", "ticks"), SPOILING)
def test_a_setting_that_is_off_spoils_the_step_on_the_grid(setting, ticks):
    """The grid can tell a good cut from a bad one: a setting moved by 1/64 leaves another size, a ridge or a nick (recomputed)."""
    stock, kerf = Fraction(3, 4), Fraction(1, 8)
    values = results_of("rabbet", width="3/8", depth="5/16", stock=stock, kerf=kerf, method="two cuts")
    wood = two_cuts(stock, kerf, {**values, setting: exactly(values[setting]) + Fraction(ticks, 64)})

    assert not (is_a_step(wood) and measured(wood) == (Fraction(3, 8), Fraction(5, 16)))


def test_two_cuts_of_an_eighth_for_a_rabbet_of_three_eighths():
    """Stock 3/4, width 3/8, depth 1/4: fences 1/4 and 1/2, heights 1/4 and 3/8, worked out on the grid (recomputed)."""
    settings = {"first_fence": 0.25, "first_height": 0.25, "second_fence": 0.5, "second_height": 0.375}
    values = results_of("rabbet", width="3/8", depth="1/4", stock="3/4", kerf="1/8", method="two cuts")

    assert measured(two_cuts(Fraction(3, 4), Fraction(1, 8), settings)) == (Fraction(3, 8), Fraction(1, 4))
    assert {name: values[name] for name in settings} == settings


@pytest.mark.parametrize("head", [Fraction(text) for text in ("1/4", "3/8", "3/4", "13/16")])
@pytest.mark.parametrize("width", [Fraction(text) for text in ("53/64", "5/4", "3/2", "9/4")])
def test_the_passes_of_a_narrow_head_leave_the_rabbet_wanted(width, head):
    """All of the head taken out at the edge, then with the fence moved, at the last by second_pass in all: a clean step, and no pass too many."""
    values = results_of("rabbet", width=width, head=head, depth="3/8", stock="3/4")
    exposed, second_pass, passes = exactly(values["exposed"]), exactly(values["second_pass"]), values["passes"]
    wood = solid(Fraction(3, 4))
    for place in range(passes):
        near = cells(second_pass) if place == passes - 1 else place * cells(exposed)
        wood[: cells(exactly(values["blade_height"])), near : near + cells(head)] = False

    assert exposed == head
    assert is_a_step(wood)
    assert measured(wood) == (width, Fraction(3, 8))
    assert (passes - 1) * head <= width < passes * head  # with one pass less nothing runs over the last, and a fin can stand


@pytest.mark.parametrize("error", ERRORS)
def test_a_last_pass_that_is_off_is_put_right_by_the_correction(error):
    """A fence moved too far cuts a trial; fence_move and second_pass_again end it where the shoulder should be."""
    width, head = Fraction(5, 4), Fraction(3, 4)
    shift = exactly(results_of("rabbet", width=width, head=head)["second_pass"])
    wood = solid(Fraction(3, 4))
    for near in (0, cells(shift + error)):
        wood[: cells(Fraction(3, 8)), near : near + cells(head)] = False
    wide, _ = measured(wood)
    values = results_of("rabbet", width=width, head=head, measured_width=wide)

    assert shift + error - exactly(values["fence_move"]) + head == width
    assert exactly(values["second_pass_again"]) + error + head == width


@pytest.mark.parametrize(("width", "move"), [(Fraction(1, 2), "exposed_move"), (Fraction(3, 16), "pocket_move")])
@pytest.mark.parametrize("error", ERRORS)
def test_a_dado_head_that_is_off_is_put_right_by_the_corrections(error, width, move):
    """A fence and a cutter that stand off cut a trial; moved by what the card says to it, they cut the rabbet wanted (recomputed)."""
    stock, depth = Fraction(3, 4), Fraction(3, 8)
    exposed, height = width + error, depth - error
    wide, deep = measured(one_pass(stock, exposed, height))
    values = results_of("rabbet", width=width, depth=depth, stock=stock, method="dado", measured_width=wide, measured_depth=deep)
    moved = one_pass(stock, exposed - exactly(values[move]), height - exactly(values["height_move"]))

    assert measured(moved) == (width, depth)
    assert exactly(values["lip_as_cut"]) == stock - height


@pytest.mark.parametrize("error", ERRORS)
def test_fences_that_are_off_are_put_right_by_the_corrections(error):
    """Both fences stand off and cut a trial; moved by what the card says to it, they cut the rabbet wanted (recomputed)."""
    stock, width, depth, kerf = Fraction(3, 4), Fraction(1, 2), Fraction(3, 8), Fraction(1, 8)
    entries = {"width": width, "depth": depth, "stock": stock, "kerf": kerf, "method": "two cuts"}
    planned = results_of("rabbet", **entries)
    stands = {**planned, "first_fence": exactly(planned["first_fence"]) + error, "second_fence": exactly(planned["second_fence"]) - error}
    wide, deep = measured(two_cuts(stock, kerf, stands))
    values = results_of("rabbet", **entries, measured_width=wide, measured_depth=deep)
    moved = {
        **stands,
        "first_fence": stands["first_fence"] - exactly(values["first_move"]),
        "second_fence": stands["second_fence"] + exactly(values["second_move"]),
    }

    assert (wide, deep) == (width + error, depth + error)
    assert is_a_step(two_cuts(stock, kerf, moved))
    assert measured(two_cuts(stock, kerf, moved)) == (width, depth)


@pytest.mark.parametrize(
    ("entries", "said"),
    [
        ({"measured_width": "25/64", "measured_depth": "25/64"}, ["further over the cutter", "lower the cutter"]),
        ({"measured_width": "23/64", "measured_depth": "23/64"}, ["back off the cutter", "raise the cutter"]),
        ({"method": "two cuts", "measured_width": "25/64", "measured_depth": "25/64"}, ["toward the blade", "away from the blade"]),
        ({"method": "two cuts", "measured_width": "23/64", "measured_depth": "23/64"}, ["away from the blade", "toward the blade"]),
    ],
)
def test_the_corrections_say_which_way_to_move(entries, said):
    """Too much wood gone wants less cutter beside the fence and above the table, and a thicker lip beside the second fence."""
    corrections = ask("rabbet", width="3/8", depth="3/8", **entries)["trial"]["corrections"]

    assert len(corrections) == len(said)
    for text, words in zip(corrections, said, strict=True):
        assert words in text
