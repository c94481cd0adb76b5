"""An evening in progress: run, watched, replanned.

For the other rooms: `background`, `line_changes`, `plan_desk`, `plan_watcher`, `planning`, `replan`, `session`,
`settling`, `watching`.
"""
