"""What commands print with `--json`, as types: the schema that is published is made from them, and what fills them is
checked against them.

For the other rooms: `book`, `check`, `guests`, `lessons`, `logs`, `odds`, `provisions`, `published`, `review`, `sheet`,
`table`.
"""
