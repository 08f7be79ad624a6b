"""Every drawing is to scale: what a dimension names is what is drawn, over generated entries; and the blade stands where it cuts."""

import math
import random
import re
from collections import Counter
from collections.abc import Iterator
from functools import cache
from typing import Any

import numpy as np
import pytest

from shopcalc import exact
from shopcalc.catalogue import setups
from shopcalc.drawing import Shape
from shopcalc.portable.cards.bench import is_stopped, read_and_set
from shopcalc.portable.cards.pictures import draw_picture, fit, place_shape
from shopcalc.portable.cards.work import read_shop

from .helpers import bench_of
from .published.slabs import Polygon, area, build, overlap
from .typed import query

CARDS, TRIES = 60, 600
MARKS = ("dimension", "slant", "turn")
HAIR = 1e-7  # of an inch, or of a degree
ROUNDED = 0.021  # drawing units: both ends of a mark stand on a whole hundredth
TURNED = 0.06  # degrees, of an arc whose ends do
NUMBER = r"(-?[\d.]+)"

Bench = dict[str, Any]
Placed = dict[str, Any]
# a declared mark: the page of its picture, and its place there
Where = tuple[int, int]


def measures(shape: Shape) -> bool:
    """Whether a shape measures anything: a slant or a turn whose ends are one and the same only points at what it names."""
    ends = shape.directions if shape.kind == "turn" else shape.points
    return shape.kind in MARKS and ends[0] != ends[1]


@cache
def marks_declared(slug: str) -> set[Where]:
    """Where the dimensions, slants and turns of a setup are declared that measure anything."""
    pictures = setups()[slug].pictures
    return {(page, place) for page, picture in enumerate(pictures) for place, shape in enumerate(picture.shapes) if measures(shape)}


@cache
def benches(slug: str) -> list[Bench]:
    """Cards of a setup that can be drawn, worked out from generated entries; always the same."""
    inputs = exact.world()["setups"][slug]["about"]["inputs"]
    rng = random.Random(slug)
    found: list[Bench] = []
    for typed in (query(inputs, rng) for _ in range(TRIES)):
        if len(found) < CARDS:
            worked = read_and_set(exact.world(), slug, typed, read_shop(typed))["benches"]  # type: ignore[no-untyped-call]
            found += [bench for bench in worked if not is_stopped(bench)]  # type: ignore[no-untyped-call]
    return found


def placed(bench: Bench, page: int) -> list[tuple[Where, Placed]]:
    """The shapes that one picture shows, each with its numbers and where it is declared; of a row of boxes every one."""
    shapes = enumerate(bench["about"]["pictures"][page]["shapes"])
    return [((page, place), one) for place, shape in shapes for one in place_shape(shape, page, place, bench)]  # type: ignore[no-untyped-call]


def drawings(bench: Bench) -> Iterator[tuple[int, list[tuple[Where, Placed]], list[Placed]]]:
    """The pictures of a card that show anything: page, shapes, and those of them that are outlined."""
    for page in range(len(bench["about"]["pictures"])):
        shapes = placed(bench, page)
        outlined = [one for _, one in shapes if one["shape"]["kind"] in ("area", "line")]
        if outlined:
            yield page, shapes, outlined


def numbers_of(one: Placed) -> list[float]:
    """The numbers of a shape as floats."""
    return [float(each) for each in one["numbers"]]


def points_of(one: Placed) -> Polygon:
    """The points of an area or a line, a row each."""
    return np.array(numbers_of(one)).reshape(-1, 2)


def is_across(one: Placed) -> bool:
    """Whether a dimension stands above or below the picture."""
    return one["shape"]["side"] in ("above", "below")


def declared_size(one: Placed) -> float:
    """How far apart the ends of a mark are, in inches, or how far its arc turns, in degrees."""
    values = numbers_of(one)
    if one["shape"]["kind"] == "turn":
        return math.degrees(math.atan2(abs(values[2] * values[5] - values[3] * values[4]), values[2] * values[4] + values[3] * values[5]))
    over, up = values[2] - values[0], values[3] - values[1]
    if one["shape"]["kind"] == "slant":
        return math.hypot(over, up)
    return abs(over) if is_across(one) else abs(up)


def drawn_size(one: Placed, path: str) -> float:
    """The same, taken from the path that is drawn: in drawing units, or in degrees."""
    kind = one["shape"]["kind"]
    if kind == "turn":
        x1, y1, radius, x2, y2 = map(float, re.findall(rf"M{NUMBER} {NUMBER}A{NUMBER} \S+ 0 0 [01] {NUMBER} {NUMBER}", path)[0])
        return math.degrees(2 * math.asin(min(1, math.hypot(x2 - x1, y2 - y1) / 2 / radius)))
    if kind == "slant":
        x1, y1, x2, y2 = map(float, re.findall(rf"M{NUMBER} {NUMBER}L{NUMBER} {NUMBER}", path)[2])
        return math.hypot(x2 - x1, y2 - y1)
    first, last = re.findall(rf"M{NUMBER} \S+?H{NUMBER}" if is_across(one) else rf"M[-\d.]+ {NUMBER}V{NUMBER}", path)[0]
    return abs(float(last) - float(first))


def leaning(one: Placed) -> bool:
    """Whether a direction is not of length one, or a slant stands off its face other than squarely."""
    values = numbers_of(one)
    directions = [values[4:6]] if one["shape"]["kind"] == "slant" else [values[2:4], values[4:6]] if one["shape"]["kind"] == "turn" else []
    square = one["shape"]["kind"] != "slant" or abs((values[2] - values[0]) * values[4] + (values[3] - values[1]) * values[5]) < HAIR
    return not square or any(abs(math.hypot(*each) - 1) > HAIR for each in directions)


def faults_of(bench: Bench) -> Iterator[tuple[Where, str]]:
    """The marks of a card that are not what they name, as declared or as drawn."""
    for page, shapes, outlined in drawings(bench):
        scale = fit([one for _, one in shapes], outlined, bench)["scale"] / 100  # type: ignore[no-untyped-call]
        paths = draw_picture(bench["about"]["pictures"][page], bench, page)[0]["marks"]  # type: ignore[no-untyped-call]
        marks = [(where, one) for where, one in shapes if one["shape"]["kind"] in MARKS]
        for (where, one), mark in zip(marks, paths, strict=True):
            if where not in marks_declared(bench["about"]["slug"]):
                continue
            named = float(bench["known"][one["shape"]["of"]])
            turns = one["shape"]["kind"] == "turn"
            if mark["of"] != one["shape"]["of"] or abs(declared_size(one) - named) > HAIR * max(1, named) or leaning(one):
                yield where, f"{one['shape']['of']} is {named} and declared as {declared_size(one)}"
            elif abs(drawn_size(one, mark["path"]) - (named if turns else named * scale)) > (TURNED if turns else ROUNDED):
                yield where, f"{one['shape']['of']} is {named} and drawn as {mark['path']} at {float(scale)} to the inch"


MEASURED = [slug for slug in setups() if marks_declared(slug)]


@pytest.mark.sweep
@pytest.mark.parametrize("slug", MEASURED)
def test_a_dimension_is_as_long_as_the_value_it_names(slug: str) -> None:
    """Between its ends each dimension, slant and turn is what it says, in inches as declared and in drawing units as drawn."""
    assert [] == [fault for bench in benches(slug) for fault in faults_of(bench)][:5]


@pytest.mark.sweep
@pytest.mark.parametrize("slug", MEASURED)
def test_every_dimension_is_shown_by_some_card(slug: str) -> None:
    """Among the generated entries each declared dimension, slant and turn shows at least once."""
    shown = {where for bench in benches(slug) for _, shapes, _ in drawings(bench) for where, _ in shapes}

    assert set() == marks_declared(slug) - shown


def on_outline(point: Polygon, outline: Placed) -> bool:
    """Whether a point lies on the edge of an area, or on a line."""
    ends = points_of(outline)
    starts = np.roll(ends, 1, 0) if outline["shape"]["kind"] == "area" else ends[:-1]
    ends = ends if outline["shape"]["kind"] == "area" else ends[1:]
    there = ends - starts
    share = np.clip(((point - starts) * there).sum(1) / np.maximum((there**2).sum(1), 1e-30), 0, 1)
    return bool(np.hypot(*(starts + there * share[:, None] - point).T).min() < HAIR)


def has_stop(bench: Bench) -> bool:
    """Whether a stop holds: what is measured may be left out of the picture then."""
    return any(bench["about"]["checks"][name]["level"] == "stop" for name in bench["raised"])


def holds_on(one: Placed, outlined: list[Placed]) -> bool:
    """Whether both ends of a mark are at something drawn: level with a corner, or for a slant on an outline."""
    ends = np.array(numbers_of(one)[:4]).reshape(2, 2)
    if one["shape"]["kind"] == "slant":
        return all(any(on_outline(end, each) for each in outlined) for end in ends)
    corners = np.concatenate([points_of(each) for each in outlined])
    axis = 0 if is_across(one) else 1
    return all(np.abs(corners[:, axis] - end[axis]).min() < HAIR for end in ends)


# the nearest that the corner of a door comes to the jamb, between two of the points by which its arc is drawn
BETWEEN_POINTS = {("door-edge", 1, 7)}


@pytest.mark.sweep
@pytest.mark.parametrize("slug", MEASURED)
def test_a_dimension_begins_and_ends_at_what_is_drawn(slug: str) -> None:
    """It stands between corners or edges of the picture; on the odd card shapes overlap so that an end is covered."""
    shown: Counter[Where] = Counter()
    held: Counter[Where] = Counter()
    for bench in benches(slug):
        for _, shapes, outlined in [] if has_stop(bench) else drawings(bench):
            for where, one in shapes:
                if one["shape"]["kind"] in ("dimension", "slant") and where in marks_declared(slug):
                    shown[where] += 1
                    held[where] += holds_on(one, outlined)

    assert [] == [where for where in shown if 2 * held[where] < shown[where] and (slug, *where) not in BETWEEN_POINTS]


def styled(bench: Bench, page: int, style: str) -> list[Polygon]:
    """The areas of one style in a picture, as rows of points."""
    return [points_of(one) for _, one in placed(bench, page) if one["shape"]["kind"] == "area" and one["shape"]["style"] == style]


def keeps_to(blade: Polygon, waste: Polygon) -> bool:
    """Whether a side of the blade is the same side of the waste: there the cut ends, and the kerf is in the waste."""
    return any(abs(side(blade[:, 0]) - side(waste[:, 0])) < HAIR for side in (np.min, np.max))


# the pictures that show a blade beside what it cuts away, and whether it stands just as high
BLADES = [("groove", 0, True), ("tenon", 0, True), ("tenon", 1, True), ("rabbet", 0, True), ("rabbet", 1, True), ("rabbet", 2, False)]


@pytest.mark.sweep
@pytest.mark.parametrize(("slug", "page", "as_high"), BLADES)
def test_the_blade_touches_the_edge_of_what_it_cuts_away(slug: str, page: int, as_high: bool) -> None:
    """The blade stands at the side where the waste ends, within the waste, and where it cuts from below it is as high as that is."""
    seen = 0
    for bench in benches(slug):
        for blade in styled(bench, page, "blade"):
            wastes = [waste for waste in styled(bench, page, "waste") if keeps_to(blade, waste)]
            assert wastes
            assert not as_high or any(abs(blade[:, 1].max() - waste[:, 1].max()) < HAIR for waste in wastes)
            seen += 1

    assert seen > 5


def test_the_groove_is_begun_at_the_cheek_that_is_at_the_fence() -> None:
    """The first pass cuts the side of the groove that is nearer to the fence."""
    bench = bench_of("groove", stock="1 1/2", groove_width="1/2", cutter="1/8")
    (blade,), (waste,) = styled(bench, 0, "blade"), styled(bench, 0, "waste")

    assert (0.5, 0.625) == (blade[:, 0].min(), blade[:, 0].max())
    assert (0.5, 1.0) == (waste[:, 0].min(), waste[:, 0].max())


def test_the_tenon_is_cut_outside_the_tenon() -> None:
    """At the shoulder the blade ends where the tenon begins; at the cheek it begins where the tenon ends, away from the jig."""
    bench = bench_of("tenon", stock="1 1/2", groove_width="1/2", fit="0", gauge_block="1", groove_depth="5/8", end_play="1/8", kerf="1/8")
    (shoulder,), (cheek,) = styled(bench, 0, "blade"), styled(bench, 1, "blade")

    assert (1.375, 1.5, 0.5) == (shoulder[:, 0].min(), shoulder[:, 0].max(), shoulder[:, 1].max())
    assert (1.0, 1.125, 0.5) == (cheek[:, 0].min(), cheek[:, 0].max(), cheek[:, 1].max())


@pytest.mark.sweep
@pytest.mark.parametrize("joint", ["lapped", "mitred"])
def test_the_boards_of_the_cap_are_those_that_are_built(joint: str) -> None:
    """The two boards drawn cover the two polygons of a construction by half-planes, neither more nor less."""
    for pitches in (("30", "30"), ("45", "20"), ("18.43", "52.5"), ("60", "60"), ("10", "75")):
        bench = bench_of("ridge-cap", pitch_left=pitches[0], pitch_right=pitches[1], thickness="3/4", cover="9", joint=joint)
        drawn = styled(bench, 0, "end-grain")
        cap = build(float(pitches[0]), float(pitches[1]), 0.75, 9.0, joint)
        for board, built in zip(drawn, (cap.wide, cap.narrow), strict=True):
            assert area(board) == pytest.approx(area(built), abs=1e-6)
            assert overlap(board, built) == pytest.approx(area(built), abs=1e-6)
