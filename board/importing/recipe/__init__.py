"""A saved recipe → a dish to paste.

For the other rooms: `dish`, `documents`.
"""
