# Wörter in Bildern, und was Bilder zeigen, für alle, die sie nicht sehen können.

# Wie ein Buchstabe aus einem Streifen, Rechteck oder Quadrat geschnitten wird.
cut-picture = Zuschneiden von { $letter }: { $how }.

# --- Zeichnen --------------------------------------------------------------------------------------

drafted-squares = gezeichnet auf { $across } × { $down } Quadraten: { $family }
drafted-compass = mit dem Zirkel gezeichnet auf { $across } × { $down } Quadraten: { $family }
drafted-eight-point = gezeichnet auf einem Achterstern-Raster (√2): { $family }
drafted-eight-point-parts = gezeichnet auf einem Achterstern-Raster (√2) von { $across } × { $down } Feldern: { $family }
drafted-sixty-degrees = gezeichnet auf einem 60°-Raster (√3): { $family }
drafted-sixty-degrees-parts = gezeichnet auf einem 60°-Raster (√3) von { $across } × { $down } Feldern: { $family }
drafted-none = auf kein brauchbares gleichmäßiges Raster gezeichnet; eigene Felder: { $across } × { $down }: { $family }
drafted-listed = { $squares }, geführt als { $family }
drafted-uneven = die Felder sind nicht alle gleich
drafted-cell = jedes Feld { $finished } fertig, { $unfinished } mit Nahtzugabe
drafted-picture = { $block }, { $squares }; { $cell }.

# --- Ränder ----------------------------------------------------------------------------------------

border-top = Oberseite bisher
border-picture-sides-first = { $order ->
    [only] Die vier Seiten des Randes um die Oberseite, links und rechts zuerst.
   *[other] Die vier Seiten von Rand { $number } um die Oberseite, links und rechts zuerst.
}
border-picture-ends-first = { $order ->
    [only] Die vier Seiten des Randes um die Oberseite, oben und unten zuerst.
   *[other] Die vier Seiten von Rand { $number } um die Oberseite, oben und unten zuerst.
}
border-picture-mitered = { $order ->
    [only] Die vier Seiten des Randes um die Oberseite, Ecken auf Gehrung.
   *[other] Die vier Seiten von Rand { $number } um die Oberseite, Ecken auf Gehrung.
}
border-picture-squares-sides-first = { $order ->
    [only] Die vier Seiten des Randes um die Oberseite, mit Eckquadraten, links und rechts zuerst.
   *[other] Die vier Seiten von Rand { $number } um die Oberseite, mit Eckquadraten, links und rechts zuerst.
}
border-picture-squares-ends-first = { $order ->
    [only] Die vier Seiten des Randes um die Oberseite, mit Eckquadraten, oben und unten zuerst.
   *[other] Die vier Seiten von Rand { $number } um die Oberseite, mit Eckquadraten, oben und unten zuerst.
}
miter-dot = (1) bis zum Punkt nähen
miter-fold = (2) falten, auf der Linie nähen
miter-trim = (3) abschneiden, ausbügeln
miter-picture = Eine Gehrungsecke in drei Schritten: beide Nähte enden an einem Punkt in der Ecke; die Oberseite wird diagonal gefaltet und die Streifen werden auf der Bruchlinie zusammengenäht; die Nahtzugabe wird zurückgeschnitten und auseinandergebügelt.

# --- Fertigstellen ---------------------------------------------------------------------------------

backing-key = gestrichelt: Nähte; gepunktet: der Quilt
backing-picture = Die Rückseite in einem Stück, mit dem Quilt darauf.
backing-picture-vertical = Die Rückseite aus { $widths } Stoffbreiten mit senkrechten Nähten, mit dem Quilt darauf.
backing-picture-horizontal = Die Rückseite aus { $widths } Stoffbreiten mit waagerechten Nähten, mit dem Quilt darauf.
layers-picture = Drei Lagen, von oben nach unten: { $first }; { $second }; { $third }.
join-corner = von Ecke zu Ecke nähen
join-trim-open = abschneiden, ausbügeln
join-picture = Zwei Enden der Einfassung im rechten Winkel, von Ecke zu Ecke genäht, dann auseinandergebügelt.
corner-picture = Eine Ecke der Einfassung in drei Schritten: die Naht hört vor der Kante auf; der Streifen wird gerade nach oben gefaltet und bildet einen schrägen Bruch; er wird gerade nach unten gefaltet, bündig mit der Kante, und angenäht.
sleeve-back = Rückseite des Quilts
sleeve-picture = Der Tunnel an der oberen Kante der Rückseite, etwas kürzer als die Breite des Quilts.

# Titel der Bilder, die eigene Dateien sind.
picture-title-colorway = { $name }, { $colorway }
picture-title-letters = { $name }, Buchstaben
picture-title-grid = { $name }, Raster
picture-title-cutting = { $name }, Zuschneiden
picture-title-rows = { $name }, Reihen
picture-title-step = { $name }, Schritt { $number }
picture-title-squares = { $name }, auf Quadraten
