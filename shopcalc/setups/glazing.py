"""A pane that stands in a groove all round: cut so that it can grow in July and still be held in January."""

from typing import Any

from sympy import And, Not

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import area, box, dimension, label, line, slant
from shopcalc.reference.glazing import PANES
from shopcalc.terms import fahrenheit, inches, larger, number

setup = Setup(
    slug="glazing",
    title="Pane in a groove",
    stand="at the bench",
    job="How large to cut a pane that stands in a groove all round, so that it has room on the hottest day and is held on the coldest.",
    machines=("panes", "bench"),
    icon="M4 3h16v18H4zM8 14l7-7M10 17l6-6",
)

# What is measured

material = setup.table(
    "material", "Pane", "What the pane is made of. Its maker's sheet may give another expansion: then that is right.", PANES, expansion="number"
)
opening_width = setup.length(
    "opening_width", "Opening, width", "22", "Clear between the mouths of the grooves, frame dry and square: inside rule or two sticks."
)
opening_height = setup.length(
    "opening_height", "Opening, height", "29 1/2", "Clear between the mouths of the grooves, upright; at both ends, the smaller."
)
groove_depth = setup.length(
    "groove_depth", "Groove depth", "1/2", "From its mouth to the bottom: depth rod of the calipers, at the shallowest place."
)
temp_cut = setup.temperature("temp_cut", "When the pane is cut", "65", "A thermometer that has lain on the sheet in the shop.")
temp_cold = setup.temperature("temp_cold", "Coldest it will be", "-10", "The coldest night where it will stand.")
temp_hot = setup.temperature(
    "temp_hot", "Hottest it will be", "115", "The pane itself in full sun: hotter than the air, and most of all before something dark."
)
least_bite = setup.length(
    "least_bite", "Least bite wanted", "1/4", "How much of the pane must still stand in the groove, each edge, when it is coldest."
)

# How the pane moves, reckoned from groove bottom to groove bottom: a hair more than the pane itself


def _moves(size: Any, degrees_between: Any) -> Any:
    """How much a size changes over so many degrees."""
    return (size + 2 * groove_depth) * _part(degrees_between)


def _part(degrees_between: Any) -> Any:
    """What part of itself a size changes over so many degrees."""
    return material.columns["expansion"] / 1000000 * degrees_between / fahrenheit(1)


# cut hotter or colder than it will ever be, a pane only shrinks or only grows
_heats = larger(temp_hot - temp_cut, 0)
_cools = larger(temp_cut - temp_cold, 0)
grow_width = setup.size("grow_width", "Grows by the hottest day, width", _moves(opening_width, _heats), division="64")
grow_height = setup.size("grow_height", "Grows by the hottest day, height", _moves(opening_height, _heats), division="64")
shrink_width = setup.size("shrink_width", "Shrinks by the coldest night, width", _moves(opening_width, _cools), division="64")
shrink_height = setup.size("shrink_height", "Shrinks by the coldest night, height", _moves(opening_height, _cools), division="64")

movement = setup.size(
    "movement",
    "Moves from coldest to hottest, the larger way",
    _moves(larger(opening_width, opening_height), temp_hot - temp_cold),
    division="64",
)
edge_clearance = setup.size(
    "edge_clearance", "Room at each edge when cut, all four alike", larger(grow_width, grow_height) / 2, rounding="up", division="64"
)

# How far it draws back by the coldest night, the way that draws back more; below nothing where it was cut colder still
_draws_back = larger(_moves(opening_width, temp_cut - temp_cold), _moves(opening_height, temp_cut - temp_cold))

# What to set

cut_width = setup.setting("cut_width", "Cut the pane, width", opening_width + 2 * (groove_depth - edge_clearance), rounding="down")
cut_height = setup.setting("cut_height", "Cut the pane, height", opening_height + 2 * (groove_depth - edge_clearance), rounding="down")
bite_cold = setup.size(
    "bite_cold",
    "Bite at each edge when coldest, pane centred",
    groove_depth - edge_clearance - _draws_back / 2,
    rounding="down",
    division="64",
)
bite_slid = setup.size(
    "bite_slid", "Bite left at one edge if it slides to the other", larger(2 * bite_cold - groove_depth, 0), rounding="down", division="64"
)
# a deeper groove takes a larger pane, which moves more: what moves is a part of the size from bottom to bottom
_grown = _part(_heats)
_drawn = _part(temp_cut - temp_cold)
groove_needed = setup.size(
    "groove_needed",
    "Least groove depth for the bite wanted",
    (least_bite + (_grown * larger(opening_width, opening_height) + larger(_drawn * opening_width, _drawn * opening_height)) / 2)
    / (1 - _grown - _drawn),
    rounding="up",
    division="64",
)

# What can go wrong

setup.stop(
    "temperatures_swapped",
    temp_cold > temp_hot,
    "The coldest, {temp_cold}, is hotter than the hottest, {temp_hot}: exchange the two.",
    change=temp_cold,
)
setup.stop(
    "no_bite",
    groove_depth <= edge_clearance + _draws_back / 2,
    "In a groove {groove_depth} deep nothing of the pane is held when it is coldest: cut the groove at least {groove_needed} deep.",
    change=groove_depth,
    spoils=(cut_width, cut_height, bite_cold),
)
setup.caution(
    "thin_bite",
    bite_cold < least_bite,
    "When it is coldest only {bite_cold} of the pane stands in the groove, and {least_bite} is wanted: cut the groove {groove_needed} deep.",
    change=groove_depth,
)
setup.caution(
    "falls_out",
    2 * bite_cold <= groove_depth,
    "If the pane slides to one side when it is coldest, it comes out of the groove on the other: fix it in the middle with spacers at every edge, "
    "or cut the groove deeper.",
    change=groove_depth,
)
setup.note(
    "slides",
    And(2 * bite_cold > groove_depth, bite_slid < least_bite),
    "If the pane slides to one side when it is coldest, only {bite_slid} is left on the other: soft spacers at every edge keep it in the middle.",
    change=groove_depth,
    source=NO_SOURCE,
)
setup.note(
    "hair_of_room",
    And(temp_hot > temp_cut, edge_clearance < inches("1/64")),
    "Heat asks for less than {1/64 in} at each edge, less than a cutter or a saw strays. Cut the pane smaller by as much as yours strays.",
    source=NO_SOURCE,
)
setup.caution(
    "cut_in_the_heat",
    And(temp_cut >= temp_hot, temp_cold <= temp_hot),
    "Cut as hot as it will ever be, the pane only shrinks: no room is reckoned for heat, and it fills its grooves to the bottom. "
    "Cut it smaller by what it needs to go in.",
    change=temp_cut,
)
setup.note(
    "cut_in_the_cold",
    And(temp_cut <= temp_cold, temp_cold <= temp_hot),
    "Cut as cold as it will ever be, the pane only grows: no shrinking is reckoned.",
    change=temp_cut,
)
setup.note(
    "large_pane",
    cut_width * cut_height > 1296 * inches(1) ** 2,
    "A pane of more than 9 sq ft: in a door it falls under the stricter category of 16 CFR 1201. Local code decides what may stand there.",
    change=opening_height,
    source="16 CFR 1201.2(a)(3) and (4), read in the publication",
)

# The pane as it came

measured_width = setup.reading("measured_width", "Pane as cut, width", "Tape or rule along its widest place, the pane as warm as when it was cut.")
measured_height = setup.reading("measured_height", "Pane as cut, height", "Along its highest place.")
width_move = setup.correction(
    "width_move",
    "Width",
    measured_width - cut_width,
    more="Too wide: take {size} off, or it has no room in the heat.",
    less="Narrower by {size} than it may be: it has room.",
    far=None,
)
height_move = setup.correction(
    "height_move",
    "Height",
    measured_height - cut_height,
    more="Too high: take {size} off, or it has no room in the heat.",
    less="Shorter by {size} than it may be: it has room.",
    far=None,
)
_bite_width = (measured_width - opening_width - _moves(opening_width, temp_cut - temp_cold)) / 2
_bite_height = (measured_height - opening_height - _moves(opening_height, temp_cut - temp_cold)) / 2
_too_wide, _too_high = measured_width > opening_width + 2 * groove_depth, measured_height > opening_height + 2 * groove_depth
width_bite = setup.after(
    "width_bite", "Bite as cut when coldest, left and right", _bite_width, rounding="down", division="64", when=And(_bite_width > 0, Not(_too_wide))
)
height_bite = setup.after(
    "height_bite",
    "Bite as cut when coldest, top and bottom",
    _bite_height,
    rounding="down",
    division="64",
    when=And(_bite_height > 0, Not(_too_high)),
)
setup.caution(
    "narrow_pane",
    And(_bite_width > 0, _bite_width < least_bite),
    "Cut {measured_width} wide the pane keeps less than {least_bite} in the groove at left and right when it is coldest.",
    change=measured_width,
)
setup.caution(
    "low_pane",
    And(_bite_height > 0, _bite_height < least_bite),
    "Cut {measured_height} high the pane keeps less than {least_bite} in the groove at top and bottom when it is coldest.",
    change=measured_height,
)
for _name, _measured, _bite, _too_large, _where in (
    ("wide", measured_width, _bite_width, _too_wide, "left and right"),
    ("high", measured_height, _bite_height, _too_high, "top and bottom"),
):
    setup.caution(
        f"too_{_name}",
        _too_large,
        f"Cut {{{_measured.name}}} {_name} the pane is larger than from bottom to bottom of its grooves at {_where}: it does not go in.",
        change=_measured,
        source="",
    )
    setup.caution(
        f"not_{_name}_enough",
        _bite <= 0,
        f"Cut {{{_measured.name}}} {_name} the pane does not reach into its grooves at {_where} when it is coldest: cut another.",
        change=_measured,
        source="",
    )
    setup.caution(
        f"{_name}_falls_out",
        And(_bite > 0, 2 * _bite <= groove_depth),
        f"Cut {{{_measured.name}}} {_name} the pane can slide out of its groove at {_where} when it is coldest: fix it in the middle, or cut another.",
        change=_measured,
        source="",
    )
_glass = material.is_("glass")
setup.trial("Measure the first pane before the others are cut, and try it in the dry frame: room at every edge.")
setup.trial("Too large can be trimmed; too small cannot.", when=Not(_glass))

# At the bench

setup.step(
    "Leave the room at the edges: cut tight, this pane of {material} is {grow_width} wider and {grow_height} higher on the hottest day, "
    "and bows, cracks or opens the joints.",
    when=temp_hot > temp_cut,
)
setup.step(
    "Dry frame together: {opening_width} by {opening_height} between the mouths of the grooves, diagonals alike, grooves {groove_depth} deep and clean."
)
setup.step("Glass stands on two firm blocks, a quarter of its width in from each end: cut its height less by their thickness.", when=_glass)
setup.step("Cut the pane {cut_width} by {cut_height}, or a little under; never over. Measure it.", when=edge_clearance > 0)
setup.step("Cut the pane smaller than {cut_width} by {cut_height}, by what it needs to go in. Measure it.", when=edge_clearance <= 0)
setup.step("Edges dressed, seal chosen as the pane's maker says: a soft seal, never glue.")
setup.step("Weep holes through the lower rail wherever water can stand in the groove.")
setup.step(
    "Keep the pane in the middle of its grooves, the same room on every side, with soft foam that the heat can press flat. "
    "Firm blocks take that room: cut the pane smaller by as much. Cut to size, {bite_cold} of it is still held when it is coldest.",
    when=And(edge_clearance > 0, Not(_glass)),
)
setup.step(
    "Blocks and spacers no thicker than the room you left. Type in the pane as cut: the card says what is still held when it is coldest, less than {bite_cold}.",
    when=And(edge_clearance <= 0, Not(_glass)),
)
setup.step(
    "Blocks no thicker than the room you left: on them the lower edge holds the depth of the groove less their thickness. "
    "Type in the pane as cut: the card says what is held when it is coldest, were it in the middle.",
    when=_glass,
)

# What is run

setup.run("pane width", cut_width, reading=measured_width)
setup.run("pane height", cut_height, reading=measured_height)

# The pictures

_thick = groove_depth * number("1/3")  # neither the pane's thickness nor the groove's width matters here
_room = groove_depth / 20
_back = groove_depth * number("3/2")
_out = groove_depth * number("7/4")
setup.picture(
    "One edge, cut through: the pane in its groove as cut, with its room at the bottom of the groove; on the coldest night its edge has drawn back to the dashed line.",
    area(
        "end-grain",
        (0, _thick / 2 + _room),
        (0, groove_depth),
        (-groove_depth - _back, groove_depth),
        (-groove_depth - _back, -groove_depth),
        (0, -groove_depth),
        (0, -_thick / 2 - _room),
        (-groove_depth, -_thick / 2 - _room),
        (-groove_depth, _thick / 2 + _room),
    ),
    box("glass", edge_clearance - groove_depth, -_thick / 2, groove_depth - edge_clearance + _out, _thick),
    line("hidden", (-bite_cold, -_thick / 2 - _room), (-bite_cold, _thick / 2 + _room)),
    dimension(
        edge_clearance,
        (-groove_depth, _thick / 2),
        (edge_clearance - groove_depth, _thick / 2),
        "above",
        text="room",
        when=edge_clearance > 0,
    ),
    dimension(groove_depth, (-groove_depth, -_thick / 2), (0, -groove_depth), "below", text="groove"),
    dimension(bite_cold, (-bite_cold, -_thick / 2), (0, -groove_depth), "below", row=2, text="bite, coldest"),
    label("frame", (-groove_depth - _back / 2, 0)),
    label("pane", (_out / 2, 0)),
)
_rail = larger(3 * groove_depth, opening_width / 10, opening_height / 10)
_sunk = groove_depth - edge_clearance
_side = ((opening_width + _sunk, -_sunk), (opening_width + _sunk, opening_height + _sunk))
setup.picture(
    "The pane in its frame from the front: the opening between the mouths of the grooves, and the pane dashed where it stands in them.",
    area(
        "wood", (-_rail, -_rail), (opening_width + _rail, -_rail), (opening_width + _rail, opening_height + _rail), (-_rail, opening_height + _rail)
    ),
    box("glass", 0, 0, opening_width, opening_height),
    box("ghost", -_sunk, -_sunk, cut_width, cut_height),
    dimension(opening_width, (0, opening_height), (opening_width, opening_height), "above"),
    dimension(cut_width, (-_sunk, -_sunk), (opening_width + _sunk, -_sunk), "below", text="cut"),
    dimension(opening_height, (0, 0), (0, opening_height), "left"),
    # a tall pane leaves room beside it; in a broad one the words stand inside, where there is more
    dimension(cut_height, *_side, "right", text="cut", when=opening_height > 2 * opening_width),
    slant(cut_height, *_side, (-1, 0), row=3, text="cut", when=opening_height <= 2 * opening_width),
)

setup.source("Movement = length \u00d7 expansion \u00d7 difference of temperature: a sheet maker's glazing note, read in a page that quotes it.")
for _pane in PANES.values():
    setup.source(f"Expansion of {_pane.label}: {_pane.source}.")
setup.source(
    "Reckoned from groove bottom to groove bottom, a hair more than the pane; the larger direction sets all four edges. "
    "The frame's own movement is left out: along the grain wood moves about 2e-6 /\u00b0F (Wood Handbook, from memory)."
)
setup.source(
    "Safety glazing in and near doors and in low panes: 16 CFR 1201.1(a), read in the publication; IRC R308.4, read in pages that quote it. Local code decides."
)
setup.source("A bite wanted for the coldest night, spacers, soft seals, weep holes: " + NO_SOURCE + ".")

setup.onward("groove", "Cut the groove", groove_depth=groove_depth)
