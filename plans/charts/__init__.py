"""Charts: plain numbers, dates and ready-made words in, the text of an SVG file out; 1080 pixels wide, for a phone.

Nothing here knows a language, a database or a chat, and nothing makes the words beside a picture. Every dataclass is of
plain values, so that `pydantic.TypeAdapter` turns it into JSON and back.
"""
