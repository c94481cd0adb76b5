"""An evening in progress: run, watched, replanned.

For the other rooms: `background`, `plan_watcher`, `replan`, `session`, `watching`.
"""
