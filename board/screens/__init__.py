"""Textual screens: they place what `view` says.

For the other rooms: `app`, `dressed`, `in_place`, `settling`, `speech`, `ticking`, `watch`, `words`.
"""
