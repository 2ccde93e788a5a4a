"""`python -m blockdsl` is the command `blockdsl`."""

import sys

from blockdsl.cli import main

sys.exit(main())
