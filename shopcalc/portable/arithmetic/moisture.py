"""The moisture at which wood comes to rest in still air.

The equation of FPL-RN-0268 (Simpson, 1998) and of the Wood Handbook, with its constants for degrees Fahrenheit, written
over whole numbers so that exact fractions stay exact.
"""

from shopcalc.portable.arithmetic.snap import larger

FIRST_ROW = 30  # degrees Fahrenheit, where the published table begins; far below it the equation gives nonsense


def settled_moisture(temperature, humidity):
    """Percent of moisture in wood that has rested in air of a temperature in degrees Fahrenheit and a humidity in percent.

    Air colder than `FIRST_ROW` counts as that.
    """
    # not larger(FIRST_ROW, temperature): a whole number would divide as one where fractions are exact
    warmth = temperature + larger(FIRST_ROW - temperature, 0)
    squared = warmth * warmth
    # W = 330 + 0.452 T + 0.00415 T2, and 1800 / W
    scale = 180000000 / (33000000 + 45200 * warmth + 415 * squared)
    # K = 0.791 + 0.000463 T - 0.000000844 T2, times the humidity as a part of one
    held = (791000000 + 463000 * warmth - 844 * squared) * humidity / 100000000000
    # K1 = 6.34 + 0.000775 T - 0.0000935 T2
    first = (63400000 + 7750 * warmth - 935 * squared) * held / 10000000
    # K2 = 1.09 + 0.0284 T - 0.0000904 T2
    second = (10900000 + 284000 * warmth - 904 * squared) * held * first / 10000000
    return scale * (held / (1 - held) + (first + 2 * second) / (1 + first + second))
