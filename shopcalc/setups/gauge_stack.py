"""A cutter's height by feel: which blocks under a straightedge come nearest to it."""

from typing import Any

from sympy import And, Not

from shopcalc.declare import Setup
from shopcalc.drawing import Shape, area, box, dimension, label, line
from shopcalc.terms import choices_in, choose_blocks, chosen_mains, count_in, count_sums, inches, larger, number, smaller, starts_of, total_of

setup = Setup(
    slug="gauge-stack",
    title="Height by gauge blocks",
    stand="at the saw",
    job="Which of your blocks and drill shanks, one on another, come nearest to a height, so that blade or bit is set by feel.",
    machines=("gauge blocks",),
    icon="M2 21h20M4 21v-5h16v5M7 16v-5h10v5M9 11V6h6v5",
)

# What is wanted, and what there is

_MOST = 40
_MOST_SUMS = 1100  # in one half of the pieces: a card in a tenth of a second

height = setup.length("height", "Height wanted", "17/32", "From the table to the top of the cut, as another card or the drawing says.")
blocks = setup.lengths(
    "blocks",
    "Blocks and shanks",
    "1/16, 1/8, 3/16, 1/4, 3/8, 1/2, 3/4, 1, 3/32, 7/64",
    "Setup blocks, planed strips, shanks of drills laid flat: calipers across each, with commas between. At most forty.",
    most=_MOST,
    shop=True,
)
most = setup.count("most", "Pieces at most", "3", "Few pieces rock less and hide less dust.", most=_MOST)

# What to stack

# before anything is weighed
setup.stop(
    "too_many_sums",
    count_sums(blocks, 2, _MOST_SUMS) > _MOST_SUMS,
    "So many pieces of sizes so unlike make more stacks than can be weighed: leave some out, or round their sizes.",
    change=blocks,
)

_ranked = setup.ranking("ranked", choose_blocks(height, blocks, most))
_any = setup.ranking("any_number", choose_blocks(height, blocks, _MOST))
reach = setup.setting("reach", "The stack reaches", total_of(chosen_mains(_ranked, 0)))
stack = setup.setting("stack", "One on another", chosen_mains(_ranked, 0), kind="lengths", rounding="none")
error = setup.size("error", "Stack less the height", reach - height, rounding="none")
# half a thousandth is nothing that a hand feels
over = setup.size("over", "The stack is over by", error, when=error > inches("0.0005"), rounding="none")
short = setup.size("short", "The stack is short by", -error, when=-error > inches("0.0005"), rounding="none")
more_reach = setup.size(
    "more_reach",
    "With more pieces it would reach",
    total_of(chosen_mains(_any, 0)),
    when=abs(total_of(chosen_mains(_any, 0)) - height) < abs(error),
    rounding="none",
)


def _next(name: str, title: str, place: int) -> tuple[Any, Any]:
    """A stack that comes after the best, and what it reaches."""
    row = setup.size(name, title, chosen_mains(_ranked, place), kind="lengths", rounding="none", when=choices_in(_ranked) > place)
    return row, setup.size(f"{name}_reach", f"{title}, reaches", total_of(row), rounding="none")


second, second_reach = _next("second", "Next best", 1)
third, third_reach = _next("third", "Third", 2)
fourth, fourth_reach = _next("fourth", "Fourth", 3)

# What can go wrong

setup.caution(
    "off",
    And(-error > inches("1/64"), height <= total_of(blocks)),
    "The nearest stack is more than {1/64 in} short: it stands for a first try only. A block or a shank more would help.",
    change=blocks,
)
setup.caution(
    "too_tall",
    error > inches("1/64"),
    "The nearest stack is {over} taller than the height: a cutter that touched the straightedge would cut so much too deep. A thinner block or shank would help.",
    change=blocks,
)
# common practice, as of the other cards
setup.caution(
    "past_the_blade",
    height > inches(3),
    "A 10 in blade stands little more than {3 in} out of the table, an 8 in dado head some {2 in}: look at the height, {height}.",
    change=height,
)
setup.caution(
    "too_high",
    And(abs(error) > inches("1/64"), height > total_of(blocks)),
    "All the blocks together do not reach {height}: plane a strip to it, or put a longer block in.",
    change=blocks,
)
setup.note(
    "a_little_over", over <= inches("1/64"), "The stack is {over} over the height: leave so much light between tooth and straightedge.", change=blocks
)
setup.note(
    "a_little_short",
    short <= inches("1/64"),
    "The stack is {short} short of the height: lay feeler gauges or slips of paper so thick on it.",
    change=blocks,
)
setup.note(
    "more_pieces",
    abs(more_reach - height) < abs(error),
    "With more pieces than {most} a stack would reach {more_reach}, nearer than {reach}.",
    change=most,
)
setup.caution(
    "tall_stack",
    count_in(stack) > 4,
    "More than four pieces: dust and burrs between them add up. Wipe each, press the stack together, or measure it as it stands.",
    change=most,
)

# The trial cut

measured_depth = setup.reading(
    "measured_depth", "Depth as it measures", "The depth rod of the calipers in the trial cut, away from its ends, clear of any ridge on its bottom."
)
_off = measured_depth - height
height_move = setup.correction(
    "height_move",
    "Height",
    _off,
    more="Too deep: lower the cutter {size}.",
    less="Too shallow: raise the cutter {size}.",
    far=inches("1/8"),
)
# what the stack is a little over or short is made up for as the height is felt; one further off is not built again
height_again = setup.after(
    "height_again",
    "Height to type in for the next stack",
    height - height_move,
    rounding="none",
    when=And(setup.near(height_move), abs(error) <= inches("1/64"), height > height_move),
)
setup.trial(
    "Run a scrap over the cutter, held down, and measure how deep it was cut. "
    "Off by as much every time: throat plate or straightedge is not level with the table. Build the next stack to the height given."
)

# At the machine

setup.step("Unplug. Clean the table, the throat plate and the blocks; see that the throat plate is level with the table.")
setup.step("Cutter well below the height. Stack {stack} on the table close to it: together {reach}.")
setup.step("The stack is {short} short of {height}: lay feeler gauges or slips of paper so thick on it.", when=short <= inches("1/64"))
setup.step(
    "Lay a straightedge on the stack so that it hangs over the cutter. With one hand press it down on the stack: it must lie flat and not rock."
)
_touch = error <= inches("0.0005")
_light = And(Not(_touch), error <= inches("1/64"))
setup.step(
    "Raise the cutter, turning it by hand as it comes near: its highest tooth just brushes the straightedge and does not lift it.", when=_touch
)
setup.step(
    "Raise the cutter, turning it by hand as it comes near: the stack is {over} over {height}, so leave a hair of light, "
    "a feeler gauge or a slip of paper so thick, between its highest tooth and the straightedge.",
    when=_light,
)
setup.step(
    "Raise the cutter, turning it by hand as it comes near: the stack is {over} over {height}, so stop as far under the straightedge, by a rule.",
    when=error > inches("1/64"),
)
setup.step("Come to the height from below, so that the play in the screw is taken up. Too far: go well back and come up again.")
setup.step("Lock the height, feel again, take blocks and straightedge away. Then the plug.")
setup.step("Cut a scrap and measure how deep it is.")

# What is run

setup.operation(
    "height", "groove and rabbet", "Height by blocks", reach, stack, face="Straightedge on the blocks, over the cutter.", reading=measured_depth
)

# The pictures

_all = larger(height, reach)
_wide = _all / 4
_at = _all * number("3/5")
# the top of a blade seen from its side: shares of its width and of its height
_ARC = [(number(x) / 8, 1 - (number(x) / 4 - 1) ** 2 / 4) for x in range(9)] + [(number(1), number(0)), (number(0), number(0))]
setup.picture(
    "A straightedge on the blocks, the cutter raised until it brushes; what the stack lacks is hatched, the height wanted broken.",
    box("table", -_wide / 2, -_all / 10, _at + 2 * _wide, _all / 10),
    area("blade", *[(_at + _wide * x, height * y) for x, y in _ARC]),
    box("metal", 0, starts_of(0, stack), _wide, stack),
    box("waste", 0, reach, _wide, short, when=error < 0),
    box("wood", -_wide / 2, _all, _at + 2 * _wide, _all / 8),
    line("hidden", (-_wide / 2, height), (_at + _wide * number("3/2"), height), when=error > inches("0.0005")),
    dimension(reach, (0, 0), (0, reach), "left"),
    dimension(height, (_at + _wide, 0), (_at + _wide / 2, height), "right"),
    label("straightedge", (_at / 2 + _wide / 2, _all * number("17/16"))),
)


def _column(place: int, row: Any, made: Any) -> list[Shape]:
    """One of the stacks that come next, beside the others."""
    left = _all * number("9/20") * (place - 1)
    return [box("metal", left, starts_of(0, row), _wide, row), label("{" + made.name + "}", (left + _wide / 2, 0), side="below")]


setup.picture(
    "The next three stacks, the best of them first, to one scale; the broken line is the height wanted.",
    *_column(1, second, second_reach),
    *_column(2, third, third_reach),
    *_column(3, fourth, fourth_reach),
    line(
        "hidden",
        (-_wide / 4, height),
        (_all * number("9/20") * smaller(choices_in(_ranked) - 2, 2) + _wide * number("5/4"), height),
        when=choices_in(_ranked) > 1,
    ),
)

setup.source("Arithmetic: every set of at most so many blocks is weighed, and of two that reach one height the one of fewer pieces is taken.")

setup.onward("groove", "The groove of that depth", groove_depth=height)
setup.onward("dado-stack", "The width of a dado head")
