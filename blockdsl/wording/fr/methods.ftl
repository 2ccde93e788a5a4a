# Les étapes des unités que donne une méthode, telles qu’elles figurent sur la fiche d’un bloc.

method-take = Prendre { $pieces }.
method-take-each = Pour chaque unité, prendre { $pieces }.
method-take-pair = Pour chaque paire de carrés, prendre { $pieces }.
method-take-set = Pour chaque jeu de carrés, prendre { $pieces }.

form-square = { $count ->
        [one] carré
       *[other] carrés
    }
form-rectangle = { $count ->
        [one] rectangle
       *[other] rectangles
    }
form-strip = { $count ->
        [one] bande
       *[other] bandes
    }
form-triangle = { $count ->
        [one] triangle
       *[other] triangles
    }
form-diamond = { $count ->
        [one] losange
       *[other] losanges
    }
form-parallelogram = { $count ->
        [one] parallélogramme
       *[other] parallélogrammes
    }
form-trapezoid = { $count ->
        [one] trapèze
       *[other] trapèzes
    }
form-hexagon = { $count ->
        [one] hexagone
       *[other] hexagones
    }
form-octagon = { $count ->
        [one] octogone
       *[other] octogones
    }
form-template = { $count ->
        [one] pièce au gabarit
       *[other] pièces au gabarit
    }

called-square = { the.m }{ $count ->
        [one] carré { $name }
       *[other] carrés { $name }
    }
called-rectangle = { the.m }{ $count ->
        [one] rectangle { $name }
       *[other] rectangles { $name }
    }
called-strip = { the.f }{ $count ->
        [one] bande { $name }
       *[other] bandes { $name }
    }
called-triangle = { the.m }{ $count ->
        [one] triangle { $name }
       *[other] triangles { $name }
    }
called-diamond = { the.m }{ $count ->
        [one] losange { $name }
       *[other] losanges { $name }
    }
called-parallelogram = { the.m }{ $count ->
        [one] parallélogramme { $name }
       *[other] parallélogrammes { $name }
    }
called-trapezoid = { the.m }{ $count ->
        [one] trapèze { $name }
       *[other] trapèzes { $name }
    }
called-hexagon = { the.m }{ $count ->
        [one] hexagone { $name }
       *[other] hexagones { $name }
    }
called-octagon = { the.m }{ $count ->
        [one] octogone { $name }
       *[other] octogones { $name }
    }
called-template = { the.f }{ $count ->
        [one] pièce au gabarit { $name }
       *[other] pièces au gabarit { $name }
    }
take-piece = { $count } { $form } { $letter } ({ $fabric })

# Combien on en fait, avec quoi, et combien sont en trop.
method-made = { $mirrored ->
    [0] en faire { $count }
    [one] en faire { $count } et 1 en miroir
   *[other] en faire { $count } et { $mirrored } en miroir
}{ $batch ->
    [pair] , { $gives } par paire de carrés
    [set] , { $gives } par jeu de { $squares } carrés
    [squares] { " " }avec { $squares } carrés
    [strips] { $sets ->
        [one] { " " }avec 1 ensemble de bandes
       *[other] { " " }avec { $sets } ensembles de bandes
    }
   *[each] { "" }
}{ $spare ->
    [0] { "" }
   *[other] , { $spare } en trop
}

method-mark-diagonal = Sur l’envers de { $piece }, tracer une ligne d’un coin à l’autre.
method-mark-both-diagonals = Sur l’envers de { $piece }, tracer les deux lignes d’un coin à l’autre.
method-mark-two-diagonals = Sur l’envers de { $first } et de { $second }, tracer une ligne d’un coin à l’autre.
method-mark-each = Sur l’envers de chaque { $letter }, tracer une ligne d’un coin à l’autre.
method-mark-the = Sur l’envers de { $letter }, tracer une ligne d’un coin à l’autre.
method-mark-across-one = Sur l’envers d’un demi-carré en triangle, tracer une ligne d’un coin à l’autre, en travers de la couture.
method-mark-across-each = Sur l’envers de chaque demi-carré en triangle, tracer une ligne d’un coin à l’autre, en travers de la couture.
method-mark-across = Sur l’envers de chaque demi-carré en triangle de { $piece }, tracer une ligne d’un coin à l’autre, en travers de la couture.

method-place-pair = Poser sur { $piece }, endroit contre endroit, bords alignés, et épingler.
method-place-pairs = Poser { $first } sur { $first_under } et { $second } sur { $second_under }, endroit contre endroit, bords alignés, et épingler.
method-cross-halves = Poser l’un sur l’autre, endroit contre endroit, bords alignés, { $first } sur { $second }.
method-cross-pairs = Poser chacun sur un de { $under }, endroit contre endroit, bords alignés, { $first } sur { $second }.
method-cross-with = Poser chacun sur { $piece }, endroit contre endroit, bords alignés, et épingler.
method-place-two-corners = Poser { $piece } sur chacun de deux coins opposés de { $base }, endroit contre endroit, bords alignés.
method-turn-in-one = Tourner les deux pour que leurs lignes n’en fassent qu’une en travers de { $base } ; épingler.
method-place-square-corner = Sur chaque moitié, poser { $piece } sur l’angle droit de { $base }, endroit contre endroit, bords alignés.
method-turn-to-notch = Tourner pour que la ligne passe dans le creux entre les deux autres { $pieces } ; épingler.

method-nest-seams = Emboîter les coutures et épingler.
method-match-seams = Aligner les coutures et épingler.
method-sew-both-sides = { $lines ->
        [one] Coudre à { $seam } de la ligne, des deux côtés.
       *[other] Coudre à { $seam } de chaque ligne, des deux côtés.
    }
method-cut-on-line = { $lines ->
        [one] Couper sur la ligne.
       *[other] Couper sur les lignes.
    }
method-cut-quarters = Couper en deux dans les deux sens par le milieu, à { $half } des bords.
method-cut-outside = Couper à { $seam } à l’extérieur de la couture.

method-press-toward = { $seams ->
        [1] Coucher la couture vers { $piece }.
        [2] Coucher les deux coutures vers { $piece }.
       *[other] Coucher toutes les coutures vers { $piece }.
    }
method-press-away = { $seams ->
        [1] Coucher la couture à l’opposé de { $piece }.
        [2] Coucher les deux coutures à l’opposé de { $piece }.
       *[other] Coucher toutes les coutures à l’opposé de { $piece }.
    }
method-press-open = { $seams ->
        [1] Ouvrir la couture au fer.
        [2] Ouvrir les deux coutures au fer.
       *[other] Ouvrir toutes les coutures au fer.
    }
method-press-either = Coucher les deux coutures d’un côté ou de l’autre.
method-press-one-way = Coucher toutes les coutures d’un même côté.
method-press-two-pairs = Coucher les coutures de la première paire vers { $first } et celles de la seconde vers { $second }.
method-press-over-corner = Rabattre { $piece } sur le coin au fer.
method-press-over-other = Rabattre { $piece } sur le coin au fer.

method-trim-ears = Couper les oreilles qui dépassent.
method-trim-half-if-larger = Si l’unité est trop grande, poser la ligne à 45° de la règle sur la couture et recouper les quatre bords.
method-trim-quarters = Recouper chaque unité à { $size }, les coutures d’un coin à l’autre.
method-trim-geese = Recouper chaque unité à { $size }, avec { $seam } au-delà de la pointe.
method-trim-evenly = Recouper chaque unité à { $size }, autant d’un côté que de l’autre.

method-measure = { $size }
method-measure-point = { $size }, avec { $seam } au-delà de la pointe
method-measure-points = { $size }, avec { $seam } au-delà de chaque pointe
method-measure-across = { $length } de large

method-sort-both = { $landmark ->
        [point] Poser chaque unité pointe à { $lies }.
       *[other] Poser chaque unité, { $landmark } à { $lies }.
    } La moitié ont { $told } à { $here } ; les autres, avec { $told } à { $there }, sont en miroir. Garder les deux sortes séparées.
method-sort-one = { $landmark ->
        [point] Poser chaque unité pointe à { $lies }.
       *[other] Poser chaque unité, { $landmark } à { $lies }.
    } Garder celles qui ont { $told } à { $here } ; les autres sont en miroir, et en trop.

method-flip-lay-base = Poser { $base }, un bord long à { $position }.
method-flip-place-end = Poser { $piece } sur le bout de { $end }, endroit contre endroit, bords alignés.
method-flip-turn = Tourner { $piece } pour que la ligne aille de { $start } à { $end } ; épingler.
method-flip-sew = Coudre juste à l’extérieur de la ligne, vers { $position }.
method-flip-other-end = Poser de même { $piece } sur le bout de { $end }, la ligne de { $start } à { $stop }.
method-flip-same-way = Coudre, couper et repasser de même, vers { $position }.
method-flip-place-whole = Poser sur { $base }, endroit contre endroit, bords alignés.
method-flip-lay-both = Tourner les deux pour que la ligne aille de { $start } à { $end } ; épingler.
method-flip-place-corner = Poser { $piece } sur le coin de { $corner } de { $base }, endroit contre endroit, bords alignés.
method-flip-next-corner = Poser de même { $piece } sur le coin de { $corner }, la ligne de { $start } à { $end }. Coudre, couper et repasser de même, vers { $corner }.
method-flip-rest = Rabattre de même { $piece } sur chacun des trois autres coins, le coin opposé d’abord, la ligne en travers du coin.
method-flip-mirrored = { $count ->
        [one] Faire de même l’unité en miroir, gauche et droite échangées.
       *[other] Faire de même les unités en miroir, gauche et droite échangées.
    }

# Ensembles de bandes.
method-take-strip-set = { $kind ->
        [one] Prendre { $pieces }, { $size }.
        [first] Pour chaque ensemble sauf le dernier, prendre { $pieces }, { $size }.
       *[each] Pour chaque ensemble, prendre { $pieces }, { $size }.
    }
method-take-last-set = Pour le dernier ensemble, prendre les mêmes bandes, { $size }.
method-set-two = Coudre { $first } au bord supérieur de { $base }, endroit contre endroit.
method-set-three = Coudre { $first } au bord supérieur de { $base }, endroit contre endroit. Coudre { $last } au bord inférieur, en commençant par l’autre bout.
method-set-sides = Coudre { $piece } à chaque bord long de { $base }, endroit contre endroit, en commençant la seconde couture par l’autre bout.
method-set-many = Assembler de haut en bas, endroit contre endroit, en commençant chaque couture par l’autre bout : { $pieces }.
method-press-side = { $seams ->
        [1] Coucher la couture vers { $position }.
        [2] Coucher les deux coutures vers { $position }.
       *[other] Coucher toutes les coutures vers { $position }.
    }
method-trim-set = Recouper l’ensemble à { $length } de large, autant sur chaque bord long.
method-trim-joined = Recouper { $count ->
        [one] l’unité
       *[other] chaque unité
    } à { $size }, autant sur les bords opposés.
method-set-cut = { $sets ->
        [one] Mettre un bout d’équerre.
       *[other] Mettre un bout de chaque ensemble d’équerre.
    } { $segments ->
        [one] Couper 1 segment de { $width } de large
       *[other] Couper { $segments } segments de { $width } de large
    }{ $sets ->
        [one] .
       *[other] { " " }dans chacun{ $last ->
        [0] .
       *[other] , { $last } dans le dernier.
    }
    }
method-set-square-again = { $times ->
        [one] Remettre d’équerre après le troisième.
       *[other] Remettre d’équerre tous les trois segments.
    }
method-segments = { $set ->
        [0] { $count } segments
       *[other] { $count } segments de l’ensemble { $set }
    }
method-segments-of-two = { $first ->
        [one] 1 segment de l’ensemble { $one }
       *[other] { $first } segments de l’ensemble { $one }
    } et { $second ->
        [one] 1 segment de l’ensemble { $other }
       *[other] { $second } segments de l’ensemble { $other }
    }
method-lay-two = Poser le premier, { $first } à { $position }. Poser le second, { $second } à { $position }.
method-lay-turned = Poser les segments l’un sous l’autre, { $first } et { $second } tour à tour à { $position }.
method-sew-second-below = Coudre le second au bord inférieur du premier, en { $meet ->
        [match] alignant
       *[nest] emboîtant
    } les coutures.
method-sew-rows = Assembler de haut en bas, en { $meet ->
        [match] alignant
       *[nest] emboîtant
    } les coutures.
method-sew-one-to-other = Coudre le segment de l’ensemble { $one } à un bord long du segment de l’ensemble { $other }, en { $meet ->
        [match] alignant
       *[nest] emboîtant
    } les coutures.
method-sew-two-to-other = Coudre un segment de l’ensemble { $one } à chaque bord long du segment de l’ensemble { $other }, en { $meet ->
        [match] alignant
       *[nest] emboîtant
    } les coutures.
method-sew-sets-in-turn = Assembler de haut en bas, en { $meet ->
        [match] alignant
       *[nest] emboîtant
    } les coutures : { $sets }.
method-press-toward-second = Coucher la couture vers le second.
method-press-toward-set = Coucher la couture vers l’ensemble { $set }.
method-press-away-from-set = Coucher les deux coutures à l’opposé de l’ensemble { $set }.

# Étoiles en ensembles de bandes.
method-star-set = Assembler de haut en bas, endroit contre endroit : { $pieces }. Commencer chaque bande à { $step } à droite du bout de la bande du dessus, pour que les bouts descendent en escalier à 45°.
method-star-cut = Poser la ligne à 45° de la règle sur une couture et couper le bout en escalier à gauche. { $segments ->
        [one] Couper 1 segment de { $width } de large
       *[other] Couper { $segments } segments de { $width } de large
    }{ $sets ->
        [one] { "" }
       *[other] { " " }dans chaque ensemble{ $last ->
        [0] { "" }
       *[other] , { $last } dans le dernier
    }
    }, parallèlement à cette coupe.
method-star-again = Reposer la ligne à 45° sur une couture tous les trois segments.
method-star-take-segments = Pour chaque grand losange, prendre { $segments }.
method-star-segment = 1 segment de l’ensemble { $set }
method-star-lay-rows = Poser les segments côte à côte dans l’ordre de leurs ensembles, chacun avec la première bande de son ensemble en haut, { $piece } de l’ensemble { $set } à un angle aigu du grand losange.
method-star-sew-rows = { $rows ->
        [2] Poser le second sur le premier, endroit contre endroit, bords longs alignés, pour que leurs coutures se croisent à { $seam } du bord ; y épingler. Coudre le bord long.
       *[other] Poser chacun sur le précédent, endroit contre endroit, bords longs alignés, pour que leurs coutures se croisent à { $seam } du bord ; y épingler. Coudre les bords longs.
    }
method-star-triangles = { $squares ->
        [one] Couper { $piece } deux fois d’un coin à l’autre : 4 triangles.
       *[other] Couper chaque { $piece } deux fois d’un coin à l’autre : { $count } triangles.
    }
method-star-dots = Sur l’envers de chaque grand losange, triangle et carré de coin, marquer un point à { $seam } des deux bords à chaque coin.
method-star-place-pair = Pour chaque paire, prendre 2 grands losanges. Poser l’un sur l’autre, endroit contre endroit, tous les bords alignés, { $piece } de l’ensemble { $set } en bas.
method-star-sew-pair = Aligner les coutures et épingler. Coudre le bord inférieur droit de la pointe du bas au point de l’autre bout ; faire un point d’arrêt.
method-star-press-pair = Coucher la couture de chaque paire du même côté.
method-star-press-around = Coucher la couture dans le même sens de rotation que celles des paires.
method-star-press-diamonds = { $seams ->
        [2] Coucher les deux coutures vers les grands losanges.
       *[other] Coucher les quatre coutures vers les grands losanges.
    }
method-star-take-quarter = Pour chaque quart, prendre 1 paire et 1 triangle { $piece }. Poser la paire, pointe cousue en bas.
method-star-set-triangle = Poser { $piece } sur le grand losange de droite, endroit contre endroit, l’angle droit au point où s’arrête la couture, un bord court le long du bord libre du grand losange. Coudre de ce point au bout extérieur.
method-star-swing = Faire pivoter l’autre bord court de { $piece } vers le bord libre du grand losange de gauche. Coudre de ce point au bout extérieur.
method-star-take-half = Pour chaque moitié, prendre 2 quarts et 1 carré { $piece }.
method-star-lay-quarters = Poser le premier, { $piece } en haut. Poser le second, { $piece } à droite.
method-star-sew-half = Poser le second sur le premier, endroit contre endroit, le bord libre de son grand losange du haut sur le bord libre du grand losange de droite du premier. Aligner les coutures et épingler. Coudre de la pointe du centre au point extérieur ; faire un point d’arrêt.
method-star-set-square = Insérer { $piece } dans l’angle rentrant en haut à droite, comme { $other } à l’étape { $number }.
method-star-set-squares = Insérer les carrés { $piece } dans les deux coins ouverts, comme { $other } à l’étape { $number }.
method-star-take-halves = Prendre 2 moitiés et 2 carrés { $piece }.
method-star-take-halves-each = Pour chaque étoile, prendre 2 moitiés et 2 carrés { $piece }.
method-star-join = Poser une moitié sur l’autre, endroit contre endroit, bords longs alignés. Aligner les coutures au centre et épingler. Coudre d’un point extérieur à l’autre ; faire un point d’arrêt aux deux. Du centre vers l’extérieur, coucher la couture d’un côté, et ouvrir les coutures en éventail au centre.
method-star-join-open = Poser une moitié sur l’autre, endroit contre endroit, bords longs alignés. Aligner les coutures au centre et épingler. Coudre d’un point extérieur à l’autre ; faire un point d’arrêt aux deux. Ouvrir la couture au fer.
method-star-across-both = { $length } de large, entre les deux paires de bords
method-star-between-dots = { $length } entre les points de côté
method-star-center-to-top = { $length } du point du bas au bord supérieur
method-star-center-to-edges = { $length } du point central à chaque bord extérieur

method-again = Coudre comme à l’étape { $number }.
method-again-pair = { $press ->
        [open] Coudre comme à l’étape { $number } ; tracer la ligne sur { $marked }.
       *[side] Coudre comme à l’étape { $number } ; tracer la ligne sur { $marked } et coucher les coutures vers { $toward }.
    }
method-again-geese = { $press ->
        [open] Coudre comme à l’étape { $number }.
       *[side] Coudre comme à l’étape { $number }, et coucher les coutures vers { $toward }.
    }
method-again-flip-geese = { $same ->
        [yes] Coudre comme à l’étape { $number }.
       *[no] Coudre comme à l’étape { $number }, { $first } au bout gauche et { $second } au bout droit.
    }
method-again-flip-half = Coudre comme à l’étape { $number }, { $upper } sur { $base }.
