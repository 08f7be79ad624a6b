"""Checks against sources outside the project: published figures, and constructions that share nothing with the formulas."""
