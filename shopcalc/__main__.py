"""`python -m shopcalc` is the same program as `shopcalc`."""

from shopcalc.cli import main

if __name__ == "__main__":
    main()
