"""The service and the container: no root, no rights, a read-only system, secrets from files."""

from __future__ import annotations

import configparser
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from bot.ending import LAST_SECONDS
from bot.settings import Settings

DEPLOY = Path(__file__).parents[2] / "bot" / "deploy"
SERVICES = ("easeward.service", "easeward-backup.service")
LOCKED = {
    "NoNewPrivileges": "yes",
    "ProtectSystem": "strict",
    "ProtectHome": "yes",
    "PrivateTmp": "yes",
    "DynamicUser": "yes",
    "CapabilityBoundingSet": "",
    "MemoryDenyWriteExecute": "yes",
    "UMask": "0077",
}


def section(name: str, part: str) -> dict[str, list[str]]:
    """The lines of one part of a unit file; a name may stand several times."""
    found: dict[str, list[str]] = {}
    text = (DEPLOY / name).read_text(encoding="utf-8")
    inside = re.split(r"^\[(\w+)\]$", text, flags=re.MULTILINE)
    for line in inside[inside.index(part) + 1].splitlines():
        if line and not line.startswith("#"):
            key, _, value = line.partition("=")
            found.setdefault(key, []).append(value)
    return found


@pytest.mark.parametrize("name", SERVICES)
def test_a_service_is_nobodys_user_on_a_read_only_system_without_new_rights(name: str) -> None:
    service = section(name, "Service")
    assert {key: service[key][-1] for key in LOCKED} == LOCKED


def test_the_service_gives_the_token_as_a_credential_and_waits_for_the_stop() -> None:
    service = section("easeward.service", "Service")
    assert service["LoadCredential"] == ["token:/etc/easeward/token"]
    assert "EASEWARD_TOKEN_FILE=%d/token" in service["Environment"]
    assert int(service["TimeoutStopSec"][0]) > LAST_SECONDS
    assert service["KillMode"] == ["mixed"]


def test_every_setting_that_is_named_exists_and_none_holds_a_secret() -> None:
    for file in DEPLOY.iterdir():
        text = file.read_text(encoding="utf-8")
        named = {name.lower() for name in re.findall(r"EASEWARD_([A-Z_]+)=", text)}
        assert named <= Settings.model_fields.keys()
        assert not named & {"token", "webhook_secret", "ping_url"}


def test_a_token_from_the_credentials_folder_is_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    credential = tmp_path / "token"
    credential.write_text("100:abc\n", encoding="utf-8")
    credential.chmod(0o400)
    monkeypatch.setenv("EASEWARD_TOKEN_FILE", str(credential))
    found = Settings().token
    assert found is not None
    assert found.get_secret_value() == "100:abc"


def test_the_container_runs_without_root_and_holds_only_the_program() -> None:
    lines = (DEPLOY / "Containerfile").read_text(encoding="utf-8").splitlines()
    words = [line.split(maxsplit=1) for line in lines if line and not line.startswith(("#", " "))]
    assert [word for word, _rest in words if word == "FROM"] == ["FROM", "FROM"]
    assert {word for word, _rest in words} <= {
        *("FROM", "WORKDIR", "COPY", "RUN", "ENV", "VOLUME", "USER", "STOPSIGNAL", "ENTRYPOINT", "CMD")
    }
    last = max(index for index, (word, _rest) in enumerate(words) if word == "FROM")
    assert ["USER", "10001:10001"] in words[last:]
    assert [rest for word, rest in words[last:] if word == "COPY"] == ["--from=made /opt/easeward /opt/easeward"]
    copied = " ".join(rest for word, rest in words[:last] if word == "COPY").split()
    assert not {".git", "tests", "."} & {part for part in copied[:-1] if part != "."}
    assert any("--require-hashes" in line for line in lines)


def test_the_container_is_started_read_only_without_capabilities() -> None:
    parser = configparser.ConfigParser(strict=False)
    parser.optionxform = str  # type: ignore[assignment,method-assign]
    parser.read(DEPLOY / "easeward.container")
    container = dict(parser["Container"])
    wanted = {"ReadOnly": "true", "NoNewPrivileges": "true", "DropCapability": "all", "User": "10001"}
    assert {key: container[key] for key in wanted} == wanted
    assert "mode=0400" in container["Secret"]


@pytest.mark.skipif(shutil.which("systemd-analyze") is None, reason="no systemd-analyze here")
@pytest.mark.parametrize("name", SERVICES)
def test_systemd_reads_the_services_and_finds_them_little_exposed(name: str, tmp_path: Path) -> None:
    text = (DEPLOY / name).read_text(encoding="utf-8").replace("/opt/easeward/bin/easeward", sys.executable)
    (tmp_path / name).write_text(text, encoding="utf-8")
    for words in (["verify"], ["security", "--offline=yes", "--threshold=15"]):
        command = ["systemd-analyze", "--no-pager", *words, str(tmp_path / name)]
        done = subprocess.run(command, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stdout + done.stderr
