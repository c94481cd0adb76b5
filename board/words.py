"""Every word the program shows, in one place. A glossary in the README says where each comes from."""

from datetime import datetime

# --- lanes, states, how the evening stands -------------------------------------------------------------------
LANES = {
    "oven": "Oven",
    "stovetop": "Stovetop",
    "fridge": "Fridge",
    "front-of-house": "Front of house",
    "worktop": "Worktop",
}
LANES_SHORT = {
    "oven": "Oven",
    "stovetop": "Stove",
    "fridge": "Fridge",
    "front-of-house": "F.o.h.",
    "worktop": "Worktop",
}
STATES = {
    "to-come": "to come",
    "called": "called",
    "under-way": "under way",
    "finished": "finished",
    "keeping": "keeping",
    "left-out": "left out",
}
IN_HAND, TIGHT, BEHIND = "in hand", "tight", "behind"
STANDING_SIGN = {IN_HAND: "◆", TIGHT: "▲", BEHIND: "■"}


# --- the timetable -------------------------------------------------------------------------------------------
def heat_oven(oven: str, celsius: int, came_from: int | None) -> str:
    verb = "heat" if came_from is None or celsius >= came_from else "let"
    tail = f"to {celsius} °C" if verb == "heat" else f"cool to {celsius} °C"
    return f"{verb} the {oven} {tail}"


def call_heat(oven: str, celsius: int, came_from: int | None, *, ajar: bool = False) -> str:
    down = " down" if came_from is not None and celsius < came_from else ""
    door = ", door ajar until it is there" if ajar else ""
    return f"{oven[:1].upper()}{oven[1:]}{down} to {celsius} °C ({round(celsius * 9 / 5 + 32)} °F){door}"


def call_rest(oven: str, *, ajar: bool) -> str:
    return f"{oven[:1].upper()}{oven[1:]} off, door {'ajar' if ajar else 'shut'}, all stays inside"


def call_heated(oven: str, celsius: int) -> str:
    return f"{oven[:1].upper()}{oven[1:]} at {celsius} °C?"


def late(course: str, minutes: int) -> str:
    return f"{course} goes out {minutes} min late"


def over_hours(name: str, when: str) -> str:
    return f"{name} ({when}) lies outside the hours given"


def past_limit(name: str, stands: str, limit: str, where: str) -> str:
    return f"{name} stands {stands}, and keeps {limit} ({where})"


def waits_past(second: str, first: str, waits: str, most: str) -> str:
    return f"{second} begins {waits} after {first}, at most {most} was wanted"


def not_ready_for(first: str, second: str) -> str:
    return f"{first} is not done when {second}"


NO_PLACE = "no place for it"


def no_place(name: str, stands: str, where: str) -> str:
    return f"{name} stands {stands} without the place it should be kept in ({where})"


NOT_ITS_TIME = "it does not fit into the time it was given"
NO_HOURS_LEFT = "no hours of a free pair of hands are left for it"
NOBODY_HOME = "something hot would run with nobody at home"
HOURS_BEGIN = "the hours given begin only then"


def all_there_is(resource: str, capacity: float) -> str:
    """What there is of something that more is wanted of."""
    if resource == "rings":
        return "one ring is" if capacity == 1 else f"{capacity:g} rings are"
    if resource in ("fridge", "freezer"):
        return f"{capacity:g} litres of {resource} room are"
    return f"only one {resource} is" if capacity == 1 else f"{capacity:g} of {resource} are"


def hands_there_are(people: int) -> str:
    return "one pair of hands is" if people == 1 else f"{people} pairs of hands are"


def clash_over(there_is: str, listed: str) -> str:
    return f"{there_is} not enough for {listed}"


def clash_of_hours(listed: str) -> str:
    return f"no free hours of any hands suit {listed}"


def clash_over_oven(oven: str | None, listed: str, shelves: int | None) -> str:
    """`shelves` where one setting would do for all, and only the room is short."""
    which = f"the {oven}" if oven is not None else "the ovens"
    why = "no one setting does for all of them" if shelves is None else f"there is room for {shelves} shelves"
    return f"{which} cannot take {listed}: {why}"


def accepts(low: int, high: int, *, off: bool) -> str:
    if off:
        return "switched off"
    return f"{low} °C" if low == high else f"{low} to {high} °C"


def keeping_it(name: str) -> str:
    return f"keeping what comes of '{name}'"


def some_of(things: list[str], most: int) -> str:
    if len(things) > most + 1:
        return f"{', '.join(things[:most])} and {len(things) - most} more"
    return f"{', '.join(things[:-1])} and {things[-1]}" if len(things) > 1 else things[0]


# Ways out of a clash.
SECOND_OVEN, A_HELPER = "second oven", "helper"
ON_A_RING, IN_A_BOX = "on a ring, at the lowest flame or on a heat spreader", "in an insulated box, warmed first"


def way_share(name: str, celsius: int, *, kept: bool) -> str:
    what = f"what comes of '{name}'" if kept else f"'{name}'"
    return f"let {what} stand at {celsius} °C ({round(celsius * 9 / 5 + 32)} °F) too, if the recipe bears it"


def way_keep(name: str, where: str, hot_celsius: int) -> str:
    hot = f"{hot_celsius} °C ({round(hot_celsius * 9 / 5 + 32)} °F)"
    return f"keep what comes of '{name}' {where}; it must stay at {hot} or above"


def way_another_day(name: str) -> str:
    return f"let '{name}' be done whenever it suits, as long as it keeps"


WAY_OVEN = "borrow a second oven"


def way_rings(number: int) -> str:
    return "borrow a plug-in ring" if number == 1 else f"borrow {number} plug-in rings"


def way_room(where: str, litres: int) -> str:
    return f"find {litres} litres more {where} room: a neighbour's, a cool box with ice"


def way_tool(name: str) -> str:
    return f"borrow one more {name}"


def way_earlier(who: str, day: str, start: str, minutes: int) -> str:
    return f"{who} begins {minutes} min earlier {day}, at {start}"


def day_of_plan(days_before: int) -> str:
    return "on the day" if days_before <= 0 else "day before" if days_before == 1 else f"{days_before} days before"


def way_helper(minutes: int, start: str, end: str, day: str) -> str:
    return f"a helper for {minutes} min of work, from {start} to {end} {day}"


def way_push(course: str, minutes: int, at: str) -> str:
    return f"serve {course} {minutes} min later, at {at}"


def way_buy(dish: str) -> str:
    return f"buy '{dish}' ready; its label says how it keeps and whether it must be heated"


def way_drop(dish: str) -> str:
    return f"leave out '{dish}'"


def price_moved(course: str, now: str, before: str) -> str:
    return f"{course} goes out at {now} instead of {before}"


def price_away(minutes: int) -> str:
    return f"{abs(minutes)} min {'more' if minutes > 0 else 'less'} in the kitchen while guests are there"


def price_remains(count: int, first: str) -> str:
    if not count:
        return "then nothing is given up"
    more = f" and {count - 1} more" if count > 1 else ""
    return f"still given up: {first}{more}"


def waits_for(name: str, until: str, reason: str) -> str:
    because = {
        "order": "it comes first",
        "hands": "the hands are busy",
        "oven": "the oven",
        "heat": "the oven's heat",
    }.get(reason, reason)
    return f"waits for {name} until {until} ({because})"


def taken_up(name: str, at: str) -> str:
    return f"it is taken up by {name} at {at}"


# --- calls ---------------------------------------------------------------------------------------------------
def call_start(name: str) -> str:
    return name[:1].upper() + name[1:]


def call_end(name: str) -> str:
    return f"Done? {name}"


def call_look_in(name: str) -> str:
    return f"Look in: {name}"


CALL_ARRIVE = "Guests are due"
CALL_SEAT = "Guests to the table"


def call_serve(course: str) -> str:
    return f"Plate {course}"


def call_served(course: str) -> str:
    return f"{course} on the table?"


def call_clear(course: str) -> str:
    return f"Clear {course}"


# --- times ---------------------------------------------------------------------------------------------------
def clock(at: datetime) -> str:
    return at.strftime("%H:%M")


def day_and_clock(at: datetime) -> str:
    return at.strftime("%a %H:%M")


def span(minutes: int) -> str:
    """`25 min`, `1 h 30`."""
    hours, rest = divmod(minutes, 60)
    return f"{hours} h {rest:02d}" if hours else f"{rest} min"


def short_day(at: datetime) -> str:
    return f"{at.strftime('%a')} {at.day} {at.strftime('%b')}"


def full_day(at: datetime) -> str:
    return f"{at.strftime('%A')} {at.day} {at.strftime('%B')}"


# --- why something cannot be done ----------------------------------------------------------------------------
EMPTY_NOTE = "an empty note is not kept"
NOTHING_TO_TAKE_BACK = "there is no answer to take back"


def already_settled(name: str) -> str:
    return f"{name} is settled already"


def cannot_leave_out(name: str) -> str:
    return f"{name}: that cannot be left out"


def waits_for_first(name: str, other: str) -> str:
    return f"{name} waits for: {other}. Answer that first, or leave it out"


def cannot_push(course: str) -> str:
    return f"{course} has gone out already"


def cannot_push_earlier(course: str) -> str:
    return f"{course} cannot go out before it was wanted"


# --- the live board ------------------------------------------------------------------------------------------
DONE_BEGIN, DONE_LOOK, DONE_END = "begun", "looked in", "done"
NOTHING_MORE = "All done"
NOTHING_MORE_DETAIL = "Nothing is left to call. q ends the evening."
ALL_SERVED = "all courses are out"
REHEARSAL = "rehearsal"
HELD = "clock held"
LOOK_FOR = "look for"
PART_SIGN = {"start": "▶", "look-in": "◉", "end": "■"}


def free_until(clock_words: str) -> str:
    return f"Free till {clock_words}"


def free_for(length: str, next_name: str) -> str:
    return f"No hands needed for {length}. Then: {next_name}"


def hands_on(name: str) -> str:
    return name[:1].upper() + name[1:]


def hands_on_left(left: str, who: str) -> str:
    return f"{who}: hands on, {left} left" if who else f"hands on, {left} left"


def in_oven(oven: str) -> str:
    return f" ({oven})"


def course_in(name: str) -> str:
    return f"{name} in"


def goes_out_at(wanted: str, served: str, late_minutes: int) -> str:
    if late_minutes:
        return f"{wanted} → {served}, {span(late_minutes)} late"
    return served if served == wanted else f"{wanted} → {served}"


def course_strip(courses: list[str]) -> str:
    return "  ·  ".join(courses)


def course_out(name: str, at: str) -> str:
    return f"{name} ✓ {at}"


def course_ahead(name: str, at: str, late_minutes: int) -> str:
    return f"{name} {at} (+{late_minutes})" if late_minutes else f"{name} {at}"


def course_dropped(name: str) -> str:
    return f"{name} left out"


def uses(what: str, amount: float) -> str:
    if what == "rings":
        return "1 ring" if amount == 1 else f"{amount:g} rings"
    if what in ("fridge", "freezer"):
        room = "1 litre" if amount == 1 else f"{amount:g} litres"
        return room if what == "fridge" else f"{room} of the freezer"
    return what if amount == 1 else f"{amount:g} × {what}"


def setting(oven: str, celsius: int) -> str:
    return f"{oven} at {celsius} °C ({round(celsius * 9 / 5 + 32)} °F)"


def use(what: str, amount: float, celsius: int | None, *, off: bool) -> str:
    if off:
        return f"{what} off"
    return setting(what, celsius) if celsius is not None else uses(what, amount)


def core(celsius: float) -> str:
    return f"core {celsius:g} °C ({celsius * 9 / 5 + 32:.0f} °F)"


def look_for(words: str) -> str:
    return f"{LOOK_FOR}: {words}"


def waited(countdown: str) -> str:
    return f"called {countdown} ago"


def stands_until(name: str, left: str, limit: str, where: str) -> str:
    return f"{name}: keeps {left} more, till {limit} ({where})"


def past_keeping(name: str, over: str, where: str) -> str:
    return f"{name}: {over} past what it keeps ({where})"


BUSY_HINT = "space done  ·  x leave out"


def speed(times: float) -> str:
    return f"×{times:g}"


def answer_hint(word: str) -> str:
    return f"space {word}  ·  l later  ·  x leave out"


def pushed(course: str, minutes: int) -> str:
    return f"{course} pushed {minutes} min"


# --- keys ----------------------------------------------------------------------------------------------------
# (key, words in the bar, words in help)
KEYS_EVENING = (
    ("space", "answer", "answer the call: begun, looked in, done"),
    ("l", "later", "ask again in 5 minutes"),
    ("x", "out", "leave this step out"),
    ("u", "back", "take the last answer back, as often as you like"),
    ("↑↓", "choose", "choose another call, or something still to come"),
    ("p", "push", "send a course out later, and see what that costs first"),
    ("a", "arrived", "the guests are here"),
    ("s", "seated", "the guests are at the table"),
    ("c", "cleared", "the course is cleared"),
    ("n", "note", "write a note into the run log"),
    ("z", "zoom", "show 45, 90 or 180 minutes ahead"),
    ("b", "bell", "bell on or off"),
    ("?", "help", "this page"),
    ("q", "leave", "leave the board; the run log keeps everything"),
)
KEYS_REHEARSAL = (
    ("h", "hold", "hold the rehearsal's clock, or let it go on"),
    (",.", "speed", "slower, faster"),
    ("j", "jump", "jump to the next call"),
)
HELP_TITLE = "Keys"
HELP_SIGNS = (
    ("▶ ◉ ■", "a call to begin, to look in, at the end"),
    ("━ ╌", "hands on it, running by itself"),
    ("◆ ▲ ■", "in hand, tight, behind"),
)
CLOSE_HINT = "esc closes"
BELL_ON, BELL_OFF = "bell on", "bell off"
NOT_CALLED_YET = "it is not called yet; it asks at its time"
ANSWER_WORDS = {"CoursePushed": "the push", "NoteWritten": "the note"}
NO_CALL = "nothing is called; choose something with ↓ first"
NOT_YET_DUE = "not called yet: space begins it early"
NOTHING_TO_CLEAR = "no course waits to be cleared"
NOTHING_TO_SEAT = "the guests are at the table already"
ARRIVED_ALREADY = "the guests have arrived already"
NOTHING_TO_PUSH = "every course is out"
NOTHING_TO_JUMP = "there is no further call"
ONLY_REHEARSAL = "that key works in a rehearsal only"

NOTE_TITLE = "A note"
NOTE_HINT = "enter keeps it · esc leaves it"


def note_about(name: str | None) -> str:
    return f"about: {name}" if name else "about the evening"


NOTE_KEPT = "note kept"
PUSH_TITLE = "Push a course"
PUSH_HINT = "↑ ↓ course · ← → minutes · enter pushes · esc leaves it"


def push_line(course: str, minutes: int) -> str:
    return f"{course} by {minutes} min"


def push_effect(course: str, before: str, after: str, late: int) -> str:
    tail = f", {span(late)} late" if late else ""
    return f"{course}: {before} → {after}{tail}" if before != after else f"{course}: {after}, unchanged"


def push_keeps(name: str, stood: int, limit: int) -> str:
    return f"{name} will have stood {stood} of {limit} min"


PUSH_COSTS_NOTHING = "nothing stands past what it keeps"
LEAVE_TITLE = "Leave the board?"
LEAVE_LINES = (
    "l   leave; the same command comes back to this very point",
    "e   the evening is over: close the run log",
    "esc stay",
)


def log_cannot_be_written(why: str) -> str:
    return f"The run log cannot be written ({why}). Answers are not taken until it can."


def board_fault(why: str) -> str:
    return f"Something went wrong in the board ({why}); the run log is whole."


MARKED = {
    "arrive": "the guests are here",
    "seat": "the guests are at the table",
    "clear": "cleared",
}
NOTHING_TO_MARK = {
    "arrive": ARRIVED_ALREADY,
    "seat": NOTHING_TO_SEAT,
    "clear": NOTHING_TO_CLEAR,
}


def also_waiting(calls: list[str]) -> str:
    return f"   +{len(calls)}: " + "  ".join(calls)


def taken_back(what: str) -> str:
    return f"taken back: {what}"


def put_off(name: str) -> str:
    return f"again in 5 min: {name}"


def left_out(name: str) -> str:
    return f"left out: {name}"


# --- the command line ----------------------------------------------------------------------------------------
PROGRAM = "platecall"
CAUTION = (
    "Planning help only: the label on the food, your local food-safety code and licensed advice decide. "
    "Allergies: read every label; this version does not yet match ingredients with guests."
)

# --- paper ---------------------------------------------------------------------------------------------------
SHEET_FROM, SHEET_TO, SHEET_WHAT, SHEET_WHERE, SHEET_WHO, SHEET_GIVE = "from", "to", "what", "where", "who", "give"
SHEET_NO_GIVE = "–"


def give(minutes: int) -> str:
    return f"{minutes} min" if minutes < 100 else f"{minutes // 60} h"


SHEET_NOBODY = "nobody needed"
SHEET_GIVEN_UP = "Given up"


def min_late(minutes: int) -> str:
    return f"  ({minutes} min late)"


def away_from_guests(minutes: int) -> str:
    return f"{minutes} min in the kitchen while your guests are at the table or about"


def busiest_before(course: str, minutes: int) -> str:
    return f"busiest half hour: before {course}, {minutes} of 30 min at work"


def sheet_state(proved: bool, gap: float) -> str:
    if proved:
        return "proved: no timetable does better on what counts"
    return f"the best found; what counts might still be bettered by up to {gap:.0%}"


REVIEW_COURSE, REVIEW_WANTED, REVIEW_PLANNED, REVIEW_SERVED = "course", "wanted", "planned", "served"
REVIEW_LATE, REVIEW_PUSHED, REVIEW_STEP, REVIEW_BEGUN = "late", "pushed", "step", "begun"
REVIEW_MINUTES, REVIEW_TOOK, REVIEW_ANSWERED = "min", "took", "answered"
REVIEW_NONE = "–"
REVIEW_RAN_OVER = "Ran over"
REVIEW_NOTHING_OVER = "Nothing ran over."
REVIEW_LEFT_OUT = "Left out"
REVIEW_NOT_REACHED = "Not reached"
REVIEW_NOTES = "Notes"


def review_title(plan: str, rehearsal: bool, closed: bool) -> str:
    kind = ", a rehearsal" if rehearsal else ""
    return f"{plan}{kind}" if closed else f"{plan}{kind} (not closed)"


def review_span(began: str, ended: str) -> str:
    return f"from {began} to {ended}"


def signed(minutes: int) -> str:
    return f"{minutes:+d} min" if minutes else "0 min"


def ran_over(name: str, planned: int, actual: int) -> str:
    return f"{name}: {actual} min instead of {planned}"


# --- odds ----------------------------------------------------------------------------------------------------
ODDS_COURSE, ODDS_WANTED, ODDS_WITHIN, ODDS_MEAN = "course", "wanted", "within 5 min", "mean late"
ODDS_CAUSE, ODDS_LATE_IN = "ran over most", "of all evenings"
ODDS_BLAME = "What made a course more than 5 min late"
ODDS_NO_BLAME = "In none of these evenings was a course more than 5 min late."
ODDS_HELP = "Where one more minute helps most (begin it a minute sooner, or take a minute out of it)"
ODDS_NO_HELP = "No single minute raises a course's chance by a whole point."
ODDS_TIMETABLE = "the timetable plans it late"
ODDS_NO_SPREAD = (
    "Nothing in this plan may last longer or shorter: every piece of work has one figure, so all evenings are the "
    "timetable's own. To learn the odds, write how long things last at least, most likely and at most, as in "
    "`takes: 10 to 15 to 20 min` or `eaten in: 20 to 25 to 35 min`."
)
ODDS_CAUTION = (
    "The odds know only the spreads the plan gives. They take it that every call is answered on time and nothing "
    "goes wrong otherwise; guests who come late, a forgotten pan or a slow oven are not in them."
)


def odds_title(plan: str, evenings: int) -> str:
    return f"{plan}: the odds, from {evenings:,} evenings played forward"


def odds_error(points: float, seed: int) -> str:
    return f"shares are right to ± {points:g} point{'s' if points != 1 else ''} (19 times of 20); seed {seed}"


def odds_by(share: float) -> str:
    return f"{share:.0%} by".replace("%", " %")


def odds_minutes(minutes: float) -> str:
    return "under 0.1 min" if 0 < minutes < 0.1 else f"{minutes:.1f} min"


def chance(share: float, *, certain: bool) -> str:
    """Whole per cent; none and all are only said when they are so."""
    if not certain and share >= 0.995:
        return "over 99 %"
    if not certain and share < 0.005:
        return "under 1 %"
    return f"{round(share * 100)} %"


def odds_picture(minutes: int) -> str:
    each = "minute" if minutes == 1 else f"{minutes} minutes"
    return f"Minutes after the wanted time, one block for each {each}; left of │ is within 5 min; · is very few"


def sat_long(course: str) -> str:
    return f"the guests sat long over {course}"


def sit_shorter(course: str) -> str:
    return f"the guests over {course}"


def odds_gain(course: str, before: str, points: int) -> str:
    return f"{course} +{points} point{'s' if points != 1 else ''} (from {before})"


def odds_help(name: str, gains: list[str], minutes: str) -> str:
    return f"{name}: {', '.join(gains)}; saves {minutes} of lateness an evening"


def odds_spreads(spreads: int, pieces: int, sittings: int, courses: int) -> str:
    return (
        f"{spreads} of {pieces} pieces of work have a spread, and {sittings} of {courses} courses in how long they are "
        "eaten; the others always take their one figure."
    )


# --- played line by line -------------------------------------------------------------------------------------
def played(at: str, sign: str, text: str) -> str:
    return f"{at}  {sign} {text}"


def played_course(at: str, name: str, late: int) -> str:
    return f"{at}  ● {name} is out" + (f", {late} min late" if late else ", on time")


def played_summary(answered: int, courses: int, on_time: int, left_out: int) -> str:
    return f"{answered} calls answered; {on_time} of {courses} courses on time; {left_out} steps left out."


CLI_ABOUT = "Plan a sit-down meal of several courses, compute its timetable, and run the evening from a live board."
CLI_EXAMPLES = """examples:
  platecall check plans/lantern-supper.yaml
  platecall rehearse plans/lantern-supper.yaml --speed 10
  platecall live plans/lantern-supper.yaml"""
COMMANDS = {
    "check": ("say what is wrong, doubtful or assumed in a plan", "platecall check plans/lantern-supper.yaml"),
    "sheet": ("print the run sheet: what, who, where, from when to when", "platecall sheet supper.yaml --by lane"),
    "odds": ("the chance that each course goes out on time", "platecall odds supper.yaml --evenings 100000"),
    "live": ("run the evening from the live board", "platecall live supper.yaml"),
    "rehearse": ("the same board against a virtual clock", "platecall rehearse supper.yaml --speed 20 --from 17:30"),
    "review": ("planned and actual times of an evening, from its run log", "platecall review evening.jsonl"),
    "schema": ("print the JSON Schema of a plan, for editors", "platecall schema > plan.schema.json"),
}
ARGUMENTS = {"plan": "the plan file (YAML)", "log": "the run log (JSON Lines)"}
OPTIONS = {
    "by": "what to group by (default: day)",
    "json": "print it for other programs",
    "limit": "search at most so long; the best found is shown, with the gap to what is proved",
    "why": "say what holds this step where it is, what waits for it, and its give",
    "ways-out": "look for up to N changes to the plan that end a clash, each worked out again, the cheapest first",
    "take": "write the K-th of them into the plan file; comments and layout stay",
    "evenings": "how many evenings to play, 100 to 1000000 (default: 10000)",
    "seed": "which evenings are drawn; the same number draws the same ones (default: 1)",
    "fresh-sheet": "work the timetable out anew instead of taking the kept one",
    "log": "where the run log lies (default: the user's data folder)",
    "no-bell": "call without the terminal's bell",
    "speed": "how many times as fast as real time, 1 to 240 (default: 10)",
    "from": "begin at this clock time on the day of the event",
    "fresh-rehearsal": "begin a new rehearsal instead of going on with the last",
    "plain": "play it line by line as fast as it goes, every call answered on time",
}
WAYS_OUT = "Ways out, each worked out again; what leaves nothing given up first, the cheapest first"
NO_WAYS_OUT = "No way out was needed, or none was found among the changes the program knows"


def way_line(number: int, what: str) -> str:
    return f"{number}  {what}"


def how_to_take(plan: str) -> str:
    return f"take one: platecall sheet {plan} --take 1"


def ask_for_ways(plan: object) -> str:
    return f"\nways out of this: platecall sheet {plan} --ways-out 3"


def taken(plan: str) -> str:
    return f"Written to {plan}; these lines changed:"


def no_such_way(number: int, count: int) -> str:
    if not count:
        return "there is nothing to take: no way out was needed, or none was found; the plan is as it was"
    return f"there is no way out number {number}, only 1 to {count}; the plan is as it was"


def trying(what: str) -> str:
    return f"trying: {what}"


def bad_count(text: str) -> str:
    return f"{text!r} is not a number from 1 to 50"


WORKING = "working out the timetable …"
NO_ANSWER = "no timetable was found in the time allowed; try again, or make the plan smaller"
NO_TERMINAL = "the live board needs a terminal to draw on; for plain output use `platecall rehearse PLAN --plain`"
STOP, MIND, NOTE = "STOP: cannot be done as written", "MIND", "NOTE"
CHECK_HOLDS = "The timetable holds: every course on time, nothing kept past its limit."
CHECK_GIVES_UP = "The timetable has to give something up:"
CHECK_STOPPED = "No timetable until the stops above are mended."
CHECK_ASSUMED = "Assumed, because the plan does not say:"
PLAN_CHANGED = (
    "The plan was edited since this evening began; the board goes on with the timetable it began with. "
    "To begin anew, move the run log away."
)


def example(line: str) -> str:
    return f"example:\n  {line}"


def welcome(bundled: str) -> str:
    commands = "\n".join(f"  {name:<10}{about}" for name, (about, _) in COMMANDS.items())
    return (
        f"{PROGRAM}: {CLI_ABOUT}\n\n{commands}\n\nA plan to try comes along; watch its whole evening at ten times the "
        f"speed:\n\n  {PROGRAM} rehearse {bundled} --speed 10\n\nEvery command has --help with an example."
    )


def check_title(event: str, guests: int, pieces: int) -> str:
    return f"{event}: {guests} at the table, {pieces} pieces of work"


def snag_count(count: int) -> str:
    return f"{count} thing{'s' if count != 1 else ''} to mend."


def bad_speed(text: str) -> str:
    return f"{text!r} is not a speed from 1 to 240"


AIM_WORDS = {
    "hours": "work within its hours",
    "courses": "courses on time",
    "keeps": "nothing kept too long",
    "freshness": "hot food fresh",
    "company": "time with the guests",
    "day": "a light day",
    "rush": "a calm half hour before each course",
    "give": "give where it is needed",
    "touch": "finishing touch",
}


def progress(aim: str, value: int, bound: int) -> str:
    gap = f" (gap {1 - max(0, bound) / value:.0%})" if value > 0 else ""
    return f"{AIM_WORDS.get(aim, aim)}: best {value}, at least {max(0, bound)}{gap} · ctrl-c takes the best so far"


def bad_seconds(text: str) -> str:
    return f"{text!r} is not a number of seconds"


def bad_evenings(text: str, fewest: int, most: int) -> str:
    return f"{text!r} is not a number of evenings from {fewest} to {most}"


def bad_seed(text: str) -> str:
    return f"{text!r} is not a seed; write a whole number of up to 18 digits, not below 0"


def bad_clock(text: str) -> str:
    return f"{text!r} is not a clock time; write for example 17:30"


def no_such_file(path: str) -> str:
    return f"{path}: there is no such file"


def is_folder(path: str) -> str:
    return f"{path}: this is a folder, not a file"


def cannot_read(path: str, why: str) -> str:
    return f"{path}: cannot be read ({why})"


def not_utf8(path: str, line: int) -> str:
    return f"{path}:{line}:1: P01 the file is not UTF-8 text here\n    Save it as UTF-8."


def long_past(date: str) -> str:
    return f"the event of {date} is over; rehearse it, or give the plan another date"


def log_in_use(path: str) -> str:
    return f"{path}: another board has this run log open; close that one first, or name another with --log"


def log_unreadable(why: str) -> str:
    return f"{why}\n    Nothing was changed."


def log_of_another(path: str, kind: str) -> str:
    return f"{path}: this run log is of {kind}; name another file with --log"


OTHER_EVENING = "another event"
A_REHEARSAL = "a rehearsal"
A_REAL_EVENING = "a real evening"


def not_a_file(path: str) -> str:
    return f"{path}: this is not a regular file"


def too_large(path: str) -> str:
    return f"{path}: this file is too large to be a plan or a run log"


def cannot_print(why: str) -> str:
    return f"the output cannot be written ({why})"


BOARD_FAILED = "the board ended by a fault; the run log is whole, and the same command goes on with it"


def log_not_empty(path: str) -> str:
    return f"{path}: there is an evening in this run log already; name another file"


def cannot_keep(path: str, why: str) -> str:
    return f"{path}: the run log cannot be kept here ({why}); name another place with --log"


def left_board(path: str) -> str:
    return f"The run log is {path}\nLook back with: {PROGRAM} review {path}"


def log_lies_at(path: str) -> str:
    return f"Run log: {path}"


def gone_on(events: int) -> str:
    return f"Gone on with: {events} events from the run log."


def stuck(why: str) -> str:
    return f"the evening came to a standstill: {why}"


# --- why -----------------------------------------------------------------------------------------------------
REASONS = {"order": "it comes first", "hands": "the same hands", "oven": "the oven", "heat": "the oven's heat"}
WHY_WAITS_FOR_NOTHING = "  it waits for nothing; it stands where it keeps best until it is wanted"
WHY_NO_GIVE = "  no course hangs on it"


def several_steps(name: str, which: list[str]) -> str:
    return f"{name!r} could be several steps: {'; '.join(which)}. Write more of its words"


def no_such_step(name: str, guess: str) -> str:
    return f"no step is called {name!r}.{guess}"


def why_stands(name: str, start: str, end: str) -> str:
    return f"{name}: {start} to {end}"


def why_waits(name: str, until: str, reason: str, *, tight: bool) -> str:
    mark = "held by" if tight else "after"
    return f"  {mark} {name}, until {until} ({REASONS.get(reason, reason)})"


def why_is_waited_for(name: str, at: str, reason: str, *, tight: bool) -> str:
    mark = "holds" if tight else "before"
    return f"  {mark} {name}, at {at} ({REASONS.get(reason, 'the guests come' if reason == 'ready' else reason)})"


def why_keeps(stands: int, limit: int, where: str) -> str:
    return f"  its result stands {span(stands)} of {span(limit)} ({where})"


def why_give(minutes: int) -> str:
    return f"  it can slip {span(minutes)} before a course is late or the guests are there"


# --- why a plan file was left as it is -----------------------------------------------------------------------
EDIT_OTHER_TEXT = "the plan is not the one that was read; read it again first"


def edit_unreadable(why: str) -> str:
    return f"the plan cannot be changed while it cannot be read: {why}"


def edit_would_spoil(why: str) -> str:
    return f"with this change the plan could not be read: {why}"


def edit_no_such_place(path: str) -> str:
    return f"the plan has no place for this change: {path}"


def edit_not_possible(path: str) -> str:
    return f"this part of the plan is written in a way that only its host can change: {path}"


def edit_nobody(name: str) -> str:
    return f"nobody among the hands is called {name}"


def edit_hands_there(name: str) -> str:
    return f"{name} is among the hands already"


def edit_hours_already(name: str, day: str, since: str) -> str:
    return f"{name} has hours from {since} already ({day})"


def edit_hours_covered(name: str, day: str, span_words: str) -> str:
    return f"{name} has the hours {span_words} already ({day})"


def edit_until_when(name: str, day: str) -> str:
    return f"{name} has no hours yet ({day}); say until when, too"


def edit_no_course(name: str) -> str:
    return f"no course is called {name}"


def edit_no_dish(dish: str, course: str) -> str:
    return f"no dish of {course} is called {dish}, or more than one is"


def edit_course_there(name: str, at: str) -> str:
    return f"{name} is wanted at {at} already"


def edit_no_oven(name: str) -> str:
    return f"no oven is called {name}"


def edit_oven_there(name: str) -> str:
    return f"an oven is called {name} already"


def edit_no_oven_name(name: str) -> str:
    return f"an oven cannot be called {name!r}: a step that names it would be misread"


EDIT_NONE_MORE = "one more at least"
EDIT_NO_WAY = "another way must differ in something"
EDIT_NO_STEP = "there is no step or job at this place of the plan"
EDIT_NO_DAY = "the step says nothing of its day or time"


def edit_same_place(on: str) -> str:
    return f"the step says so already: {on}"


def edit_only_dish(dish: str, course: str) -> str:
    return f"{dish} is the only dish of {course}"


def edit_named_elsewhere(dish: str, names: list[str]) -> str:
    return f"steps of {dish} are named in `after` or `before` of: {'; '.join(names)}"


def bought_step(dish: str) -> str:
    return f"plate the bought {dish}"


def plan_moved_on(path: str) -> str:
    return f"{path} was changed since it was read; nothing was written. Open it again, then make the change"


def plan_protected(path: str) -> str:
    return f"{path} is write-protected; nothing was written"


def plan_not_written(path: str, why: str) -> str:
    return f"{path} could not be written: {why}. The file is as it was"
