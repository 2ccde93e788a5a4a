# Words that British English has of its own.

-toward = towards
-center = centre
-color = colour
-upper-left = top left
-upper-right = top right
-lower-left = bottom left
-lower-right = bottom right
-serial = { "" }
-baste = tack
-basting = tacking
-centimeter = centimetre
-neighbors = neighbours
-baste-first = Tack
-basted = tacked
-neighbor = neighbour
-centimeters = centimetres
-miter = mitre
-mitered = mitred
