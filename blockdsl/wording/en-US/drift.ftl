# What is said before the first cut where rounding to the ruler adds up. $row is what is too long: "3 A in a row".

rounding-adds-up =
    Rounded up to { $measure } { $unit }, the cut sizes add up: { $row } come out { $real } long where { $drawn } fits,
    and seams end up more than { $off } out of place.
rounding-adds-up-seams =
    Rounded up to { $measure } { $unit }, the cut sizes add up, and seams end up more than { $off } out of place.
drift-one = pieces { $letter }
drift-alike = { $count } pieces { $letter } in a row
drift-mixed = { $list } in a row
drift-some = { $count } { $letter }
use-templates = Cut { $letters } with { $count ->
    [one] its template
    *[other] their templates
  } instead of the ruler.
use-finer = Or have the sizes worked out to { $measure } { $unit }.
use-size = The seams meet at a finished size of { $sizes }.
use-method = Or sew { $what } to foundation papers.
drift-either = { $first } or { $second }
