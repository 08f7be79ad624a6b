"""The names and the order of a card's values and formulas, as they follow from its data.

The phone is sent formulas in this order and without their keys, and in them each value by a short name: on the way
that is a tenth of everything it downloads.
"""

from shopcalc.portable.measures.characters import LETTERS


def value_names(about):
    """The names of all values: inputs, what tables say of them, results, each as declared."""
    names = [one["name"] for one in about["inputs"]]
    for one in about["inputs"]:
        for column in one["columns"]:
            names.append(column["name"])
    for name in about["results"]:
        names.append(name)
    return names


def input_of(about, name):
    """What a card says of one of its inputs, or None where it has none of that name."""
    for declared in about["inputs"]:
        if declared["name"] == name:
            return declared
    return None


def short_name(place):
    """The short name of the value at a place: a letter, or two."""
    count = len(LETTERS)
    first = place // count
    last = LETTERS[place - first * count]
    return last if first == 0 else LETTERS[first - 1] + last


def formula_keys(about):
    """The keys of all formulas, in the order of `Setup.formulas`."""
    keys = []
    for name in about["results"]:
        result = about["results"][name]
        keys.append(name)
        if result["when"]:
            keys.append(applies_key(name))
        for place in range(len(result["working"]) - 1):
            keys.append(case_key(name, place))
    for name in about["checks"]:
        keys.append(check_key(name))
    for word in about["lines"]:
        for place, line in enumerate(about["lines"][word]):
            if line["when"]:
                keys.append(line_key(word, place))
    for page, picture in enumerate(about["pictures"]):
        for place, shape in enumerate(picture["shapes"]):
            keys.append(shape_key(page, place))
            if shape["when"]:
                keys.append(shown_key(page, place))
    return keys + other_keys(about)


def other_keys(about):
    """The keys of the formulas of parts, of included cards, of operations, and of inputs that are not always used."""
    keys = []
    for place, part in enumerate(about["parts"]):
        keys.append(part_key(place))
        if part["when"]:
            keys.append(cut_key(place))
    for included in about["includes"]:
        for given in included["given"]:
            keys.append(given[1])
    for place, operation in enumerate(about["operations"]):
        if operation["when"]:
            keys.append(run_key(place))
    for one in about["inputs"]:
        if one["when"]:
            keys.append(used_key(one["name"]))
    return keys


def applies_key(name):
    """The key of the condition under which a result is worked out."""
    return "when " + name


def check_key(name):
    """The key of the relation of a check."""
    return "check " + name


def shape_key(page, place):
    """The key of the numbers of a shape of a picture."""
    return "shape " + str(page) + " " + str(place)


def shown_key(page, place):
    """The key of the condition under which a shape is drawn."""
    return "shown " + str(page) + " " + str(place)


def part_key(place):
    """The key of the numbers of a part: how many, its length, width and thickness."""
    return "part " + str(place)


def cut_key(place):
    """The key of the condition under which a part is cut."""
    return "part " + str(place) + " when"


def run_key(place):
    """The key of the condition of an operation."""
    return "run " + str(place)


def used_key(name):
    """The key of the condition under which an input is used."""
    return "used " + name


def line_key(word, place):
    """The key of the condition of a step, of a sentence of the trial, of a machine."""
    return word + " " + str(place)


def case_key(name, place):
    """The key of the condition of one case of a formula."""
    return "case " + name + " " + str(place)
