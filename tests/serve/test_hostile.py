"""Who is not answered, and that nothing that is sent ends the serving."""

from __future__ import annotations

import pytest
from starlette.testclient import TestClient

from tests.serve.conftest import DOOR, ORIGIN, ROOT
from walewright.serve.bodies import LARGEST, THROWN_AWAY
from walewright.serve.security import Door

FORM = f"{ROOT}/garment/sandbar"


@pytest.mark.parametrize("path", ["/", "", "/wrong/", "/wrong/garment/sandbar", f"{ROOT}x/", f"{ROOT[:-1]}/", "/t%00/", "/töken/"])
def test_without_the_token_there_is_nothing(path: str, client: TestClient) -> None:
    for answer in (client.get(path), client.post(path, data={"x": "1"})):
        assert answer.status_code == 404
        assert answer.text == "404"


@pytest.mark.parametrize(
    "host",
    [
        "evil.example",
        "evil.example:8040",
        "127.0.0.1",
        "127.0.0.1:80",
        "127.0.0.1:8040.evil.example",
        "a@127.0.0.1:8040",
        "",
        "[::",
    ],
)
def test_a_foreign_host_is_refused(host: str, client: TestClient) -> None:
    assert client.get(f"{ROOT}/", headers={"host": host}).status_code == 421


@pytest.mark.parametrize("host", ["127.0.0.1:8040", "localhost:8040", "[::1]:8040"])
def test_our_own_names_are_known(host: str, client: TestClient) -> None:
    assert client.get(f"{ROOT}/", headers={"host": host}).status_code == 200


@pytest.mark.parametrize(
    "origin", ["http://evil.example", "https://127.0.0.1:8040", "http://127.0.0.1:8041", "null", "", "file://"]
)
def test_a_foreign_origin_is_refused(origin: str, client: TestClient) -> None:
    assert client.post(FORM, data={}, headers={"origin": origin}).status_code == 403


def test_a_foreign_page_is_refused_that_names_no_origin(client: TestClient) -> None:
    del client.headers["origin"]
    try:
        assert client.post(FORM, data={}, headers={"sec-fetch-site": "cross-site"}).status_code == 403
    finally:
        client.headers["origin"] = ORIGIN


def test_all_addresses_are_listened_on_by_number_and_not_by_name() -> None:
    door = Door("0.0.0.0", 8040, "t")
    assert door.known_as("192.168.1.7:8040")
    assert not door.known_as("evil.example:8040")
    assert not DOOR.known_as("192.168.1.7:8040")


@pytest.mark.parametrize(
    "path",
    [
        "garment/../../../etc/passwd",
        "garment/%2e%2e%2f%2e%2e%2fetc%2fpasswd",
        "garment/..%5c..%5cetc",
        "garment/%2fetc%2fpasswd.wale",
        "garment/sandbar.wale",
        "garment/sandbar%00",
        "own/../app.py",
        "own/%2e%2e%2fapp.py",
        "own/app.py",
        "cover/..%2f..%2fpyproject.svg",
        "garment/tables%2fwomen",
    ],
)
def test_no_path_leads_to_a_file(path: str, client: TestClient) -> None:
    answer = client.get(f"{ROOT}/{path}")
    assert answer.status_code in (404, 405)
    assert "root:" not in answer.text
    assert "import " not in answer.text


@pytest.mark.parametrize("form", ["exe", "..%2fpdf", "PDF", "figures"])
def test_no_other_format_is_made(form: str, client: TestClient) -> None:
    assert client.post(f"{FORM}/{form}", data={"x": "1"}).status_code == 404


@pytest.mark.parametrize("method", ["PUT", "DELETE", "OPTIONS", "TRACE", "PATCH"])
def test_no_other_method_is_answered(method: str, client: TestClient) -> None:
    assert client.request(method, FORM).status_code == 405


URLENCODED = {"content-type": "application/x-www-form-urlencoded"}
MULTIPART = {"content-type": "multipart/form-data; boundary=x"}


@pytest.mark.parametrize(
    ("headers", "body", "status"),
    [
        (URLENCODED, b"a" * (LARGEST + 1), 413),
        (URLENCODED, b"a=" + b"b" * (70 * 1024), 413),
        (URLENCODED, b"&".join(b"f%d=1" % n for n in range(5000)), 400),
        (URLENCODED, b"a=%ff%fe", 400),
        (URLENCODED, "a=ü".encode(), 400),
        ({"content-type": "application/json"}, b"{}", 415),
        ({"content-type": "multipart/form-data"}, b"--x--", 400),
        (MULTIPART, b"", 422),
        (MULTIPART, b"--x", 400),
        (MULTIPART, b"--x\r\n\r\n--x--", 400),
        (MULTIPART, b"--x\r\nContent-Disposition: form-data\r\n\r\nx\r\n--x--", 400),
        (MULTIPART, b'--x\r\nContent-Disposition: form-data; name="file"\r\n\r\n\xff\r\n--x--', 400),
        (MULTIPART, b"--x\r\n" * 4000 + b"--x--", 400),
        ({**URLENCODED, "content-length": "-5"}, b"", 400),
        ({**URLENCODED, "content-length": "9" * 30}, b"", 413),
    ],
)  # fmt: skip
def test_a_body_that_is_no_form_is_refused(headers: dict[str, str], body: bytes, status: int, client: TestClient) -> None:
    assert client.post(f"{ROOT}/recall", content=body, headers=headers).status_code == status


def test_a_body_is_measured_whatever_it_says_of_itself(client: TestClient) -> None:
    # Each field alone is small enough.
    parts = (b"&%c=" % letter + b"x" * (LARGEST // 3) for letter in b"abcd")
    answer = client.post(FORM, content=parts, headers={**URLENCODED, "transfer-encoding": "chunked"})
    assert answer.status_code == 413


@pytest.mark.parametrize("size", [LARGEST + 1, 2 * 1024 * 1024])
def test_a_file_that_is_too_large_is_told_of_on_the_page(size: int, client: TestClient) -> None:
    """Somebody drops a photograph: the page is there, and says what it takes."""
    answer = client.post(f"{ROOT}/yours", files={"file": ("picture.jpg", b"\xff" * size)})
    assert answer.status_code == 413
    assert "<main" in answer.text
    assert client.post(f"{ROOT}/yours", data={"source": ""}).text == answer.text, "what a source is is told there"


def test_more_than_that_is_not_read(client: TestClient) -> None:
    headers = {**URLENCODED, "content-length": str(THROWN_AWAY + 1)}
    assert client.post(f"{ROOT}/yours", content=b"", headers=headers).text == "413"


def test_a_page_fetches_nothing_and_is_framed_by_nobody(client: TestClient) -> None:
    for path in (f"{ROOT}/", FORM, "/wrong/"):
        headers = client.get(path).headers
        assert "default-src 'none'" in headers["content-security-policy"]
        assert "frame-ancestors 'none'" in headers["content-security-policy"]
        assert headers["referrer-policy"] == "same-origin"
        assert headers["x-content-type-options"] == "nosniff"


def test_a_hundred_hostile_requests_leave_it_serving(client: TestClient) -> None:
    for number in range(100):
        match number % 5:
            case 0:
                client.get(f"{ROOT}/garment/{'../' * number}etc/passwd")
            case 1:
                client.post(FORM, content=bytes(range(256)) * 8, headers=URLENCODED)
            case 2:
                client.post(f"{ROOT}/recall", content=b"--x\r\n" * number, headers=MULTIPART)
            case 3:
                client.get("/", headers={"host": f"evil{number}.example"})
            case _:
                client.post(f"{ROOT}/recall", data={"pasted": "[" * 30_000})
    assert "It can be knitted" in client.post(FORM, data={"measure:span": "150"}).text
