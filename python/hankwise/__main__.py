"""Run the command line: python -m hankwise."""

import sys

from hankwise.cli import main

sys.exit(main())
