"""The vocabulary of pictures: areas of wood, blade and fence, dimensions and words, to scale.

A point is a pair of expressions in inches, x to the right and y up, over the setup's inputs and results.
What the shapes look like is the style sheet's business; here they only say what they are.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

import sympy

from shopcalc.terms import cosd, number, sind

Point = tuple[Any, Any]

AREAS = ("wood", "end-grain", "waste", "cut", "blade", "fence", "table", "block", "ghost", "glass", "metal")
LINES = ("edge", "hidden", "centre", "face")
SIDES = ("above", "below", "left", "right")


@dataclass(frozen=True)
class Shape:
    """One thing in a picture: what it is, the numbers that place it, and when it shows."""

    kind: str
    points: tuple[Point, ...]
    style: str = ""
    of: str = ""
    text: str = ""
    side: str = ""
    row: int = 1
    when: sympy.Basic | None = None
    directions: tuple[Point, ...] = field(default=())

    def numbers(self) -> list[sympy.Basic]:
        """All coordinates, flat: points in inches first, then unit directions."""
        return [sympy.sympify(value) for pair in (*self.points, *self.directions) for value in pair]


def area(style: str, *points: Point, when: sympy.Basic | None = None) -> Shape:
    """A closed outline of one of `AREAS`."""
    if style not in AREAS:
        raise ValueError(f"no area is called {style!r}: use one of {', '.join(AREAS)}")
    return Shape("area", points, style=style, when=when)


def box(style: str, x: Any, y: Any, width: Any, height: Any, when: sympy.Basic | None = None) -> Shape:
    """A rectangle from its lower left corner; any of the four may be a row of lengths, for one rectangle each.

    All that are rows have the same count.
    """
    if style not in AREAS:
        raise ValueError(f"no area is called {style!r}: use one of {', '.join(AREAS)}")
    return Shape("box", ((x, y), (width, height)), style=style, when=when)


def line(style: str, *points: Point, when: sympy.Basic | None = None) -> Shape:
    """An open line of one of `LINES`."""
    if style not in LINES:
        raise ValueError(f"no line is called {style!r}: use one of {', '.join(LINES)}")
    return Shape("line", points, style=style, when=when)


def dimension(of: sympy.Symbol, start: Point, end: Point, side: str, row: int = 1, text: str = "", when: sympy.Basic | None = None) -> Shape:
    """A dimension line outside the picture: across when `above` or `below`, upright when `left` or `right`."""
    if side not in SIDES:
        raise ValueError(f"a dimension stands above, below, left or right, not {side!r}")
    return Shape("dimension", (start, end), of=of.name, side=side, row=row, text=text, when=when)


def slant(of: sympy.Symbol, start: Point, end: Point, away: Point, row: int = 1, text: str = "", when: sympy.Basic | None = None) -> Shape:
    """A dimension along a sloping face; `away` is the unit direction in which it stands off the face."""
    return Shape("slant", (start, end), of=of.name, row=row, text=text, directions=(away,), when=when)


def turn(of: sympy.Symbol, centre: Point, first: Point, second: Point, row: int = 1, when: sympy.Basic | None = None) -> Shape:
    """The arc of an angle at `centre` between two unit directions."""
    return Shape("turn", (centre,), of=of.name, row=row, directions=(first, second), when=when)


def arc(centre: Point, reach: Any, angle: sympy.Basic) -> list[Point]:
    """Points from straight up round to an angle to the right of it."""
    turned = [angle * number(part) for part in ("0", "1/4", "1/2", "3/4", "1")]
    return [(centre[0] + reach * sind(by), centre[1] + reach * cosd(by)) for by in turned]


def slim_turn(of: sympy.Symbol, at: Point, when: sympy.Basic | None = None) -> Shape:
    """The number alone of an angle too slim to hold it, to the left of a point."""
    left = (-1, 0)
    return turn(of, at, left, left, row=0, when=when)


def leader(of: sympy.Symbol, at: Point, away: Point, row: int = 1, when: sympy.Basic | None = None) -> Shape:
    """The number of a length too short to stand on its dimension, held off its middle in the unit direction `away`."""
    return slant(of, at, at, away, row, when=when)


def label(text: str, at: Point, side: str = "", when: sympy.Basic | None = None) -> Shape:
    """A word in the picture, centred on its point or standing to one side of it."""
    return Shape("label", (at,), text=text, side=side, when=when)


@dataclass(frozen=True)
class Picture:
    """A drawing with its caption, which also says what the drawing shows to someone who cannot see it."""

    caption: str
    shapes: Sequence[Shape]
