"""Pages as a browser prints them: Chromium to PDF, read back by poppler. Skips where either is missing."""

import re
import shutil
import subprocess
from dataclasses import dataclass
from pathlib import Path

import pytest


@dataclass(frozen=True)
class Word:
    """Points from the sheet's top, and how tall its line of type is."""

    text: str
    top: float
    tall: float


def printed(html: str, folder: Path) -> list[list[Word]]:
    """The words of each sheet of paper."""
    browser, reader = shutil.which("chromium"), shutil.which("pdftotext")
    if browser is None or reader is None:
        pytest.skip("no chromium and pdftotext on this machine")
    page, pdf = folder / "page.html", folder / "page.pdf"
    page.write_text(html, encoding="utf-8")
    subprocess.run([browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
                    f"--user-data-dir={folder / 'profile'}", f"--print-to-pdf={pdf}", page.as_uri()],
                   check=True, capture_output=True, timeout=120)  # fmt: skip
    told = subprocess.run([reader, "-bbox", str(pdf), "-"], check=True, capture_output=True, text=True).stdout
    return [
        [
            Word(text, float(top), float(bottom) - float(top))
            for top, bottom, text in re.findall(r'<word [^>]*yMin="([\d.]+)"[^>]*yMax="([\d.]+)">([^<]*)<', sheet)
        ]
        for sheet in told.split("<page ")[1:]
    ]
