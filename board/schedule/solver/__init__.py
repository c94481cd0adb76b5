"""OR-Tools CP-SAT; nothing else imports it.

For the other rooms: `feasible`, `search`, `solve`.
"""
