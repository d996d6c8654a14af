"""A photograph made ready for the page: looked at, turned upright, no larger than paper shows, and without what a camera wrote into
it besides."""

from __future__ import annotations

import io
import warnings
from base64 import b64encode
from typing import Literal

from walewright.record import record

MOST_PIXELS = 80_000_000
"""More than cameras take; what says that it has more is no photograph, and would need memory by the gigabyte."""
SMALLEST = 500
"""Pixels of the longer side. Below that a picture of half a page is coarse: 500 are 110 dots to the inch on 115 mm."""
LARGEST = 1800
"""Pixels of the longer side on the page: 300 dots to the inch on 150 mm."""
SMALLEST_LOGO_SIDE = 150
"""The same of a publisher's logo, which is 45 mm wide at most: 85 dots to the inch."""
LARGEST_LOGO_SIDE = 720
"""400 dots to the inch on 45 mm, for letters in it."""
QUALITY = 88

Unfit = Literal["kind", "damaged", "too-small", "too-many-pixels"]
"""Why a file is no photograph for a page."""


@record
class ReadyPicture:
    """A JPEG file, and its size in pixels."""

    data: bytes
    width: int
    height: int

    @property
    def uri(self) -> str:
        return "data:image/jpeg;base64," + b64encode(self.data).decode()


def ready(data: bytes, smallest: int = SMALLEST, largest: int = LARGEST) -> tuple[ReadyPicture | None, Unfit | None]:
    """The picture for the page, or why it cannot be shown; its longer side has pixels from `smallest`, and `largest` at most when
    it is ready. The same file gives the same bytes."""
    # Only a source with a photograph waits for it.
    from PIL import Image, ImageFile, ImageOps, UnidentifiedImageError

    # The page printer lets files through that end too soon, for all who decode pictures in its process.
    lenient, ImageFile.LOAD_TRUNCATED_IMAGES = ImageFile.LOAD_TRUNCATED_IMAGES, False
    try:
        with warnings.catch_warnings():
            # The library warns of many pixels on the terminal, and later than is wanted here.
            warnings.simplefilter("ignore", Image.DecompressionBombWarning)
            opened = Image.open(io.BytesIO(data), formats=("JPEG", "PNG"))
        with opened:
            if opened.width * opened.height > MOST_PIXELS:
                return None, "too-many-pixels"
            if max(opened.size) < smallest:
                return None, "too-small"
            profile = opened.info.get("icc_profile")
            upright = ImageOps.exif_transpose(opened)
            on_white = Image.new("RGBA", upright.size, "white")
            on_white.alpha_composite(upright.convert("RGBA"))
            picture = on_white.convert("RGB")
    except UnidentifiedImageError:
        return None, "kind"
    except Image.DecompressionBombError:
        return None, "too-many-pixels"
    except (OSError, ValueError, SyntaxError):
        return None, "damaged"
    finally:
        ImageFile.LOAD_TRUNCATED_IMAGES = lenient
    picture.thumbnail((largest, largest), Image.Resampling.LANCZOS)
    made = io.BytesIO()
    # The profile of another colour space says what the numbers mean; of one with four inks it would say it wrongly.
    kept = profile if opened.mode in ("RGB", "RGBA", "P") else None
    picture.save(made, "JPEG", quality=QUALITY, optimize=True, icc_profile=kept)
    return ReadyPicture(made.getvalue(), *picture.size), None
