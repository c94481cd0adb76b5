"""Nights drawn and played.

For the other rooms: `account`, `account_lines`, `draw`, `live_night`, `player`.
"""
