"""What is known and judged, told to a person: sentences, cautions, responses to danger."""
