"""Textual screens: they place what `view` says.

For the other rooms: `app`, `dressed`, `in_place`, `plan_table`, `settling`, `speech`, `ticking`, `watch`, `words`.
"""
