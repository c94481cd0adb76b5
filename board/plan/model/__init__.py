"""Pydantic models of a plan.

For the other rooms: `courses`, `drinking`, `hands`, `kitchen`, `model`, `part`, `shopping`, `table`, `work`.
"""
