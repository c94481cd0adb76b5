"""A word altered in a kept sheet is noticed: it is worked out anew, never shown."""

from pathlib import Path

from board.files.cache import SheetCache
from board.sheet.run_sheet import RunSheet


def test_a_kept_sheet_with_a_word_altered_is_none(tmp_path: Path, little: RunSheet) -> None:
    cache = SheetCache(tmp_path / "cache")
    cache.put(little)
    (file,) = cache.folder.glob("*.json")
    assert cache.get(little.digest) == little

    file.write_bytes(file.read_bytes().replace(b"chop", b"chip"))

    assert cache.get(little.digest) is None
    assert list(cache.all()) == []


def test_every_kept_sheet_is_found_again_for_a_log_that_lost_its_own(tmp_path: Path, little: RunSheet) -> None:
    cache = SheetCache(tmp_path / "cache")
    cache.put(little)
    cache.before(tmp_path / "plan.yaml", little, "check")

    assert list(cache.all()) == [little, little]


def test_what_is_kept_is_for_the_host_alone(tmp_path: Path, little: RunSheet) -> None:
    cache = SheetCache(tmp_path / "cache")
    cache.put(little)
    (file,) = cache.folder.glob("*.json")

    assert file.stat().st_mode & 0o777 == 0o600
    assert cache.folder.stat().st_mode & 0o777 == 0o700
