"""One card: its entries read, its setup worked out, and everything that it says and draws."""
