# The lessons of the methods, as books and sites teach them: for someone who has never sewn.

cut-square = { $side } square
cut-rectangle = { $size } rectangle

# What a picture shows, for those who cannot see it.
picture = { $shows }.
picture-right = { $shows }, right-handed.
picture-left = { $shows }, left-handed.

## Squares and rectangles

lesson-squares-cut = Square up the end of the strip, then cut off a piece of the size in the cutting table. Hold the ruler down with a flat hand, fingertips away from its edge, and roll the cutter away from yourself.
    .title = Cut
lesson-squares-lay = Place two patches right sides together (the printed faces inside), edges even. Pin across the seam; take each pin out before the needle reaches it.
    .title = Place together
lesson-squares-sew = Sew { $seam } from the edge, from end to end, with small stitches. Make a test seam first: two { $side } squares sewn together must measure { $size }.
    .title = Sew
lesson-squares-press = Press the seam once as it was sewn, then open the patches and { $press ->
    [open] press the seam open with the tip of the iron.
   *[side] press the seam { -toward } the darker patch. In rows, press every other row the other way, so that the seams nest.
}
    .title = Press
lesson-squares-measure = Measure before you go on. In the middle of a row a patch shows its finished size; only the ends still have their seam allowance.
    .title = Measure

picture-square-from-strip = A square cut from a strip
picture-squares-together = Two squares right sides together
picture-squares-sewn = A seam along the right edge of two squares
picture-squares-opened = Two squares opened; arrows show the way to press
picture-squares-joined = Two squares joined, with their measures

## Half-square triangles

lesson-half-cut = { $count ->
    [2] Cut one { $piece } of each fabric for every two units.
   *[8] Cut one { $piece } of each fabric for every eight units.
}
    .title = Cut
lesson-half-mark = Turn the lighter square wrong side up. Draw a thin pencil line from corner to corner. This line is for cutting, not for sewing.
    .title = Draw a line
lesson-half-two-sew = Place it on the other square, right sides together (the printed faces inside), edges even, and pin. Sew { $seam } from the line along one side of it, turn, and sew along the other side. (The corner is turned back only to show the layers.)
    .title = Sew two seams
lesson-half-two-cut-apart = Turn the squares so that the line leads straight away from you. Hold the ruler down on it with a flat hand, fingertips away from its edge, and roll the cutter along it away from yourself. Each half becomes a unit.
    .title = Cut on the line
lesson-half-eight-mark = Turn the lighter square wrong side up. Draw a thin pencil line from corner to corner both ways, so that the lines cross in the middle. They are for cutting, not for sewing.
    .title = Draw two lines
lesson-half-eight-sew = Place it on the other square, right sides together (the printed faces inside), edges even, and pin. Sew { $seam } from each line on both sides of it: four seams, straight through the crossing. (The corner is turned back only to show the layers.)
    .title = Sew four seams
lesson-half-eight-quarter = Without moving the fabric, cut in half both ways through the middle, { $half } from the edges. Hold the ruler down with a flat hand, fingertips away from its edge, and roll the cutter away from yourself. For the second cut, walk around the table or turn the mat.
    .title = Cut into quarters
lesson-half-eight-cut-apart = Cut each quarter on its drawn line, between the two seams: eight halves.
    .title = Cut on the lines
lesson-half-triangles-cut = Turn the square so that its corner points at you. Hold the ruler down from corner to corner with a flat hand and roll the cutter along it away from yourself: two triangles. Their long edges stretch; handle them gently.
    .title = Cut corner to corner
lesson-half-triangles-sew = Place a triangle of each fabric right sides together (the printed faces inside), all edges even. Sew { $seam } from the long edge. Do not pull: let the machine feed the fabric.
    .title = Sew the long edges
lesson-half-press = Press the seam once as it was sewn, then open the unit and { $press ->
    [open] press the seam open.
   *[side] press the seam { -toward } the darker fabric.
} Set the iron down and lift it; sliding it stretches the fabric.
    .title = Press
lesson-half-trim = Trim the two dog-ears. If the unit is too large, lay the 45° line of the ruler on the seam and trim all four edges.
    .title = Trim
lesson-half-measure = { $count ->
    [1] The unit should now measure { $size }.
    [2] Each of the two units should now measure { $size }.
   *[8] Each of the eight units should now measure { $size }.
}
    .title = Measure

picture-squares = The squares to cut
picture-square-marked = A square, wrong side up, with a diagonal line
picture-square-marked-twice = A square, wrong side up, with both diagonal lines
picture-sewn-both-sides = Two squares together with a seam on both sides of a diagonal line
picture-sewn-four-times = Two squares together with a seam on both sides of each of two diagonal lines
picture-cut-on-line = Two squares together, to be cut on the line between the seams
picture-cut-quarters = The squares to be cut in half both ways
picture-quarter-cut = A quarter to be cut between its two seams
picture-cut-once = A square to be cut once from corner to corner
picture-cut-twice = A square to be cut twice from corner to corner
picture-half-long-seam = Two triangles together with a seam along the long edge
picture-half-opened = A half-square triangle unit opened; arrows show the way to press
picture-half-ears = A half-square triangle unit with cuts across the two dog-ears
picture-half-measured = A half-square triangle unit, { $size }

## Hourglass, quarter-square unit, split square

lesson-hourglass-cut = Cut one { $piece } of each fabric.
    .title = Cut
lesson-quarters-cut = Cut one { $piece } of each fabric.
    .title = Cut
lesson-split-cut = For four units, cut two { $large }s for the large triangles and one { $piece } of each fabric of the small ones.
    .title = Cut
lesson-quarters-sew = Draw a line from corner to corner on the wrong side of the lighter square. Place the squares right sides together (the printed faces inside), edges even, and pin. Sew { $seam } from the line on both sides of it.{ $kind ->
    [quarters] { " " }Do the same with the other pair.
   *[other] { "" }
}
    .title = Draw and sew
lesson-quarters-cut-apart = Turn the squares so that the line leads straight away from you. Hold the ruler down with a flat hand, fingertips away from its edge, and roll the cutter away from yourself.
    .title = Cut on the line
lesson-quarters-press = { $press ->
    [open] Open each half and press the seam open.
   *[side] Open each half and press the seam { -toward } the darker fabric.
} The half-square triangle units measure { $side }. They are larger than the finished unit: do not trim them down.
    .title = Press
lesson-hourglass-cross = On one of the two units, draw a line from corner to corner across the seam, on the wrong side. Place it on the other, right sides together, each fabric on the other one. { $press ->
    [open] Match the seams and pin.
   *[side] Nest the seams and pin.
} Sew { $seam } from the line on both sides of it and cut on the line.
    .title = Cross them
lesson-quarters-cross = Place a unit of one pair on a unit of the other, right sides together, with the fabrics facing that will end up side by side. { $press ->
    [open] Match the seams and pin.
   *[side] Nest the seams and pin.
} Draw a line from corner to corner across the seam. Sew { $seam } from it on both sides and cut on the line.
    .title = Cross them
lesson-split-cross = Place one unit on each large square, right sides together. Draw a line from corner to corner across the seam. Sew { $seam } from it on both sides and cut on the line.
    .title = Cross them
lesson-quarters-trim = Open, press{ -serial } and trim the dog-ears. To trim to size, lay the 45° line of the ruler on one seam, the crossing { $half } from both edges of the ruler.
    .title = Press and trim
lesson-quarters-measure = { $kind ->
    [one] The unit should now measure { $size }, the seams running into the corners.
    [hourglass] Each of the two units should now measure { $size }, the seams running into the corners.
   *[other] Each of the four units should now measure { $size }, the seams running into the corners. Two are mirror images of the other two: lay them all the same way up, compare, and keep the kind that your block needs.
}
    .title = Measure
lesson-quarters-triangles-cut = Cut { $small }s twice from corner to corner: each gives four small triangles. A unit takes four, one for each quarter.
    .title = Cut
lesson-split-triangles-cut = Cut { $small }s twice from corner to corner: each gives four small triangles. Cut { $large }s once: each gives two large triangles. A unit takes one large and two small ones.
    .title = Cut
lesson-quarters-triangles-apart = Turn a square so that its corner points at you and cut from corner to corner, rolling away from yourself. For the small triangles, cut once more the other way without moving the pieces: four. Their long edges lie on the straight grain and come to the outside of the unit.
    .title = Cut corner to corner
lesson-quarters-triangles-pairs = Place two small triangles right sides together and sew { $seam } from one short edge. Sew from the square corner outward and always keep the same fabric on top, or the pairs come out mirrored.
    .title = Sew pairs
lesson-quarters-triangles-press = { $press ->
    [open] Open each pair and press the seam open.
   *[side] Open each pair and press the seam { -toward } the darker fabric.
}
    .title = Press
lesson-quarters-triangles-long = { $kind ->
    [split] Place the pair on the large triangle, right sides together, long edges even,
   *[other] Place one pair on the other, right sides together, long edges even, { $press ->
        [open] the seams matched,
       *[side] the seams nested,
    }
} and sew the long edge. Press. Trim the dog-ears.
    .title = Sew the long seam

picture-two-halves-opened = Two half-square triangle units, pressed
picture-crossed = Two units together, sewn on both sides of a line that crosses the seam, and cut on it
picture-quarters-opened = The unit opened, with dog-ears at its corners
picture-quarters-measured = The unit, { $size }
picture-quarters-short-seam = Two triangles together with a seam along a short edge
picture-pair-opened = A pair of triangles opened; arrows show the way to press

## Flying geese

lesson-geese-four-cut = For four geese, cut one { $large } of the goose and { $skies ->
    [1] four { $small }s of the sky.
   *[2] two { $small }s of each sky.
} Draw a pencil line from corner to corner on the wrong side of each small square.
    .title = Cut and mark
lesson-geese-four-sew = Place two small squares, right sides together, on opposite corners of the large one; they overlap a little in the middle, and their lines make one. Sew { $seam } from the line on both sides of it.
    .title = Sew two small squares
lesson-geese-four-cut-apart = Turn the square so that the line leads straight away from you. Hold the ruler down with a flat hand, fingertips away from its edge, and roll the cutter away from yourself.
    .title = Cut on the line
lesson-geese-four-press = { $press ->
    [open] Press the seams of the small triangles open.
   *[side] Press the small triangles away from the large one.
} Each half looks like a heart.
    .title = Press
lesson-geese-four-last = Place a small square, right sides together, on the square corner of each heart, its line running into the notch between the two small triangles. Sew { $seam } from the line on both sides of it, then cut on the line.
    .title = Sew the last squares
lesson-geese-four-press-last = { $press ->
    [open] Press the last seams open too: four geese.
   *[side] Press the last triangles outward too: four geese.
} Trim the dog-ears.
    .title = Press again
lesson-geese-measure = { $made ->
    [four] If need be, trim each of the four geese to { $size }.
   *[one] The unit should now measure { $size }.
} The lower seams run into the corners. Keep { $seam } between the goose's point and the edge, or the point is sewn away.
    .title = Trim and measure
lesson-geese-triangles-cut = Cut { $large }s of the goose and { $small }s of the sky. A goose takes a quarter of a large square and two halves of small ones.
    .title = Cut
lesson-geese-triangles-apart = Turn the square so that its corner points at you, hold the ruler down with a flat hand{ -serial } and roll the cutter away from yourself. Cut the large square both ways without moving the pieces: four. Cut the small one once: two.
    .title = Cut corner to corner
lesson-geese-triangles-first = Place a sky triangle on the left short edge of the goose, right sides together, the lower corners matched; its tip extends beyond the goose's point. Sew { $seam } from the edge.
    .title = Sew the first sky
lesson-geese-triangles-press = { $press ->
    [open] Open and press the seam open.
   *[side] Open and press the seam { -toward } the sky.
} Trim the dog-ears.
    .title = Press
lesson-geese-triangles-second = Place the second sky triangle on the other edge in the same way. Its seam crosses the first one just above the goose's point. { $press ->
    [open] Press the seam open.
   *[side] Press the seam { -toward } the sky.
}
    .title = Sew the second sky

picture-five-squares = A large square, and four small ones with a drawn line
picture-two-small-squares = Two small squares on opposite corners of the large one, a seam on both sides of their line
picture-large-square-cut = The large square to be cut between the seams
picture-heart = A large triangle with two small ones pressed outward
picture-third-small-square = A small square on the square corner, sewn on both sides of its line and cut
picture-goose-opened = A flying geese unit opened, with dog-ears
picture-goose-measured = A flying geese unit, { $size }
picture-large-and-small-square = A large and a small square
picture-first-sky = A sky triangle on the goose's left edge, sewn
picture-first-sky-opened = The goose with its left sky opened
picture-second-sky = The second sky triangle placed and sewn

## Square in a square

lesson-diamond-cut = Cut one { $middle } for the middle and two { $corner }s for the corners.
    .title = Cut
lesson-diamond-cut-corners = Turn a corner square so that its corner points at you and cut it once from corner to corner, rolling away from yourself: two triangles from each, four in all.
    .title = Cut corner to corner
lesson-diamond-two-sides = Fold the middle square and each triangle's long edge in half and finger-press a crease. Place a triangle on one side, right sides together, creases matched, and sew { $seam } from the edge. Sew the opposite triangle in the same way.
    .title = Sew two sides
lesson-diamond-press = { $press ->
    [open] Press both seams open
   *[side] Press both seams { -toward } the triangles
} and trim the dog-ears.
    .title = Press and trim
lesson-diamond-others = Sew the other two triangles in the same way, creases matched, { $press ->
    [open] and press the seams open.
   *[side] and press { -toward } them.
}
    .title = Sew the others
lesson-diamond-measure = The unit should now measure { $size }, with { $seam } beyond each point of the middle square.
    .title = Measure

picture-diamond-first = A triangle on one side of the middle square, sewn
picture-diamond-two-opened = The middle square with two opposite triangles opened
picture-diamond-third = A third triangle placed and sewn
picture-diamond-measured = The unit, { $size }

## Stitch and flip

lesson-flip-cut = { $count ->
    [1] For each unit, cut one { $base } for the base and one { $small } for the corner.
    [2] For each unit, cut one { $base } for the base and two { $small }s for the corners.
    [3] For each unit, cut one { $base } for the base and three { $small }s for the corners.
   *[4] For each unit, cut one { $base } for the base and four { $small }s for the corners.
}
    .title = Cut
lesson-flip-mark = On the wrong side of each small square, draw a thin pencil line from corner to corner. This time you will sew along the line.
    .title = Draw a line
lesson-flip-sew = Place a small square on a corner of the base, right sides together (the printed faces inside), its line across the corner. Sew just beside the line, a thread's width { -toward } the corner: the fold takes up that much.
    .title = Sew along the line
lesson-flip-cut-corner = Cut { $seam } outside the seam, through both layers. The ruler covers the part that you keep: hold it down with a flat hand and roll the cutter away from yourself.
    .title = Cut the corner off
lesson-flip-press = Fold the triangle over the seam, right side up, and press. Its edges should be even with those of the base. If they are not, sew the next one a thread closer to the corner.
    .title = Flip and press
lesson-flip-repeat = { $count ->
    [2] Do the same at the other end.
   *[other] Do the same at the other corners, one after the other.
}{ $overlap ->
    [yes] { " " }The squares overlap, as they should: that leaves { $seam } beyond the point.
   *[no] { "" }
}
    .title = Repeat
lesson-flip-measure = Each unit should now measure { $size }, the size that the base was cut.
    .title = Measure

picture-base-and-square = The base and a small square
picture-corner-sewn = A small square on a corner of the base, sewn along its line
picture-next-corner-sewn = The next small square placed and sewn
picture-corner-cut-off = The corner cut off outside the seam
picture-corner-flipped = The corner pressed over its seam
picture-flip-measured = The finished unit, { $size }

## Strip sets

lesson-strips-cut = Cut strips { $width } wide across the fabric, after squaring up its end. Cut off the { -selvages } (the firm woven edges).
    .title = Cut strips
lesson-strips-sew = Place two strips right sides together (the printed faces inside) and sew { $seam } from the long edge. Add the others one by one; start each seam at the end where the last one stopped, so that the set does not bend.
    .title = Sew them together
lesson-strips-press = { $press ->
    [open] Press all seams open.
   *[side] Press all seams { -toward } the darker strip.
} Set the iron down and lift it along the strip, so that the set stays straight. The seams should have no folds on the right side.
    .title = Press
lesson-strips-segments = Square up one end: lay a line of the ruler on a seam. Then cut segments { $width } wide, holding the ruler down with a flat hand and rolling away from yourself. Square up again after every third segment. A set is cut { $first } longer for squaring up, and { $again } for each time it is squared up again.
    .title = Cut segments
lesson-rails-measure = Each segment is a unit. It should measure { $size }.
    .title = Measure
lesson-checker-lay = { $sets ->
    [1] Turn every other segment around, so that the fabrics alternate.
   *[2] Rows with an odd number of patches need a second strip set that begins with the other fabric; take segments of both in turn.
}
    .title = Lay out
lesson-checker-join = Place two segments right sides together. { $meet ->
    [match] Match the seams and pin.
   *[nest] Nest the seams and pin.
} Sew { $seam } from the edge. { $meet ->
    [match] Press the seam open.
   *[nest] Press the seam to one side.
}
    .title = Join
lesson-checker-measure = The unit should now measure { $size }, the corners of the patches meeting.
    .title = Measure

picture-strips = Strips of each fabric
picture-strips-sewn = Two strips right sides together, sewn along one edge
picture-strip-set = The strip set opened; arrows show the way to press
picture-segments-cut = The strip set cut across into segments
picture-segment = One segment, { $size }
picture-segments-laid = Segments laid out so that the fabrics alternate
picture-segments-sewn = Two segments right sides together, sewn
picture-checker-measured = The unit, { $size }

## Stars of many diamonds

lesson-star-strips-cut = Cut the strips of the cutting table across the fabric, { $width } wide here, after squaring up its end. Cut off the { -selvages } (the firm woven edges).
    .title = Cut strips
lesson-star-strips-sew = Every row of a large diamond has a strip set of its own, with that row's fabrics from the middle outward: the first begins with the fabric in the middle of the star, the second with the next one, and so on. Place each strip right sides together on the last, but start it { $step } further along, so that the ends step down at 45°. Sew { $seam } from the edge. Press the seams of one set one way, those of the next set the other way, so that they nest.
    .title = Sew a set for each row
lesson-star-segments = Lay the 45° line of the ruler on a seam and cut off the stepped ends. Then cut segments { $width } wide, measured square to the cut: eight of each set for one star. Hold the ruler down with a flat hand and roll away from yourself. Lay the 45° line on a seam again for each cut. The cut edges stretch: handle them gently.
    .title = Cut at 45°
lesson-star-rows = Lay the segments of a large diamond side by side, the first set's at the middle of the star. Place two right sides together so that their seams cross { $seam } from the edge, not at it: pin through both there. Sew the rows together, and press. Make eight large diamonds.
    .title = Join the rows
lesson-star-points = Sew the large diamonds in pairs, the pairs into halves, the halves into a star, always from the middle outward. Stop { $seam } from the edge at the outer end and backstitch: the background is set in there.
    .title = Join the points
lesson-star-ground = Cut the large square twice from corner to corner: four triangles. Set one in at the top, the bottom{ -serial } and each side: sew from the dot where the seam stops to the outer edge, first one edge, then the other. Set the squares into the corners in the same way. Press { -toward } the star.
    .title = Set in the background

picture-stepped-set = Three strips sewn and pressed, each begun further along than the last
picture-cut-at-45 = The set cut at 45 degrees
picture-star-rows = Three rows of three small diamonds, apart, and the large diamond
picture-star-points = Eight large diamonds joined to a star
picture-star-ground = The star with its triangles and squares

## Curves

lesson-curve-squares = Cut a square for each template: a { $surround } for the surround, a { $quarter } for the quarter circle. Hold the ruler down with a flat hand, fingertips away from its edge, and roll the cutter away from yourself.
    .title = Cut squares
lesson-curve-cut = Print both templates at full size and measure their test square. Draw around them on the wrong side of the fabric, the grain arrow along the threads, and cut with scissors, or with a small rotary cutter rolled slowly away from yourself. Copy the short marks onto the fabric.
    .title = Cut the curves
lesson-curve-pin = Place the surround on the quarter circle, right sides together, and pin the middle marks on each other. Then bring the ends even and pin them, then the marks between. The edges are of unequal length; the seam lines, which meet, are not.
    .title = Match and pin
lesson-curve-sew = Sew with the surround on top, { $seam } from the edge, with short stitches and slowly: ease the upper edge to lie flat a little way ahead of the needle, and take each pin out before the needle reaches it.
    .title = Sew
lesson-curve-press = Look at the seam from the right side; if there is a pleat, unpick that stretch and sew it again. Press the seam { -toward } the surround, lifting the iron instead of sliding it. If it does not lie flat, clip into the surround's allowance in a few places, no deeper than half of it.
    .title = Press
lesson-curve-measure = The unit should now measure { $size }. If it is a little larger, trim it with the ends of the arc { $end } from the two corners.
    .title = Measure

picture-curve-pieces = A quarter circle and its surround, each with three marks on its curved edge
picture-curve-pinned = The curved edge of the surround along the quarter circle, wrong side up, pinned
picture-curve-sewn = The seam along the quarter circle, the surround on top
picture-curve-opened = The unit opened; an arrow points to the surround
picture-curve-measured = The unit, { $size }

## Foundation piecing

# A stitch of 1.5 mm: common practice, no source.
lesson-papers-print = Print a paper for each unit at actual size and measure its test square. Cut the papers apart outside the solid line. Set a short stitch, about 15 to the inch (1.5 mm): the paper tears off more easily.
    .title = Print the papers
lesson-papers-first = Turn the paper over. Place { $first } on its blank side, right side up, over area { $first } and at least { $seam } beyond it all around; hold it to the light to see. Pin it.
    .title = Place the first piece
lesson-papers-sew = Place { $second } on { $first }, right sides together, an edge { $seam } beyond the line between the two areas. Fold it back along the line: it must cover its area and { $seam } beyond it all around. Fold it forward again and pin. Turn the paper over and sew on the line, from { $seam } before it to { $seam } beyond it. (Here the fabric's side is shown.)
    .title = Sew on the line
lesson-papers-trim = Fold the paper back along the seam. Cut both layers of fabric { $seam } beyond it: hold the ruler down with a flat hand and roll the cutter away from yourself. Do not cut the paper.
    .title = Fold back and trim
lesson-papers-press = Fold { $second } over the seam, right side up, and press with a dry iron from the fabric side: toner comes off under a hot iron.
    .title = Open and press
lesson-papers-go-on = Add the other pieces in the order of their numbers: place, sew on the line, trim, press.
    .title = Continue in order
lesson-papers-cut = Cut fabric and paper on the solid line, { $seam } outside the dashed one, on all sides.{ $size ->
    [none] { "" }
   *[other] { " " }It should measure { $size }.
} Leave the paper in until every edge has been sewn to its { -neighbor }.
    .title = Cut to size

picture-paper = A printed paper with lines and the numbers of its areas
picture-paper-first = The first piece on the blank side; the printed lines show through
picture-paper-placed = The second piece placed on the first, wrong side up, beyond the line between the two areas
picture-paper-sewn = The second piece placed and sewn along the line
picture-allowances-cut = The allowances cut a little outside the seam
picture-paper-opened = The second piece pressed open over its area
picture-paper-all = All pieces sewn to the paper
picture-paper-cut = Fabric and paper, to be cut along the solid line
picture-paper-done = The finished unit

## English paper piecing

lesson-epp-cut = Print the papers at actual size and measure the test square. Cut each out exactly on its line: each patch is only as accurate as its paper. They have no seam allowance, and are mirror images.
    .title = Cut the papers
lesson-epp-pin = Place a paper, printed side up, in the middle of the wrong side of its piece, with { $seam } of fabric all around and the arrow along the straight grain. Pin it.
    .title = Pin
lesson-epp-fold = Fold one allowance over the edge of the paper, then the next, and so on around: a crisp fold, no puckers. { -baste-first } them down with large stitches as you go, a stitch over each corner, and take out the pin.
    .title = Fold and { -baste }
lesson-epp-whip = Place two pieces right sides together, corner on corner. Sew from corner to corner with small stitches over the edge, a dozen to the inch or five to the { -centimeter }, through the two folds and not through the papers; secure both ends with a few stitches on the spot. Open them: the stitches hardly show.
    .title = Whip two edges together
lesson-epp-next = Whip one edge of the next piece, and at the inner corner do not cut the thread: fold the papers so that the next two edges lie together, and keep sewing.
    .title = Set in the next
lesson-epp-take-out = When all edges of a piece are sewn, press it from the back with a dry iron, pull out the { -basting }{ -serial } and take the paper out; it can be used again. Along the outer edge, unfold the allowances and press them flat: they join the unit to the next.
    .title = Take the papers out

picture-epp-paper = A paper of the finished size with its letter
picture-epp-pinned = The paper pinned on the wrong side of a piece of fabric
picture-epp-folded = The allowances folded over the paper and { -basted } all around
picture-epp-whipped = Two pieces whipped together along one edge and opened, from the back
picture-epp-set-in = A third piece set into the corner between the two, from the back
picture-epp-opened = The three pieces from the right side

## Appliqué

lesson-applique-cut = Place the template on the right side of the fabric and trace its dashed line. Cut on its solid line, { $seam } outside the tracing or as much as the template says. Cut away from the hand that holds the fabric.
    .title = Trace and cut
lesson-applique-turn = Clip the allowance almost to the tracing where the edge bends inward, and trim it at sharp points. Fold it to the wrong side along the tracing, and { -baste } it or press it with the tip of the iron. What will lie under another piece stays flat.
    .title = Turn under
lesson-applique-lay = Fold the background in quarters and crease it lightly: the creases show where its middle is. Lay the pieces on it as the picture of the block shows, bottom piece first, and pin or { -baste } them.
    .title = Lay on
lesson-applique-sew = Come up through the very edge of the fold, go down into the background beside it, and come up again a little further on, about eight stitches to the inch or three to the { -centimeter }; closer at points and inner corners. Use thread in the { -color } of the piece.
    .title = Sew down
lesson-applique-raw = Cut the piece on the line, without seam allowance. Hold it with fusible web or fabric glue, following the manufacturer's instructions: work in fresh air, and keep glue off your skin. Sew around it with a close stitch that covers its edge, by machine or by hand.
    .title = Or leave a raw edge
lesson-applique-press = Take out pins and { -basting } and count the pins. Press from the back on something soft, so that the pieces stay raised.
    .title = Press

picture-applique-cut = The piece cut out, its fold traced inside its edge
picture-applique-turned = The piece with its allowance turned under
picture-applique-laid = The piece laid on the creased background
picture-applique-sewn = Small stitches all along the folded edge
picture-applique-raw = A close stitch over the raw edge
picture-applique-done = The finished piece on its background

## Appliqué on a block

lesson-applique-block-cut = { $letters }: trace the dashed line of the template on the right side of the fabric, and cut on the solid line, { $outside ->
    [one] { $width } outside it.
   *[several] outside it.
} Cut away from the hand that holds the fabric.
    .title = Trace and cut
lesson-applique-block-turn = Clip the allowance almost to the line where the edge bends inward. Fold it to the wrong side along the line and { -baste } or press it; what will lie under another piece stays flat.
    .title = Turn under
lesson-applique-block-raw = { $letters }: trace and cut on the line itself; nothing is turned under. Fusible web or fabric glue, used as the manufacturer directs, in fresh air and off your skin, holds the piece in place.
    .title = Cut raw edges
lesson-applique-block-lay = Press the block. Fold it in quarters and crease it lightly to find its middle. { $order ->
    [one] Lay { $letters } where the picture has it. Pin or { -baste } it.
    [alike] Lay the pieces { $letters } where the picture has them. Pin or { -baste } them.
    [listed] Lay the pieces in this order, bottom piece first: { $letters }. Pin or { -baste } them.
   *[many] Lay the pieces from the bottom up. Pin or { -baste } them.
}
    .title = Lay on
lesson-applique-block-sew = { $edges ->
    [turned] Sew folds down with small blind stitches, the bottom piece first.
    [raw] Sew around raw edges with a close stitch.
   *[both] Sew folds down with small blind stitches, the bottom piece first; sew around raw edges with a close stitch.
} Take out pins and { -basting }, count the pins, and press from the back on something soft.
    .title = Sew down

picture-applique-piece-cut = Piece { $letter }, its fold traced inside its edge
picture-applique-piece-turned = Piece { $letter }, turned under
picture-applique-piece-raw = Piece { $letter }, cut on its line
picture-applique-block-letters = The block with its appliqué, each piece with its letter
picture-applique-block = The block with its appliqué

## What the lessons are called, and what each method is good for

technique-applique = Pieces of any outline are laid on a pieced background, and sewn down around their edges: leaves, letters, curves that no seam could join.
    .title = Appliqué
technique-cut-patches = Every patch is cut by itself, with its seam allowance, and sewn to its { -neighbor }. It suits every design and wastes no fabric; triangles have edges that stretch, so cut and handle them gently.
    .title = Piecing from single patches
technique-eight-at-a-time = Two large squares and four seams give eight half-square triangle units, all alike.
    .title = Eight at a time
technique-foundation = Patches are sewn to a printed paper along its lines, so that even narrow points come out exactly. They are cut oversized and trimmed as you go. The fabric shows the mirror image of the print.
    .title = Foundation piecing
technique-four-at-a-time = One large square and four small ones give four flying geese without a triangle to cut and without waste.
    .title = Four at a time
technique-over-papers = Every piece is folded around a paper of its finished size, { -basted }{ -serial } and sewn to the next by hand, fold to fold. Set-in corners are as easy as straight seams, and all of it can be done away from the machine.
    .title = English paper piecing
technique-stitch-and-flip = A small square is sewn across the corner of a larger piece, trimmed and pressed over. There are no triangles to cut; the corners you cut off are left over.
    .title = Stitch and flip
technique-strip-set = Long strips are sewn side by side and cut across into segments: many seams in one, all segments alike.
    .title = Strip sets
technique-two-at-a-time = Two squares are sewn together on both sides of a diagonal line and cut apart between the seams. The stretchy edges are sewn before they are cut, so they cannot stretch.
    .title = Two at a time

topic-a-piece-on-its-ground = A piece on its background
topic-flying-geese = Flying geese
topic-four-patch-and-checkerboard = Four-patch and checkerboard
topic-half-square-triangle = Half-square triangle
topic-half-square-triangles = Half-square triangles
topic-hourglass = Hourglass
topic-patches-on-a-paper = Patches on a paper
topic-patches-over-papers = Patches over papers
topic-quarter-circles-and-fans = Quarter circles and fans
topic-quarter-square-unit = Quarter-square unit
topic-snowball-corners = Snowball corners
topic-split-square = Split square
topic-square-in-a-square = Square in a square
topic-squares-and-rectangles = Squares and rectangles
topic-stars-of-many-diamonds = Stars of many diamonds
topic-strips-one-above-the-other = Strips one above the other
topic-strips-side-by-side = Strips side by side

# The columns of tables of common sizes.

head-finished = Finished
head-should-measure = Should measure
head-segment-width = Segment width
head-oversized = { $head }, oversized
head-4-corner-squares = 4 corner squares
head-all-four-squares = All four squares
head-base-square = Base square
head-both-squares = Both squares
head-corner-square-cut-once-2 = Corner: square, cut once → 2
head-corner-squares = Corner squares
head-goose-1-large-square = Goose: 1 large square
head-goose-1-rectangle = Goose: 1 rectangle
head-goose-square-cut-twice-4 = Goose: square, cut twice → 4
head-large-2-squares = Large: 2 squares
head-large-square-cut-once-2 = Large: square, cut once → 2
head-middle-square = Middle square
head-quarter-circle-square-for-its-template = Quarter circle: square for its template
head-sky-2-squares = Sky: 2 squares
head-sky-4-small-squares = Sky: 4 small squares
head-sky-square-cut-once-2 = Sky: square, cut once → 2
head-small-1-square-of-each = Small: 1 square of each
head-small-square-cut-twice-4 = Small: square, cut twice → 4
head-square-cut-once-2-triangles = Square, cut once → 2 triangles
head-square-cut-twice-4-triangles = Square, cut twice → 4 triangles
head-strip-width = Strip width
head-surround-square-for-its-template = Surround: square for its template

# Sizes.

sizes-title = { $topic }: common sizes
sizes-aside = { $unit ->
    [in] in inches, { $seam } seam allowance
   *[cm] in { -centimeters }, { $seam } seam allowance
}{ $wide ->
    [1] { "" }
   *[other] ; { $wide } : { $high }, width to height
}
sizes-caption = { $unit ->
    [in] { $topic } in common sizes: inches, { $seam } seam allowance on every side
   *[cm] { $topic } in common sizes: { -centimeters }, { $seam } seam allowance on every side
}{ $wide ->
    [1] { "" }
   *[other] , { $wide } : { $high }, width to height
}
sizes-remark = Finished: as it measures in the sewn block. Should measure: before it is joined, with a seam allowance of { $seam } on every side.
sizes-oversized = Oversized: cut so that every unit comes out at least { $extra } too large; trim it to the size it should measure.
section-shown = shown for { $size } finished
uses-title = { $count ->
    [1] { $topic } in { $block }
   *[other] { $topic } in these blocks
}
uses-more = { $count ->
    [one] 1 more unit of other sizes or fabrics.
   *[other] { $count } more units of other sizes or fabrics.
}
uses-head = { $spare ->
    [0] { $title }, make { $count }, { $size } finished.
   *[other] { $title }, make { $count } ({ $spare } spare), { $size } finished.
}
uses-of-block = { $block }: { $title }
uses-cut = Cut { $cuts }.
uses-piece-none = { $count } { $fabric } { $form } { $size }
uses-piece-once = { $count } { $fabric } { $form } { $size }, cut once
uses-piece-twice = { $count } { $fabric } { $form } { $size }, cut twice
uses-measure = Each should measure { $size } before it is joined.
take-care = Take care

## Triangle in a square

lesson-peak-cut = Cut strips and from them { $piece }s for the narrow triangles. Cut the wide triangle by its template. Hold the ruler down with a flat hand, fingertips away from its edge, and roll the cutter away from yourself.
    .title = Cut
lesson-peak-pairs = Place two rectangles right sides together and cut once from corner to corner. That gives two narrow triangles and their two mirror images: one of each goes into every unit.
    .title = Cut mirrored pairs
lesson-peak-dots = On the wrong side of every triangle, mark a dot { $seam } from both edges at the ends of its long edge. The points are cut at different angles: match the dots, not the tips.
    .title = Mark dots
lesson-peak-first = Place the narrow triangle on the left edge of the wide one, right sides together, long edges even. Match the dots; the tips extend at both ends. Pin, and sew { $seam } from the edge.
    .title = Sew the first side
lesson-peak-press = { $press ->
    [open] Press the seam open.
   *[side] Press the seam { -toward } the narrow triangle.
} Trim the dog-ears.
    .title = Press
lesson-peak-second = Place the mirror image on the other edge in the same way. Its seam crosses the first one just above the point. { $press ->
    [open] Press the seam open.
   *[side] Press the seam { -toward } the narrow triangle.
}
    .title = Sew the second side
lesson-peak-measure = The unit should now measure { $size }, with { $seam } beyond the point and the lower seams running into the corners. If it is larger, trim it to that size.
    .title = Trim and measure

picture-rectangle-from-strip = A rectangle cut from a strip
picture-pair-cut = Two rectangles right sides together, to be cut from corner to corner
picture-peak-dots = The wide triangle with a dot at each corner, a narrow one and its mirror image beside it
picture-peak-first = A narrow triangle on the left edge of the wide one, sewn
picture-peak-first-opened = The wide triangle with its left side opened
picture-peak-second = The second narrow triangle placed and sewn

## Log cabins

lesson-log-cut = Cut strips { $width } wide for the logs, and the middle square from one of them. Cut each log to its length from the cutting table: logs cut to length keep the block square. Hold the ruler down with a flat hand and roll the cutter away from yourself.
    .title = Cut
lesson-log-first = Place the first log on the top edge of the middle square, right sides together, edges even. Sew { $seam } from the edge.
    .title = Sew the first log
lesson-log-press = { $press ->
    [open] Press the seam open.
   *[side] Press the seam { -toward } the log: all seams of a log cabin point outward.
}
    .title = Press
lesson-log-second = Place the second log on the right edge, across the middle and the end of the first log, right sides together. Sew, and press as before.
    .title = Sew the second log
lesson-log-round = Go on in the same direction: the third log on the bottom edge, the fourth on the left edge. Each covers the whole edge.
    .title = Finish the round
lesson-log-square = Measure after every round. With four logs on, this one should measure { $size }; if it does not, check your seam allowance before you go on.
    .title = Measure the round
lesson-log-next = Begin the next round where the last one began. Lay the log along the edge that crosses two seams.
    .title = The next round
lesson-log-measure = With all rounds on, the block should now measure { $size }.
    .title = Measure

picture-log-laid = A log right sides together on what has been sewn
picture-log-opened = The middle square with its first log opened
picture-log-round-measured = The middle square with its first round, and its measures
picture-log-measured = The finished block, and its measures

## Eight-point stars

lesson-star-cut = Cut strips { $width } wide. Lay the 45° line of the ruler on an edge of the strip, cut off its end, then cut diamonds as far apart as the strip is wide, measured square to the cut. Hold the ruler down with a flat hand and roll the cutter away from yourself.
    .title = Cut diamonds
lesson-star-dots = On the wrong side of every diamond, triangle{ -serial } and square, mark a dot { $seam } from both edges at each corner: there the seam lines cross, and there seams stop.
    .title = Mark dots
lesson-star-pairs = Place two diamonds right sides together, all edges even. Sew one edge from the point at the middle of the star to the dot at its other end; backstitch. Make four pairs alike.
    .title = Sew pairs
lesson-star-press = { $press ->
    [open] Press the seam open.
   *[side] Press the seam of every pair { -toward } the same fabric, so that all seams turn one way around the star.
}
    .title = Press
lesson-star-triangle = Place a side triangle on one diamond, right sides together, its square corner at the dot where the seam stops, a short edge along the free edge of the diamond. Sew from that dot to the outer end.
    .title = Set in a triangle
lesson-star-quarters = Swing the other short edge of the triangle to the free edge of the other diamond. Sew from the same dot to the outer end. Press both seams { -toward } the diamonds. Make four quarters.
    .title = The second edge
lesson-star-halves = Place two quarters right sides together and sew from the middle to the dot; backstitch. { $press ->
    [open] Press the seam open.
   *[side] Press the seam the same way around as those of the pairs.
} Make two halves.
    .title = Sew halves
lesson-star-join = Place the halves right sides together. { $press ->
    [open] Match the seams at the middle and pin. Sew from dot to dot; backstitch at both ends. Press the seam open.
   *[side] Nest the seams at the middle and pin. Sew from dot to dot; backstitch at both ends. Press from the middle outward and fan the seams open there.
}
    .title = Join the halves
lesson-star-squares = Set a square into each corner in the same way as the triangles. The block should now measure { $size }, with { $seam } beyond each point.
    .title = Set in the squares

picture-diamonds-cut = A strip cut at 45 degrees into diamonds
picture-star-dots = A diamond, wrong side up, with a dot at each corner
picture-star-pair = Two diamonds together, sewn from the middle to the dot
picture-star-pair-opened = A pair of diamonds opened; arrows show the way to press
picture-star-triangle = A triangle on one diamond, sewn from the dot outward
picture-star-quarter = A quarter: two diamonds and their triangle
picture-star-half = A half of the star with its triangles
picture-star-joined = The star with its triangles, its corners still open
picture-star-measured = The finished star, and its measures

## Set-in seams

lesson-set-in-dots = On the wrong side of all three pieces, mark a dot { $seam } from both edges at the corner where they meet. There the seam lines cross.
    .title = Mark dots
lesson-set-in-stop = Place the first two pieces right sides together, dots matched. Sew their short slanted edge from the outer end to the dot; backstitch. Leave the allowance beyond the dot open.
    .title = Stop at the dot
lesson-set-in-press = Open the pair and press the seam to one side or open. The two free edges make a V.
    .title = Press
lesson-set-in-first = Place the square on one of the two pieces, right sides together, its corner at the dot, edges even. Sew from the dot to the outer end; backstitch at the dot.
    .title = Sew the first edge
lesson-set-in-second = Swing the next edge of the square to the free edge of the other piece; fold what is in the way aside. Sew from the same dot to the outer end.
    .title = Sew the second edge
lesson-set-in-measure = Press both seams away from the square, or as your block says. Trim the dog-ears. The corner lies flat when all seams stop at one dot; if it puckers, take out a stitch beyond the dot. The unit should now measure { $size }.
    .title = Press and measure

picture-set-in-dots = Three pieces with a dot at the corner where they meet
picture-set-in-stopped = Two pieces together, their seam stopping at the dot
picture-set-in-pair = The pair opened, a V between its free edges
picture-set-in-first = The square on one piece, sewn from the dot outward
picture-set-in-second = The square on the other piece, sewn from the dot outward
picture-set-in-measured = The finished unit, and its measures

## Partial seams

lesson-partial-lay = Place the first strip on the top edge of the square, right sides together, right ends even; its left end extends. Sew from the right end over about two thirds of the edge of the square; backstitch at the dot. Leave the rest open.
    .title = Sew part of the first seam
lesson-partial-press = Press the sewn part { -toward } the strip.
    .title = Press
lesson-partial-second = Place the second strip on the right edge, across the square and the end of the first strip. Sew the whole edge. { $press ->
    [open] Press the seam open.
   *[side] Press the seam { -toward } the strip.
}
    .title = Sew the second strip
lesson-partial-third = Place the third strip on the bottom edge, across the square and the end of the second strip. Sew, and press as before.
    .title = Sew the third strip
lesson-partial-last = Fold the loose end of the first strip out of the way. Place the fourth strip on the left edge, across the square and the end of the third strip. Sew, and press as before.
    .title = Sew the fourth strip
lesson-partial-finish = Place the loose end of the first strip on the top edge again, right sides together, edges even. Sew from a little before the dot, over the last stitches, to the left end. { $press ->
    [open] Press the seam open.
   *[side] Press the seam { -toward } the strip.
}
    .title = Finish the first seam
lesson-partial-measure = The unit should now measure { $size }.
    .title = Measure

picture-partial-laid = A strip on the top edge of the square, sewn in part
picture-partial-opened = The first strip opened; its left end is loose
picture-partial-strip-laid = The next strip right sides together, sewn along the whole edge
picture-partial-folded = The loose end of the first strip folded away, the fourth strip sewn
picture-partial-finish = The first seam sewn to its end
picture-partial-measured = The finished unit, and its measures

## Mitered corners

lesson-miter-cut = Cut two strips for the sides and two for the top and the bottom, each as long as the finished quilt with its border and a little to spare. Mark the middle of each strip and of each edge, and a dot { $seam } from both edges at each corner of the quilt { -center }.
    .title = Cut and mark
lesson-miter-sew = Place a strip on one edge, right sides together, middles matched; it extends equally at both ends. Sew from dot to dot, { $seam } from the edge; backstitch at both.
    .title = Sew from dot to dot
lesson-miter-second = Sew the strip of the next edge in the same way. Fold the first one out of the way: both seams stop at the same dot.
    .title = The next edge
lesson-miter-fold = Fold the quilt { -center } diagonally, right sides together, so that the two strips lie edge to edge. With a ruler, draw a line on from the fold, at 45°, from the dot to the outer edge.
    .title = Fold and draw
lesson-miter-stitch = Pin the strips along the line. Sew on it from the dot outward; backstitch at the dot. Open the corner and check that it lies flat.
    .title = Sew the { -miter }
lesson-miter-trim = Trim the strips { $seam } outside the seam. Cut with scissors, or hold the ruler down with a flat hand and roll the cutter away from yourself.
    .title = Trim
lesson-miter-press = Press the { -miter } open and the long seams { -toward } the border.
    .title = Press

picture-miter-strips = A corner of the quilt with two border strips, longer than its edges
picture-miter-first = A strip sewn to one edge, its seam stopping at the dot
picture-miter-second = A strip sewn to the next edge, its seam stopping at the same dot
picture-miter-folded = The quilt folded diagonally, the strips edge to edge, a line from the dot to the outer edge
picture-miter-sewn = The strips sewn together on the line
picture-miter-trimmed = The strips to be cut a seam allowance outside the seam
picture-miter-opened = The corner opened, its { -miter } pressed open

## Continuous bias

lesson-bias-cut = Cut a square with its edges along the threads, and cut it once from corner to corner. A square gives about as much bias strip as its area divided by the width of the strip. Hold the ruler down with a flat hand and roll the cutter away from yourself.
    .title = Cut the square
lesson-bias-sew = Place one triangle on the other, right sides together, two straight edges even, the points extending { $seam } at both ends. Sew { $seam } from the edge with small stitches. Press the seam open.
    .title = Sew the triangles
lesson-bias-mark = Lay the piece with its long slanted edges, the bias edges, at the top and bottom. On the wrong side, draw lines parallel to them, as far apart as the binding strip is wide. Trim off what is left beyond the last whole strip.
    .title = Draw lines
lesson-bias-tube = Bring the two straight edges together, right sides together, to make a tube. Shift one by a line: line 1 meets line 1, so that one end extends at each side. Match the lines { $seam } from the edge, pin{ -serial } and sew. Press the seam open.
    .title = Sew a tube
lesson-bias-strip = Start at the end that extends. Cut with scissors along the line, around and around the tube: one long strip.
    .title = Cut the strip
lesson-bias-fold = Fold the strip lengthwise, wrong sides together, and press without pulling: bias stretches.
    .title = Fold and press

picture-bias-triangles = Two triangles together, sewn along a straight edge
picture-bias-lines = The piece with lines parallel to its long edges
picture-bias-matched = The piece, the ends of its lines numbered as they meet, shifted by one line
picture-bias-cutting = The tube, lying flat, with one long line around it and a cut along the line
picture-bias-folded = The strip, half of it folded lengthwise

technique-set-in-seams = Where three pieces meet in one corner, no straight seam can join the last one. Seams stop at a dot, and the last piece is set in edge by edge.
    .title = Set-in seams
technique-partial-seams = Where strips run around a square like the arms of a windmill, no strip is last. The first seam is sewn in part, and finished when all the others are on.
    .title = Partial seams
technique-mitered-corners = Border strips meet at 45° in the corners, like a picture frame. The strips are cut longer, and their seams stop at the corner.
    .title = { -mitered-first } corners
technique-continuous-bias = Curved edges, and bindings that must wear well, need strips cut on the bias. A square, cut once and sewn twice, gives one long strip.
    .title = Continuous bias
topic-triangle-in-a-square = Triangle in a square
topic-log-cabins = Log cabins
topic-eight-point-stars = Eight-point stars
topic-a-square-set-into-a-corner = A square set into a corner
topic-four-strips-around-a-square = Four strips around a square
topic-the-corner-of-a-border = The corner of a border
topic-a-bias-strip-from-a-square = A bias strip from a square
picture-star-large-diamond = A large diamond of small ones
