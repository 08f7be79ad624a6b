"""Slats shared out along a run: how many, the even gap between them, and a mark for each from one end of the tape."""

from sympy import And, Not, Or

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import box, dimension, line
from shopcalc.reference.species import SPECIES
from shopcalc.terms import even_marks, inches, larger, pick, row_of, shifted, smaller, whole_below, whole_nearest

setup = Setup(
    slug="slats",
    title="Slats in a run",
    stand="at the bench",
    job="How many slats, the even gap between them, and where each begins: ticked from one end of the tape, so that no error adds up.",
    machines=("table saw", "small pieces", "bench"),
    icon="M3 4h4v16H3zM10 4h4v16h-4zM17 4h4v16h-4z",
)

# What is measured

run = setup.length("run", "Run", "16 1/4", "Hook the tape on one end: to the other end of what the slats are to fill.")
slat = setup.length(
    "slat", "Slat width", "2 1/4", "Press all the slats edge to edge, measure over the lot and divide: 13 1/2 / 6. Or calipers across one."
)
ends = setup.choice(
    "ends",
    "At both ends of the run",
    "A slat flush with each end, or a gap before the first slat and after the last.",
    slat="a slat",
    gap="a gap",
)
by = setup.choice(
    "by",
    "What is given",
    "The number of slats; or the gap you like, and the nearest even one is found; or a spacer you have, and what is over is shared at the ends.",
    count="the number of slats",
    gap="about this gap, made even",
    spacer="exactly this spacer",
)
count = setup.count("count", "Number of slats", "6", "How many slats there are to be.", when=by.is_("count"))
gap = setup.length(
    "gap",
    "Gap or spacer",
    "1/2",
    "The gap liked, or calipers across the spacer.",
    zero=True,
    when=Or(by.is_("gap"), by.is_("spacer")),
)
slat_length = setup.length("slat_length", "Slat length", "16 1/2", "Across the bearers, with the overhang at both ends.")
slat_thickness = setup.length("slat_thickness", "Slat thickness", "3/4", "Calipers across the stock the slats are ripped from.")

# What follows: with a slat at both ends there is a gap fewer than slats, with a gap at both ends one more

_slat_ends, _gap_ends = ends.is_("slat"), ends.is_("gap")
_by_count, _by_gap, _by_spacer = by.is_("count"), by.is_("gap"), by.is_("spacer")
_between_slats = (run + gap) / (slat + gap)
_between_gaps = (run - gap) / (slat + gap)
_fit = whole_below(run / slat)  # edge to edge
slats = setup.size(
    "slats",
    "Slats",
    pick(
        (count, _by_count),
        (smaller(larger(whole_nearest(_between_slats), 2), _fit), And(_by_gap, _slat_ends)),
        (smaller(larger(whole_nearest(_between_gaps), 1), _fit), _by_gap),
        (whole_below(_between_slats), _slat_ends),
        otherwise=whole_below(_between_gaps),
    ),
    kind="count",
    known_as="count",
)
gaps = setup.size("gaps", "Gaps", pick((slats - 1, _slat_ends), otherwise=slats + 1), kind="count")
_shared_out = (run - slats * slat) / gaps
even_gap = setup.size("even_gap", "Gap between slats, exact", pick((gap, _by_spacer), otherwise=_shared_out), when=gaps > 0, known_as="gap")
pitch = setup.size("pitch", "From one slat to the next", slat + even_gap)
left_over = setup.size(
    "left_over",
    "Left over",
    pick((run - slats * slat - gaps * gap, _by_spacer), (run - slat, gaps <= 0), otherwise=0),
)
end_share = setup.size("end_share", "Left over, at each end", left_over / 2, when=left_over > 0)
end_gap = setup.size("end_gap", "Open at each end", pick((left_over / 2, _slat_ends), (gap + left_over / 2, _by_spacer), otherwise=_shared_out))

# one slat has its mark, and nothing to keep clear of
_spaced = And(even_gap > 0, slats > 1)

# What to set: where the number of slats is asked for it stands first

to_cut = setup.setting("to_cut", "Slats to cut", slats, kind="count", when=Not(_by_count))
spacer = setup.setting("spacer", "Spacer block", even_gap, when=_spaced)
marks = setup.setting(
    "marks",
    "Where each slat begins",
    pick(
        (row_of(end_gap), slats <= 1),
        (even_marks(end_gap, slat + gap, slats), _by_spacer),
        otherwise=even_marks(end_gap, slat + _shared_out, slats),
    ),
    kind="lengths",
)
centres = setup.size("centres", "Middle of each slat, for its screws", shifted(marks, slat / 2), kind="lengths")
evened_gap = setup.size(
    "evened_gap", "Gap that leaves nothing over, same number of slats", _shared_out, when=And(_by_spacer, gaps > 0, left_over > 0)
)
gap_one_fewer = setup.size("gap_one_fewer", "Even gap with one slat fewer", (run - (slats - 1) * slat) / (gaps - 1), when=And(slats > 1, gaps > 1))
gap_one_more = setup.size("gap_one_more", "Even gap with one slat more", (run - (slats + 1) * slat) / (gaps + 1), when=run >= (slats + 1) * slat)
drift = setup.size("drift", "Far end out, stepped with a spacer 1/64 in off", (slats - 1) * inches("1/64"), when=slats > 2)

# What is cut

setup.part("Slat", slats, slat_length, slat, slat_thickness)

# What can go wrong

setup.stop("slat_too_wide", slat > run, "A slat of {slat} is wider than the run of {run}.", change=slat)
setup.stop(
    "too_many",
    And(_by_count, count > 1, count * slat > run),
    "{count} slats of {slat} are wider together than the run of {run}, with no gap at all.",
    change=count,
)
setup.stop(
    "none_fits",
    And(_by_spacer, _gap_ends, slat <= run, slat + 2 * gap > run),
    "Not one slat of {slat} fits with a spacer of {gap} on both sides of it in a run of {run}.",
    change=gap,
)
setup.stop(
    "too_many_marks",
    slats > 400,
    "More than 400 slats: that is more marks than are worked out at once. Lay the run out in parts.",
    change=run,
)
setup.note(
    "one_slat",
    And(gaps <= 0, left_over > 0),
    "One slat cannot stand at both ends: it is set in the middle, {end_share} open at each side.",
    change=ends,
)
setup.note(
    "not_even",
    And(_by_spacer, gaps > 0, left_over > 0),
    "The spacer leaves {left_over} over: {end_share} at each end. The same number of slats with nothing over wants a gap of {evened_gap}.",
    change=gap,
)
setup.note(
    "one_more_is_nearer",
    And(_by_gap, abs(gap_one_more - gap) < abs(even_gap - gap)),
    "One slat more comes nearer to a gap of {gap}: {gap_one_more} in place of {even_gap}. To have it, give the number of slats.",
    change=by,
)
setup.caution(
    "gap_closes",
    even_gap < slat * 8 * SPECIES["red oak"].tangential,
    "A gap of {even_gap} can close when slats of {slat} swell: then they hold water, push one another off their screws or cup. "
    "Work out how far the wood moves before you fix the slats.",
    change=slat,
    source="Wood Handbook, Table 13-5: flat-grained red oak grows 0.00369 of its width for each 1% of moisture, here from 6% to 14%; read in the publication",
)

# The trial: the spacer block

measured_spacer = setup.reading("measured_spacer", "Spacer as it measures", "Calipers across the block, where it will stand between the slats.")
spacer_move = setup.correction(
    "spacer_move",
    "Spacer block",
    measured_spacer - even_gap,
    more="Spacer too thick: take {size} off it.",
    less="Spacer too thin: add {size} of card or veneer to it.",
    when=_spaced,
    far=inches("1/8"),
    look="Make another rather than mend it.",
)
creep = setup.after("creep", "Stepped along with this block, the far end is out by", (slats - 1) * abs(measured_spacer - even_gap), when=_spaced)
setup.caution(
    "other_spacer",
    And(_by_spacer, abs(measured_spacer - gap) > inches("1/500")),
    "The spacer measures {measured_spacer}, and the marks are for {gap}: mend it, or type what it measures as the spacer, and they follow.",
    change=gap,
    source="",
)
_block = And(_spaced, even_gap >= inches("1/8"))
_thin = And(_spaced, Not(_block))
setup.trial("Rip the spacer block from a scrap as thick as the slats, long enough to hold.", when=_block)
setup.trial("Measure the cards or the veneer in one stack.", when=_thin)
setup.trial("Type in what it measures across: the card says what to do, and how far out the far end would be by that alone.", when=_spaced)

# At the bench

setup.step(
    "Rip {slats} slats at one fence setting, press them edge to edge and measure over the lot: {slat} each, or type in what they measure.",
    when=slats > 1,
)
setup.step("Rip the slat and measure it: {slat}, or type in what it measures.", when=slats <= 1)
setup.step("Square the two ends of the run onto every bearer, {run} apart.")
setup.step(
    "Hook the tape once, at one end of the run, and leave it there. Tick every mark, with a cross on the far side of each, where the slat lies."
)
setup.step("Do the same on the other bearers from the same end, or tick one lath and carry it across.")
setup.step(
    "Rip a block of {spacer} and measure it: from a wide scrap, so that it falls free on the side of the blade away from the fence.", when=_block
)
setup.step(
    "A gap of {spacer} is too thin for a block: cards or veneer, measured in one stack, stand in for it.",
    when=_thin,
)
setup.step("First slat: its near edge {end_gap} from the end of the run.", when=end_gap > 0)
setup.step("First slat flush with the end of the run, last slat flush with the other: fix these two.", when=And(end_gap <= 0, run > slats * slat))
setup.step(
    "First slat flush with one end of the run: the last comes out flush with the other.", when=And(end_gap <= 0, run <= slats * slat, slats > 1)
)
setup.step("Each slat to its own mark; the spacer only keeps it parallel.", when=_spaced)
setup.step("Each slat hard against the one before.", when=And(even_gap <= 0, slats > 1))
setup.step("Before the screws go in, look from the far end: the last slat stops {end_gap} short of it.", when=end_gap > 0)
setup.step("Screw in the middle of each slat, so that it can swell both ways.")

# What is run

setup.run("mill", slat_thickness, parts=["Slat"])
setup.run("rip", slat, parts=["Slat"])
setup.run("crosscut", slat_length, parts=["Slat"])
setup.run("spacer", spacer, reading=measured_spacer, when=_block)
setup.operation("marks", "fit", "Mark the slats", marks, machine="bench", face="Tape hooked once, on one end of the run.")

# The picture: the run from the side, its slats standing on a bearer

_high = run / 5
setup.picture(
    "The run with its slats on a bearer, ends marked: every slat begins at its own mark, measured from the left end.",
    box("block", 0, -run / 30, run, run / 30),
    box("wood", marks, 0, slat, _high),
    line("face", (0, -run / 30), (0, _high + run / 30)),
    line("face", (run, -run / 30), (run, _high + run / 30)),
    dimension(run, (0, _high), (run, _high), "above", row=2),
    dimension(slat, (end_gap, _high), (end_gap + slat, _high), "above", text="slat"),
    dimension(even_gap, (end_gap + slat, 0), (end_gap + slat + even_gap, 0), "below", text="gap", when=slats > 1),
    dimension(pitch, (end_gap, 0), (end_gap + pitch, 0), "below", row=2, text="next slat", when=slats > 1),
    dimension(end_gap, (0, 0), (end_gap, 0), "below", row=3, text="end", when=end_gap > 0),
)

setup.source(
    "Geometry: run = slats \u00d7 slat + gaps \u00d7 gap. "
    "Each mark is the first plus so many times the exact distance, never the mark before plus a rounded one."
)
setup.source(
    "When a gap may close: Wood Handbook (USDA Forest Products Laboratory, GTR-190), Table 13-5, red oak 0.00369 for each 1% of moisture, "
    "from 6% to 14%; read in the publication."
)
setup.source("Every slat at its own mark from one end, a block only between neighbours, one screw line in the middle: " + NO_SOURCE + ".")

setup.onward("wood-movement", "How far a slat moves", width=slat)
