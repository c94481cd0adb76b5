"""The run sheet, and what is read off it.

For the other rooms: `adding_up`, `blocks`, `changed`, `cold`, `company`, `exposure`, `guesses`, `left`, `quiet`,
`rests`, `run_sheet`, `said`, `shown`, `sittings`, `slack`, `told`, `why`.
"""
