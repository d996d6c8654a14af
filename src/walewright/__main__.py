"""`python -m walewright`, for those without the `walewright` script on their path."""

import sys

from walewright.cli import main

sys.exit(main())
