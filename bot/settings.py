"""The settings: one table, read from the environment; every secret may also come from a file."""

from __future__ import annotations

from pathlib import Path

from platformdirs import user_data_path
from pydantic import Field, SecretStr, model_validator
from pydantic_settings import BaseSettings, SettingsConfigDict


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
    messages_per_second: float = Field(30.0, gt=0, description="What all chats together get in a second.")
    chat_pace: float = Field(1.0, ge=0, description="Seconds between two messages to one chat; 0 for no pace.")
    tick_seconds: float = Field(5.0, gt=0, description="How often to look for what is due.")
    health_port: int | None = Field(None, ge=0, le=65535, description="Port of /livez and /readyz; none by default.")
    log_level: str = Field("INFO", description="DEBUG, INFO, WARNING or ERROR.")

    @model_validator(mode="after")
    def _token_from_file(self) -> Settings:
        if self.token is None and self.token_file is not None:
            try:
                self.token = SecretStr(self.token_file.read_text(encoding="utf-8").strip())
            except OSError as error:
                raise ValueError(f"EASEWARD_TOKEN_FILE: cannot read {self.token_file}: {error.strerror}") from error
        return self
