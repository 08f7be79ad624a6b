"""The vocabulary of pictures."""

import pytest
import sympy

from shopcalc.drawing import arc, area, box, dimension, label, leader, line, slant, slim_turn, turn
from shopcalc.formulas import compile_exact
from shopcalc.numbers import NUMBERS
from shopcalc.terms import degrees

a, b = sympy.symbols("a b", real=True)


def test_a_box_is_its_corner_and_its_size() -> None:
    """A box is declared by its lower left corner, its width and its height, of which any may be a row."""
    assert [1, 2, 3, 4] == box("wood", 1, 2, 3, 4).numbers()


def test_numbers_are_flat() -> None:
    """A shape's coordinates are a flat list of expressions, directions last."""
    assert [0, 0, 1, 0, a, b] == turn(a, (0, 0), (1, 0), (a, b)).numbers()
    assert [a, 0, b, 1, 0, 1] == slant(a, (a, 0), (b, 1), (0, 1)).numbers()


def test_shapes_say_what_they_are() -> None:
    """Each shape has its kind."""
    shapes = [area("wood", (0, 0)), line("edge", (0, 0)), dimension(a, (0, 0), (a, 0), "below"), label("fence", (0, 0))]

    assert ["area", "line", "dimension", "label"] == [shape.kind for shape in shapes]


def test_unknown_areas_are_refused() -> None:
    """An area that the style sheet cannot know is refused by name."""
    with pytest.raises(ValueError, match="no area is called 'cheese'"):
        area("cheese", (0, 0))


def test_unknown_sides_are_refused() -> None:
    """A dimension stands on one of four sides."""
    with pytest.raises(ValueError, match="not 'behind'"):
        dimension(a, (0, 0), (1, 0), "behind")


def test_unknown_lines_are_refused() -> None:
    """A line that the style sheet cannot know is refused by name."""
    with pytest.raises(ValueError, match="no line is called 'wavy'"):
        line("wavy", (0, 0), (1, 1))


def test_a_number_without_a_mark_stands_beside_its_point() -> None:
    """Of an angle too slim to hold it, and of a length too short for its dimension, only the number is drawn."""
    angle, length = sympy.symbols("angle length", real=True)

    assert slim_turn(angle, (1, 2)).numbers() == [1, 2, -1, 0, -1, 0]
    assert leader(length, (1, 2), (0, 1)).numbers() == [1, 2, 1, 2, 0, 1]


def test_an_arc_goes_round_from_straight_up() -> None:
    """To the right, at one distance from its centre."""
    flat = compile_exact(
        {f"{axis}{nth}": each for nth, point in enumerate(arc((1, 2), 3, degrees(90))) for axis, each in zip("xy", point, strict=True)}
    )
    found = {name: float(formula({}, NUMBERS)) for name, formula in flat.items()}

    assert [1, 5, 4, 2] == pytest.approx([found["x0"], found["y0"], found["x4"], found["y4"]])
    assert [9] * 5 == pytest.approx([(found[f"x{nth}"] - 1) ** 2 + (found[f"y{nth}"] - 2) ** 2 for nth in range(5)])
