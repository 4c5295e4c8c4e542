"""What all tables have in common: their names, their types, indexes of some rows."""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Date,
    Dialect,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    Text,
    Time,
    TypeDecorator,
    text,
)
from sqlalchemy import DateTime as SqlDateTime
from sqlalchemy.orm import DeclarativeBase


class Instant(TypeDecorator[datetime]):
    """An aware UTC datetime. A naive one is refused; SQLite, which keeps no offset, gets UTC and gives UTC back."""

    impl = SqlDateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError(f"{value!r} has no zone: an instant must be aware")
        return value.astimezone(UTC)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


class Base(DeclarativeBase):
    """All tables, with names for every constraint so that a migration can speak of them."""

    metadata = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
            "uq": "uq_%(table_name)s_%(column_0_N_name)s",
            "ck": "ck_%(table_name)s_%(constraint_name)s",
            "fk": "fk_%(table_name)s_%(column_0_N_name)s_%(referred_table_name)s",
            "pk": "pk_%(table_name)s",
        }
    )
    type_annotation_map = {  # noqa: RUF012 - SQLAlchemy's own way
        datetime: Instant(),
        date: Date(),
        time: Time(),
        str: Text(),
        bytes: LargeBinary(),
        int: BigInteger().with_variant(Integer(), "sqlite"),
        dict[str, Any]: JSON(none_as_null=True),
        list[Any]: JSON(none_as_null=True),
    }


def partial(name: str, *columns: str, where: str, unique: bool = False) -> Index:
    """An index of some rows only; a query uses it when it repeats `where` word for word."""
    return Index(name, *columns, unique=unique, sqlite_where=text(where), postgresql_where=text(where))


NEVER_AGAIN = {"sqlite_autoincrement": True}
"""Of a table whose numbers stand in buttons, keys and workers' hands: an erased row's number is not given again."""
