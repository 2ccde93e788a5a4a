# Das Blatt eines Blocks, seine Tabellen und Bilder, und dasselbe in Büchern und auf Webseiten.

# --- Überschriften ---------------------------------------------------------------------------------

sheet-finished = Fertige Größe
sheet-unfinished = Mit Nahtzugabe
sheet-grid = Raster, fertig
sheet-made-of = Besteht aus
sheet-level = Für wen
sheet-level-time = Für wen und wie lange
sheet-time = Zeit
# The address is one of the web, as it is printed.
sheet-qr = QR-Code von { $address }
sheet-photos = Bilder
sheet-see = Im Internet
sheet-notes = Notizen
sheet-source = Quelle
sheet-applique = Applikation
sheet-sizes = Zu den Maßen
sheet-care = Vorsicht
sheet-before-cutting = Vor dem Zuschneiden
sheet-letters = Teile nach Buchstaben
sheet-in-color = In Farbe
sheet-steps = Schritte
sheet-continued = { $title }, Fortsetzung
sheet-family = Familie: { $family }.
sheet-in-colorway = In der Farbvariante { $name }
sheet-by-maker = von { $maker }

# Wie viele es sind.
count-patches = { $count ->
    [one] { $number } Teil
   *[other] { $number } Teile
}
count-fabrics = { $count ->
    [one] { $number } Stoff
   *[other] { $number } Stoffe
}
count-pieces = { $count ->
    [one] { $number } Zuschnitt
   *[other] { $number } Zuschnitte
}
count-blocks = { $count ->
    [one] { $number } Block
   *[other] { $number } Blöcke
}
count-patchwork-blocks = { $count ->
    [one] { $number } Patchworkblock
   *[other] { $number } Patchworkblöcke
}
count-quilts = { $count ->
    [one] { $number } Quilt
   *[other] { $number } Quilts
}
count-strips = { $number } Streifen
count-lengths = { $count ->
    [one] { $number } Bahn
   *[other] { $number } Bahnen
}
count-borders = { $count ->
    [0] kein Rand
    [one] { $number } Rand
   *[other] { $number } Ränder
}
count-rows = { $count ->
    [one] { $number } Reihe
   *[other] { $number } Reihen
}
count-prints = { $count ->
    [one] { $number } Druckstoff
   *[other] { $number } Druckstoffe
}
count-fat-quarters = { $count ->
    [one] { $number } Fat Quarter
   *[other] { $number } Fat Quarters
}
count-widths = { $count ->
    [one] { $number } Stoffbreite
   *[other] { $number } Stoffbreiten
}
count-spare = { $number } übrig

value-light = hell
value-medium = mittel
value-dark = dunkel

# --- Maße und Raster -------------------------------------------------------------------------------

measure-finished = { $size } fertig
measure-unfinished = { $size } mit Nahtzugabe
measure-millimeters = { $length } mm
grid-squares = { $columns } × { $rows } Quadrate von { $size }
grid-rectangles = { $columns } × { $rows } Rechtecke von { $size }
grid-columns-range = { $count } Spalten, { $least } bis { $most } { $unit ->
    [in] Zoll
   *[cm] cm
} breit
grid-rows-range = { $count } Reihen, { $least } bis { $most } { $unit ->
    [in] Zoll
   *[cm] cm
} hoch
grid-columns = { $count ->
    [one] Spalte { $sizes }
   *[other] Spalten { $sizes }
} { $unit ->
    [in] Zoll
   *[cm] cm
}
grid-rows = { $count ->
    [one] Reihe { $sizes }
   *[other] Reihen { $sizes }
} { $unit ->
    [in] Zoll
   *[cm] cm
}

# Familien von Blöcken nach ihrem Raster.
family-four-patch = Vierer-Block
family-five-patch = Fünfer-Block
family-seven-patch = Siebener-Block
family-nine-patch = Neuner-Block
family-one-patch = Einteiler
family-rounds = Runden
family-curved = mit Rundungen
family-basket = Körbe
family-boat = Boote
family-cross = Kreuze
family-eight-point = mit acht Zacken
family-house = Häuser
family-letter = Buchstaben
family-octagon = Achtecke
family-square = Quadrate
family-star = Sterne
family-strips = Streifen
family-tree = Bäume
family-triangle = Dreiecke
family-eight-point-star = Stern mit acht Zacken
family-one-patch-of-hexagons = Einteiler aus Sechsecken
family-one-patch-of-sixty-degree-triangles = Einteiler aus 60°-Dreiecken
family-one-patch-of-tumblers = Einteiler aus Bechern
family-eight-point-design = Muster mit acht Zacken
family-sixty-degree-design = 60°-Muster
family-other = Andere Raster
family-oblong = rechteckiges Raster, { $across } × { $down }
family-uneven = ungleiches Raster, { $across } × { $down } Felder
family-grid = Raster von { $across } × { $down }

# --- was die Maße bedeuten -------------------------------------------------------------------------

sizes-allowance = Die Zuschnittmaße enthalten { $seam } Nahtzugabe und sind auf die nächsten { $measure } aufgerundet. Fertige Maße sind die im fertigen Quilt, ohne Nahtzugabe.
sizes-between-marks = Einige fertige Maße dieses Blocks liegen zwischen den Strichen des Lineals. Die Zuschnitte sind auf den nächsten Strich aufgerundet, die Einheiten werden also etwas zu groß: jede vor dem Zusammennähen auf das angegebene Maß beschneiden.
sizes-metric = Nach der üblichen metrischen Regel gibt man { $half } cm für Halbquadrat-Dreiecke und { $quarter } cm für Viertelquadrat-Dreiecke zu. Bei { $seam } cm Nahtzugabe fehlen damit { $halfshort } mm und { $quartershort } mm; darum sind die Quadrate hier etwas größer.
sizes-templates = Teile mit dem Vermerk „nach Schablone“ werden um die Schablonen in Originalgröße geschnitten; ihre Maße sagen, wie viel Stoff jedes braucht.

# Welche Kanten eines Buchstabens im schrägen Fadenlauf liegen; $edges zählt die folgenden Meldungen auf.
bias-edges = Kanten im schrägen Fadenlauf, wenn wie angegeben zugeschnitten wird: { $edges }. Schräge Kanten dehnen sich: vorsichtig anfassen und bügeln, ohne das Eisen zu schieben.
bias-all = alle Kanten von { $letters }
bias-long = { $count ->
    [one] die lange Kante von { $letters }
   *[other] die langen Kanten von { $letters }
}
bias-short = { $count ->
    [one] die kurze Kante von { $letters }
   *[other] die kurzen Kanten von { $letters }
}
bias-some = { $count } der { $of } Kanten von { $letters }
bias-outside = { $count ->
    [one] Auch die Außenkante von { $letters } liegt im schrägen Fadenlauf: vor dem Weiterarbeiten innerhalb der Nahtzugabe mit einer Stütznaht sichern.
   *[other] Auch die Außenkanten von { $letters } liegen im schrägen Fadenlauf: vor dem Weiterarbeiten innerhalb der Nahtzugabe mit einer Stütznaht sichern.
}

care-cutter = Rollschneider: beim Ablegen die Klinge schließen und vom Körper weg schneiden. Kinder und Haustiere fernhalten.
care-iron = Bügeleisen: Hände und Kabel von der Sohle fernhalten; ausschalten, wenn man den Tisch verlässt.
care-needles = Nadeln: vorher und nachher zählen und die Finger von der laufenden Nadel fernhalten.
care-tools = Die Anleitungen der eigenen Werkzeuge und Maschinen und die örtlichen Vorschriften beachten.

# --- Applikation -----------------------------------------------------------------------------------

applique-order = Zuerst den Block nähen und bügeln. Die Teile in der Reihenfolge ihrer Buchstaben auflegen, das unterste zuerst.
applique-turned = { $letters }: auf der durchgezogenen Linie der Schablone zuschneiden. Die gestrichelte Linie auf die rechte Stoffseite übertragen. Die Zugabe einschneiden, wo die Kante nach innen läuft, { $width } an der Linie nach hinten umschlagen, stecken und den Bruch mit kleinen, unsichtbaren Stichen annähen. Kanten flach lassen, wo ein anderes Teil sie verdeckt.
applique-turned-mixed = { $letters }: auf der durchgezogenen Linie der Schablone zuschneiden. Die gestrichelte Linie auf die rechte Stoffseite übertragen. Die Zugabe einschneiden, wo die Kante nach innen läuft, an der Linie nach hinten umschlagen, stecken und den Bruch mit kleinen, unsichtbaren Stichen annähen. Kanten flach lassen, wo ein anderes Teil sie verdeckt.
applique-raw = { $letters }: auf der Linie zuschneiden; keine Kante wird umgeschlagen. Jedes Teil mit Klebevlies oder Textilkleber nach Anleitung des Herstellers bei frischer Luft fixieren, ohne Kleber auf die Haut zu bringen, und die Kanten mit dichtem Zickzack- oder Langettenstich umnähen.
applique-care = Nadeln vorher und nachher zählen. Scharfe Scheren: von der Hand weg schneiden, die den Stoff hält.

# --- die Zuschneidetabelle -------------------------------------------------------------------------

cutting = Zuschneiden
cutting-sizes-in = Maße in Zoll, mit Nahtzugabe
cutting-sizes-cm = Maße in Zentimetern, mit Nahtzugabe
cutting-to-cut = { $count ->
    [one] { $number } Teil zuzuschneiden
   *[other] { $number } Teile zuzuschneiden
}
cutting-tick = { $count } { $piece } { $size }, { $fabric }
cutting-caption-in = Zuschnitte für { $block }: Maße in Zoll, mit Nahtzugabe
cutting-caption-cm = Zuschnitte für { $block }: Maße in Zentimetern, mit Nahtzugabe
cutting-caption-at-in = Zuschnitte für { $block }, { $finished } fertig: Maße in Zoll, mit Nahtzugabe
cutting-caption-at-cm = Zuschnitte für { $block }, { $finished } fertig: Maße in Zentimetern, mit Nahtzugabe
head-done = erledigt
head-fabric = Stoff
head-cut = Anzahl
head-piece = Form
head-size = Maß
head-width = Breite
head-height = Höhe
head-then = dann
head-patch = Teil
head-for = für
head-spare = übrig
head-in-all = gesamt
head-cutter = Stanze
head-in-place-of = statt

# Was zugeschnitten wird; nach Schablone, was kein Lineal schneidet.
cut-by-template = nach Schablone

# Was nach dem Zuschneiden mit einem Teil geschieht.
then-corner-once = { $count ->
    [one] einmal diagonal schneiden → { $number } Dreieck
   *[other] einmal diagonal schneiden → { $number } Dreiecke
}
then-corner-twice = { $count ->
    [one] zweimal diagonal schneiden → { $number } Dreieck
   *[other] zweimal diagonal schneiden → { $number } Dreiecke
}
then-triangles = { $count ->
    [one] → { $number } Dreieck
   *[other] → { $number } Dreiecke
}
then-patches = { $count ->
    [one] → { $number } Teil
   *[other] → { $number } Teile
}
then-segments = { $count ->
    [one] zum Set genäht → { $number } Segment
   *[other] zum Set genäht → { $number } Segmente
}
then-units = { $count ->
    [one] für { $number } Einheit
   *[other] für { $number } Einheiten
}
then-octagon = als Quadrat zuschneiden, dann alle vier Ecken im Winkel von 45° abschneiden
then-octagon-oblong = als Rechteck zuschneiden, dann alle vier Ecken im Winkel von 45° abschneiden
then-octagon-off = als Quadrat zuschneiden, dann alle vier Ecken im Winkel von 45° abschneiden, { $off } von jeder Ecke auf beiden Kanten
then-octagon-oblong-off = als Rechteck zuschneiden, dann alle vier Ecken im Winkel von 45° abschneiden, { $off } von jeder Ecke auf beiden Kanten
then-areas = { $purpose } { $areas }

# Streifen, aus denen Teile geschnitten werden: wie breit, in welchem Winkel, in welchem Abstand.
strips-one = aus einem Streifen von { $size } { $unit ->
    [in] Zoll
   *[cm] cm
}
strips-several = aus { $strips } Streifen, { $width } { $unit ->
    [in] Zoll
   *[cm] cm
} breit
strips-one-measure = aus einem Streifen, so breit wie das erste Maß
strips-several-measure = aus { $strips } Streifen, so breit wie das erste Maß
strips-template = { $strips }, nach Schablone
strips-cut = { $strips }, { $cuts }
strips-one-layer = { $strips }, einlagig, rechte Seite oben
strips-at = im Winkel von { $angle }° geschnitten
strips-at-every = im Winkel von { $angle }° alle { $every } geschnitten
strips-at-points = im Winkel von { $angle }° alle { $every } geschnitten; dann beide scharfen Spitzen abschneiden, { $across } voneinander
strips-end-one = ein Ende im Winkel von { $angle }° geschnitten
strips-ends-both = beide Enden im Winkel von { $angles } geschnitten
strips-square-turn = abwechselnd gerade und im Winkel von { $angle }° geschnitten
strips-square-turn-every = abwechselnd gerade und im Winkel von { $angle }° geschnitten, alle { $every } auf der längeren Kante
strips-turn = im Winkel von { $angles } geschnitten, das Lineal jedes Mal gewendet
strips-turn-every = im Winkel von { $angles } alle { $every } auf der längeren Kante geschnitten, das Lineal jedes Mal gewendet
strips-angle = { $angle }°
strips-angles = { $first }° und { $second }°
strips-second-measure = zweites Maß

# Wie ein Teil liegt, wohin sein Motiv zeigt und in welcher Richtung es diagonal geschnitten wird.
lies-upright = Motiv aufrecht
lies-print-long = Motiv entlang der langen Seite nach oben
lies-print-short = Motiv entlang der kurzen Seite nach oben
lies-short-down = kurze Seite unten, { $how }
lies-one-layer = einlagig, rechte Seite oben
lies-edge = für den Rand des Blocks
lies-edge-and = für den Rand des Blocks, { $lies }
lies-rising = { $lies }: einmal von unten links nach oben rechts schneiden
lies-falling = { $lies }: einmal von oben links nach unten rechts schneiden
lies-rising-opposite = { $lies }: einmal von unten links nach oben rechts schneiden (umgekehrt wie { $letter })
lies-falling-opposite = { $lies }: einmal von oben links nach unten rechts schneiden (umgekehrt wie { $letter })
lies-cut = { $lies } { $then }
lies-after = { $then }, { $lies }

# --- Schnitte im Winkel ----------------------------------------------------------------------------

angle-title = Schnitte im Winkel
angle-aside = rechte Stoffseite oben; gestrichelte Linien sind Schnitte
angle-one-size = Die Maße in diesen Bildern gelten für den Block mit { $size }.
angle-layers = Wo „einlagig“ steht, den Stoff nicht falten: die untere Lage ergäbe das Spiegelbild.
angle-ruler = Zuerst das Ende des Streifens begradigen, dann die Winkellinie des Lineals an seine Kante legen und vom Körper weg schneiden.
angle-corners = Auf beiden Kanten diesen Abstand von jeder Ecke markieren, das Lineal von Zeichen zu Zeichen legen und die Ecke vom Körper weg abschneiden. Alle Lagen werden gleich geschnitten.
angle-octagon = Achteck, Ecken ab
angle-rectangle = Rechteck, ein Schnitt
angle-turned = { $piece }, jedes gegenüber dem vorigen gedreht
angle-one-layer = { $what }, einlagig
angle-edge = { $what }, für den Rand des Blocks
angle-one-layer-edge = { $what }, einlagig, für den Rand des Blocks

# --- Einheiten -------------------------------------------------------------------------------------

units-title = Einheiten
units-title-size = Einheiten, { $size }
units-aside = jede vor dem Zusammennähen nachmessen
units-make = { $count }-mal nähen
units-spare = , { $count } übrig
units-finished = { $size } fertig
units-method = Technik: { $method }
units-measure = Soll { $size } messen
units-head-block = Block
units-head-measure = soll messen
units-head-finished = fertig

# Die Techniken, wie sie auf den Seiten heißen.
method-cut-patches = aus Einzelteilen
method-two-at-a-time = zwei auf einmal
method-four-at-a-time = vier auf einmal
method-eight-at-a-time = acht auf einmal
method-stitch-and-flip = Ecken aufnähen
method-strip-set = Streifenset
method-foundation = Nähen auf Papier
method-over-papers = über Papier
method-applique = Applikation

methods-title = Techniken im Vergleich
methods-aside = fett: die hier verwendete Technik
methods-head-method = Technik
methods-head-cut = Zuschnitt
methods-head-waste = Stoffverlust durch Nähte und Beschneiden, { $unit ->
    [in] Quadratzoll
   *[cm] cm²
}
methods-head-seams = Nähte
methods-unit = { $unit }, { $count }-mal
methods-spare = { $method } ({ $count } übrig)
methods-cut = { $count } { $piece } { $size }, { $fabric }
methods-cut-once = { $count } { $piece } { $size }, { $fabric }, einmal geschnitten
methods-cut-twice = { $count } { $piece } { $size }, { $fabric }, zweimal geschnitten

# --- eigene Stanzen und Speziallineale -------------------------------------------------------------

cutters-title = Eigene Stanzen und Lineale
cutters-aside = was jedes schneidet, nach den Buchstaben der Zuschneidetabelle
cutters-none = Keines passt zu einem Teil dieses Blocks.
cutters-lacking = nichts Passendes
cutters-lacking-what = { $patches }: { $cutter }
cutters-patches = { $count ->
    [one] Teil { $letters }
   *[other] Teile { $letters }
}
cutters-wide = { $shape }, { $size } breit
cutters-finished = { $shape }, { $size } fertig
cutters-half = Halbquadrat-Dreieck
cutters-quarter = Viertelquadrat-Dreieck
cutters-diamond = 45°-Raute

# --- andere Farbvarianten und Größen ---------------------------------------------------------------

recut-aside = alle anderen Stoffe werden wie bisher zugeschnitten
recut-same = { $pieces }, wie in der Zuschneidetabelle
recut-all = { $pieces }: { $cuts }
recut-line = { $count } { $piece } { $size }, Teil { $letter }
recut-line-then = { $count } { $piece } { $size }, Teil { $letter }, { $then }
recut-template = { $count } { $piece }, Teil { $letter }
recut-template-then = { $count } { $piece }, Teil { $letter }, { $then }
sizes-cutting-aside = eine Spalte für jede fertige Größe; Zuschnittmaße, mit Nahtzugabe

# --- Bildbeschreibungen ----------------------------------------------------------------------------

picture-block = { $block } in Farbe: { $size } fertig, { $patches } aus { $fabrics }.
picture-block-colorway = { $block }, Farbvariante { $name }, in Farbe: { $size } fertig, { $patches } aus { $fabrics }.
picture-fabric = { $fabric } ({ $value })
picture-letters = { $block } mit Buchstaben: { $letters }.
picture-letter = { $count ->
    [one] { $number } Teil { $letter }
   *[other] { $number } Teile { $letter }
}
picture-unit = Einheit { $unit }: { $size } fertig, { $patches }.
picture-grid = Raster von { $block }: { $columns } Spalten und { $rows } Reihen, jedes Feld { $size } fertig.
picture-grid-uneven = Raster von { $block }: Spalten { $widths } { $unit ->
    [in] Zoll
   *[cm] cm
} breit, Reihen { $heights } { $unit ->
    [in] Zoll
   *[cm] cm
} hoch, fertig.
picture-apart = Schritt { $number }, { $name }: die einzelnen Teile, { $parts }.
picture-joined = { $count ->
    [one] Schritt { $number }, { $name }: die Teile mit 1 Naht verbunden; Pfeile zeigen die Bügelrichtung.
   *[other] Schritt { $number }, { $name }: die Teile mit { $count } Nähten verbunden; Pfeile zeigen die Bügelrichtung.
}
picture-joined-curved = { $count ->
    [one] Schritt { $number }, { $name }: die Teile mit 1 runden Naht verbunden; Pfeile zeigen die Bügelrichtung.
   *[other] Schritt { $number }, { $name }: die Teile mit { $count } Nähten verbunden, eine davon rund; Pfeile zeigen die Bügelrichtung.
}
picture-joined-partial = { $count ->
    [one] Schritt { $number }, { $name }: die Teile mit 1 Teilnaht verbunden; Pfeile zeigen die Bügelrichtung.
   *[other] Schritt { $number }, { $name }: die Teile mit { $count } Nähten verbunden, eine davon eine Teilnaht; Pfeile zeigen die Bügelrichtung.
}
picture-joined-set-in = { $count ->
    [one] Schritt { $number }, { $name }: die Teile mit 1 eingesetzten Naht verbunden; Pfeile zeigen die Bügelrichtung.
   *[other] Schritt { $number }, { $name }: die Teile mit { $count } Nähten verbunden, eine davon eingesetzt; Pfeile zeigen die Bügelrichtung.
}
picture-step = Schritt { $number }: { $name }.

# Was ein Schritt nimmt, in einer Bildbeschreibung.
apart-step = { $name } (Schritt { $step })
apart-steps = { $count } { $name } (Schritt { $step })

# --- Schritte --------------------------------------------------------------------------------------

steps-too-many = Dieser Block hat { $count } Teile, zu viele für eine Liste von Schritten: in Reihen nähen.

# --- Seiten ----------------------------------------------------------------------------------------

page-of = Seite { $page } von { $pages }
sheet-subject = Anleitung für einen Patchworkblock, { $size } fertig

# --- Tabellen für mehrere Größen -------------------------------------------------------------------

sizes-head-finished = Fertig
sizes-head-unfinished = Mit Nahtzugabe
sizes-head-grid = Raster, fertig
sizes-head-cells = Felder, mit Nahtzugabe
sizes-head-seam = Nahtzugabe
sizes-head-ruler = Lineal
sizes-uneven = ungleich
sizes-cells = { $columns } × { $rows } von { $size }
sizes-cutting-for = Zuschneiden für { $sizes }
fabric-continued = {"  "}Fortsetzung
steps-step-continued = Schritte, Schritt { $number }
steps-aside = in dieser Reihenfolge nähen; die Bilder zeigen die rechte Seite, ohne Nahtzugaben
steps-key-seam = Naht, die jetzt genäht wird
steps-key-press = Nahtzugaben in diese Richtung bügeln
steps-key-letter = Buchstabe des Teils, wie im Bild mit Buchstaben
steps-key-dot = eine Nahtzugabe vor der Kante aufhören; hier wird später ein Teil eingesetzt
steps-of = Schritt { $number } von { $count }
