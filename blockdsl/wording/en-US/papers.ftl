# Units on foundation papers: a step for each section, one that joins them.

papers-print = { $count ->
    [one] Print 1 paper { $section } at actual size and check the test square. Cut it out outside the solid line.
   *[other] Print { $count } papers { $section } at actual size and check the test square. Cut them apart outside the solid line.
} Set a short stitch, about { papers-stitch }.
papers-stitch = 15 to the inch
papers-piece = 1 { $area } ({ $fabric })
papers-pieces-many = the pieces { $first } to { $last } of its table
papers-paper = 1 paper { $section }
papers-first = Place { $area } on the blank side of the paper, right side up, over area { $area } and at least { $seam } beyond it all around; pin.
papers-second = Place { $area } on { $first }, right sides together, { $edge } { $seam } beyond the line between the two areas. Fold { $area } back along the line. It must cover area { $area } and { $seam } beyond it all around; shift it if it does not, then fold it forward and pin.
papers-edge-long = a long edge
papers-edge-cut = its long edge
papers-edge-short = a short edge
papers-edge-any = an edge
papers-sew = Turn the paper over. Sew on the line, from { $seam } before it to { $seam } beyond it. Fold the paper back along the line and trim the seam to { $seam }. Press { $area } over its area.
papers-add = Add { $area } in the same way, on the line between { $before } and { $area }.
papers-add-edge = Add { $area } in the same way, with { $edge } along the line between { $before } and { $area }.
papers-add-many = Add { $first } to { $last } in the same way, in the order of their numbers, each on the line between it and those before it.
papers-cut = Cut paper and fabric on the solid line. Leave the paper in.
papers-along = { $length } along the edge marked { $join }

papers-as-in = Sew them as in step { $number }: { $first } first, then { $rest }.
papers-as-in-one = Place { $area } on the blank side of the paper, right side up, over area { $area } and at least { $seam } beyond it all around; pin. Cut it as in step { $number }.
papers-then-next = { $before }, then { $next }
papers-then = { $area } on the line between { $before } and { $area }
papers-then-edge = { $area } with { $edge } along the line between { $before } and { $area }
papers-then-many = { $first } to { $last } in the order of their numbers, each on the line between it and those before it

papers-section = section { $letters }
papers-sections = sections { $letters }, joined,
papers-sections-plain = sections { $letters }
papers-join = Place { $before } on { $after }, right sides together, the edges marked { $join } even, the { $marks } at the same end{ $pin ->
    [nest] . Nest the seams and pin.
    [match] . Match the seams and pin.
   *[plain] ; pin.
} Sew on the dashed line. Remove the paper from the seam allowance. { $press }
papers-press-toward = Press the seam toward { $section }.
papers-press-away = Press the seam away from { $section }.
papers-marks-top = TOP marks
papers-marks-dot = dots
papers-out = Remove the papers.
papers-stay = Remove the papers when the edges of the block are sewn to others.

# The printed sheet of papers.

papers-sheet-top = TOP
papers-sheet-dot = ●
papers-sheet-cut = cut { $size }
papers-sheet-half = ½ of { $size }
papers-sheet-section = section { $section }
papers-sheet-copy = copy { $copy } of { $copies }
papers-sheet-print = print { $count }
papers-sheet-area = Area
papers-sheet-fabric = Fabric
papers-sheet-letter = Patch
papers-sheet-size = Cut
papers-sheet-halves = ½: one of the two triangles of a square cut from corner to corner.
papers-sheet-short = { $areas }: a short edge along the line.
papers-sheet-join = { $title }: join { $joins }. Seen from the right side; edges that meet have the same mark.
papers-sheet-then = , then{ " " }
papers-guide-title = How to sew on the papers
papers-guide-subtitle = Foundation papers at full size for the block of { $size } finished
papers-guide-scale = Measure the test square and the bars below. If they are not right, print again at actual size. Cut the papers apart outside the solid line.
papers-guide-sew = The papers are mirror images: this printed side is the back. Fabric goes on the blank side. Sew from the printed side on the thick lines, in the order of the numbers.
papers-guide-pieces = Set a short stitch, about { papers-stitch }. The table beside each paper says which fabric and size each area takes. Pieces are larger than their areas: trim each seam to { $seam }.
papers-guide-cut = Cut paper and fabric on the solid line, { $seam } outside the dashed one. Join sections on the dashed line, edges with the same mark even. Leave the papers in until the steps say to remove them.
papers-care-cutter = Close the rotary cutter after every cut, and cut away from yourself on a mat.
papers-care-fold = Fold the paper out of the way before you cut fabric beside it.
papers-care-iron = Press from the fabric side with a dry iron: toner comes off under a hot one.
papers-care-blades = Keep blades, pins{ -serial } and needles away from children and pets.
