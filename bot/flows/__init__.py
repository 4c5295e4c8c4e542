"""What is said and done: one use case a function, each inside one transaction, speaking only through the outbox."""
