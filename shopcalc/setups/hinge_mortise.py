"""A butt hinge let in with a router: how deep for the gap wanted, and the template for the bushing."""

from typing import Any

from sympy import And, Eq, Not, Or

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import Point, area, box, dimension, label, line
from shopcalc.terms import inches, larger, number, pick, smaller

setup = Setup(
    slug="hinge-mortise",
    title="Hinge mortise",
    stand="at the bench",
    job="How deep a hinge is let in so that the closed gap comes out as wanted, in one part or in both, and the router template for it.",
    machines=("router with guide bushing", "bench"),
    icon="M3 4h7v16H3zM14 4h7v16h-7zM10 7h4M10 12h4M10 17h4",
)

# What is measured

leaf = setup.length("leaf", "Leaf on the moving part", "3/32", "Calipers across the leaf that goes on the door or lid, clear of the screw holes.")
other_leaf = setup.length(
    "other_leaf", "Leaf on the fixed part", "3/32", "Calipers across the leaf that goes on the frame or box, clear of the screw holes."
)
closed_gap = setup.length(
    "closed_gap",
    "Between the leaves, parallel",
    "1/32",
    "Close the hinge until its leaves are parallel: calipers over both, less the two leaves. 0 if they touch.",
    zero=True,
)
gap = setup.length(
    "gap",
    "Gap wanted",
    "3/32",
    "Between the edges of the two parts on the hinge side when it is shut: try feeler gauges or a coin in a joint you like.",
    zero=True,
)
cut_in = setup.choice(
    "cut_in",
    "Let the hinge into",
    "Both: each leaf gets half. One part: its mortise is deeper, and the other leaf is screwed on the surface.",
    both="both parts, half each",
    moving_part="the moving part only",
    fixed_part="the fixed part only",
)
hinge_length = setup.length("hinge_length", "Hinge length", "3", "Calipers along the leaf, end to end, at its longest.")
leaf_width = setup.length(
    "leaf_width",
    "Leaf on the wood",
    "1 1/8",
    "Lay the leaf on the edge with the knuckle where it is to stand: from the face of the part to the far edge of the leaf.",
)
bit = setup.length("bit", "Router bit", "1/2", "Calipers across the cutting edges, at their widest.", shop=True)
collar = setup.length(
    "collar", "Guide bushing, outside", "3/4", "Outside jaws across the part of the bushing that runs along the template.", shop=True
)

# What follows from the hinge

_both = cut_in.is_("both")
_total = leaf + other_leaf + closed_gap - gap
depth_moving = setup.size(
    "depth_moving",
    "Moving part, let in by",
    pick((_total / 2, _both), (_total, cut_in.is_("moving part")), otherwise=0),
    division="64",
)
depth_fixed = setup.size(
    "depth_fixed",
    "Fixed part, let in by",
    pick((_total / 2, _both), (_total, cut_in.is_("fixed part")), otherwise=0),
    division="64",
)

# What to set

rout_moving = setup.setting("rout_moving", "Mortise depth, moving part", depth_moving, division="64", when=depth_moving > 0)
rout_fixed = setup.setting("rout_fixed", "Mortise depth, fixed part", depth_fixed, division="64", when=depth_fixed > 0)
shim_moving = setup.setting("shim_moving", "No mortise: shim under the leaf, moving part", -depth_moving, rounding="none", when=depth_moving < 0)
shim_fixed = setup.setting("shim_fixed", "No mortise: shim under the leaf, fixed part", -depth_fixed, rounding="none", when=depth_fixed < 0)
_let_in = _total > 0
template_offset = setup.size("template_offset", "Edge of the cut inside the template, each side", (collar - bit) / 2, when=_let_in)
template_length = setup.setting("template_length", "Template opening, length", hinge_length + 2 * template_offset)
template_width = setup.setting("template_width", "Template opening, from the face inward", leaf_width + template_offset)
corner_radius = setup.size("corner_radius", "Radius left in the corners", bit / 2, when=_let_in)

# What can go wrong

_template = (template_offset, template_length, template_width)
setup.stop(
    "bit_in_collar",
    And(_let_in, collar <= bit),
    "A bit of {bit} does not pass through a bushing that is {collar} outside: take a wider bushing or a smaller bit.",
    change=collar,
    spoils=_template,
)
setup.stop(
    "bit_too_wide",
    And(_let_in, bit > hinge_length),
    "The bit, {bit}, is wider than the hinge is long, {hinge_length}.",
    change=bit,
    spoils=(*_template, corner_radius),
)
setup.caution(
    "bit_over_edge",
    And(_let_in, bit > leaf_width, bit <= hinge_length),
    "The bit, {bit}, is wider than the leaf, {leaf_width}: it hangs over the open face and tears it. Take a smaller one.",
    change=bit,
)
setup.caution(
    "thin_bushing",
    template_offset < inches("1/16"),
    "The bit runs only {template_offset} from the outside of the bushing: chips jam there, and a bit a little off centre touches it.",
    change=collar,
)
setup.caution(
    "deep_pass",
    larger(depth_moving, depth_fixed) > bit / 2,
    "The mortise is deeper than half of the bit, {bit}: rout it in passes no deeper than that.",
    change=bit,
)
setup.caution(
    "tight_gap",
    gap < inches("1/32"),
    "A gap of {gap} is closed by paint or one damp season.",
    change=gap,
)
setup.note(
    "sunk_moving",
    And(depth_moving > leaf, Not(_both)),
    "At {depth_moving} the mortise in the moving part is deeper than its leaf, {leaf}: as it should be where the other leaf lies on the surface. "
    "Check that the screws still bite.",
    change=cut_in,
    source=NO_SOURCE,
)
setup.note(
    "sunk_fixed",
    And(depth_fixed > other_leaf, Not(_both)),
    "At {depth_fixed} the mortise in the fixed part is deeper than its leaf, {other_leaf}: as it should be where the other leaf lies on the surface. "
    "Check that the screws still bite.",
    change=cut_in,
    source=NO_SOURCE,
)
setup.note(
    "sunk_both",
    And(_both, Or(depth_moving > leaf, depth_fixed > other_leaf)),
    "Let in {depth_moving} a leaf lies below the surface: the gap of {gap} is less than the closed hinge keeps, or one leaf is thinner. "
    "Check that the hinge does not bind and the screws still bite.",
    change=gap,
    source=NO_SOURCE,
)
setup.note(
    "shimmed",
    _total < 0,
    "On the surface this hinge keeps less than {gap} between the parts: it is packed up with a shim, not let in. Longer screws for what the shim takes.",
    change=gap,
)
setup.note("on_the_surface", Eq(_total, 0), "On the surface this hinge keeps just {gap}: nothing is cut.", change=gap)

# The trial cut

measured_gap = setup.reading(
    "measured_gap",
    "Gap as it measures",
    "Both leaves screwed to scraps, closed until the leaves are parallel: feeler gauges between the scraps, beside the leaves.",
)
measured_length = setup.reading("measured_length", "Trial mortise, length", "Inside jaws of the calipers along the mortise, from end to end.")
_move = (measured_gap - gap) / pick((2, _both), otherwise=1)
_look = "See that the leaves are parallel and down on the wood."
depth_move = setup.correction(
    "depth_move",
    "Depth of each leaf let in",
    _move,
    more="Gap too wide: seat each leaf that is let in {size} deeper.",
    less="Gap too narrow: seat each leaf that is let in {size} less deep, or lay card of that thickness under it.",
    when=_total > 0,
    far=inches("1/16"),
    look=_look,
)
shim_move = setup.correction(
    "shim_move",
    "Shim of each leaf that has one",
    _move,
    more="Gap too wide: seat the leaf, or both where both parts are chosen, {size} deeper: on a thinner shim, on none, or let in.",
    less="Gap too narrow: lay {size} more of shim under the leaf, or under both where both parts are chosen.",
    when=_total <= 0,
    far=inches("1/16"),
    look=_look,
)
length_move = setup.correction(
    "length_move",
    "Template opening, length",
    measured_length - hinge_length,
    more="Mortise too long: make the template opening {size} shorter.",
    less="Mortise too short: make the template opening {size} longer.",
    when=larger(depth_moving, depth_fixed) > 0,
    far=inches("1/8"),
)
# where both leaves are let in they sit alike; what comes out below nothing is a shim
_seat = pick((depth_fixed, cut_in.is_("fixed part")), otherwise=depth_moving) + _move
_near = Or(setup.near(depth_move), setup.near(shim_move))
depth_again = setup.after("depth_again", "Mortise depth for the next trial", _seat, when=And(_near, _seat > 0))
shim_again = setup.after("shim_again", "No mortise: shim for the next trial", -_seat, when=And(_near, _seat < 0))
template_again = setup.after(
    "template_again", "Template opening for the next trial", template_length - length_move, when=template_length > length_move
)
setup.trial("Hang the hinge on scraps of both parts, shims too. Leaves parallel, measure the gap.")
setup.trial("Measure the length of the mortise too.", when=larger(depth_moving, depth_fixed) > 0)

# At the bench

_routed = And(_let_in, collar > bit, bit <= hinge_length)
_only_fixed = And(_routed, depth_moving <= 0)
setup.step("Mark the ends of the hinge on both parts together, one against the other, and knife the lines: {hinge_length} apart.")
setup.step(
    "Fix a strip under the template as a fence against the face of the part. Cut the opening {template_length} long, its back {template_width} from that fence, open toward it.",
    when=_routed,
)
setup.step("Fit the bit of {bit} in the bushing of {collar}: the cut stays {template_offset} inside the template all round.", when=_routed)
# let into both parts, both mortises have one depth
setup.step(
    "Router on the template, bit just touching the wood: that is zero. Set the depth stop {rout_moving} below it.",
    when=And(_routed, depth_moving > 0),
)
setup.step("Router on the template, bit just touching the wood: that is zero. Set the depth stop {rout_fixed} below it.", when=_only_fixed)
_rout_in = "Rout in from the open face, then clockwise round the inside of the template, seen from above."
setup.step("Rout a scrap with the template's fence against its face. Hang the hinge on the scraps, measure, correct.", when=_routed)
setup.step(
    "Moving part: template's fence against its face, each end of the opening {template_offset} outside its knife line. " + _rout_in,
    when=And(_routed, depth_moving > 0),
)
setup.step("Fixed part: the same, fence against the face that comes flush with it.", when=And(_routed, depth_fixed > 0, depth_moving > 0))
setup.step(
    "Fixed part: template's fence against the face that comes flush with the moving part, each end of the opening {template_offset} outside its knife line. "
    + _rout_in,
    when=_only_fixed,
)
setup.step("Square the corners with a chisel: the bit leaves a radius of {corner_radius}. Or take a hinge whose corners have it.", when=_routed)
setup.step("Moving part: no mortise; put a shim of {shim_moving} under the whole leaf.")
setup.step("Fixed part: no mortise; put a shim of {shim_fixed} under the whole leaf.")
setup.step("One screw in each leaf, close it, look at the gap: {gap} from end to end. Then drill and drive the rest.")

# What is run

setup.operation(
    "template",
    "hinges",
    "Cut the template",
    template_length,
    template_width,
    machine="bench",
    face="Open at the edge along the face.",
    reading=measured_length,
    when=_routed,
)
setup.operation(
    "rout",
    "hinges",
    "Rout the mortises",
    rout_moving,
    rout_fixed,
    machine="router",
    face="Template's fence to the face of the part. The top hinge's mortises first; the others, and the tick, once the door has hung on it.",
    reading=measured_gap,
    when=_routed,
)
setup.operation("shim", "hinges", "Shim the hinges", shim_moving, shim_fixed, machine="bench", face="Under the whole leaf.", reading=measured_gap)

# The pictures

_in_moving = larger(depth_moving, 0)
_in_fixed = larger(depth_fixed, 0)
_side = 2 * (leaf + other_leaf + closed_gap + gap)
_long = leaf_width * number("4/3")
_r = (leaf + other_leaf + closed_gap) / 2
# sixteen points of a circle, near enough for a picture
_ROUND = [("1", "0"), ("0.924", "0.383"), ("0.707", "0.707"), ("0.383", "0.924")]
_QUARTER = [(number(x), number(y)) for x, y in _ROUND]


def _circle(x: Any, y: Any, radius: Any) -> list[Point]:
    """A circle as sixteen points, anticlockwise."""
    points: list[Point] = []
    for turn_x, turn_y in ((1, 0), (0, 1), (-1, 0), (0, -1)):
        points += [(x + radius * (a * turn_x - b * turn_y), y + radius * (a * turn_y + b * turn_x)) for a, b in _QUARTER]
    return points


_middle = (leaf - depth_moving) + closed_gap / 2
setup.picture(
    "The joint shut, cut across: moving part at the left, fixed part at the right, their faces with the knuckle at the top.",
    area("wood", (-_side, 0), (-_in_moving, 0), (-_in_moving, -leaf_width), (0, -leaf_width), (0, -_long), (-_side, -_long)),
    area(
        "wood",
        (gap + _side, 0),
        (gap + _in_fixed, 0),
        (gap + _in_fixed, -leaf_width),
        (gap, -leaf_width),
        (gap, -_long),
        (gap + _side, -_long),
    ),
    box("block", 0, -leaf_width, -depth_moving, leaf_width, when=depth_moving < 0),
    box("block", gap + depth_fixed, -leaf_width, -depth_fixed, leaf_width, when=depth_fixed < 0),
    box("metal", -depth_moving, -leaf_width, leaf, leaf_width + _r),
    box("metal", gap + depth_fixed - other_leaf, -leaf_width, other_leaf, leaf_width + _r),
    area("metal", *_circle(_middle, _r, _r)),
    line("face", (-_side, 0), (-_in_moving, 0)),
    line("face", (gap + _in_fixed, 0), (gap + _side, 0)),
    dimension(leaf, (-depth_moving, 0), (leaf - depth_moving, 0), "above", text="leaf"),
    dimension(other_leaf, (gap + depth_fixed - other_leaf, 0), (gap + depth_fixed, 0), "above", row=2, text="other leaf"),
    dimension(gap, (0, -_long), (gap, -_long), "below", text="gap"),
    dimension(rout_moving, (-depth_moving, -leaf_width), (0, -leaf_width), "below", row=2, text="moving"),
    dimension(rout_fixed, (gap, -leaf_width), (gap + depth_fixed, -leaf_width), "below", row=3, text="fixed"),
    dimension(shim_moving, (0, -leaf_width), (-depth_moving, -leaf_width), "below", row=2, text="shim"),
    dimension(shim_fixed, (gap + depth_fixed, -leaf_width), (gap, -leaf_width), "below", row=3, text="shim"),
    dimension(leaf_width, (-_side, -leaf_width), (-_side, 0), "left"),
)
_corner = smaller(bit / 2, leaf_width)
_cut = And(_total > 0, template_length > 0)
_rim = larger(template_offset * 2, hinge_length / 8)


def _rounded(x: Any, hand: int) -> list[Point]:
    """A corner of the mortise as the bit leaves it, clockwise: at the left (-1) or the right (1)."""
    points: list[Point] = [(x + hand * _corner * (a - 1), leaf_width + _corner * (b - 1)) for a, b in (*_QUARTER, (0, 1))]
    return points if hand < 0 else points[::-1]


setup.picture(
    "The template on the edge of the part, seen from above: the face at the bottom, the waste hatched, bit and bushing in a corner.",
    box("wood", -template_offset - _rim, 0, template_length + 2 * _rim, template_width + _rim, when=_cut),
    area(
        "block",
        (-template_offset - _rim, 0),
        (-template_offset, 0),
        (-template_offset, template_width),
        (hinge_length + template_offset, template_width),
        (hinge_length + template_offset, 0),
        (hinge_length + template_offset + _rim, 0),
        (hinge_length + template_offset + _rim, template_width + _rim),
        (-template_offset - _rim, template_width + _rim),
        when=_cut,
    ),
    area("waste", (0, 0), *_rounded(0, -1), *_rounded(hinge_length, 1), (hinge_length, 0), when=_cut),
    area("metal", *_circle(bit / 2, leaf_width - bit / 2, collar / 2), when=_cut),
    area("blade", *_circle(bit / 2, leaf_width - bit / 2, bit / 2), when=_cut),
    line("hidden", (0, 0), (0, leaf_width), (hinge_length, leaf_width), (hinge_length, 0), when=_cut),
    line("face", (-template_offset - _rim, 0), (hinge_length + template_offset + _rim, 0), when=_cut),
    dimension(template_length, (-template_offset, template_width), (hinge_length + template_offset, template_width), "above"),
    dimension(hinge_length, (0, 0), (hinge_length, 0), "below"),
    dimension(template_offset, (hinge_length, 0), (hinge_length + template_offset, 0), "below", row=2),
    dimension(template_width, (hinge_length + template_offset, 0), (hinge_length + template_offset, template_width), "right"),
    dimension(leaf_width, (0, 0), (0, leaf_width), "left"),
    label("mortise", (hinge_length * number("3/5"), leaf_width / 2)),
)

setup.source(
    "Geometry: with the leaves parallel, gap + both depths = both leaves + what is between them. A bushing keeps the bit (bushing \u2212 bit) / 2 from the template."
)
setup.source("Half of a butt hinge cut into the door and half into the jamb: ICS, Building Trades Pocketbook.")
setup.source(
    "A gap of 1/32 in or more, 1/16 in of bushing round the bit, passes no deeper than half of the bit, a deeper mortise for a leaf on the surface: "
    + NO_SOURCE
    + "."
)

setup.onward("door-edge", "The bevel of the door's other edge", gap_hinge=gap)
setup.onward("screw", "The holes for its screws")
setup.onward("hinge-layout", "Where the hinges go", hinge_length=hinge_length)
