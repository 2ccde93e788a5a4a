# The frame of every step, where British English differs.

list-more = { $first } and { $last }
