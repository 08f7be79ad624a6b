"""What items of a job say differently of one thing: a hinge of four inches on one card, of three on the next.

Cards that lead on to one another carry what is the same for both, and so items are held against each other. Where there
are several of a card nobody has said which belong together: of the two cards each item of the fewer is held against
those of the other, and nothing is asked of one that agrees with any of them, or of two that have nothing alike.
"""

from shopcalc.portable.arithmetic.snap import above, at_least, magnitude, smaller
from shopcalc.portable.cards.links import any_in, item_address
from shopcalc.portable.cards.naming import input_of
from shopcalc.portable.cards.sentences import unbroken
from shopcalc.portable.measures.writing import quoted

APART = 64  # to a part in this of an inch two lengths are one, since what is typed over is rounded to a tape
MEASURED = 500  # or in this, of a scrap that was measured: a joint is made to it
LENGTHS_AGREED = 2  # for two slopes to be held against each other
APART_BY_ANGLE = 20  # or in this of a degree two angles
UNLIKE = 2  # parts of an inch: further apart, and one twice the other, two lengths are of two things


def shown_doubts(worked, shop):
    """A line for each length that two items of a job have differently, with the way to either."""
    told = {}
    doubts = []
    by_card = items_by_card(worked)
    for slug in by_card:
        for onward in by_card[slug][0]["about"]["onwards"]:
            if onward["slug"] in by_card:
                for doubt in doubts_between(by_card[slug], by_card[onward["slug"]], onward["carry"]):
                    texts = [side["text"] for side in doubt]
                    # two cards that lead on to each other ask once
                    if "; ".join(texts) not in told:
                        told["; ".join(texts)] = True
                        told["; ".join([texts[1], texts[0]])] = True
                        doubts.append({"text": "; ".join(texts), "sides": [shown_side(side, shop) for side in doubt]})
    return doubts


def items_by_card(worked):
    """The items by card, of those that are alike the first; what is refused says nothing."""
    found = {}
    seen = {}
    for each in worked:
        if not each["refused"] and each["asked"] not in seen:
            seen[each["asked"]] = True
            slug = each["item"]["setup"]
            if slug not in found:
                found[slug] = []
            found[slug].append(each)
    return found


def doubts_between(sources, targets, carry):
    """What the items of one card and those of the next, to which it carries some lengths, have differently."""
    found = []
    if len(targets) <= len(sources):
        for target in targets:
            found = found + nearest_doubts([differences(source, target, carry) for source in sources])
    else:
        for source in sources:
            found = found + nearest_doubts([differences(source, target, carry) for target in targets])
    return found


def nearest_doubts(pairs):
    """What the two say differently that agree in most, or of such are nearest: they are likely meant for one another.

    Nothing where no two are: a slat and a panel of another width.
    """
    likely = [each for each in pairs if each["alike"] or len(each["doubts"]) == 0]
    if len(likely) == 0:
        return []
    nearest = likely[0]
    for each in likely:
        more = len(each["doubts"]) - len(nearest["doubts"])
        if more < 0 or (more == 0 and above(nearest["off"], each["off"])):
            nearest = each
    return nearest["doubts"]


def differences(source, target, carry):
    """All that two items say differently, and by how much together; and whether anything they say is `alike`."""
    found = [compared(source, target, carried) for carried in carry]
    # two slopes are any two slopes, unless all else says that they are of one thing
    agreed = len([one for one in found if one["alike"] and len(one["sides"]) == 0])
    doubts = [one["sides"] for one in found if len(one["sides"]) > 0 and (agreed >= LENGTHS_AGREED or not one["is_angle"])]
    off = 0
    for doubt in doubts:
        off = off + doubt[0]["off"]
    return {"off": off, "doubts": doubts, "alike": len([one for one in found if one["alike"]]) > 0}


def is_unlike(one, other):
    """Whether two lengths are too far apart to be of one thing."""
    return above(magnitude(one - other) * UNLIKE, 1) and at_least(magnitude(one - other), smaller(one, other))


def compared(each, other, carried):
    """What two items say of what one carries to the other as `sides`, where that is not the same; whether it is a length that is `alike`."""
    mine = each["found"]["benches"][0]
    theirs = other["found"]["benches"][0]
    name = carried[0]
    declared = input_of(other["about"], name)
    sources = [source[0] for source in carried[1] if is_said(source[0], each) and not any_in(source[1], mine["raised"])]
    if len(sources) == 0 or declared["kind"] not in ["length", "angle"] or not is_said(name, other):
        return {"sides": [], "alike": False, "is_angle": False}
    said_by = sources[0]
    is_angle = declared["kind"] == "angle"
    if is_angle:
        # a roof has two pitches, and its rafter the one that it is under
        for one in sources:
            if above(magnitude(mine["known"][said_by] - theirs["known"][name]), magnitude(mine["known"][one] - theirs["known"][name])):
                said_by = one
    off = magnitude(mine["known"][said_by] - theirs["known"][name])
    alike = not is_angle and not is_unlike(mine["known"][said_by], theirs["known"][name])
    if not above(off * finest_of(declared, input_of(each["about"], said_by)), 1):
        return {"sides": [], "alike": not is_angle, "is_angle": is_angle}
    return {"sides": [side_of(said_by, each, mine, off), side_of(name, other, theirs, off)], "alike": alike, "is_angle": is_angle}


def is_said(name, each):
    """Whether an item has a value that its card uses: what no cap is let in for has no inside face of one."""
    return name in each["found"]["benches"][0]["known"] and name not in each["found"]["entries"]["idle"]


def finest_of(declared, given):
    """Into how many parts an inch, or a degree, is divided for two sizes to be one; `given` is the input that one comes from, or None."""
    if declared["kind"] == "angle":
        return APART_BY_ANGLE
    return MEASURED if given is not None and given["reading"] else APART


def side_of(name, each, bench, off):
    """What an item has for a value, in the words of its own card."""
    declared = input_of(each["about"], name)
    label = each["about"]["results"][name]["label"] if declared is None else declared["label"]
    text = each["item"]["label"] + ": " + label + " " + unbroken(quoted(bench["written"][name], bench["kinds"][name], bench["shop"]["metric"]))
    return {"text": text, "each": each, "off": off}


def shown_side(side, shop):
    """One side of a doubt with the way to its card."""
    return {"text": side["text"], "address": item_address(side["each"], shop)}
