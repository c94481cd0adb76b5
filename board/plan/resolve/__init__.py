"""A plan's names, hours, laying and defaults, worked out.

For the other rooms: `absences`, `amounts`, `assume`, `assumed`, `at_table`, `beside`, `bought`, `course_times`,
`fault`, `food_safety`, `fridge_life`, `from_book`, `from_shelf`, `given_time`, `going_in`, `hours`, `known_again`,
`laying`, `left_over`, `links`, `scaling`, `seating`, `served`, `sits`, `spoils`, `trips`, `unit`, `washing_up`.
"""
