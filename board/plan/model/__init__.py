"""Pydantic models of a plan.

For the other rooms: `courses`, `drinking`, `hands`, `keys`, `kitchen`, `long_forms`, `model`, `part`, `shopping`,
`table`, `work`.
"""
