"""What `lessons` costs over six evenings: `python tests/bench/lessons_figures.py`. Run on demand; no test.

Processor time of reading the logs, learning, and making the changed plans; and of the whole command, with the
timetable of all lessons and with `--each`, from the plan's own that is kept.
"""

import resource
import subprocess
import sys
import tempfile
import time
from datetime import timedelta
from pathlib import Path

HERE = Path(__file__).parents[2]
sys.path.insert(0, str(HERE))

from board.app.learning import changed, learn_from, read_evenings
from board.app.sessions import first_moment
from board.app.timetables import sheet_of
from board.base.clock import StoppedClock
from board.log.write import RunLog
from board.plan.edit.edits import Together, try_all, untried
from board.rehearsal.draw import draw_night
from board.rehearsal.player import play
from board.session.session import open_evening

PLAN, EVENINGS = HERE / "plans" / "lantern-supper.yaml", 6


def main() -> None:
    sheet = sheet_of(PLAN)
    with tempfile.TemporaryDirectory() as folder:
        paths = [Path(folder) / f"{n}.jsonl" for n in range(EVENINGS)]
        for seed, path in enumerate(paths):
            log = RunLog(path)
            clock = StoppedClock(first_moment(sheet, None) + timedelta(seconds=seed))
            list(play(open_evening(sheet, clock, log, rehearsal=False), clock, draw_night(sheet, "usual", seed)))
            log.close()
        began = time.process_time()
        evenings, _ = read_evenings(paths)
        read = time.process_time()
        learning = learn_from(PLAN, lambda: evenings)
        learned = time.process_time()
        for more in ([], ["--each"]):
            command = [sys.executable, "-m", "board", "lessons", str(PLAN), *map(str, paths), *more]
            before = _children()
            subprocess.run(command, cwd=HERE, check=True, stdout=subprocess.DEVNULL)
            print(f"lessons {' '.join(more)}: {_children() - before:.1f} s of processor")
    again = time.process_time()
    edits = [Together(tuple(lesson.edit for lesson in learning.found.lessons))]
    changed(learning, learning.found.lessons)
    written = time.process_time()
    try_all(untried(learning.text, learning.file), edits)
    tried = time.process_time()
    print(f"{EVENINGS} logs read: {read - began:.2f} s of processor; plan read and learned: {learned - read:.2f} s")
    print(f"a changed plan as text: {written - again:.2f} s; as content: {tried - written:.2f} s")


def _children() -> float:
    """Seconds of processor of all that was run."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


if __name__ == "__main__":
    main()
