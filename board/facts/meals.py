"""When meals are usually eaten. Common practice, no source."""

from board.facts.phrases import words_of

EVENING_MEAL = (18 * 60, 20 * 60)  # minutes from midnight: it is begun and eaten within these
_MEALS = {"breakfast": (7 * 60, 9 * 60), "brunch": (10 * 60, 12 * 60), "lunch": (12 * 60, 14 * 60)}


def meal_hours(name: str) -> tuple[int, int]:
    """Those of the meal that a name speaks of, in minutes from midnight; of supper, where it names none."""
    return next((hours for meal, hours in _MEALS.items() if meal in words_of(name)), EVENING_MEAL)
