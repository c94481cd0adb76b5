"""The jobs everybody knows. How long they take is common practice, no source."""

from board.facts.jobs import JOB_MINUTES, USUAL_JOBS


def test_usual_jobs_are_written_as_they_are_looked_up() -> None:
    assert [name for name in USUAL_JOBS if name != name.casefold().strip()] == []


def test_every_job_takes_some_time_and_no_hands_beyond_it() -> None:
    assert JOB_MINUTES > 0
    for job in USUAL_JOBS.values():
        assert job.minutes > 0
        assert job.fridge_minutes == 0 or job.fridge_minutes > job.minutes


def test_some_jobs_take_longer_for_more_guests_and_none_takes_less() -> None:
    assert USUAL_JOBS["lay the covers"].minutes_for(4) == 12
    assert USUAL_JOBS["lay the covers"].minutes_for(2) == 10
    assert USUAL_JOBS["borrow chairs"].minutes_for(24) == 36
    assert USUAL_JOBS["lay the table"].minutes_for(8) == 25 < USUAL_JOBS["lay the table"].minutes_for(24)
    assert USUAL_JOBS["dim the lights"].minutes_for(24) == USUAL_JOBS["dim the lights"].minutes
    for job in USUAL_JOBS.values():
        taken = [job.minutes_for(guests) for guests in range(1, 25)]
        assert taken == sorted(taken)
        assert taken[0] >= job.minutes
