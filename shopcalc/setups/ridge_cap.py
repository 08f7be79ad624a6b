"""Two boards over a peak, each covering the same; the second is ripped narrower where they lap."""

from typing import Any

from sympy import And

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import Point, area, slant, turn
from shopcalc.reference.saws import TEN_INCH_BLADE
from shopcalc.terms import cosd, degrees, inches, larger, pick, sind, smaller, tand

setup = Setup(
    slug="ridge-cap",
    title="Ridge cap",
    stand="on the building",
    job="Two boards over a peak that cover the same on each side: how wide to rip each, and the bevel where they meet.",
    machines=("table saw", "tilted blade", "on the roof"),
    icon="M2 15L12 5l10 10v5L12 10 2 20z",
)

# What is measured

pitch_left = setup.angle("pitch_left", "Pitch, left", "30", "The left roof from level: degrees, or a slope such as 7 in 12.")
pitch_right = setup.angle("pitch_right", "Pitch, right", "30", "The right roof from level; the same as the left unless the peak is lopsided.")
thickness = setup.length("thickness", "Board thickness", "3/4", "Calipers across the boards as they are, both the same.")
cover = setup.length("cover", "Cover each side", "4", "Along the outside of the cap, from the peak down to its lower edge.")
joint = setup.choice(
    "joint",
    "Joint at the peak",
    "Lapped: one board runs over the edge of the other. Mitred: both meet at the peak.",
    lapped="lapped: wide board over narrow",
    mitred="mitred: both alike",
)
kerf = setup.length("kerf", "Blade kerf", "1/8", "The slot the blade really cuts: run a scrap and put the inside jaws in it.", shop=True)
board_width = setup.length("board_width", "Board on hand, width", "9 1/4", "The narrowest place of the board both pieces are to come from.")
cap_length = setup.length("cap_length", "Cap length", "96", "Hook the tape on one end of the ridge: to the other end, with the overhang of the cap.")

# What follows from the peak

inside_angle = setup.size("inside_angle", "Angle between the boards", degrees(180) - pitch_left - pitch_right, kind="angle")
_lapped = joint.is_("lapped")
_cot = cosd(inside_angle) / sind(inside_angle)
_cot_half = cosd(inside_angle / 2) / sind(inside_angle / 2)

wide_outside = setup.size("wide_outside", "Wide board, outside face", cover)
wide_inside = setup.size("wide_inside", "Wide board, inside face", pick((cover - thickness * _cot, _lapped), otherwise=cover - thickness * _cot_half))
narrow_outside = setup.size("narrow_outside", "Narrow board, outside face", pick((cover - thickness / sind(inside_angle), _lapped), otherwise=cover))
narrow_inside = setup.size(
    "narrow_inside",
    "Narrow board, inside face",
    pick((cover - thickness * (1 + cosd(inside_angle)) / sind(inside_angle), _lapped), otherwise=cover - thickness * _cot_half),
)

# What to set

wide_rip = setup.setting("wide_rip", "Rip the wide board", larger(wide_outside, wide_inside))
narrow_rip = setup.setting("narrow_rip", "Rip the narrow board", larger(narrow_outside, narrow_inside))
edge_bevel = setup.setting(
    "edge_bevel", "Bevel at the peak", pick((abs(degrees(90) - inside_angle), _lapped), otherwise=degrees(90) - inside_angle / 2), kind="angle"
)
edge_tilt = setup.setting("edge_tilt", "Tilt with the board on edge", degrees(90) - edge_bevel, kind="angle", when=edge_bevel > degrees(45))
difference = setup.size("difference", "Narrow board narrower by", wide_rip - narrow_rip)
board_needed = setup.size("board_needed", "Width for both, with the kerf", wide_rip + narrow_rip + kerf, rounding="up")

# What is cut

_mitred = joint.is_("mitred")
setup.part("Wide cap board", 1, cap_length, wide_rip, thickness, when=_lapped)
setup.part("Narrow cap board", 1, cap_length, narrow_rip, thickness, when=_lapped)
setup.part("Cap board", 2, cap_length, wide_rip, thickness, when=_mitred)

setup.machine("on edge", when=edge_bevel > degrees(45))

# What can go wrong

setup.stop("no_run", pitch_left + pitch_right >= degrees(180), "Two upright roofs have no peak.", change=pitch_left)
setup.stop(
    "cover_too_small",
    larger(-wide_inside, -narrow_outside, -narrow_inside) >= 0,
    "A cover of {cover} is used up by the joint of boards {thickness} thick at this peak: nothing is left of a face.",
    change=cover,
)
setup.caution(
    "steep_bevel",
    And(inside_angle > degrees(135), _lapped),
    "A lap this flat needs a bevel of {edge_bevel}, more than a saw tilts: use the mitred joint, or cut it on edge.",
    change=joint,
)
setup.caution(
    "past_the_saw",
    And(edge_bevel > degrees(45), inside_angle <= degrees(135)),
    "A bevel of {edge_bevel} is more than a saw tilts: stand the board on edge against a tall fence and tilt the blade {edge_tilt}, or plane it.",
    change=joint,
)
for _side, _pitch in (("left", pitch_left), ("right", pitch_right)):
    setup.caution(
        f"wall_{_side}",
        _pitch > degrees(75),
        f"A pitch of {{{_pitch.name}}} is nearer a wall than a roof: see that it is measured from level, and not from plumb.",
        change=_pitch,
    )
# the blade leans over a board that lies on its narrower face, beside the fence
_bearing = smaller(narrow_outside, narrow_inside)
setup.caution(
    "narrow_bearing",
    And(edge_bevel > 0, edge_bevel <= degrees(45), _bearing < thickness),
    "A face of the narrow board is less than the thickness of {thickness}: it rocks on the table beside a tilted blade. Plane its bevel, or cover more.",
    change=cover,
)
setup.caution(
    "close_to_fence",
    _bearing < inches(2),
    "Less than {2 in} between fence and blade for the narrow board leaves no room for a hand: a push block on every pass.",
    change=cover,
)
setup.caution(
    "too_much_blade",
    And(edge_bevel > 0, edge_bevel <= degrees(45), thickness > inches(TEN_INCH_BLADE) * cosd(edge_bevel)),
    "Through {thickness} at a bevel of {edge_bevel} a 10 in blade does not reach: it stands about {3 1/8 in} out of the table. Plane the bevel.",
    change=thickness,
)
# common practice, as of the other cards: a 10 in blade, upright
setup.caution(
    "past_the_blade",
    thickness * cosd(edge_tilt) > inches(3) * sind(edge_tilt),
    "On edge at {edge_tilt} the blade comes out of the far face more than {3 in} above the table, where a 10 in blade hardly reaches: plane the bevel.",
    change=joint,
)
setup.caution(
    "board_too_narrow",
    And(board_needed > board_width, wide_rip <= board_width),
    "Both need {board_needed} and the board is {board_width} wide: take them from two boards.",
    change=board_width,
    source="",
)
setup.caution(
    "board_narrower_than_one",
    wide_rip > board_width,
    "A board {board_width} wide is too narrow for the wide one alone, {wide_rip}: take a wider board, or glue one up.",
    change=board_width,
    source="",
)
setup.caution(
    "board_just_wide",
    And(board_needed <= board_width, board_width < board_needed + inches("1/8")),
    "Both need {board_needed} and the board is {board_width} wide: nothing is left for jointing its edge first.",
    change=board_width,
)
setup.note(
    "square_peak",
    And(edge_bevel <= 0, _lapped),
    "A square peak: no bevel, and the narrow board is the cover less one thickness.",
    change=joint,
)
setup.note("alike", _mitred, "Mitred, the wide and the narrow board are one size.", change=joint)

# The trial cut

measured_bevel = setup.reading("measured_bevel", "Bevel as it measures", "Protractor or bevel gauge on the scrap, from a square edge.", kind="angle")
tilt_move = setup.correction(
    "tilt_move",
    "Tilt",
    pick((edge_bevel - measured_bevel, edge_bevel <= degrees(45)), otherwise=measured_bevel - edge_bevel),
    more="Tilt the blade {size} more.",
    less="Tilt the blade {size} less.",
    when=edge_bevel > 0,
    far=degrees(5),
    kind="angle",
)
setup.note(
    "which_side",
    And(edge_bevel <= 0, measured_bevel > 0),
    "Off square by {measured_bevel}, and that does not say to which side: look with a try square.",
    change=measured_bevel,
)
_tilted = And(edge_bevel > 0, edge_bevel <= degrees(45))
_on_edge = edge_bevel > degrees(45)
_followed = And(setup.near(tilt_move), _tilted)
wide_as_cut = setup.after(
    "wide_as_cut", "Wide board, blade to fence for the bevel as cut", wide_rip - thickness * tand(measured_bevel), when=_followed
)
narrow_as_cut = setup.after(
    "narrow_as_cut", "Narrow board, blade to fence for the bevel as cut", narrow_rip - thickness * tand(measured_bevel), when=_followed
)
setup.trial(
    "Saw the peak edge of a scrap and cut it in two. Hold the sawn edge of one half against the inside face of the other, over the peak or a pattern of it: "
    "the joint closes along its whole face.",
    when=And(_lapped, edge_bevel > 0),
)
setup.trial(
    "Hold two scraps over the peak, or a pattern of it, the edge of one against the face of the other: the joint closes.", when=edge_bevel <= 0
)
setup.trial(
    "Saw the peak edge of a scrap, cut it in two and hold the sawn edges together over the peak, or a pattern of it: the joint closes along its whole face.",
    when=_mitred,
)

# At the machine

setup.step("Look the whole board over for nails, and its ends for checks. Joint one edge.")
setup.step(
    "Blade square: rip the wide board {wide_rip}, then the narrow one {narrow_rip}. Mark which is which, and the outside face of each.", when=_lapped
)
setup.step("Blade square: rip both boards {wide_rip}. Mark the outside face of each.", when=_mitred)
setup.step("Unplug the saw. Tilt the blade {edge_bevel}, leaning away from the fence. Try it on scrap.", when=_tilted)
setup.step(
    "Unplug the saw. Tilt the blade {edge_tilt}, leaning away from a tall wooden fence, and bring the fence up until the two just meet at the table."
)
setup.step(
    "Stand each board on edge, peak edge down, inside face to the fence: it keeps its whole width. Raise the blade until it comes out of the outside face; try it on scrap.",
    when=And(_on_edge, wide_inside > wide_outside),
)
setup.step(
    "Stand each board on edge, peak edge down, outside face to the fence: it keeps its whole width. Raise the blade until it comes out of the inside face; try it on scrap.",
    when=And(_on_edge, wide_inside < wide_outside),
)
setup.step(
    "Bevel the peak edge, inside face up: it keeps its whole width. Blade to fence at the table is the outside face: {wide_outside} for the wide board, {narrow_outside} for the narrow one.",
    when=And(_tilted, wide_inside > wide_outside),
)
setup.step(
    "Bevel the peak edge, outside face up: it keeps its whole width. Blade to fence at the table is the inside face: {wide_inside} for the wide board, {narrow_inside} for the narrow one.",
    when=And(_tilted, wide_inside < wide_outside),
)
setup.step("Check the cover on a scrap of roof: {cover} from the peak to the lower edge on both sides.")
setup.step("Fasten the narrow board first, its edge bedded in sealant; then the wide board over its edge.", when=_lapped)
setup.step("Bed the joint in sealant and fasten both boards together along the peak.", when=_mitred)

# What is run

_boards = ("Wide cap board", "Narrow cap board", "Cap board")
setup.run("mill", thickness, parts=_boards)
setup.run("crosscut", cap_length, parts=_boards)
setup.run("rip", wide_rip, parts=("Wide cap board", "Cap board"))
setup.run("rip", narrow_rip, parts=("Narrow cap board",))
setup.operation("tilt", "rip", "Blade tilt, on scrap", edge_bevel, face="Flat on the table.", reading=measured_bevel, when=_tilted)
# mitred, the outside face is the longer at every peak
for _board, _part, _up, _fence, _way in (
    ("wide", "Wide cap board", "Inside", wide_outside, wide_inside > wide_outside),
    ("wide", "Wide cap board", "Outside", wide_inside, wide_inside <= wide_outside),
    ("narrow", "Narrow cap board", "Inside", narrow_outside, narrow_inside > narrow_outside),
    ("narrow", "Narrow cap board", "Outside", narrow_inside, narrow_inside <= narrow_outside),
    ("both", "Cap board", "Outside", wide_inside, _mitred),
):
    setup.operation(
        f"{_board}_{_up.lower()}_up",
        "rip",
        "Bevel both boards" if _board == "both" else f"Bevel the {_board} board",
        edge_bevel,
        ("Fence to blade, at the table", _fence),
        face=f"{_up} face up, lower edge to the fence. The blade leans away from it.",
        parts=[_part],
        when=And(_tilted, _way),
    )
for _to_fence, _way in (("Inside", wide_inside > wide_outside), ("Outside", wide_inside < wide_outside)):
    setup.operation(
        f"on_edge_{_to_fence.lower()}",
        "rip",
        "Bevel both boards on edge",
        edge_tilt,
        face=f"{_to_fence} face to a tall fence, peak edge down.",
        parts=_boards,
        reading=measured_bevel,
        when=And(_on_edge, _way),
    )

for _name, _face, _way in (
    ("fit_lapped", "Cover checked on a scrap of roof. The narrow board first, its edge bedded in sealant; the wide one over its edge.", _lapped),
    ("fit_mitred", "Cover checked on a scrap of roof. Joint bedded in sealant, both boards fastened together along the peak.", _mitred),
):
    setup.operation(
        _name, "fit", "Fit the ridge cap", ("Cover, peak to lower edge", wide_outside), machine="bench", face=_face, parts=_boards, when=_way
    )

# The picture: the cap seen from the gable

_left = (-cosd(pitch_left), -sind(pitch_left))
_right = (cosd(pitch_right), -sind(pitch_right))
_under_left = (sind(pitch_left), -cosd(pitch_left))
_under_right = (-sind(pitch_right), -cosd(pitch_right))


def _on_left(along: Any, under: Any = 0) -> Point:
    """A point of the left board: so far down its slope, so far under its outside face."""
    return (_left[0] * along + _under_left[0] * under, _left[1] * along + _under_left[1] * under)


def _on_right(along: Any, under: Any = 0) -> Point:
    """A point of the right board."""
    return (_right[0] * along + _under_right[0] * under, _right[1] * along + _under_right[1] * under)


setup.picture(
    "The cap seen from the gable: the wide board at the left, the narrow one at the right, outside faces measured.",
    area("end-grain", _on_left(0), _on_left(cover), _on_left(cover, thickness), _on_left(cover - wide_inside, thickness)),
    area(
        "end-grain",
        _on_right(cover - narrow_outside),
        _on_right(cover),
        _on_right(cover, thickness),
        _on_right(cover - narrow_inside, thickness),
    ),
    slant(wide_outside, _on_left(0), _on_left(cover), (-_under_left[0], -_under_left[1])),
    slant(narrow_outside, _on_right(cover - narrow_outside), _on_right(cover), (-_under_right[0], -_under_right[1])),
    turn(inside_angle, (0, 0), _left, _right, row=3),
)

setup.source("Geometry of two slabs of one thickness that meet at the inside angle 180\u00b0 \u2212 left pitch \u2212 right pitch.")
setup.source("Saw tilt of 45\u00b0 at most: " + NO_SOURCE + ".")

setup.onward("rafter", "The rafter under it", pitch=(pitch_left, pitch_right), cap_thickness=thickness, cap_inside=narrow_inside)
