"""What every room may use: safe text, words, clocks, errors and exit codes.

For the other rooms: `clock`, `dial`, `errors`, `exits`, `in_turn`, `late`, `near`, `plain`, `plan_digest`, `signals`,
`words`, `wrap`.
"""
