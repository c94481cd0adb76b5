"""What is said of dishes kept on the shelf."""

from datetime import date

HEAD = "# A dish of your own, kept by `platecall dishes keep`. Mend it as you like; its figures are as you wrote them."
NOT_KEPT = "this is not a dish as `platecall dishes keep` writes one"
KEEP_ANEW = "Keep the dish again from a plan, or mend the line."


def learned(step: str, figure: str, evenings: int) -> str:
    return f"{step}: {figure}, from {evenings} evening{'s' if evenings != 1 else ''}"


def had(names: list[str], dish: str, on: date, *, year: bool) -> str:
    who = " and ".join(filter(None, (", ".join(names[:-1]), names[-1])))
    return f"{who} had {dish} on {on.day} {on:%B}{f' {on.year}' if year else ''}"
