"""How long those who eat stay seated once a course is served. Ours: no source gives a figure."""

SIT_HOT_MINUTES = 12  # over a hot course, which does not wait
SIT_MINUTES = 8  # over any other
