"""A page on the home network for the phones of those who help.

For the other rooms: `address`, `papers`, `served`.
"""
