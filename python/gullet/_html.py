"""Static tables for notebooks: escaped, without script."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from html import escape


def words(name: str) -> str:
    """A name as a person reads it."""
    return name.replace("_", " ")


def table(
    head: Sequence[str],
    rows: Iterable[Sequence[object]],
    *,
    strong: int | None = None,
    titles: dict[str, str] | None = None,
) -> str:
    """Rows under a head, their first cells at the left; one row may be set in bold.

    >>> table(["limit", "share"], [["power", "9 %"]])
    '<table><thead><tr><th style="text-align:left">limit</th><th>share</th></tr></thead><tbody><tr><td style="text-align:left">power</td><td>9 %</td></tr></tbody></table>'
    """
    left = ' style="text-align:left"'

    def line(cells: Sequence[object], tag: str, title: str = "") -> str:
        shown = "".join(
            f"<{tag}{'' if place else left}>{escape(str(cell))}</{tag}>" for place, cell in enumerate(cells)
        )
        return f'<tr title="{escape(title)}">{shown}</tr>' if title else f"<tr>{shown}</tr>"

    body = "".join(
        line([words(str(row[0])), *row[1:]], "th" if place == strong else "td", (titles or {}).get(str(row[0]), ""))
        for place, row in enumerate(rows)
    )
    top = f"<thead>{line(head, 'th')}</thead>" if head else ""
    return f"<table>{top}<tbody>{body}</tbody></table>"
