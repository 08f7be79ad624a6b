"""A grooved stile-and-rail frame, from the opening to every part: door, sash or vent."""

from sympy import And

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import area, box, dimension, label, line
from shopcalc.setups.groove import is_followed
from shopcalc.setups.groove import setup as groove
from shopcalc.setups.tenon import setup as tenon
from shopcalc.terms import even_marks, inches, larger, number, shifted, smaller

setup = Setup(
    slug="frame",
    title="Grooved frame",
    stand="at the bench",
    job="A door, sash or vent from its opening: stiles, rails, panes and marks, with the groove and tenon for its own stock.",
    machines=("table saw", "panes", "vents", "bench"),
    icon="M5 2h14v20H5zM8 5h8v6H8zM8 14h8v5H8z",
)

# What is measured

setup.group("The opening")
opening_width = setup.length(
    "opening_width", "Opening width", "33 1/4", "Tape across the opening at head, middle and sill: the smallest of the three."
)
opening_height = setup.length("opening_height", "Opening height", "21", "Tape up both sides and the middle: the smallest. Check the diagonals too.")
gap_side = setup.length("gap_side", "Gap at each side", "1/16", "Between frame and opening, each side.", zero=True)
gap_head = setup.length("gap_head", "Gap at the head", "1/16", "Between the frame and the head of the opening.", zero=True)
gap_foot = setup.length("gap_foot", "Gap at the foot", "1/8", "Over the sill or threshold: room for water, paint and swelling.", zero=True)

setup.group("The wood")
stock = setup.length("stock", "Stock thickness", "1 3/8", "Calipers across the milled stock, all of it milled together.")
stile = setup.length("stile", "Stile width", "2 1/4", "Tape across the upright.")
top_rail = setup.length("top_rail", "Top rail width", "2 1/4", "Tape across the rail at the head.")
bottom_rail = setup.length("bottom_rail", "Bottom rail width", "3", "Tape across the rail at the foot.")
mid_rails = setup.count("mid_rails", "Mid rails", "0", "How many rails between top and bottom, 0 to 6.", zero=True, most=6)
mid_rail = setup.length("mid_rail", "Mid rail width", "1 3/4", "Tape across a rail between.", when=mid_rails > 0)
horn = setup.length("horn", "Horn", "1/2", "What each end of a stile is left long, against splitting; sawn off after glue-up.", zero=True)

setup.group("The joint and the pane")
groove_width = setup.length("groove_width", "Groove width", "3/8", "Calipers over the pane's edge with its seal on it: what the groove has to take.")
groove_depth = setup.length("groove_depth", "Groove depth", "1/2", "The depth rod of the calipers in the trial groove, at its shallowest.")
end_play = setup.length(
    "end_play", "Tenon short of the bottom", "1/32", "Room for glue at the bottom of the groove, so that the shoulder closes first.", zero=True
)
panel_clearance = setup.length(
    "panel_clearance", "Pane short of the bottom", "1/8", "Room for the pane to grow, at each edge: see the pane's own card.", zero=True
)
foot = setup.choice(
    "foot",
    "Foot of the lowest pane",
    "Shed: the outer cheek of the bottom rail is cut away, and water runs off over it.",
    captive="captive, in a groove",
    shed="shed, over the rail",
)
shed_overhang = setup.length(
    "shed_overhang",
    "Pane below the rail",
    "1/4",
    "How far a shed pane hangs below the rail, so that water drips clear.",
    zero=True,
    when=foot.is_("shed"),
)

setup.group("For the groove and the tenon")
_rails = ("Top rail", "Mid rail", "Bottom rail")
_wood = ("Stile", *_rails)
_groove = setup.include(groove, {"mill_stock": (), "groove": _wood, "rib": _wood}, stock=stock, groove_width=groove_width, groove_depth=groove_depth)
groove_found = setup.as_found(
    "groove_found",
    "Groove as it is",
    _groove["measured_groove"],
    groove_width,
    far=inches("1/8"),
    when=is_followed(_groove["measured_groove"], groove_width, _groove["cutter"]),
)
setup.include(tenon, {"shoulders": _rails, "cheeks": _rails}, stock=stock, groove_width=groove_found, groove_depth=groove_depth, end_play=end_play)

# What follows from the opening

shed = foot.is_("shed")
frame_width = setup.size("frame_width", "Frame width", opening_width - 2 * gap_side, rounding="down")
frame_height = setup.size("frame_height", "Frame height", opening_height - gap_head - gap_foot, rounding="down")
rail_shoulder = setup.size("rail_shoulder", "Rail from shoulder to shoulder", frame_width - 2 * stile)
bay_height = setup.size("bay_height", "Clear height of each bay", (frame_height - top_rail - bottom_rail - mid_rails * mid_rail) / (mid_rails + 1))
rail_length = setup.setting("rail_length", "Rails, cut to", rail_shoulder + 2 * (groove_depth - end_play), rounding="down")
stile_length = setup.setting("stile_length", "Stiles, cut to", frame_height + 2 * horn, rounding="down")
panel_width = setup.setting("panel_width", "Pane width", rail_shoulder + 2 * (groove_depth - panel_clearance), rounding="down")
panel_height = setup.setting(
    "panel_height", "Pane height", bay_height + 2 * (groove_depth - panel_clearance), rounding="down", when=~shed | (mid_rails >= 1)
)
shed_panel_height = setup.setting(
    "shed_panel_height",
    "Height of the lowest pane",
    bay_height + (groove_depth - panel_clearance) + bottom_rail + shed_overhang,
    rounding="down",
    when=shed,
)
mid_rail_marks = setup.setting(
    "mid_rail_marks",
    "Lower edge of each mid rail, from the foot of the stile",
    even_marks(horn + bottom_rail + bay_height, bay_height + mid_rail, mid_rails),
    kind="lengths",
    when=mid_rails >= 1,
)
shed_rail_thickness = setup.size("shed_rail_thickness", "Bottom rail left behind a shed pane", (stock - groove_found) / 2, when=shed)

_hold = groove_depth - panel_clearance
notch_width = setup.setting("notch_width", "Notches in the lowest pane, wide", 2 * groove_depth, rounding="up", when=shed)
notch_height = setup.setting("notch_height", "Notches in the lowest pane, high", bottom_rail + shed_overhang - _hold, rounding="up", when=shed)

setup.part("Stile", 2, stile_length, stile, stock)
setup.part("Top rail", 1, rail_length, top_rail, stock)
setup.part("Mid rail", mid_rails, rail_length, mid_rail, stock)
setup.part("Bottom rail", 1, rail_length, bottom_rail, stock)
setup.part("Pane", mid_rails + 1, panel_height, panel_width, groove_found, when=~shed, pane=True)
setup.part("Pane", mid_rails, panel_height, panel_width, groove_found, when=shed & (mid_rails >= 1), pane=True)
setup.part("Lowest pane", 1, shed_panel_height, panel_width, groove_found, when=shed, pane=True)

# What can go wrong

_panes = (panel_width, panel_height, shed_panel_height, notch_width, notch_height)

setup.stop("no_frame", 2 * gap_side >= opening_width, "The gaps at the sides leave no frame in an opening {opening_width} wide.", change=gap_side)
setup.stop(
    "no_height",
    gap_head + gap_foot >= opening_height,
    "The gaps at head and foot leave no frame in an opening {opening_height} high.",
    change=gap_foot,
)
setup.stop(
    "no_pane_width",
    frame_width <= 2 * stile,
    "Two stiles {stile} wide fill an opening {opening_width} wide: no glass is left.",
    change=stile,
)
setup.stop(
    "rails_too_tall",
    frame_height <= top_rail + bottom_rail + mid_rails * mid_rail,
    "The rails are together as tall as the frame in an opening {opening_height} high: no glass is left.",
    change=bottom_rail,
)
setup.stop(
    "no_tongue", end_play >= groove_depth, "Stopping {end_play} short of the bottom leaves no tenon in a groove {groove_depth} deep.", change=end_play
)
setup.stop(
    "pane_falls_out",
    panel_clearance >= groove_depth,
    "A pane {panel_clearance} short of the bottom of a groove {groove_depth} deep stands in no groove at all.",
    change=panel_clearance,
    spoils=_panes,
)
setup.stop(
    "through_groove",
    groove_depth >= smaller(stile, top_rail, bottom_rail),
    "A groove {groove_depth} deep goes through the narrowest of the stiles and rails.",
    change=groove_depth,
)
setup.stop(
    "mid_rail_through",
    (mid_rails >= 1) & (mid_rail <= 2 * groove_depth),
    "Two grooves {groove_depth} deep meet in a mid rail {mid_rail} wide, and cut it in two.",
    change=mid_rail,
)
setup.stop(
    "no_shed",
    shed & (rail_shoulder <= 2 * (groove_depth + panel_clearance)),
    "The notches in the corners of the lowest pane meet: nothing of it runs down between the ends of the bottom rail that stay whole.",
    change=groove_depth,
    spoils=_panes,
)
setup.stop(
    "no_cheeks",
    groove_width >= stock,
    "A groove of {groove_width} leaves stock {stock} thick no cheeks.",
    change=groove_width,
)
setup.note(
    "reading_followed",
    setup.near(groove_found) & (abs(_groove["measured_groove"] - groove_width) > inches("1/500")),
    "Tenons and panes follow the groove as read: either keep it as it is, or move the fence, cut the scrap again and type the new reading.",
    change=_groove["measured_groove"],
)
setup.caution(
    "little_hold",
    groove_depth - panel_clearance < inches("1/4"),
    "Less than {1/4 in} of the pane stands in the groove: as it moves it can come out. Make the groove deeper.",
    change=groove_depth,
)
setup.caution(
    "no_room_for_pane",
    panel_clearance <= 0,
    "A pane that reaches the bottom of its groove has no room to grow: it bows, or breaks the joint. Its own card says how much it needs.",
    change=panel_clearance,
    source=NO_SOURCE,
)
setup.caution(
    "no_gap",
    smaller(gap_side, gap_head, gap_foot) <= 0,
    "With no gap the frame is as large as its opening on a side: paint or one damp season jams it there.",
    change=gap_side,
    source=NO_SOURCE,
)
setup.caution(
    "thin_mid_rail",
    (mid_rails >= 1) & (mid_rail > 2 * groove_depth) & (mid_rail - 2 * groove_depth < inches("3/8")),
    "Less than {3/8 in} is left between the two grooves of a mid rail {mid_rail} wide: it splits as it is cut or glued.",
    change=mid_rail,
)
setup.caution(
    "groove_too_deep",
    groove_depth > smaller(stile, top_rail, bottom_rail) / 2,
    "A groove {groove_depth} deep takes more than half of the narrowest of the stiles and rails.",
    change=groove_depth,
)
setup.caution(
    "short_rails",
    rail_length < inches(8),
    "Rails of {rail_length} bring a hand near the cutter: groove and tenon the ends of a longer piece, and cut the rails off it last.",
    change=opening_width,
    source=NO_SOURCE,
)
setup.caution(
    "short_stiles",
    stile_length < inches(8),
    "Stiles of {stile_length} bring a hand near the cutter: groove a longer piece, and cut the stiles off it last.",
    change=opening_height,
    source=NO_SOURCE,
)
setup.caution(
    "rails_past_boards",
    rail_length > inches(240),
    "No board is long enough for a rail of {rail_length}: was the opening meant in another unit?",
    change=opening_width,
)
setup.caution(
    "stiles_past_boards",
    stile_length > inches(240),
    "No board is long enough for a stile of {stile_length}: was the opening meant in another unit?",
    change=opening_height,
)
setup.caution(
    "tall_without_rail",
    (frame_height > inches(48)) & (mid_rails < 1),
    "A frame {frame_height} high with no mid rail racks and sags on stub tenons: put a rail in, at lock height in a door.",
    change=mid_rails,
)
setup.note(
    "short_tenons",
    (frame_height > inches(36)) & (groove_depth <= inches("1/2")),
    "A frame of this height hangs on its corner joints, and tenons in a groove {groove_depth} deep give them little glue: deeper is stronger.",
    change=groove_depth,
    source=NO_SOURCE,
)
setup.caution(
    "pane_on_sill",
    shed & (shed_overhang >= gap_foot),
    "The pane hangs {shed_overhang} below a frame that has {gap_foot} under it: it stands on the sill, unless the sill is lower out there.",
    change=shed_overhang,
)
setup.note(
    "no_drip",
    shed & (shed_overhang < inches("1/8")),
    "With the pane hardly below the rail water creeps back under it: let it hang {1/4 in} or so.",
    change=shed_overhang,
    source=NO_SOURCE,
)

# At the bench and the saw

setup.step("Check the opening's diagonals. The frame is {frame_width} by {frame_height}.")
setup.step("Mill all stock together to {stock}. Rip stiles {stile}, top rail {top_rail}, bottom rail {bottom_rail}.")
setup.step("Rip the mid rails {mid_rail}.", when=mid_rails >= 1)
setup.step("Cut two stiles {stile_length} long: a horn of {horn} at each end stays on until after glue-up.", when=horn > 0)
setup.step("Cut two stiles {stile_length} long.", when=horn <= 0)
setup.step("Cut every rail {rail_length} against one stop, with square ends. Mark one face of every piece as the reference face.")
_groove_step = "the groove's card stands below. Type in the trial groove as it measures: the tenons follow, and how thick a pane may be."
setup.step("Groove every inner edge: " + _groove_step, when=mid_rails < 1)
setup.step("Groove every inner edge, and both of a mid rail: " + _groove_step, when=mid_rails >= 1)
setup.step(
    "Hook the tape on the foot of one stile and tick {mid_rail_marks}; square the ticks across both stiles at once. Each mid rail stands above its tick."
)
setup.step("Cut the tenons: the tenon's card stands below. Shoulder to shoulder every rail is {rail_shoulder}.")
setup.step(
    "Bottom rail only, tenons cut and its lower edge planed: saw its outside away over the whole width, down to the inner wall of the groove. {shed_rail_thickness} is left, "
    "and the pane passes outside it. Stop {groove_depth} short of each shoulder, or the tenons come off.",
    when=shed,
)
setup.step(
    "Dry fit: shoulders close, diagonals agree. Between its horns the frame is {frame_width} by {frame_height}: hold that against the opening. Measure the bays.",
    when=horn > 0,
)
setup.step("Dry fit: shoulders close, diagonals agree, and the frame stands in its opening with the gaps wanted. Measure the bays.", when=horn <= 0)
setup.step("Apart again, drill weep holes through the groove of every rail on which water can stand, sloping out.", when=~shed | (mid_rails >= 1))
setup.step("Cut the panes {panel_width} by {panel_height}, edges sealed as the maker of the pane says.")
setup.step(
    "Cut the lowest pane {panel_width} by {shed_panel_height}. Notch its lower corners {notch_width} wide and {notch_height} high: "
    "there it stands in the groove of the ends of the rail, which stayed whole. A square inside corner starts a crack: bore a hole there first and cut to it; "
    "a pane of glass comes notched from the glazier.",
    when=shed,
)
_clamp = "No glue near a pane. Clamp over the rails, check the diagonals, wipe. Open and clamp time are on the glue's label."
setup.step(
    "Glue-up: all rails to one stile, panes in, then the second stile. " + _clamp,
    when=~shed,
)
setup.step(
    "Dry once more, panes in, as the glue-up goes: all rails but the bottom one to one stile, panes, second stile; the bottom rail slides up the grooves "
    "from the foot, behind the lowest pane. Knock it apart again.",
    when=shed,
)
setup.step(
    "Glue-up in that order, the bottom rail last. " + _clamp,
    when=shed,
)
setup.step("Saw the horns off, plane to the opening, and ease the edges.", when=And(horn > 0, ~shed))
setup.step("Saw the horns off, plane head and sides to the opening, and ease the edges.", when=And(horn > 0, shed))
setup.step(
    "The foot was planed before: now the pane hangs {shed_overhang} below it. Never stand the sash on its foot.", when=And(shed, shed_overhang > 0)
)

# What is run

_pane = "Pane"
_lowest = "Lowest pane"
setup.run("mill", stock, parts=_wood)
setup.run("rip", stile, parts=["Stile"])
setup.run("rip", top_rail, parts=["Top rail"])
setup.run("rip", mid_rail, parts=["Mid rail"])
setup.run("rip", bottom_rail, parts=["Bottom rail"])
setup.run("crosscut", stile_length, parts=["Stile"])
setup.run("crosscut", rail_length, parts=_rails)
setup.operation(
    "shed_rail",
    "cheeks",
    "Saw the outer cheek away",
    shed_rail_thickness,
    machine="bench",
    face="Outer face up; stop {groove_depth} short of each shoulder.",
    parts=["Bottom rail"],
)
setup.operation(
    "marks", "dry fit", "Mark the mid rails", mid_rail_marks, machine="bench", face="Tape on the foot, both stiles at once.", parts=["Stile"]
)
setup.run("dry fit")
# the groove of a shed rail is sawn away
for _name, _wet, _way in (("weep", ["Mid rail", "Bottom rail"], ~shed), ("weep_above", ["Mid rail"], shed)):
    setup.operation(
        _name,
        "dry fit",
        "Weep holes",
        machine="drill",
        face="Through the groove of every rail on which water can stand, sloping out.",
        parts=_wet,
        when=_way,
        run="weep",
    )
setup.run("pane width", panel_width, parts=[_pane, _lowest])
setup.run("pane height", panel_height, parts=[_pane])
setup.run("pane height", shed_panel_height, parts=[_lowest])
setup.operation(
    "notch",
    "panes",
    "Notch the lowest pane",
    ("Wide", notch_width),
    ("High", notch_height),
    machine="bench",
    face="Both lower corners.",
    parts=[_lowest],
)
setup.run("glue-up", when=~shed)
setup.operation(
    "glue_up_shed",
    "glue-up",
    "Glue up a shed foot",
    machine="bench",
    face="Dry once first. Reference faces to one side. The bottom rail goes in last, up the grooves from the foot, behind the pane.",
    when=shed,
)
for _name, _label, _face, _way in (
    ("horns", "Saw the horns off", "Plane to the opening.", ~shed),
    (
        "horns_shed",
        "Saw the horns off, shed foot",
        "Plane head and sides to the opening. The pane hangs below the foot: never stand the sash on it.",
        shed,
    ),
):
    setup.operation(_name, "glue-up", _label, horn, machine="bench", face=_face, parts=["Stile"], when=And(horn > 0, _way))

# The pictures

_width, _height = frame_width, frame_height
_bay_and_rail = bay_height + mid_rail
# as many names stand in the picture as it has room for
_roomy = _bay_and_rail >= larger(_width * number("3/20"), _height / 10)
setup.picture(
    "The frame in its opening, seen from outside: stiles run through, rails stand between them, glass in the bays.",
    box("ghost", -gap_side, -gap_foot, opening_width, opening_height),
    box("wood", 0, -horn, stile, stile_length),
    box("wood", _width - stile, -horn, stile, stile_length),
    box("wood", stile, _height - top_rail, rail_shoulder, top_rail),
    box("wood", stile, 0, rail_shoulder, bottom_rail),
    box("glass", stile, even_marks(bottom_rail, _bay_and_rail, mid_rails + 1), rail_shoulder, bay_height),
    box("wood", stile, shifted(mid_rail_marks, -horn), rail_shoulder, mid_rail),
    box("glass", stile + groove_depth, -shed_overhang, rail_shoulder - 2 * groove_depth, bottom_rail + shed_overhang, when=shed),
    dimension(opening_width, (-gap_side, _height + gap_head), (_width + gap_side, _height + gap_head), "above"),
    dimension(opening_height, (_width + gap_side, -gap_foot), (_width + gap_side, _height + gap_head), "right", row=2),
    dimension(frame_width, (0, -horn), (_width, -horn), "below", row=2),
    dimension(rail_shoulder, (stile, -horn), (_width - stile, -horn), "below"),
    dimension(frame_height, (0, 0), (0, _height), "left"),
    dimension(bay_height, (_width, _height - top_rail - bay_height), (_width, _height - top_rail), "right"),
    label("stile", (stile / 2, _height / 2)),
    label("stile", (_width - stile / 2, _height / 2)),
    label("top rail", (_width / 2, _height - top_rail / 2)),
    label("bottom rail", (_width / 2, bottom_rail / 2)),
    label("mid rail", (_width / 2, bottom_rail + bay_height + mid_rail / 2), when=mid_rails >= 1),
    *(
        label("mid rail", (_width / 2, bottom_rail + place * _bay_and_rail - mid_rail / 2), when=And(_roomy, mid_rails >= place))
        for place in range(2, 7)
    ),
    *(label("pane", (_width / 2, bottom_rail + place * _bay_and_rail + bay_height / 2), when=And(_roomy, mid_rails >= place)) for place in range(7)),
)
_cheek = (stock - groove_found) / 2
_tongue = groove_depth - end_play
_reach = stile + 2 * groove_depth + stock
setup.picture(
    "The joint in section, looking down: the stile with its groove, and the rail's tenon in it with room at the bottom for glue.",
    box("end-grain", 0, 0, stile, stock),
    box("cut", stile - groove_depth, _cheek, groove_depth, groove_found),
    area(
        "wood",
        (stile, 0),
        (_reach, 0),
        (_reach, stock),
        (stile, stock),
        (stile, stock - _cheek),
        (stile - _tongue, stock - _cheek),
        (stile - _tongue, _cheek),
        (stile, _cheek),
    ),
    line("face", (0, 0), (_reach, 0)),
    dimension(stile, (0, 0), (stile, 0), "below"),
    dimension(groove_depth, (stile - groove_depth, stock), (stile, stock), "above"),
    dimension(stock, (_reach, 0), (_reach, stock), "right"),
    dimension(groove_found, (0, _cheek), (0, _cheek + groove_found), "left"),
    label("stile", ((stile - groove_depth) / 2, stock / 2)),
    label("rail", ((stile + _reach) / 2, stock / 2)),
)
_pane_up = larger(bottom_rail, 2 * groove_depth)
_mid = (stock - groove_found * number("3/4")) / 2
_glass = groove_found * number("3/4")
setup.picture(
    "The foot in section, outside to the right: a captive pane stands in the groove of the bottom rail, a shed pane runs down over what is left of it.",
    box("end-grain", 0, 0, stock, bottom_rail, when=~shed),
    box("cut", _cheek, bottom_rail - groove_depth, groove_found, groove_depth, when=~shed),
    box("glass", _mid, bottom_rail - _hold, _glass, _hold + _pane_up / 2, when=~shed),
    box("end-grain", 0, 0, _cheek, bottom_rail, when=shed),
    box("waste", _cheek, 0, stock - _cheek, bottom_rail, when=shed),
    box("glass", _cheek, -shed_overhang, _glass, bottom_rail + shed_overhang + _pane_up / 2, when=shed),
    dimension(stock, (0, -shed_overhang), (stock, -shed_overhang), "below"),
    dimension(shed_rail_thickness, (0, -shed_overhang), (_cheek, -shed_overhang), "below", row=2),
    dimension(bottom_rail, (0, 0), (0, bottom_rail), "left"),
    dimension(shed_overhang, (stock, -shed_overhang), (stock, 0), "right", when=shed),
    dimension(panel_clearance, (stock, bottom_rail - groove_depth), (stock, bottom_rail - groove_depth + panel_clearance), "right", when=~shed),
    label("pane", (_cheek + _glass / 2, bottom_rail + _pane_up / 2), "above"),
)

setup.source("Geometry: rails fill the frame between the stiles and reach into both grooves; equal bays share what the rails leave.")
setup.source(
    "Stub tenons for light frames, 1/4 in of hold for a pane, a mid rail in a tall frame, rails to one stile first, a shed rail whole at its shoulders: "
    + NO_SOURCE
    + "."
)

setup.onward("glazing", "The room a pane needs", groove_depth=groove_depth, opening_width=rail_shoulder, opening_height=bay_height)
setup.onward("hinge-layout", "Where its hinges go", gap_head=gap_head, door_height=frame_height)
setup.onward("hinge-mortise", "How deep its hinges", gap=gap_side)
setup.onward("door-edge", "The bevel of its closing edge", thickness=stock, door_width=frame_width, gap_hinge=gap_side, gap_latch=gap_side)
