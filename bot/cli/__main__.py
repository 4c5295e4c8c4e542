"""`python -m bot.cli` is `easeward`."""

from bot.cli import main

if __name__ == "__main__":
    main()
