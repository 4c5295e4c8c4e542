"""Files and pictures that many messages carry, each kept once by what is in it: as bytes, or as what is to be drawn."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from typing import Any

from sqlalchemy.ext.asyncio import AsyncSession

from db.once import insert_unless_there
from db.schema import Attachment


async def attach(session: AsyncSession, body: bytes, filename: str) -> dict[str, Any]:
    """Keep a file and return what stands for it in a payload. Nothing personal: it is kept for good."""
    digest = hashlib.sha256(body).hexdigest()
    return await _keep(session, {"digest": digest, "body": body, "recipe": None}, filename)


async def attach_recipe(session: AsyncSession, digest: str, recipe: Mapping[str, Any], filename: str) -> dict[str, Any]:
    """The same for a file that is made when it is first sent: `digest` stands for all that the recipe says."""
    return await _keep(session, {"digest": digest, "body": None, "recipe": dict(recipe)}, filename)


async def _keep(session: AsyncSession, row: dict[str, Any], filename: str) -> dict[str, Any]:
    await session.execute(insert_unless_there(session, Attachment, [row | {"file_ids": {}}]))
    return {"attachment": row["digest"], "filename": filename}


async def found(session: AsyncSession, digest: str) -> Attachment:
    """The file with this digest. Raises `LookupError` if there is none."""
    row = await session.get(Attachment, digest)
    if row is None:
        raise LookupError(f"no attachment {digest}: attach the file in the write that puts the message")
    return row


async def remember_upload(session: AsyncSession, digest: str, way: str, file_id: str) -> None:
    """Note under which id the platform keeps the file, so that it need not be uploaded the same way again."""
    row = await found(session, digest)
    row.file_ids = row.file_ids | {way: file_id}


async def forget_upload(session: AsyncSession, digest: str, way: str) -> None:
    """The platform does not know the file any more: it is uploaded again the next time."""
    row = await found(session, digest)
    row.file_ids = {known: file_id for known, file_id in row.file_ids.items() if known != way}
