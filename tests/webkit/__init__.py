"""The app in WebKit: every iPhone runs it, and Chromium shows nothing of what it alone does otherwise."""
