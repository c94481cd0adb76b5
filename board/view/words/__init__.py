"""What the board shows."""

from board.view.words.board import *
from board.view.words.looking_back import *
from board.view.words.planning import *
from board.view.words.safety import *
from board.view.words.slips import *
