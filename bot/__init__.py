"""The voice: settings, command line, talk, receiving, sending, and the practice chat."""
