"""Tests of the practice chat over HTTP."""
