"""Plan → run sheet.

For the other rooms: `audit`, `clocks`, `conflicts`, `formulate`, `near`, `oven_dial`, `problem`, `safety_facts`,
`solution`, `solver`, `to_run_sheet`.
"""
