"""Run logs: lines on disk and back.

For the other rooms: `disk`, `follow`, `read`, `record`, `share`, `write`.
"""
