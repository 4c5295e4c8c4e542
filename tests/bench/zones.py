"""Every zone of the IANA data from 1970 to 2038 against the tests' own reader of the same files.

    python -m tests.bench.zones

Asked is around every change of every zone name, and at 07:00 of every date in one zone of each distinct file. Prints
the differences, the counts and the seconds; exits 1 on any difference.
"""

from __future__ import annotations

import sys
from datetime import date
from time import perf_counter

from plans.localtime import data_version
from tests.references.test_every_zone import MORNING, Case, cases_around, changes_in, differences, zones

FIRST_YEAR, LAST_YEAR = 1970, 2038


def main() -> int:
    started = perf_counter()
    days = [
        date.fromordinal(n) for n in range(date(FIRST_YEAR, 1, 1).toordinal(), date(LAST_YEAR, 12, 31).toordinal() + 1)
    ]
    files = zones()
    changes = instants = mornings = 0
    skipped: set[tuple[str, date]] = set()
    wrong: list[str] = []
    for offsets, names in files:
        for change in changes_in(offsets, FIRST_YEAR, LAST_YEAR):
            cases = cases_around(offsets, change)
            changes += len(names)
            instants += len(cases) * len(names)
            for name in names:
                wrong += differences(name, cases)
        every_day = [Case(day, MORNING, offsets.read(day, MORNING)) for day in days]
        mornings += len(every_day)
        wrong += differences(names[0], every_day)
        skipped |= {(name, case.day) for case in every_day if case.expected is None for name in names}
    for line in wrong[:100]:
        print(line)
    for name, day in sorted(skipped):
        print(f"skipped by both: {day} in {name}" if not wrong else f"skipped: {day} in {name}")
    print(
        f"zone data {data_version()}, {FIRST_YEAR} to {LAST_YEAR}\n"
        f"zones        {sum(len(names) for _offsets, names in files)} names of {len(files)} files that differ\n"
        f"changes      {changes}\n"
        f"instants     {instants + mornings} ({instants} around changes, {mornings} mornings)\n"
        f"differences  {len(wrong)}\n"
        f"seconds      {perf_counter() - started:.1f}"
    )
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
