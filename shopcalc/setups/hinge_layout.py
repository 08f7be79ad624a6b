"""Where the hinges go on a door and on its frame: two rows of marks, each read from one end of the tape."""

from sympy import And, Eq, Or

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import box, dimension, label, line
from shopcalc.terms import even_marks, inches, shifted

setup = Setup(
    slug="hinge-layout",
    title="Hinge layout",
    stand="at the bench",
    job="Where each hinge begins, on the door from its top edge and on the frame from its head, the gap above the door counted in.",
    machines=("edge of a door", "bench"),
    icon="M7 2h13v20H7zM4 4h3v4H4zM4 10h3v4H4zM4 16h3v4H4z",
)

# What is measured

door_height = setup.length("door_height", "Door height", "77 1/2", "Along the hinge edge, top to foot, as the door is trimmed.")
hinge_length = setup.length("hinge_length", "Hinge length", "4", "Calipers along the leaf, end to end.")
hinges = setup.count("hinges", "Hinges", "3", "Two to five; the middle ones are spaced evenly between the first and the last.")
top_offset = setup.length(
    "top_offset", "Top of door to first hinge", "7", "Wanted: from the top edge of the door to the upper end of the top hinge.", zero=True
)
bottom_offset = setup.length(
    "bottom_offset", "Last hinge to foot of door", "11", "Wanted: from the lower end of the bottom hinge to the lower edge of the door.", zero=True
)
gap_head = setup.length(
    "gap_head", "Gap above the door", "1/8", "Feeler gauges or a slip of that thickness between head and door, door shut.", zero=True
)

# What to set

spacing = setup.setting(
    "spacing",
    "Top of a hinge to top of the next",
    (door_height - top_offset - bottom_offset - hinge_length) / (hinges - 1),
    when=hinges >= 2,
)
door_marks = setup.setting("door_marks", "On the door, from its top edge", even_marks(top_offset, spacing, hinges), kind="lengths")
frame_marks = setup.setting("frame_marks", "On the frame, from the head", shifted(door_marks, gap_head), kind="lengths")
door_ends = setup.size("door_ends", "Lower end of each hinge, on the door", shifted(door_marks, hinge_length), kind="lengths")
frame_ends = setup.size("frame_ends", "Lower end of each hinge, on the frame", shifted(frame_marks, hinge_length), kind="lengths")
between = setup.size("between", "Clear between two hinges", spacing - hinge_length)

# What can go wrong

setup.stop("too_few", hinges < 2, "A door hangs on two hinges at the least.", change=hinges)
setup.stop("too_many", hinges > 5, "More than five hinges are not laid out here: a door that wants them is work for its maker.", change=hinges)
setup.stop(
    "do_not_fit",
    And(hinges >= 2, hinges <= 5, top_offset + bottom_offset + hinges * hinge_length > door_height),
    "{hinges} hinges of {hinge_length}, with {top_offset} above and {bottom_offset} below, do not fit a door {door_height} high: they overlap.",
    change=hinges,
)
setup.caution(
    "crowded",
    between < hinge_length,
    "Only {between} between two hinges: less than a hinge. Take shorter ones, or fewer where there are three or more.",
    change=hinges,
)
setup.note(
    "wants_three",
    And(Eq(hinges, 2), door_height > inches(60), door_height <= inches(90)),
    "Three hinges are the published figure for a metal door over {60 in} and up to {90 in} high, and a fair one for wood; this one is {door_height}.",
    change=hinges,
    source="HMMA, recommended locations for hollow metal door hardware, read in a page that quotes it",
)
setup.note(
    "past_three",
    And(hinges >= 2, hinges <= 3, door_height > inches(90)),
    "The published figure of three hinges ends at {90 in}; this door is {door_height}: one more for each further {30 in} is usual.",
    change=hinges,
    source="HMMA for the 7 ft 6 in, read in a page that quotes it; one for each further 30 in: " + NO_SOURCE,
)
# the customs are of doors that one walks through
_a_door = door_height > inches(60)
setup.note(
    "unusual_top",
    And(_a_door, Or(top_offset + gap_head < inches("9/2"), top_offset > inches("15/2"))),
    "The top hinge is not where the published customs put it: {5 in} below the head of the frame, or {6 in} to {7 in} below the top of the door.",
    change=top_offset,
    source="door makers' practice, ICS, Building Trades Pocketbook, and trade custom: no single standard",
)
setup.note(
    "unusual_foot",
    And(_a_door, Or(bottom_offset < inches("19/2"), bottom_offset > inches("23/2"))),
    "The bottom hinge is not where the published customs put it: {10 in} or {11 in} above the foot; or, on a framed door, its lower end level with the top of the bottom rail.",
    change=bottom_offset,
    source="door makers' practice, ICS, Building Trades Pocketbook, and trade custom: no single standard",
)

# The trial: the door hung on its top hinge alone

measured_head = setup.reading(
    "measured_head",
    "Gap above the door as it hangs",
    "Top hinge in with one screw a leaf, foot on a wedge, door shut: feeler gauges above its middle.",
)
head_move = setup.correction(
    "head_move",
    "Top hinge on the frame",
    measured_head - gap_head,
    more="The door hangs {size} low: move the top hinge on the frame {size} up, or leave it and take the marks that this card gives for the door as it hangs.",
    less="The door hangs {size} high: move the top hinge on the frame {size} down, or leave it and take the marks that this card gives for the door as it hangs.",
    far=inches("1/4"),
    look="See that both rows were ticked from the right ends.",
)
frame_as_hung = setup.after(
    "frame_as_hung",
    "On the frame, from the head, if the door stays as it hangs",
    shifted(door_marks, measured_head),
    kind="lengths",
    when=setup.near(head_move),
)
setup.trial("Tick both rows on one lath and hold it to door and frame. Hang the door on its top hinge and measure the gap above.")

# At the bench

setup.step("Mark which edge of the door carries the hinges and which end is up.")
setup.step(
    "Hold the tape along the door first: no hinge may lie on a rail's tenon end or its wedges, since a screw in end grain holds little. "
    "Where one does, type another distance for the first or the last: all marks follow."
)
setup.step("Door: hook the tape once on the top edge, and tick every mark, {door_marks}: the upper end of each hinge. A cross below each tick.")
setup.step("Frame: hold the tape once against the head, and tick {frame_marks}: each is {gap_head} more than on the door.")
setup.step("Hold a leaf below each tick and knife its lower end, {hinge_length} further on.")
setup.step(
    "Cut the mortises of the top hinge in door and frame, hang the door on it with one screw a leaf, wedge the foot, and look at the gap: {gap_head} above."
)
setup.step("Cut the other mortises, one screw in each leaf, shut the door, then drive the others.")

# What is run

setup.operation("door", "hinges", "Mark the hinges on the door", door_marks, machine="bench", face="Tape on the top edge.")
setup.operation("frame", "hinges", "Mark the hinges on the frame", frame_marks, machine="bench", face="Tape against the head.")
setup.operation(
    "hang",
    "fit",
    "Hang it on the top hinge",
    gap_head,
    machine="bench",
    face="One screw a leaf, foot on a wedge. Then cut the other mortises.",
    reading=measured_head,
)

# The picture: x from the hinge edge, y down from the top of the door

_wide = door_height / 3
_jamb = door_height / 16
setup.picture(
    "The door in its frame, hinge side at the left: the hinges at their marks, measured from the top of the door.",
    box("block", -_jamb - gap_head, -door_height, _jamb, door_height + gap_head + _jamb),
    box("block", -gap_head, gap_head, _wide + gap_head, _jamb),
    box("wood", 0, -door_height, _wide, door_height),
    box("metal", -hinge_length / 4, even_marks(-top_offset - hinge_length, -spacing, hinges), hinge_length / 2, hinge_length),
    line("face", (0, 0), (_wide, 0)),
    line("face", (-gap_head, gap_head), (_wide, gap_head)),
    label("door", (_wide / 2, -door_height / 2)),
    dimension(door_height, (-_jamb - gap_head, -door_height), (-_jamb - gap_head, 0), "left"),
    dimension(top_offset, (_wide, -top_offset), (_wide, 0), "right", text="top"),
    dimension(spacing, (_wide, -top_offset - spacing), (_wide, -top_offset), "right", text="next"),
    dimension(bottom_offset, (_wide, -door_height), (_wide, bottom_offset - door_height), "right", text="foot"),
)

setup.source(
    "Geometry: the last hinge ends at its offset above the foot, and what is left between the first and the last is shared evenly; on the frame the gap above the door is added."
)
setup.source(
    "Where hinges go, no single standard found: 5 in from the head to the hinge, 10 in from the hinge to the foot, the rest equal, "
    "on the frame (door makers' practice, read in a page that quotes it)."
)
setup.source("7 in from the top, 10 or 11 in from the foot: custom in house doors (read in a page that quotes it).")
setup.source(
    "Top butt 6 to 7 in below the top of the door, lower end of the lower butt level with the top of the bottom rail: ICS, Building Trades Pocketbook, read in the publication."
)
setup.source("Three hinges for hollow metal doors over 5 ft and up to 7 ft 6 in: HMMA, read in a page that quotes it.")

setup.onward("hinge-mortise", "How deep, and the template", hinge_length=hinge_length)
