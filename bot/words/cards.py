"""What is drawn of a day: its movements with the words that stand under them."""

from __future__ import annotations

from dataclasses import asdict

from bot.words.doses import Gettext, day_length, day_title, dose_words, lines_of, named, same
from bot.words.message import Picture
from bot.words.muscles import muscle_words
from plans.figures.card import Card, Measurement, Shown, shown
from plans.measures import MEASURES, Measure
from plans.movements import Movement
from plans.programme import Day, MeasureTask
from plans.units import Units, unit_in


def session_picture(day: Day, caution: str, units: Units = Units.METRIC, *, gettext: Gettext = same) -> Picture | None:
    """The picture of a day's session; None where no movement of it has a figure."""
    card = session_card(day, caution, units, gettext=gettext)
    drawn = any(isinstance(part, Measurement) or (isinstance(part, Shown) and part.is_drawn) for part in card.parts)
    return Picture("card", card.as_json()) if drawn else None


def picture_of_words(words: str) -> Picture:
    """A few words, in the place of a picture that holds no more."""
    return Picture("card", Card(words, "", (), "").as_json())


def picture_of_test(measure: Measure, trials: int, units: Units, *, gettext: Gettext = same) -> Picture:
    """How a test is taken and read."""
    test = _test(measure, trials, units, gettext)
    return Picture("card", Card(gettext(measure.name), "", (test,), "").as_json())


def film_picture(movement: Movement, ending: str) -> Picture | None:
    """A movement from start to end, over and over, as a file of this ending; None where it has no figure."""
    one = shown(movement, "", "", "")
    return Picture("film", asdict(one), ending) if one.is_drawn else None


def session_card(day: Day, caution: str, units: Units = Units.METRIC, *, gettext: Gettext = same) -> Card:
    """The card of a day's session: every movement with its name, its dose, and where it is felt."""
    parts: list[str | Shown | Measurement] = []
    if day.measure is not None:
        parts.append(_tested(day.measure, units, gettext))
    for line in lines_of(day, gettext):
        if line.item is None:
            parts.append(line.words)
            continue
        movement = line.item.movement
        felt = muscle_words((line.item.variation and line.item.variation.main) or movement.main, gettext=gettext)
        name, dose = f"{line.number}. {named(line.item)}", dose_words(line.item, gettext=gettext)
        parts.append(shown(movement, name, dose, felt))
    return Card(day_title(day, gettext=gettext), day_length(day, gettext=gettext), tuple(parts), caution)


def _tested(test: MeasureTask, units: Units, _: Gettext) -> Measurement:
    return _test(MEASURES[test.measure], test.trials, units, _)


def _test(measure: Measure, trials: int, units: Units, _: Gettext) -> Measurement:
    each = _("{count} tries each side, in {unit}") if measure.sides else _("{count} tries, in {unit}")
    tries = each.format(count=trials + measure.practice, unit=_(unit_in(measure.unit, units)))
    return Measurement(measure.key, _("Test: {name}").format(name=_(measure.name)), tries, "")
