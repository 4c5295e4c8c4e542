"""The craft: programmes, replies, rules and measures. Pure: no clock, no database, no chat."""
