# Units on foundation papers, where British English differs.

papers-stitch = 6 to the centimetre
papers-press-toward = Press the seam towards { $section }.
