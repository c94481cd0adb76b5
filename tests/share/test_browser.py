"""The page in a real browser, 360 px wide, driven over its debugging socket: what it shows, and a press that reaches
the board."""

import asyncio
import base64
import json
import os
import shutil
import signal
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from pathlib import Path
from socket import socket
from typing import Any

import aiohttp
import msgspec
import pytest

from board.base.clock import StoppedClock
from board.evening.events import StepStarted
from board.log.write import RunLog
from board.plan.load import PlanFile
from board.screens.app import BoardApp
from board.session.session import open_evening
from board.share import words
from board.share.papers import FromPlan
from board.share.served import Served
from board.sheet.run_sheet import RunSheet
from board.shopping.errands import provisions
from tests.conftest import at
from tests.screens.conftest import Recorder, screen_text
from tests.share.conftest import HELPER

BROWSER = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
PICTURES = os.environ.get("PICTURES_OF_THE_PAGE")  # a folder to look at them in
WIDE, HIGH = 360, 740

pytestmark = [pytest.mark.slow, pytest.mark.skipif(BROWSER is None, reason="no browser here")]

# The least contrast of any text on the page with the ground it is drawn on: WCAG 2.1, "contrast ratio".
LEAST_CONTRAST = """
(() => {
  const part = (c) => (c /= 255) <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  const figures = (css) => css.match(/[\\d.]+/g).map(Number);
  const luminance = ([r, g, b]) => 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
  const ground = (it) => {
    for (; it; it = it.parentElement) {
      const found = figures(getComputedStyle(it).backgroundColor);
      if (found.length < 4 || found[3] > 0) return found;
    }
    return [255, 255, 255];
  };
  let least = 21, seen = 0;
  for (const it of document.querySelectorAll("body *")) {
    const own = [...it.childNodes].some((node) => node.nodeType === 3 && node.data.trim());
    if (!own || it.tagName === "SCRIPT" || !it.getClientRects().length) continue;
    const [a, b] = [luminance(figures(getComputedStyle(it).color)), luminance(ground(it))].sort((x, y) => y - x);
    least = Math.min(least, (a + 0.05) / (b + 0.05));
    seen += 1;
  }
  return [least, seen];
})()
"""


class Browser:
    """One page of it."""

    def __init__(self, socket: aiohttp.ClientWebSocketResponse) -> None:
        self.socket = socket
        self.sent = 0
        self.told: list[dict[str, Any]] = []  # what it said unasked

    async def ask(self, method: str, **how: Any) -> dict[str, Any]:
        self.sent += 1
        await self.socket.send_json({"id": self.sent, "method": method, "params": how})
        while True:
            came = await self.socket.receive_json(timeout=30)
            if came.get("id") == self.sent:
                assert "error" not in came, came
                return dict(came["result"])
            self.told.append(came)

    async def value(self, script: str) -> Any:
        came = await self.ask("Runtime.evaluate", expression=script, returnByValue=True, userGesture=True)
        assert "exceptionDetails" not in came, came
        return came["result"].get("value")

    async def comes(self, script: str) -> None:
        """Waits until it is so; a loaded machine takes its time."""
        for _ in range(120):
            if await self.value(script):
                return
            await asyncio.sleep(0.25)
        raise AssertionError(f"{script}: {await self.value('document.body.innerText')}")

    async def shows(self, text: str) -> None:
        await self.comes(f"(document.body?.innerText ?? '').includes({json.dumps(text)})")

    async def press(self, text: str) -> None:
        """The button of that text, in its middle, with a finger."""
        find = f"[...document.querySelectorAll('button')].find((it) => it.innerText === {json.dumps(text)})"
        await self.comes(f"!!{find}")
        await asyncio.sleep(0.8)  # longer than the page waits after what came up by itself
        x, y = await self.value(
            f"(() => {{ const it = {find}; it.scrollIntoView({{block: 'center'}});"
            " const r = it.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]; })()"
        )
        await self.ask("Input.dispatchTouchEvent", type="touchStart", touchPoints=[{"x": x, "y": y}])
        await self.ask("Input.dispatchTouchEvent", type="touchEnd", touchPoints=[])

    async def picture(self, name: str) -> None:
        if PICTURES:
            came = await self.ask("Page.captureScreenshot")
            Path(PICTURES, f"{name}.png").write_bytes(base64.b64decode(came["data"]))

    async def is_readable(self) -> None:
        """Nothing wider than the phone; all text at 7:1 at least."""
        assert await self.value("document.documentElement.scrollWidth") <= WIDE
        least, seen = await self.value(LEAST_CONTRAST)
        assert seen > 5
        assert least >= 7


@asynccontextmanager
async def browser_at(address: str, home: Path) -> AsyncIterator[Browser]:
    assert BROWSER is not None
    process = await asyncio.create_subprocess_exec(
        BROWSER, "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
        "--disable-background-networking", "--remote-debugging-port=0", f"--user-data-dir={home}", "about:blank",
        stdout=asyncio.subprocess.DEVNULL, stderr=asyncio.subprocess.DEVNULL, start_new_session=True,
    )  # fmt: skip
    try:
        port_file = home / "DevToolsActivePort"
        for _ in range(240):
            if port_file.exists() and port_file.read_text():
                break
            await asyncio.sleep(0.25)
        port = port_file.read_text().splitlines()[0]
        async with aiohttp.ClientSession() as session:
            async with session.get(f"http://127.0.0.1:{port}/json/list") as came:
                target = next(each for each in await came.json() if each["type"] == "page")
            async with session.ws_connect(target["webSocketDebuggerUrl"], max_msg_size=0) as socket:
                browser = Browser(socket)
                for domain in ("Page", "Runtime", "Log", "Network"):
                    await browser.ask(f"{domain}.enable")
                await browser.ask(
                    "Emulation.setDeviceMetricsOverride", width=WIDE, height=HIGH, deviceScaleFactor=2, mobile=True
                )
                await browser.ask("Emulation.setTouchEmulationEnabled", enabled=True)
                await browser.ask("Page.navigate", url=address)
                yield browser
    finally:
        os.killpg(process.pid, signal.SIGKILL)
        await process.wait()


async def test_a_helper_sees_their_call_and_their_press_reaches_the_board(
    helped: RunSheet, bound: socket, tmp_path: Path, lantern: PlanFile, lantern_sheet: RunSheet
) -> None:
    hostile = "<img src=x onerror=document.title='broken'> chop"
    chop = msgspec.structs.replace(helped.slots[0], call=hostile)
    sheet = msgspec.structs.replace(helped, slots=(chop, *helped.slots[1:]))
    clock, log = StoppedClock(at("17:00")), tmp_path / "evening.jsonl"
    evening = open_evening(sheet, clock, RunLog(log), rehearsal=False)
    from_plan = FromPlan(lantern, provisions(lantern, lantern_sheet, lantern.plan.pantry))
    served = Served(bound, from_plan)
    app = BoardApp(evening, chime=Recorder(), page=served)
    async with app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        async with browser_at(served.address, tmp_path / "home") as phone:
            await phone.press(HELPER)
            await phone.shows(hostile)
            await phone.is_readable()
            await phone.picture("call")

            await phone.press("begun")
            await phone.shows("chop: on the board")

            begun = [event for event in evening.told if isinstance(event, StepStarted)]
            assert [(event.slot, event.by) for event in begun] == [("chop", HELPER)]
            assert b'"event":"StepStarted"' in log.read_bytes()
            assert served.address.rsplit("/", 2)[1].encode() not in log.read_bytes()
            await _comes(pilot.pause, lambda: f"{HELPER}: begun: chop" in screen_text(app))

            await phone.value("navigator.vibrate = (times) => { window.shaken = times.length; }")
            await pilot.press("m", "down", "enter")
            await phone.shows(words.ON_PAGE["called"])
            assert await phone.value("window.shaken") == 6
            await phone.is_readable()
            await phone.picture("called")
            await phone.press(words.ON_PAGE["coming"])
            await _comes(pilot.pause, lambda: f"{HELPER} comes" in screen_text(app))

            for name in ("wall", "plates", "list"):
                await phone.press(words.ON_PAGE[name])
                await phone.comes("document.querySelectorAll('main h2').length === 1")
                await phone.is_readable()
                await phone.picture(name)
            await phone.value("document.querySelector('main input').click()")
            await _comes(pilot.pause, lambda: from_plan.ticks.is_ticked(from_plan.foods[0]))
            await phone.press(words.ON_PAGE["calls"])
            await phone.shows("Still at it? chop")

            code, served._code = served._code, "another"  # as of a board that began anew
            await phone.shows(words.ON_PAGE["gone"])
            await phone.is_readable()
            served._code = code
            await phone.comes(f"!document.body.innerText.includes({json.dumps(words.ON_PAGE['gone'])})")

            await served.end()
            await phone.shows(f"{words.ON_PAGE['offline']} 17:00")
            await phone.is_readable()
            await phone.picture("offline")

            assert await phone.value("document.title") == "platecall"
            asked = [each["params"] for each in phone.told if each["method"] == "Network.requestWillBeSent"]
            assert asked
            assert {each["request"]["url"].split(served.address)[0] for each in asked} <= {"", "data:,"}
            said = [each["params"]["entry"] for each in phone.told if each["method"] == "Log.entryAdded"]
            assert [each for each in said if each["source"] == "security"] == []


async def _comes(pause: Callable[[float], Awaitable[None]], so: Callable[[], bool]) -> None:
    for _ in range(60):
        if so():
            return
        await pause(0.25)
    raise AssertionError
