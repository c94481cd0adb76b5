"""Checks of a plan alone.

For the other rooms: `cautions`, `every`, `figures`, `guesses`, `holding`, `on_your_word`.
"""
