"""A centred groove, cut in two passes by turning the piece end for end at one fence setting."""

from typing import Any

from sympy import And, Not

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import area, box, dimension, label, line
from shopcalc.terms import inches, larger, number, pick, smaller

setup = Setup(
    slug="groove",
    title="Centred groove",
    stand="at the saw",
    job="A groove in the middle of an edge: two passes at one fence setting, the piece turned end for end between them.",
    machines=("table saw", "non-through cut", "dado head"),
    icon="M4 21V4h5v9h6V4h5v17z",
)

# What is measured

stock = setup.length("stock", "Stock thickness", "1 3/8", "Calipers across the piece as it came off the planer, not the size it was sold as.")
groove_width = setup.length("groove_width", "Groove width", "3/8", "The width wanted: the panel's edge, or the pane with its play, by calipers.")
groove_depth = setup.length(
    "groove_depth", "Groove depth", "1/2", "The depth wanted; of a groove that is there, the depth rod of the calipers from the edge to the bottom."
)
cutter = setup.length(
    "cutter", "Cutter width", "1/4", "The kerf it really cuts: run it once in scrap and put the inside jaws in the slot.", shop=True
)

# What to set

fence = setup.setting("fence", "Fence to near side of cutter", (stock - groove_width) / 2)
blade_height = setup.setting("blade_height", "Cutter height", groove_depth)
# the second fence is the same distance inside what was cut and past the middle, so that each pass runs over the last
_one_move = groove_width <= cutter * number("7/2")
rib = setup.size("rib", "Rib left in the middle", larger(groove_width - 2 * cutter, 0))
rib_fence = setup.setting(
    "rib_fence",
    "Fence once more, to clear the rib",
    smaller(stock / 2 - groove_width / 4, fence + cutter * number("7/8")),
    when=groove_width > 2 * cutter,
)
cheek = setup.size("cheek", "Cheek left each side", fence)
passes = setup.size("passes", "Passes at the first setting", pick((2, groove_width > cutter), otherwise=1), kind="count")

# What can go wrong

setup.stop(
    "cutter_too_wide",
    cutter > groove_width,
    "The cutter, {cutter}, is wider than the groove, {groove_width}.",
    change=cutter,
)
setup.stop(
    "no_cheeks",
    groove_width >= stock,
    "A groove of {groove_width} leaves nothing of a piece {stock} thick.",
    change=groove_width,
)
setup.caution(
    "thin_cheek",
    cheek < inches("1/4"),
    "Cheeks of {cheek} are thinner than {1/4 in}: they split when the panel swells or the rail is knocked home.",
    change=groove_width,
)
setup.caution(
    "narrow_groove",
    groove_width < stock / 4,
    "The groove is narrower than a quarter of stock {stock} thick: its tenon is weak.",
    change=groove_width,
)
setup.caution(
    "wide_groove",
    groove_width > stock / 2,
    "The groove is wider than half of stock {stock} thick: its cheeks are weak.",
    change=groove_width,
)
setup.caution(
    "fence_at_cutter",
    fence < inches("1/8"),
    "The fence stands {fence} from the cutter: as it is locked or pressed on it can touch the teeth. Clamp a wooden face to it.",
    change=groove_width,
    source=NO_SOURCE,
)
setup.caution(
    "narrow_cutter",
    Not(_one_move),
    "A rib of {rib} is wider than two more passes of this cutter are sure to clear: use a wider one, or move the fence by less than {cutter} at a time.",
    change=cutter,
    source="",
)
setup.caution(
    "past_the_blade",
    blade_height > inches(2),
    "Cutter height {blade_height}: an 8 in dado head stands some {2 in} out of the table, a 10 in blade little more than {3 in}. Look at the depth.",
    change=groove_depth,
)

# The trial cut

measured_groove = setup.reading(
    "measured_groove", "Groove as it measures", "Inside jaws of the calipers in the trial groove, near the middle of its length."
)


def as_wide_as(kerf: Any, measured: Any) -> Any:
    """Whether a cut may be of this cutter: two thousandths are for the calipers."""
    return measured >= kerf - inches("1/500")


def is_one_pass(measured: Any, width: Any, kerf: Any) -> Any:
    """Whether what was measured is one pass of a cutter, where no fence is so far off that two of them could measure so."""
    return And(width - kerf > inches("1/16"), as_wide_as(kerf, measured), measured <= kerf + inches("1/200"))


def is_turned(measured: Any, width: Any, kerf: Any) -> Any:
    """Whether what was measured is two passes, where the work gets only one: it is no wider for a fence that is off."""
    return And(width <= kerf, measured > kerf + inches("1/200"))


def is_followed(measured: Any, width: Any, kerf: Any) -> Any:
    """Whether a trial groove is one that a fence or a tenon may follow."""
    return And(as_wide_as(kerf, measured), Not(is_one_pass(measured, width, kerf)), Not(is_turned(measured, width, kerf)))


fence_move = setup.correction(
    "fence_move",
    "Fence",
    (measured_groove - groove_width) / 2,
    more="Too wide: move the fence {size} away from the cutter.",
    less="Too narrow: move the fence {size} toward the cutter.",
    when=And(groove_width > cutter, is_followed(measured_groove, groove_width, cutter)),
    far=inches("1/16"),
)
setup.caution(
    "narrower_than_cutter",
    Not(as_wide_as(cutter, measured_groove)),
    "No cut is narrower than its cutter, {cutter}: measure both again, the groove and the slot that the cutter leaves in scrap.",
    change=measured_groove,
    source="",
    doubts=measured_groove,
)
setup.caution(
    "one_pass_alone",
    is_one_pass(measured_groove, groove_width, cutter),
    "{measured_groove} is one pass of the cutter. Turn the scrap end for end, its other face to the fence, cut again and measure that.",
    change=measured_groove,
    source="",
    doubts=measured_groove,
)
setup.caution(
    "fin",
    And(groove_width > cutter, rib <= 0, setup.near(fence_move), measured_groove > 2 * cutter + inches("1/500")),
    "Two passes of {cutter} do not meet in a groove of {measured_groove}: a fin stands in its middle until the fence is right, or a pass between takes it.",
    change=measured_groove,
    source="",
)
cheek_as_cut = setup.after("cheek_as_cut", "Cheek as cut", (stock - measured_groove) / 2, when=And(setup.near(fence_move), measured_groove < stock))
setup.caution(
    "one_pass_off",
    And(is_turned(measured_groove, groove_width, cutter), measured_groove - groove_width <= inches("1/16")),
    "Both ways it is wider than the one pass that the pieces get, and does not say which way the fence is off. Cut a scrap once only, type in its width, "
    "and move the fence by half the difference of its cheeks, away from the cutter if the cheek at the fence is the thinner.",
    change=measured_groove,
    source="",
    doubts=measured_groove,
)
setup.caution(
    "one_pass_far_off",
    And(groove_width <= cutter, measured_groove - groove_width > inches("1/16")),
    "One pass, and the groove is off by more than {1/16 in}: a fence far off the middle, another cutter than {cutter}, or a slip of the calipers. Measure again.",
    change=measured_groove,
    source="",
    doubts=measured_groove,
)
setup.trial("Plane a scrap with the stock, cut it both ways, type in the width.")
setup.trial("The move given is half the error already.", when=groove_width > cutter)
setup.trial("One pass: cut another scrap once only, and compare its cheeks.", when=groove_width <= cutter)

# At the machine

_mill = "Mill all pieces for this groove together, to one thickness of {stock}: "
setup.step(_mill + "a thicker piece gets a groove as much wider.", when=groove_width > cutter)
setup.step(_mill + "a thicker piece gets its groove off the middle.", when=groove_width <= cutter)
setup.step("Mark one face of every piece as the reference face.")
setup.step("Set the cutter {blade_height} above the table.")
setup.step("Set the fence {fence} from the near side of the cutter, to a tooth that leans toward the fence.")
setup.step("Cut the scrap with its reference face against the fence, turn it end for end, and cut again. Measure.", when=groove_width > cutter)
setup.step(
    "The cutter is as wide as the groove: one pass. Turn the scrap end for end anyway; if the cutter takes more, the fence is not centred.",
    when=groove_width <= cutter,
)
setup.step("First pass on every piece, reference face against the fence.", when=groove_width > cutter)
setup.step("Run every piece, reference face against the fence.", when=groove_width <= cutter)
setup.step("Turn each piece end for end, the other face against the fence, and run them all again.", when=groove_width > cutter)
setup.step("Move the fence to {rib_fence} and run both ways once more to clear the rib of {rib}.", when=_one_move)
setup.step(
    "Move the fence to {rib_fence}, run both ways, and go on by less than {cutter} at a time until the rib of {rib} is gone.",
    when=Not(_one_move),
)

# What is run

setup.run("mill", stock)
setup.operation(
    "groove",
    "groove and rabbet",
    "Groove",
    fence,
    blade_height,
    face="The inner edges, of a mid rail both. Reference face to the fence; turned end for end, the other face.",
    reading=measured_groove,
)
setup.operation("rib", "groove and rabbet", "Clear the rib", rib_fence, blade_height, face="Each face to the fence in turn.", when=rib > 0)

# The picture: the piece stands on its edge, seen from its end

_tall = larger(3 * groove_depth, stock)
setup.picture(
    "The piece on edge, seen from its end: fence at the left, the groove with the first pass shown by the cutter, waste hatched.",
    box("table", -stock / 2, -stock / 8, 2 * stock, stock / 8),
    box("fence", -stock / 3, 0, stock / 3, _tall * number("4/5")),
    area(
        "end-grain",
        (0, 0),
        (fence, 0),
        (fence, groove_depth),
        (fence + groove_width, groove_depth),
        (fence + groove_width, 0),
        (stock, 0),
        (stock, _tall),
        (0, _tall),
    ),
    box("waste", fence, 0, groove_width, groove_depth),
    box("blade", fence, -stock / 8, cutter, groove_depth + stock / 8),
    line("face", (0, 0), (0, _tall)),
    dimension(stock, (0, _tall), (stock, _tall), "above"),
    dimension(fence, (0, 0), (fence, 0), "below"),
    dimension(groove_width, (fence, 0), (fence + groove_width, 0), "below", row=2),
    dimension(groove_depth, (stock, 0), (stock, groove_depth), "right"),
    label("fence", (-stock / 6, _tall / 2)),
)

setup.source("Geometry: two cuts that mirror each other about the middle of the stock leave equal cheeks of (stock \u2212 groove) / 2.")

setup.onward("tenon", "The tenon for this groove", stock=stock, groove_width=(measured_groove, groove_width), groove_depth=groove_depth)
