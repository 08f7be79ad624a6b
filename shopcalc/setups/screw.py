"""A wood screw of a gauge: the drills for its shank and its thread, and the countersink for its head."""

from typing import Any

from sympy import And, Eq, Ne, Or

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import Point, area, box, dimension, label, line
from shopcalc.reference.screws import (
    BODY_OF_NONE,
    BODY_OVER,
    BODY_STEP,
    BODY_UNDER,
    DRILL_STEP,
    HALF_COUNTERSINK,
    HEAD_OF_NONE,
    HEAD_STEP,
    LEAST_GAUGE,
    MOST_GAUGE,
    PILOT_IN_HARDWOOD,
    PILOT_IN_SOFTWOOD,
    ROOT_OF_BODY,
    SOURCES,
)
from shopcalc.terms import inches, number, pick, tand, whole_above, whole_nearest

setup = Setup(
    slug="screw",
    title="Wood screw",
    stand="at the bench",
    job="The drills for a wood screw: pilot for the thread, clearance for the shank, and the countersink for a flat head.",
    machines=("drill", "bench"),
    icon="M5 3h14l-5 5v8l-2 5-2-5V8zM8 13l8-3M8 17l8-3",
)

# What is measured

gauge = setup.count("gauge", "Screw gauge", "8", "The number on the box, 2 to 14: a No. 8 is 0.164 in across its smooth shank.", zero=True)
wood = setup.choice(
    "wood",
    "Wood that takes the thread",
    "The piece that the point ends in. When in doubt, a hardwood: it is hardwood that splits.",
    soft="softwood: pine, fir, cedar",
    hard="hardwood: oak, maple, ash",
)
head = setup.choice(
    "head",
    "Head",
    "Flat on top with a cone under it, or round on top and flat under it.",
    flat="flat, countersunk",
    round="round",
)
measured_body = setup.reading(
    "measured_body", "Shank as it measures", "Calipers across the smooth shank under the head; across the thread where that is wider."
)

# What follows from the gauge

_flat = head.is_("flat")
_none, _step = BODY_OF_NONE.value, BODY_STEP.value
_planned = _none + _step * gauge
_tick = DRILL_STEP.value


def _next_drill(size: Any) -> Any:
    """The drill that is just as large, or the next one up: drills come in 64ths whatever the tape."""
    return whole_above(size / _tick) * _tick


body = setup.as_found("body", "Body, the smooth shank", measured_body, _planned, far=inches("1/8"))
root = setup.size("root", "Root of the thread, about", body * ROOT_OF_BODY.value, division="64")

# What to set

pilot_hole = setup.setting(
    "pilot_hole",
    "Pilot drill, for the thread",
    pick((_next_drill(root * PILOT_IN_HARDWOOD.value), wood.is_("hard")), otherwise=_next_drill(root * PILOT_IN_SOFTWOOD.value)),
    rounding="up",
    division="64",
)
clearance_hole = setup.setting("clearance_hole", "Clearance drill, for the shank", _next_drill(body), rounding="up", division="64")
countersink = setup.setting("countersink", "Countersink, across its mouth", HEAD_OF_NONE.value + HEAD_STEP.value * gauge, division="64", when=_flat)
countersink_depth = setup.size(
    "countersink_depth",
    "Depth of the countersink",
    (countersink - body) / 2 / tand(HALF_COUNTERSINK.value),
    division="64",
    when=And(_flat, countersink > body),
)

# What can go wrong

setup.stop("gauge_small", gauge < LEAST_GAUGE, "A gauge of {gauge} is below No. 2: nothing is published here for so small a screw.", change=gauge)
setup.stop("gauge_large", gauge > MOST_GAUGE, "A gauge of {gauge} is above No. 14: from there on take a lag screw or a bolt.", change=gauge)

# The trial

_near = setup.near(body)

gauge_by_shank = setup.after(
    "gauge_by_shank",
    "Gauge by the shank",
    whole_nearest((measured_body - _none) / _step),
    kind="count",
    when=And(_near, measured_body >= _none),
)
_off = Or(measured_body > _planned + BODY_OVER.value, measured_body < _planned - BODY_UNDER.value)
setup.caution(
    "not_its_gauge",
    And(_off, _near, Ne(gauge_by_shank, gauge), gauge_by_shank >= LEAST_GAUGE, gauge_by_shank <= MOST_GAUGE),
    "A shank of {measured_body} is further from that of a No. {gauge} than makers allow. "
    "Measure again: by its shank it is a No. {gauge_by_shank}. The drills follow the shank as it measures, the countersink follows the gauge typed.",
    change=gauge,
    source=BODY_OVER.source,
)
setup.caution(
    "off_its_gauge",
    And(_off, _near, Eq(gauge_by_shank, gauge)),
    "A shank of {measured_body} is further from that of a No. {gauge} than makers allow, and nearer to no other: measure again. "
    "The drills follow the shank as it measures.",
    change=measured_body,
    source=BODY_OVER.source,
)
setup.caution(
    "thicker_than_any",
    And(_near, gauge_by_shank > MOST_GAUGE),
    "A shank of {measured_body} is thicker than that of a No. 14: measure again, or take it for a lag screw or a bolt.",
    change=measured_body,
    source="",
)
setup.caution(
    "thinner_than_any",
    And(_near, measured_body < _none + _step * LEAST_GAUGE - BODY_UNDER.value),
    "A shank of {measured_body} is thinner than that of a No. 2: measure again.",
    change=measured_body,
    source="",
)
measured_countersink = setup.reading(
    "measured_countersink", "Countersink as it measures", "Inside jaws of the calipers across the mouth of the cone in the scrap."
)
depth_move = setup.correction(
    "depth_move",
    "Countersink",
    (countersink - measured_countersink) / 2 / tand(HALF_COUNTERSINK.value),
    more="Mouth too small: set the stop of the countersink {size} deeper.",
    less="Mouth too wide: set the stop of the countersink {size} less deep.",
    far=inches("1/16"),
)
setup.trial(
    "Drive one in scraps of both pieces. Splits or binds: pilot {1/64 in} larger; turns without drawing up: {1/64 in} smaller. "
    "A flat head lies flush or a hair below; a round one bears all round."
)

# At the bench

setup.step("Clamp the pieces as they are to stand, mark the place with an awl, wrap tape round the pilot drill a screw's length from its tip.")
setup.step("Pilot drill {pilot_hole}: through the top piece and into the lower one as far as the tape.")
setup.step(
    "Clearance drill {clearance_hole}: through the top piece only. The shank slides in it, the thread holds in the lower piece alone, and the joint draws shut."
)
setup.step(
    "Countersink of 82\u00b0, not 90\u00b0: {countersink} across its mouth, {countersink_depth} deep. Try the head upside down in it before the screw is driven.",
    when=_flat,
)
setup.step("No countersink: a round head bears flat on the wood, or on a washer.", when=head.is_("round"))
setup.step("Soap or wax on the thread.")
setup.step("A brass screw twists off: drive a steel one of the same gauge and length first, take it out, and turn the brass one in by hand.")
setup.step("Drill the rest without moving a drill's stop or its tape.")

# What is run

setup.operation("pilot", "fit", "Pilot holes", pilot_hole, machine="drill", face="Through the top piece, into the lower as far as the tape.")
setup.operation("clearance", "fit", "Clearance holes", clearance_hole, machine="drill", face="Through the top piece only.")
setup.operation(
    "countersink",
    "fit",
    "Countersink",
    countersink,
    countersink_depth,
    machine="drill",
    face="From the top face, 82\u00b0.",
    reading=measured_countersink,
)

# The picture

_top = 4 * body
_deep = _top + 5 * body
_wide = 5 * body
_cone = (countersink - clearance_hole) / 2 / tand(HALF_COUNTERSINK.value)
# half of a round head, as a share of its radius
_DOME = [("1", "0"), ("0.924", "0.383"), ("0.707", "0.707"), ("0.383", "0.924"), ("0", "1")]
_RIGHT = [(number(x), number(y)) for x, y in _DOME]


def _both_sides(*right: Point) -> list[Point]:
    """An outline from its right half, given from the top down."""
    return [*right, *((-x, y) for x, y in reversed(right))]


_shank = [(body / 2, -_top - 3 * body), (root / 2, -_deep), (0, -_deep - body / 2)]
_pilot = [(clearance_hole / 2, -_top), (pilot_hole / 2, -_top), (pilot_hole / 2, -_deep), (0, -_deep - body / 2)]
setup.picture(
    "Both pieces cut through the middle of the hole: countersink of 82\u00b0 for a flat head, clearance through the top piece, pilot in the lower one; the screw dashed.",
    box("wood", -_wide, -_top, 2 * _wide, _top),
    box("end-grain", -_wide, -_deep - 2 * body, 2 * _wide, 7 * body),
    area("cut", *_both_sides((countersink / 2, 0), (clearance_hole / 2, -_cone), *_pilot), when=And(_flat, countersink > clearance_hole)),
    area("cut", *_both_sides((clearance_hole / 2, 0), *_pilot), when=head.is_("round")),
    # a shank as measured may be wider than the head of its gauge: then there is no cone to draw
    area("cut", *_both_sides((clearance_hole / 2, 0), *_pilot), when=countersink <= clearance_hole),
    area("ghost", *_both_sides((countersink / 2, 0), (body / 2, -countersink_depth), *_shank)),
    area("ghost", *_both_sides(*[(body * x, body * y) for x, y in _RIGHT[::-1]], (body / 2, 0), *_shank), when=head.is_("round")),
    line("edge", (-_wide, -_top), (-clearance_hole / 2, -_top)),
    dimension(countersink, (-countersink / 2, 0), (countersink / 2, 0), "above"),
    dimension(countersink_depth, (body / 2, -countersink_depth), (countersink / 2, 0), "right"),
    dimension(clearance_hole, (-clearance_hole / 2, -_top), (clearance_hole / 2, -_top), "above", row=2, when=_flat),
    dimension(clearance_hole, (-clearance_hole / 2, 0), (clearance_hole / 2, 0), "above", when=head.is_("round")),
    dimension(pilot_hole, (-pilot_hole / 2, -_deep), (pilot_hole / 2, -_deep), "below"),
    label("top piece", (-_wide * number("5/8"), -_top * number("5/8"))),
    label("lower piece", (-_wide * number("5/8"), -_top - 3 * body)),
)

for _source in SOURCES:
    setup.source(_source)
setup.source("Clearance no larger than the next drill over the shank, soap or wax, steel before brass: " + NO_SOURCE + ".")
