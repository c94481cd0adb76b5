"""The page, served: to whoever knows its code, at one address of the home network, by plain HTTP.

What is not exactly a known route, with the code, asked under this very host, is 404 and says no more. Nothing comes
from a path, nothing is logged, nothing is kept in a file.
"""

import asyncio
import hmac
import logging
import secrets
import socket
from collections.abc import Awaitable, Callable, Sequence
from typing import Annotated, Protocol, TypeVar

import msgspec
from aiohttp import web

from board.base.plain import one_line
from board.evening.events import Part
from board.evening.wishes import HelperDone, Refusal
from board.session.session import Evening
from board.share import words
from board.share.address import origin_of
from board.share.code import drawn
from board.share.helper import helper_page
from board.share.page import document
from board.share.papers import FromPlan, plates, to_buy, wall
from board.view.onlooker import Onlooker
from board.view.present import Present

CODE_BYTES = 16  # 128 bits: nobody guesses it
MOST_BYTES = 2048  # of what a phone sends; ours
PATIENCE_SECONDS = 4.0  # for a phone's words, and for the board; the page waits for 5
LOOKING_SECONDS = 10.0  # a phone that asked within the last so many is looking; ours

_Name = Annotated[str, msgspec.Meta(max_length=300)]


class Board(Protocol):
    """What the page asks of the board; both live in one thread."""

    @property
    def evening(self) -> Evening: ...

    @property
    def present(self) -> Present | None:
        """As the board shows it; None before its first picture."""
        ...

    async def answered(self, wish: HelperDone) -> Refusal | None:
        """Does it as a key of the board would, and shows it. Never does it later, if nobody waits any more."""
        ...

    async def comes(self, who: str) -> None:
        """Somebody called says that they come."""
        ...


class _Done(msgspec.Struct, forbid_unknown_fields=True):
    slot: _Name
    part: Part
    number: Annotated[int, msgspec.Meta(ge=0, le=10_000)]
    who: _Name = msgspec.field(name="for")


class _Coming(msgspec.Struct, forbid_unknown_fields=True):
    who: _Name = msgspec.field(name="for")


class _Tick(msgspec.Struct, forbid_unknown_fields=True):
    number: Annotated[int, msgspec.Meta(ge=0, le=100_000)]
    ticked: bool


class _Said(msgspec.Struct):
    said: str


_Sent = TypeVar("_Sent", _Done, _Coming, _Tick)


class Served:
    """`bound`: the socket it is served at. `begin` and `end` are called in the board's own loop."""

    def __init__(self, bound: socket.socket, from_plan: FromPlan) -> None:
        self._bound = bound
        self._origin = origin_of(bound)
        self._code = secrets.token_urlsafe(CODE_BYTES)
        self._from_plan = from_plan
        self._document = document()
        self._rung: dict[str, int] = {}  # who is called, and by which call
        self._calls = 0
        self._asked: dict[str, float] = {}  # who → when their phone asked last, by the loop's clock
        self._board: Board | None = None
        self._runner: web.AppRunner | None = None

    # --- for the board -------------------------------------------------------------------------------------------
    @property
    def address(self) -> str:
        """With the code; for those in the house only."""
        return f"{self._origin}/{self._code}/"

    def drawn(self) -> Sequence[str]:
        """The address as a QR code, row by row, to be shown dark on light."""
        return drawn(self.address)

    def ring(self, who: str) -> None:
        """Calls that helper, until they say that they come."""
        self._calls += 1
        self._rung[who] = self._calls

    def is_rung(self, who: str) -> bool:
        """Whether they are called and have not said that they come."""
        return who in self._rung

    def is_looking(self, who: str) -> bool:
        """Whether a phone shows their calls right now. Asked in the board's loop."""
        now = asyncio.get_running_loop().time()
        return now - self._asked.get(who, -LOOKING_SECONDS) < LOOKING_SECONDS

    async def begin(self, board: Board) -> None:
        """Serves from now on."""
        self._board = board
        app = web.Application(client_max_size=MOST_BYTES, middlewares=[self._guarded])
        app.router.add_get("/{code}/", self._page)
        app.router.add_get("/{code}/now", self._now)
        for name, made in (("wall", self._wall), ("plates", self._plates), ("list", self._list)):
            app.router.add_get(f"/{{code}}/{name}", made)
        for name, act in (("done", self._done), ("coming", self._coming), ("tick", self._tick)):
            app.router.add_post(f"/{{code}}/{name}", act)
        silent = logging.Logger("board.share")
        silent.disabled = True  # a line may hold the code, and tears the board's picture
        self._runner = web.AppRunner(
            app, access_log=None, logger=silent, keepalive_timeout=15, shutdown_timeout=0.5, max_line_size=MOST_BYTES,
            max_field_size=MOST_BYTES,
        )  # fmt: skip
        await self._runner.setup()
        await web.SockSite(self._runner, self._bound.dup()).start()

    async def end(self) -> None:
        """Serves no more, until begun again at the same address."""
        if self._runner is not None:
            await self._runner.cleanup()

    # --- who may ask ---------------------------------------------------------------------------------------------
    @web.middleware
    async def _guarded(
        self, request: web.Request, handler: Callable[[web.Request], Awaitable[web.StreamResponse]]
    ) -> web.StreamResponse:
        if not self._may_ask(request):
            return self._made(404)
        try:
            return await handler(request)
        except web.HTTPException as wrong:
            return self._made(wrong.status if wrong.status in (403, 413, 503) else 404)
        except (msgspec.MsgspecError, TimeoutError, ValueError):
            return self._made(400)

    def _may_ask(self, request: web.Request) -> bool:
        """The code, in the same time however much of it is right; then the host, against names that others bind to this
        address (DNS rebinding); what changes anything comes from the page itself."""
        code = request.match_info.get("code", "")
        known = hmac.compare_digest(code.encode("utf-8", "surrogatepass"), self._code.encode())
        here = request.headers.getall("Host", []) == [self._origin.removeprefix("http://")]
        if request.method != "POST":
            return known and here
        from_page = request.headers.getall("Origin", []) == [self._origin]
        return known and here and from_page and request.content_type == "application/json"

    def _made(self, status: int, body: bytes = b"", kind: str = "text/plain") -> web.Response:
        return web.Response(
            status=status,
            body=body,
            content_type=kind,
            charset="utf-8",
            headers={
                "Cache-Control": "no-store",
                "Content-Security-Policy": self._document.policy,
                "Cross-Origin-Resource-Policy": "same-origin",
                "Referrer-Policy": "no-referrer",
                "Server": "platecall",
                "X-Content-Type-Options": "nosniff",
            },
        )

    # --- what it shows -------------------------------------------------------------------------------------------
    async def _page(self, request: web.Request) -> web.Response:
        return self._made(200, self._document.body, "text/html")

    async def _now(self, request: web.Request) -> web.Response:
        board = self._serving()
        who, present = request.query.get("for", ""), board.present
        if who:
            self._known(who)
            self._asked[who] = asyncio.get_running_loop().time()
        if present is None:
            raise web.HTTPServiceUnavailable
        viewer = Onlooker(board.evening.sheet, who)
        return self._told(helper_page(viewer, present, who, self._rung.get(who, 0), self._from_plan.made_of))

    async def _wall(self, request: web.Request) -> web.Response:
        return self._told(wall(self._serving().evening.sheet))

    async def _plates(self, request: web.Request) -> web.Response:
        return self._told(plates(self._serving().evening.sheet, self._from_plan.plan))

    async def _list(self, request: web.Request) -> web.Response:
        return self._told(to_buy(self._from_plan))

    # --- what it takes -------------------------------------------------------------------------------------------
    async def _done(self, request: web.Request) -> web.Response:
        board, sent = self._serving(), await _read(request, _Done)
        self._known(sent.who)
        slot = board.evening.sheet.by_id().get(sent.slot)
        try:
            wish = HelperDone(sent.slot, sent.part, sent.number, sent.who)
            refused = await asyncio.wait_for(board.answered(wish), PATIENCE_SECONDS)
        except TimeoutError:
            return self._told(_Said(words.BOARD_STOPPED))
        if refused is not None or slot is None:
            return self._told(_Said(one_line(refused.words if refused else words.BOARD_STOPPED)))
        return self._told(_Said(words.on_the_board(one_line(slot.name, 60))))

    async def _coming(self, request: web.Request) -> web.Response:
        board, sent = self._serving(), await _read(request, _Coming)
        self._known(sent.who)
        if self._rung.pop(sent.who, 0):
            await asyncio.wait_for(board.comes(sent.who), PATIENCE_SECONDS)
        return self._told(_Said(words.COMES))

    async def _tick(self, request: web.Request) -> web.Response:
        sent = await _read(request, _Tick)
        if not self._from_plan.tick(sent.number, ticked=sent.ticked):
            raise web.HTTPNotFound
        return self._told(_Said(""))

    def _serving(self) -> Board:
        if self._board is None:
            raise web.HTTPServiceUnavailable
        return self._board

    def _known(self, who: str) -> None:
        """Only the hands of the plan have a page."""
        if who not in self._serving().evening.sheet.hands:
            raise web.HTTPForbidden

    def _told(self, what: msgspec.Struct) -> web.Response:
        return self._made(200, msgspec.json.encode(what), "application/json")


async def _read(request: web.Request, kind: type[_Sent]) -> _Sent:
    """What was sent. Raises msgspec.MsgspecError for anything else, TimeoutError for what is too slow."""
    async with asyncio.timeout(PATIENCE_SECONDS):
        return msgspec.json.decode(await request.read(), type=kind)
