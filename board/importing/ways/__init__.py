"""Ways of cooking: patterns of steps, found by a dish's words, written as a dish of a plan. Pure.

For the other rooms: `ways`.
"""
