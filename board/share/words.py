"""What the page says, and why it cannot be had."""

from collections.abc import Sequence

# What stands on the page itself; its script takes them by their names here.
ON_PAGE = {
    "who": "Whose calls?",
    "others": "Somebody else",
    "calls": "Calls",
    "wall": "Wall sheet",
    "plates": "Plates",
    "list": "Shopping",
    "sound": "Sound on",
    "sounds": "Sound is on",
    "called": "You are called",
    "coming": "Coming",
    "waiting": "Asking the board …",
    "offline": "No connection since",
    "gone": "This page is over: scan the code on the board again.",
    "unsent": "Not sent: no connection. Say it at the board.",
    "made": "For the whole of it:",
    "old": "s old",
    "minutes": "min old",
    "hours": "h old",
}

NO_PLAN = "The plan cannot be read now, so there is no list of what to buy and no table of guests."
PLATES_TITLE = "Who must not have what"
PLATES_NONE = "The plan names nobody with anything to avoid."
TICKS_KEPT = "Ticks stay on the board for this evening; no file has them."
BOARD_STOPPED = "the board does not answer; look at it before you go on"


COMES = "the board knows that you come"


def on_the_board(name: str) -> str:
    return f"{name}: on the board"


def waits(minutes: str) -> str:
    return f"now, waits {minutes}"


def ahead(minutes: str) -> str:
    return f"in {minutes}"


def early(answer: str) -> str:
    return f"{answer} early"


NOW = "now"


def not_here(address: str, there: Sequence[str]) -> str:
    known = f" It has: {', '.join(there)}." if there else ""
    return f"--share: this machine has no address {address}.{known}"


def not_at_home(address: str) -> str:
    return (
        f"--share: {address} is not an address of a home network (10.x, 172.16.x to 172.31.x, 192.168.x, fd…), and "
        "the page is for nobody else."
    )


NO_HOME_NETWORK = (
    "--share: this machine has no address of a home network (10.x, 172.16.x to 172.31.x, 192.168.x, fd…). Join one, "
    "or go on without --share."
)


def several(there: Sequence[str]) -> str:
    return f"--share: this machine has several addresses; choose the one of your home network: {' or '.join(there)}"


def at_interface(address: str, interface: str) -> str:
    return f"--share {address} ({interface})"


def cannot_listen(address: str, why: str) -> str:
    return f"--share: no page can be served at {address}: {why}"
