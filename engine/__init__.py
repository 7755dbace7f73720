"""What the ducts do and what the trade allows: pure computation."""
