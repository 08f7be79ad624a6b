"""Puts values into sentences and into sums: `{fence}` becomes `17/32 in`."""

from shopcalc.portable.arithmetic.snap import same
from shopcalc.portable.cards.naming import input_of
from shopcalc.portable.measures.characters import DIGITS
from shopcalc.portable.measures.parsing import read_length
from shopcalc.portable.measures.writing import ROWS, quoted, quoted_length, write_value


def option_text(about, name, known):
    """The option of a choice that is chosen."""
    for place, option in enumerate(input_of(about, name)["options"]):
        if same(place, known[name]):
            return option[1]
    return ""


def fill(text, bench, plain):
    """`text` with every `{name}` filled by its value: as in a sentence, or `plain` as in a sum."""
    out = ""
    name = ""
    inside = False
    for one in text:
        if one == "{":
            inside = True
            name = ""
        elif one == "}":
            inside = False
            out = out + value_text(name, bench, plain)
        elif inside:
            name = name + one
        else:
            out = out + one
    return out


def value_text(name, bench, plain):
    """One value inside a sentence or a sum; `{1/4 in}` is that length in the shop's own unit."""
    if is_literal(name):
        return literal_text(name, bench)
    kind = bench["kinds"][name]
    if kind == "choice":
        return option_text(bench["about"], name, bench["known"])
    written = bench["written"][name]
    if plain and kind == "temperature":
        # the constants beside it in a sum are for degrees Fahrenheit, whatever the shop reads
        return write_value(bench["known"][name], kind, 64, "nearest", False, bench["world"]["units"])["text"]
    if plain:
        return written["text"] if len(written["lean"]) == 0 else written["decimal"]
    text = quoted(written, kind, bench["shop"]["metric"])
    return text if kind in ROWS else in_one_piece(text, bench)


def literal_text(length, bench):
    """A length that a text names as it is, in the shop's unit."""
    world = bench["world"]
    value = read_length(length, bench["shop"], world["units"], world["numbers"])["value"]
    text = quoted_length(value, "nearest", {"division": 128, "metric": bench["shop"]["metric"]}, world["units"])
    return in_one_piece(text, bench)


def is_literal(name):
    """Whether what stands between braces is a length rather than the name of one."""
    return name[0] in DIGITS


def in_one_piece(text, bench):
    """A number with its unit, which on a page no line may end inside."""
    return unbroken(text) if bench["unbroken"] else text


def unbroken(text):
    """A number that no line may end inside: 2 1/4 broken after the 2 reads as 1/4."""
    return text.replace(" ", "\u00a0")


def spell(text):
    """`text` with every `{a_name}` as the words `a name`."""
    out = ""
    for one in text:
        if one == "_":
            out = out + " "
        elif one != "{" and one != "}":
            out = out + one
    return out


def fill_known(text, bench):
    """A message with its values; a value that a stop took away is left out as a dash."""
    for name in quoted_names(text):
        if name not in bench["known"]:
            text = text.replace("{" + name + "}", "\u2014")
    return fill(text, bench, False)


def quoted_names(text):
    """The names between braces, without the lengths that stand there as they are."""
    names = []
    for part in text.split("{"):
        if "}" in part and not is_literal(part):
            names.append(part.split("}")[0])
    return names
