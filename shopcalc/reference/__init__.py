"""Published tables and the usual cautions, each value with its source beside it."""
