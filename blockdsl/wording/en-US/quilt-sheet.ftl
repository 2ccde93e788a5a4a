# The sheet of a quilt: what to buy, what to cut, blocks to make, assembly, finishing.

quilt-sheet-subject = Quilt pattern, { $size } finished
quilt-set = Set
quilt-blocks = Blocks
quilt-half-blocks = { $count ->
    [one] and { $count } half block
   *[other] and { $count } half blocks
}
setting-straight = straight setting, { $across } × { $down }
setting-dropped-columns = dropped columns, { $across } × { $down }
setting-on-point = set on point, { $across } × { $down }
setting-strippy = strippy setting, { $across } × { $down }
setting-rows = row by row
setting-medallion = medallion
quilt-blocks-named = { $count } { $block }
quilt-colorway = { -colorway } { $name }
quilt-center-measures = { $center } { $size }
quilt-ring-measures = { $ring } { $width }, { $fabric }
quilt-ring-measures-corners = { $ring } { $width }, { $fabric }, { $corners }
quilt-ring-pieced = pieced of { $unit }

# --- fabric requirements ---------------------------------------------------------------------------

buy-title = Fabric requirements
buy-head-buy = buy
buy-head-needed = needed
buy-head-allowed = washing, squaring
buy-tools = You will also need: matching thread, { -basting } thread or safety pins, pins or clips; rotary cutter, mat{ -serial } and ruler; iron; sewing machine with a { $foot } foot.
buy-foot-in = ¼ in
buy-foot-cm = patchwork
buy-yards = { $amount } yd
buy-meters = { $amount } m
buy-prints = { $fabric }, { $prints }
buy-of-one-print = blocks, each from one print
buy-wider = wider fabric
buy-too-narrow = a piece is wider than this fabric
buy-backing = Backing: { $fabric }
buy-widths-of-fabric = { $widths } of fabric
buy-in-one-piece = in one piece
buy-based-in = Based on { $widths } in usable width. Shrinkage and squaring-up allowance is listed separately; the total is rounded up to the next 1/8 yd (4 1/2 in).
buy-based-cm = Based on { $widths } cm usable width. Shrinkage and squaring-up allowance is listed separately; the total is rounded up to the next 10 cm.
buy-fat-quarters = Fat quarters of { $size } instead of a length: { $list }.
buy-fat-quarters-of = { $fabric } { $count }

# --- cutting ---------------------------------------------------------------------------------------

quilt-cutting-fabric = Cutting: { $fabric }
quilt-cutting-aside-in = for the whole quilt; sizes in inches, with seam allowance
quilt-cutting-aside-cm = for the whole quilt; sizes in { -centimeters }, with seam allowance

# --- blocks, rows, assembly ------------------------------------------------------------------------

assembly-title = Assembly
assembly-aside = lay everything out by the picture before you sew
rows-title = Rows
rows-head-row = row
rows-head-takes = takes
rows-head-measure = should measure, raw edges
finishing-title = Finishing
finishing-aside = layer, quilt, bind
quilt-strips-listed = From the cutting list: { $sizes }.
quilt-strips-listed-spare = From the cutting list: { $sizes }. Each strip has { $spare } to spare.
quilt-strip-all = { $count ->
    [one] 1 strip
   *[other] { $count } strips
} { $size }
quilt-strip-sides = { $count ->
    [one] 1 strip
   *[other] { $count } strips
} { $size } for the sides
quilt-strip-ends = { $count ->
    [one] 1 strip
   *[other] { $count } strips
} { $size } for the top and bottom
quilt-strip-corners = { $count ->
    [one] 1 square
   *[other] { $count } squares
} { $size } for the corners

quilt-picture = The quilt { $quilt }: { $setting }, { $blocks }, { $borders }, { $size } finished.
quilt-rows-picture = { $count ->
    [one] The row of { $quilt }.
   *[other] The { $count } rows of { $quilt } drawn apart, in the order in which they are joined.
}

# What a block of a quilt is called where it is the mirror image of another, is cut in two, or is a border's unit.
kind-mirror-image = { $name }, mirror image
kind-upper-half = { $name }, upper half
kind-lower-half = { $name }, lower half
kind-left-half = { $name }, left half
kind-right-half = { $name }, right half
kind-border-unit = { $name }, border unit
kind-with-mirror-image = { $name } and its mirror image

# --- cutting, fabric by fabric ---------------------------------------------------------------------

quilt-cutting-aside = cut lengthwise pieces first, then the widest strips
head-in-the-picture = in the picture
quilt-then-once = cut each once corner to corner
quilt-then-twice = cut each twice corner to corner
quilt-then-lengthwise = cut lengthwise
quilt-then-strip = then follow the block instructions
quilt-then-octagon = then cut off the corners, following the block instructions
quilt-then-template = around its template
cloth-from-prints = Its blocks are cut from fat quarters, each block from one print; only the rest is cut by the length.
cloth-shortest = Laid out as below, { $length } of fabric is needed: the shortest layout for strips cut this way.
cloth-within = Laid out as below, { $length } of fabric is needed: within { $more } of the shortest layout.
cloth-joined = { $count ->
    [one] For { $letters }: cut { $strips } { $width } wide to length.
   *[other] For { $letters }: sew { $strips } { $width } wide end to end with straight seams, press the seams open, and cut them to length.
}

# A row of the cloth's picture: how many strips, lengths or fat quarters are cut alike, and what each gives.
cloth-strips = { $strips } { $height } wide
cloth-strips-of = { $strips } { $height } wide: { $pieces }
cloth-lengths = { $lengths } of { $height }, cut lengthwise
cloth-beside = beside them { $strips }
cloth-sheets = { $pieces } of { $size }
cloth-piece = { $count } { $letter }, { $size }
cloth-piece-plain = { $count } of { $size }
cloth-picture = { $what }: { $pieces }.

# --- blocks to make --------------------------------------------------------------------------------

blocks-title = Blocks to make
blocks-title-one = Blocks to make: { $block }
blocks-aside = sew one and measure it before you cut for all
blocks-make-each = make { $count }, each { $size } unfinished
blocks-in-colorway = in the { -colorway } { $name }
blocks-half = half block
blocks-for-border = for the border
blocks-about = { $size } finished; { $patches }
blocks-totals = The last column is the total for the quilt; units made in batches are counted over all of its blocks.
cutting-one = Cutting for one block

# --- prints ----------------------------------------------------------------------------------------

prints-title = Prints for { $fabric }
prints-fat-quarter = { $count ->
    [one] One fat quarter, cut for { $number } block; the letters are those of the patches.
   *[other] One fat quarter, cut for { $number } blocks; the letters are those of the patches.
}
prints-numbered = Each block is made from one print, numbered as in the picture.
prints-apart = No two blocks side by side share a print.
prints-share-least = { $count ->
    [one] { $count } pair of blocks side by side shares a print: the fewest possible with so few prints.
   *[other] { $count } pairs of blocks side by side share a print: the fewest possible with so few prints.
}
prints-share = { $count ->
    [one] { $count } pair of blocks side by side shares a print: no arrangement has fewer than { $bound } with so few prints.
   *[other] { $count } pairs of blocks side by side share a print: no arrangement has fewer than { $bound } with so few prints.
}
prints-used = { $count ->
    [one] Each print is used in { $count } block.
   *[other] Each print is used in { $count } blocks.
}
prints-used-or = Each print is used in { $least } or { $most } blocks.
prints-used-to = Each print is used in { $least } to { $most } blocks.
prints-gives = { $count ->
    [one] One fat quarter gives { $count } block.
   *[other] One fat quarter gives { $count } blocks.
}
prints-takes-more = A block takes more than one fat quarter.
prints-picture = { $count ->
    [one] The quilt with the number of the print on its block.
   *[other] The quilt with the number of the print on each of its { $count } blocks.
}
prints-blocks-quarters = { $blocks }, { $quarters }

# --- the same on sites -----------------------------------------------------------------------------

buy-head-what = what
buy-caption = Fabric requirements for { $quilt }
quilt-without-borders = { $size } without borders
quilt-cutting-caption-in = Pieces of { $fabric } for { $quilt }: sizes in inches, with seam allowance
quilt-cutting-caption-cm = Pieces of { $fabric } for { $quilt }: sizes in { -centimeters }, with seam allowance
rows-caption = Rows of { $quilt }
rows-tick = { $rows }, { $size }
