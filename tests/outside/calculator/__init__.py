"""An independent calculator: from the JSON of the facts alone, can all of it be cut from what is bought?

It shares nothing with the product: numbers are read by its own reader, cloth is laid out with fractions, shapes are
compared by shapely. Each judge gives a list of complaints in words; an empty list means that nothing is short.
"""
