# Words in pictures, and what pictures show, for those who cannot see them.

# How a letter is cut from a strip, a rectangle or a square; $how is what the cutting table says.
cut-picture = Cutting { $letter }: { $how }.

# --- drafting --------------------------------------------------------------------------------------

drafted-squares = drawn on { $across } × { $down } squares: { $family }
drafted-compass = drawn on { $across } × { $down } squares with a compass: { $family }
drafted-eight-point = drawn on an eight-point grid (√2): { $family }
drafted-eight-point-parts = drawn on an eight-point grid (√2) of { $across } × { $down } parts: { $family }
drafted-sixty-degrees = drawn on a grid of 60° (√3): { $family }
drafted-sixty-degrees-parts = drawn on a grid of 60° (√3) of { $across } × { $down } parts: { $family }
drafted-none = drawn on no even grid that is of use; its own parts are { $across } × { $down }: { $family }
drafted-listed = { $squares }, listed as { $family }
drafted-uneven = its squares are not all alike
drafted-cell = each square { $finished } finished, { $unfinished } unfinished
drafted-picture = { $block }, { $squares }; { $cell }.

# --- borders ---------------------------------------------------------------------------------------

border-top = quilt top so far
border-picture-sides-first = { $order ->
    [only] The four sides of the border around the top, left and right first.
   *[other] The four sides of border { $number } around the top, left and right first.
}
border-picture-ends-first = { $order ->
    [only] The four sides of the border around the top, top and bottom first.
   *[other] The four sides of border { $number } around the top, top and bottom first.
}
border-picture-mitered = { $order ->
    [only] The four sides of the border around the top, with { -mitered } corners.
   *[other] The four sides of border { $number } around the top, with { -mitered } corners.
}
border-picture-squares-sides-first = { $order ->
    [only] The four sides of the border around the top, with corner squares, left and right first.
   *[other] The four sides of border { $number } around the top, with corner squares, left and right first.
}
border-picture-squares-ends-first = { $order ->
    [only] The four sides of the border around the top, with corner squares, top and bottom first.
   *[other] The four sides of border { $number } around the top, with corner squares, top and bottom first.
}
miter-dot = (1) sew to the dot
miter-fold = (2) fold, sew on the line
miter-trim = (3) trim, press open
miter-picture = A { -mitered } corner in three steps: both seams end at a dot in the corner; the top is folded diagonally and the strips are sewn together on the fold line; the seam is trimmed and pressed open.

# --- finishing -------------------------------------------------------------------------------------

backing-key = dashed: seams; dotted: the quilt
backing-picture = The backing in one piece, with the quilt on it.
backing-picture-vertical = The backing of { $widths } widths, seams running up and down, with the quilt on it.
backing-picture-horizontal = The backing of { $widths } widths, seams running from side to side, with the quilt on it.
layers-picture = Three layers, from the top down: { $first }; { $second }; { $third }.
join-corner = sew corner to corner
join-trim-open = trim, press open
join-picture = Two ends of binding at right angles, sewn from corner to corner, then pressed open.
corner-picture = A binding corner in three steps: the seam stops before the edge; the strip is folded straight up, making a diagonal fold; it is folded straight down, even with the edge, and sewn on.
sleeve-back = back of the quilt
sleeve-picture = The sleeve along the top edge of the back, a little shorter than the quilt is wide.

# Titles of pictures that are files of their own.
picture-title-colorway = { $name }, { $colorway }
picture-title-letters = { $name }, letters
picture-title-grid = { $name }, grid
picture-title-cutting = { $name }, cutting
picture-title-rows = { $name }, rows
picture-title-step = { $name }, step { $number }
picture-title-squares = { $name }, on squares
