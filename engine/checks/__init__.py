"""One file for each question put to the ducts."""
