"""Files that many messages carry, kept once by their content: the picture of a session."""

from __future__ import annotations

import hashlib
from typing import Any

from sqlalchemy.ext.asyncio import AsyncSession

from db.once import insert_unless_there
from db.schema import Attachment


async def attach(session: AsyncSession, body: bytes, filename: str) -> dict[str, Any]:
    """Keep a file and return what stands for it in a payload. Nothing personal: it is kept for good."""
    digest = hashlib.sha256(body).hexdigest()
    row = {"digest": digest, "body": body, "file_ids": {}}
    await session.execute(insert_unless_there(session, Attachment, [row]))
    return {"attachment": digest, "filename": filename}


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
