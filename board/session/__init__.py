"""An evening in progress: run, looked on at, replanned.

For the other rooms: `background`, `plan_watcher`, `replan`, `session`, `watching`.
"""
