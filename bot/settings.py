"""The settings: one table, read from the environment; every secret may also come from a file."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from platformdirs import user_data_path
from pydantic import Field, SecretStr, model_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.flows.installation import Installation


def data_folder() -> Path:
    """Where this person's data lives when no other place is named."""
    return user_data_path("easeward", appauthor=False)


def default_database_url() -> str:
    """A SQLite file in the data folder."""
    return f"sqlite+aiosqlite:///{data_folder() / 'easeward.sqlite'}"


class Settings(BaseSettings):
    """Everything that can be set. Each is an environment variable with EASEWARD_ before its name."""

    model_config = SettingsConfigDict(env_prefix="EASEWARD_", extra="ignore")

    token: SecretStr | None = Field(None, description="The bot's token. Secret.")
    token_file: Path | None = Field(None, description="A file that holds the token instead.")
    api_url: str = Field("https://api.telegram.org", description="Where the Bot API answers.")
    database_url: str = Field(
        default_factory=default_database_url,
        description="The database; by default a SQLite file in the user data folder.",
    )
    database_url_file: Path | None = Field(None, description="A file that holds that address, with its password.")
    messages_per_second: float = Field(30.0, gt=0, description="What all chats together get in a second.")
    chat_pace: float = Field(1.0, ge=0, description="Seconds between two messages to one chat; 0 for no pace.")
    tick_seconds: float = Field(5.0, gt=0, description="How often to look for what is due.")
    web_port: int | None = Field(None, ge=1, le=65535, description="Port of /livez, /readyz, /metrics and the webhook.")
    web_host: str = Field("127.0.0.1", description="Where that port is open; a proxy with TLS stands before it.")
    webhook_url: str | None = Field(None, description="The public address for updates; without it the bot asks.")
    webhook_secret: SecretStr | None = Field(None, description="What the platform shows there. Secret.")
    webhook_secret_file: Path | None = Field(None, description="A file that holds that secret instead.")
    red_flag_minutes: int = Field(
        60, ge=5, description="After so long a red flag that nobody has seen is called again."
    )
    alert_minutes: int = Field(240, ge=5, description="The same for every other alert; never in a coach's quiet hours.")
    minors: bool = Field(False, description="Whether coaches may invite people under 18, with a guardian's consent.")
    ping_url: SecretStr | None = Field(
        None, description="An address of your own monitoring that hears every minute that all is well. Secret."
    )
    ping_url_file: Path | None = Field(None, description="A file that holds that address instead.")
    backup_hours: int = Field(
        36, ge=0, description="After so long without `easeward backup` the ping stops; 0 if you back up otherwise."
    )
    log_level: str = Field("INFO", description="DEBUG, INFO, WARNING or ERROR.")

    @model_validator(mode="after")
    def _secrets_from_files(self) -> Settings:
        if self.token is None and self.token_file is not None:
            self.token = _secret("EASEWARD_TOKEN_FILE", self.token_file)
        if self.database_url_file is not None:
            self.database_url = _secret("EASEWARD_DATABASE_URL_FILE", self.database_url_file).get_secret_value()
        if self.webhook_secret is None and self.webhook_secret_file is not None:
            self.webhook_secret = _secret("EASEWARD_WEBHOOK_SECRET_FILE", self.webhook_secret_file)
        if self.ping_url is None and self.ping_url_file is not None:
            self.ping_url = _secret("EASEWARD_PING_URL_FILE", self.ping_url_file)
        return self

    @property
    def installation(self) -> Installation:
        """What is set for all coaches."""
        return Installation(
            timedelta(minutes=self.red_flag_minutes), timedelta(minutes=self.alert_minutes), self.minors
        )


def _secret(name: str, file: Path) -> SecretStr:
    try:
        return SecretStr(file.read_text(encoding="utf-8").strip())
    except OSError as error:
        raise ValueError(f"{name}: cannot read {file}: {error.strerror}") from error
    except UnicodeDecodeError:
        raise ValueError(f"{name}: {file} is not text") from None
