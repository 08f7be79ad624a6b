"""The one sort by a comparison: only numbers can be the key of a sort on both runtimes."""


def merged_sort(rows, is_earlier):
    """`rows` sorted by a comparison of two; those that are alike keep their order."""
    if len(rows) < 2:
        return rows
    middle = len(rows) // 2
    left = merged_sort(rows[0:middle], is_earlier)
    right = merged_sort(rows[middle : len(rows)], is_earlier)
    out = []
    taken = 0
    for row in left:
        while taken < len(right) and is_earlier(right[taken], row):
            out.append(right[taken])
            taken = taken + 1
        out.append(row)
    while taken < len(right):
        out.append(right[taken])
        taken = taken + 1
    return out
