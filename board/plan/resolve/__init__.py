"""A plan's names, hours, laying and defaults, worked out.

For the other rooms: `assume`, `at_table`, `fault`, `food_safety`, `from_book`, `given_time`, `hours`,
`known_again`, `laying`, `links`, `scaling`, `seating`, `served`, `spoils`, `trips`, `unit`.
"""
