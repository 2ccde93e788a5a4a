# Sentences of the steps that put a quilt together and finish it.

# --- names -----------------------------------------------------------------------------------------

quilt-block =
    { $count ->
        [one] block
       *[other] blocks
    }
quilt-block-named =
    { $name } { $count ->
        [one] block
       *[other] blocks
    }
quilt-block-colored =
    { $name } { $count ->
        [one] block
       *[other] blocks
    } in { $colorway }
quilt-half-upper =
    upper half { $count ->
        [one] block
       *[other] blocks
    }
quilt-half-lower =
    lower half { $count ->
        [one] block
       *[other] blocks
    }

quilt-plain-square =
    plain { $count ->
        [one] square
       *[other] squares
    }
quilt-half-block =
    half { $count ->
        [one] block
       *[other] blocks
    }
quilt-side-triangle =
    side { $count ->
        [one] triangle
       *[other] triangles
    }
quilt-corner-triangle =
    corner { $count ->
        [one] triangle
       *[other] triangles
    }
quilt-sash =
    { $count ->
        [one] sash
       *[other] sashes
    }
quilt-long-sash =
    long { $count ->
        [one] sash
       *[other] sashes
    }
quilt-short-sash =
    short { $count ->
        [one] sash
       *[other] sashes
    }
quilt-sash-strip =
    sashing { $count ->
        [one] strip
       *[other] strips
    }
quilt-post =
    { $count ->
        [one] cornerstone
       *[other] cornerstones
    }
quilt-edge-post =
    half { $count ->
        [one] cornerstone
       *[other] cornerstones
    }
quilt-strip =
    plain { $count ->
        [one] strip
       *[other] strips
    }
quilt-border =
    { $count ->
        [one] strip
       *[other] strips
    }
quilt-border-corner =
    corner { $count ->
        [one] square
       *[other] squares
    }

quilt-center = quilt center
quilt-center-block = center block
quilt-top = quilt top
quilt-rows-row =
    { $count ->
        [one] row
       *[other] rows
    } { $numbers }
quilt-rows-column =
    { $count ->
        [one] column
       *[other] columns
    } { $numbers }
quilt-rows-diagonal =
    { $count ->
        [one] diagonal row
       *[other] diagonal rows
    } { $numbers }
quilt-rows-strips =
    sashing { $count ->
        [one] strip
       *[other] strips
    }
quilt-rows-strips-numbered =
    sashing { $count ->
        [one] strip
       *[other] strips
    } { $numbers }
quilt-numbers-through = { $first } through { $last }
quilt-ring-border = { $ordinal } border
quilt-ring-round = { $ordinal } round
quilt-ring-only-border = border
quilt-ring-only-round = round
quilt-batting = batting
quilt-backing-wrong = backing, wrong side up
quilt-top-right = top, right side up
quilt-corners-mitered = mitered corners
quilt-corners-squares = corner squares
quilt-backing = backing
quilt-layers = layers
quilt-quilting = quilting
quilt-sleeve = hanging sleeve
quilt-binding = binding
quilt-label = label
ordinal = { $number ->
    [1] first
    [2] second
    [3] third
    [4] fourth
    [5] fifth
    [6] sixth
    [7] seventh
    [8] eighth
    [9] ninth
    [10] tenth
   *[other] { $number }th
  }

# --- places ----------------------------------------------------------------------------------------

center-top = above
center-bottom = below
center-left = to the left of
center-right = to the right of
center-upper-left = to the { -upper-left } of
center-upper-right = to the { -upper-right } of
center-lower-left = to the { -lower-left } of
center-lower-right = to the { -lower-right } of

# How a block lies. `with` begins what follows the block's name.
landmark-at = { $fabric } at the { $places }
landmark-middle =
    { $fabric } in the middle of its { $places } { $count ->
        [one] edge
       *[other] edges
    }
landmark-center = { $fabric } { $places } its center
landmark-mark = its TOP mark at the { $places }
quilt-square-corner = square corner at the { $place }
quilt-part-lies = { $part } ({ $how })

# --- rows ------------------------------------------------------------------------------------------

quilt-take = Take { $list }.
quilt-take-each = For each, take { $list }.
quilt-note-top = When a { $block } is made, pin a TOP mark to its top edge.
quilt-lay-each = Lay each { $block } with { $how }.
quilt-lay-one = Lay the { $block } with { $how }.
quilt-lay-as-in = Lay each { $block } as in step { $step }.
quilt-diagonal-ends = The left end of a diagonal row is its lower left end in the picture of the quilt.
quilt-sew-across = Sew them together from left to right{ quilt-right-sides }: { $groups }.
quilt-sew-down = Sew them together from top to bottom{ quilt-right-sides }: { $groups }.
quilt-sew-along = Sew them together end to end{ quilt-right-sides }: { $groups }.
quilt-sew-across-all = Sew them together from left to right{ quilt-right-sides }.
quilt-sew-down-all = Sew them together from top to bottom{ quilt-right-sides }.
quilt-sew-along-all = Sew them together end to end{ quilt-right-sides }.
quilt-right-sides = { $sides ->
    [yes] , right sides together
   *[no] { "" }
}
quilt-group-next = { $before }, then { $next }
quilt-group-many = ({ $parts })
quilt-group-times =
    { $parts } { $times ->
        [2] twice
       *[other] { $times } times
    }
quilt-bias-edges = The short edges of the triangles are on the bias: pin them, and do not stretch them.
quilt-press-open = Press all seams open.
quilt-press-sashes = Press all seams toward the sashes.
quilt-press-strips = Press all seams toward the strips.
quilt-press-plain-squares = Press all seams toward the plain squares.
quilt-press-ends-left = Press all seams toward the left.
quilt-press-ends-right = Press all seams toward the right.
quilt-press-ends-top = Press all seams toward the top.
quilt-press-ends-bottom = Press all seams toward the bottom.
quilt-press-ends-both = Press the seams of { $first } toward the { $one } and those of { $second } toward the { $other }.

quilt-measure-high = { $length } high

# --- joining ---------------------------------------------------------------------------------------

quilt-trim-rows = Measure the rows from end to end, about { $length }. Trim { $count } { $strips } ({ $fabric }) to that length.
quilt-trim-columns = Measure the columns from end to end, about { $length }. Trim { $count } { $strips } ({ $fabric }) to that length.
quilt-trim-marks = Mark on both long edges of each strip where the blocks begin and end.
quilt-take-rows = Take { $rows }.
quilt-take-rows-strips = Take { $rows }, and { $count } { $strips }.
quilt-arrange-down = Arrange them from top to bottom, { $strip } between each two rows{ $outer ->
    [yes] {" "}and one at the top and the bottom
   *[no] { "" }
}.
quilt-arrange-across = Arrange them from left to right, { $strip } between each two columns{ $outer ->
    [yes] {" "}and one at the left and the right
   *[no] { "" }
}.
quilt-pin-cornerstones = Pin the cornerstones to the ends of the sashes, { $meeting } the seams.
quilt-pin-cornerstones-listed = Pin the cornerstones to the ends of the long sashes, { $meeting } the seams: { $list }.
quilt-cornerstones-of =
    { $count ->
        [one] cornerstone
       *[other] cornerstones
    } { $numbers } to { $columns }
quilt-cornerstones-and = { $first }, and { $last }
quilt-piece-of-fabric = { $name } ({ $fabric })
quilt-piece-of-size = { $name } { $size }
quilt-nesting = nesting
quilt-matching = matching
quilt-sew-long = Sew the long edges.
quilt-sew-long-marks = Pin with the marks at the seams of the blocks, and sew the long edges.
quilt-join-down = Sew them together from top to bottom, { $meeting } the seams.
quilt-join-across = Sew them together from left to right, { $meeting } the seams.
quilt-join-halfway = Sew them together from left to right, ends even, the middle of each block at the ends of the blocks beside it.
quilt-long-open = Press all long seams open.
quilt-long-strips = Press all long seams toward the sashing strips.
quilt-long-plain = Press all long seams toward the strips.
quilt-long-bottom = Press all long seams toward the bottom.
quilt-long-right = Press all long seams toward the right.

quilt-point-down = Arrange the rows from top to bottom, row 1 at the top.
quilt-point-strips = Lay sashing strip 1 at the top, strip 2 between rows 1 and 2, and so on; the last lies at the bottom.
quilt-beyond-both =
    { $rows } { $count ->
        [one] extends
       *[other] each extend
    } one block beyond the row above at both ends.
quilt-beyond-left =
    { $rows } { $count ->
        [one] begins
       *[other] each begin
    } one block beyond the row above at the left and { $count ->
        [one] ends
       *[other] end
    } one block short of it at the right.
quilt-beyond-right =
    { $rows } { $count ->
        [one] begins
       *[other] each begin
    } one block inside the row above at the left and { $count ->
        [one] extends
       *[other] extend
    } one block beyond it at the right.
quilt-beyond-none =
    { $rows } { $count ->
        [one] ends
       *[other] each end
    } one block short of the row above at both ends.
quilt-beyond-row = row { $number }
quilt-corners-turn = Turn the { $center } so that row 1 is at the upper left.
quilt-corners-crease = Crease the middle of the long edge of each of 4 corner triangles.
quilt-corners-sew = Sew a corner triangle by its long edge to each of the four corners, the crease at the middle of the edge. The short edges of the triangles become the edges of the { $center }.
quilt-corners-block = { $lies ->
    [yes] Lay the block with { $how }, then turn it so that its top edge is at the upper left.
   *[no] Lay the block on point.
} Sew 2 corner triangles by their long edges to the upper left and lower right edges, creases at the middle.
quilt-corners-block-rest = Sew the other 2 corner triangles by their long edges to the upper right and lower left edges in the same way.
quilt-corners-press =
    Press { $count ->
        [two] both seams
       *[other] the seams
    } toward the corner triangles.
quilt-corners-open =
    Press { $count ->
        [two] both seams
       *[other] the seams
    } open.
quilt-square-up-sashes = Trim the edges { $seam } outside the points of the sashes, corners square.
quilt-square-up = Trim the edges { $seam } outside the points of the blocks, corners square.

# --- borders ---------------------------------------------------------------------------------------

quilt-border-measure-down = Measure the { $what } through the middle from top to bottom, about { $length }.
quilt-border-measure-across = Measure the { $what } through the middle from side to side, about { $length }.
quilt-border-again-down = Measure through the middle from top to bottom, { $ring } included, about { $length }.
quilt-border-again-across = Measure through the middle from side to side, { $ring } included, about { $length }.
quilt-border-trim = Trim { $count } strips ({ $fabric }) to that length.
quilt-border-mark = Mark the middle and quarters of each strip and of each { $sides } edge.
quilt-border-sew-sides = Sew a strip to the left edge and a strip to the right edge, marks matched.
quilt-border-sew-ends = Sew a strip to the top edge and a strip to the bottom edge, marks matched.
quilt-border-sew-sides-same = Sew them to the left edge and the right edge in the same way.
quilt-border-sew-ends-same = Sew them to the top edge and the bottom edge in the same way.
quilt-border-press = Press both seams toward the { $ring }.
quilt-border-press-open = Press both seams open.
quilt-side = side
quilt-top-and-bottom = top and bottom
quilt-border-corners = Sew { $corner } ({ $fabric }) to each end of the other 2 strips.
quilt-border-corners-press = Press the seams toward the strips.
quilt-border-corners-open = Press the seams open.
quilt-border-corners-ends = Sew these strips to the top edge and the bottom edge, { $meeting } the seams of the corner squares.
quilt-border-corners-sides = Sew these strips to the left edge and the right edge, { $meeting } the seams of the corner squares.

quilt-mitre-take = Take 2 strips ({ $fabric }) { $width } × { $sides } for the sides and 2 strips ({ $fabric }) { $width } × { $ends } for the top and bottom.
quilt-mitre-take-four = Take 4 strips ({ $fabric }) { $width } × { $sides }.
quilt-mitre-mark = Mark the middle of each strip and of each edge of the { $what }.
quilt-mitre-pin = Pin the long strips to the left and right edges and the short strips to the top and bottom edges, right sides together, middles matched.
quilt-mitre-pin-wide = Pin the short strips to the left and right edges and the long strips to the top and bottom edges, right sides together, middles matched.
quilt-mitre-pin-four = Pin a strip to each edge, right sides together, middles matched.
quilt-mitre-beyond = Both ends extend equally, about { $length }.
quilt-mitre-sew = Sew each strip from { $seam } inside one corner to { $seam } inside the next; backstitch at both.
quilt-mitre-press = Press the seams toward the { $ring }.
quilt-mitre-press-open = Press the seams open.
quilt-mitre-fold = At each corner, fold the top diagonally, right sides together, so that the two strips lie edge to edge.
quilt-mitre-line = From the end of the seams, draw a line to the outer edge along the fold.
quilt-mitre-stitch = Sew on the line from the inner corner outward.
quilt-mitre-check = Check that the corner lies flat.
quilt-mitre-trim = Trim the seam to { $seam }. Press the seam open.

quilt-units-take = Take { $list }.
quilt-units-lay = Lay each { $unit } with { $how }: its top is the outer edge of the { $ring }.
quilt-units-alike = The top of each { $unit } is the outer edge of the { $ring }.
quilt-units-sew = Sew them together from left to right: { $sides } in each of 2 strips for the sides, { $ends } in each of 2 strips for the top and bottom.
quilt-units-sew-alike =
    { $sides ->
        [1] Each of them is a strip by itself.
       *[other] Sew them together from left to right: { $sides } in each of 4 strips.
    }
quilt-units-press = Press all seams to one side.
quilt-units-corners =
    Sew { $corner } ({ $fabric }) to each end of the strips for { $sides ->
        [yes] the top and bottom
       *[no] the sides
    }.
quilt-units-corners-press = Press the seams toward the corner squares.
quilt-units-check = Measure the { $what } through the middle, about { $width } from side to side and { $height } from top to bottom. Compare each strip with its edge; if they differ, take in or let out a few of its seams by a thread.
quilt-units-sew-sides = Sew a strip to the left edge and a strip to the right edge, the tops of the { $units } outward.
quilt-units-sew-ends = Sew a strip to the top edge and a strip to the bottom edge, the tops of the { $units } outward.
quilt-units-toward = Press the seams toward the { $what }.
quilt-units-toward-open = Press the seams open.

# --- finishing -------------------------------------------------------------------------------------

quilt-backing-cut =
    Cut { $count ->
        [one] 1 length
       *[other] { $count } lengths
    } of { $length } from { $fabric }, the whole width of the fabric, and trim off the selvages.
quilt-backing-join-upright = Sew them together by their long edges with { $join } seams, which run up and down the quilt. Press the seams open.
quilt-backing-join-level = Sew them together by their long edges with { $join } seams, which run across the quilt. Press the seams open.
quilt-backing-trim = Trim the backing to at least { $size }: { $overage } more than the top, raw edge to raw edge, on each side.
quilt-backing-fewer = A { $overage } overage needs one length less.

quilt-layers-press = Press the top and the backing, and snip all loose threads.
quilt-layers-lay = Lay the backing on the floor or a table, wrong side up, and tape its edges so that it is flat but not stretched.
quilt-layers-batting = Lay the batting{ $sized ->
    [yes] , { $size },
   *[no] { "" }
} on it and smooth it from the middle, then the top, right side up, its seams straight.
# A hand's width: common practice, no source.
quilt-layers-baste = Baste the three layers together with rows of stitches or with safety pins, a hand's width apart, from the middle outward. Count pins in and out; keep them away from children and pets.

quilt-quilting-quilt = Quilt by hand or machine as you like, from the middle outward, so that no fold is sewn in. Check the batting package for how far apart the lines can be.
quilt-quilting-trim = Trim batting and backing even with the top, corners square. Cut away from yourself, and close the blade when you put the cutter down.

quilt-sleeve-join = Sew { $count } strips { $width } wide together end to end.
quilt-sleeve-cut = Cut a strip { $size } ({ $fabric }).
quilt-sleeve-cut-joined = Trim the strip to { $size } ({ $fabric }).
quilt-sleeve-fold = Hem both short ends. Fold it lengthwise, wrong sides together, and press.
quilt-sleeve-baste = Center it on the back of the quilt, its raw edges even with the top edge, and baste it { $seam } from the edge. The binding will cover the raw edges.
quilt-sleeve-hang = Push the folded edge of the sleeve up a little, to make room for the rod, and sew it down by hand through backing and batting only.

quilt-binding-strips =
    Cut { $count } { $count ->
        [one] strip
       *[other] strips
    } ({ $fabric }) { $width } wide, selvage to selvage.
quilt-binding-join = Join them with diagonal seams, trim to { $seam }, and press the seams open.
quilt-binding-squares =
    { $count ->
        [one] Cut 1 square ({ $fabric }) { $side }. Cut it
       *[other] Cut { $count } squares ({ $fabric }) { $side }. Cut each
    } in half from corner to corner. Sew the two triangles together by short edges, right sides together, to make a slanted piece. Press the seam open.
quilt-binding-tube = On the wrong side, draw lines { $width } apart, parallel to the long bias edges. Bring the other two edges together to make a tube, right sides together, one edge shifted by one line; sew with a { $seam } seam, and press it open. Cut along the line, around and around the tube.
quilt-binding-join-bias = Join the strips with diagonal seams, and press the seams open.
quilt-binding-measures = The strip is about { $length } long; the edge of the quilt takes { $around }.
quilt-binding-fold = Fold it lengthwise, wrong sides together, and press.
quilt-binding-start = Starting in the middle of a side and leaving a tail of { $tail }, place the raw edges of the strip on the edge of the top. Sew { $seam } from the edge.
quilt-binding-corner = Stop { $seam } before each corner; backstitch. Fold the strip straight up, then straight down, the fold even with the edge just sewn. Sew the next side, starting at the fold.
quilt-binding-close = Join the two ends with a diagonal seam and sew the rest.
quilt-binding-turn = Turn the fold to the back and sew it down over the seam.
quilt-binding-around = { $around } around

quilt-label-sew = Sew a label to the back: the quilt's name, your name, the year{ -serial } and how to wash it.
