"""CP-SAT of OR-Tools, loaded without pandas: the library uses it for tables of variables only, of which there are none
here, and it is half of the time to load. A stand-in has its place during the import; afterwards pandas is what it was.
"""

import sys
from types import ModuleType

_pandas = sys.modules.get("pandas")
if _pandas is None:
    _stand_in = ModuleType("pandas")
    for _name in ("Index", "Series"):  # what the library's signatures and `isinstance` name
        setattr(_stand_in, _name, type(_name, (), {}))
    sys.modules["pandas"] = _stand_in
try:
    from ortools.sat.python import cp_model as cp_model
finally:
    if _pandas is None:
        del sys.modules["pandas"]
