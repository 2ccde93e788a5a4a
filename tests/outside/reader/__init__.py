"""A reader of steps: it has the words, the letters' finished shapes and the cutting list, and sews what the words say.

It shares no word and no formula with the product. Where `placed` in the facts is used, it is to compare what was sewn
with the block.

`words` and `sentences` read numbers, lists and names; `cloth` is geometry; `landmarks` finds how a piece must lie;
`table` and `bench` hold what lies on the table; `joining`, `placing`, `methods`, `partial`, `curving`, `starring` and
`papering` carry sentences out; `reading` goes through the steps; `comparing` holds the result against the block;
`worked_examples` are steps written by hand, `shapes` every shape by every method. `tops` and the files that begin with
`top` read quilts: rows and borders, on point, pieced, mitred; `topcompare` holds the top against the quilt.
"""
