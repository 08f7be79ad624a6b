"""The vocabulary of pictures."""

import pytest
import sympy

from shopcalc.drawing import area, box, dimension, label, line, slant, turn

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
