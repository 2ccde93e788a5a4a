"""What to cut.

Takes:    the model and its making.
Gives:    the cut list: pieces of cloth with their allowance, how many, and how each is sub-cut; templates.
Measures: exact, then rounded up once to what the ruler reads.
Reports:  what cannot be cut.
Does not know: paper, pixels.
"""

from blockdsl.cutting.cutlist import BlockCuts, Cut, cut_block, cut_list, report_pieces_wider_than_fabric
from blockdsl.cutting.templates import Template, templates

__all__ = ["BlockCuts", "Cut", "Template", "cut_block", "cut_list", "report_pieces_wider_than_fabric", "templates"]
