"""Checks of food safety that need the timetable, and the clock of each dish.

For the other rooms: `assessed`, `clocks`, `every`.
"""
