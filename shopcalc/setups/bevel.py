"""Ripping an edge at an angle: how much narrower one face comes out, and where fence and blade stand for it."""

from sympy import And

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import arc, area, box, dimension, label, line, slim_turn, turn
from shopcalc.reference.saws import TEN_INCH_BLADE
from shopcalc.terms import atand, cosd, degrees, inches, larger, number, pick, sind, tand

setup = Setup(
    slug="bevel",
    title="Bevelled rip",
    stand="at the saw",
    job="An edge ripped at an angle: the narrow face, the fence at the table, how much blade it takes, and a bevel gauge for the tilt.",
    machines=("table saw", "tilted blade"),
    icon="M2 8h13l7 9H2z",
)

# What is measured

thickness = setup.length("thickness", "Board thickness", "3/4", "Calipers across the board at the edge that is to be bevelled.")
tilt = setup.angle("tilt", "Bevel", "15", "From a square edge, the saw's zero: degrees, or a slope such as 1:6 or 3 in 12.", zero=True)
wide_face = setup.length("wide_face", "Wide face", "4", "Across the wider face of the finished piece, corner to corner.")
gauge_run = setup.length("gauge_run", "Base for the bevel gauge", "6", "How far along a straight edge the gauge is laid; longer is more exact.")
edges = setup.choice(
    "edges",
    "Bevelled edges",
    "One, or both toward the same face, so that the section is a keystone and not a slanted bar.",
    **{"1": "one edge", "2": "both edges, toward one face"},
)

# What to set

offset = setup.size("offset", "One face narrower, each bevel", thickness * tand(tilt))
fence = setup.setting("fence", "Fence to blade, at the table", wide_face - offset)
blade_travel = setup.setting("blade_travel", "Blade clear of the table, along its slope", thickness / cosd(tilt), rounding="up")
gauge_rise = setup.setting("gauge_rise", "Gauge rise over its base", gauge_run * tand(tilt))
narrow_face = setup.size("narrow_face", "Narrow face", pick((wide_face - offset, edges.is_("1")), otherwise=wide_face - 2 * offset))

# What can go wrong

setup.stop(
    "past_the_saw",
    tilt > degrees(45),
    "A saw tilts 45\u00b0 at most, and this is {tilt}. Stand the board on its edge against a tall fence and tilt 90\u00b0 less the bevel.",
    change=tilt,
)
setup.stop(
    "no_narrow_face",
    narrow_face <= 0,
    "A wide face of {wide_face} is used up by the bevel: nothing is left of the narrow one, and the board has no face to lie on.",
    change=wide_face,
)
setup.note("square_rip", tilt <= 0, "No bevel: a square rip, both faces alike.", change=tilt)
setup.caution(
    "narrow_bearing",
    narrow_face < thickness,
    "The narrow face, {narrow_face}, is less than the thickness of {thickness}: it rocks on the table. Plane the bevel, or cut it on a wider piece.",
    change=wide_face,
)
setup.caution(
    "close_to_fence",
    fence < inches("2"),
    "{fence} between fence and blade leaves no room for a hand: a push block on every pass.",
    change=wide_face,
)
setup.caution(
    "too_much_blade",
    blade_travel > inches(TEN_INCH_BLADE),
    "This bevel takes {blade_travel} of blade; a 10 in blade stands about {3 1/8 in} out of the table.",
    change=thickness,
)

# The trial cut

measured_offset = setup.reading(
    "measured_offset",
    "Faces differ by, as it measures",
    "Both faces of the bevelled scrap by calipers, square to the edge: the wider less the narrower.",
)
tilt_move = setup.correction(
    "tilt_move",
    "Tilt",
    tilt - atand(measured_offset / thickness),
    more="Tilt the blade {size} more.",
    less="Tilt the blade {size} less.",
    when=tilt > 0,
    far=degrees(5),
    kind="angle",
)
setup.after("tilt_as_cut", "Bevel as cut", atand(measured_offset / thickness), kind="angle", when=tilt > 0)
setup.note(
    "which_side",
    And(tilt <= 0, measured_offset > 0),
    "The faces differ by {measured_offset}, and that does not say which way the blade leans: look with a try square, and set it upright.",
    change=measured_offset,
)
setup.after("fence_as_cut", "Fence for the bevel as cut", wide_face - measured_offset, when=And(setup.near(tilt_move), measured_offset < wide_face))
setup.trial(
    "Bevel one edge of a scrap of the same thickness, its other edge square. Write below by how much its faces differ. "
    "Correct the tilt before the fence: tilting moves the blade at the table too."
)

# At the machine

setup.step("Joint one edge. Leave the board wider than {wide_face}, so that what falls off is a strip and not a sliver.")
# a blade tilted by the bevel stands the rest of the right angle from the table: so does the line from one square to the edge
setup.step(
    "Mark a point on a straight edge. From it measure {gauge_run} along the edge, then {gauge_rise} square to it, and draw a line from the mark to there. "
    "Set the bevel gauge to the angle between that line and a line square to the edge.",
    when=tilt > 0,
)
setup.step(
    "Unplug the saw. Tilt the blade {tilt} from square, away from the fence. Check it: stock of the gauge on the table, on the side the blade leans to, "
    "the gauge's blade against the saw's between two teeth.",
    when=tilt > 0,
)
setup.step("Unplug the saw. Blade square to the table: try square against it between two teeth.", when=tilt <= 0)
setup.step("Raise the blade until {blade_travel} stands out of the table along its own slope. The teeth only just clear the face.")
setup.step("Rip a scrap, measure it, correct the tilt.")
setup.step("Set the fence {fence} from the near side of the blade, at the table. Narrow face down, square edge against the fence: rip every piece.")
setup.step("The second offcut is a sliver: stand out of its line, and stop the saw before you reach for it.", when=edges.is_("2"))
setup.step(
    "Turn each piece end for end, the same face down. Its first bevel now meets the fence with the upper corner; rip the second at the same fence.",
    when=edges.is_("2"),
)
setup.step("Check a piece: {wide_face} across the wide face, {narrow_face} across the narrow one.")

# What is run

setup.operation(
    "bevel",
    "rip",
    "Rip the bevel",
    tilt,
    fence,
    blade_travel,
    face="Narrow face down, square edge to the fence; a second bevel end for end.",
    reading=measured_offset,
)

# The pictures

_up = thickness / 6  # how far the blade shows past the board
_slot = thickness / 6  # a blade to look at: its kerf changes nothing here
_foot = fence - narrow_face  # nothing, or the bevel of the edge that was ripped first
_beyond = fence + offset + thickness / 2
_high = thickness + _up / 2
setup.picture(
    "The rip seen from the end of the board: narrow face on the table, the blade tilted away from the fence, waste hatched.",
    box("table", -thickness, -thickness / 4, _beyond + 2 * thickness, thickness / 4),
    box("fence", -thickness, 0, thickness, 2 * thickness, when=narrow_face > 0),
    area("end-grain", (_foot, 0), (fence, 0), (fence + offset, thickness), (0, thickness)),
    area("waste", (fence, 0), (_beyond, 0), (_beyond, thickness), (fence + offset, thickness)),
    area(
        "blade",
        (fence - tand(tilt) * thickness / 4, -thickness / 4),
        (fence - tand(tilt) * thickness / 4 + _slot, -thickness / 4),
        (fence + tand(tilt) * (thickness + _up) + _slot, thickness + _up),
        (fence + tand(tilt) * (thickness + _up), thickness + _up),
    ),
    line("face", (_foot, 0), (fence, 0)),
    dimension(fence, (0, 0), (fence, 0), "below"),
    dimension(narrow_face, (_foot, 0), (fence, 0), "below", row=2),
    dimension(wide_face, (0, thickness), (fence + offset, thickness), "above", row=2),
    dimension(thickness, (_beyond, 0), (_beyond, thickness), "right"),
    label("fence", (-thickness / 2, thickness * number("3/2")), when=narrow_face > 0),
    line("centre", (fence, 0), (fence, thickness * number("3/2")), when=tilt > 0),
    line("edge", *arc((fence, 0), _high, tilt), when=tilt > 0),
    # too slim an angle to hold its number, which stands left of the dashed line, off the blade
    slim_turn(tilt, (fence, thickness * number("5/4")), when=And(tilt > 0, narrow_face > 0)),
)
setup.picture(
    "The line for the bevel gauge: base along a straight edge, rise square to it. The gauge is set between the line and the dashed one, square to the edge.",
    line("centre", (0, 0), (0, larger(gauge_rise, gauge_run / 4)), when=tilt > 0),
    area("wood", (0, 0), (gauge_run, 0), (gauge_run, gauge_rise), when=tilt > 0),
    dimension(gauge_run, (0, 0), (gauge_run, 0), "below"),
    dimension(gauge_rise, (gauge_run, 0), (gauge_run, gauge_rise), "right"),
    turn(tilt, (0, 0), (1, 0), (cosd(tilt), sind(tilt)), row=3),
)

setup.source("Geometry: a board ripped at a bevel has faces that differ by thickness \u00d7 tan(bevel) and a cut thickness / cos(bevel) long.")
setup.source("A tilt of 45\u00b0 and a reach of 3 1/8 in for a 10 in blade, at most: " + NO_SOURCE + "; look at your own saw.")

setup.onward("angle", "This bevel in degrees, slope and gauge", angle=tilt, base=gauge_run)
