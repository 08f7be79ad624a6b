"""One section's parts laid on boards: what to buy, and what is cut from each."""

from sympy import And, Eq

from shopcalc.declare import Setup
from shopcalc.terms import (
    boards_bought,
    boards_cost,
    boards_least,
    boards_priced,
    boards_used,
    boards_waste,
    lay_on_boards,
    left_out,
    longest_board,
    longest_part,
)

setup = Setup(
    slug="boards",
    title="Parts on boards",
    stand="at the desk",
    job="How many boards to buy for the parts of one section, and which parts are cut from which board.",
    machines=("long boards", "bench"),
    icon="M2 5h20v5H2zM2 14h20v5H2zM9 5v5M15 5v5M7 14v5M17 14v5",
)

# What is wanted, and what there is

parts = setup.pieces(
    "parts",
    "Parts",
    'slat 46 1/2" x6, rail 22 15/16" x4, leg 16 1/4" x4',
    "Length x how many, with commas between; a name may stand before or after. All of one width and thickness. At most 200.",
    most=200,
)
on_hand = setup.lengths(
    "on_hand",
    "Boards on hand",
    "",
    "Each board you own, its sound length, with commas between; 96 x3 for three of one length. They are used first. Blank for none.",
    most=50,
    none=True,
)
lengths = setup.stock(
    "lengths",
    "Lengths to buy",
    '96", 120"',
    "What the yard sells; write a price after @, such as 96 @ 12.50. With a price on every length the cheapest is sought, else the fewest.",
    most=50,
    none=True,
)
kerf = setup.length("kerf", "Saw kerf", "1/8", "Calipers across a cut in scrap, not across the blade.", zero=True, shop=True)
trim = setup.length("trim", "Squaring takes", "1/2", "Taken off one end of every board to square it, its cut included.", zero=True)

# What comes of it

layout = setup.layout("layout", "On the boards", lay_on_boards(parts, on_hand, lengths, kerf, trim))
without = setup.size("left_over", "Parts without a board", left_out(parts, layout), kind="pieces", when=longest_part(left_out(parts, layout)) > 0)
count = setup.setting("count", "Boards to buy", boards_bought(layout), kind="count")
cost = setup.setting("cost", "Cost", boards_cost(layout), kind="price", when=boards_priced(layout) > 0)
waste = setup.size("waste", "Wasted length", boards_waste(layout))
waste_percent = setup.setting("waste_percent", "Waste", 100 * boards_waste(layout) / boards_used(layout), kind="percent")
fewest = setup.size("fewest", "Boards to buy, not fewer than", boards_least(layout), kind="count")
proven = setup.size("proven", "Fewest possible", Eq(count, fewest), kind="truth")
cheapest = setup.size("cheapest", "Lowest cost possible", boards_priced(layout) > 1, kind="truth", when=boards_priced(layout) > 0)

# What can go wrong

_all = (count, cost, waste, waste_percent, fewest, proven, cheapest)
_longest = longest_board(on_hand, lengths) - trim
setup.stop(
    "too_long",
    longest_part(without) > _longest,
    "Too long for any board, squared: {left_over}. Add a longer length.",
    change=lengths,
    spoils=_all,
)
setup.stop(
    "used_up",
    longest_part(without) <= _longest,
    "The boards on hand are used up, and no length to buy takes {left_over}: add one that does.",
    change=lengths,
    spoils=_all,
)
setup.note("as_few_as_can_be", And(Eq(count, fewest), count > 0), "Fewest possible: no layout buys fewer boards.")
setup.note("as_cheap_as_can_be", And(boards_priced(layout) > 1, cost > 0), "Lowest cost possible at these prices.")
setup.caution("no_kerf", Eq(kerf, 0), "No kerf: every cut takes its width from the next part.", change=kerf)

# At the saw

setup.step("Buy {count}, in the lengths above. Look every board over first: a knot or split where a part lies moves that part.", when=count > 0)
setup.step("Square one end of each board: {trim} is allowed for it.", when=And(trim > 0, count >= 0))
setup.step("Cut the longest parts first, in the order drawn, each measured from the fresh end after the cut before it.", when=count >= 0)
setup.step("Parts of one length all go against one stop.", when=count >= 0)
setup.step("Mark each part with its name as it comes off, and cross it off the list.", when=count >= 0)
setup.step("Keep what is left over until the job is together.", when=count >= 0)

setup.source(
    "Gilmore and Gomory, A Linear Programming Approach to the Cutting-Stock Problem, Operations Research 9 (1961): "
    "patterns, and the bound that proves a layout (from memory)."
)
setup.source("Arithmetic: parts fit a board when their sum and a kerf between neighbours are at most its length less what squaring takes.")

setup.onward("slats", "Slats at even gaps")
