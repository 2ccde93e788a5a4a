# Units on foundation papers, where British English differs.

papers-stitch = 6 to the centimetre
papers-join = Place { $before } on { $after }, right sides together, the edges marked { $join } even, the { $marks } at the same end; pin. Sew on the dashed line. Remove the paper from the seam allowance. Press the seam towards { $toward }.
