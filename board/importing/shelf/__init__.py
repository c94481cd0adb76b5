"""Dishes of one's own: a dish taken out of a plan, kept, and written into another. Pure.

For the other rooms: `fill`, `had`, `kept`, `taking`.
"""
