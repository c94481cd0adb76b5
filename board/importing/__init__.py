"""From elsewhere to a plan: saved recipes, ways of cooking, dishes of one's own, and a plan to begin with.

For the other rooms: `recipe`, `shelf`, `starter`, `ways`.
"""
