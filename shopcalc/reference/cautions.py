"""The usual cautions, by machine, in short words.

Common practice as machine makers' manuals and shop courses teach it. Where a public rule says the same it is
named in a comment; none of it replaces the manual of the machine at hand or the local rules.
"""

CAUTIONS = {
    "table saw": [
        "Guard and riving knife on for every cut that goes through.",  # 29 CFR 1910.213(c)(1), (c)(2)
        "Fence locked and parallel to the blade before the motor starts.",  # 29 CFR 1910.213(a)(6)
        "Unplug or switch off at the wall before hands go near the blade.",
        "Eye and ear protection. Nothing loose near the blade.",
        "Push block or push stick for the end of every narrow piece. Stand out of line with the blade.",
    ],
    "non-through cut": [
        # Cal. Code Regs. Title 8 section 4296(a) asks for feather boards or jigs where the guard cannot be used
        "A cut that does not go through needs the guard off, and the riving knife no higher than the blade or off.",
        "With the guard off feather boards hold the work down and in; guard and knife go back on before the next cut that goes through.",
    ],
    "dado head": [
        "A dado head beside the fence wants a sacrificial fence, so that the cutter never meets the metal one.",
        "Let a dado head stop by itself; never brake it with wood.",
    ],
    "crosscut beside a fence": [
        "Never let an offcut be trapped between blade and fence: the gauge block ends well before the blade.",
        "Hold the work against the mitre gauge until the blade is clear of it.",
    ],
    "mitre gauge": [
        "A tilted blade drags the work sideways: clamp it to the mitre gauge, or face the gauge with abrasive paper.",
        "Rip fence off the saw, or well back, for every cut on the mitre gauge.",
    ],
    "on edge": [
        "Work on its edge wants a tall fence, and a feather board ahead of the blade, never beside it.",
    ],
    "tenon jig": [
        "Upright work belongs in a jig that runs on the fence, clamped, with both hands clear above the blade.",
    ],
    "tilted blade": [
        "With the blade tilted toward the fence an offcut can wedge: put the fence on the other side, or the tilt away from it.",
        "After every change of tilt, unplugged, turn the blade by hand through the throat plate once.",
    ],
    "router with guide bushing": [
        "Unplug before the bit or the bushing is touched. Collet tight, the bushing seated and round about the bit.",
        "Clamp template and work together; both hands on the router, its base flat on the template.",
        "Feed against the turn of the bit, and let the bit stop before it is lifted out of the template.",
        "Eye and ear protection. Nothing loose near the bit.",
    ],
    "saw in the hand": [
        "Work clamped or across two horses so that the offcut falls free and never closes on the blade.",
        "Guard free to swing shut; blade only just deeper than the wood, and still before it is laid down.",
        "A notch is finished with a handsaw: a round blade run past its corner weakens the piece.",
        "Eye and ear protection for the saw in the hand too; its cord behind you.",
    ],
    "edge of a door": [
        "Door on edge in a stand or clamped, so that neither it nor you can tip. Glass in a door: as local code says.",
        "Mind hinges, nails and old screws: take them out before a blade or an iron meets that edge.",
    ],
    "small pieces": [
        "No piece so short that it brings a hand near the blade: cut small parts from a long piece.",
    ],
    "vents": [
        "How far a vent must open, and how much air a room with glass must get: local code.",
    ],
    "on the roof": [
        "Ladder tied, sheet and board work never alone in wind. Structure, loads and fixings: local code and licensed practice.",
        "A cap must not close what ventilates the roof: where air goes in and out, and how much, is local code.",
    ],
    "open to the weather": [
        "Flashing, slope at the wall, structure and fixings: local code and licensed practice.",
    ],
    "gauge blocks": [
        "Unplug first: a hand is at the cutter while its height is felt. Feel with wood or brass, never with a finger.",
        "Blocks and straightedge off the table, and the lock tight, before the plug goes in.",
        "Height set, the cut is made as for any cut with this cutter: guard, push block, eye and ear protection.",
    ],
    "moving wood": [
        "The figures are averages of a species: one board may move more or less, and so may one with sloping rings.",
        "Finish slows moisture and does not stop it: seal both faces and all edges alike.",
        "Decking, siding, floors and what bears load: gaps and fixings as local code says.",
    ],
    "drill": [
        "Work clamped: a drill that grabs spins what a hand holds.",
        "Eye protection. No gloves and no loose sleeves near a chuck; key out before it turns.",
    ],
    "panes": [
        # 16 CFR 1201.1(a) for glazing in doors; IRC R308.4 for doors, beside doors and low panes, as local code adopts it
        "In a door, beside one or low down a pane must be safety glazing: 16 CFR 1201, IRC R308.4 and local code. Ask before you buy.",
        "Tempered glass cannot be cut or trimmed: order it to size.",
        "Gloves with cuffs and eye protection for glass; a pane is carried upright, and never alone in wind.",
        "Plastic keeps its film until it is fitted, and is sawn flat on a board with the blade its maker names.",
    ],
    "long boards": [
        "A long board is held up at both ends, on stands or by a helper: it must not tip, nor close on the blade.",
        "Never crosscut freehand, nor between fence and gauge. Let the blade stop before offcuts are taken away.",
    ],
    "bench": [
        "A number is checked on scrap before it is cut in the work.",
    ],
}
