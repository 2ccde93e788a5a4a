# The pattern sheet, its tables and pictures, and the same on sites and in books.

# --- labels ----------------------------------------------------------------------------------------

sheet-finished = Finished
sheet-unfinished = Unfinished
sheet-grid = Grid, finished
sheet-made-of = Made of
sheet-level = Level
sheet-level-time = Level and time
sheet-time = Time
# The address is one of the web, as it is printed.
sheet-qr = QR code of { $address }
sheet-photos = Pictures
sheet-see = On the web
sheet-notes = Notes
sheet-source = Source
sheet-applique = Appliqué
sheet-sizes = About the sizes
sheet-care = Take care
sheet-before-cutting = Before you cut
sheet-letters = Patches by letter
sheet-in-color = In { -color }
sheet-steps = Steps
sheet-continued = { $title }, continued
sheet-family = Family: { $family }.
sheet-in-colorway = In the { -colorway } { $name }
sheet-by-maker = by { $maker }

# How many there are.
count-patches = { $count ->
    [one] { $number } patch
   *[other] { $number } patches
}
count-fabrics = { $count ->
    [one] { $number } fabric
   *[other] { $number } fabrics
}
count-pieces = { $count ->
    [one] { $number } piece
   *[other] { $number } pieces
}
count-blocks = { $count ->
    [one] { $number } block
   *[other] { $number } blocks
}
count-patchwork-blocks = { $count ->
    [one] { $number } patchwork block
   *[other] { $number } patchwork blocks
}
count-quilts = { $count ->
    [one] { $number } quilt
   *[other] { $number } quilts
}
count-strips = { $count ->
    [one] { $number } strip
   *[other] { $number } strips
}
count-lengths = { $count ->
    [one] { $number } length
   *[other] { $number } lengths
}
count-borders = { $count ->
    [0] no border
    [one] { $number } border
   *[other] { $number } borders
}
count-rows = { $count ->
    [one] { $number } row
   *[other] { $number } rows
}
count-prints = { $count ->
    [one] { $number } print
   *[other] { $number } prints
}
count-fat-quarters = { $count ->
    [one] { $number } fat quarter
   *[other] { $number } fat quarters
}
count-widths = { $count ->
    [one] { $number } width
   *[other] { $number } widths
}
count-spare = { $number } spare

value-light = light
value-medium = medium
value-dark = dark

# --- measures and grid -----------------------------------------------------------------------------

measure-finished = { $size } finished
measure-unfinished = { $size } unfinished
measure-millimeters = { $length } mm
grid-squares = { $columns } × { $rows } squares of { $size }
grid-rectangles = { $columns } × { $rows } rectangles of { $size }
grid-columns-range = { $count } columns { $least } to { $most } { $unit } wide
grid-rows-range = { $count } rows { $least } to { $most } { $unit } high
grid-columns = { $count ->
    [one] column { $sizes } { $unit }
   *[other] columns { $sizes } { $unit }
}
grid-rows = { $count ->
    [one] row { $sizes } { $unit }
   *[other] rows { $sizes } { $unit }
}

# Families of blocks by the grid that they are drawn on; what the maker calls a family stays as she wrote it.
family-four-patch = four-patch
family-five-patch = five-patch
family-seven-patch = seven-patch
family-nine-patch = nine-patch
family-one-patch = one-patch
family-rounds = rounds
family-curved = curved
family-basket = basket
family-boat = boat
family-cross = cross
family-eight-point = eight-point
family-house = house
family-letter = letter
family-octagon = octagon
family-square = square
family-star = star
family-strips = strips
family-tree = tree
family-triangle = triangle
family-eight-point-star = eight-point star
family-one-patch-of-hexagons = one-patch of hexagons
family-one-patch-of-sixty-degree-triangles = one-patch of 60° triangles
family-one-patch-of-tumblers = one-patch of tumblers
family-eight-point-design = eight-point design
family-sixty-degree-design = 60° design
family-other = Other grids
family-oblong = oblong grid, { $across } × { $down }
family-uneven = uneven grid, { $across } × { $down } parts
family-grid = grid of { $across } × { $down }

# --- what the sizes mean ---------------------------------------------------------------------------

sizes-allowance = Cut sizes include { $seam } seam allowances and are rounded up to the next { $measure }. Finished sizes are those in the finished quilt, without seam allowances.
sizes-between-marks = Some finished sizes of this block fall between the marks of the ruler. Pieces are rounded up to the next mark, so units come out slightly oversized: trim each one to the size given before you join it.
sizes-metric = The usual metric rule adds { $half } cm for half-square and { $quarter } cm for quarter-square triangles. With a { $seam } cm seam that falls short by { $halfshort } mm and { $quartershort } mm, so the squares here are a little larger.
sizes-templates = Pieces marked “by template” are cut around the full-size templates; their sizes are the fabric each takes.

# Which edges of a letter lie on the bias; $edges lists the messages below.
bias-edges = Bias edges if cut as listed: { $edges }. Bias stretches: handle these edges gently, and press without sliding the iron.
bias-all = all edges of { $letters }
bias-long = { $count ->
    [one] the long edge of { $letters }
   *[other] the long edges of { $letters }
}
bias-short = { $count ->
    [one] the short edge of { $letters }
   *[other] the short edges of { $letters }
}
bias-some = { $count } of the { $of } edges of { $letters }
bias-outside = { $count ->
    [one] The outer edge of { $letters } is on the bias too: staystitch it inside the seam allowance before you handle the block.
   *[other] The outer edges of { $letters } are on the bias too: staystitch them inside the seam allowance before you handle the block.
}

care-cutter = Rotary cutter: close the blade when you put it down, and cut away from yourself. Keep children and pets away.
care-iron = Iron: keep hands and cord clear of the soleplate, and switch it off when you leave the table.
care-needles = Needles and pins: count them in and out, and keep your fingers clear of a moving needle.
care-tools = Follow the instructions that came with your tools and machines, and the rules where you live.

# --- appliqué --------------------------------------------------------------------------------------

applique-order = Sew and press the block first. Place the pieces on it in the order of their letters, starting with the bottom piece.
applique-turned = { $letters }: cut on the solid line of the template. Trace the dashed line on the right side of the fabric. Clip the allowance where the edge curves inward, turn { $width } under on the line, pin, and sew the fold down with small blind stitches. Leave edges flat where another piece covers them.
applique-turned-mixed = { $letters }: cut on the solid line of the template. Trace the dashed line on the right side of the fabric. Clip the allowance where the edge curves inward, turn the allowance under on the line, pin, and sew the fold down with small blind stitches. Leave edges flat where another piece covers them.
applique-raw = { $letters }: cut on the line; no edges are turned under. Hold each piece in place with fusible web or fabric glue, following the manufacturer's instructions, in fresh air and off your skin, and sew around the edges with a close zigzag or blanket stitch.
applique-care = Pins and needles: count them in and out. Sharp scissors: cut away from the hand holding the fabric.

# --- the cutting table -----------------------------------------------------------------------------

cutting = Cutting
cutting-sizes-in = sizes in inches, with seam allowance
cutting-sizes-cm = sizes in { -centimeters }, with seam allowance
cutting-to-cut = { $count ->
    [one] { $number } piece to cut
   *[other] { $number } pieces to cut
}
cutting-tick = { $count } { $piece } { $size }, { $fabric }
cutting-caption-in = Pieces for { $block }: sizes in inches, with seam allowance
cutting-caption-cm = Pieces for { $block }: sizes in { -centimeters }, with seam allowance
cutting-caption-at-in = Pieces for { $block }, { $finished } finished: sizes in inches, with seam allowance
cutting-caption-at-cm = Pieces for { $block }, { $finished } finished: sizes in { -centimeters }, with seam allowance
head-done = done
head-fabric = fabric
head-cut = cut
head-piece = piece
head-size = size
head-width = width
head-height = height
head-then = then
head-patch = patch
head-for = for
head-spare = spare
head-in-all = in all
head-cutter = cutter
head-in-place-of = in place of

# What is cut, in the cutting table; by template what no ruler cuts.
cut-by-template = by template

# What is done with a piece after it is cut.
then-corner-once = { $count ->
    [one] cut once corner to corner → { $number } triangle
   *[other] cut once corner to corner → { $number } triangles
}
then-corner-twice = { $count ->
    [one] cut twice corner to corner → { $number } triangle
   *[other] cut twice corner to corner → { $number } triangles
}
then-triangles = { $count ->
    [one] → { $number } triangle
   *[other] → { $number } triangles
}
then-patches = { $count ->
    [one] → { $number } patch
   *[other] → { $number } patches
}
then-segments = { $count ->
    [one] sewn into a set → { $number } segment
   *[other] sewn into a set → { $number } segments
}
then-units = { $count ->
    [one] for { $number } unit
   *[other] for { $number } units
}
then-octagon = cut as a square, then cut off all four corners at 45°
then-octagon-oblong = cut as a rectangle, then cut off all four corners at 45°
then-octagon-off = cut as a square, then cut off all four corners at 45°, { $off } from each corner along both edges
then-octagon-oblong-off = cut as a rectangle, then cut off all four corners at 45°, { $off } from each corner along both edges
then-areas = { $purpose } { $areas }

# Strips that pieces are cut from: how wide, at what angle, how far apart. "First" and "second measure" are those of a
# table that gives the lengths for several sizes.
strips-one = from a strip { $size } { $unit }
strips-several = from { $strips } strips { $width } { $unit } wide
strips-one-measure = from a strip as wide as the first measure
strips-several-measure = from { $strips } strips as wide as the first measure
strips-template = { $strips }, by template
strips-cut = { $strips }, { $cuts }
strips-one-layer = { $strips }, one layer, right side up
strips-at = cut at { $angle }°
strips-at-every = cut at { $angle }° every { $every }
strips-at-points = cut at { $angle }° every { $every }; then cut off both sharp points, { $across } apart
strips-end-one = one end cut at { $angle }°
strips-ends-both = both ends cut at { $angles }
strips-square-turn = cut square and at { $angle }° in turn
strips-square-turn-every = cut square and at { $angle }° in turn every { $every } along the longer edge
strips-turn = cut at { $angles }, turning the ruler each time
strips-turn-every = cut at { $angles } every { $every } along the longer edge, turning the ruler each time
strips-angle = { $angle }°
strips-angles = { $first }° and { $second }°
strips-second-measure = second measure

# How a piece lies, which way its print runs, and which way it is cut corner to corner. $lies is one of the first group.
lies-upright = print upright
lies-print-long = print up along the long side
lies-print-short = print up along the short side
lies-short-down = short side down, { $how }
lies-one-layer = one layer, right side up
lies-edge = for the edge of the block
lies-edge-and = for the edge of the block, { $lies }
lies-rising = { $lies }: cut once from { -lower-left } to { -upper-right }
lies-falling = { $lies }: cut once from { -upper-left } to { -lower-right }
lies-rising-opposite = { $lies }: cut once from { -lower-left } to { -upper-right } (the opposite way from { $letter })
lies-falling-opposite = { $lies }: cut once from { -upper-left } to { -lower-right } (the opposite way from { $letter })
lies-cut = { $lies } { $then }
lies-after = { $then }, { $lies }

# --- cuts at an angle ------------------------------------------------------------------------------

angle-title = Cuts at an angle
angle-aside = fabric right side up; dashed lines are cuts
angle-one-size = The measures in these pictures are for the { $size } block.
angle-layers = Where a picture says “one layer”, do not fold the fabric: the layer below would give the mirror image.
angle-ruler = Square off the end of the strip first, lay the ruler's angle line on its edge, and cut away from yourself.
angle-corners = Mark both edges this far from each corner, lay the ruler from mark to mark, and cut the corner off, away from yourself. All layers are cut alike.
angle-octagon = octagon, corners cut off
angle-rectangle = rectangle, cut once
angle-turned = { $piece }, each turned from the one before
angle-one-layer = { $what }, one layer
angle-edge = { $what }, for the edge of the block
angle-one-layer-edge = { $what }, one layer, for the edge of the block

# --- units -----------------------------------------------------------------------------------------

units-title = Units to make
units-title-size = Units to make, { $size }
units-aside = measure each one before you join it
units-make = Make { $count }
units-spare = , { $count } spare
units-finished = Finished { $size }
units-method = Method: { $method }
units-measure = Should measure { $size }
units-head-block = block
units-head-measure = should measure
units-head-finished = finished

# The ways of making, as they are named on pages.
method-cut-patches = traditional piecing
method-two-at-a-time = two at a time
method-four-at-a-time = four at a time
method-eight-at-a-time = eight at a time
method-stitch-and-flip = stitch and flip
method-strip-set = strip set
method-foundation = foundation
method-over-papers = over papers
method-applique = appliqué

methods-title = Methods compared
methods-aside = bold: the method used here
methods-head-method = Method
methods-head-cut = Cut
methods-head-waste = Fabric lost to seams and trimming, sq { $unit }
methods-head-seams = Seams
methods-unit = { $unit }, make { $count }
methods-spare = { $method } ({ $count } spare)
methods-cut = { $count } { $fabric } { $piece } { $size }
methods-cut-once = { $count } { $fabric } { $piece } { $size }, cut once
methods-cut-twice = { $count } { $fabric } { $piece } { $size }, cut twice

# --- the maker's cutters ---------------------------------------------------------------------------

cutters-title = Your cutters
cutters-aside = what each one cuts, by the letters in the cutting table
cutters-none = None of them fits a piece of this block.
cutters-lacking = no matching cutter
cutters-lacking-what = { $patches }: { $cutter }
cutters-patches = { $count ->
    [one] patch { $letters }
   *[other] patches { $letters }
}
cutters-wide = { $shape }, { $size } wide
cutters-finished = { $shape }, { $size } finished
cutters-half = half-square triangle
cutters-quarter = quarter-square triangle
cutters-diamond = 45° diamond

# --- other colorways and sizes ---------------------------------------------------------------------

recut-aside = all other fabrics are cut as before
recut-same = { $pieces }, as in the cutting table
recut-all = { $pieces }: { $cuts }
recut-line = { $count } { $piece } { $size }, patch { $letter }
recut-line-then = { $count } { $piece } { $size }, patch { $letter }, { $then }
recut-template = { $count } { $piece }, patch { $letter }
recut-template-then = { $count } { $piece }, patch { $letter }, { $then }
sizes-cutting-aside = a column for each finished size; cut sizes, with seam allowance

# --- alternative texts -----------------------------------------------------------------------------

picture-block = { $block } in { -color }: { $size } finished, { $patches } of { $fabrics }.
picture-block-colorway = { $block }, { -colorway } { $name }, in { -color }: { $size } finished, { $patches } of { $fabrics }.
picture-fabric = { $fabric } ({ $value })
picture-letters = Lettered diagram of { $block }: { $letters }.
picture-letter = { $count ->
    [one] { $number } patch { $letter }
   *[other] { $number } patches { $letter }
}
picture-unit = Unit { $unit }: { $size } finished, { $patches }.
picture-grid = Grid of { $block }: { $columns } columns and { $rows } rows, each cell { $size } finished.
picture-grid-uneven = Grid of { $block }: columns { $widths } { $unit } wide, rows { $heights } { $unit } high, finished.
picture-apart = Step { $number }, { $name }: the parts apart, { $parts }.
picture-joined = { $count ->
    [one] Step { $number }, { $name }: the parts joined with 1 seam; arrows show the way to press.
   *[other] Step { $number }, { $name }: the parts joined with { $count } seams; arrows show the way to press.
}
picture-joined-curved = { $count ->
    [one] Step { $number }, { $name }: the parts joined with 1 curved seam; arrows show the way to press.
   *[other] Step { $number }, { $name }: the parts joined with { $count } seams, one of them curved; arrows show the way to press.
}
picture-joined-partial = { $count ->
    [one] Step { $number }, { $name }: the parts joined with 1 partial seam; arrows show the way to press.
   *[other] Step { $number }, { $name }: the parts joined with { $count } seams, one of them partial; arrows show the way to press.
}
picture-joined-set-in = { $count ->
    [one] Step { $number }, { $name }: the parts joined with 1 set-in seam; arrows show the way to press.
   *[other] Step { $number }, { $name }: the parts joined with { $count } seams, one of them set in; arrows show the way to press.
}
picture-step = Step { $number }: { $name }.

# What a step takes, in an alternative text.
apart-step = { $name } (step { $step })
apart-steps = { $count } { $name } (step { $step })

# --- steps -----------------------------------------------------------------------------------------

steps-too-many = This block has { $count } patches, too many for a list of steps: sew it in rows.

# --- pages -----------------------------------------------------------------------------------------

page-of = page { $page } of { $pages }
sheet-subject = Pattern sheet for a patchwork block, { $size } finished

# --- tables of several sizes -----------------------------------------------------------------------

sizes-head-finished = Finished
sizes-head-unfinished = Unfinished
sizes-head-grid = Grid, finished
sizes-head-cells = Cells, unfinished
sizes-head-seam = Seam
sizes-head-ruler = Ruler reads
sizes-uneven = uneven
sizes-cells = { $columns } × { $rows } of { $size }
sizes-cutting-for = Cutting for { $sizes }
fabric-continued = {"  "}continued
steps-step-continued = Steps, step { $number }
steps-aside = sew in this order; pictures show the right side, without seam allowances
steps-key-seam = seam to sew now
steps-key-press = press the seam allowances this way
steps-key-letter = patch letter, as in the lettered diagram
steps-key-dot = stop one seam allowance from the edge; a piece is set in here later
steps-of = step { $number } of { $count }
