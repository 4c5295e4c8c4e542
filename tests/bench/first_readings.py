"""How replies would be read at first sight: each writer's without what only they have taught.

`python -m tests.bench.first_readings [MUCH MORE FEW LOOSE]`, 6 minutes. The seen replies stand in the order in which
they were written, so a block of them is mostly one writer's. Each block is read without the phrases that no other block
uses, and with tables learnt from the others: that is what a grammar would make of a writer whom it has never read,
though it says nothing of the rules that this writer led to. With four numbers other bounds of `plans/doubt.py` are
tried.
"""

from __future__ import annotations

import sys
from collections import Counter, defaultdict
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from unittest.mock import patch

from plans import doubt, wording
from plans.replies import read_reply
from plans.wording import Lexicon
from tests.bench import doubting
from tests.references import test_reply_corpus as corpus

BLOCK = 400
"""Replies of one block: about what one writer wrote."""
FOLDS = 4
"""So many times the table is learnt, each time without a part of the blocks."""

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
    """Prints how many would be wrong and how many asked back."""
    if len(sys.argv) == 5:
        doubt.MUCH, doubt.MORE, doubt.FEW, doubt.LOOSE = map(int, sys.argv[1:])
    rows = corpus.of("seen")
    blocks = [rows[at : at + BLOCK] for at in range(0, len(rows), BLOCK)]
    only = taught_only_by(blocks)
    found: Counter[str] = Counter()
    for fold in range(FOLDS):
        others = [row for at, block in enumerate(blocks) if at % FOLDS != fold for row in block]
        table = doubting.learnt([doubting.labelled(row.text, row.label) for row in (*others, *corpus.of("own"))])
        for at in range(fold, len(blocks), FOLDS):
            with lexicon_without(only[at]), patch.object(doubt, "_table", lambda table=table: table):
                found += Counter(outcomes(blocks[at]))
            print(f"{at + 1} of {len(blocks)}: {found['wrong'] / found.total():.2%} wrong", file=sys.stderr)
    bounds = f"much {doubt.MUCH}, more {doubt.MORE}, few {doubt.FEW}, loose {doubt.LOOSE}"
    print(f"{found.total()} replies, {bounds}: {dict(found)}")
    print(f"{found['wrong'] / found.total():.2%} wrong, {found['asked'] / found.total():.2%} asked back")


def outcomes(block: Block) -> Iterator[str]:
    """What became of each reply."""
    read = {row.text: read_reply(row.text).as_json() for row in block}
    with patch.object(corpus, "read", lambda: read):
        yield from map(corpus.outcome, block)


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
def patched(lexicon: Lexicon) -> Iterator[None]:
    """Replies are read with another lexicon; nothing that was spelled with the one is kept for the other."""
    with patch.object(wording, "lexicon", lambda: lexicon):
        wording.spelled.cache_clear()
        yield
    wording.spelled.cache_clear()


if __name__ == "__main__":
    main()
