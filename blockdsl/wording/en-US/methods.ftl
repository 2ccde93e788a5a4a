# The steps of units that a method makes, as they stand on a block's sheet.

method-take = Take { $pieces }.
method-take-each = For each, take { $pieces }.
method-take-pair = For each pair of squares, take { $pieces }.
method-take-set = For each set of squares, take { $pieces }.

# What is cut, by its form: nouns, asked with $count, $article and $case.
form-square = { $count ->
    [one] square
   *[other] squares
}
form-rectangle = { $count ->
    [one] rectangle
   *[other] rectangles
}
form-strip = { $count ->
    [one] strip
   *[other] strips
}
form-triangle = { $count ->
    [one] triangle
   *[other] triangles
}
form-diamond = { $count ->
    [one] diamond
   *[other] diamonds
}
form-parallelogram = { $count ->
    [one] parallelogram
   *[other] parallelograms
}
form-trapezoid = { $count ->
    [one] trapezoid
   *[other] trapezoids
}
form-hexagon = { $count ->
    [one] hexagon
   *[other] hexagons
}
form-octagon = { $count ->
    [one] octagon
   *[other] octagons
}
form-template = { $count ->
    [one] piece by template
   *[other] pieces by template
}

# A piece told from others by its letter or fabric, $name: the Lantern square, a C triangle.
called-square = { $name } square
called-rectangle = { $name } rectangle
called-strip = { $name } strip
called-triangle = { $name } triangle
called-diamond = { $name } diamond
called-parallelogram = { $name } parallelogram
called-trapezoid = { $name } trapezoid
called-hexagon = { $name } hexagon
called-octagon = { $name } octagon
called-template = { $name } piece by template
take-piece = { $count } { $letter } { $form } ({ $fabric })

# What one batch gives, in the title: make 8, 2 from each pair of squares.
# How many are made, of how many squares or strip sets, and how many are left over.
method-made = { $mirrored ->
    [0] make { $count }
   *[other] make { $count } and { $mirrored } reversed
}{ $batch ->
    [pair] , { $gives } from each pair of squares
    [set] , { $gives } from each set of { $squares } squares
    [squares] { " " }from { $squares } squares
    [strips] { $sets ->
        [one] { " " }from 1 strip set
       *[other] { " " }from { $sets } strip sets
    }
   *[each] { "" }
}{ $spare ->
    [0] { "" }
   *[other] , { $spare } spare
}

method-mark-diagonal = On the wrong side of { $piece }, draw a line from corner to corner.
method-mark-both-diagonals = On the wrong side of { $piece }, draw both lines from corner to corner.
method-mark-two-diagonals = On the wrong side of { $first } and of { $second }, draw a line from corner to corner.
method-mark-each = On the wrong side of each { $letter }, draw a line from corner to corner.
method-mark-the = On the wrong side of { $letter }, draw a line from corner to corner.
method-mark-across-one = On the wrong side of one half-square triangle, draw a line from corner to corner, across the seam.
method-mark-across-each = On the wrong side of each half-square triangle, draw a line from corner to corner, across the seam.
method-mark-across = On the wrong side of each half-square triangle of { $piece }, draw a line from corner to corner, across the seam.

method-place-pair = Place it on { $piece }, right sides together, edges even, and pin.
method-place-pairs = Place { $first } on { $first_under } and { $second } on { $second_under }, right sides together, edges even, and pin.
method-cross-halves = Place it on the other, right sides together, edges even, { $first } on { $second }.
method-cross-pairs = Place each on one of { $under }, right sides together, edges even, { $first } on { $second }.
method-cross-with = Place each on { $piece }, right sides together, edges even, and pin.
method-place-two-corners = Place { $piece } on each of two opposite corners of { $base }, right sides together, edges even.
method-turn-in-one = Turn both so that their lines make one line across { $base }; pin.
method-place-square-corner = On each half, place { $piece } on the square corner of { $base }, right sides together, edges even.
method-turn-to-notch = Turn it so that its line runs into the notch between the other two { $pieces }; pin.

method-nest-seams = Nest the seams and pin.
method-match-seams = Match the seams and pin.
method-sew-both-sides = { $lines ->
    [one] Sew { $seam } from the line on both sides of it.
   *[other] Sew { $seam } from each line on both sides of it.
}
method-cut-on-line = { $lines ->
    [one] Cut on the line.
   *[other] Cut on the lines.
}
method-cut-quarters = Cut in half both ways through the middle, { $half } from the edges.
method-cut-outside = Cut { $seam } outside the seam.

method-press-toward = { $seams ->
    [1] Press the seam { -toward } { $piece }.
    [2] Press both seams { -toward } { $piece }.
   *[other] Press all seams { -toward } { $piece }.
}
method-press-away = { $seams ->
    [1] Press the seam away from { $piece }.
    [2] Press both seams away from { $piece }.
   *[other] Press all seams away from { $piece }.
}
method-press-open = { $seams ->
    [1] Press the seam open.
    [2] Press both seams open.
   *[other] Press all seams open.
}
method-press-either = Press both seams to either side.
method-press-one-way = Press all seams to one side.
method-press-two-pairs = Press the seams of the first pair { -toward } { $first } and those of the second { -toward } { $second }.
method-press-over-corner = Press { $piece } over the corner.
method-press-over-other = Press { $piece } over the corner.

method-trim-ears = Trim the dog-ears.
method-trim-half-if-larger = If it is larger, lay the 45° line of the ruler on the seam and trim all four edges.
method-trim-quarters = Trim each to { $size }, with the seams from corner to corner.
method-trim-geese = Trim each to { $size }, with { $seam } beyond the point.
method-trim-evenly = Trim each to { $size }, as much on one side as on the other.

method-measure = { $size }
method-measure-point = { $size }, with { $seam } beyond the point
method-measure-points = { $size }, with { $seam } beyond each point
method-measure-across = { $length } across

# Of units that come out in two kinds: how they are told apart, and which to keep.
method-sort-both = { $landmark ->
    [point] Lay each with its point at the { $lies }.
   *[other] Lay each with { $landmark } at the { $lies }.
} Half have { $told } at the { $here }; the others, with { $told } at the { $there }, are reversed. Keep the two kinds apart.
method-sort-one = { $landmark ->
    [point] Lay each with its point at the { $lies }.
   *[other] Lay each with { $landmark } at the { $lies }.
} Keep those with { $told } at the { $here }; the others are reversed, and spare.

method-flip-lay-base = Lay { $base } with a long edge at the { $position }.
method-flip-place-end = Place { $piece } on its { $end } end, right sides together, edges even.
method-flip-turn = Turn { $piece } so that its line runs from { $start } to { $end }; pin.
method-flip-sew = Sew just outside the line, { -toward } the { $position }.
method-flip-other-end = Place { $piece } on the { $end } end in the same way, its line from { $start } to { $stop }.
method-flip-same-way = Sew, cut{ -serial } and press in the same way, { -toward } the { $position }.
method-flip-place-whole = Place it on { $base }, right sides together, edges even.
method-flip-lay-both = Turn both so that the line runs from { $start } to { $end }; pin.
method-flip-place-corner = Place { $piece } on the { $corner } corner of { $base }, right sides together, edges even.
method-flip-next-corner = Place { $piece } on the { $corner } corner in the same way, its line from { $start } to { $end }. Sew, cut{ -serial } and press in the same way, { -toward } the { $corner }.
method-flip-rest = Flip { $piece } onto each of the other three corners in the same way, the opposite corner first, its line cutting off the corner.
method-flip-mirrored = { $count ->
    [one] Make the reversed one in the same way, left and right exchanged.
   *[other] Make the reversed ones in the same way, left and right exchanged.
}

# Strip sets.
method-take-strip-set = { $kind ->
    [one] Take { $pieces }, { $size }.
    [first] For each set but the last, take { $pieces }, { $size }.
   *[each] For each set, take { $pieces }, { $size }.
}
method-take-last-set = For the last set, take the same strips, { $size }.
method-set-two = Sew { $first } to the top edge of { $base }, right sides together.
method-set-three = Sew { $first } to the top edge of { $base }, right sides together. Sew { $last } to its bottom edge, starting at the opposite end.
method-set-sides = Sew { $piece } to each long edge of { $base }, right sides together, starting the second seam at the opposite end.
method-set-many = Sew them together from top to bottom, right sides together, starting each seam at the opposite end: { $pieces }.
method-press-side = { $seams ->
    [1] Press the seam { -toward } the { $position }.
    [2] Press both seams { -toward } the { $position }.
   *[other] Press all seams { -toward } the { $position }.
}
method-trim-set = Trim the set to { $length } across, the same amount off each long edge.
method-trim-joined = Trim { $count ->
    [one] it
   *[other] each
} to { $size }, the same amount off opposite edges.
method-set-cut = { $sets ->
    [one] Square up one end.
   *[other] Square up one end of each set.
} { $segments ->
    [one] Cut 1 segment { $width } wide
   *[other] Cut { $segments } segments { $width } wide
}{ $sets ->
    [one] .
   *[other] { " " }from each{ $last ->
        [0] .
       *[other] , { $last } from the last.
    }
}
method-set-square-again = { $times ->
    [one] Square up again after the third.
   *[other] Square up again after every third.
}
method-segments = { $set ->
    [0] { $count } segments
   *[other] { $count } segments of set { $set }
}
method-segments-of-two = { $first ->
    [one] 1 segment of set { $one }
   *[other] { $first } segments of set { $one }
} and { $second ->
    [one] 1 segment of set { $other }
   *[other] { $second } segments of set { $other }
}
method-lay-two = Lay the first with { $first } at the { $position }. Lay the second with { $second } at the { $position }.
method-lay-turned = Lay them one below the other, { $first } and { $second } at the { $position } in turn.
method-sew-second-below = Sew the second to the bottom edge of the first, { $meet ->
    [match] matching
   *[nest] nesting
} the seams.
method-sew-rows = Sew them together from top to bottom, { $meet ->
    [match] matching
   *[nest] nesting
} the seams.
method-sew-one-to-other = Sew the segment of set { $one } to a long edge of the segment of set { $other }, { $meet ->
    [match] matching
   *[nest] nesting
} the seams.
method-sew-two-to-other = Sew a segment of set { $one } to each long edge of the segment of set { $other }, { $meet ->
    [match] matching
   *[nest] nesting
} the seams.
method-sew-sets-in-turn = Sew them together from top to bottom, { $meet ->
    [match] matching
   *[nest] nesting
} the seams: { $sets }.
method-press-toward-second = Press the seam { -toward } the second.
method-press-toward-set = Press the seam { -toward } set { $set }.
method-press-away-from-set = Press both seams away from set { $set }.

# Stars of strip sets.
method-star-set = Sew them together from top to bottom, right sides together: { $pieces }. Start each strip { $step } to the right of the end of the strip above it, so that the ends step down at 45°.
method-star-cut = Lay the 45° line of the ruler on a seam and cut off the stepped end at the left. { $segments ->
    [one] Cut 1 segment { $width } wide
   *[other] Cut { $segments } segments { $width } wide
}{ $sets ->
    [one] { "" }
   *[other] { " " }from each set{ $last ->
        [0] { "" }
       *[other] , { $last } from the last
    }
}, parallel to that cut.
method-star-again = Lay the 45° line on a seam again after every third.
method-star-take-segments = For each, take { $segments }.
method-star-segment = 1 segment of set { $set }
method-star-lay-rows = Lay them side by side in the order of their sets, each with the first strip of its set at the top, { $piece } of set { $set } at a sharp corner of the large diamond.
method-star-sew-rows = { $rows ->
    [2] Place the second on the first, right sides together, long edges even, so that their seams cross { $seam } from the edge; pin there. Sew the long edge.
   *[other] Place each on the one before it, right sides together, long edges even, so that their seams cross { $seam } from the edge; pin there. Sew the long edges.
}
method-star-triangles = { $squares ->
    [one] Cut { $piece } twice from corner to corner: 4 triangles.
   *[other] Cut each { $piece } twice from corner to corner: { $count } triangles.
}
method-star-dots = On the wrong side of each large diamond, triangle{ -serial } and corner square, mark a dot { $seam } from both edges at each corner.
method-star-place-pair = For each, take 2 large diamonds. Place one on the other, right sides together, all edges even, { $piece } of set { $set } at the bottom.
method-star-sew-pair = Match the seams and pin. Sew the lower right edge from the bottom point to the dot at its upper end; backstitch.
method-star-press-pair = Press the seam of every pair to the same side.
method-star-press-around = Press the seam the same way around as those of the pairs.
method-star-press-diamonds = { $seams ->
    [2] Press both seams { -toward } the large diamonds.
   *[other] Press all four seams { -toward } the large diamonds.
}
method-star-take-quarter = For each, take 1 pair and 1 { $piece } triangle. Lay the pair with its sewn point at the bottom.
method-star-set-triangle = Place { $piece } on the right large diamond, right sides together, its square corner at the dot where the seam stops, a short edge along the free edge of the large diamond. Sew from that dot to the outer end.
method-star-swing = Swing the other short edge of { $piece } to the free edge of the left large diamond. Sew from that dot to the outer end.
method-star-take-half = For each, take 2 quarters and 1 { $piece } square.
method-star-lay-quarters = Lay the first with { $piece } at the top. Lay the second with { $piece } at the right.
method-star-sew-half = Place the second on the first, right sides together, the free edge of its upper large diamond on the free edge of the right large diamond of the first. Match the seams and pin. Sew from the { -center } point to the outer dot; backstitch.
method-star-set-square = Set { $piece } into the V at the { -upper-right }, as { $other } in step { $number }.
method-star-set-squares = Set { $piece } squares into the two open corners, as { $other } in step { $number }.
method-star-take-halves = Take 2 halves and 2 { $piece } squares.
method-star-take-halves-each = For each, take 2 halves and 2 { $piece } squares.
method-star-join = Place one half on the other, right sides together, long edges even. Match the seams at the { -center } and pin. Sew from outer dot to outer dot; backstitch at both. From the { -center } outward, press the seam to one side, and fan the seams open at the { -center }.
method-star-join-open = Place one half on the other, right sides together, long edges even. Match the seams at the { -center } and pin. Sew from outer dot to outer dot; backstitch at both. Press the seam open.
method-star-across-both = { $length } across, between both pairs of edges
method-star-between-dots = { $length } between the side dots
method-star-center-to-top = { $length } from the bottom dot to the top edge
method-star-center-to-edges = { $length } from the { -center } dot to each outer edge

# Where an earlier step has taught the same.
method-again = Sew them as in step { $number }.
method-again-pair = { $press ->
    [open] Sew them as in step { $number }; draw the line on { $marked }.
   *[side] Sew them as in step { $number }; draw the line on { $marked } and press { -toward } { $toward }.
}
method-again-geese = { $press ->
    [open] Sew them as in step { $number }.
   *[side] Sew them as in step { $number }, and press { -toward } { $toward }.
}
method-again-flip-geese = { $same ->
    [yes] Sew them as in step { $number }.
   *[no] Sew them as in step { $number }, with { $first } on the left end and { $second } on the right end.
}
method-again-flip-half = Sew them as in step { $number }, with { $upper } on { $base }.
