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
papers-then = { $area } on the line between { $before } and { $area }
papers-then-edge = { $area } with { $edge } along the line between { $before } and { $area }
papers-then-many = { $first } to { $last } in the order of their numbers, each on the line between it and those before it

papers-section = section { $letters }
papers-sections = sections { $letters }, joined,
papers-sections-plain = sections { $letters }
papers-join = Place { $before } on { $after }, right sides together, the edges marked { $join } even, the { $marks } at the same end; pin. Sew on the dashed line. Remove the paper from the seam allowance. Press the seam toward { $toward }.
papers-marks-top = TOP marks
papers-marks-dot = dots
papers-out = Remove the papers.
papers-stay = Remove the papers when the edges of the block are sewn to others.
