"""The manual that `platecall help` shows: topics as Markdown files, and what is made from the code: the keys of a plan,
the findings of `check`, the keys of the board, the signs. Nothing in it comes from a plan.

For the other rooms: `asked`, `pages`, `shown`.
"""
