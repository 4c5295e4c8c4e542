"""A few hundred broken programme files; `python -m tests.bench.mutants` tries a hundred thousand and more."""

from __future__ import annotations

import random
from collections import Counter

import pytest

from tests.mutating import SAMPLES, mutant, verdict


@pytest.mark.parametrize("text", SAMPLES)
def test_the_samples_are_programmes(text: str) -> None:
    assert verdict(text) == "programme"


@pytest.mark.filterwarnings("ignore")
def test_a_broken_file_ends_in_a_good_error_or_in_a_programme() -> None:
    chance = random.Random(20)
    found = Counter(verdict(mutant(chance)) for _ in range(400))
    assert found["programme"] > 20
    assert len(found) > 8
