# Was über die Zuschneidetabelle gesagt wird.

squaring-up =
    Streifensets werden zum Begradigen der Enden { $first } { $unit ->
        [in] Zoll
       *[cm] cm
    } länger zugeschnitten als ihre Segmente zusammen, und um { $again } { $unit ->
        [in] Zoll
       *[cm] cm
    } länger für jedes weitere Begradigen nach jedem dritten Segment.

# Wie der Druck eines Stoffes mit Oben und Unten auf einer Schablone liegt.
print-up-on-template = Motiv zeigt auf der Schablone nach { $side }

side-top = oben
side-upper-right = oben rechts
side-right = rechts
side-lower-right = unten rechts
side-bottom = unten
side-lower-left = unten links
side-left = links
side-upper-left = oben links
