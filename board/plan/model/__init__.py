"""Pydantic models of a plan.

For the other rooms: `courses`, `drinking`, `hands`, `kitchen`, `meanings`, `model`, `part`, `shopping`, `table`,
`work`.
"""
