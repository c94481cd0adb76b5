"""The jobs everybody knows. How long they take is common practice, no source."""

from board.kitchen.jobs import JOB_MINUTES, USUAL_JOBS


def test_usual_jobs_are_written_as_they_are_looked_up() -> None:
    assert [name for name in USUAL_JOBS if name != name.casefold().strip()] == []


def test_every_job_takes_some_time_and_no_hands_beyond_it() -> None:
    assert JOB_MINUTES > 0
    for job in USUAL_JOBS.values():
        assert job.minutes > 0
        assert job.fridge_minutes == 0 or job.fridge_minutes > job.minutes
