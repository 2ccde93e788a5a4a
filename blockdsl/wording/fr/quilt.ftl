# Les phrases des étapes qui assemblent un quilt et le finissent.

quilt-block = { $count ->
        [one] bloc
       *[other] blocs
    }
quilt-block-named = { $count ->
        [one] bloc { $name }
       *[other] blocs { $name }
    }
quilt-block-colored = { $count ->
        [one] bloc { $name } en { $colorway }
       *[other] blocs { $name } en { $colorway }
    }
quilt-half-upper = { $count ->
        [one] demi-bloc du haut
       *[other] demi-blocs du haut
    }
quilt-half-lower = { $count ->
        [one] demi-bloc du bas
       *[other] demi-blocs du bas
    }
quilt-plain-square = { $count ->
        [one] carré uni
       *[other] carrés unis
    }
quilt-half-block = { $count ->
        [one] demi-bloc
       *[other] demi-blocs
    }
quilt-side-triangle = { $count ->
        [one] triangle de côté
       *[other] triangles de côté
    }
quilt-corner-triangle = { $count ->
        [one] triangle de coin
       *[other] triangles de coin
    }
quilt-sash = { $count ->
        [one] bande intermédiaire
       *[other] bandes intermédiaires
    }
quilt-long-sash = { $count ->
        [one] bande intermédiaire longue
       *[other] bandes intermédiaires longues
    }
quilt-short-sash = { $count ->
        [one] bande intermédiaire courte
       *[other] bandes intermédiaires courtes
    }
quilt-sash-strip = { $count ->
        [one] longue bande intermédiaire
       *[other] longues bandes intermédiaires
    }
quilt-post = { $count ->
        [one] cabochon
       *[other] cabochons
    }
quilt-edge-post = { $count ->
        [one] demi-cabochon
       *[other] demi-cabochons
    }
quilt-strip = { $count ->
        [one] bande unie
       *[other] bandes unies
    }
quilt-border = { $count ->
        [one] bande
       *[other] bandes
    }
quilt-border-corner = { $count ->
        [one] carré d’angle
       *[other] carrés d’angle
    }

quilt-center = centre du quilt
quilt-center-block = bloc central
quilt-top = dessus du quilt
quilt-rows-row = { $count ->
        [one] rangée
       *[other] rangées
    } { $numbers }
quilt-rows-column = { $count ->
        [one] colonne
       *[other] colonnes
    } { $numbers }
quilt-rows-diagonal = { $count ->
        [one] rangée en diagonale
       *[other] rangées en diagonale
    } { $numbers }
quilt-rows-strips = { $count ->
        [one] longue bande intermédiaire
       *[other] longues bandes intermédiaires
    }
quilt-rows-strips-numbered = { $count ->
        [one] longue bande intermédiaire
       *[other] longues bandes intermédiaires
    } { $numbers }
quilt-numbers-through = { $first } à { $last }
quilt-ring-border = { $ordinal } bordure
quilt-ring-round = { $ordinal } série
quilt-ring-only-border = bordure
quilt-ring-only-round = série
quilt-batting = molleton
quilt-backing-wrong = dos, envers visible
quilt-top-right = dessus, endroit visible
quilt-corners-mitered = coins en onglet
quilt-corners-squares = carrés d’angle
quilt-backing = dos
quilt-layers = épaisseurs
quilt-quilting = matelassage
quilt-sleeve = fourreau d’accrochage
quilt-binding = biais de finition
quilt-label = étiquette
ordinal = { $number ->
        [1] première
        [2] deuxième
        [3] troisième
        [4] quatrième
        [5] cinquième
        [6] sixième
        [7] septième
        [8] huitième
        [9] neuvième
        [10] dixième
       *[other] { $number }e
    }

center-top = au-dessus de
center-bottom = au-dessous de
center-left = à gauche de
center-right = à droite de
center-upper-left = en haut à gauche de
center-upper-right = en haut à droite de
center-lower-left = en bas à gauche de
center-lower-right = en bas à droite de

landmark-at = { $fabric } à { $places }
landmark-middle = { $count ->
        [one] { $fabric } au milieu du bord de { $places }
       *[other] { $fabric } au milieu des bords de { $places }
    }
landmark-center = { $fabric } { $places } son centre
landmark-mark = repère HAUT à { $places }
quilt-square-corner = angle droit à { $place }
quilt-part-lies = { $part } ({ $how })

quilt-take = Prendre { $list }.
quilt-take-each = Pour chaque rangée, prendre { $list }.
quilt-note-top = Quand un { $block } est fait, épingler un repère HAUT à son bord supérieur.
quilt-lay-each = Poser chaque { $block } : { $how }.
quilt-lay-one = Poser le { $block } : { $how }.
quilt-lay-as-in = Poser chaque { $block } comme à l’étape { $step }.
quilt-diagonal-ends = Le bout gauche d’une rangée en diagonale est son bout inférieur gauche sur l’image du quilt.
quilt-sew-across = Assembler de gauche à droite{ quilt-right-sides } : { $groups }.
quilt-sew-down = Assembler de haut en bas{ quilt-right-sides } : { $groups }.
quilt-sew-along = Assembler bout à bout{ quilt-right-sides } : { $groups }.
quilt-sew-across-all = Assembler de gauche à droite{ quilt-right-sides }.
quilt-sew-down-all = Assembler de haut en bas{ quilt-right-sides }.
quilt-sew-along-all = Assembler bout à bout{ quilt-right-sides }.
quilt-right-sides = { $sides ->
    [yes] , endroit contre endroit
   *[no] { "" }
}
quilt-group-next = { $before }, puis { $next }
quilt-group-many = ({ $parts })
quilt-group-times = { $parts } { $times ->
        [2] deux fois
       *[other] { $times } fois
    }
quilt-bias-edges = Les bords courts des triangles sont dans le biais : épingler, et ne pas étirer.
quilt-press-open = Ouvrir toutes les coutures au fer.
quilt-press-sashes = Coucher toutes les coutures vers les bandes intermédiaires.
quilt-press-strips = Coucher toutes les coutures vers les bandes.
quilt-press-plain-squares = Coucher toutes les coutures vers les carrés unis.
quilt-press-ends-left = Coucher toutes les coutures vers la gauche.
quilt-press-ends-right = Coucher toutes les coutures vers la droite.
quilt-press-ends-top = Coucher toutes les coutures vers le haut.
quilt-press-ends-bottom = Coucher toutes les coutures vers le bas.
quilt-press-ends-both = Coucher les coutures de { $first } vers { $one } et celles de { $second } vers { $other }.

quilt-measure-high = { $length } de haut

quilt-trim-rows = Mesurer les rangées d’un bout à l’autre, environ { $length }. Recouper { $count } { $strips } ({ $fabric }) à cette longueur.
quilt-trim-columns = Mesurer les colonnes d’un bout à l’autre, environ { $length }. Recouper { $count } { $strips } ({ $fabric }) à cette longueur.
quilt-trim-marks = Marquer sur les deux bords longs de chaque bande le début et la fin des blocs.
quilt-take-rows = Prendre { $rows }.
quilt-take-rows-strips = Prendre { $rows }, et { $count } { $strips }.
quilt-arrange-down = Disposer de haut en bas, { $strip } entre deux rangées{ $outer ->
    [yes] {" "}et une en haut et en bas
   *[no] { "" }
}.
quilt-arrange-across = Disposer de gauche à droite, { $strip } entre deux colonnes{ $outer ->
    [yes] {" "}et une à gauche et à droite
   *[no] { "" }
}.
quilt-pin-cornerstones = Épingler les cabochons aux bouts des bandes intermédiaires, en { $meeting } les coutures.
quilt-pin-cornerstones-listed = Épingler les cabochons aux bouts des bandes intermédiaires longues, en { $meeting } les coutures : { $list }.
quilt-cornerstones-of = { $count ->
        [one] cabochon
       *[other] cabochons
    } { $numbers } à { $columns }
quilt-cornerstones-and = { $first }, et { $last }
quilt-piece-of-fabric = { $name } ({ $fabric })
quilt-piece-of-size = { $name } de { $size }
quilt-nesting = emboîtant
quilt-matching = alignant
quilt-sew-long = Coudre les bords longs.
quilt-sew-long-marks = Épingler, les marques sur les coutures des blocs, et coudre les bords longs.
quilt-join-down = Assembler de haut en bas, en { $meeting } les coutures.
quilt-join-across = Assembler de gauche à droite, en { $meeting } les coutures.
quilt-join-halfway = Assembler de gauche à droite, bouts alignés, le milieu de chaque bloc aux bouts des blocs voisins.
quilt-long-open = Ouvrir toutes les longues coutures au fer.
quilt-long-strips = Coucher toutes les longues coutures vers les bandes intermédiaires.
quilt-long-plain = Coucher toutes les longues coutures vers les bandes.
quilt-long-bottom = Coucher toutes les longues coutures vers le bas.
quilt-long-right = Coucher toutes les longues coutures vers la droite.

quilt-point-down = Disposer les rangées de haut en bas, la rangée 1 en haut.
quilt-point-strips = Poser la bande intermédiaire 1 en haut, la bande 2 entre les rangées 1 et 2, et ainsi de suite ; la dernière est en bas.
quilt-beyond-both = { $rows } : { $count ->
        [one] dépasse
       *[other] chacune dépasse
    } d’un bloc la rangée du dessus aux deux bouts.
quilt-beyond-left = { $rows } : { $count ->
        [one] commence
       *[other] chacune commence
    } un bloc avant la rangée du dessus à gauche et { $count ->
        [one] finit
       *[other] finit
    } un bloc avant elle à droite.
quilt-beyond-right = { $rows } : { $count ->
        [one] commence
       *[other] chacune commence
    } un bloc après la rangée du dessus à gauche et { $count ->
        [one] la dépasse
       *[other] la dépasse
    } d’un bloc à droite.
quilt-beyond-none = { $rows } : { $count ->
        [one] s’arrête
       *[other] chacune s’arrête
    } un bloc avant la rangée du dessus aux deux bouts.
quilt-beyond-row = rangée { $number }
quilt-corners-turn = Tourner le { $center } pour que la rangée 1 soit en haut à gauche.
quilt-corners-crease = Marquer d’un pli le milieu du bord long de chacun des 4 triangles de coin.
quilt-corners-sew = Coudre un triangle de coin par son bord long à chacun des quatre coins, le pli au milieu du bord. Les bords courts des triangles deviennent les bords du { $center }.
quilt-corners-block = { $lies ->
    [yes] Poser le bloc ({ $how }), puis le tourner pour que son bord supérieur soit en haut à gauche.
   *[no] Poser le bloc sur la pointe.
} Coudre 2 triangles de coin par leurs bords longs aux bords supérieur gauche et inférieur droit, plis au milieu.
quilt-corners-block-rest = Coudre de même les 2 autres triangles de coin par leurs bords longs aux bords supérieur droit et inférieur gauche.
quilt-corners-press = Coucher { $count ->
        [two] les deux coutures
       *[other] les coutures
    } vers les triangles de coin.
quilt-corners-open = Ouvrir { $count ->
        [two] les deux coutures
       *[other] les coutures
    } au fer.
quilt-square-up-sashes = Recouper les bords à { $seam } au-delà des pointes des bandes intermédiaires, coins d’équerre.
quilt-square-up = Recouper les bords à { $seam } au-delà des pointes des blocs, coins d’équerre.

quilt-border-measure-down = Mesurer le { $what } par le milieu, de haut en bas, environ { $length }.
quilt-border-measure-across = Mesurer le { $what } par le milieu, d’un côté à l’autre, environ { $length }.
quilt-border-again-down = Mesurer par le milieu, de haut en bas, { $ring } comprise, environ { $length }.
quilt-border-again-across = Mesurer par le milieu, d’un côté à l’autre, { $ring } comprise, environ { $length }.
quilt-border-trim = Recouper { $count } bandes ({ $fabric }) à cette longueur.
quilt-border-mark = Marquer le milieu et les quarts de chaque bande et de chaque bord { $sides }.
quilt-border-sew-sides = Coudre une bande au bord gauche et une bande au bord droit, marque sur marque.
quilt-border-sew-ends = Coudre une bande au bord supérieur et une bande au bord inférieur, marque sur marque.
quilt-border-sew-sides-same = Coudre de même les bandes au bord gauche et au bord droit.
quilt-border-sew-ends-same = Coudre de même les bandes au bord supérieur et au bord inférieur.
quilt-border-press = Coucher les deux coutures vers la { $ring }.
quilt-border-press-open = Ouvrir les deux coutures au fer.
quilt-side = de côté
quilt-top-and-bottom = du haut et du bas
quilt-border-corners = Coudre { $corner } ({ $fabric }) à chaque bout des 2 autres bandes.
quilt-border-corners-press = Coucher les coutures vers les bandes.
quilt-border-corners-open = Ouvrir les coutures au fer.
quilt-border-corners-ends = Coudre ces bandes au bord supérieur et au bord inférieur, en { $meeting } les coutures des carrés d’angle.
quilt-border-corners-sides = Coudre ces bandes au bord gauche et au bord droit, en { $meeting } les coutures des carrés d’angle.

quilt-mitre-take = Prendre 2 bandes ({ $fabric }) de { $width } × { $sides } pour les côtés et 2 bandes ({ $fabric }) de { $width } × { $ends } pour le haut et le bas.
quilt-mitre-take-four = Prendre 4 bandes ({ $fabric }) de { $width } × { $sides }.
quilt-mitre-mark = Marquer le milieu de chaque bande et de chaque bord du { $what }.
quilt-mitre-pin = Épingler les bandes longues aux bords gauche et droit et les bandes courtes aux bords supérieur et inférieur, endroit contre endroit, milieu sur milieu.
quilt-mitre-pin-wide = Épingler les bandes courtes aux bords gauche et droit et les bandes longues aux bords supérieur et inférieur, endroit contre endroit, milieu sur milieu.
quilt-mitre-pin-four = Épingler une bande à chaque bord, endroit contre endroit, milieu sur milieu.
quilt-mitre-beyond = Les deux bouts dépassent également, d’environ { $length }.
quilt-mitre-sew = Coudre chaque bande de { $seam } à l’intérieur d’un coin à { $seam } à l’intérieur du suivant ; faire un point d’arrêt aux deux.
quilt-mitre-press = Coucher les coutures vers la { $ring }.
quilt-mitre-press-open = Ouvrir les coutures au fer.
quilt-mitre-fold = À chaque coin, plier le dessus en diagonale, endroit contre endroit, pour que les deux bandes soient bord à bord.
quilt-mitre-line = Du bout des coutures, tracer une ligne jusqu’au bord extérieur dans le prolongement du pli.
quilt-mitre-stitch = Coudre sur la ligne, du coin intérieur vers l’extérieur.
quilt-mitre-check = Vérifier que le coin est bien plat.
quilt-mitre-trim = Recouper la couture à { $seam }. Ouvrir la couture au fer.

quilt-units-take = Prendre { $list }.
quilt-units-lay = Poser chaque { $unit } : { $how } ; son haut est le bord extérieur de la { $ring }.
quilt-units-alike = Le haut de chaque { $unit } est le bord extérieur de la { $ring }.
quilt-units-sew = Assembler de gauche à droite : { $sides } dans chacune des 2 bandes des côtés, { $ends } dans chacune des 2 bandes du haut et du bas.
quilt-units-sew-alike = { $sides ->
        [1] Chacune forme une bande à elle seule.
       *[other] Assembler de gauche à droite : { $sides } dans chacune des 4 bandes.
    }
quilt-units-press = Coucher toutes les coutures d’un même côté.
quilt-units-corners = Coudre { $corner } ({ $fabric }) à chaque bout des bandes { $sides ->
        [yes] du haut et du bas
       *[no] des côtés
    }.
quilt-units-corners-press = Coucher les coutures vers les carrés d’angle.
quilt-units-check = Mesurer le { $what } par le milieu, environ { $width } d’un côté à l’autre et { $height } de haut en bas. Comparer chaque bande à son bord ; si elles diffèrent, reprendre ou relâcher quelques coutures d’un fil.
quilt-units-sew-sides = Coudre une bande au bord gauche et une bande au bord droit, le haut des { $units } vers l’extérieur.
quilt-units-sew-ends = Coudre une bande au bord supérieur et une bande au bord inférieur, le haut des { $units } vers l’extérieur.
quilt-units-toward = Coucher les coutures vers le { $what }.
quilt-units-toward-open = Ouvrir les coutures au fer.

quilt-backing-cut = Couper { $count ->
        [one] 1 longueur
       *[other] { $count } longueurs
    } de { $length } dans { $fabric }, sur toute la laize, et couper les lisières.
quilt-backing-join-upright = Assembler par les bords longs avec une marge de couture de { $join } ; les coutures sont dans le sens de la hauteur du quilt. Ouvrir les coutures au fer.
quilt-backing-join-level = Assembler par les bords longs avec une marge de couture de { $join } ; les coutures sont en travers du quilt. Ouvrir les coutures au fer.
quilt-backing-trim = Recouper le dos à au moins { $size } : { $overage } de plus que le dessus, de bord à cru à bord à cru, de chaque côté.
quilt-backing-fewer = Avec { $overage } de débord, il faut une longueur de moins.

quilt-layers-press = Repasser le dessus et le dos, et couper tous les fils qui pendent.
quilt-layers-lay = Poser le dos sur le sol ou une table, envers visible, et fixer ses bords au ruban adhésif, à plat mais sans tension.
quilt-layers-batting = Y poser le molleton{ $sized ->
    [yes] , { $size },
   *[no] { "" }
} et le lisser à partir du milieu, puis le dessus, endroit visible, coutures bien droites.
quilt-layers-baste = Bâtir les trois épaisseurs par rangs de points ou à l’épingle de sûreté, à une largeur de main, du milieu vers l’extérieur. Compter les épingles au début et à la fin ; garder hors de portée des enfants et des animaux.

quilt-quilting-quilt = Matelasser à la main ou à la machine, au choix, du milieu vers l’extérieur, sans prendre de pli. Lire sur l’emballage du molleton l’écart permis entre les lignes.
quilt-quilting-trim = Recouper molleton et dos au ras du dessus, coins d’équerre. Couper en s’éloignant de soi, et refermer la lame en posant le cutter.

quilt-sleeve-join = Coudre bout à bout { $count } bandes de { $width } de large.
quilt-sleeve-cut = Couper une bande de { $size } ({ $fabric }).
quilt-sleeve-cut-joined = Recouper la bande à { $size } ({ $fabric }).
quilt-sleeve-fold = Ourler les deux bouts courts. Plier dans la longueur, envers contre envers, et repasser.
quilt-sleeve-baste = Centrer sur le dos du quilt, bords à cru alignés au bord supérieur, et bâtir à { $seam } du bord. Le biais de finition couvrira les bords à cru.
quilt-sleeve-hang = Remonter un peu le bord plié du fourreau, pour laisser la place d’une tringle, et coudre à la main en ne prenant que le dos et le molleton.

quilt-binding-strips = Couper { $count } { $count ->
        [one] bande
       *[other] bandes
    } ({ $fabric }) de { $width } de large, de lisière à lisière.
quilt-binding-join = Assembler par des coutures en oblique, recouper à { $seam }, et ouvrir les coutures au fer.
quilt-binding-squares = { $count ->
        [one] Couper 1 carré ({ $fabric }) de { $side }. Le couper
       *[other] Couper { $count } carrés ({ $fabric }) de { $side }. Couper chacun
    } en deux d’un coin à l’autre. Coudre les deux triangles par un bord court, endroit contre endroit, en une pièce oblique. Ouvrir la couture au fer.
quilt-binding-tube = Sur l’envers, tracer des lignes à { $width } d’écart, parallèles aux bords longs en biais. Réunir les deux autres bords en tube, endroit contre endroit, un bord décalé d’une ligne ; coudre avec une marge de couture de { $seam }, et ouvrir au fer. Couper en tournant sur la ligne.
quilt-binding-join-bias = Assembler les bandes par des coutures en oblique, et ouvrir les coutures au fer.
quilt-binding-measures = La bande mesure environ { $length } ; le tour en demande { $around }.
quilt-binding-fold = Plier dans la longueur, envers contre envers, et repasser.
quilt-binding-start = En commençant au milieu d’un côté et en laissant libre un bout de { $tail }, poser les bords à cru de la bande sur le bord du dessus. Coudre à { $seam } du bord.
quilt-binding-corner = S’arrêter à { $seam } avant chaque coin ; faire un point d’arrêt. Replier la bande tout droit vers le haut, puis tout droit vers le bas, le pli aligné au bord que l’on vient de coudre. Coudre le côté suivant à partir du pli.
quilt-binding-close = Joindre les deux bouts par une couture en oblique et coudre le reste.
quilt-binding-turn = Rabattre le pli sur le dos et le coudre par-dessus la couture.
quilt-binding-around = { $around } de tour

quilt-label-sew = Coudre une étiquette au dos : le nom du quilt, votre nom, l’année et les conseils de lavage.
