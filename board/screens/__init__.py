"""Textual screens: they place what `view` says.

For the other rooms: `app`, `settling`, `speech`, `ticking`, `watch`, `words`.
"""
