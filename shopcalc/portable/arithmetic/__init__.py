"""Numbers and rows of them: comparing and rounding, sines in degrees, sorting, choosing pieces, moisture."""
