# Sätze der Schritte, die Teile und Einheiten zusammennähen.

list-pairs = { $count ->
    [2] { $first } und { $other }, zweimal
   *[other] { $first } und { $other }, { $count }-mal
}
list-each = { $list }, jeweils { $shows }
list-repeated = { $count ->
    [2] { $first }, dann zweimal { $other } und { $first }
   *[other] { $first }, dann { $count }-mal { $other } und { $first }
}

# In welcher Reihenfolge.
way-right = von links nach rechts
way-down = von oben nach unten
way-bottom = von oben nach unten
way-lower-right = von oben links nach unten rechts
way-upper-right = von unten links nach oben rechts
way-left = von rechts nach links
way-top = von unten nach oben
way-lower-left = von oben rechts nach unten links
way-upper-left = von unten rechts nach oben links

# Woran man sieht, wie ein Teil liegt.
shows-seen = { $fabric } { $pos }
shows-middle = { $count ->
    [one] { $fabric } { $pos } in der Mitte der Kante
   *[other] { $fabric } { $pos } in der Mitte der Kanten
}
shows-point = { $count ->
    [one] Spitze { $pos }
   *[other] Spitzen { $pos }
}
shows-square-corner = { $count ->
    [one] rechter Winkel { $pos }
   *[other] rechte Winkel { $pos }
}
shows-sharp-corner = { $count ->
    [one] spitzeste Ecke { $pos }
   *[other] spitzeste Ecken { $pos }
}
shows-a-sharp-corner = eine spitze Ecke { $pos }
shows-long-edge = { $count ->
    [one] lange Kante { $pos }
   *[other] lange Kanten { $pos }
}
shows-short-edge = { $count ->
    [one] kurze Kante { $pos }
   *[other] kurze Kanten { $pos }
}
shows-upright-edges = zwei Kanten senkrecht
shows-level-edges = zwei Kanten waagerecht
shows-mark = { $count ->
    [one] Zeichen OBEN { $pos }
   *[other] Zeichen OBEN jeweils { $pos }
}
with-landmark-each = { $part } (jeweils { $shows })
with-landmark = { $part } ({ $shows })

join-lay = { NAME($part, case: "accusative") } so hinlegen: { $shows }.
join-lay-both = { $has ->
    [yes] Beide { $what } so hinlegen: { $shows }.
   *[no] Beide so hinlegen: { $shows }.
}
join-lay-all = { $has ->
    [yes] Alle { $what } so hinlegen: { $shows }.
   *[no] Alle so hinlegen: { $shows }.
}
join-lay-on-point = { $has ->
    [yes] { NAME($part, case: "accusative") } auf die Spitze stellen, { $shows }.
   *[no] { NAME($part, case: "accusative") } auf die Spitze stellen.
}
join-turn = { $quarters ->
    [2] { $part } ist { $like }, um eine halbe Drehung gedreht.
   *[other] { $part } ist { $like }, um eine Vierteldrehung gedreht.
}

# Nähen.
# Wie genäht wird, hinter dem, was woran genäht wird.
seam-how = { $same ->
    [yes] , auf dieselbe Weise
   *[no] { $sides ->
        [yes] , rechts auf rechts
       *[no] { "" }
    }{ $lies ->
        [yes] {" "}({ $shows })
       *[no] { "" }
    }{ $meeting ->
        [nest] , Nähte verzahnt
        [match] , Naht auf Naht
       *[none] { "" }
    }
}
# Mit welcher Kante.
seam-edge = { $edge ->
    [long] {" "}mit der langen Kante
    [short] {" "}mit der kurzen Kante
    [longer] {" "}mit der längsten Kante
    [middle] {" "}mit der mittleren Kante
    [shortest] {" "}mit der kürzesten Kante
   *[none] { "" }
}
seam-edges = { $edge ->
    [long] mit den langen Kanten
    [short] mit den kurzen Kanten
    [longer] mit den längsten Kanten
    [middle] mit den mittleren Kanten
    [shortest] mit den kürzesten Kanten
   *[none] jeweils mit der passenden Kante
}
edge-long = lange Kante
edge-short = kurze Kante
edge-longer = längste Kante
edge-middle = mittlere Kante
edge-shortest = kürzeste Kante
edge-at = { $edge } { $pos }
edge-side = Kante { $pos }
join-sew = { NAME($part, case: "accusative") }{ seam-edge } { $side } an { NAME($base, case: "accusative") } nähen{ seam-how }.
join-sew-its = { NAME($part, case: "accusative") }{ seam-edge } { $side } annähen{ seam-how }.
join-sew-both = 2 { NAME($part, case: "accusative") }{ $edge ->
    [none] { "" }
   *[other] { " " }{ seam-edges }
} { $edges } an { NAME($base, case: "accusative") } nähen{ seam-how }.
join-sew-both-its = 2 { NAME($part, case: "accusative") }{ $edge ->
    [none] { "" }
   *[other] { " " }{ seam-edges }
} { $edges } annähen{ seam-how }.
join-sew-two = 2 { NAME($part, case: "accusative") } { seam-edges } { $edges } an { NAME($base, case: "accusative") } nähen{ seam-how }, Falz auf Falz.
many-long = lange Kanten
many-short = kurze Kanten
many-longer = längste Kanten
many-middle = mittlere Kanten
many-shortest = kürzeste Kanten
join-place-alike = 1 { NAME($name, case: "accusative") } rechts auf rechts auf das andere Teil legen, { $edges } bündig.
join-sew-facing = { NAME($part, case: "accusative") } mit der Kante aus { $first } an die Kante aus { $second } von { NAME($base, case: "dative") } nähen{ seam-how }.
the-other = dem anderen Teil
join-nest = Nähte verzahnen und stecken.
join-match = Naht auf Naht legen und stecken.
join-sew-alike = 1 { NAME($name, case: "accusative") } { $side } an das andere Teil nähen{ seam-how }.
join-sew-edge = Die { $edge } nähen.
join-place = { NAME($part, case: "accusative") } rechts auf rechts auf { NAME($base, case: "accusative") } legen, alle Kanten bündig{ $lies ->
    [yes] {" "}({ $shows })
   *[no] { "" }
}.
join-dot-as = Auf jedem { $parts } Punkte markieren wie in Schritt { $number }.
join-dot-long = Auf der linken Stoffseite von jedem { $parts } an beiden Enden der langen Kante einen Punkt markieren, { $length } von beiden Kanten.
join-place-long = { NAME($part, case: "accusative") } rechts auf rechts auf { NAME($base, case: "accusative") } legen, lange Kanten bündig.
join-place-long-as = { NAME($part, case: "accusative") } auf { NAME($base, case: "accusative") } legen, Punkt auf Punkt, und die lange Kante nähen wie in Schritt { $number }.
join-place-long-hand = { NAME($part, case: "accusative") } rechts auf rechts auf { NAME($base, case: "accusative") } legen, lange Kanten bündig, jede schmale Ecke auf der breiten des anderen Teils.
join-match-dots = Punkt auf Punkt legen, sodass die schmale Ecke des einen Teils über die breite Ecke des anderen hinausragt; stecken.
join-points = { $several ->
    [yes] Ihre Spitzen ragen an beiden Enden { $length } hinaus.
    [again] Ihre Spitzen ragen { $length } hinaus.
    [one-again] Die Spitze ragt { $length } hinaus.
   *[no] Die Spitzen ragen an beiden Enden { $length } hinaus.
}
join-points-of = Die Spitzen von { NAME($part, case: "dative") } ragen an beiden Enden { $length } hinaus.
join-point-each = Eine Spitze ragt am Ende { $pos } { $length } hinaus, die Spitze von { NAME($part, case: "dative") } am anderen.
join-stop-at-dot = Am Ende { $pos } beim Punkt aufhören{ $again ->
    [yes] { "" }
   *[no] ; verriegeln
}.
join-dot-to-dot = Von Punkt zu Punkt nähen{ $again ->
    [yes] { "" }
   *[no] ; an beiden verriegeln
}.
row-each-seam = jede Naht
row-seams = { $count ->
    [one] Naht { $numbers }
   *[other] die Nähte { $numbers }
}
join-row-dot-to-dot = { $seams } von Punkt zu Punkt nähen{ $again ->
    [yes] { "" }
   *[no] ; an beiden Enden verriegeln
}.
join-row-stop = { $seams } am Ende { $pos } nur bis zum Punkt nähen{ $again ->
    [yes] { "" }
   *[no] ; verriegeln
}.
join-in-order = Alle der Reihe nach { $way } zusammennähen{ seam-how }.
join-row = Von diesen Teilen { $way } eine Reihe nähen{ seam-how }: { $list }.
join-row-turning = Von diesen Teilen { $way } eine Reihe nähen, Abschnitt für Abschnitt von Punkt zu Punkt: { $list }.
join-turn-at-dots = An jedem Punkt mit der Nadel im Stoff anhalten und das Nähgut zu den nächsten beiden Kanten drehen.
join-row-list = { $name }, { $way }: { $list }.
join-rows = { $way ->
    [row] Jede Reihe zusammennähen{ seam-how }.
   *[column] Jede Spalte zusammennähen{ seam-how }.
}
join-row-number = { $way ->
    [row] Reihe { $number }
   *[column] Spalte { $number }
}
join-joined = das Genähte
join-pin-top = { $pos } ein Zeichen OBEN anstecken.
join-trim = Die Öhrchen abschneiden.
join-trim-as = Beschneiden wie in Schritt { $number }.
join-trim-to = { $each ->
    [yes] Jedes Teil
   *[no] Das Teil
} auf { $width } × { $height } { $unit ->
    [in] Zoll
   *[other] { $unit }
} beschneiden, die Naht { $points ->
    [yes] { $seam } innerhalb von zwei gegenüberliegenden Ecken
   *[no] von Ecke zu Ecke
}.
join-crease = Die Mitte jeder Kante von { NAME($base, case: "dative") } und jeder langen Kante von { $parts } einfalzen.
join-crease-units = Die Mitte jeder Kante von { NAME($base, case: "dative") } und der langen Kanten der Teile ({ $parts }) einfalzen.
join-dot = Auf der linken Stoffseite von jedem { $parts } an jeder Ecke einen Punkt markieren, { $length } von beiden Kanten.

# Teilnähte und eingesetzte Nähte.
-before-stop = 1 cm
join-place-partial = { $has ->
    [yes] { NAME($part, case: "accusative") } mit einer { $edge } { $unit ->
        [in] Zoll
       *[other] { $unit }
    } langen Kante von { NAME($name, case: "dative") } rechts auf rechts { $side } auf { NAME($base, case: "accusative") } legen, Enden { $even } bündig. Das Ende { $rest } von { NAME($name, case: "dative") } ragt über { NAME($base, case: "accusative") } hinaus.
   *[no] { NAME($part, case: "accusative") } rechts auf rechts { $side } auf { NAME($base, case: "accusative") } legen, Enden { $even } bündig. Das Ende { $rest } von { NAME($name, case: "dative") } ragt über { NAME($base, case: "accusative") } hinaus.
}
join-sew-partial = Vom Ende { $even } aus nur { $length } nähen; verriegeln. Den Rest offen lassen.
join-fold = Das lose Ende von { NAME($part, case: "dative") } aus dem Weg falten.
join-close = Das lose Ende von { NAME($part, case: "dative") } rechts auf rechts { $side } auf { NAME($onto, case: "accusative") } legen, Kanten bündig.
join-close-sew = { -before-stop } vor dem Nahtende beginnen und bis zum Ende { $pos } nähen.
join-set-in = { NAME($part, case: "accusative") }{ seam-how } { $pos } in den Winkel{ $has ->
    [yes] {" "}von { NAME($base, case: "dative") }
   *[no] {""}
} einsetzen. Immer nur eine Kante rechts auf rechts anlegen, den Scheitel des Winkels an dem Punkt, an dem die Naht aufhört.
join-set-in-sew = Jede Kante von diesem Punkt bis zum äußeren Ende nähen{ $again ->
    [yes] { "" }
   *[no] ; am Punkt verriegeln
}.
join-set-in-same = { $here ->
    [yes] { NAME($part, case: "accusative") }{ seam-how } ebenso { $pos } in den Winkel einsetzen.
   *[no] { NAME($part, case: "accusative") }{ seam-how } { $pos } in den Winkel einsetzen wie { NAME($name, case: "accusative") } in Schritt { $number }.
}
join-turning = { NAME($part, case: "accusative") }{ seam-how } { $pos } an { NAME($base, case: "accusative") } nähen, Abschnitt für Abschnitt von Punkt zu Punkt. An jedem Punkt mit der Nadel im Stoff anhalten und das Nähgut drehen, bis die nächsten beiden Kanten bündig liegen.
join-turning-again = { NAME($part, case: "accusative") }{ seam-how } { $pos } an { NAME($base, case: "accusative") } nähen, von Punkt zu Punkt, an jedem drehen.
join-set-in-each = { NAME($part, case: "accusative") } in jeden Winkel einsetzen wie { NAME($name, case: "accusative") } in Schritt { $number }.
join-set-in-hand = { NAME($part, case: "accusative") }{ seam-how } { $pos } in den Winkel einsetzen und dabei die Papiere an der Ecke umknicken.

# Rundungen.
join-curve-crease = Die Mitte jeder runden Kante einfalzen.
join-curve-place = { NAME($upper, case: "accusative") } rechts auf rechts auf { NAME($under, case: "accusative") } legen, runde Kanten bündig, Mitte auf Mitte; stecken.
join-curve-pin = Die geraden Enden bündig legen und stecken, dann die Zeichen dazwischen.
join-curve-sew = Die runde Kante nähen, { NAME($upper, case: "nominative") } oben, und den Stoff so einhalten, dass er unter der Nadel glatt liegt.
join-curve-as = { NAME($upper, case: "accusative") } rechts auf rechts auf { NAME($under, case: "accusative") } legen, runde Kanten bündig, und die Rundung nähen wie in Schritt { $number }.
join-curve-same = { NAME($upper, case: "accusative") } ebenso entlang der Rundung auf { NAME($under, case: "accusative") } nähen, { NAME($upper, case: "nominative") } oben.

# Nähen über Papier.
join-baste = Die Kanten jedes Stoffteils um sein Papier falten und festheften.
join-baste-same = Die Stoffteile auf ihre Papiere heften.
join-whip-same = Alle Nähte mit Überwendlichstichen nähen.
join-whip = Alle Nähte rechts auf rechts von Ecke zu Ecke mit Überwendlichstichen nähen, nur durch die Bruchkanten.
join-papers-in = Die Papiere noch nicht herausnehmen.
join-papers-out = Von hinten bügeln. Heftfäden und Papiere herausnehmen und die äußeren Kanten aufklappen und bügeln.

# Bügeln.
press-open = { $has ->
    [yes] { $count ->
        [one] Die Nahtzugaben der Naht von { NAME($row, case: "dative") } auseinanderbügeln.
       *[other] Die Nahtzugaben von { NAME($row, case: "dative") } auseinanderbügeln.
    }
   *[no] { $count ->
        [one] Die Nahtzugaben auseinanderbügeln.
        [2] Die Nahtzugaben beider Nähte auseinanderbügeln.
       *[other] Alle Nahtzugaben auseinanderbügeln.
    }
}
press-toward = { $has ->
    [yes] Die Nahtzugaben von { NAME($row, case: "dative") } zu { NAME($name, case: "dative") } bügeln.
   *[no] { $count ->
        [one] Die Nahtzugaben zu { NAME($name, case: "dative") } bügeln.
        [2] Die Nahtzugaben beider Nähte zu { NAME($name, case: "dative") } bügeln.
       *[other] Alle Nahtzugaben zu { NAME($name, case: "dative") } bügeln.
    }
}
press-toward-way = { $has ->
    [yes] Die Nahtzugaben von { NAME($row, case: "dative") } nach { $pos } bügeln.
   *[no] { $count ->
        [one] Die Nahtzugaben nach { $pos } bügeln.
        [2] Die Nahtzugaben beider Nähte nach { $pos } bügeln.
       *[other] Alle Nahtzugaben nach { $pos } bügeln.
    }
}
press-away = { $has ->
    [yes] Die Nahtzugaben von { NAME($row, case: "dative") } von { NAME($name, case: "dative") } weg bügeln.
   *[no] { $count ->
        [one] Die Nahtzugaben von { NAME($name, case: "dative") } weg bügeln.
        [2] Die Nahtzugaben beider Nähte von { NAME($name, case: "dative") } weg bügeln.
       *[other] Alle Nahtzugaben von { NAME($name, case: "dative") } weg bügeln.
    }
}
press-either = Die Nahtzugaben zu einer beliebigen Seite bügeln.
press-inward = { $has ->
    [yes] Die Nahtzugaben von { NAME($row, case: "dative") } zur Mitte bügeln.
   *[no] { $count ->
        [2] Die Nahtzugaben beider Nähte zur Mitte bügeln.
       *[other] Alle Nahtzugaben zur Mitte bügeln.
    }
}
press-outward = { $has ->
    [yes] Die Nahtzugaben von { NAME($row, case: "dative") } von der Mitte weg bügeln.
   *[no] { $count ->
        [2] Die Nahtzugaben beider Nähte von der Mitte weg bügeln.
       *[other] Alle Nahtzugaben von der Mitte weg bügeln.
    }
}
press-by-number = { $several ->
    [yes] Die Nähte
   *[no] Naht
} { $first } { $has ->
    [yes] von { NAME($row, case: "dative") }{" "}
   *[no] {""}
}nach { $one } und { $more ->
    [yes] die Nähte
   *[no] Naht
} { $second } nach { $other } bügeln.
# Die Naht durch die Mitte eines Sterns.
press-fan = Die Naht von der Mitte nach außen zu { NAME($name, case: "dative") } bügeln und die Nahtzugaben in der Mitte auffächern.
press-fan-halves = Von der Mitte nach außen die Hälfte der Naht { $half } nach { $way } und die Hälfte { $rest } nach { $back } bügeln; die Nahtzugaben in der Mitte auffächern.
press-by-row = { $count ->
    [one] Die Naht
   *[other] Die Nähte
} von { $way ->
    [row] { $several ->
        [yes] Reihen
       *[no] Reihe
    }
   *[column] { $several ->
        [yes] Spalten
       *[no] Spalte
    }
} { $rows } nach { $one } und die von { $way ->
    [row] { $more ->
        [yes] Reihen
       *[no] Reihe
    }
   *[column] { $more ->
        [yes] Spalten
       *[no] Spalte
    }
} { $others } nach { $other } bügeln.
press-each = { $way ->
    [away] Jede Nahtzugabe vom zuletzt angenähten Teil weg bügeln.
   *[toward] Jede Nahtzugabe zum zuletzt angenähten Teil bügeln.
}
press-sewn = Den genähten Teil der Nahtzugaben zu { NAME($name, case: "dative") } bügeln.

# Maße.
measure-points = { $count ->
    [one] { $size }, mit { $length } über der Spitze
   *[other] { $size }, mit { $length } über jeder Spitze
}
measure-across = { $length } breit
measure-long = { $length } an der langen Kante
measure-along = { $length } an der Kante { $pos }
