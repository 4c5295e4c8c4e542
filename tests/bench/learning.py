"""Teaches the second reader from the labelled replies and writes `plans/second_reading.npz`.

`pip install torch && python -m tests.bench.learning`, five minutes. Held-out replies are never read; those of other
languages are learnt from as the grammar reads them, word for word in English. The same replies give the same weights
on one machine and version of PyTorch; elsewhere they give weights that read as well.
"""

from __future__ import annotations

import json
import random
import sys
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import islice
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
import torch
from torch import Tensor, nn

from plans.glossing import GLOSSED, in_english
from plans.network import FILE, LETTERS, PAD, UNKNOWN, letters_of
from plans.scopes import said
from plans.second_reading import FIELDS, words_of
from tests.unit.test_plain_statements import pairs

REFERENCES = Path(__file__).parent.parent / "references"
SEEN_IN = 3
"""Replies that a word must stand in to have a meaning of its own."""
MEANING, LETTER, SPELLING, STATE = 96, 16, 32, 128
"""Numbers that stand for a word, a letter, the spelling of a word, and what one way has understood so far."""
ROUNDS, AT_ONCE, PACE = 13, 48, 3e-3
"""Passes over all replies, replies of one step, and the longest step. Our own choice, as what follows."""
DROPPED, UNHEARD, SMOOTHED, PULL = 0.3, 0.06, 0.02, 0.01
"""Shares of numbers and of words left out while it learns, so that it leans on none; doubt kept; pull to zero."""


class Lesson(NamedTuple):
    """The words of a reply and the number of the right answer to each field."""

    told: tuple[str, ...]
    right: dict[str, int]


class Network(nn.Module):
    """As `plans.network` has it, to be taught."""

    def __init__(self, words: int) -> None:
        super().__init__()
        self.word = nn.Embedding(words, MEANING, padding_idx=PAD)
        nn.init.normal_(self.word.weight, 0, 0.3)
        self.letter = nn.Embedding(len(LETTERS) + 1, LETTER, padding_idx=PAD)
        self.spelling = nn.Conv1d(LETTER, SPELLING, 3, padding=1)
        self.ways = nn.GRU(MEANING + SPELLING, STATE, batch_first=True, bidirectional=True)
        self.drop = nn.Dropout(DROPPED)
        self.looks = nn.ModuleDict({field: nn.Linear(2 * STATE, 1, bias=False) for field in FIELDS})
        self.answers = nn.ModuleDict({field: nn.Linear(4 * STATE, len(FIELDS[field])) for field in FIELDS})

    def forward(self, words: Tensor, letters: Tensor) -> dict[str, Tensor]:
        """Scores of the answers to each field; `words` is replies x words, `letters` has each word's letters too."""
        there = words != PAD
        rows = self.letter(letters).flatten(0, 1).transpose(1, 2)
        spelled = torch.relu(self.spelling(rows)).max(2)[0].view(*words.shape, -1)
        inputs = self.drop(torch.cat([self.word(words), spelled], 2))
        packed = nn.utils.rnn.pack_padded_sequence(inputs, there.sum(1), batch_first=True, enforce_sorted=False)
        states = self.drop(nn.utils.rnn.pad_packed_sequence(self.ways(packed)[0], batch_first=True)[0])
        most = states.masked_fill(~there[:, :, None], -9).max(1)[0]
        scores = {}
        for field in FIELDS:
            shares = torch.softmax(self.looks[field](states).masked_fill(~there[:, :, None], -1e9), 1)
            scores[field] = self.answers[field](torch.cat([(shares * states).sum(1), most], 1))
        return scores


def main() -> None:
    """Writes the weights anew."""
    np.savez_compressed(FILE, allow_pickle=False, **taught((*replies(), *plain_statements())))


def replies() -> Iterator[Lesson]:
    """All labelled replies that may be learnt from."""
    for name in ("replies.tsv", "replies-by-others.tsv"):
        for line in (REFERENCES / name).read_text("utf-8").splitlines()[1:]:
            part, text, label = line.split("\t")
            if part not in ("held-out", "fresh"):
                yield lesson(text, json.loads(label))
    for language in GLOSSED:
        for line in (REFERENCES / f"replies-{language}.tsv").read_text("utf-8").splitlines():
            text, label = line.split("\t")
            yield lesson(in_english(text, language), json.loads(label))


def plain_statements() -> Iterator[Lesson]:
    """What is said plainly in words that few people put side by side; every third, as they are many."""
    for text, completion, pain in islice(pairs(), 0, None, 3):
        side = next((side for side in ("left", "right") if f"{side} " in text), None)
        yield lesson(text, {"completion": completion, "pain": pain, "side": side})


def lesson(text: str, label: Mapping[str, Any]) -> Lesson:
    """A reply as its words, and its label as numbers."""
    return Lesson(
        words_of(said(text).units),
        {field: answers.index(label.get(field, answers[0])) for field, answers in FIELDS.items()},
    )


def taught(lessons: Iterable[Lesson]) -> dict[str, np.ndarray[Any, Any]]:
    """The weights that a network has after it has learnt, by name, each with its inputs as rows."""
    torch.manual_seed(1)
    chance = random.Random(1)
    rows = [lesson for lesson in lessons if lesson.told]
    seen = Counter(word for row in rows for word in row.told)
    vocabulary = ["", "?unknown", *sorted(word for word, times in seen.items() if times >= SEEN_IN)]
    known = {word: number for number, word in enumerate(vocabulary)}
    network = Network(len(vocabulary))
    steps = ROUNDS * (len(rows) // AT_ONCE + 1)
    learner = torch.optim.AdamW(network.parameters(), lr=PACE, weight_decay=PULL)
    pace = torch.optim.lr_scheduler.OneCycleLR(learner, max_lr=PACE, total_steps=steps)
    for at in range(ROUNDS):
        for batch in _batches(rows, chance):
            _step(network, learner, batch, [[_heard(known, word, chance) for word in row.told] for row in batch])
            pace.step()
        print(f"round {at + 1} of {ROUNDS}", file=sys.stderr)
    return _written(network, vocabulary)


def _batches(rows: Sequence[Lesson], chance: random.Random) -> Iterator[list[Lesson]]:
    """Replies of about the same length together, in no order."""
    order = sorted(rows, key=lambda row: len(row.told) + chance.random() * 6)
    batches = [order[at : at + AT_ONCE] for at in range(0, len(order), AT_ONCE)]
    chance.shuffle(batches)
    yield from batches


def _heard(known: Mapping[str, int], word: str, chance: random.Random) -> int:
    return UNKNOWN if chance.random() < UNHEARD else known.get(word, UNKNOWN)


def _step(network: Network, learner: torch.optim.Optimizer, batch: list[Lesson], heard: list[list[int]]) -> None:
    longest = max(map(len, heard))
    words = torch.tensor([row + [PAD] * (longest - len(row)) for row in heard])
    padded = [(*row.told, *[""] * (longest - len(row.told))) for row in batch]
    letters = torch.tensor([[letters_of(word) for word in row] for row in padded])
    network.train()
    scores = network(words, letters)
    loss = sum(
        nn.functional.cross_entropy(
            scores[field], torch.tensor([row.right[field] for row in batch]), label_smoothing=SMOOTHED
        )
        for field in FIELDS
    )
    learner.zero_grad()
    loss.backward()
    nn.utils.clip_grad_norm_(network.parameters(), 1.0)
    learner.step()


def _written(network: Network, vocabulary: list[str]) -> dict[str, np.ndarray[Any, Any]]:
    """In half precision, which changes no odds by more than a hundredth."""
    spelling, ways = network.spelling, network.ways
    weights = {
        "word": network.word.weight,
        "letter": network.letter.weight,
        "spelling": spelling.weight.permute(2, 1, 0).reshape(3 * LETTER, SPELLING),
        "spelling.bias": spelling.bias,
    }
    for way, suffix in (("forward", "l0"), ("backward", "l0_reverse")):
        weights[f"{way}.input"] = getattr(ways, f"weight_ih_{suffix}").T
        weights[f"{way}.input.bias"] = getattr(ways, f"bias_ih_{suffix}")
        weights[f"{way}.state"] = getattr(ways, f"weight_hh_{suffix}").T
        weights[f"{way}.state.bias"] = getattr(ways, f"bias_hh_{suffix}")
    for field in FIELDS:
        weights[f"{field}.look"] = network.looks[field].weight[0]
        weights[f"{field}.answer"] = network.answers[field].weight.T
        weights[f"{field}.answer.bias"] = network.answers[field].bias
    found = {name: weight.detach().numpy().astype(np.float16) for name, weight in weights.items()}
    return found | {"vocabulary": np.frombuffer("\n".join(vocabulary).encode("utf-8"), dtype=np.uint8)}


if __name__ == "__main__":
    main()
