"""Tests of the practice chat's parts alone."""
