# Das Blatt eines Quilts: Einkauf, Zuschneiden, Blöcke, Zusammensetzen, Fertigstellen.

quilt-sheet-subject = Quiltanleitung, { $size } fertig
quilt-set = Anordnung
quilt-blocks = Blöcke
quilt-half-blocks = { $count ->
    [one] und { $count } Halbblock
   *[other] und { $count } Halbblöcke
}
setting-straight = gerade Anordnung, { $across } × { $down }
setting-dropped-columns = versetzte Spalten, { $across } × { $down }
setting-on-point = auf der Spitze, { $across } × { $down }
setting-strippy = in Bahnen, { $across } × { $down }
setting-rows = Reihe für Reihe
setting-medallion = Medaillon
quilt-blocks-named = { $count } { $block }
quilt-colorway = Farbvariante { $name }
quilt-center-measures = { $center } { $size }
quilt-ring-measures = { $ring } { $width }, { $fabric }
quilt-ring-measures-corners = { $ring } { $width }, { $fabric }, { $corners }
quilt-ring-pieced = genäht aus { $unit }

# --- Stoffbedarf -----------------------------------------------------------------------------------

buy-title = Stoffbedarf
buy-head-buy = kaufen
buy-head-needed = nötig
buy-head-allowed = Zugabe
buy-tools = Außerdem: passendes Nähgarn, Heftgarn oder Sicherheitsnadeln, Stecknadeln oder Klammern; Rollschneider, Matte und Lineal; Bügeleisen; Nähmaschine mit { $foot }.
buy-foot-in = ¼-Zoll-Fuß
buy-foot-cm = Patchworkfuß
buy-yards = { $amount } yd
buy-meters = { $amount } m
buy-prints = { $fabric }, { $prints }
buy-of-one-print = Blöcke, jeder aus einem Druckstoff
buy-wider = breiterer Stoff
buy-too-narrow = ein Teil ist breiter als dieser Stoff
buy-backing = Rückseite: { $fabric }
buy-widths-of-fabric = { $widths }
buy-in-one-piece = in einem Stück
buy-based-in = Berechnet für { $widths } Zoll nutzbare Stoffbreite. Die Zugabe für Einlaufen und Begradigen ist gesondert aufgeführt; die Summe ist auf das nächste 1/8 yd (4 1/2 Zoll) aufgerundet.
buy-based-cm = Berechnet für { $widths } cm nutzbare Stoffbreite. Die Zugabe für Einlaufen und Begradigen ist gesondert aufgeführt; die Summe ist auf die nächsten 10 cm aufgerundet.
buy-fat-quarters = Fat Quarters von { $size } statt Meterware: { $list }.
buy-fat-quarters-of = { $fabric } { $count }

# --- Zuschneiden -----------------------------------------------------------------------------------

quilt-cutting-fabric = Zuschneiden: { $fabric }
quilt-cutting-aside-in = für den ganzen Quilt; Maße in Zoll, mit Nahtzugabe
quilt-cutting-aside-cm = für den ganzen Quilt; Maße in Zentimetern, mit Nahtzugabe

# --- Blöcke, Reihen, Zusammensetzen ----------------------------------------------------------------

assembly-title = Zusammensetzen
assembly-aside = vor dem Nähen alles nach dem Bild auslegen
rows-title = Reihen
rows-head-row = Reihe
rows-head-takes = besteht aus
rows-head-measure = soll messen, mit Nahtzugabe
finishing-title = Fertigstellen
finishing-aside = Lagen heften, quilten, einfassen
quilt-strips-listed = Aus der Zuschneideliste: { $sizes }.
quilt-strips-listed-spare = Aus der Zuschneideliste: { $sizes }. Jeder Streifen ist { $spare } länger als nötig.
quilt-strip-all = { $count ->
    [one] 1 Streifen
   *[other] { $count } Streifen
} { $size }
quilt-strip-sides = { $count ->
    [one] 1 Streifen
   *[other] { $count } Streifen
} { $size } für die Seiten
quilt-strip-ends = { $count ->
    [one] 1 Streifen
   *[other] { $count } Streifen
} { $size } für oben und unten
quilt-strip-corners = { $count ->
    [one] 1 Quadrat
   *[other] { $count } Quadrate
} { $size } für die Ecken

quilt-picture = Der Quilt { $quilt }: { $setting }, { $blocks }, { $borders }, { $size } fertig.
quilt-rows-picture = { $count ->
    [one] Die Reihe von { $quilt }.
   *[other] Die { $count } Reihen von { $quilt } einzeln, in der Reihenfolge des Zusammennähens.
}

# Wie ein Block heißt, der das Spiegelbild eines anderen, halbiert oder die Einheit eines Randes ist.
kind-mirror-image = { $name }, Spiegelbild
kind-upper-half = { $name }, obere Hälfte
kind-lower-half = { $name }, untere Hälfte
kind-left-half = { $name }, linke Hälfte
kind-right-half = { $name }, rechte Hälfte
kind-border-unit = { $name }, Randeinheit
kind-with-mirror-image = { $name } und Spiegelbild

# --- Zuschneiden, Stoff für Stoff ------------------------------------------------------------------

quilt-cutting-aside = zuerst die Längsstreifen schneiden, dann die breitesten Streifen
head-in-the-picture = im Bild
quilt-then-once = jedes einmal diagonal schneiden
quilt-then-twice = jedes zweimal diagonal schneiden
quilt-then-lengthwise = der Länge nach schneiden
quilt-then-strip = dann weiter wie beim Block
quilt-then-octagon = dann die Ecken abschneiden wie beim Block
quilt-then-template = um die Schablone
cloth-from-prints = Die Blöcke werden aus Fat Quarters geschnitten, jeder aus einem Druckstoff; nur der Rest wird von der Meterware geschnitten.
cloth-shortest = Wie unten ausgelegt, werden { $length } Stoff gebraucht: die kürzeste Länge bei diesem Zuschnitt.
cloth-within = Wie unten ausgelegt, werden { $length } Stoff gebraucht: höchstens { $more } mehr als die kürzeste Länge.
cloth-joined = { $count ->
    [one] Für { $letters }: { $strips } von { $width } Breite auf Länge schneiden.
   *[other] Für { $letters }: { $strips } von { $width } Breite mit geraden Nähten aneinandernähen, die Nahtzugaben auseinanderbügeln und auf Länge schneiden.
}

# Eine Reihe im Bild des Stoffes.
cloth-strips = { $strips }, { $height } breit
cloth-strips-of = { $strips }, { $height } breit: { $pieces }
cloth-lengths = { $lengths } von { $height }, der Länge nach geschnitten
cloth-beside = daneben { $strips }
cloth-sheets = { $pieces } von { $size }
cloth-piece = { $count } { $letter }, { $size }
cloth-piece-plain = { $count } von { $size }
cloth-picture = { $what }: { $pieces }.

# --- Blöcke ----------------------------------------------------------------------------------------

blocks-title = Die Blöcke
blocks-title-one = Der Block: { $block }
blocks-aside = erst einen nähen und messen, dann alle zuschneiden
blocks-make-each = { $count }-mal nähen, jeder { $size } mit Nahtzugabe
blocks-in-colorway = in der Farbvariante { $name }
blocks-half = Halbblock
blocks-for-border = für den Rand
blocks-about = { $size } fertig; { $patches }
blocks-totals = Die letzte Spalte ist die Summe für den Quilt; Einheiten, von denen mehrere auf einmal entstehen, sind über alle Blöcke gezählt.
cutting-one = Zuschneiden für einen Block

# --- Druckstoffe -----------------------------------------------------------------------------------

prints-title = Druckstoffe für { $fabric }
prints-fat-quarter = { $count ->
    [one] Ein Fat Quarter, zugeschnitten für { $number } Block; die Buchstaben sind die der Teile.
   *[other] Ein Fat Quarter, zugeschnitten für { $number } Blöcke; die Buchstaben sind die der Teile.
}
prints-numbered = Jeder Block ist aus einem Druckstoff, nummeriert wie im Bild.
prints-apart = Keine zwei benachbarten Blöcke haben denselben Druckstoff.
prints-share-least = { $count ->
    [one] { $count } Paar benachbarter Blöcke hat denselben Druckstoff: weniger geht mit so wenigen Druckstoffen nicht.
   *[other] { $count } Paare benachbarter Blöcke haben denselben Druckstoff: weniger geht mit so wenigen Druckstoffen nicht.
}
prints-share = { $count ->
    [one] { $count } Paar benachbarter Blöcke hat denselben Druckstoff: mit so wenigen Druckstoffen sind es immer mindestens { $bound }.
   *[other] { $count } Paare benachbarter Blöcke haben denselben Druckstoff: mit so wenigen Druckstoffen sind es immer mindestens { $bound }.
}
prints-used = { $count ->
    [one] Jeder Druckstoff kommt in { $count } Block vor.
   *[other] Jeder Druckstoff kommt in { $count } Blöcken vor.
}
prints-used-or = Jeder Druckstoff kommt in { $least } oder { $most } Blöcken vor.
prints-used-to = Jeder Druckstoff kommt in { $least } bis { $most } Blöcken vor.
prints-gives = { $count ->
    [one] Ein Fat Quarter ergibt { $count } Block.
   *[other] Ein Fat Quarter ergibt { $count } Blöcke.
}
prints-takes-more = Ein Block braucht mehr als ein Fat Quarter.
prints-picture = { $count ->
    [one] Der Quilt mit der Nummer des Druckstoffs auf seinem Block.
   *[other] Der Quilt mit der Nummer des Druckstoffs auf jedem seiner { $count } Blöcke.
}
prints-blocks-quarters = { $blocks }, { $quarters }

# --- dasselbe auf Webseiten ------------------------------------------------------------------------

buy-head-what = was
buy-caption = Stoffbedarf für { $quilt }
quilt-without-borders = { $size } ohne Ränder
quilt-cutting-caption-in = Zuschnitte aus { $fabric } für { $quilt }: Maße in Zoll, mit Nahtzugabe
quilt-cutting-caption-cm = Zuschnitte aus { $fabric } für { $quilt }: Maße in Zentimetern, mit Nahtzugabe
rows-caption = Reihen von { $quilt }
rows-tick = { $rows }, { $size }
