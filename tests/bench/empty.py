"""The chat library with an empty handler: `python -m tests.bench.empty API [--stock]`.

A tap is answered and its message changed to one word; nothing is read, decided or kept. Updates are asked for by the
library's own loop and handled side by side. With `--stock` on the library's own transport, else on ours.
"""

from __future__ import annotations

import argparse
import logging
from typing import Any

from telegram import Update
from telegram.ext import ApplicationBuilder, CallbackQueryHandler, ContextTypes

from bot.transport import AiohttpRequest
from tests.bench.processes import TOKEN

AT_ONCE = 64


async def tapped(update: Update, _context: ContextTypes.DEFAULT_TYPE) -> None:
    """Answers, and shows that it was heard."""
    query = update.callback_query
    if query is not None:
        await query.answer()
        await query.edit_message_text("Noted.")


def main(api: str, stock: bool) -> None:
    """Until it is ended from outside."""
    logging.disable()
    builder: Any = ApplicationBuilder().token(TOKEN).base_url(f"{api}/bot").concurrent_updates(AT_ONCE)
    if stock:
        builder = builder.connection_pool_size(AT_ONCE)
    else:
        builder = builder.request(AiohttpRequest()).get_updates_request(AiohttpRequest(connections=1, read_timeout=60))
    application = builder.build()
    application.add_handler(CallbackQueryHandler(tapped))
    print("ready", flush=True)
    application.run_polling(poll_interval=0.0, timeout=25, allowed_updates=["callback_query"])


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("api")
    words.add_argument("--stock", action="store_true")
    found = words.parse_args()
    main(found.api, found.stock)
