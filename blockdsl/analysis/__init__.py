"""From what is written to what is meant.

Takes:    the ast.
Gives:    the model: names resolved, cells placed and turned, cover proved, shapes recognised.
Measures: exact, finished.
Reports:  slips of meaning.
Does not know: seams, paper.
"""
