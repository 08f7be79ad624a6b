"""Sets a bench: one card being worked, with everything that is known of it.

A `bench` is a dictionary: `about` and `formulas` of its setup, the `shop`, the `texts` typed, the values
`known`, each of them `written`, the `kinds` of values, the checks `raised`, whether numbers in sentences are
`unbroken` (as on a page), and the `world` (all setups, units, arithmetic). In a card inside another, `passes` are the
parts of that one that go through its operations.
"""

from shopcalc.portable.arithmetic.snap import above, nearest_of, same
from shopcalc.portable.cards.work import read_columns, read_entries, work_out
from shopcalc.portable.measures.writing import DIVISIONS, TAPES, decimal_text, millimetres, write_value

FINEST = 128  # a correction is small, and is read off a rule or calipers rather than the tape


def read_and_set(world, slug, query, shop):
    """Read a setup's entries and, if all can be read, set its bench. Returns both; no bench while any is wrong."""
    about = world["setups"][slug]["about"]
    entries = read_entries(about, query, shop, world)
    wrong = len(entries["errors"].keys()) > 0
    return {"entries": entries, "benches": [] if wrong else [set_bench(world, slug, entries, shop)]}


def set_bench(world, slug, entries, shop):
    """Work a setup out and write every value it has."""
    about = world["setups"][slug]["about"]
    formulas = world["setups"][slug]["formulas"]
    worked = work_out(about, formulas, entries["values"], world["numbers"])
    bench = {
        "about": about,
        "formulas": formulas,
        "shop": shop,
        "world": world,
        "texts": entries["texts"],
        "known": worked["known"],
        "raised": worked["raised"],
        "written": {},
        "kinds": {},
        "unbroken": False,
        "inner": None,
        "passes": {},
    }
    for declared in about["inputs"]:
        if declared["name"] in bench["known"]:
            write_known(bench, declared["name"], declared["kind"], FINEST, "none" if declared["kind"] == "lengths" else "nearest")
            if declared["kind"] == "length":
                as_measured(bench["written"][declared["name"]], bench["known"][declared["name"]], shop, world["units"])
            for column in declared["columns"]:
                write_known(bench, column["name"], column["kind"], FINEST, "nearest")
    for name in about["results"]:
        result = about["results"][name]
        if name in bench["known"] and result["role"] != "inner":
            write_known(bench, name, result["kind"], division_of(result, bench), result["rounding"])
    return bench


def is_stopped(bench):
    """Whether a stop has taken every result away: then there is nothing to do, and nothing to draw."""
    about = bench["about"]
    stops = [name for name in bench["raised"] if about["checks"][name]["level"] == "stop"]
    left = [name for name in about["results"] if name in bench["known"]]
    return len(stops) > 0 and len(left) == 0


def write_known(bench, name, kind, division, rounding):
    """Write one value, and remember what kind it is."""
    shop = bench["shop"]
    bench["written"][name] = write_value(bench["known"][name], kind, division, rounding, shop["metric"], bench["world"]["units"])
    bench["kinds"][name] = kind


def as_measured(written, length, shop, units):
    """What was measured is quoted as it is: by its fraction if it is one, else by its decimals, never rounded to a tick."""
    if shop["metric"]:
        exact = measured_in_mm(millimetres(length, units))
    else:
        exact = written["text"] if same(length * FINEST, nearest_of(length * FINEST)) else measured_in_inches(length)
    written["text"] = exact
    written["bare"] = exact
    written["lean"] = ""
    written["amount"] = ""


def measured_in_inches(length):
    """Decimals of an inch: three, or four where ten-thousandths were typed and where a thousandth would be much of it."""
    thousandths = same(nearest_of(length * 1000), length * 1000)
    finer = above(1, length * 100) or same(nearest_of(length * 10000), length * 10000)
    return decimal_text(length, 4 if finer and not thousandths else 3, False)


def measured_in_mm(mm):
    """Millimetres to the tenth, or to the hundredth where hundredths were typed and where a tenth would be most of it."""
    tenths = same(nearest_of(mm * 10), mm * 10)
    hundredths = above(1, mm) or same(nearest_of(mm * 100), mm * 100)
    return decimal_text(mm, 2 if hundredths and not tenths else 1, False) + " mm"


def division_of(result, bench):
    """The tape's division for a result: its own, its own input's, or the shop's."""
    if result["role"] == "correction":
        return FINEST
    if len(result["division"]) == 0:
        return bench["shop"]["division"]
    if result["division"] in TAPES:
        return int(result["division"])
    found = DIVISIONS[0]
    for division in DIVISIONS:
        if not above(division, bench["known"][result["division"]]):
            found = division
    return found


def inner_benches(bench):
    """The benches of the cards inside this one, worked out when they are first asked for; none inside one that is stopped."""
    if bench["inner"] is None:
        found = []
        for included in [] if is_stopped(bench) else bench["about"]["includes"]:
            found = found + included_bench(included, bench, bench["world"])
        bench["inner"] = found
    return bench["inner"]


def included_bench(included, bench, world):
    """The bench of one included setup, or nothing while a value it is given is missing."""
    about = world["setups"][included["slug"]]["about"]
    values = {}
    texts = {}
    given = {}
    for pair_of in included["given"]:
        given[pair_of[0]] = pair_of[1]
    for declared in about["inputs"]:
        name = declared["name"]
        if name in given:
            # a formula over values that a stop took away cannot be worked out, and gives no card
            value = world["numbers"]["attempt"](bench["formulas"][given[name]], bench["known"], world["numbers"])
            if value is None:
                return []
            values[name] = value
            texts[name] = given_text(value, declared)
        elif name in bench["known"]:
            values[name] = bench["known"][name]
            texts[name] = bench["texts"][name]
        if name in values:
            read_columns(declared, values, world["numbers"])
    inner = set_bench(world, included["slug"], {"values": values, "texts": texts}, bench["shop"])
    inner["unbroken"] = bench["unbroken"]
    inner["passes"] = included["passes"]
    return [inner]


def given_text(value, declared):
    """A value that another card gives, as it would be typed."""
    if len(declared["options"]) > 0:
        for place, option in enumerate(declared["options"]):
            if same(place, value):
                return option[0]
    if declared["kind"] == "lengths":
        return ", ".join([decimal_text(each, 6, True) + " in" for each in value])
    marks = {"length": " in", "temperature": " F", "percent": "%"}
    return decimal_text(value, 6, True) + (marks[declared["kind"]] if declared["kind"] in marks else "")
