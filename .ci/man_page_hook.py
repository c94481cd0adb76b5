"""Puts the man page into the wheel, made from the command line as it is."""

import sys
from pathlib import Path
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface


class CustomBuildHook(BuildHookInterface):
    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        sys.path.insert(0, self.root)
        from board.app.man_page import SECTION, man_page
        from board.cli import whole_parser

        page = Path(self.directory) / f"platecall.{SECTION}"
        page.parent.mkdir(parents=True, exist_ok=True)
        page.write_text(man_page(whole_parser()), encoding="utf-8")
        build_data["shared_data"][str(page)] = f"share/man/man{SECTION}/{page.name}"
