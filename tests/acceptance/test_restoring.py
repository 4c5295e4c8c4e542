"""A backup made while the bot serves, and put back: nobody gets anything twice, and the coach hears what is missing."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

import pytest

from tests.acceptance.serving import answered, house, people_joined, stopped
from tests.stores import Place

SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
COACH, CLIENT = 900, 101


@pytest.mark.timeout(180)
async def test_a_backup_comes_back_without_sending_anything_twice(tmp_path: Path, store: Place) -> None:
    copy = tmp_path / "copy.sqlite"
    async with house(tmp_path) as place:
        process = await place.serve()
        await people_joined(place, coach=COACH, clients=[CLIENT], sample=SAMPLE)
        await answered(place, CLIENT, "Where can I buy a mat?")
        await place.until("SELECT count(*) FROM outbox WHERE state IN ('waiting', 'leased', 'sending')", 0)
        code, said = await place.run("backup", str(copy))
        assert (code, "compared row for row" in said) == (0, True), said
        await answered(place, CLIENT, "And where a strap?")
        code, said = await place.run("restore", str(copy))
        assert code == 1, "not under a process that serves"
        assert await stopped(process) == 0

        before = [m.text for m in await place.chat.from_bot(CLIENT)]
        code, said = await place.run("restore", str(copy))
        assert code == 0, said
        assert place.ask("SELECT count(*) FROM answer WHERE field = 'note'")[0][0] == 1
        process = await place.serve()
        await place.until("SELECT count(*) FROM outbox WHERE state IN ('waiting', 'leased', 'sending')", 0)
        assert [m.text for m in await place.chat.from_bot(CLIENT)] == before
        assert "restored from a copy" in (await place.chat.from_bot(COACH))[-1].text
        assert "passed this on" in await answered(place, CLIENT, "And where a strap?")
        assert place.ask("SELECT count(*) FROM answer WHERE field = 'note'")[0][0] == 2
        assert await stopped(process) == 0
