"""One file a use case: the only place where rooms are put together.

For the other rooms: `house_commands`, `live_commands`, `log_commands`, `plan_commands`, `terminal`.
"""
