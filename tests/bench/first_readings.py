"""How replies would be read at first sight: each writer's without what only they have taught.

`pip install torch && python -m tests.bench.first_readings [UNLIKELY ...]`, half an hour. The seen replies stand in the
order in which they were written, so a block of them is mostly one writer's. Each block is read without the phrases that
no other block uses, and with a second reader who has learnt from the others: that is what would be made of a writer who
was never read, though it says nothing of the rules that this writer led to. Each number is a bound of `plans/doubt.py`
to be tried.
"""

from __future__ import annotations

import sys
from collections import Counter, defaultdict
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from unittest.mock import patch

from plans import doubt, network, wording
from plans.network import Network, network_of
from plans.replies import read_reply
from plans.second_reading import second_reading
from plans.wording import Lexicon
from tests.bench.learning import lesson, plain_statements, taught
from tests.references import test_reply_corpus as corpus

BLOCK = 400
"""Replies of one block: about what one writer wrote."""
FOLDS = 4
"""So many times the second reader learns, each time without a part of the blocks."""

Phrase = tuple[str, ...]
Block = list[corpus.Row]


class Noted(dict[Phrase, str]):
    """The phrases of the lexicon, and which of them were found."""

    found: set[Phrase]

    def get(self, phrase: Phrase, default: str | None = None) -> str | None:  # type: ignore[override]
        concept = super().get(phrase, default)
        if concept is not None:
            self.found.add(phrase)
        return concept


def main() -> None:
    """Prints how many would be wrong, how many asked back, and whose signs are passed over."""
    bounds = [float(bound) for bound in sys.argv[1:]] or [doubt.UNLIKELY[None]]
    rows = corpus.of("seen")
    blocks = [rows[at : at + BLOCK] for at in range(0, len(rows), BLOCK)]
    only = taught_only_by(blocks)
    found: dict[float, Counter[str]] = {bound: Counter() for bound in bounds}
    for fold in range(FOLDS):
        others = [row for at, block in enumerate(blocks) if at % FOLDS != fold for row in block]
        lessons = [lesson(row.text, row.label) for row in (*others, *corpus.of("own"))]
        learnt = network_of(taught([*lessons, *plain_statements()]))
        for at in range(fold, len(blocks), FOLDS):
            with lexicon_without(only[at]), second_reader(learnt):
                for bound in bounds:
                    with patch.dict(doubt.UNLIKELY, {None: bound}):
                        found[bound] += Counter(outcomes(blocks[at]))
        print(f"{fold + 1} of {FOLDS}", file=sys.stderr)
    for bound, outcome in found.items():
        replies = outcome["right"] + outcome["asked"] + outcome["wrong"]
        print(
            f"{replies} replies, bound {bound}: {outcome['wrong'] / replies:.2%} wrong, "
            f"{outcome['asked'] / replies:.2%} asked back, {outcome['passed over']} of {outcome['signs']} signs "
            f"not at their level"
        )


def outcomes(block: Block) -> Iterator[str]:
    """What became of each reply, and of each sign."""
    read = {row.text: read_reply(row.text).as_json() for row in block}
    with patch.object(corpus, "read", lambda: read):
        yield from map(corpus.outcome, block)
    for row in block:
        if row.label["red_flag"]:
            yield "signs"
            if read[row.text]["red_flag"] != row.label["red_flag"]:
                yield "passed over"


def taught_only_by(blocks: list[Block]) -> list[set[Phrase]]:
    """For each block the phrases that only it uses."""
    lexicon = wording.lexicon()
    users: dict[Phrase, set[int]] = defaultdict(set)
    noted = Noted(lexicon.phrases)
    with patched(replace(lexicon, phrases=noted)):
        for at, block in enumerate(blocks):
            noted.found = set()
            for row in block:
                read_reply(row.text)
            for phrase in noted.found:
                users[phrase].add(at)
    return [{phrase for phrase, using in users.items() if using == {at}} for at in range(len(blocks))]


@contextmanager
def lexicon_without(gone: set[Phrase]) -> Iterator[None]:
    """Replies are read as if some phrases had never been written down."""
    whole = wording.lexicon()
    kept = {phrase: concept for phrase, concept in whole.phrases.items() if phrase not in gone}
    with patched(wording.lexicon_of(kept)):
        yield


@contextmanager
def second_reader(learnt: Network) -> Iterator[None]:
    """Replies are read again with another network."""
    with patch.object(network, "network", lambda: learnt):
        second_reading.cache_clear()
        yield
    second_reading.cache_clear()


@contextmanager
def patched(lexicon: Lexicon) -> Iterator[None]:
    """Replies are read with another lexicon; nothing that was spelled with the one is kept for the other."""
    with patch.object(wording, "lexicon", lambda: lexicon):
        wording.spelled.cache_clear()
        yield
    wording.spelled.cache_clear()


if __name__ == "__main__":
    main()
