"""`python -m board` is `platecall`."""

from board.cli import main

raise SystemExit(main())
