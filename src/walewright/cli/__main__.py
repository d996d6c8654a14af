"""`python -m walewright.cli`: the same as `python -m walewright`."""

import sys

from walewright.cli import main

# Other processes of one build load this file too, under another name.
if __name__ == "__main__":
    sys.exit(main())
