"""What is known about one house, and how well."""
