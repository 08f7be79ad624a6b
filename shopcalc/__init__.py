"""shopcalc: machine settings for joinery, in the fraction on your tape, with no signal."""

__version__ = "0.1.0"
