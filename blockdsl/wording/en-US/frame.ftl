# The frame of every step: title, what is taken, measures, lists.

list-pair = { $first } and { $last }
list-more = { $first }, and { $last }
list-comma = ,{ " " }
list-semicolon = ;{ " " }

length = { $length } { $unit }
# A figure without its unit that no ruler shows.
figure-about = about { $figure }
length-about = about { $length } { $unit }
size = { $width } × { $height } { $unit }
size-about = about { $width } × { $height } { $unit }

# At the foot of a step that is a picture of its own, without the sheet's cautions.
step-care = Close the cutter, mind the hot iron, count pins; keep children and pets away.

step-make = make { $count }
step-size = { $size } finished
step-take = Take { $list }.
step-as-in = Do as in step { $number }, with these pieces.
step-take-each = For each, take { $list }.
