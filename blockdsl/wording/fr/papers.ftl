# Les unités cousues sur papier : une étape par section, une autre qui les assemble.

papers-print = { $count ->
        [one] Imprimer 1 papier { $section } en taille réelle et vérifier le carré témoin. Le découper à l’extérieur du trait continu.
       *[other] Imprimer { $count } papiers { $section } en taille réelle et vérifier le carré témoin. Les découper à l’extérieur du trait continu.
    } Régler un point court, environ { papers-stitch }.
papers-stitch = 1,5 mm
papers-piece = 1 { $area } ({ $fabric })
papers-pieces-many = les pièces { $first } à { $last } de son tableau
papers-paper = 1 papier { $section }
papers-first = Poser { $area } sur le côté vierge du papier, endroit visible, sur la zone { $area } et au moins { $seam } au-delà tout autour ; épingler.
papers-second = Poser { $area } sur { $first }, endroit contre endroit, { $edge } à { $seam } au-delà de la ligne entre les deux zones. Rabattre { $area } le long de la ligne : la pièce doit couvrir la zone { $area } et { $seam } au-delà tout autour. La décaler si besoin, puis la replier et l’épingler.
papers-edge-long = un bord long
papers-edge-cut = son bord long
papers-edge-short = un bord court
papers-edge-any = un bord
papers-sew = Retourner le papier. Coudre sur la ligne, de { $seam } avant à { $seam } après. Replier le papier le long de la ligne et recouper la couture à { $seam }. Repasser { $area } sur sa zone.
papers-add = Ajouter { $area } de la même façon, sur la ligne entre { $before } et { $area }.
papers-add-edge = Ajouter { $area } de la même façon, { $edge } le long de la ligne entre { $before } et { $area }.
papers-add-many = Ajouter { $first } à { $last } de la même façon, dans l’ordre des numéros, chaque pièce sur la ligne qui la sépare des précédentes.
papers-cut = Couper papier et tissu sur le trait continu. Laisser le papier en place.
papers-along = { $length } le long du bord marqué { $join }

papers-as-in = Coudre comme à l’étape { $number } : d’abord { $first }, puis { $rest }.
papers-as-in-one = Poser { $area } sur le côté vierge du papier, endroit visible, sur la zone { $area } et au moins { $seam } au-delà tout autour ; épingler. Couper comme à l’étape { $number }.
papers-then-next = { $before }, puis { $next }
papers-then = { $area } sur la ligne entre { $before } et { $area }
papers-then-edge = { $area }, { $edge } le long de la ligne entre { $before } et { $area }
papers-then-many = { $first } à { $last } dans l’ordre des numéros, chaque pièce sur la ligne qui la sépare des précédentes

papers-section = la section { $letters }
papers-sections = les sections { $letters } assemblées
papers-sections-plain = les sections { $letters }
papers-join = Poser { $before } sur { $after }, endroit contre endroit, les bords marqués { $join } alignés, les { $marks } du même côté{ $pin ->
        [nest] . Emboîter les coutures et épingler.
        [match] . Aligner les coutures et épingler.
       *[plain] , et épingler.
    } Coudre sur le trait tireté. Retirer le papier de la marge de couture. { $press }
papers-press-toward = Coucher la couture vers { $section }.
papers-press-away = Coucher la couture à l’opposé de { $section }.
papers-marks-top = repères HAUT
papers-marks-dot = points
papers-out = Retirer les papiers.
papers-stay = Retirer les papiers quand les bords du bloc sont cousus à d’autres.

papers-sheet-top = HAUT
papers-sheet-dot = ●
papers-sheet-cut = couper { $size }
papers-sheet-half = ½ de { $size }
papers-sheet-section = section { $section }
papers-sheet-copy = exemplaire { $copy } sur { $copies }
papers-sheet-print = en imprimer { $count }
papers-sheet-area = Zone
papers-sheet-fabric = Tissu
papers-sheet-letter = Pièce
papers-sheet-size = Coupe
papers-sheet-halves = ½ : un des deux triangles d’un carré coupé d’un coin à l’autre.
papers-sheet-short = { $areas } : un bord court le long de la ligne.
papers-sheet-join = { $title } : assembler { $joins }. Vu sur l’endroit ; les bords à réunir portent le même repère.
papers-sheet-then = , puis{ " " }
papers-guide-title = Comment coudre sur les papiers
papers-guide-subtitle = Papiers à piécer grandeur nature pour le bloc de { $size } fini
papers-guide-scale = Mesurer le carré témoin et les barres ci-dessous. S’ils ne sont pas justes, réimprimer en taille réelle. Découper les papiers à l’extérieur du trait continu.
papers-guide-sew = Les papiers sont en miroir : ce côté imprimé est l’envers. Le tissu se pose sur le côté vierge. Coudre du côté imprimé sur les traits épais, dans l’ordre des numéros.
papers-guide-pieces = Régler un point court, environ { papers-stitch }. Le tableau à côté de chaque papier indique le tissu et la taille pour chaque zone. Les pièces sont plus grandes que leurs zones : recouper chaque couture à { $seam }.
papers-guide-cut = Couper papier et tissu sur le trait continu, { $seam } à l’extérieur du tireté. Assembler les sections sur le tireté, bords de même repère alignés. Laisser les papiers jusqu’à l’étape qui dit de les retirer.
papers-care-cutter = Refermer le cutter rotatif après chaque coupe ; couper en s’éloignant de soi, sur une plaque de découpe.
papers-care-fold = Replier le papier à l’écart avant la coupe du tissu voisin.
papers-care-iron = Repasser côté tissu, à sec : l’encre en poudre se détache sous un fer chaud.
papers-care-blades = Garder lames, épingles et aiguilles hors de portée des enfants et des animaux.
