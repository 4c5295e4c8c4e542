"""The practice chat: a local server that speaks the Bot API, and people who chat through it."""
