"""One angle in every way it is named and set: degrees, slope, percent, saw tilt, bevel gauge."""

from sympy import And

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import area, dimension, line, turn
from shopcalc.terms import atand, cosd, degrees, inches, larger, pick, sind, smaller, tand

setup = Setup(
    slug="angle",
    title="Angle and slope",
    stand="at the desk",
    job="Degrees, rise in 12, ratio and percent of one angle, the tilt a saw wants, and a bevel gauge set without a protractor.",
    machines=("table saw", "tilted blade"),
    icon="M2 20h20M2 20L17 5M13 20a11 11 0 0 0-3.2-7.8",
)

# What is measured

angle = setup.angle(
    "angle",
    "Angle or slope",
    "5 in 12",
    "From level, or from a square cut: 22 1/2, 5 in 12, 1:6 (rise to run) or 10%.",
    zero=True,
)
base = setup.length(
    "base", "Base for the bevel gauge", "12", "How far along the edge of a board the gauge is laid; longer is more exact.", most=inches(120)
)

# What to set

complement = setup.size("complement", "The rest of a right angle", degrees(90) - angle, kind="angle")
saw_tilt = setup.setting("saw_tilt", "Saw tilt", smaller(angle, complement), kind="angle")
gauge_rise = setup.setting("gauge_rise", "Gauge rise over the base", base * tand(angle))

# The same angle in other words

in_degrees = setup.size("degrees", "Degrees", angle, kind="angle")
rise_in_12 = setup.size("rise_in_12", "Rise in a run of 12 in", inches(12) * tand(angle))
ratio = setup.size("ratio", "Run for a rise of 1", 1 / tand(angle), kind="number")
percent = setup.size("percent", "Percent", 100 * tand(angle), kind="percent")

# What can go wrong

setup.stop(
    "upright",
    angle > degrees("89.5"),
    "Within half a degree of upright there is hardly a run: no slope to give and no gauge to set. A square cut is the saw's zero.",
    change=angle,
    spoils=(gauge_rise, rise_in_12, ratio, percent),
)
setup.note("level", angle <= 0, "Level has no rise: no run belongs to a rise of 1.", change=angle, spoils=(ratio,))
setup.note(
    "complement_set",
    And(angle > degrees(45), angle < degrees(90)),
    "A saw tilts 45\u00b0 at most: set {saw_tilt}, the rest of the right angle, and stand the work on its edge against a tall fence.",
    change=angle,
    source=NO_SOURCE,
)

setup.caution(
    "long_rise",
    gauge_rise > inches(48),
    "A rise of {gauge_rise} over this base is longer than a board is wide: take a shorter base.",
    change=base,
)

setup.machine("on edge", when=And(angle > degrees(45), angle < degrees(90)))

# The trial cut

measured_rise = setup.reading(
    "measured_rise",
    "Off square over the base, as it measures",
    "At the end of the base, along the line square to the edge: from that line across to the one drawn by the gauge.",
)
# the gauge drawn from the scrap stands off square by the tilt, whichever of the two angles the saw is set to
_tilt_as_cut = atand(measured_rise / base)
tilt_move = setup.correction(
    "tilt_move",
    "Tilt",
    saw_tilt - _tilt_as_cut,
    more="Tilt the blade {size} more.",
    less="Tilt the blade {size} less.",
    when=saw_tilt > 0,
    far=degrees(5),
    kind="angle",
)
setup.after(
    "angle_as_cut",
    "Angle as cut",
    pick((_tilt_as_cut, angle <= degrees(45)), otherwise=degrees(90) - _tilt_as_cut),
    kind="angle",
    when=saw_tilt > 0,
)
setup.note(
    "which_side",
    And(saw_tilt <= 0, measured_rise > 0),
    "Off square by {measured_rise}, and that does not say to which side: look with a try square, and set the blade upright.",
    change=measured_rise,
)
setup.trial(
    "Bevel a scrap, lying flat, at the tilt and set the bevel gauge to it, from face to bevel. From one point on the edge of a board draw the gauge's line and "
    "one square to the edge. {base} along the square line, measure across to the gauge's."
)

# At the machine

setup.step(
    "For the bevel gauge mark a point on a straight edge. From it measure {base} along the edge, then {gauge_rise} square to it, and draw a line from the mark to there.",
    when=angle > 0,
)
setup.step("Set the gauge's blade to the angle between that line and the edge of the board.", when=And(angle > degrees(45), angle <= degrees("89.5")))
setup.step(
    "Set the gauge's blade to the angle between that line and a line square to the edge of the board.", when=And(angle > 0, angle <= degrees(45))
)
setup.step(
    "Unplug the saw. Tilt the blade {saw_tilt} from square. Check it: stock of the gauge on the table, on the side the blade leans to, "
    "the gauge's blade against the saw's between two teeth.",
    when=And(saw_tilt > 0, angle <= degrees("89.5")),
)
setup.step("Unplug the saw. Tilt the blade {saw_tilt} from square, by the saw's own scale.", when=And(saw_tilt > 0, angle > degrees("89.5")))
setup.step("Unplug the saw. Blade square to the table: try square against it between two teeth.", when=saw_tilt <= 0)
setup.step("Bevel a scrap lying flat, measure it, correct the tilt.")

# The picture

setup.picture(
    "The angle as a triangle: base, rise, and the angle between base and slope; dashed, up to 45\u00b0, the line square to the edge for the gauge.",
    line("centre", (0, 0), (0, larger(gauge_rise, base / 4)), when=And(angle > 0, angle <= degrees(45))),
    area("wood", (0, 0), (base, 0), (base, gauge_rise)),
    dimension(base, (0, 0), (base, 0), "below"),
    dimension(gauge_rise, (base, 0), (base, gauge_rise), "right"),
    turn(in_degrees, (0, 0), (1, 0), (cosd(angle), sind(angle)), row=2),
)

setup.source("Geometry of the right triangle: rise = run \u00d7 tan(angle).")
setup.source("A saw that tilts 45\u00b0 at most: " + NO_SOURCE + "; look at your own.")
