"""One file for each use case; the only place that combines rooms.

For the other rooms: `completion`, `dish_commands`, `house_commands`, `live_commands`, `log_commands`,
`man_page`, `manual_commands`, `option_rules`, `plan_commands`, `terminal`, `words`.
"""
