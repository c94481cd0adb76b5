"""Text, Markdown, HTML, JSON and calendars, by matter.

For the other rooms: `book`, `calendar`, `check`, `check_form`, `evenings`, `first_screen`, `frame`, `guests`, `leaves`,
`lessons`, `markdown`, `menus`, `odds`, `page`, `provisions`, `provisions_page`, `review_page`, `schemas`, `sheet`,
`sheet_form`, `shelf`, `table`, `table_out`, `tables`, `ways`.
"""
