"""What somebody who writes a programme asks for: a report, a preview of a day, the difference of two versions."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from html import unescape
from pathlib import Path
from typing import Any

from plans.cautions import caution_words
from plans.cert import answers
from plans.findings import Report, in_runs
from plans.movements import Movement, Muscle, library
from plans.overview import Week, overview
from plans.programme import Programme
from plans.reading import read_programme
from plans.translated import own_texts
from plans.yaml_text import yaml_text


class Unreadable(ValueError):
    """A file that cannot be opened, or is no text."""


def programme_in(file: Path) -> Programme:
    """The programme in a file. Raises Unreadable, or ProgrammeErrors with all that is wrong in it."""
    try:
        text = file.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        raise Unreadable(
            f"{file}: cannot be read: {getattr(error, 'strerror', None) or 'it is not UTF-8 text'}"
        ) from error
    return read_programme(text, name=str(file))


def report_json(programme: Programme, report: Report) -> dict[str, Any]:
    """The report, the weeks' dose, and what the reporting template asks for, as documented JSON."""
    said = [{"item": a.number, "asks": a.asks, "answer": a.answer, "by": a.by} for a in answers(programme)]
    return {**report.as_json(), "weeks": [week.as_json() for week in overview(programme)], "reporting": said}


def report_text(programme: Programme, report: Report) -> str:
    """The findings, and how much each target muscle gets in each week."""
    return "\n".join([report.as_text(), *_dose_lines(programme)])


def _dose_lines(programme: Programme) -> Iterator[str]:
    for number, week in enumerate(overview(programme), start=1):
        low, high = week.minutes
        length = f"{low} minutes" if low == high else f"{low} to {high} minutes"
        count = f"{week.sessions} session{'' if week.sessions == 1 else 's'}"
        rounds = f", up to {week.rounds} rounds" if week.rounds > 1 else ""
        loads = "".join(f", {name} with {kilograms:g} kg" for name, kilograms in week.loads.items())
        yield f"week {number} ({in_runs(week.days)}): {count} of {length}{rounds}{loads}"
        yield from (f"  {muscle}: {_amounts(week, muscle)}" for muscle in programme.muscles)


def _amounts(week: Week, muscle: Muscle) -> str:
    """Seconds a side, by kind; both sides in one number when they are alike."""
    kinds = sorted({kind for found, _side, kind in week.seconds if found is muscle})
    parts = []
    for kind in kinds:
        left, right = (week.seconds.get((muscle, side, kind), (0, 0)) for side in ("left", "right"))
        text = _range(left) if left == right else f"{_range(left)} left, {_range(right)} right"
        parts.append(f"{text} s {kind}")
    return "; ".join(parts) + " (each side)" if parts else "nothing"


def _range(seconds: tuple[int, int]) -> str:
    return str(seconds[0]) if seconds[0] == seconds[1] else f"{seconds[0]}-{seconds[1]}"


def texts_to_translate(programme: Programme, language: str) -> str:
    """The `texts` of a programme file for a language: each own text with what there is for it, or an empty place."""
    known = programme.texts.get(language, {})
    file = {"texts": {language: {text: known.get(text, "") for text in own_texts(programme)}}}
    return yaml_text(file)


def preview_text(programme: Programme, number: int, *, level: int = 0) -> str:
    """The message of a day as plain text, its buttons in brackets. Raises LookupError for another number."""
    from bot.flows.showing import preview
    from bot.words import words

    message = preview(words(programme.language), programme, number, level=level)
    text = unescape(re.sub(r"</?[a-z]+[^>]*>", "", str(message.text)))
    rows = ["  ".join(f"[{button.label}]" for button in row) for row in message.rows]
    return "\n".join([text, "", *rows])


def report_page(programme: Programme, report: Report) -> str:
    """The report as one HTML page that needs nothing else."""
    from bot.words.report import page

    return page(programme, report)


def movements_text(wanted: Sequence[str]) -> str:
    """The library's movements that have all the words in their name, muscles, kind or equipment; empty without one.

    A single one is shown with everything about it.
    """
    known = library()
    found = [known[wanted[0]]] if len(wanted) == 1 and wanted[0] in known else _found(known, wanted)
    if len(found) == 1:
        return _described(found[0])
    width = max((len(movement.key) for movement in found), default=0)
    return "\n".join(f"{m.key:{width}}  {m.name} ({m.kind}: {', '.join(m.main)})" for m in found)


def _found(known: Mapping[str, Movement], wanted: Sequence[str]) -> list[Movement]:
    def says(movement: Movement) -> str:
        things = [str(thing) for thing in movement.equipment]
        return " ".join([movement.key, movement.name, movement.kind, *movement.main, *movement.also, *things]).lower()

    return [movement for movement in known.values() if all(word.lower() in says(movement) for word in wanted)]


def _described(movement: Movement) -> str:
    """Everything about a movement, a line each."""
    lines = [f"{movement.key}: {movement.name} ({movement.kind})", movement.how]
    lines += [f"- {cue}" for cue in movement.cues]
    lines += [f"- not: {fault}" for fault in movement.faults]
    lists: tuple[tuple[str, Sequence[object]], ...] = (
        ("for", movement.main),
        ("also", movement.also),
        ("on the other side", movement.other_side),
        ("equipment", movement.equipment),
    )
    lines += [f"{name}: {', '.join(map(str, those))}" for name, those in lists if those]
    lines += ["done on one side at a time"] if movement.sides else []
    lines += [f"{name}: {key}" for name, key in (("easier", movement.easier), ("harder", movement.harder)) if key]
    lines += [f"variation {variation.name}: {variation.how}" for variation in movement.variations]
    lines += [f"tempo: {movement.tempo}"] if movement.tempo else []
    return "\n".join([*lines, *movement.care, *(caution_words()[caution].text for caution in movement.cautions)])
