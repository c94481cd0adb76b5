"""Changes to a plan's text that keep every other byte.

For the other rooms: `edit`, `edit_guesses`, `edit_lessons`, `edit_lines`, `edits`, `items`, `save`, `source`,
`yaml_text`.
"""
