"""The validator: whether a run sheet holds, from the plan alone.

For the other rooms: `validate`.
"""
