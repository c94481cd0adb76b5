"""What the commands say."""

from board.app.words.beginning import *
from board.app.words.command import *
from board.app.words.dishes import *
from board.app.words.evening import *
from board.app.words.lessons import *
from board.app.words.paper import *
