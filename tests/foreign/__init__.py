"""The platform's Bot API as others have written it down: aiogram, in an environment of its own.

`exact.py` and `bot.py` run there and import nothing of ours; `environment.py` makes it; `recorded.py` writes down what
our own bot asks and is answered.
"""
