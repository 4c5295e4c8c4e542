"""`easeward` with every request to the local platform written down: `python -m tests.foreign.recorded practice …`.

Each call is a line of JSON in the file that EASEWARD_TEST_CALLS names: method, params, and the answer as it leaves. A
file in a request is only named.
"""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any

from bot import practising
from bot.cli import main
from bot.practice.errors import ApiError
from bot.practice.fields import Params, Upload
from bot.practice.platform import Platform
from tests.foreign.environment import WHERE


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


if __name__ == "__main__":
    vars(practising)["Platform"] = Recorded
    main()
