# Die Lektionen der Techniken, wie Bücher und Webseiten sie zeigen: für alle, die noch nie genäht haben.

cut-square = { $case ->
    [plural] Quadrate von { $side }
   *[other] Quadrat von { $side }
}
cut-rectangle = { $case ->
    [plural] Rechtecke von { $size }
   *[other] Rechteck von { $size }
}

# Was ein Bild zeigt, für alle, die es nicht sehen können.
picture = { $shows }.
picture-right = { $shows }, mit der rechten Hand.
picture-left = { $shows }, mit der linken Hand.

## Quadrate und Rechtecke

lesson-squares-cut = Das Ende des Streifens begradigen, dann ein Stück mit dem Maß aus der Zuschneidetabelle abschneiden. Das Lineal mit der flachen Hand festhalten, Fingerspitzen weg von der Kante, und den Rollschneider vom Körper weg führen.
    .title = Zuschneiden
lesson-squares-lay = Zwei Teile rechts auf rechts legen (die bedruckten Seiten innen), Kanten bündig. Quer zur Naht stecken; jede Stecknadel herausziehen, bevor die Nähnadel sie erreicht.
    .title = Aufeinanderlegen
lesson-squares-sew = { $seam } von der Kante mit kleinen Stichen von Ende zu Ende nähen. Zuerst eine Probenaht: zwei zusammengenähte Quadrate von { $side } müssen { $size } messen.
    .title = Nähen
lesson-squares-press = Die Naht einmal so bügeln, wie sie genäht wurde, dann die Teile aufklappen und { $press ->
    [open] die Nahtzugaben mit der Spitze des Eisens auseinanderbügeln.
   *[side] die Nahtzugaben zum dunkleren Teil bügeln. In Reihen jede zweite Reihe in die andere Richtung bügeln, damit sich die Nähte verzahnen.
}
    .title = Bügeln
lesson-squares-measure = Vor dem Weiternähen messen. In der Mitte einer Reihe zeigt ein Teil sein fertiges Maß; nur die Enden haben noch ihre Nahtzugabe.
    .title = Messen

picture-square-from-strip = Ein Quadrat, aus einem Streifen geschnitten
picture-squares-together = Zwei Quadrate rechts auf rechts
picture-squares-sewn = Eine Naht an der rechten Kante von zwei Quadraten
picture-squares-opened = Zwei aufgeklappte Quadrate; Pfeile zeigen die Bügelrichtung
picture-squares-joined = Zwei zusammengenähte Quadrate mit ihren Maßen

## Halbquadrat-Dreiecke

lesson-half-cut = { $count ->
    [2] Für je zwei Einheiten ein { $piece } von jedem Stoff zuschneiden.
   *[8] Für je acht Einheiten ein { $piece } von jedem Stoff zuschneiden.
}
    .title = Zuschneiden
lesson-half-mark = Das hellere Quadrat mit der linken Seite nach oben legen. Von Ecke zu Ecke eine dünne Bleistiftlinie ziehen. Auf dieser Linie wird geschnitten, nicht genäht.
    .title = Eine Linie ziehen
lesson-half-two-sew = Rechts auf rechts auf das andere Quadrat legen (die bedruckten Seiten innen), Kanten bündig, und stecken. Auf einer Seite der Linie im Abstand von { $seam } nähen, wenden und auf der anderen Seite nähen. (Die Ecke ist nur umgeschlagen, um die Lagen zu zeigen.)
    .title = Zwei Nähte nähen
lesson-half-two-cut-apart = Die Quadrate so drehen, dass die Linie gerade vom Körper weg führt. Das Lineal mit der flachen Hand darauf festhalten, Fingerspitzen weg von der Kante, und den Rollschneider vom Körper weg daran entlangführen. Aus jeder Hälfte wird eine Einheit.
    .title = Durchschneiden
lesson-half-eight-mark = Das hellere Quadrat mit der linken Seite nach oben legen. In beiden Richtungen von Ecke zu Ecke dünne Bleistiftlinien ziehen, die sich in der Mitte kreuzen. Auf ihnen wird geschnitten, nicht genäht.
    .title = Zwei Linien ziehen
lesson-half-eight-sew = Rechts auf rechts auf das andere Quadrat legen (die bedruckten Seiten innen), Kanten bündig, und stecken. Auf beiden Seiten jeder Linie im Abstand von { $seam } nähen: vier Nähte, gerade durch die Kreuzung. (Die Ecke ist nur umgeschlagen, um die Lagen zu zeigen.)
    .title = Vier Nähte nähen
lesson-half-eight-quarter = Ohne den Stoff zu verschieben, in beiden Richtungen durch die Mitte halbieren, { $half } von den Kanten. Das Lineal mit der flachen Hand festhalten, Fingerspitzen weg von der Kante, und den Rollschneider vom Körper weg führen. Für den zweiten Schnitt um den Tisch gehen oder die Matte drehen.
    .title = In Viertel schneiden
lesson-half-eight-cut-apart = Jedes Viertel auf der gezeichneten Linie zwischen den beiden Nähten durchschneiden: acht Hälften.
    .title = Durchschneiden
lesson-half-triangles-cut = Das Quadrat so drehen, dass eine Ecke zum Körper zeigt. Das Lineal mit der flachen Hand von Ecke zu Ecke festhalten und den Rollschneider vom Körper weg daran entlangführen: zwei Dreiecke. Ihre langen Kanten dehnen sich; vorsichtig anfassen.
    .title = Diagonal schneiden
lesson-half-triangles-sew = Je ein Dreieck von beiden Stoffen rechts auf rechts legen (die bedruckten Seiten innen), alle Kanten bündig. { $seam } von der langen Kante nähen. Nicht ziehen: die Maschine den Stoff transportieren lassen.
    .title = Lange Kanten nähen
lesson-half-press = Die Naht einmal so bügeln, wie sie genäht wurde, dann die Einheit aufklappen und { $press ->
    [open] die Nahtzugaben auseinanderbügeln.
   *[side] die Nahtzugaben zum dunkleren Stoff bügeln.
} Das Eisen aufsetzen und wieder abheben; Schieben dehnt den Stoff.
    .title = Bügeln
lesson-half-trim = Die beiden Öhrchen abschneiden. Ist die Einheit zu groß, die 45°-Linie des Lineals auf die Naht legen und alle vier Kanten beschneiden.
    .title = Beschneiden
lesson-half-measure = { $count ->
    [1] Die Einheit soll jetzt { $size } messen.
    [2] Jede der zwei Einheiten soll jetzt { $size } messen.
   *[8] Jede der acht Einheiten soll jetzt { $size } messen.
}
    .title = Messen

picture-squares = Die Quadrate, die zugeschnitten werden
picture-square-marked = Ein Quadrat, linke Seite oben, mit einer diagonalen Linie
picture-square-marked-twice = Ein Quadrat, linke Seite oben, mit beiden diagonalen Linien
picture-sewn-both-sides = Zwei Quadrate aufeinander mit einer Naht auf beiden Seiten einer diagonalen Linie
picture-sewn-four-times = Zwei Quadrate aufeinander mit einer Naht auf beiden Seiten von jeder der zwei diagonalen Linien
picture-cut-on-line = Zwei Quadrate aufeinander, auf der Linie zwischen den Nähten durchzuschneiden
picture-cut-quarters = Die Quadrate, in beiden Richtungen zu halbieren
picture-quarter-cut = Ein Viertel, zwischen seinen beiden Nähten durchzuschneiden
picture-cut-once = Ein Quadrat, einmal diagonal zu schneiden
picture-cut-twice = Ein Quadrat, zweimal diagonal zu schneiden
picture-half-long-seam = Zwei Dreiecke aufeinander mit einer Naht an der langen Kante
picture-half-opened = Ein aufgeklapptes Halbquadrat-Dreieck; Pfeile zeigen die Bügelrichtung
picture-half-ears = Ein Halbquadrat-Dreieck mit Schnitten über die beiden Öhrchen
picture-half-measured = Ein Halbquadrat-Dreieck, { $size }

## Sanduhr, Viertelquadrat-Einheit, Quadrat aus drei Dreiecken

lesson-hourglass-cut = Von jedem Stoff ein { $piece } zuschneiden.
    .title = Zuschneiden
lesson-quarters-cut = Von jedem Stoff ein { $piece } zuschneiden.
    .title = Zuschneiden
lesson-split-cut = Für vier Einheiten zwei { NAME($large, case: "plural") } für die großen Dreiecke und von jedem Stoff der kleinen ein { $piece } zuschneiden.
    .title = Zuschneiden
lesson-quarters-sew = Auf die linke Seite des helleren Quadrats eine Linie von Ecke zu Ecke zeichnen. Die Quadrate rechts auf rechts legen (die bedruckten Seiten innen), Kanten bündig, und stecken. Auf beiden Seiten der Linie im Abstand von { $seam } nähen.{ $kind ->
    [quarters] { " " }Mit dem anderen Paar ebenso.
   *[other] { "" }
}
    .title = Zeichnen und nähen
lesson-quarters-cut-apart = Die Quadrate so drehen, dass die Linie gerade vom Körper weg führt. Das Lineal mit der flachen Hand festhalten, Fingerspitzen weg von der Kante, und den Rollschneider vom Körper weg führen.
    .title = Durchschneiden
lesson-quarters-press = { $press ->
    [open] Jede Hälfte aufklappen und die Nahtzugaben auseinanderbügeln.
   *[side] Jede Hälfte aufklappen und die Nahtzugaben zum dunkleren Stoff bügeln.
} Das ergibt Halbquadrat-Dreiecke mit { $side } Seitenlänge: sie sind größer als die fertige Einheit, darum noch nicht zurückschneiden.
    .title = Bügeln
lesson-hourglass-cross = Auf die linke Seite von einer der beiden Einheiten eine Linie von Ecke zu Ecke quer über die Naht zeichnen. Rechts auf rechts auf die andere legen, jeder Stoff auf dem anderen. { $press ->
    [open] Naht auf Naht legen und stecken.
   *[side] Nähte verzahnen und stecken.
} Auf beiden Seiten der Linie im Abstand von { $seam } nähen und auf der Linie durchschneiden.
    .title = Über Kreuz nähen
lesson-quarters-cross = Eine Einheit des einen Paars rechts auf rechts auf eine des anderen legen, sodass die beiden Stoffe, die Nachbarn werden sollen, aufeinanderliegen. { $press ->
    [open] Naht auf Naht legen und stecken.
   *[side] Nähte verzahnen und stecken.
} Eine Linie von Ecke zu Ecke quer über die Naht zeichnen. Auf beiden Seiten im Abstand von { $seam } nähen und auf der Linie durchschneiden.
    .title = Über Kreuz nähen
lesson-split-cross = Auf jedes große Quadrat eine Einheit rechts auf rechts legen. Eine Linie von Ecke zu Ecke quer über die Naht zeichnen. Auf beiden Seiten im Abstand von { $seam } nähen und auf der Linie durchschneiden.
    .title = Über Kreuz nähen
lesson-quarters-trim = Aufklappen, bügeln und die Öhrchen abschneiden. Zum Beschneiden die 45°-Linie des Lineals auf eine Naht legen, den Kreuzungspunkt { $half } von beiden Kanten des Lineals.
    .title = Bügeln, schneiden
lesson-quarters-measure = { $kind ->
    [one] Die Einheit soll jetzt { $size } messen, die Nähte laufen in die Ecken.
    [hourglass] Jede der zwei Einheiten soll jetzt { $size } messen, die Nähte laufen in die Ecken.
   *[other] Jede der vier Einheiten soll jetzt { $size } messen, die Nähte laufen in die Ecken. Zwei sind Spiegelbilder der anderen zwei: alle mit derselben Seite nach oben hinlegen, vergleichen und die Art behalten, die der Block braucht.
}
    .title = Messen
lesson-quarters-triangles-cut = { NAME($small, case: "plural") } zweimal diagonal schneiden: jedes ergibt vier kleine Dreiecke. Eine Einheit braucht vier, eines für jedes Viertel.
    .title = Zuschneiden
lesson-split-triangles-cut = { NAME($small, case: "plural") } zweimal diagonal schneiden: jedes ergibt vier kleine Dreiecke. { NAME($large, case: "plural") } einmal diagonal schneiden: jedes ergibt zwei große Dreiecke. Eine Einheit braucht ein großes und zwei kleine.
    .title = Zuschneiden
lesson-quarters-triangles-apart = Ein Quadrat so drehen, dass eine Ecke zum Körper zeigt, und von Ecke zu Ecke vom Körper weg schneiden. Für die kleinen Dreiecke noch einmal in der anderen Richtung schneiden, ohne die Stücke zu verschieben: vier. Ihre langen Kanten liegen im geraden Fadenlauf und kommen an die Außenseite der Einheit.
    .title = Diagonal schneiden
lesson-quarters-triangles-pairs = Zwei kleine Dreiecke rechts auf rechts legen und { $seam } von einer kurzen Kante nähen. Vom rechten Winkel nach außen nähen und immer denselben Stoff oben lassen, sonst werden die Paare spiegelverkehrt.
    .title = Paare nähen
lesson-quarters-triangles-press = { $press ->
    [open] Jedes Paar aufklappen und die Nahtzugaben auseinanderbügeln.
   *[side] Jedes Paar aufklappen und die Nahtzugaben zum dunkleren Stoff bügeln.
}
    .title = Bügeln
lesson-quarters-triangles-long = { $kind ->
    [split] Das Paar rechts auf rechts auf das große Dreieck legen, lange Kanten bündig,
   *[other] Ein Paar rechts auf rechts auf das andere legen, lange Kanten bündig, { $press ->
        [open] Naht auf Naht,
       *[side] die Nähte verzahnt,
    }
} und die lange Kante nähen. Bügeln. Die Öhrchen abschneiden.
    .title = Lange Naht nähen

picture-two-halves-opened = Zwei Halbquadrat-Dreiecke, gebügelt
picture-crossed = Zwei Einheiten aufeinander, auf beiden Seiten einer Linie quer über die Naht genäht und auf ihr durchgeschnitten
picture-quarters-opened = Die aufgeklappte Einheit mit Öhrchen an den Ecken
picture-quarters-measured = Die Einheit, { $size }
picture-quarters-short-seam = Zwei Dreiecke aufeinander mit einer Naht an einer kurzen Kante
picture-pair-opened = Ein aufgeklapptes Dreieckspaar; Pfeile zeigen die Bügelrichtung

## Fluggänse

lesson-geese-four-cut = Für vier Fluggänse ein { $large } für die Gans und { $skies ->
    [1] vier { NAME($small, case: "plural") } für den Himmel zuschneiden.
   *[2] zwei { NAME($small, case: "plural") } für jeden Himmel zuschneiden.
} Auf die linke Seite jedes kleinen Quadrats eine Bleistiftlinie von Ecke zu Ecke ziehen.
    .title = Zuschneiden
lesson-geese-four-sew = Zwei kleine Quadrate rechts auf rechts auf gegenüberliegende Ecken des großen legen; sie überlappen in der Mitte ein wenig, und ihre Linien bilden eine. Auf beiden Seiten der Linie im Abstand von { $seam } nähen.
    .title = Quadrate aufnähen
lesson-geese-four-cut-apart = Das Quadrat so drehen, dass die Linie gerade vom Körper weg führt. Das Lineal mit der flachen Hand festhalten, Fingerspitzen weg von der Kante, und den Rollschneider vom Körper weg führen.
    .title = Durchschneiden
lesson-geese-four-press = { $press ->
    [open] Die Nahtzugaben der kleinen Dreiecke auseinanderbügeln.
   *[side] Die kleinen Dreiecke vom großen weg bügeln.
} Jede Hälfte sieht aus wie ein Herz.
    .title = Bügeln
lesson-geese-four-last = Auf die rechtwinklige Ecke jedes Herzens ein kleines Quadrat rechts auf rechts legen, die Linie in die Kerbe zwischen den beiden kleinen Dreiecken. Auf beiden Seiten der Linie im Abstand von { $seam } nähen, dann auf der Linie durchschneiden.
    .title = Letzte Quadrate
lesson-geese-four-press-last = { $press ->
    [open] Auch die letzten Nahtzugaben auseinanderbügeln: vier Fluggänse.
   *[side] Auch die letzten Dreiecke nach außen bügeln: vier Fluggänse.
} Die Öhrchen abschneiden.
    .title = Noch einmal bügeln
lesson-geese-measure = { $made ->
    [four] Wenn nötig, jede der vier Fluggänse auf { $size } beschneiden.
   *[one] Die Einheit soll jetzt { $size } messen.
} Die Nähte laufen in die unteren Ecken. Zwischen der Spitze der Gans und der Kante { $seam } lassen, sonst wird die Spitze abgenäht.
    .title = Auf Maß schneiden
lesson-geese-triangles-cut = { NAME($large, case: "plural") } für die Gans und { NAME($small, case: "plural") } für den Himmel zuschneiden. Eine Fluggans braucht ein Viertel eines großen Quadrats und zwei Hälften von kleinen.
    .title = Zuschneiden
lesson-geese-triangles-apart = Das Quadrat so drehen, dass eine Ecke zum Körper zeigt, das Lineal mit der flachen Hand festhalten und den Rollschneider vom Körper weg führen. Das große Quadrat in beiden Richtungen schneiden, ohne die Stücke zu verschieben: vier. Das kleine einmal schneiden: zwei.
    .title = Diagonal schneiden
lesson-geese-triangles-first = Ein Himmelsdreieck rechts auf rechts auf die linke kurze Kante der Gans legen, die unteren Ecken aufeinander; die Spitze ragt über die Spitze der Gans hinaus. { $seam } von der Kante nähen.
    .title = Erster Himmel
lesson-geese-triangles-press = { $press ->
    [open] Aufklappen und die Nahtzugaben auseinanderbügeln.
   *[side] Aufklappen und die Nahtzugaben zum Himmel bügeln.
} Die Öhrchen abschneiden.
    .title = Bügeln
lesson-geese-triangles-second = Das zweite Himmelsdreieck ebenso auf die andere Kante legen. Seine Naht kreuzt die erste knapp über der Spitze der Gans. { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben zum Himmel bügeln.
}
    .title = Zweiter Himmel

picture-five-squares = Ein großes Quadrat und vier kleine mit gezeichneter Linie
picture-two-small-squares = Zwei kleine Quadrate auf gegenüberliegenden Ecken des großen, eine Naht auf beiden Seiten der Linie
picture-large-square-cut = Das große Quadrat, zwischen den Nähten durchzuschneiden
picture-heart = Ein großes Dreieck mit zwei kleinen, nach außen gebügelt
picture-third-small-square = Ein kleines Quadrat auf der rechtwinkligen Ecke, auf beiden Seiten der Linie genäht und durchgeschnitten
picture-goose-opened = Eine aufgeklappte Fluggans mit Öhrchen
picture-goose-measured = Eine Fluggans, { $size }
picture-large-and-small-square = Ein großes und ein kleines Quadrat
picture-first-sky = Ein Himmelsdreieck, an die linke Kante der Gans genäht
picture-first-sky-opened = Die Gans mit dem aufgeklappten linken Himmel
picture-second-sky = Das zweite Himmelsdreieck, aufgelegt und genäht

## Quadrat im Quadrat

lesson-diamond-cut = Ein { $middle } für die Mitte und zwei { NAME($corner, case: "plural") } für die Ecken zuschneiden.
    .title = Zuschneiden
lesson-diamond-cut-corners = Ein Eckquadrat so drehen, dass eine Ecke zum Körper zeigt, und einmal von Ecke zu Ecke vom Körper weg schneiden: aus jedem zwei Dreiecke, insgesamt vier.
    .title = Diagonal schneiden
lesson-diamond-two-sides = Das mittlere Quadrat und die lange Kante jedes Dreiecks zur Hälfte falten und mit dem Fingernagel einen Falz streichen. Ein Dreieck rechts auf rechts an eine Seite legen, Falz auf Falz, und { $seam } von der Kante nähen. Das gegenüberliegende Dreieck ebenso annähen.
    .title = Zwei Seiten nähen
lesson-diamond-press = { $press ->
    [open] Die Nahtzugaben beider Nähte auseinanderbügeln
   *[side] Die Nahtzugaben beider Nähte zu den Dreiecken bügeln
} und die Öhrchen abschneiden.
    .title = Bügeln, schneiden
lesson-diamond-others = Die anderen zwei Dreiecke ebenso annähen, Falz auf Falz, { $press ->
    [open] und die Nahtzugaben auseinanderbügeln.
   *[side] und die Nahtzugaben zu den Dreiecken bügeln.
}
    .title = Die anderen annähen
lesson-diamond-measure = Die Einheit soll jetzt { $size } messen, mit { $seam } über jeder Spitze des mittleren Quadrats.
    .title = Messen

picture-diamond-first = Ein Dreieck, an eine Seite des mittleren Quadrats genäht
picture-diamond-two-opened = Das mittlere Quadrat mit zwei gegenüberliegenden aufgeklappten Dreiecken
picture-diamond-third = Ein drittes Dreieck, aufgelegt und genäht
picture-diamond-measured = Die Einheit, { $size }

## Ecken aufnähen

lesson-flip-cut = { $count ->
    [1] Für jede Einheit ein { $base } als Grundteil und ein { $small } für die Ecke zuschneiden.
    [2] Für jede Einheit ein { $base } als Grundteil und zwei { NAME($small, case: "plural") } für die Ecken zuschneiden.
    [3] Für jede Einheit ein { $base } als Grundteil und drei { NAME($small, case: "plural") } für die Ecken zuschneiden.
   *[4] Für jede Einheit ein { $base } als Grundteil und vier { NAME($small, case: "plural") } für die Ecken zuschneiden.
}
    .title = Zuschneiden
lesson-flip-mark = Auf die linke Seite jedes kleinen Quadrats eine dünne Bleistiftlinie von Ecke zu Ecke ziehen. Diesmal wird an der Linie genäht.
    .title = Eine Linie ziehen
lesson-flip-sew = Ein kleines Quadrat rechts auf rechts (die bedruckten Seiten innen) auf eine Ecke des Grundteils legen, die Linie quer über die Ecke. Knapp neben der Linie nähen, eine Fadenbreite zur Ecke hin: so viel braucht der Umbruch.
    .title = An der Linie nähen
lesson-flip-cut-corner = { $seam } außerhalb der Naht durch beide Lagen schneiden. Das Lineal bedeckt den Teil, der bleibt: mit der flachen Hand festhalten und den Rollschneider vom Körper weg führen.
    .title = Die Ecke abschneiden
lesson-flip-press = Das Dreieck über die Naht klappen, rechte Seite oben, und bügeln. Seine Kanten sollen bündig mit denen des Grundteils liegen. Wenn nicht, das nächste um eine Fadenbreite näher an der Ecke nähen.
    .title = Umklappen, bügeln
lesson-flip-repeat = { $count ->
    [2] Am anderen Ende ebenso.
   *[other] An den anderen Ecken ebenso, eine nach der anderen.
}{ $overlap ->
    [yes] { " " }Die Quadrate überlappen, wie es sein soll: so bleiben { $seam } über der Spitze.
   *[no] { "" }
}
    .title = Wiederholen
lesson-flip-measure = Jede Einheit soll jetzt { $size } messen, so groß wie das zugeschnittene Grundteil.
    .title = Messen

picture-base-and-square = Das Grundteil und ein kleines Quadrat
picture-corner-sewn = Ein kleines Quadrat, an der Linie auf eine Ecke des Grundteils genäht
picture-next-corner-sewn = Das nächste kleine Quadrat, aufgelegt und genäht
picture-corner-cut-off = Die Ecke, außerhalb der Naht abgeschnitten
picture-corner-flipped = Die Ecke, über ihre Naht gebügelt
picture-flip-measured = Die fertige Einheit, { $size }

## Streifensets

lesson-strips-cut = Das Ende des Stoffes begradigen und quer über die Stoffbreite Streifen von { $width } Breite zuschneiden. Die Webkanten (die festen gewebten Ränder) abschneiden.
    .title = Streifen schneiden
lesson-strips-sew = Zwei Streifen rechts auf rechts legen (die bedruckten Seiten innen) und { $seam } von der langen Kante nähen. Die übrigen nacheinander annähen; jede Naht an dem Ende beginnen, an dem die letzte aufgehört hat, damit sich das Set nicht biegt.
    .title = Zusammennähen
lesson-strips-press = { $press ->
    [open] Alle Nahtzugaben auseinanderbügeln.
   *[side] Alle Nahtzugaben zum dunkleren Streifen bügeln.
} Das Eisen entlang des Streifens aufsetzen und abheben, damit das Set gerade bleibt. Auf der rechten Seite dürfen an den Nähten keine Falten sein.
    .title = Bügeln
lesson-strips-segments = Ein Ende begradigen: eine Linie des Lineals auf eine Naht legen. Dann Segmente von { $width } Breite schneiden, das Lineal mit der flachen Hand festhalten und vom Körper weg schneiden. Nach jedem dritten Segment wieder begradigen. Ein Set wird zum Begradigen { $first } länger zugeschnitten, und { $again } länger für jedes weitere Begradigen.
    .title = Segmente schneiden
lesson-rails-measure = Jedes Segment ist eine Einheit. Sie soll { $size } messen.
    .title = Messen
lesson-checker-lay = { $sets ->
    [1] Jedes zweite Segment umdrehen, sodass sich die Stoffe abwechseln.
   *[2] Reihen mit einer ungeraden Anzahl von Teilen brauchen ein zweites Streifenset, das mit dem anderen Stoff beginnt; abwechselnd Segmente von beiden nehmen.
}
    .title = Auslegen
lesson-checker-join = Zwei Segmente rechts auf rechts legen. { $meet ->
    [match] Naht auf Naht legen und stecken.
   *[nest] Nähte verzahnen und stecken.
} { $seam } von der Kante nähen. { $meet ->
    [match] Die Nahtzugaben auseinanderbügeln.
   *[nest] Die Nahtzugaben zu einer Seite bügeln.
}
    .title = Zusammennähen
lesson-checker-measure = Die Einheit soll jetzt { $size } messen, die Ecken der Teile treffen aufeinander.
    .title = Messen

picture-strips = Streifen von jedem Stoff
picture-strips-sewn = Zwei Streifen rechts auf rechts, an einer Kante genäht
picture-strip-set = Das aufgeklappte Streifenset; Pfeile zeigen die Bügelrichtung
picture-segments-cut = Das Streifenset, quer in Segmente geschnitten
picture-segment = Ein Segment, { $size }
picture-segments-laid = Segmente, so ausgelegt, dass sich die Stoffe abwechseln
picture-segments-sewn = Zwei Segmente rechts auf rechts, genäht
picture-checker-measured = Die Einheit, { $size }

## Sterne aus vielen Rauten

lesson-star-strips-cut = Das Ende des Stoffes begradigen und die Streifen der Zuschneidetabelle quer über die Stoffbreite schneiden, hier { $width } breit. Die Webkanten (die festen gewebten Ränder) abschneiden.
    .title = Streifen schneiden
lesson-star-strips-sew = Jede Reihe einer großen Raute hat ihr eigenes Streifenset mit den Stoffen dieser Reihe von der Mitte nach außen: das erste beginnt mit dem Stoff in der Mitte des Sterns, das zweite mit dem nächsten und so weiter. Jeden Streifen rechts auf rechts auf den vorigen legen, aber { $step } weiter beginnen, sodass die Enden eine Treppe im Winkel von 45° bilden. { $seam } von der Kante nähen. Die Nahtzugaben des einen Sets in die eine Richtung, die des nächsten in die andere bügeln: so verzahnen sie sich später.
    .title = Für jede Reihe ein Set nähen
lesson-star-segments = Die 45°-Linie des Lineals auf eine Naht legen und die treppenförmigen Enden abschneiden. Dann Segmente von { $width } Breite schneiden, rechtwinklig zum Schnitt gemessen: acht von jedem Set für einen Stern. Das Lineal mit der flachen Hand festhalten und vom Körper weg schneiden. Für jeden Schnitt die 45°-Linie wieder auf eine Naht legen. Die Schnittkanten dehnen sich: vorsichtig anfassen.
    .title = Im Winkel von 45° schneiden
lesson-star-rows = Die Segmente einer großen Raute nebeneinanderlegen, das des ersten Sets an die Mitte des Sterns. Je zwei rechts auf rechts so legen, dass sich ihre Nähte { $seam } von der Kante kreuzen, nicht an der Kante: dort durch beide stecken. Die Reihen zusammennähen und bügeln. Acht große Rauten nähen.
    .title = Die Reihen verbinden
lesson-star-points = Die großen Rauten zu Paaren, die Paare zu Hälften, die Hälften zum Stern nähen, immer von der Mitte nach außen. Am äußeren Ende { $seam } vor der Kante aufhören und verriegeln: dort wird der Hintergrund eingesetzt.
    .title = Die Zacken verbinden
lesson-star-ground = Das große Quadrat zweimal diagonal schneiden: vier Dreiecke. Oben, unten und an jeder Seite eines einsetzen: vom Punkt, an dem die Naht aufhört, bis zur Außenkante nähen, erst die eine Kante, dann die andere. Die Quadrate ebenso in die Ecken einsetzen. Die Nahtzugaben zum Stern bügeln.
    .title = Hintergrund einsetzen

picture-stepped-set = Drei Streifen, genäht und gebügelt, jeder weiter begonnen als der vorige
picture-cut-at-45 = Das Set, im Winkel von 45 Grad geschnitten
picture-star-rows = Drei Reihen von drei kleinen Rauten einzeln, und die große Raute
picture-star-points = Acht große Rauten, zum Stern verbunden
picture-star-ground = Der Stern mit seinen Dreiecken und Quadraten

## Rundungen

lesson-curve-squares = Für jede Schablone ein Quadrat zuschneiden: ein { $surround } für den Rahmen, ein { $quarter } für den Viertelkreis. Das Lineal mit der flachen Hand festhalten, Fingerspitzen weg von der Kante, und den Rollschneider vom Körper weg führen.
    .title = Quadrate schneiden
lesson-curve-cut = Beide Schablonen in Originalgröße drucken und ihr Testquadrat messen. Auf der linken Stoffseite umzeichnen, den Pfeil im Fadenlauf, und mit der Schere oder mit einem kleinen Rollschneider langsam vom Körper weg schneiden. Die kurzen Striche auf den Stoff übertragen.
    .title = Rundungen schneiden
lesson-curve-pin = Den Rahmen rechts auf rechts auf den Viertelkreis legen und die mittleren Striche aufeinanderstecken. Dann die Enden bündig legen und stecken, dann die Striche dazwischen. Die Kanten sind verschieden lang; die Nahtlinien, die aufeinandertreffen, sind es nicht.
    .title = Anlegen und stecken
lesson-curve-sew = Mit dem Rahmen oben { $seam } von der Kante mit kurzen Stichen langsam nähen: die obere Kante ein kleines Stück vor der Nadel so einhalten, dass sie glatt liegt, und jede Stecknadel herausziehen, bevor die Nähnadel sie erreicht.
    .title = Nähen
lesson-curve-press = Die Naht von der rechten Seite ansehen; wo ein Fältchen ist, dort auftrennen und neu nähen. Die Nahtzugaben zum Rahmen bügeln und das Eisen abheben, statt es zu schieben. Liegt es nicht flach, die Nahtzugabe des Rahmens an einigen Stellen einschneiden, höchstens zur Hälfte.
    .title = Bügeln
lesson-curve-measure = Die Einheit soll jetzt { $size } messen. Ist sie etwas größer, so beschneiden, dass die Enden des Bogens { $end } von den beiden Ecken liegen.
    .title = Messen

picture-curve-pieces = Ein Viertelkreis und sein Rahmen, jeder mit drei Strichen an der runden Kante
picture-curve-pinned = Die runde Kante des Rahmens am Viertelkreis, linke Seite oben, gesteckt
picture-curve-sewn = Die Naht am Viertelkreis, der Rahmen oben
picture-curve-opened = Die aufgeklappte Einheit; ein Pfeil zeigt zum Rahmen
picture-curve-measured = Die Einheit, { $size }

## Nähen auf Papier

lesson-papers-print = Für jede Einheit ein Papier in Originalgröße drucken und das Testquadrat messen. Die Papiere außerhalb der durchgezogenen Linie auseinanderschneiden. Einen kurzen Stich einstellen, etwa 1,5 mm: das Papier lässt sich so leichter abreißen.
    .title = Die Papiere drucken
lesson-papers-first = Das Papier wenden. { $first } mit der rechten Seite nach oben auf die unbedruckte Seite legen, über Fläche { $first } und rundum mindestens { $seam } darüber hinaus; gegen das Licht halten, um es zu sehen. Stecken.
    .title = Erstes Teil auflegen
lesson-papers-sew = { $second } rechts auf rechts auf { $first } legen, eine Kante { $seam } über die Linie zwischen den beiden Flächen hinaus. An der Linie zurückklappen: der Stoff muss seine Fläche und rundum { $seam } bedecken. Wieder nach vorn klappen und stecken. Das Papier wenden und auf der Linie nähen, von { $seam } davor bis { $seam } dahinter. (Hier ist die Stoffseite gezeigt.)
    .title = Auf der Linie nähen
lesson-papers-trim = Das Papier an der Naht zurückfalten. Beide Stofflagen { $seam } jenseits der Naht abschneiden: das Lineal mit der flachen Hand festhalten und den Rollschneider vom Körper weg führen. Das Papier nicht mitschneiden.
    .title = Zurückschneiden
lesson-papers-press = { $second } über die Naht klappen, rechte Seite oben, und von der Stoffseite trocken bügeln: unter einem heißen Eisen löst sich Toner.
    .title = Aufklappen, bügeln
lesson-papers-go-on = Die anderen Teile in der Reihenfolge ihrer Nummern annähen: auflegen, auf der Linie nähen, abschneiden, bügeln.
    .title = Weiter nach Nummern
lesson-papers-cut = Stoff und Papier an allen Seiten auf der durchgezogenen Linie abschneiden, { $seam } außerhalb der gestrichelten.{ $size ->
    [none] { "" }
   *[other] { " " }Die Einheit soll { $size } messen.
} Das Papier darin lassen, bis alle Kanten an andere genäht sind.
    .title = Auf Maß schneiden

picture-paper = Ein gedrucktes Papier mit Linien und den Nummern der Flächen
picture-paper-first = Das erste Teil auf der unbedruckten Seite; die gedruckten Linien scheinen durch
picture-paper-placed = Das zweite Teil auf dem ersten, linke Seite oben, über die Linie zwischen den beiden Flächen hinaus
picture-paper-sewn = Das zweite Teil, aufgelegt und an der Linie genäht
picture-allowances-cut = Die Nahtzugaben, ein wenig außerhalb der Naht abgeschnitten
picture-paper-opened = Das zweite Teil, über seine Fläche gebügelt
picture-paper-all = Alle Teile auf das Papier genäht
picture-paper-cut = Stoff und Papier, auf der durchgezogenen Linie abzuschneiden
picture-paper-done = Die fertige Einheit

## Nähen über Papier

lesson-epp-cut = Die Papiere in Originalgröße drucken und das Testquadrat messen. Jedes genau auf der Linie ausschneiden: jedes Teil wird nur so genau wie sein Papier. Sie haben keine Nahtzugabe und sind Spiegelbilder.
    .title = Die Papiere schneiden
lesson-epp-pin = Ein Papier mit der bedruckten Seite nach oben mitten auf die linke Seite seines Stoffteils legen, rundum { $seam } Stoff und den Pfeil im geraden Fadenlauf. Stecken.
    .title = Stecken
lesson-epp-fold = Eine Zugabe um die Kante des Papiers falten, dann die nächste und so weiter rundum: ein scharfer Bruch, keine Falten. Dabei mit großen Stichen festheften, einen Stich über jede Ecke, und die Stecknadel herausnehmen.
    .title = Falten und heften
lesson-epp-whip = Zwei Teile rechts auf rechts legen, Ecke auf Ecke. Mit kleinen Stichen über die Kante von Ecke zu Ecke nähen, etwa fünf auf einen Zentimeter, durch die beiden Bruchkanten und nicht durch die Papiere; an beiden Enden ein paar Stiche auf der Stelle. Aufklappen: die Stiche sind kaum zu sehen.
    .title = Kanten verbinden
lesson-epp-next = Eine Kante des nächsten Teils annähen und an der inneren Ecke den Faden nicht abschneiden: die Papiere so knicken, dass die nächsten beiden Kanten aufeinanderliegen, und weiternähen.
    .title = Das nächste einsetzen
lesson-epp-take-out = Wenn alle Kanten eines Teils genäht sind, von hinten trocken bügeln, die Heftfäden herausziehen und das Papier herausnehmen; es lässt sich wieder verwenden. An der Außenkante die Zugaben aufklappen und flach bügeln: mit ihnen wird die Einheit an die nächste genäht.
    .title = Papiere herausnehmen

picture-epp-paper = Ein Papier in fertiger Größe mit seinem Buchstaben
picture-epp-pinned = Das Papier, auf die linke Seite eines Stoffteils gesteckt
picture-epp-folded = Die Zugaben, um das Papier gefaltet und rundum geheftet
picture-epp-whipped = Zwei Teile, an einer Kante zusammengenäht und aufgeklappt, von hinten
picture-epp-set-in = Ein drittes Teil, in die Ecke zwischen den beiden eingesetzt, von hinten
picture-epp-opened = Die drei Teile von der rechten Seite

## Applikation

lesson-applique-cut = Die Schablone auf die rechte Stoffseite legen und die gestrichelte Linie übertragen. Auf der durchgezogenen Linie zuschneiden, { $seam } außerhalb der übertragenen oder so viel, wie auf der Schablone steht. Von der Hand weg schneiden, die den Stoff hält.
    .title = Zuschneiden
lesson-applique-turn = Die Zugabe bis kurz vor die übertragene Linie einschneiden, wo die Kante nach innen läuft, und an scharfen Spitzen kürzen. An der Linie nach hinten umschlagen und heften oder mit der Spitze des Eisens bügeln. Was unter einem anderen Teil liegen wird, bleibt flach.
    .title = Umschlagen
lesson-applique-lay = Den Hintergrund auf ein Viertel falten und leicht einfalzen: die Falze zeigen die Mitte. Die Teile auflegen, wie das Bild des Blocks es zeigt, das unterste zuerst, und stecken oder heften.
    .title = Auflegen
lesson-applique-sew = Durch die äußerste Kante des Bruchs nach oben stechen, daneben in den Hintergrund hinein und ein Stück weiter wieder heraus, etwa drei Stiche auf einen Zentimeter; dichter an Spitzen und inneren Ecken. Garn in der Farbe des Teils nehmen.
    .title = Annähen
lesson-applique-raw = Ein solches Teil auf der Linie zuschneiden, ohne Zugabe. Mit Klebevlies oder Textilkleber nach Anleitung des Herstellers fixieren: bei frischer Luft arbeiten und Kleber nicht auf die Haut bringen. Mit einem dichten Stich, der die Kante bedeckt, mit der Maschine oder von Hand umnähen.
    .title = Oder eine offene Kante
lesson-applique-press = Stecknadeln und Heftfäden herausnehmen und die Nadeln zählen. Auf einer weichen Unterlage von hinten bügeln, damit die Teile erhaben bleiben.
    .title = Bügeln

picture-applique-cut = Das ausgeschnittene Teil, die Bruchlinie innerhalb der Kante übertragen
picture-applique-turned = Das Teil mit umgeschlagener Zugabe
picture-applique-laid = Das Teil auf dem eingefalzten Hintergrund
picture-applique-sewn = Kleine Stiche entlang der ganzen Bruchkante
picture-applique-raw = Ein dichter Stich über der offenen Kante
picture-applique-done = Das fertige Teil auf seinem Hintergrund

## Applikation auf einem Block

lesson-applique-block-cut = { $letters }: die gestrichelte Linie der Schablone auf die rechte Stoffseite übertragen und auf der durchgezogenen Linie zuschneiden, { $outside ->
    [one] { $width } außerhalb davon.
   *[several] außerhalb davon.
} Von der Hand weg schneiden, die den Stoff hält.
    .title = Zuschneiden
lesson-applique-block-turn = Die Zugabe bis kurz vor die Linie einschneiden, wo die Kante nach innen läuft. An der Linie nach hinten umschlagen und heften oder bügeln; was unter einem anderen Teil liegen wird, bleibt flach.
    .title = Umschlagen
lesson-applique-block-raw = { $letters }: auf der Linie selbst übertragen und zuschneiden; nichts wird umgeschlagen. Klebevlies oder Textilkleber hält das Teil fest: nach Anleitung des Herstellers verwenden, bei frischer Luft und nicht auf der Haut.
    .title = Offene Kanten
lesson-applique-block-lay = Den Block bügeln. Auf ein Viertel falten und leicht einfalzen, um die Mitte zu finden. { $order ->
    [one] { $letters } auflegen, wie es das Bild zeigt. Stecken oder heften.
    [alike] Die Teile { $letters } auflegen, wie es das Bild zeigt. Stecken oder heften.
    [listed] Die Teile in dieser Reihenfolge auflegen, das unterste zuerst: { $letters }. Stecken oder heften.
   *[many] Die Teile von unten nach oben auflegen. Stecken oder heften.
}
    .title = Auflegen
lesson-applique-block-sew = { $edges ->
    [turned] Bruchkanten mit kleinen, unsichtbaren Stichen annähen, das unterste Teil zuerst.
    [raw] Offene Kanten mit einem dichten Stich umnähen.
   *[both] Bruchkanten mit kleinen, unsichtbaren Stichen annähen, das unterste Teil zuerst; offene Kanten mit einem dichten Stich umnähen.
} Stecknadeln und Heftfäden herausnehmen, die Nadeln zählen und auf einer weichen Unterlage von hinten bügeln.
    .title = Annähen

picture-applique-piece-cut = Teil { $letter }, die Bruchlinie innerhalb der Kante übertragen
picture-applique-piece-turned = Teil { $letter }, umgeschlagen
picture-applique-piece-raw = Teil { $letter }, auf der Linie zugeschnitten
picture-applique-block-letters = Der Block mit seiner Applikation, jedes Teil mit seinem Buchstaben
picture-applique-block = Der Block mit seiner Applikation

## Wie die Lektionen heißen, und wozu jede Technik gut ist

technique-applique = Teile mit beliebigem Umriss werden auf einen schon genähten Hintergrund gelegt und an den Kanten angenäht: Blätter, Buchstaben, Rundungen, die keine Naht verbinden könnte.
    .title = Applikation
technique-cut-patches = Jedes Teil wird für sich mit Nahtzugabe zugeschnitten und an seinen Nachbarn genäht. Das passt für jedes Muster und verschwendet keinen Stoff; Dreiecke haben dehnbare Kanten, darum vorsichtig schneiden und anfassen.
    .title = Nähen aus Einzelteilen
technique-eight-at-a-time = Zwei große Quadrate und vier Nähte ergeben acht Halbquadrat-Dreiecke, alle gleich.
    .title = Acht auf einmal
technique-foundation = Die Teile werden an den Linien auf ein bedrucktes Papier genäht, sodass auch schmale Spitzen genau werden. Sie werden größer zugeschnitten und unterwegs zurückgeschnitten. Der Stoff zeigt das Spiegelbild des Drucks.
    .title = Nähen auf Papier
technique-four-at-a-time = Ein großes und vier kleine Quadrate ergeben vier Fluggänse, ohne ein Dreieck zu schneiden und ohne Verschnitt.
    .title = Vier auf einmal
technique-over-papers = Jedes Teil wird um ein Papier in fertiger Größe gefaltet, geheftet und von Hand Bruch an Bruch an das nächste genäht. Eingesetzte Ecken sind so leicht wie gerade Nähte, und alles geht ohne Maschine.
    .title = Nähen über Papier (Lieseln)
technique-stitch-and-flip = Ein kleines Quadrat wird quer über die Ecke eines größeren Teils genäht, zurückgeschnitten und umgebügelt. Es sind keine Dreiecke zu schneiden; die abgeschnittenen Ecken bleiben übrig.
    .title = Ecken aufnähen
technique-strip-set = Lange Streifen werden nebeneinander zusammengenäht und quer in Segmente geschnitten: viele Nähte in einer, alle Segmente gleich.
    .title = Streifensets
technique-two-at-a-time = Zwei Quadrate werden auf beiden Seiten einer diagonalen Linie zusammengenäht und zwischen den Nähten durchgeschnitten. Die dehnbaren Kanten werden genäht, bevor sie geschnitten werden, und können sich nicht dehnen.
    .title = Zwei auf einmal

topic-a-piece-on-its-ground = Ein Teil auf seinem Hintergrund
topic-flying-geese = Fluggänse (Flying Geese)
topic-four-patch-and-checkerboard = Vierer-Block und Schachbrett
topic-half-square-triangle = Halbquadrat-Dreieck
topic-half-square-triangles = Halbquadrat-Dreiecke
topic-hourglass = Sanduhr
topic-patches-on-a-paper = Teile auf einem Papier
topic-patches-over-papers = Teile über Papier
topic-quarter-circles-and-fans = Viertelkreise und Fächer
topic-quarter-square-unit = Viertelquadrat-Einheit
topic-snowball-corners = Schneeball-Ecken
topic-split-square = Quadrat aus drei Dreiecken
topic-square-in-a-square = Quadrat im Quadrat
topic-squares-and-rectangles = Quadrate und Rechtecke
topic-stars-of-many-diamonds = Sterne aus vielen Rauten
topic-strips-one-above-the-other = Streifen übereinander
topic-strips-side-by-side = Streifen nebeneinander

# Die Spalten der Tabellen gängiger Größen.

head-finished = Fertig
head-should-measure = Soll messen
head-segment-width = Segmentbreite
head-oversized = { $head }, mit Zugabe
head-4-corner-squares = 4 Eckquadrate
head-all-four-squares = Alle vier Quadrate
head-base-square = Grundquadrat
head-both-squares = Beide Quadrate
head-corner-square-cut-once-2 = Ecke: Quadrat, einmal geschnitten → 2
head-corner-squares = Eckquadrate
head-goose-1-large-square = Gans: 1 großes Quadrat
head-goose-1-rectangle = Gans: 1 Rechteck
head-goose-square-cut-twice-4 = Gans: Quadrat, zweimal geschnitten → 4
head-large-2-squares = Groß: 2 Quadrate
head-large-square-cut-once-2 = Groß: Quadrat, einmal geschnitten → 2
head-middle-square = Mittleres Quadrat
head-quarter-circle-square-for-its-template = Viertelkreis: Quadrat für die Schablone
head-sky-2-squares = Himmel: 2 Quadrate
head-sky-4-small-squares = Himmel: 4 kleine Quadrate
head-sky-square-cut-once-2 = Himmel: Quadrat, einmal geschnitten → 2
head-small-1-square-of-each = Klein: je 1 Quadrat
head-small-square-cut-twice-4 = Klein: Quadrat, zweimal geschnitten → 4
head-square-cut-once-2-triangles = Quadrat, einmal geschnitten → 2 Dreiecke
head-square-cut-twice-4-triangles = Quadrat, zweimal geschnitten → 4 Dreiecke
head-strip-width = Streifenbreite
head-surround-square-for-its-template = Rahmen: Quadrat für die Schablone

# Größen.

sizes-title = { $topic }: gängige Größen
sizes-aside = { $unit ->
    [in] in Zoll, { $seam } Nahtzugabe
   *[cm] in Zentimetern, { $seam } Nahtzugabe
}{ $wide ->
    [1] { "" }
   *[other] ; { $wide } : { $high }, Breite zu Höhe
}
sizes-caption = { $unit ->
    [in] { $topic } in gängigen Größen: Zoll, { $seam } Nahtzugabe an jeder Seite
   *[cm] { $topic } in gängigen Größen: Zentimeter, { $seam } Nahtzugabe an jeder Seite
}{ $wide ->
    [1] { "" }
   *[other] , { $wide } : { $high }, Breite zu Höhe
}
sizes-remark = Fertig: das Maß im genähten Block. Soll messen: vor dem Zusammennähen, mit { $seam } Nahtzugabe an jeder Seite.
sizes-oversized = Mit Zugabe: so zugeschnitten, dass jede Einheit mindestens { $extra } zu groß wird; auf das Sollmaß zurückschneiden.
section-shown = gezeigt für { $size } fertig
uses-title = { $count ->
    [1] { $topic } in { $block }
   *[other] { $topic } in diesen Blöcken
}
uses-more = { $count ->
    [one] 1 weitere Einheit in anderen Größen oder Stoffen.
   *[other] { $count } weitere Einheiten in anderen Größen oder Stoffen.
}
uses-head = { $spare ->
    [0] { $title }, { $count }-mal, { $size } fertig.
   *[other] { $title }, { $count }-mal ({ $spare } übrig), { $size } fertig.
}
uses-of-block = { $block }: { $title }
uses-cut = { $cuts } zuschneiden.
uses-piece-none = { $count } { $form } { $size } aus { $fabric }
uses-piece-once = { $count } { $form } { $size } aus { $fabric }, einmal diagonal geschnitten
uses-piece-twice = { $count } { $form } { $size } aus { $fabric }, zweimal diagonal geschnitten
uses-measure = Jede soll vor dem Zusammennähen { $size } messen.
take-care = Vorsicht

## Dreieck im Quadrat

lesson-peak-cut = Streifen zuschneiden und daraus { NAME($piece, case: "plural") } für die schmalen Dreiecke. Das breite Dreieck nach seiner Schablone zuschneiden. Das Lineal mit der flachen Hand festhalten, Fingerspitzen weg von der Kante, und den Rollschneider vom Körper weg führen.
    .title = Zuschneiden
lesson-peak-pairs = Zwei Rechtecke rechts auf rechts legen und einmal von Ecke zu Ecke schneiden. Das ergibt zwei schmale Dreiecke und ihre zwei Spiegelbilder: in jede Einheit kommt eines von beiden Arten.
    .title = Gespiegelte Paare
lesson-peak-dots = Auf der linken Seite jedes Dreiecks an den Enden der langen Kante einen Punkt markieren, { $seam } von beiden Kanten. Die Spitzen sind in verschiedenen Winkeln geschnitten: die Punkte werden aufeinandergelegt, nicht die Spitzen.
    .title = Punkte markieren
lesson-peak-first = Das schmale Dreieck rechts auf rechts auf die linke Kante des breiten legen, lange Kanten bündig. Punkt auf Punkt legen; die Spitzen ragen an beiden Enden hinaus. Stecken und { $seam } von der Kante nähen.
    .title = Erste Seite
lesson-peak-press = { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben zum schmalen Dreieck bügeln.
} Die Öhrchen abschneiden.
    .title = Bügeln
lesson-peak-second = Das Spiegelbild ebenso auf die andere Kante legen. Seine Naht kreuzt die erste knapp über der Spitze. { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben zum schmalen Dreieck bügeln.
}
    .title = Zweite Seite
lesson-peak-measure = Die Einheit soll jetzt { $size } messen, mit { $seam } über der Spitze, und die Nähte laufen in die unteren Ecken. Ist sie größer, so zurückschneiden.
    .title = Auf Maß schneiden

picture-rectangle-from-strip = Ein Rechteck, aus einem Streifen geschnitten
picture-pair-cut = Zwei Rechtecke rechts auf rechts, von Ecke zu Ecke zu schneiden
picture-peak-dots = Das breite Dreieck mit einem Punkt an jeder Ecke, daneben ein schmales und sein Spiegelbild
picture-peak-first = Ein schmales Dreieck, an die linke Kante des breiten genäht
picture-peak-first-opened = Das breite Dreieck mit aufgeklappter linker Seite
picture-peak-second = Das zweite schmale Dreieck, aufgelegt und genäht

## Blockhäuser

lesson-log-cut = Streifen von { $width } Breite für die Balken zuschneiden und aus einem davon das mittlere Quadrat. Jeden Balken auf die Länge aus der Zuschneidetabelle schneiden: genau abgelängte Balken halten den Block rechtwinklig. Das Lineal mit der flachen Hand festhalten und den Rollschneider vom Körper weg führen.
    .title = Zuschneiden
lesson-log-first = Den ersten Balken rechts auf rechts auf die obere Kante des mittleren Quadrats legen, Kanten bündig. { $seam } von der Kante nähen.
    .title = Erster Balken
lesson-log-press = { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben zum Balken bügeln: beim Blockhaus zeigen alle nach außen.
}
    .title = Bügeln
lesson-log-second = Den zweiten Balken rechts auf rechts auf die rechte Kante legen, über die Mitte und das Ende des ersten Balkens. Nähen und bügeln wie zuvor.
    .title = Zweiter Balken
lesson-log-round = In derselben Richtung weiter: den dritten Balken an die untere Kante, den vierten an die linke. Jeder reicht über alles, was schon da ist.
    .title = Die Runde beenden
lesson-log-square = Nach jeder Runde messen. Mit vier Balken soll diese { $size } messen; wenn nicht, vor dem Weiternähen die Nahtzugabe prüfen.
    .title = Die Runde messen
lesson-log-next = Die nächste Runde dort beginnen, wo die letzte begann. Den Balken an die Kante legen, die zwei Nähte kreuzt.
    .title = Die nächste Runde
lesson-log-measure = Mit allen Runden soll der Block jetzt { $size } messen.
    .title = Messen

picture-log-laid = Ein Balken rechts auf rechts auf dem schon Genähten
picture-log-opened = Das mittlere Quadrat mit dem aufgeklappten ersten Balken
picture-log-round-measured = Das mittlere Quadrat mit seiner ersten Runde und den Maßen
picture-log-measured = Der fertige Block und seine Maße

## Sterne mit acht Zacken

lesson-star-cut = Streifen von { $width } Breite zuschneiden. Die 45°-Linie des Lineals an eine Kante des Streifens legen, das Ende abschneiden, dann Rauten schneiden: der Abstand der Schnitte, rechtwinklig gemessen, ist so groß wie der Streifen breit. Das Lineal mit der flachen Hand festhalten und den Rollschneider vom Körper weg führen.
    .title = Rauten schneiden
lesson-star-dots = Auf der linken Seite jeder Raute, jedes Dreiecks und jedes Quadrats an jeder Ecke einen Punkt markieren, { $seam } von beiden Kanten: dort kreuzen sich die Nahtlinien, und dort hören Nähte auf.
    .title = Punkte markieren
lesson-star-pairs = Zwei Rauten rechts auf rechts legen, alle Kanten bündig. Eine Kante von der Spitze in der Mitte des Sterns bis zum Punkt am anderen Ende nähen; verriegeln. Vier gleiche Paare nähen.
    .title = Paare nähen
lesson-star-press = { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben jedes Paars zum selben Stoff bügeln, damit alle in derselben Richtung um den Stern laufen.
}
    .title = Bügeln
lesson-star-triangle = Ein Seitendreieck rechts auf rechts auf eine Raute legen, den rechten Winkel an den Punkt, an dem die Naht aufhört, eine kurze Kante an die freie Kante der Raute. Von diesem Punkt bis zum äußeren Ende nähen.
    .title = Ein Dreieck einsetzen
lesson-star-quarters = Die andere kurze Kante des Dreiecks zur freien Kante der anderen Raute schwenken. Vom selben Punkt bis zum äußeren Ende nähen. Die Nahtzugaben beider Nähte zu den Rauten bügeln. Vier Viertel nähen.
    .title = Die zweite Kante
lesson-star-halves = Zwei Viertel rechts auf rechts legen und von der Mitte bis zum Punkt nähen; verriegeln. { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben in derselben Drehrichtung bügeln wie die der Paare.
} Zwei Hälften nähen.
    .title = Hälften nähen
lesson-star-join = Die Hälften rechts auf rechts legen. { $press ->
    [open] In der Mitte Naht auf Naht legen und stecken. Von Punkt zu Punkt nähen; an beiden Enden verriegeln. Die Nahtzugaben auseinanderbügeln.
   *[side] In der Mitte die Nähte verzahnen und stecken. Von Punkt zu Punkt nähen; an beiden Enden verriegeln. Von der Mitte nach außen bügeln und die Nahtzugaben dort auffächern.
}
    .title = Die Hälften verbinden
lesson-star-squares = In jede Ecke ein Quadrat einsetzen wie die Dreiecke. Der Block soll jetzt { $size } messen, mit { $seam } über jeder Spitze.
    .title = Quadrate einsetzen

picture-diamonds-cut = Ein Streifen, im Winkel von 45 Grad in Rauten geschnitten
picture-star-dots = Eine Raute, linke Seite oben, mit einem Punkt an jeder Ecke
picture-star-pair = Zwei Rauten aufeinander, von der Mitte bis zum Punkt genäht
picture-star-pair-opened = Ein aufgeklapptes Rautenpaar; Pfeile zeigen die Bügelrichtung
picture-star-triangle = Ein Dreieck auf einer Raute, vom Punkt nach außen genäht
picture-star-quarter = Ein Viertel: zwei Rauten und ihr Dreieck
picture-star-half = Eine Hälfte des Sterns mit ihren Dreiecken
picture-star-joined = Der Stern mit seinen Dreiecken, die Ecken noch offen
picture-star-measured = Der fertige Stern und seine Maße

## Eingesetzte Nähte

lesson-set-in-dots = Auf der linken Seite aller drei Teile an der Ecke, an der sie zusammentreffen, einen Punkt markieren, { $seam } von beiden Kanten. Dort kreuzen sich die Nahtlinien.
    .title = Punkte markieren
lesson-set-in-stop = Die ersten beiden Teile rechts auf rechts legen, Punkt auf Punkt. Ihre kurze schräge Kante vom äußeren Ende bis zum Punkt nähen; verriegeln. Die Nahtzugabe hinter dem Punkt offen lassen.
    .title = Am Punkt aufhören
lesson-set-in-press = Das Paar aufklappen und die Nahtzugaben zu einer Seite oder auseinanderbügeln. Die beiden freien Kanten bilden einen Winkel.
    .title = Bügeln
lesson-set-in-first = Das Quadrat rechts auf rechts auf eines der beiden Teile legen, die Ecke am Punkt, Kanten bündig. Vom Punkt bis zum äußeren Ende nähen; am Punkt verriegeln.
    .title = Erste Kante nähen
lesson-set-in-second = Die nächste Kante des Quadrats zur freien Kante des anderen Teils schwenken; was im Weg ist, zur Seite falten. Vom selben Punkt bis zum äußeren Ende nähen.
    .title = Zweite Kante nähen
lesson-set-in-measure = Die Nahtzugaben beider Nähte vom Quadrat weg bügeln, oder wie beim Block angegeben. Die Öhrchen abschneiden. Die Ecke liegt flach, wenn alle Nähte am selben Punkt aufhören; wirft sie Falten, einen Stich hinter dem Punkt auftrennen. Die Einheit soll jetzt { $size } messen.
    .title = Bügeln und messen

picture-set-in-dots = Drei Teile mit einem Punkt an der Ecke, an der sie zusammentreffen
picture-set-in-stopped = Zwei Teile aufeinander, die Naht hört am Punkt auf
picture-set-in-pair = Das aufgeklappte Paar, ein Winkel zwischen den freien Kanten
picture-set-in-first = Das Quadrat auf einem Teil, vom Punkt nach außen genäht
picture-set-in-second = Das Quadrat auf dem anderen Teil, vom Punkt nach außen genäht
picture-set-in-measured = Die fertige Einheit und ihre Maße

## Teilnähte

lesson-partial-lay = Den ersten Streifen rechts auf rechts auf die obere Kante des Quadrats legen, rechte Enden bündig; sein linkes Ende steht über. Vom rechten Ende aus etwa zwei Drittel der Quadratkante nähen; am Punkt verriegeln. Den Rest offen lassen.
    .title = Erste Naht, ein Teil
lesson-partial-press = Den genähten Teil zum Streifen bügeln.
    .title = Bügeln
lesson-partial-second = Den zweiten Streifen auf die rechte Kante legen, über das Quadrat und das Ende des ersten Streifens. Die ganze Kante nähen. { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben zum Streifen bügeln.
}
    .title = Zweiter Streifen
lesson-partial-third = Den dritten Streifen auf die untere Kante legen, über das Quadrat und das Ende des zweiten Streifens. Nähen und bügeln wie zuvor.
    .title = Dritter Streifen
lesson-partial-last = Das lose Ende des ersten Streifens aus dem Weg falten. Den vierten Streifen auf die linke Kante legen, über das Quadrat und das Ende des dritten Streifens. Nähen und bügeln wie zuvor.
    .title = Vierter Streifen
lesson-partial-finish = Das lose Ende des ersten Streifens wieder rechts auf rechts auf die obere Kante legen, Kanten bündig. Kurz vor dem Punkt beginnen, über die letzten Stiche bis zum linken Ende nähen. { $press ->
    [open] Die Nahtzugaben auseinanderbügeln.
   *[side] Die Nahtzugaben zum Streifen bügeln.
}
    .title = Erste Naht beenden
lesson-partial-measure = Die Einheit soll jetzt { $size } messen.
    .title = Messen

picture-partial-laid = Ein Streifen auf der oberen Kante des Quadrats, zum Teil genäht
picture-partial-opened = Der aufgeklappte erste Streifen; sein linkes Ende ist lose
picture-partial-strip-laid = Der nächste Streifen rechts auf rechts, an der ganzen Kante genäht
picture-partial-folded = Das lose Ende des ersten Streifens weggefaltet, der vierte Streifen genäht
picture-partial-finish = Die erste Naht bis zum Ende genäht
picture-partial-measured = Die fertige Einheit und ihre Maße

## Ecken auf Gehrung

lesson-miter-cut = Zwei Streifen für die Seiten und zwei für oben und unten zuschneiden, jeden so lang wie der fertige Quilt mit Rand und etwa 10 cm mehr. Die Mitte jedes Streifens und jeder Kante markieren, und an jeder Ecke der Quiltmitte einen Punkt, { $seam } von beiden Kanten.
    .title = Zuschneiden
lesson-miter-sew = Einen Streifen rechts auf rechts auf eine Kante legen, Mitte auf Mitte; beide Enden stehen gleich weit über. Von Punkt zu Punkt nähen, { $seam } von der Kante; an beiden verriegeln.
    .title = Von Punkt zu Punkt
lesson-miter-second = Den Streifen der nächsten Kante ebenso annähen. Den ersten aus dem Weg falten: beide Nähte hören am selben Punkt auf.
    .title = Die nächste Kante
lesson-miter-fold = Die Quiltmitte diagonal rechts auf rechts falten, sodass die beiden Streifen Kante auf Kante liegen. Mit dem Lineal in der Verlängerung des Bruchs im Winkel von 45° eine Linie vom Punkt bis zur Außenkante zeichnen.
    .title = Falten, anzeichnen
lesson-miter-stitch = Die Streifen entlang der Linie stecken. Auf der Linie vom Punkt nach außen nähen; am Punkt verriegeln. Die Ecke aufklappen und prüfen, ob sie flach liegt.
    .title = Die Gehrung nähen
lesson-miter-trim = Die Streifen { $seam } außerhalb der Naht abschneiden. Mit der Schere schneiden, oder das Lineal mit der flachen Hand festhalten und den Rollschneider vom Körper weg führen.
    .title = Abschneiden
lesson-miter-press = Die Nahtzugaben der Gehrung auseinanderbügeln und die der langen Nähte zum Rand.
    .title = Bügeln

picture-miter-strips = Eine Ecke des Quilts mit zwei Randstreifen, länger als seine Kanten
picture-miter-first = Ein Streifen, an eine Kante genäht, die Naht hört am Punkt auf
picture-miter-second = Ein Streifen, an die nächste Kante genäht, die Naht hört am selben Punkt auf
picture-miter-folded = Der Quilt, diagonal gefaltet, die Streifen Kante auf Kante, eine Linie vom Punkt bis zur Außenkante
picture-miter-sewn = Die Streifen, auf der Linie zusammengenäht
picture-miter-trimmed = Die Streifen, eine Nahtzugabe außerhalb der Naht abzuschneiden
picture-miter-opened = Die aufgeklappte Ecke, die Gehrung auseinandergebügelt

## Endloser Schrägstreifen

lesson-bias-cut = Ein Quadrat mit den Kanten im Fadenlauf zuschneiden und einmal diagonal schneiden. Ein Quadrat ergibt ungefähr so viel Schrägstreifen wie seine Fläche geteilt durch die Breite des Streifens. Das Lineal mit der flachen Hand festhalten und den Rollschneider vom Körper weg führen.
    .title = Das Quadrat schneiden
lesson-bias-sew = Ein Dreieck rechts auf rechts auf das andere legen, zwei gerade Kanten bündig; die Spitzen ragen an beiden Enden { $seam } hinaus. { $seam } von der Kante mit kleinen Stichen nähen. Die Nahtzugaben auseinanderbügeln.
    .title = Dreiecke verbinden
lesson-bias-mark = Das Stück mit den langen schrägen Kanten, die im schrägen Fadenlauf liegen, oben und unten hinlegen. Auf die linke Seite parallel dazu Linien zeichnen, im Abstand der Breite der Einfassung. Abschneiden, was über den letzten ganzen Streifen hinausgeht.
    .title = Linien ziehen
lesson-bias-tube = Die beiden geraden Kanten rechts auf rechts zu einem Schlauch legen. Eine um eine Linie versetzen: Linie 1 trifft auf Linie 1, sodass an jeder Seite ein Ende übersteht. Die Linien { $seam } von der Kante aufeinanderlegen, stecken und nähen. Die Nahtzugaben auseinanderbügeln.
    .title = Einen Schlauch nähen
lesson-bias-strip = An dem Ende beginnen, das übersteht. Mit der Schere auf der Linie rund um den Schlauch schneiden: ein einziger langer Streifen.
    .title = Streifen schneiden
lesson-bias-fold = Den Streifen der Länge nach links auf links falten und bügeln, ohne zu ziehen: schräger Fadenlauf dehnt sich.
    .title = Falten und bügeln

picture-bias-triangles = Zwei Dreiecke aufeinander, an einer geraden Kante genäht
picture-bias-lines = Das Stück mit Linien parallel zu den langen Kanten
picture-bias-matched = Das Stück, die Enden der Linien so nummeriert, wie sie aufeinandertreffen, um eine Linie versetzt
picture-bias-cutting = Der flach liegende Schlauch mit einer langen Linie rundherum und einem Schnitt auf der Linie
picture-bias-folded = Der Streifen, zur Hälfte der Länge nach gefaltet

technique-set-in-seams = Wo drei Teile in einer Ecke zusammentreffen, lässt sich das letzte mit keiner geraden Naht annähen. Nähte hören an einem Punkt auf, und das letzte Teil wird Kante für Kante eingesetzt.
    .title = Eingesetzte Nähte
technique-partial-seams = Wo Streifen wie die Flügel einer Windmühle um ein Quadrat laufen, ist keiner der letzte. Die erste Naht wird zum Teil genäht und beendet, wenn alle anderen Streifen angenäht sind.
    .title = Teilnähte
technique-mitered-corners = Randstreifen treffen in der Ecke im Winkel von 45° aufeinander wie bei einem Bilderrahmen. Das braucht längere Streifen und Nähte, die an der Ecke aufhören.
    .title = Ecken auf Gehrung
technique-continuous-bias = Runde Kanten, und Einfassungen, die lange halten sollen, brauchen Streifen im schrägen Fadenlauf. Ein Quadrat, einmal geschnitten und zweimal genäht, ergibt einen langen Streifen.
    .title = Endloser Schrägstreifen
topic-triangle-in-a-square = Dreieck im Quadrat
topic-log-cabins = Blockhäuser (Log Cabin)
topic-eight-point-stars = Sterne mit acht Zacken
topic-a-square-set-into-a-corner = Ein Quadrat, in eine Ecke eingesetzt
topic-four-strips-around-a-square = Vier Streifen um ein Quadrat
topic-the-corner-of-a-border = Die Ecke eines Randes
topic-a-bias-strip-from-a-square = Ein Schrägstreifen aus einem Quadrat
picture-star-large-diamond = Eine große Raute aus kleinen Rauten
