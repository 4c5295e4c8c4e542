"""The voice: settings, command line, talk, receiving and sending."""
