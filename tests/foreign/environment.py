"""The foreign client's environment, made once for each list of pins in a folder that git ignores; what it finds."""

from __future__ import annotations

import fcntl
import hashlib
import subprocess
import sys
import venv
from functools import cache
from pathlib import Path

HERE = Path(__file__).parent
PINS = HERE / "requirements.txt"
WHERE = "EASEWARD_TEST_CALLS"
"""The variable that names the file in which `recorded.py` writes every request to the platform."""
CACHE = HERE.parents[1] / ".foreign_cache"


@cache
def foreign_python() -> Path:
    """The interpreter of an environment in which the pinned client is installed."""
    name = hashlib.sha256(f"{sys.version_info[:2]}{PINS.read_text(encoding='utf-8')}".encode()).hexdigest()[:16]
    folder = CACHE / name
    python, ready = folder / "bin" / "python", folder / "ready"
    CACHE.mkdir(exist_ok=True)
    with (CACHE / f"{name}.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not ready.exists():
            venv.create(folder, clear=True, with_pip=True)
            words = ["install", "--quiet", "--disable-pip-version-check", "--require-hashes", "-r", str(PINS)]
            subprocess.run([str(python), "-m", "pip", *words], check=True)
            ready.touch()
    return python


def check_calls(recording: Path) -> None:
    """Has a recording read by the client's own shapes. Raises AssertionError with all that is wrong in it."""
    words = [str(foreign_python()), str(HERE / "exact.py"), str(recording)]
    done = subprocess.run(words, capture_output=True, text=True, check=False)
    if done.returncode != 0:
        raise AssertionError(done.stdout or done.stderr)
