"""The latch edge of a door: the bevel that lets it swing past the jamb, and what it leaves between them."""

from typing import Any

from sympy import And, sqrt

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import Point, area, box, dimension, label, line
from shopcalc.terms import atand, cosd, degrees, inches, larger, number, sind, tand

setup = Setup(
    slug="door-edge",
    title="Bevel of a door's edge",
    stand="at the bench",
    job="How much the latch edge is bevelled so that the door swings past its jamb, and how near it comes.",
    machines=("table saw", "tilted blade", "edge of a door", "bench"),
    icon="M4 20V4a16 16 0 0 1 16 16M2 20h20",
)

# What is measured

door_width = setup.length("door_width", "Door width", "18", "On the face the door opens toward, square edge to square edge, before the bevel is cut.")
thickness = setup.length("thickness", "Door thickness", "1 1/2", "Calipers across the latch edge as it came off the planer.")
pin_offset = setup.length(
    "pin_offset",
    "Hinge pin, proud of the face",
    "1/4",
    "How far the middle of the pin stands out from the face the door opens toward: to the outside of the knuckle, less half the knuckle.",
    zero=True,
)
gap_hinge = setup.length("gap_hinge", "Gap on the hinge side", "1/8", "Feeler gauges between door and jamb beside a hinge, door shut.", zero=True)
gap_latch = setup.length(
    "gap_latch", "Gap on the latch side", "1/16", "Wanted with the door shut, between jamb and edge, at the face the door opens toward.", zero=True
)
bevel = setup.angle("bevel", "Bevel", "5", "From a square edge: degrees, or a slope such as 1/8 in 2.", zero=True, most=degrees(45))

# What follows: everything is measured from the middle of the pin, which stands over the middle of the gap

_half_gap = gap_hinge / 2
_far_side = pin_offset + thickness
pin_to_edge = setup.size("pin_to_edge", "Pin to latch edge, across", _half_gap + door_width)
pin_to_jamb = setup.size("pin_to_jamb", "Pin to latch jamb, across", pin_to_edge + gap_latch)
near_corner = setup.size("near_corner", "Swing of the corner on the opening face", sqrt(pin_to_edge**2 + pin_offset**2))

# What to set

taper = setup.setting("taper", "Gauge line on the stop face, in from the edge", thickness * tand(bevel))
far_corner = setup.size("far_corner", "Swing of the corner on the stop face", sqrt((pin_to_edge - taper) ** 2 + _far_side**2))
clearance = setup.size("clearance", "Clearance as it swings", pin_to_jamb - larger(near_corner, far_corner))
# pin_to_edge - sqrt(pin_to_jamb^2 - far_side^2), multiplied out so that no small difference of large numbers is left
_back = (_far_side**2 - gap_latch * (pin_to_edge + pin_to_jamb)) / (pin_to_edge + sqrt(pin_to_jamb**2 - _far_side**2))
least_bevel = setup.setting("least_bevel", "Least bevel that swings clear", atand(larger(0, _back) / thickness), kind="angle", rounding="up")
foul = setup.size("foul", "Too far into the jamb by", -clearance, when=clearance < 0)
back_width = setup.size("back_width", "Door width on the stop face", door_width - taper)

# What can go wrong

_reach = sqrt(pin_to_jamb**2 - _half_gap**2)
setup.stop(
    "nothing_left",
    taper >= door_width,
    "A bevel of {bevel} through {thickness} takes away the whole width of {door_width} on the stop face.",
    change=bevel,
    spoils=(taper,),
)
setup.stop(
    "too_thick",
    _far_side >= _reach,
    "A door {thickness} thick on a pin {pin_offset} proud cannot turn past a jamb {pin_to_jamb} away, whatever its bevel.",
    change=thickness,
    spoils=(least_bevel,),
)
setup.caution(
    "pin_too_proud",
    near_corner > pin_to_jamb,
    "The corner on the opening face swings {near_corner} from the pin and the jamb is {pin_to_jamb} away: it passes only if nothing of jamb or "
    "casing stands out past the face of the door. No bevel helps there: leave more gap on the latch side, or hang it on a pin less proud than {pin_offset}.",
    change=gap_latch,
    source="",
)
setup.stop(
    "fouls",
    And(far_corner > pin_to_jamb, _far_side < _reach),
    "With a bevel of {bevel} the corner on the stop face swings {far_corner} and meets the jamb, {pin_to_jamb} away: it needs {least_bevel} at least.",
    change=bevel,
    spoils=(),
)
setup.caution(
    "barely_clears",
    And(clearance >= 0, clearance < inches("1/32"), far_corner > near_corner),
    "It swings past with {clearance} to spare: paint and one damp season take that up. More bevel, or more gap on the latch side.",
    change=gap_latch,
)
setup.caution(
    "barely_clears_in_front",
    And(clearance >= 0, clearance < inches("1/32"), far_corner <= near_corner),
    "The corner on the opening face swings past with {clearance} to spare, which no bevel changes: leave more gap on the latch side.",
    change=gap_latch,
)
setup.caution(
    "steep_bevel",
    bevel > degrees(10),
    "A bevel of {bevel} leaves a thin arris and a gap that shows; locks are made for about 3\u00b0.",
    change=bevel,
)
setup.note(
    "square_will_do",
    least_bevel <= 0,
    "This door swings clear with a square edge. A little bevel still lets it be fitted closer and planed again later.",
    change=bevel,
    source=NO_SOURCE,
)

# The trial cut

measured_taper = setup.reading(
    "measured_taper",
    "Taper as it measures",
    "Square held on the opening face, blade along the bevelled edge: the gap at the stop face, by feeler gauges or a rule.",
)
_as_cut = atand(measured_taper / thickness)
tilt_move = setup.correction(
    "tilt_move",
    "Tilt",
    bevel - _as_cut,
    more="Too little taper: bevel {size} more.",
    less="Too much taper: bevel {size} less.",
    far=degrees(3),
    kind="angle",
)
bevel_as_cut = setup.after("bevel_as_cut", "Bevel as cut", _as_cut, kind="angle")
clearance_as_cut = setup.after(
    "clearance_as_cut",
    "Clearance with that bevel",
    pin_to_jamb - larger(near_corner, sqrt((pin_to_edge - measured_taper) ** 2 + _far_side**2)),
    when=measured_taper < door_width,
)
setup.caution(
    "would_foul",
    clearance_as_cut < 0,
    "With a taper of {measured_taper} the door meets the jamb.",
    change=measured_taper,
    source="",
)
setup.trial(
    "Bevel the square edge of a scrap as thick as the door, lying as the door will. "
    "Hold a try square on the opening face and measure at the stop face how far the edge falls away."
)

# At the bench

_worth_cutting = And(bevel > 0, clearance >= 0)
setup.step("Fit the door square first: {door_width} wide, with its gaps of {gap_hinge} on the hinge side and {gap_latch} on the latch side.")
setup.step("Mark the face it opens toward: it keeps its width. The bevel falls away toward the stop.", when=bevel > 0)
setup.step("The latch edge stays square.", when=And(bevel <= 0, clearance >= 0))
setup.step(
    "Gauge a line on the stop face, {taper} in from the latch edge; on both ends join it to the corner of the opening face.",
    when=_worth_cutting,
)
setup.step(
    "Over the saw only with no glass in the door and no hinges on it, or else with a plane. Unplugged: tilt the blade {bevel} from square, away from the fence. Stop face down, the fence set so that the blade just leaves the line. "
    "Try it on the scrap.",
    when=_worth_cutting,
)
setup.step(
    "Cut or plane from the line to the corner of the opening face and leave that corner sharp: {back_width} stays on the stop face.",
    when=_worth_cutting,
)
setup.step("Ease the corners of the stop face, hang the door, and swing it slowly past the jamb: it clears by {clearance}.", when=clearance >= 0)

# What is run

setup.operation(
    "edge",
    "edge bevel",
    "Plane the bevel of the latch edge",
    taper,
    bevel,
    # it comes after the glue-up, and the panes of a grooved frame are in by then
    machine="bench",
    face="From the line on the stop face to the corner of the opening face. Over the saw only with no glass in it and no hinges on it.",
    reading=measured_taper,
    when=_worth_cutting,
)

# The pictures: pin at the origin, the face the door opens toward above


def _swung(x: Any, y: Any, by: Any) -> Point:
    """A point of the shut door, so far across and so far under the pin, when the door is open by an angle."""
    return (x * cosd(by) + y * sind(by), x * sind(by) - y * cosd(by))


_hinge = _half_gap
_back_edge = pin_to_edge - taper
_jamb = larger(thickness, door_width / 12)
_under = -_far_side
_DOOR = [(_hinge, pin_offset), (pin_to_edge, pin_offset), (_back_edge, _far_side), (_hinge, _far_side)]
_OPEN = degrees(30)
_ACROSS = ["1", "0.707", "0", "-0.707", "-1", "-0.707", "0", "0.707"]
_pin = door_width / 100
_EIGHT = [(number(x), number(y)) for x, y in zip(_ACROSS, _ACROSS[2:] + _ACROSS[:2], strict=True)]


def _corner_path(across: Any, from_pin: Any, shift: Any) -> list[Point]:
    """The way of a corner from where it is when the door is shut until it is level with the pin."""
    steps = [from_pin * number(part) for part in ("1", "3/4", "1/2", "1/4", "0")]
    return [(sqrt(across**2 + from_pin**2 - down**2) - shift, -down) for down in steps]


setup.picture(
    "The door from above, shut between its jambs and, dashed, open by 30\u00b0: the pin at the left, the face it opens toward at the top.",
    box("wood", -_half_gap - _jamb, _under - _jamb / 4, _jamb, thickness + _jamb / 4),
    box("wood", pin_to_jamb, _under - _jamb / 4, _jamb, thickness + _jamb / 4),
    area("end-grain", *((x, -y) for x, y in _DOOR)),
    area("ghost", *(_swung(x, y, _OPEN) for x, y in _DOOR)),
    line("centre", *(_swung(_back_edge, _far_side, _OPEN * number(part)) for part in ("0", "1/6", "1/3", "1/2", "2/3", "5/6", "1"))),
    line("face", (_hinge, -pin_offset), (pin_to_edge, -pin_offset)),
    dimension(door_width, (_hinge, -pin_offset), (pin_to_edge, -pin_offset), "below"),
    area("metal", *((a * _pin, b * _pin) for a, b in _EIGHT)),
    label("pin", (0, 0), "above"),
)
setup.picture(
    "The latch edge enlarged: the waste of the bevel hatched, and the way of the stop-face corner past the jamb.",
    area(
        "end-grain",
        (-2 * thickness, -pin_offset),
        (0, -pin_offset),
        (-taper, _under),
        (-2 * thickness, _under),
    ),
    area("waste", (0, -pin_offset), (0, _under), (-taper, _under), when=bevel > 0),
    box("wood", gap_latch, _under - thickness / 3, thickness / 2, thickness * number("4/3")),
    box("wood", -thickness / 2, _under - thickness / 3, gap_latch + thickness / 2, thickness / 3),
    line("centre", *_corner_path(pin_to_edge - taper, _far_side, pin_to_edge)),
    line("face", (-2 * thickness, -pin_offset), (0, -pin_offset)),
    dimension(gap_latch, (0, -pin_offset), (gap_latch, -pin_offset), "above", text="gap"),
    dimension(clearance, (gap_latch - clearance, 0), (gap_latch, 0), "above", row=2, text="clear", when=clearance > 0),
    dimension(taper, (-taper, _under), (0, _under), "below", when=bevel > 0),
    dimension(thickness, (-2 * thickness, -pin_offset), (-2 * thickness, _under), "left"),
    label("{bevel}", (-taper / 2, (_under - pin_offset) / 2), "left", when=bevel > 0),
    label("stop", (gap_latch / 2 - thickness / 4, _under - thickness / 6)),
    label("jamb", (gap_latch + thickness / 4, -pin_offset - thickness / 2)),
)

setup.source(
    "Geometry: a corner of the door swings on a circle about the pin, its radius \u221a(across\u00b2 + from the pin\u00b2); the pin stands over the middle of the hinge gap. "
    "The jamb, with its casing, is taken to come out as far as the pin; where it ends at the face of the door there is a little more room."
)
setup.source(
    "Bevel to which locks are made, 1/8 in in 2 1/4 in (3.18\u00b0): ICS, Building Trades Pocketbook. About 5\u00b0, or 1/8 in in 2 in: "
    + NO_SOURCE
    + "."
)
setup.source(
    "Gaps: scant 1/16 in (Griffith, Carpentry) to 3/32 in (ICS, Building Trades Pocketbook). 1/32 in as the least clearance: " + NO_SOURCE + "."
)

setup.onward("hinge-mortise", "The mortises of its hinges", gap=gap_hinge)
