"""`python -m walewright`, for those without the `walewright` script on their path."""

import sys

from walewright.cli import main

# Other processes of one build load this file too, under another name.
if __name__ == "__main__":
    sys.exit(main())
