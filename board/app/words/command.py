"""The command line: commands, options, and what they say."""

PROGRAM = "platecall"

CLI_ABOUT = "Plan a sit-down meal of several courses, compute its timetable, and run the evening from a live board."
# PLAN stands for a plan that comes along, so that each runs wherever the program is installed.
CLI_EXAMPLES = """examples:
  platecall check PLAN
  platecall rehearse PLAN --speed 10
  platecall live PLAN"""
_EVENING = "platecall rehearse PLAN --plain --log evening.jsonl\n  "
COMMANDS = {
    "new": (
        "write a plan from a menu, or to start from, after a few questions",
        "printf 'Main: Roast chicken\\nSweet: Plum tart\\n' | platecall new supper.yaml --menu - --zone Europe/Dublin",
    ),
    "plan": (
        "make a plan on one screen: its lines, the days they give, and what matters most; one not there yet begins "
        "with its menu",
        "platecall plan PLAN",
    ),
    "check": ("say what is wrong, doubtful or assumed in a plan", "platecall check PLAN"),
    "settle": (
        "go through what was guessed in a plan, what decides most first, and write what you say into it",
        "platecall settle PLAN",
    ),
    "dishes": (
        "dishes of your own: list them, keep one of a plan, show or drop one, write them into a plan",
        'platecall dishes keep PLAN "Onion and thyme tartlets"\n  platecall dishes show "Onion and thyme tartlets"',
    ),
    "guests": ("who may eat what: every guest against every dish", "platecall guests PLAN --markdown"),
    "sheet": ("print the run sheet: what, who, where, from when to when", "platecall sheet PLAN --by lane"),
    "card": (
        "the menu as a card for the table: courses, dishes, and whose plate is different",
        "platecall card PLAN --plates --html card.html",
    ),
    "provisions": (
        "what to buy, by day and by section of the shop; or tick it off",
        "platecall provisions PLAN --tick",
    ),
    "odds": ("the chance that each course goes out on time", "platecall odds PLAN --evenings 1000"),
    "live": ("run the evening from the live board", "platecall live PLAN"),
    "rehearse": ("the same board against a virtual clock", "platecall rehearse PLAN --speed 20 --from 17:30"),
    "watch": (
        "look on at a running evening from another terminal; answers nothing",
        f"{_EVENING}platecall watch evening.jsonl",
    ),
    "review": ("planned and actual times of an evening, from its run log", f"{_EVENING}platecall review evening.jsonl"),
    "calendar": (
        "the run sheet as a calendar file: shopping, making ahead, the day, with reminders",
        "platecall calendar PLAN -o supper.ics",
    ),
    "dish": (
        "read a recipe saved from a web page (schema.org Recipe) as a dish to paste into a plan; never goes online",
        """printf '{"@type": "Recipe", "name": "Tea", "recipeYield": "2 cups", "recipeIngredient": ["tea"], """
        """"recipeInstructions": ["Boil the water for 5 minutes.", "Pour it on the tea."]}' | platecall dish -""",
    ),
    "table": ("who sits where, one cover, and what to get out for the table", "platecall table PLAN --course Sweet"),
    "lessons": (
        "what past evenings teach of a plan's figures, and taking it up into the plan",
        f"{_EVENING}platecall lessons PLAN evening.jsonl --no-effect",
    ),
    "logs": ("list the run logs there are; a log as CSV, or with the guests' names taken out", "platecall logs --csv"),
    "schema": ("print the JSON Schema of a plan, for editors", "platecall schema > plan.schema.json"),
    "help": ("the manual: topics, keys of a plan, findings, keys of the board", "platecall help food 10"),
    "completion": (
        "print a script that lets a shell complete commands, options and files",
        "platecall completion bash > completion.bash",
    ),
}
SHELL = "the shell the script is for"
ARGUMENTS = {"plan": "the plan file (YAML)", "log": "the run log (JSON Lines)",
             "new-plan": "the plan file to write (default: the event's name); one that is there is never overwritten",
             "recipe": "a saved web page (HTML) or a JSON-LD file"}  # fmt: skip
WORDS_ASKED = "a topic, a key of a plan, a finding, a key of the board; none: the list of topics"
LOGS_TO_LIST = "run logs (default: every one in the user's data folder)"
LOGS_TO_REVIEW = "one run log, or several for a table of evenings"
LOGS_TO_LEARN_FROM = "run logs to learn from (default: every evening in the user's data folder)"
OPTIONS = {
    "by": "what to group by (default: day)",
    "json": "print it for other programs",
    "markdown": "print it as Markdown, for paper",
    "tick": "tick the list off on a small screen; ticks are kept beside the plan",
    "limit": "search at most so long; the best found is shown, with the gap to what is proved",
    "why": "say what holds this step where it is, what waits for it, and its give",
    "ways-out": "look for up to N changes to the plan that end a clash, each worked out again, the cheapest first",
    "take": "write the K-th of them into the plan file; comments and layout stay",
    "leaf": "for paper: wall (everybody's work, in large type), everybody (a leaf a person), or one person's name",
    "html": "write it as a page that prints from any browser, a leaf a sheet of paper",
    "provisions-html": "write it as a page that prints from any browser, with a box to tick for each food",
    "page": "write it as a page that prints from any browser",
    "plates": "name each guest whose plate is different, and what is on it; diets and allergies are not named",
    "paper": "what the page is printed on (default: a4)",
    "course": "the cover and the pieces of one course only",
    "take-lessons": "write these lessons into the plan file, all or by number (1,3); comments and layout stay",
    "book": "show the cook's book: how long work takes you, and your ovens, over all plans; no plan is needed",
    "into-book": "add what these evenings showed to the cook's book; no evening counts twice",
    "from-book": "write the cook's book's figures where the plan says `as in the book`, with a copy of it beside",
    "each": "work out every lesson that matters by itself, not only the five worst; takes a few seconds each",
    "no-effect": "leave out what the lessons bring; the timetable is then not worked out anew",
    "csv": "print every event as a row of a table",
    "guests-ate": "who was served what, evening by evening, and what was noted when it was cleared",
    "anonymise": "write a copy with the guests' names replaced and notes left out",
    "out": "where the copy goes; a file that is there already is left alone",
    "names": "names to replace, with commas between",
    "guests-of": "replace the names of this plan's guests too",
    "keep-notes": "keep the notes, names in them replaced",
    "review-plan": "its plan: the few lessons that matter, each taken by its number",
    "review-all": "every step and time, not only the first screen",
    "review-html": "write it as a page that prints from any browser, planned and actual as bars",
    "odds": "also the odds the evening had beforehand, and what came",
    "schema-log": "that of a run log's line instead",
    "schema-of": "that of what this command prints with --json instead; book: lessons --book",
    "mishaps": "as it might really go: lengths drawn, late guests, a call forgotten, a slow oven; you practise on the "
    "board, or with --plain it is played line by line",
    "mishaps-seed": "which night is drawn; the same number draws the same one (default: 1)",
    "evenings": "how many evenings to play, 100 to 1000000 (default: 10000)",
    "seed": "which evenings are drawn; the same number draws the same ones (default: 1)",
    "calendar-output": "write it into this file instead of printing it; an older calendar there is replaced",
    "dish-output": "write it into this new file instead of printing it",
    "fresh-sheet": "work the timetable out anew instead of taking the kept one",
    "log": "where the run log lies (default: the user's data folder)",
    "also": "write the run log into this folder, too: a stick, a synced folder",
    "no-log": "keep no run log; leaving the board then forgets the evening",
    "for": "show this person's steps only; the courses stay",
    "all-findings": "every finding with its line of the plan, and everything assumed",
    "no-bell": "call without the terminal's bell",
    "share": "serve a page for helpers' phones on the home network; ADDRESS: at this one of the machine's addresses",
    "theme": "the board's colours (default: the one last chosen)",
    "say": "speak each call by this command; the words are its last argument, or stand where {} stands, "
    "or come on standard input where it ends in ' -'; for example --say 'espeak-ng'",
    "speed": "how many times as fast as real time, 1 to 240 (default: 10)",
    "from": "begin at this clock time on the day of the event",
    "fresh-rehearsal": "begin a new rehearsal instead of going on with the last",
    "plain": "play it line by line as fast as it goes, every call answered on time",
}
WORKING = "working out the timetable …"
PLAYING_AGAIN = "playing the night again, to see what mattered …"
NO_ANSWER = "no timetable was found in the time allowed; try again, or make the plan smaller"
NO_BOARD_TO_SHARE = "--share needs the board: without --plain, on a terminal"
NO_TERMINAL_FOR_PLAN = (
    "the planning table needs a terminal to draw on; `platecall check PLAN` prints what there is to mend"
)
NO_TERMINAL = "the live board needs a terminal to draw on; for plain output use `platecall rehearse PLAN --plain`"


def bad_address(text: str) -> str:
    return (
        f"{text!r} is not an address of a network; write for example --share 192.168.1.20, or --share alone "
        "after the plan."
    )


def example(line: str, plan: str) -> str:
    """Of a command's help; `plan`: a plan that comes along."""
    return f"example:\n  {line}".replace("PLAN", plan)


def examples(plan: str) -> str:
    return CLI_EXAMPLES.replace("PLAN", plan)


def welcome(bundled: str) -> str:
    wide = max(map(len, COMMANDS)) + 2
    commands = "\n".join(f"  {name:<{wide}}{about}" for name, (about, _) in COMMANDS.items())
    return (
        f"{PROGRAM}: {CLI_ABOUT}\n\n{commands}\n\nA plan to try comes along; watch its whole evening at ten times the "
        f"speed:\n\n  {PROGRAM} rehearse {bundled} --speed 10\n\nThe manual is {PROGRAM} help; every command has "
        "--help with an example."
    )


def bad_choice(given: str, near: str, known: list[str]) -> str:
    meant = f"Did you mean {near}? " if near else ""
    return f"{given!r} is not known here. {meant}There are: {', '.join(known)}"


def not_understood(given: list[str], near: str) -> str:
    return f"not understood: {' '.join(given)}{f'. Did you mean {near}?' if near else ''}"


def only_beside(option: str, needed: str) -> str:
    return f"{option} says something only beside {needed}"


def not_beside(option: str, other: str) -> str:
    return f"{option} and {_SAID.get(other, other)} do not go together"


_SAID = {"logs": "run logs"}
FILE_NEEDED = "this writes into the file or follows it, which standard input is not; name a file"


def bad_speed(text: str) -> str:
    return f"{text!r} is not a speed from 1 to 240"


AIM_WORDS = {
    "hours": "work within its hours",
    "clocks": "no dish out too long",
    "courses": "courses on time",
    "keeps": "nothing kept too long",
    "outside": "no further out of hours than it must",
    "freshness": "hot food fresh",
    "usual": "jobs at their usual hours",
    "table": "nobody up from the table too soon",
    "company": "time with the guests",
    "rest": "pauses between work",
    "day": "calm last hours",
    "spread": "work spread over the days",
    "busiest": "a calm half hour before each course",
    "give": "give where it is needed",
    "prompt": "clearing at once",
    "together": "what is alike together",
    "touch": "finishing touch",
    "spared": "as little help as will do",
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


def bad_command(text: str) -> str:
    return f"{text!r} is not a command; write for example 'espeak-ng -s 140'"


def bad_clock(text: str) -> str:
    return f"{text!r} is not a clock time; write for example 17:30"


def log_in_use(path: str, quoted: str) -> str:
    return (
        f"{path}: another board has this run log open; close that one first, or name another with --log\n"
        f"    To look on from here: {PROGRAM} watch {quoted}"
    )


def log_makes_no_sense(path: str, why: str) -> str:
    return f"{path}: what this run log says makes no sense together ({why})"


def log_unreadable(why: str) -> str:
    return f"{why}\n    Nothing was changed."


def log_of_another(path: str, kind: str) -> str:
    return f"{path}: this run log is of {kind}; name another file with --log"


OTHER_EVENING = "another event"
A_REHEARSAL = "a rehearsal"
A_REAL_EVENING = "a real evening"


def cannot_print(why: str) -> str:
    return f"the output cannot be written ({why})"


TABLE_FAILED = "the table fell again and again"
BOARD_FAILED = "the board fell again and again; the run log is whole, and the same command goes on with it"


def table_unsaved(plan: str, why: str, aside: str) -> str:
    """`aside`: the file that holds the plan with them, empty for none."""
    kept = f"the plan with them: {aside}" if aside else "no folder would take them; they are lost"
    return f"{plan}: the last changes are not in it ({why or 'you had still to choose between two'})\n    {kept}"


def table_is_whole(plan: str) -> str:
    return f"{plan} holds every change that was taken"


def table_copy(plan: str, copy: str) -> str:
    return f"{plan} is as you left it; as it was before: {copy}"


def by_fault(failed: str, why: str) -> str:
    return f"{failed}\n    The fault: {why}"


def log_not_empty(path: str) -> str:
    return f"{path}: there is an evening in this run log already; name another file"


def cannot_keep(path: str, why: str) -> str:
    return (
        f"{path}: the run log cannot be kept here ({why}); name another place with --log,\n"
        "    or go without one: --no-log (then leaving the board forgets the evening)"
    )


def left_board(log: str, plan: str | None = None) -> str:
    """`plan`: given where the evening taught something."""
    learning = f" --plan {plan}" if plan else ""
    return f"The run log is {log}\nLook back with: {PROGRAM} review {log}{learning}"


ALL_SEEN_ONCE = "every lesson was seen once only: name those you want, as in --take 1"


def which_lessons(count: int) -> str:
    return f"Take which ({', '.join(map(str, range(1, count + 1)))})? Enter takes none: "


def what_it_taught(plan: str, log: str) -> str:
    return f"What it taught: {PROGRAM} lessons {plan} {log}"


def log_lies_at(path: str) -> str:
    return f"Run log: {path}"


def gone_on(events: int) -> str:
    return f"Gone on with: {events} events from the run log."


def stuck(why: str) -> str:
    return f"the evening came to a standstill: {why}"
