"""An evening measured: planned and actual times, and what made courses late.

For the other rooms: `came`, `eaten`, `kinds`, `leftovers`, `looked_back`, `measure`, `next_time`, `observe`, `trace`.
"""
