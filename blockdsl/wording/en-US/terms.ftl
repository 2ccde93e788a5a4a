# Words that British English has of its own, for every message that needs them.

-toward = toward
-center = center
-color = color
-colorway = colorway
-colorways = colorways
-colorways-first = Colorways
-upper-left = upper left
-upper-right = upper right
-lower-left = lower left
-lower-right = lower right
-serial = ,
-baste = baste
-basting = basting
-centimeter = centimeter
-neighbors = neighbors
-baste-first = Baste
-basted = basted
-neighbor = neighbor
-centimeters = centimeters
-miter = miter
-selvages = selvages
-mitered-first = Mitered
-mitered = mitered

place-top = top
place-bottom = bottom
place-left = left
place-right = right
place-upper-left = { -upper-left }
place-upper-right = { -upper-right }
place-lower-left = { -lower-left }
place-lower-right = { -lower-right }
