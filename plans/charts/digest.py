"""A group's week for its coach: how much was done and answered, what followed, and how much it hurt, week by week.

It needs, for each of the last four weeks or so, the lower and upper bound of completion (the silent counted as left
out, then as done) and of answers, and the middle and spread of pain; and the counts of this week's verdicts.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from plans.charts.axes import Panel, columns_under, gutter, number, said
from plans.charts.course import line_key
from plans.charts.days import Line
from plans.charts.marks import FILLS, VERDICTS, across, box, mark, pain, path
from plans.charts.paper import BODY, LEADING, MARGIN, RIGHT, SMALL, SWATCH, Key, Paper, clean
from plans.figures.letters import broken, wide
from plans.rules import Verdict

MOST_WEEKS = 8
HIGH = 280.0
SHARES = (0.0, 20.0, 40.0, 60.0, 80.0, 100.0)
SCORES = (0.0, 2.0, 4.0, 6.0, 8.0, 10.0)
WIDEST = 104.0
"""Of a bar."""


@dataclass(frozen=True, slots=True)
class Share:
    """A share from `low` to `high`, fractions of 1, both the same when it is known; `said` is the words above it.

    Raises ValueError unless 0 <= low <= high <= 1.
    """

    low: float
    high: float
    said: str

    def __post_init__(self) -> None:
        if not 0 <= self.low <= self.high <= 1:
            raise ValueError(f"a share from {self.low} to {self.high}: both from 0 to 1, the low one first")


@dataclass(frozen=True, slots=True)
class Pain:
    """A week's pain answers, 0-10: their middle and from where to where most of them are (which, the words say).

    Raises ValueError unless 0 <= low <= middle <= high <= 10.
    """

    low: float
    middle: float
    high: float

    def __post_init__(self) -> None:
        if not 0 <= self.low <= self.middle <= self.high <= 10:
            raise ValueError(f"pain {self.low}, {self.middle}, {self.high}: from 0 to 10, in this order")


@dataclass(frozen=True, slots=True)
class Week:
    """One week of a group by its words; None is what nobody was due for or answered."""

    words: str
    completion: Share | None
    answers: Share | None
    pain: Pain | None


@dataclass(frozen=True, slots=True)
class DigestWords:
    """Every word on the picture. `sure` and `unsure` are the parts of a bar of completion up to the lower
    and the upper bound, `answered` and `answered_unsure` those of a bar of answers."""

    title: str
    note: str
    completion: str
    answers: str
    sure: str
    unsure: str
    answered: str
    answered_unsure: str
    followed: str
    verdicts: Mapping[Verdict, str]
    pain: str
    middle: str
    spread: str
    nothing: str
    percent: str = "%"
    decimal: str = "."


@dataclass(frozen=True, slots=True)
class Digest:
    """The latest weeks, oldest first; a mark to compare completion with, in percent; and this week's verdicts."""

    weeks: tuple[Week, ...]
    wanted: Line | None
    followed: Mapping[Verdict, int]
    words: DigestWords


def digest_svg(digest: Digest) -> str:
    """The picture as an SVG file's text. Raises KeyError for a verdict without words."""
    paper, words = Paper(), digest.words
    weeks = digest.weeks[-MOST_WEEKS:]
    paper.head(words.title, words.note)
    left = MARGIN + gutter([*said(SHARES, words.percent, words.decimal), "10"])
    paper.part(words.completion)
    _shares(paper, weeks, [week.completion for week in weeks], words, (words.sure, words.unsure), left, digest.wanted)
    paper.part(words.answers)
    _shares(paper, weeks, [week.answers for week in weeks], words, (words.answered, words.answered_unsure), left)
    paper.part(words.followed)
    _followed(paper, digest.followed, words)
    paper.part(words.pain)
    _pain(paper, weeks, left, words)
    return paper.svg()


def _middles(weeks: Sequence[Week], left: float) -> tuple[list[float], float]:
    step = (RIGHT - left) / len(weeks)
    return [left + (place + 0.5) * step for place in range(len(weeks))], step


def _shares(
    paper: Paper,
    weeks: Sequence[Week],
    shares: Sequence[Share | None],
    words: DigestWords,
    meanings: tuple[str, str],
    left: float,
    wanted: Line | None = None,
) -> None:
    """A bar a week: full up to the lower bound, hatched up to the upper one."""
    known = [share for share in shares if share is not None]
    if not known:
        paper.words(words.nothing, BODY, kind="soft")
        return
    keys = [Key(lambda x, y: box("sure", x - 14, y - 12, 28, 24), meanings[0])]
    if any(share.high > share.low for share in known):
        keys.append(Key(lambda x, y: box("unsure", x - 14, y - 12, 28, 24), meanings[1]))
    if wanted is not None:
        keys.append(line_key(0, wanted))
    paper.keys(keys)
    panel = Panel.on(paper, HIGH, SHARES, said(SHARES, words.percent, words.decimal), left)
    middles, step = _middles(weeks, left)
    half = min(WIDEST, step * 0.7) / 2
    if wanted is not None:
        paper.add(across(0, left, RIGHT, panel.up(wanted.value)))
    for x, share in zip(middles, shares, strict=True):
        if share is not None:
            low, high = panel.up(100 * share.low), panel.up(100 * share.high)
            paper.add(box("unsure", x - half, high, 2 * half, low - high))
            paper.add(box("sure", x - half, low, 2 * half, panel.up(0) - low))
            _above(paper, share.said, x, high - 10, step)
    columns_under(paper, middles, [week.words for week in weeks])


def _above(paper: Paper, words: str, x: float, baseline: float, step: float) -> None:
    """Words over a bar, when they have room there."""
    words = clean(words)
    if wide(words, SMALL, bold=True) <= step - 10:
        paper.put(words, x, baseline, bold=True, kind="value", anchor="middle")


def _followed(paper: Paper, followed: Mapping[Verdict, int], words: DigestWords) -> None:
    """A bar a verdict, its count behind it."""
    counts = [(verdict, followed.get(verdict, 0)) for verdict in Verdict if followed.get(verdict, 0) > 0]
    if not counts:
        paper.words(words.nothing, BODY, kind="soft")
        return
    names = [broken(clean(words.verdicts[verdict]), 400, SMALL, most=2) for verdict, _count in counts]
    left = MARGIN + SWATCH + 12 + max((wide(line, SMALL) for lines in names for line in lines), default=0.0) + 20
    most = max(count for _verdict, count in counts)
    room = RIGHT - left - wide(str(most), SMALL, bold=True) - 16
    top = paper.y
    for (verdict, count), lines in zip(counts, names, strict=True):
        high = max(1, len(lines)) * SMALL * LEADING + 14
        middle = paper.room(high) + high / 2
        paper.add(mark(VERDICTS[verdict], MARGIN + SWATCH / 2, middle, 1.1))
        paper.lines(lines, MARGIN + SWATCH + 12, middle - (len(lines) - 1) * SMALL * LEADING / 2 + SMALL * 0.36)
        paper.add(box(FILLS[verdict], left, middle - 15, count / most * room, 30))
        paper.put(str(count), left + count / most * room + 12, middle + SMALL * 0.36, bold=True)
    paper.add(path("axis", f"M{left:.1f} {paper.y:.1f}V{top:.1f}"))


def _pain(paper: Paper, weeks: Sequence[Week], left: float, words: DigestWords) -> None:
    """The middle of each week's answers, and a bar over most of them."""
    if not any(week.pain for week in weeks):
        paper.words(words.nothing, BODY, kind="soft")
        return
    paper.keys(
        [
            Key(lambda x, y: pain(x, y, 11), words.middle),
            Key(lambda x, y: box("tile", x - 9, y - 15, 18, 30) + path("way", _frame(x, y - 15, y + 15)), words.spread),
        ]
    )
    panel = Panel.on(paper, HIGH, SCORES, said(SCORES, "", words.decimal), left)
    middles, step = _middles(weeks, left)
    joined: list[str] = []
    for x, week in zip(middles, weeks, strict=True):
        if week.pain is not None:
            top, bottom = panel.up(week.pain.high), panel.up(week.pain.low)
            paper.add(box("tile", x - 9, top, 18, bottom - top), path("way", _frame(x, top, bottom)))
            joined.append(f"{x:.2f} {panel.up(week.pain.middle):.2f}")
    if len(joined) > 1:
        paper.add(path("painway", "M" + "L".join(joined)))
    for x, week in zip(middles, weeks, strict=True):
        if week.pain is not None:
            y = panel.up(week.pain.middle)
            paper.add(pain(x, y, 11))
            said_middle = number(round(week.pain.middle, 1), words.decimal)
            if wide(said_middle, SMALL, bold=True) + 24 <= step / 2:
                paper.put(said_middle, x + 20, y - 14, bold=True, kind="value")
    columns_under(paper, middles, [week.words for week in weeks])


def _frame(x: float, top: float, bottom: float) -> str:
    return f"M{x - 9:.2f} {top:.2f}h18V{bottom:.2f}h-18Z"
