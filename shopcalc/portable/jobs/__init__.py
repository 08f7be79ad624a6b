"""A job: its document, its order of work and cut list, and its pages."""
