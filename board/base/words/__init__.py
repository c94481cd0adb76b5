"""Words that several rooms show, and all signs; a room's own stand in its `words`."""

from board.base.words.evening import *
from board.base.words.house import *
from board.base.words.looking_back import *
from board.base.words.signs import *
from board.base.words.times import *
