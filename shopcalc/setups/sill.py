"""A sloped sill or drip cap: its faces, the bevel at its back, and the drip that lets the water go."""

from typing import Any

from sympy import And

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import Point, area, box, dimension, label, line, slant, turn
from shopcalc.reference.saws import TEN_INCH_BLADE
from shopcalc.terms import atand, cosd, degrees, inches, number, sind, tand

setup = Setup(
    slug="sill",
    title="Sill and drip cap",
    stand="on the building",
    job="A sill or cap that sheds water: how wide to rip it, the bevel that stands plumb at its back, and a drip that clears the wall.",
    machines=("table saw", "non-through cut", "tilted blade", "open to the weather"),
    icon="M2 6l20 5v7h-4v-2h-3v2H2z",
)

# What is measured

depth = setup.length("depth", "Depth, back to front", "5 1/2", "Level, from the plumb back to the upper front corner, overhang included.")
overhang = setup.length("overhang", "Overhang, along the underside", "1 1/4", "From the face of the wall or sash below to the front edge.")
slope = setup.angle("slope", "Slope", "10", "Of the top, from level: degrees, or a slope such as 2 in 12.")
thickness = setup.length("thickness", "Sill thickness", "1 1/2", "Calipers across the board, square to its face.")
drip_kerf = setup.length("drip_kerf", "Drip width", "1/4", "The groove wanted under the overhang: one pass of a cutter, or two of a blade.")
drip_setback = setup.length(
    "drip_setback", "Drip behind the front edge", "1/2", "Along the underside, from the front edge to the near side of the drip."
)
sill_length = setup.length("sill_length", "Sill length", "36", "Along the wall: the opening, with what the sill is to stand past it on both sides.")

# What to set, in the order it is set

top_face = setup.size("top_face", "Top face", depth / cosd(slope))
fall = setup.size("fall", "Fall, back to front", depth * tand(slope))
bottom_face = setup.setting("bottom_face", "Bottom face: fence to blade at the table", depth / cosd(slope) - thickness * tand(slope))
back_bevel = setup.setting("back_bevel", "Back bevel", slope, kind="angle")
drip_depth = setup.setting("drip_depth", "Blade height for the drip, at most", thickness / 3, rounding="down")
board = setup.size("board", "Board before its edges are cut, at least", top_face + inches("1/8"), rounding="up")
drip_clear = setup.size("drip_clear", "Drip clear of the wall", overhang - drip_setback - drip_kerf, rounding="down")

# What is cut

setup.part("Sill", 1, sill_length, board, thickness)

# What can go wrong

setup.stop(
    "past_the_saw",
    slope > degrees(45),
    "A slope of {slope} is more than the 45\u00b0 a saw tilts, and more a roof than a sill.",
    change=slope,
)
setup.stop(
    "no_bottom",
    bottom_face <= 0,
    "A sill {depth} deep and {thickness} thick comes to an edge at this slope: nothing is left of its bottom face.",
    change=depth,
)
setup.stop(
    "no_bearing",
    overhang >= bottom_face,
    "An overhang of {overhang} is the whole of the underside: nothing of the sill lies on the wall.",
    change=overhang,
)
_no_room = overhang <= drip_setback + drip_kerf
setup.stop(
    "drip_on_wall",
    _no_room,
    "A drip {drip_kerf} wide and {drip_setback} behind the front edge has no room in an overhang of {overhang}: the water would land on the wall or the sash.",
    change=drip_setback,
    spoils=(drip_depth, drip_clear),
)
setup.caution(
    "drip_close",
    drip_clear < inches("1/4"),
    "The drip is only {drip_clear} clear of the wall, less than {1/4 in}: wind carries the drops back to it.",
    change=overhang,
)
setup.caution(
    "narrow_drip", drip_kerf < inches("1/8"), "A drip narrower than {1/8 in} fills: a drop bridges it, and so does paint.", change=drip_kerf
)
setup.caution(
    "weak_nose",
    drip_setback < inches("3/8"),
    "Only {drip_setback} of wood in front of the drip, less than {3/8 in}: it breaks off.",
    change=drip_setback,
)
setup.caution(
    "thin_sill", thickness < inches("3/4"), "A sill thinner than {3/4 in} cups, and the drip leaves little to hold its nose.", change=thickness
)
setup.caution(
    "too_flat", slope < degrees(5), "A slope of less than 5\u00b0 holds water in every hollow of the grain; about 10\u00b0 is usual.", change=slope
)
setup.caution(
    "narrow_bearing",
    bottom_face < thickness,
    "The bottom face, {bottom_face}, is less than the thickness of {thickness}: it rocks on the table beside a tilted blade. Plane the bevel.",
    change=depth,
)
setup.caution(
    "close_to_fence",
    bottom_face < inches(2),
    "{bottom_face} between fence and blade leaves no room for a hand: a push block on every pass.",
    change=depth,
)
setup.caution(
    "too_much_blade",
    And(slope <= degrees(45), thickness > inches(TEN_INCH_BLADE) * cosd(slope)),
    "Through {thickness} at this slope a 10 in blade does not reach: it stands about {3 1/8 in} out of the table. Plane the bevel.",
    change=thickness,
)
setup.note(
    "steep",
    slope > degrees(20),
    "Steeper than 20\u00b0, where about 10\u00b0 is usual: nothing set down on it stays.",
    change=slope,
    source=NO_SOURCE,
)

# The trial cut

measured_offset = setup.reading(
    "measured_offset",
    "Faces differ by, as it measures",
    "Both faces of the bevelled scrap by calipers, square to the edge: the wider less the narrower.",
)
measured_drip = setup.reading("measured_drip", "Drip depth as it measures", "Depth rod of the calipers in the trial drip, at its deepest place.")
tilt_move = setup.correction(
    "tilt_move",
    "Tilt",
    slope - atand(measured_offset / thickness),
    more="Tilt the blade {size} more.",
    less="Tilt the blade {size} less.",
    far=degrees(5),
    kind="angle",
)
setup.correction(
    "drip_move",
    "Blade for the drip",
    measured_drip - drip_depth,
    more="Too deep: lower the blade {size}.",
    less="Shallower than it may be: raise the blade {size}.",
    far=inches("1/8"),
)
setup.after("back_as_cut", "Back bevel as cut", atand(measured_offset / thickness), kind="angle")
setup.after(
    "bottom_as_cut", "Bottom face for the bevel as cut", top_face - measured_offset, when=And(setup.near(tilt_move), measured_offset < top_face)
)
setup.trial(
    "On a scrap of the sill's own thickness cut the drip, then bevel the other edge. Type in how much the faces differ and how deep the drip is.",
    when=drip_depth > 0,
)
setup.trial("Bevel one edge of a scrap of the sill's own thickness. Type in how much the faces differ.", when=_no_room)
setup.trial("With its bevel held plumb the scrap shows the slope.")

# At the machine

setup.step("Joint the front edge square to the faces, of a board that is {board} wide or more. Mark the top face.")
setup.step(
    "Drip, blade square: set it at most {drip_depth} high, the fence {drip_setback} from its near side, to a tooth that leans that way. Top face up, front edge against the fence; "
    "one pass, or more with the fence moved away from the blade, until the drip is {drip_kerf} wide."
)
setup.step("Unplug the saw. Saw blade in, tilted {back_bevel} away from the fence and raised until its teeth just clear stock {thickness} thick.")
setup.step("Guard and riving knife back on.", when=drip_depth > 0)
setup.step("Bevel the scrap, measure, correct.")
setup.step(
    "Set the fence {bottom_face} from the near side of the blade, at the table. Top face up, front edge against the fence: rip the back. "
    "The top comes out {top_face} wide."
)
setup.step("Set the sill with its back plumb and check the fall: {fall} over the depth of {depth}.")
setup.step("Before it is fixed pour a cup of water on it: it drops from the front edge, and none creeps back past the drip.", when=drip_depth > 0)

# What is run

setup.run("mill", thickness, parts=["Sill"])
setup.run("crosscut", sill_length, parts=["Sill"])
setup.operation("front", "rip", "Joint the front edge", machine="bench", face="Square to the faces.", parts=["Sill"])
_top_up = "Top face up, front edge to the fence."
setup.operation(
    "drip",
    "groove and rabbet",
    "Drip",
    drip_depth,
    ("Fence to near side of blade", drip_setback),
    ("Drip width", drip_kerf),
    face=_top_up + " Then the fence away from the blade, until the drip is wide enough.",
    reading=measured_drip,
    when=drip_depth > 0,
)
# the board is left wider until its drip is cut
setup.operation(
    "back",
    "edge bevel",
    "Bevel the back",
    back_bevel,
    bottom_face,
    face=_top_up + " The blade leans away from the fence.",
    parts=["Sill"],
    reading=measured_offset,
)

# The pictures

_down = (cosd(slope), -sind(slope))
_under = (-sind(slope), -cosd(slope))


def _on_sill(along: Any, under: Any = 0) -> Point:
    """A point of the sill: so far down its top face from the back, so far under it."""
    return (_down[0] * along + _under[0] * under, _down[1] * along + _under[1] * under)


_wall = _on_sill(top_face - overhang, thickness)
_back = _on_sill(top_face - bottom_face, thickness)
_ground = _on_sill(top_face, thickness)[1] - thickness
_drip = top_face - drip_setback - drip_kerf

setup.picture(
    "The sill seen from its end, the wall under it at the left: top and bottom slope alike, the back stands plumb, the front is square to the faces.",
    area("block", _back, _wall, (_wall[0], _ground), (_back[0], _ground)),
    area("end-grain", _on_sill(0), _on_sill(top_face), _on_sill(top_face, thickness), _back),
    area(
        "cut",
        _on_sill(_drip, thickness),
        _on_sill(_drip, thickness - drip_depth),
        _on_sill(_drip + drip_kerf, thickness - drip_depth),
        _on_sill(_drip + drip_kerf, thickness),
    ),
    line("face", _on_sill(0), _on_sill(top_face)),
    dimension(depth, _on_sill(0), _on_sill(top_face), "above"),
    dimension(fall, (depth, 0), (depth, -fall), "right"),
    turn(slope, _on_sill(0), (1, 0), _down, row=3, when=top_face > 0),
    slant(overhang, _on_sill(top_face - overhang, thickness), _on_sill(top_face, thickness), _under, row=2),
    label("wall", ((_back[0] + _wall[0]) / 2, _ground + thickness / 3)),
)
_shown = overhang * 2
_slot = drip_depth > 0
setup.picture(
    "The drip cut, seen from the end: top face up, front edge against the fence; dashed where the wall or sash will stand.",
    box("table", -thickness / 3, -thickness / 6, _shown + thickness / 3, thickness / 6, when=_slot),
    box("fence", -thickness / 3, 0, thickness / 3, thickness * number("4/3"), when=_slot),
    box("end-grain", 0, 0, _shown, thickness, when=_slot),
    box("cut", drip_setback, 0, drip_kerf, drip_depth),
    line("face", (0, thickness), (_shown, thickness), when=_slot),
    line("hidden", (overhang, 0), (overhang, thickness), when=_slot),
    dimension(drip_kerf, (drip_setback, drip_depth), (drip_setback + drip_kerf, drip_depth), "above", when=_slot),
    dimension(drip_depth, (drip_setback + drip_kerf, 0), (drip_setback + drip_kerf, drip_depth), "right"),
    dimension(drip_setback, (0, 0), (drip_setback, 0), "below", when=_slot),
    dimension(drip_clear, (drip_setback + drip_kerf, 0), (overhang, 0), "below", row=2, text="clear"),
    dimension(overhang, (0, 0), (overhang, 0), "below", row=3, when=_slot),
)
_tan = top_face - bottom_face  # how much the faces differ
setup.picture(
    "The back ripped, seen from the end: bottom face on the table, front edge against the fence, the blade tilted away from it.",
    box("table", -thickness, -thickness / 6, top_face + 2 * thickness, thickness / 6),
    box("fence", -thickness, 0, thickness, thickness * number("3/2"), when=bottom_face > 0),
    area("end-grain", (0, 0), (bottom_face, 0), (top_face, thickness), (0, thickness)),
    area("waste", (bottom_face, 0), (top_face + thickness / 3, 0), (top_face + thickness / 3, thickness), (top_face, thickness)),
    box("cut", drip_setback, 0, drip_kerf, drip_depth),
    area(
        "blade",
        (bottom_face - _tan / 6, -thickness / 6),
        (bottom_face - _tan / 6 + thickness / 8, -thickness / 6),
        (bottom_face + _tan * number("7/6") + thickness / 8, thickness * number("7/6")),
        (bottom_face + _tan * number("7/6"), thickness * number("7/6")),
    ),
    line("face", (0, thickness), (top_face, thickness)),
    dimension(top_face, (0, thickness), (top_face, thickness), "above", row=2),
    dimension(bottom_face, (0, 0), (bottom_face, 0), "below"),
    turn(back_bevel, (bottom_face, 0), (0, 1), (sind(slope), cosd(slope))),
    label("fence", (-thickness / 2, thickness), when=bottom_face > 0),
)

setup.source("Geometry: a slab cut plumb at the back and square at the front; its faces differ by thickness \u00d7 tan(slope).")
setup.source("A slope of about 10\u00b0, a drip of a third of the thickness at most, 1/4 in clear of the wall: " + NO_SOURCE + ".")

setup.onward("bevel", "Its back as a bevelled rip", thickness=thickness, tilt=slope)
setup.onward("angle", "This slope in other words", angle=slope)
