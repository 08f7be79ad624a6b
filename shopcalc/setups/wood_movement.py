"""How much a board widens and narrows over the year, and the gap to leave for it when it is fitted."""

from typing import Any

from sympy import And, Eq, Or

from shopcalc.declare import NO_SOURCE, Setup
from shopcalc.drawing import Shape, area, box, dimension, label, line
from shopcalc.reference.species import MEMORY, READ, RECOMPUTED, RECOMPUTED_FROM_22, SPECIES
from shopcalc.terms import fahrenheit, inches, larger, number, pick, settled_moisture, smaller, whole_above

_TABLE = "Wood Handbook, FPL-GTR-190 (2010), Table 13-5"

setup = Setup(
    slug="wood-movement",
    title="Wood movement",
    stand="at the bench",
    job="How much a slat, a board or a panel widens when it is damp and narrows when it is dry, and the gap it needs when it is fitted.",
    machines=("bench", "moving wood"),
    icon="M8 4h8v16H8zM5 9l-3 3 3 3M19 9l3 3-3 3",
)

# What is measured

wood = setup.table(
    "species",
    "Wood",
    "The wood the board is cut from. Not in the list: take one that is known to move as much.",
    SPECIES,
    radial_thousandths="number",
    tangential_thousandths="number",
)
grain = setup.choice(
    "grain",
    "Rings in the end of the board",
    "Look at the end grain. Rings that slope across it lie between: take flat to be safe.",
    flat="flat: they lie along the width",
    quarter="quarter: they stand across the thickness",
)
by = setup.choice(
    "by",
    "Moisture from",
    "A meter pushed into the wood, or the air that it rests in for weeks.",
    percent="a moisture meter, in percent",
    climate="the air, its temperature and humidity",
)
_percent = by.is_("percent")
_climate = by.is_("climate")
width = setup.length("width", "Board width", "7 1/4", "Across the grain, as it is now. A panel glued from several boards counts as one board.")
moisture_now = setup.percent("moisture_now", "Meter now", "9", "Percent of moisture in the middle of the board, away from its ends.", when=_percent)
moisture_dry = setup.percent(
    "moisture_dry", "Meter, driest", "7", "Percent of moisture in old wood of the same place, in its driest season.", when=_percent
)
moisture_wet = setup.percent(
    "moisture_wet", "Meter, wettest", "13", "Percent of moisture in old wood of the same place, in its wettest season.", when=_percent
)
temperature_now = setup.temperature("temperature_now", "Temperature now", "70", "Of the air where the wood has rested, over weeks.", when=_climate)
rh_now = setup.percent("rh_now", "Humidity now", "50", "Relative humidity where the wood has rested, over weeks.", when=_climate)
temperature_dry = setup.temperature(
    "temperature_dry", "Temperature, driest", "70", "Of the air where the work will stand, in its driest month.", when=_climate
)
rh_dry = setup.percent("rh_dry", "Humidity, driest", "35", "Mean of the driest month; in a heated room that is winter.", when=_climate)
temperature_wet = setup.temperature(
    "temperature_wet", "Temperature, wettest", "60", "Of the air where the work will stand, in its wettest month.", when=_climate
)
rh_wet = setup.percent("rh_wet", "Humidity, wettest", "70", "Mean of the wettest month, not of one wet day.", when=_climate)

# What follows from the wood and the air

_FIBRE = 30  # percent, about where the walls of the cells are full: water beyond that does not widen them
_COLDEST = fahrenheit(30)  # where the table of equilibrium moisture begins
_EQUATION = "By air: FPL-RN-0268, constants read in a page that quotes them"


def _moisture(metered: Any, temperature: Any, humidity: Any) -> Any:
    # by air it never comes to that much: wet air alone leaves wood just short of it
    return pick((smaller(metered, _FIBRE), _percent), otherwise=settled_moisture(temperature, humidity))


emc_now = setup.size("emc_now", "Moisture now", _moisture(moisture_now, temperature_now, rh_now), kind="percent", source=_EQUATION)
emc_dry = setup.size("emc_dry", "Moisture at the driest", _moisture(moisture_dry, temperature_dry, rh_dry), kind="percent", source=_EQUATION)
emc_wet = setup.size("emc_wet", "Moisture at the wettest", _moisture(moisture_wet, temperature_wet, rh_wet), kind="percent", source=_EQUATION)
coefficient = setup.size(
    "coefficient",
    "Movement for 1%, thousandths per inch of width",
    pick((wood.columns["tangential_thousandths"], grain.is_("flat")), otherwise=wood.columns["radial_thousandths"]),
    kind="number",
    source=_TABLE,
)
_for_each = width * coefficient / 1000
_RULE = "Wood Handbook, equation (13-2)"
width_dry = setup.size("width_dry", "Width at the driest", width - _for_each * (emc_now - emc_dry), source=_RULE)
width_wet = setup.size("width_wet", "Width at the wettest", width + _for_each * (emc_wet - emc_now), source=_RULE)
# drier or wetter now than it will ever be, the wood only swells or only shrinks, and further than it moves in a year
shrink = setup.size("shrink", "Shrinks from now to the driest", larger(width - width_dry, 0))
swell = setup.size("swell", "Swells from now to the wettest", larger(width_wet - width, 0))
movement = setup.size("movement", "Moves between driest and wettest", width_wet - width_dry)

# What to leave

# a spacer is planed to a mark: one between two marks, said as scant of the next, would come out too thin
_mark = inches("1/32")
gap_at_fitting = setup.setting(
    "gap_at_fitting",
    "Gap to leave now, for each board",
    whole_above(swell / _mark) * _mark,
    rounding="up",
    division="32",
    source="what it swells, up to the next thirty-second",
)
gap_at_driest = setup.size("gap_at_driest", "That gap at the driest", gap_at_fitting + width - width_dry)

# What can go wrong

_STATES = (
    ("now", "now", emc_now, moisture_now, temperature_now, rh_now),
    ("dry", "at the driest", emc_dry, moisture_dry, temperature_dry, rh_dry),
    ("wet", "at the wettest", emc_wet, moisture_wet, temperature_wet, rh_wet),
)
for _mode, _dry in ((_percent, moisture_dry), (_climate, rh_dry)):
    setup.stop(
        f"swapped_{_dry.name}",
        And(_mode, emc_dry > emc_wet),
        "At the driest the wood has {emc_dry} of moisture and at the wettest only {emc_wet}: exchange the two.",
        change=_dry,
        spoils=(width_dry, width_wet),
    )
for _state, _when, _emc, _metered, _temperature, _humidity in _STATES:
    for _mode, _from in ((_percent, _metered), (_climate, _humidity)):
        setup.caution(
            f"outside_{_from.name}",
            And(_mode, Or(_emc < 6, _emc > 14)),
            f"The figures hold from 6 to 14% of moisture; {_when} it is {{{_emc.name}}}. Take what follows as a rough guess.",
            change=_from,
            source="Wood Handbook, Table 13-5",
        )
    setup.note(
        f"cold_{_state}",
        And(_climate, _temperature < _COLDEST),
        f"The table of moisture in wood begins at 30 \u00b0F: {{{_temperature.name}}} is counted as that.",
        change=_temperature,
        source="Wood Handbook, Table 4-2, from memory",
    )
setup.caution(
    "moves_much",
    movement > inches("1/4"),
    "Between driest and wettest this board moves {movement}: narrower boards leave smaller gaps, and so do quartersawn ones.",
    change=width,
)
setup.note(
    "tight",
    swell > 0,
    "Set without room, this board of {width} swells {swell}: the gap between slats closes and they bow, a panel pushes its frame apart.",
    change=width,
)
setup.note(
    "only_swells",
    And(emc_now < emc_dry, emc_dry <= emc_wet),
    "At {emc_now} this wood is drier than it will ever be: it only swells.",
)
setup.note(
    "only_shrinks",
    And(emc_now >= emc_wet, emc_now > emc_dry, emc_dry <= emc_wet),
    "At {emc_now} this wood is as wet as it will ever be: it only shrinks, by {shrink}. Better let it dry where it will stand, and measure again.",
    source=NO_SOURCE,
)
setup.note(
    "saturated",
    Eq(larger(emc_now, emc_dry, emc_wet), _FIBRE),
    "From about 30% on wood gets no wider, however wet: more is counted as 30%.",
    source="Wood Handbook, fibre saturation; its chapter from memory",
)
setup.note(
    "recomputed",
    Or(*(wood.is_(option) for option, row in SPECIES.items() if row.source in (RECOMPUTED, RECOMPUTED_FROM_22))),
    "{species}: its figures are worked out from its shrinkage in Table 4-3 by the rule of Table 13-5; the last digit may be one off.",
    change=wood,
    source="Wood Handbook, Tables 4-3 and 13-5",
)
setup.note(
    "dries_late",
    Or(*(wood.is_(option) for option, row in SPECIES.items() if row.source == RECOMPUTED_FROM_22)),
    "{species}: that it starts to shrink only at 22% moisture is from memory: look it up before much is built on it.",
    change=wood,
    source="from memory",
)
setup.note(
    "from_memory",
    Or(*(wood.is_(option) for option, row in SPECIES.items() if row.source == MEMORY)),
    "{species}: look its figures up in the Wood Handbook, Table 13-5, before much is built on them.",
    change=wood,
    source="from memory",
)

# At the bench

setup.step("Let the boards lie where they will stand, with air all round, until their moisture stays the same.")
setup.step("Moisture now: {moisture_now} by meter, in the middle of several boards.", when=_percent)
setup.step("Wood that has rested for weeks in air of {temperature_now} and {rh_now} humidity has {emc_now} moisture.", when=_climate)
setup.step(
    "Slats or boards side by side: cut a spacer of {gap_at_fitting} and set each board against it. At the wettest the gaps all but close.",
    when=swell > 0,
)
setup.step("A panel in a frame: leave {gap_at_fitting} across its grain in all, half of it at the bottom of each groove.", when=swell > 0)
setup.step("It is as wide now as it will be: boards may touch, and a panel may fill its grooves across the grain.", when=swell <= 0)
setup.step("A lap, a tongue or a groove must cover more than {gap_at_driest}: the gap at the driest.", when=shrink > 0)
setup.step("A lap, a tongue or a groove must cover more than {gap_at_fitting}: the gap is at its widest now.", when=And(swell > 0, shrink <= 0))
setup.step("Fix each board in the middle of its width, or in slots, so that it can move. Glue no panel into its grooves.")
setup.step("Lengthwise leave nothing for moisture: along the grain wood hardly moves.")

# What is run

setup.run(
    "spacer",
    gap_at_fitting,
    face="Not for a panel. From a wide scrap, so that the spacer falls free on the side of the blade away from the fence.",
    when=swell > 0,
)

# The pictures

_thick = width / 7
_apart = _thick * number("3/2")
_stub = width / 5
# nothing is drawn of seasons that are exchanged
_known = gap_at_fitting >= 0


def _course(y: Any, board: Any, gap: Any) -> list[Shape]:
    """A board in section between its neighbours, all with their middles where they were fixed."""
    left = (width - board) / 2
    return [
        box("end-grain", left, y, board, _thick, when=_known),
        box("wood", -_stub, y, left - gap + _stub, _thick),
        box("wood", left + board + gap, y, width + _stub - left - board - gap, _thick),
    ]


def _rings(y: Any, flat: Any, quarter: Any) -> list[Shape]:
    """Growth rings in the board: arcs that lie along its width, or lines that stand across its thickness."""
    shapes = []
    for part in ("1/3", "2/3"):
        high = y + _thick * number(part)
        across = [width * number(place) for place in ("1/12", "1/4", "1/2", "3/4", "11/12")]
        drop = [_thick * number(place) for place in ("1/3", "1/12", "0", "1/12", "1/3")]
        shapes.append(line("edge", *((x, high - down) for x, down in zip(across, drop, strict=True)), when=And(_known, flat)))
    for part in ("1/10", "2/10", "3/10", "7/10", "8/10", "9/10"):
        shapes.append(line("edge", (width * number(part), y), (width * number(part), y + _thick), when=And(_known, quarter)))
    return shapes


_middle = -_apart
_bottom = -2 * _apart
_drawn_back = (width - width_dry) / 2  # each edge, at the driest
setup.picture(
    "One board in section between two others, to scale: at the driest, now, and at the wettest.",
    *_course(0, width_dry, gap_at_driest),
    *_course(_middle, width, gap_at_fitting),
    *_course(_bottom, width_wet, gap_at_fitting + width - width_wet),
    *_rings(_middle, grain.is_("flat"), grain.is_("quarter")),
    dimension(width, (0, _middle + _thick), (width, _middle + _thick), "above", row=2, text="now", when=_known),
    dimension(width_dry, (_drawn_back, _thick), (width - _drawn_back, _thick), "above", text="driest"),
    dimension(width_wet, ((width - width_wet) / 2, _bottom), ((width + width_wet) / 2, _bottom), "below", text="wettest"),
    label("driest", (width / 2, _thick / 2), when=_known),
    label("now", (width / 2, _middle + _thick / 2), when=_known),
    label("wettest", (width / 2, _bottom + _thick / 2), when=_known),
)
_widest = larger(gap_at_driest, gap_at_fitting)
_beside = _widest * number("3/2")
_deep = _widest * number("3/2")
_moves = _widest > 0
_let_out = (width_wet - width) / 2  # at the wettest
setup.picture(
    "The gap enlarged, boards as they are now: dashed at the driest, dot and dash at the wettest.",
    area("end-grain", (-_beside, 0), (0, 0), (0, _deep), (-_beside, _deep), when=_moves),
    box("end-grain", gap_at_fitting, 0, _beside, _deep, when=_moves),
    line("hidden", (-_drawn_back, 0), (-_drawn_back, _deep), when=_moves),
    line("hidden", (gap_at_fitting + _drawn_back, 0), (gap_at_fitting + _drawn_back, _deep), when=_moves),
    line("centre", (_let_out, 0), (_let_out, _deep), when=_moves),
    line("centre", (gap_at_fitting - _let_out, 0), (gap_at_fitting - _let_out, _deep), when=_moves),
    dimension(gap_at_fitting, (0, 0), (gap_at_fitting, 0), "below", text="now", when=swell > 0),
    dimension(
        gap_at_driest,
        (-_drawn_back, _deep),
        (gap_at_fitting + _drawn_back, _deep),
        "above",
        text="driest",
        when=gap_at_driest > 0,
    ),
)


setup.source(
    "Change = width \u00d7 coefficient \u00d7 change of moisture in percent, from 6 to 14%: Wood Handbook, FPL-GTR-190 (2010), equation (13-2), read in the publication."
)
setup.source("The same book warns that across the grain of ordinary lumber this probably gives too much for the width.")
setup.source(
    f"Coefficients: hardwoods {READ} of that book; softwoods and yellow-poplar {RECOMPUTED}, by the rule of Table 13-5; those marked so {MEMORY}."
)
setup.source("Moisture of wood at rest in air: FPL-RN-0268 (Simpson, 1998), constants for \u00b0F read in a page that quotes them.")
setup.source("More than 1/4 in of movement as much for one board, and every board fixed in its middle: " + NO_SOURCE + ".")

setup.onward("slats", "Slats of this width", slat=width)
