# Was die Schritte eines Blocks ergeben: Hauptwörter, und was gleiche voneinander unterscheidet.
#
# Ein Hauptwort wird mit $count, $article ("", "a", "the", "one", "other", "another") und $case verlangt. Der Artikel
# kommt aus den Zusätzen von `the`: männlich, weiblich, sächlich.

the = { $name }
    .m = { $count ->
        [one] { $article ->
            [a] { $case ->
                [accusative] einen
                [dative] einem
               *[nominative] ein
            }{ " " }
            [one] { $case ->
                [accusative] einen
                [dative] einem
               *[nominative] ein
            }{ " " }
            [the] { $case ->
                [accusative] den
                [dative] dem
               *[nominative] der
            }{ " " }
            [other] { $case ->
                [accusative] den anderen
                [dative] dem anderen
               *[nominative] der andere
            }{ " " }
            [another] { $case ->
                [accusative] einen weiteren
                [dative] einem weiteren
               *[nominative] ein weiterer
            }{ " " }
           *[none] { "" }
        }
       *[other] { $article ->
            [the] { $case ->
                [dative] den
               *[nominative] die
            }{ " " }
            [other] { $case ->
                [dative] den anderen
               *[nominative] die anderen
            }{ " " }
            [another] { $case ->
                [dative] weiteren
               *[nominative] weitere
            }{ " " }
           *[none] { "" }
        }
    }
    .f = { $count ->
        [one] { $article ->
            [a] { $case ->
                [dative] einer
               *[nominative] eine
            }{ " " }
            [one] { $case ->
                [dative] einer
               *[nominative] eine
            }{ " " }
            [the] { $case ->
                [dative] der
               *[nominative] die
            }{ " " }
            [other] { $case ->
                [dative] der anderen
               *[nominative] die andere
            }{ " " }
            [another] { $case ->
                [dative] einer weiteren
               *[nominative] eine weitere
            }{ " " }
           *[none] { "" }
        }
       *[other] { $article ->
            [the] { $case ->
                [dative] den
               *[nominative] die
            }{ " " }
            [other] { $case ->
                [dative] den anderen
               *[nominative] die anderen
            }{ " " }
            [another] { $case ->
                [dative] weiteren
               *[nominative] weitere
            }{ " " }
           *[none] { "" }
        }
    }
    .n = { $count ->
        [one] { $article ->
            [a] { $case ->
                [dative] einem
               *[nominative] ein
            }{ " " }
            [one] { $case ->
                [dative] einem
               *[nominative] ein
            }{ " " }
            [the] { $case ->
                [dative] dem
               *[nominative] das
            }{ " " }
            [other] { $case ->
                [dative] dem anderen
               *[nominative] das andere
            }{ " " }
            [another] { $case ->
                [dative] einem weiteren
               *[nominative] ein weiteres
            }{ " " }
           *[none] { "" }
        }
       *[other] { $article ->
            [the] { $case ->
                [dative] den
               *[nominative] die
            }{ " " }
            [other] { $case ->
                [dative] den anderen
               *[nominative] die anderen
            }{ " " }
            [another] { $case ->
                [dative] weiteren
               *[nominative] weitere
            }{ " " }
           *[none] { "" }
        }
    }
one = 1 { $name }
other = das andere { $name }
another = ein weiteres { $name }

# Ein Teil, dem die Macherin einen Namen gegeben hat; $name ist ihr Wort.
part-own = { $count ->
    [one] { $article ->
        [a] { the.f }Einheit „{ $name }“
        [one] { the.f }Einheit „{ $name }“
        [the] { the.f }Einheit „{ $name }“
        [other] { the.f }Einheit „{ $name }“
        [another] { the.f }Einheit „{ $name }“
       *[none] { $case ->
            [counted] Einheit „{ $name }“
           *[other] { $name }
        }
    }
   *[other] { the.f }Einheiten „{ $name }“
}

# Ihr Name einer Einheit, und was sie ist.
part-own-kind = { $name } ({ $kind })

part-unit = { the.f }{ $number ->
    [none] { $count ->
        [one] Einheit
       *[other] Einheiten
    }
   *[other] { $count ->
        [one] Einheit { $number }
       *[other] Einheiten { $number }
    }
}
part-section = { the.m }{ $number ->
    [none] { $count ->
        [one] Abschnitt
       *[other] { $case ->
            [dative] Abschnitten
           *[other] Abschnitte
        }
    }
   *[other] { $count ->
        [one] Abschnitt { $number }
       *[other] { $case ->
            [dative] Abschnitten { $number }
           *[other] Abschnitte { $number }
        }
    }
}
part-block = { the.m }{ $count ->
    [one] Block
   *[other] { $case ->
        [dative] Blöcken
       *[other] Blöcke
    }
}
part-segment = { the.n }{ $count ->
    [one] Segment
   *[other] { $case ->
        [dative] Segmenten
       *[other] Segmente
    }
}
part-strip = { the.m }{ $count ->
    [one] Streifen
   *[other] Streifen
}
part-pair = { the.n }{ $count ->
    [one] Paar
   *[other] { $case ->
        [dative] Paaren
       *[other] Paare
    }
}
part-quarter = { the.n }{ $count ->
    [one] Viertel
   *[other] { $case ->
        [dative] Vierteln
       *[other] Viertel
    }
}
part-corner = { the.f }{ $count ->
    [one] Ecke
   *[other] Ecken
}
part-side = { the.f }{ $count ->
    [one] Seite
   *[other] Seiten
}
part-middle = { the.f }{ $count ->
    [one] Mitte
   *[other] Mitten
}
part-square = { the.n }{ $count ->
    [one] Quadrat
   *[other] { $case ->
        [dative] Quadraten
       *[other] Quadrate
    }
}
part-four-patch = { the.m }{ $count ->
    [one] Vierer-Block
   *[other] { $case ->
        [dative] Vierer-Blöcken
       *[other] Vierer-Blöcke
    }
}
part-nine-patch = { the.m }{ $count ->
    [one] Neuner-Block
   *[other] { $case ->
        [dative] Neuner-Blöcken
       *[other] Neuner-Blöcke
    }
}
part-sixteen-patch = { the.m }{ $count ->
    [one] Sechzehner-Block
   *[other] { $case ->
        [dative] Sechzehner-Blöcken
       *[other] Sechzehner-Blöcke
    }
}
part-pieced-square = { the.n }{ $count ->
    [one] Quadrat aus zwei Dreiecken
   *[other] { $case ->
        [dative] Quadraten aus zwei Dreiecken
       *[other] Quadrate aus zwei Dreiecken
    }
}
part-triangle-pair = { the.n }{ $count ->
    [one] Dreieckspaar
   *[other] { $case ->
        [dative] Dreieckspaaren
       *[other] Dreieckspaare
    }
}
part-corner-triangle = { the.n }{ $count ->
    [one] Eckdreieck
   *[other] { $case ->
        [dative] Eckdreiecken
       *[other] Eckdreiecke
    }
}
part-large-diamond = { the.f }{ $count ->
    [one] { $case ->
        [dative] große{ $article ->
            [none] { "" }
           *[any] n
        }
       *[other] große
    } Raute
   *[other] große{ $article ->
        [the] n
        [other] n
       *[none] { $case ->
            [dative] n
           *[other] { "" }
        }
    } Rauten
}
part-half-square-triangle = { the.n }{ $count ->
    [one] Halbquadrat-Dreieck
   *[other] { $case ->
        [dative] Halbquadrat-Dreiecken
       *[other] Halbquadrat-Dreiecke
    }
}
part-quarter-square-unit = { the.f }{ $count ->
    [one] Viertelquadrat-Einheit
   *[other] Viertelquadrat-Einheiten
}
part-hourglass = { the.f }{ $count ->
    [one] Sanduhr
   *[other] Sanduhren
}
part-split-square = { the.n }{ $count ->
    [one] Quadrat aus drei Dreiecken
   *[other] { $case ->
        [dative] Quadraten aus drei Dreiecken
       *[other] Quadrate aus drei Dreiecken
    }
}
part-snowball = { the.m }{ $count ->
    [one] Schneeball
   *[other] { $case ->
        [dative] Schneebällen
       *[other] Schneebälle
    }
}
part-rail-unit = { the.f }{ $count ->
    [one] Streifen-Einheit
   *[other] Streifen-Einheiten
}
part-bar-unit = { the.f }{ $count ->
    [one] Balken-Einheit
   *[other] Balken-Einheiten
}
part-checkerboard = { the.n }{ $count ->
    [one] Schachbrett
   *[other] { $case ->
        [dative] Schachbrettern
       *[other] Schachbretter
    }
}
part-eight-point-star = { the.m }{ $count ->
    [one] Stern mit acht Zacken
   *[other] { $case ->
        [dative] Sternen mit acht Zacken
       *[other] Sterne mit acht Zacken
    }
}
part-hexagon-field = { the.n }{ $count ->
    [one] Feld aus Sechsecken
   *[other] { $case ->
        [dative] Feldern aus Sechsecken
       *[other] Felder aus Sechsecken
    }
}
part-half-rectangle-triangle = { the.n }{ $count ->
    [one] Halbrechteck-Dreieck
   *[other] { $case ->
        [dative] Halbrechteck-Dreiecken
       *[other] Halbrechteck-Dreiecke
    }
}
part-triangle-in-a-square = { the.n }{ $count ->
    [one] Dreieck im Quadrat
   *[other] { $case ->
        [dative] Dreiecken im Quadrat
       *[other] Dreiecke im Quadrat
    }
}
part-trapezoid-unit = { the.f }{ $count ->
    [one] Trapez-Einheit
   *[other] Trapez-Einheiten
}
part-slanting-strip = { the.f }{ $count ->
    [one] Einheit mit schrägem Streifen
   *[other] Einheiten mit schrägem Streifen
}
part-spool = { the.f }{ $count ->
    [one] Garnrolle
   *[other] Garnrollen
}
part-octagon = { the.n }{ $count ->
    [one] Achteck
   *[other] { $case ->
        [dative] Achtecken
       *[other] Achtecke
    }
}
part-log-cabin = { the.n }{ $count ->
    [one] Blockhaus
   *[other] { $case ->
        [dative] Blockhäusern
       *[other] Blockhäuser
    }
}
part-pineapple = { the.f }{ $count ->
    [one] Ananas
   *[other] Ananas
}
part-quarter-circle-unit = { the.f }{ $count ->
    [one] Viertelkreis-Einheit
   *[other] Viertelkreis-Einheiten
}
part-fan = { the.m }{ $count ->
    [one] Fächer
   *[other] { $case ->
        [dative] Fächern
       *[other] Fächer
    }
}
part-half = { the.f }{ $count ->
    [one] Hälfte
   *[other] Hälften
}
part-goose = { the.f }{ $count ->
    [one] Fluggans
   *[other] { $case ->
        [dative] Fluggänsen
       *[other] Fluggänse
    }
}
part-plain-patch = { the.n }{ $count ->
    [one] Einzelteil
   *[other] { $case ->
        [dative] Einzelteilen
       *[other] Einzelteile
    }
}
part-flying-geese = { the.f }{ $count ->
    [one] Fluggans
   *[other] { $case ->
        [dative] Fluggänsen
       *[other] Fluggänse
    }
}
part-courthouse-steps = { the.f }{ $count ->
    [one] Gerichtstreppe
   *[other] Gerichtstreppen
}
part-diamond-in-a-rectangle = { the.f }{ $count ->
    [one] Raute im Rechteck
   *[other] Rauten im Rechteck
}
part-kite-in-a-square = { the.m }{ $count ->
    [one] Drachen im Quadrat
   *[other] Drachen im Quadrat
}
part-square-in-a-square = { the.n }{ $count ->
    [one] Quadrat im Quadrat
   *[other] { $case ->
        [dative] Quadraten im Quadrat
       *[other] Quadrate im Quadrat
    }
}
part-row-of-tumblers = { the.f }{ $count ->
    [one] Becher-Reihe
   *[other] Becher-Reihen
}
part-block-with-its-applique = { the.m }{ $count ->
    [one] Block mit Applikation
   *[other] { $case ->
        [dative] Blöcken mit Applikation
       *[other] Blöcke mit Applikation
    }
}
part-sixty-degree-triangles = { the.n }{ $count ->
    [one] Feld aus 60°-Dreiecken
   *[other] { $case ->
        [dative] Feldern aus 60°-Dreiecken
       *[other] Felder aus 60°-Dreiecken
    }
}
part-cubes-of-sixty-degree-diamonds = { the.n }{ $count ->
    [one] Feld aus Rauten-Würfeln
   *[other] { $case ->
        [dative] Feldern aus Rauten-Würfeln
       *[other] Felder aus Rauten-Würfeln
    }
}
part-segment-of-set = { the.n }{ $count ->
    [one] Segment von Set { $number }
   *[other] { $case ->
        [dative] Segmenten von Set { $number }
       *[other] Segmente von Set { $number }
    }
}
part-row = Reihe { $number }
part-column = Spalte { $number }
part-rows = Reihen { $numbers }
part-columns = Spalten { $numbers }
part-round = Runde { $number }
part-straight-round = gerade Runde { $number }
part-diagonal-round = diagonale Runde { $number }
part-numbers-to = { $first } bis { $last }

# Was gleiche Hauptwörter unterscheidet. $name ist das Hauptwort oder was bisher daraus wurde.
part-in-fabric = { $name } mit { $fabric }
part-of-fabrics = { $name } aus { $fabrics }
part-reversed = { $name }, gespiegelt
part-ordinal = { $name } Nr. { $number }
part-again = { $name }, { $number }. Art
part-made-patch-by-patch = { $name }, aus Einzelteilen genäht
part-made-over-papers = { $name }, über Papier genäht
part-made-on-papers = { $name }, auf Papier genäht
part-made-by-stitch-and-flip = { $name }, mit aufgenähten Ecken
part-made-from-a-strip-set = { $name } aus einem Streifenset
part-made-two-at-a-time = { $name }, zwei auf einmal genäht
part-made-four-at-a-time = { $name }, vier auf einmal genäht
part-made-eight-at-a-time = { $name }, acht auf einmal genäht

# Was ein Schritt von einem Teil oder von den Teilen eines Buchstabens nimmt.
patch-in-fabric = { $letter } ({ $fabric })
# „counted“ ist der Fall nach einer Zahl: 1 Einheit „Balken“.
take-units = { $count } { NAME($name, case: "counted") }
take-patches = { $form ->
    [triangle] { $count ->
        [one] { $count } Dreieck { $letter } ({ $fabric })
       *[other] { $count } Dreiecke { $letter } ({ $fabric })
    }
    [square] { $count ->
        [one] { $count } Quadrat { $letter } ({ $fabric })
       *[other] { $count } Quadrate { $letter } ({ $fabric })
    }
   *[plain] { $count } { $letter } ({ $fabric })
}

# Reihen, die ein Schritt genäht hat: die erste Reihe, die zweite Reihe.
joined-row = { $case ->
    [dative] der { $number ->
        [1] ersten
        [2] zweiten
        [3] dritten
        [4] vierten
        *[5] fünften
    } Reihe
   *[other] die { $number ->
        [1] erste
        [2] zweite
        [3] dritte
        [4] vierte
        *[5] fünfte
    } Reihe
}
joined-column = { $case ->
    [dative] der { $number ->
        [1] ersten
        [2] zweiten
        [3] dritten
        [4] vierten
        *[5] fünften
    } Spalte
   *[other] die { $number ->
        [1] erste
        [2] zweite
        [3] dritte
        [4] vierte
        *[5] fünfte
    } Spalte
}
joined-pair = { $case ->
    [dative] dem { $number ->
        [1] ersten
        [2] zweiten
        [3] dritten
        [4] vierten
        *[5] fünften
    } Paar
   *[other] das { $number ->
        [1] erste
        [2] zweite
        [3] dritte
        [4] vierte
        *[5] fünfte
    } Paar
}
joined-part = { $case ->
    [dative] dem { $number ->
        [1] ersten
        [2] zweiten
        [3] dritten
        [4] vierten
        *[5] fünften
    } Stück
   *[other] das { $number ->
        [1] erste
        [2] zweite
        [3] dritte
        [4] vierte
        *[5] fünfte
    } Stück
}
# Eines von zwei gleichen Teilen, die ein Schritt hinlegt.
joined-one = { $case ->
    [dative] dem { $number ->
        [1] ersten
        [2] zweiten
        [3] dritten
        [4] vierten
        *[5] fünften
    } Teil
   *[other] das { $number ->
        [1] erste
        [2] zweite
        [3] dritte
        [4] vierte
        *[5] fünfte
    } Teil
}

# Was ein Schritt aus einem früheren nimmt, oder was zugeschnitten ist.
take-from-step = { NAME($name, case: "accusative") } (Schritt { $step })
take-pieces = { $count } { $piece } { $size } { $unit ->
    [in] Zoll
   *[other] { $unit }
} aus { $fabric }
take-strips = { $count } { $size } { $unit ->
    [in] Zoll
   *[other] { $unit }
} breite { $piece } aus { $fabric }

# Was zugeschnitten wird.
piece-square = { the.n }{ $count ->
    [one] Quadrat
   *[other] { $case ->
        [dative] Quadraten
       *[other] Quadrate
    }
}
piece-rectangle = { the.n }{ $count ->
    [one] Rechteck
   *[other] { $case ->
        [dative] Rechtecken
       *[other] Rechtecke
    }
}
piece-strip = { the.m }{ $count ->
    [one] Streifen
   *[other] Streifen
}
piece-triangle = { the.n }{ $count ->
    [one] Dreieck
   *[other] { $case ->
        [dative] Dreiecken
       *[other] Dreiecke
    }
}
piece-diamond = { the.f }{ $count ->
    [one] Raute
   *[other] Rauten
}
piece-parallelogram = { the.n }{ $count ->
    [one] Parallelogramm
   *[other] { $case ->
        [dative] Parallelogrammen
       *[other] Parallelogramme
    }
}
piece-trapezoid = { the.n }{ $count ->
    [one] Trapez
   *[other] { $case ->
        [dative] Trapezen
       *[other] Trapeze
    }
}
piece-hexagon = { the.n }{ $count ->
    [one] Sechseck
   *[other] { $case ->
        [dative] Sechsecken
       *[other] Sechsecke
    }
}
piece-octagon = { the.n }{ $count ->
    [one] Achteck
   *[other] { $case ->
        [dative] Achtecken
       *[other] Achtecke
    }
}
piece-template = { the.n }{ $count ->
    [one] Teil
   *[other] { $case ->
        [dative] Teilen
       *[other] Teile
    }
}
