"""The app in a real Chromium, on a page the size of a phone."""
