"""A common rafter: its lengths and cuts from span and pitch, with the notch that lets a ridge cap lie flush."""

from typing import Any

from sympy import And

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import Point, area, box, dimension, label, leader, line, slant, turn
from shopcalc.terms import cosd, degrees, inches, number, pick, sind, smaller, tand

setup = Setup(
    slug="rafter",
    title="Common rafter",
    stand="on the building",
    job="The lengths and cuts of a rafter from span and pitch. Geometry only: what section a rafter must have is for local code.",
    machines=("saw in the hand", "on the roof"),
    icon="M22 3v5L9 17v-3H6v6H2v-3z",
)

# What is measured

span = setup.length("span", "Span", "8 ft", "Between the outsides of the two wall plates, square across the building, at both ends of it.")
pitch = setup.angle("pitch", "Pitch", "7 in 12", "The roof from level: degrees, or a slope such as 7 in 12.", most=degrees(85))
ridge = setup.length("ridge", "Ridge board thickness", "3/4", "Calipers across the ridge board. 0 where the rafters meet each other.", zero=True)
overhang = setup.length("overhang", "Overhang", "6", "Level, from the outside of the plate to the plumb cut at the tail.", zero=True)
rafter_depth = setup.length("rafter_depth", "Rafter depth", "3 1/2", "Calipers across the wide face of the rafter, edge to edge.")
rafter_thickness = setup.length("rafter_thickness", "Rafter thickness", "1 1/2", "Calipers across the edge of the rafter.")
seat = setup.length("seat", "Seat on the plate", "2", "Level, from the outside of the plate inward: how much of the plate the rafter stands on.")
cap_thickness = setup.length("cap_thickness", "Ridge cap, thickness", "3/4", "Calipers across the cap's boards. 0 where no cap is let in.", zero=True)
cap_inside = setup.length(
    "cap_inside",
    "Ridge cap, inside face",
    "3 9/16",
    "From where the inside faces meet at the peak down to the lower edge: of a lapped cap, the narrow board's inside face.",
    when=cap_thickness > 0,
)

# What to set

run = setup.size("run", "Run, ridge face to outside of plate", (span - ridge) / 2)
rise = setup.size("rise", "Rise over that run", run * tand(pitch))
line_length = setup.setting("line_length", "Line length, ridge cut to plate", run / cosd(pitch))
plumb_angle = setup.setting("plumb_angle", "Plumb cuts, from a square cut", pitch, kind="angle")
seat_angle = setup.setting("seat_angle", "Seat cut, from a square cut", degrees(90) - pitch, kind="angle")
birdsmouth = setup.setting("birdsmouth", "Birdsmouth, height of the plumb cut", seat * tand(pitch))
tail = setup.setting("tail", "Tail, plate to plumb cut, along the rafter", overhang / cosd(pitch))
peak_notch = setup.setting("peak_notch", "Notch for the cap, depth", cap_thickness, when=cap_thickness > 0)
# down the slope a plumb cut runs in under the upper edge, by so much at the floor
notch_on_edge = setup.setting(
    "notch_on_edge",
    "Notch for the cap, along the upper edge",
    cap_inside - ridge / 2 / cosd(pitch) + cap_thickness * tand(pitch),
    when=cap_thickness > 0,
)
notch_on_rafter = setup.size("notch_on_rafter", "Notch, along its floor", cap_inside - ridge / 2 / cosd(pitch), when=cap_thickness > 0)
notch_length = setup.size("notch_length", "Notch, from where both floors meet in the ridge", cap_inside, when=cap_thickness > 0)
plumb_length = setup.size("plumb_length", "Plumb cut, corner to corner", rafter_depth / cosd(pitch))
above_plate = setup.size("above_plate", "Rafter above the plate, plumb at its outside", plumb_length - birdsmouth)
left_at_seat = setup.size("left_at_seat", "Wood left at the birdsmouth, square to the edge", rafter_depth - seat * sind(pitch))
board_needed = setup.size("board_needed", "Board needed, long point to long point", line_length + tail + rafter_depth * tand(pitch), rounding="up")

# What is cut

setup.part("Rafter", 1, board_needed, rafter_depth, rafter_thickness)

# What can go wrong

_notch = (peak_notch, notch_on_edge, notch_length, notch_on_rafter)
setup.stop("no_run", ridge >= span, "A ridge board of {ridge} fills the whole span of {span}: no rafter is left.", change=ridge)
setup.stop(
    "seat_past_ridge",
    And(seat >= run, ridge < span),
    "A seat of {seat} is as long as the whole run of {run}.",
    change=seat,
    spoils=(birdsmouth, left_at_seat),
)
setup.stop(
    "cut_through",
    And(seat * sind(pitch) >= rafter_depth, seat < run),
    "A seat of {seat} at this pitch cuts right through a rafter {rafter_depth} deep.",
    change=seat,
    spoils=(birdsmouth, left_at_seat),
)
setup.stop(
    "cap_too_thick",
    cap_thickness >= rafter_depth,
    "Letting in a cap {cap_thickness} thick leaves nothing of a rafter {rafter_depth} deep.",
    change=cap_thickness,
    spoils=_notch,
)
setup.stop(
    "cap_on_the_ridge",
    And(cap_thickness > 0, cap_thickness < rafter_depth, cap_inside * cosd(pitch) <= ridge / 2),
    "A cap with {cap_inside} inside lies on the ridge board only: the rafter gets no notch.",
    change=cap_inside,
    spoils=_notch,
)
setup.stop(
    "cap_too_long",
    And(cap_thickness > 0, cap_thickness < rafter_depth, cap_inside >= span / 2 / cosd(pitch)),
    "A cap with {cap_inside} inside is as long as the whole rafter.",
    change=cap_inside,
    spoils=_notch,
)
setup.caution(
    "deep_birdsmouth",
    left_at_seat < rafter_depth * number("2/3"),
    "The birdsmouth takes more than a third of the rafter: {left_at_seat} of {rafter_depth} is left. Local code says how much may go.",
    change=seat,
)
setup.caution(
    "deep_notch",
    peak_notch > rafter_depth / 3,
    "The notch for the cap takes more than a third of the rafter's depth of {rafter_depth} where it meets the ridge.",
    change=cap_thickness,
)
setup.caution(
    "short_seat",
    seat < inches("3/2"),
    "A seat of {seat} is little to stand on: {1 1/2 in} on wood is commonly asked for. See local code.",
    change=seat,
)

# The trial cut

measured_plumb = setup.reading(
    "measured_plumb", "Plumb cut as it measures", "Bevel gauge or protractor on the scrap, from a square cut.", kind="angle"
)
saw_move = setup.correction(
    "saw_move",
    "Angle of the saw",
    plumb_angle - measured_plumb,
    more="Swing the saw {size} further from square.",
    less="Swing the saw {size} back toward square.",
    far=degrees(5),
    look="See which way the saw counts.",
    kind="angle",
)
open_joint = setup.after(
    "open_joint",
    "The joint at the ridge would stand open by",
    # two rafters alike meet where there is no ridge board, and each is off
    pick((2, ridge <= 0), otherwise=1) * rafter_depth / cosd(measured_plumb) * sind(abs(plumb_angle - measured_plumb)),
    rounding="up",
    when=measured_plumb <= degrees(89),
)
setup.trial(
    "Cut two scraps of one length and hold them as they will meet at the ridge, lower ends level with each other: the joint closes from top to bottom. Measure the plumb cut from square."
)

# At the horses

setup.step("This card is geometry: section, spacing, bearing, ties and fixings come from local code or whoever answers for the building.")
setup.step(
    "Sight every board, lay it crown up and mark the upper edge: everything is squared from it, and the plumb lines are struck across one face."
)
setup.step("Plumb cut at the ridge: {plumb_angle} from square, near the end of the board.")
setup.step("From that cut measure {line_length} along the rafter and strike a plumb line: the outside of the plate.")
setup.step(
    "On it mark {birdsmouth} up from the lower edge; from there strike the seat level, {seat} long, at {seat_angle} from square. Saw both cuts, never past the corner."
)
setup.step("From the plate line measure {tail} on and make the plumb cut of the tail.", when=overhang > 0)
setup.step("No overhang: the tail is cut plumb on the plate line.", when=overhang <= 0)
setup.step(
    "Notch for the cap: from the ridge cut mark {notch_on_edge} along the upper edge, and saw there, square to it, {peak_notch} deep; "
    "the floor between that and the ridge cut is {notch_on_rafter} long.",
    when=cap_thickness > 0,
)
setup.step("Set the ridge board no higher than the floor of the notch.", when=And(cap_thickness > 0, ridge > 0))
setup.step(
    "Try one pair: span {span}, and {rise} from the top of the plates up to a mark on the ridge cut, {birdsmouth} above its lower edge. Mark the rest from the better of the two."
)

# What is run

setup.operation(
    "plumb",
    "crosscut",
    "Plumb cuts",
    plumb_angle,
    line_length,
    tail,
    machine="saw in the hand",
    face="Crown up, lines on one face.",
    parts=["Rafter"],
    reading=measured_plumb,
)
setup.operation(
    "birdsmouth",
    "crosscut",
    "Birdsmouth",
    seat_angle,
    birdsmouth,
    machine="saw in the hand",
    face="From the lower edge.",
    parts=["Rafter"],
    when=birdsmouth > 0,
)
setup.operation(
    "notch",
    "crosscut",
    "Notch for the cap",
    peak_notch,
    ("Along the upper edge, from the ridge cut", notch_on_edge),
    machine="saw in the hand",
    face="Square to the upper edge.",
    parts=["Rafter"],
)

# The pictures: the outside corner of the plate at the origin, the ridge to the right

_out = (-sind(pitch), cosd(pitch))  # out of the roof
_down = (-cosd(pitch), -sind(pitch))  # down its slope


def _lower(x: Any) -> Point:
    """The lower edge of the rafter at x."""
    return (x, (x - seat) * tand(pitch))


def _upper(x: Any, under: Any = 0) -> Point:
    """The upper edge of the rafter at x, or a line so far under it, measured square."""
    return (x, (x - seat) * tand(pitch) + plumb_length - under / cosd(pitch))


def _from(point: Point, along: Any, out: Any = 0) -> Point:
    """A point so far down the slope from another, and so far out of the roof."""
    return (point[0] + _down[0] * along + _out[0] * out, point[1] + _down[1] * along + _out[1] * out)


_peak = run + ridge / 2
_inside_peak = _upper(_peak, cap_thickness)
_notch_end = _from(_inside_peak, cap_inside)
_notched = [_upper(run, cap_thickness), _notch_end, _from(_notch_end, 0, cap_thickness)]
_waste = [_upper(run), _upper(run, cap_thickness), _notch_end, _from(_notch_end, 0, cap_thickness)]
_birdsmouth = [(0, -birdsmouth), (0, 0), (seat, 0)]
_plate = smaller(rafter_depth, run)
_sunk = smaller(cap_thickness, rafter_depth)  # the ridge board ends at the floor of the notch

setup.picture(
    "The rafter from the side: the wall plate at the left, the ridge at the right, lengths along the line from the plate's outside corner.",
    area("wood", _upper(run), _upper(-overhang), _lower(-overhang), *_birdsmouth, _lower(run)),
    box("end-grain", 0, -_plate / 2, _plate, _plate / 2),
    area("waste", *_waste, when=peak_notch > 0),
    area("end-grain", _upper(run, _sunk), (run + ridge, _upper(run, _sunk)[1]), (run + ridge, _lower(run)[1]), _lower(run), when=ridge > 0),
    line("centre", (0, 0), (run, rise)),
    # from where the pitch turns and the rise stands
    line("centre", (0, 0), (run, 0)),
    line("face", _upper(-overhang), _upper(run)),
    slant(line_length, _upper(0), _upper(run), _out, row=2),
    # a tail is too short for its number to stand on its dimension: a leader holds it off the rafter
    leader(tail, _upper(-overhang / 2), (number("-0.94"), number("0.34")), row=2, when=overhang > 0),
    dimension(overhang, (-overhang, 0), (0, 0), "below", row=2, when=overhang > 0),
    dimension(run, (0, 0), (run, 0), "below"),
    slant(rise, (run, 0), (run, rise), (1, 0)),
    turn(plumb_angle, (0, 0), (1, 0), (cosd(pitch), sind(pitch)), row=2),
)
_inward = smaller(2 * seat, run)
_outward = smaller(seat, overhang)
setup.picture(
    "The birdsmouth enlarged: its waste hatched, dashed the plate that comes to stand in its place.",
    area("wood", _upper(_inward), _upper(-_outward), _lower(-_outward), *_birdsmouth, _lower(_inward)),
    area("waste", (0, -birdsmouth), (0, 0), (seat, 0)),
    box("ghost", 0, -birdsmouth - seat / 4, _inward, birdsmouth + seat / 4),
    line("face", _upper(-_outward), _upper(_inward), when=birdsmouth > 0),
    line("hidden", (0, 0), _upper(0), when=birdsmouth > 0),
    dimension(seat, (0, 0), (seat, 0), "below", when=birdsmouth > 0),
    dimension(birdsmouth, (0, -birdsmouth), (0, 0), "left"),
    dimension(above_plate, (0, 0), _upper(0), "left", row=2),
)
_capped = peak_notch > 0
setup.picture(
    "The peak enlarged, to the middle of the ridge: the notch hatched, dashed the cap that lies flush in it.",
    area(
        "wood",
        *_notched,
        _from(_notch_end, rafter_depth / 2, cap_thickness),
        _from(_notch_end, rafter_depth / 2, cap_thickness - rafter_depth),
        _lower(run),
        when=_capped,
    ),
    area("waste", *_waste, when=_capped),
    area(
        "end-grain",
        _upper(run, cap_thickness),
        (_peak, _upper(run, cap_thickness)[1]),
        (_peak, _lower(run)[1]),
        _lower(run),
        when=And(_capped, ridge > 0),
    ),
    area("ghost", _inside_peak, _notch_end, _from(_notch_end, 0, cap_thickness), _upper(_peak), when=_capped),
    line("centre", _upper(_peak), (_peak, _lower(run)[1]), when=_capped),
    line("face", _upper(run), _from(_notch_end, rafter_depth / 2, cap_thickness), when=_capped),
    slant(notch_on_edge, _from(_notch_end, 0, cap_thickness), _upper(run), _out, row=2),
    slant(notch_on_rafter, _notch_end, _upper(run, cap_thickness), (-_out[0], -_out[1])),
    slant(peak_notch, _notch_end, _from(_notch_end, 0, cap_thickness), _down),
    label("ridge", (_peak, _lower(run)[1]), "below", when=And(_capped, ridge > 0)),
)

setup.source(
    "Geometry of the right triangle: rise = run \u00d7 tan(pitch), line length = run / cos(pitch); half of the ridge board is taken off each side."
)
setup.source("Half of the ridge taken off, measured square to the plumb cut: Miller, Carpenters' Guide.")
setup.source("Geometry of the cap: let in square by its own thickness, its outside lies in the plane of the rafter's upper edge.")
setup.source("A birdsmouth or a notch of no more than a third, a seat of 1 1/2 in: " + NO_SOURCE + "; local code first.")

setup.onward("ridge-cap", "The cap on this peak", pitch_left=pitch, pitch_right=pitch, thickness=cap_thickness)
