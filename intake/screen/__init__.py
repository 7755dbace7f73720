"""The chat on a terminal; it shows a conversation and holds no rule of its own."""
