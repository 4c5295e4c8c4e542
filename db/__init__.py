"""The memory: schema, engine, the one writer, and stores, one a concern."""
