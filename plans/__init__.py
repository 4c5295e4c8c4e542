"""The craft: programmes, replies, rules, measures, figures and charts. Pure: no clock, no database, no chat."""
