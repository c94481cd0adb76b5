"""Text, Markdown, HTML, JSON and calendars, by matter.

For the other rooms: `book`, `calendar`, `card`, `check`, `check_form`, `evenings`, `first_screen`, `frame`, `guests`,
`guests_page`, `leaves`, `lessons`, `markdown`, `menus`, `odds`, `page`, `provisions`, `provisions_page`, `review_page`,
`schemas`, `sheet`, `sheet_form`, `shelf`, `table`, `table_out`, `table_page`, `tables`, `wall`, `ways`.
"""
