"""What the host wrote: text → a plan with the place of each part, or snags.

For the other rooms: `edit`, `findings`, `load`, `model`, `phrases`, `places`, `resolve`, `schema`, `snag`.
"""
