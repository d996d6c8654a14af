"""`python -m walewright.cli`: the same as `python -m walewright`."""

import sys

from walewright.cli import main

sys.exit(main())
