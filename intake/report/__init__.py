"""Reports of a verdict: Markdown, HTML, JSON."""
