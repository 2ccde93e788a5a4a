"""The pattern sheet of a block: `sheet` puts its parts in order, each of the other files makes one of them."""
