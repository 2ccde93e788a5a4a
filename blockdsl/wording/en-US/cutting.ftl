# What is said of the cutting table.

squaring-up =
    Strip sets are cut { $first } { $unit } longer than their segments for squaring up the ends, and { $again } { $unit }
    longer each time a set is squared up again, after every third segment.
