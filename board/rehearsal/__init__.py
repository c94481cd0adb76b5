"""Nights drawn and played.

For the other rooms: `draw`, `live_night`, `player`.
"""
