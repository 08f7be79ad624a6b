"""What passes at a run of a job: how many of which part, of which item, and which face goes where."""

from shopcalc.portable.measures.writing import decimal_text


def pieces_passing(stint):
    """Which parts of an item pass at a run, and how many: label and count."""
    quantity = stint["item"]["quantity"]
    if len(stint["operation"]["parts"]) == 0:
        return [{"label": stint["item"]["label"], "count": quantity, "whole": True}]
    return [{"label": part["label"], "count": part["count"] * quantity, "whole": False} for part in stint["operation"]["parts"]]


def how_many(pieces):
    """How many pieces there are in all."""
    many = 0
    for piece in pieces:
        many = many + piece["count"]
    return many


def pieces_of(stints):
    """What passes at a run: how many of which part, of which item."""
    rows = []
    for stint in stints:
        for part in pieces_passing(stint):
            count = decimal_text(part["count"], 0, False)
            of = "" if part["whole"] else " (" + stint["item"]["label"] + ")"
            rows.append({"text": count + " " + part["label"] + of, "count": count, "label": part["label"], "of": stint["item"]["label"]})
    return rows


def left_to_pass(stints):
    """What has yet to pass at a run: of an item whose other pieces are as large as those that passed, only the pieces that are not."""
    rows = []
    for stint in stints:
        if not stint["done"]:
            anew = []
            for piece in stint["resized"]:
                anew = anew + piece["labels"]
            all_pass = len(anew) == 0 or stint["is_short"] or len(stint["operation"]["parts"]) == 0
            rows = rows + [row for row in pieces_of([stint]) if all_pass or row["label"] in anew]
    return rows


def passing_of(stints):
    """What passes at a run, a line for each item."""
    rows = []
    before = 0
    for stint in stints:
        parts = pieces_passing(stint)
        text = ", ".join([decimal_text(part["count"], 0, False) + " " + part["label"] for part in parts])
        if stint["item"]["id"] == before and not parts[0]["whole"]:
            rows[len(rows) - 1]["text"] = rows[len(rows) - 1]["text"] + ", " + text
        else:
            rows.append({"of": stint["item"]["label"], "named": not parts[0]["whole"], "text": text})
        before = stint["item"]["id"]
    return rows


def faces_of(stints):
    """Which face goes where at a run; items may differ in it."""
    rows = []
    for stint in stints:
        text = stint["operation"]["face"]
        if len(text) > 0 and len([row for row in rows if row["text"] == text]) == 0:
            rows.append({"text": text})
    return rows
