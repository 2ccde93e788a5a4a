"""The sheets of a quilt: `sheet` puts their parts in order, each of the other files makes one of them."""
