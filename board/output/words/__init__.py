"""What stands on paper, in pages and in lists."""

from board.output.words.calendar import *
from board.output.words.lessons import *
from board.output.words.logs import *
from board.output.words.menus import *
from board.output.words.odds import *
from board.output.words.provisions import *
from board.output.words.sheet import *
from board.output.words.shelf import *
from board.output.words.table import *
