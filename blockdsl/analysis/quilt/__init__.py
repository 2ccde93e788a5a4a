"""From the lines of a quilt to its top: blocks in their places, cloth between them, borders round them.

`design` puts a quilt together; `settings` reads its lines; `straight`, `columns` and `on_point` lay its middle,
`rings` its borders and rounds; `halves` cuts blocks in two.
"""

from blockdsl.analysis.quilt.design import QuiltReader
from blockdsl.analysis.quilt.pieces import Designs

__all__ = ["Designs", "QuiltReader"]
