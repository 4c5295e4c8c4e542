"""Alembic's folder: `versions/` has one file a step."""
