"""Textual screens: they place what `view` says.

For the other rooms: `app`, `speech`, `ticking`, `watch`.
"""
