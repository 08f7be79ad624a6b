"""What items of a job say differently of one thing: a hinge of four inches on one card, of three on the next.

Cards that lead on to one another carry what is the same for both. Where a job has one item of each, what they were
given is held against each other; with several nobody can say which belong together.
"""

from shopcalc.portable.links import any_in
from shopcalc.portable.naming import input_of
from shopcalc.portable.snap import above, size_of
from shopcalc.portable.writing import quoted

APART = 64  # to a part in this of an inch two lengths are one


def shown_doubts(worked):
    """A line for each length that two items of a job have differently."""
    told = []
    rows = []
    for each in worked:
        for onward in each["about"]["onwards"]:
            others = [one for one in worked if one["item"]["setup"] == onward["slug"]]
            if len(others) == 1 and is_only_one(each, worked) and not each["refused"] and not others[0]["refused"]:
                for carried in onward["carry"]:
                    text = differing(each, others[0], carried)
                    # two cards that lead on to each other ask once
                    key = carried[0] + " " + others[0]["item"]["setup"] + " " + each["item"]["setup"]
                    if len(text) > 0 and carried[0] + " " + each["item"]["setup"] + " " + others[0]["item"]["setup"] not in told:
                        told.append(key)
                        rows.append({"text": text})
    return rows


def is_only_one(each, worked):
    """Whether no other item of a job is of the same card."""
    return len([one for one in worked if one["item"]["setup"] == each["item"]["setup"]]) == 1


def differing(each, other, carried):
    """What two items have for what one carries to the other, where that is a length and not the same."""
    mine = each["found"]["benches"][0]
    theirs = other["found"]["benches"][0]
    name = carried[0]
    declared = input_of(other["about"], name)
    sources = [source[0] for source in carried[1] if source[0] in mine["known"] and not any_in(source[1], mine["raised"])]
    if len(sources) == 0 or declared["kind"] != "length" or name not in theirs["known"]:
        return ""
    if not above(size_of(mine["known"][sources[0]] - theirs["known"][name]) * APART, 1):
        return ""
    metric = mine["shop"]["metric"]
    said = [quoted(mine["written"][sources[0]], "length", metric), quoted(theirs["written"][name], "length", metric)]
    return (
        declared["label"] + ": " + said[0] + " for " + each["item"]["label"] + ", " + said[1] + " for " + other["item"]["label"] + ". Are both meant?"
    )
