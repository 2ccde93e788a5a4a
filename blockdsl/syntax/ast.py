"""What a block file says, before anything is looked up: all the nodes, each named where it is declared."""

from blockdsl.syntax.block_lines import *  # noqa: F403  a new node is named in its own file alone
from blockdsl.syntax.book_lines import *  # noqa: F403
from blockdsl.syntax.declarations import *  # noqa: F403
from blockdsl.syntax.nodes import *  # noqa: F403
from blockdsl.syntax.quilt_lines import *  # noqa: F403
