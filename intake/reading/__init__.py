"""Loose text to one of five readings; knows no screen, no store and no conversation."""
