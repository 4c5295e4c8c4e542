"""Who may do what: refused acts end here, with words for the person and nothing changed."""

from __future__ import annotations


class NotAllowed(Exception):
    """An act that this person may not do, or no longer; `words` names the message that says so."""

    def __init__(self, words: str) -> None:
        super().__init__(words)
        self.words = words
