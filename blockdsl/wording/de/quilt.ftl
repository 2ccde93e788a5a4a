# Sätze der Schritte, die einen Quilt zusammensetzen und fertigstellen.

# --- Namen -----------------------------------------------------------------------------------------

quilt-block = { $count ->
    [one] Block
   *[other] Blöcke
}
quilt-block-named = { $count ->
    [one] Block „{ $name }“
   *[other] Blöcke „{ $name }“
}
quilt-block-colored = { $count ->
    [one] Block „{ $name }“ in { $colorway }
   *[other] Blöcke „{ $name }“ in { $colorway }
}
quilt-half-upper = { $count ->
    [one] obere Blockhälfte
   *[other] obere Blockhälften
}
quilt-half-lower = { $count ->
    [one] untere Blockhälfte
   *[other] untere Blockhälften
}

quilt-plain-square = { $count ->
    [one] einfarbiges Quadrat
   *[other] einfarbige Quadrate
}
quilt-half-block = { $count ->
    [one] Halbblock
   *[other] Halbblöcke
}
quilt-side-triangle = { $count ->
    [one] Seitendreieck
   *[other] Seitendreiecke
}
quilt-corner-triangle = { $count ->
    [one] Eckdreieck
   *[other] Eckdreiecke
}
quilt-sash = Zwischenstreifen
quilt-long-sash = { $count ->
    [one] langer Zwischenstreifen
   *[other] lange Zwischenstreifen
}
quilt-short-sash = { $count ->
    [one] kurzer Zwischenstreifen
   *[other] kurze Zwischenstreifen
}
quilt-sash-strip = durchgehende Zwischenstreifen
quilt-post = { $count ->
    [one] Eckquadrat
   *[other] Eckquadrate
}
quilt-edge-post = { $count ->
    [one] halbes Eckquadrat
   *[other] halbe Eckquadrate
}
quilt-strip = { $count ->
    [one] einfarbiger Streifen
   *[other] einfarbige Streifen
}
quilt-border = { $count ->
    [one] Randstreifen
   *[other] Randstreifen
}
quilt-border-corner = { $count ->
    [one] Rand-Eckquadrat
   *[other] Rand-Eckquadrate
}

quilt-piece-of-fabric = { $name } ({ $fabric })
quilt-piece-of-size = { $name } { $size }

quilt-center = Quiltmitte
quilt-center-block = Blockmitte
quilt-top = Oberseite
quilt-rows-row = { $count ->
    [one] Reihe
   *[other] Reihen
} { $numbers }
quilt-rows-column = { $count ->
    [one] Spalte
   *[other] Spalten
} { $numbers }
quilt-rows-diagonal = { $count ->
    [one] Diagonalreihe
   *[other] Diagonalreihen
} { $numbers }
quilt-rows-strips = Zwischenstreifen-Reihe{ $count ->
    [one] { "" }
   *[other] n
}
quilt-rows-strips-numbered = Zwischenstreifen-Reihe{ $count ->
    [one] { "" }
   *[other] n
} { $numbers }
quilt-numbers-through = { $first } bis { $last }
quilt-ring-border = { $ordinal } Rand
quilt-ring-round = { $ordinal } Rahmen
quilt-ring-only-border = Rand
quilt-ring-only-round = Rahmen
quilt-batting = Vlies
quilt-backing-wrong = Rückseite, linke Stoffseite oben
quilt-top-right = Oberseite, rechte Stoffseite oben
quilt-corners-mitered = Ecken auf Gehrung
quilt-corners-squares = Eckquadrate
quilt-backing = Rückseite
quilt-layers = Lagen
quilt-quilting = Quilten
quilt-sleeve = Tunnel zum Aufhängen
quilt-binding = Einfassung
quilt-label = Etikett
ordinal = { $number }.

# --- Lage ------------------------------------------------------------------------------------------

center-top = oberhalb
center-bottom = unterhalb
center-left = links von
center-right = rechts von
center-upper-left = oben links von
center-upper-right = oben rechts von
center-lower-left = unten links von
center-lower-right = unten rechts von

# Wie ein Block liegt.
landmark-at = { $fabric } { $places }
landmark-middle = { $count ->
    [one] { $fabric } { $places } in der Mitte der Kante
   *[other] { $fabric } { $places } in der Mitte der Kanten
}
landmark-center = { $fabric } { $places } der Mitte
landmark-mark = Zeichen OBEN { $places }
quilt-square-corner = rechter Winkel { $place }
quilt-part-lies = { $part } ({ $how })

# --- Reihen ----------------------------------------------------------------------------------------

quilt-take = { $list } nehmen.
quilt-take-each = Jeweils { $list } nehmen.
quilt-note-top = Sobald fertig, an die obere Kante ein Zeichen OBEN stecken: { $block }.
quilt-lay-each = { NAME($block, case: "counted") } immer so hinlegen: { $how }.
quilt-lay-one = { NAME($block, case: "counted") } so hinlegen: { $how }.
quilt-lay-as-in = { $block } immer so hinlegen wie in Schritt { $step }.
quilt-diagonal-ends = Das linke Ende einer Diagonalreihe ist im Bild des Quilts ihr Ende unten links.
quilt-sew-across = Von links nach rechts{ quilt-right-sides } zusammennähen: { $groups }.
quilt-sew-down = Von oben nach unten{ quilt-right-sides } zusammennähen: { $groups }.
quilt-sew-along = An den Enden{ quilt-right-sides } aneinandernähen: { $groups }.
quilt-sew-across-all = Von links nach rechts{ quilt-right-sides } zusammennähen.
quilt-sew-down-all = Von oben nach unten{ quilt-right-sides } zusammennähen.
quilt-sew-along-all = An den Enden{ quilt-right-sides } aneinandernähen.
quilt-right-sides = { $sides ->
    [yes] {" "}rechts auf rechts
   *[no] { "" }
}
quilt-group-next = { $before }, dann { $next }
quilt-group-many = ({ $parts })
quilt-group-times = { $times ->
    [2] zweimal { $parts }
   *[other] { $times }-mal { $parts }
}
quilt-bias-edges = Die kurzen Kanten der Dreiecke liegen im schrägen Fadenlauf: stecken und nicht dehnen.
quilt-press-open = Alle Nahtzugaben auseinanderbügeln.
quilt-press-sashes = Alle Nahtzugaben zu den Zwischenstreifen bügeln.
quilt-press-strips = Alle Nahtzugaben zu den Streifen bügeln.
quilt-press-plain-squares = Alle Nahtzugaben zu den einfarbigen Quadraten bügeln.
quilt-press-ends-left = Alle Nahtzugaben nach links bügeln.
quilt-press-ends-right = Alle Nahtzugaben nach rechts bügeln.
quilt-press-ends-top = Alle Nahtzugaben nach oben bügeln.
quilt-press-ends-bottom = Alle Nahtzugaben nach unten bügeln.
quilt-press-ends-both = Die Nahtzugaben von { $first } nach { $one } und die von { $second } nach { $other } bügeln.

quilt-measure-high = { $length } hoch

# --- Zusammensetzen --------------------------------------------------------------------------------

quilt-trim-rows = Die Reihen von Ende zu Ende messen, etwa { $length }. { $count } { $strips } ({ $fabric }) auf diese Länge schneiden.
quilt-trim-columns = Die Spalten von Ende zu Ende messen, etwa { $length }. { $count } { $strips } ({ $fabric }) auf diese Länge schneiden.
quilt-trim-marks = Auf beiden langen Kanten jedes Streifens markieren, wo die Blöcke anfangen und enden.
quilt-take-rows = { $rows } nehmen.
quilt-take-rows-strips = { $rows } und { $count } { $strips } nehmen.
quilt-arrange-down = Von oben nach unten anordnen, zwischen je zwei Reihen 1 { $strip }{ $outer ->
    [yes] {" "}und je einer oben und unten
   *[no] { "" }
}.
quilt-arrange-across = Von links nach rechts anordnen, zwischen je zwei Spalten 1 { $strip }{ $outer ->
    [yes] {" "}und je einer links und rechts
   *[no] { "" }
}.
quilt-pin-cornerstones = Die Eckquadrate { $meeting } an die Enden der Zwischenstreifen stecken.
quilt-pin-cornerstones-listed = Die Eckquadrate { $meeting } an die Enden der langen Zwischenstreifen stecken: { $list }.
quilt-cornerstones-of = { $count ->
    [one] Eckquadrat { $numbers } an { $columns }
   *[other] Eckquadrate { $numbers } an { $columns }
}
quilt-cornerstones-and = { $first } und { $last }
quilt-nesting = mit verzahnten Nähten
quilt-matching = Naht auf Naht
quilt-sew-long = Die langen Kanten nähen.
quilt-sew-long-marks = So stecken, dass die Zeichen auf die Nähte der Blöcke treffen, und die langen Kanten nähen.
quilt-join-down = Von oben nach unten { $meeting } zusammennähen.
quilt-join-across = Von links nach rechts { $meeting } zusammennähen.
quilt-join-halfway = Von links nach rechts zusammennähen, Enden bündig, die Mitte jedes Blocks an den Enden der benachbarten Blöcke.
quilt-long-open = Alle langen Nahtzugaben auseinanderbügeln.
quilt-long-strips = Alle langen Nahtzugaben zu den Zwischenstreifen bügeln.
quilt-long-plain = Alle langen Nahtzugaben zu den Streifen bügeln.
quilt-long-bottom = Alle langen Nahtzugaben nach unten bügeln.
quilt-long-right = Alle langen Nahtzugaben nach rechts bügeln.

quilt-point-down = Die Reihen von oben nach unten anordnen, Reihe 1 oben.
quilt-point-strips = Zwischenstreifen-Reihe 1 oben hinlegen, Zwischenstreifen-Reihe 2 zwischen Reihe 1 und 2 und so weiter; die letzte liegt unten.
quilt-beyond-both = { $count ->
    [one] { $rows } ragt an beiden Enden einen Block über die Reihe darüber hinaus.
   *[other] { $rows } ragen an beiden Enden jeweils einen Block über die Reihe darüber hinaus.
}
quilt-beyond-left = { $count ->
    [one] { $rows } beginnt links einen Block vor der Reihe darüber und endet rechts einen Block früher.
   *[other] { $rows } beginnen links jeweils einen Block vor der Reihe darüber und enden rechts einen Block früher.
}
quilt-beyond-right = { $count ->
    [one] { $rows } beginnt links einen Block später als die Reihe darüber und ragt rechts einen Block hinaus.
   *[other] { $rows } beginnen links jeweils einen Block später als die Reihe darüber und ragen rechts einen Block hinaus.
}
quilt-beyond-none = { $count ->
    [one] { $rows } ist an beiden Enden einen Block kürzer als die Reihe darüber.
   *[other] { $rows } sind an beiden Enden jeweils einen Block kürzer als die Reihe darüber.
}
quilt-beyond-row = Reihe { $number }
quilt-corners-turn = Die { $center } so drehen, dass Reihe 1 oben links liegt.
quilt-corners-crease = Bei 4 Eckdreiecken die Mitte der langen Kante einfalzen.
quilt-corners-sew = An jede der vier Ecken ein Eckdreieck mit der langen Kante nähen, den Falz an der Mitte der Kante. Die kurzen Kanten der Dreiecke werden zu den Kanten der { $center }.
quilt-corners-block = { $lies ->
    [yes] Den Block hinlegen, { $how }, dann so drehen, dass seine obere Kante oben links liegt.
   *[no] Den Block auf die Spitze stellen.
} 2 Eckdreiecke mit den langen Kanten oben links und unten rechts annähen, den Falz an der Mitte.
quilt-corners-block-rest = Die anderen 2 Eckdreiecke mit den langen Kanten ebenso oben rechts und unten links annähen.
quilt-corners-press = { $count ->
    [2] Die Nahtzugaben beider Nähte zu den Eckdreiecken bügeln.
   *[other] Die Nahtzugaben zu den Eckdreiecken bügeln.
}
quilt-corners-open = { $count ->
    [2] Die Nahtzugaben beider Nähte auseinanderbügeln.
   *[other] Die Nahtzugaben auseinanderbügeln.
}
quilt-square-up-sashes = Die Kanten { $seam } außerhalb der Spitzen der Zwischenstreifen beschneiden, Ecken rechtwinklig.
quilt-square-up = Die Kanten { $seam } außerhalb der Spitzen der Blöcke beschneiden, Ecken rechtwinklig.

# --- Ränder ----------------------------------------------------------------------------------------

quilt-border-measure-down = Die { $what } durch die Mitte von oben nach unten messen, etwa { $length }.
quilt-border-measure-across = Die { $what } durch die Mitte von links nach rechts messen, etwa { $length }.
quilt-border-again-down = Mit dem { $ring } durch die Mitte von oben nach unten messen, etwa { $length }.
quilt-border-again-across = Mit dem { $ring } durch die Mitte von links nach rechts messen, etwa { $length }.
quilt-border-trim = { $count } Streifen ({ $fabric }) auf diese Länge schneiden.
quilt-border-mark = Mitte und Viertel jedes Streifens und der Kanten { $sides } markieren.
quilt-border-sew-sides = Links und rechts je einen Streifen annähen, Zeichen auf Zeichen.
quilt-border-sew-ends = Oben und unten je einen Streifen annähen, Zeichen auf Zeichen.
quilt-border-sew-sides-same = Ebenso links und rechts annähen.
quilt-border-sew-ends-same = Ebenso oben und unten annähen.
quilt-border-press = Die Nahtzugaben beider Nähte zum { $ring } bügeln.
quilt-border-press-open = Die Nahtzugaben beider Nähte auseinanderbügeln.
quilt-side = links und rechts
quilt-top-and-bottom = oben und unten
quilt-border-corners = An jedes Ende der anderen 2 Streifen ein Eckquadrat nähen: { $corner } ({ $fabric }).
quilt-border-corners-press = Die Nahtzugaben zu den Streifen bügeln.
quilt-border-corners-open = Die Nahtzugaben auseinanderbügeln.
quilt-border-corners-ends = Diese Streifen oben und unten annähen, an den Eckquadraten { $meeting }.
quilt-border-corners-sides = Diese Streifen links und rechts annähen, an den Eckquadraten { $meeting }.

quilt-mitre-take = 2 Streifen ({ $fabric }) { $width } × { $sides } für die Seiten und 2 Streifen ({ $fabric }) { $width } × { $ends } für oben und unten nehmen.
quilt-mitre-take-four = 4 Streifen ({ $fabric }) { $width } × { $sides } nehmen.
quilt-mitre-mark = Die Mitte jedes Streifens und jeder Kante der { $what } markieren.
quilt-mitre-pin = Die langen Streifen links und rechts, die kurzen oben und unten rechts auf rechts anstecken, Mitte auf Mitte.
quilt-mitre-pin-wide = Die kurzen Streifen links und rechts, die langen oben und unten rechts auf rechts anstecken, Mitte auf Mitte.
quilt-mitre-pin-four = An jede Kante einen Streifen rechts auf rechts anstecken, Mitte auf Mitte.
quilt-mitre-beyond = Beide Enden stehen gleich weit über, etwa { $length }.
quilt-mitre-sew = Jeden Streifen von { $seam } nach der einen Ecke bis { $seam } vor der nächsten nähen; an beiden verriegeln.
quilt-mitre-press = Die Nahtzugaben zum { $ring } bügeln.
quilt-mitre-press-open = Die Nahtzugaben auseinanderbügeln.
quilt-mitre-fold = An jeder Ecke die Oberseite diagonal rechts auf rechts falten, sodass die beiden Streifen Kante auf Kante liegen.
quilt-mitre-line = Vom Ende der Nähte eine Linie in der Verlängerung des Bruchs bis zur Außenkante zeichnen.
quilt-mitre-stitch = Auf der Linie von der inneren Ecke nach außen nähen.
quilt-mitre-check = Prüfen, ob die Ecke flach liegt.
quilt-mitre-trim = Die Nahtzugabe auf { $seam } zurückschneiden und auseinanderbügeln.

quilt-units-take = { $list } nehmen.
quilt-units-lay = { NAME($unit, case: "counted") } immer so hinlegen: { $how }. Im { $ring } zeigt oben nach außen.
quilt-units-alike = { NAME($unit, case: "counted") }: im { $ring } zeigt oben nach außen.
quilt-units-sew = Von links nach rechts zusammennähen: je { $sides } zu 2 Streifen für die Seiten, je { $ends } zu 2 Streifen für oben und unten.
quilt-units-sew-alike = { $sides ->
    [1] Jedes bildet für sich einen Streifen.
   *[other] Von links nach rechts zusammennähen: je { $sides } zu 4 Streifen.
}
quilt-units-press = Alle Nahtzugaben zu einer Seite bügeln.
quilt-units-corners = An jedes Ende der Streifen für { $sides ->
    [yes] oben und unten
   *[no] die Seiten
} ein Eckquadrat nähen: { $corner } ({ $fabric }).
quilt-units-corners-press = Die Nahtzugaben zu den Eckquadraten bügeln.
quilt-units-check = Die { $what } durch die Mitte messen, etwa { $width } von links nach rechts und { $height } von oben nach unten. Jeden Streifen mit seiner Kante vergleichen; bei Abweichungen einige seiner Nähte um eine Fadenbreite enger oder weiter nähen.
quilt-units-sew-sides = Links und rechts je einen Streifen annähen; oben zeigt nach außen: { $units }.
quilt-units-sew-ends = Oben und unten je einen Streifen annähen; oben zeigt nach außen: { $units }.
quilt-units-toward = Die Nahtzugaben zur { $what } bügeln.
quilt-units-toward-open = Die Nahtzugaben auseinanderbügeln.

# --- Fertigstellen ---------------------------------------------------------------------------------

quilt-backing-cut = { $count ->
    [one] 1 Bahn
   *[other] { $count } Bahnen
} von { $length } aus { $fabric } in voller Stoffbreite zuschneiden und die Webkanten abschneiden.
quilt-backing-join-upright = Mit den langen Kanten zusammennähen, Nahtzugabe { $join }; die Nähte verlaufen im Quilt senkrecht. Die Nahtzugaben auseinanderbügeln.
quilt-backing-join-level = Mit den langen Kanten zusammennähen, Nahtzugabe { $join }; die Nähte verlaufen im Quilt waagerecht. Die Nahtzugaben auseinanderbügeln.
quilt-backing-trim = Die Rückseite auf mindestens { $size } zuschneiden: auf jeder Seite { $overage } mehr als die Oberseite, von Schnittkante zu Schnittkante.
quilt-backing-fewer = Bei { $overage } Überstand genügt eine Bahn weniger.

quilt-layers-press = Oberseite und Rückseite bügeln und alle losen Fäden abschneiden.
quilt-layers-lay = Die Rückseite mit der linken Stoffseite nach oben auf den Boden oder einen Tisch legen und die Kanten festkleben, sodass sie glatt liegt, aber nicht gespannt ist.
quilt-layers-batting = Das Vlies{ $sized ->
    [yes] , { $size },
   *[no] { "" }
} darauflegen und von der Mitte aus glatt streichen, dann die Oberseite mit der rechten Seite nach oben, die Nähte gerade.
quilt-layers-baste = Die drei Lagen mit Heftstichen oder Sicherheitsnadeln von der Mitte nach außen im Abstand einer Handbreite zusammenheften. Nadeln vorher und nachher zählen; von Kindern und Haustieren fernhalten.

quilt-quilting-quilt = Nach Belieben von Hand oder mit der Maschine quilten, von der Mitte nach außen, damit keine Falten eingenäht werden. Auf der Packung des Vlieses steht, wie weit die Linien auseinanderliegen dürfen.
quilt-quilting-trim = Vlies und Rückseite bündig mit der Oberseite abschneiden, Ecken rechtwinklig. Vom Körper weg schneiden und beim Ablegen die Klinge schließen.

quilt-sleeve-join = { $count } Streifen von { $width } Breite an den Enden zusammennähen.
quilt-sleeve-cut = Einen Streifen { $size } ({ $fabric }) zuschneiden.
quilt-sleeve-cut-joined = Den Streifen auf { $size } ({ $fabric }) schneiden.
quilt-sleeve-fold = Beide kurzen Enden säumen. Der Länge nach links auf links falten und bügeln.
quilt-sleeve-baste = Mittig auf die Rückseite des Quilts legen, die offenen Kanten bündig mit der oberen Kante, und { $seam } von der Kante festheften. Die Einfassung verdeckt später die offenen Kanten.
quilt-sleeve-hang = Die Bruchkante des Tunnels ein wenig nach oben schieben, damit eine Stange Platz hat, und von Hand annähen, nur durch Rückseite und Vlies.

quilt-binding-strips = { $count ->
    [one] { $count } Streifen
   *[other] { $count } Streifen
} ({ $fabric }) von { $width } Breite von Webkante zu Webkante zuschneiden.
quilt-binding-join = Mit schrägen Nähten verbinden, auf { $seam } zurückschneiden und die Nahtzugaben auseinanderbügeln.
quilt-binding-squares = { $count ->
    [one] 1 Quadrat ({ $fabric }) { $side } zuschneiden. Das Quadrat
   *[other] { $count } Quadrate ({ $fabric }) { $side } zuschneiden. Jedes
} einmal diagonal schneiden. Die beiden Dreiecke rechts auf rechts an kurzen Kanten zu einem schrägen Stück zusammennähen. Die Nahtzugaben auseinanderbügeln.
quilt-binding-tube = Auf die linke Stoffseite im Abstand von { $width } Linien parallel zu den langen schrägen Kanten zeichnen. Die beiden anderen Kanten rechts auf rechts zum Schlauch legen, eine Kante um eine Linie versetzt; mit { $seam } Nahtzugabe nähen und auseinanderbügeln. Auf der Linie rundherum schneiden.
quilt-binding-join-bias = Die Streifen mit schrägen Nähten verbinden und die Nahtzugaben auseinanderbügeln.
quilt-binding-measures = Der Streifen ist etwa { $length } lang; der Rand braucht { $around }.
quilt-binding-fold = Der Länge nach links auf links falten und bügeln.
quilt-binding-start = In der Mitte einer Seite beginnen, { $tail } überstehen lassen und die offenen Kanten des Streifens auf die Kante der Oberseite legen. { $seam } von der Kante nähen.
quilt-binding-corner = { $seam } vor jeder Ecke aufhören; verriegeln. Den Streifen gerade nach oben falten, dann gerade nach unten, den Bruch bündig mit der eben genähten Kante. Die nächste Seite ab dem Bruch nähen.
quilt-binding-close = Die beiden Enden mit einer schrägen Naht verbinden und den Rest nähen.
quilt-binding-turn = Die Bruchkante nach hinten umschlagen und über der Naht annähen.
quilt-binding-around = { $around } ringsum

quilt-label-sew = Auf die Rückseite ein Etikett nähen: Name des Quilts, eigener Name, Jahr und Waschanleitung.
