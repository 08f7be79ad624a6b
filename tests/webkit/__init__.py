"""The app in WebKit: half of all phones run it, and Chromium shows nothing of what it alone does otherwise."""
