"""Property tests take the same examples every time, so that a failure is a change's and not the day's.

`HYPOTHESIS_PROFILE=explore pytest` looks for new ones.
"""

from __future__ import annotations

import os

from hypothesis import settings

settings.register_profile("steady", derandomize=True, deadline=None)
settings.register_profile("explore", deadline=None, max_examples=500)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "steady"))
