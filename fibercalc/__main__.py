"""`python -m fibercalc`, from a plain checkout."""

import sys

from .cli import main

sys.exit(main())
