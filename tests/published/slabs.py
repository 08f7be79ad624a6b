"""Two slabs that meet over a peak, built from half-planes: a construction that shares nothing with the ridge cap's formulas.

The peak is where the outside faces meet, at the origin. A half-plane is (direction, distance): the points whose reach along
the direction is at most the distance.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

Point = NDArray[np.float64]
Polygon = NDArray[np.float64]
HalfPlane = tuple[Point, float]

EVERYWHERE: Polygon = 1000.0 * np.array([(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)])


class Side(NamedTuple):
    """One roof: the direction down its slope, and the direction out of it."""

    down: Point
    out: Point


def roof(pitch: float, hand: int) -> Side:
    """Give the roof at a pitch in degrees, to the left (-1) or the right (1)."""
    turn = np.radians(pitch)
    return Side(np.array([hand * np.cos(turn), -np.sin(turn)]), np.array([hand * np.sin(turn), np.cos(turn)]))


def clip(polygon: Polygon, *halves: HalfPlane) -> Polygon:
    """Cut a convex polygon down to what lies in every half-plane."""
    for direction, distance in halves:
        kept: list[Point] = []
        reach = polygon @ direction - distance
        for here, there, inner, outer in zip(polygon, np.roll(polygon, -1, 0), reach, np.roll(reach, -1), strict=True):
            if inner <= 0:
                kept.append(here)
            if (inner < 0) != (outer < 0) and inner != outer:
                kept.append(here + (there - here) * inner / (inner - outer))
        polygon = np.array(kept).reshape(-1, 2)
    return polygon


def slab(side: Side, thickness: float, cover: float) -> list[HalfPlane]:
    """List what bounds a side's board before its peak edge is cut: outside face, inside face, and the lower edge sawn square at the cover."""
    return [(side.out, 0.0), (-side.out, thickness), (side.down, cover)]


def area(polygon: Polygon) -> float:
    """Measure the area of a polygon."""
    x, y = polygon.T
    return float(abs(np.roll(x, -1) @ y - x @ np.roll(y, -1)) / 2)


def overlap(first: Polygon, second: Polygon) -> float:
    """Measure the area that two convex polygons share, corners named anticlockwise."""
    edges = np.roll(second, -1, 0) - second
    outward = np.stack([edges[:, 1], -edges[:, 0]], axis=1)
    shared = clip(first, *((normal, float(normal @ corner)) for normal, corner in zip(outward, second, strict=True)))
    return area(shared)


def face(board: Polygon, side: Side, depth: float) -> float:
    """Measure the face of a board that lies so far under its outside face."""
    along = board[np.isclose(-board @ side.out, depth, atol=1e-7)] @ side.down
    return float(np.ptp(along))


def rip(board: Polygon, side: Side) -> float:
    """Measure how wide a board must be ripped for the whole of it to come out: its reach down the slope."""
    return float(np.ptp(board @ side.down))


def peak_edge(board: Polygon, side: Side, thickness: float) -> Point:
    """Find the cut at the peak as an arrow from the outside face to the inside face."""
    corners = [board[np.isclose(-board @ side.out, depth, atol=1e-7)] for depth in (0.0, thickness)]
    outer, inner = (each[np.argmin(each @ side.down)] for each in corners)
    return np.asarray(inner - outer)


def between(first: Point, second: Point) -> float:
    """Measure the angle between two arrows, in degrees."""
    cross = first[0] * second[1] - first[1] * second[0]
    return float(np.degrees(np.arctan2(abs(cross), first @ second)))


class Cap(NamedTuple):
    """A ridge cap: both sides, and both boards as polygons."""

    left: Side
    right: Side
    wide: Polygon
    narrow: Polygon


def build(pitch_left: float, pitch_right: float, thickness: float, cover: float, joint: str) -> Cap:
    """Build both boards. Lapped, the left one runs on to the right one's outside face, and the right one stops under it."""
    left, right = roof(pitch_left, -1), roof(pitch_right, 1)
    if joint == "lapped":
        wide_end, narrow_end = (right.out, 0.0), (left.out, -thickness)
    else:
        # the plane through the peak that is as far from one outside face as from the other
        across = left.out - right.out
        wide_end, narrow_end = (-across, 0.0), (across, 0.0)
    wide = clip(EVERYWHERE, *slab(left, thickness, cover), wide_end)
    narrow = clip(EVERYWHERE, *slab(right, thickness, cover), narrow_end)
    return Cap(left, right, wide, narrow)
