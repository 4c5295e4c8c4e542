"""`easeward serve` with a webhook: the same talk, brought by the platform instead of asked for."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

from tests.acceptance.serving import house, people_joined, stopped
from tests.postgres import free_port

SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")


def webhook_settings(port: int) -> dict[str, str]:
    return {
        "webhook_url": f"http://127.0.0.1:{port}/in/updates",
        "webhook_secret": "a-secret-of-enough-letters",
        "web_port": str(port),
    }


async def test_people_join_through_a_webhook_and_afterwards_through_questions(tmp_path: Path) -> None:
    async with house(tmp_path) as place:
        process = await place.serve(**webhook_settings(free_port()))
        await people_joined(place, coach=900, clients=[101], sample=SAMPLE)
        assert await stopped(process) == 0
        process = await place.serve()
        await place.chat.post("say", chat=101, text="Where can I buy a mat?")
        await place.until("SELECT count(*) FROM answer WHERE field = 'note'", 1)
        assert await stopped(process) == 0
        assert place.ask("SELECT count(*) FROM inbox WHERE state != 'handled'")[0][0] == 0


async def test_serving_a_webhook_without_a_secret_is_refused(tmp_path: Path) -> None:
    async with house(tmp_path) as place:
        process = await place.serve(webhook_url="https://bot.example.org/in", web_port=str(free_port()))
        assert await process.wait() == 1
        assert "EASEWARD_WEBHOOK_SECRET" in place.log


async def test_a_role_that_does_not_exist_is_wrong_use(tmp_path: Path) -> None:
    async with house(tmp_path) as place:
        code, said = await place.run("serve", "--role", "poller")
        assert code == 2
        assert "all, updates, sender" in said
