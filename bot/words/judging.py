"""What the checker says of a programme, and whether each day fits into one message."""

from __future__ import annotations

from dataclasses import replace

from bot.words.doses import link_words, session_lines
from plans.findings import Finding, Grade, Report
from plans.lint import check
from plans.programme import Day, Programme

LONGEST = 4096
"""UTF-16 units of a message's text that the chat platform takes."""
FRAME = 900
"""Units kept for what stands around a session: headline, reason, test, caution."""


def judged(programme: Programme) -> Report:
    """The checker's report, and whether each day fits into one message."""
    report = check(programme)
    long = tuple(day.number for day in programme.days if _units(day) > LONGEST - FRAME)
    if not long:
        return report
    what = f"its message would be longer than the {LONGEST} characters that a chat takes"
    finding = Finding(Grade.ERROR, "message-too-long", long, what, "Make two days of it, or leave out cues")
    return replace(report, findings=(finding, *report.findings))


def _units(day: Day) -> int:
    texts = [*session_lines(day), day.text or "", day.title or "", day.caution or "", link_words(day) or ""]
    return len("\n".join(texts).encode("utf-16-le")) // 2
