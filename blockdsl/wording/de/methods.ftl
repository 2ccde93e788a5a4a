# Die Schritte von Einheiten, die eine Technik ergibt, wie sie auf dem Blatt eines Blocks stehen.

method-take = { $pieces } nehmen.
method-take-each = Jeweils { $pieces } nehmen.
method-take-pair = Für jedes Quadratpaar { $pieces } nehmen.
method-take-set = Für jeden Satz Quadrate { $pieces } nehmen.

# Was zugeschnitten wird, nach seiner Form.
form-square = { $count ->
    [one] Quadrat
   *[other] Quadrate
}
form-rectangle = { $count ->
    [one] Rechteck
   *[other] Rechtecke
}
form-strip = Streifen
form-triangle = { $count ->
    [one] Dreieck
   *[other] Dreiecke
}
form-diamond = { $count ->
    [one] Raute
   *[other] Rauten
}
form-parallelogram = { $count ->
    [one] Parallelogramm
   *[other] Parallelogramme
}
form-trapezoid = { $count ->
    [one] Trapez
   *[other] Trapeze
}
form-hexagon = { $count ->
    [one] Sechseck
   *[other] Sechsecke
}
form-octagon = { $count ->
    [one] Achteck
   *[other] Achtecke
}
form-template = { $count ->
    [one] Schablonenteil
   *[other] Schablonenteile
}

# Ein Teil, das Buchstabe oder Stoff von anderen unterscheidet, $name: das Quadrat Laterne, ein Dreieck C.
called-square = { the.n }Quadrat { $name }
called-rectangle = { the.n }Rechteck { $name }
called-strip = { the.m }Streifen { $name }
called-triangle = { the.n }Dreieck { $name }
called-diamond = { the.f }Raute { $name }
called-parallelogram = { the.n }Parallelogramm { $name }
called-trapezoid = { the.n }Trapez { $name }
called-hexagon = { the.n }Sechseck { $name }
called-octagon = { the.n }Achteck { $name }
called-template = { the.n }Schablonenteil { $name }
take-piece = { $count } { $form } { $letter } ({ $fabric })

# Was ein Durchgang ergibt, im Titel.
# Wie viele entstehen, woraus, und wie viele übrig sind.
method-made = { $mirrored ->
    [0] { $count }-mal
    [one] { $count }-mal und 1 Spiegelbild
   *[other] { $count }-mal und { $mirrored } Spiegelbilder
}{ $batch ->
    [pair] , { $gives } aus jedem Quadratpaar
    [set] , { $gives } aus jedem Satz von { $squares } Quadraten
    [squares] { " " }aus { $squares } Quadraten
    [strips] { $sets ->
        [one] { " " }aus 1 Streifenset
       *[other] { " " }aus { $sets } Streifensets
    }
   *[each] { "" }
}{ $spare ->
    [0] { "" }
   *[other] , { $spare } übrig
}

method-mark-diagonal = Auf die linke Stoffseite von { NAME($piece, case: "dative") } eine diagonale Linie zeichnen.
method-mark-both-diagonals = Auf die linke Stoffseite von { NAME($piece, case: "dative") } beide diagonalen Linien zeichnen.
method-mark-two-diagonals = Auf die linke Stoffseite von { NAME($first, case: "dative") } und von { NAME($second, case: "dative") } eine diagonale Linie zeichnen.
method-mark-each = Auf die linke Stoffseite von jedem { $letter } eine diagonale Linie zeichnen.
method-mark-the = Auf die linke Stoffseite von { $letter } eine diagonale Linie zeichnen.
method-mark-across-one = Auf die linke Stoffseite von einem Halbquadrat-Dreieck eine diagonale Linie zeichnen, quer über die Naht.
method-mark-across-each = Auf die linke Stoffseite von jedem Halbquadrat-Dreieck eine diagonale Linie zeichnen, quer über die Naht.
method-mark-across = Auf die linke Stoffseite von jedem Halbquadrat-Dreieck mit { NAME($piece, case: "dative") } eine diagonale Linie zeichnen, quer über die Naht.

method-place-pair = Rechts auf rechts auf { NAME($piece, case: "accusative") } legen, Kanten bündig, und stecken.
method-place-pairs = { NAME($first, case: "accusative") } rechts auf rechts auf { NAME($first_under, case: "accusative") } und { $second } auf { NAME($second_under, case: "accusative") } legen, Kanten bündig, und stecken.
method-cross-halves = Rechts auf rechts auf das andere legen, Kanten bündig, { $first } auf { NAME($second, case: "accusative") }.
method-cross-pairs = Jedes rechts auf rechts auf eines mit { NAME($under, case: "dative") } legen, Kanten bündig, { $first } auf { NAME($second, case: "accusative") }.
method-cross-with = Jedes rechts auf rechts auf { NAME($piece, case: "accusative") } legen, Kanten bündig, und stecken.
method-place-two-corners = { NAME($piece, case: "accusative") } rechts auf rechts auf zwei gegenüberliegende Ecken von { NAME($base, case: "dative") } legen, Kanten bündig.
method-turn-in-one = Beide so drehen, dass ihre Linien eine durchgehende Linie über { $base } bilden; stecken.
method-place-square-corner = Auf jede Hälfte { NAME($piece, case: "accusative") } rechts auf rechts auf die rechtwinklige Ecke von { NAME($base, case: "dative") } legen, Kanten bündig.
method-turn-to-notch = So drehen, dass die Linie in die Kerbe zwischen den beiden anderen { $pieces } läuft; stecken.

method-nest-seams = Nähte verzahnen und stecken.
method-match-seams = Naht auf Naht legen und stecken.
method-sew-both-sides = { $lines ->
    [one] Auf beiden Seiten der Linie im Abstand von { $seam } nähen.
   *[other] Auf beiden Seiten jeder Linie im Abstand von { $seam } nähen.
}
method-cut-on-line = { $lines ->
    [one] Auf der Linie durchschneiden.
   *[other] Auf den Linien durchschneiden.
}
method-cut-quarters = In beiden Richtungen durch die Mitte halbieren, { $half } von den Kanten.
method-cut-outside = { $seam } außerhalb der Naht abschneiden.

method-press-toward = { $seams ->
    [1] Die Nahtzugaben zu { NAME($piece, case: "dative") } bügeln.
    [2] Die Nahtzugaben beider Nähte zu { NAME($piece, case: "dative") } bügeln.
   *[other] Alle Nahtzugaben zu { NAME($piece, case: "dative") } bügeln.
}
method-press-away = { $seams ->
    [1] Die Nahtzugaben von { NAME($piece, case: "dative") } weg bügeln.
    [2] Die Nahtzugaben beider Nähte von { NAME($piece, case: "dative") } weg bügeln.
   *[other] Alle Nahtzugaben von { NAME($piece, case: "dative") } weg bügeln.
}
method-press-open = { $seams ->
    [1] Die Nahtzugaben auseinanderbügeln.
    [2] Die Nahtzugaben beider Nähte auseinanderbügeln.
   *[other] Alle Nahtzugaben auseinanderbügeln.
}
method-press-either = Die Nahtzugaben beider Nähte zu einer beliebigen Seite bügeln.
method-press-one-way = Alle Nahtzugaben in dieselbe Richtung bügeln.
method-press-two-pairs = Die Nahtzugaben des ersten Paars zu { NAME($first, case: "dative") } und die des zweiten zu { NAME($second, case: "dative") } bügeln.
method-press-over-corner = { $piece } über die Ecke bügeln.
method-press-over-other = { $piece } über die Ecke bügeln.

method-trim-ears = Die Öhrchen abschneiden.
method-trim-half-if-larger = Ist das Teil zu groß, die 45°-Linie des Lineals auf die Naht legen und alle vier Kanten beschneiden.
method-trim-quarters = Jedes auf { $size } beschneiden, die Nähte von Ecke zu Ecke.
method-trim-geese = Jede auf { $size } beschneiden, mit { $seam } über der Spitze.
method-trim-evenly = Jedes auf { $size } beschneiden, auf beiden Seiten gleich viel.

method-measure = { $size }
method-measure-point = { $size }, mit { $seam } über der Spitze
method-measure-points = { $size }, mit { $seam } über jeder Spitze
method-measure-across = { $length } breit

# Von Einheiten, die in zwei Arten entstehen: woran man sie erkennt und welche man behält.
method-sort-both = { $landmark ->
    [point] Jedes mit der Spitze { $lies } hinlegen.
   *[other] Jedes so hinlegen: { $landmark } { $lies }.
} Bei der Hälfte liegt { $told } { $here }; die anderen, mit { $told } { $there }, sind ihre Spiegelbilder. Beide Arten getrennt halten.
method-sort-one = { $landmark ->
    [point] Jedes mit der Spitze { $lies } hinlegen.
   *[other] Jedes so hinlegen: { $landmark } { $lies }.
} Die mit { $told } { $here } behalten; die anderen sind Spiegelbilder und bleiben übrig.

method-flip-lay-base = { NAME($base, case: "accusative") } mit einer langen Kante { $position } hinlegen.
method-flip-place-end = { NAME($piece, case: "accusative") } rechts auf rechts auf das Ende { $end } legen, Kanten bündig.
method-flip-turn = { NAME($piece, case: "accusative") } so drehen, dass die Linie von { $start } nach { $end } läuft; stecken.
method-flip-sew = Knapp außerhalb der Linie nähen, nach { $position } versetzt.
method-flip-other-end = { NAME($piece, case: "accusative") } ebenso auf das Ende { $end } legen, die Linie von { $start } nach { $stop }.
method-flip-same-way = Ebenso nähen, abschneiden und bügeln, nach { $position } versetzt.
method-flip-place-whole = Rechts auf rechts auf { NAME($base, case: "accusative") } legen, Kanten bündig.
method-flip-lay-both = Beide so drehen, dass die Linie von { $start } nach { $end } läuft; stecken.
method-flip-place-corner = { NAME($piece, case: "accusative") } rechts auf rechts auf die Ecke { $corner } von { NAME($base, case: "dative") } legen, Kanten bündig.
method-flip-next-corner = { NAME($piece, case: "accusative") } ebenso auf die Ecke { $corner } legen, die Linie von { $start } nach { $end }. Ebenso nähen, abschneiden und bügeln, nach { $corner } versetzt.
method-flip-rest = { NAME($piece, case: "accusative") } ebenso auf die übrigen drei Ecken nähen, die gegenüberliegende zuerst; die Linie schneidet jeweils die Ecke ab.
method-flip-mirrored = { $count ->
    [one] Das Spiegelbild ebenso nähen, links und rechts vertauscht.
   *[other] Die Spiegelbilder ebenso nähen, links und rechts vertauscht.
}

# Streifensets.
method-take-strip-set = { $kind ->
    [one] { $pieces } nehmen, { $size }.
    [first] Für jedes Set außer dem letzten { $pieces } nehmen, { $size }.
   *[each] Für jedes Set { $pieces } nehmen, { $size }.
}
method-take-last-set = Für das letzte Set dieselben Streifen nehmen, { $size }.
method-set-two = { NAME($first, case: "accusative") } rechts auf rechts oben an { NAME($base, case: "accusative") } nähen.
method-set-three = { NAME($first, case: "accusative") } rechts auf rechts oben an { NAME($base, case: "accusative") } nähen. { NAME($last, case: "accusative") } unten annähen und am entgegengesetzten Ende beginnen.
method-set-sides = { NAME($piece, case: "accusative") } rechts auf rechts an beide langen Kanten von { NAME($base, case: "dative") } nähen, die zweite Naht am entgegengesetzten Ende beginnen.
method-set-many = Von oben nach unten rechts auf rechts zusammennähen und jede Naht am entgegengesetzten Ende beginnen: { $pieces }.
method-press-side = { $seams ->
    [1] Die Nahtzugaben nach { $position } bügeln.
    [2] Die Nahtzugaben beider Nähte nach { $position } bügeln.
   *[other] Alle Nahtzugaben nach { $position } bügeln.
}
method-trim-set = Das Set auf { $length } Breite beschneiden, an beiden langen Kanten gleich viel.
method-trim-joined = { $count ->
    [one] Das Teil
   *[other] Jedes
} auf { $size } beschneiden, an gegenüberliegenden Kanten gleich viel.
method-set-cut = { $sets ->
    [one] Ein Ende begradigen.
   *[other] Bei jedem Set ein Ende begradigen.
} { $segments ->
    [one] 1 Segment von { $width } Breite
   *[other] { $segments } Segmente von { $width } Breite
}{ $sets ->
    [one] { "" }
   *[other] { " " }aus jedem{ $last ->
        [0] { "" }
       *[other] , { $last } aus dem letzten
    }
} schneiden.
method-set-square-again = { $times ->
    [one] Nach dem dritten wieder begradigen.
   *[other] Nach jedem dritten wieder begradigen.
}
method-segments = { $set ->
    [0] { $count } Segmente
   *[other] { $count } Segmente von Set { $set }
}
method-segments-of-two = { $first ->
    [one] 1 Segment von Set { $one }
   *[other] { $first } Segmente von Set { $one }
} und { $second ->
    [one] 1 Segment von Set { $other }
   *[other] { $second } Segmente von Set { $other }
}
method-lay-two = Das erste mit { NAME($first, case: "dative") } { $position } hinlegen. Das zweite mit { NAME($second, case: "dative") } { $position } hinlegen.
method-lay-turned = Untereinander hinlegen, abwechselnd { $first } und { $second } { $position }.
method-sew-second-below = Das zweite { $meet ->
    [match] Naht auf Naht
   *[nest] mit verzahnten Nähten
} unten an das erste nähen.
method-sew-rows = Von oben nach unten { $meet ->
    [match] Naht auf Naht
   *[nest] mit verzahnten Nähten
} zusammennähen.
method-sew-one-to-other = Das Segment von Set { $one } { $meet ->
    [match] Naht auf Naht
   *[nest] mit verzahnten Nähten
} an eine lange Kante des Segments von Set { $other } nähen.
method-sew-two-to-other = Je ein Segment von Set { $one } { $meet ->
    [match] Naht auf Naht
   *[nest] mit verzahnten Nähten
} an beide langen Kanten des Segments von Set { $other } nähen.
method-star-segment = 1 Segment von Set { $set }
method-sew-sets-in-turn = Von oben nach unten { $meet ->
    [match] Naht auf Naht
   *[nest] mit verzahnten Nähten
} zusammennähen: { $sets }.
method-press-toward-second = Die Nahtzugaben zum zweiten bügeln.
method-press-toward-set = Die Nahtzugaben zu Set { $set } bügeln.
method-press-away-from-set = Die Nahtzugaben beider Nähte von Set { $set } weg bügeln.

# Sterne aus Streifensets.
method-star-set = Von oben nach unten rechts auf rechts zusammennähen: { $pieces }. Jeden Streifen { $step } weiter rechts beginnen als den darüber, sodass die Enden eine Treppe im Winkel von 45° bilden.
method-star-cut = Die 45°-Linie des Lineals auf eine Naht legen und das treppenförmige Ende links abschneiden. { $segments ->
    [one] 1 Segment von { $width } Breite
   *[other] { $segments } Segmente von { $width } Breite
}{ $sets ->
    [one] { "" }
   *[other] { " " }aus jedem Set{ $last ->
        [0] { "" }
       *[other] , { $last } aus dem letzten,
    }
} parallel zu diesem Schnitt schneiden.
method-star-again = Nach jedem dritten die 45°-Linie wieder auf eine Naht legen.
method-star-take-segments = Jeweils { $segments } nehmen.
method-star-lay-rows = In der Reihenfolge ihrer Sets nebeneinanderlegen, jedes mit dem ersten Streifen seines Sets oben, { $piece } von Set { $set } an einer spitzen Ecke der großen Raute.
method-star-sew-rows = { $rows ->
    [2] Das zweite rechts auf rechts auf das erste legen, lange Kanten bündig, sodass sich ihre Nähte { $seam } von der Kante kreuzen; dort stecken. Die lange Kante nähen.
   *[other] Jedes rechts auf rechts auf das vorige legen, lange Kanten bündig, sodass sich ihre Nähte { $seam } von der Kante kreuzen; dort stecken. Die langen Kanten nähen.
}
method-star-triangles = { $squares ->
    [one] { NAME($piece, case: "accusative") } zweimal diagonal schneiden: 4 Dreiecke.
   *[other] Jedes { $piece } zweimal diagonal schneiden: { $count } Dreiecke.
}
method-star-dots = Auf der linken Stoffseite jeder großen Raute, jedes Dreiecks und jedes Eckquadrats an jeder Ecke einen Punkt markieren, { $seam } von beiden Kanten.
method-star-place-pair = Jeweils 2 große Rauten nehmen. Rechts auf rechts aufeinanderlegen, alle Kanten bündig, { $piece } von Set { $set } unten.
method-star-sew-pair = Naht auf Naht legen und stecken. Die Kante unten rechts von der unteren Spitze bis zum Punkt am oberen Ende nähen; verriegeln.
method-star-press-pair = Die Nahtzugaben aller Paare zur selben Seite bügeln.
method-star-press-around = Die Nahtzugaben in derselben Drehrichtung bügeln wie die der Paare.
method-star-press-diamonds = { $seams ->
    [2] Die Nahtzugaben beider Nähte zu den großen Rauten bügeln.
   *[other] Die Nahtzugaben aller vier Nähte zu den großen Rauten bügeln.
}
method-star-take-quarter = Jeweils 1 Paar und 1 Dreieck { $piece } nehmen. Das Paar mit der genähten Spitze nach unten hinlegen.
method-star-set-triangle = { NAME($piece, case: "accusative") } rechts auf rechts auf die rechte große Raute legen, den rechten Winkel an den Punkt, an dem die Naht aufhört, eine kurze Kante an die freie Kante der großen Raute. Von diesem Punkt bis zum äußeren Ende nähen.
method-star-swing = Die andere kurze Kante von { NAME($piece, case: "dative") } zur freien Kante der linken großen Raute schwenken. Von diesem Punkt bis zum äußeren Ende nähen.
method-star-take-half = Jeweils 2 Viertel und 1 Quadrat { $piece } nehmen.
method-star-lay-quarters = Das erste mit { $piece } oben hinlegen. Das zweite mit { $piece } rechts hinlegen.
method-star-sew-half = Das zweite rechts auf rechts auf das erste legen, die freie Kante seiner oberen großen Raute auf die freie Kante der rechten großen Raute des ersten. Naht auf Naht legen und stecken. Von der Spitze in der Mitte bis zum äußeren Punkt nähen; verriegeln.
method-star-set-square = { NAME($piece, case: "accusative") } in den Winkel oben rechts einsetzen wie { $other } in Schritt { $number }.
method-star-set-squares = Quadrate { $piece } in die beiden offenen Ecken einsetzen wie { $other } in Schritt { $number }.
method-star-take-halves = 2 Hälften und 2 Quadrate { $piece } nehmen.
method-star-take-halves-each = Jeweils 2 Hälften und 2 Quadrate { $piece } nehmen.
method-star-join = Die Hälften rechts auf rechts aufeinanderlegen, lange Kanten bündig. In der Mitte Naht auf Naht legen und stecken. Vom einen äußeren Punkt zum anderen nähen; an beiden verriegeln. Die Nahtzugaben von der Mitte nach außen zu einer Seite bügeln und in der Mitte auffächern.
method-star-join-open = Die Hälften rechts auf rechts aufeinanderlegen, lange Kanten bündig. In der Mitte Naht auf Naht legen und stecken. Vom einen äußeren Punkt zum anderen nähen; an beiden verriegeln. Die Nahtzugaben auseinanderbügeln.
method-star-across-both = { $length } breit zwischen beiden Kantenpaaren
method-star-between-dots = { $length } zwischen den seitlichen Punkten
method-star-center-to-top = { $length } vom unteren Punkt bis zur oberen Kante
method-star-center-to-edges = { $length } vom Punkt in der Mitte bis zu jeder Außenkante

# Wo ein früherer Schritt dasselbe gezeigt hat.
method-again = Nähen wie in Schritt { $number }.
method-again-pair = { $press ->
    [open] Nähen wie in Schritt { $number }; die Linie auf { NAME($marked, case: "accusative") } zeichnen.
   *[side] Nähen wie in Schritt { $number }; die Linie auf { NAME($marked, case: "accusative") } zeichnen und zu { NAME($toward, case: "dative") } bügeln.
}
method-again-geese = { $press ->
    [open] Nähen wie in Schritt { $number }.
   *[side] Nähen wie in Schritt { $number } und zu { NAME($toward, case: "dative") } bügeln.
}
method-again-flip-geese = { $same ->
    [yes] Nähen wie in Schritt { $number }.
   *[no] Nähen wie in Schritt { $number }, mit { NAME($first, case: "dative") } am linken Ende und { $second } am rechten Ende.
}
method-again-flip-half = Nähen wie in Schritt { $number }, mit { NAME($upper, case: "dative") } auf { NAME($base, case: "accusative") }.
