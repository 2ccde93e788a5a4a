# Les phrases des étapes qui assemblent pièces et unités.

list-pairs = { $count ->
        [2] { $first } et { $other }, deux fois
       *[other] { $first } et { $other }, { $count } fois
    }
list-each = { $list }, chaque fois { $shows }
list-repeated = { $count ->
        [2] { $first }, puis deux fois { $other } et { $first }
       *[other] { $first }, puis { $count } fois { $other } et { $first }
    }

way-right = de gauche à droite
way-down = de haut en bas
way-bottom = de haut en bas
way-lower-right = du coin supérieur gauche au coin inférieur droit
way-upper-right = du coin inférieur gauche au coin supérieur droit
way-left = de droite à gauche
way-top = de bas en haut
way-lower-left = du coin supérieur droit au coin inférieur gauche
way-upper-left = du coin inférieur droit au coin supérieur gauche

shows-seen = { $fabric } à { $pos }
shows-middle = { $count ->
        [one] { $fabric } au milieu du bord de { $pos }
       *[other] { $fabric } au milieu des bords de { $pos }
    }
shows-point = { $count ->
        [one] pointe à { $pos }
       *[other] pointes à { $pos }
    }
shows-square-corner = { $count ->
        [one] angle droit à { $pos }
       *[other] angles droits à { $pos }
    }
shows-sharp-corner = { $count ->
        [one] angle le plus aigu à { $pos }
       *[other] angles les plus aigus à { $pos }
    }
shows-a-sharp-corner = un angle aigu à { $pos }
shows-long-edge = { $count ->
        [one] bord long à { $pos }
       *[other] bords longs à { $pos }
    }
shows-short-edge = { $count ->
        [one] bord court à { $pos }
       *[other] bords courts à { $pos }
    }
shows-upright-edges = deux bords à la verticale
shows-level-edges = deux bords à l’horizontale
shows-mark = { $count ->
        [one] repère HAUT à { $pos }
       *[other] repères HAUT à { $pos }
    }
with-landmark-each = { $part } (chaque fois { $shows })
with-landmark = { $part } ({ $shows })

join-lay = Poser { $part } : { $shows }.
join-lay-both = { $has ->
        [yes] Poser les deux { $what } : { $shows }.
       *[no] Poser les deux : { $shows }.
    }
join-lay-all = { $has ->
        [yes] Poser ces { $what } : { $shows }.
       *[no] Poser l’ensemble : { $shows }.
    }
join-lay-on-point = { $has ->
        [yes] Poser { $part } sur la pointe, { $shows }.
       *[no] Poser { $part } sur la pointe.
    }
join-turn = { $quarters ->
        [2] { $part } : comme { $like }, après un demi-tour.
       *[other] { $part } : comme { $like }, après un quart de tour.
    }

# Comment on coud, après ce qui est cousu à quoi.
seam-how = { $same ->
    [yes] , de la même façon
   *[no] { $sides ->
        [yes] , endroit contre endroit
       *[no] { "" }
    }{ $lies ->
        [yes] {" "}({ $shows })
       *[no] { "" }
    }{ $meeting ->
        [nest] , coutures emboîtées
        [match] , coutures alignées
       *[none] { "" }
    }
}
# Par quel bord.
seam-edge = { $edge ->
    [long] {" "}par son bord long
    [short] {" "}par son bord court
    [longer] {" "}par son bord le plus long
    [middle] {" "}par son bord moyen
    [shortest] {" "}par son bord le plus court
   *[none] { "" }
}
seam-edges = { $edge ->
    [long] par leurs bords longs
    [short] par leurs bords courts
    [longer] par leurs bords les plus longs
    [middle] par leurs bords moyens
    [shortest] par leurs bords les plus courts
   *[none] par le bord correspondant
}
edge-long = bord long
edge-short = bord court
edge-longer = bord le plus long
edge-middle = bord moyen
edge-shortest = bord le plus court
edge-at = { $edge } à { $pos }
edge-side = bord de { $pos }
join-sew = Coudre { $part }{ seam-edge } au bord de { $side } de { $base }{ seam-how }.
join-sew-its = Coudre { $part }{ seam-edge } sur le bord de { $side }{ seam-how }.
join-sew-both = Coudre 2 { $part }{ $edge ->
    [none] { "" }
   *[other] { " " }{ seam-edges }
} aux bords de { $edges } de { $base }{ seam-how }.
join-sew-both-its = Coudre 2 { $part }{ $edge ->
    [none] { "" }
   *[other] { " " }{ seam-edges }
} sur les bords de { $edges }{ seam-how }.
join-sew-two = Coudre 2 { $part } { seam-edges } aux bords de { $edges } de { $base }{ seam-how }, pli sur pli.
many-long = bords longs
many-short = bords courts
many-longer = bords les plus longs
many-middle = bords moyens
many-shortest = bords les plus courts
join-place-alike = Poser 1 { $name } sur l’autre, endroit contre endroit, { $edges } bord à bord.
join-sew-facing = Coudre le bord { $first } de { $part } au bord { $second } de { $base }{ seam-how }.
the-other = l’autre
join-nest = Emboîter les coutures et épingler.
join-match = Aligner les coutures et épingler.
join-sew-alike = Coudre 1 { $name } au bord de { $side } de l’autre{ seam-how }.
join-sew-edge = Coudre le { $edge }.
join-place = Poser { $part } sur { $base }, endroit contre endroit, tous les bords alignés{ $lies ->
    [yes] {" "}({ $shows })
   *[no] { "" }
}.
join-dot-as = Marquer des points sur chaque { $parts }, comme à l’étape { $number }.
join-dot-long = Sur l’envers de chaque { $parts }, marquer un point à { $length } des deux bords à chaque bout du bord long.
join-place-long = Poser { $part } sur { $base }, endroit contre endroit, bords longs alignés.
join-place-long-as = Poser { $part } sur { $base }, point sur point, et coudre le bord long comme à l’étape { $number }.
join-place-long-hand = Poser { $part } sur { $base }, endroit contre endroit, bords longs alignés, l’angle étroit de chaque pièce sur l’angle large de l’autre.
join-match-dots = Faire coïncider les points : l’angle étroit de chaque pièce dépasse l’angle large de l’autre ; épingler.
join-points = { $several ->
        [yes] Les pointes dépassent de { $length } aux deux bouts.
        [again] Les pointes dépassent de { $length }.
        [one-again] La pointe dépasse de { $length }.
       *[no] Les pointes dépassent de { $length } aux deux bouts.
    }
join-points-of = Les pointes de { $part } dépassent de { $length } aux deux bouts.
join-point-each = Une pointe dépasse de { $length } au bout de { $pos }, celle de { $part } à l’autre.
join-stop-at-dot = S’arrêter au point, au bout de { $pos }{ $again ->
        [yes] { "" }
       *[no]  ; faire un point d’arrêt
    }.
join-dot-to-dot = Coudre d’un point à l’autre{ $again ->
        [yes] { "" }
       *[no]  ; faire un point d’arrêt à chacun
    }.
row-each-seam = chaque couture
row-seams = { $count ->
        [one] la couture { $numbers }
       *[other] les coutures { $numbers }
    }
join-row-dot-to-dot = Coudre { $seams } d’un point à l’autre{ $again ->
        [yes] { "" }
       *[no]  ; faire un point d’arrêt aux deux bouts
    }.
join-row-stop = Arrêter { $seams } au point, au bout de { $pos }{ $again ->
        [yes] { "" }
       *[no]  ; faire un point d’arrêt
    }.
join-in-order = Assembler le tout dans l’ordre, { $way }{ seam-how }.
join-row = Assembler { $way }{ seam-how } : { $list }.
join-row-turning = Assembler { $way }, un tronçon à la fois, d’un point à l’autre : { $list }.
join-turn-at-dots = À chaque point, s’arrêter aiguille piquée et tourner l’ouvrage vers les deux bords suivants.
join-row-list = { $name }, { $way } : { $list }.
join-rows = { $way ->
        [row] Assembler chaque rangée{ seam-how }.
       *[column] Assembler chaque colonne{ seam-how }.
    }
join-row-number = { $way ->
        [row] rangée { $number }
       *[column] colonne { $number }
    }
join-joined = l’assemblage
join-pin-top = Épingler un repère HAUT au bord de { $pos }.
join-trim = Couper les oreilles qui dépassent.
join-trim-as = Recouper comme à l’étape { $number }.
join-trim-to = Recouper { $each ->
        [yes] chaque unité
       *[no] l’unité
    } à { $width } × { $height } { $unit ->
        [in] po
       *[other] { $unit }
    }, la couture { $points ->
        [yes] { $seam } à l’intérieur de deux coins opposés
       *[no] d’un coin à l’autre
    }.
join-crease = Marquer d’un pli le milieu de chaque bord de { $base } et de chaque bord long de { $parts }.
join-crease-units = Marquer d’un pli le milieu de chaque bord de { $base } et du bord long de chaque { $parts }.
join-dot = Sur l’envers de chaque { $parts }, marquer un point à { $length } des deux bords à chaque coin.

# Coutures partielles et pièces à insérer.
-before-stop = 1 cm
join-place-partial = { $has ->
        [yes] Poser { $part } sur { $base }, endroit contre endroit, un bord de { $edge } { $unit ->
        [in] po
       *[other] { $unit }
    } de { $name } sur le bord de { $side } de { $base }, bouts de { $even } alignés. Le bout de { $rest } de { $name } dépasse de { $base }.
       *[no] Poser { $part } sur { $base }, endroit contre endroit, sur le bord de { $side } de { $base }, bouts de { $even } alignés. Le bout de { $rest } de { $name } dépasse de { $base }.
    }
join-sew-partial = Coudre les premiers { $length } à partir du bout de { $even } ; faire un point d’arrêt. Laisser le reste ouvert.
join-fold = Replier à l’écart le bout libre de { $part }.
join-close = Poser le bout libre de { $part } sur le bord de { $side } de { $onto }, endroit contre endroit, bords alignés.
join-close-sew = Commencer { -before-stop } avant l’arrêt et coudre jusqu’au bout de { $pos }.
join-set-in = Insérer { $part } dans l’angle rentrant à { $pos }{ $has ->
        [yes] { " " }de { $base }
       *[no] { "" }
    }{ seam-how }. Poser un bord à la fois, endroit contre endroit, le sommet de l’angle sur le point où s’arrête la couture.
join-set-in-sew = Coudre chaque bord de ce point à son bout extérieur{ $again ->
        [yes] { "" }
       *[no]  ; faire un point d’arrêt au point
    }.
join-set-in-same = { $here ->
        [yes] Insérer de même { $part } dans l’angle rentrant à { $pos }{ seam-how }.
       *[no] Insérer { $part } dans l’angle rentrant à { $pos }{ seam-how }, comme { $name } à l’étape { $number }.
    }
join-turning = Coudre { $part } au bord de { $pos } de { $base }{ seam-how }, un tronçon à la fois, d’un point à l’autre. À chaque point, s’arrêter aiguille piquée et tourner l’ouvrage pour aligner les deux bords suivants.
join-turning-again = Coudre { $part } au bord de { $pos } de { $base }{ seam-how }, d’un point à l’autre, en tournant à chacun.
join-set-in-each = Insérer { $part } dans chaque angle rentrant, comme { $name } à l’étape { $number }.
join-set-in-hand = Insérer { $part } dans l’angle rentrant à { $pos }{ seam-how }, en pliant les papiers au coin.

# Courbes.
join-curve-crease = Marquer d’un pli le milieu de chaque bord courbe.
join-curve-place = Poser { $upper } sur { $under }, endroit contre endroit, bords courbes alignés, milieu sur milieu ; épingler.
join-curve-pin = Aligner et épingler les deux bouts droits, puis les repères intermédiaires.
join-curve-sew = Coudre le bord courbe, { $upper } au-dessus, en répartissant l’ampleur pour que le tissu reste à plat sous l’aiguille.
join-curve-as = Poser { $upper } sur { $under }, endroit contre endroit, bords courbes alignés, et coudre la courbe comme à l’étape { $number }.
join-curve-same = Coudre de même { $upper } sur { $under } le long de la courbe, { $upper } au-dessus.

# Piécé sur gabarits de papier.
join-baste = Rabattre les bords de chaque pièce sur son papier et bâtir.
join-baste-same = Bâtir les pièces sur leurs papiers.
join-whip-same = Surjeter toutes les coutures.
join-whip = Surjeter toutes les coutures, endroit contre endroit, d’un coin à l’autre, en ne prenant que les plis.
join-papers-in = Laisser les papiers en place.
join-papers-out = Repasser sur l’envers. Retirer le bâti et les papiers, et déplier au fer les bords extérieurs.

# Repassage.
press-open = { $has ->
        [yes] { $count ->
        [one] Ouvrir la couture de { $row } au fer.
       *[other] Ouvrir les coutures de { $row } au fer.
    }
       *[no] { $count ->
        [one] Ouvrir la couture au fer.
        [2] Ouvrir les deux coutures au fer.
       *[other] Ouvrir toutes les coutures au fer.
    }
    }
press-toward = { $has ->
        [yes] { $count ->
        [one] Coucher la couture de { $row } vers { $name }.
       *[other] Coucher les coutures de { $row } vers { $name }.
    }
       *[no] { $count ->
        [one] Coucher la couture vers { $name }.
        [2] Coucher les deux coutures vers { $name }.
       *[other] Coucher toutes les coutures vers { $name }.
    }
    }
press-toward-way = { $has ->
        [yes] { $count ->
        [one] Coucher la couture de { $row } vers { $pos }.
       *[other] Coucher les coutures de { $row } vers { $pos }.
    }
       *[no] { $count ->
        [one] Coucher la couture vers { $pos }.
        [2] Coucher les deux coutures vers { $pos }.
       *[other] Coucher toutes les coutures vers { $pos }.
    }
    }
press-away = { $has ->
        [yes] { $count ->
        [one] Coucher la couture de { $row } à l’opposé de { $name }.
       *[other] Coucher les coutures de { $row } à l’opposé de { $name }.
    }
       *[no] { $count ->
        [one] Coucher la couture à l’opposé de { $name }.
        [2] Coucher les deux coutures à l’opposé de { $name }.
       *[other] Coucher toutes les coutures à l’opposé de { $name }.
    }
    }
press-either = Coucher la couture d’un côté ou de l’autre.
press-inward = { $has ->
        [yes] Coucher les coutures de { $row } vers le milieu.
       *[no] { $count ->
        [2] Coucher les deux coutures vers le milieu.
       *[other] Coucher toutes les coutures vers le milieu.
    }
    }
press-outward = { $has ->
        [yes] Coucher les coutures de { $row } à l’opposé du milieu.
       *[no] { $count ->
        [2] Coucher les deux coutures à l’opposé du milieu.
       *[other] Coucher toutes les coutures à l’opposé du milieu.
    }
    }
press-by-number = Coucher { $several ->
        [yes] les coutures
       *[no] la couture
    } { $first } { $has ->
        [yes] de { $row }{ " " }
       *[no] { "" }
    }vers { $one } et { $more ->
        [yes] les coutures
       *[no] la couture
    } { $second } vers { $other }.
press-fan = Du centre vers l’extérieur, coucher la couture vers { $name }, et ouvrir les coutures en éventail au centre.
press-fan-halves = Du centre vers l’extérieur, coucher la moitié de { $half } de la couture vers { $way } et la moitié de { $rest } vers { $back }, et ouvrir les coutures en éventail au centre.
press-by-row = Coucher { $count ->
        [one] la couture
       *[other] les coutures
    } { $way ->
        [row] { $several ->
        [yes] des rangées
       *[no] de la rangée
    }
       *[column] { $several ->
        [yes] des colonnes
       *[no] de la colonne
    }
    } { $rows } vers { $one } et { $count ->
        [one] celle
       *[other] celles
    } { $way ->
        [row] { $more ->
        [yes] des rangées
       *[no] de la rangée
    }
       *[column] { $more ->
        [yes] des colonnes
       *[no] de la colonne
    }
    } { $others } vers { $other }.
press-each = Coucher chaque couture { $way ->
        [away] à l’opposé de la
       *[toward] vers la
    } pièce que l’on vient d’ajouter.
press-sewn = Coucher la partie cousue vers { $name }.

measure-points = { $count ->
        [one] { $size }, avec { $length } au-delà de la pointe
       *[other] { $size }, avec { $length } au-delà de chaque pointe
    }
measure-across = { $length } de large
measure-long = { $length } le long du bord long
measure-along = { $length } le long du bord de { $pos }
