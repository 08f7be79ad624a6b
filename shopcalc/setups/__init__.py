"""One file a setup, each declaring `setup`. Found by `shopcalc/catalogue.py`; nothing else is edited."""
