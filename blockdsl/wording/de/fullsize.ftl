# In Originalgröße gedruckt: Schablonen, Papiere, die Prüfung des Maßstabs.

# --- die Prüfung des Maßstabs ----------------------------------------------------------------------

scale-print = In Originalgröße (100 %) drucken,
scale-not-fit = nicht an die Seite anpassen
scale-square = Testquadrat
scale-each-side = jede Seite
scale-measured = { $bar }, gemessen in { $unit ->
    [in] Zoll
   *[other] { $unit }
}
scale-means = gedruckter Maßstab
scale-document = Prüfseite für den Druckmaßstab
scale-title = Druckt dieser Drucker in Originalgröße?
scale-step-print = In Originalgröße (100 %) drucken, nicht an die Seite anpassen, mit dem Papier und den Einstellungen, die für die Schablonen verwendet werden.
scale-step-lay = Das Lineal, mit dem zugeschnitten wird, an jeden Balken legen und von der Mitte des einen Endstrichs bis zur Mitte des anderen messen. Auch die senkrechten Balken messen: manche Drucker dehnen nur in einer Richtung.
scale-step-find = Das gemessene Maß in der Tabelle suchen: darunter steht der Maßstab des Drucks. Zwischen zwei Spalten das gemessene Maß durch das Sollmaß des Balkens teilen.
scale-step-right = Bei 100 % stimmen die Schablonen. Sonst die Einstellungen des Druckers ändern und diese Seite noch einmal drucken. Ein Prozent macht bei einem Block von 12 Zoll (30 cm) etwa { $eighth } oder 3 mm aus.
scale-subtitle = Diese Seite auf { $paper } nachmessen, bevor Schablonen gedruckt werden
scale-across = Quer über die Seite
scale-down = Senkrecht am linken Rand

# --- Schablonen ------------------------------------------------------------------------------------

templates-document = Patchworkschablonen in Originalgröße
templates-title = { $block }: Schablonen
templates-subtitle = Schablonen in Originalgröße für den Block von { $size } fertig
templates-what = Schablonen in Originalgröße
templates-none = Dieser Block hat keine Schablonen: alle Teile schneidet das Lineal.
templates-guide = So werden die Schablonen verwendet
templates-use-measure = Vor dem Zuschneiden Testquadrat und Balken unten nachmessen. Stimmen sie nicht, noch einmal in Originalgröße drucken.
templates-use-cut = Auf der durchgezogenen Linie schneiden, auf der gestrichelten nähen; dazwischen liegt die Nahtzugabe von { $seam }. Scharfe Spitzen sind gekappt.
templates-use-lay = Die Schablone mit der Schrift nach oben auf die rechte Stoffseite legen, den Pfeil im geraden Fadenlauf. Die Anzahl gilt für einen Block.
templates-use-curved = Die kurzen Striche an einer runden Kante treffen auf die des anderen Teils oder auf seine Nähte.
templates-use-applique = Applikationsteile werden an der gestrichelten Linie umgeschlagen, nicht genäht.
templates-care = Mit Vorsicht
templates-care-cutter = Den Rollschneider nach jedem Schnitt schließen und auf der Matte vom Körper weg schneiden.
templates-care-scissors = Eine Schere für Papier und Folie nehmen, eine andere für Stoff.
templates-care-blades = Klingen und Nadeln von Kindern und Haustieren fernhalten.
templates-find = Wo die Schablonen sind
templates-find-page = Seite { $page }: { $letters }
templates-find-tiles = Seiten { $first }–{ $last }: { $letter } in { $tiles } Blättern
templates-alternative = Schablone { $letter }: { $title }. { $lines }.
templates-cut = zuschneiden: { $list }
templates-cut-of = { $count } { $fabric }
templates-turn = { $width } umschlagen
templates-raw = offene Kante
templates-mirror = Spiegelbild von { $letter }
templates-grain = Fadenlauf
templates-finished = fertig { $size }
templates-finished-square = fertig { $size } im Quadrat
templates-finished-short = fertig { $size }, kurze Seiten
templates-finished-long = fertig { $size }, lange Seite
templates-finished-radius = fertiger Radius { $size }
templates-finished-blade = fertig { $size } lang, { $other } am Ende breit
templates-finished-with-radius = fertig { $size }, Radius { $other }
foot-finished = { $block } · { $size } fertig · { $what }

# Formen von Teilen, wie Schablonen sie nennen.
shape-square = Quadrat
shape-rectangle = Rechteck
shape-triangle = Dreieck
shape-half-square-triangle = Halbquadrat-Dreieck
shape-quarter-square-triangle = Viertelquadrat-Dreieck
shape-diamond = Raute
shape-parallelogram = Parallelogramm
shape-quadrilateral = Viereck
shape-trapezoid = Trapez
shape-kite = Drachen
shape-pentagon = Fünfeck
shape-hexagon = Sechseck
shape-heptagon = Siebeneck
shape-octagon = Achteck
shape-polygon = Vieleck
shape-quarter-circle = Viertelkreis
shape-quarter-circle-surround = Viertelkreis-Rahmen
shape-fan-blade = Fächerblatt
shape-curved-patch = rundes Teil
shape-applique-piece = Applikationsteil

# --- Schablonen, die größer als eine Seite sind ----------------------------------------------------

tiles-name = { $letter }, Blatt { $tile } von { $tiles } (Reihe { $row }, Spalte { $column })
tiles-alternative = { $template } Blatt { $tile } von { $tiles }.
tiles-join-here = hier an Blatt { $tile } kleben
tiles-tile = Blatt { $tile }
tiles-join = Die Blätter so überlappen, dass Rauten mit demselben Buchstaben aufeinandertreffen; zusammenkleben, dann ausschneiden.
tiles-map = Übersicht der { $tiles } Blätter in { $rows } Reihen und { $columns } Spalten

# --- Papiere zum Nähen auf Papier und über Papier --------------------------------------------------

foundation-what = Papiere in Originalgröße, gespiegelt
foundation-title = { $block }: Papiere
foundation-document = Papiere zum Nähen auf Papier in Originalgröße, gespiegelt
foundation-alternative = Papier { $letter }, gespiegelt: { $lines }. Reihenfolge der Teile: { $order }.
over-papers-title = { $block }: Papierschablonen
over-papers-document = Papierschablonen zum Lieseln in Originalgröße
over-papers-subtitle = Papierschablonen zum Lieseln in Originalgröße, für den Block von { $size } fertig
over-papers-what = Papierschablonen in Originalgröße, gespiegelt
over-papers-alternative = Papier { $letter }: { $lines }
over-papers-paper = Papier
over-papers-needed = { $count } für den Block
over-papers-for-one = Für einen Block: { $papers }.
over-papers-copy = Jede Form ist einmal gedruckt: die Seiten kopieren oder jedes Papier mehrmals verwenden.
over-papers-guide = So werden die Papiere verwendet
over-papers-use-print = Testquadrat und Balken unten nachmessen. Stimmen sie nicht, noch einmal in Originalgröße drucken. Auf festes Papier drucken und jede Schablone genau auf der Linie ausschneiden: sie hat keine Nahtzugabe.
over-papers-use-pin = Die Papiere sind Spiegelbilder. Jedes mit dieser Seite nach oben auf die linke Seite seines Stoffteils stecken, den Pfeil im geraden Fadenlauf und rundum { $seam } Stoff.
over-papers-use-fold = Den Stoff Kante für Kante um das Papier falten und festheften. Die Teile rechts auf rechts mit kleinen Überwendlichstichen zusammennähen, die nur die Bruchkanten fassen und nicht das Papier.
over-papers-use-out = Ein Papier herausnehmen, wenn alle seine Kanten genäht sind; es lässt sich wieder verwenden.
over-papers-care-scissors = Eine Schere für Papier, eine andere für Stoff nehmen und von den Fingern weg schneiden.
over-papers-care-pins = Die Stecknadeln vor dem Bügeln zählen und herausnehmen.
over-papers-care-keep = Scheren und Nadeln von Kindern und Haustieren fernhalten.
