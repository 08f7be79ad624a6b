"""The table of how much the woods move."""

from fractions import Fraction

import pytest

from shopcalc.reference.species import MEMORY, READ, RECOMPUTED, RECOMPUTED_FROM_22, SPECIES


@pytest.mark.parametrize("option", SPECIES)
def test_a_row_is_whole(option: str) -> None:
    """A row has a name, its two coefficients as printed to five places, and the way it was come by."""
    row = SPECIES[option]

    assert row.source in (READ, RECOMPUTED, RECOMPUTED_FROM_22, MEMORY)
    assert option == option.lower() and option.replace(" ", "").isalpha()
    for value in (row.radial, row.tangential):
        assert 0 == Fraction(int(value.p), int(value.q)) * 100000 % 1


@pytest.mark.parametrize("option", SPECIES)
def test_every_wood_moves_more_along_its_rings(option: str) -> None:
    """A flatsawn board moves more than a quartersawn one, and neither moves by more than half a percent for one."""
    assert 0 < SPECIES[option].radial < SPECIES[option].tangential < Fraction(1, 200)


def test_what_is_from_memory_says_so_on_the_form() -> None:
    """The option itself names the rows that were not seen again, and no other."""
    assert {option for option, row in SPECIES.items() if row.source == MEMORY} == {option for option, row in SPECIES.items() if MEMORY in row.label}


def test_the_form_starts_with_a_row_that_was_read() -> None:
    """The first row was read in the table; the others follow by the alphabet."""
    labels = [row.label for row in SPECIES.values()]

    assert READ == next(iter(SPECIES.values())).source
    assert labels[1:] == sorted(labels[1:])
    assert len(labels) == len(set(labels))


def test_columns_are_thousandths_of_an_inch() -> None:
    """The columns a card takes are the coefficients, a thousand times as large."""
    oak = SPECIES["white oak"]

    assert (1.8, 3.65) == (float(oak.radial_thousandths), float(oak.tangential_thousandths))


def test_mahogany_is_left_out() -> None:
    """A wood whose published figures disagree is not offered."""
    assert [] == [option for option in SPECIES if "mahogany" in option]
