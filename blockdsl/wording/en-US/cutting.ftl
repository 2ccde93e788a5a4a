# What is said of the cutting table.

squaring-up =
    Strip sets are cut { $first } { $unit } longer than their segments for squaring up the ends, and { $again } { $unit }
    longer each time a set is squared up again, after every third segment.

# Which way the print of a fabric with an up and a down lies on a template.
print-up-on-template = print up { -toward } the { $side } of the template

side-top = top
side-upper-right = upper right
side-right = right side
side-lower-right = lower right
side-bottom = bottom
side-lower-left = lower left
side-left = left side
side-upper-left = upper left
