"""A rabbet along an edge: in one pass of a dado head, or in two cuts of a single blade."""

from sympy import And, Not

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import area, box, dimension, label, line
from shopcalc.terms import inches, larger, smaller, whole_below

setup = Setup(
    slug="rabbet",
    title="Rabbet",
    stand="at the saw",
    job="A step along an edge: one pass of a dado head beside a sacrificial fence, or two cuts of one blade, flat and then on edge.",
    machines=("table saw", "non-through cut"),
    icon="M4 4h8v8h8v8H4z",
)

# What is measured

width = setup.length("width", "Rabbet width", "3/8", "Across the face, from the edge to the shoulder: by calipers on the part that is to lie in it.")
depth = setup.length("depth", "Rabbet depth", "3/8", "From the face down to the bottom of the step: by calipers on the part that is to lie in it.")
stock = setup.length("stock", "Stock thickness", "3/4", "Calipers across the piece as it came off the planer, not the size it was sold as.")
kerf = setup.length("kerf", "Blade kerf", "1/8", "Only for the two cuts: run the blade in scrap and put the inside jaws in the slot.", shop=True)
method = setup.choice(
    "method",
    "How it is cut",
    "By what is on the arbor. A piece on edge wants a tall fence.",
    dado="dado head: one pass, flat",
    two_cuts="one blade: flat, then on edge",
)
head = setup.length("head", "Dado head", "3/4", "As wide as it cuts: run it in scrap and put the inside jaws in the slot.", when=method.is_("dado"))

# What to set

_dado = method.is_("dado")
_two = method.is_("two cuts")
_one = And(_dado, width <= head)
_passes = And(_dado, width > head)
# what may stand out of a pocket that is cut with an eighth less of it, a sixteenth at least
_pocket = inches("3/16")

exposed = setup.setting("exposed", "Cutter exposed beside the sacrificial fence", smaller(width, head), when=_dado)
blade_height = setup.setting("blade_height", "Cutter height", depth, when=_dado)
second_pass = setup.setting("second_pass", "Last pass: fence away from the cutter, in all", width - head, when=_passes)
first_fence = setup.setting("first_fence", "First cut, flat: fence to near side of blade", width - kerf, when=_two)
first_height = setup.setting("first_height", "First cut, flat: blade height", depth, when=_two)
second_fence = setup.setting("second_fence", "Second cut, on edge: fence to near side of blade", stock - depth, when=_two)
second_height = setup.setting("second_height", "Second cut, on edge: blade height", width, when=_two)
lip = setup.size("lip", "Lip left under the rabbet", stock - depth)
passes = setup.size("passes", "Passes", whole_below(width / head) + 1, kind="count", when=_passes)

setup.machine("dado head", when=_dado)
setup.machine("on edge", when=_two)

# What can go wrong

setup.stop("no_lip", depth >= stock, "A rabbet {depth} deep leaves nothing of a piece {stock} thick.", change=depth)
setup.stop(
    "blade_in_fence",
    And(_two, width <= kerf),
    "A rabbet {width} wide is no wider than the kerf, {kerf}: the blade of the first cut would stand in the fence. "
    "Choose the dado head, whose fence is there to be cut, or a thinner blade.",
    change=method,
)
setup.caution(
    "fence_at_blade",
    And(_two, width > kerf, first_fence < inches("1/8")),
    "The fence stands {first_fence} from the blade: as it is locked or pressed on it can touch the teeth. Choose the dado head, whose fence is there to be cut, "
    "or a thinner blade.",
    change=method,
)
setup.caution(
    "tall_fence_at_blade",
    And(_two, lip > 0, second_fence < inches("1/8")),
    "For the second cut the tall fence stands {second_fence} from the blade: as it is pressed on it can touch the teeth. "
    "Choose the dado head, or leave a thicker lip.",
    change=depth,
)
setup.caution("thin_lip", lip < inches("1/4"), "A lip of {lip} is thinner than {1/4 in}: it splits off along the corner.", change=depth)
setup.caution("deep_rabbet", depth > 2 * stock / 3, "The rabbet is deeper than two thirds of the stock, {stock}.", change=depth)
# common practice: an 8 in dado head, a 10 in blade
setup.caution(
    "past_the_head",
    And(_dado, depth > inches(2)),
    "Cutter height {blade_height}: an 8 in dado head stands some {2 in} out of the table. Look at the depth.",
    change=depth,
)
setup.caution(
    "past_the_blade",
    And(_two, larger(depth, width) > inches(3)),
    "Blade heights {first_height} and {second_height}: a 10 in blade stands little more than {3 in} out of the table. Look at width and depth.",
    change=width,
)
setup.note(
    "wide_for_dado",
    _passes,
    "{width} is wider than the dado head, {head}: it is cut in {passes} passes, the outer part first.",
    change=head,
)
setup.caution(
    "unsteady_on_edge",
    And(_two, stock < inches("1/2")),
    "A piece {stock} thick does not stand safely on its edge: use the dado head, or rabbet a thicker piece and plane it.",
    change=method,
)
setup.note(
    "loose_strip",
    And(_two, depth > kerf),
    "The second cut frees a strip. It must fall outside the blade, never between blade and fence: stand out of its line.",
    change=method,
    source=NO_SOURCE,
)

# The trial cut

measured_width = setup.reading(
    "measured_width", "Rabbet width as it measures", "Depth rod of the calipers in the step, from the edge to the shoulder."
)
measured_depth = setup.reading(
    "measured_depth", "Rabbet depth as it measures", "Depth rod of the calipers from the face to the bottom, near the shoulder."
)
setup.correction(
    "exposed_move",
    "Sacrificial fence",
    measured_width - exposed,
    more="Too wide: motor off, move the fence {size} further over the cutter, into the pocket.",
    less="Too narrow: motor off, move the fence {size} back off the cutter.",
    when=And(_one, exposed > _pocket),
    far=inches("1/8"),
)
# so little stands out that the pocket's wall lies on the cutter
setup.correction(
    "pocket_move",
    "Sacrificial fence",
    measured_width - exposed,
    more="Too wide: lower the cutter, move the fence {size} further over it, and raise the spinning cutter into it again.",
    less="Too narrow: motor off, move the fence {size} back off the cutter.",
    when=And(_one, exposed <= _pocket),
    far=inches("1/8"),
)
# a slip of the calipers is told as one, and is no wider head
_no_move_left = And(measured_width > width + second_pass, measured_width <= width + inches("1/8"))
fence_move = setup.correction(
    "fence_move",
    "Fence at the last pass",
    measured_width - (second_pass + exposed),
    more="Too wide: at the last pass move the fence {size} less.",
    less="Too narrow: at the last pass move the fence {size} more.",
    when=Not(_no_move_left),
    far=inches("1/8"),
)
setup.caution(
    "head_wider",
    _no_move_left,
    "Even with no last pass the rabbet would be too wide: the head cuts more than {head}. Run it in scrap, and type in how wide it cuts.",
    change=head,
    source="",
)
setup.correction(
    "height_move",
    "Cutter",
    measured_depth - blade_height,
    more="Too deep: lower the cutter {size}.",
    less="Too shallow: raise the cutter {size} with the motor on: it cuts its own room in the fence.",
    far=inches("1/8"),
)
setup.correction(
    "first_move",
    "Fence of the first cut",
    measured_width - (first_fence + kerf),
    more="Too wide: move the fence of the first cut {size} toward the blade.",
    less="Too narrow: move the fence of the first cut {size} away from the blade.",
    far=inches("1/8"),
)
setup.correction(
    "second_move",
    "Fence of the second cut",
    measured_depth - (stock - second_fence),
    more="Too deep: move the fence of the second cut {size} away from the blade.",
    less="Too shallow: move the fence of the second cut {size} toward the blade.",
    far=inches("1/8"),
)
setup.after(
    "second_pass_again",
    "Fence away from the cutter, next trial",
    second_pass - fence_move,
    when=And(setup.near(fence_move), second_pass > fence_move),
)
setup.after("lip_as_cut", "Lip as cut", stock - measured_depth, when=measured_depth < stock)
setup.trial("Cut the whole rabbet in a scrap planed with the stock. Type in its width along the face and its depth.")

# At the machine

_clamp = "Lower the cutter below the table. Clamp to the saw's fence a sacrificial one of wood, thicker than what it will cover of the cutter. "

setup.step("Plane every piece together to one thickness of {stock}. Mark the face and the edge that get the rabbet.")
setup.step(
    _clamp
    + "Lock it so that {1/8 in} less of the cutter will stand out than is wanted; then raise the spinning cutter into it to {blade_height}. The pocket leaves room to move the fence either way.",
    when=exposed > _pocket,
)
# so little stands out that the pocket must be open in front from the first
setup.step(
    _clamp + "Lock it so that {exposed} of the cutter comes out beside it; then raise the spinning cutter into it to {blade_height}.",
    when=exposed <= _pocket,
)
setup.step(
    "Motor off: draw the fence back so that {exposed} of the cutter stands out beside it, to a tooth that leans away from the fence. Lock it.",
    when=And(_one, exposed > _pocket),
)
setup.step("Motor off: check the {exposed}, to a tooth that leans away from the fence.", when=And(_one, exposed <= _pocket))
setup.step("Marked face down, marked edge against the fence: cut the scrap, measure, correct. Then cut every piece.", when=_one)
setup.step(
    "Motor off: draw the fence back so that the whole cutter, {exposed}, stands out beside it, just grazing it. Lock it.",
    when=And(_passes, exposed > _pocket),
)
setup.step("Motor off: see that the whole cutter, {exposed}, stands out beside the fence, just grazing it.", when=And(_passes, exposed <= _pocket))
setup.step("First pass, the outer part. Marked face down, marked edge against the fence: the scrap and every piece.", when=_passes)
setup.step("Move the fence {second_pass} away from the cutter.", when=second_pass < head)
setup.step(
    "Move the fence away from the cutter by less than {head} at a time, {second_pass} in all. Run scrap and pieces after each move but the last.",
    when=second_pass >= head,
)
setup.step("Run the scrap, measure, correct. Then run every piece.", when=_passes)
setup.step(
    "First cut. Set the blade {first_height} high and the fence {first_fence} from its near side. Marked face down, marked edge against the fence: "
    "this cuts the shoulder."
)
setup.step("Cut the shoulder on the scrap and on every piece before anything is moved.", when=_two)
setup.step(
    "Second cut. Screw a tall board to the fence. Set the blade {second_height} high, just to the shoulder cut, the face of the board {second_fence} from the near side of the blade."
)
setup.step(
    "Marked edge down, the face opposite the marked one against the fence: the waste is outside the blade and falls free. Try the scrap, measure, correct.",
    when=And(_two, depth > kerf),
)
setup.step(
    "Marked edge down, the face opposite the marked one against the fence: the blade takes all that is left. Try the scrap, measure, correct.",
    when=And(_two, depth <= kerf),
)
# the height of each cut follows the size it belongs to
setup.step("Look into the corner. A ridge: a blade is too low. A nick: it is too high.", when=_two)
setup.step("Guard and riving knife back on. Try the part that is to lie in the rabbet.")

# What is run

_marked = "Marked face down, marked edge to the sacrificial fence, whose pocket is cut first, as its card says."
setup.run("mill", stock)
setup.operation("height", "groove and rabbet", "Cutter height, on scrap", blade_height, face=_marked, reading=measured_depth)
setup.operation("rabbet", "groove and rabbet", "Rabbet", exposed, blade_height, face=_marked, reading=measured_width, when=_one)
# a last pass is told from its first: passes are run together only where both are the same
setup.operation(
    "first_pass",
    "groove and rabbet",
    "Rabbet, first pass",
    exposed,
    blade_height,
    ("For the last pass then", second_pass),
    face=_marked,
    when=_passes,
)
setup.operation(
    "last_pass",
    "groove and rabbet",
    "Rabbet, last pass",
    second_pass,
    ("Exposed at the first", exposed),
    blade_height,
    face=_marked,
    reading=measured_width,
    when=_passes,
)
setup.operation(
    "first",
    "groove and rabbet",
    "Rabbet, first cut",
    first_fence,
    first_height,
    face="Marked face down, marked edge to the fence.",
    reading=measured_width,
)
setup.operation(
    "second",
    "groove and rabbet",
    "Rabbet, second cut",
    second_fence,
    second_height,
    face="Marked edge down, the other face to the fence.",
    reading=measured_depth,
)

# The pictures: each rests on the settings of its own method, so that only one method is drawn

_wide = larger(width, exposed)
_flat = larger(2 * _wide, 2 * stock)
_left = larger(head, exposed) + stock / 2
setup.picture(
    "Dado head, seen from the end of the piece: it lies flat on its marked face beside the sacrificial fence; the last pass of several dashed.",
    box("table", -_left, -stock / 6, _flat + _left, stock / 6),
    box("fence", -_left, 0, _left, 2 * stock),
    area("end-grain", (0, blade_height), (_wide, blade_height), (_wide, 0), (_flat, 0), (_flat, stock), (0, stock)),
    box("waste", 0, 0, _wide, blade_height),
    box("blade", exposed - head, -stock / 6, head, blade_height + stock / 6),
    box("ghost", second_pass, -stock / 6, exposed, blade_height + stock / 6),
    line("face", (_wide, 0), (_flat, 0)),
    dimension(exposed, (0, 0), (exposed, 0), "below"),
    dimension(width, (0, 0), (_wide, 0), "below", row=2, text="rabbet"),
    dimension(second_pass, (exposed, 0), (_wide, 0), "below", text="fence"),
    dimension(blade_height, (_flat, 0), (_flat, blade_height), "right"),
    dimension(stock, (_flat, 0), (_flat, blade_height + lip), "right", row=2),
    label("fence", (-_left / 2, stock * 3 / 2)),
)
_long = larger(2 * second_height, 2 * stock)
setup.picture(
    "First cut, seen from the end of the piece: it lies flat on its marked face, the marked edge against the fence, the blade cuts the shoulder.",
    box("table", -stock, -stock / 6, _long + stock, stock / 6),
    box("fence", -stock, 0, stock, 2 * stock, when=first_fence > 0),
    box("end-grain", 0, 0, _long, stock),
    box("waste", 0, 0, first_fence + kerf, first_height),
    box("blade", first_fence, -stock / 6, kerf, first_height + stock / 6),
    line("face", (first_fence + kerf, 0), (_long, 0)),
    dimension(first_fence, (0, 0), (first_fence, 0), "below"),
    dimension(width, (0, 0), (first_fence + kerf, 0), "below", row=2),
    dimension(first_height, (_long, 0), (_long, first_height), "right"),
    dimension(stock, (_long, 0), (_long, stock), "right", row=2),
    label("fence", (-stock / 2, 3 * stock / 2), when=first_fence > 0),
)
setup.picture(
    "Second cut, seen from the end of the piece: it stands on the marked edge, its other face against the fence, and the waste falls outside the blade.",
    box("table", -stock, -stock / 6, 3 * stock + second_fence, stock / 6),
    box("fence", -stock, 0, stock, _long),
    area(
        "end-grain",
        (0, 0),
        (second_fence, 0),
        (second_fence, second_height),
        (stock, second_height),
        (stock, _long),
        (0, _long),
    ),
    box("waste", second_fence, 0, stock - second_fence, first_fence),
    box("cut", second_fence, first_fence, stock - second_fence, kerf),
    box("blade", second_fence, -stock / 6, kerf, second_height + stock / 6),
    line("face", (0, 0), (0, _long)),
    dimension(second_fence, (0, 0), (second_fence, 0), "below"),
    dimension(stock, (0, _long), (stock, _long), "above"),
    dimension(second_height, (stock, 0), (stock, second_height), "right"),
    label("fence", (-stock / 2, _long / 2)),
)

setup.source(
    "Geometry: the step is width \u00d7 depth; the lip is stock \u2212 depth. The first blade's far side is the shoulder, so its fence is width \u2212 kerf."
)
