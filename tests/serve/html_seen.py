"""What a browser without scripts would see of a page, and send of its form."""

from __future__ import annotations

from html.parser import HTMLParser


class Seen(HTMLParser):
    """Fields of the form `figures` with their values, and the text, of a page."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.fields: dict[str, str] = {}
        self.labelled: set[str] = set()
        self.ids: list[str] = []
        self.text = ""
        self.source = False
        self.forms: list[str] = []
        self.actions: list[str] = []
        self.links: list[str] = []
        self._form = ""
        self._select = ""
        self.feed(page)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        found = {key: value or "" for key, value in attrs}
        if "id" in found:
            self.ids.append(found["id"])
        match tag:
            case "form":
                self._form = found.get("id", "other")
                self.forms.append(found["action"])
            case "label":
                self.labelled.add(found["for"])
            case "textarea" if self._form == "figures":
                self.source = True
            case "input" if self._form == "figures":
                self.fields[found["name"]] = found.get("value", "")
                assert found.get("type") == "hidden" or found["id"]
            case "select":
                self._select = found["name"]
            case "option" if self._select:
                if self._select not in self.fields or "selected" in found:
                    self.fields[self._select] = found["value"]
            case "button" if "formaction" in found:
                self.actions.append(found["formaction"])
            case "a" | "img" | "link" | "script":
                self.links.append(found.get("href") or found.get("src") or "")

    def handle_endtag(self, tag: str) -> None:
        if tag == "form":
            self._form = ""
        if tag == "select":
            self._select = ""

    def handle_data(self, data: str) -> None:
        self.text += f" {data.strip()}"
