# Le cadre de chaque étape : titre, ce que l’on prend, mesures, listes.

list-pair = { $first } et { $last }
list-more = { $first }, ainsi que { $last }
list-comma = ,{ " " }
list-semicolon = { " " };{ " " }

length = { $length } { $unit ->
        [in] po
       *[other] { $unit }
    }
figure-about = environ { $figure }
length-about = environ { $length } { $unit ->
        [in] po
       *[other] { $unit }
    }
size = { $width } × { $height } { $unit ->
        [in] po
       *[other] { $unit }
    }
size-about = environ { $width } × { $height } { $unit ->
        [in] po
       *[other] { $unit }
    }

step-care = Refermer le cutter, prendre garde au fer chaud, compter les épingles ; tenir enfants et animaux à l’écart.

step-make = en faire { $count }
step-size = { $size } fini
step-take = Prendre { $list }.
step-as-in = Procéder comme à l’étape { $number }, avec ces pièces.
step-take-each = Pour chaque unité, prendre { $list }.
