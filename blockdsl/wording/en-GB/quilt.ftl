# Sentences of the steps that put a quilt together and finish it, where British English differs.

quilt-block-colored =
    { $name } { $count ->
        [one] block
       *[other] blocks
    } in { $colorway }
quilt-post =
    { $count ->
        [one] post
       *[other] posts
    }
quilt-edge-post =
    half { $count ->
        [one] post
       *[other] posts
    }
quilt-center = quilt centre
quilt-corners-mitered = mitred corners
quilt-batting = wadding
quilt-center-block = centre block
quilt-numbers-through = { $first } to { $last }
landmark-center = { $fabric } { $places } its centre
quilt-diagonal-ends = The left end of a diagonal row is its bottom left end in the picture of the quilt.
quilt-press-sashes = Press all seams towards the sashes.
quilt-press-strips = Press all seams towards the strips.
quilt-press-plain-squares = Press all seams towards the plain squares.
quilt-press-ends-left = Press all seams towards the left.
quilt-press-ends-right = Press all seams towards the right.
quilt-press-ends-top = Press all seams towards the top.
quilt-press-ends-bottom = Press all seams towards the bottom.
quilt-press-ends-both = Press the seams of { $first } towards the { $one } and those of { $second } towards the { $other }.
quilt-pin-cornerstones = Pin the posts to the ends of the sashes, { $meeting } the seams.
quilt-pin-cornerstones-listed = Pin the posts to the ends of the long sashes, { $meeting } the seams: { $list }.
quilt-cornerstones-of =
    { $count ->
        [one] post
       *[other] posts
    } { $numbers } to { $columns }
quilt-long-strips = Press all long seams towards the sashing strips.
quilt-long-plain = Press all long seams towards the strips.
quilt-long-bottom = Press all long seams towards the bottom.
quilt-long-right = Press all long seams towards the right.
quilt-corners-turn = Turn the { $center } so that row 1 is at the top left.
quilt-corners-block = { $lies ->
    [yes] Lay the block with { $how }, then turn it so that its top edge is at the top left.
   *[no] Lay the block on point.
} Sew 2 corner triangles by their long edges to the top left and bottom right edges, creases at the middle.
quilt-corners-block-rest = Sew the other 2 corner triangles by their long edges to the top right and bottom left edges in the same way.
quilt-corners-press =
    Press { $count ->
        [two] both seams
       *[other] the seams
    } towards the corner triangles.
quilt-border-press = Press both seams towards the { $ring }.
quilt-border-corners-press = Press the seams towards the strips.
quilt-mitre-press = Press the seams towards the { $ring }.
quilt-mitre-sew = Sew each strip from { $seam } inside one corner to { $seam } inside the next; finish with a few backstitches at both.
quilt-units-corners-press = Press the seams towards the corner squares.
quilt-units-toward = Press the seams towards the { $what }.
quilt-backing-cut =
    Cut { $count ->
        [one] 1 length
       *[other] { $count } lengths
    } of { $length } from { $fabric }, the whole width of the fabric, and trim off the selvedges.
quilt-layers-batting = Lay the wadding{ $sized ->
    [yes] , { $size },
   *[no] { "" }
} on it and smooth it from the middle, then the top, right side up, its seams straight.
quilt-layers-baste = Tack the three layers together with rows of stitches or with safety pins, a hand's width apart, from the middle outward. Count pins in and out; keep them away from children and pets.
quilt-quilting-quilt = Quilt by hand or machine as you like, from the middle outward, so that no fold is sewn in. Check the wadding packet for how far apart the lines can be.
quilt-quilting-trim = Trim wadding and backing even with the top, corners square. Cut away from yourself, and close the blade when you put the cutter down.
quilt-sleeve-baste = Centre it on the back of the quilt, its raw edges even with the top edge, and tack it { $seam } from the edge. The binding will cover the raw edges.
quilt-sleeve-hang = Push the folded edge of the sleeve up a little, to make room for the rod, and sew it down by hand through backing and wadding only.
quilt-binding-strips =
    Cut { $count } { $count ->
        [one] strip
       *[other] strips
    } ({ $fabric }) { $width } wide, selvedge to selvedge.
quilt-binding-corner = Stop { $seam } before each corner; finish with a few backstitches. Fold the strip straight up, then straight down, the fold even with the edge just sewn. Sew the next side, starting at the fold.
possible-posts = with sashing and posts
