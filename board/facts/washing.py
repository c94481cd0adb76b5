"""Washing up in the kitchen: what is done before the guests come, and tools that are washed before another dish goes
into them. Minutes of handwork; common practice, no source."""

from board.facts.phrases import listed_words, stems

CLEARS_DOWN = frozenset({"clear down the kitchen", "wash up", "load the dishwasher", "run the dishwasher"})
TOOL_MINUTES = 3  # to wash and dry one by hand
_LEAST, _MOST, _A_DISH = 10, 20, 2  # minutes to clear down
# What is wiped as the work goes, or holds no food.
_NOT_WASHED = listed_words(
    """board knife box cooler cool probe thermometer scale timer torch blowtorch trolley kettle toaster barbecue
    barbeque bbq grill smoker stone"""
)


def clear_down_minutes(cooked: int) -> int:
    """Minutes to clear the kitchen down after so many dishes were cooked in it; 10 to 20."""
    return min(_MOST, _LEAST + _A_DISH * max(0, cooked - 1))


def is_washed_between(tool: str) -> bool:
    """Whether a tool is washed before another dish goes into it, by the last word of its name."""
    return not set(stems(tool)[-1:]) & set(_NOT_WASHED)
