"""What to cut.

Takes:    the making.
Gives:    the cut list: pieces with their allowance, and how each is sub-cut.
Measures: exact, rounded up once to the ruler's measure.
Reports:  what cannot be cut.
Does not know: paper, pixels.
"""
