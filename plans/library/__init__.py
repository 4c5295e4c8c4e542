"""Movements and sample programmes as YAML files."""
