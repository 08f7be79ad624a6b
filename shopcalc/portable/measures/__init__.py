"""Measures as a person types, reads and says them."""
