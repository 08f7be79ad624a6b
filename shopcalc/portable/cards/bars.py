"""What a card, or a job, shows of parts laid on boards: each board as a bar to scale, with its cuts in words."""

from shopcalc.portable.arithmetic.snap import above, larger, nearest_of
from shopcalc.portable.cards.sentences import unbroken
from shopcalc.portable.cards.tape import hundredths
from shopcalc.portable.measures.writing import quoted_length, write_value

BAR_WIDE = 35200  # hundredths of the drawing's units for the longest board
BAR_LEFT = 400
BAR_LETTER = 8


def laid_layouts(bench):
    """The layouts that a card has, with their parts, kerf and trim; none while a part is without a board."""
    found = []
    known = bench["known"]
    for name in bench["about"]["results"]:
        if bench["about"]["results"][name]["kind"] == "layout" and name in known and len(known[name]["too_long"]) == 0:
            one = {"name": name, "layout": known[name], "kerf": known[name]["kerf"], "trim": known[name]["trim"]}
            one["labels"] = known[name]["labels"]
            one["lengths"] = known[name]["lengths"]
            found.append(one)
    return found


def layout_data(layout, labels, lengths, numbers):
    """A layout as JSON has it: each board with its cuts in order."""
    found = []
    for board in layout["boards"]:
        cuts = [{"label": labels[piece], "length": numbers["plain"](lengths[piece])} for piece in board["pieces"]]
        found.append({"length": numbers["plain"](board["length"]), "owned": board["owned"], "cuts": cuts, "rest": numbers["plain"](board["rest"])})
    return found


def shown_boards(name, boards, labels, lengths, kerf, trim, shop, units):
    """The boards of a layout, or bars with what they are taken `from`, as pictures for `bars.mustache`, boards that are cut alike as one.

    `name` begins the ids and is its own for every layout on a page; `labels` and `lengths` are of the single parts, in
    the order in which `lay_parts` had them. Each picture's `caption` says in words what is cut.
    """
    longest = 0
    for board in boards:
        longest = larger(longest, board["length"])
    drawn = []
    places = {}
    for board in boards:
        cuts = cuts_in_words([named_size(labels[piece], unbroken(written_size(lengths[piece], shop, units))) for piece in board["pieces"]])
        head = length_said(board["length"], "nearest", shop, units) + (board["from"] if "from" in board else " on hand" if board["owned"] else "")
        key = "b" + head + ": " + ", ".join(cuts) + board_use(board)
        if key in places:
            drawn[places[key]]["count"] = drawn[places[key]]["count"] + 1
            continue
        places[key] = len(drawn)
        # an offcut is square already
        squared = board["trim"] if "trim" in board else trim
        one = bar_of(board, lengths, kerf, squared, longest, shop, units)
        one["id"] = name + "-" + str(len(drawn))
        one["count"] = 1
        one["caption"] = head + ": " + ", ".join(cuts)
        if above(board["rest"], 0):
            one["caption"] = one["caption"] + "; " + length_said(board["rest"], "nearest", shop, units) + " left" + board_use(board)
        drawn.append(one)
    for one in drawn:
        one["caption"] = str(one["count"]) + " of " + one["caption"] + "."
        one.pop("count")
    return drawn


def board_use(board):
    """What the rest of a board is kept for, where another section takes it."""
    return board["use"] if "use" in board else ""


def cuts_in_words(sizes):
    """The cuts of a board in order, those that are alike as `rail 22 15/16 x5`."""
    said = []
    many = 0
    for place, size in enumerate(sizes):
        many = many + 1
        if place == len(sizes) - 1 or sizes[place + 1] != size:
            said.append(size if many == 1 else size + " x" + str(many))
            many = 0
    return said


def named_size(label, size):
    """A part in words: its label, if it has one, and its size."""
    return size if len(label) == 0 else label + " " + size


def length_said(length, direction, shop, units):
    """A length in a sentence of a page, which no line ends inside."""
    return unbroken(quoted_length(length, direction, shop, units))


def written_size(length, shop, units):
    """A length as it is marked off: on the next mark, as in the cut list, rather than short."""
    return write_value(length, "length", shop["division"], "up", shop["metric"], units)["text"]


def bar_of(board, lengths, kerf, trim, longest, shop, units):
    """One board to scale: what squaring takes and what is left hatched, a mark at every cut, the size on each part it fits on."""
    areas = []
    cuts = ""
    words = []
    at = trim
    areas.append({"style": "waste", "path": bar_path(0, board["length"], longest)})
    for piece in board["pieces"]:
        end = at + lengths[piece]
        left = bar_place(at, longest)
        right = bar_place(end, longest)
        areas.append({"style": "wood", "path": bar_path(at, end, longest)})
        cuts = cuts + "M" + hundredths(right) + " 2v40"
        for word in words_on(written_size(lengths[piece], shop, units), (right - left) // 100):
            word["x"] = hundredths((left + right) // 2)
            words.append(word)
        at = end + kerf
    return {"view": "0 0 360 44", "areas": areas, "lines": [], "marks": [{"of": "", "path": cuts}], "words": words}


def words_on(text, wide):
    """A size on a part so wide: in one line, else the fraction under the whole inches or without its mm, else nothing."""
    lines = [text]
    if len(text) * BAR_LETTER > wide:
        lines = [line for line in text.split(" ") if line != "mm"]
    words = []
    for place, line in enumerate(lines):
        if len(line) * BAR_LETTER > wide or len(lines) > 2:
            return []
        y = "26" if len(lines) == 1 else "20" if place == 0 else "33"
        words.append({"style": "", "of": "", "y": y, "anchor": "middle", "text": line})
    return words


def bar_place(x, longest):
    """A place along a board in hundredths of the drawing's units."""
    return BAR_LEFT + nearest_of(x * BAR_WIDE / longest)


def bar_path(start, end, longest):
    """A stretch of a board as a rectangle."""
    left = bar_place(start, longest)
    return "M" + hundredths(left) + " 7h" + hundredths(bar_place(end, longest) - left) + "v30H" + hundredths(left) + "Z"
