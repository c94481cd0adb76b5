"""An evening with a helper, its page on this machine alone, and a board that it asks."""

from collections.abc import AsyncIterator, Iterator
from ipaddress import ip_address
from socket import socket

import aiohttp
import msgspec
import pytest

from board.evening.wishes import HelperDone, Refusal
from board.session.session import Evening
from board.share.address import listening
from board.share.papers import FromPlan
from board.share.served import Served
from board.sheet.run_sheet import RunSheet
from board.view.present import Present
from tests.conftest import Host, at

HELPER = "Mira <b>"  # as hostile as a name may be


@pytest.fixture
def helped(little: RunSheet) -> RunSheet:
    """The little supper, whose sauce and whose chopping are a helper's."""
    slots = tuple(
        msgspec.structs.replace(
            slot, attended=tuple(msgspec.structs.replace(part, who=HELPER) for part in slot.attended)
        )
        if slot.id in ("chop", "sauce")
        else slot
        for slot in little.slots
    )
    return msgspec.structs.replace(little, slots=slots, hands=("host", HELPER))


class FakeBoard:
    """A board without a screen."""

    def __init__(self, sheet: RunSheet, clock: str) -> None:
        self.host = Host(sheet, at(clock))
        self.came: list[str] = []

    @property
    def evening(self) -> Evening:
        return self.host.evening

    @property
    def present(self) -> Present | None:
        return self.host.evening.tick()

    async def answered(self, wish: HelperDone) -> Refusal | None:
        return self.host.evening.wish(wish)

    async def comes(self, who: str) -> None:
        self.came.append(who)


@pytest.fixture
def bound() -> Iterator[socket]:
    made = listening(ip_address("127.0.0.1"), 0)
    yield made
    made.close()


class Phone:
    """Somebody who has the address."""

    def __init__(self, served: Served, board: FakeBoard, session: aiohttp.ClientSession) -> None:
        self.served, self.board, self.session = served, board, session
        self.origin = served.address.rsplit("/", 2)[0]

    async def get(self, path: str, **headers: str) -> tuple[int, bytes]:
        async with self.session.get(self.served.address + path, headers=headers) as came:
            return came.status, await came.read()

    async def post(self, path: str, sent: object, **headers: str) -> tuple[int, bytes]:
        usual = {"Origin": self.origin, "Content-Type": "application/json"}
        told = {key.replace("_", "-"): value for key, value in {**usual, **headers}.items() if value}
        async with self.session.post(self.served.address + path, data=msgspec.json.encode(sent), headers=told) as came:
            return came.status, await came.read()


@pytest.fixture
async def phone(helped: RunSheet, bound: socket) -> AsyncIterator[Phone]:
    served, board = Served(bound, FromPlan()), FakeBoard(helped, "17:00")
    await served.begin(board)
    async with aiohttp.ClientSession() as session:
        yield Phone(served, board, session)
    await served.end()
