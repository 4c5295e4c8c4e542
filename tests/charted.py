"""Invented courses, doses and weeks of a group with German words, to be drawn."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from plans.charts.days import Day, Did, Line
from plans.charts.digest import DigestWords, Pain, Share, Week
from plans.charts.doses import Dose, DosesWords, Muscle
from plans.charts.fortnight import FortnightWords
from plans.charts.measured import Measured, Result
from plans.charts.progress import Progress, ProgressWords
from plans.rules import Verdict

FIRST = date(2026, 1, 5)
A_DAY = timedelta(days=1)
MONDAYS = {FIRST + timedelta(weeks=week): f"{FIRST + timedelta(weeks=week):%d.%m.}" for week in range(-1, 60)}
DID = {
    Did.DONE: "gemacht",
    Did.PART: "zum Teil gemacht",
    Did.LEFT_OUT: "nicht gemacht",
    Did.SILENT: "keine Antwort",
    Did.REST: "Ruhetag",
    Did.MEASURED: "Beweglichkeitstest",
}
VERDICTS = {
    Verdict.ADVANCE: "es ging weiter",
    Verdict.REPEAT: "derselbe Tag noch einmal",
    Verdict.EASE: "leichter gemacht",
    Verdict.REST: "ein Tag Pause",
    Verdict.REFER: "wartete auf die Trainerin",
}
WEEKDAYS = ("Mo", "Di", "Mi", "Do", "Fr", "Sa", "So")
WORDS = ProgressWords(
    title="Oberschenkelrückseite und Hüftbeuger",
    note="5. Januar bis 26. April",
    done="Was gemacht wurde",
    did=DID,
    followed="Was darauf folgte",
    verdicts=VERDICTS,
    pain="Schmerz, 0 bis 10",
    tightness="Verspannung, 0 bis 10",
    before="vor der Einheit",
    after="danach",
    nothing="Noch keine Antworten.",
    no_tests="Noch nicht gemessen.",
    weekdays=WEEKDAYS,
    dates=MONDAYS,
    decimal=",",
)
DOSES_WORDS = DosesWords(
    "Minutes", "by week", "held", "asked for", "at most so much", "min", "Nothing was held yet.", decimal=","
)
DIGEST_WORDS = DigestWords(
    title="Wochenbericht",
    note="20. bis 26. April",
    completion="Gemacht",
    answers="Beantwortet",
    sure="sicher",
    unsure="unbekannt",
    answered="geantwortet",
    answered_unsure="vielleicht",
    followed="Was darauf folgte",
    verdicts=VERDICTS,
    pain="Schmerz, 0 bis 10",
    middle="Mitte",
    spread="die Hälfte der Antworten",
    nothing="Nichts.",
    decimal=",",
)
FORTNIGHT_WORDS = FortnightWords(
    title="Анастасия Воскресенская",
    note="علاء الدين المهندس",
    done="Was gemacht wurde",
    did=DID,
    pain="Schmerz, 0 bis 10",
    tightness="Verspannung, 0 bis 10",
    followed="Was folgte",
    verdicts=VERDICTS,
    nothing="Keine Antworten.",
    weekdays=WEEKDAYS,
)
LINES = (Line(1, "üblicher Schmerz: 1"), Line(3, "ab 3: der Tag wird wiederholt"), Line(6, "ab 6: ein Tag Pause"))
HEIGHT = Measured(
    name="Finger-Boden-Abstand",
    unit="cm",
    results=(
        Result(FIRST, 14, "14 cm"),
        Result(FIRST + 27 * A_DAY, 11.5, "11,5 cm", "18:30 statt 7:00, ohne Aufwärmen"),
        Result(FIRST + 83 * A_DAY, 4.5, "4,5 cm"),
    ),
    baseline=14,
    error=6.75,
    band="innerhalb des Messfehlers",
)


def course(dates: int, *, pains: bool = True) -> tuple[Day, ...]:
    """An invented course in which every mark occurs."""
    days = []
    for number in range(dates):
        did = list(Did)[number % 6]
        score = number * 7 % 11 if pains and did in (Did.DONE, Did.PART) else None
        after = None if score is None else number * 3 % 8
        before = None if after is None else after + number % 3
        verdict = None if did is Did.REST else list(Verdict)[number % 5]
        days.append(Day(FIRST + number * A_DAY, did, score, before, after, verdict))
    return tuple(days)


ONE_DAY = Progress(course(1), LINES, (), WORDS)
SIXTEEN_WEEKS = Progress(course(112), LINES, (HEIGHT, replace(HEIGHT, name="Rückenkratzer, rechts")), WORDS)


def muscles(weeks: int, *, range_: float = 1.25) -> tuple[Muscle, ...]:
    asked = [6 + week % 4 * 2.5 for week in range(weeks)]
    doses = [
        Dose(None if week and week == weeks - 1 else least * (week % 5) / 4, least, least * range_)
        for week, least in enumerate(asked)
    ]
    names = ("Oberschenkelrückseite, rechts und links", "Hüftbeuger", "Wade")
    return tuple(Muscle(name, tuple(doses)) for name in names)


WEEKS = (
    Week("30. März–5. April", Share(0.5, 0.75, "50–75 %"), Share(0.75, 0.75, "75 %"), Pain(1, 2, 3.5)),
    Week("6.–12. April", None, Share(0.0, 0.0, "0 %"), None),
    Week("13.–19. April", Share(0.0, 1.0, "0–100 %"), Share(0.2, 0.4, "20–40 %"), Pain(0, 10, 10)),
    Week("20.–26. April", Share(1.0, 1.0, "100 %"), Share(1.0, 1.0, "100 %"), Pain(0, 0, 0)),
)
FOLLOWED = {Verdict.ADVANCE: 60, Verdict.REPEAT: 15, Verdict.REST: 3, Verdict.REFER: 1}
