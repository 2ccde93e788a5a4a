# What the steps of a block make: nouns, and what tells those that are alike apart.
#
# A noun is asked with $count (one or several), $article ("" none, "a", "the", "one", "other", "another") and $case.
# English writes its articles before every noun alike (`english.py`); a language that declines writes them here.

# A part that the maker named; $name is her word, in the plural where $count is more than one.
part-own = { $name }
# The maker's name of a unit, and what it is in the trade.
part-own-kind = { $name } ({ $kind })

part-block = { $count ->
    [one] block
   *[other] blocks
}
part-unit = { $number ->
    [none] { $count ->
        [one] unit
       *[other] units
    }
   *[other] { $count ->
        [one] unit { $number }
       *[other] units { $number }
    }
}
part-segment = { $count ->
    [one] segment
   *[other] segments
}
part-section = { $number ->
    [none] { $count ->
        [one] section
       *[other] sections
    }
   *[other] { $count ->
        [one] section { $number }
       *[other] sections { $number }
    }
}
part-strip = { $count ->
    [one] strip
   *[other] strips
}
part-pair = { $count ->
    [one] pair
   *[other] pairs
}
part-quarter = { $count ->
    [one] quarter
   *[other] quarters
}
part-corner = { $count ->
    [one] corner
   *[other] corners
}
part-side = { $count ->
    [one] side
   *[other] sides
}
part-middle = { $count ->
    [one] middle
   *[other] middles
}
part-square = { $count ->
    [one] square
   *[other] squares
}
part-four-patch = { $count ->
    [one] four-patch
   *[other] four-patches
}
part-nine-patch = { $count ->
    [one] nine-patch
   *[other] nine-patches
}
part-sixteen-patch = { $count ->
    [one] sixteen-patch
   *[other] sixteen-patches
}
part-pieced-square = { $count ->
    [one] pieced square
   *[other] pieced squares
}
part-triangle-pair = { $count ->
    [one] triangle pair
   *[other] triangle pairs
}
part-corner-triangle = { $count ->
    [one] corner triangle
   *[other] corner triangles
}
part-large-diamond = { $count ->
    [one] large diamond
   *[other] large diamonds
}
part-half-square-triangle = { $count ->
    [one] half-square triangle
   *[other] half-square triangles
}
part-quarter-square-unit = { $count ->
    [one] quarter-square unit
   *[other] quarter-square units
}
part-hourglass = { $count ->
    [one] hourglass
   *[other] hourglasses
}
part-split-square = { $count ->
    [one] split square
   *[other] split squares
}
part-snowball = { $count ->
    [one] snowball
   *[other] snowballs
}
part-rail-unit = { $count ->
    [one] rail unit
   *[other] rail units
}
part-bar-unit = { $count ->
    [one] bar unit
   *[other] bar units
}
part-checkerboard = { $count ->
    [one] checkerboard
   *[other] checkerboards
}
part-eight-point-star = { $count ->
    [one] eight-point star
   *[other] eight-point stars
}
part-hexagon-field = { $count ->
    [one] hexagon field
   *[other] hexagon fields
}
part-half-rectangle-triangle = { $count ->
    [one] half-rectangle triangle
   *[other] half-rectangle triangles
}
part-triangle-in-a-square = { $count ->
    [one] triangle in a square
   *[other] triangles in a square
}
part-trapezoid-unit = { $count ->
    [one] trapezoid unit
   *[other] trapezoid units
}
part-slanting-strip = { $count ->
    [one] slanting strip
   *[other] slanting strips
}
part-spool = { $count ->
    [one] spool
   *[other] spools
}
part-octagon = { $count ->
    [one] octagon
   *[other] octagons
}
part-log-cabin = { $count ->
    [one] log cabin
   *[other] log cabins
}
part-pineapple = { $count ->
    [one] pineapple
   *[other] pineapples
}
part-quarter-circle-unit = { $count ->
    [one] quarter-circle unit
   *[other] quarter-circle units
}
part-fan = { $count ->
    [one] fan
   *[other] fans
}
part-half = { $count ->
    [one] half
   *[other] halves
}
part-goose = { $count ->
    [one] goose
   *[other] geese
}
part-plain-patch = { $count ->
    [one] plain patch
   *[other] plain patches
}
part-flying-geese = { $count ->
    [one] flying geese unit
   *[other] flying geese
}
part-courthouse-steps = courthouse steps
part-diamond-in-a-rectangle = { $count ->
    [one] diamond in a rectangle
   *[other] diamonds in a rectangle
}
part-kite-in-a-square = { $count ->
    [one] kite in a square
   *[other] kites in a square
}
part-square-in-a-square = { $count ->
    [one] square in a square
   *[other] squares in a square
}
part-row-of-tumblers = { $count ->
    [one] row of tumblers
   *[other] rows of tumblers
}
part-block-with-its-applique = { $count ->
    [one] block with its appliqué
   *[other] blocks with its appliqué
}
part-sixty-degree-triangles = { $count ->
    [one] field of 60° triangles
   *[other] fields of 60° triangles
}
part-cubes-of-sixty-degree-diamonds = { $count ->
    [one] field of cubes
   *[other] fields of cubes
}
part-segment-of-set = { $count ->
    [one] segment of set { $number }
   *[other] segments of set { $number }
}
part-row = row { $number }
part-column = column { $number }
part-rows = rows { $numbers }
part-columns = columns { $numbers }
part-round = round { $number }
part-straight-round = straight round { $number }
part-diagonal-round = diagonal round { $number }
part-numbers-to = { $first } to { $last }

# What tells parts of one noun apart. $name is the noun, or what has come of it so far.
part-in-fabric = { $fabric } { $name }
part-of-fabrics = { $name } of { $fabrics }
part-reversed = reversed { $name }
part-ordinal = { $number ->
    [2] second
    [3] third
    [4] fourth
    [5] fifth
    [6] sixth
    [7] seventh
    [8] eighth
    [9] ninth
   *[other] tenth
} { $name }
part-again = { $number ->
    [2] { $name }, second
   *[other] { $name }, number { $number }
}
part-made-patch-by-patch = { $name } made patch by patch
part-made-over-papers = { $name } made over papers
part-made-on-papers = { $name } made on papers
part-made-by-stitch-and-flip = { $name } made by stitch and flip
part-made-from-a-strip-set = { $name } made from a strip set
part-made-two-at-a-time = { $name } made two at a time
part-made-four-at-a-time = { $name } made four at a time
part-made-eight-at-a-time = { $name } made eight at a time

# What a step takes of a part, or of patches of one letter.
patch-in-fabric = { $letter } ({ $fabric })
take-units = { $count } { $name }
take-patches = { $form ->
    [triangle] { $count } { $letter } { $count ->
        [one] triangle
       *[other] triangles
    } ({ $fabric })
    [square] { $count } { $letter } { $count ->
        [one] square
       *[other] squares
    } ({ $fabric })
   *[plain] { $count } { $letter } ({ $fabric })
}

# What a step has joined: the first row, the second column; on the slant the first pair, or part.
joined-row = the { $number ->
    [1] first
    [2] second
    [3] third
    [4] fourth
   *[5] fifth
} row
joined-column = the { $number ->
    [1] first
    [2] second
    [3] third
    [4] fourth
   *[5] fifth
} column
joined-pair = the { $number ->
    [1] first
    [2] second
    [3] third
    [4] fourth
   *[5] fifth
} pair
joined-part = the { $number ->
    [1] first
    [2] second
    [3] third
    [4] fourth
   *[5] fifth
} part
# One of two alike parts that a step lays down: the first, the second.
joined-one = the { $number ->
    [1] first
    [2] second
    [3] third
    [4] fourth
   *[5] fifth
}

# What a step takes that an earlier one made, or that is cut; $piece is a noun in the number of $count.
take-from-step = { $name } (step { $step })
take-pieces = { $count } { $fabric } { $piece } { $size } { $unit }
take-strips = { $count } { $fabric } { $piece } { $size } { $unit } wide

# What is cut.
piece-square = { $count ->
    [one] square
   *[other] squares
}
piece-rectangle = { $count ->
    [one] rectangle
   *[other] rectangles
}
piece-strip = { $count ->
    [one] strip
   *[other] strips
}
piece-triangle = { $count ->
    [one] triangle
   *[other] triangles
}
piece-diamond = { $count ->
    [one] diamond
   *[other] diamonds
}
piece-parallelogram = { $count ->
    [one] parallelogram
   *[other] parallelograms
}
piece-trapezoid = { $count ->
    [one] trapezoid
   *[other] trapezoids
}
piece-hexagon = { $count ->
    [one] hexagon
   *[other] hexagons
}
piece-octagon = { $count ->
    [one] octagon
   *[other] octagons
}
piece-template = { $count ->
    [one] piece
   *[other] pieces
}
