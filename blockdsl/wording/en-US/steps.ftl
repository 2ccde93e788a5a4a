# Sentences of the steps that join patches and units.

# The result of a step, measured edge to edge, unfinished.
step-measure = It should measure { $size }.
