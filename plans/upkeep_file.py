"""An upkeep as a programme file that a coach can read, change, check and publish like any other."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import astuple, dataclass, replace
from functools import partial
from typing import Any

from plans.equipment import Thing
from plans.movements import Movement
from plans.programme import Item, MeasureTask, Programme, Say, Session, Sides, Span, as_written
from plans.rules import Settings
from plans.spoken import OLDEST
from plans.upkeep import A_WEEK, WEEKS, Upkeep
from plans.yaml_text import yaml_text

LONGEST = 600
"""Characters of a text in a programme file."""


@dataclass(frozen=True, slots=True)
class Wording:
    """The words that are new; `{title}` and `{goal}` stand for the programme's own."""

    title: str = "{title}: upkeep"
    goal: str = "Keep what was reached. {goal}"
    focus: str = "what to keep up"
    motivation: str = "Three short mornings a week, of movements that you know."

    def of(self, programme: Programme, say: Say = as_written) -> Wording:
        """The words for a programme whose own texts `say` has in these words' language."""
        about = {"title": say(programme.title), "goal": say(programme.goal)}
        return replace(self, title=self.title.format(**about)[:LONGEST], goal=self.goal.format(**about)[:LONGEST])


_ENGLISH = {"en": Wording()}


def upkeep_text(
    programme: Programme,
    kept: Upkeep,
    *,
    barred: Collection[str] = (),
    wordings: Mapping[str, Wording] = _ENGLISH,
) -> str:
    """The file, four weeks of three days, with the programme's last tests at the end.

    `wordings` are by language; the file is written in the programme's own and has texts for the others, as far as the
    programme has them. `barred` are keys of the coach's own movements that are not even described in it.
    `plans/reading.py` reads it.
    """
    words, tests = wordings.get(programme.language, Wording()).of(programme), _tests(programme)
    days = A_WEEK * WEEKS
    file: dict[str, Any] = {
        "title": words.title,
        "goal": words.goal,
        "for": programme.who_for,
        "ages": _ages(programme.ages),
        "setting": programme.setting,
        "company": programme.company,
        "supervised": programme.supervised,
        "led-by": programme.led_by,
        "motivation": words.motivation,
        "besides": programme.besides,
        "language": programme.language,
        "cautions": list(programme.cautions),
        "muscles": [str(muscle) for muscle in kept.muscles],
        "equipment": [_thing(thing) for thing in programme.equipment],
        "measures": [test.measure for test in tests],
        "training-days": A_WEEK,
        "settings": _settings(programme.settings),
        "movements": {m.key: _described(m, barred) for m in programme.movements if m.key not in barred},
        "sessions": {"upkeep": _session(kept.session, words.focus)},
        "days": [
            {"session": "upkeep", "times": days - len(tests)},
            *({"session": "upkeep", "measure": _test(test)} for test in tests),
        ],
    }
    file = {key: value for key, value in file.items() if value not in (None, [], {})}
    texts = _texts(programme, words, wordings, set(_strings(file)))
    return yaml_text(file | ({"texts": texts} if any(texts.values()) else {}))


def _texts(
    programme: Programme, words: Wording, wordings: Mapping[str, Wording], used: Collection[str]
) -> dict[str, dict[str, str]]:
    """What the file's own texts are in other languages: the programme's that are still in it, and the new words."""
    found: dict[str, dict[str, str]] = {}
    for language in sorted((programme.texts.keys() | wordings.keys()) - {programme.language}):
        own = dict(programme.texts.get(language, {}))
        there = wordings.get(language, Wording()).of(programme, partial(_said, own))
        new = dict(zip(astuple(words), astuple(there), strict=True)) if language in wordings else {}
        found[language] = {text: said for text, said in (own | new).items() if text in used}
    return found


def _said(own: Mapping[str, str], text: str) -> str:
    return own.get(text, text)


def _strings(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        yield from _strings([*value, *value.values()])
    elif isinstance(value, list):
        for part in value:
            yield from _strings(part)


def _ages(ages: Span | None) -> str | None:
    if ages is None:
        return None
    return f"{ages.low}+" if ages.high == OLDEST else f"{ages.low}-{ages.high}"


def _settings(settings: Settings) -> dict[str, int]:
    return {
        "pain-clean": settings.clean,
        "pain-acceptable": settings.acceptable,
        "pain-severe": settings.severe,
    }


def _thing(thing: Thing) -> Any:
    return {thing.name: list(thing.instead)} if thing.instead else thing.name


def _described(movement: Movement, barred: Collection[str]) -> dict[str, Any]:
    """A coach's own movement, without ways to what is barred."""
    found = movement.model_dump(
        mode="json", by_alias=True, exclude={"key", "standing", "equipment"}, exclude_defaults=True
    )
    if movement.equipment:
        found["equipment"] = [_thing(thing) for thing in movement.equipment]
    return {word: value for word, value in found.items() if not (word in _WAYS and value in barred)}


_WAYS = ("easier", "harder")


def _tests(programme: Programme) -> list[MeasureTask]:
    """The last task of each measure."""
    return list({day.measure.measure: day.measure for day in programme.days if day.measure is not None}.values())


def _test(test: MeasureTask) -> dict[str, Any]:
    found: dict[str, Any] = {"which": test.measure, "trials": test.trials}
    if test.warm_up is not None:
        found["warm-up"] = test.warm_up
    if test.photo:
        found["photo"] = True
    return found


def _session(session: Session, focus: str) -> dict[str, Any]:
    found: dict[str, Any] = {"focus": focus}
    if session.warm_up is not None:
        found["warm-up"] = {"text": session.warm_up.text, "time": session.warm_up.seconds}
    return found | {"blocks": [{"items": [_item(item) for item in block.items]} for block in session.blocks]}


def _item(item: Item) -> dict[str, Any]:
    """An item as it is written; only what it has."""
    dose, link = item.dose, item.link
    found: dict[str, Any] = {
        "movement": item.movement.key,
        "variation": item.variation.name if item.variation else None,
        "stance": item.stance,
        "grip": item.grip,
        "sets": item.sets.low if item.sets.low > 1 else None,
        "reps": _number(dose.reps),
        "hold": list(dose.holds) or _number(dose.hold),
        "squeeze": dose.squeeze,
        "contract": dose.contract,
        "relax": dose.relax,
        "last-hold": _last_hold(item),
        "flow": _number(dose.flow),
        "steps": _number(dose.steps),
        "breaths": _number(dose.breaths),
        "side": None if item.side is Sides.BOTH else str(item.side),
        "effort": None if item.effort is None else f"{item.effort.low}-{item.effort.high}",
        "stop": item.stop,
        "cue": item.cue,
        "equipment": [_thing(thing) for thing in item.equipment] or None,
        "link": None if link is None else {"to": link.address, "start": link.start} if link.start else link.address,
    }
    return {word: value for word, value in found.items() if value is not None}


def _last_hold(item: Item) -> dict[str, Any] | None:
    last = item.dose.last_hold
    if last is None:
        return None
    found: dict[str, Any] = {
        "seconds": last.seconds,
        "equipment": [_thing(thing) for thing in last.equipment] or None,
        "effort": None if last.effort is None else f"{last.effort.low}-{last.effort.high}",
        "cue": last.cue,
    }
    return {word: value for word, value in found.items() if value is not None}


def _number(span: Span | None) -> int | None:
    return None if span is None else span.low
