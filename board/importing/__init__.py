"""From elsewhere to a plan: saved recipes, ways of cooking, and a plan to begin with.

For the other rooms: `recipe`, `starter`, `ways`.
"""
