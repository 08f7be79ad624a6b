"""A stacked dado head: which chippers and shims go between the outer blades for the width wanted."""

from typing import Any

from sympy import And, Not

from shopcalc.declare import Setup
from shopcalc.drawing import Shape, area, box, dimension, label, line
from shopcalc.terms import (
    choices_in,
    choose_between,
    chosen_fills,
    chosen_mains,
    count_in,
    count_sums,
    inches,
    joined,
    number,
    pick,
    row_of,
    smaller,
    starts_of,
    total_of,
    whole_below,
)

setup = Setup(
    slug="dado-stack",
    title="Dado stack",
    stand="at the saw",
    job="Which chippers and shims go on the arbor between the outer blades for the width wanted, and the three stacks that come next.",
    machines=("table saw", "non-through cut", "dado head"),
    icon="M6 3v18M10 6v12M14 6v12M18 3v18M2 12h20",
)

# What is measured

target = setup.length(
    "target", "Piece that goes in", "23/32", "Calipers across the edge of the shelf or panel itself, in three places: the thickest counts."
)
clearance = setup.length(
    "clearance",
    "Clearance",
    "0.004",
    "How much wider than the piece the dado is to be: nothing for a drive fit, a few thousandths for glue.",
    zero=True,
)
outer_pair = setup.length(
    "outer_pair",
    "Outer blades, both together",
    "1/4",
    "Cut with the two outer blades alone and put the inside jaws in the slot: the teeth count, not the plates.",
    shop=True,
)
chippers = setup.lengths(
    "chippers",
    "Chippers",
    "1/8, 1/8, 1/8, 3/32, 1/16",
    "What each one adds, by its carbide: outside jaws across the tips. All that you have, with commas between.",
    most=12,
    none=True,
    shop=True,
)
shims = setup.lengths(
    "shims",
    "Shims",
    "0.004, 0.004, 0.008, 0.012, 0.020",
    "Outside jaws or a micrometer on each. All that you have, with commas between; leave it empty if there are none.",
    most=30,
    none=True,
    shop=True,
)
arbor = setup.length(
    "arbor",
    "Arbor, usable length",
    "13/16",
    "From the inner flange to the end of the thread, less the nut, and less the outer washer if you use it. The saw's manual may say less.",
    shop=True,
)
under = setup.length(
    "under", "May be narrower by", "0.002", "How much narrower than piece and clearance a stack may be. 0: never narrower.", zero=True
)

# What to put on

# before anything is weighed; with no more a card takes some tenths of a second
_MOST_SUMS = 1100
for _name, _given in (("chippers", chippers), ("shims", shims)):
    setup.stop(
        f"too_many_{_name}",
        count_sums(_given, 1, _MOST_SUMS) > _MOST_SUMS,
        f"So many {_name} of sizes so unlike make more stacks than can be weighed: leave some out, or round their sizes.",
        change=_given,
    )

wanted = setup.size("wanted", "Dado wanted", target + clearance, rounding="none")
widest = setup.size("widest", "Widest stack there is", outer_pair + total_of(chippers) + total_of(shims), rounding="none")
_in_one = setup.ranking("in_one", choose_between(wanted - outer_pair, chippers, shims, under, arbor - wanted))
_one = choices_in(_in_one) > 0
# where one pass cannot do it, the widest that goes on the arbor, and the fence is moved
_room = smaller(widest, arbor) - outer_pair
_chosen = setup.ranking("chosen", pick((_in_one, _one), otherwise=choose_between(_room, chippers, shims, _room, 0)))
_chippers = chosen_mains(_chosen, 0)
_shims = chosen_fills(_chosen, 0)


def _stack_of(ranking: Any, place: int) -> Any:
    """The pieces of a choice, the outer pair first."""
    return joined(row_of(outer_pair), joined(chosen_mains(ranking, place), chosen_fills(ranking, place)))


width = setup.setting("width", "Stack, as wide as it cuts", outer_pair + total_of(_chippers) + total_of(_shims))
stack = setup.setting("stack", "On the arbor: outer pair, chippers, shims", _stack_of(_chosen, 0), kind="lengths", rounding="none")
second_pass = setup.setting("second_pass", "Last pass: fence away from the cutter, in all", wanted - width, when=choices_in(_in_one) < 1)
error = setup.size("error", "Stack less the dado wanted", width - wanted, rounding="none")
passes = setup.size("passes", "Passes", pick((1, _one), otherwise=whole_below(wanted / width) + 1), kind="count")
chippers_used = setup.size("chippers_used", "Chippers in it", _chippers, kind="lengths", rounding="none", when=count_in(_chippers) > 0)
shims_used = setup.size("shims_used", "Shims in it", _shims, kind="lengths", rounding="none", when=count_in(_shims) > 0)

# a stack that is too wide can be built narrower, and the fence moved by what it lacks
_loose = And(_one, error > inches("0.005"))
_narrow = setup.ranking("narrow", pick((choose_between(wanted - outer_pair, chippers, shims, wanted - outer_pair, 0), _loose), otherwise=_in_one))
narrower = setup.size("narrower", "Narrower stack, and the fence moved", _stack_of(_narrow, 0), kind="lengths", rounding="none", when=_loose)
narrower_width = setup.size("narrower_width", "Narrower stack, as wide as it cuts", total_of(narrower), rounding="none")
narrower_pass = setup.size("narrower_pass", "With it, fence away from the cutter, in all", wanted - narrower_width)

second = setup.size("second", "Next best", _stack_of(_in_one, 1), kind="lengths", rounding="none", when=choices_in(_in_one) > 1)
second_width = setup.size("second_width", "Next best, as wide as it cuts", total_of(second), rounding="none")
third = setup.size("third", "Third", _stack_of(_in_one, 2), kind="lengths", rounding="none", when=choices_in(_in_one) > 2)
third_width = setup.size("third_width", "Third, as wide as it cuts", total_of(third), rounding="none")
fourth = setup.size("fourth", "Fourth", _stack_of(_in_one, 3), kind="lengths", rounding="none", when=choices_in(_in_one) > 3)
fourth_width = setup.size("fourth_width", "Fourth, as wide as it cuts", total_of(fourth), rounding="none")

# What can go wrong

setup.stop(
    "narrower_than_pair",
    outer_pair > wanted,
    "The outer blades alone cut {outer_pair}, more than {target} and the clearance of {clearance}: use one blade and two passes, or a router bit.",
    change=target,
)
setup.stop(
    "arbor_too_short",
    arbor < outer_pair,
    "The arbor takes {arbor} and the outer blades alone are {outer_pair}: no dado head goes on this saw.",
    change=arbor,
)
setup.caution(
    "arbor_short",
    And(choices_in(_in_one) < 1, widest + under >= wanted),
    "One stack would be more than the {arbor} that the arbor takes: the nut must hold by all its threads. So {passes} passes with {width}.",
    change=arbor,
)
setup.note(
    "wider_than_widest",
    And(choices_in(_in_one) < 1, widest + under < wanted),
    "All the pieces together cut {widest}, less than the {wanted} wanted: it is cut in {passes} passes.",
    change=chippers,
)
setup.note(
    "more_than_two",
    second_pass >= width,
    "The fence is moved by a whole stack or more: move it by less than {width} at a time, {second_pass} in all, or a rib stays.",
    change=target,
)
setup.caution(
    "loose",
    _loose,
    "The nearest stack is {error} too wide: a loose joint. Get another shim or chipper, or stack {narrower} and cut in more passes than one.",
    change=shims,
)
setup.caution(
    "much_clearance",
    clearance > inches("1/32"),
    "A clearance of {clearance} is no fit: a few thousandths are usual. Check the decimal point.",
    change=clearance,
)
setup.caution(
    "tighter_than_piece",
    And(_one, width < target),
    "At {width} the dado is narrower than the piece, {target}: drive the piece in, or plane it.",
    change=under,
)
setup.caution(
    "many_shims",
    count_in(_shims) > 4,
    "More than four shims in one stack: burrs and chips between them make it wider than its sum. A chipper of another width saves them.",
    change=chippers,
)

# The trial cut

measured_dado = setup.reading(
    "measured_dado", "Dado as it measures", "Inside jaws of the calipers in the trial dado, near the top and at the bottom: the narrower counts."
)
_off = measured_dado - wanted
# what the stack cuts beyond its sum, it will cut again
_again = setup.ranking(
    "again", choose_between(wanted - outer_pair - (measured_dado - width), chippers, shims, under, arbor - wanted + (measured_dado - width))
)
_like_its_sum = abs(measured_dado - width) <= inches("1/16")
shim_move = setup.correction(
    "shim_move",
    "Shims",
    _off,
    more="Too wide by {size}: build the stack for the next trial.",
    less="Too narrow by {size}: build the stack for the next trial.",
    when=And(_one, _like_its_sum, choices_in(_again) > 0),
    far=None,
)
setup.caution(
    "unlike_stack",
    And(_one, Not(_like_its_sum)),
    "A stack of {width} does not cut {measured_dado}: nothing follows it. Count the pieces on the arbor, look for a chip between them, measure again.",
    change=measured_dado,
    source="",
    doubts=measured_dado,
)
# a slip of the calipers is told as one, and is no wider stack
_no_move_left = And(_off > second_pass, _off <= inches("1/8"))
fence_move = setup.correction(
    "fence_move",
    "Fence at the last pass",
    _off,
    more="Too wide: at the last pass move the fence {size} less.",
    less="Too narrow: at the last pass move the fence {size} more.",
    when=And(choices_in(_in_one) < 1, Not(_no_move_left)),
    far=inches("1/8"),
    look="Count the pieces on the arbor.",
)
setup.caution(
    "stack_wider",
    _no_move_left,
    "Even with no last pass the dado would be too wide: the stack cuts more than {width}. Cut a scrap in one pass, and type in what the outer blades cut.",
    change=outer_pair,
    source="",
)
_fits_again = setup.near(shim_move)
setup.note(
    "none_again",
    And(_one, _like_its_sum, choices_in(_again) < 1),
    "No other stack of these pieces comes nearer and goes on the arbor: get another shim.",
    change=shims,
)
stack_again = setup.after("stack_again", "Stack for the next trial", _stack_of(_again, 0), kind="lengths", rounding="none", when=_fits_again)
width_again = setup.after("width_again", "As it should then cut", total_of(stack_again) + measured_dado - width, rounding="none")
second_pass_again = setup.after(
    "second_pass_again", "Fence away from the cutter, next trial", second_pass - _off, when=And(setup.near(fence_move), second_pass > _off)
)
setup.trial("Cut a scrap of the same stuff at full depth, try the piece, type in the width: the next stack allows for it.", when=_one)
setup.trial(
    "Cut a scrap of the same stuff at full depth, in as many passes as the work. Try the piece, type in the width: the last move of the fence "
    "allows for it.",
    when=passes > 1,
)

# At the machine

setup.step("Unplug the saw. Wipe flange, arbor, plates and shims: a chip between two plates makes the stack wider.")
setup.step("First the outer blade that is marked for this side, its teeth toward you at the top.")
setup.step(
    "Then the chippers {chippers_used}, their teeth in the gullets of the blade beside them, spread evenly round the circle. No carbide touches carbide."
)
setup.step("The shims {shims_used} go between the plates, never outside the outer blades. None may ride up on the thread.")
setup.step(
    "The other outer blade, washer and nut. Of {arbor} usable the stack takes {width}: the nut must hold by all its threads. Leave the washer off only where the saw's manual lets you."
)
setup.step("Throat plate for a dado head in. Turn the stack once by hand: nothing may touch.")
setup.step("Cut the scrap and measure. Wanted: {wanted}.", when=_one)
setup.step("One pass: piece against fence or mitre gauge, held down all the way.", when=_one)
_instead = "Or, for a dado that fits: {narrower} on the arbor, {narrower_width} wide. Run scrap and pieces, move the fence {narrower_pass} away from the cutter"
setup.step(_instead + ", and run them again.", when=narrower_pass < narrower_width)
setup.step(_instead + " in all, by less than {narrower_width} at a time, and run them after each move.", when=narrower_pass >= narrower_width)
setup.step("First pass on the scrap and on every piece: it cuts the side of the dado that is nearer to the fence.", when=passes > 1)
setup.step("Move the fence {second_pass} away from the cutter.", when=second_pass < width)
setup.step(
    "Move the fence away from the cutter by less than {width} at a time, {second_pass} in all. Run scrap and pieces after each move but the last.",
    when=second_pass >= width,
)
setup.step("Run the scrap and measure. Wanted: {wanted}. Correct the fence, then run every piece.", when=passes > 1)

# What is run

_flat = "Held down all the way, to the fence or the mitre gauge."
setup.operation("dado", "groove and rabbet", "Dado", width, stack, face=_flat, reading=measured_dado, when=_one)
# a last pass is told from its first: passes are run together only where both are the same
setup.operation(
    "first_pass", "groove and rabbet", "Dado, first pass", width, stack, ("For the last pass then", second_pass), face=_flat, when=passes > 1
)
setup.operation("last_pass", "groove and rabbet", "Dado, last pass", second_pass, stack, face=_flat, reading=measured_dado, when=passes > 1)

# The pictures: outer blades of half the pair each, chippers and shims between them, the dado below

_blade = outer_pair / 2
_tall = smaller(width, wanted) * number("3/5") + _blade / 4
_gap = _tall * number("2/5")
_wood = _tall * number("3/4")
_deep = _wood / 2
_side = wanted / 5


def _pieces(ranking: Any, place: int, low: Any, when: Any, of: Any) -> list[Shape]:
    """A stack standing on `low`: an outer blade, chippers, shims, the other blade."""
    mains = chosen_mains(ranking, place)
    fills = chosen_fills(ranking, place)
    # shims stand out above the chippers, so that even one of a few thousandths shows
    part, more = of * number("3/4"), of * number("15/16")
    return [
        box("blade", 0, low, _blade, of, when=when),
        box("metal", starts_of(_blade, mains), low + (of - part) / 2, mains, part, when=when),
        box("waste", starts_of(_blade + total_of(mains), fills), low + (of - more) / 2, fills, more, when=when),
        line("edge", (_blade, low), (_blade, low + of), when=when),
        box("blade", _blade + total_of(mains) + total_of(fills), low, _blade, of, when=when),
    ]


_floor = -_gap - _deep
setup.picture(
    "The stack on the arbor seen from the front: outer blades at its ends, chippers between them, shims thin. Below it the dado in the wood, and how far the piece goes.",
    box("fence", -_side, _tall * number("2/5"), width + 2 * _side, _tall / 5),
    *_pieces(_chosen, 0, 0, None, _tall),
    area(
        "wood",
        (-_side, -_gap - _wood),
        (wanted + _side, -_gap - _wood),
        (wanted + _side, -_gap),
        (wanted, -_gap),
        (wanted, _floor),
        (0, _floor),
        (0, -_gap),
        (-_side, -_gap),
    ),
    box("ghost", width, 0, second_pass, _tall, when=second_pass <= width),
    line("hidden", (target, _floor), (target, -_gap)),
    dimension(width, (0, _tall), (width, _tall), "above"),
    dimension(second_pass, (width, _tall), (width + second_pass, _tall), "above", row=2, text="fence"),
    dimension(wanted, (0, -_gap - _wood), (wanted, -_gap - _wood), "below", text="dado"),
    dimension(target, (0, -_gap - _wood), (target, -_gap - _wood), "below", row=2, text="piece"),
)
_high = wanted / 5
_pitch = _high * number("7/4")


def _row(place: int, made: Any) -> list[Shape]:
    """One of the stacks that come next, under the others."""
    low = -_pitch * place
    there = choices_in(_in_one) > place
    return [*_pieces(_in_one, place, low, there, _high), label("{" + made.name + "}", (made, low + _high / 2), side="right", when=there)]


setup.picture(
    "The next three stacks, the best of them first, to one scale; the broken line is the dado wanted.",
    *_row(1, second_width),
    *_row(2, third_width),
    *_row(3, fourth_width),
    line(
        "hidden",
        (wanted, -_pitch * smaller(choices_in(_in_one) - 1, 3) - _high / 4),
        (wanted, -_pitch + _high * number("5/4")),
        when=choices_in(_in_one) > 1,
    ),
)

setup.source(
    "Arithmetic: every set of the chippers and shims is weighed, and of two that cut one width the one with fewer shims, then fewer pieces, is taken."
)

setup.onward("gauge-stack", "Its height, set by blocks")
setup.onward("groove", "A groove with it", cutter=measured_dado)
