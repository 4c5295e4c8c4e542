"""Programme files broken at random: every one must end in a good error or in a programme, never in a traceback.

The samples use every word of the language, and only their own movements.
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable
from io import StringIO
from typing import Any

from ruamel.yaml import YAML

from plans.dose import minutes
from plans.easing import eased
from plans.lint import check
from plans.nodes import read_nodes
from plans.overview import overview
from plans.programme import Programme
from plans.reading import Problem, ProgrammeErrors, read_programme
from tests.texts import HEAD, NEW, REST, TEST, session

_TOP = """\
title: Small
goal: Reach.
for: Anybody.
ages: 65+
setting: At home.
company: with a partner
supervised: nobody
led-by: Somebody.
motivation: A message.
besides: Nothing.
language: en
cautions: [Slowly.]
muscles: [hamstrings, calves]
equipment: [mat, strap: [towel, belt], chair: stool]
measures: [fingertip-to-floor]
training-days: [monday, thursday]
pace: together
settings: {pain-clean: 1, pain-acceptable: 4, pain-severe: 7}
movements:
  bow:
    name: Bow
    how: Bow.
    cues: [Long back.]
    faults: [Rounding.]
    main: [hamstrings]
    also: [glutes]
    other-side: [hip-flexors]
    kind: loaded
    sides: true
    equipment: [stick: [broom]]
    easier: lean
    variations: [{name: Feet apart, how: Stand wide., main: [adductors]}]
    cautions: [bending-under-load]
    care: [Stop with pain.]
    tempo: Slowly.
    rep-seconds: 4
    link: https://example.org/bow
  lean: {name: Lean, how: Lean., main: [hamstrings], kind: static, sides: true, harder: bow}
"""

SAMPLES: tuple[str, ...] = (
    HEAD + session() + REST + TEST,
    HEAD + NEW + "  - {as-day: 1, times: 2}\n  - as-days: 1-2\n" + TEST,
    _TOP
    + """\
sessions:
  a:
    focus: legs
    warm-up: {text: Walk., time: 3 min}
    blocks:
      - title: Round
        rounds: {week 1: 2, week 2: 2-3}
        rest: 20
        change: 10
        items:
          - {movement: lean, hold: {week 1: 30, day 3: 20-40}, side: each, effort: 5-6, stop: early}
          - {movement: bow, reps: {start: 6, each-week: 2, at-most: 9}, load: {week 1: 2 kg, day 3: 3 kg}, held: low}
    cool-down: Lie down.
days:
  - {measure: {which: fingertip-to-floor, trials: 2, warm-up: Walk., photo: true}, session: a, title: Test}
  - {session: a, times: 3, text: Again., caution: Slowly., link: {to: "https://example.org/a", start: "1:30"}}
  - rest: Walk.
""",
    _TOP
    + """\
days:
  - session:
      blocks:
        - time: 5 min
          optional: true
          until: week 1
          items:
            - {movement: lean, hold: [10, 20, 30], side: left, other-side: held, from: day 1}
            - {movement: bow, reps: up to 8, last-hold: {seconds: 20, equipment: [strap], effort: 6, cue: breathe}}
        - items:
            - {movement: bow, sets: 2-3, rest: 15, reps: 16 in total, side: alternate, squeeze: 2, build-up: range}
            - {movement: bow, variation: feet apart, stance: wide, grip: soft, steps: 10, practice: true}
            - {movement: lean, reps: 3, contract: 6, relax: 20, side: each, other-side: {movement: bow}, optional: true}
            - {movement: lean, flow: 2 min, breaths: 6-8, equipment: [block], cue: {week 1: low, week 2: high}}
            - {movement: bow, reps: as feels good, load: a little more, link: "https://example.org/b"}
""",
    HEAD.replace("muscles: [hamstrings]", "muscles: [hamstrings]\ntraining-days: 3") + session(1) * 3 + REST,
)

_TOKENS = (
    *("0", "-1", "1", "2", "400", "1e9", "1.5", "99999999999999999999", "true", "null", "~", "''", '""', "no", "7:00"),
    *(
        "week 1",
        "week 0",
        "day 401",
        "week 1: 2",
        "{week 2: 3}",
        "{start: 1, each-week: 1}",
        "at-most",
        "2 min",
        "61 min",
    ),
    *("8-10", "10-8", "about 8", "16 in total", "as feels good", "4 kg", "4", "5-6", "11", "65+", "1-7", "7-1", "held"),
    *(
        "[",
        "]",
        "{",
        "}",
        "[]",
        "{}",
        "- ",
        ": ",
        ", ",
        "#",
        "&a",
        "*a",
        "!!str",
        "|",
        ">",
        "%",
        "---",
        "...",
        "? ",
        "\t",
    ),
    *(
        "\x00",
        "é",
        "日本",
        "\ud800",
        "\ufeff",
        "\r\n",
        "\u2028",
        "x" * 700,
        "[" * 30,
        "'",
        '"',
        "session",
        "as-day",
        "each",
    ),
    *("movement", "items", "blocks", "days", "reach", "bow", "lean", "monday", "hamstrings", "https://example.org/x"),
)
_VALUES: tuple[Any, ...] = (
    *(None, True, False, 0, -1, 1, 3, 401, 10**20, 1.5, float("inf"), "", " ", "x", "week 1", "as feels good", "4 kg"),
    *(
        [],
        {},
        [[]],
        [1, 2],
        ["mat"],
        {"a": "b"},
        {"week 1": 1},
        {"week 1": {"week 2": 3}},
        {"start": 1, "each-week": 2},
    ),
    *({"seconds": 5}, {"movement": "reach"}, {"to": "https://example.org"}, [{"strap": []}], [[["mat"]]]),
)


def mutant(chance: random.Random) -> str:
    """One of the samples with one to four mistakes in it."""
    text = chance.choice(SAMPLES)
    for _ in range(chance.choice((1, 1, 2, 3, 4))):
        text = chance.choice(_MISTAKES)(text, chance)
    return text


def _piece(text: str, chance: random.Random) -> str:
    """Characters cut, doubled, or replaced by a token."""
    at = chance.randrange(len(text) + 1)
    to = min(len(text), at + chance.choice((0, 1, 1, 2, 5, 20, 100)))
    return text[:at] + chance.choice(("", text[at:to] * 2, chance.choice(_TOKENS))) + text[to:]


def _word(text: str, chance: random.Random) -> str:
    """A word or a number replaced by a token, or by another word of the file."""
    words = list(re.finditer(r"[\w.-]+", text))
    if not words:
        return chance.choice(_TOKENS)
    found, other = chance.choice(words), chance.choice(words)
    return text[: found.start()] + chance.choice((chance.choice(_TOKENS), other[0])) + text[found.end() :]


def _line(text: str, chance: random.Random) -> str:
    """A line lost, doubled, moved or indented in another way."""
    lines = text.splitlines(keepends=True) or [""]
    at, to = chance.randrange(len(lines)), chance.randrange(len(lines))
    line = lines.pop(at)
    how = chance.randrange(5)
    if how == 1:
        lines[at:at] = [line, line]
    elif how == 2:
        lines.insert(to, line)
    elif how == 3:
        lines.insert(at, "  " + line)
    elif how == 4:
        lines.insert(at, line.removeprefix("  "))
    return "".join(lines)


def _structure(text: str, chance: random.Random) -> str:
    """A value of the data replaced by another kind of value; a text that cannot be read stays as it is."""
    try:
        data = read_nodes(text).data
    except Exception:
        return _word(text, chance)
    places = list(_places(data))
    if not places:
        return text
    holder, key = chance.choice(places)
    if chance.random() < 0.2:
        del holder[key]
    else:
        holder[key] = chance.choice(_VALUES)
    written = StringIO()
    YAML(typ="safe", pure=True).dump(data, written)
    return written.getvalue()


def _places(data: Any) -> list[tuple[Any, Any]]:
    """Every place in some data, as what holds it and its key or index."""
    keys = list(data) if isinstance(data, dict) else range(len(data)) if isinstance(data, list) else []
    return [(data, key) for key in keys] + [place for key in keys for place in _places(data[key])]


_MISTAKES: tuple[Callable[[str, random.Random], str], ...] = (_piece, _word, _word, _line, _structure, _structure)
_JARGON = re.compile(
    r"pydantic|traceback|tagged|\bunion\b|changing|instance of|input should|valid (?:string|integer|boolean|dictionary)"
    r"|\bpattern\b|\bdiscriminator\b|\bNoneType\b|Written[A-Z]|<class|Error\b",
)


def verdict(text: str) -> str:
    """`programme`, or the code of a text's first problem. Raises AssertionError for one that teaches nothing."""
    try:
        programme = read_programme(text, name="p.yaml")
    except ProgrammeErrors as errors:
        problems = errors.problems
    else:
        _can_be_used(programme)
        return "programme"
    lines = len(re.split(r"\r\n|[\n\r\x85\u2028\u2029]", text)) + 1
    for problem in problems:
        _teaches(problem, lines)
    return problems[0].code


def _teaches(problem: Problem, lines: int) -> None:
    assert 1 <= problem.line <= lines, f"line {problem.line} of {lines}"
    assert problem.column >= 1, f"column {problem.column}"
    assert problem.found, "found nothing"
    assert problem.allowed, "allowed nothing"
    said = f"{problem.path} | {problem.allowed} | {problem.suggestion}"
    assert not _JARGON.search(said), said


def _can_be_used(programme: Programme) -> None:
    check(programme).as_text()
    overview(programme)
    for day in programme.days:
        low, high = minutes(day)
        assert low <= high, f"day {day.number} takes {low} to {high} minutes"
        for level in (1, 2):
            eased(day, level, programme.catalogue())
