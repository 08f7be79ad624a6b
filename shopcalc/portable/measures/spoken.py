"""Says a measurement in words, for whoever listens: a screen reader makes a date of 19/32."""

from shopcalc.portable.measures.characters import DIGITS
from shopcalc.portable.measures.writing import MINUS, quoted

SMALL_WORDS = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen"
TENS_WORDS = "twenty thirty forty fifty sixty seventy eighty ninety"
PART_WORDS = {
    "2": "half",
    "4": "quarter",
    "8": "eighth",
    "16": "sixteenth",
    "32": "thirty-second",
    "64": "sixty-fourth",
    "128": "hundred-twenty-eighth",
}


def spoken(written, kind, metric):
    """A value as it is said: a length in words, with its feet from a foot on; anything else as it is read."""
    if kind != "length" or metric:
        return quoted(written, kind, metric)
    said = in_words(written["bare"]) if len(written["lean"]) == 0 else in_words(written["bare"]) + ", " + written["lean"]
    return said if len(written["feet"]) == 0 else said + "; " + in_words(written["feet"])


def in_words(text):
    """`1 3/8` as `one and three eighths`, `6 ft 6 1/2 in` as `six feet six and one half`; decimals stay as they are."""
    said = []
    before = ""
    for part in text.replace(MINUS, "minus ").split(" "):
        slash = part.find("/")
        if slash > 0:
            top = part[0:slash]
            name = PART_WORDS[part[slash + 1 : len(part)]]
            joined = "" if before == "" or before == "minus" else "and "
            said.append(joined + count_words(top) + " " + name + ("" if top == "1" else "s"))
        elif part == "ft":
            said.append("foot" if before == "1" else "feet")
        elif part != "in":
            said.append(count_words(part) if is_counted(part) else part)
        before = part
    return " ".join(said)


def is_counted(part):
    """Whether a part of a text is a whole number that has a word: up to 99."""
    return len(part) > 0 and len(part) < 3 and DIGITS.find(part[0]) >= 0


def count_words(digits):
    """A whole number of up to two digits in words, a longer one as it is."""
    if not is_counted(digits):
        return digits
    small = SMALL_WORDS.split(" ")
    count = int(digits)
    if count < len(small):
        return small[count]
    tens = TENS_WORDS.split(" ")[count // 10 - 2]
    rest = count - count // 10 * 10
    return tens if rest == 0 else tens + "-" + small[rest]
