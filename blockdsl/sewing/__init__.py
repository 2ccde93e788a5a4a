"""How the patches become a block.

Takes:    the model.
Gives:    the making: units to sew, how many of each, and the method for each.
Measures: exact, finished.
Reports:  what cannot be sewn.
Does not know: paper.
"""
