"""The interview: the question bank, the planner, the conversation."""
