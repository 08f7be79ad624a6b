"""Plain Python that also runs on the phone.

Rule of this room: nothing here imports anything from outside it, and every line keeps to the
subset that PScript turns into the same JavaScript (DEVELOPERS.md lists it; tests enforce it).
Numbers come in from outside: `Fraction` on the server, doubles on the phone.
"""
