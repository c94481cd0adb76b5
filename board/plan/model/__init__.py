"""Pydantic models of a plan.

For the other rooms: `courses`, `drinking`, `hands`, `kitchen`, `model`, `shopping`, `table`, `work`.
"""
