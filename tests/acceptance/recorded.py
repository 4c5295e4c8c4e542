"""`easeward` with every request to the local platform written down: `python -m tests.acceptance.recorded practice …`.

Each call is a line of JSON in the file that EASEWARD_TEST_CALLS names: method, params, and the answer as it leaves. A
file in a request is only named. `flaws_in` has a recording read by a client that others wrote.
"""

from __future__ import annotations

import json
import os
import subprocess
from pathlib import Path
from typing import Any

from bot import practising
from bot.cli import main
from bot.practice.errors import ApiError
from bot.practice.fields import Params, Upload
from bot.practice.platform import Platform
from tests.foreign.environment import HERE, foreign_python

WHERE = "EASEWARD_TEST_CALLS"


class Recorded(Platform):
    """The platform, with a diary."""

    async def call(self, method: str, params: Params) -> Any:
        try:
            result = await super().call(method, params)
        except ApiError as error:
            _write(method, params, error.as_json())
            raise
        _write(method, params, {"ok": True, "result": result})
        return result


def _write(method: str, params: Params, answer: dict[str, Any]) -> None:
    named = {name: "attach://it" if isinstance(value, Upload) else value for name, value in params.items()}
    with Path(os.environ[WHERE]).open("a", encoding="utf-8") as diary:
        diary.write(json.dumps({"method": method, "params": named, "answer": answer}) + "\n")


def flaws_in(recording: Path) -> list[str]:
    """What a strict client of others finds wrong in a recording."""
    words = [str(foreign_python()), str(HERE / "exact.py"), str(recording)]
    done = subprocess.run(words, capture_output=True, text=True, check=False)
    assert done.returncode == 0 or done.stdout.strip(), done.stderr
    return done.stdout.splitlines()


if __name__ == "__main__":
    vars(practising)["Platform"] = Recorded
    main()
