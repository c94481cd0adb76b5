"""Settling guesses, and dishes of one's own."""


def settle_title(event: str) -> str:
    return f"{event}: what was guessed"


def nothing_guessed(path: str) -> str:
    return f"{path}: nothing in it is called a guess"


def guesses_listed(count: int, path: str) -> str:
    return (
        f"{count} guess{'es are' if count != 1 else ' is'} not confirmed in {path}, what decides most first. "
        "At a terminal this command goes through them."
    )


def guess_line(dish: str, step: str, key: str, text: str | None, why: str) -> str:
    told = f"{dish}: {step}: {key}: {text if text is not None else '(no such line)'}"
    return f"{told}  ({why})" if why else told


def settled(count: int, left: int, path: str, copy: str) -> str:
    more = f"; {left} left" if left else ""
    return f"{count} settled{more}. Written: {path}; as it was: {copy}"


NOTHING_SETTLED = "nothing was settled; the plan is as it was"
SETTLE_FAILED = "the screen ended by a fault; the plan is as it was"
