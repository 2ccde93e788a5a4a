# Sentences of the steps that join patches and units.

the = the { $name }
one = one { $name }
other = the other { $name }
another = another { $name }
list-pairs = { $count ->
    [2] { $first } and { $other } twice
   *[other] { $first } and { $other } { $count } times
}
list-each = { $list }, each with { $shows }
list-repeated = { $count ->
    [2] { $first }, then { $other } and { $first } twice
   *[other] { $first }, then { $other } and { $first } { $count } times
}

# In which order.
way-right = left to right
way-down = top to bottom
way-bottom = top to bottom
way-lower-right = upper left to lower right
way-upper-right = lower left to upper right
way-left = right to left
way-top = bottom to top
way-lower-left = upper right to lower left
way-upper-left = lower right to upper left

# What shows how a part lies: "with …"; without "its" in the brackets of a list.
shows-seen = { $fabric } at the { $pos }
shows-middle = { $count ->
    [one] { $fabric } in the middle of its { $pos } edge
   *[other] { $fabric } in the middle of their { $pos } edges
}
shows-point = { $has ->
    [no] point at the { $pos }
   *[yes] { $count ->
        [one] its point at the { $pos }
       *[other] their points at the { $pos }
    }
}
shows-square-corner = { $has ->
    [no] square corner at the { $pos }
   *[yes] { $count ->
        [one] its square corner at the { $pos }
       *[other] their square corners at the { $pos }
    }
}
shows-sharp-corner = { $has ->
    [no] sharpest corner at the { $pos }
   *[yes] { $count ->
        [one] its sharpest corner at the { $pos }
       *[other] their sharpest corners at the { $pos }
    }
}
shows-a-sharp-corner = a sharp corner at the { $pos }
shows-long-edge = { $has ->
    [no] long edge at the { $pos }
   *[yes] { $count ->
        [one] its long edge at the { $pos }
       *[other] long edges at the { $pos }
    }
}
shows-short-edge = { $has ->
    [no] short edge at the { $pos }
   *[yes] { $count ->
        [one] its short edge at the { $pos }
       *[other] short edges at the { $pos }
    }
}
shows-upright-edges = two edges upright
shows-level-edges = two edges level
shows-mark = { $has ->
    [no] TOP mark at the { $pos }
   *[yes] { $count ->
        [one] its TOP mark at the { $pos }
       *[other] their TOP marks at the { $pos }
    }
}
with-landmark-each = { $part } (each with { $shows })
with-landmark = { $part } ({ $shows })

join-lay = Lay { $part } with { $shows }.
join-lay-both = { $has ->
    [yes] Lay both { $what } with { $shows }.
   *[no] Lay both with { $shows }.
}
join-lay-all = { $has ->
    [yes] Lay all { $what } with { $shows }.
   *[no] Lay all with { $shows }.
}
join-lay-on-point = { $has ->
    [yes] Lay { $part } on point, with { $shows }.
   *[no] Lay { $part } on point.
}
join-turn = { $quarters ->
    [2] { $part } is { $like } rotated a half turn.
   *[other] { $part } is { $like } rotated a quarter turn.
}

# Sewing.
# How a seam is sewn, behind what is sewn to what: $sides `yes` where right sides are named, $lies `yes` where $shows says how
# the part lies, $meeting how seams meet, $same `yes` where all is as in the sentence before.
seam-how = { $same ->
    [yes] {" "}in the same way
   *[no] { $sides ->
        [yes] , right sides together
       *[no] { "" }
    }{ $lies ->
        [yes] , with { $shows }
       *[no] { "" }
    }{ $meeting ->
        [nest] , nesting the seams
        [match] , matching the seams
       *[none] { "" }
    }
}
# By which edge it is sewn, of one part and of several alike.
seam-edge = { $edge ->
    [long] {" "}by its long edge
    [short] {" "}by its short edge
    [longer] {" "}by its longest edge
    [middle] {" "}by its middle edge
    [shortest] {" "}by its shortest edge
   *[none] { "" }
}
seam-edges = { $edge ->
    [long] by their long edges
    [short] by their short edges
    [longer] by their longest edges
    [middle] by their middle edges
    [shortest] by their shortest edges
   *[none] each by its edge
}
edge-long = long edge
edge-short = short edge
edge-longer = longest edge
edge-middle = middle edge
edge-shortest = shortest edge
edge-at = { $edge } at the { $pos }
edge-side = { $pos } edge
join-sew = Sew { $part }{ seam-edge } to the { $side } edge of { $base }{ seam-how }.
join-sew-its = Sew { $part }{ seam-edge } to its { $side } edge{ seam-how }.
join-sew-both = Sew 2 { $part }{ $edge ->
    [none] { "" }
   *[other] { " " }{ seam-edges }
} to the { $edges } edges of { $base }{ seam-how }.
join-sew-both-its = Sew 2 { $part }{ $edge ->
    [none] { "" }
   *[other] { " " }{ seam-edges }
} to its { $edges } edges{ seam-how }.
join-sew-two = Sew 2 { $part } { seam-edges } to the { $edges } edges of { $base }{ seam-how }, creases matched.
many-long = long edges
many-short = short edges
many-longer = longest edges
many-middle = middle edges
many-shortest = shortest edges
join-place-alike = Place one { $name } on the other, right sides together, { $edges } even.
join-sew-facing = Sew the { $first } edge of { $part } to the { $second } edge of { $base }{ seam-how }.
the-other = the other
join-nest = Nest the seams and pin.
join-match = Match the seams and pin.
join-sew-alike = Sew one { $name } to the { $side } edge of the other{ seam-how }.
join-sew-edge = Sew the { $edge }.
join-place = Place { $part } on { $base }, right sides together, all edges even{ $lies ->
    [yes] , { $shows }
   *[no] { "" }
}.
join-dot-as = Mark dots on each { $parts }, as in step { $number }.
join-dot-long = On the wrong side of each { $parts }, mark a dot { $length } from both edges at each end of its long edge.
join-place-long = Place { $part } on { $base }, right sides together, long edges even.
join-place-long-as = Place { $part } on { $base }, dots matched, and sew the long edge as in step { $number }.
join-place-long-hand = Place { $part } on { $base }, right sides together, long edges even, the narrow corner of each on the wide corner of the other.
join-match-dots = Match the dots, so that the narrow corner of each extends beyond the wide corner of the other; pin.
join-points = { $several ->
    [yes] Their points extend { $length } at both ends.
    [again] Their points extend { $length }.
    [one-again] Its points extend { $length }.
   *[no] Its points extend { $length } at both ends.
}
join-points-of = The points of { $part } extend { $length } at both ends.
join-point-each = Its point extends { $length } at the { $pos } end, that of { $part } at the other.
# At a dot every seam is backstitched; a block says so where it first stops at one.
join-stop-at-dot = Stop at the dot at the { $pos } end{ $again ->
    [yes] {""}
   *[no] ; backstitch
}.
join-dot-to-dot = Sew from dot to dot{ $again ->
    [yes] {""}
   *[no] ; backstitch at both
}.
row-each-seam = each seam
row-seams = { $count ->
    [one] seam { $numbers }
   *[other] seams { $numbers }
}
join-row-dot-to-dot = Sew { $seams } from dot to dot{ $again ->
    [yes] {""}
   *[no] ; backstitch at both ends
}.
join-row-stop = Stop { $seams } at the dot at the { $pos } end{ $again ->
    [yes] {""}
   *[no] ; backstitch
}.
join-in-order = Sew them together in order from { $way }{ seam-how }.
join-row = Sew them together from { $way }{ seam-how }: { $list }.
join-row-turning = Sew them together from { $way }, one stretch at a time, from dot to dot: { $list }.
join-turn-at-dots = At each dot, stop with the needle down and turn the work to the next two edges.
join-row-list = { $name }, { $way }: { $list }.
join-rows = { $way ->
    [row] Sew each row together{ seam-how }.
   *[column] Sew each column together{ seam-how }.
}
join-row-number = { $way ->
    [row] row { $number }
   *[column] column { $number }
}
join-joined = the joined pieces
join-pin-top = Pin a TOP mark to its { $pos } edge.
join-trim = Trim the dog-ears.
join-trim-as = Trim as in step { $number }.
join-trim-to = Trim { $each ->
    [yes] each
   *[no] it
} to { $width } × { $height } { $unit }, with the seam { $points ->
    [yes] { $seam } inside two opposite corners
   *[no] from corner to corner
}.
join-crease = Crease the middle of each edge of { $base } and of each long edge of { $parts }.
join-crease-units = Crease the middle of each edge of { $base } and of the long edge of each { $parts }.
join-dot = On the wrong side of each { $parts }, mark a dot { $length } from both edges at each corner.

# Partial and set-in seams.
-before-stop = 1/2 in
join-place-partial = { $has ->
    [yes] Place { $part } on { $base }, right sides together, a { $edge } { $unit } edge of { $name } on the { $side } edge of { $base }, { $even } ends even. The { $rest } end of { $name } extends beyond { $base }.
   *[no] Place { $part } on { $base }, right sides together, on the { $side } edge of { $base }, { $even } ends even. The { $rest } end of { $name } extends beyond { $base }.
}
join-sew-partial = Sew the first { $length } from the { $even } end; backstitch. Leave the rest open.
join-fold = Fold the loose end of { $part } out of the way.
join-close = Place the loose end of { $part } on the { $side } edge of { $onto }, right sides together, edges even.
join-close-sew = Sew from { -before-stop } before the stop to the { $pos } end.
join-set-in = Set { $part } into the V at the { $pos }{ $has ->
    [yes] {" "}of { $base }
   *[no] {""}
}{ seam-how }. Place one edge at a time, right sides together, the corner of the V at the dot where the seam stops.
join-set-in-sew = Sew each edge from that dot to its outer end{ $again ->
    [yes] {""}
   *[no] ; backstitch at the dot
}.
join-set-in-same = { $here ->
    [yes] In the same way, set { $part } into the V at the { $pos }{ seam-how }.
   *[no] Set { $part } into the V at the { $pos }{ seam-how }, as { $name } in step { $number }.
}
join-turning = Sew { $part } to the { $pos } edge of { $base }{ seam-how }, one stretch at a time, from dot to dot. At each dot stop with the needle down and turn the work until the next two edges are even.
join-turning-again = Sew { $part } to the { $pos } edge of { $base }{ seam-how }, from dot to dot, turning at each.
join-set-in-each = Set { $part } into each V, as { $name } in step { $number }.
join-set-in-hand = Set { $part } into the V at the { $pos }{ seam-how }, folding the papers at the corner.

# Curves.
join-curve-crease = Crease the middle of each curved edge.
join-curve-place = Place { $upper } on { $under }, right sides together, curved edges even, middles matched; pin.
join-curve-pin = Bring the straight ends even and pin both, then the marks between.
join-curve-sew = Sew the curved edge with { $upper } on top, easing it to lie flat under the needle.
join-curve-as = Place { $upper } on { $under }, right sides together, curved edges even, and sew the curve as in step { $number }.
join-curve-same = Sew { $upper } on { $under } along the curve in the same way, with { $upper } on top.

# English paper piecing.
join-baste = Fold the edges of each piece over its paper and baste them.
join-baste-same = Baste the pieces to their papers.
join-whip-same = Whip-stitch all seams.
join-whip = Whip-stitch all seams, right sides together, corner to corner, through the folds alone.
join-papers-in = Leave the papers in.
join-papers-out = Press from the back. Take out the basting and the papers, and press the outer edges open.

# Pressing.
press-open = { $has ->
    [yes] Press the { $count ->
        [one] seam
       *[other] seams
    } of { $row } open.
   *[no] { $count ->
        [one] Press the seam open.
        [2] Press both seams open.
       *[other] Press all seams open.
    }
}
press-toward = { $has ->
    [yes] Press the { $count ->
        [one] seam
       *[other] seams
    } of { $row } { -toward } { $name }.
   *[no] { $count ->
        [one] Press the seam { -toward } { $name }.
        [2] Press both seams { -toward } { $name }.
       *[other] Press all seams { -toward } { $name }.
    }
}
press-toward-way = { $has ->
    [yes] Press the { $count ->
        [one] seam
       *[other] seams
    } of { $row } { -toward } the { $pos }.
   *[no] { $count ->
        [one] Press the seam { -toward } the { $pos }.
        [2] Press both seams { -toward } the { $pos }.
       *[other] Press all seams { -toward } the { $pos }.
    }
}
press-away = { $has ->
    [yes] Press the { $count ->
        [one] seam
       *[other] seams
    } of { $row } away from { $name }.
   *[no] { $count ->
        [one] Press the seam away from { $name }.
        [2] Press both seams away from { $name }.
       *[other] Press all seams away from { $name }.
    }
}
press-either = Press the seam to either side.
press-inward = { $has ->
    [yes] Press the seams of { $row } { -toward } its middle.
   *[no] { $count ->
        [2] Press both seams { -toward } the middle.
       *[other] Press all seams { -toward } the middle.
    }
}
press-outward = { $has ->
    [yes] Press the seams of { $row } away from its middle.
   *[no] { $count ->
        [2] Press both seams away from the middle.
       *[other] Press all seams away from the middle.
    }
}
press-by-number = Press { $several ->
    [yes] seams
   *[no] seam
} { $first } { $has ->
    [yes] of { $row }{" "}
   *[no] {""}
}{ -toward } the { $one } and { $more ->
    [yes] seams
   *[no] seam
} { $second } { -toward } the { $other }.
# The seam through the middle of a star: from there outward it goes to one side in one half and to the other beyond.
press-fan = From the { -center } outward, press the seam { -toward } { $name }, and fan the seams open at the { -center }.
press-fan-halves = From the { -center } outward, press the { $half } half of the seam { -toward } the { $way } and the { $rest } half { -toward } the { $back }, and fan the seams open at the { -center }.
press-by-row = Press the { $count ->
    [one] seam
   *[other] seams
} of { $way }{ $several ->
    [yes] s
   *[no] {""}
} { $rows } { -toward } the { $one } and { $count ->
    [one] that
   *[other] those
} of { $way }{ $more ->
    [yes] s
   *[no] {""}
} { $others } { -toward } the { $other }.
press-each = Press each seam { $way ->
    [away] away from
   *[toward] { -toward }
} the piece just added.
press-sewn = Press the sewn part { -toward } { $name }.

# Measures.
measure-points = { $count ->
    [one] { $size }, with { $length } beyond the point
   *[other] { $size }, with { $length } beyond each point
}
measure-across = { $length } across
measure-long = { $length } along its long edge
measure-along = { $length } along the { $pos } edge
