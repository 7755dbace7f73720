"""Everything that faces a person: reading, interview, telling, keeping, screen."""
