"""Movements, their poses, cautions and sample programmes as YAML files; the schema of a programme file."""
