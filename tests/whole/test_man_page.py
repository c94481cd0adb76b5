"""The man page names every command and option, and holds no macro but those of man(7)."""

import argparse
import re
import shutil
import subprocess

import pytest

from board.app.man_page import man_page
from board.cli import whole_parser
from board.manual import pages

MACROS = {"TH", "SH", "SS", "TP", "PP", "B"}  # man(7)


def test_every_command_option_and_topic_stands_in_it() -> None:
    parser = whole_parser()
    page = man_page(parser).replace(r"\-", "-")
    commands = next(a.choices for a in parser._actions if isinstance(a, argparse._SubParsersAction))

    for name, each in commands.items():
        own = page.partition(f"\n.SS {name}\n")[2].partition("\n.SH ")[0]
        for action in each._actions:
            assert all(option in own for option in action.option_strings if option not in ("-h", "--help")), name
    assert [topic for topic in pages.TOPICS if f".B platecall help {topic}" not in page] == []


def test_no_text_of_it_is_taken_for_a_request() -> None:
    lines = man_page(whole_parser()).splitlines()

    assert {line[1:].split()[0] for line in lines if line.startswith(".")} == MACROS
    assert [line for line in lines if line.startswith("'") or not line.strip()] == []
    assert {each for line in lines for each in re.findall(r"\\(.)", line)} <= set("-e&f")


@pytest.mark.skipif(shutil.which("groff") is None, reason="no groff here")
def test_groff_reads_it_without_a_warning() -> None:
    page = man_page(whole_parser())
    done = subprocess.run(
        ["groff", "-man", "-Tutf8", "-ww", "-K", "utf-8", "-P-cbu"], input=page, capture_output=True, text=True
    )

    assert (done.returncode, done.stderr) == (0, "")
    assert "EXIT STATUS" in done.stdout
