"""The store: an append-only log of events for each job."""
