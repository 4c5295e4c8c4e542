"""A week of 10,000 clients of one coach: `python -m tests.bench.digesting [--clients N] [--runs N]`.

Eight weeks of the rowing club's programme with invented answers, in an SQLite file: 560,000 rows of the ledger, each
with its message and most with a check-in. Ours reads them by `db.weeks` and reckons everything that the digest says
(`bot.flows.weeks`). Beside it pandas, numpy and scipy read the same rows by one statement on the bare driver and reckon
the same numbers, each client's slopes by `scipy.stats.theilslopes`; they are spared what only ours does: whether a
slope is more than chance, each client's own comparison, and whom to look at first. Both must find the same numbers.

Each runs in processes of its own, in turns; peak memory is the process's own.
Seconds are those of the processor, as other work shares it; medians are compared.
"""

from __future__ import annotations

import argparse
import asyncio
import json
import random
import resource
import sqlite3
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterable, Iterator, Sequence
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from importlib.resources import files
from pathlib import Path
from statistics import median
from typing import Any

from bot.flows import digest_said, weeks
from bot.flows.desk import Desk
from db.engine import opened
from db.schema import Coach, Person
from plans.comparing import Figure
from plans.fitting import Fit
from plans.reading import read_programme
from plans.weekly import seconds_of
from tests.stores import Files

SOURCE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
LAST = date(2026, 4, 26)
DATES = 56
FIRST = LAST - timedelta(days=DATES - 1)
NOW = datetime(2026, 4, 27, 16, tzinfo=UTC)
ZONE = "Europe/Lisbon"
MADE = "2026-03-01 07:00:00.000000"


# --- the rows -------------------------------------------------------------------------------------------------------


PERSON = "id, chat, label, language, units, zone, created_at"
COURSE = "id, person_id, coach_id, version_id, state, day, level, rests_taken, starts_on, created_at"
OUTBOX = "id, key, chat, lane, kind, method, payload, state, attempts, next_at, made_at"
LEDGER = (
    "id, course_id, person_id, local_date, zone, kind, day, level, prescribed, decision, outbox_id, withheld, made_at"
)
CHECKIN = "ledger_id, completion, pain, half, sore, odd, tightness, updated_at"


@dataclass(frozen=True, slots=True)
class Made:
    """One invented row: what came of it, and what was said."""

    id: int
    client: int
    on: str
    kind: str
    day: int
    level: int
    state: str
    decision: str
    said: tuple[str | None, int | None, int | None, int | None] | None
    """Completion, pain, half, tightness."""


def fill(file: Path, clients: int) -> None:
    """One coach, their clients, and eight weeks of each."""
    programme = read_programme(SOURCE)
    people = range(2, clients + 2)
    rows = list(_rows(clients))
    with closing(sqlite3.connect(file)) as database, database:

        def insert(table: str, columns: str, values: Iterable[Sequence[object]]) -> None:
            marks = ", ".join("?" * len(columns.split(",")))
            database.executemany(f"INSERT INTO {table} ({columns}) VALUES ({marks})", values)

        insert("person", PERSON, ((n, n, f"P{n}", "en", "metric", ZONE, MADE) for n in (1, *people)))
        insert("coach", "id, person_id, digest_weekday, digest_at, created_at", [(1, 1, 0, "17:00:00.000000", MADE)])
        version = (1, 1, programme.digest, "R", SOURCE, MADE, 0)
        insert("programme_version", "id, coach_id, digest, title, source, stored_at, upkeep", [version])
        insert("course", COURSE, ((n, n, 1, 1, "active", 1, 0, 0, FIRST.isoformat(), MADE) for n in people))
        letters = (
            (r.id, f"session:{r.id}", r.client, 2, "session", "send_message", "{}", r.state, 0, 0, MADE) for r in rows
        )
        insert("outbox", OUTBOX, letters)
        ledger = (
            (r.id, r.client, r.client, r.on, ZONE, r.kind, r.day, r.level, 0, r.decision, r.id, 0, MADE) for r in rows
        )
        insert("ledger", LEDGER, ledger)
        said = ((r.id, *r.said[:3], 0, 0, r.said[3], MADE) for r in rows if r.said is not None)
        insert("checkin", CHECKIN, said)


def _rows(clients: int) -> Iterator[Made]:
    rng, number = random.Random(7), 0
    sessions = [day.number for day in read_programme(SOURCE).days if day.session is not None]
    verdicts = ("advance",) * 6 + ("repeat", "repeat", "ease", "rest")
    decisions = {word: json.dumps({"verdict": word, "reason": "clean", "rules": "2", "votes": []}) for word in verdicts}
    for client in range(2, clients + 2):
        does, pain, rises = 0.4 + 0.6 * rng.random(), rng.randrange(3), rng.choice((0, 0, 0.3, -0.2))
        silent_from = rng.choice((99, 99, 99, 50))
        for at in range(DATES):
            number += 1
            kind = "rest" if at % 7 == 6 else "session"
            said: tuple[str | None, int | None, int | None, int | None] | None = None
            if kind == "session" and at < silent_from and rng.random() < 0.9:
                hurts = max(0, min(5, pain + round(rises * at / 7 + rng.random() - 0.5)))
                chance = rng.random()
                if chance < does:
                    said = ("done", hurts, None, rng.randrange(6))
                else:
                    said = ("part", hurts, rng.randrange(2), None) if chance < 0.95 else ("none", None, None, None)
            yield Made(
                number,
                client,
                (FIRST + timedelta(days=at)).isoformat(),
                kind,
                sessions[at % len(sessions)],
                rng.choice((0, 0, 0, 1, 2)),
                "sent" if rng.random() < 0.99 else "skipped",
                decisions[rng.choice(verdicts)],
                said,
            )


# --- ours -----------------------------------------------------------------------------------------------------------


async def ours(file: Path) -> dict[str, Any]:
    async with opened(f"sqlite:///{file}") as database, database.reading() as session:
        desk = Desk(session=session, now=NOW, cause="bench", bot_username="b")
        person, coach = await session.get_one(Person, 1), await session.get_one(Coach, 1)
        begun = time.process_time()
        found = await weeks.read(desk, person, coach, LAST)
        comparison = found.group.comparison
        needing = len(found.needing)
        took = time.process_time() - begun
    slopes = [
        [(t.change or 0) / t.days if t.change is not None else None for t in (s.week.pain, s.week.tightness)]
        for s in found.clients
    ]
    return {
        "seconds": took,
        "needing": needing,
        "rates": [_numbers(figure) for figure in (comparison.completion, comparison.dose, comparison.answers)],
        "weeks": [[w.due, w.done, w.part, w.left_out, w.silent, w.answered] for w in found.group.weeks],
        "quartiles": [[digest_said.quantile(sorted(w.pains), q) for q in (0.25, 0.5, 0.75)] for w in found.group.weeks],
        "followed": {verdict.word: count for verdict, count in sorted(found.group.followed.items())},
        "silent": [seen.week.silent for seen in found.clients],
        "slopes": slopes,
    }


def _numbers(figure: Figure) -> list[float]:
    rates = [
        number
        for rate in (figure.week, figure.month, figure.before)
        for number in (rate.sessions, rate.least, rate.most, rate.low, rate.high)
    ]
    step = figure.month_step
    return [*rates, step.least, step.most, step.low, step.high]


# --- by dataframes --------------------------------------------------------------------------------------------------

STATEMENT = """
SELECT ledger.course_id, ledger.local_date, ledger.kind, ledger.day, ledger.level, ledger.withheld, outbox.state,
       json_extract(ledger.decision, '$.verdict') AS verdict, ledger.morning,
       checkin.completion, checkin.pain, checkin.half, checkin.tightness
FROM ledger JOIN course ON course.id = ledger.course_id
LEFT JOIN checkin ON checkin.ledger_id = ledger.id LEFT JOIN outbox ON outbox.id = ledger.outbox_id
WHERE course.coach_id = 1 AND ledger.local_date > ? ORDER BY ledger.course_id, ledger.local_date
"""


def by_dataframes(file: Path) -> dict[str, Any]:
    import numpy as np
    import pandas as pd
    from scipy.stats import norm, theilslopes

    seconds = seconds_of(read_programme(SOURCE))
    z = norm.ppf(0.975)
    begun = time.process_time()
    with closing(sqlite3.connect(file)) as database:
        frame = pd.read_sql_query(STATEMENT, database, params=((LAST - timedelta(days=DATES)).isoformat(),))
    frame["back"] = (pd.Timestamp(LAST) - pd.to_datetime(frame["local_date"])).dt.days
    came = (frame["state"] == "sent") | (frame["withheld"] == 1)
    session = frame[(frame["kind"] == "session") & (came | frame["completion"].notna())].copy()
    pairs = session[["day", "level"]].drop_duplicates()
    pairs[["asked", "given"]] = [
        seconds(int(day), int(level), Fit()) for day, level in zip(pairs["day"], pairs["level"], strict=True)
    ]
    session = session.merge(pairs, on=["day", "level"])
    silent = session["completion"].isna()
    done = session["completion"] == "done"
    share = np.select(
        [done, (session["completion"] == "part") & (session["half"] != 0), session["completion"] == "part"],
        [1, 0.5, 0.25],
        0,
    )
    answered = session["completion"].notna() | session["pain"].notna()
    figures = [
        (done * 1.0, (done | silent) * 1.0, 1.0),
        (share * session["given"], np.where(silent, session["given"], share * session["given"]), session["asked"]),
        (answered * 1.0, answered * 1.0, 1.0),
    ]
    everybody = frame["course_id"].unique()

    def wilson(successes: float, trials: float) -> tuple[float, float]:
        p = successes / trials
        middle, spread = p + z * z / (2 * trials), z * np.sqrt(p * (1 - p) / trials + z * z / (4 * trials * trials))
        return (middle - spread) / (1 + z * z / trials), (middle + spread) / (1 + z * z / trials)

    def effect(pulls: Any, by_chance: float) -> float:
        return float(max(1.0, len(pulls) / (len(pulls) - 1) * (pulls**2).sum() / by_chance)) if by_chance else 1.0

    def shares(inside: Any, least: Any, most: Any, weight: Any) -> list[tuple[Any, ...]]:
        table = pd.DataFrame({"course": session["course_id"], "least": least, "most": most, "weight": weight})[inside]
        each = table.groupby("course").sum().reindex(everybody, fill_value=0)
        whole = each["weight"].sum()
        sessions = whole**2 / (table["weight"] ** 2).sum()
        found = []
        for name in ("least", "most"):
            p = each[name].sum() / whole
            found.append((p, (each[name] - p * each["weight"]) / whole, p * (1 - p) / sessions, sessions, len(table)))
        return found

    def difference(one: tuple[Any, ...], other: tuple[Any, ...]) -> tuple[float, float]:
        by = effect(one[1] - other[1], one[2] + other[2])
        (a, b), (c, d) = (wilson(s[0] * s[3] / by, s[3] / by) for s in (one, other))
        p, q = one[0], other[0]
        return p - q - np.hypot(p - a, d - q), p - q + np.hypot(b - p, q - c)

    back = session["back"]
    inside = [back < 7, back < 28, (back >= 28) & (back < 56)]
    rates = []
    for least, most, weight in figures:
        three = [shares(where, least, most, weight) for where in inside]
        numbers: list[float] = []
        for low, high in three:
            bounds = [
                wilson(s[0] * s[3] / effect(s[1], s[2]), s[3] / effect(s[1], s[2]))[end]
                for end, s in ((0, low), (1, high))
            ]
            numbers += [low[4], low[0], high[0], *bounds]
        (low, high), then = three[1:]
        numbers += [
            low[0] - then[1][0],
            high[0] - then[0][0],
            difference(low, then[1])[0],
            difference(high, then[0])[1],
        ]
        rates.append([float(number) for number in numbers])

    counts, quartiles = [], []
    for week in (3, 2, 1, 0):
        one = session[(back >= 7 * week) & (back < 7 * week + 7)]
        by = one["completion"].value_counts()
        any_answer = (one["completion"].notna() | one["pain"].notna()).sum()
        counts.append(
            [
                len(one),
                *(int(by.get(name, 0)) for name in ("done", "part", "none")),
                int(one["completion"].isna().sum()),
                int(any_answer),
            ]
        )
        quartiles.append([float(q) for q in one["pain"].quantile([0.25, 0.5, 0.75])])
    followed = frame[frame["back"] < 7]["verdict"].value_counts()

    spoken = frame[["completion", "pain", "tightness", "morning"]].notna().any(axis=1)
    after = spoken[::-1].groupby(frame["course_id"][::-1]).cumsum()[::-1] == 0
    silence = (after & (frame["kind"] == "session") & came).groupby(frame["course_id"]).sum()

    def slope(table: Any, name: str) -> Any:
        def one(mine: Any) -> float:
            days = -mine["back"].to_numpy()
            if len(days) < 8 or days[-1] - days[0] < 14:
                return float("nan")
            return float(theilslopes(mine[name].to_numpy(), days)[0])

        return table.dropna(subset=[name]).groupby("course_id")[["back", name]].apply(one).reindex(everybody)

    recent = frame[frame["back"] < 28]
    slopes = [slope(recent, name) for name in ("pain", "tightness")]
    took = time.process_time() - begun
    return {
        "seconds": took,
        "rates": rates,
        "weeks": counts,
        "quartiles": quartiles,
        "followed": {
            name: int(followed[name]) for name in ("advance", "repeat", "ease", "rest", "refer") if name in followed
        },
        "silent": [int(n) for n in silence],
        "slopes": [[None if np.isnan(value) else float(value) for value in pair] for pair in zip(*slopes, strict=True)],
    }


# --- both -----------------------------------------------------------------------------------------------------------


def differences(one: Any, other: Any, where: str = "") -> Iterator[str]:
    """Where two results are not the same to nine places; a slope that ours holds back (None) is not compared."""
    if one is None and where.startswith("/slopes/"):
        return
    if isinstance(one, dict):
        for name in one:
            yield from differences(one[name], other.get(name), f"{where}/{name}")
    elif isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        for at, pair in enumerate(zip(one, other, strict=True)):
            yield from differences(*pair, where=f"{where}/{at}")
    elif one != other and not (
        isinstance(one, int | float) and isinstance(other, int | float) and abs(one - other) < 1e-9
    ):
        yield f"{where}: {one} and {other}"


def measured(file: Path, way: str) -> dict[str, Any]:
    """One run in a process of its own."""
    command = [sys.executable, "-m", "tests.bench.digesting", "--one", way, "--file", str(file)]
    done = subprocess.run(command, stdout=subprocess.PIPE, check=True)
    return dict(json.loads(done.stdout))


def main(arguments: Sequence[str] | None = None) -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--clients", type=int, default=10_000)
    parser.add_argument("--runs", type=int, default=3)
    parser.add_argument("--one", choices=("ours", "frames"))
    parser.add_argument("--file", type=Path)
    given = parser.parse_args(arguments)
    if given.one:
        found = asyncio.run(ours(given.file)) if given.one == "ours" else by_dataframes(given.file)
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
        print(json.dumps(found | {"peak": peak}))
        return
    with tempfile.TemporaryDirectory() as folder:
        asyncio.run(Files().url(Path(folder)))
        file = Path(folder) / "easeward.sqlite"
        fill(file, given.clients)
        runs: dict[str, list[dict[str, Any]]] = {"ours": [], "frames": []}
        for number in range(given.runs):
            for way, mine in runs.items():
                mine.append(measured(file, way))
                print(f"run {number + 1}, {way}: {mine[-1]['seconds']:.2f} s, {mine[-1]['peak']} MiB", flush=True)
    left, right = ({k: v for k, v in runs[way][0].items() if k not in ("seconds", "peak", "needing")} for way in runs)
    wrong = list(differences(left, right))
    print(f"{given.clients} clients: {'the same numbers' if not wrong else wrong[:20]}")
    seconds = {way: median(run["seconds"] for run in mine) for way, mine in runs.items()}
    print(
        f"ours {seconds['ours']:.2f} s, dataframes {seconds['frames']:.2f} s: {seconds['ours'] / seconds['frames']:.2f}"
    )


if __name__ == "__main__":
    main()
