"""The characters of a typed measurement: which are the same mark in another dress, and words of units."""

DIGITS = "0123456789"
LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
SPACES = " \t\n\r\u00a0\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u3000"

# What comes along unseen with a text that is pasted or dictated: forgiven at its ends, never inside, where nobody could
# tell 1 5/8 from 15/8.
UNSEEN = "\u200b\u200c\u200d\u200e\u200f\u202a\u202c\u2060\u2066\u2068\u2069\ufeff"

# Full-width marks, and in the same order what they are.
WIDE = "\uff10\uff11\uff12\uff13\uff14\uff15\uff16\uff17\uff18\uff19\uff0e\uff0f\uff1a\uff0b\uff0d\uff0a\uff05\uff0c"
NARROW = "0123456789./:+-*%,"

# Unicode vulgar fractions and, in the same order, what they stand for. Not a dictionary: PScript would write
# such a key without quotes, and to JavaScript a half is no name.
VULGAR = "\u00bd\u2153\u2154\u00bc\u00be\u2155\u2156\u2157\u2158\u2159\u215a\u2150\u215b\u215c\u215d\u215e\u2151\u2152"
VULGAR_VALUES = [
    [1, 2],
    [1, 3],
    [2, 3],
    [1, 4],
    [3, 4],
    [1, 5],
    [2, 5],
    [3, 5],
    [4, 5],
    [1, 6],
    [5, 6],
    [1, 7],
    [1, 8],
    [3, 8],
    [5, 8],
    [7, 8],
    [1, 9],
    [1, 10],
]

# One character each, after the dresses are taken off.
SIGNS = {
    "+": "+",
    "-": "-",
    "\u2212": "-",
    "\u2010": "-",
    "\u2011": "-",
    "\u2012": "-",
    "\u2013": "-",
    "\u2014": "-",
    "*": "*",
    "\u00d7": "*",
    "\u00b7": "*",
    "\u2217": "*",
    "/": "/",
    "\u2044": "/",
    "\u2215": "/",
    "\u00f7": "/",
    "(": "(",
    ")": ")",
    ":": ":",
    "\u2236": ":",
    "%": "%",
}

UNIT_MARKS = {
    '"': "in",
    "\u2033": "in",
    "\u201c": "in",
    "\u201d": "in",
    "\u201f": "in",
    "'": "ft",
    "\u2032": "ft",
    "\u2018": "ft",
    "\u2019": "ft",
    "\u00b0": "deg",
    "\u00ba": "deg",
    "\u02da": "deg",
}

UNIT_WORDS = {
    "in": "in",
    "inch": "in",
    "inches": "in",
    "ft": "ft",
    "foot": "ft",
    "feet": "ft",
    "mm": "mm",
    "cm": "cm",
    "m": "m",
    "deg": "deg",
    "degree": "deg",
    "degrees": "deg",
}


def characters(text):
    """The characters of `text` in a list; a phone counts and cuts its texts in halves of the rare ones."""
    return [one for one in text]


def letters_in(text):
    """How long a text is in characters, on both sides the same."""
    return len(characters(text))


def first_letters(text, most):
    """A text cut short to be named, at the same letter on both sides."""
    return "".join(characters(text)[0:most])


def plain_marks(text):
    """The characters of `text`, full-width ones as their usual kin."""
    return [NARROW[WIDE.find(one)] if one in WIDE else one for one in characters(text)]


def unspaced(text):
    """`text` without spaces, and without what cannot be seen, at its ends."""
    start = 0
    end = len(text)
    while start < end and (text[start] in SPACES or text[start] in UNSEEN):
        start += 1
    while end > start and (text[end - 1] in SPACES or text[end - 1] in UNSEEN):
        end -= 1
    return text[start:end]
