# Printed at full size: templates, papers, the scale check.

# --- the scale check -------------------------------------------------------------------------------

scale-print = Print at actual size (100 %),
scale-not-fit = not fit to page
scale-square = test square
scale-each-side = each side
scale-measured = { $bar } bar measured, { $unit }
scale-means = means your scale was
scale-document = Print scale check
scale-title = Does this printer print at actual size?
scale-step-print = Print at actual size (100 %), not fit to page, with the paper and the settings that you will use for the templates.
scale-step-lay = Lay the ruler that you cut with along each bar, and measure from the middle of one end stroke to the middle of the other. Measure the bars that run down the page too: a printer may stretch one way only.
scale-step-find = Find what you measured in the table: the scale of your print is below it. Between two columns, divide what you measured by what the bar should be.
scale-step-right = At 100 % your templates will be right. If not, change the printer's settings and print this page again. One percent is about { $eighth }, or 3 mm, over a 12 in block.
scale-subtitle = Measure this page, on { $paper }, before you print templates
scale-across = Across the page
scale-down = Down the page, at the left

# --- templates -------------------------------------------------------------------------------------

templates-document = Patchwork templates at full size
templates-title = { $block }: templates
templates-subtitle = Templates at full size for the block of { $size } finished
templates-what = templates at full size
templates-none = This block has no templates: the ruler cuts all its pieces.
templates-guide = How to use the templates
templates-use-measure = Measure the test square and the bars below before you cut. If they are not right, print again at actual size.
templates-use-cut = Cut on the solid line and sew on the dashed line; between them is the seam allowance of { $seam }. Sharp points are trimmed.
templates-use-lay = Lay the template on the right side of the fabric, face up, its arrow along the straight grain. The number to cut is for one block.
templates-use-curved = The short marks on a curved edge meet those of the other piece, or its seams.
templates-use-applique = Appliqué pieces are folded on the dashed line, not sewn.
templates-care = With care
templates-care-cutter = Close the rotary cutter after every cut, and cut away from yourself on a mat.
templates-care-scissors = Keep one pair of scissors for paper and plastic, and another for fabric.
templates-care-blades = Keep blades, pins{ -serial } and needles away from children and pets.
templates-find = Where to find the templates
templates-find-page = page { $page }: { $letters }
templates-find-tiles = pages { $first }–{ $last }: { $letter } in { $tiles } tiles
templates-alternative = Template { $letter }: { $title }. { $lines }.
templates-cut = cut { $list }
templates-cut-of = { $count } { $fabric }
templates-turn = turn { $width } under
templates-raw = raw edge
templates-mirror = mirror image of { $letter }
templates-grain = grain
templates-finished = finished { $size }
templates-finished-square = finished { $size } square
templates-finished-short = finished { $size }, short sides
templates-finished-long = finished { $size }, long side
templates-finished-radius = finished radius { $size }
templates-finished-blade = finished { $size } long, { $other } across its end
templates-finished-with-radius = finished { $size }, radius { $other }
foot-finished = { $block } · { $size } finished · { $what }

# Shapes of patches, as templates name them.
shape-square = square
shape-rectangle = rectangle
shape-triangle = triangle
shape-half-square-triangle = half-square triangle
shape-quarter-square-triangle = quarter-square triangle
shape-diamond = diamond
shape-parallelogram = parallelogram
shape-quadrilateral = quadrilateral
shape-trapezoid = trapezoid
shape-kite = kite
shape-pentagon = pentagon
shape-hexagon = hexagon
shape-heptagon = heptagon
shape-octagon = octagon
shape-polygon = polygon
shape-quarter-circle = quarter circle
shape-quarter-circle-surround = quarter-circle surround
shape-fan-blade = fan blade
shape-curved-patch = curved patch
shape-applique-piece = appliqué piece

# --- tiles of templates larger than a page ---------------------------------------------------------

tiles-name = { $letter }, tile { $tile } of { $tiles } (row { $row }, column { $column })
tiles-alternative = { $template } Tile { $tile } of { $tiles }.
tiles-join-here = join here to tile { $tile }
tiles-tile = tile { $tile }
tiles-join = Overlap the tiles so that diamonds with the same letter meet; tape them, then cut.
tiles-map = Map of the { $tiles } tiles in { $rows } rows and { $columns } columns

# --- foundation papers and papers for English paper piecing ----------------------------------------

foundation-what = foundation papers at full size, mirrored
foundation-title = { $block }: foundation papers
foundation-document = Foundation papers at full size, mirrored
foundation-alternative = Foundation paper { $letter }, mirrored: { $lines }. Patches in order: { $order }.
over-papers-title = { $block }: papers
over-papers-document = Papers for English paper piecing at full size
over-papers-subtitle = Papers for English paper piecing at full size, for the block of { $size } finished
over-papers-what = papers at full size, mirrored
over-papers-alternative = Paper { $letter }: { $lines }
over-papers-paper = Paper
over-papers-needed = { $count } for the block
over-papers-for-one = For one block: { $papers }.
over-papers-copy = One of each is printed: copy the pages, or use each paper several times.
over-papers-guide = How to use the papers
over-papers-use-print = Measure the test square and the bars below. If they are not right, print again at actual size. Print on stiff paper, and cut each paper out exactly on its line: it has no seam allowance.
over-papers-use-pin = The papers are mirror images. Pin each, this side up, on the wrong side of its piece, the arrow along the straight grain and { $seam } of fabric all around.
over-papers-use-fold = Fold the fabric over the paper edge by edge and { -baste } it down. Sew pieces right sides together with small whip stitches that catch the folds and not the paper.
over-papers-use-out = Take a paper out when all its edges are sewn; it can be used again.
over-papers-care-scissors = Keep one pair of scissors for paper and another for fabric, and cut away from your fingers.
over-papers-care-pins = Count your pins before you press, and take them out.
over-papers-care-keep = Keep scissors, pins{ -serial } and needles away from children and pets.
