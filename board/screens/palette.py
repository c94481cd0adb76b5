"""The board's colours: warm paper and lamplight on a dark counter. Terminals with 16 colours get the nearest."""

from textual.theme import Theme

from board.view.ribbon import Tone

LANTERN = Theme(
    name="lantern",
    primary="#e3a857",
    secondary="#b98b5e",
    accent="#f2c879",
    foreground="#efe4d2",
    background="#171310",
    surface="#211b16",
    panel="#2b231c",
    success="#8fb98a",
    warning="#e3a857",
    error="#e5765b",
    dark=True,
)

TONES: dict[Tone, str] = {
    "name": "bold #b98b5e",
    "faint": "#8a7b69",
    "hands": "#e3a857",
    "alone": "#b98b5e",
    "running": "bold #f6dca8 on #4a3820",
    "coming": "#c9b79c on #2b231c",
    "over": "bold #171310 on #e5765b",
    "now": "bold #f2c879",
    "done": "#75695b",
}
