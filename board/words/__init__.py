"""Every word the program shows, in one place, a file a matter. A glossary in the README says where each comes from."""

from board.words.calls import *
from board.words.cautions import *
from board.words.command import *
from board.words.cooling import *
from board.words.editing import *
from board.words.guests import *
from board.words.holds import *
from board.words.keys import *
from board.words.lanes import *
from board.words.live import *
from board.words.look import *
from board.words.odds import *
from board.words.paper import *
from board.words.provisions import *
from board.words.refusals import *
from board.words.safety import *
from board.words.slips import *
from board.words.table import *
from board.words.times import *
from board.words.timetable import *
from board.words.ways import *
