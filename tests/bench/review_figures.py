"""A thousand evenings looked back on, measured: `python tests/bench/review_figures.py`. Run on demand; no test.

One rehearsal of the bundled plan, cut to 200 events, is read and reviewed a thousand times over.
"""

import sys
import tempfile
import time
from pathlib import Path

HERE = Path(__file__).parents[2]
sys.path.insert(0, str(HERE))

from board.app.sessions import first_moment
from board.app.timetables import sheet_of
from board.base.clock import StoppedClock
from board.evening.fold import fold_all
from board.evening.state import begin
from board.log.read import read_log
from board.log.write import RunLog
from board.rehearsal.draw import draw_night
from board.rehearsal.player import play
from board.review.measure import measured
from board.session.session import open_evening

LOGS, EVENTS, GOAL_SECONDS = 1000, 200, 2


def main() -> None:
    sheet = sheet_of(HERE / "plans" / "lantern-supper.yaml")
    with tempfile.TemporaryDirectory() as folder:
        log = RunLog(Path(folder) / "night.jsonl")
        clock = StoppedClock(first_moment(sheet, None))
        list(play(open_evening(sheet, clock, log, rehearsal=True), clock, draw_night(sheet, "usual", 1)))
        log.close()
        data = b"".join(log.path.read_bytes().splitlines(keepends=True)[: EVENTS + 1])
    began = time.process_time()
    for _ in range(LOGS):
        contents = read_log(data, "night")
        opened = contents.opened
        measured(fold_all(begin(opened.sheet), [opened, *contents.events]), opened)
    seconds = time.process_time() - began
    count = len(contents.events)
    print(f"{LOGS} logs of {count} events read and reviewed: {seconds:.2f} s of processor (goal ≤ {GOAL_SECONDS} s)")


if __name__ == "__main__":
    main()
