"""The report as one HTML file that asks nothing of any other address."""

from functools import cache

from jinja2 import Environment, PackageLoader, StrictUndefined, Template

from intake.report.content import AIR_NOTE, SURE_NOTE, Content

__all__ = ["report_html"]


@cache
def _template() -> Template:
    environment = Environment(
        loader=PackageLoader("intake", "report"),
        undefined=StrictUndefined,
        autoescape=True,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    return environment.get_template("report.html")


def report_html(content: Content) -> str:
    """The whole report as one self-contained page, for a phone, a desk and paper.

    Args:
        content: What the report says; every text is escaped.

    Returns:
        A complete HTML document: styles inside, no script, no picture from elsewhere.
    """
    return _template().render(content=content, air_note=AIR_NOTE, sure_note=SURE_NOTE)
