"""An evening measured: planned and actual, and the causes.

For the other rooms: `kinds`, `leftovers`, `looked_back`, `measure`, `observe`, `trace`.
"""
