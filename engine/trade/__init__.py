"""What the trade allows: tables of figures, each with its source."""
