"""Answers → the text of a plan to begin with.

For the other rooms: `answers`, `plan_text`.
"""
