"""A frame whose sides lean: the mitre gauge and the blade tilt that close every corner at once."""

from typing import Any

from sympy import And, Not, Or

from shopcalc.declare import Setup
from shopcalc.drawing import Point, arc, area, box, label, line, slim_turn, turn
from shopcalc.terms import asind, atand, cosd, degrees, inches, number, sind, smaller, tand

setup = Setup(
    slug="compound",
    title="Compound mitre",
    stand="at the saw",
    job="A box, hopper, cap or frame with sides that lean: where the mitre gauge stands and how far the blade tilts.",
    machines=("table saw", "tilted blade", "mitre gauge", "small pieces"),
    icon="M3 3h18v18H3zM8 8h8v8H8zM3 3l5 5M21 3l-5 5M3 21l5-5M21 21l-5-5",
)

# What is measured

sides = setup.count("sides", "Sides", "4", "How many pieces go round, all alike: 4 for a square or an oblong.")
lean = setup.angle(
    "lean",
    "Lean of the sides",
    "10",
    "From upright, by protractor against something plumb: 0 is an upright box, 90 a flat frame. One that leans in is the same, upside down.",
    zero=True,
)

# What to set

mitre_gauge = setup.setting("mitre_gauge", "Mitre gauge, from square", atand(tand(degrees(180) / sides) * sind(lean)), kind="angle")
blade_tilt = setup.setting("blade_tilt", "Blade tilt", asind(sind(degrees(180) / sides) * cosd(lean)), kind="angle")
face_angle = setup.size("face_angle", "On the face, between edge and cut", degrees(90) - mitre_gauge, kind="angle")
edge_angle = setup.size("edge_angle", "Between face and cut", degrees(90) - blade_tilt, kind="angle")
corner = setup.size("corner", "Corner seen from above", degrees(180) - degrees(360) / sides, kind="angle")
_leaning = And(lean > 0, lean < degrees(90))
edge_tilt = setup.size("edge_tilt", "Tilt for the edges, sides on edge", degrees(90) - lean, kind="angle", when=And(_leaning, lean > degrees(45)))

# What can go wrong

setup.stop("too_few_sides", sides < 3, "{sides} sides enclose nothing: a frame has three or more.", change=sides)
setup.caution(
    "steep_tilt",
    blade_tilt > degrees(45),
    "A tilt of {blade_tilt} is more than the 45\u00b0 a saw commonly tilts: more sides or more lean, or cut the joint by hand.",
    change=sides,
)
setup.caution(
    "many_cuts",
    sides > 8,
    "{sides} sides have twice as many cuts, and every one adds its error to the last joint: if their number is even, glue up two halves and plane the ends to meet.",
    change=sides,
)
setup.note("upright", lean <= 0, "Upright sides: a square crosscut with the blade tilted, and nothing compound about it.", change=lean)
setup.note("flat", lean >= degrees(90), "A flat frame: a plain mitre, the blade square.", change=lean)

# The trial cut

_sawn = blade_tilt <= degrees(45)

measured_face = setup.reading(
    "measured_face",
    "Face angle as it measures",
    "Protractor along the edge of the scrap, on its wide face: the sharp angle between edge and cut.",
    kind="angle",
)
measured_edge = setup.reading(
    "measured_edge",
    "Edge angle as it measures",
    "Bevel gauge held square to the cut: the sharp angle between the wide face and the cut.",
    kind="angle",
)
setup.correction(
    "mitre_move",
    "Mitre gauge",
    measured_face - face_angle,
    more="Swing the mitre gauge {size} further from square.",
    less="Swing the mitre gauge {size} back toward square.",
    when=And(mitre_gauge > 0, _sawn),
    far=degrees(5),
    kind="angle",
    look="See whether it was read from the other side.",
)
setup.correction(
    "tilt_move",
    "Tilt",
    measured_edge - edge_angle,
    more="Tilt the blade {size} more.",
    less="Tilt the blade {size} less.",
    when=And(blade_tilt > 0, _sawn),
    far=degrees(5),
    kind="angle",
    look="See whether it was read from the other face.",
)
setup.note(
    "which_side",
    And(mitre_gauge <= 0, _sawn, measured_face < degrees(90)),
    "The cut is not square to the edge, and {measured_face} does not say to which side: look with a try square, and swing the gauge.",
    change=measured_face,
)
setup.note(
    "which_face",
    And(blade_tilt <= 0, measured_edge < degrees(90)),
    "The cut is not square to the face, and {measured_edge} does not say to which side: look with a try square, and set the blade upright.",
    change=measured_edge,
)
setup.note(
    "face_by_hand",
    And(Not(_sawn), abs(measured_face - face_angle) > degrees(1)),
    "On the face the cut stands at {measured_face}, and {face_angle} is wanted: knife the line again, and plane to it.",
    change=measured_face,
)
setup.note(
    "edge_by_hand",
    And(Not(_sawn), abs(measured_edge - edge_angle) > degrees(1)),
    "Between face and cut there are {measured_edge}, and {edge_angle} are wanted: plane until the bevel gauge lies flat.",
    change=measured_edge,
)
setup.trial("Cut one end of a scrap as wide as the sides and read both angles.")
setup.trial("Then tape a whole ring of scrap together: the last joint shows all errors added up.")

setup.machine("on edge", when=And(lean > degrees(45), lean < degrees(90)))

# At the machine

_flat = lean >= degrees(90)
setup.step("Plane all sides to one thickness and rip them to one width. Mark the outside face and the upper edge of each.", when=lean < degrees(90))
setup.step("Plane all sides to one thickness and rip them to one width. Mark the face that is to show and the outer edge of each.", when=_flat)
setup.step(
    "If the frame is to stand flat, bevel both edges {lean}, leaning the same way; leave them square where it does not matter.",
    when=And(lean > 0, lean <= degrees(45)),
)
setup.step(
    "If the frame is to stand flat, bevel both edges {lean}, leaning the same way: sides on edge at a tall fence, blade tilted {edge_tilt}, or with a plane. "
    "Leave them square where it does not matter."
)
setup.step(
    "Unplug the saw. Tilt the blade {blade_tilt} from square. Check it with a bevel gauge set to {edge_angle}: stock on the table, on the side the blade leans to.",
    when=And(blade_tilt > 0, _sawn),
)
setup.step("Unplug the saw. Blade square to the table: try square against it between two teeth.", when=And(blade_tilt <= 0, _sawn))
setup.step(
    "Swing the mitre gauge {mitre_gauge} from square: {face_angle} between its face and the line of the blade.", when=And(mitre_gauge > 0, _sawn)
)
setup.step("Mitre gauge square to the blade.", when=And(mitre_gauge <= 0, _sawn))
setup.step(
    "Lay the sides so that the outside face comes out longer: outside up where the blade leans away from the piece, outside down where it leans over it.",
    when=And(blade_tilt > 0, _sawn),
)
setup.step("Cut an end of the scrap. Read both angles, correct, cut again.", when=_sawn)
setup.step("One end of every side, the upper edge against the gauge, swung so that this edge comes out the longer.", when=And(_leaning, _sawn))
setup.step("One end of every side, the upper edge against the gauge.", when=And(lean <= 0, _sawn))
setup.step("One end of every side, the outer edge against the gauge, swung so that this edge comes out the longer.", when=And(_flat, _sawn))
setup.step(
    "Swing the gauge {mitre_gauge} to the other side of square. Turn each side end for end, the same face up, the lower edge now against the gauge; "
    "cut to length against a stop block on the gauge.",
    when=And(_leaning, _sawn),
)
setup.step("Turn each side end for end, the same face up, and cut to length against a stop block on the gauge.", when=And(lean <= 0, _sawn))
setup.step(
    "The length is that of the upper edge, on the outside: mark it on the first side and set the stop by that, a block taller than the sides are thick.",
    when=And(_leaning, _sawn),
)
setup.step(
    "Swing the gauge {mitre_gauge} to the other side of square. Turn each side end for end, the same face up, the inner edge now against the gauge; "
    "cut to length against a stop block on the gauge.",
    when=And(_flat, _sawn),
)
_by_hand = "A saw does not tilt {blade_tilt}: these ends are sawn by hand. "
setup.step(
    _by_hand + "Knife {face_angle}, between edge and cut, on the outside face at both ends of every side, the upper edge the longer.",
    when=And(_leaning, Not(_sawn)),
)
setup.step(_by_hand + "Knife both ends of every side square across the outside face.", when=And(lean <= 0, Not(_sawn)))
setup.step(
    "Saw beside the line, leaning in so that the outside stays the longer face, and plane to it: a bevel gauge at {edge_angle} between face and cut, "
    "held square to the cut.",
    when=Not(_sawn),
)
setup.step(
    "Lay the sides outside up, ends touching, tape across the joints, turn over, glue, and fold the ring shut. Check every corner: {corner}, the gauge held level.",
    when=lean < degrees(90),
)
setup.step("Lay the sides flat, glue the joints, and draw the frame together with a band clamp. Check every corner: {corner}.", when=_flat)

# What is run

setup.operation("tilt", "crosscut", "Blade tilt, on scrap", blade_tilt, face="Flat on the table.", reading=measured_edge, when=_sawn)
for _name, _face, _when in (
    ("mitre", "Outside face up or down so that it comes out longer; upper edge to the gauge, then the lower, the gauge swung over.", _leaning),
    ("upright", "Outside face up or down so that it comes out longer; the other end with the same face up, the gauge square.", lean <= 0),
    ("flat", "The same face up at both ends; outer edge to the gauge, then the inner, the gauge swung over.", _flat),
):
    setup.operation(_name, "crosscut", "Compound mitre", mitre_gauge, blade_tilt, face=_face, reading=measured_face, when=And(_when, _sawn))

# The pictures: nothing was measured of the sides, so their width and thickness are only there to look at

_wide = inches(3)
_thick = inches("3/4")
_out = (sind(lean), cosd(lean))
_square_to_it = (cosd(lean), -sind(lean))
_shown = mitre_gauge >= 0  # a number of sides that encloses nothing has no gauge, and no picture


def _on_side(hand: int, up: Any, out: Any = 0) -> Point:
    """A point of the right (1) or the left (-1) side: so far up its inside face, so far out of it."""
    return (hand * (_wide / 2 + _out[0] * up + _square_to_it[0] * out), _out[1] * up + _square_to_it[1] * out)


_bite = _thick * tand(smaller(lean, degrees(75)))  # what a bevelled edge takes off a face; past 75 degrees it is more than the picture has
_bevelled = And(_shown, lean > 0, lean <= degrees(75))
setup.picture(
    "The frame cut through the middle: the lean is the angle between upright and side. Hatched, what comes off the edges of a frame that is to stand flat.",
    line("edge", _on_side(-1, 0), _on_side(1, 0), when=_shown),
    line("edge", _on_side(-1, _wide - _bite), _on_side(1, _wide - _bite), when=_bevelled),
    line("edge", _on_side(-1, _wide), _on_side(1, _wide), when=And(_shown, Or(lean <= 0, lean > degrees(75)))),
    *(
        area("end-grain", _on_side(hand, 0), _on_side(hand, _wide), _on_side(hand, _wide, _thick), _on_side(hand, 0, _thick), when=_shown)
        for hand in (-1, 1)
    ),
    *(area("cut", _on_side(hand, 0), _on_side(hand, 0, _thick), _on_side(hand, _bite, _thick), when=_bevelled) for hand in (-1, 1)),
    *(area("cut", _on_side(hand, _wide), _on_side(hand, _wide, _thick), _on_side(hand, _wide - _bite), when=_bevelled) for hand in (-1, 1)),
    *(area("waste", _on_side(hand, 0), _on_side(hand, 0, _thick), _on_side(hand, _bite, _thick), when=_bevelled) for hand in (-1, 1)),
    *(area("waste", _on_side(hand, _wide), _on_side(hand, _wide, _thick), _on_side(hand, _wide - _bite), when=_bevelled) for hand in (-1, 1)),
    line("centre", _on_side(1, 0), (_wide / 2, _wide * number("5/4")), when=_shown),
    turn(lean, _on_side(1, 0), (0, 1), _out, row=3, when=And(_shown, lean > 0)),
    label("inside", (0, _wide * _out[1] / 2), when=And(_shown, lean <= degrees(50))),
)
_slant = _wide * tand(mitre_gauge)
_swung = mitre_gauge > 0
# the angles of these two are often too slim to hold their number: it stands left of the dashed line, off the cut
setup.picture(
    "One side seen on its outside face: both ends are cut at the mitre gauge's angle from square, so that the upper edge is the longer.",
    area("wood", (-_wide, 0), (_wide, 0), (_wide + _slant, _wide), (-_wide - _slant, _wide), when=_swung),
    area("waste", (_wide, 0), (_wide + _slant, 0), (_wide + _slant, _wide), when=_swung),
    area("waste", (-_wide, 0), (-_wide - _slant, 0), (-_wide - _slant, _wide), when=_swung),
    line("face", (-_wide - _slant, _wide), (_wide + _slant, _wide), when=_swung),
    line("centre", (_wide, 0), (_wide, _wide), when=_swung),
    line("edge", *arc((_wide, 0), _wide * number("2/3"), mitre_gauge), when=_swung),
    slim_turn(mitre_gauge, (_wide, _wide * number("2/3")), when=_swung),
    label("upper edge", (0, _wide), "above", when=And(_swung, lean < degrees(90))),
    label("lower edge", (0, 0), "below", when=And(_swung, lean < degrees(90))),
    label("outer edge", (0, _wide), "above", when=And(_swung, lean >= degrees(90))),
    label("inner edge", (0, 0), "below", when=And(_swung, lean >= degrees(90))),
)
_deep = 2 * _thick
_over = _deep * tand(blade_tilt)
_tilted = And(blade_tilt > 0, _sawn)
setup.picture(
    "The cut seen along the table: the blade leans away from the piece, which comes out longer on its upper face, the outside.",
    box("table", -_wide, -_deep / 6, 2 * _wide + _over, _deep / 6, when=_tilted),
    area("end-grain", (-_wide, 0), (0, 0), (_over, _deep), (-_wide, _deep), when=_tilted),
    area("waste", (0, 0), (_wide / 2 + _over, 0), (_wide / 2 + _over, _deep), (_over, _deep), when=_tilted),
    area(
        "blade",
        (-_over / 6, -_deep / 6),
        (_deep / 8 - _over / 6, -_deep / 6),
        (_deep / 8 + _over * 3 / 2, _deep * 3 / 2),
        (_over * 3 / 2, _deep * 3 / 2),
        when=_tilted,
    ),
    line("face", (-_wide, _deep), (_over, _deep), when=_tilted),
    line("centre", (0, 0), (0, _deep * 3 / 2), when=_tilted),
    line("edge", *arc((0, 0), _deep * number("4/3"), blade_tilt), when=_tilted),
    slim_turn(blade_tilt, (0, _deep * number("4/3")), when=_tilted),
)

setup.source(
    "Geometry of planes: each joint lies in the upright plane that halves the corner; the gauge is its trace on the leaning face, "
    "the tilt its angle from square to that face."
)
setup.source("Snyder and Gottesman, Compound-Angle Joinery, is on the same joint; only its title and introduction were read.")

setup.onward("bevel", "The bevel for edges that stand flat", tilt=lean)
