"""A stub tenon for a groove: the shoulders are cut first, then the cheeks to meet them."""

from sympy import And

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import area, box, dimension, label, line
from shopcalc.terms import inches, larger, number

setup = Setup(
    slug="tenon",
    title="Stub tenon",
    stand="at the saw",
    job="A short tenon that fills a groove: shoulders first with the piece flat, then the cheeks with the piece on end.",
    machines=("table saw", "non-through cut", "crosscut beside a fence", "tenon jig", "small pieces"),
    icon="M2 4h11v4h9v8h-9v4H2z",
)

# What is measured

stock = setup.length("stock", "Stock thickness", "1 3/8", "Calipers across the rail near its end, as it came off the planer.")
groove_width = setup.length(
    "groove_width", "Groove width", "3/8", "Inside jaws of the calipers in the groove that was cut, not the width that was planned."
)
fit = setup.length(
    "fit", "Play in the groove", "0.006", "All of it, both cheeks together: about one sheet of paper a side. 0 is a press fit.", zero=True
)
groove_depth = setup.length(
    "groove_depth", "Groove depth", "1/2", "The depth rod of the calipers from the edge to the bottom, at the shallowest place."
)
end_play = setup.length(
    "end_play", "Short of the bottom", "1/32", "Room left at the bottom of the groove for glue, so that the shoulder closes first.", zero=True
)
kerf = setup.length("kerf", "Blade kerf", "1/8", "The slot the blade really cuts: run a scrap and put the inside jaws in it.", shop=True)
gauge_block = setup.length(
    "gauge_block",
    "Gauge block",
    "1",
    "Calipers across the block that the end of the rail is set against, clamped to the fence well short of the blade.",
    shop=True,
)

# What to set, in the order it is set

tenon_thickness = setup.size("tenon_thickness", "Tenon thickness", groove_width - fit)
tenon_length = setup.size("tenon_length", "Tenon length", groove_depth - end_play, rounding="down")
shoulder_height = setup.setting("shoulder_height", "Blade height for the shoulder", (stock - tenon_thickness) / 2)
fence_to_blade = setup.setting("fence_to_blade", "Fence to near side of blade", gauge_block + tenon_length - kerf, rounding="down")
# a kerf as wide as the tenon is long has left it no cheek to cut
_has_cheeks = tenon_length > kerf
cheek_height = setup.setting("cheek_height", "Blade height for the cheek", tenon_length, rounding="down", when=_has_cheeks)
jig_to_blade = setup.setting("jig_to_blade", "Jig face to near side of blade", (stock + tenon_thickness) / 2, when=_has_cheeks)

# What can go wrong

setup.stop("no_tenon", fit >= groove_width, "A play of {fit} leaves no tenon in a groove of {groove_width}.", change=fit)
setup.stop(
    "no_length", end_play >= groove_depth, "Stopping {end_play} short of the bottom leaves no tenon in a groove {groove_depth} deep.", change=end_play
)
setup.stop("no_shoulder", groove_width >= stock, "A groove of {groove_width} leaves a rail {stock} thick no shoulder.", change=groove_width)
setup.stop(
    "fence_in_blade",
    gauge_block + groove_depth - end_play <= kerf,
    "Block and tenon together are no more than the kerf of {kerf}: the blade would stand in the fence.",
    change=gauge_block,
)
# of any blade less than half comes out of the table
setup.stop(
    "no_saw_for_stock",
    stock - groove_width + fit > inches(16),
    "Stock {stock} thick wants shoulders deeper than {8 in}: even a 16 in blade does not stand that far out of its table.",
    change=stock,
)
setup.stop(
    "no_saw_for_length",
    groove_depth - end_play > inches(8),
    "A groove {groove_depth} deep wants cheeks longer than {8 in}: even a 16 in blade does not stand that far out of its table.",
    change=groove_depth,
)
setup.caution(
    "thin_tenon",
    groove_width < inches("1/4"),
    "A tenon for a groove of {groove_width}, less than {1/4 in}, breaks before the glue does.",
    change=groove_width,
)
setup.caution(
    "thin_cheek",
    (stock - groove_width) / 2 < inches("1/4"),
    "The cheeks of the groove are thinner than {1/4 in}: they split when the rail is knocked home.",
    change=groove_width,
)
setup.caution(
    "short_block",
    gauge_block < inches("3/4"),
    "A gauge block of {gauge_block} leaves little room beside the blade: an offcut can wedge there. Use a thicker one.",
    change=gauge_block,
)
setup.caution(
    "past_the_blade",
    larger(shoulder_height, tenon_length) > inches(3),
    "Shoulder {shoulder_height} and cheek {tenon_length}: a 10 in blade stands little more than {3 in} out of the table. Look at the sizes.",
    change=stock,
)
setup.caution(
    "loose_fit",
    fit > inches("1/32"),
    "A play of {fit} is no fit: a few thousandths are usual. Check the decimal point.",
    change=fit,
)
setup.note(
    "kerf_takes_it",
    And(groove_depth - end_play > 0, tenon_length <= kerf),
    "A kerf of {kerf} is no narrower than the tenon is long, {tenon_length}: the shoulder cuts leave the tenon finished, and no cheek is cut.",
    change=groove_depth,
)
setup.note(
    "no_room_for_glue",
    And(end_play <= 0, groove_depth > 0),
    "No room at the bottom: glue has nowhere to go, and the end can touch before the shoulder closes. Leave {1/32 in} or so.",
    change=end_play,
    source=NO_SOURCE,
)
setup.note("press_fit", fit <= 0, "No play at all is a press fit, and glue swells it: leave a few thousandths.", change=fit, source=NO_SOURCE)

# The trial cut

measured_tenon = setup.reading(
    "measured_tenon", "Trial tenon at the shoulders", "Outside jaws of the calipers across what is left between the two shoulder cuts."
)
blade_move = setup.correction(
    "blade_move",
    "Blade",
    (measured_tenon - tenon_thickness) / 2,
    more="Too thick: raise the blade {size}.",
    less="Too thin: lower the blade {size}.",
    far=inches("1/16"),
)
measured_cheeks = setup.reading(
    "measured_cheeks", "Trial tenon at the cheeks", "Outside jaws of the calipers across the finished cheeks, when both are cut in the jig."
)
jig_move = setup.correction(
    "jig_move",
    "Jig",
    (measured_cheeks - tenon_thickness) / 2,
    more="Cheeks too thick: move the jig {size} toward the blade.",
    less="Cheeks too thin: move the jig {size} away from the blade.",
    when=_has_cheeks,
    far=inches("1/16"),
)
play_as_cut = setup.after(
    "play_as_cut", "Play at the shoulders as cut", groove_width - measured_tenon, when=And(setup.near(blade_move), measured_tenon <= groove_width)
)
cheek_play_as_cut = setup.after(
    "cheek_play_as_cut", "Play at the cheeks as cut", groove_width - measured_cheeks, when=And(setup.near(jig_move), measured_cheeks <= groove_width)
)
shoulder_as_cut = setup.after(
    "shoulder_as_cut", "Shoulder as cut", (stock - measured_tenon) / 2, when=And(setup.near(blade_move), measured_tenon < stock)
)
setup.note(
    "will_not_enter",
    measured_tenon > groove_width,
    "At {measured_tenon} the trial tenon does not enter a groove of {groove_width} yet.",
    change=measured_tenon,
)
setup.note(
    "cheeks_will_not_enter",
    And(_has_cheeks, measured_cheeks > groove_width),
    "At {measured_cheeks} across its cheeks the tenon does not enter a groove of {groove_width} yet.",
    change=measured_cheeks,
)
setup.trial("Mill a scrap with the rails. Cut both shoulders and type in what is left between the two cuts.")
setup.trial("Then cut both cheeks in the jig and type in the tenon.", when=_has_cheeks)
setup.trial("The moves given are half of each error already.")
setup.trial("A tenon longer than {tenon_length} wants the fence nearer to the blade by all that it is too long, a shorter one farther away.")

# At the machine

setup.step("Cut every rail to length with square ends. Mark one face of each as the reference face.")
setup.step(
    "Shoulders. Set the blade {shoulder_height} high, the fence {fence_to_blade} from the near side of the blade, to a tooth that leans that way."
)
setup.step(
    "Clamp the gauge block to the fence, its far end well short of the blade. Hold the rail square against the mitre gauge, end on the block, and push rail and gauge past the blade: the rail is clear of the block before the cut."
)
setup.step("Try it on the scrap, reference face down, then the other face. Measure, correct, try again.")
setup.step("Cut both shoulders on both ends of every rail before anything is moved.")
setup.step(
    "Cheeks. Take the gauge block off. Set the blade {cheek_height} high, just to the shoulder cut, the jig's face {jig_to_blade} from the near side of the blade: the waste is outside."
)
setup.step("Clamp the rail on end in the jig, reference face to it; cut, turn the other face to the jig, cut again.", when=_has_cheeks)
setup.step("Try a rail in its groove by hand: it goes home with a push, and the shoulder closes before the end touches.", when=end_play > 0)
setup.step(
    "Try a rail in its groove by hand: it goes home with a push, and the shoulder closes. If it does not, its end touches: shorten it.",
    when=end_play <= 0,
)

# What is run

setup.operation(
    "shoulders",
    "shoulders",
    "Tenon shoulders",
    shoulder_height,
    fence_to_blade,
    face="The end on the gauge block of {gauge_block}, clamped to the fence. Reference face down, then the other; both ends.",
    reading=measured_tenon,
)
setup.operation(
    "cheeks",
    "cheeks",
    "Tenon cheeks",
    cheek_height,
    jig_to_blade,
    face="Reference face to the jig, then the other, the waste outside; both ends.",
    reading=measured_cheeks,
)

# The pictures

_reach = gauge_block + 3 * tenon_length
setup.picture(
    "Shoulder cut, seen along the fence: the rail flat, its end set on the gauge block.",
    box("table", -gauge_block / 2, -stock / 6, _reach + gauge_block / 2, stock / 6),
    box("fence", -gauge_block / 2, 0, gauge_block / 2, stock * number("3/2")),
    box("block", 0, 0, gauge_block, stock),
    area("wood", (gauge_block, 0), (_reach, 0), (_reach, stock), (gauge_block, stock)),
    box("waste", gauge_block, 0, tenon_length, shoulder_height),
    box("waste", gauge_block, stock - shoulder_height, tenon_length, shoulder_height),
    box("blade", gauge_block + tenon_length - kerf, -stock / 6, kerf, shoulder_height + stock / 6),
    line("face", (gauge_block, 0), (_reach, 0)),
    dimension(fence_to_blade, (0, 0), (fence_to_blade, 0), "below"),
    dimension(tenon_length, (gauge_block, stock), (gauge_block + tenon_length, stock), "above"),
    dimension(gauge_block, (0, stock), (gauge_block, stock), "above", row=2),
    dimension(kerf, (fence_to_blade, 0), (fence_to_blade + kerf, 0), "below", row=2),
    dimension(shoulder_height, (_reach, 0), (_reach, shoulder_height), "right"),
    dimension(stock, (_reach, 0), (_reach, stock), "right", row=2),
    label("block", (gauge_block / 2, stock / 2)),
)
_tall = larger(3 * tenon_length, stock)
setup.picture(
    "Cheek cut, seen from the end of the saw: the rail on end against the jig, the waste outside.",
    box("table", -stock / 2, -stock / 8, stock * number("5/2"), stock / 8),
    box("fence", -stock / 2, 0, stock / 2, _tall),
    area(
        "wood",
        (shoulder_height, 0),
        (shoulder_height + tenon_thickness, 0),
        (shoulder_height + tenon_thickness, tenon_length),
        (stock, tenon_length),
        (stock, _tall),
        (0, _tall),
        (0, tenon_length),
        (shoulder_height, tenon_length),
    ),
    box("waste", 0, 0, shoulder_height, tenon_length),
    box("waste", shoulder_height + tenon_thickness, 0, shoulder_height, tenon_length),
    box("blade", jig_to_blade, -stock / 8, kerf, cheek_height + stock / 8),
    line("face", (0, tenon_length), (0, _tall)),
    dimension(jig_to_blade, (0, 0), (jig_to_blade, 0), "below"),
    dimension(tenon_thickness, (shoulder_height, 0), (shoulder_height + tenon_thickness, 0), "below", row=2),
    dimension(cheek_height, (stock, 0), (stock, cheek_height), "right"),
    dimension(stock, (0, _tall), (stock, _tall), "above"),
    label("jig", (-stock / 4, _tall / 2)),
)

setup.source("Geometry: two shoulders of equal height leave a tenon of stock \u2212 2 \u00d7 height in the middle of the rail.")
setup.source("Play, room at the bottom, no tenon or cheek under 1/4 in, how far a blade stands out of its table: " + NO_SOURCE + ".")

setup.onward("groove", "The groove for this tenon", stock=stock, groove_width=groove_width, groove_depth=groove_depth)
