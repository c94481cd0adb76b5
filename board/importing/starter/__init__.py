"""Answers, or a menu → the text of a plan to begin with.

For the other rooms: `answers`, `for_whom`, `menu`, `menu_courses`, `not_a_menu`, `plan_text`.
"""
