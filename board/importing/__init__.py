"""From elsewhere to a plan: saved recipes, and a plan to begin with.

For the other rooms: `recipe`, `starter`.
"""
