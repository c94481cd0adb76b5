"""The board's colours: warm paper and lamplight on a dark counter. Terminals with 16 colours get the nearest."""

from textual.theme import Theme

from board.view.ribbon import Tone

TEXT, SOFT, ACCENT, WARNING = "#efe4d2", "#8a7b69", "#f2c879", "#e5765b"
STANDS = "#c9b79c"  # what stands and keeps, while nothing presses

LANTERN = Theme(
    name="lantern",
    primary="#e3a857",
    secondary="#b98b5e",
    accent=ACCENT,
    foreground=TEXT,
    background="#171310",
    surface="#211b16",
    panel="#2b231c",
    success="#8fb98a",
    warning="#e3a857",
    error=WARNING,
    dark=True,
)

TONES: dict[Tone, str] = {
    "name": "bold #b98b5e",
    "faint": SOFT,
    "running": "bold #f6dca8 on #4a3820",
    "coming": f"{STANDS} on #2b231c",
    "over": f"bold #171310 on {WARNING}",
    "now": f"bold {ACCENT}",
    "done": "#75695b",
}
