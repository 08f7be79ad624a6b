"""What items of a job say differently of one thing: a hinge of four inches on one card, of three on the next.

Cards that lead on to one another carry what is the same for both. Where a job has one item of each, what they were
given is held against each other; with several nobody can say which belong together.
"""

from shopcalc.portable.links import any_in
from shopcalc.portable.naming import input_of
from shopcalc.portable.sentences import unbroken
from shopcalc.portable.snap import above, size_of
from shopcalc.portable.writing import quoted

APART = 64  # to a part in this of an inch two lengths are one


def shown_doubts(worked):
    """A line for each length that two items of a job have differently."""
    told = []
    only = only_ones(worked)
    for slug in only:
        each = only[slug]
        for onward in each["about"]["onwards"]:
            if onward["slug"] in only:
                for carried in onward["carry"]:
                    said = differing(each, only[onward["slug"]], carried)
                    # two cards that lead on to each other ask once
                    if len(said) > 0 and "; ".join([said[1], said[0]]) not in told:
                        told.append("; ".join(said))
    return [{"text": text} for text in told]


def only_ones(worked):
    """The items that are the only one of their card, by card; what is refused says nothing."""
    counts = {}
    for each in worked:
        slug = each["item"]["setup"]
        counts[slug] = counts[slug] + 1 if slug in counts else 1
    found = {}
    for each in worked:
        if counts[each["item"]["setup"]] == 1 and not each["refused"]:
            found[each["item"]["setup"]] = each
    return found


def differing(each, other, carried):
    """What the two items say of what one carries to the other, where that is a length and not the same."""
    mine = each["found"]["benches"][0]
    theirs = other["found"]["benches"][0]
    name = carried[0]
    declared = input_of(other["about"], name)
    sources = [source[0] for source in carried[1] if source[0] in mine["known"] and not any_in(source[1], mine["raised"])]
    if len(sources) == 0 or declared["kind"] != "length" or name not in theirs["known"]:
        return []
    if not above(size_of(mine["known"][sources[0]] - theirs["known"][name]) * APART, 1):
        return []
    return [said_of(sources[0], each, mine), said_of(name, other, theirs)]


def said_of(name, each, bench):
    """What an item has for a value, in the words of its own card."""
    declared = input_of(each["about"], name)
    label = each["about"]["results"][name]["label"] if declared is None else declared["label"]
    return each["item"]["label"] + ": " + label + " " + unbroken(quoted(bench["written"][name], "length", bench["shop"]["metric"]))
